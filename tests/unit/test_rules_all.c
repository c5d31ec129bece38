/* test_rules_all.c - no check without a row in the test of its family. */
#include "rules_rows.h"

#define RULE_TABLE_ROW(name) &rule_table_##name,
static const struct rule_table *const tables[] = {RULE_TABLES(RULE_TABLE_ROW)};
#undef RULE_TABLE_ROW

/* Told across boats: test_rules_fleet.c. */
static const char *const of_fleet[] = {"mmsi_twice", "call_sign_twice", "beacon_twice"};

static bool has_row(const char *check)
{
    for (size_t i = 0; i < sizeof of_fleet / sizeof *of_fleet; i++)
        if (text_equal(of_fleet[i], check))
            return true;
    for (size_t i = 0; i < sizeof tables / sizeof *tables; i++)
        for (size_t k = 0; k < tables[i]->count; k++)
            if (text_equal(tables[i]->rows[k].check, check))
                return true;
    return false;
}

static void every_check_has_a_row(void **state)
{
    (void)state;
    size_t looked_at = 0;
    for (size_t i = 0; check_at(i) != NULL; i++) {
        if (check_at(i)->family)
            continue;
        looked_at++;
        if (!has_row(check_at(i)->id))
            fail_msg("check %s has no row in tests/unit/test_rules_*.c", check_at(i)->id);
    }
    assert_true(looked_at > 100);
}

static void every_row_names_a_check(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof tables / sizeof *tables; i++)
        for (size_t k = 0; k < tables[i]->count; k++)
            if (check_find(tables[i]->rows[k].check) == NULL)
                fail_msg("there is no check %s", tables[i]->rows[k].check);
}

/* With a boat of which some piece could not be read: how many problems the check told. */
static size_t told_of_unclear_gear(enum check_name name)
{
    static const struct boat boat = {.gear_unclear = true};
    struct rules_input input = {.boat = &boat};
    struct rule_run run = {.in = &input, .arena = test.arena,
                           .problems = problems_new(test.arena)};
    size_t count;
    rule_tell(&run, name, (struct place){0}, "look", "too few");
    (void)problems_sorted(run.problems, &count);
    return count;
}

static void what_finds_too_little_waits_for_all_gear(void **state)
{
    (void)state;
    size_t lacks = 0;
    for (enum check_name name = 0; check_at(name) != NULL; name++) {
        bool waits = check_at(name)->lack;
        lacks += waits ? 1 : 0;
        assert_int_equal(told_of_unclear_gear(name), waits ? 0 : 1);
    }
    assert_true(lacks > 10);
    assert_true(check_at(CHECK_jackets_few)->lack);
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(every_check_has_a_row),
                                       TEST(every_row_names_a_check),
                                       TEST(what_finds_too_little_waits_for_all_gear)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
