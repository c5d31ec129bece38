/* test_survey_kinds.c - gear of which nothing is recorded, on surveys of boats and on blank ones
 * for new boats, with all that a new file asks for; and the order of a walk. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "starter.h"
#include "survey_case.h"
#include "walk.h"

#define KNIFELESS "  - {item: engine_stop, tag: C4, zone: cockpit, side: port, how: pull}\n"

/* ---- gear of which nothing is recorded ---- */

static size_t lines_of_item(const struct gear_lines *lines, enum item_key item)
{
    size_t count = 0;
    for (size_t i = 0; i < lines->count; i++)
        count += lines->at[i]->cells[1].kind == item_kind_of(item) ? 1 : 0;
    return count;
}

/* Recorded, or said to be absent, or asked for: one of them. */
static void each_kind_of_gear_is_accounted_for(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOATS; b++) {
        const struct boat *boat = case_boat(&test, survey_boats[b]);
        struct compose_input input = input_of(boat);
        struct asked_list asked = survey_asked(&input, test.arena);
        struct gear_lines lines = lines_of(survey_of(boat));
        for (size_t i = 0; i < asked.count; i++) {
            enum item_key item = asked.rows[i].kind->item;
            enum answer fitted = boat_fitted(boat, item);
            size_t count = lines_of_item(&lines, item);
            if ((fitted == ANSWER_NO) != (count == 0))
                fail_msg("%s: %s has %zu lines", survey_boats[b], item_word(item), count);
        }
    }
}

/* Not surveyed yet is asked for, even beside a piece of the same kind. */
static void what_nobody_surveyed_is_asked_for(void **state)
{
    (void)state;
    const char *text = case_boat_text(&test, CASE_RADIO, KNIFELESS,
                                      "  - blankets\nnot_surveyed:\n  - fire_port\n");
    case_boat(&test, text);
    const struct form_facts *form = survey_of(test.boat);
    struct gear_lines lines = lines_of(form);
    assert_int_equal(lines_of_item(&lines, ITEM_fire_port), 1);
    assert_int_equal(lines_of_item(&lines, ITEM_blankets), 0);
    for (size_t i = 0; i < lines.count; i++)
        if (lines.at[i]->cells[1].kind == item_kind_of(ITEM_fire_port))
            assert_true(asks(lines.at[i], "place, side"));
}

#define TWIN \
    "boat: {name: Twin, hull: catamaran, rig: sail, loa_m: 12, beam_m: 6, persons_max: 8}\n" \
    "equipment:\n" \
    "  - {item: engine_extinguisher, tag: F1, zone: engine_space_port,\n" \
    "     serves: [engine_space_port]}\n" \
    "  - {item: torch, tag: C1, zone: engine_space_port}\n" \
    "  - {item: torch, tag: C2, zone: engine_space_starboard}\n"

/* Gear of one engine, recorded of the other alone, is looked for in its own space. */
static void gear_of_an_engine_is_looked_for_in_its_space(void **state)
{
    (void)state;
    case_boat(&test, TWIN);
    struct gear_lines lines = lines_of(survey_of(test.boat));
    size_t twin = line_of(&lines, gear_of_tag(test.boat, "C2")), found = 0;
    for (size_t i = 0; i < lines.count; i++) {
        const struct item_kind *kind = lines.at[i]->cells[1].kind;
        if (zone_of(kind->usual_zone)->family != ZONE_engine_space || !kind->by_engine ||
            strstr(lines.at[i]->cells[2].text, "starboard") == NULL)
            continue;
        assert_ptr_equal(lines.sections[i], lines.sections[twin]);
        found++;
    }
    assert_true(found > 0);
}

static bool is_ticked_somewhere(const struct form_facts *form, const char *words)
{
    for (size_t i = 0; i < form->count; i++)
        for (size_t k = 0; k < form->sections[i].line_count; k++)
            for (size_t q = 0; q < form->sections[i].lines[k].blank_count; q++) {
                const struct form_blank *blank = &form->sections[i].lines[k].blanks[q];
                for (size_t c = 0; c < blank->choice_count; c++)
                    if (strstr(blank->choices[c], words) != NULL)
                        return true;
            }
    return false;
}

static void what_is_not_fitted_is_listed_to_be_ticked(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, KNIFELESS, "  - blankets\n"));
    assert_true(is_ticked_somewhere(survey_of(test.boat), " Blankets"));
    assert_false(is_ticked_somewhere(survey_of(test.boat), " Danbuoy"));
}

