/* fuzz_yaml.c - any bytes as a YAML file: read, told, and edited so that only what was meant is
 * another. */
#include "fuzz.h"

#include <string.h>

#include "text.h"
#include "yaml_edit.h"

static const char *content_of_tree(const struct fuzz *fuzz, const struct yaml_node *tree)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    yaml_content_add(tree, &out);
    return arena_copy(fuzz->arena, out.at, out.length);
}

static bool is_left_out(const struct yaml_node *node)
{
    return node->kind == YAML_SCALAR && !node->quoted && *node->text == '\0';
}

/* Has it a form in brackets, which says the same? */
static bool is_one_line(const struct yaml_node *node)
{
    bool one = node->kind != YAML_SCALAR || strchr(node->text, '\n') == NULL;
    for (size_t i = 0; one && i < node->count; i++)
        one = node->kind == YAML_MAPPING
                  ? is_one_line(node->pairs[i].value)
                  : is_one_line(node->items[i]) && !is_left_out(node->items[i]);
    return one;
}

/* A list or mapping of the tree that holds something. */
static const struct yaml_node *collection_choose(const struct fuzz *fuzz,
                                                 const struct yaml_node *tree)
{
    size_t choice = fuzz_choice(fuzz, 1 << 20);
    for (;;) {
        size_t at = choice % tree->count;
        const struct yaml_node *inner =
            tree->kind == YAML_MAPPING ? tree->pairs[at].value : tree->items[at];
        choice = choice / 3 + 7;
        if (inner->kind == YAML_SCALAR || inner->count == 0 || choice % 4 == 0)
            return tree;
        tree = inner;
    }
}

static const struct yaml_node *edited_tree(const struct fuzz *fuzz, const struct source *source,
                                           const struct yaml_node *tree,
                                           const struct yaml_edit *edit,
                                           const struct source **written)
{
    struct problems *told = problems_new(fuzz->arena);
    const struct yaml_change change = {source, tree, edit, 1};
    const struct yaml_edited *edited = yaml_edit(&change, fuzz->arena, told);
    CHECK((edited == NULL) == problems_reach(told, SEVERITY_ERROR));
    if (edited == NULL)
        return NULL;
    *written = fuzz_part(fuzz, "edited.yaml", edited->bytes, edited->length);
    const struct yaml_node *again = yaml_tree_read(*written, fuzz->arena, told);
    CHECK(again != NULL && again->kind == tree->kind);
    return again;
}

/* A new key that goes in comes out again, and all is as it was. */
static void edit_undo(const struct fuzz *fuzz, const struct source *source,
                      const struct yaml_node *tree)
{
    const struct yaml_node value = {.kind = YAML_SCALAR, .text = "a: b # c"};
    const struct source *with, *without;
    struct yaml_edit edit = {.kind = YAML_EDIT_ADD, .in = tree, .key = "added_here",
                             .value = &value};
    if (tree->kind != YAML_MAPPING || tree->count == 0)
        return;
    const struct yaml_node *added = edited_tree(fuzz, source, tree, &edit, &with);
    if (added == NULL)
        return;
    CHECK(added->count == tree->count + 1);
    CHECK(text_equal(yaml_get(added, edit.key)->text, value.text));
    edit = (struct yaml_edit){.kind = YAML_EDIT_REMOVE, .in = added, .key = edit.key};
    const struct yaml_node *removed = edited_tree(fuzz, with, added, &edit, &without);
    CHECK(removed != NULL);
    CHECK(text_equal(content_of_tree(fuzz, removed), content_of_tree(fuzz, tree)));
}

/* An inner value is set; where it was a text in one line, the old one goes in again. */
static void edit_set(const struct fuzz *fuzz, const struct source *source,
                     const struct yaml_node *tree)
{
    const struct yaml_node value = {.kind = YAML_SCALAR, .text = "#1, [x}"};
    const struct yaml_node *in = collection_choose(fuzz, tree);
    const struct source *with;
    struct yaml_edit edit = {.kind = YAML_EDIT_SET, .in = in, .value = &value,
                             .index = fuzz_choice(fuzz, in->count)};
    if (in->kind == YAML_MAPPING)
        edit.key = in->pairs[edit.index].key;
    const struct yaml_node *changed = edited_tree(fuzz, source, tree, &edit, &with);
    if (changed != NULL)
        CHECK(!text_equal(content_of_tree(fuzz, changed), content_of_tree(fuzz, tree)));
}

/* What is written in one line says the same. */
static void line_check(const struct fuzz *fuzz, const struct yaml_node *tree)
{
    struct problems *told = problems_new(fuzz->arena);
    const char *line = yaml_line(tree, fuzz->arena);
    const struct yaml_node *again = yaml_tree_read(
        fuzz_part(fuzz, "line.yaml", line, strlen(line)), fuzz->arena, told);
    CHECK(again == NULL || text_equal(content_of_tree(fuzz, again), content_of_tree(fuzz, tree)));
    CHECK(again != NULL || problems_reach(told, SEVERITY_ERROR));
}

static void yaml_one(struct fuzz *fuzz)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    const struct source *source = fuzz_source(fuzz, "any.yaml");
    const struct yaml_node *tree = yaml_tree_read(source, fuzz->arena, fuzz->problems);
    sound_check(fuzz, tree != NULL);
    if (tree == NULL)
        return;
    yaml_dump(tree, &out);
    CHECK(text_is_shown(out.at));
    if (is_one_line(tree) && !is_left_out(tree))
        line_check(fuzz, tree);
    edit_undo(fuzz, source, tree);
    if (tree->kind != YAML_SCALAR && tree->count > 0)
        edit_set(fuzz, source, tree);
}

const struct harness harness = {NULL, yaml_one, true};
