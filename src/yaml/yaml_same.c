/* yaml_same.c - whether a tree is another one with edits made (room: yaml): the promise of
 * the writer, checked on the tree that was read back. Never looks at bytes. */
#include "yaml_editing.h"

#include "text.h"

static bool scalar_equal(const struct yaml_node *value, const struct yaml_node *node,
                         struct arena *arena)
{
    if (!text_equal(text_nfc(arena, value->text), node->text))
        return false;
    return text_empty(value->text) ? value->quoted == node->quoted
                                   : node->quoted || !value->quoted;
}

static bool pair_equal(const struct yaml_pair *pair, const struct yaml_pair *read,
                       struct arena *arena)
{
    return text_equal(text_nfc(arena, pair->key), read->key) &&
           value_equal(pair->value, read->value, arena);
}

bool value_equal(const struct yaml_node *value, const struct yaml_node *node,
                 struct arena *arena)
{
    bool equal = value->kind == node->kind;

    if (equal && value->kind == YAML_SCALAR)
        return scalar_equal(value, node, arena);
    equal = equal && value->count == node->count;
    for (size_t i = 0; equal && i < node->count; i++)
        equal = value->kind == YAML_MAPPING
                    ? pair_equal(&value->pairs[i], &node->pairs[i], arena)
                    : value_equal(value->items[i], node->items[i], arena);
    return equal;
}

static bool node_as_changed(const struct yaml_editing *editing, const struct yaml_node *old,
                            const struct yaml_node *node);

/* A member that was not removed: as it was set, or as it was with what was changed in it. */
static bool member_as_changed(const struct yaml_editing *editing, const struct yaml_node *old,
                              size_t index, const struct yaml_node *node, size_t at)
{
    const struct yaml_edit *set = member_edit(editing->change, old, index, YAML_EDIT_SET);

    if (at >= node->count)
        return false;
    if (old->kind == YAML_MAPPING && !text_equal(old->pairs[index].key, node->pairs[at].key))
        return false;
    if (set != NULL)
        return value_equal(set->value, member_value(node, at), editing->arena);
    return node_as_changed(editing, member_value(old, index), member_value(node, at));
}

/* From member `at` on stand the added ones, in the order of their edits, and no others. */
static bool additions_stand(const struct yaml_editing *editing, const struct yaml_node *old,
                            const struct yaml_node *node, size_t at)
{
    for (size_t i = 0; i < editing->change->edit_count; i++) {
        const struct yaml_edit *edit = &editing->change->edits[i];
        if (edit->in != old || edit->kind != YAML_EDIT_ADD)
            continue;
        if (at >= node->count ||
            !value_equal(edit->value, member_value(node, at), editing->arena))
            return false;
        if (old->kind == YAML_MAPPING &&
            !text_equal(text_nfc(editing->arena, edit->key), node->pairs[at].key))
            return false;
        at++;
    }
    return at == node->count;
}

static bool node_as_changed(const struct yaml_editing *editing, const struct yaml_node *old,
                            const struct yaml_node *node)
{
    size_t at = 0;

    if (old->kind != node->kind || old->flow != node->flow)
        return false;
    if (old->kind == YAML_SCALAR)
        return old->quoted == node->quoted && text_equal(old->text, node->text);
    for (size_t i = 0; i < old->count; i++) {
        if (!member_stays(editing->change, old, i))
            continue;
        if (!member_as_changed(editing, old, i, node, at))
            return false;
        at++;
    }
    return additions_stand(editing, old, node, at);
}

bool tree_as_changed(const struct yaml_editing *editing, const struct yaml_node *tree)
{
    return node_as_changed(editing, editing->change->tree, tree);
}
