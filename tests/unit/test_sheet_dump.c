/* test_sheet_dump.c - a composed sheet as text: every fact of it, exactly, and nothing for
 * blocks that it lacks. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

static const char *dumped(const struct sheet *card)
{
    struct text_builder out = text_builder_in(test.arena);
    sheet_dump(card, &out);
    return out.at;
}

static const struct source file = {.name = "boat.yaml"};

static const char *const tags[] = {"C1", "C2"};
static const struct row_item stops[] = {
    {.tags = tags, .tag_count = 2, .name = "2 engine stops,", .spot = "by the wheel",
     .end = "= **hold: STOP**", .origin = {.source = &file, .line = 12}},
    {.tags = tags + 1, .tag_count = 1, .name = "Fan"}};
static const struct row_item knife[] = {{.name = "Knife"}};
static const struct card_row rows[] = {
    {.place = "Cockpit, PORT", .items = stops, .item_count = 2,
     .origin = {.source = &file, .line = 12}},
    {.place = "NOT RECORDED,", .spot = "aft", .items = knife, .item_count = 1}};
static const struct row_item drain[] = {{.tags = tags, .tag_count = 1, .name = "drain"}};
static const struct card_row galley = {.place = "Galley", .items = drain, .item_count = 1};
static const struct opening_group table[] = {
    {.side = SIDE_PORT, .head = "**PORT:** across = **SHUT**", .rows = &galley, .row_count = 1}};
static const struct card_text lethal[] = {{.text = "Never run it dry."}};
static const struct card_text conditions[] = {{.text = "**C1** only with engine running."}};
static const struct card_step steps[] = {
    {.id = "stop", .number = 1, .headline = {"**STOP.**", {.source = &file, .line = 3}},
     .lethal = lethal, .lethal_count = 1, .conditions = conditions, .condition_count = 1,
     .rows = rows, .row_count = 2},
    {.id = "close", .number = 2, .headline = {.text = "**CLOSE.**"}, .table = table,
     .table_count = 1}};
static const struct card_warning never[] = {{.text = "go below", .tag = "MAIB"}};
static const struct script_piece pieces[] = {
    {PIECE_STRONG, "MAYDAY", 0}, {PIECE_BLANK, "time UTC", 16}, {PIECE_CHOICE, "NORTH SOUTH", 0}};
static const struct script_line script_lines[] = {
    {.label = "RISING", .pieces = pieces, .count = 3}};
static const struct script script = {script_lines, 1};
static const struct card_text operate[] = {{.text = "**1** ON: breaker."}};
static const struct card_text natures[] = {{.text = "I AM ON FIRE"}};
static const char *const nature_leads[] = {"Fire"};
static const struct title_facts title = {.title = "FIRE", .boat = "TERN", .number = "Card 3P"};
static const struct card_text mark = {.text = "SPECIMEN"};
static const struct signs_facts signs = {"WHEN", "Smoke"};
static const struct steps_facts step_list = {.items = steps, .count = 2};
static const struct decision_facts decision = {
    .ask = "After step 1: hot?", .yes = "Leave.", .no = "Stay.", .yes_word = "YES",
    .no_word = "NO"};
static const struct warnings_facts nevers = {.word = "Never", .items = never, .count = 1};
static const struct call_facts call = {.title = "CALL", .station = "E9 Radio",
                                       .operate = operate, .operate_count = 1, .script = &script};
static const struct section_facts nature = {.title = "SAY", .lines = natures,
                                            .lead = nature_leads, .line_count = 1};
static const struct footer_facts footer = {
    .left = {"Follow your training.", ""}, .dates = "Gear dates run to 2027-04.",
    .first_date = "2027-04", .code_word = "Check code", .code = "0TJ8-GE22",
    .printed = "printed 2026-11-20"};

static void every_fact_is_dumped(void **state)
{
    (void)state;
    struct marker marker = {.tag = "C1", .zone = zone_of(ZONE_cockpit), .x_mm = 9500,
                            .y_mm = -1200};
    const struct plan_facts plan = {.markers = &marker, .marker_count = 1};
    const struct block blocks[] = {
        {BLOCK_MARK, {.text = &mark}, 0}, {BLOCK_TITLE, {.title = &title}, 0},
        {BLOCK_SIGNS, {.signs = &signs}, 0}, {BLOCK_STEPS, {.steps = &step_list}, 0},
        {BLOCK_PLAN, {.plan = &plan}, 0}, {BLOCK_DECISION, {.decision = &decision}, 0},
        {BLOCK_NEVER, {.warnings = &nevers}, 0}, {BLOCK_CALL, {.call = &call}, 0},
        {BLOCK_NATURE, {.section = &nature}, 0}, {BLOCK_FOOTER, {.footer = &footer}, 0}};
    const struct sheet card = {.id = "fire", .name = "3P FIRE", .held = true, .blocks = blocks,
                               .block_count = sizeof blocks / sizeof *blocks};
    assert_string_equal(
        dumped(&card),
        "sheet fire (3P FIRE) HELD\n"
        "mark\n  text: SPECIMEN\n"
        "title\n  title: FIRE\n  boat: TERN\n  number: Card 3P\n"
        "signs\n  word: WHEN\n  signs: Smoke\n"
        "steps\n =step: 1\n  headline: **STOP.**  <boat.yaml:3>\n  lethal: Never run it dry.\n"
        "  condition: **C1** only with engine running.\n"
        "  place: Cockpit, PORT  <boat.yaml:12>\n"
        " =full name: 2 engine stops,  <boat.yaml:12>\n"
        " =lesser name: 2 engine stops,  <boat.yaml:12>\n"
        "  tag: C1  <boat.yaml:12>\n  tag: C2  <boat.yaml:12>\n"
        " ~name: 2 engine stops,  <boat.yaml:12>\n  own spot: by the wheel  <boat.yaml:12>\n"
        "  end: = **hold: STOP**  <boat.yaml:12>\n"
        " =full name: Fan\n =lesser name: Fan\n  tag: C2\n ~name: Fan\n"
        "  place: NOT RECORDED,\n  spot: aft\n"
        " =full name: Knife\n =lesser name: Knife\n ~name: Knife\n"
        " =step: 2\n  headline: **CLOSE.**\n"
        "  head: **PORT:** across = **SHUT**\n  place: Galley\n"
        " =full name: drain\n =lesser name: drain\n  tag: C1\n ~name: drain\n"
        "plan\n =marker: C1\n =zone: cockpit\n =level: below\n =mm aft: 9500\n"
        " =mm to starboard: -1200\n"
        "decision\n  ask: After step 1: hot?\n  word: YES\n  yes: Leave.\n  word: NO\n"
        "  no: Stay.\n"
        "never\n  word: Never\n  text: go below\n  source: MAIB\n"
        "call\n  title: CALL\n  station: E9 Radio\n  set: **1** ON: breaker.\n"
        " =label: RISING\n  say: MAYDAY\n =say: time UTC\n =say: NORTH SOUTH\n"
        "nature\n  title: SAY\n  word: Fire\n  line: I AM ON FIRE\n"
        "footer\n  left: Follow your training.\n ~dates: Gear dates run to 2027-04.\n"
        " =first date: 2027-04\n =undated: 0\n  word: Check code\n ~code: 0TJ8-GE22\n"
        " ~printed: printed 2026-11-20\n");
}

static void blocks_that_are_lacking_leave_no_line(void **state)
{
    (void)state;
    const struct sheet card = {.id = "fire", .name = "3 FIRE"};
    assert_string_equal(dumped(&card), "sheet fire (3 FIRE)\n");
}

/* Composed again from the files, the text is the same, card by card. */
static void the_fleet_s_cards_are_dumped_alike_twice(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml"};
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b]);
        const struct sheet_set *first = case_compose(&test, false);
        case_boat(&test, boats[b]);
        const struct sheet_set *second = case_compose(&test, false);
        assert_int_equal(first->count, second->count);
        for (size_t i = 0; i < first->count; i++) {
            const char *text = dumped(first->sheets[i]);
            assert_string_equal(text, dumped(second->sheets[i]));
            assert_null(strstr(text, "(null)"));
            assert_null(strstr(text, "{"));            /* no word left to be filled in */
            assert_non_null(strstr(text, sheet_footer(first->sheets[i])->code));
        }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_fact_is_dumped),
        TEST(blocks_that_are_lacking_leave_no_line),
        TEST(the_fleet_s_cards_are_dumped_alike_twice),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
