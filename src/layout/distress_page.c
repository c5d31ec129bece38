/* distress_page.c - the distress card's own blocks in two columns (room: layout). Each is laid
 * out once at a size and placed as it was. */
#include "boxes.h"
#include "call.h"

#include "measures.h"

#include <string.h>

/* Which column a block stands in, in order from the top. */
static const struct block_row {
    enum block_key key;
    enum page_area column;
} blocks[] = {
    {BLOCK_NATURE, AREA_LEFT},     {BLOCK_PAN_PAN, AREA_LEFT}, {BLOCK_SPELL, AREA_LEFT},
    {BLOCK_RELAY, AREA_RIGHT},     {BLOCK_DOWNGRADE, AREA_RIGHT},
    {BLOCK_CANCEL, AREA_RIGHT},    {BLOCK_CAUTIONS, AREA_RIGHT}};
#define BLOCKS_OF_PAGE (sizeof blocks / sizeof *blocks)

static struct style words_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_SCRIPT, face, size, INK_BLACK};
}

/* ---- a line: the set's word, if it has one, then what to say ---- */

struct laid_words {
    const struct card_text *line;
    const char *lead;             /* NULL: none */
    struct paragraph said;
};

/* How wide a line is, and where in it what is said begins. */
struct tab_stops { mpt width, tab; };

static mpt tab_width(const struct pen *pen, const struct section_facts *section, mpt size)
{
    mpt widest = 0;
    struct style plain = words_style(FACE_TEXT, size);
    for (size_t i = 0; section->lead != NULL && i < section->line_count; i++) {
        mpt width = pen_width(pen, &plain, section->lead[i]);
        widest = width > widest ? width : widest;
    }
    return widest == 0 ? 0 : widest + SECTION_TAB_GAP;
}

static struct laid_words words_lay(const struct pen *pen, const struct section_facts *section,
                                   size_t index, mpt size, struct tab_stops stops)
{
    const struct card_text *line = &section->lines[index];
    struct style said = words_style(section->lead == NULL ? FACE_TEXT : FACE_BOLD, size);
    return (struct laid_words){
        .line = line, .lead = section->lead == NULL ? NULL : section->lead[index],
        .said = paragraph_make(pen, &said, line->text, stops.width - stops.tab, line->origin)};
}

static void words_of_section_place(struct pen *pen, const struct laid_words *laid, mpt tab, mpt x,
                                   mpt top)
{
    mpt size = laid->said.style.size;
    struct style plain = words_style(FACE_TEXT, size);
    if (laid->lead != NULL) {
        pen_text(pen, &plain, x, baseline_in(top, laid->said.line_height, size), laid->lead,
                 strlen(laid->lead), laid->line->origin);
        x += tab;
    }
    paragraph_place(pen, &laid->said, x, top);
}

/* ---- a section: head, notes before the words, lines, script ---- */

struct laid_section {
    enum block_key key;
    const struct section_facts *section;   /* NULL: it is the cautions */
    struct laid_boxes cautions;
    struct paragraph note, end_note;      /* empty where there are none */
    struct paragraph *hints;
    struct laid_words *lines;
    mpt tab;                              /* where what is said begins, behind the words */
    struct laid_script script;
    mpt height;
};

static struct paragraph note_lay(const struct pen *pen, const char *note, mpt size, mpt width)
{
    struct style style = words_style(FACE_TEXT, size);
    return note == NULL ? (struct paragraph){.line_count = 0}
                        : paragraph_make(pen, &style, note, width, pen->sheet->origin);
}

static struct laid_section section_lay(const struct pen *pen, enum block_key key, mpt size,
                                       mpt width)
{
    const struct section_facts *section = sheet_section(pen->sheet, key);
    mpt words = width - 2 * SECTION_PAD;
    struct laid_section laid = {.key = key, .section = section,
                                .tab = tab_width(pen, section, size)};
    laid.note = note_lay(pen, section->note, size, words);
    laid.hints = arena_array(pen->arena, section->hint_count, sizeof *laid.hints);
    laid.lines = arena_array(pen->arena, section->line_count, sizeof *laid.lines);
    laid.script = script_lay(pen, section->script, size, words);
    laid.end_note = note_lay(pen, section->end_note, size, words);
    laid.height = grown(pen->paper, SECTION_HEAD) + SECTION_PAD_TOP +
                  paragraph_height(&laid.note) + laid.script.height +
                  paragraph_height(&laid.end_note) + SECTION_PAD_FOOT;
    for (size_t i = 0; i < section->hint_count; i++) {
        laid.hints[i] = note_lay(pen, section->hints[i].text, size, words);
        laid.height += paragraph_height(&laid.hints[i]);
    }
    for (size_t i = 0; i < section->line_count; i++) {
        laid.lines[i] = words_lay(pen, section, i, size, (struct tab_stops){words, laid.tab});
        laid.height += paragraph_height(&laid.lines[i].said);
    }
    return laid;
}

