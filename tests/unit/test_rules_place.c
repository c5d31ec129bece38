/* test_rules_place.c - where gear is against reach, level and what lies beside it: each check of
 * the family told, and not told. */
#include "rules_rows.h"

#define HAS(piece) {.boat = BOAT GEAR PIECE(piece)}
#define TWIN_HAS(piece) {.boat = CATAMARAN GEAR PIECE(piece)}
#define BESIDE(piece, other) {.boat = BOAT GEAR PIECE(piece) PIECE(other)}

static const struct rule_row rows[] = {
    {"reach_against_place", HAS("lifejacket, zone: forward_cabin, from_cockpit: yes"), 3,
     "without going below, but forward_cabin is entered for it (line 3)",
     HAS("lifejacket, zone: forward_cabin, from_cockpit: no")},
    {"reach_against_place", HAS("epirb, zone: aft_cabin_port, from_cockpit: yes"), 3,
     "aft_cabin_port is entered for it", HAS("epirb, zone: companionway, from_cockpit: yes")},
    {"reach_against_place", TWIN_HAS("epirb, zone: port_hull, from_cockpit: yes"), 3,
     "port_hull is entered for it", TWIN_HAS("epirb, zone: bridgedeck, from_cockpit: yes")},
    {"reach_against_place",
     HAS("knife, zone: cockpit_locker, inside: [aft_cabin_port], from_cockpit: yes"), 3,
     "aft_cabin_port is entered for it",
     HAS("knife, zone: cockpit_locker, inside: [cockpit_locker], from_cockpit: yes")},
    {"reach_against_place",
     HAS("bilge_pump_electric, zone: bilge, from: {zone: aft_cabin}, from_cockpit: yes"), 3,
     "aft_cabin is entered for it",
     HAS("bilge_pump_electric, zone: aft_cabin, from: {zone: cockpit}, from_cockpit: yes")},
    {"reach_against_place", HAS("knife, zone: forward_heads, from_cockpit: yes"), 3,
     "forward_heads is entered for it", HAS("knife, zone: saloon, from_cockpit: yes")},
    {"cockpit_out_of_reach", HAS("vhf_handheld, zone: cockpit, from_cockpit: no"), 3,
     "is in the cockpit, but said to be reached from below only",
     HAS("vhf_handheld, zone: cockpit, from_cockpit: no, below: yes")},
    {"cockpit_out_of_reach", HAS("knife, zone: cockpit, from_cockpit: no"), 3, "from below only",
     {.boat = BOAT "radio: {tag: E1, zone: cockpit}\n"}},
    {"level_against_place", HAS("knife, zone: saloon, below: no"), 3,
     "is said not to be below, but saloon is below deck", HAS("knife, zone: saloon, below: yes")},
    {"level_against_place", HAS("knife, zone: coachroof, below: yes"), 3,
     "is said to be below, but coachroof is open deck", HAS("knife, zone: coachroof, below: no")},
    {"level_against_place", HAS("knife, zone: foredeck, below: yes"), 3, "foredeck is open deck",
     HAS("knife, zone: cockpit_locker, below: yes")},
    {"side_beside_sided", BESIDE("torch, zone: saloon", "knife, zone: saloon, side: port"), 3,
     "a neighbour is: torch", BESIDE("torch, zone: saloon, side: centre",
                                     "knife, zone: saloon, side: port")},
    {"side_beside_sided", BESIDE("knife, zone: aft_cabin_port", "torch, zone: aft_cabin"), 4,
     "is to port", BESIDE("knife, zone: aft_cabin_port", "torch, zone: saloon")},
};

const struct rule_table rule_table_place = RULE_TABLE(place_rules, rows);

int main(void)
{
    return rows_run(&rule_table_place);
}
