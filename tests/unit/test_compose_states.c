/* test_compose_states.c - no row says how gear is brought into another state than its step
 * wants: in all procedures on boats of every kind, and of every item in every state. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <dirent.h>
#include <string.h>

#include "card_fixture.h"
#include "item_states.h"
#include "text.h"

/* ---- what a step wants of an item ---- */

static enum end_state state_in(const struct item_uses *own, const struct item_uses *of_step,
                               enum item_key item, bool *found)
{
    const struct item_use *use =
        item_use_find(own != NULL && own->given ? own : of_step, item);
    *found = *found || use != NULL;
    return use == NULL ? STATE_ANY : use->state;
}

static enum end_state wanted(const struct card_step *step, enum item_key item)
{
    const struct step_case *taken = step->taken;
    bool found = false;
    enum end_state state =
        state_in(taken == NULL ? NULL : &taken->uses, &step->step->uses, item, &found);
    if (!found)
        state = state_in(taken == NULL ? NULL : &taken->also, &step->step->also, item, &found);
    return found && state == STATE_ANY ? item_use(item) : state;
}

/* ---- rows ---- */

static const struct equipment *piece(const char *tag)
{
    for (size_t i = 0; i < test.boat->equipment_count; i++)
        if (text_equal(test.boat->equipment[i].tag.text, tag))
            return &test.boat->equipment[i];
    return NULL;
}

/* Fails where the words tell how the piece comes to be in another state; gives how many other
 * states have handling of their own that could have been told. */
static size_t contrary_check(const struct equipment *gear, enum end_state state,
                             const char *words)
{
    const struct text_value *right = gear_handling_of(gear, state);
    size_t others = 0;
    for (enum end_state other = STATE_ANY + 1; other < STATE_COUNT; other++) {
        const struct text_value *text = gear_handling_of(gear, other);
        if (other == state || text == NULL || (right != NULL && text->text == right->text))
            continue;
        others++;
        const char *word = text_upper(test.arena, end_state_words[other - 1]);
        if (strstr(words, text_format(test.arena, "= **%s:", text->text)) != NULL ||
            strstr(words, text_format(test.arena, ": %s**", word)) != NULL ||
            strstr(words, text_format(test.arena, "= **%s**", word)) != NULL)
            fail_msg("%s %s, wanted %s: %s", gear->kind->key, gear->tag.text,
                     state == STATE_ANY ? "any" : end_state_words[state - 1], words);
    }
    return others;
}

static size_t rows_check(const struct card_step *step, const struct card_row *rows, size_t count,
                         const char *head)
{
    size_t others = 0;
    for (size_t r = 0; r < count; r++)
        for (size_t i = 0; i < rows[r].item_count; i++)
            for (size_t t = 0; t < rows[r].items[i].tag_count; t++) {
                const struct equipment *gear = piece(rows[r].items[i].tags[t]);
                assert_non_null(gear);
                others += contrary_check(gear, wanted(step, gear->item.value),
                                         text_format(test.arena, "%s %s", head,
                                                     rows[r].items[i].end));
            }
    return others;
}

static size_t step_check(const struct card_step *step)
{
    size_t others = rows_check(step, step->rows, step->row_count, "");
    for (size_t g = 0; g < step->table_count; g++)
        others += rows_check(step, step->table[g].rows, step->table[g].row_count,
                             step->table[g].head);
    return others;
}

static size_t set_check(void)
{
    const struct sheet_set *set = case_compose(&test, true);
    size_t others = 0;
    for (size_t i = 0; i < set->count; i++) {
        const struct steps_facts *steps = sheet_steps(set->sheets[i]);
        for (size_t s = 0; steps != NULL && s < steps->count; s++)
            others += step_check(&steps->items[s]);
    }
    return others;
}

/* ---- the boats there are ---- */

static size_t folder_check(const char *base)
{
    const char *name = text_format(test.arena, "%s/boats", base);
    DIR *folder = opendir(name);
    assert_non_null(folder);
    size_t boats = 0;
    for (struct dirent *entry; (entry = readdir(folder)) != NULL;) {
        if (strstr(entry->d_name, ".yaml") == NULL)
            continue;
        case_boat(&test, text_format(test.arena, "%s/%s", name, entry->d_name));
        set_check();
        boats++;
    }
    closedir(folder);
    return boats;
}

static void no_boat_has_a_row_of_the_contrary(void **state)
{
    (void)state;
    static const char *const others[] = {"tests/islands/boats/thrift.yaml",
                                         "tests/islands/boats/sundew.yaml",
                                         "tests/islands/boats/eelgrass.yaml"};
    for (size_t i = 0; i < sizeof others / sizeof others[0]; i++) {
        case_boat(&test, others[i]);
        set_check();
    }
    assert_true(folder_check("tests/fleet") >= 3);
    assert_true(folder_check("tests/hazard") >= 10);
}

/* ---- boats with everything ---- */

/* A boat as she is made: what is said of each piece, and whose handling is recorded. */
struct made {
    const char *hull, *more;
    bool (*tells)(enum end_state state);
};

static bool any(enum end_state state)
{
    return state != STATE_ANY;
}

static bool not_on_or_open(enum end_state state)
{
    return state != STATE_ON && state != STATE_OPEN;
}

static bool not_off_or_shut(enum end_state state)
{
    return state != STATE_OFF && state != STATE_SHUT;
}

