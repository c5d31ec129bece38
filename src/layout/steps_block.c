/* steps_block.c - the steps: number disc, headline, what kills there, rows (room: layout). */
#include "steps.h"

#include "measures.h"

#include <string.h>

/* Tags of one column are equally wide. */
static mpt widest_tag(const struct pen *pen, mpt size)
{
    const struct steps_facts *steps = sheet_steps(pen->sheet);
    mpt widest = 0;
    for (size_t s = 0; s < steps->count; s++) {
        mpt width = rows_tag_width(pen, steps->items[s].rows, steps->items[s].row_count, size);
        widest = width > widest ? width : widest;
    }
    return widest;
}

/* ---- a step, laid out ---- */

static struct paragraph headline_lay(const struct pen *pen, const struct card_step *step,
                                     mpt size)
{
    struct style style = {ROLE_HEADLINE, FACE_TEXT, size, INK_BLACK};
    return paragraph_make(pen, &style, step->headline.text, ANY_WIDTH, step->headline.origin);
}

/* What kills there. The sentences of a step run on: few of them fill a line of the column. */
static struct paragraph lethal_lay(const struct pen *pen, const struct card_step *step, mpt size,
                                   mpt width)
{
    struct style bold = row_style(FACE_BOLD, size);
    struct text_builder words = text_builder_in(pen->arena);
    for (size_t i = 0; i < step->lethal_count; i++)
        text_add_format(&words, "%s%s", i == 0 ? "" : " ", step->lethal[i].text);
    return paragraph_make(pen, &bold, words.at, width, step->lethal[0].origin);
}

static mpt lethal_height(const struct laid_step *laid)
{
    return laid->step->lethal_count == 0 ? 0 : LETHAL_GAP + paragraph_height(&laid->lethal);
}

static mpt headline_height(const struct laid_steps *steps)
{
    return line_pitch(ROLE_HEADLINE, steps->sizes.headline);
}

/* Figures keep clear of a headline or a table above them, where no row stands between. */
static mpt figures_down(const struct laid_step *laid)
{
    const struct card_step *step = laid->step;
    bool below_rows = step->row_count > 0 && step->table_count == 0;
    return laid->table.height + (step->figure_count > 0 && !below_rows ? FIGURE_GAP : 0);
}

static mpt step_height(const struct laid_steps *steps, const struct laid_step *laid, mpt pitch)
{
    return headline_height(steps) + lethal_height(laid) + (mpt)laid->step->row_count * pitch +
           laid->second_lines + figures_down(laid) + laid->figures.height;
}

static void excess_raise(struct laid_steps *steps, mpt excess, struct place at)
{
    if (excess > steps->excess) {
        steps->excess = excess;
        steps->excess_at = at;
    }
}

static struct row_lines lines_of_row(const struct pen *pen, const struct laid_steps *steps,
                                 const struct card_row *row)
{
    return row_lines(pen, row, steps->sizes.row, (struct row_room){steps->tag, steps->width});
}

static struct laid_step step_lay(const struct pen *pen, struct laid_steps *steps,
                                 const struct card_step *step)
{
    mpt width = steps->width - row_indent(pen);
    struct laid_step laid = {.step = step};
    laid.headline = headline_lay(pen, step, steps->sizes.headline);
    if (step->lethal_count > 0)
        laid.lethal = lethal_lay(pen, step, steps->sizes.row, width);
    laid.table = table_lay(pen, step, steps->sizes.row, width);
    laid.figures = figures_lay(pen, step, steps->sizes.row, width);
    excess_raise(steps, line_width(&laid.headline) - width, step->headline.origin);
    for (size_t r = 0; r < step->row_count; r++) {
        struct row_lines lines = lines_of_row(pen, steps, &step->rows[r]);
        excess_raise(steps, lines.excess, step->rows[r].origin);
        laid.second_lines += lines.extra;
    }
    if (step->table_count > 0)
        excess_raise(steps, laid.table.excess, laid.table.excess_at);
    return laid;
}

struct laid_steps steps_lay(const struct pen *pen, struct step_sizes sizes, mpt width)
{
    const struct steps_facts *made_steps = sheet_steps(pen->sheet);
    struct laid_steps laid = {.sizes = sizes, .width = width, .count = made_steps->count,
                              .tag = widest_tag(pen, sizes.row), .excess = -width,
                              .pitch = row_pitch_least(pen, sizes.row)};
    struct laid_step *steps = arena_array(pen->arena, laid.count, sizeof *steps);
    for (size_t i = 0; i < laid.count; i++) {
        steps[i] = step_lay(pen, &laid, &made_steps->items[i]);
        laid.height += step_height(&laid, &steps[i], laid.pitch) + (i > 0 ? STEP_GAP : 0);
    }
    laid.steps = steps;
    return laid;
}

