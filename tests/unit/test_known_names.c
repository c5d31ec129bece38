/* test_known_names.c - which key a word was meant for: by a name, a slip, a part of it; and that
 * every synonym of the words files leads to a key that there is. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "boat.h"
#include "known_names.h"
#include "words.h"
#include "yaml_edit_house.h"

static int arena_set_up(void **state)
{
    *state = arena_new((size_t)64 * 1024 * 1024);
    return 0;
}

static int arena_tear_down(void **state)
{
    arena_free(*state);
    return 0;
}

static void signs_and_case_make_no_other_name(void **state)
{
    assert_string_equal(name_plain(*state, "First-aid kit"), "first aid kit");
    assert_string_equal(name_plain(*state, "first_aid_kit"), "first aid kit");
    assert_string_equal(name_plain(*state, "  Écoutille,  avant. "), "ecoutille avant");
    assert_string_equal(name_plain(*state, "--"), "");
}

static const char *const keys[] = {"fuel_shutoff_diesel", "first_aid_kit", "liferaft",
                                   "battery_engine", "battery_service", "loa_m", NULL};
static const struct known_name rows[] = {
    {"fuel valve", "fuel_shutoff_diesel", "Fuel valve"},
    {"fuel cock", "fuel_shutoff_diesel", "Fuel valve"},
    {"first aid kit", "first_aid_kit", "First-aid kit"},
    {"main switch", "battery_engine", "Engine battery"},
    {"main switch", "battery_service", "Service battery"},
    {"raft", "liferaft", "Raft"},
    {"stern locker", "lazarette", "Aft locker"},
};
static const struct known_names known = {rows, sizeof rows / sizeof *rows, NULL};

/* What is said of a word that is no key, and the one key that it was meant for. */
static void words_are_understood(void **state)
{
    static const struct { const char *word, *remedy, *key; } cases[] = {
        {"Fuel valve", "write fuel_shutoff_diesel (\"Fuel valve\" on the cards)",
         "fuel_shutoff_diesel"},
        {"fuel-cock", "write fuel_shutoff_diesel (\"Fuel valve\" on the cards)",
         "fuel_shutoff_diesel"},
        {"First aid kit", "write first_aid_kit (\"First-aid kit\" on the cards)",
         "first_aid_kit"},
        {"fuel vlave", "did you mean fuel_shutoff_diesel (\"Fuel valve\" on the cards)?",
         "fuel_shutoff_diesel"},
        {"liferatf", "did you mean \"liferaft\"?", "liferaft"},
        {"first_aid", "did you mean first_aid_kit (\"First-aid kit\" on the cards)?",
         "first_aid_kit"},
        {"loa", "did you mean \"loa_m\"?", "loa_m"},
        {"main switch", "write one of:\n  battery_engine (\"Engine battery\" on the cards)\n"
                        "  battery_service (\"Service battery\" on the cards)", NULL},
        {"battery", "write one of:\n  battery_engine (\"Engine battery\" on the cards)\n"
                    "  battery_service (\"Service battery\" on the cards)", NULL},
        {"stern locker", "look it up", NULL},    /* the name of no key that may stand here */
        {"kit of aid", "look it up", NULL},
        {"", "look it up", NULL},
        {"?", "look it up", NULL},
    };
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        const char *key = known_key(*state, &known, cases[i].word, keys);
        assert_string_equal(known_remedy(*state, &known, cases[i].word, keys, "look it up"),
                            cases[i].remedy);
        assert_true(text_equal(key, cases[i].key));
    }
}

static void without_names_the_keys_are_their_own(void **state)
{
    assert_string_equal(known_remedy(*state, NULL, "First aid kit", keys, "look it up"),
                        "write first_aid_kit");
    assert_string_equal(known_remedy(*state, NULL, "fuel valve", keys, "look it up"),
                        "look it up");
}

/* ---- the words files ---- */

static void field_seek(const struct field_path *path, void *context)
{
    const char **wanted = context;
    if (*wanted != NULL && text_equal(path->field->key, *wanted))
        *wanted = NULL;
    if (*wanted != NULL && path->field->choices != NULL &&
        choice_find(path->field->choices, *wanted) > 0)
        *wanted = NULL;
}

/* Is it a key of a base's files, or a word that may stand in them? */
static bool is_known_there(const char *key)
{
    fields_walk(base_file_fields(), field_seek, &key);
    fields_walk(boat_file_fields(), field_seek, &key);
    return key == NULL;
}

static void synonyms_lead_to_what_there_is(void **state)
{
    struct edit_bench bench = file_bench("procedures/words/en/words.yaml");
    struct problems *problems = problems_new(bench.arena);
    const struct words *words = words_read(bench.source, "en", bench.arena, problems);
    struct known_names names = words_known(&(struct languages){&words, 1}, bench.arena);
    (void)state;
    assert_non_null(words);
    assert_true(names.count > 500);
    for (size_t i = 0; i < names.count; i++) {
        const struct known_name *row = &names.rows[i];
        if (!is_known_there(row->key))
            fail_msg("%s leads to %s, which is nowhere", row->name, row->key);
        assert_true(row->name[0] != '\0');
        for (size_t k = 0; k < i; k++)
            if (text_equal(names.rows[k].name, row->name) && row->printed == NULL &&
                text_equal(names.rows[k].key, row->key))
                fail_msg("%s stands twice for %s", row->name, row->key);
    }
    arena_free(bench.arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(signs_and_case_make_no_other_name),
        cmocka_unit_test(words_are_understood),
        cmocka_unit_test(without_names_the_keys_are_their_own),
        cmocka_unit_test(synonyms_lead_to_what_there_is),
    };

    return cmocka_run_group_tests_name("known_names", tests, arena_set_up, arena_tear_down) != 0;
}
