/* spoken_block.c - a call right across a page: what is done first, in numbered discs, then what
 * to say, in the largest type that the page has room for (room: layout). */
#include "call.h"

#include "measures.h"

#include <string.h>

/* ---- what is done ---- */

static mpt act_size(const struct pen *pen, mpt size)
{
    mpt floor = size_rule(pen->paper, ROLE_SCRIPT).floor;
    mpt own = size / 1000 * ACT_SMALLER / SIZE_STEP * SIZE_STEP;
    return own > floor ? own : floor;
}

static mpt inner_width(mpt width)
{
    return width - 2 * PANEL_PAD;
}

/* How wide one of two abreast is. */
static mpt pair_width(mpt width)
{
    return (inner_width(width) - ACTS_GAP) / 2;
}

static mpt act_indent(const struct pen *pen)
{
    return grown(pen->paper, STEP_WORDS_AT) - STEP_DISC_AT;
}

static struct laid_act act_lay(const struct pen *pen, const struct card_text *line, mpt size,
                               mpt width)
{
    struct style style = {ROLE_SCRIPT, FACE_TEXT, size, INK_BLACK};
    struct laid_act act = {.words = paragraph_make(pen, &style, line->text, width,
                                                   line->origin)};
    act.height = paragraph_height(&act.words);
    return act;
}

/* How much lower than its disc the first line begins, which is in the middle of it. */
static mpt words_down(const struct pen *pen, const struct laid_act *act)
{
    mpt disc = grown(pen->paper, STEP_DISC), line = act->words.line_height;
    return disc > line ? (disc - line) / 2 : 0;
}

static struct laid_act numbered_lay(const struct pen *pen, size_t index, mpt size, mpt width)
{
    struct laid_act act = act_lay(pen, &sheet_call(pen->sheet)->acts[index], size,
                                  pair_width(width) - act_indent(pen));
    mpt disc = grown(pen->paper, STEP_DISC);
    act.number = text_format(pen->arena, "%zu", index + 1);
    act.height += words_down(pen, &act);
    act.height = act.height > disc ? act.height : disc;
    return act;
}

/* Does another stand to its right, and is it as high as the higher of them? */
static bool is_left_of_pair(const struct laid_spoken *laid, size_t i, size_t first)
{
    return laid->acts[i].number != NULL && (i - first) % 2 == 0 && i + 1 < laid->count &&
           laid->acts[i + 1].number != NULL;
}

/* The height of the row that begins with it, and of how many it is. */
static mpt row_of_acts(const struct laid_spoken *laid, size_t i, size_t first, size_t *count)
{
    bool pair = is_left_of_pair(laid, i, first);
    *count = pair ? 2 : 1;
    if (pair && laid->acts[i + 1].height > laid->acts[i].height)
        return laid->acts[i + 1].height;
    return laid->acts[i].height;
}

static void acts_lay(const struct pen *pen, struct laid_spoken *laid, mpt size, mpt width)
{
    const struct call_facts *call = sheet_call(pen->sheet);
    size_t in_row;
    laid->count = call->operate_count;
    laid->acts = arena_array(pen->arena, laid->count, sizeof *laid->acts);
    for (size_t i = 0; i < laid->count; i++) {
        bool numbered = i >= call->act_first && i < call->act_first + call->act_count;
        laid->acts[i] = numbered ? numbered_lay(pen, i - call->act_first, size, width)
                                 : act_lay(pen, &call->operate[i], size, inner_width(width));
    }
    for (size_t i = 0; i < laid->count; i += in_row)
        laid->acts_height += row_of_acts(laid, i, call->act_first, &in_row) + ACT_GAP;
}

static void act_place(struct pen *pen, const struct laid_act *act, struct point at)
{
    mpt disc = grown(pen->paper, STEP_DISC), line = act->words.line_height;
    struct style number = {ROLE_NUMBER, FACE_BOLD, size_rule(pen->paper, ROLE_NUMBER).floor,
                           INK_WHITE};
    mpt up = line > disc ? (line - disc) / 2 : 0;
    if (act->number == NULL) {
        paragraph_place(pen, &act->words, at.x, at.y);
        return;
    }
    size_t outer = reading_begin(pen, READING_ENTRY);
    pen_ellipse(pen, (struct area){at.x, at.y + up, disc, disc}, INK_BLACK);
    pen_text(pen, &number, at.x + (disc - pen_width(pen, &number, act->number)) / 2,
             baseline_in(at.y + up, disc, number.size), act->number, strlen(act->number),
             act->words.origin);
    paragraph_place(pen, &act->words, at.x + act_indent(pen), at.y + words_down(pen, act));
    reading_end(pen, outer);
}

/* Gives where what follows begins. */
static mpt acts_place(struct pen *pen, const struct laid_spoken *laid, struct area area)
{
    size_t first = sheet_call(pen->sheet)->act_first, in_row;
    struct point at = {area.x + PANEL_PAD, area.y};
    for (size_t i = 0; i < laid->count; i += in_row) {
        mpt height = row_of_acts(laid, i, first, &in_row);
        act_place(pen, &laid->acts[i], at);
        if (in_row == 2)
            act_place(pen, &laid->acts[i + 1],
                      (struct point){at.x + pair_width(area.width) + ACTS_GAP, at.y});
        at.y += height + ACT_GAP;
    }
    return at.y;
}

/* ---- the block ---- */

struct laid_spoken spoken_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct call_facts *call = sheet_call(pen->sheet);
    struct script_sizes sizes = {size, SPOKEN_BLANK_HEIGHT};
    struct laid_spoken laid = {
        .script = script_lay_with(pen, call->script, sizes, inner_width(width))};
    acts_lay(pen, &laid, act_size(pen, size), width);
    laid.height = panel_head_height(pen) + 2 * PANEL_PAD_TOP + laid.acts_height;
    if (call->script != NULL)
        laid.height += PANEL_PAD_TOP + laid.script.height + PANEL_PAD_FOOT;
    if (laid.script.count > 1)
        laid.spare = (mpt)(laid.script.count - 1) * CALL_GAP_MOST;
    return laid;
}

void spoken_place(struct pen *pen, const struct laid_spoken *laid, struct area area)
{
    struct area inner = area, script = area;
    pen->block = BLOCK_CALL;
    panel_head_place(pen, area);
    inner.y += panel_head_height(pen) + 2 * PANEL_PAD_TOP;
    mpt rule = acts_place(pen, laid, inner);
    if (sheet_call(pen->sheet)->script == NULL)
        return;
    if (laid->count > 0)
        pen_line(pen, (struct point){area.x, rule}, (struct point){area.x + area.width, rule},
                 INK_BLACK, HAIR);
    script.x += PANEL_PAD;
    script.y = rule + PANEL_PAD_TOP;
    script.height = area.y + area.height - PANEL_PAD_FOOT - script.y;
    script_place(pen, &laid->script, script);
}
