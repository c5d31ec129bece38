/* opening_rules.c - openings in the hull and their bungs (room: rules). The record alone
 * is looked at: an opening that it lacks may well be there, and is called not recorded. */
#include "rules_room.h"

#include "text.h"

/* An opening has an entry as seacock, a shaft's seal one of its own. */
static bool is_opening(const struct equipment *gear)
{
    return gear->kind->item == ITEM_seacock || gear->kind->item == ITEM_shaft_seal;
}

/* ---- each opening ---- */

/* Bungs are tapered and named by their thick end, and no standard says how far they
 * taper. Judged: one thinner than the bore slips through; one more than half as wide
 * again may not enter. */
static bool bung_fits(const struct equipment *gear)
{
    return gear->bung_mm.milli >= gear->bore_mm.milli &&
           gear->bung_mm.milli * 2 <= gear->bore_mm.milli * 3;
}

static void no_bung_tell(const struct rule_run *run, const struct equipment *gear)
{
    static const char remedy[] =
        "look for a bung tied beside it, and put it to the opening; then write its thick\n"
        "end as bung_mm; if there is none, tie one there";
    struct place place = place_else(gear->bung_mm.place, gear->place);
    if (gear->valve.answer == ANSWER_NO)
        rule_tell(run, CHECK_opening_without_stop, place, remedy,
                  "%s has no valve, and no bung is recorded for it: nothing stops its water",
                  gear_named(run, gear));
    else
        rule_tell(run, CHECK_bung_unrecorded, place, remedy,
                  "no bung is recorded for %s", gear_named(run, gear));
}

static void bung_check(const struct rule_run *run, const struct equipment *gear)
{
    if (!gear->bung_mm.given)
        no_bung_tell(run, gear);
    else if (gear->bore_mm.given && !bung_fits(gear))
        rule_tell(run, CHECK_bung_misfit, gear->bung_mm.place,
                  "put the bung to the opening; tie one there that jams in it, and write its "
                  "thick end\nas bung_mm and the opening as bore_mm",
                  "the bung of %s is %s mm for a bore of %s mm: it %s", gear_named(run, gear),
                  gear->bung_mm.text, gear->bore_mm.text,
                  gear->bung_mm.milli < gear->bore_mm.milli ? "may slip through"
                                                            : "may not go in");
}

static void measures_check(const struct rule_run *run, const struct equipment *gear)
{
    bool bore = gear->bore_mm.given, depth = gear->depth_m.given;
    if (bore && depth)
        return;
    struct place refused = bore ? gear->depth_m.place : gear->bore_mm.place;
    rule_tell(run, CHECK_opening_unmeasured, place_else(refused, gear->place),
              "measure the hose's inside, and from the waterline down, afloat; then write "
              "bore_mm\nand depth_m",
              "%s%s%s of %s %s not recorded", bore ? "" : "bore_mm",
              bore || depth ? "" : " and ", depth ? "" : "depth_m", gear_named(run, gear),
              bore || depth ? "is" : "are");
}

static void stiff_check(const struct rule_run *run, const struct equipment *gear)
{
    if (gear->works.value == WORKS_STIFF || gear->works.value == WORKS_SEIZED)
        rule_tell(run, CHECK_seacock_stiff, gear->works.place,
                  "have it freed or replaced, shut and open it by hand, then write works: freely",
                  "%s is recorded as %s: a frightened hand may not shut it",
                  gear_named(run, gear), choice_word(works_words, gear->works.value));
}

/* ---- their number ---- */

static int64_t openings_recorded(const struct boat *boat)
{
    int64_t count = 0;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (is_opening(&boat->equipment[i]))
            count += boat->equipment[i].count.given ? boat->equipment[i].count.milli / 1000 : 1;
    return count;
}

