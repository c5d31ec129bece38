/* test_compose_forms.c - two forms of one card, a sign for some boats, what the call adds by
 * the case that is taken, and gear that lies in the space that a card is about. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "radio.h"
#include "text.h"

#define TORCH "  - {item: torch, tag: C9, zone: saloon}\n"
#define KNIFE "  - {item: knife, tag: E8, zone: cockpit}\n"
#define STEP "steps: [{id: look, sources: [S5]}]\n"
#define STEP_TEXTS "steps: {look: {act: \"**LOOK.**\"}}\n"

static void boat_with(const char *gear, const char *not_fitted)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, not_fitted));
}

static const struct sheet *smoke(void)
{
    return case_card(case_compose(&test, false), "smoke");
}

/* ---- forms ---- */

static void a_form_has_a_letter_beside_the_other(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, STEP "when: {fitted: torch}\n",
                            STEP_TEXTS "when_reason: No torch.\n"),
        case_procedure_text(&test, "steam", 10, STEP "when: {fitted: knife}\nform_of: smoke\n"
                            "form_letter: T\n", STEP_TEXTS "when_reason: No knife.\n"), NULL};
    case_procedures(&test, texts);
    boat_with(TORCH, "  - knife\n");
    assert_string_equal(smoke()->number, "10");
    boat_with(KNIFE, "  - torch\n");
    assert_string_equal(case_card(case_compose(&test, false), "steam")->number, "10");
    boat_with(TORCH KNIFE, "");
    const struct sheet_set *set = case_compose(&test, false);
    assert_int_equal(set->count, 2);
    assert_string_equal(case_card(set, "smoke")->number, "10");
    assert_string_equal(case_card(set, "steam")->number, "10T");
    assert_string_equal(sheet_title(case_card(set, "steam"))->number, "Card 10T");
    assert_string_equal(case_card(set, "steam")->name, "10T STEAM CARD");
}

/* ---- signs ---- */

static void a_sign_may_be_for_some_boats_and_name_a_card(void **state)
{
    (void)state;
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, STEP "more_signs: {when: {fitted: torch}}\n",
                            STEP_TEXTS "more_signs: \"steam: card {steam}\"\n"),
        case_procedure_text(&test, "steam", 20, STEP, STEP_TEXTS), NULL};
    case_procedures(&test, texts);
    boat_with(TORCH, "");
    assert_string_equal(sheet_signs(smoke())->signs, "Smoke · a bang · steam: card 20");
    boat_with(KNIFE, "  - torch\n");
    assert_string_equal(sheet_signs(smoke())->signs, "Smoke · a bang");
}

/* ---- reports ---- */

#define REPORTING \
    "steps:\n" \
    "  - id: stop\n" \
    "    sources: [S5]\n" \
    "    cases:\n" \
    "      - {when: {fitted: torch}, uses: [torch]}\n" \
    "      - {id: none, report: NO TORCH}\n" \
    "  - id: look\n" \
    "    sources: [S5]\n" \
    "    when: {fitted: knife}\n" \
    "    cases:\n" \
    "      - {id: knife, report: KNIFE ABOARD}\n"
#define REPORTING_TEXTS \
    "steps:\n" \
    "  stop: {act: \"**STOP.**\", cases: {none: {act: \"**GO.**\"}}}\n" \
    "  look: {cases: {knife: {act: \"**LOOK.**\"}}}\n"
#define CALLING \
    "call_when: {}\n" \
    "calls: [{signal: mayday, nature: fire, say: I AM ON FIRE, from: fixed}]\n"

static void script_says(const char *words)
{
    const char *said = script_text(sheet_call(smoke())->script, test.arena);
    if (strstr(said, words) == NULL)
        fail_msg("not said: %s\nin: %s", words, said);
}

static void the_call_adds_what_the_cases_report(void **state)
{
    (void)state;
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, REPORTING CALLING,
                                                     REPORTING_TEXTS "call_when: Now.\n"), NULL};
    case_procedures(&test, texts);
    boat_with(TORCH, "  - knife\n");
    script_says("I AM ON FIRE. ");
    boat_with("", "  - torch\n  - knife\n");
    script_says("I AM ON FIRE, NO TORCH.");
    boat_with(KNIFE, "  - torch\n");
    script_says("I AM ON FIRE, NO TORCH, KNIFE ABOARD.");
}

/* ---- reach ---- */

static const struct card_step *valve_step(const char *gear)
{
    const struct card_case_texts { const char *logic, *texts; } both = {
        "per: engine_space\n"
        "steps:\n"
        "  - id: fuel\n"
        "    sources: [S5]\n"
        "    cases:\n"
        "      - id: some\n"
        "        when: {reach: {fuel_shutoff_diesel: below}, "
        "beyond: {fuel_shutoff_diesel: below}}\n"
        "        uses: [{fuel_shutoff_diesel: shut}]\n"
        "        within: below\n"
        "      - id: all\n"
        "        when: {reach: {fuel_shutoff_diesel: below}}\n"
        "      - id: none\n",
        "steps: {fuel: {cases: {some: {act: \"**SHUT** some.\"}, all: {act: \"**SHUT** all.\"}, "
        "none: {act: \"**GO.**\"}}}}\n"};
    const char *const texts[] = {case_procedure_text(&test, "smoke", 10, both.logic, both.texts),
                                 NULL};
    case_procedures(&test, texts);
    boat_with(gear, "");
    return case_step(smoke(), "fuel");
}

#define VALVE(tag, zone) \
    "  - {item: fuel_shutoff_diesel, tag: " tag ", zone: " zone ", inside: [], how: {shut: down}}\n"

static void below_is_not_in_the_space_of_the_card(void **state)
{
    (void)state;
    assert_string_equal(valve_step(VALVE("C1", "saloon"))->headline.text, "**SHUT** all.");
    assert_string_equal(valve_step(VALVE("C1", "engine_space"))->headline.text, "**GO.**");
    const struct card_step *step = valve_step(VALVE("C1", "saloon") VALVE("C2", "engine_space"));
    assert_string_equal(step->headline.text, "**SHUT** some.");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_form_has_a_letter_beside_the_other),
        cmocka_unit_test(a_sign_may_be_for_some_boats_and_name_a_card),
        cmocka_unit_test(the_call_adds_what_the_cases_report),
        cmocka_unit_test(below_is_not_in_the_space_of_the_card),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
