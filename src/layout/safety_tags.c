/* safety_tags.c - on the safety plan's boat: the tags of each place together,
 * and the mark of where the card hangs (room: layout). */
#include "geometry.h"

#include "measures.h"
#include "safety.h"

#include <string.h>

#define COLUMNS_MOST 4

static struct style tag_style(mpt size)
{
    return (struct style){ROLE_PLAN_TAG, FACE_BOLD, size, INK_WHITE};
}

static size_t chips_of(const struct plan_place *place)
{
    size_t count = 0;
    for (size_t i = 0; i < place->row_count; i++)
        count += place->rows[i].chip_count;
    return count;
}

static const char *chip_at(const struct plan_place *place, size_t index, struct place *origin)
{
    for (size_t i = 0; i < place->row_count; i++) {
        *origin = place->rows[i].origin;
        if (index < place->rows[i].chip_count)
            return place->rows[i].chips[index];
        index -= place->rows[i].chip_count;
    }
    return "";
}

static mpt cell_width(const struct pen *pen, const struct plan_place *place, mpt size)
{
    struct style style = tag_style(size);
    struct place origin;
    bool round = place->marker.level == LEVEL_BELOW;
    mpt widest = 0, pad = round ? GROUP_TAG_PADS_ROUND : GROUP_TAG_PADS;
    for (size_t i = 0; i < chips_of(place); i++) {
        mpt width = pen_width(pen, &style, chip_at(place, i, &origin)) + pad;
        widest = width > widest ? width : widest;
    }
    return widest;
}

static mpt cell_height(mpt size)
{
    return em_share(size, EM_TAG_BOX);
}

static size_t lines_of(size_t chips, size_t columns)
{
    return (chips + columns - 1) / columns;
}

/* ---- spots ---- */

static struct tag_group group_in(const struct pen *pen, const struct plan_place *place,
                                 size_t columns, mpt size)
{
    size_t chips = chips_of(place);
    struct tag_group group = {.columns = columns, .size = size,
                              .cell = cell_width(pen, place, size)};
    mpt pad = chips > 1 ? GROUP_PAD : 0, lines = (mpt)lines_of(chips, columns);
    group.box.width = (mpt)columns * (group.cell + GROUP_TAG_GAP) - GROUP_TAG_GAP + 2 * pad;
    group.box.height = lines * (cell_height(size) + GROUP_TAG_GAP) - GROUP_TAG_GAP + 2 * pad;
    return group;
}

static struct tag_group mark_find(const struct hull_view *view, const struct plan_place *place,
                                  const struct taken *taken)
{
    struct tag_group group = {.compact = true};
    mpt width = place->marker.level == LEVEL_BELOW ? GROUP_MARK * 3 / 2 : GROUP_MARK;
    group.found = spot_find(view, &place->marker, width, GROUP_MARK, taken, &group.box);
    return group;
}

size_t marks_give_up(const struct places_facts *safety, struct tag_group *groups)
{
    size_t given_up = 0;
    for (size_t i = 0; i < safety->count; i++)
        if (groups[i].found && groups[i].compact) {
            groups[i].found = false;
            given_up++;
        }
    return given_up;
}

/* Of the ways to stack the chips the one that stays nearest to its place. */
static struct tag_group group_find(const struct pen *pen, const struct hull_view *view,
                                   const struct plan_place *place, mpt size,
                                   const struct taken *taken)
{
    struct tag_group best = {.found = false};
    size_t chips = chips_of(place);
    mpt best_drift = 0;
    for (size_t columns = 1; columns <= COLUMNS_MOST && columns <= chips; columns++) {
        struct tag_group group = group_in(pen, place, columns, size);
        struct area box;
        if (lines_of(chips, columns) > 5 ||
            !spot_find(view, &place->marker, group.box.width, group.box.height, taken, &box))
            continue;
        mpt drift = spot_drift(view, &place->marker, box);
        if (best.found && drift >= best_drift)
            continue;
        group.box = box;
        group.found = true;
        best = group;
        best_drift = drift;
    }
    return best;
}

static void here_find(const struct places_facts *safety, const struct hull_view *view,
                      struct taken *taken, struct tag_group *group)
{
    group->found = spot_find(view, &safety->here, HERE_MARK, HERE_MARK, taken, &group->box);
    if (group->found)
        taken->areas[taken->count++] = group->box;
}

