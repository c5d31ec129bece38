/* labels.c - which label stands where beside the plan (room: layout). Takes labels of
 * known heights, each with the box on the plan that it speaks of, and two columns; gives
 * each label its column, its height there and its leader. Pure geometry: never draws,
 * never reads a word.
 *
 * The way, in labels_arrange: choose sides and order so that the leaders are as short as
 * can be together (assignment.c); stack the labels at their true heights, which moves the
 * ports; where a leader is not clean make that pair of label and port dearer and choose
 * again. Least length alone keeps leaders from crossing, but not from passing close to a
 * foreign box. What this does not settle, labels_improve.c tries by small changes. */
#include "labels_room.h"

#include "measures.h"
#include "promise.h"

/* How often pairs of label and port are made dearer and all is chosen again, at most. */
#define ROUNDS_MOST 20

/* What a pair of label and port costs beyond its length, in heights of a column. Both are
 * far more than one leader is long, so that such a pair is taken only where the others
 * leave nothing else. ASTRAY: the port is on the other side of the boat than a place that
 * lies well off her middle line. RAISE: its leader was not clean in the round before. */
#define ASTRAY 8.0
#define RAISE 4.0

static const struct area *column_of(const struct arranging *arranging, enum label_side side)
{
    return side == LABEL_RIGHT ? &arranging->columns->right : &arranging->columns->left;
}

/* The x at which leaders arrive at a column: its edge towards the plan. */
static mpt edge_of(const struct arranging *arranging, enum label_side side)
{
    const struct area *column = column_of(arranging, side);
    return side == LABEL_RIGHT ? column->x : column->x + column->width;
}

