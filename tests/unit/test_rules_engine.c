/* test_rules_engine.c - engines and rooms against the gear that is recorded: each check of the
 * family told, and not told. */
#include "rules_rows.h"

#define ENGINES(fuel, drive) \
    "engines: [{space: engine_space, fuel: " fuel ", drive: " drive "}]\n"
#define TWO_ENGINES \
    "engines:\n  - {space: engine_space_port, fuel: diesel, drive: shaft}\n" \
    "  - {space: engine_space_starboard, fuel: diesel, drive: shaft}\n"
#define ONE_AND_GENERATOR \
    "engines:\n  - {space: engine_space_port, fuel: diesel, drive: generator}\n" \
    "  - {space: engine_space_starboard, fuel: diesel, drive: shaft}\n"
#define STOP PIECE("engine_stop, zone: cockpit, serves: [engine_space_port]")

static const struct rule_row rows[] = {
    {"engine_denied", {.boat = BOAT ENGINES("diesel", "shaft") GEAR
                           PIECE("generator_stop, zone: saloon")}, 2,
     "engines has no generator, but generator_stop is recorded",
     {.boat = BOAT ENGINES("diesel", "generator") GEAR PIECE("generator_stop, zone: saloon")}},
    {"engine_denied", {.boat = BOAT ENGINES("petrol", "shaft") GEAR
                           PIECE("fuel_shutoff_diesel, zone: saloon")}, 2,
     "engines has no engine that burns diesel, but fuel_shutoff_diesel is recorded",
     {.boat = BOAT ENGINES("diesel", "shaft") GEAR PIECE("fuel_shutoff_diesel, zone: saloon")}},
    {"engine_denied", {.boat = BOAT ENGINES("diesel", "shaft") GEAR
                           PIECE("fuel_shutoff_petrol, zone: saloon")}, 2,
     "engines has no petrol engine in a space of hers, but fuel_shutoff_petrol is recorded",
     {.boat = BOAT ENGINES("petrol", "shaft") GEAR PIECE("fuel_shutoff_petrol, zone: saloon")}},
    {"engines_unrecorded", {.boat = BOAT}, 1, "her engines are not recorded",
     {.boat = BOAT ENGINES("diesel", "shaft")}},
    {"engine_fact_unrecorded", {.boat = BOAT "engines: [{space: engine_space, drive: shaft}]\n"},
     2, "fuel of the engine in engine_space: not recorded",
     {.boat = BOAT ENGINES("diesel", "shaft")}},
    {"engine_fact_unrecorded", {.boat = BOAT "engines: [{space: engine_space, fuel: diesel}]\n"},
     2, "drive of the engine in engine_space: not recorded",
     {.boat = BOAT ENGINES("electric", "pod")}},
    {"engine_fact_unrecorded", {.boat = BOAT "engines: [{drive: outboard}]\n"}, 2,
     "fuel of an outboard: not recorded", {.boat = BOAT}},
    {"engine_lost", {.boat = CATAMARAN ONE_AND_GENERATOR GEAR STOP}, 3,
     "engine_stop serves engine_space_port, where no engine that drives her is recorded",
     {.boat = CATAMARAN TWO_ENGINES GEAR STOP}},
    {"rooms_unrecorded", {.boat = BOAT}, 1, "her rooms are not recorded",
     {.boat = BOAT_WITH(", rooms: []")}},
};

const struct rule_table rule_table_engine = RULE_TABLE(engine_rules, rows);

int main(void)
{
    return rows_run(&rule_table_engine);
}
