/* test_rules_tag.c - pieces that fell out of the record: each check of the family told,
 * and not told. */
#include "rules_rows.h"

#define TORCH(tag) PIECE("torch, zone: saloon, spot: rack " tag ", tag: " tag)
#define GIVEN(tags) "tags_given: [" tags "]\n"

static const struct rule_row rows[] = {
    {"tag_missing", {.boat = BOAT GEAR TORCH("C1") TORCH("C3") GIVEN("C3")}, 3,
     "tag C2 is on no piece of the record",
     {.boat = BOAT GEAR TORCH("C1") TORCH("C3") "retired_tags: [C2]\n" GIVEN("C3")}},
    {"tag_missing", {.boat = BOAT GEAR TORCH("C1") GIVEN("C3")}, 3,
     "tags C2, C3 are on no piece of the record", {.boat = BOAT GEAR TORCH("C1") GIVEN("C1")}},
    {"tags_given_behind", {.boat = BOAT GEAR TORCH("C1") TORCH("C2") GIVEN("C1")}, 5,
     "tag C2 was given, but tags_given has C1 as the last",
     {.boat = BOAT GEAR TORCH("C1") TORCH("C2") GIVEN("C2")}},
    {"tags_given_unrecorded", {.boat = BOAT GEAR TORCH("C1")}, 1, "tags_given is not recorded",
     {.boat = BOAT GEAR TORCH("C1") GIVEN("C1")}},
};

const struct rule_table rule_table_tag = RULE_TABLE(tag_rules, rows);

int main(void)
{
    return rows_run(&rule_table_tag);
}
