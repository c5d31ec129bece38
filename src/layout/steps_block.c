/* steps_block.c - the steps: number disc, headline, rows (room: layout). */
#include "steps.h"

#include <string.h>

#define ROW_PITCH MM(7.05)
#define STEP_GAP MM(0.7)
#define LETHAL_GAP MM(0.3)      /* below the headline, whose letters reach low */
#define LINE_LOW MM(0.25)      /* a headline reaches below its height, a disc does not */
#define STEP_GAP_MOST MM(12)
#define ROW_EXTRA_MOST MM(3.5)

static struct style headline_style(mpt size)
{
    return (struct style){ROLE_HEADLINE, FACE_TEXT, size, INK_BLACK};
}

struct style row_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_ROW, face, size, INK_BLACK};
}

/* ---- tags ---- */

static struct style tag_style(mpt size)
{
    return (struct style){ROLE_ROW, FACE_BOLD, size, INK_WHITE};
}

mpt row_tag_width(const struct pen *pen, const char *tag, mpt size)
{
    struct style style = tag_style(size);
    return pen_width(pen, &style, tag) + MM(2);
}

void row_tag_place(struct pen *pen, const char *tag, mpt size, mpt x, mpt top, mpt height,
                      mpt width, struct place origin)
{
    struct style style = tag_style(size);
    mpt text_width = pen_width(pen, &style, tag);
    mpt box_height = size * 118 / 100;
    if (box_height > height - MM(0.6))
        box_height = height - MM(0.6);
    struct area box = {x, top + (height - box_height) / 2, width, box_height};
    pen_box(pen, box, INK_BLACK, INK_NONE, 0, MM(0.8));
    pen_text(pen, &style, x + (width - text_width) / 2,
             baseline_in(top, height, size), tag, strlen(tag), origin);
}

/* Tags of one column are equally wide. */
static mpt widest_tag(const struct pen *pen, mpt size)
{
    mpt widest = 0;
    for (size_t s = 0; s < pen->card->step_count; s++)
        for (size_t r = 0; r < pen->card->steps[s].row_count; r++)
            for (size_t t = 0; t < pen->card->steps[s].rows[r].tag_count; t++) {
                mpt width = row_tag_width(pen, pen->card->steps[s].rows[r].tags[t], size);
                widest = width > widest ? width : widest;
            }
    return widest;
}

/* ---- rows ---- */

static mpt row_text_start(const struct card_row *row, mpt tag)
{
    mpt tags = (mpt)row->tag_count * (tag + MM(0.7));
    return INDENT + tags + MM(0.7);
}

static mpt row_width(const struct pen *pen, const struct card_row *row, mpt size, mpt tag)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    return row_text_start(row, tag) + pen_width(pen, &bold, row->name) + MM(1.8) +
           pen_width(pen, &plain, row->where);
}

static void row_place(struct pen *pen, const struct card_row *row, mpt size, mpt tag,
                      mpt x, mpt top, mpt pitch)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    struct area sign = {x + SIGN_AT, top + (pitch - SIGN_SIDE) / 2, SIGN_SIDE, SIGN_SIDE};
    mpt baseline = baseline_in(top, pitch, size), at = x + INDENT;
    gear_sign_place(pen, sign, row->kind, size_rule(pen->paper, ROLE_PLAN_TAG).floor,
                    row->tag_count > 0 ? row->tags[0] : "?", row->origin);
    for (size_t t = 0; t < row->tag_count; t++) {
        row_tag_place(pen, row->tags[t], size, at, top, pitch, tag, row->origin);
        at += tag + MM(0.7);
    }
    at = x + row_text_start(row, tag);
    at += pen_text(pen, &bold, at, baseline, row->name, strlen(row->name), row->origin);
    pen_text(pen, &plain, at + MM(1.8), baseline, row->where, strlen(row->where),
             row->origin);
}

/* ---- steps ---- */

static mpt headline_height(mpt size)
{
    return line_pitch(ROLE_HEADLINE, size);
}

/* ---- what kills there ---- */

