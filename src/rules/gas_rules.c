/* gas_rules.c - whether she carries cooking gas, against the gear for it that is recorded
 * (room: rules). Where she is said to carry none no card speaks of gas. */
#include "rules_room.h"

#include "text.h"
#include "trait.h"

/* In a leak, or when that battery burns, nobody reaches into that locker, so that gear is lost. */
static void shared_check(const struct rule_run *run, const struct equipment *source)
{
    static const enum item_key wanted[] = {
        ITEM_lifejacket, ITEM_vhf_handheld, ITEM_epirb, ITEM_personal_beacon, ITEM_grab_bag,
        ITEM_liferaft, ITEM_dinghy, ITEM_fire_extinguisher, ITEM_bilge_pump_manual};
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < sizeof wanted / sizeof *wanted; i++) {
        size_t index = 0;
        for (const struct equipment *gear;
             (gear = gear_of_kind(boat, wanted[i], &index)) != NULL;)
            if (gear_shares_locker(gear, source))
                rule_tell(run, CHECK_locker_shared, gear->place,
                          "stow it elsewhere on deck, then write its new place",
                          "%s lies in one locker with %s: when that leaks or burns nobody may "
                          "fetch it",
                          gear_named(run, gear), gear_named(run, source));
    }
}

static void lockers_check(const struct rule_run *run)
{
    static const enum item_key sources[] = {
        ITEM_lpg_bottle_valve, ITEM_petrol_stowage, ITEM_lithium_bank};
    for (size_t i = 0; i < sizeof sources / sizeof *sources; i++) {
        size_t index = 0;
        for (const struct equipment *source;
             (source = gear_of_kind(run->in->boat, sources[i], &index)) != NULL;)
            shared_check(run, source);
    }
}

/* Gas from a leak in the locker runs down to the lowest place that it is open to. */
static void drain_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct drain_value *drains = &boat->gas.locker_drains;
    if (!boat_is(boat, TRAIT_GAS, ZONE_NONE) || drains->value == DRAIN_OVERBOARD ||
        boat_fitted(boat, ITEM_lpg_bottle_valve) != ANSWER_YES)
        return;
    if (drains->value == DRAIN_UNSAID)
        rule_tell(run, CHECK_gas_drain_unrecorded, boat->gas_place,
                  "pour water into the gas locker, and look where it comes out; then write\n"
                  "gas: {carried: yes, locker_drains: overboard}, or inboard, or none",
                  "where the gas locker drains to is not recorded: gas may run into the boat");
    else
        rule_tell(run, CHECK_gas_drain_inboard, drains->place,
                  "have a drain led overboard, above the water and clear of hatches, then write\n"
                  "locker_drains: overboard",
                  "the gas locker %s: gas from a leak stays in the boat",
                  drains->value == DRAIN_INBOARD ? "drains into the boat" : "has no drain");
}

void gas_rules(const struct rule_run *run)
{
    lockers_check(run);
    const struct boat *boat = run->in->boat;
    const struct equipment *gear = gear_needing(boat, TRAIT_GAS);
    const struct answer_value *gas = &boat->gas.carried;
    if (gas->answer == ANSWER_NO && gear != NULL)
        rule_tell(run, CHECK_gas_denied, gas->place,
                  "write gas: {carried: yes}, or take the gear for gas out of equipment",
                  "gas is not carried, but %s is recorded: the cards would not speak of gas",
                  gear_named(run, gear));
    if (gas->answer == ANSWER_NOT_RECORDED && boat_fitted(boat, ITEM_lpg_bottle_valve) == ANSWER_NO)
        rule_tell(run, CHECK_gas_unrecorded,
                  place_not_fitted(boat, ITEM_lpg_bottle_valve, ZONE_NONE),
                  "write gas: {carried: no} if nothing aboard burns gas, else gas: {carried: "
                  "yes}",
                  "lpg_bottle_valve is not fitted, and whether she carries gas is not recorded: "
                  "the cards take it that she does");
    drain_check(run);
}
