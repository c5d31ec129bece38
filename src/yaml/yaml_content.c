/* yaml_content.c - what a tree says, without how it is written (room: yaml): comments, quotes,
 * line breaks, brackets and the order of keys are left out, all else is in. Never judges. */
#include "yaml_tree.h"

#include "text.h"

#include <stdlib.h>
#include <string.h>

#define HEAD_MOST 24

/* Its kind and how much of it there is. */
static void size_head_add(struct text_builder *out, char kind, size_t size)
{
    char head[HEAD_MOST], *first = head + HEAD_MOST;
    *--first = ':';
    do {
        *--first = (char)('0' + size % 10);
        size /= 10;
    } while (size > 0);
    *--first = kind;
    text_add_bytes(out, first, (size_t)(head + HEAD_MOST - first));
}

/* With its length, so that no two trees give the same bytes. */
static void content_text_add(struct text_builder *out, char kind, const char *text)
{
    size_t length = strlen(text);
    size_head_add(out, kind, length);
    text_add_bytes(out, text, length);
}

/* By their keys, in byte order; no key stands twice. */
static int pairs_compare(const void *first, const void *second)
{
    const struct yaml_pair *const *a = first, *const *b = second;
    return strcmp((*a)->key, (*b)->key);
}

static void mapping_content_add(const struct yaml_node *mapping, struct text_builder *out)
{
    const struct yaml_pair **pairs = arena_array(out->arena, mapping->count, sizeof *pairs);
    size_head_add(out, 'm', mapping->count);
    for (size_t i = 0; i < mapping->count; i++)
        pairs[i] = &mapping->pairs[i];
    if (mapping->count > 0)
        qsort(pairs, mapping->count, sizeof *pairs, pairs_compare);
    for (size_t i = 0; i < mapping->count; i++) {
        content_text_add(out, 'k', pairs[i]->key);
        yaml_content_add(pairs[i]->value, out);
    }
}

void yaml_content_add(const struct yaml_node *node, struct text_builder *out)
{
    if (node->kind == YAML_MAPPING) {
        mapping_content_add(node, out);
        return;
    }
    if (node->kind == YAML_SCALAR) {
        content_text_add(out, 's', node->text);
        return;
    }
    size_head_add(out, 'l', node->count);
    for (size_t i = 0; i < node->count; i++)
        yaml_content_add(node->items[i], out);
}
