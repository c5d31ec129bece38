/* yaml_walk.c - going through all keys that a table allows, and through all values of a
 * record (room: yaml). Never reads a file. */
#include "text.h"
#include "yaml_fields.h"

/* What a value is made of, each part with its table. */
static void part_visit(const struct field *field, void *record, value_visit *visit,
                       void *context)
{
    const struct field_part *part = field->part;
    char *bytes = record;

    if (field->kind == FIELD_SECTION)
        field_values_visit(part->table, bytes + part->offset, visit, context);
    if (field->kind != FIELD_ENTRIES)
        return;
    const struct entries_value *entries = (const void *)(bytes + field->offset);
    for (size_t i = 0; i < entries->count; i++)
        field_values_visit(part->table, (char *)entries->items + i * part->size, visit, context);
}

void field_values_visit(const struct field_table *table, void *record, value_visit *visit,
                        void *context)
{
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        visit(field, (char *)record + field->offset, context);
        part_visit(field, record, visit, context);
    }
}

static void table_walk(const struct field_table *table, const struct field_path *outer,
                       path_visit *visit, void *context)
{
    for (size_t i = 0; i < table->count; i++) {
        struct field_path path = {&table->fields[i], table, outer};
        visit(&path, context);
        if (path.field->part != NULL)
            table_walk(path.field->part->table, &path, visit, context);
    }
}

void fields_walk(const struct field_table *table, path_visit *visit, void *context)
{
    table_walk(table, NULL, visit, context);
}

const char *field_path_text(const struct field_path *path, struct arena *arena)
{
    if (path->outer == NULL)
        return path->field->key;
    return text_format(arena, "%s/%s", field_path_text(path->outer, arena), path->field->key);
}

const char *field_kind_word(enum field_kind kind)
{
    switch (kind) {
    case FIELD_TEXT:
        return "text";
    case FIELD_WORDING:
        return "text in any language";
    case FIELD_WORDINGS:
        return "list of texts in any language";
    case FIELD_CHOICE:
        return "choice";
    case FIELD_CHOICES:
        return "list of choices";
    case FIELD_PAIRED:
        return "list of choices, each alone or with a word";
    case FIELD_BY_CHOICE:
        return "text in any language, or one by choice";
    case FIELD_NUMBER:
        return "number";
    case FIELD_ANSWER:
        return "yes or no";
    case FIELD_DATE:
        return "date";
    case FIELD_LIST:
        return "list";
    case FIELD_WORDS:
        return "list or one word";
    case FIELD_PAIR:
        return "pair of numbers";
    case FIELD_SECTION:
        return "section";
    case FIELD_ENTRIES:
        return "list of entries";
    case FIELD_NODE:
        break;
    }
    return "other";
}
