/* test_item_states.c - the states of each kind of gear, and handling that is given by them. */
#include "boat_case.h"

#include "item_states.h"

static void every_item_has_a_use(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        enum end_state use = item_use(item);
        assert_true(use != STATE_ANY && item_has_state(item, use));
        assert_int_equal(item_state_field(item, use), GEAR_how);
        assert_false(item_has_state(item, STATE_ANY));
    }
}

/* What tells of a state is a fact of such gear. */
static void states_are_told_by_fields_of_the_item(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        for (enum end_state to = STATE_ANY + 1; to < STATE_COUNT; to++) {
            enum gear_field field = item_state_field(item, to);
            if (field != GEAR_FIELD_NONE && item_field(item, field) == BELONGS_NOT)
                fail_msg("%s does not belong to %s", gear_field_word(field), item_word(item));
        }
}

static void what_shuts_or_is_switched_is_contrary(void **state)
{
    (void)state;
    assert_true(item_is_contrary(ITEM_seacock));
    assert_true(item_is_contrary(ITEM_battery_isolator_engine));
    assert_true(item_is_contrary(ITEM_hatch));
    assert_true(item_is_contrary(ITEM_throttle));
    assert_true(item_is_contrary(ITEM_front_sail_roller));
    assert_true(item_is_contrary(ITEM_windlass));
    assert_false(item_is_contrary(ITEM_engine_start));
    assert_false(item_is_contrary(ITEM_mainsail_down));
    assert_false(item_is_contrary(ITEM_liferaft));
    assert_false(item_is_contrary(ITEM_epirb));
    assert_string_equal(item_states_joined(ITEM_seacock, test.arena), "shut, open, leave");
    assert_string_equal(item_handled_joined(ITEM_liferaft, test.arena), "pull");
}

/* OUT on a card about fire is a fire that is dead: nothing that fights one is left so. */
static void few_pieces_are_left_out(void **state)
{
    (void)state;
    static const enum item_key left_out[] = {ITEM_fender, ITEM_front_sail_roller, ITEM_drogue,
                                             ITEM_NONE};
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        assert_int_equal(item_has_state(item, STATE_OUT), item_among(left_out, item));
}

static const struct equipment *piece_of(const char *entry)
{
    return gear_of(entry)->equipment;
}

static const char *handling(const struct equipment *gear, enum end_state to)
{
    const struct text_value *text = gear_handling_of(gear, to);
    return text == NULL ? "-" : text->text;
}

static void handling_is_read_by_state(void **state)
{
    (void)state;
    const struct equipment *gear =
        piece_of("item: seacock, tag: C9, zone: saloon, how: {shut: across, open: along}");
    expect_errors(0);
    assert_string_equal(handling(gear, STATE_SHUT), "across");
    assert_string_equal(handling(gear, STATE_OPEN), "along");
    assert_string_equal(handling(gear, STATE_ANY), "-");
    assert_string_equal(handling(gear, STATE_LEAVE), "-");
}

/* Three states, and a lever that one text would leave in any of them. */
static void a_lever_is_handled_by_each_state(void **state)
{
    (void)state;
    const struct equipment *gear = piece_of(
        "item: throttle, tag: C9, zone: cockpit, how: {neutral: upright, ahead: forward}");
    expect_errors(0);
    assert_string_equal(handling(gear, STATE_NEUTRAL), "upright");
    assert_string_equal(handling(gear, STATE_AHEAD), "forward");
    assert_string_equal(handling(gear, STATE_ASTERN), "-");
    piece_of("item: throttle, tag: C9, zone: cockpit, how: push it");
    expect_error(3, "how of throttle is one text, but its states are neutral, ahead, astern: a "
                 "hand must know which it leads to",
                 "write one for each: how: {neutral: ..., ahead: ..., astern: ...}");
}

