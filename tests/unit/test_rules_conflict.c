/* test_rules_conflict.c - facts of one record that stand against each other: each check
 * of the family told, and not told. */
#include "rules_rows.h"

#define ISOLATOR(kind, cuts) PIECE("battery_isolator_" kind ", zone: cockpit, cuts: [" cuts "]")
#define HANDHELD PIECE("vhf_handheld, zone: cockpit, from_cockpit: yes")
#define HAND_PUMP PIECE("bilge_pump_manual, zone: cockpit")
#define EPIRB(zone, facts) PIECE("epirb, zone: " zone ", hex_id: \"9DCD00013400001\"" facts)
#define PUMP(measured) \
    PIECE("bilge_pump_electric, zone: bilge, rated_lph: 12000, measured_lpm: " measured)

static const struct rule_row rows[] = {
    {"isolator_unrecorded", {.boat = BOAT GEAR PIECE("battery_isolator_service, zone: cockpit")}, 3,
     "whether battery_isolator_service cuts the radio and the pumps is not recorded",
     {.boat = BOAT GEAR ISOLATOR("service", "")}},
    {"isolator_unrecorded", {.boat = BOAT GEAR PIECE("battery_isolator_engine, zone: cockpit")}, 3,
     "whether battery_isolator_engine cuts",
     {.boat = BOAT GEAR PIECE("battery_isolator_thruster, zone: cockpit")}},
    {"isolator_cuts_radio", {.boat = BOAT GEAR ISOLATOR("engine", "vhf_dsc") HANDHELD}, 3,
     "with it off only a handheld calls for help",
     {.boat = BOAT GEAR ISOLATOR("service", "vhf_dsc") HANDHELD}},
    {"isolator_cuts_pumps", {.boat = BOAT GEAR ISOLATOR("engine", "bilge_pump_electric") HAND_PUMP},
     3, "with it off nothing pumps by itself",
     {.boat = BOAT GEAR ISOLATOR("service", "bilge_pump_electric") HAND_PUMP}},
    {"isolator_leaves_no_radio",
     {.boat = BOAT GEAR ISOLATOR("service", "vhf_dsc") NOT_FITTED("vhf_handheld")}, 3,
     "no handheld can be reached from the cockpit",
     {.boat = BOAT GEAR ISOLATOR("service", "vhf_dsc") HANDHELD}},
    {"isolator_leaves_no_pump",
     {.boat = BOAT GEAR ISOLATOR("service", "bilge_pump_electric")
          NOT_FITTED("bilge_pump_manual")}, 3, "she has no hand pump",
     {.boat = BOAT GEAR ISOLATOR("service", "bilge_pump_electric") HAND_PUMP}},
    {"pump_over_label", {.boat = BOAT GEAR PUMP("200.1")}, 3,
     "is measured at 200.1 litres a minute, more than the 12000 litres an hour of its label",
     {.boat = BOAT GEAR PUMP("200")}},
    {"control_inside", {.boat = BOAT GEAR PIECE("engine_stop, zone: engine_space")}, 3,
     "engine_stop lies inside engine_space",
     {.boat = BOAT GEAR PIECE("engine_stop, zone: cockpit")}},
    {"control_inside",
     {.boat = BOAT GEAR PIECE("fuel_shutoff_diesel, zone: cockpit, inside: [engine_space]")}, 3,
     "fuel_shutoff_diesel lies inside engine_space",
     {.boat = BOAT GEAR PIECE("fuel_shutoff_diesel, zone: cockpit, inside: [cockpit_locker]")}},
    {"control_inside", {.boat = BOAT GEAR PIECE("fixed_extinguisher, zone: engine_space")}, 3,
     "fixed_extinguisher lies inside engine_space",
     {.boat = BOAT GEAR PIECE("fixed_extinguisher, zone: engine_space, automatic: yes")}},
    {"gas_valve_below", {.boat = BOAT GEAR PIECE("lpg_bottle_valve, zone: saloon")}, 3,
     "its gas stays in the boat", {.boat = BOAT GEAR PIECE("lpg_bottle_valve, zone: gas_locker")}},
    {"identity_twice", {.boat = BOAT GEAR EPIRB("saloon", "") EPIRB("cockpit", "")}, 4,
     "epirb has the identity 9DCD00013400001, as has epirb on line 3",
     {.boat = BOAT GEAR EPIRB("saloon", "")}},
    {"identity_of_several", {.boat = BOAT GEAR EPIRB("saloon", ", count: 2")}, 3,
     "is 2 pieces, but 9DCD00013400001 is the number of one",
     {.boat = BOAT GEAR EPIRB("saloon", ", count: 1")}},
    {"serial_twice", {.boat = BOAT GEAR PIECE("liferaft, zone: coachroof, serial: R 100")
                          PIECE("liferaft, zone: transom, serial: r100")}, 4,
     "liferaft has the serial number r100, as has liferaft on line 3",
     {.boat = BOAT GEAR PIECE("liferaft, zone: coachroof, serial: R 100")
          PIECE("dinghy, zone: transom, serial: R 100")}},
};

const struct rule_table rule_table_conflict = RULE_TABLE(conflict_rules, rows);

int main(void)
{
    return rows_run(&rule_table_conflict);
}
