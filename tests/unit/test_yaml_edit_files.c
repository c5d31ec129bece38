/* test_yaml_edit_files.c - what holds of the writer for every file of the house: no edit
 * changes no byte, one set value changes one line, and what is set back is as it was; and
 * for damaged files with any edits: nothing, or just what was asked for. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <dirent.h>
#include <string.h>

#include "text.h"
#include "yaml_damage.h"
#include "yaml_edit_case.h"

/* ---- the files ---- */

static struct edit_bench file_bench(const char *path)
{
    struct edit_bench bench = {.arena = arena_new((size_t)1024 * 1024 * 1024)};
    struct source *source = NULL;

    bench.problems = problems_new(bench.arena);
    assert_int_equal(source_read(bench.arena, path, YAML_FILE_LIMIT, &source), SOURCE_READ);
    bench.source = source;
    bench.tree = yaml_tree_read(source, bench.arena, bench.problems);
    return bench;
}

/* Does `work` for each file whose name ends with .yaml; how many there were. */
static size_t folder_walk(const char *folder, void (*work)(const char *path))
{
    struct arena *arena = arena_new((size_t)1024 * 1024);
    DIR *open = opendir(folder);
    size_t count = 0;

    assert_non_null(open);
    for (struct dirent *entry; (entry = readdir(open)) != NULL;) {
        const char *path = text_format(arena, "%s/%s", folder, entry->d_name);
        if (!text_ends(path, ".yaml"))
            continue;
        work(path);
        count++;
    }
    closedir(open);
    arena_free(arena);
    return count;
}

static void house_walk(void (*work)(const char *path))
{
    static const char *const folders[] = {
        "tests/fleet", "tests/fleet/boats", "tests/hazard", "tests/hazard/boats",
        "tests/unusual", "tests/unusual/boats", "procedures", "procedures/words",
    };

    for (size_t i = 0; i < sizeof folders / sizeof folders[0]; i++)
        assert_true(folder_walk(folders[i], work) > 0);
}

static const struct yaml_edited *edit_one(struct edit_bench *bench, const struct yaml_edit *edit)
{
    struct yaml_change change = {bench->source, bench->tree, edit, edit == NULL ? 0 : 1};

    return yaml_edit(&change, bench->arena, bench->problems);
}

static void empty_edit_check(const char *path)
{
    struct edit_bench bench = file_bench(path);

    assert_non_null(bench.tree);
    const struct yaml_edited *edited = edit_one(&bench, NULL);
    assert_int_equal(edited->length, bench.source->length);
    assert_memory_equal(edited->bytes, bench.source->bytes, edited->length);
    arena_free(bench.arena);
}

static void test_empty_edit(void **state)
{
    (void)state;
    house_walk(empty_edit_check);
}

/* ---- what is to be ---- */

/* The tree as it should be, written down without places: a second, plainer way to make
 * the edits, to hold the writer against. */
static void expected_add(const struct yaml_change *change, const struct yaml_node *node,
                         struct text_builder *out);

static void value_add(const struct yaml_node *value, struct text_builder *out)
{
    static const struct yaml_change none;

    expected_add(&none, value, out);
}

static const struct yaml_edit *edit_of(const struct yaml_change *change,
                                       const struct yaml_node *in, size_t index)
{
    for (size_t i = 0; i < change->edit_count; i++) {
        const struct yaml_edit *edit = &change->edits[i];
        if (edit->in != in || edit->kind == YAML_EDIT_ADD)
            continue;
        if (in->kind == YAML_MAPPING ? text_equal(in->pairs[index].key, edit->key)
                                     : edit->index == index)
            return edit;
    }
    return NULL;
}

static void expected_add(const struct yaml_change *change, const struct yaml_node *node,
                         struct text_builder *out)
{
    if (node->kind == YAML_SCALAR) {
        text_add_format(out, "<%s>", node->text);
        return;
    }
    text_add(out, node->kind == YAML_MAPPING ? "{" : "[");
    for (size_t i = 0; i < node->count; i++) {
        const struct yaml_edit *edit = edit_of(change, node, i);
        if (edit != NULL && edit->kind == YAML_EDIT_REMOVE)
            continue;
        if (node->kind == YAML_MAPPING)
            text_add_format(out, "%s=", node->pairs[i].key);
        if (edit != NULL)
            value_add(edit->value, out);
        else
            expected_add(change, node->kind == YAML_MAPPING ? node->pairs[i].value
                                                            : node->items[i], out);
    }
    for (size_t i = 0; i < change->edit_count; i++) {
        const struct yaml_edit *edit = &change->edits[i];
        if (edit->in != node || edit->kind != YAML_EDIT_ADD)
            continue;
        if (node->kind == YAML_MAPPING)
            text_add_format(out, "%s=", edit->key);
        value_add(edit->value, out);
    }
    text_add(out, node->kind == YAML_MAPPING ? "}" : "]");
}

