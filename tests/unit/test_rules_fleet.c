/* test_rules_fleet.c - one identity on two boats: each check of the family told, and not
 * told. */
#include "rules_case.h"

#define RADIO(call_sign, mmsi) "radio: {call_sign: " call_sign ", mmsi: " mmsi "}\n"
#define EPIRB(identity) "equipment:\n  - {item: epirb, zone: saloon, hex_id: \"" identity "\"}\n"
#define FIRST RADIO("\"9A2345\"", "\"238 014 810\"") EPIRB("9DCD0 00134 00001")

struct pair {
    const char *check, *second;
    int line;
};

/* Both files under their keys; what the second boat is told. */
static bool second_owns(const char *first, const char *second)
{
    struct identities *all = identities_new(test.arena);
    assert_true(identities_add(all, file_of("ana.yaml", first), "ana"));
    const struct source *hers = file_of("ida.yaml", second);
    assert_true(identities_add(all, hers, "ida"));
    return identities_own(all, "ida", hers, test.problems);
}

static void each_identity_told_of_two(void **state)
{
    (void)state;
    static const struct pair pairs[] = {
        {"mmsi_twice", RADIO("\"9A2346\"", "\"238014810\"") EPIRB("9DCD0 00134 00002"), 1},
        {"call_sign_twice", RADIO("9a2345", "\"238014811\"") EPIRB("9DCD0 00134 00002"), 1},
        {"beacon_twice", RADIO("\"9A2346\"", "\"238014811\"") EPIRB("9dcd00013400001"), 3},
    };
    for (size_t i = 0; i < sizeof pairs / sizeof *pairs; i++) {
        test.problems = problems_new(test.arena);
        assert_false(second_owns(FIRST, pairs[i].second));
        assert_int_equal(told_count(), 1);
        expect_told(pairs[i].check, "is that of ana too (ana.yaml:", pairs[i].line);
    }
}

static void own_identities_are_silent(void **state)
{
    (void)state;
    assert_true(second_owns(FIRST, RADIO("\"9A2346\"", "\"238014811\"")
                                       EPIRB("9DCD0 00134 00002")));
    assert_true(second_owns(RADIO("none", ""), RADIO("none", "")));
    assert_int_equal(told_count(), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(each_identity_told_of_two),
                                       TEST(own_identities_are_silent)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
