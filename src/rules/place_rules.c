/* place_rules.c - where gear is, against what else is recorded of its place (room: rules): how
 * it is reached, on which level it lies, and the sides of what lies beside it. A place that
 * contradicts itself by zone and side alone is an error of the record, told there. */
#include "rules_room.h"

#include "text.h"

/* ---- reached from the cockpit ---- */

/* The room that one must go into for the piece: that it is worked from, or one that is entered
 * on the way; NULL: a hand gets it from outside. `place` is that of the word. */
static const struct zone *room_gone_into(const struct equipment *gear, struct place *place)
{
    const struct zone *worked = worked_zone(gear);
    *place = gear->from.place_zone != NULL ? gear->from.zone.place : gear->zone.place;
    if (worked->room && !worked->at_door)
        return worked;
    for (size_t i = 0; i < gear->inside.count; i++) {
        const struct zone *zone = zone_of(gear->inside.items[i].value);
        *place = gear->inside.items[i].place;
        if (zone != NULL && zone->room && !zone->at_door)
            return zone;
    }
    return NULL;
}

static void cabin_check(const struct rule_run *run, const struct equipment *gear)
{
    struct place place;
    const struct zone *room = room_gone_into(gear, &place);
    if (gear->from_cockpit.answer == ANSWER_YES && room != NULL)
        rule_tell(run, CHECK_reach_against_place, gear->from_cockpit.place,
                  "stand in the cockpit, head in the open air: if a hand does not get it, write\n"
                  "from_cockpit: no; if it does, write the zone that the hand reaches into, such "
                  "as\ncompanionway, and the rest as spot",
                  "%s is said to be reached without going below, but %s is entered for it "
                  "(line %d)", gear_named(run, gear), room->key, place.line);
}

/* Of the fixed radio it follows from the place of its switch. */
static void cockpit_check(const struct rule_run *run, const struct equipment *gear)
{
    bool recorded = gear->from_cockpit.answer == ANSWER_NO && gear->from_cockpit.place.line > 0;
    if (recorded && zone_within(gear->place_zone, ZONE_cockpit) &&
        gear->below.answer != ANSWER_YES && gear->inside.count == 0)
        rule_tell(run, CHECK_cockpit_out_of_reach, gear->from_cockpit.place,
                  "write from_cockpit: yes; if people must go below for it, correct the zone, or "
                  "write\nbelow: yes",
                  "%s is in the cockpit, but said to be reached from below only",
                  gear_named(run, gear));
}

/* ---- levels ---- */

/* On deck, and nothing to reach into. */
static bool is_open_deck(const struct zone *zone)
{
    return zone->level != LEVEL_BELOW && !zone->locker && !zone_within(zone, ZONE_cockpit);
}

static void level_check(const struct rule_run *run, const struct equipment *gear)
{
    enum answer below = gear->below.answer;
    if (below == ANSWER_NO && gear->place_zone->level == LEVEL_BELOW)
        rule_tell(run, CHECK_level_against_place, gear->below.place,
                  "take `below` out, or write the zone on deck where it is",
                  "%s is said not to be below, but %s is below deck", gear_named(run, gear),
                  gear->place_zone->key);
    else if (below == ANSWER_YES && is_open_deck(gear->place_zone))
        rule_tell(run, CHECK_level_against_place, gear->below.place,
                  "write the room under it as zone, and take `below` out; if it is on deck, "
                  "write\nbelow: no",
                  "%s is said to be below, but %s is open deck", gear_named(run, gear),
                  gear->place_zone->key);
}

/* ---- sides ---- */

bool side_open(const struct equipment *gear)
{
    return gear->place_side == SIDE_NONE && !gear->at.given && !gear->place_zone->narrow;
}

const struct equipment *sided_neighbour(const struct boat *boat, const struct equipment *gear)
{
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *other = &boat->equipment[i];
        if (other->place_zone->family == gear->place_zone->family &&
            (other->place_side == SIDE_PORT || other->place_side == SIDE_STARBOARD))
            return other;
    }
    return NULL;
}

/* One note for all: "torch C5 in saloon (knife E2 there is to port), ...". */
static void neighbours_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct text_builder pairs = text_builder_in(run->arena);
    const struct equipment *first = NULL;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i], *other;
        if (!side_open(gear) || (other = sided_neighbour(boat, gear)) == NULL)
            continue;
        text_add_format(&pairs, "%s%s in %s (%s there is to %s)", first == NULL ? "" : ", ",
                        gear_named(run, gear), gear->place_zone->key, gear_named(run, other),
                        side_word(other->place_side));
        first = first == NULL ? gear : first;
    }
    if (first != NULL)
        rule_tell(run, CHECK_side_beside_sided, first->place,
                  "face the bow and look on which side each is; then write side: port, side: "
                  "starboard,\nside: centre or side: both",
                  "side is not recorded, though that of a neighbour is: %s", pairs.at);
}

void place_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        cabin_check(run, &boat->equipment[i]);
        cockpit_check(run, &boat->equipment[i]);
        level_check(run, &boat->equipment[i]);
    }
    neighbours_check(run);
}
