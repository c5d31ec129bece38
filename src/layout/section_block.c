/* section_block.c - a titled block of a distress call: what the record tells of it, lines, a
 * script (room: layout). */
#include "sections.h"

#include "measures.h"

#include <string.h>

static struct style section_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_SCRIPT, face, size, INK_BLACK};
}

/* ---- lines ---- */

/* Lines of a section that stand one below the other. */
struct lines_column {
    const struct section_facts *section;
    size_t first, end;
    mpt x, width, tab;
};

static mpt tab_width(const struct pen *pen, const struct lines_column *column, mpt size)
{
    mpt widest = 0;
    struct style plain = section_style(FACE_TEXT, size);
    const char *const *lead = column->section->lead;
    for (size_t i = column->first; lead != NULL && i < column->end; i++) {
        mpt width = pen_width(pen, &plain, lead[i]);
        widest = width > widest ? width : widest;
    }
    return widest == 0 ? 0 : widest + SECTION_TAB_GAP;
}

static enum face_role face_of_said(const struct section_facts *section)
{
    return section->lead == NULL ? FACE_TEXT : FACE_BOLD;
}

/* What the column would be wide if no line of it broke. */
static mpt natural_width(const struct pen *pen, const struct lines_column *column, mpt size)
{
    mpt widest = 0;
    struct style said = section_style(face_of_said(column->section), size);
    for (size_t i = column->first; i < column->end; i++) {
        mpt width = pen_width(pen, &said, column->section->lines[i].text);
        widest = width > widest ? width : widest;
    }
    return column->tab + widest;
}

/* Puts them into `lines`; gives the height of the column. */
static mpt column_lines_lay(const struct pen *pen, struct laid_words *lines,
                            const struct lines_column *column, mpt size)
{
    const struct section_facts *section = column->section;
    struct style said = section_style(face_of_said(section), size);
    mpt height = 0;
    for (size_t i = column->first; i < column->end; i++) {
        const struct card_text *line = &section->lines[i];
        lines[i] = (struct laid_words){
            .line = line, .lead = section->lead == NULL ? NULL : section->lead[i],
            .tab = column->tab, .at = {column->x, height},
            .said = paragraph_make(pen, &said, line->text, column->width - column->tab,
                                   line->origin)};
        height += paragraph_height(&lines[i].said);
    }
    return height;
}

/* The size of lines, and how wide they may be in all. */
struct lines_room { mpt size, width; };

/* Lines of a section in two columns, or in one: the second has none then. */
struct lines_columns { struct lines_column first, second; };

static void columns_lay(const struct pen *pen, struct laid_section *laid,
                        const struct lines_columns *columns, mpt size)
{
    laid->lines = arena_array(pen->arena, laid->section->line_count, sizeof *laid->lines);
    mpt first = column_lines_lay(pen, laid->lines, &columns->first, size);
    mpt second = column_lines_lay(pen, laid->lines, &columns->second, size);
    laid->lines_height = first > second ? first : second;
    laid->lines_in_all = first + second;
}

static bool is_lower(const struct laid_section *laid, const struct laid_section *than)
{
    return laid->lines_height < than->lines_height ||
           (laid->lines_height == than->lines_height && laid->lines_in_all < than->lines_in_all);
}

/* One of the two has the width that its longest line needs, or both as they need it: as makes
 * them lowest, and breaks the fewest lines. */
static void columns_share(const struct pen *pen, struct laid_section *laid,
                          struct lines_columns *columns, struct lines_room room)
{
    mpt first = natural_width(pen, &columns->first, room.size);
    mpt second = natural_width(pen, &columns->second, room.size);
    mpt width = room.width - SECTION_COLUMN_GAP;
    const mpt widths[] = {(mpt)((int64_t)width * first / (first + second)), first,
                          width - second};
    struct laid_section best = *laid;
    for (size_t i = 0; i < sizeof widths / sizeof *widths; i++) {
        if (widths[i] <= columns->first.tab || width - widths[i] <= columns->second.tab)
            continue;
        columns->first.width = widths[i];
        columns->second.width = width - widths[i];
        columns->second.x = widths[i] + SECTION_COLUMN_GAP;
        columns_lay(pen, laid, columns, room.size);
        if (i == 0 || is_lower(laid, &best))
            best = *laid;
    }
    *laid = best;
}

/* In two columns the second begins behind so many lines. */
static void lines_lay_in(const struct pen *pen, struct laid_section *laid, size_t first_of_second,
                         struct lines_room room)
{
    const struct section_facts *section = laid->section;
    struct lines_columns columns = {
        {section, 0, first_of_second, 0, room.width, 0},
        {section, first_of_second, section->line_count, 0, 0, 0}};
    columns.first.tab = tab_width(pen, &columns.first, room.size);
    columns.second.tab = tab_width(pen, &columns.second, room.size);
    if (first_of_second < section->line_count)
        columns_share(pen, laid, &columns, room);
    else
        columns_lay(pen, laid, &columns, room.size);
}

