/* test_rules_unrecorded.c - facts that cards print where they are recorded: each check of
 * the family told, and not told. */
#include "rules_rows.h"

#define HAS(piece) {.boat = BOAT GEAR PIECE(piece)}
#define PROGRAMMED ", dsc: yes, spot: rack, nature_steps: [Turn the knob]"

static const struct rule_row rows[] = {
    {"side_unrecorded", HAS("torch, zone: saloon, tag: C1"), 3, "side is not recorded of C1",
     HAS("torch, zone: saloon, tag: C1, side: port")},
    {"side_unrecorded", {.boat = BOAT GEAR PIECE("torch, zone: saloon, tag: C1")
                             PIECE("knife, zone: saloon, tag: E1")}, 3,
     "side is not recorded of C1, E1", HAS("torch, zone: mast, tag: C1")},
    {"how_unrecorded", HAS("engine_stop, zone: cockpit, tag: C1"), 3, "how is not recorded of C1",
     HAS("engine_stop, zone: cockpit, how: pull out")},
    {"opening_unnamed", HAS("seacock, zone: galley, tag: C1"), 3, "name is not recorded of C1",
     HAS("seacock, zone: galley, tag: C1, name: sink drain")},
    {"extinguisher_unweighed", HAS("fire_extinguisher, zone: galley, tag: F1"), 3,
     "kg is not recorded of F1", HAS("fire_extinguisher, zone: galley, tag: F1, kg: 2")},
    {"pieces_uncounted", HAS("lpg_bottle_valve, zone: gas_locker, tag: C1"), 3,
     "count is not recorded of C1", HAS("lpg_bottle_valve, zone: gas_locker, tag: C1, count: 2")},
    {"lever_unrecorded", HAS("throttle, zone: cockpit, tag: C1"), 3,
     "upright is not recorded of C1: cards cannot say how its lever stands in neutral",
     HAS("throttle, zone: cockpit, tag: C1, upright: no")},
    {"case_fact_unrecorded", HAS("autopilot, zone: cockpit, tag: C1"), 3,
     "drives is not recorded of C1", HAS("autopilot, zone: cockpit, tag: C1, drives: rudder")},
    {"case_fact_unrecorded", HAS("windlass, zone: anchor_locker, tag: C1"), 3,
     "needs_engine is not recorded of C1",
     HAS("windlass, zone: anchor_locker, tag: C1, needs_engine: yes")},
    {"case_fact_unrecorded", HAS("first_aid_kit, zone: saloon, tag: E1"), 3,
     "kit is not recorded of E1", HAS("first_aid_kit, zone: saloon, tag: E1, kit: []")},
    {"case_fact_unrecorded",
     {.boat = BOAT_WITH(", thickest_wire_mm: 8") GEAR PIECE("bolt_cutters, zone: saloon, tag: C1")},
     3, "cuts_mm is not recorded of C1", HAS("torch, zone: saloon, tag: C1")},
    {"case_fact_unrecorded", HAS("bolt_cutters, zone: saloon, tag: C1, cuts_mm: 9"), 1,
     "thickest_wire_mm of the boat is not recorded",
     {.boat = BOAT_WITH(", thickest_wire_mm: 8")
          GEAR PIECE("bolt_cutters, zone: saloon, tag: C1, cuts_mm: 9")}},
    {"boat_fact_unrecorded", {.boat = BOAT}, 1, "looks of the boat is not recorded",
     {.boat = BOAT_WITH(", looks: White sloop")}},
    {"radio_fact_unrecorded", {.boat = BOAT RADIO(PROGRAMMED)}, 2,
     "position_read_at, urgency_steps, silence_steps of the fixed radio are not recorded",
     {.boat = BOAT RADIO(PROGRAMMED ", urgency_steps: [Press CALL], "
                                    "silence_steps: [Press ENT], position_read_at: E9")}},
    {"radio_fact_unrecorded",
     {.boat = BOAT RADIO(PROGRAMMED ", urgency_steps: [Press CALL]")}, 2,
     "position_read_at, silence_steps of the fixed radio are not recorded",
     {.boat = BOAT RADIO(PROGRAMMED ", urgency_steps: [Press CALL], "
                                    "silence_steps: [Press ENT], position_read_at: E9")}},
    {"radio_fact_unrecorded", {.boat = BOAT RADIO(", dsc: no")}, 2,
     "spot, position_read_at of the fixed radio are not recorded",
     {.boat = BOAT RADIO(", dsc: no, spot: rack, position_read_at: plotter")}},
};

const struct rule_table rule_table_unrecorded = RULE_TABLE(unrecorded_rules, rows);

int main(void)
{
    return rows_run(&rule_table_unrecorded);
}
