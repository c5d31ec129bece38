/* test_compose_table.c - the table of openings in the hull: sides, handling, and that
 * no side is said which is not recorded. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

#define USE(list) "steps: [{id: use, sources: [S5], " list "}]\n"
#define USE_TEXTS "steps: {use: {act: \"**USE.**\"}}\n"

/* The one step of a card on a boat with this gear. */
static const struct card_step *monohull_step(const char *step, const char *gear)
{
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, step, USE_TEXTS), NULL};
    case_procedures(&test, texts);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, "  - knife\n"));
    const struct sheet *card = case_card(case_compose(&test, false), "smoke");
    assert_false(card->held);
    return &sheet_steps(card)->items[0];
}

#define TABLE_STEP USE("uses: [{seacock: shut}], table: zones")
#define SEACOCK(tag, name, zone, rest) \
    "  - {item: seacock, tag: " tag ", name: " name ", zone: " zone rest "}\n"
#define ACROSS ", how: {shut: across}"

static const char *cell_text(const struct table_cell *cell)
{
    return cell->name == NULL ? "-" : text_format(test.arena, "[%s] %s", cell->tag, cell->name);
}

static void expect_table(const struct card_step *step, const char *const (*cells)[TABLE_CELLS],
                         size_t count)
{
    assert_int_equal(step->row_count, 0);
    assert_int_equal(step->table_count, count);
    for (size_t i = 0; i < count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++)
            assert_string_equal(cell_text(&step->table[i].cells[c]), cells[i][c]);
}

static void openings_stand_bow_first_port_beside_starboard(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C4] Forward toilet, inlet", "[C2] Galley, drain"},
        {"[C1] Engine space, intake", "[C3] Aft toilet, outlet"},
        {"[C5] Aft locker, drain", "-"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP,
        SEACOCK("C1", "intake", "engine_space", ", side: port" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "outlet", "aft_heads", ", side: starboard" ACROSS)
        SEACOCK("C4", "inlet", "forward_heads", ", side: port" ACROSS)
        SEACOCK("C5", "drain", "lazarette", ", side: port" ACROSS));
    expect_table(step, cells, 3);
    assert_string_equal(step->table_heads[0], "PORT");
    assert_string_equal(step->table_heads[1], words_get(test.words, WORD_PLAN_STARBOARD));
    assert_string_equal(step->table_note, "all: across = shut");
    assert_string_equal(step->table_kind->key, "seacock");
}

/* All on one side: both columns are of that side, so that sixteen are eight lines. */
static void openings_of_one_side_take_both_columns(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Forward toilet, inlet", "[C3] Engine space, intake"},
        {"[C2] Galley, drain", "-"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "inlet", "forward_heads", ", side: starboard" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "intake", "engine_space", ", side: starboard" ACROSS));
    expect_table(step, cells, 2);
    assert_string_equal(step->table_heads[0], words_get(test.words, WORD_PLAN_STARBOARD));
    assert_string_equal(step->table_heads[1], words_get(test.words, WORD_PLAN_STARBOARD));
}

/* No opening stands under the word of a side that its record does not tell. */
static void no_side_is_said_that_is_not_recorded(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Forward toilet, inlet", "[C2] Galley, drain"},
        {"-", "-"},
        {"[C5] Saloon, log", "-"},
        {"-", "-"},
        {"[C3] Engine space, intake", "[C4] Aft locker, drain"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "inlet", "forward_heads", ", side: port" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "intake", "engine_space", ACROSS)
        SEACOCK("C4", "drain", "lazarette", ACROSS)
        SEACOCK("C5", "log", "saloon", ", side: centre" ACROSS));
    expect_table(step, cells, 5);
    assert_null(step->table[0].head);
    assert_string_equal(step->table[1].head, "CENTRE");
    assert_string_equal(step->table[3].head, "SIDE NOT RECORDED");
}

static void where_no_side_is_recorded_no_side_is_said(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Forward toilet, inlet", "[C2] Galley, drain"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "inlet", "forward_heads", ACROSS)
        SEACOCK("C2", "drain", "galley", ACROSS));
    expect_table(step, cells, 1);
    assert_string_equal(step->table_heads[0], "SIDE NOT RECORDED");
    assert_string_equal(step->table_heads[1], "");
}