static void a_state_may_be_told_by_language(void **state)
{
    (void)state;
    const struct equipment *gear = piece_of(
        "item: inverter_switch, tag: C9, zone: saloon, how: {off: {en: down, de: unten}}");
    expect_errors(0);
    const struct text_value *text = gear_handling_of(gear, STATE_OFF);
    assert_string_equal(text_for(text, "de"), "unten");
    assert_string_equal(text_for(text, "en"), "down");
    assert_string_equal(handling(gear, STATE_ON), "-");
}

/* Also by language, or under the word of its state. */
static void one_use_has_one_text(void **state)
{
    (void)state;
    static const char *const forms[] = {"push in", "{use: push in}", "{en: push in, de: rein}"};
    for (size_t i = 0; i < 3; i++) {
        const struct equipment *gear =
            piece_of(text_format(test.arena, "item: fire_port, tag: F9, zone: saloon, how: %s",
                                forms[i]));
        expect_errors(0);
        assert_string_equal(handling(gear, STATE_USE), "push in");
        assert_string_equal(handling(gear, STATE_ANY), "push in");
        assert_string_equal(handling(gear, STATE_ON), "-");
    }
}

static void one_text_of_two_states_is_refused(void **state)
{
    (void)state;
    static const struct { const char *how, *remedy; } rows[] = {
        {"across = shut", "write how: {shut: across}"},
        {"along pipe = open", "write how: {open: along pipe}"},
        {"stiff", "write one for each: how: {shut: ..., open: ...}"},
        {"\"up = open, down = shut\"", "write how: {open: up, shut: down}"},
        {"\"lift, down = shut\"", "write one for each: how: {shut: ..., open: ...}"},
        {"up = off", "write one for each: how: {shut: ..., open: ...}"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        test.problems = problems_new(test.arena);
        gear_of(text_format(test.arena, "item: seacock, tag: C9, zone: saloon, how: %s",
                            rows[i].how));
        expect_errors(1);
        expect_error_with(3, "how of seacock is one text, but its states are shut, open",
                          rows[i].remedy);
    }
}

static void states_of_other_gear_are_refused(void **state)
{
    (void)state;
    static const struct { const char *gear, *what, *remedy; } rows[] = {
        {"seacock, tag: C9, zone: saloon, how: {off: across}",
         "seacock has no handling for the state off", "states of seacock: shut, open"},
        {"seacock, tag: C9, zone: saloon, how: {leave: alone}",
         "seacock has no handling for the state leave", "states of seacock: shut, open"},
        {"seacock, tag: C9, zone: saloon, how: {shutt: across}", "\"how\" has no \"shutt\"",
         "did you mean \"shut\"?"},
        {"liferaft, tag: E9, zone: saloon, how: {tied: ring}",
         "how of liferaft does not tell how it comes to be tied", "write it as painter: ..."},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        test.problems = problems_new(test.arena);
        gear_of(text_format(test.arena, "item: %s", rows[i].gear));
        expect_errors(1);
        expect_error_with(3, rows[i].what, rows[i].remedy);
    }
}

/* A state that is yet to be filled in is none. */
static void an_empty_state_is_not_recorded(void **state)
{
    (void)state;
    const struct equipment *gear =
        piece_of("item: seacock, tag: C9, zone: saloon, how: {shut: , open: along}");
    expect_errors(0);
    assert_string_equal(handling(gear, STATE_SHUT), "-");
    test.problems = problems_new(test.arena);
    gear_of("item: seacock, tag: C9, zone: saloon, how: {shut: tbd}");
    expect_errors(1);
    expect_error_with(3, "how is \"tbd\"", "record how a hand works it");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_item_has_a_use),
        TEST(states_are_told_by_fields_of_the_item),
        TEST(what_shuts_or_is_switched_is_contrary),
        TEST(few_pieces_are_left_out),
        TEST(a_lever_is_handled_by_each_state),
        TEST(handling_is_read_by_state),
        TEST(a_state_may_be_told_by_language),
        TEST(one_use_has_one_text),
        TEST(one_text_of_two_states_is_refused),
        TEST(states_of_other_gear_are_refused),
        TEST(an_empty_state_is_not_recorded),
    };
    int failed = cmocka_run_group_tests_name("item_states", tests, NULL, NULL);
    return failed != 0;
}
