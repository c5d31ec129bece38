/* steps_block.c - the steps: number disc, headline, what kills there, rows (room: layout). */
#include "steps.h"

#include "measures.h"

#include <string.h>

struct style row_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_ROW, face, size, INK_BLACK};
}

mpt step_indent(const struct pen *pen)
{
    return grown(pen->paper, STEP_INDENT);
}

struct area step_sign_area(const struct pen *pen, mpt x, mpt top)
{
    mpt side = grown(pen->paper, GEAR_SIGN);
    return (struct area){x + grown(pen->paper, STEP_SIGN_AT), top, side, side};
}

/* ---- tags ---- */

static struct style row_tag_style(mpt size)
{
    return (struct style){ROLE_ROW, FACE_BOLD, size, INK_WHITE};
}

mpt row_tag_width(const struct pen *pen, const char *tag, mpt size)
{
    struct style style = row_tag_style(size);
    return pen_width(pen, &style, tag) + ROW_TAG_PAD;
}

void row_tag_place(struct pen *pen, const char *tag, mpt size, struct area area,
                   struct place origin)
{
    struct style style = row_tag_style(size);
    mpt height = em_share(size, EM_TAG_BOX), most = area.height - ROW_TAG_SLACK;
    mpt x = area.x + (area.width - pen_width(pen, &style, tag)) / 2;
    mpt baseline = baseline_in(area.y, area.height, size);
    struct area box = area;
    box.height = height > most ? most : height;
    box.y += (area.height - box.height) / 2;
    pen_box(pen, box, INK_BLACK, INK_NONE, 0, TAG_CORNER);
    pen_text(pen, &style, x, baseline, tag, strlen(tag), origin);
}

/* Tags of one column are equally wide. */
static mpt widest_tag(const struct pen *pen, mpt size)
{
    const struct steps_facts *steps = sheet_steps(pen->sheet);
    mpt widest = 0;
    for (size_t s = 0; s < steps->count; s++)
        for (size_t r = 0; r < steps->items[s].row_count; r++)
            for (size_t t = 0; t < steps->items[s].rows[r].tag_count; t++) {
                mpt width = row_tag_width(pen, steps->items[s].rows[r].tags[t], size);
                widest = width > widest ? width : widest;
            }
    return widest;
}

/* ---- rows ---- */

static mpt row_text_start(const struct pen *pen, const struct card_row *row, mpt tag)
{
    return step_indent(pen) + (mpt)row->tag_count * (tag + ROW_TAG_GAP) + ROW_TAG_GAP;
}

static mpt row_width(const struct pen *pen, const struct card_row *row, mpt size, mpt tag)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    return row_text_start(pen, row, tag) + pen_width(pen, &bold, row->name) + ROW_WHERE_GAP +
           pen_width(pen, &plain, row->where);
}

/* From row to row at least: for the sign, or the tag in its box where that is higher. */
static mpt row_pitch(const struct laid_steps *laid)
{
    mpt tag = em_share(laid->sizes.row, EM_TAG_BOX) + ROW_TAG_SLACK;
    return tag > laid->sign_pitch ? tag : laid->sign_pitch;
}

/* `line`: from the column's left edge, as high as the pitch. */
static void row_place(struct pen *pen, const struct card_row *row, mpt size, mpt tag,
                      struct area line)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    struct area sign = step_sign_area(pen, line.x, line.y);
    struct area box = {line.x + step_indent(pen), line.y, tag, line.height};
    mpt baseline = baseline_in(line.y, line.height, size);
    sign.y += (line.height - sign.height) / 2;
    gear_sign_place(pen, sign, row->kind, size_rule(pen->paper, ROLE_PLAN_TAG).floor,
                    row->tag_count > 0 ? row->tags[0] : "?", row->origin);
    for (size_t t = 0; t < row->tag_count; t++) {
        row_tag_place(pen, row->tags[t], size, box, row->origin);
        box.x += tag + ROW_TAG_GAP;
    }
    mpt at = line.x + row_text_start(pen, row, tag);
    at += pen_text(pen, &bold, at, baseline, row->name, strlen(row->name), row->origin);
    pen_text(pen, &plain, at + ROW_WHERE_GAP, baseline, row->where, strlen(row->where),
             row->origin);
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
           figures_down(laid) + laid->figures.height;
}

