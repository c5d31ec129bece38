/* places.c - the places of each kind of boat, one a row, and drawing one of them. */
#include "places.h"
#include "spots.h"

#include "zone_list.h"

#include <string.h>

#define ROW(role, zone, needs, never, form, spots) \
    {ROLE_##role, zone, needs, never, SIDE_FORM_##form, spots}

static const struct place_row place_rows[] = {
    ROW(COCKPIT, "cockpit", FACT(CABIN), 0, ANY, spots_cockpit),
    ROW(COCKPIT, "cockpit", FACT(OPEN), 0, ANY, spots_open),
    ROW(HELM, "cockpit", FACT(CABIN), FACT(FLYBRIDGE), EITHER, spots_cockpit),
    ROW(HELM, "cockpit", FACT(OPEN), 0, ANY, spots_open),
    ROW(HELM, "flybridge", FACT(FLYBRIDGE), 0, EITHER, spots_few),
    ROW(LOCKER, "cockpit_locker", 0, 0, EITHER, spots_locker),
    ROW(LOCKER, "lazarette", FACT(CABIN), FACT(CATAMARAN), EITHER, spots_locker),
    ROW(DOOR, "companionway", FACT(DOOR), 0, ANY, spots_door),
    ROW(DOOR, "bridgedeck", FACT(BRIDGE_DECK), 0, EITHER, spots_door),
    ROW(DOOR, "saloon", FACT(MOTOR) | FACT(SALOON), 0, EITHER, spots_door),
    ROW(DOOR, "cockpit", FACT(OPEN), 0, ANY, spots_open),
    ROW(SALOON, "saloon", FACT(SALOON), 0, ANY, spots_room),
    ROW(SALOON, "bridgedeck", FACT(BRIDGE_DECK), 0, EITHER, spots_room),
    ROW(GALLEY, "galley", FACT(GALLEY), 0, ROOM, spots_galley),
    ROW(GALLEY, "bridgedeck", FACT(BRIDGE_DECK), FACT(GALLEY), ROOM, spots_galley),
    ROW(CHART, "navigation_station", FACT(CHART_TABLE), 0, ROOM, spots_room),
    ROW(CHART, "bridgedeck", FACT(BRIDGE_DECK), FACT(CHART_TABLE), EITHER, spots_room),
    ROW(CHART, "saloon", FACT(MOTOR) | FACT(SALOON), FACT(CHART_TABLE), EITHER, spots_few),
    ROW(CHART, "cockpit", FACT(OPEN), 0, ANY, spots_open),
    ROW(BERTH, "aft_cabin", FACT(AFT_CABIN), FACT(CATAMARAN), ANY, spots_berth),
    ROW(BERTH, "aft_cabin", FACT(AFT_CABINS), 0, ZONE, spots_berth),
    ROW(FORE, "forward_cabin", FACT(FORE_CABIN), FACT(CATAMARAN), ANY, spots_berth),
    ROW(FORE, "forward_cabin", FACT(FORE_CABIN) | FACT(CATAMARAN), 0, EITHER, spots_berth),
    ROW(FORE_TOILET, "forward_heads", FACT(FORE_TOILET), 0, ROOM, spots_few),
    ROW(AFT_TOILET, "aft_heads", FACT(AFT_TOILET), 0, ROOM, spots_few),
    ROW(ENGINE, "engine_space", FACT(ENGINE_SPACE), FACT(TWO_SPACES), EITHER, spots_engine),
    ROW(ENGINE, "engine_space", FACT(TWO_SPACES), 0, ZONE, spots_engine),
    ROW(BILGE, "bilge", FACT(CABIN), FACT(CATAMARAN), NONE, spots_none),
    ROW(BILGE, "bilge", FACT(CATAMARAN), 0, EITHER, spots_none),
    ROW(RAIL, "pushpit", FACT(CABIN), 0, EITHER, spots_rail),
    ROW(RAIL, "cockpit", FACT(OPEN), 0, EITHER, spots_open),
    ROW(STERN, "transom", 0, FACT(CATAMARAN), NONE, spots_none),
    ROW(STERN, "hull_step", FACT(CATAMARAN), 0, ZONE, spots_none),
    ROW(STERN, "bathing_platform", FACT(PLATFORM), FACT(CATAMARAN), EITHER, spots_none),
    ROW(BOW, "anchor_locker", 0, 0, NONE, spots_none),
    ROW(BOW, "pulpit", FACT(CABIN), 0, NONE, spots_none),
    ROW(ROOF, "coachroof", FACT(ROOF) | FACT(SAIL), 0, ANY, spots_roof),
    ROW(ROOF, "coachroof", FACT(ROOF) | FACT(MOTOR), 0, ANY, spots_roof_motor),
    ROW(ROOF, "crossbeam_aft", FACT(CATAMARAN), 0, NONE, spots_none),
    ROW(ROOF, "foredeck", FACT(CABIN) | FACT(ONE_HULL), 0, ANY, spots_roof_motor),
    ROW(GAS, "gas_locker", FACT(CABIN), 0, EITHER, spots_none),
    ROW(SIDE_DECK, "side_deck", FACT(CABIN), 0, EITHER, spots_few),
    ROW(HULL, "port_hull", FACT(HULLS), 0, NONE, spots_few),
    ROW(HULL, "starboard_hull", FACT(HULLS), 0, NONE, spots_few),
    ROW(ESCAPE, "escape_hatch_hull", FACT(CATAMARAN), 0, ZONE, spots_none),
};
enum { PLACE_ROWS = sizeof place_rows / sizeof *place_rows };

static const char *const hand_words[] = {"port", "starboard", "centre"};

/* ---- zones, as the program's own list has them ---- */

enum { NO_TRAIT, CATAMARAN_ONLY, IN_HULLS, DRAWN = 4, LOCKER = 8, NARROW = 16, LIVED_IN = 32,
       MULTIHULL_ONLY = 64, ROOM = 128, AT_DOOR = 256 };
enum zone_level { ZONE_BELOW, ZONE_DECK, ZONE_TOP };

static const struct zone_extent {
    const char *key;
    int from, to, traits;         /* hundredths of the length */
    enum zone_level level;
} zone_extents[] = {
#define EXTENT(key, family, side, from, to, level, traits) \
    {#key, from, to, traits, ZONE_##level},
    ZONE_LIST(EXTENT)
#undef EXTENT
};

/* Of a zone that tells the side, the one to port, which reaches as far as that to starboard. */
static const struct zone_extent *extent_of(const struct place_row *row)
{
    static const char port[] = "_port";
    size_t length = strlen(row->zone);
    for (size_t i = 0; i < sizeof zone_extents / sizeof *zone_extents; i++) {
        const char *key = zone_extents[i].key;
        if (strncmp(key, row->zone, length) == 0 &&
            strcmp(key + length, row->form == SIDE_FORM_ZONE ? port : "") == 0)
            return &zone_extents[i];
    }
    return zone_extents;
}

/* ---- drawing ---- */

bool boat_has(const struct boat_draw *boat, uint64_t needs, uint64_t never)
{
    return (boat->facts & needs) == needs && (boat->facts & never) == 0;
}

static bool row_suits(const struct boat_draw *boat, const struct place_row *row, uint32_t roles)
{
    return (roles >> row->role & 1) != 0 && boat_has(boat, row->needs, row->never);
}

static enum hand hand_draw(struct boat_draw *boat, const struct place_row *row)
{
    switch (row->form) {
    case SIDE_FORM_NONE:
        return HAND_CENTRE;
    case SIDE_FORM_ROOM:
        return boat->hand_of[row->role];
    case SIDE_FORM_ANY:
        return (enum hand)draw_below(&boat->draw, HAND_COUNT);
    case SIDE_FORM_EITHER:
    case SIDE_FORM_ZONE:
        break;
    }
    return (enum hand)draw_below(&boat->draw, HAND_CENTRE);
}

/* A quarter without, a fifth in many words. */
static const char *spot_draw(struct boat_draw *boat, const char *const *spots)
{
    const char *const *longer = spots;
    while (*longer != NULL)
        longer++;
    int sort = draw_below(&boat->draw, 100);
    if (sort < 25)
        return NULL;
    return draw_text(&boat->draw, sort < 80 ? spots : longer + 1);
}

bool place_draw(struct boat_draw *boat, uint32_t roles, struct place_drawn *place)
{
    int suitable[PLACE_ROWS], count = 0;
    for (int i = 0; i < PLACE_ROWS; i++)
        if (row_suits(boat, &place_rows[i], roles))
            suitable[count++] = i;
    if (count == 0)
        return false;
    place->row = &place_rows[suitable[draw_below(&boat->draw, count)]];
    place->hand = hand_draw(boat, place->row);
    place->spot = spot_draw(boat, place->row->spots);
    return true;
}

void place_to_hand(struct place_drawn *place, enum hand hand)
{
    if (place->row->form != SIDE_FORM_NONE)
        place->hand = hand;
}

bool place_below(const struct place_drawn *place)
{
    return extent_of(place->row)->level == ZONE_BELOW;
}

bool place_at_hand(const struct place_drawn *place)
{
    const struct zone_extent *extent = extent_of(place->row);
    return extent->level != ZONE_BELOW || (extent->traits & ROOM) == 0 ||
           (extent->traits & AT_DOOR) != 0;
}

/* ---- writing ---- */

void place_write(const struct boat_draw *boat, const struct place_drawn *place,
                 const char *between)
{
    const char *side = hand_words[place->hand];
    fprintf(boat->file, "zone: %s", place->row->zone);
    if (place->row->form == SIDE_FORM_ZONE)
        fprintf(boat->file, "_%s", side);
    else if (place->row->form != SIDE_FORM_NONE)
        fprintf(boat->file, "%sside: %s", between, side);
    if (place->spot != NULL)
        fprintf(boat->file, "%sspot: \"%s\"", between, place->spot);
}

/* Metres with two decimals. */
static void metres_write(FILE *file, int centimetres)
{
    const char *sign = centimetres < 0 ? "-" : "";
    int size = centimetres < 0 ? -centimetres : centimetres;
    fprintf(file, "%s%d.%02d", sign, size / 100, size % 100);
}

/* Inside the middle half of the zone, and half way out of the side. */
void place_point_write(struct boat_draw *boat, const struct place_drawn *place)
{
    const struct zone_extent *extent = extent_of(place->row);
    int share = draw_between(&boat->draw, 3 * extent->from + extent->to,
                             extent->from + 3 * extent->to);
    int out = place->hand == HAND_CENTRE ? 0 : boat->beam_dm * draw_between(&boat->draw, 20, 36);
    fprintf(boat->file, ", at: [");
    metres_write(boat->file, boat->loa_dm * share / 40);
    fprintf(boat->file, ", ");
    metres_write(boat->file, (place->hand == HAND_PORT ? -out : out) / 10);
    fprintf(boat->file, "]");
}