static void number_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct number_value *counted = &boat->facts.openings;
    int64_t recorded = openings_recorded(boat);
    if (!counted->given)
        rule_tell(run, CHECK_openings_uncounted, place_else(counted->place, boat->place),
                  "count them from outside when she is out of the water, those without a valve "
                  "too,\nthen write the number as openings: in the section boat:",
                  "how many openings she has below the waterline is not recorded; recorded one "
                  "by one: %lld", (long long)recorded);
    else if (recorded < counted->milli / 1000)
        rule_tell(run, CHECK_openings_too_few, counted->place,
                  "look for the others, such as log, sink, shaft and cockpit drains, and add "
                  "each as\nan item seacock (valve: no where it has none); or correct the number",
                  "she has %s openings, but only %lld are recorded", counted->text,
                  (long long)recorded);
    else if (recorded * 1000 > counted->milli)
        rule_tell(run, CHECK_openings_too_many, counted->place,
                  "count them again from outside, then correct the number, or take out the "
                  "entry that\nis no opening below the waterline",
                  "she has %s openings, but %lld are recorded", counted->text,
                  (long long)recorded);
}

/* ---- openings that others let expect ---- */

static bool has_intake(const struct boat *boat, enum zone_key space)
{
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_of_kind(boat, ITEM_seacock, &index)) != NULL;)
        if (zone_in_space(gear->place_zone, space) ||
            (gear->serves.given && gear_may_serve(boat, gear, space)) ||
            (boat->engine_space_count < 2 && gear->leads_to.value == OPENING_ENGINE))
            return true;
    return false;
}

static const char expected_remedy[] =
    "look for it, and add it as an item seacock with name, zone, how, leads_to, bore_mm,\n"
    "depth_m and bung_mm; one that is recorded gets the leads_to that it lacks";

static void intakes_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (!has_intake(boat, boat->engine_spaces[i]))
            rule_tell(run, CHECK_opening_expected, boat->place, expected_remedy,
                      "no opening is recorded for the engine in %s, such as its intake",
                      zone_word(boat->engine_spaces[i]));
}

static bool sides_meet(enum side a, enum side b)
{
    return !(a == SIDE_PORT && b == SIDE_STARBOARD) && !(a == SIDE_STARBOARD && b == SIDE_PORT);
}

static bool has_opening_in(const struct boat *boat, enum zone_key zone, enum side side)
{
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_of_kind(boat, ITEM_seacock, &index)) != NULL;)
        if (zone_within(gear->place_zone, zone) && sides_meet(gear->place_side, side))
            return true;
    return false;
}

/* The first piece that names a zone speaks for it. */
static bool named_before(const struct boat *boat, const struct equipment *gear)
{
    for (const struct equipment *first = boat->equipment; first < gear; first++)
        if (first->place_zone == gear->place_zone && sides_meet(first->place_side,
                                                                gear->place_side))
            return true;
    return false;
}

static bool has_sink_drain(const struct boat *boat)
{
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_of_kind(boat, ITEM_seacock, &index)) != NULL;)
        if (gear->leads_to.value == OPENING_SINK)
            return true;
    return false;
}

static void room_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct boat *boat = run->in->boat;
    enum zone_key zone = gear->place_zone->id;
    bool heads = zone == ZONE_forward_heads || zone == ZONE_aft_heads;
    bool galley = zone == ZONE_galley;
    if ((!heads && !galley) || named_before(boat, gear) ||
        has_opening_in(boat, zone, gear->place_side) || (galley && has_sink_drain(boat)))
        return;
    rule_tell(run, CHECK_opening_expected, gear->zone.place, expected_remedy,
              "no opening is recorded for %s, such as %s, though %s is there", zone_word(zone),
              galley ? "the sink's drain" : "the inlet and outlet of its toilet",
              gear_named(run, gear));
}

void opening_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    if (boat_fitted(boat, ITEM_seacock) == ANSWER_NOT_RECORDED)
        return;   /* the card FLOODING waits for it, and tells */
    number_check(run);
    intakes_check(run);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        room_check(run, gear);
        if (gear->kind->item != ITEM_seacock)
            continue;
        bung_check(run, gear);
        measures_check(run, gear);
        stiff_check(run, gear);
    }
}
