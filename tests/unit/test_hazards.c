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

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_row_stops_what_no_other_stops),
        cmocka_unit_test(what_a_row_allows_is_right),
    };
    return cmocka_run_group_tests_name("hazards", tests, set_up, tear_down);
}
