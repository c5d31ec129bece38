/* test_rules_fire.c - what puts a fire out and gives notice of it: each check of the
 * family told, and not told. */
#include "rules_rows.h"

#define PORT PIECE("fire_port, zone: companionway")
#define EXTINGUISHER(facts) PIECE("engine_extinguisher, zone: companionway" facts)
#define FITS ", fits_port: yes"
#define BANK(facts) PIECE("lithium_bank, zone: saloon, space: saloon" facts)
#define ALARM(kind) PIECE(kind "_alarm, zone: saloon")
#define BOTTLE PIECE("lpg_bottle_valve, zone: gas_locker")

static const struct rule_row rows[] = {
    {"engine_space_unprotected", {.boat = BOAT NOT_FITTED("fire_port, fixed_extinguisher")}, 2,
     "the engine space has neither a fire port nor a fixed extinguisher",
     {.boat = BOAT GEAR PORT NOT_FITTED("fixed_extinguisher")}},
    {"engine_space_unprotected",
     {.boat = CATAMARAN GEAR PIECE("fire_port, zone: cockpit, side: port, "
                                   "serves: engine_space_port")
          "not_fitted:\n  - {item: fire_port, serves: engine_space_starboard}\n"
          "  - fixed_extinguisher\n"}, 5,
     "engine_space_starboard has neither",
     {.boat = CATAMARAN GEAR PIECE("fire_port, zone: cockpit, side: port, "
                                   "serves: [engine_space_port, engine_space_starboard]")
          NOT_FITTED("fixed_extinguisher")}},
    {"port_without_extinguisher", {.boat = BOAT GEAR PORT NOT_FITTED("engine_extinguisher")}, 3,
     "fire_port has no extinguisher to go into it", {.boat = BOAT GEAR PORT EXTINGUISHER(FITS)}},
    {"extinguisher_without_port", {.boat = BOAT GEAR EXTINGUISHER("") NOT_FITTED("fire_port")}, 3,
     "is for a fire port, but there is none", {.boat = BOAT GEAR PORT EXTINGUISHER("")}},
    {"port_extinguisher_misfit", {.boat = BOAT GEAR PORT EXTINGUISHER(", fits_port: no")}, 4,
     "engine_extinguisher does not fit the fire port",
     {.boat = BOAT GEAR PORT EXTINGUISHER(FITS)}},
    {"port_fit_unrecorded", {.boat = BOAT GEAR PORT EXTINGUISHER(FITS) EXTINGUISHER("")}, 5,
     "whether engine_extinguisher fits the fire port is not recorded",
     {.boat = BOAT GEAR PORT EXTINGUISHER(FITS) EXTINGUISHER(FITS)}},
    {"lithium_vent_unrecorded", {.boat = BOAT GEAR BANK("")}, 3,
     "where the gas of lithium_bank leaves the boat is not recorded",
     {.boat = BOAT GEAR BANK(", vents_to: deck")}},
    {"alarm_missing", {.boat = BOAT GEAR ALARM("co") NOT_FITTED("smoke_alarm")}, 4,
     "smoke_alarm is not fitted: people asleep below must be woken",
     {.boat = BOAT GEAR ALARM("co") ALARM("smoke")}},
    {"alarm_unrecorded", {.boat = BOAT GEAR ALARM("smoke")}, 1, "co_alarm is not recorded",
     {.boat = BOAT GEAR ALARM("co") ALARM("smoke")}},
    {"alarm_unrecorded", {.boat = BOAT GEAR BOTTLE ALARM("co") ALARM("smoke")}, 1,
     "gas_alarm is not recorded: she carries gas",
     {.boat = BOAT GEAR BOTTLE ALARM("co") ALARM("smoke") ALARM("gas")}},
};

const struct rule_table rule_table_fire = RULE_TABLE(fire_rules, rows);

int main(void)
{
    return rows_run(&rule_table_fire);
}
