/* test_survey.c - the survey of a boat: each piece of the record once, in the order of the walk,
 * with room for each fact that something has a use for and nobody recorded. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "item_states.h"
#include "survey_case.h"
#include "walk.h"

static const struct equipment *piece_of(enum item_key item)
{
    for (size_t i = 0; i < test.boat->equipment_count; i++)
        if (test.boat->equipment[i].item.value == item)
            return &test.boat->equipment[i];
    fail_msg("the boat has no %s", item_word(item));
    return NULL;
}

static const struct form_blank *asked_in(const struct form_line *line, const char *words)
{
    for (size_t i = 0; i < line->blank_count; i++)
        if (strstr(line->blanks[i].label, words) != NULL)
            return &line->blanks[i];
    fail_msg("%s is not asked of %s", words, line->cells[1].text);
    return NULL;
}

/* ---- the pieces of a record ---- */

static void every_piece_stands_once(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOATS; b++) {
        const struct boat *boat = case_boat(&test, survey_boats[b]);
        struct gear_lines lines = lines_of(survey_of(boat));
        size_t tagged = 0;
        for (size_t i = 0; i < boat->equipment_count; i++)
            line_of(&lines, &boat->equipment[i]);
        for (size_t i = 0; i < lines.count; i++)
            tagged += text_empty(lines.at[i]->cells[1].text) ? 0 : 1;
        assert_true(tagged <= boat->equipment_count);
        assert_string_equal(case_problems_text(&test), "");
    }
}

static void numbers_run_through_all_sheets(void **state)
{
    (void)state;
    const struct form_facts *form = survey_of(case_boat(&test, survey_boats[1]));
    size_t next = 1;
    for (size_t i = 0; i < form->count; i++)
        for (size_t k = 0; k < form->sections[i].line_count; k++)
            if (form->sections[i].columns[0].kind == FORM_NUMBER)
                assert_string_equal(form->sections[i].lines[k].cells[0].text,
                                    text_format(test.arena, "%zu", next++));
    assert_true(next > test.boat->equipment_count + 5);
}

/* Places follow each other as one walks, each in one go. */
static void pieces_stand_in_the_order_of_the_walk(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOATS; b++) {
        const struct boat *boat = case_boat(&test, survey_boats[b]);
        struct gear_lines lines = lines_of(survey_of(boat));
        for (size_t i = 0; i < boat->equipment_count; i++)
            for (size_t k = 0; k < i; k++) {
                const struct equipment *one = &boat->equipment[i], *other = &boat->equipment[k];
                const struct walk_stop a = {one->place_zone, one->place_side};
                const struct walk_stop c = {other->place_zone, other->place_side};
                int order = walk_compare(boat->facts.hull.value, &a, &c);
                size_t at = line_of(&lines, one), before = line_of(&lines, other);
                bool same = a.zone == c.zone && a.side == c.side;
                if (order != 0 && (order < 0) != (at < before))
                    fail_msg("%s: %s and %s", survey_boats[b], one->tag.text, other->tag.text);
                assert_true(same == (lines.sections[at] == lines.sections[before]));
            }
    }
}

#define GEAR_WORD_OF(key, ...) \
    case GEAR_##key: return words_get(test.words, WORD_ASK_##key);
#define WORD_ASK_item WORD_COUNT - 1
#define WORD_ASK_at WORD_COUNT - 1

static const char *word_of(enum gear_field field)
{
    switch (field) {
        GEAR_FIELD_LIST(GEAR_WORD_OF)
    case GEAR_FIELD_NONE: case GEAR_FIELD_COUNT:
        break;
    }
    return "";
}

/* What the place, an opening without a valve or a lone engine leave nothing to ask. */
static bool is_idle(const struct boat *boat, const struct equipment *gear, enum gear_field field)
{
    return field == GEAR_item || field == GEAR_zone || field == GEAR_how ||
           (field == GEAR_side && (gear->place_side != SIDE_NONE || gear->place_zone->narrow)) ||
           (field == GEAR_serves && boat->engine_space_count < 2) ||
           (field == GEAR_works && gear->valve.answer == ANSWER_NO);
}

static size_t facts_lacking(const struct boat *boat, const struct equipment *gear,
                            const struct form_line *line)
{
    size_t count = 0;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        if (item_field(gear->kind->item, field) < BELONGS_ASKED || is_idle(boat, gear, field) ||
            field_text(gear_field_row(field), gear, test.arena) != NULL ||
            field_place(gear_field_row(field), gear).line > 0)
            continue;
        if (!asks(line, word_of(field)))
            fail_msg("%s %s: no room for %s", boat->facts.name.text, gear->tag.text,
                     gear_field_word(field));
        count++;
    }
    return count;
}

