/* test_compose_named.c - facts of the boat that words of a card name: filled in from her record,
 * and a card that names what is not recorded is held. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

#define STEPS \
    "steps:\n" \
    "  - id: deep\n" \
    "    sources: [S5]\n" \
    "    lethal: [shallow]\n" \
    "    cases:\n" \
    "      - id: known\n" \
    "        when: {boat: draught}\n" \
    "        lethal: [shallow]\n" \
    "      - lethal: []\n" \
    "  - {id: lay, sources: [S5]}\n"
#define TEXTS \
    "steps:\n" \
    "  deep:\n" \
    "    act: \"**LOOK** how deep it is.\"\n" \
    "    lethal: {shallow: \"She stands on {draught} m.\"}\n" \
    "    cases: {known: {act: \"**SOUND:** she needs {draught} m.\"}}\n" \
    "  lay: {act: \"**LAY** them on the {lay_down_place}. Then step {deep}.\"}\n"

static const struct sheet *card_of_boat(const char *facts, bool draft)
{
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, STEPS, TEXTS), NULL};
    case_procedures(&test, texts);
    case_boat(&test, text_format(test.arena,
                                 "boat: {name: Tamarisk, hull: monohull, rig: sail, loa_m: 12, "
                                 "beam_m: 4, persons_max: 8%s}\n" CASE_RADIO
                                 "equipment:\n  - {item: torch, tag: C9, zone: saloon}\n", facts));
    return case_card(case_compose(&test, draft), "smoke");
}

static void what_is_recorded_is_filled_in(void **state)
{
    (void)state;
    const struct sheet *card = card_of_boat(", draught_m: 1.85, lay_down_place: saloon floor",
                                            false);
    const struct card_step *deep = case_step(card, "deep");
    assert_string_equal(deep->headline.text, "**SOUND:** she needs 1.85 m.");
    assert_int_equal(deep->lethal_count, 1);
    assert_string_equal(deep->lethal[0].text, "She stands on 1.85 m.");
    assert_string_equal(case_step(card, "lay")->headline.text,
                        "**LAY** them on the saloon floor. Then step 1.");
    assert_null(case_problem(&test, "is not recorded: the card"));
}

static void a_case_may_ask_whether_it_is_recorded(void **state)
{
    (void)state;
    const struct sheet *card = card_of_boat(", lay_down_place: saloon floor", false);
    const struct card_step *deep = case_step(card, "deep");
    assert_string_equal(deep->headline.text, "**LOOK** how deep it is.");
    assert_int_equal(deep->lethal_count, 0);
    assert_null(case_problem(&test, "draught_m of boat is not recorded"));
}

static void what_is_not_recorded_holds_the_card(void **state)
{
    (void)state;
    assert_true(card_of_boat(", draught_m: 1.85", false)->held);
    const struct problem *told = case_problem(&test, "lay_down_place of boat is not recorded: "
                                              "the card 10 SMOKE CARD says it");
    assert_non_null(told);
    assert_int_equal(told->severity, SEVERITY_HELD);
    assert_string_equal(told->remedy, "look at the boat, then record lay_down_place (the hardest "
                        "flat floor, for a person who is hurt)");
}

static void a_draft_shows_the_gap(void **state)
{
    (void)state;
    const struct sheet *card = card_of_boat(", draught_m: 1.85", true);
    assert_string_equal(case_step(card, "lay")->headline.text,
                        "**LAY** them on the NOT RECORDED. Then step 1.");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_is_recorded_is_filled_in),
        cmocka_unit_test(a_case_may_ask_whether_it_is_recorded),
        cmocka_unit_test(what_is_not_recorded_holds_the_card),
        cmocka_unit_test(a_draft_shows_the_gap),
    };
    return cmocka_run_group_tests_name("compose named", tests, set_up, tear_down) != 0;
}
