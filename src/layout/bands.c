/* bands.c - which places of a safety plan share a band, and in which list each piece of gear
 * stands (room: layout). Takes places in order; gives bands of rows. Knows no size. */
#include "bands.h"

#include "text.h"

/* What was measured lies off the middle line from here on. */
#define OFF_MIDDLE_MM 300

enum way_up plan_way_up(const struct places_facts *plan)
{
    return plan->facing == FACING_STERN ? STERN_UP : BOW_UP;
}

/* ---- which places ---- */

static bool same_zone(const struct plan_place *a, const struct plan_place *b)
{
    return a->marker.zone->family == b->marker.zone->family && a->part == b->part;
}

/* The side that all places of a band are on; SIDE_NONE: there is none. */
static enum side only_side(const struct band *band)
{
    enum side side = band->places[0].marker.side;
    for (size_t i = 1; i < band->place_count; i++)
        if (band->places[i].marker.side != side)
            return SIDE_NONE;
    return side == SIDE_PORT || side == SIDE_STARBOARD ? side : SIDE_NONE;
}

/* A platform is drawn behind her transom. */
static bool is_behind_her(const struct band *band)
{
    return band->places[0].marker.zone->to > 100;
}

static bool share_a_band(const struct band *a, const struct band *b)
{
    enum side first = only_side(a), second = only_side(b);
    return is_behind_her(a) == is_behind_her(b) && first != SIDE_NONE &&
           second != SIDE_NONE && first != second;
}

static struct band zone_band(const struct plan_place *places, size_t count)
{
    struct band band = {.places = places, .place_count = 1};
    while (band.place_count < count && same_zone(&places[0], &places[band.place_count]))
        band.place_count++;
    return band;
}

static void band_add(struct bands *bands, const struct band *band)
{
    struct band *last = bands->count > 0 ? &bands->at[bands->count - 1] : NULL;
    if (last != NULL && share_a_band(last, band))
        last->place_count += band->place_count;
    else
        bands->at[bands->count++] = *band;
}

/* ---- which list ---- */

static enum list_side list_of_side(enum side side, enum way_up up)
{
    return (side == SIDE_STARBOARD) == (up == BOW_UP) ? LIST_RIGHT : LIST_LEFT;
}

static size_t list_lines(const struct band_list *list)
{
    size_t lines = list->count;
    for (size_t i = 0; i < list->count; i++)
        lines += list->rows[i].headed ? 1 : 0;
    return lines;
}

size_t band_lines(const struct band *band)
{
    size_t left = list_lines(&band->lists[LIST_LEFT]), right = list_lines(&band->lists[LIST_RIGHT]);
    return left > right ? left : right;
}

/* Would a row of the place stand under the name that it needs? */
static bool needs_name(const struct band_list *list, const struct plan_place *place)
{
    return list->count == 0 ||
           !text_equal(list->rows[list->count - 1].place->title, place->title);
}

static enum list_side shorter_list(const struct band *band, const struct plan_place *place)
{
    const struct band_list *left = &band->lists[LIST_LEFT], *right = &band->lists[LIST_RIGHT];
    size_t with_left = list_lines(left) + needs_name(left, place);
    size_t with_right = list_lines(right) + needs_name(right, place);
    return with_left < with_right ? LIST_LEFT : LIST_RIGHT;
}

/* That of the record, else that on which it was measured. */
static enum side row_side(const struct plan_place *place, const struct plan_row *row)
{
    bool off = row->marker.y_mm > OFF_MIDDLE_MM || row->marker.y_mm < -OFF_MIDDLE_MM;
    enum side side = place->marker.side;
    if (side == SIDE_PORT || side == SIDE_STARBOARD || side == SIDE_BOTH || !row->marker.exact ||
        !off)
        return side;
    return row->marker.y_mm < 0 ? SIDE_PORT : SIDE_STARBOARD;
}

/* Into its place of the list, which is in the order along the boat. */
static void list_row_add(struct band_list *list, const struct plan_place *place,
                         const struct plan_row *row, enum way_up up)
{
    size_t at = list->count;
    bool headed = needs_name(list, place);
    while (up == STERN_UP && at > 0 && list->rows[at - 1].place == place &&
           list->rows[at - 1].row->marker.x_mm < row->marker.x_mm) {
        list->rows[at] = list->rows[at - 1];
        at--;
    }
    list->rows[at] = (struct band_row){place, row, headed};
    if (at < list->count) {
        list->rows[at].headed = list->rows[at + 1].headed;
        list->rows[at + 1].headed = false;
    }
    list->count++;
}

static void band_row_add(struct band *band, const struct plan_place *place,
                         const struct plan_row *row, enum way_up up)
{
    enum side side = row_side(place, row);
    if (side == SIDE_BOTH) {
        list_row_add(&band->lists[LIST_LEFT], place, row, up);
        list_row_add(&band->lists[LIST_RIGHT], place, row, up);
        return;
    }
    enum list_side list = side == SIDE_PORT || side == SIDE_STARBOARD
                              ? list_of_side(side, up) : shorter_list(band, place);
    list_row_add(&band->lists[list], place, row, up);
}

static bool is_amidships(const struct plan_place *place, const struct plan_row *row)
{
    enum side side = row_side(place, row);
    return side == SIDE_NONE || side == SIDE_CENTRE;
}

/* What is amidships comes last, when the lists have their lengths. */
static void lists_fill(struct band *band, enum way_up up, struct arena *arena)
{
    size_t rows = 0;
    for (size_t i = 0; i < band->place_count; i++)
        rows += band->places[i].row_count;
    for (int list = 0; list < LIST_COUNT; list++)
        band->lists[list].rows = arena_array(arena, rows, sizeof(struct band_row));
    for (int pass = 0; pass < 2; pass++)
        for (size_t i = 0; i < band->place_count; i++)
            for (size_t r = 0; r < band->places[i].row_count; r++)
                if (is_amidships(&band->places[i], &band->places[i].rows[r]) == (pass == 1))
                    band_row_add(band, &band->places[i], &band->places[i].rows[r], up);
}

/* ---- all ---- */

static void bands_turn(struct bands *bands)
{
    for (size_t i = 0; i < bands->count / 2; i++) {
        struct band band = bands->at[i];
        bands->at[i] = bands->at[bands->count - 1 - i];
        bands->at[bands->count - 1 - i] = band;
    }
}

struct bands bands_of(const struct plan_place *places, size_t count, enum way_up up,
                      struct arena *arena)
{
    struct bands bands = {arena_array(arena, count + 1, sizeof(struct band)), 0};
    for (size_t i = 0; i < count;) {
        struct band band = zone_band(places + i, count - i);
        band_add(&bands, &band);
        i += band.place_count;
    }
    for (size_t i = 0; i < bands.count; i++)
        lists_fill(&bands.at[i], up, arena);
    if (up == STERN_UP)
        bands_turn(&bands);
    return bands;
}
