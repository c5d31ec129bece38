/* yaml_edit_house.h - all YAML files of the house, values to put into them, and a second,
 * plainer way to make edits, to hold the writer against. */
#ifndef MAYDECK_YAML_EDIT_HOUSE_H
#define MAYDECK_YAML_EDIT_HOUSE_H

#include <dirent.h>

#include "yaml_edit_case.h"

/* ---- the files ---- */

static inline struct edit_bench file_bench(const char *path)
{
    struct edit_bench bench = {.arena = arena_new((size_t)1024 * 1024 * 1024)};
    struct source *source = NULL;

    bench.problems = problems_new(bench.arena);
    assert_int_equal(source_read(bench.arena, path, YAML_FILE_LIMIT, &source), SOURCE_READ);
    bench.source = source;
    bench.tree = yaml_tree_read(source, bench.arena, bench.problems);
    return bench;
}

/* Does `work` for each file in the folder and those in it whose name ends with .yaml; how
 * many there were. */
static inline size_t folder_walk(const char *folder, void (*work)(const char *path))
{
    struct arena *arena = arena_new((size_t)1024 * 1024);
    DIR *open = opendir(folder);
    size_t count = 0;

    for (struct dirent *entry; open != NULL && (entry = readdir(open)) != NULL;) {
        const char *path = text_format(arena, "%s/%s", folder, entry->d_name);
        if (text_ends(path, ".yaml")) {
            work(path);
            count++;
        } else if (entry->d_name[0] != '.') {
            count += folder_walk(path, work);
        }
    }
    if (open != NULL)
        closedir(open);
    arena_free(arena);
    return count;
}

static inline void house_walk(void (*work)(const char *path))
{
    static const char *const folders[] = {
        "tests/fleet", "tests/hazard", "tests/unusual", "procedures"};

    for (size_t i = 0; i < sizeof folders / sizeof folders[0]; i++)
        assert_true(folder_walk(folders[i], work) > 2);
}

/* ---- what is to be ---- */

/* The tree as it should be, written down without places. */
static inline void expected_add(const struct yaml_change *change, const struct yaml_node *node,
                         struct text_builder *out);

static inline void value_add(const struct yaml_node *value, struct text_builder *out)
{
    static const struct yaml_change none;

    expected_add(&none, value, out);
}

static inline const struct yaml_edit *edit_of(const struct yaml_change *change,
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

static inline void expected_add(const struct yaml_change *change, const struct yaml_node *node,
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

static inline const char *tree_texts(struct arena *arena, const struct yaml_node *tree)
{
    struct text_builder out = text_builder_in(arena);

    value_add(tree, &out);
    return out.at;
}

/* ---- values ---- */

static inline const struct yaml_node *text_node(struct arena *arena, const char *text)
{
    struct yaml_node *node = arena_alloc(arena, sizeof *node);

    *node = (struct yaml_node){.kind = YAML_SCALAR, .text = text};
    return node;
}

/* Texts of all sorts, over and over. */
static inline const char *any_text(size_t number)
{
    static const char *const texts[] = {
        "x", "across = shut, then wait", "a: b", "locker #2", "it's 5\" wide", "{id} [1]",
        "\u017Eute", "- dash", "null", "12", "\\n", "*bold* & more", "yes",
    };

    return texts[number % (sizeof texts / sizeof texts[0])];
}

#endif
