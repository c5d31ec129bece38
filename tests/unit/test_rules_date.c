/* test_rules_date.c - gear out of date, and dates that cannot be: each check of the
 * family told, and not told. The charter is 2026-11-20 to 2026-11-27. */
#include "rules_rows.h"

#define FLARES(dates) BOAT GEAR PIECE("flares, zone: saloon" dates)
#define RAFT(dates) BOAT GEAR PIECE("liferaft, zone: coachroof" dates)
#define MARGIN BASE_WITH(CENTRE, "", "dates: {margin_days: 30}\n")

static const struct rule_row rows[] = {
    {"gear_expired", {.boat = FLARES(", expires: 2026-10")}, 3,
     "flares is out of date on 2026-11-20: expires 2026-10",
     {.boat = FLARES(", expires: 2026-12")}},
    {"gear_expires_during", {.boat = FLARES(", expires: 2026-11-26")}, 3,
     "flares runs out before the boat is back on 2026-11-27",
     {.boat = FLARES(", expires: 2026-11-27")}},
    {"gear_inside_margin", {.boat = FLARES(", expires: 2026-12-10"), .base = MARGIN}, 3,
     "flares runs out within the margin after 2026-11-27",
     {.boat = FLARES(", expires: 2026-12-28"), .base = MARGIN}},
    {"gear_date_unknown", {.boat = RAFT("")}, 3, "liferaft has no date: not known to be good",
     {.boat = RAFT(", service_due: 2027-05")}},
    {"gear_date_unknown", {.boat = RAFT(", serviced: 2026-04")}, 3,
     "liferaft has no date that tells how long it is good",
     {.boat = RAFT(", expires: 2027-05")}},
    {"gear_dates_order", {.boat = RAFT(", made: 2025-01-01, serviced: 2024-05-01")}, 3,
     "serviced 2024-05-01 is before made 2025-01-01",
     {.boat = RAFT(", made: 2025-01-01, serviced: 2025-01-01")}},
    {"gear_date_to_come", {.boat = RAFT(", serviced: 2026-11-21")}, 3,
     "serviced 2026-11-21 is after today, 2026-11-20", {.boat = RAFT(", serviced: 2026-11-20")}},
    {"gear_date_to_come",
     {.boat = BOAT GEAR PIECE("emergency_tiller, zone: saloon, tried: 2027")}, 3,
     "tried 2027 is after today, 2026-11-20",
     {.boat = BOAT GEAR PIECE("emergency_tiller, zone: saloon, tried: 2026-11")}},
    {"gear_stamp_too_far", {.boat = RAFT(", service_due: 2127-05")}, 3,
     "service_due 2127-05 is more than 5 years ahead: no liferaft has a stamp so far (trade",
     {.boat = RAFT(", service_due: 2031-11")}},
    {"gear_stamp_too_far", {.boat = FLARES(", expires: 2032-12")}, 3,
     "expires 2032-12 is more than 6 years ahead", {.boat = FLARES(", expires: 2032-11-20")}},
    {"gear_stamp_too_far", {.boat = BOAT GEAR PIECE("torch, zone: saloon, expires: 2052")}, 3,
     "expires 2052 is more than 25 years ahead",
     {.boat = BOAT GEAR PIECE("torch, zone: saloon, expires: 2051")}},
};

const struct rule_table rule_table_date = RULE_TABLE(date_rules, rows);

int main(void)
{
    return rows_run(&rule_table_date);
}