/* Each handling is another text. */
static const char *fields_of(const struct made *made, enum item_key item)
{
    struct text_builder how = text_builder_in(test.arena), out = text_builder_in(test.arena);
    text_add(&how, "");
    for (enum end_state to = STATE_ANY + 1; to < STATE_COUNT; to++)
        if (item_state_field(item, to) == GEAR_how && made->tells(to))
            text_add_format(&how, "%s%s: way %d", how.length == 0 ? "" : ", ",
                            end_state_words[to - 1], (int)to * 100 + (int)item);
    text_add(&out, "");
    if (how.length > 0)
        text_add_format(&out, ", how: {%s}", how.at);
    if (item_field(item, GEAR_painter) != BELONGS_NOT)
        text_add(&out, ", painter: ring");
    if (item_field(item, GEAR_release) != BELONGS_NOT)
        text_add(&out, ", release: hook");
    return out.at;
}

/* Behind that of the radio, E9. */
static const char *tag_of(enum item_key item)
{
    int number = 9;
    for (enum item_key before = ITEM_NONE + 1; before <= item; before++)
        number += item_kind_of(before)->class == item_kind_of(item)->class ? 1 : 0;
    return text_format(test.arena, "%c%d", (char)item_kind_of(item)->class, number);
}

static const char *entry_of(const struct made *made, enum item_key item)
{
    const struct item_kind *kind = item_kind_of(item);
    bool two = text_equal(made->hull, "catamaran");
    const struct zone *zone = zone_of(kind->usual_zone);
    if (!two && (zone->catamaran_only || zone->multihull_only))
        zone = zone_of(ZONE_saloon);
    const char *name = zone->id == ZONE_engine_space && two ? "engine_space_port"
                                                            : zone_word(zone->id);
    bool serves = two && kind->by_engine;
    return text_format(test.arena, "  - {item: %s, tag: %s, zone: %s%s%s%s%s%s}\n", kind->key,
                       tag_of(item), name,
                       zone->side == SIDE_NONE ? ", side: port" : "", made->more,
                       fields_of(made, item),
                       serves ? ", serves: [engine_space_port, engine_space_starboard]" : "",
                       item == ITEM_lithium_bank ? ", space: own_box" : "");
}

static void boat_make(const struct made *made)
{
    struct text_builder gear = text_builder_in(test.arena);
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item != ITEM_vhf_dsc)
            text_add(&gear, entry_of(made, item));
    case_boat(&test, text_format(test.arena,
                                 "boat: {name: Tamarisk, specimen: yes, hull: %s, rig: sail, "
                                 "loa_m: 12, beam_m: 6, persons_max: 8}\n" CASE_RADIO
                                 "gas: {carried: yes}\nequipment:\n%s", made->hull, gear.at));
}

static void no_procedure_has_a_row_of_the_contrary(void **state)
{
    (void)state;
    static bool (*const telling[])(enum end_state) = {any, not_on_or_open, not_off_or_shut};
    static const char *const hulls[] = {"monohull", "catamaran", "trimaran"};
    static const char *const reaches[] = {", from_cockpit: yes", ", from_cockpit: no", ""};
    size_t others = 0;
    for (size_t t = 0; t < 3; t++)
        for (size_t h = 0; h < 3; h++)
            for (size_t r = 0; r < 3; r++) {
                boat_make(&(struct made){hulls[h], reaches[r], telling[t]});
                others += set_check();
            }
    assert_true(others > 200);
}

/* ---- each item in each state ---- */

/* The one row that a step has of the item in that state. */
static const char *row_of(enum item_key item, enum end_state state)
{
    const char *step = text_format(test.arena,
                                   "steps: [{id: use, sources: [S5], uses: [{%s: %s}]}]\n",
                                   item_word(item), end_state_words[state - 1]);
    const char *const texts[] = {
        case_procedure_text(&test, "smoke", 10, step, "steps: {use: {act: \"**USE.**\"}}\n"),
        NULL};
    case_procedures(&test, texts);
    const struct sheet *card = case_card(case_compose(&test, true), "smoke");
    const struct card_step *made = &sheet_steps(card)->items[0];
    assert_int_equal(made->row_count, 1);
    return made->rows[0].items[0].end;
}

/* What stands behind the name of a piece that is to be in that state. */
static const char *end_wanted(const struct text_value *how, enum end_state state)
{
    const char *word = text_upper(test.arena, words_state(test.words, state));
    bool silent = state == STATE_USE || state == STATE_TAKE || state == STATE_WEAR ||
                  state == STATE_READY;
    if (how == NULL)
        return silent ? "" : text_format(test.arena, "= **%s**", word);
    return silent ? text_format(test.arena, "= **%s**", how->text)
                  : text_format(test.arena, "= **%s: %s**", how->text, word);
}

static void each_item_has_the_handling_of_each_state(void **state)
{
    (void)state;
    const struct procedure_set own = test.procedures;
    size_t rows = 0;
    boat_make(&(struct made){"monohull", "", any});
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        for (enum end_state to = STATE_ANY + 1; item != ITEM_vhf_dsc && to < STATE_COUNT; to++) {
            if (!item_has_state(item, to))
                continue;
            const char *tag = tag_of(item);
            const char *end = row_of(item, to);
            contrary_check(piece(tag), to, end);
            assert_string_equal(end, end_wanted(gear_handling_of(piece(tag), to), to));
            rows++;
        }
    test.procedures = own;
    assert_true(rows > 150);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(no_boat_has_a_row_of_the_contrary),
        cmocka_unit_test(no_procedure_has_a_row_of_the_contrary),
        cmocka_unit_test(each_item_has_the_handling_of_each_state),
    };
    int failed = cmocka_run_group_tests_name("compose_states", tests, set_up, tear_down);
    return failed != 0;
}
