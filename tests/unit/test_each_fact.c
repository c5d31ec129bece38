/* test_each_fact.c - every fact of a whole record taken out in turn. A card then says less and
 * nothing else; where it says anything else, or is held, `check` names the fact, its piece or its
 * kind in a problem that it does not tell of the whole record. The records are made from the
 * tables of fields (whole_case.h): a new field is tried by itself. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>
#include <string.h>

#include "card_fixture.h"
#include "field_slips.h"
#include "item_fields.h"
#include "outcome_case.h"
#include "text.h"
#include "whole_case.h"

#define ARENA_LIMIT ((size_t)512 * 1024 * 1024)

/* ---- what is new ---- */

static struct outcome whole;
static size_t failed_count, tried_facts;

/* What was taken out: a key of a section, or of a piece. */
struct lost_fact {
    const char *key, *item, *tag;
    enum belonging belonging;         /* of a key of a piece */
    bool on_the_way;
};

/* What one must open, pass or wait for on the way to a piece: that there is more than is said
 * nobody can see in a record. */
static bool is_on_the_way(const char *key)
{
    static const enum gear_field fields[] = {GEAR_inside, GEAR_past, GEAR_from, GEAR_only_when};
    for (size_t i = 0; i < sizeof fields / sizeof *fields; i++)
        if (gear_field_find(key) == fields[i])
            return true;
    return false;
}

/* A new problem of that severity or worse that names it. */
static bool is_told(const struct outcome *outcome, const struct lost_fact *fact,
                    enum severity least)
{
    const char *const names[] = {fact->key, fact->item, fact->tag};
    return outcome_tells(outcome, &whole, least, names);
}

static bool is_told_by_key(const struct outcome *outcome, const char *key)
{
    return is_told(outcome, &(struct lost_fact){.key = key}, SEVERITY_NOTE);
}

/* The first line of a sheet that says something else than before, not only less; NULL: none. */
static const char *other_line(const struct said_sheet *now, const struct said_sheet *before)
{
    if (text_equal(now->whole, before->whole))
        return NULL;
    for (size_t i = 0; i < now->count; i++)
        if (!said_in(before, now->lines[i]) && !said_less(before, now->lines[i]))
            return now->lines[i];
    return NULL;
}

/* Does the text stand on some card of the whole record? */
static bool said_anywhere(const char *text)
{
    for (size_t i = 0; i < whole.said.count; i++)
        if (strstr(whole.said.sheets[i].whole, text) != NULL)
            return true;
    return false;
}

/* A number that no card had before: nobody recorded it. NULL: there is none. */
static const char *invented(const struct said_sheet *now, const struct said_sheet *before)
{
    static const char digits[] = "0123456789";
    for (size_t i = 0; i < now->count; i++) {
        const char *line = now->lines[i];
        if (said_in(before, line))
            continue;
        for (line += strcspn(line, digits); *line != '\0'; line += strcspn(line, digits)) {
            size_t length = strspn(line, digits);
            if (!said_anywhere(arena_copy(test.arena, line, length)))
                return now->lines[i];
            line += length;
        }
    }
    return NULL;
}

static void failed(const struct lost_fact *fact, const char *card, const char *why,
                   const struct outcome *outcome)
{
    failed_count++;
    printf("%s %s %s: %s: %s\n", fact->item == NULL ? "-" : fact->item,
           fact->tag == NULL ? "-" : fact->tag, fact->key, card, why);
    outcome_print_new(outcome, &whole);
}

static void sheet_check(const struct outcome *outcome, const struct lost_fact *fact,
                        const struct said_sheet *before)
{
    const struct said_sheet *now = said_sheet(&outcome->said, before->id);
    if (now == NULL) {
        if (!is_told(outcome, fact, SEVERITY_NOTE))
            failed(fact, before->id, "the card is gone", outcome);
    } else if (now->held) {
        if (!is_told(outcome, fact, SEVERITY_HELD))
            failed(fact, before->id, "it is held, and not told why", outcome);
    } else if (other_line(now, before) != NULL && !fact->on_the_way &&
               !is_told(outcome, fact, SEVERITY_NOTE)) {
        failed(fact, before->id, other_line(now, before), outcome);
    }
    if (now != NULL && !now->held && invented(now, before) != NULL)
        failed(fact, before->id, invented(now, before), outcome);
}

static void without_check(const char *text, const struct lost_fact *fact)
{
    struct outcome outcome = outcome_of(&test, text);
    tried_facts++;
    if (!outcome.sound) {
        if (!is_told(&outcome, fact, SEVERITY_ERROR))
            failed(fact, "record", "nothing names it", &outcome);
        return;
    }
    if (fact->belonging == BELONGS_MUST && !is_told_by_key(&outcome, fact->key))
        failed(fact, "record", "what must be there is not missed", &outcome);
    for (size_t i = 0; i < whole.said.count; i++)
        sheet_check(&outcome, fact, &whole.said.sheets[i]);
}

