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

/* Its heads, and below each its rows. */
static void expect_table(const struct card_step *step, const char *const *lines)
{
    size_t line = 0;
    assert_int_equal(step->row_count, 0);
    for (size_t g = 0; g < step->table_count; g++) {
        const struct opening_group *group = &step->table[g];
        assert_non_null(lines[line]);
        assert_string_equal(text_plain(test.arena, group->head), lines[line++]);
        for (size_t r = 0; r < group->row_count; r++) {
            assert_non_null(lines[line]);
            assert_string_equal(case_row(&test, &group->rows[r]), lines[line++]);
        }
    }
    assert_null(lines[line]);
}

#define EXPECT_TABLE(step, ...) expect_table(step, (const char *const[]){__VA_ARGS__, NULL})

static void openings_stand_bow_first_by_side(void **state)
{
    (void)state;
    const struct card_step *step = monohull_step(
        TABLE_STEP,
        SEACOCK("C1", "intake", "engine_space", ", side: port" ACROSS)
        SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
        SEACOCK("C3", "outlet", "aft_heads", ", side: starboard" ACROSS)
        SEACOCK("C4", "inlet", "forward_heads", ", side: port" ACROSS)
        SEACOCK("C5", "drain", "lazarette", ", side: port" ACROSS));
    EXPECT_TABLE(step, "PORT: across = SHUT", "Forward toilet | [C4] inlet",
                 "Engine space | [C1] intake", "Aft locker | [C5] drain",
                 "STARB’D: across = SHUT", "Galley | [C2] drain", "Aft toilet | [C3] outlet");
    assert_string_equal(step->table[0].head, "**PORT:** across = **SHUT**");
    assert_int_equal(step->table[0].side, SIDE_PORT);
    assert_string_equal(step->table_kind->key, "seacock");
}

/* Wherever they stand in the record. */
static void a_place_is_said_once_for_all_its_openings(void **state)
{
    (void)state;
    EXPECT_TABLE(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "inlet", "forward_heads", ", side: starboard" ACROSS)
                               SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
                               SEACOCK("C3", "outlet", "forward_heads",
                                       ", side: starboard" ACROSS)),
                 "STARB’D: across = SHUT", "Forward toilet | [C1] inlet [C3] outlet",
                 "Galley | [C2] drain");
}

/* No opening stands under the word of a side that its record does not tell. */
static void no_side_is_said_that_is_not_recorded(void **state)
{
    (void)state;
    EXPECT_TABLE(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "inlet", "forward_heads", ", side: port" ACROSS)
                               SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
                               SEACOCK("C3", "intake", "engine_space", ACROSS)
                               SEACOCK("C4", "drain", "lazarette", ACROSS)
                               SEACOCK("C5", "log", "saloon", ", side: centre" ACROSS)),
                 "PORT: across = SHUT", "Forward toilet | [C1] inlet",
                 "STARB’D: across = SHUT", "Galley | [C2] drain",
                 "CENTRE: across = SHUT", "Saloon | [C5] log",
                 "SIDE NOT RECORDED: across = SHUT", "Engine space | [C3] intake",
                 "Aft locker | [C4] drain");
}

/* Each side has a head of its own; what most of a side share is said in it, and the odd one says
 * its own. */
static void each_side_says_its_own_handling(void **state)
{
    (void)state;
    EXPECT_TABLE(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "sink drain", "saloon", ", side: port" ACROSS)
                               SEACOCK("C2", "drain", "galley",
                                       ", side: starboard, how: {shut: turn left}")
                               SEACOCK("C3", "inlet", "aft_heads",
                                       ", side: port, how: {shut: turn right}")
                               SEACOCK("C4", "outlet", "aft_heads", ", side: port" ACROSS)),
                 "PORT: across = SHUT", "Saloon | [C1] sink drain",
                 "Aft toilet | [C3] inlet = turn right: SHUT [C4] outlet",
                 "STARB’D: turn left = SHUT", "Galley | [C2] drain");
}

static void handling_that_no_two_share_stands_with_each(void **state)
{
    (void)state;
    EXPECT_TABLE(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "log", "saloon", ", side: port" ACROSS)
                               SEACOCK("C3", "inlet", "aft_heads",
                                       ", side: port, how: {shut: turn right}")),
                 "PORT", "Saloon | [C1] log = across: SHUT",
                 "Aft toilet | [C3] inlet = turn right: SHUT");
}

/* Where one is not known, none may be taken for handled like the others. */
static void unknown_handling_lets_nothing_be_said_of_its_side(void **state)
{
    (void)state;
    EXPECT_TABLE(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "sink drain", "saloon", ", side: port" ACROSS)
                               SEACOCK("C2", "drain", "galley", ", side: starboard" ACROSS)
                               SEACOCK("C3", "inlet", "aft_heads", ", side: port")),
                 "PORT", "Saloon | [C1] sink drain = across: SHUT", "Aft toilet | [C3] inlet",
                 "STARB’D: across = SHUT", "Galley | [C2] drain");
}

/* An opening without a valve keeps no other's handling from being said once. */
static void an_opening_without_a_valve_says_so(void **state)
{
    (void)state;
    EXPECT_TABLE(monohull_step(TABLE_STEP,
                               SEACOCK("C1", "log", "saloon", ", side: port, valve: no" ACROSS)
                               SEACOCK("C3", "inlet", "aft_heads", ", side: port" ACROSS)),
                 "PORT: across = SHUT", "Saloon | [C1] log no valve", "Aft toilet | [C3] inlet");
}

static size_t times_of_tag(const struct opening_group *group, const char *tag)
{
    size_t seen = 0;
    for (size_t r = 0; r < group->row_count; r++)
        for (size_t i = 0; i < group->rows[r].item_count; i++)
            seen += text_equal(group->rows[r].items[i].tags[0], tag) ? 1 : 0;
    return seen;
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
        for (size_t i = 0; i < test.boat->equipment_count; i++) {
            const struct equipment *gear = &test.boat->equipment[i];
            for (size_t g = 0; g < step->table_count && gear->item.value == ITEM_seacock; g++)
                assert_int_equal(times_of_tag(&step->table[g], gear->tag.text),
                                 step->table[g].side == gear->place_side ? 1 : 0);
        }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(openings_stand_bow_first_by_side),
        TEST(a_place_is_said_once_for_all_its_openings),
        TEST(no_side_is_said_that_is_not_recorded),
        TEST(each_side_says_its_own_handling),
        TEST(handling_that_no_two_share_stands_with_each),
        TEST(unknown_handling_lets_nothing_be_said_of_its_side),
        TEST(an_opening_without_a_valve_says_so),
        TEST(every_opening_of_the_fleet_is_in_the_table_once),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