/* Exact places first, so that only the others move; then the larger groups. */
static size_t groups_at(const struct pen *pen, const struct hull_view *view, mpt size,
                        size_t most, struct tag_group *groups, mpt *drift)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    size_t room = safety->count + 1, placed = 0;
    struct taken taken = {arena_array(pen->arena, room, sizeof(struct area)), 0,
                          GROUP_GAP};
    *drift = 0;
    for (int pass = 0; pass < 3; pass++)
        for (size_t i = 0; i < safety->count; i++) {
            const struct plan_place *place = &safety->places[i];
            int own = place->marker.exact ? 0 : chips_of(place) > 2 ? 1 : 2;
            if (own != pass)
                continue;
            groups[i] = chips_of(place) > most ? mark_find(view, place, &taken)
                                               : group_find(pen, view, place, size, &taken);
            if (!groups[i].found)
                continue;
            mpt off = spot_drift(view, &place->marker, groups[i].box);
            *drift = off > *drift ? off : *drift;
            taken.areas[taken.count++] = groups[i].box;
            placed++;
        }
    if (safety->here_given)
        here_find(safety, view, &taken, &groups[safety->count]);
    return placed;
}

struct tag_group *tag_groups_find(struct pen *pen, const struct hull_view *view,
                                  size_t most, size_t *placed)
{
    size_t room = sheet_places(pen->sheet)->count + 1;
    struct size_rule rule = size_rule(pen->paper, ROLE_PLAN_TAG);
    struct tag_group *aim = arena_array(pen->arena, room, sizeof *aim);
    struct tag_group *least = arena_array(pen->arena, room, sizeof *least);
    mpt aim_drift, least_drift;
    size_t aim_placed = groups_at(pen, view, rule.aim, most, aim, &aim_drift);
    size_t least_placed = groups_at(pen, view, rule.floor, most, least, &least_drift);
    bool small = least_placed > aim_placed ||
                 (least_placed == aim_placed && least_drift + TAG_DRIFT_GAIN < aim_drift);
    *placed = small ? least_placed : aim_placed;
    return small ? least : aim;
}

/* ---- what is not where it belongs ---- */

