/* call_block.c - the contact line and the call panel at the foot (room: layout). */
#include "call.h"

#include "measures.h"

#include <string.h>

#define PANEL_LINES_USUAL 3
#define UNDER_MOST 3          /* lines that stand below list and script, if that is lower */

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

/* At the size of the style; where it has none, at the largest that has room. */
static struct laid_ends ends_lay(const struct pen *pen, struct style style,
                                 const struct ends *ends, mpt width)
{
    struct laid_ends laid = {.pen = pen, .ends = ends, .style = style,
                             .room = width - 2 * PANEL_PAD - ENDS_GAP};
    struct size_rule rule = size_rule(pen->paper, style.role);
    ends_fit(&laid, style.size > 0 ? style.size
                                   : size_that_fits(rule, SIZE_STEP, ends_fit, &laid));
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

/* The height where it takes two lines, where one has no room for both ends; 0: it takes one. */
static mpt ends_two_lines(const struct pen *pen, struct style style, const struct ends *ends)
{
    struct laid_ends laid = ends_lay(pen, style, ends, safe_width(pen->paper));
    bool broken = ends_width(&laid) > laid.room;
    return broken ? 2 * laid.first.line_height + ENDS_CLEAR : 0;
}

/* What stands left on the first line, what stands right below it. */
static void ends_lines_place(struct pen *pen, struct area area, struct style style,
                             const struct ends *ends)
{
    struct ends first = *ends, second = *ends;
    style.size = size_rule(pen->paper, style.role).floor;
    first.right = second.right = "";
    second.left = ends->right;
    area.height /= 2;
    ends_place(pen, area, style, &first);
    area.y += area.height;
    ends_place(pen, area, style, &second);
}

static void ends_any_place(struct pen *pen, struct area area, struct style style,
                           const struct ends *ends)
{
    (ends_two_lines(pen, style, ends) > 0 ? ends_lines_place : ends_place)(pen, area, style, ends);
}

/* ---- the contact line, and the head of the panel ---- */

static struct ends contact_ends(const struct pen *pen)
{
    const struct contact_facts *contact = sheet_contact(pen->sheet);
    return (struct ends){contact->left, contact->right, contact->origin,
                         "the contact line of the cards",
                         "shorten the name of the rescue centre"};
}

static const struct style contact_style = {ROLE_CONTACT, FACE_TEXT, 0, INK_BLACK};

mpt contact_height(const struct pen *trial)
{
    struct ends ends = contact_ends(trial);
    return ends_two_lines(trial, contact_style, &ends);
}

void contact_place(struct pen *pen, struct area area)
{
    struct ends ends = contact_ends(pen);
    if (sheet_block(pen->sheet, BLOCK_CONTACT) == NULL)
        return;
    pen->block = BLOCK_CONTACT;
    pen_box(pen, area, INK_NONE, INK_BLACK, THIN_FRAME, FRAME_CORNER);
    ends_any_place(pen, area, contact_style, &ends);
}

static struct ends panel_ends(const struct pen *pen)
{
    return (struct ends){sheet_call(pen->sheet)->title, sheet_call(pen->sheet)->station,
                         pen->sheet->boat->radio_place, "the head of the call panel",
                         "record the radio's zone and side without a longer spot"};
}

static const struct style panel_head_style = {ROLE_CONTACT, FACE_BOLD, 0, INK_WHITE};

mpt panel_head_height(const struct pen *pen)
{
    struct ends ends = panel_ends(pen);
    mpt two = ends_two_lines(pen, panel_head_style, &ends);
    return two > 0 ? two : grown(pen->paper, PANEL_HEAD);
}

void panel_head_place(struct pen *pen, struct area panel)
{
    struct ends ends = panel_ends(pen);
    struct area head = panel;
    head.height = panel_head_height(pen);
    pen_box(pen, head, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    pen_box(pen, panel, INK_NONE, INK_BLACK, FRAME, FRAME_CORNER);
    size_t outer = reading_begin(pen, READING_HEADING);
    ends_any_place(pen, head, panel_head_style, &ends);
    reading_end(pen, outer);
}

/* ---- the panel, laid out ---- */

static bool says_nothing(const struct pen *pen)
{
    return sheet_call(pen->sheet)->script == NULL;
}

static struct paragraph operate_lay(const struct pen *pen, size_t index, mpt size, mpt width)
{
    struct style style = {ROLE_SCRIPT, FACE_TEXT, size, INK_BLACK};
    const struct card_text *line = &sheet_call(pen->sheet)->operate[index];
    return paragraph_make(pen, &style, line->text, width, line->origin);
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

/* ---- lines as wide as the panel ---- */

/* Walks over the lines as they stand beside each other, of no height where there are none: gives
 * where each begins, from the corner of all; *at is the foot of the last. */
static struct point line_next(const struct laid_panel *laid, size_t index, struct point *at,
                              mpt width)
{
    const struct paragraph *line = &laid->operate[index];
    mpt own = line->line_count == 1 ? line_width(line) : width;
    if (at->x > 0 && at->x + own > width)
        *at = (struct point){0, at->y + line->line_height};
    struct point begins = *at;
    at->x += own + OPERATE_GAP;
    at->y += paragraph_height(line) - line->line_height;
    return begins;
}

/* Of those from `first` on. */
static mpt lines_height(const struct laid_panel *laid, size_t first, mpt width)
{
    struct point at = {0, 0};
    for (size_t i = first; i < laid->operate_count; i++)
        line_next(laid, i, &at, width);
    return laid->operate_count > first
               ? at.y + laid->operate[laid->operate_count - 1].line_height : 0;
}

static void lines_place(struct pen *pen, const struct laid_panel *laid, size_t first,
                        struct area column)
{
    struct point at = {0, 0};
    for (size_t i = first; i < laid->operate_count; i++) {
        struct point begins = line_next(laid, i, &at, column.width);
        paragraph_place(pen, &laid->operate[i], column.x + begins.x, column.y + begins.y);
    }
}

/* What all ways of one panel have: the lines on working the set right across, and the height of
 * the head. */
struct panel_parts {
    const struct paragraph *across;
    mpt width, head;
};

static struct paragraph *operates_lay(const struct pen *pen, mpt size, mpt width)
{
    size_t count = sheet_call(pen->sheet)->operate_count;
    struct paragraph *lines = arena_array(pen->arena, count, sizeof *lines);
    for (size_t i = 0; i < count; i++)
        lines[i] = operate_lay(pen, i, size, width - 2 * PANEL_PAD);
    return lines;
}

/* The panel beside that script, with a list of these lines, of which the last `under` stand below
 * both, beside each other where there is room. */
static struct laid_panel panel_try(const struct pen *pen, const struct panel_parts *parts,
                                   const struct laid_script *script, struct list_way way)
{
    struct laid_panel laid = {.size = script->size, .list = way.width, .under = way.under,
                              .script = *script,
                              .operate_count = sheet_call(pen->sheet)->operate_count};
    laid.operate = arena_array(pen->arena, laid.operate_count, sizeof *laid.operate);
    for (size_t i = 0; i < laid.operate_count; i++) {
        bool is_under = i + way.under >= laid.operate_count;
        laid.operate[i] = is_under ? parts->across[i] : way.lines[i];
        laid.operate_height += is_under ? 0 : paragraph_height(&laid.operate[i]);
    }
    mpt under = lines_height(&laid, laid.operate_count - way.under, parts->width - 2 * PANEL_PAD);
    laid.longest = longest_find(pen, &laid);
    mpt said = laid.script.height, done = laid.operate_height;
    laid.columns = PANEL_PAD_TOP + (said > done ? said : done) + PANEL_PAD_FOOT;
    laid.height = parts->head + laid.columns +
                  (way.under > 0 ? under + PANEL_PAD_TOP + PANEL_PAD_FOOT : 0);
    return laid;
}

/* ---- the same, narrow ---- */

/* The lines above the script, each as wide as the panel. */
static struct laid_panel panel_above_lay(const struct pen *pen, mpt size, mpt width)
{
    struct laid_panel laid = {.size = size, .above = true,
                              .operate_count = sheet_call(pen->sheet)->operate_count};
    mpt inner = width - 2 * PANEL_PAD;
    laid.operate = arena_array(pen->arena, laid.operate_count, sizeof *laid.operate);
    for (size_t i = 0; i < laid.operate_count; i++)
        laid.operate[i] = operate_lay(pen, i, size, inner);
    laid.operate_height = lines_height(&laid, 0, inner);
    laid.script = script_lay(pen, sheet_call(pen->sheet)->script, size, inner);
    laid.columns = laid.operate_height + PANEL_PAD_TOP + PANEL_PAD_FOOT;
    laid.height = panel_head_height(pen) + laid.columns + laid.script.height +
                  PANEL_PAD_TOP + PANEL_PAD_FOOT;
    return laid;
}

static void panel_above_place(struct pen *pen, const struct laid_panel *laid, struct area panel)
{
    mpt top = panel.y + panel_head_height(pen), line = top + laid->columns;
    struct area column = {panel.x + PANEL_PAD, line + PANEL_PAD_TOP, 0,
                          panel.y + panel.height - line - PANEL_PAD_TOP - PANEL_PAD_FOOT};
    lines_place(pen, laid, 0, (struct area){column.x, top + PANEL_PAD_TOP,
                                            panel.width - 2 * PANEL_PAD, 0});
    pen_line(pen, (struct point){panel.x, line}, (struct point){panel.x + panel.width, line},
             INK_BLACK, HAIR);
    script_place(pen, &laid->script, column);
}

/* ---- the panel that is lowest ---- */

static struct laid_script said_lay(const struct pen *pen, mpt size, mpt width)
{
    return script_lay(pen, sheet_call(pen->sheet)->script, size, width - 2 * PANEL_PAD);
}

/* What is numbered stays together; so does what one line alone says. */
static size_t under_most(const struct call_facts *call)
{
    size_t after = call->operate_count - call->act_first - call->act_count;
    size_t most = after < UNDER_MOST ? after : UNDER_MOST;
    return call->operate_count > 1 ? most : 0;
}

/* The list is as wide as makes the panel lowest; of equals the widest, whose lines break least. */
static struct laid_panel lowest_lay(const struct pen *pen, const struct panel_parts *parts,
                                    mpt size)
{
    size_t most = under_most(sheet_call(pen->sheet));
    struct laid_panel best = {.height = 0};
    for (mpt list = PANEL_LIST_MOST; list >= PANEL_LIST_LEAST; list -= PANEL_LIST_STEP) {
        struct laid_script script = said_lay(pen, size, parts->width - list);
        struct list_way way = {list, 0, operates_lay(pen, size, list)};
        for (; way.under <= most; way.under++) {
            struct laid_panel laid = panel_try(pen, parts, &script, way);
            if (best.height == 0 || laid.height < best.height)
                best = laid;
        }
    }
    return best;
}

struct laid_panel panel_lay(const struct pen *pen, mpt size, mpt width)
{
    if (!says_nothing(pen) && width < PANEL_LIST_LEAST + PANEL_SCRIPT_LEAST)
        return panel_above_lay(pen, size, width);
    struct laid_script none = {.size = size};
    struct panel_parts parts = {operates_lay(pen, size, width), width, panel_head_height(pen)};
    if (says_nothing(pen))
        return panel_try(pen, &parts, &none, (struct list_way){width, 0, parts.across});
    return lowest_lay(pen, &parts, size);
}

/* ---- placing ---- */

/* The lines from `first` to before `end` in a column of that height. */
static void operate_place(struct pen *pen, const struct laid_panel *laid, size_t first, size_t end,
                          struct area column)
{
    mpt used = 0;
    for (size_t i = first; i < end; i++)
        used += paragraph_height(&laid->operate[i]);
    mpt gap = gap_between(column.height - used, end - first);
    for (size_t i = first; i < end; i++) {
        paragraph_place(pen, &laid->operate[i], column.x, column.y);
        column.y += paragraph_height(&laid->operate[i]) + gap;
    }
}

static void under_place(struct pen *pen, const struct laid_panel *laid, struct area panel, mpt top)
{
    size_t first = laid->operate_count - laid->under;
    pen_line(pen, (struct point){panel.x, top}, (struct point){panel.x + panel.width, top},
             INK_BLACK, HAIR);
    lines_place(pen, laid, first, (struct area){panel.x + PANEL_PAD, top + PANEL_PAD_TOP,
                                                panel.width - 2 * PANEL_PAD, 0});
}

void panel_place(struct pen *pen, const struct laid_panel *laid, struct area panel)
{
    mpt line = panel.x + laid->list, under = panel.y + panel_head_height(pen);
    mpt spare = panel.height - laid->height, foot = under + laid->columns + spare;
    struct area column = {panel.x + PANEL_PAD, under + PANEL_PAD_TOP, 0,
                          foot - under - PANEL_PAD_TOP - PANEL_PAD_FOOT};
    pen->block = BLOCK_CALL;
    panel_head_place(pen, panel);
    if (laid->above) {
        panel_above_place(pen, laid, panel);
        return;
    }
    operate_place(pen, laid, 0, laid->operate_count - laid->under, column);
    if (!says_nothing(pen)) {
        pen_line(pen, (struct point){line, under}, (struct point){line, foot}, INK_BLACK, HAIR);
        column.x = line + PANEL_PAD;
        script_place(pen, &laid->script, column);
    }
    if (laid->under > 0)
        under_place(pen, laid, panel, foot);
}
