/* test_card_dump.c - a composed card as text: every part of it, exactly, and
 * nothing for parts that a card lacks. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

static const char *dumped(const struct card *card)
{
    struct text_builder out = text_builder_in(test.arena);
    card_dump(card, &out);
    return out.at;
}

static const struct source file = {.name = "boat.yaml"};

static const char *const tags[] = {"C1", "C2"};
static const struct card_row rows[] = {
    {.tags = tags, .tag_count = 2, .name = "2 engine stops", .where = "Cockpit: hold STOP",
     .origin = {.source = &file, .line = 12}},
    {.name = "Knife", .where = "NOT RECORDED"}};
static const struct table_row table[] = {
    {.cells = {{.tag = "C3", .name = "Galley, drain"}, {.tag = "C4", .name = "Saloon, log"}}},
    {.cells = {{0}, {.tag = "C5", .name = "Aft toilet, inlet"}}}};
static const struct card_text lethal[] = {{.text = "Never run it dry."}};
static const struct card_step steps[] = {
    {.id = "stop", .number = 1, .headline = {"**STOP.**", {.source = &file, .line = 3}},
     .lethal = lethal, .lethal_count = 1, .rows = rows, .row_count = 2},
    {.id = "close", .number = 2, .headline = {.text = "**CLOSE.**"}, .table = table,
     .table_count = 2}};
static const struct card_warning nevers[] = {{.text = "go below", .tag = "MAIB"}};
static const struct card_warning cautions[] = {{.text = "Smoke kills.", .tag = "UK fire"}};
static const struct card_warning rules[] = {{.text = "Call on 12.", .tag = "Harbour"}};
static const struct script_piece pieces[] = {
    {PIECE_STRONG, "MAYDAY", 0}, {PIECE_BLANK, "time UTC", 16}, {PIECE_CHOICE, "NORTH SOUTH", 0}};
static const struct script_line script_lines[] = {
    {.label = "RISING", .pieces = pieces, .count = 3}};
static const struct script script = {script_lines, 1};
static const struct card_text operate[] = {{.text = "**1** ON: breaker."}};
static const struct card_text natures[] = {{.text = "Fire\tI AM ON FIRE"}};
static const struct card_section sections[] = {
    {.key = BLOCK_NATURE, .title = "SAY", .lines = natures, .line_count = 1, .script = &script}};

static void every_part_is_dumped(void **state)
{
    (void)state;
    struct marker marker = {.tag = "C1", .zone = zone_find("cockpit"), .x_mm = 9500,
                            .y_mm = -1200};
    const struct card card = {
        .title = "FIRE", .number_text = "Card 3P", .held = true, .signs = "Smoke",
        .call_line = "ALONE: call now", .steps = steps, .step_count = 2,
        .decision = {.given = true, .ask = "After step 1: hot?", .yes = "Leave.", .no = "Stay."},
        .nevers = nevers, .never_count = 1, .cautions = cautions, .caution_count = 1,
        .local_rules = rules, .local_rule_count = 1, .sections = sections, .section_count = 1,
        .call = {.given = true, .title = "CALL", .station = "E9 Radio", .operate = operate,
                 .operate_count = 1, .script = &script},
        .markers = &marker, .marker_count = 1, .mark = "SPECIMEN", .code = "0TJ8-GE22"};
    assert_string_equal(
        dumped(&card),
        "card FIRE (Card 3P) HELD\nsigns: Smoke\ncall line: ALONE: call now\n"
        "step 1 stop: **STOP.**  <boat.yaml:3>\n  lethal: Never run it dry.\n"
        "  row [C1] [C2] 2 engine stops | Cockpit: hold STOP  <boat.yaml:12>\n"
        "  row Knife | NOT RECORDED  <-:0>\n"
        "step 2 close: **CLOSE.**  <-:0>\n"
        "  table [C3] Galley, drain [C4] Saloon, log\n  table [C5] Aft toilet, inlet\n"
        "ask: After step 1: hot?\n  yes: Leave.\n  no: Stay.\n"
        "never: go below [MAIB]\ncaution: Smoke kills. [UK fire]\n"
        "local rule: Call on 12. [Harbour]\n"
        "section nature: SAY\n  Fire\tI AM ON FIRE\n"
        "RISING: MAYDAY ____ (time UTC) NORTH / SOUTH\n"
        "call: CALL | E9 Radio\n  set: **1** ON: breaker.\n"
        "RISING: MAYDAY ____ (time UTC) NORTH / SOUTH\n"
        "marker C1 cockpit 9500 -1200\nmarks: SPECIMEN\ncode: 0TJ8-GE22\n");
}

static void parts_that_are_lacking_leave_no_line(void **state)
{
    (void)state;
    const struct card card = {.title = "FIRE", .number_text = "Card 3", .signs = "Smoke",
                              .call_line = "", .mark = "", .code = "0000-0000"};
    assert_string_equal(dumped(&card), "card FIRE (Card 3)\nsigns: Smoke\ncall line: \n"
                        "marks: \ncode: 0000-0000\n");
}

/* Composed again from the files, the text is the same, card by card. */
static void the_fleet_s_cards_are_dumped_alike_twice(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml"};
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b]);
        const struct card_set *first = case_compose(&test, false);
        case_boat(&test, boats[b]);
        const struct card_set *second = case_compose(&test, false);
        assert_int_equal(first->count, second->count);
        for (size_t i = 0; i < first->count; i++) {
            const char *text = dumped(first->cards[i]);
            assert_string_equal(text, dumped(second->cards[i]));
            assert_null(strstr(text, "(null)"));
            assert_null(strstr(text, "{"));            /* no word left to be filled in */
            assert_non_null(strstr(text, first->cards[i]->code));
        }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_part_is_dumped),
        TEST(parts_that_are_lacking_leave_no_line),
        TEST(the_fleet_s_cards_are_dumped_alike_twice),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
