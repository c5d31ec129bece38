/* gas_rules.c - whether she carries cooking gas, against the gear for it that is recorded
 * (room: rules). Where gas: none is written no card speaks of gas. */
#include "rules_room.h"

#include "text.h"

static const char *const gas_gear[] = {"lpg_locker", "lpg_bottle_valve", "lpg_remote_switch",
                                       "lpg_cabin_valve", "lpg_hose"};

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

void gas_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct equipment *gear = gas_gear_of(boat);
    const struct text_value *gas = &boat->facts.gas;
    if (text_equal(gas->text, "none") && gear != NULL)
        rule_tell(run, CHECK_gas_denied, gas->place,
                  "write gas: carried, or take the gear for gas out of equipment",
                  "gas: none, but %s is recorded: the cards would not speak of gas",
                  gear_named(run, gear));
    if (gas->text == NULL && boat_fitted(boat, "lpg_bottle_valve") == ANSWER_NO)
        rule_tell(run, CHECK_gas_unrecorded, place_not_fitted(boat, "lpg_bottle_valve", NULL),
                  "write gas: none in the section boat if nothing aboard burns gas, else gas: "
                  "carried",
                  "lpg_bottle_valve is not fitted, and whether she carries gas is not recorded: "
                  "the cards take it that she does");
}
