/* fire_rules.c - what is there to put a fire out, and to give notice of it (room: rules):
 * fire ports and what goes into them, a battery's vent, alarms. What the record does not
 * say of a port holds the card ENGINE FIRE back, and is told there. */
#include "rules_room.h"

#include "text.h"

/* ---- engine spaces ---- */

static const char *space_words(const struct boat *boat, enum zone_key space)
{
    return boat->engine_space_count < 2 ? "the engine space" : zone_word(space);
}

static bool extinguisher_fits(const struct boat *boat, enum zone_key space)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of_kind(boat, ITEM_engine_extinguisher, &index)) != NULL;)
        if (gear->fits_port.answer == ANSWER_YES && gear_may_serve(boat, gear, space))
            return true;
    return false;
}

static void space_check(const struct rule_run *run, enum zone_key space)
{
    const struct boat *boat = run->in->boat;
    if (boat_fitted_for(boat, ITEM_fire_port, space) == ANSWER_NOT_RECORDED ||
        boat_fitted_for(boat, ITEM_fixed_extinguisher, space) == ANSWER_NOT_RECORDED ||
        space_served(boat, ITEM_fire_port, space) ||
        space_served(boat, ITEM_fixed_extinguisher, space) ||
        space_served(boat, ITEM_engine_extinguisher, space))
        return;
    rule_tell(run, CHECK_engine_space_unprotected, place_not_fitted(boat, ITEM_fire_port, space),
              "have a fire port cut, with an extinguisher that fits it, or a fixed extinguisher; "
              "then\nrecord fire_port and engine_extinguisher, or fixed_extinguisher",
              "%s has neither a fire port nor a fixed extinguisher: a fire there cannot be "
              "fought", space_words(boat, space));
}

static void port_check(const struct rule_run *run, const struct equipment *port)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (gear_may_serve(boat, port, boat->engine_spaces[i]) &&
            boat_fitted_for(boat, ITEM_engine_extinguisher, boat->engine_spaces[i]) == ANSWER_NO) {
            rule_tell(run, CHECK_port_without_extinguisher, port->place,
                      "put one aboard whose nozzle goes in, near the port, and record it as\n"
                      "engine_extinguisher with fits_port: yes",
                      "%s has no extinguisher to go into it", gear_named(run, port));
            return;
        }
}

/* Is there a port of a space that it serves, or is that not known? */
static bool has_port(const struct boat *boat, const struct equipment *gear)
{
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (gear_may_serve(boat, gear, boat->engine_spaces[i]) &&
            boat_fitted_for(boat, ITEM_fire_port, boat->engine_spaces[i]) != ANSWER_NO)
            return true;
    return boat_fitted(boat, ITEM_fire_port) == ANSWER_NOT_RECORDED;
}

/* Does the card ENGINE FIRE of each of its spaces go ahead without knowing? */
static bool card_goes_ahead(const struct boat *boat, const struct equipment *gear)
{
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (gear_may_serve(boat, gear, boat->engine_spaces[i]) &&
            !space_served(boat, ITEM_fixed_extinguisher, boat->engine_spaces[i]) &&
            !extinguisher_fits(boat, boat->engine_spaces[i]))
            return false;
    return true;
}

static void extinguisher_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct boat *boat = run->in->boat;
    if (!has_port(boat, gear))
        rule_tell(run, CHECK_extinguisher_without_port, gear->place,
                  "have a fire port cut for it and record it as fire_port; until then it is no "
                  "engine\nextinguisher: record it as fire_extinguisher",
                  "%s is for a fire port, but there is none: the lid would have to be opened",
                  gear_named(run, gear));
    else if (gear->fits_port.answer == ANSWER_NO)
        rule_tell(run, CHECK_port_extinguisher_misfit, gear->fits_port.place,
                  "put one aboard whose nozzle goes into the port, try it, then write\n"
                  "fits_port: yes",
                  "%s does not fit the fire port", gear_named(run, gear));
    else if (gear->fits_port.answer == ANSWER_NOT_RECORDED && card_goes_ahead(boat, gear))
        rule_tell(run, CHECK_port_fit_unrecorded, place_else(gear->fits_port.place, gear->place),
                  "try its nozzle in the port, then write fits_port: yes or fits_port: no",
                  "whether %s fits the fire port is not recorded", gear_named(run, gear));
}

