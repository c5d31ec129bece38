/* yaml_part.c - values that are made of several (room: yaml): sections with a table of
 * their own, lists whose entries have one, pairs of numbers. Never knows what they mean. */
#include "yaml_value.h"

#include <string.h>

#include "number.h"
#include "text.h"

/* ---- pairs ---- */

static bool decimal_read(const struct yaml_node *node, struct number_value *out)
{
    int64_t milli;

    if (node->kind != YAML_SCALAR || !number_parse_milli(node->text, &milli))
        return false;
    *out = (struct number_value){
        .milli = milli, .text = node->text, .given = true, .place = node->place};
    return true;
}

void pair_value_read(struct field_reading *reading, const struct field *field,
                     const struct yaml_node *node, void *value)
{
    struct pair_value pair = {.given = true, .place = node->place};

    if (node->kind == YAML_SEQUENCE && node->count == 2 &&
        decimal_read(node->items[0], &pair.first) && decimal_read(node->items[1], &pair.second)) {
        *(struct pair_value *)value = pair;
        return;
    }
    field_error(reading, node->place,
                text_format(reading->arena,
                            "write %s: %s,\nwith a point before decimals, such as %s: [8.40, "
                            "-1.20]", field->key, field->about, field->key),
                "\"%s\" must be a list of two numbers", field->key);
}

/* ---- sections ---- */

static void part_read(struct field_reading *reading, const struct field_table *table,
                      const struct yaml_node *node, void *record)
{
    if (!fields_read(node, table, record, reading->arena, reading->problems))
        reading->wrong = true;
}

/* A lone word is told of under the key of its section or list. */
static void lone_read(struct field_reading *reading, const struct field *field,
                      const struct yaml_node *node, void *record)
{
    const struct field *lone = field_find(field->part->table, field->part->lone);
    struct field named = *lone;

    named.key = field->key;
    if (entry_sound(reading, &named, node))
        value_read(reading, &named, node, (char *)record + lone->offset);
}

void section_value_read(struct field_reading *reading, const struct field *field,
                        const struct yaml_node *node, void *value)
{
    struct section_value *section = value;
    char *record = (char *)value - field->offset;

    section->given = node->kind == YAML_MAPPING ||
                     (node->kind == YAML_SCALAR && field->part->lone != NULL);
    if (node->kind == YAML_SCALAR && field->part->lone != NULL)
        lone_read(reading, field, node, record + field->part->offset);
    else
        part_read(reading, field->part->table, node, record + field->part->offset);
}

/* ---- entries ---- */

static void entry_read(struct field_reading *reading, const struct field *field,
                       const struct yaml_node *node, void *record)
{
    size_t errors = problems_count(reading->problems, SEVERITY_ERROR);
    *(struct place *)(void *)((char *)record + field->part->place) = node->place;
    if (node->kind == YAML_SCALAR && field->part->lone != NULL)
        lone_read(reading, field, node, record);
    else
        part_read(reading, field->part->table, node, record);
    if (field->part->refused > 0)
        *((bool *)record + field->part->refused) =
            problems_count(reading->problems, SEVERITY_ERROR) > errors;
}

static void list_due_tell(struct field_reading *reading, const struct field *field,
                          const struct yaml_node *node)
{
    if (field->part->lone != NULL && node->kind == YAML_SCALAR)
        field_error(reading, node->place,
                    text_format(reading->arena, "write it as a list: [%s]", node->text),
                    "\"%s\" must be a list, not the text %s", field->key,
                    text_shown(reading->arena, node->text));
    else
        field_error(reading, node->place, "begin each entry on a line of its own with a hyphen",
                    "\"%s\" must be a list, not %s", field->key, yaml_kind_word(node));
}

void entries_value_read(struct field_reading *reading, const struct field *field,
                        const struct yaml_node *node, void *value)
{
    const struct field_part *part = field->part;
    bool one = part->one_or_many && node->kind != YAML_SEQUENCE;
    const struct yaml_node *const *nodes = one ? &node : node->items;
    struct entries_value entries = {.given = true, .place = node->place};

    if (!one && node->kind != YAML_SEQUENCE) {
        list_due_tell(reading, field, node);
        return;
    }
    entries.count = one ? 1 : node->count;
    entries.items = arena_array(reading->arena, entries.count, part->size);
    for (size_t i = 0; i < entries.count; i++)
        entry_read(reading, field, nodes[i], (char *)entries.items + i * part->size);
    *(struct entries_value *)value = entries;
}
