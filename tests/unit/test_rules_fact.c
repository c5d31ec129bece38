/* test_rules_fact.c - checks of single fields: each row of the family's table told, and
 * not told. */
#include "rules_rows.h"

/* Monohull, and catamaran, with one piece in the saloon. */
#define HAS(piece) {.boat = BOAT GEAR PIECE(piece)}
#define TWIN_HAS(piece) {.boat = CATAMARAN GEAR PIECE(piece)}

/* From deck or not: asked of what lies below. */
#define REACH(item) \
    {"reach_unrecorded", HAS(item ", zone: saloon"), 3, item " lies below", \
     HAS(item ", zone: saloon, from_cockpit: no")}

#define MADE_FAST(item) \
    {"beacon_made_fast", HAS(item ", zone: saloon, lanyard: made_fast"), 3, \
     item " is tied to the boat by its own line", HAS(item ", zone: saloon, lanyard: stowed")}

#define CAPSIZED(item) \
    {"inverted_out_of_reach", TWIN_HAS(item ", zone: port_hull, reach_inverted: no"), 3, \
     item " cannot be reached when she has capsized", \
     HAS(item ", zone: saloon, reach_inverted: no")}, \
    {"inverted_unrecorded", TWIN_HAS(item ", zone: port_hull"), 3, \
     item " may be out of reach when she has capsized", \
     TWIN_HAS(item ", zone: port_hull, reach_inverted: yes")}

#define RAFT "liferaft, zone: coachroof"

#define ANCHOR "anchor_main, zone: anchor_locker"

static const struct rule_row rows[] = {
    {"chain_end_loose", HAS(ANCHOR ", chain_end: loose"), 3, "all of it can run out",
     HAS(ANCHOR ", chain_end: cord")},
    {"chain_end_fixed", HAS(ANCHOR ", chain_end: shackle"), 3,
     "is held at the end of its chain by a shackle", HAS(ANCHOR ", chain_end: loose")},
    {"chain_end_unrecorded", HAS(ANCHOR), 3, "by what no knife cuts: that is not recorded",
     HAS(ANCHOR ", chain_end: shackle")},
    {"ladder_from_deck", HAS("boarding_ladder, zone: transom, from_water: no"), 3,
     "cannot be let down by a swimmer",
     {.boat = BOAT GEAR PIECE("boarding_ladder, zone: transom, from_water: no")
          PIECE("boarding_ladder, zone: side_deck, from_water: yes")}},
    {"gear_untried", HAS("emergency_tiller, zone: lazarette"), 3,
     "has no date on which it was tried",
     HAS("emergency_tiller, zone: lazarette, tried: 2026-05")},
    {"gear_untried", HAS("recovery_tackle, zone: lazarette"), 3,
     "has no date on which it was tried",
     HAS("recovery_tackle, zone: lazarette, tried: 2026-05-03")},
    REACH("lifejacket"),
    REACH("fire_extinguisher"),
    REACH("vhf_handheld"),
    REACH("epirb"),
    REACH("grab_bag"),
    {"reach_unrecorded", HAS("epirb, zone: cockpit, below: yes"), 3, "epirb lies below",
     HAS("epirb, zone: cockpit")},
    {"pump_feed_unrecorded", HAS("bilge_pump_electric, zone: bilge"), 3,
     "may be fed by the generator", HAS("bilge_pump_electric, zone: bilge, fed_by: battery")},
    {"gear_locked", HAS(RAFT ", locked: yes"), 3, "liferaft is under lock",
     HAS(RAFT ", locked: no")},
    {"pump_not_from_cockpit", HAS("bilge_pump_manual, zone: saloon, from_cockpit: no"), 3,
     "cannot be worked from the cockpit",
     {.boat = BOAT GEAR PIECE("bilge_pump_manual, zone: saloon, from_cockpit: no")
          PIECE("bilge_pump_manual, zone: cockpit, from_cockpit: yes")}},
    {"gas_switch_fails_open", HAS("lpg_remote_switch, zone: galley, fails_shut: no"), 3,
     "leaves the gas open when the current fails",
     HAS("lpg_remote_switch, zone: galley, fails_shut: yes")},
    {"gas_switch_unrecorded", HAS("lpg_remote_switch, zone: galley"), 3,
     "may leave the gas open when the current fails",
     HAS("lpg_remote_switch, zone: galley, fails_shut: no")},
    {"gas_valve_kind_unrecorded", HAS("lpg_bottle_valve, zone: gas_locker"), 3,
     "is not said to be a handwheel",
     HAS("lpg_bottle_valve, zone: gas_locker, kind: handwheel")},
    {"raft_line_unrecorded", HAS(RAFT ", release: slip hook"), 3, "has no painter recorded",
     HAS(RAFT ", release: slip hook, painter: chainplate")},
    {"raft_line_unrecorded", HAS(RAFT ", painter: chainplate"), 3, "has no release recorded",
     HAS(RAFT ", release: slip hook, painter: chainplate")},
    {"raft_persons_unrecorded", HAS(RAFT), 3, "is not said to be for how many people",
     HAS(RAFT ", persons: 6")},
    MADE_FAST("epirb"),
    MADE_FAST("personal_beacon"),
    MADE_FAST("sart"),
    {"beacon_line_unrecorded", HAS("epirb, zone: saloon"), 3,
     "may be tied to the boat by its own line", HAS("epirb, zone: saloon, lanyard: stowed")},
    CAPSIZED("grab_bag"),
    CAPSIZED("vhf_handheld"),
    CAPSIZED("epirb"),
    CAPSIZED("liferaft"),
    CAPSIZED("flares"),
    CAPSIZED("knife"),
    {"handheld_out_of_reach", HAS("vhf_handheld, zone: saloon, from_cockpit: no"), 3,
     "cannot be reached from the cockpit",
     {.boat = BOAT GEAR PIECE("vhf_handheld, zone: saloon, from_cockpit: no")
          PIECE("vhf_handheld, zone: cockpit, from_cockpit: yes")}},
    {"handheld_not_charged", HAS("vhf_handheld, zone: saloon, charged: no"), 3,
     "is not kept charged", HAS("vhf_handheld, zone: saloon, charged: yes")},
    {"handheld_charge_unrecorded", HAS("vhf_handheld, zone: saloon"), 3,
     "whether it is kept charged is not recorded",
     HAS("vhf_handheld, zone: saloon, charged: no")},
    {"handheld_in_charger", HAS("vhf_handheld, zone: cockpit, in_charger: yes"), 3,
     "no card fetches it from there where there is gas",
     HAS("vhf_handheld, zone: cockpit, in_charger: no")},
    {"handheld_charger_unrecorded", HAS("vhf_handheld, zone: cockpit"), 3,
     "may stand in its charger", HAS("vhf_handheld, zone: cockpit, in_charger: yes")},
};

const struct rule_table rule_table_fact = RULE_TABLE(fact_rules, rows);

int main(void)
{
    return rows_run(&rule_table_fact);
}
