/* test_each_item.c - every item of a whole record given the other states of knowledge in turn: not
 * fitted, not surveyed, neither, and more than one of them. Cards have no row and no place of what
 * she has not, or of what nobody looked at; a card that is held is held in its name; and what
 * contradicts itself is an error at its line. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>
#include <string.h>

#include "card_fixture.h"
#include "outcome_case.h"
#include "text.h"
#include "whole_case.h"

#define ARENA_LIMIT ((size_t)512 * 1024 * 1024)

static struct outcome whole;
static size_t failures;

/* A record without the item, and with more lines at its end. */
static const char *without(const struct whole_kind *kind, enum item_key item, const char *lines)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, whole_head(kind, test.arena));
    for (enum item_key other = ITEM_NONE + 1; other < ITEM_COUNT; other++)
        if (other != item)
            text_add(&out, whole_entry(kind, other, test.arena));
    text_add(&out, lines);
    return out.at;
}

static void failed_for(enum item_key item, const char *how, const char *why,
                       const struct outcome *outcome)
{
    failures++;
    printf("%s, %s: %s\n", item_word(item), how, why);
    outcome_print_new(outcome, &whole);
}

/* ---- what cards say of it ---- */

/* A word of its own in the line: "C4", not "C41". */
static bool has_tag(const char *line, const char *tag)
{
    for (const char *at = line; (at = strstr(at, tag)) != NULL; at++) {
        char before = at == line ? ' ' : at[-1], after = at[strlen(tag)];
        if (!is_digit(after) && (before < 'A' || before > 'Z') && !is_digit(before))
            return true;
    }
    return false;
}

static const char *line_with_tag(const struct outcome *outcome, const char *tag)
{
    for (size_t i = 0; i < outcome->said.count; i++)
        for (size_t k = 0; k < outcome->said.sheets[i].count; k++)
            if (has_tag(outcome->said.sheets[i].lines[k], tag))
                return outcome->said.sheets[i].lines[k];
    return NULL;
}

static size_t held_count(const struct outcome *outcome)
{
    size_t held = 0;
    for (size_t i = 0; i < outcome->said.count; i++)
        held += outcome->said.sheets[i].held ? 1 : 0;
    return held;
}

static bool is_told(const struct outcome *outcome, enum item_key item, enum severity least)
{
    const char *const names[3] = {item_word(item)};
    return outcome_tells(outcome, &whole, least, names);
}

/* ---- the states ---- */

static struct outcome tried(const struct whole_kind *kind, enum item_key item, const char *list)
{
    const char *lines = list[0] == '\0' ? "" : text_format(test.arena, "%s: [%s]\n", list,
                                                           item_word(item));
    return outcome_of(&test, without(kind, item, lines));
}

/* She has none: that holds no card for ever, and no card speaks of a piece. */
static void not_fitted_check(const struct whole_kind *kind, enum item_key item)
{
    struct outcome outcome = tried(kind, item, "not_fitted");
    const char *line = line_with_tag(&outcome, whole_tag(item, test.arena));
    if (!outcome.sound)
        failed_for(item, "not fitted", "the record is not sound", &outcome);
    else if (line != NULL)
        failed_for(item, "not fitted", line, &outcome);
    else if (held_count(&outcome) > 0)
        failed_for(item, "not fitted", "a card is held", &outcome);
}

/* Nobody looked: told in its name, and what is held is told as held. */
static void unknown_check(const struct whole_kind *kind, enum item_key item, const char *list)
{
    struct outcome outcome = tried(kind, item, list);
    const char *line = line_with_tag(&outcome, whole_tag(item, test.arena));
    const char *how = list[0] == '\0' ? "not recorded" : list;
    if (!outcome.sound)
        failed_for(item, how, "the record is not sound", &outcome);
    else if (line != NULL)
        failed_for(item, how, line, &outcome);
    else if (list[0] != '\0' && !is_told(&outcome, item, SEVERITY_NOTE))
        failed_for(item, how, "nothing tells", &outcome);
    else if (held_count(&outcome) > 0 && !is_told(&outcome, item, SEVERITY_HELD))
        failed_for(item, how, "a card is held, and not in its name", &outcome);
}

/* ---- more than one state ---- */

/* Exactly one error, in that line of the file, with a remedy. */
static bool is_refused(const struct outcome *outcome, const char *text, const char *line)
{
    const struct problem *error = NULL;
    const char *at = strstr(text, line);
    int number = 1;
    for (size_t i = 0; i < outcome->count; i++)
        if (outcome->problems[i].severity == SEVERITY_ERROR) {
            if (error != NULL)
                return false;
            error = &outcome->problems[i];
        }
    for (const char *sign = text; sign < at; sign++)
        number += *sign == '\n' ? 1 : 0;
    return error != NULL && !outcome->sound && error->place.line == number &&
           !text_empty(error->remedy);
}

/* `bad`, one of the lines behind the record, is wrong. */
static void refusal_check(enum item_key item, const char *record, const char *lines,
                          const char *bad)
{
    const char *text = text_format(test.arena, "%s%s", record, lines);
    struct outcome outcome = outcome_of(&test, text);
    if (!is_refused(&outcome, text, bad))
        failed_for(item, bad, "not refused once, there", &outcome);
}

/* A piece that is in a list, an item in both lists, or twice in one. */
static void contradictions_check(const struct whole_kind *kind, enum item_key item)
{
    const char *word = item_word(item), *record = without(kind, item, "");
    const char *fitted = whole_boat(kind, test.arena);
    const char *none = text_format(test.arena, "not_fitted: [%s]\n", word);
    const char *unseen = text_format(test.arena, "not_surveyed: [%s]\n", word);
    const char *again = text_format(test.arena, "  - %s # again\n", word);
    refusal_check(item, fitted, none, none);
    refusal_check(item, fitted, unseen, unseen);
    refusal_check(item, record, text_format(test.arena, "%s%s", none, unseen), unseen);
    refusal_check(item, record,
                  text_format(test.arena, "not_fitted:\n  - %s\n%s", word, again), again);
    refusal_check(item, record,
                  text_format(test.arena, "not_surveyed:\n  - %s\n%s", word, again), again);
}

static void item_check(const struct whole_kind *kind, enum item_key item)
{
    struct arena *outer = test.arena;
    test.arena = arena_new(ARENA_LIMIT);
    not_fitted_check(kind, item);
    unknown_check(kind, item, "not_surveyed");
    unknown_check(kind, item, "");
    contradictions_check(kind, item);
    arena_free(test.arena);
    test.arena = outer;
}

static void each_item_in_each_state(void **state)
{
    static const struct whole_kind kinds[] = {{HULL_MONOHULL, WHOLE_ASKED},
                                              {HULL_CATAMARAN, WHOLE_ASKED}};
    (void)state;
    case_base(&test, "tests/fleet/base.yaml");
    for (size_t k = 0; k < sizeof kinds / sizeof *kinds; k++) {
        whole = outcome_of(&test, whole_boat(&kinds[k], test.arena));
        assert_true(whole.sound);
        assert_int_equal(held_count(&whole), 0);
        for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
            if (!text_empty(whole_entry(&kinds[k], item, test.arena)))
                item_check(&kinds[k], item);
    }
    if (failures > 0)
        fail_msg("%zu", failures);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_item_in_each_state),
    };
    return cmocka_run_group_tests_name("each_item", tests, set_up, tear_down) != 0;
}
