/* yaml_node.c - looking things up in a tree and writing it down (room: yaml).
 * Never changes a tree. */
#include "yaml_tree.h"

#include "text.h"

/* NULL for a key that is not there, and for what is no mapping at all. */
const struct yaml_node *yaml_get(const struct yaml_node *mapping, const char *key)
{
    if (mapping == NULL || mapping->kind != YAML_MAPPING)
        return NULL;
    for (size_t i = 0; i < mapping->count; i++)
        if (text_equal(mapping->pairs[i].key, key))
            return mapping->pairs[i].value;
    return NULL;
}

const char *yaml_kind_word(const struct yaml_node *node)
{
    switch (node->kind) {
    case YAML_SCALAR:
        return "a text";
    case YAML_SEQUENCE:
        return "a list";
    case YAML_MAPPING:
        break;
    }
    return "a mapping";
}

/* In quotes; a line break as \n, so that a dump has one line a node. */
static void string_dump(const char *string, struct text_builder *out)
{
    text_add(out, "\"");
    for (; *string != '\0'; string++) {
        if (*string == '\n')
            text_add(out, "\\n");
        else if (*string == '"' || *string == '\\')
            text_add_format(out, "\\%c", *string);
        else
            text_add_bytes(out, string, 1);
    }
    text_add(out, "\"");
}

/* Line, column and span: tests compare where a node stands as well as what it says. */
static void place_dump(struct place place, struct text_builder *out)
{
    text_add_format(out, " @%d:%d+%d\n", place.line, place.column, place.span);
}

/* A node a line, its members two spaces further in. */
static void node_dump(const struct yaml_node *node, int depth, struct text_builder *out)
{
    if (node->kind == YAML_SCALAR) {
        text_add(out, node->quoted ? "quoted " : "plain ");
        string_dump(node->text, out);
        place_dump(node->place, out);
        return;
    }
    text_add(out, node->kind == YAML_SEQUENCE ? "list" : "mapping");
    place_dump(node->place, out);
    for (size_t i = 0; i < node->count; i++) {
        text_add_format(out, "%*s", depth * 2 + 2, "");
        if (node->kind == YAML_SEQUENCE) {
            text_add(out, "- ");
            node_dump(node->items[i], depth + 1, out);
            continue;
        }
        const struct yaml_pair *pair = &node->pairs[i];
        string_dump(pair->key, out);
        text_add_format(out, " @%d:%d+%d: ", pair->key_place.line, pair->key_place.column,
                        pair->key_place.span);
        node_dump(pair->value, depth + 1, out);
    }
}

void yaml_dump(const struct yaml_node *node, struct text_builder *out)
{
    node_dump(node, 0, out);
}
