/* test_cards_chosen.c - which cards a base hangs: those that are left out and those that are made
 * only where they are asked for; and the index of the cards that are aboard. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

#define STOP_STEP "steps:\n  - {id: stop, sources: [S5]}\n"
#define STOP_TEXTS "steps: {stop: {act: \"**STOP** it.\"}}\n"
#define LEADING "steps:\n  - {id: stop, lethal: [then], sources: [S5]}\n"
#define LEADING_TEXTS \
    "steps: {stop: {act: \"**STOP** it.\", lethal: {then: \"Then card {steam}.\"}}}\n"
#define EXIT \
    "decision: {after: stop, yes: {}, no: {card: steam}, sources: [S5]}\n"
#define EXIT_TEXTS "decision: {ask: out?, yes: Go on., no: Go on deck.}\n"

#define BASE \
    "base: {name: Quay, specimen: yes, phone_24h: +999 555 0100}\n" \
    "rescue_centre: {name: Centre, channel: \"06\"}\n" \
    "cruising_area: {latitude: north, longitude: east}\n" \
    "ashore: {fire_phone: +999 112}\n"

static void base_with(const char *cards)
{
    test.problems = problems_new(test.arena);
    case_base(&test, text_format(test.arena, BASE "%s", cards));
}

static void boat_with(const char *cards)
{
    case_boat(&test, text_format(test.arena, "%s%s",
                                 case_boat_text(&test, "", "  - {item: torch, tag: C1, zone: "
                                                "cockpit, side: port}\n", ""), cards));
}

/* A core card, one that leads to it by that, one more, and one that is made when asked for. */
static void procedures_with(const char *logic, const char *texts)
{
    const char *const all[] = {
        case_procedure_text(&test, "smoke", 10, logic, texts),
        case_procedure_text(&test, "steam", 20, STOP_STEP, STOP_TEXTS),
        case_procedure_text(&test, "water", 30, STOP_STEP "optional: yes\n", STOP_TEXTS), NULL};
    test.problems = problems_new(test.arena);
    case_procedures(&test, all);
}

static const char *cards_made(void)
{
    struct text_builder out = text_builder_in(test.arena);
    const struct sheet_set *set = case_compose(&test, false);
    text_add(&out, "");
    for (size_t i = 0; i < set->count; i++)
        text_add_format(&out, "%s%s%s", i == 0 ? "" : " ", set->sheets[i]->id,
                        set->sheets[i]->held ? " held" : "");
    return out.at;
}

/* ---- what is made ---- */

static void a_card_is_left_out_or_asked_for(void **state)
{
    (void)state;
    procedures_with(STOP_STEP, STOP_TEXTS);
    base_with("");
    boat_with("");
    assert_string_equal(cards_made(), "smoke steam");
    base_with("cards: {leave_out: [steam], add: [water]}\n");
    assert_string_equal(cards_made(), "smoke water");
    const struct sheet_set *set = case_compose(&test, false);
    assert_int_equal(set->not_hers_count, 1);
    assert_string_equal(set->not_hers[0].name, "20 STEAM CARD");
    assert_string_equal(set->not_hers[0].reason, "left out by text.yaml, line 5");
    assert_string_equal(set->sheets[1]->number, "30");
}

/* Each of her lists takes the place of the base's. */
static void a_boat_chooses_for_herself(void **state)
{
    (void)state;
    procedures_with(STOP_STEP, STOP_TEXTS);
    base_with("cards: {leave_out: [steam], add: [water]}\n");
    boat_with("cards: {leave_out: []}\n");
    assert_string_equal(cards_made(), "smoke steam water");
    boat_with("cards: {add: []}\n");
    assert_string_equal(cards_made(), "smoke");
    base_with("");
    boat_with("cards: {leave_out: steam, add: water}\n");
    assert_string_equal(cards_made(), "smoke water");
    assert_string_equal(case_compose(&test, false)->not_hers[0].reason,
                        "left out by text.yaml, line 4");
}

/* ---- what names a card that is left out ---- */

static void what_leads_to_a_card_that_is_left_out_is_told(void **state)
{
    static const char what[] = "the card 20 STEAM CARD is left out, but the card 10 SMOKE CARD "
                               "leads to it and has no other words";
    static const char *const leading[][2] = {
        {LEADING, LEADING_TEXTS}, {STOP_STEP EXIT, STOP_TEXTS EXIT_TEXTS}};
    (void)state;
    for (size_t i = 0; i < 2; i++) {
        procedures_with(leading[i][0], leading[i][1]);
        base_with("");
        boat_with("");
        assert_string_equal(cards_made(), "smoke steam");
        base_with("cards: {leave_out: [steam]}\n");
        assert_string_equal(cards_made(), "smoke held");
        const struct problem *problem = case_problem(&test, what);
        assert_non_null(problem);
        assert_int_equal(problem->severity, SEVERITY_ERROR);
        assert_int_equal(problem->place.line, 5);
        assert_string_equal(problem->remedy, "keep it: take steam out of leave_out");
    }
}

/* ---- what may be chosen ---- */

static void choice_refused(const char *cards, const char *what, const char *remedy)
{
    base_with(cards);
    test.problems = problems_new(test.arena);
    assert_false(base_cards_check(test.base, &test.procedures, test.arena, test.problems));
    const struct problem *problem = case_problem(&test, what);
    if (problem == NULL)
        fail_msg("not told: %s\n%s", what, case_problems_text(&test));
    assert_int_equal(problem->severity, SEVERITY_ERROR);
    assert_string_equal(problem->remedy, remedy);
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 1);
}

