/* test_readers.c - every recorded fact reaches a reader: each field of a boat's, a base's and a
 * model's file names who reads it, and each of those is heard to say something else where the
 * field says something else. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "item_fields.h"
#include "number.h"
#include "readers_case.h"
#include "readers_values.h"
#include "text.h"

#define WORLD_LIMIT ((size_t)256 * 1024 * 1024)

/* ---- the table is whole ---- */

static bool holds_others(const struct field *field)
{
    return field->kind == FIELD_SECTION || field->kind == FIELD_ENTRIES;
}

static void readers_named(const struct field_path *path, void *context)
{
    size_t *count = context;
    (*count)++;
    if (path->field->readers == 0 && !holds_others(path->field))
        fail_msg("nobody reads %s: name its readers in its row (include/reader.h), or take it "
                 "out", field_path_text(path, test.arena));
}

static void every_field_names_its_readers(void **state)
{
    (void)state;
    size_t count = 0;
    fields_walk(base_file_fields(), readers_named, &count);
    fields_walk(boat_file_fields(), readers_named, &count);
    fields_walk(sister_file_fields(), readers_named, &count);
    fields_walk(model_file_fields(), readers_named, &count);
    assert_true(count > 200);
}

/* What is recorded of the radio reaches a card or a sheet, not a report alone; but for its aerial's
 * height: what is reckoned from it would comfort falsely. */
static void radio_readers_named(const struct field_path *path, void *context)
{
    const unsigned paper = READ_PLACE | READ_ROW | READ_CASE | READ_SAFETY | READ_PANEL |
                           READ_SCRIPT | READ_DISTRESS;
    size_t *count = context;
    (*count)++;
    if (holds_others(path->field) || text_equal(path->field->key, "antenna_m"))
        return;
    if ((path->field->readers & paper) == 0)
        fail_msg("%s stands on no card", field_path_text(path, test.arena));
}

static void every_field_of_the_radio_stands_on_a_card(void **state)
{
    (void)state;
    size_t count = 0;
    fields_walk(radio_fields(), radio_readers_named, &count);
    assert_true(count > 20);
}

/* ---- values to put into a field ---- */

struct values { const char *at[VALUES_MOST]; size_t count; };

static void value_add(struct values *values, const char *value)
{
    assert_true(values->count < VALUES_MOST);
    values->at[values->count++] = value;
}

static void words_add(struct values *values, const char *const *words)
{
    for (size_t i = 0; words[i] != NULL && values->count < VALUES_MOST; i++)
        value_add(values, words[i]);
}

static void numbers_add(struct values *values, const struct field *field)
{
    int64_t step = field->whole ? 1000 : 1;
    int64_t low = field->low > 0 ? field->low : step;
    int64_t middle = (low + (field->high - low) / 8) / step * step;
    const int64_t numbers[] = {low, low + 2 * step, middle, field->high};
    for (size_t i = 0; i < sizeof numbers / sizeof *numbers; i++)
        value_add(values, number_text_milli(test.arena, numbers[i]));
}

static void kind_values_add(struct values *values, const struct field *field)
{
    static const char *const words[] = {WORD_ONE, WORD_TWO, NULL};
    static const char *const lists[] = {"[" WORD_ONE "]", "[" WORD_TWO "]", NULL};
    static const char *const answers[] = {"yes", "no", NULL};
    static const char *const dates[] = {"2020-03", "2026-06", "2031-05", NULL};
    switch (field->kind) {
    case FIELD_NUMBER:
        numbers_add(values, field);
        break;
    case FIELD_ANSWER:
        words_add(values, answers);
        break;
    case FIELD_DATE:
        words_add(values, dates);
        break;
    case FIELD_CHOICE:
        words_add(values, field->choices);
        break;
    case FIELD_CHOICES:
        for (size_t i = 0; field->choices[i] != NULL && i < 4; i++)
            value_add(values, text_format(test.arena, "[%s]", field->choices[i]));
        break;
    case FIELD_LIST:
    case FIELD_WORDINGS:
        words_add(values, lists);
        break;
    case FIELD_TEXT:
    case FIELD_WORDING:
    case FIELD_WORDS:
        words_add(values, words);
        break;
    case FIELD_PAIRED:
    case FIELD_BY_CHOICE:
    case FIELD_PAIR:
    case FIELD_SECTION:
    case FIELD_ENTRIES:
    case FIELD_NODE:
        fail_msg("no values are known for %s: add it to own_values", field->key);
    }
}

/* All but one are values; NULL is that the field is not recorded. */
static struct values values_for(const struct field *field, const char *path)
{
    struct values values = {.count = 0};
    for (size_t i = 0; i < sizeof own_values / sizeof *own_values; i++)
        for (size_t v = 0; text_equal(own_values[i].path, path) && v < VALUES_MOST; v++)
            if (own_values[i].values[v] != NULL)
                value_add(&values, own_values[i].values[v]);
    if (values.count == 0)
        kind_values_add(&values, field);
    if (!field->required)
        value_add(&values, NULL);
    return values;
}

