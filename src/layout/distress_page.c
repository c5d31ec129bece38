/* distress_page.c - the distress card's own blocks in two columns (room:
 * layout). */
#include "boxes.h"

#include <string.h>

#define HEAD_HEIGHT MM(5.4)
#define PAD MM(2.2)
#define PAD_TOP MM(0.6)
#define PAD_FOOT MM(0.9)
#define BOX_GAP MM(1.0)
#define BOX_GAP_MOST MM(7)
#define FRAME MM(0.7)

/* Which column a block stands in, in order from the top. */
static const struct block_row {
    enum block_key key;
    bool right;
} blocks[] = {
    {BLOCK_NATURE, false},   {BLOCK_PAN_PAN, false}, {BLOCK_SPELL, false},   {BLOCK_RELAY, true},
    {BLOCK_DOWNGRADE, true}, {BLOCK_CANCEL, true},   {BLOCK_CAUTIONS, true}};
#define SECTION_ROWS (sizeof blocks / sizeof *blocks)

static struct style words_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_SCRIPT, face, size, INK_BLACK};
}

/* ---- a line with a tab: the set's word, then what to say ---- */

static mpt tab_width(const struct pen *pen, const struct section_facts *section, mpt size)
{
    struct style style = words_style(FACE_TEXT, size);
    mpt widest = 0;
    for (size_t i = 0; i < section->line_count; i++) {
        const char *tab = strchr(section->lines[i].text, '\t');
        if (tab == NULL)
            continue;
        mpt width = run_width(pen->faces, style.face, size, section->lines[i].text,
                              (size_t)(tab - section->lines[i].text), NULL);
        widest = width > widest ? width : widest;
    }
    return widest == 0 ? 0 : widest + MM(2.5);
}

static struct paragraph line_paragraph(const struct pen *pen, const struct card_text *line,
                                       mpt size, mpt width, mpt tab)
{
    struct style style = words_style(FACE_TEXT, size);
    const char *at = strchr(line->text, '\t');
    if (at == NULL)
        return paragraph_make(pen, &style, line->text, width, line->origin);
    style.face = FACE_BOLD;
    return paragraph_make(pen, &style, at + 1, width - tab, line->origin);
}

static void line_put(struct pen *pen, const struct card_text *line, mpt size, mpt x, mpt top,
                     mpt width, mpt tab)
{
    struct paragraph paragraph = line_paragraph(pen, line, size, width, tab);
    struct style style = words_style(FACE_TEXT, size);
    const char *at = strchr(line->text, '\t');
    if (at != NULL) {
        pen_text(pen, &style, x, baseline_in(top, paragraph.line_height, size), line->text,
                 (size_t)(at - line->text), line->origin);
        x += tab;
    }
    paragraph_place(pen, &paragraph, x, top);
}

static mpt lines_set(struct pen *pen, const struct section_facts *section, mpt size,
                     struct area column, bool measure_only)
{
    mpt top = column.y, tab = tab_width(pen, section, size);
    for (size_t i = 0; i < section->line_count; i++) {
        struct paragraph paragraph = line_paragraph(pen, &section->lines[i], size, column.width,
                                                    tab);
        if (!measure_only)
            line_put(pen, &section->lines[i], size, column.x, top, column.width, tab);
        top += paragraph_height(&paragraph);
    }
    return top - column.y;
}

static mpt note_set(struct pen *pen, const char *note, mpt size, struct area column,
                    bool measure_only)
{
    struct style style = words_style(FACE_TEXT, size);
    if (note == NULL)
        return 0;
    struct paragraph paragraph =
        paragraph_make(pen, &style, note, column.width, pen->sheet->origin);
    if (!measure_only)
        paragraph_place(pen, &paragraph, column.x, column.y);
    return paragraph_height(&paragraph);
}

/* ---- a section: head, notes before the words, lines, script ---- */

static struct area inner(struct area box)
{
    return (struct area){box.x + PAD, box.y + HEAD_HEIGHT + PAD_TOP, box.width - 2 * PAD, 0};
}

static mpt section_set(struct pen *pen, const struct section_facts *section, mpt size,
                       struct area box, bool measure_only)
{
    struct area column = inner(box);
    column.y += note_set(pen, section->note, size, column, measure_only);
    column.y += lines_set(pen, section, size, column, measure_only);
    column.y += script_set(pen, section->script, size, column, measure_only);
    column.y += note_set(pen, section->end_note, size, column, measure_only);
    return column.y + PAD_FOOT - box.y;
}

static void section_place(struct pen *pen, enum block_key key, mpt size, struct area box)
{
    const struct section_facts *section = sheet_section(pen->sheet, key);
    struct style style = {ROLE_CONTACT, FACE_BOLD, size_rule(pen->paper, ROLE_CONTACT).floor,
                          INK_WHITE};
    struct area head = {box.x, box.y, box.width, HEAD_HEIGHT};
    pen->block = key;
    pen_box(pen, head, INK_BLACK, INK_NONE, 0, MM(1));
    pen_box(pen, box, INK_NONE, INK_BLACK, FRAME, MM(1));
    pen_text(pen, &style, box.x + PAD, baseline_in(box.y, HEAD_HEIGHT, style.size), section->title,
             strlen(section->title), pen->sheet->origin);
    section_set(pen, section, size, box, false);
}

/* ---- columns ---- */