static void excess_raise(struct laid_steps *steps, mpt excess, struct place at)
{
    if (excess > steps->excess) {
        steps->excess = excess;
        steps->excess_at = at;
    }
}

static struct laid_step step_lay(const struct pen *pen, struct laid_steps *steps,
                                 const struct card_step *step)
{
    mpt width = steps->width - step_indent(pen);
    struct laid_step laid = {.step = step};
    laid.headline = headline_lay(pen, step, steps->sizes.headline);
    if (step->lethal_count > 0)
        laid.lethal = lethal_lay(pen, step, steps->sizes.row, width);
    laid.table = table_lay(pen, step, steps->sizes.row, width);
    laid.figures = figures_lay(pen, step, steps->sizes.row, width);
    excess_raise(steps, line_width(&laid.headline) - width, step->headline.origin);
    for (size_t r = 0; r < step->row_count; r++)
        excess_raise(steps, row_width(pen, &step->rows[r], steps->sizes.row, steps->tag) -
                                steps->width, step->rows[r].origin);
    if (step->table_count > 0)
        excess_raise(steps, laid.table.excess, laid.table.excess_at);
    return laid;
}

struct laid_steps steps_lay(const struct pen *pen, struct step_sizes sizes, mpt width)
{
    const struct steps_facts *made_steps = sheet_steps(pen->sheet);
    struct laid_steps laid = {.sizes = sizes, .width = width, .count = made_steps->count,
                              .tag = widest_tag(pen, sizes.row), .excess = -width,
                              .sign_pitch = grown(pen->paper, ROW_PITCH)};
    struct laid_step *steps = arena_array(pen->arena, laid.count, sizeof *steps);
    for (size_t i = 0; i < laid.count; i++) {
        steps[i] = step_lay(pen, &laid, &made_steps->items[i]);
        laid.height += step_height(&laid, &steps[i], row_pitch(&laid)) + (i > 0 ? STEP_GAP : 0);
    }
    laid.steps = steps;
    return laid;
}

/* ---- what is too long ---- */

/* At least one, more than less: letters are of many widths. */
static int letters_of(mpt excess, mpt size)
{
    mpt letter = em_share(size, EM_LETTER);
    return (int)((excess + letter - 1) / letter);
}

bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size)
{
    int letters = letters_of(over, size);
    if (over <= 0)
        return false;
    pen_too_long(pen, origin, over,
                 text_format(pen->arena, "shorten spot, how or name of this entry by about %d "
                             "letter%s", letters, letters == 1 ? "" : "s"),
                 "a line of the steps");
    return true;
}

bool steps_excess_tell(struct pen *pen, const struct laid_steps *laid)
{
    mpt size = laid->sizes.row;
    bool told = false;
    for (size_t i = 0; i < laid->count; i++) {
        const struct card_step *step = laid->steps[i].step;
        for (size_t r = 0; r < step->row_count; r++)
            told |= too_long_tell(pen, step->rows[r].origin,
                                  row_width(pen, &step->rows[r], size, laid->tag) - laid->width,
                                  size);
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
    struct area sign = step_sign_area(pen, x, top);
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
        line_place(pen, &laid->headline, 0, x + step_indent(pen),
                   baseline_in(top, headline_height(steps), steps->sizes.headline));
}

/* `column`: from the top of the step. */
static void step_place(struct pen *pen, const struct laid_steps *steps,
                       const struct laid_step *laid, struct area column, mpt pitch)
{
    const struct card_step *step = laid->step;
    mpt words = column.x + step_indent(pen), top = column.y;
    headline_place(pen, steps, laid, column.x, top);
    top += headline_height(steps);
    if (step->lethal_count > 0)
        paragraph_place(pen, &laid->lethal, words, top + LETHAL_GAP);
    top += lethal_height(laid);
    for (size_t r = 0; r < step->row_count; r++, top += pitch)
        row_place(pen, &step->rows[r], steps->sizes.row, steps->tag,
                  (struct area){column.x, top, column.width, pitch});
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
    struct spread spread = {STEP_GAP + 2 * share, row_pitch(laid) + share};
    if (spread.gap > STEP_GAP_MOST)
        spread.gap = STEP_GAP_MOST;
    if (share > ROW_EXTRA_MOST)
        spread.pitch = row_pitch(laid) + ROW_EXTRA_MOST;
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
