/* boat_places.c - where each piece of gear is (room: record): its zone, the side
 * of it, the point on the plan. A place that contradicts itself is an error: two
 * people would look in two places. Never guesses a side. */
#include "record.h"

#include "item.h"
#include "number.h"
#include "text.h"

enum { CENTIMETRE = 10 };   /* in thousandths of a metre */

bool boat_has_space(const struct boat *boat, enum zone_key space)
{
    for (size_t i = 0; i < boat->engine_count; i++)
        if (boat->engines[i].space.value == space)
            return true;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (boat->engine_spaces[i] == space)
            return true;
    return false;
}

enum answer boat_room(const struct boat *boat, const struct zone *zone)
{
    const struct zone_values *rooms = &boat->facts.rooms;
    if (!zone->room)
        return ANSWER_YES;
    for (size_t i = 0; i < rooms->count; i++)
        if (zone_within(zone, rooms->items[i].value) ||
            zone_within(zone_of(rooms->items[i].value), zone->id))
            return ANSWER_YES;
    return rooms->given ? ANSWER_NO : ANSWER_NOT_RECORDED;
}

bool boat_has_cabin(const struct boat *boat)
{
    return !boat->facts.rooms.given || boat->facts.rooms.count > 0;
}

/* The row of a family on one side: cockpit_locker and port give
 * cockpit_locker_port. The zone itself where the boat has no such row. */
static const struct zone *zone_on_side(const struct boat *boat, const struct zone *zone,
                                       enum side side)
{
    if (zone->side != SIDE_NONE || (side != SIDE_PORT && side != SIDE_STARBOARD))
        return zone;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *row = zone_of(key);
        if (row->family == zone->id && row->side == side &&
            hull_has_zone(boat->facts.hull.value, row))
            return row;
    }
    return zone;
}

static bool zone_side_agrees(struct boat_reading *reading, struct place place,
                             const struct zone *zone, enum side side)
{
    if (zone->side == SIDE_NONE || side == SIDE_NONE || side == zone->side)
        return true;
    problem_add(reading->problems, SEVERITY_ERROR, place,
                text_format(reading->arena, "take `side` out, or write zone: %s",
                            zone_word(zone->family)),
                "%s lies to %s, but side says %s", zone->key, side_word(zone->side),
                side_word(side));
    return false;
}

/* False when the boat has no such place, or has two. `place` is the word's. */
static bool zone_exists(struct boat_reading *reading, const struct zone *zone, struct place place)
{
    if (!hull_has_zone(reading->boat->facts.hull.value, zone)) {
        problem_add(reading->problems, SEVERITY_ERROR, place,
                    text_format(reading->arena, "name a zone of a %s, or correct the boat's hull",
                                choice_word(hull_words, reading->boat->facts.hull.value)),
                    "%s is found on %s only", zone->key,
                    zone->catamaran_only ? "catamarans" : "boats with several hulls");
        return false;
    }
    if (boat_room(reading->boat, zone) == ANSWER_NO) {
        problem_add(reading->problems, SEVERITY_ERROR, place,
                    "add it to rooms in the section boat, or name the room that it is",
                    "%s is none of the rooms that are recorded of her", zone->key);
        return false;
    }
    if (!reading->boat->catamaran || zone->id != ZONE_engine_space ||
        boat_has_space(reading->boat, zone->id))
        return true;
    problem_add(reading->problems, SEVERITY_ERROR, place,
                "write engine_space_port or engine_space_starboard",
                "engine_space is not one place on a catamaran: say which side");
    return false;
}

/* Is it said in which hull of a catamaran it lies? A side that was refused is told there. */
static bool hull_known(const struct boat *boat, const struct equipment *gear)
{
    bool refused = gear->side.value == SIDE_NONE && gear->side.place.line > 0;
    return refused || !boat->catamaran || !gear->place_zone->in_hulls ||
           gear->place_side == SIDE_PORT || gear->place_side == SIDE_STARBOARD ||
           gear->place_side == SIDE_BOTH || boat_has_space(boat, gear->place_zone->id);
}