static struct point middle(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

static bool covers(struct area box, struct point point)
{
    return point.x >= box.x && point.x <= box.x + box.width && point.y >= box.y &&
           point.y <= box.y + box.height;
}

/* A dot beside the boat would show a place that is not there: the crossbeams of a
 * catamaran are drawn within what their zones span. */
static bool place_is_shown(const struct hull_view *view, struct point place, struct area box)
{
    return !covers(box, place) && hull_holds(view, box_at(place, 0, 0));
}

/* Part of it lies in another hull than its place, or on the bridge deck. */
static bool spills_over(const struct hull_view *view, struct point place, struct area box)
{
    struct point left = {box.x, middle(box).y}, right = {box.x + box.width, middle(box).y};
    int body = hull_body(view, place);
    return hull_body(view, left) != body || hull_body(view, right) != body;
}

/* Others lie between the tags and their place. */
static bool place_is_hidden(const struct places_facts *safety, const struct hull_view *view,
                            const struct tag_group *groups, size_t index)
{
    struct point place = hull_point(view, &safety->places[index].marker);
    size_t count = safety->count + (safety->here_given ? 1 : 0);
    if (!place_is_shown(view, place, groups[index].box))
        return false;
    for (size_t i = 0; i < count; i++)
        if (i != index && groups[i].found &&
            segment_to_box(middle(groups[index].box), place, groups[i].box) < PLACE_DOT / 2)
            return true;
    return false;
}

size_t tag_groups_lost(const struct places_facts *safety, const struct hull_view *view,
                       const struct tag_group *groups)
{
    size_t lost = 0;
    for (size_t i = 0; i < safety->count; i++) {
        struct point place = hull_point(view, &safety->places[i].marker);
        if (groups[i].found)
            lost += spills_over(view, place, groups[i].box) ||
                    place_is_hidden(safety, view, groups, i);
    }
    return lost;
}

/* ---- drawing ---- */

void tag_chip_draw(struct pen *pen, struct area box, enum level level, const char *tag,
                   const struct style *style, struct place origin)
{
    mpt width = pen_width(pen, style, tag);
    pen_box(pen, box, INK_BLACK, INK_WHITE, TAG_RIM,
            level == LEVEL_BELOW ? box.height / 2 : 0);
    pen_text(pen, style, box.x + (box.width - width) / 2,
             baseline_in(box.y, box.height, style->size), tag, strlen(tag), origin);
}

void tag_group_draw(struct pen *pen, const struct plan_place *place,
                    const struct tag_group *group)
{
    struct style style = tag_style(group->size);
    size_t chips = group->compact ? 0 : chips_of(place);
    mpt pad = chips > 1 ? GROUP_PAD : 0;
    if (group->compact)
        pen_box(pen, group->box, INK_BLACK, INK_WHITE, TAG_RIM,
                place->marker.level == LEVEL_BELOW ? group->box.height / 2 : 0);
    if (chips > 1)
        pen_box(pen, group->box, INK_WHITE, INK_BLACK, HAIR, TAG_CORNER);
    for (size_t i = 0; i < chips; i++) {
        struct place origin;
        const char *chip = chip_at(place, i, &origin);
        mpt x = group->box.x + pad + (mpt)(i % group->columns) * (group->cell + GROUP_TAG_GAP);
        mpt y = group->box.y + pad +
                (mpt)(i / group->columns) * (cell_height(group->size) + GROUP_TAG_GAP);
        tag_chip_draw(pen, (struct area){x, y, group->cell, cell_height(group->size)},
                      place->marker.level, chip, &style, origin);
    }
}

/* A ring with a wedge that points the way its reader looks. */
void here_mark_draw(struct pen *pen, struct area box, enum facing facing)
{
    static const struct point tips[] = {[FACING_BOW] = {0, -1}, [FACING_STARBOARD] = {1, 0},
                                        [FACING_STERN] = {0, 1}, [FACING_PORT] = {-1, 0}};
    struct point tip = tips[facing], centre = middle(box);
    mpt inner = box.width * 30 / 100, out = box.width / 2, half = box.width * 22 / 100;
    struct area ring = {centre.x - inner, centre.y - inner, 2 * inner, 2 * inner};
    struct path_step *steps = arena_array(pen->arena, 4, sizeof *steps);
    struct point base = {centre.x + tip.x * inner / 2, centre.y + tip.y * inner / 2};
    steps[0] = (struct path_step){.verb = PATH_MOVE,
                                  .to = {centre.x + tip.x * out, centre.y + tip.y * out}};
    steps[1] = (struct path_step){.verb = PATH_LINE,
                                  .to = {base.x + tip.y * half, base.y + tip.x * half}};
    steps[2] = (struct path_step){.verb = PATH_LINE,
                                  .to = {base.x - tip.y * half, base.y - tip.x * half}};
    steps[3] = (struct path_step){.verb = PATH_CLOSE};
    pen_ellipse(pen, box, INK_WHITE);
    pen_box(pen, ring, INK_WHITE, INK_BLACK, HERE_RING, inner);
    pen_path(pen, steps, 4, INK_BLACK, INK_WHITE, HERE_RIM);
    pen_ellipse(pen, (struct area){centre.x - HALF_HERE_DOT, centre.y - HALF_HERE_DOT, HERE_DOT,
                                    HERE_DOT},
                INK_BLACK);
}

struct area true_place_area(const struct hull_view *view, const struct marker *marker,
                            struct area box)
{
    struct point at = hull_point(view, marker), centre = middle(box);
    mpt x = at.x < centre.x ? at.x : centre.x, y = at.y < centre.y ? at.y : centre.y;
    mpt width = at.x + centre.x - 2 * x, height = at.y + centre.y - 2 * y;
    if (!place_is_shown(view, at, box))
        return (struct area){at.x, at.y, 0, 0};
    return (struct area){x - PLACE_DOT / 2, y - PLACE_DOT / 2, width + PLACE_DOT,
                         height + PLACE_DOT};
}

static bool leader_is_met(const struct pen *pen, struct point from, struct point to)
{
    for (size_t i = 0; i < pen->count; i++) {
        const struct page_item *item = &pen->items[i];
        if (item->kind == PAGE_LINE && item->part == PART_LEADER && item->stroke == INK_BLACK &&
            segments_meet(from, to, item->from, item->to))
            return true;
    }
    return false;
}

void true_place_draw(struct pen *pen, const struct hull_view *view,
                     const struct tag_group *groups, size_t index)
{
    const struct places_facts *safety = sheet_places(pen->sheet);
    struct point at = hull_point(view, &safety->places[index].marker);
    struct area box = groups[index].box;
    if (!place_is_shown(view, at, box) || place_is_hidden(safety, view, groups, index) ||
        leader_is_met(pen, middle(box), at))
        return;
    pen_line(pen, middle(box), at, INK_BLACK, HAIR);
    pen_part(pen, PART_LEADER);
    pen_ellipse(pen, box_at(at, PLACE_DOT, PLACE_DOT), INK_BLACK);
}