static void engine_fire_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    size_t port = 0, extinguisher = 0;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        space_check(run, boat->engine_spaces[i]);
    for (const struct equipment *gear; (gear = gear_of_kind(boat, ITEM_fire_port, &port)) != NULL;)
        port_check(run, gear);
    for (const struct equipment *gear;
         (gear = gear_of_kind(boat, ITEM_engine_extinguisher, &extinguisher)) != NULL;)
        extinguisher_check(run, gear);
}

/* ---- lithium ---- */

/* Its own box takes the level of the place where the box stands. */
static bool shares_cabin_air(const struct equipment *bank)
{
    const struct zone *zone = zone_of(air_zone(bank->space.value));
    if (zone == NULL)
        zone = bank->place_zone;
    return bank->space.value != AIR_NONE && (zone->level == LEVEL_BELOW ||
                                        bank->below.answer == ANSWER_YES);
}

static void lithium_check(const struct rule_run *run)
{
    size_t index = 0;
    for (const struct equipment *bank;
         (bank = gear_of_kind(run->in->boat, ITEM_lithium_bank, &index)) != NULL;)
        if (text_empty(bank->vents_to.text) && shares_cabin_air(bank))
            rule_tell(run, CHECK_lithium_vent_unrecorded,
                      place_else(bank->vents_to.place, bank->place),
                      "follow its vent to where it ends and write that, such as vents_to: deck; "
                      "if it has\nnone, ask the maker or a fitter how its gas is to leave the "
                      "boat, and have it done",
                      "where the gas of %s leaves the boat is not recorded",
                      gear_named(run, bank));
}

/* ---- alarms ---- */

struct alarm {
    enum item_key item;
    enum item_key danger[6];  /* gear that calls for it; none: every boat with an engine */
    const char *why;
};

static const struct alarm alarms[] = {
    {.item = ITEM_smoke_alarm, .why = "people asleep below must be woken"},
    {.item = ITEM_co_alarm, .why = "the engine's exhaust, a heater or a cooker can give off "
                                "carbon monoxide, which nobody smells"},
    {.item = ITEM_gas_alarm,
     .danger = {ITEM_lpg_bottle_valve, ITEM_lpg_locker, ITEM_lpg_remote_switch,
                ITEM_lpg_cabin_valve, ITEM_lpg_hose},
     .why = "she carries gas, and it gathers in the bilge"},
};

static bool is_called_for(const struct boat *boat, const struct alarm *alarm)
{
    for (size_t i = 0; alarm->danger[i] != ITEM_NONE; i++)
        if (boat_fitted(boat, alarm->danger[i]) == ANSWER_YES)
            return true;
    return alarm->danger[0] == ITEM_NONE && boat->engine_space_count > 0;
}

static void alarm_check(const struct rule_run *run, const struct alarm *alarm)
{
    const struct boat *boat = run->in->boat;
    const char *key = item_word(alarm->item);
    enum answer fitted = boat_fitted(boat, alarm->item);
    if (fitted == ANSWER_YES || !is_called_for(boat, alarm) ||
        boat_unsurveyed(boat, alarm->item, ZONE_NONE) != NULL)
        return;   /* what is not surveyed is told with all that is not */
    if (fitted == ANSWER_NO)
        rule_tell(run, CHECK_alarm_missing, place_not_fitted(boat, alarm->item, ZONE_NONE),
                  text_format(run->arena,
                              "fit one and test it, then take %s out of not_fitted and add to "
                              "equipment:\n  - {item: %s, tag: , zone: , spot: , expires: }",
                              key, key),
                  "%s is not fitted: %s", key, alarm->why);
    else
        rule_tell(run, CHECK_alarm_unrecorded, boat->place,
                  text_format(run->arena,
                              "look for it and press its test button, then add to equipment:\n"
                              "  - {item: %s, tag: , zone: , spot: , expires: }\n"
                              "if she has none, fit one; until then add to not_fitted:\n"
                              "  - %s", key, key),
                  "%s is not recorded: %s", key, alarm->why);
}

void fire_rules(const struct rule_run *run)
{
    engine_fire_check(run);
    lithium_check(run);
    for (size_t i = 0; i < sizeof alarms / sizeof *alarms; i++)
        alarm_check(run, &alarms[i]);
}
