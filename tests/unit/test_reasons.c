/* test_reasons.c - conditions in words, and what is told of a composed card. */
#include "reasons_case.h"
#include "source.h"
#include "yaml_tree.h"

/* ---- conditions in words ---- */

static const char *words_of(const char *when)
{
    const char *text = text_format(test.arena, "when: %s\n", when);
    const struct source *source = source_from(test.arena, "when.yaml", text, strlen(text));
    const struct yaml_node *root = yaml_tree_read(source, test.arena, test.problems);
    assert_non_null(root);
    const struct condition *condition = condition_read(yaml_get(root, "when"), test.arena,
                                                       test.problems);
    if (condition == NULL)
        fail_msg("not a condition: %s\n%s", when, case_problems_text(&test));
    return condition_words(condition, test.arena);
}

#define EXPECT_WORDS(when, words) assert_string_equal(words_of(when), words)

static void each_question_has_words(void **state)
{
    (void)state;
    EXPECT_WORDS("{fitted: liferaft}", "liferaft fitted");
    EXPECT_WORDS("{not_fitted: dinghy}", "dinghy not fitted");
    EXPECT_WORDS("{inside: {fuel_shutoff_diesel: [engine_space]}}",
                 "fuel_shutoff_diesel inside engine_space");
    EXPECT_WORDS("{inside: {fuel_shutoff_diesel: [engine_space, bilge]}}",
                 "fuel_shutoff_diesel inside engine_space or bilge");
    EXPECT_WORDS("{is: {engine_extinguisher: {fits_port: yes}}}",
                 "engine_extinguisher fits_port = yes");
    EXPECT_WORDS("{cuts: {battery_isolator_service: vhf_dsc}}",
                 "battery_isolator_service cuts vhf_dsc");
    EXPECT_WORDS("{boat: catamaran}", "she is a catamaran");
    EXPECT_WORDS("{boat: gas}", "she carries cooking gas");
    EXPECT_WORDS("{reach: {epirb: deck}}", "epirb reached from deck");
    EXPECT_WORDS("{surely: {boat: dsc}}", "recorded so: she can send a digital alert");
}

static void what_all_must_be_is_said_once(void **state)
{
    (void)state;
    EXPECT_WORDS("{fitted: [fire_port, engine_extinguisher], "
                 "is: {engine_extinguisher: {fits_port: yes}}}",
                 "fire_port, engine_extinguisher fitted; engine_extinguisher fits_port = yes");
    EXPECT_WORDS("{fitted: torch, not_fitted: [knife, dinghy]}",
                 "torch fitted; knife, dinghy not fitted");
    EXPECT_WORDS("{all: [{fitted: [torch, knife]}, {boat: monohull}]}",
                 "torch, knife fitted; she is a monohull");
}

static void groups_keep_their_meaning(void **state)
{
    (void)state;
    EXPECT_WORDS("{any: [{fitted: torch}, {fitted: knife}]}", "torch fitted or knife fitted");
    EXPECT_WORDS("{none: [{fitted: torch}, {fitted: knife}]}",
                 "none of (torch fitted, knife fitted)");
    EXPECT_WORDS("{any: [{fitted: [torch, knife]}, {boat: catamaran}]}",
                 "(torch, knife fitted) or she is a catamaran");
    EXPECT_WORDS("{fitted: torch, any: [{fitted: knife}, {none: [{fitted: sart}]}]}",
                 "torch fitted; (knife fitted or none of (sart fitted))");
    EXPECT_WORDS("{any: [{fitted: torch, boat: catamaran}, {fitted: knife}]}",
                 "(torch fitted and she is a catamaran) or knife fitted");
}

/* ---- a card ---- */

static const struct written steps = {
    "steps:\n"
    "  - id: light\n"
    "    cases:\n"
    "      - id: extinguisher\n"
    "        when: {fitted: fixed_extinguisher}\n"
    "        practice: yes\n"
    "      - when: {fitted: torch}\n"
    "        uses: [torch]\n"
    "      - id: match\n"
    "        practice: yes\n"
    "    sources: [S1]\n"
    "  - id: raft\n"
    "    when: {fitted: liferaft}\n"
    "    practice: yes\n"
    "  - id: knives\n"
    "    also: [knife, dinghy]\n"
    "    practice: yes\n",
    "steps:\n"
    "  light:\n"
    "    act: \"**TAKE** what gives light.\"\n"
    "    cases:\n"
    "      extinguisher: {act: \"**RELEASE** the extinguisher.\"}\n"
    "      match: {act: \"**STRIKE** a match.\", because: There is no torch.}\n"
    "    because: It is dark.\n"
    "  raft: {act: \"**THROW** the raft.\"}\n"
    "  knives: {act: \"**TAKE** the knives.\"}\n"};

