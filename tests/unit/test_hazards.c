/* test_hazards.c - the table of what hazards forbid: each row alone stops what it forbids, and
 * what its row says makes that right. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "hazard.h"
#include "prove.h"
#include "text.h"

/* Acts that make others right, in an order that is right itself. */
static const enum act before_acts[] = {
    ACT_ALL_OUT, ACT_HEADCOUNT, ACT_CALL, ACT_JACKETS, ACT_GAS_SEEN_TO, ACT_TIE_RAFT,
    ACT_COUNT_IN};

/* What a card lacks or has too much, held against a row. */
enum breach { BREACH, RIGHT_BY_GUARD, RIGHT_BY_FIRST, RIGHT_BY_LATER, GUARD_UNPRINTED };

static bool lacks_first(const struct forbid *row, enum act act, enum breach breach)
{
    return act == row->first && breach != RIGHT_BY_FIRST;
}

static void before_add(struct text_builder *out, const struct forbid *row, enum breach breach)
{
    text_add(out, "  - id: before\n    practice: yes\n"
                  "    guards: [{says: after_call, in: act}]\n    does: [");
    const char *comma = "";
    for (size_t i = 0; i < sizeof before_acts / sizeof *before_acts; i++) {
        if (lacks_first(row, before_acts[i], breach))
            continue;
        text_add_format(out, "%s%s", comma, act_words[before_acts[i] - 1]);
        comma = ", ";
    }
    if (row->first == ACT_UPWIND && breach == RIGHT_BY_FIRST)
        text_add(out, ", upwind");
    if (row->since == ACT_CUT_RADIO)
        text_add(out, ", cut_radio");
    text_add(out, "]\n");
}

static void guards_add(struct text_builder *out, const struct forbid *row, enum breach breach)
{
    const char *comma = "";
    text_add(out, "    guards: [");
    for (unsigned guard = GUARD_NONE + 1; guard < GUARD_COUNT; guard++) {
        const char *in = GUARD_IN_ACT;
        if (guard == row->guard && breach != RIGHT_BY_GUARD && breach != GUARD_UNPRINTED)
            continue;
        if (guard == row->guard && breach == GUARD_UNPRINTED)
            in = "other";
        text_add_format(out, "%s{says: %s, in: %s}", comma, guard_words[guard - 1], in);
        comma = ", ";
    }
    text_add(out, "]\n");
}

/* The logic of a card that does what the row forbids. */
static const char *logic_of(const struct forbid *row, enum breach breach)
{
    struct text_builder out = text_builder_in(test.arena);
    if (row->hazard == HAZARD_NO_DISTRESS)
        text_add(&out, "call_when: {}\n"
                       "calls: [{signal: pan_pan, say: I NEED HELP, from: fixed}]\n");
    else if (row->hazard != HAZARD_ANY)
        text_add_format(&out, "hazards: [%s%s]\n", hazard_words[row->hazard - 1],
                        row->act == ACT_PREPARE_TO_SINK ? ", sinking" : "");
    text_add(&out, "steps:\n");
    before_add(&out, row, breach);
    text_add_format(&out, "  - id: forbidden\n    practice: yes\n    does: %s\n",
                    act_words[(row->act == ACT_END ? ACT_HEADCOUNT : row->act) - 1]);
    guards_add(&out, row, breach);
    text_add(&out, "    cases:\n      - {id: never, when: {fitted: knife}, lethal: [other]}\n"
                   "      - practice: yes\n  - id: behind\n    practice: yes\n");
    if (row->later != ACT_PUMP_ON || breach == RIGHT_BY_LATER)
        text_add(&out, "    does: pump_on\n");
    return out.at;
}

static const char *texts_of(const struct forbid *row)
{
    return text_format(test.arena,
                       "%ssteps:\n  before: {act: \"**DO** this.\"}\n"
                       "  forbidden:\n    act: \"**DO** that.\"\n"
                       "    lethal: {other: \"Only there.\"}\n"
                       "    cases: {never: {act: \"**DO** less.\"}}\n"
                       "  behind: {act: \"**DO** more.\"}\n",
                       row->hazard == HAZARD_NO_DISTRESS ? "call_when: Call.\n" : "");
}

static struct hazard_failures failures_of(const struct forbid *row, enum breach breach,
                                          const struct forbids *table)
{
    const char *const texts[] = {
        case_procedure_text(&test, "trial", 40, logic_of(row, breach), texts_of(row)), NULL};
    case_procedures(&test, texts);
    const struct sheet_set *set = case_compose(&test, false);
    if (set->held > 0)
        fail_msg("%s: held: %s", row->id, case_problems_text(&test));
    struct compose_input input = case_input(&test, false);
    return hazards_prove(&input, set, table, NULL, test.arena);
}

static struct forbids table_without(size_t index)
{
    const struct forbids all = forbids_all();
    struct forbid *rows = arena_array(test.arena, all.count, sizeof *rows);
    size_t count = 0;
    for (size_t i = 0; i < all.count; i++)
        if (i != index)
            rows[count++] = all.rows[i];
    return (struct forbids){rows, count};
}

static void boat_bare(void)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, "  - {item: torch, tag: C1, zone: saloon}\n",
                                   "  - knife\n  - vhf_handheld\n  - epirb\n  - flares\n"));
}

