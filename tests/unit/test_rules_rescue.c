/* test_rules_rescue.c - raft, beacon and recovery gear that she does not have: each check
 * of the family told, and not told. */
#include "rules_rows.h"

#define FAR BASE_WITH(CENTRE, ", sea_area: A2", "")

static const struct rule_row rows[] = {
    {"raft_missing", {.boat = BOAT NOT_FITTED("liferaft")}, 2, "liferaft is not fitted",
     {.boat = BOAT GEAR PIECE("liferaft, zone: coachroof")}},
    {"beacon_missing", {.boat = BOAT NOT_FITTED("epirb")}, 2,
     "epirb is not fitted: where VHF fails nothing else calls for help",
     {.boat = BOAT NOT_FITTED("epirb"), .base = FAR}},
    {"beacon_missing_beyond_a1", {.boat = BOAT NOT_FITTED("epirb"), .base = FAR}, 2,
     "the base sails in sea area A2", {.boat = BOAT NOT_FITTED("epirb")}},
    {"lifting_gear_missing", {.boat = BOAT NOT_FITTED("recovery_tackle, recovery_sling")}, 2,
     "neither recovery_tackle nor recovery_sling is fitted",
     {.boat = BOAT GEAR PIECE("recovery_sling, zone: pushpit") NOT_FITTED("recovery_tackle")}},
    {"ladder_missing", {.boat = BOAT NOT_FITTED("boarding_ladder")}, 2,
     "boarding_ladder is not fitted",
     {.boat = BOAT GEAR PIECE("boarding_ladder, zone: transom")}},
};

const struct rule_table rule_table_rescue = RULE_TABLE(rescue_rules, rows);

int main(void)
{
    return rows_run(&rule_table_rescue);
}