static void only_what_can_be_chosen_is(void **state)
{
    const char *const all[] = {
        case_procedure_text(&test, "smoke", 10, STOP_STEP "core: yes\n", STOP_TEXTS),
        case_procedure_text(&test, "steam", 20, STOP_STEP, STOP_TEXTS),
        case_procedure_text(&test, "water", 30, STOP_STEP "optional: yes\n", STOP_TEXTS), NULL};
    (void)state;
    case_procedures(&test, all);
    choice_refused("cards: {leave_out: [smoke]}\n",
                   "leave_out: the card smoke is of the core set, which no base leaves out",
                   "take smoke out of leave_out");
    choice_refused("cards: {leave_out: [water]}\n",
                   "leave_out: the card water is made only where add asks for it",
                   "take water out of leave_out");
    choice_refused("cards: {add: [steam]}\n",
                   "add: the card steam is made without being asked for, unless leave_out names it",
                   "take steam out of add");
    choice_refused("cards: {leave_out: [steem]}\n", "there is no card \"steem\"",
                   "did you mean \"steam\"?");
    base_with("cards: {leave_out: [steam], add: [water]}\n");
    assert_true(base_cards_check(test.base, &test.procedures, test.arena, test.problems));
}

/* ---- the index ---- */

/* "9 Smell gas", one a line, under its group. */
static const char *index_text(const struct sheet *sheet)
{
    const struct seen_facts *seen = sheet_seen(sheet);
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "\n");
    for (size_t i = 0; i < seen->count; i++) {
        text_add_format(&out, "%s\n", seen->groups[i].name);
        for (size_t k = 0; k < seen->groups[i].count; k++)
            text_add_format(&out, "%s %s\n", seen->groups[i].lines[k].number,
                            seen->groups[i].lines[k].text);
    }
    return out.at;
}

static void the_index_has_the_cards_that_are_aboard(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const char *all = index_text(case_card(case_compose(&test, false), "safety_plan"));
    assert_non_null(strstr(all, "\n2 We need help\n"));
    assert_non_null(strstr(all, "\n3 Engine smoke or fire\n"));
    assert_non_null(strstr(all, "\n9 Smell gas\n"));
    assert_null(strstr(all, "Outboard"));
    assert_true(strstr(all, "CALL FOR HELP") < strstr(all, "FIRE, SMOKE"));
    assert_true(strstr(all, "FIRE, SMOKE") < strstr(all, "PEOPLE"));
    case_boat(&test, "tests/islands/boats/sundew.yaml");
    all = index_text(case_card(case_compose(&test, false), "safety_plan"));
    assert_non_null(strstr(all, "\n3 Outboard smoke or fire\n"));
    assert_null(strstr(all, "Engine smoke"));
    assert_null(strstr(all, "Smell gas"));
}

static void each_engine_has_its_line(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/samphire.yaml");
    const char *all = index_text(case_card(case_compose(&test, false), "safety_plan"));
    assert_non_null(strstr(all, "\n3P Engine smoke or fire, PORT ENGINE\n"
                                "3S Engine smoke or fire, STARBOARD ENGINE\n"));
    assert_non_null(strstr(all, "\n10P Smell diesel, PORT ENGINE\n"));
}

/* Each entry of a card of hers, and no more. */
static void nothing_is_lost_from_the_index(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/samphire.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    const struct seen_facts *seen = sheet_seen(case_card(set, "safety_plan"));
    size_t lines = 0, wanted = 0;
    for (size_t i = 0; i < seen->count; i++)
        lines += seen->groups[i].count;
    for (size_t i = 0; i < set->count; i++)
        wanted += set->sheets[i]->procedure->seen.count;
    assert_true(wanted > 15);
    assert_int_equal(lines, wanted);
}

/* Who looks for it would find nothing; a draft has it. */
static void a_card_that_is_held_is_not_in_the_index(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, "", "  - {item: torch, tag: C1, zone: cockpit, "
                                    "side: port}\n", ""));
    const struct sheet_set *set = case_compose(&test, false);
    assert_true(case_card(set, "engine_fire")->held);
    const struct sheet *plan = case_card(set, "safety_plan");
    assert_null(strstr(index_text(plan), "Engine smoke"));
    assert_null(strstr(sheet_pages(plan)->call_lines[PLAN_PAGE_SEEN]->items[0].text, "Card 2"));
    plan = case_card(case_compose(&test, true), "safety_plan");
    assert_non_null(strstr(index_text(plan), "\n3 Engine smoke or fire\n"));
    assert_int_equal(sheet_pages(plan)->call_lines[PLAN_PAGE_SEEN]->count, 2);
}

static void the_index_may_be_a_sheet(void **state)
{
    (void)state;
    base_with("cards: {add: [index]}\n");
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    const struct sheet *index = case_card(set, "index");
    assert_string_equal(sheet_title(index)->number, "Card 29");
    assert_string_equal(index_text(index), index_text(case_card(set, "safety_plan")));
    assert_string_not_equal(sheet_footer(index)->code, "");
    assert_string_not_equal(sheet_footer(index)->code,
                            sheet_footer(case_card(set, "safety_plan"))->code);
    assert_false(index->held);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_card_is_left_out_or_asked_for),
        TEST(a_boat_chooses_for_herself),
        TEST(what_leads_to_a_card_that_is_left_out_is_told),
        TEST(only_what_can_be_chosen_is),
        TEST(the_index_has_the_cards_that_are_aboard),
        TEST(each_engine_has_its_line),
        TEST(nothing_is_lost_from_the_index),
        TEST(a_card_that_is_held_is_not_in_the_index),
        TEST(the_index_may_be_a_sheet),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