#define LACKS "  - fixed_extinguisher\n  - liferaft\n  - dinghy\n"

static const char *reasons_of(const char *gear, const char *not_fitted)
{
    return reasons_with(steps, gear, not_fitted);
}

static void the_case_taken_is_told_with_those_before_it(void **state)
{
    (void)state;
    const char *text = reasons_of(GEAR, LACKS);
    expect_part(text, "1. TAKE what gives light. at words.yaml:7\n"
                      "   step light at logic.yaml:6\n"
                      "   passed over: case 1 of 3, which asks: fixed_extinguisher fitted"
                      " at logic.yaml:8\n"
                      "   case 2 of 3: torch fitted at logic.yaml:11\n"
                      "   gear C1 torch at text.yaml:16\n"
                      "      Saloon | Torch\n"
                      "   record: fixed_extinguisher not fitted at text.yaml:20\n"
                      "   because: It is dark.\n"
                      "   source S1: United States Coast Guard, 46 CFR 28.265,");
    expect_none(text, "case 3 of 3");
    expect_none(text, "There is no torch");
}

static void the_last_case_is_for_every_other_boat(void **state)
{
    (void)state;
    const char *text = reasons_of("  - {item: knife, tag: E1, zone: cockpit}\n",
                                  LACKS "  - torch\n");
    expect_part(text, "   case 3 of 3: every other boat at logic.yaml:13\n"
                      "   record: fixed_extinguisher not fitted at text.yaml:18\n"
                      "   record: torch not fitted at text.yaml:21\n"
                      "   because: There is no torch.\n"
                      "   trade practice: awaits sign-off\n");
}

static void a_step_that_is_not_on_the_card_is_told(void **state)
{
    (void)state;
    const char *text = reasons_of(GEAR, LACKS);
    expect_part(text, "Not on this card: step raft, only where: liferaft fitted"
                      " at logic.yaml:16\n");
    expect_none(text, "THROW");
    text = reasons_of(GEAR "  - {item: liferaft, tag: E3, zone: coachroof}\n",
                      "  - fixed_extinguisher\n  - dinghy\n");
    expect_part(text, "2. THROW the raft. at words.yaml:12\n   step raft at logic.yaml:16\n"
                      "   only where: liferaft fitted at logic.yaml:17\n   the step's own words\n"
                      "   record: liferaft E3 fitted at text.yaml:19\n");
}

static void each_row_is_told_with_its_entry(void **state)
{
    (void)state;
    expect_part(reasons_of(GEAR, LACKS),
                "   gear E1 knife at text.yaml:17\n"
                "      Cockpit | Knife\n"
                "   gear E2 knife at text.yaml:18\n"
                "      Saloon | Knife\n"
                "   record: dinghy not fitted at text.yaml:22\n");
}

static void what_is_not_recorded_holds_and_is_told(void **state)
{
    (void)state;
    const char *text = reasons_of(GEAR, "  - liferaft\n  - dinghy\n");
    expect_part(text, ", HELD BACK\n");
    expect_part(text, "   not to be decided: case 1 of 3, which asks: fixed_extinguisher fitted"
                      " at logic.yaml:8\n   the step's own words\n"
                      "   gear fixed_extinguisher, asked for at logic.yaml:9\n"
                      "      NOT RECORDED | Fixed extinguisher\n"
                      "   record: fixed_extinguisher not recorded\n");
    expect_part(text, "\nHeld back by\n   fixed_extinguisher is not recorded: it holds back the "
                      "card 10 DARK CARD at text.yaml:1\n");
    assert_int_equal(problems_count(test.problems, SEVERITY_HELD), 1);
    expect_none(reasons_of(GEAR, LACKS), "Held back");
}

/* ---- sign-off ---- */

static const char *with_approval_of(const char *text, const char *card, const char *date,
                                    const char *until)
{
    case_base(&test, text_format(test.arena,
                                 "base: {name: Quay, specimen: yes, "
                                 "phone_24h: \"+999 00 000 000\"}\n"
                                 "rescue_centre: {name: Skerry, call: SKERRY, channel: \"67\", "
                                 "phone: \"+999 00 000 001\", checked_on: 2026-11-02}\n"
                                 "cruising_area: {latitude: north, longitude: east, sea_area: A1}\n"
                                 "languages: [en]\n"
                                 "approvals:\n"
                                 "  - {card: %s, text: %s, initials: AB, qualification: "
                                 "Yachtmaster, date: %s, until: %s}\n", card, text, date, until));
    return reasons_of(GEAR, LACKS);
}

