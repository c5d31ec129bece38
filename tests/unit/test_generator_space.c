/* test_generator_space.c - a generator in a space of its own: cards of its own, with its own
 * controls, and nothing of it on those of the engine. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "source.h"
#include "text.h"

#define FILE_LIMIT ((size_t)256 * 1024)

static const char *replaced(const char *text, const char *old, const char *new)
{
    const char *at = strstr(text, old);
    assert_non_null(at);
    return text_format(test.arena, "%.*s%s%s", (int)(at - text), text, new, at + strlen(old));
}

/* The motor yacht of the specimens, with her generator aft in a space of its own. */
static const char *yacht(void)
{
    static const char *const edits[][2] = {
        {"{space: engine_space, fuel: diesel, drive: generator}",
         "{space: generator_space, fuel: diesel, drive: generator}"},
        {"{item: fixed_extinguisher,", "{item: fixed_extinguisher, serves: [engine_space],"},
        {"{item: engine_stop,", "{item: engine_stop, serves: [engine_space],"},
        {"{item: engine_vent_closure,",
         "{item: engine_vent_closure, serves: [engine_space, generator_space],"},
        {"{item: fuel_shutoff_diesel,", "{item: fuel_shutoff_diesel, serves: [engine_space],"},
        {"{item: battery_isolator_engine,",
         "{item: battery_isolator_engine, serves: [engine_space],"},
        {"not_fitted:\n", "not_fitted:\n"
         "  - {item: fixed_extinguisher, serves: [generator_space]}\n"
         "  - {item: battery_isolator_engine, serves: [generator_space]}\n"}};
    struct source *source = NULL;
    assert_int_equal(source_read(test.arena, "tests/islands/boats/thrift.yaml", FILE_LIMIT,
                                 &source), SOURCE_READ);
    const char *text = source->bytes;
    for (size_t i = 0; i < sizeof edits / sizeof *edits; i++)
        text = replaced(text, edits[i][0], edits[i][1]);
    return text;
}

static const struct sheet_set *set_of(const char *boat)
{
    case_base(&test, "tests/islands/base.yaml");
    case_boat(&test, boat);
    return case_compose(&test, false);
}

static bool names(const struct sheet *card, const char *words)
{
    struct text_builder out = text_builder_in(test.arena);
    sheet_dump(card, &out);
    return strstr(out.at, words) != NULL;
}

static void it_has_cards_of_its_own(void **state)
{
    static const struct { const char *key, *number, *title; } cards[] = {
        {"engine_fire_main", "3M", "ENGINE FIRE, MAIN ENGINE"},
        {"engine_fire_generator", "3G", "ENGINE FIRE, GENERATOR"},
        {"diesel_leak_main", "10M", "DIESEL LEAK, MAIN ENGINE"},
        {"diesel_leak_generator", "10G", "DIESEL LEAK, GENERATOR"}};
    const struct sheet_set *set = set_of(yacht());
    (void)state;
    for (size_t i = 0; i < sizeof cards / sizeof *cards; i++) {
        const struct sheet *card = case_card(set, cards[i].key);
        assert_string_equal(card->number, cards[i].number);
        assert_string_equal(sheet_title(card)->title, cards[i].title);
        assert_false(card->held);
    }
}

static void its_own_controls_are_named(void **state)
{
    const struct sheet_set *set = set_of(yacht());
    const struct sheet *fire = case_card(set, "engine_fire_generator");
    const struct sheet *leak = case_card(set, "diesel_leak_generator");
    (void)state;
    assert_string_equal(case_step(fire, "stop")->headline.text, "**STOP** the generator.");
    assert_string_equal(case_step(leak, "stop")->headline.text,
                        "**STOP** the generator. The lid stays shut.");
    assert_true(names(fire, "Generator stop") && names(fire, "Generator fuel valve"));
    assert_false(names(fire, "Engine stop") || names(fire, "ENGINE RUNS"));
    assert_true(names(leak, "Generator stop") && names(leak, "Generator fuel valve"));
}

/* What lies in the one space is not in the fire of the other. */
static void the_other_space_does_not_burn(void **state)
{
    const char *inside = replaced(yacht(), "{item: fire_blanket,",
                                  "{item: torch, tag: C90, zone: generator_space}\n"
                                  "  - {item: fire_blanket,");
    const struct sheet_set *set = set_of(
        replaced(inside, "{item: fuel_shutoff_generator, tag: C5, zone: engine_space, ",
                 "{item: fuel_shutoff_generator, tag: C5, zone: generator_space, "));
    (void)state;
    assert_string_equal(case_step(case_card(set, "engine_fire_main"), "fuel")->headline.text,
                        "**SHUT** the fuel.");
    assert_string_equal(case_step(case_card(set, "engine_fire_main"), "stop")->headline.text,
                        "**STOP** the engine.");
}

static void without_its_stop_the_coastguard_is_told(void **state)
{
    const char *text = replaced(yacht(), "{item: generator_stop, tag: C2, zone: cockpit,",
                                "{item: generator_stop, tag: C2, zone: generator_space,");
    const struct sheet *fire = case_card(set_of(text), "engine_fire_generator");
    (void)state;
    assert_string_equal(case_step(fire, "stop")->headline.text,
                        "**DON’T GO IN.** The generator runs on.");
    assert_true(names(fire, "GENERATOR RUNS"));
    assert_false(names(fire, "ENGINE RUNS"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(it_has_cards_of_its_own),
        cmocka_unit_test(its_own_controls_are_named),
        cmocka_unit_test(the_other_space_does_not_burn),
        cmocka_unit_test(without_its_stop_the_coastguard_is_told),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