static void what_is_not_recorded_has_room(void **state)
{
    (void)state;
    size_t count = 0;
    for (size_t b = 0; b < BOATS; b++) {
        const struct boat *boat = case_boat(&test, survey_boats[b]);
        struct gear_lines lines = lines_of(survey_of(boat));
        for (size_t i = 0; i < boat->equipment_count; i++)
            count += facts_lacking(boat, &boat->equipment[i],
                                   lines.at[line_of(&lines, &boat->equipment[i])]);
    }
    assert_true(count > 100);
}

#define LACKING \
    "  - {item: seacock, tag: C1, zone: galley}\n" \
    "  - {item: seacock, tag: C2, zone: galley, valve: no, name: log}\n" \
    "  - {item: epirb, tag: E1, zone: companionway, side: port, expires: 2029-11,\n" \
    "     hex_id: \"9908D 74A71 034D1\", serial: \"12345678\"}\n" \
    "  - {item: liferaft, tag: E2, zone: coachroof, side: centre, how: pull it}\n" \
    "  - {item: bolt_cutters, tag: C3, zone: cockpit_locker, side: port, cuts_mm: 10}\n" \
    "  - {item: engine_stop, tag: C4, zone: cockpit, side: port, how: pull, stop: mechanical}\n" \
    "  - {item: windlass, tag: C5, zone: foredeck, side: centre, how: {up: press, down: tread}}\n"

static const struct form_line *lacking_line(enum item_key item)
{
    struct gear_lines lines = lines_of(survey_of(test.boat));
    return lines.at[line_of(&lines, piece_of(item))];
}

static void a_bare_piece_is_asked_for_all_of_it(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, LACKING, "  - blankets\n"));
    const struct form_line *line = lacking_line(ITEM_seacock);
    static const char *const all[] = {"**Not recorded:** shut: how", "open: how", "name", "side",
                                      "bore (mm)", "below the waterline (m)", "leads to",
                                      "turns", "its bung (mm)", "valve?"};
    for (size_t i = 0; i < sizeof all / sizeof *all; i++)
        asked_in(line, all[i]);
    assert_int_equal(asked_in(line, "side")->choice_count, 4);
    assert_int_equal(asked_in(line, "bore (mm)")->room, FORM_SHORT);
    assert_int_equal(asked_in(line, "valve?")->choice_count, 2);
    assert_int_equal(asked_in(line, "Try:")->choice_count, 2);
}

static void an_opening_without_a_valve_is_not_tried(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, LACKING, "  - blankets\n"));
    struct gear_lines lines = lines_of(survey_of(test.boat));
    const struct form_line *line = lines.at[line_of(&lines, gear_of_tag(test.boat, "C2"))];
    assert_false(asks(line, "Try:") || asks(line, "how") || asks(line, "turns"));
    assert_true(asks(line, "leads to"));
}

static void dates_and_identities_are_read_on_the_thing(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, LACKING, "  - blankets\n"));
    const struct form_line *line = lacking_line(ITEM_epirb);
    assert_int_equal(asked_in(line, "runs to 2029-11:")->room, FORM_SHORT);
    assert_int_equal(asked_in(line, "beacon identity 9908D 74A71 034D1:")->choice_count, 1);
    asked_in(line, "serial number 12 345 678:");
    line = lacking_line(ITEM_vhf_dsc);
    asked_in(line, "MMSI 200 014 730:");
    asked_in(line, "second handset");
    asked_in(line, "keys for an urgency call");
    assert_false(asks(line, "call sign") || asks(line, "keys for the nature"));
}

/* Spent, sent or flooded by a trial. */
static void what_must_not_be_set_off_is_not_tried(void **state)
{
    (void)state;
    static const enum item_key never[] = {ITEM_epirb, ITEM_liferaft, ITEM_vhf_dsc};
    case_boat(&test, case_boat_text(&test, CASE_RADIO, LACKING, "  - blankets\n"));
    for (size_t i = 0; i < sizeof never / sizeof *never; i++)
        assert_false(asks(lacking_line(never[i]), "Try:"));
    assert_non_null(strstr(lacking_line(ITEM_epirb)->cells[2].text, "send nothing"));
    assert_non_null(strstr(lacking_line(ITEM_liferaft)->cells[2].text, "look only"));
    assert_non_null(strstr(lacking_line(ITEM_vhf_dsc)->cells[2].text, "never the red key"));
    assert_int_equal(asked_in(lacking_line(ITEM_windlass), "Try:")->choice_count, 2);
    assert_false(asks(lacking_line(ITEM_engine_stop), "Try:"));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_piece_stands_once),
        TEST(numbers_run_through_all_sheets),
        TEST(pieces_stand_in_the_order_of_the_walk),
        TEST(what_is_not_recorded_has_room),
        TEST(a_bare_piece_is_asked_for_all_of_it),
        TEST(an_opening_without_a_valve_is_not_tried),
        TEST(dates_and_identities_are_read_on_the_thing),
        TEST(what_must_not_be_set_off_is_not_tried),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
