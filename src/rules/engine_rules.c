/* engine_rules.c - her engines and rooms, against the gear that is recorded (room: rules). */
#include "rules_room.h"

#include "text.h"

/* Cards say nothing of an engine that she is said not to have. */
static void engine_gear_check(const struct rule_run *run, enum trait trait, const char *what)
{
    const struct boat *boat = run->in->boat;
    const struct equipment *gear = gear_needing(boat, trait);
    if (gear != NULL && boat_trait(boat, trait, ZONE_NONE).recorded == ANSWER_NO)
        rule_tell(run, CHECK_engine_denied, boat->engines_place,
                  "add that engine to engines, or take the gear for it out of equipment",
                  "engines has no %s, but %s is recorded", what, gear_named(run, gear));
}

/* Does an engine that drives her stand in the space, or may one? */
static bool driven_from(const struct boat *boat, enum zone_key space)
{
    for (size_t i = 0; i < boat->engine_count; i++)
        if (boat->engines[i].space.value == space &&
            boat->engines[i].drive.value != DRIVE_GENERATOR)
            return true;
    return !boat->engines_given;
}

/* A stop without its engine: the engine fell out of the record. */
static void stops_check(const struct rule_run *run)
{
    size_t index = 0;
    const struct boat *boat = run->in->boat;
    for (const struct equipment *stop;
         (stop = gear_of_kind(boat, ITEM_engine_stop, &index)) != NULL;)
        for (size_t i = 0; i < stop->serves.count; i++)
            if (!driven_from(boat, stop->serves.items[i].value))
                rule_tell(run, CHECK_engine_lost, boat->engines_place,
                          "add that engine to engines, or correct serves of the stop",
                          "%s serves %s, where no engine that drives her is recorded",
                          gear_named(run, stop), zone_word(stop->serves.items[i].value));
}

static const char *engine_named(const struct rule_run *run, const struct engine *engine)
{
    return engine->space.value == ZONE_NONE
               ? "an outboard" : text_format(run->arena, "the engine in %s",
                                             zone_word(engine->space.value));
}

/* What is not recorded of an engine counts as each of what it may be. */
static void engine_facts_check(const struct rule_run *run, const struct engine *engine)
{
    bool fuel = engine->fuel.value != FUEL_NONE || engine->fuel.place.line > 0;
    bool drive = engine->drive.value != DRIVE_NONE || engine->drive.place.line > 0;
    const char *what = fuel ? "drive" : drive ? "fuel" : "fuel and drive";
    if (!fuel || !drive)
        rule_tell(run, CHECK_engine_fact_unrecorded, engine->place,
                  "look at the engine and its tank, then write fuel: diesel, fuel: petrol or "
                  "fuel: electric,\nand what it drives her by, such as drive: shaft, or drive: "
                  "generator",
                  "%s of %s: not recorded, so that cards count it as any it may be", what,
                  engine_named(run, engine));
}

void engine_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    stops_check(run);
    if (!boat->facts.rooms.given)
        rule_tell(run, CHECK_rooms_unrecorded,
                  place_else(boat->facts.rooms.place, boat->place),
                  "go through her, and add to boat:\n  rooms: [forward_cabin, saloon, galley]\n"
                  "or rooms: [] if she is open",
                  "her rooms are not recorded: plans name only those that gear lies in");
    for (size_t i = 0; i < boat->engine_count; i++)
        engine_facts_check(run, &boat->engines[i]);
    engine_gear_check(run, TRAIT_GENERATOR, "generator");
    engine_gear_check(run, TRAIT_DIESEL, "engine that burns diesel");
    engine_gear_check(run, TRAIT_PETROL_TANK, "petrol engine in a space of hers");
    if (!boat->engines_given)
        rule_tell(run, CHECK_engines_unrecorded, boat->engines_place,
                  "look at each engine, the generator's too, and add\n"
                  "engines:\n  - {space: engine_space, fuel: diesel, drive: shaft}\n"
                  "or engines: [] if she has none",
                  "her engines are not recorded: the cards are those of a boat with diesel, petrol "
                  "and a generator");
}
