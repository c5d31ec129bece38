/* gas_rules.c - whether she carries cooking gas, against the gear for it that is recorded
 * (room: rules). Where gas: none is written no card speaks of gas. */
#include "rules_room.h"

#include "text.h"

static const enum item_key gas_gear[] = {
    ITEM_lpg_locker, ITEM_lpg_bottle_valve, ITEM_lpg_remote_switch, ITEM_lpg_cabin_valve,
    ITEM_lpg_hose};

static const struct equipment *gas_gear_of(const struct boat *boat)
{
    for (size_t i = 0; i < sizeof gas_gear / sizeof *gas_gear; i++) {
        size_t index = 0;
        const struct equipment *gear = gear_of_kind(boat, gas_gear[i], &index);
        if (gear != NULL)
            return gear;
    }
    return NULL;
}

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

void gas_rules(const struct rule_run *run)
{
    lockers_check(run);
    const struct boat *boat = run->in->boat;
    const struct equipment *gear = gas_gear_of(boat);
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
}
