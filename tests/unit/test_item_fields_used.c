/* test_item_fields_used.c - the table item x field against those who use it: what
 * procedures, figures and `start` ask of gear belongs to it, and what gear must have is told
 * where it is missing. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "asked.h"
#include "card_fixture.h"
#include "figure.h"
#include "item_states.h"
#include "rules.h"
#include "text.h"

static void must_belong(enum item_key item, enum gear_field field, const char *who)
{
    if (item_field(item, field) == BELONGS_NOT)
        fail_msg("%s: %s does not belong to %s", who, gear_field_word(field), item_word(item));
}

/* ---- procedures ---- */

static void what_procedures_ask_is_asked_for(void **state)
{
    (void)state;
    size_t facts = 0;
    struct asked_list asked = asked_items(test.procedures.rows, test.procedures.count, HULL_NONE,
                                          test.arena);
    assert_true(asked.count > 40);
    for (size_t i = 0; i < asked.count; i++)
        for (size_t k = 0; k < asked.rows[i].fact_count; k++, facts++)
            must_belong(asked.rows[i].kind->item, asked.rows[i].facts[k], "procedures");
    assert_true(facts > 100);
}

static size_t states_told(const struct item_uses *uses)
{
    size_t told = 0;
    for (size_t i = 0; i < uses->count; i++) {
        enum item_key item = uses->items[i].value;
        enum end_state wanted = uses->items[i].state;
        enum gear_field field = item_state_field(item, wanted);
        assert_true(wanted == STATE_ANY ? !item_is_contrary(item) : item_has_state(item, wanted));
        if (field == GEAR_FIELD_NONE)
            continue;
        must_belong(item, field, "the state of a step");
        told++;
    }
    return told;
}

/* What tells how gear comes to be in the state of a step is a fact of such gear. */
static void states_of_steps_are_those_of_their_gear(void **state)
{
    (void)state;
    size_t told = 0;
    for (size_t p = 0; p < test.procedures.count; p++)
        for (size_t s = 0; s < test.procedures.rows[p]->step_count; s++) {
            const struct procedure_step *step = &test.procedures.rows[p]->steps[s];
            told += states_told(&step->uses) + states_told(&step->also);
            for (size_t c = 0; c < step->case_count; c++)
                told += states_told(&step->cases[c].uses) + states_told(&step->cases[c].also);
        }
    assert_true(told > 40);
}

/* ---- figures ---- */

/* "seacock C13 bore_mm": the item and the field; false for a fact of the boat or base. */
static bool input_of_gear(const char *owner, const char *field, enum item_key *item,
                          enum gear_field *key)
{
    const struct item_kind *kind =
        item_find(arena_copy(test.arena, owner, strcspn(owner, " ")));
    *item = kind == NULL ? ITEM_NONE : kind->item;
    *key = gear_field_find(field);
    return kind != NULL && *key != GEAR_FIELD_NONE;
}

static size_t figures_of(const char *boat)
{
    size_t count = 0;
    enum item_key item;
    enum gear_field key;
    const struct figure *figure;
    case_boat(&test, boat);
    const struct figure_record record = {test.boat, test.base};
    for (size_t f = 0; (figure = figure_at(f)) != NULL; f++) {
        struct figure_result result = figure_evaluate(figure, &record, test.arena);
        for (size_t i = 0; i < result.input_count; i++) {
            const char *what = result.inputs[i].what;
            if (!input_of_gear(what, strrchr(what, ' ') + 1, &item, &key))
                continue;
            must_belong(item, key, figure->id);
            count++;
        }
        for (size_t i = 0; i < result.lack_count; i++)
            if (input_of_gear(result.lacks[i].owner, result.lacks[i].field, &item, &key))
                must_belong(item, key, figure->id);
    }
    return count;
}

static void what_figures_read_belongs_to_their_gear(void **state)
{
    (void)state;
    static const char *const boats[] = {"bramble", "samphire", "tamarisk"};
    for (size_t i = 0; i < 3; i++)
        assert_true(figures_of(text_format(test.arena, "tests/fleet/boats/%s.yaml", boats[i])) >
                    10);
}

/* ---- what gear must have ---- */

/* A piece with no fact but those that every entry has, on a boat with a radio. */
static const struct boat *boat_with_bare(enum item_key item)
{
    const struct item_kind *kind = item_kind_of(item);
    bool hers = hull_has_zone(HULL_MONOHULL, zone_of(kind->usual_zone));
    const char *space = item == ITEM_lithium_bank ? ", space: saloon" : "";
    enum zone_key zone = hers ? kind->usual_zone : ZONE_saloon;
    const char *piece = text_format(test.arena,
                                    "  - {item: %s, tag: %c77, zone: %s, side: port%s}\n",
                                    kind->key, (char)kind->class, zone_word(zone), space);
    return case_boat(&test, case_boat_text(&test, "", piece, ""));
}

static bool is_told(enum gear_field field)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count);
    const char *key = gear_field_word(field);
    for (size_t i = 0; i < count; i++)
        if (strstr(all[i].what, key) != NULL ||
            (all[i].remedy != NULL && strstr(all[i].remedy, key) != NULL))
            return true;
    return false;
}

static void rules_run_over(const struct boat *boat)
{
    test.problems = problems_new(test.arena);
    rules_check(&(struct rules_input){.boat = boat, .base = test.base, .today = test.today,
                                      .from = test.today, .to = test.today},
                test.arena, test.problems);
}

static void what_gear_must_have_is_told_where_it_is_missing(void **state)
{
    (void)state;
    size_t pairs = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        if (item == ITEM_vhf_dsc)
            continue;
        rules_run_over(boat_with_bare(item));
        for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
            bool reading_tells = field == GEAR_item || field == GEAR_tag || field == GEAR_zone;
            if (reading_tells || item_field(item, field) != BELONGS_MUST)
                continue;
            pairs++;
            if (!is_told(field))
                fail_msg("nobody tells that %s of %s is missing", gear_field_word(field),
                         item_word(item));
        }
    }
    assert_true(pairs > 40);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_procedures_ask_is_asked_for),
        cmocka_unit_test(states_of_steps_are_those_of_their_gear),
        cmocka_unit_test(what_figures_read_belongs_to_their_gear),
        cmocka_unit_test(what_gear_must_have_is_told_where_it_is_missing),
    };
    int failed = cmocka_run_group_tests_name("item_fields_used", tests, set_up, tear_down);
    return failed != 0;
}
