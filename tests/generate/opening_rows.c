/* opening_rows.c - the openings in the hull of a generated boat. */
#include "gear.h"

#include <stddef.h>

#define SHUT_WAYS {"{shut: across}", "{shut: across}", "{shut: across pipe}", "{shut: turn right}"}
#define COCK(needs, never, share, doubled, role, names, bore, depth, leads_to, traits) \
    {"seacock", 'C', needs, never, share, doubled, ROLE(role), SHUT_WAYS, names, \
     "leads_to: " leads_to ", bore_mm: " bore ", depth_m: " depth ", bung_mm: " bore, \
     (traits) | ALIKE, 0}
#define NAMES(...) {__VA_ARGS__}

const struct gear_row opening_rows[] = {
    COCK(FACT(FORE_TOILET), 0, 95, 0, FORE_TOILET, NAMES("inlet", "toilet inlet"), "19", "0.35",
         "toilet", EACH_SIDE),
    COCK(FACT(FORE_TOILET), 0, 95, 0, FORE_TOILET, NAMES("outlet", "toilet outlet"), "38", "0.35",
         "toilet", EACH_SIDE),
    COCK(FACT(FORE_TOILET), 0, 60, 0, FORE_TOILET, NAMES("basin drain", "wash basin drain"), "25",
         "0.30", "sink", EACH_SIDE),
    COCK(FACT(FORE_TOILET), 0, 25, 0, FORE_TOILET, NAMES("shower drain"), "25", "0.20", "shower",
         EACH_SIDE),
    COCK(FACT(AFT_TOILET), 0, 95, 0, AFT_TOILET, NAMES("inlet", "toilet inlet"), "19", "0.30",
         "toilet", EACH_SIDE),
    COCK(FACT(AFT_TOILET), 0, 95, 0, AFT_TOILET, NAMES("outlet", "toilet outlet"), "38", "0.30",
         "toilet", EACH_SIDE),
    COCK(FACT(GALLEY), 0, 95, 8, GALLEY, NAMES("sink drain", "sink drain", "double sink drain"),
         "25", "0.20", "sink", 0),
    COCK(FACT(HULLS), 0, 90, 0, HULL, NAMES("sink drain", "deck wash"), "32", "0.10", "sink", 0),
    COCK(FACT(SALOON), 0, 15, 0, SALOON, NAMES("watermaker inlet"), "19", "0.40", "other", 0),
    COCK(FACT(FORE_CABIN), 0, 20, 0, FORE, NAMES("deck wash pump", "log"), "25", "0.40", "pump", 0),
    COCK(FACT(ENGINE_SPACE) | FACT(CABIN), 0, 100, 0, ENGINE, NAMES("intake", "engine intake"),
         "38", "0.45", "engine", EACH_SPACE),
    COCK(FACT(GENERATOR), 0, 70, 0, ENGINE, NAMES("generator", "generator intake"), "25", "0.40",
         "engine", 0),
    COCK(FACT(CABIN) | FACT(ONE_HULL), 0, 55, 30, LOCKER, NAMES("cockpit drain"), "38", "0.10",
         "cockpit_drain", 0),
    {"shaft_seal", 'C', FACT(SHAFT) | FACT(ENGINE_SPACE), 0, 100, 0, ROLE(ENGINE), {0}, {0},
     "bore_mm: 40, depth_m: 0.60, made: 2024-03", EACH_SPACE, 0},
    {"shaft_seal", 'C', FACT(SAILDRIVE) | FACT(ENGINE_SPACE), 0, 100, 0, ROLE(ENGINE), {0},
     {"saildrive seal"}, "bore_mm: 200, depth_m: 0.30, made: 2024-06", EACH_SPACE, 0},
};
const int opening_row_count = sizeof opening_rows / sizeof *opening_rows;