static mpt block_height(struct pen *pen, enum block_key key, mpt size, mpt width)
{
    if (key == BLOCK_CAUTIONS)
        return boxes_lay(pen, size, width).height;
    const struct section_facts *section = sheet_section(pen->sheet, key);
    return section == NULL ? 0
                           : section_set(pen, section, size, (struct area){0, 0, width, 0}, true);
}

/* A section that the card lacks takes no gap either. */
static bool block_given(const struct pen *pen, enum block_key key)
{
    return key == BLOCK_CAUTIONS || sheet_block(pen->sheet, key) != NULL;
}

static mpt column_height(struct pen *pen, bool right, mpt size, mpt width, size_t *count)
{
    mpt height = 0;
    *count = 0;
    for (size_t i = 0; i < SECTION_ROWS; i++) {
        if (blocks[i].right != right || !block_given(pen, blocks[i].key))
            continue;
        height += block_height(pen, blocks[i].key, size, width);
        (*count)++;
    }
    return height + (mpt)(*count - 1) * BOX_GAP;
}

static void cautions_place(struct pen *pen, mpt size, struct area column, mpt top)
{
    struct laid_boxes boxes = boxes_lay(pen, size, column.width);
    boxes_place(pen, &boxes, column.x, top);
}

static void column_place(struct pen *pen, bool right, mpt size, struct area column)
{
    size_t count;
    mpt extra = column.height - column_height(pen, right, size, column.width, &count);
    mpt gap = BOX_GAP + (extra > 0 && count > 1 ? extra / (mpt)(count - 1) : 0);
    mpt top = column.y;
    gap = gap > BOX_GAP_MOST ? BOX_GAP_MOST : gap;
    for (size_t i = 0; i < SECTION_ROWS; i++) {
        if (blocks[i].right != right || !block_given(pen, blocks[i].key))
            continue;
        mpt height = block_height(pen, blocks[i].key, size, column.width);
        if (blocks[i].key == BLOCK_CAUTIONS)
            cautions_place(pen, size, column, top);
        else
            section_place(pen, blocks[i].key, size,
                          (struct area){column.x, top, column.width, height});
        top += height + gap;
    }
}

static struct frame frame_in_way(const struct pen *pen, const struct page_needs *shared,
                                 int way)
{
    struct page_needs needs = *shared;
    needs.way = way;
    return frame_make(pen->paper, TEMPLATE_DISTRESS, &needs);
}

/* The largest size at which both columns fit; gives what is too long at it. */
static mpt size_find(struct pen *pen, const struct frame *frame, mpt *size)
{
    struct size_rule rule = size_rule(pen->paper, ROLE_SCRIPT);
    size_t count;
    mpt over = 0;
    for (*size = rule.aim; *size >= rule.floor; *size -= 250) {
        mpt left = column_height(pen, false, *size, frame->at[AREA_LEFT].width, &count);
        mpt right = column_height(pen, true, *size, frame->at[AREA_RIGHT].width, &count);
        over = (left > right ? left : right) - frame->at[AREA_LEFT].height;
        if (over <= 0)
            break;
    }
    return over;
}

/* The way whose columns allow the largest size; gives what is too long in the best. */
static mpt way_choose(struct pen *pen, const struct page_needs *needs, struct frame *best,
                      mpt *best_size)
{
    mpt least = 0;
    for (int way = 0; way < template_ways(TEMPLATE_DISTRESS); way++) {
        struct frame frame = frame_in_way(pen, needs, way);
        mpt size, over = size_find(pen, &frame, &size);
        bool better = over <= 0 ? least > 0 || size > *best_size : over < least;
        if (way > 0 && !better)
            continue;
        *best = frame;
        *best_size = size;
        least = over;
    }
    return least;
}

bool distress_fits(struct pen *pen, const struct page_needs *needs)
{
    struct frame frame;
    mpt size;
    return way_choose(pen, needs, &frame, &size) <= 0;
}

/* How many lines the name takes, spelled. */
static size_t spelling_lines(const struct pen *pen, mpt size, mpt width)
{
    const struct section_facts *section = sheet_section(pen->sheet, BLOCK_SPELL);
    struct style style = {ROLE_SCRIPT, FACE_TEXT, size, INK_BLACK};
    if (section == NULL || section->line_count == 0)
        return 0;
    struct paragraph words = paragraph_make(pen, &style, section->lines[0].text, width,
                                            section->lines[0].origin);
    return words.line_count;
}

/* Only what is not done already: a short name to say may be recorded. */
static const char *distress_remedy(const struct pen *pen, size_t spelling)
{
    const struct boat *boat = pen->sheet->boat;
    const char *spoken = text_empty(boat->facts.name_spoken.text) ? "give a short name_spoken, "
                                                                  : "";
    if (spelling < 3)
        return text_format(pen->arena, "%sgive a short looks, or shorter nature_steps", spoken);
    return text_format(pen->arena, "%sgive a short looks, or shorter nature_steps\nthe name is "
                       "spelled letter by letter on %zu lines: where that is not enough, only a "
                       "shorter name of the boat is", spoken, spelling);
}

bool distress_place(struct pen *pen, const struct page_needs *needs)
{
    struct frame frame;
    mpt size, over = way_choose(pen, needs, &frame, &size);
    if (over > 0) {
        size_t spelling = spelling_lines(pen, size, frame.at[AREA_LEFT].width);
        pen_too_long(pen, pen->sheet->boat->facts.name.place, over, distress_remedy(pen, spelling),
                     "the distress card");
        return false;
    }
    column_place(pen, false, size, frame.at[AREA_LEFT]);
    column_place(pen, true, size, frame.at[AREA_RIGHT]);
    return true;
}
