/* test_absences.c - what a boat does not have: as a whole, or for one engine of two. */
#include "boat_case.h"

#define PORT "engine_space_port"
#define STARBOARD "engine_space_starboard"
#define PORT_SPACE ZONE_engine_space_port
#define STARBOARD_SPACE ZONE_engine_space_starboard

static const struct boat *catamaran_of(const char *gear, const char *not_fitted)
{
    return boat_of(text_format(test.arena, CATAMARAN "equipment:\n%snot_fitted: [%s]\n", gear,
                               not_fitted));
}

#define VALVE(tag, space) \
    "  - {item: fuel_shutoff_diesel, tag: " tag ", zone: cockpit, spot: " tag ", serves: [" \
    space "]}\n"

static void one_engine_may_have_none(void **state)
{
    (void)state;
    const struct boat *boat = catamaran_of(
        VALVE("C1", PORT), "{item: fuel_shutoff_diesel, serves: [" STARBOARD "]}, torch");
    expect_errors(0);
    assert_int_equal(boat_fitted(boat, ITEM_fuel_shutoff_diesel), ANSWER_YES);
    assert_int_equal(boat_fitted_for(boat, ITEM_fuel_shutoff_diesel, PORT_SPACE), ANSWER_YES);
    assert_int_equal(boat_fitted_for(boat, ITEM_fuel_shutoff_diesel, STARBOARD_SPACE), ANSWER_NO);
    assert_int_equal(boat_fitted_for(boat, ITEM_fuel_shutoff_diesel, ZONE_NONE), ANSWER_YES);
    assert_int_equal(boat_fitted(boat, ITEM_torch), ANSWER_NO);
    assert_int_equal(boat_fitted_for(boat, ITEM_torch, PORT_SPACE), ANSWER_NO);
    assert_null(boat_absence(boat, ITEM_fuel_shutoff_diesel, ZONE_NONE));
    assert_int_equal(boat_absence(boat, ITEM_fuel_shutoff_diesel, STARBOARD_SPACE)->place.line, 4);
    assert_true(boat_absence(boat, ITEM_torch, PORT_SPACE)->whole);
}

static void nothing_said_of_an_engine_is_not_recorded(void **state)
{
    (void)state;
    const struct boat *boat = catamaran_of(
        VALVE("C1", PORT), "{item: engine_stop, serves: " PORT "}");
    expect_errors(0);
    assert_int_equal(boat_fitted_for(boat, ITEM_fuel_shutoff_diesel, STARBOARD_SPACE),
                     ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted_for(boat, ITEM_engine_stop, PORT_SPACE), ANSWER_NO);
    assert_int_equal(boat_fitted_for(boat, ITEM_engine_stop, STARBOARD_SPACE), ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted(boat, ITEM_engine_stop), ANSWER_NOT_RECORDED);
}

static void each_engine_without_one_is_the_boat_without(void **state)
{
    (void)state;
    const struct boat *boat = catamaran_of(
        "", "{item: engine_stop, serves: [" PORT "]}, {item: engine_stop, serves: [" STARBOARD
        "]}, {item: fire_port, serves: [" PORT ", " STARBOARD "]}");
    expect_errors(0);
    assert_int_equal(boat_fitted(boat, ITEM_engine_stop), ANSWER_NO);
    assert_int_equal(boat_fitted(boat, ITEM_fire_port), ANSWER_NO);
    assert_int_equal(boat_fitted(boat, ITEM_engine_blower), ANSWER_NOT_RECORDED);
}

/* A piece that may serve the engine, until it is said to have none. */
static void a_piece_of_some_engine_may_serve_this(void **state)
{
    (void)state;
    const char *stop = "  - {item: engine_stop, tag: C1, zone: cockpit}\n";
    assert_int_equal(boat_fitted_for(catamaran_of(stop, ""), ITEM_engine_stop, PORT_SPACE),
                     ANSWER_YES);
    const struct boat *boat = catamaran_of(stop, "{item: engine_stop, serves: [" PORT "]}");
    expect_errors(0);
    assert_int_equal(boat_fitted_for(boat, ITEM_engine_stop, PORT_SPACE), ANSWER_NO);
    assert_int_equal(boat_fitted_for(boat, ITEM_engine_stop, STARBOARD_SPACE), ANSWER_YES);
}

static void contradictions_are_told(void **state)
{
    (void)state;
    static const struct { const char *not_fitted, *what; } rows[] = {
        {"{item: fuel_shutoff_diesel, serves: [" PORT "]}",
         "fuel_shutoff_diesel for " PORT " is in not_fitted, but the piece on line 3 serves it"},
        {"fuel_shutoff_diesel",
         "fuel_shutoff_diesel is in not_fitted, but it is recorded on line 3"},
        {"{item: torch, serves: [" PORT "]}",
         "torch for " PORT " is in not_fitted, but the piece on line 4 serves it"},
        {"{item: engine_stop, serves: [engine_space]}", "this boat has no engine_space"},
        {"engine_stop, {item: engine_stop, serves: [" PORT "]}",
         "engine_stop is in not_fitted twice (first on line 5)"},
        {"engine_stop, engine_stop", "engine_stop is in not_fitted twice (first on line 5)"},
        {"{item: engine_stop, serves: [" PORT "]}, engine_stop",
         "engine_stop is in not_fitted twice (first on line 5)"},
        {"{item: fire_port, serves: [" PORT "]}, {item: fire_port, serves: [" PORT "]}",
         "fire_port is in not_fitted twice (first on line 5)"},
        {"{item: fire_prot, serves: [" PORT "]}", "\"item\" cannot be \"fire_prot\""},
        {"{item: fire_port}", "an entry of not_fitted needs the key \"serves\""},
        {"{item: fire_port, serves: [saloon]}", "\"serves\" cannot be \"saloon\""},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        catamaran_of(VALVE("C1", PORT) "  - {item: torch, tag: C2, zone: cockpit}\n",
                     rows[i].not_fitted);
        expect_errors(1);
        expect_error(5, rows[i].what, NULL);
        assert_false(sound);
    }
}

