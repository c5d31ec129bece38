/* steps_block.c - the steps: number disc, headline, what must be known before, rows, table and
 * figures (room: layout). */
#include "steps_parts.h"

#include "measures.h"
#include "text.h"

#include <string.h>

mpt step_indent(const struct pen *pen)
{
    return grown(pen->paper, STEP_WORDS_AT);
}

/* ---- heights ---- */

static mpt notes_height(const struct laid_step *laid)
{
    const struct paragraph *notes = &laid->body->notes;
    return (mpt)notes->line_count * NOTE_CLEAR + paragraph_height(notes);
}

static mpt headline_height(const struct laid_steps *steps)
{
    return line_pitch(ROLE_HEADLINE, steps->sizes.headline);
}

/* Of all its lines. */
static mpt headline_whole(const struct laid_steps *steps, const struct laid_step *laid)
{
    mpt lines = paragraph_height(&laid->headline->lines);
    return lines > 0 ? lines : headline_height(steps);
}

static mpt rows_height(const struct laid_step *laid)
{
    mpt height = 0;
    for (size_t r = 0; r < laid->step->row_count; r++)
        height += laid->rows[r]->height;
    return height;
}

/* Signs that stand below words keep clear of what reaches below their line. */
static mpt rows_down(const struct laid_steps *steps, const struct laid_step *laid)
{
    bool below_words = laid->step->row_count > 0 && steps->setting->signs > 1;
    mpt missing = below_words ? SIGNS_BELOW_WORDS - laid->rows[0]->signs_down : 0;
    return missing > 0 ? missing : 0;
}

static mpt step_height(const struct laid_steps *steps, const struct laid_step *laid)
{
    return headline_whole(steps, laid) + notes_height(laid) + rows_down(steps, laid) +
           rows_height(laid) + laid->body->table.height + laid->body->figures.height;
}

static void excess_raise(struct laid_steps *steps, mpt excess, struct place at)
{
    if (excess > steps->excess) {
        steps->excess = excess;
        steps->excess_at = at;
    }
}

/* ---- rows ---- */

static bool takes(const struct laid_row *laid)
{
    return laid->row->item_count <= ON_ONE_LINE_MOST && laid->over <= 0;
}

/* On one line where it may be and has room for it. */
static const struct laid_row *row_lay_as(const struct pen *pen, const struct steps_bodies *bodies,
                                         const struct card_step *step, size_t index,
                                         enum row_forms forms)
{
    if (forms != FORMS_OF_LINES) {
        const struct laid_row *one = row_in_form(pen, bodies, step, index, ROW_ON_ONE_LINE);
        if (takes(one))
            return one;
    }
    if (forms == FORMS_BARE) {
        const struct laid_row *bare = row_in_form(pen, bodies, step, index, ROW_BARE);
        if (takes(bare))
            return bare;
    }
    return row_in_form(pen, bodies, step, index, ROW_OF_LINES);
}

static bool all_on_one_line(const struct laid_row *const *rows, size_t count)
{
    for (size_t r = 0; r < count; r++)
        if (rows[r]->form == ROW_OF_LINES)
            return false;
    return true;
}

static const struct laid_row *const *step_rows_lay(const struct pen *pen, struct laid_steps *steps,
                                                   const struct steps_bodies *bodies,
                                                   const struct card_step *step)
{
    const struct laid_row **rows = arena_array(pen->arena, step->row_count, sizeof *rows);
    for (size_t r = 0; r < step->row_count; r++)
        rows[r] = row_lay_as(pen, bodies, step, r, steps->sizes.forms);
    bool apart = steps->sizes.forms == FORMS_BY_STEP && !all_on_one_line(rows, step->row_count);
    for (size_t r = 0; r < step->row_count; r++) {
        if (apart)
            rows[r] = row_in_form(pen, bodies, step, r, ROW_OF_LINES);
        excess_raise(steps, rows[r]->over, rows[r]->over_at);
    }
    return rows;
}

/* ---- the steps ---- */

static struct laid_step step_lay(const struct pen *pen, struct laid_steps *steps,
                                 const struct steps_bodies *bodies,
                                 const struct laid_headline *headline)
{
    const struct card_step *step = &sheet_steps(pen->sheet)->items[steps->count];
    const struct step_body *body = &bodies->steps[steps->count];
    struct laid_step laid = {step, headline, body, step_rows_lay(pen, steps, bodies, step)};
    if (headline->lines.line_count == 0)
        excess_raise(steps, headline->excess, step->headline.origin);
    if (step->table_count > 0)
        excess_raise(steps, body->table.excess, body->table.excess_at);
    return laid;
}

struct laid_steps steps_lay(const struct pen *pen, struct step_sizes sizes, mpt width)
{
    size_t count = sheet_steps(pen->sheet)->count;
    const struct steps_bodies *bodies = bodies_of(pen, sizes.row, width);
    const struct laid_headline *headlines = headlines_of(pen, sizes.headline,
                                                         width - step_indent(pen));
    struct laid_steps laid = {.sizes = sizes, .width = width, .excess = -width,
                              .setting = &bodies->setting};
    struct laid_step *steps = arena_array(pen->arena, count, sizeof *steps);
    for (; laid.count < count; laid.count++) {
        struct laid_step *step = &steps[laid.count];
        *step = step_lay(pen, &laid, bodies, &headlines[laid.count]);
        laid.height += step_height(&laid, step) + (laid.count > 0 ? STEP_GAP : 0);
    }
    laid.steps = steps;
    return laid;
}

