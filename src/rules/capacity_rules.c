/* capacity_rules.c - places in the raft, lifejackets, ratings of extinguishers, carbon
 * dioxide in the cabins, wire that cutters cut (room: rules). The arithmetic is src/figure's. */
#include "rules_room.h"

#include "capacity.h"
#include "text.h"
#include "trait.h"

enum { MILLI_A_PERSON = 1000, GRAMS_A_KILO = 1000 };

/* As many as are told to come; else as many as the boat may carry. */
static int64_t persons_of(const struct rule_run *run)
{
    const struct crew *crew = &run->in->crew;
    return crew->count > 0 ? (int64_t)crew->count
                           : run->in->boat->facts.persons_max.milli / MILLI_A_PERSON;
}

static const char *persons_words(const struct rule_run *run)
{
    return run->in->crew.count > 0 ? "on board" : "allowed on board";
}

/* The first piece of that kind, where what is told of all of them stands. */
static const struct equipment *first_of(const struct rule_run *run, enum item_key item)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].kind->item == item)
            return &boat->equipment[i];
    return NULL;
}

static void persons_check(const struct rule_run *run)
{
    const struct number_value *most = &run->in->boat->facts.persons_max;
    if ((int64_t)run->in->crew.count * MILLI_A_PERSON > most->milli && most->given)
        rule_tell(run, CHECK_persons_too_many, most->place,
                  "fewer people, or another boat: persons_max is what her papers allow",
                  "%zu people for a boat that may carry %s", run->in->crew.count, most->text);
}

static void raft_places_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct equipment *first = first_of(run, ITEM_liferaft);
    int64_t persons = persons_of(run);
    if (first == NULL || persons == 0)
        return;
    struct raft_capacity raft = raft_capacity(boat->equipment, boat->equipment_count, persons);
    struct place place = place_else(first->persons.place, first->place);
    if (!raft.enough && raft.unrecorded == 0)
        rule_tell(run, CHECK_raft_places_few, place,
                  "a larger raft or a second one: each person counts, infants too",
                  "places in the raft: %lld, people %s: %lld", (long long)raft.places,
                  persons_words(run), (long long)persons);
    else if (raft.short_without_one)
        rule_tell(run, CHECK_raft_places_without_one, place,
                  "know it: with one raft lost there is no place for all",
                  "without the largest raft %lld places are left for %lld people",
                  (long long)(raft.places - raft.largest), (long long)persons);
}

/* ---- lifejackets ---- */

static void jackets_match_check(const struct rule_run *run, const struct equipment *first)
{
    const struct boat *boat = run->in->boat;
    const struct crew *crew = &run->in->crew;
    size_t sizes_count;
    const struct jacket_size *sizes = jacket_sizes(boat->equipment, boat->equipment_count,
                                                   run->arena, &sizes_count);
    int64_t *masses = arena_array(run->arena, crew->count, sizeof *masses);
    for (size_t i = 0; i < crew->count; i++)
        masses[i] = (int64_t)crew->kg[i] * GRAMS_A_KILO;
    size_t without = jackets_match(masses, crew->count, sizes, sizes_count, run->arena, NULL);
    if (without > 0)
        rule_tell(run, CHECK_jackets_unfit, first->place,
                  "bring jackets for these body masses; write kg_low: and kg_high: as on the label",
                  "lifejackets of a recorded size do not fit %zu of %zu people", without,
                  crew->count);
}

static void jackets_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct equipment *first = first_of(run, ITEM_lifejacket);
    if (first == NULL)
        return;
    struct jacket_count jackets = jackets_counted(boat->equipment, boat->equipment_count);
    int64_t all = jackets.adult + jackets.child + jackets.unsaid;
    if (all > 0 && jackets.child == all)
        rule_tell(run, CHECK_jackets_few, first->wearer.place,
                  "bring some for adults, or correct wearer: of the entries",
                  "all lifejackets are for children, none is for an adult");
    else if (all < persons_of(run))
        rule_tell(run, CHECK_jackets_few, first->place,
                  "bring more, or correct count: of the entries",
                  "lifejackets: %lld, people %s: %lld", (long long)all, persons_words(run),
                  (long long)persons_of(run));
    if (run->in->crew.kg != NULL && run->in->crew.count > 0)
        jackets_match_check(run, first);
    else if (jackets.unsized > 0)
        rule_tell(run, CHECK_jackets_unsized, place_else(first->kg_low.place, first->place),
                  "write kg_low: and kg_high: as on the label of each",
                  "for %lld of %lld lifejackets it is not recorded whom they fit",
                  (long long)jackets.unsized, (long long)all);
}

/* ---- extinguishers ---- */