/* ---- what is too long ---- */

bool steps_excess_tell(struct pen *pen, const struct laid_steps *laid)
{
    mpt size = laid->sizes.row;
    bool told = false;
    for (size_t i = 0; i < laid->count; i++) {
        const struct card_step *step = laid->steps[i].step;
        for (size_t r = 0; r < step->row_count; r++)
            told |= too_long_tell(pen, step->rows[r].origin,
                                  lines_of_row(pen, laid, &step->rows[r]).excess, size,
                                  "a line of the steps");
        told |= table_tell(pen, &laid->steps[i].table);
    }
    return told;
}

/* ---- placing ---- */

static void disc_place(struct pen *pen, const struct laid_steps *steps,
                       const struct card_step *step, mpt x, mpt top)
{
    mpt disc = steps->sizes.headline, height = headline_height(steps);
    mpt floor = size_rule(pen->paper, ROLE_NUMBER).floor, digit = em_share(disc, EM_DIGIT);
    struct style number = {ROLE_NUMBER, FACE_BOLD, digit < floor ? floor : digit, INK_WHITE};
    const char *digits = text_format(pen->arena, "%d", step->number);
    struct area sign = row_sign_area(pen, x, top);
    mpt left = sign.x + (sign.width - disc) / 2;
    pen_ellipse(pen, (struct area){left, top + (height - disc) / 2, disc, disc}, INK_BLACK);
    pen_text(pen, &number, left + (disc - pen_width(pen, &number, digits)) / 2,
             baseline_in(top, height, number.size), digits, strlen(digits),
             step->headline.origin);
}

static void headline_place(struct pen *pen, const struct laid_steps *steps,
                           const struct laid_step *laid, mpt x, mpt top)
{
    disc_place(pen, steps, laid->step, x, top);
    if (laid->headline.line_count > 0)
        line_place(pen, &laid->headline, 0, x + row_indent(pen),
                   baseline_in(top, headline_height(steps), steps->sizes.headline));
}

/* `column`: from the top of the step. */
static void step_place(struct pen *pen, const struct laid_steps *steps,
                       const struct laid_step *laid, struct area column, mpt pitch)
{
    const struct card_step *step = laid->step;
    mpt words = column.x + row_indent(pen), top = column.y;
    headline_place(pen, steps, laid, column.x, top);
    top += headline_height(steps);
    if (step->lethal_count > 0)
        paragraph_place(pen, &laid->lethal, words, top + LETHAL_GAP);
    top += lethal_height(laid);
    for (size_t r = 0; r < step->row_count; r++) {
        row_place(pen, &step->rows[r], steps->sizes.row, steps->tag,
                  (struct area){column.x, top, column.width, pitch});
        top += pitch + lines_of_row(pen, steps, &step->rows[r]).extra;
    }
    if (step->table_count > 0)
        table_place(pen, &laid->table, words, top);
    figures_place(pen, &laid->figures, words, top + figures_down(laid));
}

/* How far apart steps and rows stand. */
struct spread { mpt gap, pitch; };

/* Room that is left goes to the gaps between steps and between rows, evenly, as
 * far as still looks like one list. */
static struct spread spread_over(const struct laid_steps *laid, mpt height)
{
    mpt extra = height - laid->height, rows = 0, steps = (mpt)laid->count;
    for (size_t i = 0; i < laid->count; i++)
        rows += (mpt)laid->steps[i].step->row_count;
    mpt share = steps + rows > 1 && extra > 0 ? extra / (2 * (steps - 1) + rows) : 0;
    struct spread spread = {STEP_GAP + 2 * share, laid->pitch + share};
    if (spread.gap > STEP_GAP_MOST)
        spread.gap = STEP_GAP_MOST;
    if (share > ROW_EXTRA_MOST)
        spread.pitch = laid->pitch + ROW_EXTRA_MOST;
    return spread;
}

void steps_place(struct pen *pen, const struct laid_steps *laid, struct area column)
{
    struct spread spread = spread_over(laid, column.height);
    mpt right = column.x + column.width;
    pen->block = BLOCK_STEPS;
    for (size_t i = 0; i < laid->count; i++) {
        step_place(pen, laid, &laid->steps[i], column, spread.pitch);
        column.y += step_height(laid, &laid->steps[i], spread.pitch);
        mpt middle = column.y + spread.gap / 2 + STEP_LINE_LOW;
        if (i + 1 < laid->count)
            pen_line(pen, (struct point){column.x, middle}, (struct point){right, middle},
                     INK_GREY, HAIR);
        column.y += spread.gap;
    }
}