static void the_remedy_names_the_engine_without(void **state)
{
    (void)state;
    catamaran_of(VALVE("C1", PORT), "fuel_shutoff_diesel");
    expect_error(4, "fuel_shutoff_diesel is in not_fitted, but it is recorded on line 3",
                 "keep the one that is true; if " STARBOARD " alone has none, write\n"
                 "  - {item: fuel_shutoff_diesel, serves: [" STARBOARD "]}");
    test.problems = problems_new(test.arena);
    catamaran_of(VALVE("C1", PORT) VALVE("C2", STARBOARD), "fuel_shutoff_diesel");
    expect_error(5, "fuel_shutoff_diesel is in not_fitted, but it is recorded on line 3",
                 "keep the one that is true");
}

static void a_list_is_a_list(void **state)
{
    (void)state;
    boat_of(MONOHULL "not_fitted: {torch: no}\n");
    expect_errors(1);
    expect_error_with(2, "not_fitted", "list");
    test.problems = problems_new(test.arena);
    boat_of(MONOHULL "not_fitted: [torch, knife, torch]\n");
    expect_errors(1);
    expect_error_with(2, "not_fitted", "torch");
}

/* Neither one that serves it nor one that may: nobody has looked. */
static void what_nobody_looked_for_is_not_recorded(void **state)
{
    (void)state;
    const struct boat *boat = catamaran_of(
        VALVE("C1", PORT) "  - {item: engine_stop, tag: C2, zone: cockpit}\n",
        "sart]\nnot_surveyed: [torch, {item: fuel_shutoff_diesel, serves: [" STARBOARD "]}, "
        "{item: engine_stop, serves: [" PORT "]}");
    expect_errors(0);
    assert_int_equal(boat_fitted(boat, ITEM_torch), ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted(boat, ITEM_fuel_shutoff_diesel), ANSWER_YES);
    assert_int_equal(boat_fitted_for(boat, ITEM_fuel_shutoff_diesel, STARBOARD_SPACE),
                     ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted_for(boat, ITEM_engine_stop, PORT_SPACE), ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted_for(boat, ITEM_engine_stop, STARBOARD_SPACE), ANSWER_YES);
    assert_non_null(boat_unsurveyed(boat, ITEM_torch, PORT_SPACE));
    assert_null(boat_unsurveyed(boat, ITEM_engine_stop, STARBOARD_SPACE));
    assert_non_null(boat_unsurveyed(boat, ITEM_engine_stop, ZONE_NONE));
    assert_null(boat_unsurveyed(boat, ITEM_sart, ZONE_NONE));
}

static void what_was_looked_for_is_not_unsurveyed(void **state)
{
    (void)state;
    static const struct { const char *lists, *what; } rows[] = {
        {"sart]\nnot_surveyed: [fuel_shutoff_diesel",
         "fuel_shutoff_diesel is in not_surveyed, but it is recorded on line 3"},
        {"sart]\nnot_surveyed: [{item: fuel_shutoff_diesel, serves: [" PORT "]}",
         "fuel_shutoff_diesel for " PORT " is in not_surveyed, but the piece on line 3 serves it"},
        {"sart]\nnot_surveyed: [sart", "sart is in not_surveyed, but line 4 says that it is not "
         "fitted"},
        {"sart]\nnot_surveyed: [{item: sart, serves: [" PORT "]}",
         "sart is in not_surveyed, but line 4 says that it is not fitted"},
        {"{item: engine_stop, serves: [" PORT "]}]\nnot_surveyed: [engine_stop",
         "engine_stop is in not_surveyed, but line 4 says that it is not fitted"},
        {"sart]\nnot_surveyed: [knife, knife",
         "knife is in not_surveyed twice (first on line 5)"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        test.problems = problems_new(test.arena);
        catamaran_of(VALVE("C1", PORT), rows[i].lists);
        expect_errors(1);
        expect_error(5, rows[i].what, NULL);
        assert_false(sound);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(one_engine_may_have_none),
        TEST(nothing_said_of_an_engine_is_not_recorded),
        TEST(each_engine_without_one_is_the_boat_without),
        TEST(a_piece_of_some_engine_may_serve_this),
        TEST(contradictions_are_told),
        TEST(the_remedy_names_the_engine_without),
        TEST(a_list_is_a_list),
        TEST(what_nobody_looked_for_is_not_recorded),
        TEST(what_was_looked_for_is_not_unsurveyed),
    };
    int failed = cmocka_run_group_tests_name("absences", tests, NULL, NULL);
    return failed != 0;
}