static const char *tree_texts(struct arena *arena, const struct yaml_node *tree)
{
    struct text_builder out = text_builder_in(arena);

    value_add(tree, &out);
    return out.at;
}

/* ---- each value ---- */

/* All texts of a tree, each as an edit that sets it. */
struct value_list {
    struct arena *arena;
    struct yaml_edit *rows;
    size_t count, capacity;
};

static void values_gather(struct value_list *list, const struct yaml_node *in)
{
    for (size_t i = 0; in->kind != YAML_SCALAR && i < in->count; i++) {
        bool pairs = in->kind == YAML_MAPPING;
        const struct yaml_node *value = pairs ? in->pairs[i].value : in->items[i];
        values_gather(list, value);
        if (value->kind != YAML_SCALAR)
            continue;
        list->rows = arena_grow(list->arena, list->rows, list->count, &list->capacity,
                                sizeof *list->rows);
        list->rows[list->count++] = (struct yaml_edit){
            .kind = YAML_EDIT_SET, .in = in, .key = pairs ? in->pairs[i].key : NULL,
            .index = i, .value = value};
    }
}

static struct value_list values_of(const struct edit_bench *bench)
{
    struct value_list list = {.arena = bench->arena};

    values_gather(&list, bench->tree);
    return list;
}

static const struct yaml_node *text_node(struct arena *arena, const char *text)
{
    struct yaml_node *node = arena_alloc(arena, sizeof *node);

    *node = (struct yaml_node){.kind = YAML_SCALAR, .text = text};
    return node;
}

/* All values of a file at once, each set to what it is: not a byte changes. */
static void own_values_check(const char *path)
{
    struct edit_bench bench = file_bench(path);
    struct value_list list = values_of(&bench);
    struct yaml_change change = {bench.source, bench.tree, list.rows, list.count};
    const struct yaml_edited *edited = yaml_edit(&change, bench.arena, bench.problems);

    assert_non_null(edited);
    assert_int_equal(edited->length, bench.source->length);
    assert_memory_equal(edited->bytes, bench.source->bytes, edited->length);
    arena_free(bench.arena);
}

static void test_own_values(void **state)
{
    (void)state;
    house_walk(own_values_check);
}

/* The only line in which the two differ. */
static int line_changed(const struct source *old, const struct source *source)
{
    int changed = 0;

    assert_int_equal(old->line_count, source->line_count);
    for (int line = 1; (size_t)line <= old->line_count; line++) {
        size_t old_length, length;
        const char *old_bytes = source_line(old, line, &old_length);
        const char *bytes = source_line(source, line, &length);
        if (old_length == length && memcmp(old_bytes, bytes, length) == 0)
            continue;
        assert_int_equal(changed, 0);
        changed = line;
    }
    return changed;
}

/* The same path in another tree: the n-th text of all. */
static struct yaml_edit value_at(const struct edit_bench *bench, size_t index)
{
    return values_of(bench).rows[index];
}

/* Sets one text to another and back: then all texts are the old ones. */
static void value_check(const char *path, size_t index, const char *text)
{
    struct edit_bench bench = file_bench(path);
    struct yaml_edit edit = value_at(&bench, index);
    const struct yaml_node *old = edit.value;
    int line = text_equal(old->text, text) ? 0 : old->place.line;

    edit.value = text_node(bench.arena, text);
    const struct yaml_edited *edited = edit_one(&bench, &edit);
    assert_non_null(edited);
    struct edit_bench again = edit_bench_new(edited->bytes, edited->length);
    assert_int_equal(line_changed(bench.source, again.source), line);
    edit = value_at(&again, index);
    assert_string_equal(edit.value->text, text);
    edit.value = old;
    const struct yaml_edited *back = edit_one(&again, &edit);
    assert_non_null(back);
    struct edit_bench last = edit_bench_new(back->bytes, back->length);
    assert_string_equal(tree_texts(bench.arena, bench.tree), tree_texts(bench.arena, last.tree));
    arena_free(last.arena);
    arena_free(again.arena);
    arena_free(bench.arena);
}

static const char *const texts[] = {
    "x", "across = shut, then wait", "a: b", "locker #2", "it's 5\" wide", "{id} [1]", "\u017Eute",
    "- dash", "null", "12", "\\n", "*bold* & more", "yes",
};

/* Every value of a short file; of a long one enough to take seconds, not minutes. */
static void new_values_check(const char *path)
{
    enum { MOST = 12 };
    struct edit_bench bench = file_bench(path);
    size_t count = values_of(&bench).count;
    size_t step = count / MOST + 1;

    for (size_t i = 0; i < count; i += step)
        value_check(path, i, texts[i % (sizeof texts / sizeof texts[0])]);
    arena_free(bench.arena);
}

