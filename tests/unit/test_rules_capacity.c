/* test_rules_capacity.c - places in rafts, lifejackets, ratings, carbon dioxide: each
 * check of the family told, and not told. */
#include "rules_rows.h"

static const int heavy_and_light[] = {80, 15}, heavy[] = {80, 60};

#define RAFT(places) PIECE("liferaft, zone: coachroof, persons: " places)
#define JACKETS(facts) PIECE("lifejacket, zone: saloon, " facts)
#define EXTINGUISHER(facts) PIECE("fire_extinguisher, zone: saloon, " facts)

#define CUTTERS(mm) PIECE("bolt_cutters, zone: lazarette, cuts_mm: " mm)
#define WIRE ", thickest_wire_mm: 10"

static const struct rule_row rows[] = {
    {"cutters_too_small", {.boat = BOAT_WITH(WIRE) GEAR CUTTERS("8") CUTTERS("9.5")}, 4,
     "cuts 9.5 mm, and her thickest wire is 10 mm",
     {.boat = BOAT_WITH(WIRE) GEAR CUTTERS("8") CUTTERS("10")}},
    {"persons_too_many", {.boat = BOAT, .persons = 5}, 1,
     "5 people for a boat that may carry 4", {.boat = BOAT, .persons = 4}},
    {"raft_places_few", {.boat = BOAT GEAR RAFT("3")}, 3,
     "places in the raft: 3, people allowed on board: 4", {.boat = BOAT GEAR RAFT("4")}},
    {"raft_places_few", {.boat = BOAT GEAR RAFT("4"), .persons = 5}, 3,
     "places in the raft: 4, people on board: 5", {.boat = BOAT GEAR RAFT("3"), .persons = 3}},
    {"raft_places_without_one", {.boat = BOAT GEAR RAFT("4") RAFT("2")}, 3,
     "without the largest raft 2 places are left for 4 people",
     {.boat = BOAT GEAR RAFT("4") RAFT("4")}},
    {"jackets_few", {.boat = BOAT GEAR JACKETS("count: 3")}, 3,
     "lifejackets: 3, people allowed on board: 4", {.boat = BOAT GEAR JACKETS("count: 4")}},
    {"jackets_few", {.boat = BOAT GEAR JACKETS("count: 4, wearer: child")}, 3,
     "none is for an adult", {.boat = BOAT GEAR JACKETS("count: 4, wearer: adult")}},
    {"jackets_unsized", {.boat = BOAT GEAR JACKETS("count: 4")}, 3,
     "for 4 of 4 lifejackets", {.boat = BOAT GEAR JACKETS("count: 4, kg_low: 40, kg_high: 120")}},
    {"jackets_unfit",
     {.boat = BOAT GEAR JACKETS("count: 4, kg_low: 40"), .kg = heavy_and_light, .persons = 2}, 3,
     "do not fit 1 of 2 people",
     {.boat = BOAT GEAR JACKETS("count: 4, kg_low: 40"), .kg = heavy, .persons = 2}},
    {"rating_without_system", {.boat = BOAT GEAR EXTINGUISHER("rating: 13A 70B")}, 3,
     "names no system", {.boat = BOAT GEAR EXTINGUISHER("rating: en 13A 70B")}},
    {"rating_unknown", {.boat = BOAT GEAR EXTINGUISHER("rating: en B34")}, 3, "cannot be one",
     {.boat = BOAT GEAR EXTINGUISHER("rating: en 34B")}},
    {"co2_in_cabins", {.boat = BOAT_WITH(", cabin_m3: 100") GEAR
                           EXTINGUISHER("agent: co2, kg: 1")}, 3,
     "is stowed in or next to the cabins",
     {.boat = BOAT_WITH(", cabin_m3: 100") GEAR
          PIECE("fire_extinguisher, zone: lazarette, agent: co2, kg: 1")}},
    {"co2_share_unknown", {.boat = BOAT GEAR EXTINGUISHER("agent: co2, kg: 1")}, 3,
     "its share of the cabin's air is not known",
     {.boat = BOAT_WITH(", cabin_m3: 100") GEAR EXTINGUISHER("agent: co2, kg: 1")}},
    {"co2_share", {.boat = BOAT_WITH(", cabin_m3: 36") GEAR EXTINGUISHER("agent: co2, kg: 2")}, 3,
     "makes 3.02 % of the air",
     {.boat = BOAT_WITH(", cabin_m3: 37") GEAR EXTINGUISHER("agent: co2, kg: 2")}},
    {"co2_share", {.boat = BOAT_WITH(", cabin_m3: 37") GEAR EXTINGUISHER("agent: co2, kg: 1")
                       EXTINGUISHER("agent: co2, kg: 2")}, 4,
     "and the others in or next to the cabins",
     {.boat = BOAT_WITH(", cabin_m3: 37") GEAR EXTINGUISHER("agent: co2, kg: 1")
          EXTINGUISHER("agent: powder, kg: 2")}},
};

const struct rule_table rule_table_capacity = RULE_TABLE(capacity_rules, rows);

int main(void)
{
    return rows_run(&rule_table_capacity);
}