/* Each fault is found by its row and by no other: without the row it passes. */
static void each_row_stops_what_no_other_stops(void **state)
{
    (void)state;
    const struct forbids all = forbids_all();
    boat_bare();
    for (size_t i = 0; i < all.count; i++) {
        const struct forbids less = table_without(i);
        const struct hazard_failures found = failures_of(&all.rows[i], BREACH, &all);
        if (found.count == 0)
            fail_msg("nothing was told of %s", all.rows[i].id);
        for (size_t k = 0; k < found.count; k++)
            if (found.rows[k].row != &all.rows[i])
                fail_msg("%s: told of %s", all.rows[i].id, found.rows[k].what);
        if (failures_of(&all.rows[i], BREACH, &less).count != 0)
            fail_msg("%s is told without its row", all.rows[i].id);
    }
}

static void expect_right(const struct forbid *row, enum breach breach, bool right)
{
    const struct forbids all = forbids_all();
    if ((failures_of(row, breach, &all).count == 0) != right)
        fail_msg("%s, %d: %s", row->id, (int)breach, right ? "told" : "not told");
}

static void what_a_row_allows_is_right(void **state)
{
    (void)state;
    const struct forbids all = forbids_all();
    boat_bare();
    for (size_t i = 0; i < all.count; i++) {
        const struct forbid *row = &all.rows[i];
        if (row->guard != GUARD_NONE) {
            expect_right(row, RIGHT_BY_GUARD, true);
            expect_right(row, GUARD_UNPRINTED, false);
        }
        if (row->first != ACT_NONE)
            expect_right(row, RIGHT_BY_FIRST, true);
        if (row->later != ACT_NONE)
            expect_right(row, RIGHT_BY_LATER, true);
    }
}

/* ---- chains ---- */

#define LEADS_ON "decision: {after: first, yes: {card: second}, no: {}, practice: yes}\n"
#define LEADS_TEXT "decision: {ask: \"hot?\", yes: Go on., no: Stay.}\n"
#define FIRST_STEPS \
    "steps:\n  - {id: first, practice: yes, does: [all_out, count, call, jackets]}\n"
#define FIRST_TEXT "steps:\n  first: {act: \"**DO** this.\"}\n"

/* The failures of a card that leads to another, whose one step does `does`. */
static struct hazard_failures chain_failures(const char *first_logic, const char *first_texts,
                                             const char *does)
{
    const struct forbids all = forbids_all();
    const char *const texts[] = {
        case_procedure_text(&test, "first", 41, first_logic, first_texts),
        case_procedure_text(&test, "second", 42,
                            text_format(test.arena, "steps:\n  - {id: go, practice: yes, "
                                                    "does: %s}\n", does),
                            "steps:\n  go: {act: \"**DO** that.\"}\n"), NULL};
    case_procedures(&test, texts);
    const struct sheet_set *set = case_compose(&test, false);
    if (set->held > 0)
        fail_msg("held: %s", case_problems_text(&test));
    struct compose_input input = case_input(&test, false);
    return hazards_prove(&input, set, &all, NULL, test.arena);
}

static void a_chain_keeps_its_hazards(void **state)
{
    (void)state;
    boat_bare();
    const struct hazard_failures found = chain_failures(
        "hazards: vapour\n" FIRST_STEPS LEADS_ON, FIRST_TEXT LEADS_TEXT, "spark");
    assert_int_equal(found.count, 1);
    assert_string_equal(found.rows[0].rule, "R4");
    assert_non_null(strstr(found.rows[0].chain, "41 "));
    assert_non_null(strstr(found.rows[0].chain, " > 42 "));
    assert_string_equal(found.rows[0].from->procedure_key, "first");
    assert_string_equal(found.rows[0].sheet->procedure_key, "second");
}

static void an_answer_can_rule_a_hazard_out(void **state)
{
    (void)state;
    boat_bare();
    const struct hazard_failures found = chain_failures(
        "hazards: fuel_mist\n"
        "steps:\n  - {id: first, practice: yes}\n"
        "  - {id: then, practice: yes, does: open_space}\n"
        "decision: {after: first, yes: {card: second}, no: {over: fuel_mist}, practice: yes}\n",
        "steps:\n  first: {act: \"**DO** this.\"}\n  then: {act: \"**DO** more.\"}\n" LEADS_TEXT,
        "count");
    assert_int_equal(found.count, 0);
}

static void a_never_holds_on_the_cards_that_follow(void **state)
{
    static const char never[] = "never: [{id: lid, forbids: [open_space], sources: [S1]}]\n";
    static const char text[] = "never: {lid: open the lid.}\n";
    (void)state;
    boat_bare();
    const struct hazard_failures found = chain_failures(
        text_format(test.arena, "%s%s%s", FIRST_STEPS, LEADS_ON, never),
        text_format(test.arena, "%s%s%s", FIRST_TEXT, LEADS_TEXT, text), "open_space");
    assert_int_equal(found.count, 1);
    assert_string_equal(found.rows[0].rule, "R15");
    assert_non_null(strstr(found.rows[0].what, "open the lid"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_row_stops_what_no_other_stops),
        cmocka_unit_test(what_a_row_allows_is_right),
        cmocka_unit_test(a_chain_keeps_its_hazards),
        cmocka_unit_test(an_answer_can_rule_a_hazard_out),
        cmocka_unit_test(a_never_holds_on_the_cards_that_follow),
    };
    return cmocka_run_group_tests_name("hazards", tests, set_up, tear_down);
}
