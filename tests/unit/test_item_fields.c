/* test_item_fields.c - the table item x field: complete, and an entry with a fact that is
 * none of its gear is refused. */
#include "boat_case.h"

#include "item_states.h"

static void every_field_has_its_row_and_key(void **state)
{
    (void)state;
    assert_int_equal(equipment_fields()->count, GEAR_FIELD_COUNT - 1);
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        assert_ptr_equal(gear_field_row(field), &equipment_fields()->fields[field - 1]);
        assert_int_equal(gear_field_find(gear_field_word(field)), field);
    }
    assert_string_equal(gear_field_word(GEAR_reach_inverted), "reach_inverted");
    assert_string_equal(gear_field_word(GEAR_kind), "kind");
    assert_string_equal(gear_field_word(GEAR_FIELD_NONE), "");
    assert_null(gear_field_row(GEAR_FIELD_NONE));
    assert_int_equal(gear_field_find("bore_m"), GEAR_FIELD_NONE);
}

static void every_field_belongs_to_some_gear(void **state)
{
    (void)state;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        size_t carriers = 0;
        for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
            carriers += item_field(item, field) != BELONGS_NOT ? 1 : 0;
        if (carriers == 0)
            fail_msg("%s belongs to no gear", gear_field_word(field));
        if (field_is_general(field) != (carriers == ITEM_COUNT - 1))
            fail_msg("%s belongs to %zu items", gear_field_word(field), carriers);
    }
}

static void gear_has_its_facts(void **state)
{
    (void)state;
    static const struct {
        enum item_key item;
        enum gear_field field;
        enum belonging how;
    } rows[] = {
        {ITEM_liferaft, GEAR_painter, BELONGS_MUST},
        {ITEM_seacock, GEAR_name, BELONGS_MUST},
        {ITEM_torch, GEAR_name, BELONGS_MAY},
        {ITEM_seacock, GEAR_how, BELONGS_MUST},
        {ITEM_torch, GEAR_zone, BELONGS_MUST},
        {ITEM_seacock, GEAR_bore_mm, BELONGS_ASKED},
        {ITEM_fire_port, GEAR_bore_mm, BELONGS_MAY},
        {ITEM_lifejacket, GEAR_bore_mm, BELONGS_NOT},
        {ITEM_lifejacket, GEAR_kg_low, BELONGS_ASKED},
        {ITEM_lifejacket, GEAR_kg, BELONGS_NOT},
        {ITEM_lifejacket, GEAR_expires, BELONGS_MAY},
        {ITEM_epirb, GEAR_expires, BELONGS_ASKED},
        {ITEM_engine_stop, GEAR_serves, BELONGS_ASKED},
        {ITEM_lifejacket, GEAR_serves, BELONGS_NOT},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        if (item_field(rows[i].item, rows[i].field) != rows[i].how)
            fail_msg("%s of %s", gear_field_word(rows[i].field), item_word(rows[i].item));
}

/* A boat with two engines asks of each piece which one it serves. */
static void gear_that_each_engine_has_may_say_which(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        assert_int_equal(item_field(item, GEAR_serves) == BELONGS_ASKED,
                         item_kind_of(item)->by_engine);
}

static void a_fact_of_other_gear_is_refused(void **state)
{
    (void)state;
    gear_of("item: lifejacket, tag: E8, zone: saloon, bore_mm: 25, gas: butane, discharge_s: 9");
    assert_false(sound);
    expect_errors(3);
    expect_error_with(3, "bore_mm does not belong to lifejacket",
                      "take it out, or move it to the gear it is a fact of; bore_mm belongs to\n"
                      "fire_port, seacock, shaft_seal");
    expect_error_with(3, "gas does not belong to lifejacket", "lpg_locker, lpg_bottle_valve");
    expect_error_with(3, "discharge_s does not belong to lifejacket",
                      "engine_extinguisher, fixed_extinguisher, fire_extinguisher");
}

static void the_field_of_its_own_that_was_meant_is_named(void **state)
{
    (void)state;
    gear_of("item: lifejacket, tag: E8, zone: saloon, kg: 50");
    expect_errors(1);
    expect_error_with(3, "kg does not belong to lifejacket", "did you mean \"kg_low\"?");
}

/* What else is wrong with the entry is told alone. */
static void a_fact_of_no_known_gear_is_not_judged(void **state)
{
    (void)state;
    gear_of("item: lifejackt, tag: E8, zone: saloon, bore_mm: 25");
    expect_errors(1);
    expect_error_with(3, "lifejackt", "lifejacket");
}

/* A value that was refused is told of once; an empty one is none. */
static void what_is_not_given_belongs_nowhere(void **state)
{
    (void)state;
    gear_of("item: lifejacket, tag: E8, zone: saloon, bore_mm: wide, gas: ");
    expect_errors(1);
    expect_error_with(3, "\"bore_mm\" must be a number", "write");
}

/* Facts that any piece of gear can have. */
static void general_facts_stand_on_all(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        if (item == ITEM_vhf_dsc)
            continue;
        test.problems = problems_new(test.arena);
        gear_of(text_format(test.arena,
                            "item: %s, tag: %c1, zone: saloon, side: port, spot: here, name: A, "
                            "how: {%s: pull}, count: 2, at: [6.00, -1.00], serial: A1, size: L, "
                            "inside: [], from_cockpit: no, locked: no, below: yes, "
                            "reach_inverted: no, expires: 2027-04, service_due: 2027, "
                            "serviced: 2026, made: 2020, installed: 2021",
                            item_word(item), (char)item_kind_of(item)->class,
                            end_state_words[item_use(item) - 1]));
        expect_errors(0);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_field_has_its_row_and_key),
        TEST(every_field_belongs_to_some_gear),
        TEST(gear_has_its_facts),
        TEST(gear_that_each_engine_has_may_say_which),
        TEST(a_fact_of_other_gear_is_refused),
        TEST(the_field_of_its_own_that_was_meant_is_named),
        TEST(a_fact_of_no_known_gear_is_not_judged),
        TEST(what_is_not_given_belongs_nowhere),
        TEST(general_facts_stand_on_all),
    };
    int failed = cmocka_run_group_tests_name("item_fields", tests, NULL, NULL);
    return failed != 0;
}
