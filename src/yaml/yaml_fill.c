/* yaml_fill.c - values put into a record and taken out (room: yaml): it is filled from another of
 * the same table, with the place where a value stands there. Never reads a file. */
#include "yaml_value.h"

#include <string.h>

static size_t value_size(enum field_kind kind)
{
    switch (kind) {
    case FIELD_TEXT:
    case FIELD_WORDING:
        return sizeof(struct text_value);
    case FIELD_CHOICE:
        return sizeof(struct choice_value);
    case FIELD_CHOICES:
        return sizeof(struct choice_list);
    case FIELD_PAIRED:
        return sizeof(struct paired_list);
    case FIELD_BY_CHOICE:
        return sizeof(struct wordings_value);
    case FIELD_NUMBER:
        return sizeof(struct number_value);
    case FIELD_ANSWER:
        return sizeof(struct answer_value);
    case FIELD_DATE:
        return sizeof(struct date_value);
    case FIELD_LIST:
    case FIELD_WORDINGS:
    case FIELD_WORDS:
        return sizeof(struct list_value);
    case FIELD_PAIR:
        return sizeof(struct pair_value);
    case FIELD_SECTION:
        return sizeof(struct section_value);
    case FIELD_ENTRIES:
        return sizeof(struct entries_value);
    case FIELD_NODE:
        break;
    }
    return sizeof(struct node_value);
}

/* What is refused has a place too: somebody meant to say it. */
static bool is_lacking(const struct field *field, const void *record, const void *from)
{
    return field_place(field, record).line == 0 && field_place(field, from).line > 0;
}

void fields_fill(const struct field_table *table, void *record, const void *from,
                 enum fields_filled which)
{
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        char *to = record;
        const char *other = from;

        if (!is_lacking(field, record, from) || (which == FIELDS_OWN && !field->own))
            continue;
        memcpy(to + field->offset, other + field->offset, value_size(field->kind));
        if (field->kind == FIELD_SECTION)
            fields_fill(field->part->table, to + field->part->offset,
                        other + field->part->offset, FIELDS_ALL);
    }
}

bool fields_lack(const struct field_table *table, const void *record, const void *from)
{
    for (size_t i = 0; i < table->count; i++)
        if (is_lacking(&table->fields[i], record, from))
            return true;
    return false;
}

void field_clear(const struct field *field, void *record)
{
    char *at = record;
    const struct field_part *part = field->part;

    memset(at + field->offset, 0, value_size(field->kind));
    for (size_t i = 0; field->kind == FIELD_SECTION && i < part->table->count; i++)
        field_clear(&part->table->fields[i], at + part->offset);
}
