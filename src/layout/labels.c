/* labels.c - which label stands where beside the plan (room: layout): sides and
 * order by least total length of leaders. Pure geometry; never draws. */
#include "labels_room.h"

#include "measures.h"

#define ROUNDS_MOST 20
#define ASTRAY 8.0             /* the same for a label on the other side */
#define RAISE 4.0              /* what an unwanted pair costs more, in column heights */

static const struct area *column_of(const struct arranging *arranging, bool right)
{
    return right ? &arranging->columns->right : &arranging->columns->left;
}

/* Where leaders arrive: the edge towards the plan. */
static mpt edge_of(const struct arranging *arranging, bool right)
{
    const struct area *column = column_of(arranging, right);
    return right ? column->x : column->x + column->width;
}

static struct point middle(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

/* Where a leader leaves its box: on the side towards the label, as nearly level
 * with it as the side allows. */
static struct point rim_towards(struct area box, struct point to)
{
    mpt inset = box.height / 4, low = box.y + inset, high = box.y + box.height - inset;
    struct point from = {to.x < box.x ? box.x : box.x + box.width, to.y};
    from.y = from.y < low ? low : from.y;
    from.y = from.y > high ? high : from.y;
    return from;
}

/* Level with the box, as far as the label reaches. */
static mpt arrival(const struct label *label)
{
    mpt wish = middle(label->box).y, low = label->top + label->drop;
    mpt high = label->top + label->foot;
    wish = wish > high ? high : wish;
    return wish < low ? low : wish;
}

static double leader_length(struct area box, struct point to)
{
    return length_between(rim_towards(box, to), to);
}

/* ---- ports ---- */

/* To begin with: as many of equal distance on each side. */
static void ports_spread(struct arranging *arranging, size_t left, size_t right)
{
    arranging->left_ports = left;
    arranging->port_count = left + right;
    for (size_t i = 0; i < left + right; i++) {
        bool on_right = i >= left;
        size_t rank = on_right ? i - left : i, of = on_right ? right : left;
        const struct area *column = column_of(arranging, on_right);
        arranging->ports[i] = (struct point){
            edge_of(arranging, on_right),
            column->y + (mpt)((int64_t)column->height * (int64_t)(2 * rank + 1) /
                              (int64_t)(2 * of))};
    }
}

bool label_astray(const struct arranging *arranging, const struct label *label, bool right)
{
    const struct area *left = &arranging->columns->left, *far = &arranging->columns->right;
    mpt off = middle(label->box).x - (left->x + far->x + far->width) / 2;
    if (!arranging->columns->own_side || (off > -LABEL_WELL_OFF && off < LABEL_WELL_OFF))
        return false;
    return (off > 0) != right;
}

static void ports_choose(struct arranging *arranging)
{
    size_t cells = arranging->count * arranging->port_count;
    double *at = arena_array(arranging->arena, cells, sizeof *at);
    for (size_t i = 0; i < cells; i++)
        at[i] = leader_length(arranging->labels[i / arranging->port_count].box,
                              arranging->ports[i % arranging->port_count]) +
                arranging->raised[i] +
                (label_astray(arranging, &arranging->labels[i / arranging->port_count],
                              i % arranging->port_count >= arranging->left_ports)
                     ? ASTRAY * (double)arranging->columns->left.height
                     : 0);
    struct costs costs = {arranging->count, arranging->port_count, at};
    assignment_solve(&costs, arranging->arena, arranging->chosen);
    size_t place = 0;
    for (size_t port = 0; port < arranging->port_count; port++)
        for (size_t i = 0; i < arranging->count; i++)
            if (arranging->chosen[i] == port)
                arranging->order[place++] = i;
    for (size_t i = 0; i < arranging->count; i++)
        arranging->labels[i].right = arranging->chosen[i] >= arranging->left_ports;
}

/* ---- heights ---- */

size_t column_count(const struct arranging *arranging, bool right)
{
    size_t count = 0;
    for (size_t i = 0; i < arranging->count; i++)
        count += arranging->labels[i].right == right ? 1 : 0;
    return count;
}

mpt column_over(const struct arranging *arranging, bool right)
{
    mpt height = 0;
    for (size_t i = 0; i < arranging->count; i++)
        if (arranging->labels[i].right == right)
            height += arranging->labels[i].height + arranging->columns->gap;
    return height - (height > 0 ? arranging->columns->gap : 0) -
           column_of(arranging, right)->height;
}

/* Each label as near to the height of its place as the others allow: neighbours
 * that would overlap are pooled (isotonic regression by pooling, Ayer et al.
 * 1955), then kept within the column. */
static void column_stack(struct arranging *arranging, const size_t *order, size_t count,
                         const struct area *column)
{
    struct run_of_labels *runs = arranging->runs;
    mpt offset = 0, gap = arranging->columns->gap;
    size_t run_count = 0, place = 0;
    for (size_t i = 0; i < count; i++) {
        const struct label *label = &arranging->labels[order[i]];
        mpt wish = middle(label->box).y - (label->drop + label->foot) / 2 - offset;
        struct run_of_labels run = {wish, 1, offset};
        for (; run_count > 0 && runs[run_count - 1].wish * run.count >=
                                    run.wish * runs[run_count - 1].count; run_count--) {
            run.wish += runs[run_count - 1].wish;
            run.count += runs[run_count - 1].count;
        }
        runs[run_count++] = run;
        offset += label->height + gap;
    }
    mpt low = column->y, high = column->y + column->height - (offset - gap);
    for (size_t r = 0, sum = 0; r < run_count; r++) {
        mpt wish = (mpt)(runs[r].wish / runs[r].count);
        wish = wish > high ? high : wish;
        wish = wish < low ? low : wish;
        for (sum += (size_t)runs[r].count; place < sum; place++) {
            mpt before = 0;
            for (size_t i = 0; i < place; i++)
                before += arranging->labels[order[i]].height + gap;
            arranging->labels[order[place]].top = wish + before;
        }
    }
}

static void leader_set(struct arranging *arranging, struct label *label)
{
    label->to = (struct point){edge_of(arranging, label->right), arrival(label)};
    label->from = rim_towards(label->box, label->to);
}

void columns_stack(struct arranging *arranging)
{
    size_t left = column_count(arranging, false), count = arranging->count;
    column_stack(arranging, arranging->order, left, column_of(arranging, false));
    column_stack(arranging, arranging->order + left, count - left, column_of(arranging, true));
    arranging->port_count = count;
    arranging->left_ports = left;
    for (size_t i = 0; i < count; i++) {
        struct label *label = &arranging->labels[arranging->order[i]];
        leader_set(arranging, label);
        arranging->ports[i] = label->to;
        arranging->chosen[arranging->order[i]] = i;
    }
}

/* ---- what is wrong with a leader ---- */

/* Most boxes lie far off: they are told by their bounds alone. */
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

/* Fewer ports in the column that overflows, until both hold their labels. */
static bool sides_choose(struct arranging *arranging)
{
    size_t left = arranging->count, right = arranging->count;
    while (left + right >= arranging->count) {
        ports_spread(arranging, left, right);
        ports_choose(arranging);
        mpt left_over = column_over(arranging, false), right_over = column_over(arranging, true);
        if (left_over <= 0 && right_over <= 0)
            return true;
        bool shorten_right = right_over > left_over;
        size_t taken = column_count(arranging, shorten_right);
        if (taken == 0)
            return false;
        if (shorten_right)
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

/* Every leader that is not clean costs more where it is now. */
static void costs_raise(struct arranging *arranging)
{
    double raise = RAISE * (double)arranging->columns->left.height;
    for (size_t i = 0; i < arranging->count; i++)
        if (boxes_hit(arranging->labels, arranging->count, i, arranging->columns->clearance))
            arranging->raised[i * arranging->port_count + arranging->chosen[i]] += raise;
}

/* With the labels at their true heights the ports have moved: choose anew among
 * them until the leaders are clean. */
static bool leaders_find(struct arranging *arranging)
{
    columns_stack(arranging);
    costs_clear(arranging);
    for (int round = 0; round < ROUNDS_MOST; round++) {
        if (labels_clean(arranging->labels, arranging->count, arranging->columns->clearance))
            return true;
        costs_raise(arranging);
        ports_choose(arranging);
        if (column_over(arranging, false) > 0 || column_over(arranging, true) > 0)
            return false;
        columns_stack(arranging);
    }
    return false;
}

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
