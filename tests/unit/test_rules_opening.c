/* test_rules_opening.c - openings in the hull and their bungs: each check of the family
 * told, and not told. */
#include "rules_rows.h"

#define COCK(place, facts) PIECE("seacock, zone: " place facts)
#define MEASURED ", bore_mm: 25, depth_m: 0.3"
#define WHOLE MEASURED ", bung_mm: 25"
#define INTAKE COCK("engine_space", ", name: intake" WHOLE)
#define WITH(facts) {.boat = BOAT GEAR COCK("engine_space", facts)}

static const struct rule_row rows[] = {
    {"bung_unrecorded", WITH(MEASURED), 3, "no bung is recorded for seacock", WITH(WHOLE)},
    {"bung_unrecorded", WITH(MEASURED ", valve: yes"), 3, "no bung is recorded for seacock",
     WITH(MEASURED ", valve: no")},
    {"opening_without_stop", WITH(MEASURED ", valve: no"), 3,
     "has no valve, and no bung is recorded for it", WITH(WHOLE ", valve: no")},
    {"bung_misfit", WITH(MEASURED ", bung_mm: 24"), 3, "it may slip through", WITH(WHOLE)},
    {"bung_misfit", WITH(MEASURED ", bung_mm: 38"), 3, "it may not go in",
     WITH(MEASURED ", bung_mm: 37")},
    {"opening_unmeasured", WITH(", bore_mm: 25"), 3, "depth_m of seacock is not recorded",
     WITH(MEASURED)},
    {"opening_unmeasured", WITH(""), 3, "bore_mm and depth_m of seacock are not recorded",
     WITH(MEASURED)},
    {"seacock_stiff", WITH(", works: stiff"), 3, "is recorded as stiff",
     WITH(", works: freely")},
    {"seacock_stiff", WITH(", works: seized"), 3, "is recorded as seized",
     WITH(", how: {shut: \"across, not stiff\"}")},
    {"openings_too_few", {.boat = BOAT_WITH(", openings: 2") GEAR INTAKE}, 1,
     "she has 2 openings, but only 1 are recorded",
     {.boat = BOAT_WITH(", openings: 1") GEAR INTAKE}},
    {"openings_too_many", {.boat = BOAT_WITH(", openings: 1") GEAR INTAKE INTAKE}, 1,
     "she has 1 openings, but 2 are recorded",
     {.boat = BOAT_WITH(", openings: 2") GEAR INTAKE INTAKE}},
    {"openings_uncounted", {.boat = BOAT GEAR INTAKE}, 1, "recorded one by one: 1",
     {.boat = BOAT_WITH(", openings: 1") GEAR INTAKE}},
    {"opening_expected", {.boat = BOAT GEAR COCK("saloon", "")}, 1,
     "no opening is recorded for the engine in engine_space", {.boat = BOAT GEAR INTAKE}},
    {"opening_expected", {.boat = BOAT GEAR COCK("saloon", ", name: engine intake")}, 1,
     "no opening is recorded for the engine in engine_space",
     {.boat = BOAT GEAR COCK("saloon", ", leads_to: engine")}},
    {"opening_expected",
     {.boat = BOAT GEAR INTAKE PIECE("torch, zone: galley") COCK("saloon", ", leads_to: toilet")},
     4, "such as the sink's drain",
     {.boat = BOAT GEAR INTAKE PIECE("torch, zone: galley") COCK("saloon", ", leads_to: sink")}},
    {"opening_expected",
     {.boat = BOAT GEAR INTAKE PIECE("fire_blanket, zone: galley, side: port")}, 4,
     "no opening is recorded for galley, such as the sink's drain",
     {.boat = BOAT GEAR INTAKE PIECE("fire_blanket, zone: galley, side: port")
          COCK("galley", ", side: port")}},
    {"opening_expected", {.boat = BOAT GEAR INTAKE PIECE("torch, zone: aft_heads")}, 4,
     "such as the inlet and outlet of its toilet",
     {.boat = BOAT GEAR INTAKE PIECE("torch, zone: aft_heads") COCK("aft_heads", "")}},
};

const struct rule_table rule_table_opening = RULE_TABLE(opening_rules, rows);

int main(void)
{
    return rows_run(&rule_table_opening);
}