/* ---- what is too long ---- */

bool steps_excess_tell(struct pen *pen, const struct laid_steps *laid)
{
    bool told = false;
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_step *step = &laid->steps[i];
        for (size_t r = 0; r < step->step->row_count; r++)
            told |= too_long_tell(pen, step->rows[r]->over_at, step->rows[r]->over,
                                  laid->sizes.row, "a line of the steps");
        told |= table_tell(pen, &step->body->table);
    }
    return told;
}

/* ---- placing ---- */

/* How much lower a disc stands beside a headline of that size than beside the smallest: the
 * first disc stands at one height on all cards. */
static mpt disc_down(const struct pen *pen, const struct laid_steps *steps)
{
    mpt floor = size_rule(pen->paper, ROLE_HEADLINE).floor;
    return (headline_height(steps) - line_pitch(ROLE_HEADLINE, floor)) / 2;
}

static void disc_place(struct pen *pen, const struct laid_steps *steps,
                       const struct card_step *step, mpt x, mpt top)
{
    mpt disc = grown(pen->paper, STEP_DISC), height = headline_height(steps);
    mpt left = x + grown(pen->paper, STEP_DISC_AT);
    struct style number = {ROLE_NUMBER, FACE_BOLD, size_rule(pen->paper, ROLE_NUMBER).floor,
                           INK_WHITE};
    const char *digits = text_format(pen->arena, "%d", step->number);
    pen_ellipse(pen, (struct area){left, top + (height - disc) / 2, disc, disc}, INK_BLACK);
    pen_text(pen, &number, left + (disc - pen_width(pen, &number, digits)) / 2,
             baseline_in(top, height, number.size), digits, strlen(digits),
             step->headline.origin);
}

static void headline_place(struct pen *pen, const struct laid_steps *steps,
                           const struct laid_step *laid, mpt x, mpt top)
{
    const struct card_text *headline = &laid->step->headline;
    mpt baseline = baseline_in(top, headline_height(steps), steps->sizes.headline);
    disc_place(pen, steps, laid->step, x, top);
    if (laid->headline->lines.line_count > 0) {
        paragraph_place(pen, &laid->headline->lines, x + step_indent(pen), top);
        return;
    }
    marked_place(pen, &laid->headline->styles, headline->text,
                 (struct point){x + step_indent(pen), baseline}, headline->origin);
}

/* `column`: from the top of the step; each row is so much higher than it need be. */
static void step_place(struct pen *pen, const struct laid_steps *steps,
                       const struct laid_step *laid, struct area column, mpt extra)
{
    const struct card_step *step = laid->step;
    mpt words = column.x + step_indent(pen), top = column.y;
    size_t outer = reading_begin(pen, READING_ENTRY);
    headline_place(pen, steps, laid, column.x, top);
    top += headline_whole(steps, laid);
    paragraph_place(pen, &laid->body->notes, words, top + NOTE_CLEAR);
    top += notes_height(laid) + rows_down(steps, laid);
    for (size_t r = 0; r < step->row_count; r++) {
        mpt height = laid->rows[r]->height + extra;
        row_place(pen, steps->setting, laid->rows[r],
                  (struct area){column.x, top, column.width, height});
        top += height;
    }
    if (step->table_count > 0)
        table_place(pen, &laid->body->table, words, top);
    figures_place(pen, &laid->body->figures, words, top + laid->body->table.height);
    reading_end(pen, outer);
}

/* How far apart steps stand, and by how much rows are higher than they need be. */
struct spread { mpt gap, row_extra; };

/* Room that is left goes to the gaps between steps and to rows, evenly, as far as still looks
 * like one list. */
static struct spread spread_over(const struct laid_steps *laid, mpt height)
{
    mpt extra = height - laid->height, rows = 0, steps = (mpt)laid->count;
    for (size_t i = 0; i < laid->count; i++)
        rows += (mpt)laid->steps[i].step->row_count;
    mpt share = steps + rows > 1 && extra > 0 ? extra / (2 * (steps - 1) + rows) : 0;
    struct spread spread = {STEP_GAP + 2 * share, share};
    if (spread.gap > STEP_GAP_MOST)
        spread.gap = STEP_GAP_MOST;
    if (share > ROW_EXTRA_MOST)
        spread.row_extra = ROW_EXTRA_MOST;
    return spread;
}

void steps_place(struct pen *pen, const struct laid_steps *laid, struct area column)
{
    struct spread spread = spread_over(laid, column.height);
    mpt right = column.x + column.width;
    column.y -= disc_down(pen, laid);
    pen->block = BLOCK_STEPS;
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_step *step = &laid->steps[i];
        step_place(pen, laid, step, column, spread.row_extra);
        column.y += step_height(laid, step) + (mpt)step->step->row_count * spread.row_extra;
        mpt middle = column.y + spread.gap / 2;
        if (i + 1 < laid->count)
            pen_line(pen, (struct point){column.x, middle}, (struct point){right, middle},
                     INK_GREY, HAIR);
        column.y += spread.gap;
    }
}