/* A step's lines run on: few of them fill a line of the column. */
static struct paragraph lethal_paragraph(const struct pen *pen, const struct card_step *step,
                                         mpt size, mpt width)
{
    struct style bold = row_style(FACE_BOLD, size);
    struct text_builder words = text_builder_in(pen->arena);
    for (size_t i = 0; i < step->lethal_count; i++)
        text_add_format(&words, "%s%s", i == 0 ? "" : " ", step->lethal[i].text);
    return paragraph_make(pen, &bold, words.at, width, step->lethal[0].origin);
}

static mpt lethal_height(const struct pen *pen, const struct card_step *step, mpt size,
                         mpt width)
{
    if (step->lethal_count == 0)
        return 0;
    struct paragraph words = lethal_paragraph(pen, step, size, width);
    return LETHAL_GAP + paragraph_height(&words);
}

static void lethal_place(struct pen *pen, const struct card_step *step, mpt size,
                         struct area column)
{
    if (step->lethal_count == 0)
        return;
    struct paragraph words = lethal_paragraph(pen, step, size, column.width);
    paragraph_place(pen, &words, column.x, column.y + LETHAL_GAP);
}

static mpt step_height(const struct pen *pen, const struct card_step *step,
                       struct step_sizes sizes, mpt pitch, mpt width)
{
    return headline_height(sizes.headline) + lethal_height(pen, step, sizes.row, width - INDENT) +
           (mpt)step->row_count * pitch + table_height(pen, step, sizes.row, width - INDENT) +
           figures_height(pen, step, sizes.row, width - INDENT);
}

static mpt headline_width(const struct pen *pen, const struct card_step *step, mpt size)
{
    struct style style = headline_style(size);
    struct paragraph line = paragraph_make(pen, &style, step->headline.text, MM(2000),
                                           step->headline.origin);
    return line.line_count == 0 ? 0 : line.lines[0].width;
}

static void excess_raise(mpt candidate, struct place place, mpt *excess, struct place *at)
{
    if (candidate > *excess) {
        *excess = candidate;
        *at = place;
    }
}

static void step_excess(const struct pen *pen, const struct card_step *step,
                        struct step_sizes sizes, mpt width, mpt *excess, struct place *at)
{
    mpt tag = widest_tag(pen, sizes.row);
    excess_raise(INDENT + headline_width(pen, step, sizes.headline) - width,
                 step->headline.origin, excess, at);
    for (size_t r = 0; r < step->row_count; r++)
        excess_raise(row_width(pen, &step->rows[r], sizes.row, tag) - width,
                     step->rows[r].origin, excess, at);
    if (step->table_count > 0) {
        struct place cell = {0};
        mpt over = table_excess(pen, step, sizes.row, width - INDENT, &cell);
        excess_raise(over, cell, excess, at);
    }
}

mpt steps_height(const struct pen *pen, struct step_sizes sizes, mpt width, mpt *excess,
                 struct place *excess_at)
{
    mpt height = 0;
    *excess = -width;
    for (size_t i = 0; i < pen->card->step_count; i++) {
        const struct card_step *step = &pen->card->steps[i];
        height += step_height(pen, step, sizes, ROW_PITCH, width) + (i > 0 ? STEP_GAP : 0);
        step_excess(pen, step, sizes, width, excess, excess_at);
    }
    return height;
}

/* At least one, more than less: letters are of many widths. */
static int letters_of(mpt excess, mpt size)
{
    mpt letter = size * 45 / 100;
    return (int)((excess + letter - 1) / letter);
}

bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size)
{
    int letters = letters_of(over, size);
    if (over <= 0)
        return false;
    pen_too_long(pen, origin, over,
                 text_format(pen->arena, "shorten spot, how or name of this entry by "
                             "about %d letter%s", letters, letters == 1 ? "" : "s"),
                 "a line of the steps");
    return true;
}

bool rows_tell(struct pen *pen, struct step_sizes sizes, mpt width)
{
    mpt tag = widest_tag(pen, sizes.row);
    bool told = false;
    for (size_t i = 0; i < pen->card->step_count; i++) {
        const struct card_step *step = &pen->card->steps[i];
        for (size_t r = 0; r < step->row_count; r++)
            told |= too_long_tell(pen, step->rows[r].origin,
                              row_width(pen, &step->rows[r], sizes.row, tag) - width,
                              sizes.row);
        told |= table_tell(pen, step, sizes.row, width - INDENT);
    }
    return told;
}

