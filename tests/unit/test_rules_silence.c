/* test_rules_silence.c - the silenced checks themselves: each check of the family told,
 * and not told. Told alone, without the other families, no silence was of use. */
#include "rules_rows.h"

#define SILENCED(check, until) \
    {.boat = BOAT "silenced:\n  - {check: " check ", reason: fitter ordered, until: " until "}\n"}

static const struct rule_row rows[] = {
    {"silence_unknown", SILENCED("seacock_stif", "2027-01"), 3, "there is no check `seacock_stif`",
     SILENCED("seacock_stiff", "2027-01")},
    {"silence_of_error", SILENCED("mmsi_length", "2027-01"), 3,
     "check mmsi_length tells what holds cards back: it cannot be silenced",
     SILENCED("seacock_stiff", "2027-01")},
    {"silence_of_error", SILENCED("silence_idle", "2027-01"), 3, "tells what silences there are",
     SILENCED("seacock_stiff", "2027-01")},
    {"silence_lapsed", SILENCED("seacock_stiff", "2026-10"), 3,
     "the silence of check seacock_stiff lapsed on 2026-10",
     SILENCED("seacock_stiff", "2026-11-27")},
    {"silence_lapsed", SILENCED("seacock_stiff", "2026-11-26"), 3,
     "lapses on 2026-11-26, before the boat is back on 2026-11-27",
     SILENCED("seacock_stiff", "2026-11")},
    {"silence_idle", SILENCED("seacock_stiff", "2027-01"), 3,
     "check seacock_stiff finds nothing that had to be silenced",
     SILENCED("seacock_stiff", "2026-10")},
};

const struct rule_table rule_table_silence = RULE_TABLE(silence_rules, rows);

/* ---- with another family before it ---- */

#define STIFF \
    BOAT "silenced:\n  - {check: seacock_stiff, reason: fitter ordered, until: 2027-01}\n" GEAR \
    PIECE("seacock, zone: engine_space, works: stiff")

static void both_run(const struct rule_run *run)
{
    opening_rules(run);
    silence_rules(run);
}

static void a_silence_of_use_is_no_idle_one(void **state)
{
    (void)state;
    const struct rule_case stiff = {.boat = STIFF};
    case_run(both_run, &stiff);
    const struct problem *silenced = told_by("seacock_stiff");
    assert_non_null(silenced);
    assert_int_equal(silenced->severity, SEVERITY_SILENCED);
    assert_non_null(strstr(silenced->what, "(silenced until 2027-01: fitter ordered)"));
    assert_null(told_by("silence_idle"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(a_silence_of_use_is_no_idle_one)};
    return rows_run(&rule_table_silence) + cmocka_run_group_tests(tests, NULL, NULL);
}
