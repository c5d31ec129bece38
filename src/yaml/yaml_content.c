/* yaml_content.c - what a tree says, without how it is written (room: yaml): comments, quotes,
 * line breaks, brackets and the order of keys are left out, all else is in. Never judges. */
#include "yaml_tree.h"

#include "promise.h"
#include "text.h"

#include <string.h>

/* With its length, so that no two trees give the same bytes. */
static void content_text_add(struct text_builder *out, char kind, const char *text)
{
    text_add_format(out, "%c%zu:", kind, strlen(text));
    text_add(out, text);
}

/* The pair of the mapping whose key comes next behind `last` in byte order; NULL: the first. */
static const struct yaml_pair *pair_behind(const struct yaml_node *mapping, const char *last)
{
    const struct yaml_pair *next = NULL;
    for (size_t i = 0; i < mapping->count; i++) {
        const struct yaml_pair *pair = &mapping->pairs[i];
        if ((last == NULL || strcmp(pair->key, last) > 0) &&
            (next == NULL || strcmp(pair->key, next->key) < 0))
            next = pair;
    }
    return next;
}

static void mapping_content_add(const struct yaml_node *mapping, struct text_builder *out)
{
    const char *last = NULL;
    text_add_format(out, "m%zu:", mapping->count);
    for (size_t i = 0; i < mapping->count; i++) {
        const struct yaml_pair *pair = pair_behind(mapping, last);
        promise(pair != NULL);      /* no key stands twice */
        content_text_add(out, 'k', pair->key);
        yaml_content_add(pair->value, out);
        last = pair->key;
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
    text_add_format(out, "l%zu:", node->count);
    for (size_t i = 0; i < node->count; i++)
        yaml_content_add(node->items[i], out);
}