static void headline_place(struct pen *pen, const struct card_step *step, mpt size, mpt x,
                           mpt top)
{
    mpt height = headline_height(size), disc = size;
    struct style style = headline_style(size);
    mpt floor = size_rule(pen->paper, ROLE_NUMBER).floor, digit = size * 76 / 100;
    struct style number = {ROLE_NUMBER, FACE_BOLD, digit < floor ? floor : digit, INK_WHITE};
    const char *digits = text_format(pen->arena, "%d", step->number);
    mpt left = x + SIGN_AT + (SIGN_SIDE - disc) / 2;
    struct area circle = {left, top + (height - disc) / 2, disc, disc};
    pen_ellipse(pen, circle, INK_BLACK);
    pen_text(pen, &number, left + (disc - pen_width(pen, &number, digits)) / 2,
             baseline_in(top, height, number.size), digits, strlen(digits),
             step->headline.origin);
    struct paragraph line = paragraph_make(pen, &style, step->headline.text, MM(2000),
                                           step->headline.origin);
    if (line.line_count > 0)
        line_place(pen, &line, 0, x + INDENT, baseline_in(top, height, size));
}

static mpt step_place(struct pen *pen, const struct card_step *step, struct step_sizes sizes,
                      struct area column, mpt top, mpt pitch)
{
    mpt tag = widest_tag(pen, sizes.row);
    headline_place(pen, step, sizes.headline, column.x, top);
    top += headline_height(sizes.headline);
    struct area words = {column.x + INDENT, top, column.width - INDENT, 0};
    lethal_place(pen, step, sizes.row, words);
    top += lethal_height(pen, step, sizes.row, words.width);
    for (size_t r = 0; r < step->row_count; r++, top += pitch)
        row_place(pen, &step->rows[r], sizes.row, tag, column.x, top, pitch);
    if (step->table_count > 0)
        table_place(pen, step, sizes.row, column.x + INDENT, top, column.width - INDENT);
    top += table_height(pen, step, sizes.row, column.width - INDENT);
    return top + figures_place(pen, step, sizes.row,
                               (struct area){column.x + INDENT, top, column.width - INDENT, 0});
}

/* Room that is left goes to the gaps between steps and between rows, evenly, as
 * far as still looks like one list. */
static void spread(const struct pen *pen, struct step_sizes sizes, struct area column,
                   mpt *gap, mpt *pitch)
{
    struct place nowhere = {0};
    mpt excess;
    mpt extra = column.height - steps_height(pen, sizes, column.width, &excess, &nowhere);
    mpt rows = 0, steps = (mpt)pen->card->step_count;
    for (size_t i = 0; i < pen->card->step_count; i++)
        rows += (mpt)pen->card->steps[i].row_count;
    mpt share = steps + rows > 1 ? extra / (2 * (steps - 1) + rows) : 0;
    share = share < 0 ? 0 : share;
    *gap = STEP_GAP + 2 * share;
    *pitch = ROW_PITCH + share;
    *gap = *gap > STEP_GAP_MOST ? STEP_GAP_MOST : *gap;
    *pitch = *pitch > ROW_PITCH + ROW_EXTRA_MOST ? ROW_PITCH + ROW_EXTRA_MOST : *pitch;
}

void steps_place(struct pen *pen, struct step_sizes sizes, struct area column)
{
    mpt gap, pitch, top = column.y;
    spread(pen, sizes, column, &gap, &pitch);
    pen->block = "steps";
    for (size_t i = 0; i < pen->card->step_count; i++) {
        top = step_place(pen, &pen->card->steps[i], sizes, column, top, pitch);
        if (i + 1 < pen->card->step_count)
            pen_line(pen, (struct point){column.x, top + gap / 2 + LINE_LOW},
                     (struct point){column.x + column.width, top + gap / 2 + LINE_LOW},
                     INK_GREY, MM(0.35));
        top += gap;
    }
}