static void rating_check(const struct rule_run *run, const struct equipment *gear)
{
    struct fire_rating rating;
    if (gear->rating.text == NULL)
        return;
    switch (fire_rating_parse(gear->rating.text, &rating)) {
    case RATING_READ:
        return;
    case RATING_WITHOUT_SYSTEM:
        rule_tell(run, CHECK_rating_without_system, gear->rating.place,
                  text_format(run->arena, "write en %s or us %s, as the label is European or "
                              "American: their letters are not the same",
                              gear->rating.text, gear->rating.text),
                  "%s: rating %s names no system", gear_named(run, gear), gear->rating.text);
        return;
    case RATING_WRONG:
        rule_tell(run, CHECK_rating_unknown, gear->rating.place,
                  "write it as on the label, such as en 13A 70B or us 1-A:10-B:C",
                  "%s: rating %s cannot be one", gear_named(run, gear), gear->rating.text);
        return;
    }
}

/* A portable extinguisher of carbon dioxide, in or next to the cabins? */
static bool is_cabin_co2(const struct equipment *gear)
{
    bool portable = gear->kind->item == ITEM_fire_extinguisher ||
                    gear->kind->item == ITEM_engine_extinguisher;
    return portable && gear->agent.value == AGENT_CO2 && gear->place_zone->lived_in;
}

static void co2_share_tell(const struct rule_run *run, struct place place, const char *name,
                           int64_t filling)
{
    const struct number_value *cabin = &run->in->boat->facts.cabin_m3;
    rule_tell(run, CHECK_co2_share, place,
              "stow it on deck or replace it by another agent: whoever stays below is in danger",
              "%s: emptied in cabins of %s m3 the gas makes %.2f %% of the air, over %d %%", name,
              cabin->text, co2_share_percent(filling, cabin->milli), CO2_PERCENT_MOST);
}

static void carbon_dioxide_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct number_value *cabin = &run->in->boat->facts.cabin_m3;
    const char *name = gear_named(run, gear);
    if (!is_cabin_co2(gear))
        return;
    int64_t filling = gear->kg.milli * gear_count(gear);
    bool known = gear->kg.given && cabin->given;
    if (known && co2_share_too_high(filling, cabin->milli)) {
        co2_share_tell(run, gear->kg.place, name, filling);
        return;
    }
    rule_tell(run, CHECK_co2_in_cabins, gear->agent.place,
              "better another agent here: the gas lies on the floor, where people sleep",
              "%s holds carbon dioxide and is stowed in or next to the cabins", name);
    if (!known)
        rule_tell(run, CHECK_co2_share_unknown,
                  place_else(gear->kg.given ? cabin->place : gear->kg.place, gear->agent.place),
                  gear->kg.given ? "measure the cabins and write cabin_m3: under boat"
                                 : "read the filling off the label and write kg:",
                  "%s: its share of the cabin's air is not known", name);
}

/* None of them too large alone, but emptied one after the other? Told at the last. */
static void carbon_dioxide_sum_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct number_value *cabin = &boat->facts.cabin_m3;
    const struct equipment *last = NULL;
    int64_t sum = 0;
    for (size_t i = 0; cabin->given && i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        int64_t filling = gear->kg.milli * gear_count(gear);
        if (!is_cabin_co2(gear) || !gear->kg.given)
            continue;
        if (co2_share_too_high(filling, cabin->milli))
            return;
        sum += filling;
        last = gear;
    }
    if (last != NULL && co2_share_too_high(sum, cabin->milli))
        co2_share_tell(run, last->kg.place,
                       text_format(run->arena, "%s and the others in or next to the cabins",
                                   gear_named(run, last)), sum);
}

static void cutters_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct equipment *best = NULL, *cutters;
    size_t index = 0;
    if (boat_trait(boat, TRAIT_CUTTERS_FIT, ZONE_NONE).recorded != ANSWER_NO)
        return;
    while ((cutters = gear_of_kind(boat, ITEM_bolt_cutters, &index)) != NULL)
        if (best == NULL || cutters->cuts_mm.milli > best->cuts_mm.milli)
            best = cutters;
    if (best != NULL)
        rule_tell(run, CHECK_cutters_too_small, best->cuts_mm.place,
                  "larger ones, or a hacksaw with good blades and pins that are drawn: try it on "
                  "a piece of\nsuch wire, then write what they cut as cuts_mm",
                  "%s cuts %s mm, and her thickest wire is %s mm: her mast stays alongside",
                  gear_named(run, best), best->cuts_mm.text, boat->facts.thickest_wire_mm.text);
}

void capacity_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    persons_check(run);
    raft_places_check(run);
    jackets_check(run);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        rating_check(run, &boat->equipment[i]);
        carbon_dioxide_check(run, &boat->equipment[i]);
    }
    carbon_dioxide_sum_check(run);
    cutters_check(run);
}
