/* test_rules_gas.c - cooking gas against the gear for it, and what shares its locker:
 * each check of the family told, and not told. */
#include "rules_rows.h"

#define BOTTLE PIECE("lpg_bottle_valve, zone: gas_locker, side: port")
#define DRAINING(where) "gas: {carried: yes, locker_drains: " where "}\n"
#define JACKETS(place) PIECE("lifejacket, zone: " place)

static const struct rule_row rows[] = {
    {"locker_shared", {.boat = BOAT GEAR BOTTLE JACKETS("gas_locker, side: port")}, 4,
     "lifejacket lies in one locker with lpg_bottle_valve",
     {.boat = BOAT GEAR BOTTLE JACKETS("cockpit_locker, side: port")}},
    {"locker_shared", {.boat = BOAT GEAR PIECE("petrol_stowage, zone: lazarette")
                           JACKETS("lazarette")}, 4,
     "lifejacket lies in one locker with petrol_stowage",
     {.boat = BOAT GEAR PIECE("petrol_stowage, zone: lazarette") JACKETS("saloon")}},
    {"gas_denied", {.boat = BOAT GAS("no") GEAR BOTTLE}, 2,
     "gas is not carried, but lpg_bottle_valve is recorded",
     {.boat = BOAT GAS("yes") GEAR BOTTLE}},
    {"gas_denied", {.boat = BOAT GAS("no") GEAR PIECE("lpg_hose, zone: galley")}, 2,
     "gas is not carried, but lpg_hose is recorded",
     {.boat = BOAT GAS("no") GEAR PIECE("cooker, zone: galley")}},
    {"gas_unrecorded", {.boat = BOAT NOT_FITTED("lpg_bottle_valve")}, 2,
     "whether she carries gas is not recorded",
     {.boat = BOAT GAS("no") NOT_FITTED("lpg_bottle_valve")}},
    {"gas_drain_unrecorded", {.boat = BOAT GAS("yes") GEAR BOTTLE}, 2,
     "where the gas locker drains to is not recorded",
     {.boat = BOAT DRAINING("overboard") GEAR BOTTLE}},
    {"gas_drain_unrecorded", {.boat = BOAT GEAR BOTTLE}, 1, "gas may run into the boat",
     {.boat = BOAT GAS("no")}},
    {"gas_drain_inboard", {.boat = BOAT DRAINING("inboard") GEAR BOTTLE}, 2,
     "the gas locker drains into the boat", {.boat = BOAT DRAINING("overboard") GEAR BOTTLE}},
    {"gas_drain_inboard", {.boat = BOAT DRAINING("none") GEAR BOTTLE}, 2,
     "the gas locker has no drain", {.boat = BOAT GAS("yes") GEAR BOTTLE}},
};

const struct rule_table rule_table_gas = RULE_TABLE(gas_rules, rows);

int main(void)
{
    return rows_run(&rule_table_gas);
}