static struct point box_middle(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

/* Where a leader leaves its box: on the side towards the label, as nearly level with the
 * label as that side allows. The corners stay free, a quarter of the height each, since a
 * leader from a corner seems to come from the neighbour. */
static struct point rim_towards(struct area box, struct point to)
{
    mpt inset = box.height / 4, low = box.y + inset, high = box.y + box.height - inset;
    struct point from = {to.x < box.x ? box.x : box.x + box.width, to.y};
    from.y = from.y < low ? low : from.y;
    from.y = from.y > high ? high : from.y;
    return from;
}

/* The height at which the leader arrives at its label: level with the box where the label
 * reaches so far, else at the nearer end of its bar. */
static mpt arrival(const struct label *label)
{
    mpt wish = box_middle(label->box).y, low = label->top + label->drop;
    mpt high = label->top + label->foot;
    wish = wish > high ? high : wish;
    return wish < low ? low : wish;
}

static double leader_length(struct area box, struct point to)
{
    return length_between(rim_towards(box, to), to);
}

/* ---- ports ---- */

/* Ports to begin with, before any label has a height: `left` and `right` of them, evenly
 * down each column. A port's number is its rank, the left column first. */
static void ports_spread(struct arranging *arranging, size_t left, size_t right)
{
    arranging->left_ports = left;
    arranging->port_count = left + right;
    for (size_t i = 0; i < left + right; i++) {
        enum label_side side = i >= left ? LABEL_RIGHT : LABEL_LEFT;
        size_t rank = side == LABEL_RIGHT ? i - left : i;
        size_t of = side == LABEL_RIGHT ? right : left;
        const struct area *column = column_of(arranging, side);
        arranging->ports[i] = (struct point){
            edge_of(arranging, side),
            column->y + (mpt)((int64_t)column->height * (int64_t)(2 * rank + 1) /
                              (int64_t)(2 * of))};
    }
}

bool label_astray(const struct arranging *arranging, const struct label *label,
                  enum label_side side)
{
    const struct area *left = &arranging->columns->left, *far = &arranging->columns->right;
    mpt off = box_middle(label->box).x - (left->x + far->x + far->width) / 2;
    if (!arranging->columns->own_side || (off > -LABEL_WELL_OFF && off < LABEL_WELL_OFF))
        return false;
    return (off > 0) != (side == LABEL_RIGHT);
}

static enum label_side port_side(const struct arranging *arranging, size_t port)
{
    return port >= arranging->left_ports ? LABEL_RIGHT : LABEL_LEFT;
}

/* What it costs to lead the label to the port, in thousandths of a point. */
static double pair_cost(const struct arranging *arranging, size_t label, size_t port)
{
    const struct label *led = &arranging->labels[label];
    double cost = leader_length(led->box, arranging->ports[port]) +
                  arranging->raised[label * arranging->port_count + port];
    if (label_astray(arranging, led, port_side(arranging, port)))
        cost += ASTRAY * (double)arranging->columns->left.height;
    return cost;
}

/* Gives each label the port by which the sum of costs is least, hence its column, and the
 * order of the labels: by port. */
static void ports_choose(struct arranging *arranging)
{
    size_t ports = arranging->port_count;
    double *at = arena_array(arranging->arena, arranging->count * ports, sizeof *at);
    for (size_t label = 0; label < arranging->count; label++)
        for (size_t port = 0; port < ports; port++)
            at[label * ports + port] = pair_cost(arranging, label, port);
    struct costs costs = {arranging->count, ports, at};
    assignment_solve(&costs, arranging->arena, arranging->chosen);
    size_t place = 0;
    for (size_t port = 0; port < ports; port++)
        for (size_t i = 0; i < arranging->count; i++)
            if (arranging->chosen[i] == port)
                arranging->order[place++] = i;
    promise(place == arranging->count);
    for (size_t i = 0; i < arranging->count; i++)
        arranging->labels[i].side = port_side(arranging, arranging->chosen[i]);
}

/* ---- heights ---- */

size_t column_count(const struct arranging *arranging, enum label_side side)
{
    size_t count = 0;
    for (size_t i = 0; i < arranging->count; i++)
        count += arranging->labels[i].side == side ? 1 : 0;
    return count;
}

mpt column_over(const struct arranging *arranging, enum label_side side)
{
    mpt height = 0;
    for (size_t i = 0; i < arranging->count; i++)
        if (arranging->labels[i].side == side)
            height += arranging->labels[i].height + arranging->columns->gap;
    return height - (height > 0 ? arranging->columns->gap : 0) -
           column_of(arranging, side)->height;
}

/* Puts labels that would overlap together into runs. Each label wishes for the top that
 * makes its leader level; `offset` is what the labels above it take, so that within a run
 * all wishes are about one number, the top of the run's first label less its offset. Two
 * runs that meet become one whose wish is the mean of both (isotonic regression by
 * pooling, Ayer et al. 1955). Gives how many runs there are; *taken is the height of the
 * whole column with a gap behind each label. */
static size_t runs_pool(const struct arranging *arranging, const size_t *order, size_t count,
                        mpt *taken)
{
    struct run_of_labels *runs = arranging->runs;
    size_t run_count = 0;
    *taken = 0;
    for (size_t i = 0; i < count; i++) {
        const struct label *label = &arranging->labels[order[i]];
        mpt wish = box_middle(label->box).y - (label->drop + label->foot) / 2 - *taken;
        struct run_of_labels run = {wish, 1};
        for (; run_count > 0 && runs[run_count - 1].wish * run.count >=
                                    run.wish * runs[run_count - 1].count; run_count--) {
            run.wish += runs[run_count - 1].wish;
            run.count += runs[run_count - 1].count;
        }
        runs[run_count++] = run;
        *taken += label->height + arranging->columns->gap;
    }
    return run_count;
}

/* Sets the tops of the labels of one column: each as near to the height of its place as
 * the others allow, all within the column. */
static void column_stack(struct arranging *arranging, const size_t *order, size_t count,
                         const struct area *column)
{
    mpt taken, before = 0, gap = arranging->columns->gap;
    size_t run_count = runs_pool(arranging, order, count, &taken), place = 0, end = 0;
    mpt low = column->y, high = column->y + column->height - (taken - gap);
    for (size_t r = 0; r < run_count; r++) {
        mpt wish = (mpt)(arranging->runs[r].wish / arranging->runs[r].count);
        wish = wish > high ? high : wish;
        wish = wish < low ? low : wish;
        for (end += (size_t)arranging->runs[r].count; place < end; place++) {
            struct label *label = &arranging->labels[order[place]];
            label->top = wish + before;
            before += label->height + gap;
        }
    }
    promise(place == count);
}

static void leader_set(struct arranging *arranging, struct label *label)
{
    label->to = (struct point){edge_of(arranging, label->side), arrival(label)};
    label->from = rim_towards(label->box, label->to);
}

void columns_stack(struct arranging *arranging)
{
    size_t left = column_count(arranging, LABEL_LEFT), count = arranging->count;
    column_stack(arranging, arranging->order, left, column_of(arranging, LABEL_LEFT));
    column_stack(arranging, arranging->order + left, count - left,
                 column_of(arranging, LABEL_RIGHT));
    arranging->port_count = count;
    arranging->left_ports = left;
    for (size_t i = 0; i < count; i++) {
        struct label *label = &arranging->labels[arranging->order[i]];
        leader_set(arranging, label);
        arranging->ports[i] = label->to;
        arranging->chosen[arranging->order[i]] = i;
    }
}

bool columns_overflow(const struct arranging *arranging)
{
    return column_over(arranging, LABEL_LEFT) > 0 || column_over(arranging, LABEL_RIGHT) > 0;
}

/* ---- what is wrong with a leader ---- */

/* Most boxes lie far from the leader: for these comparing bounds is enough, and much
 * cheaper than the distance. */
bool box_near(const struct label *led, struct area box, mpt clearance)
{
    mpt left = led->from.x < led->to.x ? led->from.x : led->to.x;
    mpt right = led->from.x > led->to.x ? led->from.x : led->to.x;
    mpt top = led->from.y < led->to.y ? led->from.y : led->to.y;
    mpt foot = led->from.y > led->to.y ? led->from.y : led->to.y;
    if (right + clearance < box.x || left - clearance > box.x + box.width ||
        foot + clearance < box.y || top - clearance > box.y + box.height)
        return false;
    return segment_to_box(led->from, led->to, box) < (double)clearance;
}

static bool boxes_hit(const struct label *labels, size_t count, size_t index, mpt clearance)
{
    for (size_t i = 0; i < count; i++)
        if (i != index && box_near(&labels[index], labels[i].box, clearance))
            return true;
    return false;
}

static bool leader_clean(const struct label *labels, size_t count, size_t index, mpt clearance)
{
    for (size_t i = 0; i < count; i++)
        if (i != index && segments_meet(labels[index].from, labels[index].to, labels[i].from,
                                        labels[i].to))
            return false;
    return !boxes_hit(labels, count, index, clearance);
}

bool labels_clean(const struct label *labels, size_t count, mpt clearance)
{
    for (size_t i = 0; i < count; i++)
        if (!leader_clean(labels, count, i, clearance))
            return false;
    return true;
}

/* ---- arranging ---- */

/* Chooses the sides: as many ports a column as there are labels, then fewer in the column
 * that overflows, until both hold the labels that were led to them. False: together they
 * are too high for both columns. */
static bool sides_choose(struct arranging *arranging)
{
    size_t left = arranging->count, right = arranging->count;
    while (left + right >= arranging->count) {
        ports_spread(arranging, left, right);
        ports_choose(arranging);
        mpt left_over = column_over(arranging, LABEL_LEFT);
        mpt right_over = column_over(arranging, LABEL_RIGHT);
        if (left_over <= 0 && right_over <= 0)
            return true;
        enum label_side shortened = right_over > left_over ? LABEL_RIGHT : LABEL_LEFT;
        size_t taken = column_count(arranging, shortened);
        if (taken == 0)
            return false;
        if (shortened == LABEL_RIGHT)
            right = taken - 1;
        else
            left = taken - 1;
    }
    return false;
}

static void costs_clear(struct arranging *arranging)
{
    for (size_t i = 0; i < arranging->count * arranging->port_count; i++)
        arranging->raised[i] = 0;
}

/* Makes dearer each pair of label and port whose leader comes too near a foreign box. */
static void costs_raise(struct arranging *arranging)
{
    double raise = RAISE * (double)arranging->columns->left.height;
    for (size_t i = 0; i < arranging->count; i++)
        if (boxes_hit(arranging->labels, arranging->count, i, arranging->columns->clearance))
            arranging->raised[i * arranging->port_count + arranging->chosen[i]] += raise;
}

/* Stacks the labels, which moves the ports to their true heights, and chooses among these
 * again until all leaders are clean. False: they never were, or a column overflows. */
static bool leaders_find(struct arranging *arranging)
{
    columns_stack(arranging);
    costs_clear(arranging);
    for (int round = 0; round < ROUNDS_MOST; round++) {
        if (labels_clean(arranging->labels, arranging->count, arranging->columns->clearance))
            return true;
        costs_raise(arranging);
        ports_choose(arranging);
        if (columns_overflow(arranging))
            return false;
        columns_stack(arranging);
    }
    return false;
}

/* How much too high all labels are for both columns together. Where it is the sharing out
 * that fails and not the sum, the least excess there can be. */
static mpt excess_of(const struct arranging *arranging)
{
    mpt height = 0;
    for (size_t i = 0; i < arranging->count; i++)
        height += arranging->labels[i].height + arranging->columns->gap;
    mpt over = height - arranging->columns->left.height - arranging->columns->right.height;
    return over > LABELS_OVER_LEAST ? over : LABELS_OVER_LEAST;
}

enum labels_found labels_arrange(struct label *labels, size_t count,
                                 const struct label_columns *columns, struct arena *arena,
                                 mpt *over)
{
    struct arranging arranging = {
        .labels = labels, .count = count, .columns = columns, .arena = arena,
        .ports = arena_array(arena, 2 * count + 1, sizeof(struct point)),
        .raised = arena_array(arena, 2 * count * count + 1, sizeof(double)),
        .chosen = arena_array(arena, count + 1, sizeof(size_t)),
        .order = arena_array(arena, count + 1, sizeof(size_t)),
        .runs = arena_array(arena, count + 1, sizeof(struct run_of_labels))};
    *over = 0;
    if (!sides_choose(&arranging)) {
        *over = excess_of(&arranging);
        return LABELS_NO_ROOM;
    }
    /* Clean leaders may still be shortened by swaps. Where they are not clean, begin again
     * from the order of height, which suits boats with many places on one side; then from
     * that order shaken. At last stack the shortest choice all the same: the tags on the
     * plan are then the key. */
    if (leaders_find(&arranging) && order_improve(&arranging))
        return LABELS_LED;
    if (order_by_height(&arranging) &&
        (order_improve(&arranging) || order_shake(&arranging)))
        return LABELS_LED;
    costs_clear(&arranging);
    sides_choose(&arranging);
    columns_stack(&arranging);
    return order_improve(&arranging) ? LABELS_LED : LABELS_KEYED;
}
