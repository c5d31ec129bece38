/* leaves.c - values of a boat's file as cells, and cells as values (room: table). Which there
 * may be follows from the tables of fields. */
#include "table_room.h"

#include <string.h>

#include "text.h"
#include "yaml_edit.h"

struct leaf_making {
    struct leaf *rows;
    size_t count, room;
    struct arena *arena;
};

static void leaf_add(struct leaf_making *making, const struct field *field,
                     const struct field *part, const char *sub)
{
    making->rows = arena_grow(making->arena, making->rows, making->count, &making->room,
                              sizeof *making->rows);
    making->rows[making->count++] = (struct leaf){
        sub == NULL ? field->key : text_format(making->arena, "%s.%s", field->key, sub), field,
        part, sub};
}

struct leaves leaves_of(const struct field_table *table, struct arena *arena)
{
    struct leaf_making making = {.arena = arena};
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        const struct field_table *part = field->kind == FIELD_SECTION ? field->part->table : NULL;
        if (part == NULL)
            leaf_add(&making, field, NULL, NULL);
        for (size_t k = 0; part != NULL && k < part->count; k++)
            leaf_add(&making, field, &part->fields[k], part->fields[k].key);
        for (size_t k = 0; field->kind == FIELD_BY_CHOICE && field->choices[k] != NULL; k++)
            leaf_add(&making, field, NULL, field->choices[k]);
    }
    return (struct leaves){making.rows, making.count};
}

size_t leaf_find(const struct leaves *leaves, const char *head)
{
    size_t at = 0;
    while (at < leaves->count && !text_equal(leaves->rows[at].head, head))
        at++;
    return at;
}

const struct field *leaf_field(const struct leaf *leaf)
{
    return leaf->part != NULL ? leaf->part : leaf->field;
}

/* ---- values as cells ---- */

/* Begins a cell that holds YAML. */
static bool begins_yaml(const char *text)
{
    return text[0] == '[' || text[0] == '{' || text[0] == '"';
}

static const char *text_cell(const struct yaml_node *node, struct arena *arena)
{
    struct yaml_node quoted = {.kind = YAML_SCALAR, .text = node->text, .quoted = true};
    return begins_yaml(node->text) ? yaml_line(&quoted, arena) : node->text;
}

/* Can the list be written as its words with commas between? */
static bool joins_plainly(const struct yaml_node *list)
{
    for (size_t i = 0; i < list->count; i++) {
        const struct yaml_node *item = list->items[i];
        size_t length = item->kind == YAML_SCALAR ? strlen(item->text) : 0;
        if (length == 0 || strchr(item->text, ',') != NULL || begins_yaml(item->text) ||
            item->text[0] == ' ' || item->text[length - 1] == ' ')
            return false;
    }
    return list->count > 0;
}

static const char *node_cell(const struct yaml_node *node, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    if (node->kind == YAML_SCALAR)
        return text_cell(node, arena);
    if (node->kind == YAML_MAPPING || !joins_plainly(node))
        return yaml_line(node, arena);
    for (size_t i = 0; i < node->count; i++)
        text_add_format(&out, "%s%s", i > 0 ? ", " : "", node->items[i]->text);
    return out.at;
}

/* Is the value given by choice, and not as a whole or by language? */
static bool given_by_choice(const struct field *field, const struct yaml_node *value)
{
    if (field->kind != FIELD_BY_CHOICE || value->kind != YAML_MAPPING)
        return false;
    for (size_t i = 0; i < value->count; i++)
        if (choice_find(field->choices, value->pairs[i].key) == 0)
            return false;
    return value->count > 0;
}

bool value_is_parted(const struct field *field, const struct yaml_node *value)
{
    return value->kind == YAML_MAPPING &&
           (field->kind == FIELD_SECTION || given_by_choice(field, value));
}