/* What must be so before the field is of any use: of that part of the record, which of gear is the
 * piece itself; or of another piece. */
static const struct {
    const char *path, *part, *key, *value;
    enum item_key other;
} befores[] = {
    {"radio/power_from_cockpit", "radio", "zone", "cockpit", ITEM_NONE},
    {"equipment/in_charger", "equipment", "zone", "cockpit", ITEM_NONE},
    {"equipment/agent", "equipment", "zone", "cockpit", ITEM_NONE},
    {"equipment/dsc", "equipment", "mmsi", "\"820012345\"", ITEM_NONE},
    {"equipment/mmsi", "equipment", "dsc", "yes", ITEM_NONE},
    {"equipment/cuts", "equipment", "zone", "cockpit", ITEM_NONE},
    {"equipment/cuts_mm", "boat", "thickest_wire_mm", "20", ITEM_NONE},
    {"boat/thickest_wire_mm", NULL, "cuts_mm", "12", ITEM_bolt_cutters},
    {"equipment/disposable", "equipment", "made", "2020-03", ITEM_NONE},
};

static void befores_set(struct world *world, const char *path)
{
    for (size_t i = 0; i < sizeof befores / sizeof *befores; i++)
        if (text_equal(befores[i].path, path) && befores[i].other != ITEM_NONE)
            world_gear_set(world, befores[i].other, befores[i].key, befores[i].value);
        else if (text_equal(befores[i].path, path))
            world_set(world, befores[i].part, befores[i].key, befores[i].value);
}

/* ---- proofs ---- */

/* One field, and which of its readers were not heard yet. */
struct proof_of {
    const struct field *field;
    const char *path;
    const char *part, *key;       /* which part of a world, which key of it */
    unsigned left;
    bool of_base;                 /* its dates are those of a piece that was serviced */
    const char *fault;            /* of a value that was refused; NULL: none was */
};

/* A text of the record is heard in its own words by at least these. */
#define READ_WORDS (READ_ROW | READ_SAFETY | READ_PANEL | READ_DISTRESS | READ_CONTACT | \
                    READ_BERTH | READ_LINES | READ_REST)

static bool says_it(const char *said, const char *value)
{
    const char *word = value == NULL || strstr(value, WORD_ONE) == NULL ? NULL : WORD_ONE;
    return word == NULL || strstr(said, word) != NULL;
}

static void readings_compare(struct proof_of *proof, const struct readings *a, const char *value,
                             const struct readings *b)
{
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++) {
        unsigned bit = 1u << reader;
        bool in_words = (bit & READ_WORDS) == 0 || says_it(a->said[reader], value);
        if (!text_equal(a->said[reader], b->said[reader]) && in_words)
            proof->left &= ~bit;
    }
}

/* Every two values of the field, on one boat. */
static void values_try(struct proof_of *proof, enum item_key item)
{
    struct values values = values_for(proof->field, proof->path);
    struct readings readings[VALUES_MOST];
    struct arena *arena = arena_new(WORLD_LIMIT);
    for (size_t i = 0; i < values.count && proof->left != 0; i++) {
        struct world world = world_new(arena);
        if (item != ITEM_NONE)
            world_gear_set(&world, item, proof->key, values.at[i]);
        else if (proof->of_base)
            world_gear_set(&world, ITEM_grab_bag, "serviced", "2026-06");
        befores_set(&world, proof->path);
        assert_true(item != ITEM_NONE ||
                    world_set(&world, proof->part, proof->key, values.at[i]));
        readings[i] = readings_of(&test, &world);
        if (readings[i].fault != NULL)
            proof->fault = text_format(test.arena, "%s", readings[i].fault);
        for (size_t k = 0; k < i && readings[i].said[0] != NULL; k++)
            if (readings[k].said[0] != NULL) {
                readings_compare(proof, &readings[k], values.at[k], &readings[i]);
                readings_compare(proof, &readings[i], values.at[i], &readings[k]);
            }
    }
    arena_free(arena);
}

static const char *readers_words(unsigned readers)
{
    struct text_builder out = text_builder_in(test.arena);
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++)
        if ((readers >> reader & 1u) != 0)
            text_add_format(&out, "%s%s", out.length == 0 ? "" : ", ", reader_word(reader));
    return out.at;
}

static size_t unproved;

static void proof_end(const struct proof_of *proof)
{
    if (proof->left == 0)
        return;
    print_error("%s: nothing changes for %s%s%s\n", proof->path, readers_words(proof->left),
                proof->fault == NULL ? "" : "; refused: ",
                proof->fault == NULL ? "" : proof->fault);
    unproved++;
}

/* The part of a world that a path is in, and the key in it: of what stands below a key of an
 * entry, that key. */