/* In several columns, unless they are lower in one: where the page is narrow. */
static void lines_lay(const struct pen *pen, struct laid_section *laid,
                      const struct section_look *look, mpt width)
{
    struct lines_room room = {look->sizes.letters, width};
    size_t count = laid->section->line_count;
    struct laid_section two = *laid;
    lines_lay_in(pen, laid, count, room);
    if (look->columns < 2 || count < 2)
        return;
    lines_lay_in(pen, &two, (count + 1) / 2, room);
    if (two.lines_height < laid->lines_height)
        *laid = two;
}

static void words_of_section_place(struct pen *pen, const struct laid_words *laid,
                                   struct point from)
{
    mpt size = laid->said.style.size, x = from.x + laid->at.x, top = from.y + laid->at.y;
    struct style plain = section_style(FACE_TEXT, size);
    size_t outer = reading_begin(pen, READING_LINE);
    if (laid->lead != NULL)
        pen_text(pen, &plain, x, baseline_in(top, laid->said.line_height, size), laid->lead,
                 strlen(laid->lead), laid->line->origin);
    paragraph_place(pen, &laid->said, x + laid->tab, top);
    reading_end(pen, outer);
}

/* ---- the block ---- */

static struct paragraph note_lay(const struct pen *pen, const char *note, mpt size, mpt width)
{
    struct style style = section_style(FACE_TEXT, size);
    return note == NULL ? (struct paragraph){.line_count = 0}
                        : paragraph_make(pen, &style, note, width, pen->sheet->origin);
}

/* Of no height without a title. */
static mpt section_head_height(const struct pen *pen, const struct section_facts *section)
{
    return text_empty(section->title) ? 0 : grown(pen->paper, SECTION_HEAD);
}

struct laid_section section_lay(const struct pen *pen, enum block_key key,
                                const struct section_look *look, mpt width)
{
    const struct section_facts *section = sheet_section(pen->sheet, key);
    mpt words = width - 2 * SECTION_PAD, size = look->sizes.letters;
    struct laid_section laid = {.key = key, .section = section,
                                .head = section_head_height(pen, section)};
    laid.note = note_lay(pen, section->note, size, words);
    laid.hints = arena_array(pen->arena, section->hint_count, sizeof *laid.hints);
    lines_lay(pen, &laid, look, words);
    laid.script = script_lay_with(pen, section->script, look->sizes, words);
    laid.end_note = note_lay(pen, section->end_note, size, words);
    laid.height = laid.head + SECTION_PAD_TOP + paragraph_height(&laid.note) + laid.lines_height +
                  laid.script.height + paragraph_height(&laid.end_note) + SECTION_PAD_FOOT;
    for (size_t i = 0; i < section->hint_count; i++) {
        laid.hints[i] = note_lay(pen, section->hints[i].text, size, words);
        laid.height += paragraph_height(&laid.hints[i]);
    }
    return laid;
}

static void section_head_place(struct pen *pen, const struct laid_section *laid, struct area box)
{
    struct style style = {ROLE_CONTACT, FACE_BOLD, size_rule(pen->paper, ROLE_CONTACT).floor,
                          INK_WHITE};
    struct area head = {box.x, box.y, box.width, laid->head};
    const char *title = laid->section->title;
    if (laid->head > 0)
        pen_box(pen, head, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    pen_box(pen, box, INK_NONE, INK_BLACK, FRAME, FRAME_CORNER);
    if (laid->head == 0)
        return;
    size_t outer = reading_begin(pen, READING_HEADING);
    pen_text(pen, &style, box.x + SECTION_PAD, baseline_in(box.y, head.height, style.size),
             title, strlen(title), pen->sheet->origin);
    reading_end(pen, outer);
}

void section_place(struct pen *pen, const struct laid_section *laid, struct area box)
{
    struct area column = {box.x + SECTION_PAD, box.y + laid->head + SECTION_PAD_TOP, 0, 0};
    pen->block = laid->key;
    section_head_place(pen, laid, box);
    paragraph_place(pen, &laid->note, column.x, column.y);
    column.y += paragraph_height(&laid->note);
    for (size_t i = 0; i < laid->section->hint_count; i++) {
        paragraph_place(pen, &laid->hints[i], column.x, column.y);
        column.y += paragraph_height(&laid->hints[i]);
    }
    for (size_t i = 0; i < laid->section->line_count; i++)
        words_of_section_place(pen, &laid->lines[i], (struct point){column.x, column.y});
    column.y += laid->lines_height;
    script_place(pen, &laid->script, column);
    column.y += laid->script.height;
    paragraph_place(pen, &laid->end_note, column.x, column.y);
}