static void hull_check(struct boat_reading *reading, const struct equipment *gear)
{
    if (!hull_known(reading->boat, gear))
        problem_add(reading->problems, SEVERITY_ERROR,
                    place_or(gear->zone.place, gear->place),
                    "write side: port, side: starboard or side: both",
                    "%s lies in a hull of a catamaran: say which", gear->place_zone->key);
}

static void zones_exist(struct boat_reading *reading, const struct zone_values *zones)
{
    for (size_t i = 0; i < zones->count; i++)
        zone_exists(reading, zone_of(zones->items[i].value), zones->items[i].place);
}

/* A space of an engine was given, and refused: it may be any. */
static bool spaces_unclear(const struct boat *boat)
{
    for (size_t i = 0; i < boat->engine_count; i++)
        if (boat->engines[i].space.value == ZONE_NONE && boat->engines[i].space.place.line > 0)
            return true;
    return false;
}

void spaces_exist(const struct boat_reading *reading, const struct zone_values *serves)
{
    for (size_t i = 0; !spaces_unclear(reading->boat) && i < serves->count; i++) {
        const struct zone_value *space = &serves->items[i];
        if (!boat_has_space(reading->boat, space->value))
            problem_add(reading->problems, SEVERITY_ERROR, space->place,
                        "name the space of an engine of this boat, or correct engines",
                        "this boat has no %s", zone_word(space->value));
    }
}

static void other_zones_check(struct boat_reading *reading, const struct equipment *gear)
{
    const struct zone *space = zone_of(air_zone(gear->space.value));
    if (space != NULL)
        zone_exists(reading, space, gear->space.place);
    zones_exist(reading, &gear->inside);
    zones_exist(reading, &gear->past);
    spaces_exist(reading, &gear->serves);
}

/* `zone` becomes the row on the item's side, so that the same place
 * has one name however it was written. */
static void gear_place_settle(struct boat_reading *reading, struct equipment *gear)
{
    const struct zone *written = zone_of(gear->zone.value);
    enum side side = gear->side.value;
    if (written == NULL)
        return;
    const struct zone *zone = zone_on_side(reading->boat, written, side);
    if (!zone_exists(reading, zone, gear->zone.place) ||
        !zone_side_agrees(reading, gear->side.place, zone, side))
        return;
    gear->place_zone = zone;
    gear->zone.value = zone->id;
    gear->place_side = side != SIDE_NONE ? side : zone->side;
    hull_check(reading, gear);
    position_settle(reading, gear);
}

/* The same of a place that it names beside its own. */
static void spot_settle(struct boat_reading *reading, struct gear_spot *spot)
{
    const struct zone *written = zone_of(spot->zone.value);
    spot->place_side = spot->side.value;
    if (written == NULL)
        return;
    const struct zone *zone = zone_on_side(reading->boat, written, spot->side.value);
    if (!zone_exists(reading, zone, spot->zone.place) ||
        !zone_side_agrees(reading, spot->side.place, zone, spot->side.value))
        return;
    spot->place_zone = zone;
    spot->zone.value = zone->id;
    if (spot->place_side == SIDE_NONE)
        spot->place_side = zone->side;
}

const struct zone *worked_zone(const struct equipment *gear)
{
    return gear->from.place_zone != NULL ? gear->from.place_zone : gear->place_zone;
}

enum side worked_side(const struct equipment *gear)
{
    return gear->from.place_zone != NULL ? gear->from.place_side : gear->place_side;
}

const struct text_value *worked_spot(const struct equipment *gear)
{
    return gear->from.place_zone != NULL ? &gear->from.spot : &gear->spot;
}

bool way_zone(const struct equipment *gear, size_t index, struct zone_value *zone)
{
    size_t passed = gear->inside.count + gear->past.count;
    if (index > passed || (index == passed && gear->handle.place_zone == NULL))
        return false;
    if (index == passed)
        *zone = gear->handle.zone;
    else
        *zone = index < gear->inside.count ? gear->inside.items[index]
                                           : gear->past.items[index - gear->inside.count];
    return true;
}