/* Of the text as it is. */
static const char *with_approval(const char *card, const char *date, const char *until)
{
    (void)reasons_of(GEAR, LACKS);
    return with_approval_of(case_fingerprint(&test, "dark"), card, date, until);
}

static void practice_awaits_sign_off(void **state)
{
    (void)state;
    const char *text = reasons_of(GEAR, LACKS);
    expect_part(text, "Sign-off\n   step 2, knives: trade practice at logic.yaml:19\n"
                      "   not approved: no approval of dark stands on 2026-11-25"
                      " at tests/fleet/base.yaml\n");
    expect_none(text, "light: trade practice");
}

static void an_approval_stands_between_its_days(void **state)
{
    (void)state;
    const char *text = with_approval("dark", "2026-11-01", "2026-11-25");
    expect_part(text, "   approval: AB, Yachtmaster, from 2026-11-01 until 2026-11-25"
                      " at text.yaml:6\n");
    expect_none(text, "not approved");
    text = with_approval("dark", "2025-11-01", "2026-11-24");
    expect_part(text, "   approval has expired: AB, Yachtmaster, from 2025-11-01 until 2026-11-24");
    expect_part(text, "not approved");
    text = with_approval("dark", "2026-11", "2026-11-25");       /* from the month's first day */
    expect_part(text, "   approval: AB, Yachtmaster, from 2026-11 until 2026-11-25");
    assert_null(strstr(text, "not approved"));
    text = with_approval("dark", "2026-11-26", "2027-11-01");
    expect_part(text, "   approval has not begun: AB");
    expect_part(text, "not approved");
    text = with_approval("flooding", "2026-11-01", "2027-11-01");
    expect_none(text, "AB, Yachtmaster");
    expect_part(text, "not approved");
    text = with_approval_of("0123-4567-89ab-CDEF", "dark", "2026-11-01", "2027-11-01");
    expect_part(text, "   approval of another text, 0123-4567-89ab-CDEF: AB, Yachtmaster, from");
    expect_part(text, "not approved");
    expect_part(text, text_format(test.arena, "fingerprint of its text in the language en: %s\n",
                                  case_fingerprint(&test, "dark")));
}

/* The sign-off agrees with the mark that the card itself carries. */
static void the_mark_says_the_same(void **state)
{
    (void)state;
    expect_none(with_approval("dark", "2026-11-01", "2026-11-25"), "NOT APPROVED BY");
    expect_part(with_approval("dark", "2026-11-01", "2026-11-24"), "NOT APPROVED BY");
}

/* ---- lines ---- */

static void long_texts_break_at_spaces(void **state)
{
    (void)state;
    const char *spot = "behind the panel with the long brass handle under the shelf of the "
                       "forward berth, second hatch from the door";
    const char *text = reasons_of(
        text_format(test.arena, "  - {item: torch, tag: C1, zone: saloon, spot: \"%s\"}\n"
                                "  - {item: knife, tag: E1, zone: cockpit}\n", spot), LACKS);
    expect_part(text, "      Saloon, behind the panel with the long brass handle under the shelf "
                      "of the forward berth,\n         second hatch from the door | Torch\n");
    for (const char *end; (end = strchr(text, '\n')) != NULL; text = end + 1)
        assert_true(text_code_points(text_format(test.arena, "%.*s", (int)(end - text), text))
                    <= 100);
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup_teardown(name, test_begin, test_end)
    const struct CMUnitTest tests[] = {
        TEST(each_question_has_words),
        TEST(what_all_must_be_is_said_once),
        TEST(groups_keep_their_meaning),
        TEST(the_case_taken_is_told_with_those_before_it),
        TEST(the_last_case_is_for_every_other_boat),
        TEST(a_step_that_is_not_on_the_card_is_told),
        TEST(each_row_is_told_with_its_entry),
        TEST(what_is_not_recorded_holds_and_is_told),
        TEST(practice_awaits_sign_off),
        TEST(an_approval_stands_between_its_days),
        TEST(the_mark_says_the_same),
        TEST(long_texts_break_at_spaces),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