/* A word alone in the place of a section fills one of its keys. */
static const struct yaml_node *leaf_node(const struct leaf *leaf, const struct yaml_node *value)
{
    bool parted = leaf->part != NULL || given_by_choice(leaf->field, value);
    if (!parted)
        return leaf->sub == NULL ? value : NULL;
    if (leaf->sub == NULL)
        return NULL;
    if (value->kind == YAML_MAPPING)
        return yaml_get(value, leaf->sub);
    return text_equal(leaf->sub, leaf->field->part->lone) ? value : NULL;
}

const char *leaf_cell(const struct leaf *leaf, const struct yaml_node *entry,
                      struct arena *arena)
{
    const struct yaml_node *value = entry == NULL ? NULL : yaml_get(entry, leaf->field->key);
    const struct yaml_node *node = value == NULL ? NULL : leaf_node(leaf, value);
    return node == NULL ? "" : node_cell(node, arena);
}

/* ---- cells as values ---- */

static bool takes_list(const struct field *field)
{
    switch (field->kind) {
    case FIELD_CHOICES:
    case FIELD_PAIRED:
    case FIELD_LIST:
    case FIELD_WORDINGS:
    case FIELD_WORDS:
    case FIELD_PAIR:
        return true;
    case FIELD_TEXT:
    case FIELD_WORDING:
    case FIELD_CHOICE:
    case FIELD_BY_CHOICE:
    case FIELD_NUMBER:
    case FIELD_ANSWER:
    case FIELD_DATE:
    case FIELD_SECTION:
    case FIELD_ENTRIES:
    case FIELD_NODE:
        break;
    }
    return false;
}

static const struct yaml_node *yaml_cell_node(const char *text, struct arena *arena,
                                              const char **fault)
{
    struct problems *told = problems_new(arena);
    const char *line = text_format(arena, "a: %s\n", text);
    const struct source *source = source_from(arena, "", line, strlen(line));
    const struct yaml_node *tree = yaml_tree_read(source, arena, told);
    size_t count;
    const struct problem *first = problems_sorted(told, &count);
    if (tree != NULL && tree->kind == YAML_MAPPING && tree->count == 1 && count == 0)
        return tree->pairs[0].value;
    *fault = count > 0 ? first[0].what : "it is no list, and no text in quotes";
    return NULL;
}

static struct yaml_node *text_node(const struct field *field, const char *text,
                                   struct arena *arena)
{
    struct yaml_node *node = arena_alloc(arena, sizeof *node);
    /* figures that are a name, such as an MMSI, stand in quotes */
    *node = (struct yaml_node){.kind = YAML_SCALAR, .text = text,
                               .quoted = field->kind == FIELD_TEXT && is_digit(text[0])};
    return node;
}

static const struct yaml_node *list_node(const struct field *field, const char *text,
                                         struct arena *arena, const char **fault)
{
    struct yaml_node *list = arena_alloc(arena, sizeof *list);
    const struct yaml_node **items = arena_array(arena, strlen(text) + 1, sizeof(void *));
    *list = (struct yaml_node){.kind = YAML_SEQUENCE, .flow = true, .items = items};
    for (const char *at = text;; at++) {
        size_t length = strcspn(at, ",");
        const char *word = cell_plain(text_format(arena, "%.*s", (int)length, at), arena);
        if (word[0] == '\0') {
            *fault = "between two commas nothing stands";
            return NULL;
        }
        items[list->count++] = text_node(field, word, arena);
        at += length;
        if (*at == '\0')
            return list;
    }
}

const struct yaml_node *cell_node(const struct field *field, const char *text,
                                  struct arena *arena, const char **fault)
{
    *fault = NULL;
    if (begins_yaml(text))
        return yaml_cell_node(text, arena, fault);
    if (takes_list(field))
        return list_node(field, text, arena, fault);
    return text_node(field, text, arena);
}

const char *cell_canonical(const struct field *field, const char *text, struct arena *arena)
{
    const char *fault;
    const struct yaml_node *node =
        takes_list(field) || begins_yaml(text) ? cell_node(field, text, arena, &fault) : NULL;
    return node == NULL ? text : node_cell(node, arena);
}