void places_settle(struct boat_reading *reading)
{
    for (size_t i = 0; i < reading->gear_count; i++) {
        gear_place_settle(reading, &reading->gear[i]);
        spot_settle(reading, &reading->gear[i].from);
        spot_settle(reading, &reading->gear[i].handle);
        other_zones_check(reading, &reading->gear[i]);
    }
    spot_settle(reading, &reading->boat->radio.second_station);
}

/* Two stops on one panel are told apart by the engine they serve. */
static bool same_engines(const struct equipment *a, const struct equipment *b)
{
    for (size_t i = 0; i < a->serves.count; i++)
        if (zone_value_find(&b->serves, a->serves.items[i].value) == NULL)
            return false;
    return a->serves.count == b->serves.count;
}

bool equipment_same_place(const struct equipment *a, const struct equipment *b)
{
    return a->kind != NULL && a->kind == b->kind && a->place_zone != NULL &&
           a->place_zone == b->place_zone && a->place_side == b->place_side &&
           text_equal(a->spot.text, b->spot.text) && text_equal(a->name.text, b->name.text) &&
           same_engines(a, b);
}

/* A piece whose tag was refused may be the one of the model with that tag. */
static bool tag_unread(const struct equipment *gear)
{
    return gear->tag.text == NULL && gear->tag.place.line > 0;
}

static void twin_tell(struct boat_reading *reading, const struct equipment *gear)
{
    for (const struct equipment *first = reading->gear; first < gear; first++)
        if (equipment_same_place(first, gear) && !tag_unread(gear)) {
            problem_add(reading->problems, SEVERITY_ERROR, gear->place,
                        "take one out, tell them apart by `spot` or `name`, or write `count`",
                        "%s stands in the same place twice (first on %s)", gear->kind->key,
                        line_words(first->place, gear->place, reading->arena));
            return;
        }
}

void doubles_check(struct boat_reading *reading)
{
    for (size_t i = 0; i < reading->gear_count; i++)
        twin_tell(reading, &reading->gear[i]);
}

/* ---- at: [x, y] ---- */

static bool to_the_centimetre(const struct pair_value *at)
{
    return at->first.milli % CENTIMETRE == 0 && at->second.milli % CENTIMETRE == 0;
}

static bool within_hull(const struct boat_facts *facts, const struct pair_value *at)
{
    int64_t half = facts->beam_m.milli / 2;
    int64_t length = facts->loa_m.milli * 105 / 100;   /* a bathing platform sticks out */
    return (!facts->loa_m.given || (at->first.milli >= 0 && at->first.milli <= length)) &&
           (!facts->beam_m.given || (at->second.milli >= -half && at->second.milli <= half));
}

static bool on_its_side(const struct equipment *gear)
{
    return !(gear->place_side == SIDE_PORT && gear->at.second.milli > 0) &&
           !(gear->place_side == SIDE_STARBOARD && gear->at.second.milli < 0);
}

void position_settle(struct boat_reading *reading, struct equipment *gear)
{
    static const char remedy[] = "write at: [metres aft of the bow, metres to starboard of the "
                                 "centreline],\nwith a point before decimals, such as at: "
                                 "[8.40, -1.20] to port";
    const char *fault = NULL;
    if (!gear->at.given)
        return;
    if (!to_the_centimetre(&gear->at))
        fault = "must be two numbers with at most two decimals";
    else if (!within_hull(&reading->boat->facts, &gear->at))
        fault = "lies outside the boat";
    else if (!on_its_side(gear))
        fault = "lies on the other side of the boat than `side` or `zone` says";
    if (fault == NULL)
        return;
    gear->at.given = false;
    problem_add(reading->problems, SEVERITY_ERROR, gear->at.place, remedy, "at %s", fault);
}