/* ---- new boats ---- */

/* The tag that a new file proposes for the item; the fixed radio has a section of its own. */
static const char *tag_in_new_file(const char *file, enum item_key item)
{
    const char *begin = text_format(test.arena, "{item: %s, tag: ", item_word(item));
    const char *at = strstr(file, begin);
    if (at == NULL)
        return "E1";
    at += strlen(begin);
    return arena_copy(test.arena, at, strcspn(at, ","));
}

static void a_new_boat_is_asked_for_what_a_new_file_asks(void **state)
{
    (void)state;
    for (enum hull hull = HULL_MONOHULL; hull < HULL_COUNT; hull++) {
        const struct boat *boat = survey_new_boat(hull, RIG_NONE, test.arena);
        struct compose_input input = input_of(boat);
        struct asked_list asked = survey_asked(&input, test.arena);
        struct gear_lines lines = lines_of(survey_of(boat));
        struct known_names known = {0};
        const char *file = starter_boat(&asked, hull, &known, test.arena);
        size_t line = 0;
        for (size_t i = 0; i < asked.count; i++) {
            const struct item_kind *kind = asked.rows[i].kind;
            size_t each = kind->by_engine && hull == HULL_CATAMARAN ? 2 : 1;
            assert_int_equal(lines_of_item(&lines, kind->item), each);
            assert_ptr_equal(lines.at[line]->cells[1].kind, kind);
            assert_string_equal(lines.at[line]->cells[1].text,
                                tag_in_new_file(file, kind->item));
            line += each;
        }
        assert_int_equal(line, lines.count);
        assert_true(line > 90);
    }
}

static void a_motor_boat_is_asked_for_no_sails(void **state)
{
    (void)state;
    struct gear_lines motor =
        lines_of(survey_of(survey_new_boat(HULL_MONOHULL, RIG_MOTOR, test.arena)));
    struct gear_lines sail =
        lines_of(survey_of(survey_new_boat(HULL_MONOHULL, RIG_SAIL, test.arena)));
    assert_int_equal(lines_of_item(&motor, ITEM_mainsail_down), 0);
    assert_int_equal(lines_of_item(&sail, ITEM_mainsail_down), 1);
    assert_int_equal(motor.count + 3, sail.count);
}

/* ---- the order of the walk ---- */

/* On deck from the stern, below from the companionway forward, then aft; a catamaran's hulls
 * after what lies between them, the port one from the bow, the other from the stern. */
static void a_walk_never_goes_back(void **state)
{
    (void)state;
    const struct walk_stop mono[] = {
        {zone_of(ZONE_transom), SIDE_PORT}, {zone_of(ZONE_cockpit), SIDE_STARBOARD},
        {zone_of(ZONE_foredeck), SIDE_NONE}, {zone_of(ZONE_galley), SIDE_PORT},
        {zone_of(ZONE_saloon), SIDE_STARBOARD}, {zone_of(ZONE_forward_cabin), SIDE_PORT},
        {zone_of(ZONE_aft_cabin), SIDE_PORT}};
    const struct walk_stop twin[] = {
        {zone_of(ZONE_cockpit), SIDE_PORT}, {zone_of(ZONE_trampoline), SIDE_NONE},
        {zone_of(ZONE_bridgedeck), SIDE_STARBOARD}, {zone_of(ZONE_forward_cabin), SIDE_PORT},
        {zone_of(ZONE_engine_space_port), SIDE_PORT},
        {zone_of(ZONE_engine_space_starboard), SIDE_STARBOARD},
        {zone_of(ZONE_forward_cabin), SIDE_STARBOARD}};
    for (size_t i = 0; i < sizeof mono / sizeof *mono; i++)
        for (size_t k = 0; k < i; k++) {
            assert_true(walk_compare(HULL_MONOHULL, &mono[i], &mono[k]) > 0);
            assert_true(walk_compare(HULL_CATAMARAN, &twin[k], &twin[i]) < 0);
        }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_kind_of_gear_is_accounted_for),
        TEST(what_nobody_surveyed_is_asked_for),
        TEST(gear_of_an_engine_is_looked_for_in_its_space),
        TEST(what_is_not_fitted_is_listed_to_be_ticked),
        TEST(a_new_boat_is_asked_for_what_a_new_file_asks),
        TEST(a_motor_boat_is_asked_for_no_sails),
        TEST(a_walk_never_goes_back),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