static void handling_that_differs_stands_with_each(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Saloon, log: no valve", "[C2] Galley, drain: across = shut"},
        {"[C3] Aft toilet, inlet: turn right = shut", "-"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "log", "saloon", ", side: port, valve: no")
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "inlet", "aft_heads", ", side: port, how: {shut: turn right}"));
    expect_table(step, cells, 2);
    assert_string_equal(step->table_note, "");
}

/* What most share is said once in the head; the odd one says its own. */
static void the_odd_one_says_its_own_handling(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Saloon, sink drain", "[C2] Galley, drain"},
        {"[C3] Aft toilet, inlet: turn right = shut", "-"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "sink drain", "saloon", ", side: port" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "inlet", "aft_heads", ", side: port, how: {shut: turn right}"));
    expect_table(step, cells, 2);
    assert_string_equal(step->table_note, "others: across = shut");
    assert_int_equal(step->table[0].cells[0].handling_at, 0);
    const struct table_cell *odd = &step->table[1].cells[0];
    assert_string_equal(odd->name + odd->handling_at, "turn right = shut");
}

/* Where one is not known, none may be taken for handled like the others. */
static void unknown_handling_lets_nothing_be_said_of_all(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Saloon, sink drain: across = shut", "[C2] Galley, drain: across = shut"},
        {"[C3] Aft toilet, inlet", "-"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "sink drain", "saloon", ", side: port" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "inlet", "aft_heads", ", side: port"));
    expect_table(step, cells, 2);
    assert_string_equal(step->table_note, "");
}

/* An opening without a valve keeps no other's handling from being said once. */
static void an_opening_without_a_valve_says_so(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Saloon, log: no valve", "[C2] Galley, drain"},
        {"[C3] Aft toilet, inlet", "-"}};
    const struct card_step *step = monohull_step(
        TABLE_STEP, SEACOCK("C1", "log", "saloon", ", side: port, valve: no" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard, valve: yes" ACROSS)
        SEACOCK("C3", "inlet", "aft_heads", ", side: port" ACROSS));
    expect_table(step, cells, 2);
    assert_string_equal(step->table_note, "all: across = shut");
}

static void openings_on_neither_side_have_lines_of_their_own(void **state)
{
    (void)state;
    static const char *const cells[][TABLE_CELLS] = {
        {"[C1] Forward toilet, inlet", "-"},
        {"-", "-"},
        {"[C2] Saloon, log", "[C3] Aft toilet, outlet"}};
    expect_table(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "inlet", "forward_heads", ", side: port" ACROSS)
                               SEACOCK("C2", "log", "saloon", ", side: centre" ACROSS)
                               SEACOCK("C3", "outlet", "aft_heads", ", side: centre" ACROSS)),
                 cells, 3);
}

/* What the specimen boats' table says is what their record says, opening by opening. */
static void every_opening_of_the_fleet_is_in_the_table_once(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml"};
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b]);
        const struct card_step *step = case_step(
            case_card(case_compose(&test, false), "flooding"), "seacocks");
        for (size_t g = 0; g < test.boat->equipment_count; g++) {
            const struct equipment *gear = &test.boat->equipment[g];
            size_t seen = 0;
            if (gear->item.value != ITEM_seacock)
                continue;
            for (size_t i = 0; i < step->table_count; i++)
                for (size_t c = 0; c < TABLE_CELLS; c++)
                    if (text_equal(step->table[i].cells[c].tag, gear->tag.text)) {
                        seen++;
                        assert_int_equal(c, gear->place_side == SIDE_PORT ? 0 : 1);
                    }
            assert_int_equal(seen, 1);
        }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(openings_stand_bow_first_port_beside_starboard),
        TEST(openings_of_one_side_take_both_columns),
        TEST(no_side_is_said_that_is_not_recorded),
        TEST(where_no_side_is_recorded_no_side_is_said),
        TEST(handling_that_differs_stands_with_each),
        TEST(the_odd_one_says_its_own_handling),
        TEST(unknown_handling_lets_nothing_be_said_of_all),
        TEST(an_opening_without_a_valve_says_so),
        TEST(openings_on_neither_side_have_lines_of_their_own),
        TEST(every_opening_of_the_fleet_is_in_the_table_once),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
