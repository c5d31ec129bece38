/* table_block.c - the table of openings under a step: port beside starboard, each place once and
 * its openings behind it, set closer than rows (room: layout). It cuts no words: what is too
 * long is told. */
#include "steps.h"

#include "measures.h"
#include "row_flow.h"
#include "text.h"

#define TABLE_COLUMNS 2

/* A head, or the openings of a place, in a column. */
struct laid_openings {
    const struct card_row *row;   /* NULL: a head */
    const char *head;
    size_t group;                 /* of the step */
    size_t column;
    mpt down;                     /* from the table's top */
    mpt over;                     /* how far it passes its column */
    struct place origin;
};

/* The table while it is laid out: each column is filled down to there. */
struct filling {
    const struct pen *pen;
    struct laid_table *laid;
    struct laid_openings *parts;
    mpt downs[TABLE_COLUMNS];
};

static mpt table_size(const struct pen *pen, mpt row_size)
{
    mpt aim = size_rule(pen->paper, ROLE_TABLE).aim;
    return row_size > aim ? aim : row_size;
}

static mpt table_pitch(const struct laid_table *laid)
{
    return line_pitch(ROLE_TABLE, laid->setting.size);
}

static mpt column_at(const struct laid_table *laid, size_t column)
{
    return (mpt)column * (laid->setting.width + TABLE_COLUMN_GAP);
}

/* ---- laying out ---- */

static struct row_flow openings_flow(const struct pen *pen, struct pen *on,
                                     const struct laid_table *laid)
{
    return (struct row_flow){.pen = pen, .on = on, .setting = &laid->setting,
                             .form = ROW_RUNNING, .right = laid->setting.width};
}

static struct marked_styles head_styles(mpt size)
{
    return (struct marked_styles){row_style(FACE_TEXT, size), row_style(FACE_BOLD, size)};
}

static struct laid_openings *openings_part_add(struct filling *filling,
                                               const struct opening_group *group, size_t column)
{
    struct laid_openings *part = &filling->parts[filling->laid->count++];
    *part = (struct laid_openings){.group = (size_t)(group - filling->laid->step->table),
                                   .column = column, .down = filling->downs[column]};
    return part;
}

static void head_fill(struct filling *filling, const struct opening_group *group, size_t column,
                      mpt room)
{
    const struct laid_table *laid = filling->laid;
    struct marked_styles styles = head_styles(laid->setting.size);
    struct laid_openings *part = openings_part_add(filling, group, column);
    part->head = group->head;
    part->origin = group->rows[0].origin;
    part->over = marked_width(filling->pen, &styles, group->head) - room;
    filling->downs[column] += table_pitch(laid);
}

static void openings_fill(struct filling *filling, const struct opening_group *group,
                          size_t index, size_t column)
{
    const struct card_row *row = &group->rows[index];
    struct row_flow flow = openings_flow(filling->pen, NULL, filling->laid);
    struct laid_openings *part = openings_part_add(filling, group, column);
    row_flow_run(&flow, row, (struct point){0, 0}, 0);
    part->row = row;
    part->origin = flow.over_at;
    part->over = flow.over;
    filling->downs[column] += (mpt)flow.item_lines * table_pitch(filling->laid);
}

static void columns_level(struct filling *filling)
{
    mpt low = filling->downs[0] > filling->downs[1] ? filling->downs[0] : filling->downs[1];
    filling->downs[0] = filling->downs[1] = low;
}

/* Its first half down the left column, the second down the right one, under one head. */
static void group_fill(struct filling *filling, const struct opening_group *group)
{
    size_t half = (group->row_count + 1) / 2;
    columns_level(filling);
    head_fill(filling, group, 0, column_at(filling->laid, TABLE_COLUMNS) - TABLE_COLUMN_GAP);
    columns_level(filling);
    for (size_t r = 0; r < group->row_count; r++)
        openings_fill(filling, group, r, r < half ? 0 : 1);
}

static bool has_place(const struct opening_group *group, size_t from, const char *place)
{
    for (size_t r = from; r < group->row_count; r++)
        if (text_equal(group->rows[r].place, place))
            return true;
    return false;
}

/* A place that both hulls have begins on one line in both columns. */
static void hulls_fill(struct filling *filling, const struct opening_group *port,
                       const struct opening_group *starboard)
{
    size_t right = 0;
    for (size_t left = 0; left < port->row_count; left++) {
        const char *place = port->rows[left].place;
        bool shared = has_place(starboard, right, place);
        while (shared && !text_equal(place, starboard->rows[right].place))
            openings_fill(filling, starboard, right++, 1);
        if (shared)
            columns_level(filling);
        openings_fill(filling, port, left, 0);
        if (shared)
            openings_fill(filling, starboard, right++, 1);
    }
    for (; right < starboard->row_count; right++)
        openings_fill(filling, starboard, right, 1);
}

