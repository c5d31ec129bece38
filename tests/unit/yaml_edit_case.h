/* yaml_edit_case.h - edits named by paths, such as "boat/name" or "equipment/3", made on
 * files given as text, and what must come of it. */
#ifndef MAYDECK_YAML_EDIT_CASE_H
#define MAYDECK_YAML_EDIT_CASE_H

#include <stdlib.h>
#include <string.h>

#include "text.h"
#include "yaml_edit.h"

/* `path` is of what is set or removed, or of what is added to ("": the whole file). */
struct edit_case {
    enum yaml_edit_kind kind;
    const char *path, *key;
    const char *text, *yaml;   /* the value: a text, or written as YAML */
};

#define SET_TEXT(at, words) (struct edit_case){YAML_EDIT_SET, at, NULL, words, NULL}
#define SET_YAML(at, value) (struct edit_case){YAML_EDIT_SET, at, NULL, NULL, value}
#define ADD_TEXT(at, name, words) (struct edit_case){YAML_EDIT_ADD, at, name, words, NULL}
#define ADD_YAML(at, name, value) (struct edit_case){YAML_EDIT_ADD, at, name, NULL, value}
#define REMOVE(at) (struct edit_case){YAML_EDIT_REMOVE, at, NULL, NULL, NULL}

struct edit_bench {
    struct arena *arena;
    struct problems *problems;
    const struct source *source;
    const struct yaml_node *tree;
};

static inline struct edit_bench edit_bench_new(const char *bytes, size_t length)
{
    struct edit_bench bench = {.arena = arena_new((size_t)1024 * 1024 * 1024)};

    bench.problems = problems_new(bench.arena);
    bench.source = source_from(bench.arena, "t.yaml", bytes, length);
    bench.tree = yaml_tree_read(bench.source, bench.arena, bench.problems);
    return bench;
}

/* The node that the path's first `length` bytes lead to. */
static inline const struct yaml_node *path_follow(const struct edit_bench *bench,
                                                  const char *path, size_t length)
{
    const struct yaml_node *node = bench->tree;

    for (size_t at = 0; at < length;) {
        size_t step = strcspn(path + at, "/");
        const char *name = arena_copy(bench->arena, path + at, step);
        node = node->kind == YAML_MAPPING ? yaml_get(node, name)
                                          : node->items[strtoul(name, NULL, 10)];
        at += step + (path[at + step] == '/' ? 1 : 0);
    }
    return node;
}

static inline const struct yaml_node *case_value(const struct edit_bench *bench,
                                                 const struct edit_case *row)
{
    struct yaml_node *node = arena_alloc(bench->arena, sizeof *node);

    *node = (struct yaml_node){.kind = YAML_SCALAR, .text = row->text};
    if (row->yaml == NULL)
        return node;
    const char *bytes = text_format(bench->arena, "v: %s\n", row->yaml);
    const struct source *source = source_from(bench->arena, "v", bytes, strlen(bytes));
    return yaml_get(yaml_tree_read(source, bench->arena, bench->problems), "v");
}

static inline struct yaml_edit case_edit(const struct edit_bench *bench,
                                         const struct edit_case *row)
{
    struct yaml_edit edit = {.kind = row->kind, .key = row->key};

    if (row->kind != YAML_EDIT_REMOVE)
        edit.value = case_value(bench, row);
    if (row->kind == YAML_EDIT_ADD) {
        edit.in = path_follow(bench, row->path, strlen(row->path));
        return edit;
    }
    const char *last = strrchr(row->path, '/');
    const char *name = last == NULL ? row->path : last + 1;
    edit.in = path_follow(bench, row->path, last == NULL ? 0 : (size_t)(last - row->path));
    edit.key = edit.in->kind == YAML_MAPPING ? name : NULL;
    edit.index = strtoul(name, NULL, 10);
    return edit;
}

static inline const struct yaml_edited *cases_make(struct edit_bench *bench,
                                                   const struct edit_case *rows, size_t count)
{
    struct yaml_edit *edits = arena_array(bench->arena, count, sizeof *edits);

    for (size_t i = 0; i < count; i++)
        edits[i] = case_edit(bench, &rows[i]);
    struct yaml_change change = {bench->source, bench->tree, edits, count};
    return yaml_edit(&change, bench->arena, bench->problems);
}

/* "line:column what" of the first problem; "" for none. */
static inline const char *first_told(struct edit_bench *bench)
{
    size_t count;
    const struct problem *rows = problems_sorted(bench->problems, &count);

    for (size_t i = 0; i < count; i++)
        if (rows[i].severity == SEVERITY_ERROR)
            return text_format(bench->arena, "%d:%d %s", rows[i].place.line,
                               rows[i].place.column, rows[i].what);
    return "";
}

static inline void edits_are(const char *input, const struct edit_case *rows, size_t count,
                             const char *expected)
{
    struct edit_bench bench = edit_bench_new(input, strlen(input));
    const struct yaml_edited *edited = cases_make(&bench, rows, count);

    assert_string_equal(first_told(&bench), "");
    assert_non_null(edited);
    assert_string_equal(edited->bytes, expected);
    assert_int_equal(edited->length, strlen(expected));
    arena_free(bench.arena);
}

static inline void edits_fail(const char *input, const struct edit_case *rows, size_t count,
                              const char *told)
{
    struct edit_bench bench = edit_bench_new(input, strlen(input));

    assert_null(cases_make(&bench, rows, count));
    assert_string_equal(first_told(&bench), told);
    arena_free(bench.arena);
}

static inline void edit_is(const char *input, struct edit_case row, const char *expected)
{
    edits_are(input, &row, 1, expected);
}

static inline void edit_fails(const char *input, struct edit_case row, const char *told)
{
    edits_fail(input, &row, 1, told);
}

#endif