static void test_new_values(void **state)
{
    (void)state;
    house_walk(new_values_check);
}

/* ---- any edits ---- */

/* A list or mapping of the tree, by chance. */
static const struct yaml_node *any_collection(const struct yaml_node *tree, uint32_t *seed)
{
    const struct yaml_node *node = tree;

    while (node->count > 0 && number_next(seed) % 3 != 0) {
        size_t index = number_next(seed) % node->count;
        const struct yaml_node *inner =
            node->kind == YAML_MAPPING ? node->pairs[index].value : node->items[index];
        if (inner->kind == YAML_SCALAR)
            return node;
        node = inner;
    }
    return node;
}

static const struct yaml_node *any_value(struct arena *arena, uint32_t *seed)
{
    const struct yaml_node *text =
        text_node(arena, texts[number_next(seed) % (sizeof texts / sizeof texts[0])]);
    struct yaml_node *node = arena_alloc(arena, sizeof *node);
    const struct yaml_node **items = arena_array(arena, 1, sizeof *items);
    struct yaml_pair *pairs = arena_array(arena, 1, sizeof *pairs);

    items[0] = text;
    pairs[0] = (struct yaml_pair){.key = "k", .value = text};
    *node = (struct yaml_node){.kind = (enum yaml_kind)(number_next(seed) % 3),
                               .text = text->text, .items = items, .pairs = pairs, .count = 1};
    return node;
}

static struct yaml_edit any_edit(const struct edit_bench *bench, uint32_t *seed)
{
    struct yaml_edit edit = {
        .kind = (enum yaml_edit_kind)(number_next(seed) % 3),
        .in = any_collection(bench->tree, seed),
        .value = any_value(bench->arena, seed),
    };

    edit.index = edit.in->count == 0 ? 0 : number_next(seed) % edit.in->count;
    if (edit.in->kind == YAML_MAPPING)
        edit.key = edit.kind == YAML_EDIT_ADD || edit.in->count == 0
                       ? text_format(bench->arena, "new_%d", (int)(number_next(seed) % 3))
                       : edit.in->pairs[edit.index].key;
    return edit;
}

/* True where the edits were made. */
static bool any_edits_check(const char *bytes, size_t length, uint32_t *seed)
{
    struct edit_bench bench = edit_bench_new(bytes, length);
    struct yaml_edit edits[4];
    struct yaml_change change = {bench.source, bench.tree, edits, 0};
    struct text_builder expected = text_builder_in(bench.arena);
    const struct yaml_edited *edited = NULL;

    if (bench.tree != NULL && bench.tree->kind != YAML_SCALAR) {
        for (change.edit_count = 0; change.edit_count <= number_next(seed) % 4;)
            edits[change.edit_count++] = any_edit(&bench, seed);
        edited = yaml_edit(&change, bench.arena, bench.problems);
        assert_true(edited != NULL || problems_reach(bench.problems, SEVERITY_ERROR));
    }
    if (edited != NULL) {
        struct edit_bench again = edit_bench_new(edited->bytes, edited->length);
        expected_add(&change, bench.tree, &expected);
        assert_string_equal(tree_texts(bench.arena, again.tree), expected.at);
        arena_free(again.arena);
    }
    arena_free(bench.arena);
    return edited != NULL;
}

static void test_any_edits(void **state)
{
    (void)state;
    uint32_t seed = 7;
    size_t made = 0;

    for (int round = 0; round < 4000; round++) {
        char bytes[512];
        size_t length = strlen(sound[round % 3]);
        memcpy(bytes, sound[round % 3], length);
        for (uint32_t times = number_next(&seed) % 3; times > 0 && length > 0; times--)
            bytes_damage(bytes, &length, &seed);
        made += any_edits_check(bytes, length, &seed) ? 1 : 0;
    }
    assert_true(made > 1000);
}

/* Of the texts that a house's file holds, all sorts of edits at once. */
static void any_house_edits_check(const char *path)
{
    struct edit_bench bench = file_bench(path);
    uint32_t seed = (uint32_t)bench.source->length;

    for (int round = 0; round < 8; round++)
        any_edits_check(bench.source->bytes, bench.source->length, &seed);
    arena_free(bench.arena);
}

static void test_any_house_edits(void **state)
{
    (void)state;
    house_walk(any_house_edits_check);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_empty_edit),
        cmocka_unit_test(test_own_values),
        cmocka_unit_test(test_new_values),
        cmocka_unit_test(test_any_edits),
        cmocka_unit_test(test_any_house_edits),
    };

    return cmocka_run_group_tests_name("yaml_edit_files", tests, NULL, NULL) != 0;
}
