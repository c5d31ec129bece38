/* call_block.c - the contact line and the call panel at the foot (room: layout). */
#include "call.h"

#include "measures.h"

#include <string.h>

#define PANEL_LINES_USUAL 3

/* ---- the panel, laid out ---- */

static bool says_nothing(const struct pen *pen)
{
    return sheet_call(pen->sheet)->script == NULL;
}

static mpt operate_width(const struct pen *pen, mpt panel)
{
    mpt set = says_nothing(pen) ? panel : part_of(PART_OF_PANEL_SET, panel);
    return set - 2 * PANEL_PAD;
}

static mpt said_width(mpt panel)
{
    return panel - part_of(PART_OF_PANEL_SET, panel) - 2 * PANEL_PAD;
}

static void operate_lay(const struct pen *pen, struct laid_panel *laid, mpt width)
{
    struct style style = {ROLE_SCRIPT, FACE_TEXT, laid->size, INK_BLACK};
    laid->operate_count = sheet_call(pen->sheet)->operate_count;
    laid->operate = arena_array(pen->arena, laid->operate_count, sizeof *laid->operate);
    for (size_t i = 0; i < laid->operate_count; i++) {
        const struct card_text *line = &sheet_call(pen->sheet)->operate[i];
        laid->operate[i] = paragraph_make(pen, &style, line->text, width, line->origin);
        laid->operate_height += paragraph_height(&laid->operate[i]);
    }
}

static const struct card_text *longest_find(const struct pen *pen, const struct laid_panel *laid)
{
    const struct card_text *longest = NULL;
    size_t most = PANEL_LINES_USUAL;
    if (laid->operate_height <= laid->script.height)
        return NULL;
    for (size_t i = 0; i < laid->operate_count; i++)
        if (laid->operate[i].line_count > most) {
            most = laid->operate[i].line_count;
            longest = &sheet_call(pen->sheet)->operate[i];
        }
    return longest;
}

struct laid_panel panel_lay(const struct pen *pen, mpt size, mpt width)
{
    struct laid_panel laid = {.size = size};
    operate_lay(pen, &laid, operate_width(pen, width));
    laid.script = script_lay(pen, sheet_call(pen->sheet)->script, size, said_width(width));
    laid.longest = longest_find(pen, &laid);
    mpt said = laid.script.height, done = laid.operate_height;
    laid.height = grown(pen->paper, PANEL_HEAD) + PANEL_PAD_TOP + (said > done ? said : done) +
                  PANEL_PAD_FOOT;
    return laid;
}

/* ---- left and right text on one line of a box ---- */

struct ends {
    const char *left, *right;
    struct place origin;      /* what may be shortened */
    const char *what, *remedy;
};

struct laid_ends {
    const struct pen *pen;
    const struct ends *ends;
    struct style style;
    mpt room;
    struct paragraph first, last;
};

static mpt ends_width(const struct laid_ends *laid)
{
    return line_width(&laid->first) + line_width(&laid->last);
}

static bool ends_fit(void *of, mpt size)
{
    struct laid_ends *laid = of;
    const struct ends *ends = laid->ends;
    laid->style.size = size;
    laid->first = paragraph_make(laid->pen, &laid->style, ends->left, ANY_WIDTH, ends->origin);
    laid->last = paragraph_make(laid->pen, &laid->style, ends->right, ANY_WIDTH, ends->origin);
    return ends_width(laid) <= laid->room;
}

static struct laid_ends ends_lay(const struct pen *pen, struct style style,
                                 const struct ends *ends, mpt width)
{
    struct laid_ends laid = {.pen = pen, .ends = ends, .style = style,
                             .room = width - 2 * PANEL_PAD - ENDS_GAP};
    struct size_rule rule = size_rule(pen->paper, style.role);
    ends_fit(&laid, size_that_fits(rule, SIZE_STEP, ends_fit, &laid));
    return laid;
}

/* The same on every card of every boat: told once, since equal messages are. */
static void ends_too_long(struct pen *pen, const struct ends *ends, mpt excess)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, ends->origin, ends->remedy,
                "%s is %s mm too long at the smallest size allowed", ends->what,
                mm_text(pen->arena, excess));
}

static void ends_place(struct pen *pen, struct area box, struct style style,
                       const struct ends *ends)
{
    struct laid_ends laid = ends_lay(pen, style, ends, box.width);
    mpt baseline = baseline_in(box.y, box.height, laid.style.size);
    mpt right = box.x + box.width - PANEL_PAD - line_width(&laid.last);
    if (laid.first.line_count > 0)
        line_place(pen, &laid.first, 0, box.x + PANEL_PAD, baseline);
    if (laid.last.line_count > 0)
        line_place(pen, &laid.last, 0, right, baseline);
    if (ends_width(&laid) > laid.room)
        ends_too_long(pen, ends, ends_width(&laid) - laid.room);
}

/* ---- placing ---- */

void contact_place(struct pen *pen, struct area area)
{
    const struct contact_facts *contact = sheet_contact(pen->sheet);
    struct style style = {ROLE_CONTACT, FACE_TEXT, 0, INK_BLACK};
    struct ends ends = {contact->left, contact->right,
                        contact->origin, "the contact line of the cards",
                        "shorten the name of the rescue centre"};
    if (sheet_block(pen->sheet, BLOCK_CONTACT) == NULL)
        return;
    pen->block = BLOCK_CONTACT;
    pen_box(pen, area, INK_NONE, INK_BLACK, THIN_FRAME, FRAME_CORNER);
    ends_place(pen, area, style, &ends);
}

static void panel_head_place(struct pen *pen, struct area panel)
{
    struct style style = {ROLE_CONTACT, FACE_BOLD, 0, INK_WHITE};
    struct ends ends = {sheet_call(pen->sheet)->title, sheet_call(pen->sheet)->station,
                        pen->sheet->boat->radio_place, "the head of the call panel",
                        "record the radio's zone and side without a longer spot"};
    struct area head = panel;
    head.height = grown(pen->paper, PANEL_HEAD);
    pen_box(pen, head, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    pen_box(pen, panel, INK_NONE, INK_BLACK, FRAME, FRAME_CORNER);
    size_t outer = reading_begin(pen, READING_HEADING);
    ends_place(pen, head, style, &ends);
    reading_end(pen, outer);
}

static void operate_place(struct pen *pen, const struct laid_panel *laid, struct area column)
{
    mpt gap = gap_between(column.height - laid->operate_height, laid->operate_count);
    for (size_t i = 0; i < laid->operate_count; i++) {
        paragraph_place(pen, &laid->operate[i], column.x, column.y);
        column.y += paragraph_height(&laid->operate[i]) + gap;
    }
}

void panel_place(struct pen *pen, const struct laid_panel *laid, struct area panel)
{
    mpt line = panel.x + part_of(PART_OF_PANEL_SET, panel.width);
    mpt under = panel.y + grown(pen->paper, PANEL_HEAD), foot = panel.y + panel.height;
    struct area column = {panel.x + PANEL_PAD, under + PANEL_PAD_TOP, 0,
                          foot - under - PANEL_PAD_TOP - PANEL_PAD_FOOT};
    pen->block = BLOCK_CALL;
    panel_head_place(pen, panel);
    operate_place(pen, laid, column);
    if (says_nothing(pen))
        return;
    pen_line(pen, (struct point){line, under}, (struct point){line, foot}, INK_BLACK, HAIR);
    column.x = line + PANEL_PAD;
    script_place(pen, &laid->script, column);
}
