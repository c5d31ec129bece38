/* test_file_keys.c - the tables of all kinds of files, walked as references and schemas will
 * walk them: each key once, with words about it; and every key that a file of the house has
 * is found in them. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "boat.h"
#include "procedure.h"
#include "text.h"
#include "words.h"
#include "yaml_edit_house.h"

static const struct file_kind {
    const char *name;
    const struct field_table *(*fields)(void);
    const char *example;      /* a file that is read, with many of its keys */
} file_kinds[] = {
    {"base", base_file_fields, "tests/fleet/base.yaml"},
    {"boat", boat_file_fields, "tests/fleet/boats/samphire.yaml"},
    {"procedure", procedure_file_fields, "procedures/flooding.yaml"},
    {"texts", procedure_text_fields, "procedures/words/en/flooding.yaml"},
    {"sources", authority_file_fields, "procedures/sources.yaml"},
    {"words", words_file_fields, "procedures/words/en/words.yaml"},
};
enum { FILE_KINDS = sizeof file_kinds / sizeof file_kinds[0] };

/* All keys of one kind of file, as they were walked. */
struct key_list {
    struct arena *arena;
    struct known_key { const char *path; const struct field *field; } *rows;
    size_t count, room;
};

static void key_note(const struct field_path *path, void *context)
{
    struct key_list *list = context;

    list->rows = arena_grow(list->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] =
        (struct known_key){field_path_text(path, list->arena), path->field};
}

static const struct known_key *key_find(const struct key_list *list, const char *path)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->rows[i].path, path))
            return &list->rows[i];
    return NULL;
}

static struct key_list keys_of(size_t kind)
{
    struct key_list list = {.arena = arena_new((size_t)64 * 1024 * 1024)};

    fields_walk(file_kinds[kind].fields(), key_note, &list);
    assert_true(list.count > 0);
    return list;
}

/* ---- the tables ---- */

static bool has_choices(enum field_kind kind)
{
    return kind == FIELD_CHOICE || kind == FIELD_CHOICES;
}

static bool has_part(enum field_kind kind)
{
    return kind == FIELD_SECTION || kind == FIELD_ENTRIES;
}

static void each_key_stands_once_with_words_about_it(void **state)
{
    (void)state;
    for (size_t kind = 0; kind < FILE_KINDS; kind++) {
        struct key_list list = keys_of(kind);
        for (size_t i = 0; i < list.count; i++) {
            const struct known_key *key = &list.rows[i];
            if (key_find(&list, key->path) != key || text_empty(key->field->about) ||
                text_equal(field_kind_word(key->field->kind), "other") !=
                    (key->field->kind == FIELD_NODE))
                fail_msg("%s: %s", file_kinds[kind].name, key->path);
            assert_true(!has_choices(key->field->kind) || key->field->choices[0] != NULL);
            assert_true(!has_part(key->field->kind) || key->field->part->table->count > 0);
        }
        arena_free(list.arena);
    }
}

/* Some of every kind, from all depths. */
static void keys_are_what_they_are(void **state)
{
    (void)state;
    static const struct { size_t kind; const char *path; enum field_kind field; bool required; }
    rows[] = {
        {0, "rescue_centre", FIELD_SECTION, true},
        {0, "rescue_centre/channel", FIELD_TEXT, true},
        {0, "intervals", FIELD_ENTRIES, false},
        {0, "intervals/months", FIELD_NUMBER, true},
        {0, "approvals/until", FIELD_DATE, true},
        {0, "approvals/text", FIELD_TEXT, false},
        {0, "languages", FIELD_WORDS, false},
        {1, "boat/mounted/faces", FIELD_CHOICE, true},
        {1, "radio/dsc", FIELD_ANSWER, false},
        {1, "equipment/at", FIELD_PAIR, false},
        {1, "equipment/inside", FIELD_CHOICES, false},
        {1, "equipment/how", FIELD_BY_CHOICE, false},
        {1, "not_fitted/serves", FIELD_CHOICES, true},
        {1, "silenced/reason", FIELD_TEXT, true},
        {1, "tags_given", FIELD_LIST, false},
        {2, "number", FIELD_NUMBER, true},
        {2, "steps/cases/uses", FIELD_PAIRED, false},
        {2, "steps/cases/lethal", FIELD_LIST, false},
        {2, "decision/yes/card", FIELD_TEXT, false},
        {2, "calls/signal", FIELD_CHOICE, true},
        {2, "steps/when", FIELD_NODE, false},
        {3, "steps/{id}/cases/{id}/act", FIELD_TEXT, true},
        {3, "never/{id}", FIELD_TEXT, false},
        {4, "sources/grade", FIELD_CHOICE, true},
        {5, "plurals/one/ends", FIELD_WORDS, false},
        {5, "words/caution", FIELD_TEXT, true},
        {5, "items/seacock/other", FIELD_TEXT, true},
        {5, "states/shut", FIELD_TEXT, true},
        {5, "zones/cockpit", FIELD_TEXT, true},
    };

    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        struct key_list list = keys_of(rows[i].kind);
        const struct known_key *key = key_find(&list, rows[i].path);
        if (key == NULL || key->field->kind != rows[i].field ||
            key->field->required != rows[i].required)
            fail_msg("%s: %s", file_kinds[rows[i].kind].name, rows[i].path);
        arena_free(list.arena);
    }
}

/* ---- the files ---- */

/* What stands under such a key is not the tables' to say: conditions, texts by language or
 * state, gear with a state. */
static bool is_leaf(const struct field *field)
{
    return field->kind == FIELD_WORDING || field->kind == FIELD_WORDINGS ||
           field->kind == FIELD_BY_CHOICE || field->kind == FIELD_PAIRED ||
           (field->kind == FIELD_NODE && field->part == NULL);
}

/* The key itself, or the row for names such as it. */
static const struct known_key *key_known(const struct key_list *list, const char *outer,
                                         const char *key)
{
    const struct known_key *known =
        key_find(list, outer == NULL ? key : text_format(list->arena, "%s/%s", outer, key));

    if (known != NULL || outer == NULL)
        return known;
    return key_find(list, text_format(list->arena, "%s/{id}", outer));
}

static size_t keys_check(const struct key_list *list, const struct yaml_node *node,
                         const char *path)
{
    size_t found = 0;

    for (size_t i = 0; node->kind == YAML_SEQUENCE && i < node->count; i++)
        found += keys_check(list, node->items[i], path);
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++) {
        const struct known_key *known = key_known(list, path, node->pairs[i].key);
        if (known == NULL)
            fail_msg("%s in %s is in no table", node->pairs[i].key, path);
        else if (!is_leaf(known->field))
            found += keys_check(list, node->pairs[i].value, known->path);
        found++;
    }
    return found;
}

static void each_key_of_a_file_is_in_the_tables(void **state)
{
    (void)state;
    for (size_t kind = 0; kind < FILE_KINDS; kind++) {
        struct key_list list = keys_of(kind);
        struct edit_bench bench = file_bench(file_kinds[kind].example);
        assert_true(keys_check(&list, bench.tree, NULL) > 10);
        arena_free(bench.arena);
        arena_free(list.arena);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_key_stands_once_with_words_about_it),
        cmocka_unit_test(keys_are_what_they_are),
        cmocka_unit_test(each_key_of_a_file_is_in_the_tables),
    };

    return cmocka_run_group_tests_name("file_keys", tests, NULL, NULL) != 0;
}
