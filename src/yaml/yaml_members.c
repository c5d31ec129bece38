/* yaml_members.c - the members of a mapping or list that is being changed (room: yaml):
 * which edit is about which, which stay, and which bytes are theirs. Makes no cuts. */
#include "yaml_editing.h"

#include <string.h>

#include "text.h"

static size_t pair_index(const struct yaml_node *mapping, const char *key)
{
    size_t index = 0;

    while (index < mapping->count && !text_equal(mapping->pairs[index].key, key))
        index++;
    return index;
}

size_t edit_index(const struct yaml_edit *edit)
{
    if (edit->in->kind == YAML_MAPPING)
        return pair_index(edit->in, edit->key);
    return edit->index < edit->in->count ? edit->index : edit->in->count;
}

const struct yaml_node *member_value(const struct yaml_node *in, size_t index)
{
    return in->kind == YAML_MAPPING ? in->pairs[index].value : in->items[index];
}

struct place member_place(const struct yaml_node *in, size_t index)
{
    return in->kind == YAML_MAPPING ? in->pairs[index].key_place : in->items[index]->place;
}

const struct yaml_edit *member_edit(const struct yaml_change *change,
                                    const struct yaml_node *in, size_t index,
                                    enum yaml_edit_kind kind)
{
    for (size_t i = 0; i < change->edit_count; i++) {
        const struct yaml_edit *edit = &change->edits[i];
        if (edit->in == in && edit->kind == kind && edit_index(edit) == index)
            return edit;
    }
    return NULL;
}

bool member_stays(const struct yaml_change *change, const struct yaml_node *in, size_t index)
{
    return member_edit(change, in, index, YAML_EDIT_REMOVE) == NULL;
}

size_t members_staying(const struct yaml_change *change, const struct yaml_node *in,
                       size_t from, size_t to)
{
    size_t count = 0;

    for (size_t i = from; i < to; i++)
        count += member_stays(change, in, i) ? 1 : 0;
    return count;
}

bool is_first_addition(const struct yaml_change *change, const struct yaml_edit *edit)
{
    const struct yaml_edit *first = change->edits;

    while (first < edit && (first->in != edit->in || first->kind != YAML_EDIT_ADD))
        first++;
    return first == edit;
}

/* Behind the colon of a pair's key; 0 where the next sign is none. */
static size_t colon_behind(const struct yaml_editing *editing, const struct yaml_pair *pair)
{
    size_t at = blanks_skip(editing, pair->key_range.end);

    return at < editing->length && editing->bytes[at] == ':' ? at + 1 : 0;
}

/* A value that was left out ends with its colon, not at the next sign. */
static bool pair_range(const struct yaml_editing *editing, const struct yaml_pair *pair,
                       struct byte_range *range)
{
    size_t colon = colon_behind(editing, pair);

    range->start = pair->key_range.start;
    range->end = pair->value->range.end;
    if (pair->value->range.start == pair->value->range.end)
        range->end = colon;
    return colon > 0;
}

/* The dash of an entry stands in the column of the first, in the entry's line or above. */
static bool entry_range(const struct yaml_editing *editing, const struct yaml_node *list,
                        size_t index, struct byte_range *range)
{
    size_t first = list->range.start;
    size_t indent = first - line_start_of(editing, first);
    size_t line = line_start_of(editing, list->items[index]->range.start);

    range->end = list->items[index]->range.end;
    range->start = first;
    if (index == 0)
        return true;
    while (line > first &&
           (!bytes_blank(editing, line, line + indent) || editing->bytes[line + indent] != '-'))
        line = line_start_of(editing, line - 1);
    range->start = line + indent;
    return line > first;
}

bool member_range(const struct yaml_editing *editing, const struct yaml_node *in, size_t index,
                  struct byte_range *range)
{
    if (in->kind == YAML_MAPPING)
        return pair_range(editing, &in->pairs[index], range);
    *range = in->items[index]->range;
    return in->flow || entry_range(editing, in, index, range);
}