static struct proof_of proof_begin(const struct field_path *path)
{
    const char *text = field_path_text(path, test.arena);
    const char *slash = strchr(text, '/');
    const char *part = slash == NULL ? "" : arena_copy(test.arena, text, (size_t)(slash - text));
    const char *key = slash == NULL ? text : slash + 1;
    return (struct proof_of){path->field, text, part,
                             arena_copy(test.arena, key, strcspn(key, "/")),
                             path->field->readers & ~(unsigned)READ_BY_RUN, false, NULL};
}

/* Items of which the field is asked go first. */
static void gear_prove(struct proof_of *proof)
{
    enum gear_field field = gear_field_find(proof->key);
    assert_int_not_equal(field, GEAR_FIELD_NONE);
    for (enum belonging how = BELONGS_MUST; how > BELONGS_NOT && proof->left != 0; how--)
        for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT && proof->left != 0; item++)
            if (item != ITEM_vhf_dsc && item_field(item, field) == how)
                values_try(proof, item);
}

/* The item of an entry is which entry it is; the others have tests of their own, below, in
 * test_rules_silence, in test_condition_judge, test_safety_plan, test_cards_chosen and
 * tests/harm. */
static bool is_apart(const char *path)
{
    static const char *const paths[] = {"equipment/item", "equipment/serves", "base/specimen",
                                        "engines/space", "engines/drive",
                                        "silenced/reason", "silenced/until",
                                        "not_fitted/item", "not_fitted/serves",
                                        "not_surveyed/item", "not_surveyed/serves",
                                        "cards/leave_out", "cards/add",
                                        "equipment/needs_engine", NULL};
    for (size_t i = 0; paths[i] != NULL; i++)
        if (text_equal(paths[i], path))
            return true;
    return false;
}

/* Fields that were proved, of which file. */
struct proving { size_t count; bool of_base; };

static void field_prove(const struct field_path *path, void *context)
{
    struct proving *proving = context;
    struct proof_of proof = proof_begin(path);
    proof.of_base = proving->of_base;
    if (proof.left == 0 || holds_others(proof.field) || is_apart(proof.path))
        return;
    proving->count++;
    if (text_equal(proof.part, "equipment"))
        gear_prove(&proof);
    else
        values_try(&proof, ITEM_NONE);
    proof_end(&proof);
}

static void each_reader_is_heard(const struct field_table *table, size_t least)
{
    struct proving proving = {0, table == base_file_fields()};
    unproved = 0;
    fields_walk(table, field_prove, &proving);
    assert_true(proving.count >= least);
    if (unproved > 0)
        fail_msg("%zu fields have a reader that does not read them", unproved);
}

static void each_reader_of_a_boat_is_heard(void **state)
{
    (void)state;
    each_reader_is_heard(boat_file_fields(), 100);
}

static void each_reader_of_a_base_is_heard(void **state)
{
    (void)state;
    each_reader_is_heard(base_file_fields(), 25);
}

/* ---- those that take more than one value to be heard ---- */

static bool heard_apart(const struct world *a, const struct world *b, enum reader_bit reader)
{
    struct readings first = readings_of(&test, a), second = readings_of(&test, b);
    if (first.fault != NULL || second.fault != NULL)
        fail_msg("refused: %s", first.fault != NULL ? first.fault : second.fault);
    return !text_equal(first.said[reader], second.said[reader]);
}

/* A base that is none of ours cannot have a number that nobody has. */
static void a_base_that_is_no_specimen_is_held_to_it(void **state)
{
    (void)state;
    struct world world = world_new(test.arena);
    world_set(&world, "base", "specimen", "no");
    const char *fault = readings_of(&test, &world).fault;
    assert_non_null(fault);
    assert_non_null(strstr(fault, "+999"));
}

/* An outboard stands in no space. */
static void where_an_engine_stands_changes_cards(void **state)
{
    (void)state;
    struct world inboard = world_new(test.arena), outboard = world_new(test.arena);
    world_set(&outboard, "engines", "space", NULL);
    world_set(&outboard, "engines", "drive", "outboard");
    assert_true(heard_apart(&inboard, &outboard, READER_BIT_CASE));
}

static void what_is_not_fitted_changes_steps_and_checks(void **state)
{
    (void)state;
    struct world with = world_new(test.arena), without = world_new(test.arena);
    world_gear_set(&with, ITEM_knife, "spot", "shelf");
    assert_true(heard_apart(&with, &without, READER_BIT_CASE));
    assert_true(heard_apart(&with, &without, READER_BIT_CHECK));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_field_names_its_readers),
        cmocka_unit_test(every_field_of_the_radio_stands_on_a_card),
        cmocka_unit_test(each_reader_of_a_boat_is_heard),
        cmocka_unit_test(each_reader_of_a_base_is_heard),
        cmocka_unit_test(a_base_that_is_no_specimen_is_held_to_it),
        cmocka_unit_test(where_an_engine_stands_changes_cards),
        cmocka_unit_test(what_is_not_fitted_changes_steps_and_checks),
    };
    int failed = cmocka_run_group_tests_name("readers", tests, set_up, tear_down);
    return failed != 0;
}
