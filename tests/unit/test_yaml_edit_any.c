/* test_yaml_edit_any.c - edits by chance, of damaged files and of those of the house: the
 * writer refuses, or makes just what was asked for. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "yaml_damage.h"
#include "yaml_edit_house.h"

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
        text_node(arena, any_text(number_next(seed)));
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
        cmocka_unit_test(test_any_edits),
        cmocka_unit_test(test_any_house_edits),
    };

    return cmocka_run_group_tests_name("yaml_edit_any", tests, NULL, NULL) != 0;
}