/* ---- each fact ---- */

static const char *entry_text(const struct yaml_node *entry, const char *key)
{
    const struct yaml_node *value = yaml_get(entry, key);
    return value == NULL ? NULL : value->text;
}

static void fact_try(const struct spot *spot)
{
    struct lost_fact fact = {.key = spot_pair(spot)->key,
                             .item = entry_text(spot->mapping, "item"),
                             .tag = entry_text(spot->mapping, "tag")};
    fact.on_the_way = is_on_the_way(fact.key);
    if (fact.item != NULL)
        fact.belonging = item_field(item_find(fact.item)->item, gear_field_find(fact.key));
    struct arena *outer = test.arena;
    struct spot own = *spot;
    own.arena = test.arena = arena_new(ARENA_LIMIT);
    struct attempt out = spot_taken_out(&own);
    without_check(spot_changed(&own, &out)->bytes, &fact);
    arena_free(test.arena);
    test.arena = outer;
}

static bool any_fact(const struct spot *spot)
{
    (void)spot;
    return true;
}

/* One that the leaner records have not. */
static bool is_more(const struct spot *spot)
{
    const char *item = entry_text(spot->mapping, "item");
    return item != NULL &&
           !whole_asks(item_find(item)->item, gear_field_find(spot_pair(spot)->key));
}

/* A set of which no second handset is recorded has none. */
static bool is_taken_for_none(const struct spot *spot)
{
    return strcmp(spot_pair(spot)->key, "second_station") == 0;
}

static void mapping_facts_try(const struct source *source, const struct yaml_node *mapping,
                              bool (*wanted)(const struct spot *spot))
{
    struct spot spot = {.source = source, .mapping = mapping};
    for (spot.index = 0; spot.index < mapping->count; spot.index++)
        if (wanted(&spot) && !is_taken_for_none(&spot))
            fact_try(&spot);
}

static void part_facts_try(const struct source *source, const struct yaml_node *part,
                           bool (*wanted)(const struct spot *spot))
{
    if (part->kind == YAML_MAPPING)
        mapping_facts_try(source, part, wanted);
    for (size_t i = 0; part->kind == YAML_SEQUENCE && i < part->count; i++)
        if (part->items[i]->kind == YAML_MAPPING)
            mapping_facts_try(source, part->items[i], wanted);
}

static void record_try(const char *text, bool (*wanted)(const struct spot *spot))
{
    whole = outcome_of(&test, text);
    if (!whole.sound)
        fail_msg("the whole record is not sound:\n%s", case_problems_text(&test));
    for (size_t i = 0; i < whole.said.count; i++)
        if (whole.said.sheets[i].held)
            fail_msg("of the whole record %s is held:\n%s", whole.said.sheets[i].id,
                     case_problems_text(&test));
    const struct source *source = source_from(test.arena, "tern.yaml", text, strlen(text));
    const struct yaml_node *tree = yaml_tree_read(source, test.arena,
                                                  problems_new(test.arena));
    for (size_t i = 0; i < tree->count; i++)
        part_facts_try(source, tree->pairs[i].value, wanted);
    if (failed_count > 0)
        fail_msg("%zu of %zu facts", failed_count, tried_facts);
}

static void each_fact_that_is_asked_for(void **state)
{
    static const struct whole_kind one = {HULL_MONOHULL, WHOLE_ASKED},
                                   two = {HULL_CATAMARAN, WHOLE_ASKED};
    (void)state;
    case_base(&test, "tests/fleet/base.yaml");
    record_try(whole_boat(&one, test.arena), any_fact);
    record_try(whole_boat(&two, test.arena), any_fact);
}

/* A boat with all gear, and one piece of which all is told. */
static const char *with_all_of(enum item_key one)
{
    static const struct whole_kind asked = {HULL_MONOHULL, WHOLE_ASKED},
                                   all = {HULL_MONOHULL, WHOLE_ALL};
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, whole_head(&asked, test.arena));
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        text_add(&out, whole_entry(item == one ? &all : &asked, item, test.arena));
    return out.at;
}

static void each_fact_that_gear_may_have(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        struct arena *outer = test.arena;
        test.arena = arena_new(ARENA_LIMIT);
        record_try(with_all_of(item), is_more);
        arena_free(test.arena);
        test.arena = outer;
    }
    assert_true(tried_facts > 3000);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_fact_that_is_asked_for),
        cmocka_unit_test(each_fact_that_gear_may_have),
    };
    return cmocka_run_group_tests_name("each_fact", tests, set_up, tear_down) != 0;
}
