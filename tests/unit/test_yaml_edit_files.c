/* test_yaml_edit_files.c - what holds of the writer for every file of the house: no edit
 * changes no byte, one set value changes one line, and what is set back is as it was. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "yaml_edit_house.h"

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

/* Every value of a short file; of a long one enough to take seconds, not minutes. */
static void new_values_check(const char *path)
{
    enum { MOST = 12 };
    struct edit_bench bench = file_bench(path);
    size_t count = values_of(&bench).count;
    size_t step = count / MOST + 1;

    for (size_t i = 0; i < count; i += step)
        value_check(path, i, any_text(i));
    arena_free(bench.arena);
}

static void test_new_values(void **state)
{
    (void)state;
    house_walk(new_values_check);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_empty_edit),
        cmocka_unit_test(test_own_values),
        cmocka_unit_test(test_new_values),
    };

    return cmocka_run_group_tests_name("yaml_edit_files", tests, NULL, NULL) != 0;
}