static void sides_fill(struct filling *filling, const struct opening_group *port,
                       const struct opening_group *starboard)
{
    head_fill(filling, port, 0, filling->laid->setting.width);
    head_fill(filling, starboard, 1, filling->laid->setting.width);
    if (filling->pen->sheet->boat->catamaran) {
        hulls_fill(filling, port, starboard);
        return;
    }
    for (size_t r = 0; r < port->row_count; r++)
        openings_fill(filling, port, r, 0);
    for (size_t r = 0; r < starboard->row_count; r++)
        openings_fill(filling, starboard, r, 1);
}

static void table_fill(struct filling *filling, const struct card_step *step)
{
    size_t first = 0;
    if (step->table_count > 1 && step->table[0].side == SIDE_PORT &&
        step->table[1].side == SIDE_STARBOARD) {
        sides_fill(filling, &step->table[0], &step->table[1]);
        first = 2;
    }
    for (size_t g = first; g < step->table_count; g++)
        group_fill(filling, &step->table[g]);
    columns_level(filling);
}

/* ---- the whole ---- */

/* Heads and rows. */
static size_t parts_most(const struct card_step *step)
{
    size_t most = step->table_count;
    for (size_t g = 0; g < step->table_count; g++)
        most += step->table[g].row_count;
    return most;
}

static struct row_setting table_setting(const struct pen *pen, const struct card_step *step,
                                        mpt row_size, mpt width)
{
    struct row_setting setting = row_setting_make(pen, table_size(pen, row_size),
                                                  (width - TABLE_COLUMN_GAP) / TABLE_COLUMNS);
    setting.place_size = setting.size;
    for (size_t g = 0; g < step->table_count; g++)
        row_setting_widen(pen, &setting, step->table[g].rows, step->table[g].row_count);
    return setting;
}

struct laid_table table_lay(const struct pen *pen, const struct card_step *step, mpt row_size,
                            mpt width)
{
    struct laid_table laid = {.step = step, .excess = -width};
    if (step->table_count == 0)
        return laid;
    struct filling filling = {.pen = pen, .laid = &laid};
    filling.parts = arena_array(pen->arena, parts_most(step), sizeof *filling.parts);
    laid.setting = table_setting(pen, step, row_size, width);
    table_fill(&filling, step);
    laid.parts = filling.parts;
    laid.height = filling.downs[0];
    for (size_t i = 0; i < laid.count; i++)
        if (laid.parts[i].over > laid.excess) {
            laid.excess = laid.parts[i].over;
            laid.excess_at = laid.parts[i].origin;
        }
    return laid;
}

bool table_tell(struct pen *pen, const struct laid_table *laid)
{
    bool told = false;
    for (size_t i = 0; i < laid->count; i++)
        told |= too_long_tell(pen, laid->parts[i].origin, laid->parts[i].over,
                              laid->setting.size, "a line of the steps");
    return told;
}

/* ---- placing ---- */

static void openings_part_place(struct pen *pen, const struct laid_table *laid,
                                const struct laid_openings *part, struct point at)
{
    struct marked_styles styles = head_styles(laid->setting.size);
    struct row_flow flow = openings_flow(pen, pen, laid);
    if (part->row != NULL) {
        size_t outer = reading_begin(pen, READING_LINE);
        row_flow_run(&flow, part->row, at, 0);
        reading_end(pen, outer);
        return;
    }
    at.y = baseline_in(at.y, table_pitch(laid), laid->setting.size);
    marked_place(pen, &styles, part->head, at, laid->step->headline.origin);
}

/* What is read of each group: one is read to its end before the next. */
static size_t *groups_begin(struct pen *pen, const struct card_step *step)
{
    size_t *groups = arena_array(pen->arena, step->table_count, sizeof *groups);
    for (size_t g = 0; g < step->table_count; g++) {
        size_t outer = reading_begin(pen, READING_GROUP);
        groups[g] = reading_part_open(pen);
        reading_end(pen, outer);
    }
    return groups;
}

void table_place(struct pen *pen, const struct laid_table *laid, mpt x, mpt top)
{
    struct area sign = row_sign_area(pen, x - step_indent(pen), top + TABLE_SIGN_DOWN);
    size_t *groups = groups_begin(pen, laid->step);
    pen_symbol(pen, sign, laid->step->table_kind->symbol, laid->step->headline.origin);
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_openings *part = &laid->parts[i];
        size_t outer = reading_resume(pen, groups[part->group]);
        openings_part_place(pen, laid, part, (struct point){x + column_at(laid, part->column),
                                                            top + part->down});
        reading_end(pen, outer);
    }
}