static void section_head_place(struct pen *pen, const struct section_facts *section,
                               struct area box)
{
    struct style style = {ROLE_CONTACT, FACE_BOLD, size_rule(pen->paper, ROLE_CONTACT).floor,
                          INK_WHITE};
    struct area head = {box.x, box.y, box.width, grown(pen->paper, SECTION_HEAD)};
    pen_box(pen, head, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    pen_box(pen, box, INK_NONE, INK_BLACK, FRAME, FRAME_CORNER);
    pen_text(pen, &style, box.x + SECTION_PAD, baseline_in(box.y, head.height, style.size),
             section->title, strlen(section->title), pen->sheet->origin);
}

static void section_place(struct pen *pen, const struct laid_section *laid, struct area box)
{
    struct area column = {box.x + SECTION_PAD, box.y, 0, 0};
    column.y += grown(pen->paper, SECTION_HEAD) + SECTION_PAD_TOP;
    pen->block = laid->key;
    section_head_place(pen, laid->section, box);
    paragraph_place(pen, &laid->note, column.x, column.y);
    column.y += paragraph_height(&laid->note);
    for (size_t i = 0; i < laid->section->hint_count; i++) {
        paragraph_place(pen, &laid->hints[i], column.x, column.y);
        column.y += paragraph_height(&laid->hints[i]);
    }
    for (size_t i = 0; i < laid->section->line_count; i++) {
        words_of_section_place(pen, &laid->lines[i], laid->tab, column.x, column.y);
        column.y += paragraph_height(&laid->lines[i].said);
    }
    script_place(pen, &laid->script, column);
    column.y += laid->script.height;
    paragraph_place(pen, &laid->end_note, column.x, column.y);
}

/* ---- columns ---- */

struct laid_column {
    struct laid_section *sections;
    size_t count;
    mpt height;                   /* with the least gaps */
};

static struct laid_section cautions_lay(const struct pen *pen, mpt size, mpt width)
{
    struct laid_section laid = {.cautions = boxes_lay(pen, size, width)};
    laid.height = laid.cautions.height;
    return laid;
}

/* A section that the card lacks takes no gap either. */
static struct laid_column column_lay(const struct pen *pen, enum page_area column, mpt size,
                                     mpt width)
{
    struct laid_column laid = {.height = -SECTION_GAP};
    laid.sections = arena_array(pen->arena, BLOCKS_OF_PAGE, sizeof *laid.sections);
    for (size_t i = 0; i < BLOCKS_OF_PAGE; i++) {
        enum block_key key = blocks[i].key;
        bool cautions = key == BLOCK_CAUTIONS;
        if (blocks[i].column != column || (sheet_block(pen->sheet, key) == NULL && !cautions))
            continue;
        struct laid_section *own = &laid.sections[laid.count++];
        *own = cautions ? cautions_lay(pen, size, width) : section_lay(pen, key, size, width);
        laid.height += own->height + SECTION_GAP;
    }
    return laid;
}

static mpt section_gap(const struct laid_column *laid, mpt height)
{
    mpt extra = height - laid->height;
    mpt gap = SECTION_GAP + (extra > 0 && laid->count > 1 ? extra / (mpt)(laid->count - 1) : 0);
    return gap > SECTION_GAP_MOST ? SECTION_GAP_MOST : gap;
}

static void column_place(struct pen *pen, const struct laid_column *laid, struct area column)
{
    mpt gap = section_gap(laid, column.height);
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_section *own = &laid->sections[i];
        column.height = own->height;
        if (own->section != NULL)
            section_place(pen, own, column);
        else
            boxes_place(pen, &own->cautions, column.x, column.y);
        column.y += own->height + gap;
    }
}

/* ---- the page ---- */

/* In one way of the template, at one size. */
struct laid_distress {
    const struct pen *pen;
    struct frame frame;
    struct laid_column left, right;
    mpt size;
    mpt over;                     /* what is too long; <= 0: it fits */
};

static bool distress_fits_at(void *of, mpt size)
{
    struct laid_distress *laid = of;
    const struct area *at = laid->frame.at;
    laid->size = size;
    laid->left = column_lay(laid->pen, AREA_LEFT, size, at[AREA_LEFT].width);
    laid->right = column_lay(laid->pen, AREA_RIGHT, size, at[AREA_RIGHT].width);
    mpt left = laid->left.height, right = laid->right.height;
    laid->over = (left > right ? left : right) - at[AREA_LEFT].height;
    return laid->over <= 0;
}

/* At the largest size at which both columns fit, or the least. */
static struct laid_distress way_lay(const struct pen *pen, const struct page_needs *shared,
                                    int way)
{
    struct page_needs needs = *shared;
    struct laid_distress laid = {.pen = pen};
    struct size_rule rule = size_rule(pen->paper, ROLE_SCRIPT);
    needs.way = way;
    laid.frame = frame_make(pen->paper, TEMPLATE_DISTRESS, &needs);
    distress_fits_at(&laid, size_that_fits(rule, SIZE_STEP, distress_fits_at, &laid));
    return laid;
}

/* The way whose columns allow the largest size, or come nearest to fitting. */
static struct laid_distress distress_lay(const struct pen *pen, const struct page_needs *needs)
{
    struct laid_distress best = way_lay(pen, needs, 0);
    for (int way = 1; way < template_ways(TEMPLATE_DISTRESS); way++) {
        struct laid_distress laid = way_lay(pen, needs, way);
        bool better = laid.over <= 0 ? best.over > 0 || laid.size > best.size
                                     : laid.over < best.over;
        if (better)
            best = laid;
    }
    return best;
}

bool distress_fits(struct pen *pen, const struct page_needs *needs)
{
    return distress_lay(pen, needs).over <= 0;
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
    struct laid_distress laid = distress_lay(pen, needs);
    const struct area *at = laid.frame.at;
    if (laid.over > 0) {
        size_t spelling = spelling_lines(pen, laid.size, at[AREA_LEFT].width);
        pen_too_long(pen, pen->sheet->boat->facts.name.place, laid.over,
                     distress_remedy(pen, spelling), "the distress card");
        return false;
    }
    column_place(pen, &laid.left, at[AREA_LEFT]);
    column_place(pen, &laid.right, at[AREA_RIGHT]);
    return true;
}
