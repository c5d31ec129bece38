/* entries.c - a record as entries and their cells: her own file's and, where she is like a model,
 * what counts of the model's (room: table). What counts, the record says. */
#include "table_room.h"

#include <string.h>

#include "text.h"

const char *const table_column_words[] = {TABLE_COLUMN_LIST(CHOICE_WORD) NULL};
const char *const table_absence_words[] = {TABLE_ABSENCE_LIST(CHOICE_WORD) NULL};
const char *const section_names[] = {"boat", "gas", "radio", NULL};

bool leaf_has_own_column(const struct leaf *leaf)
{
    return choice_find(table_column_words, leaf->head) > 0;
}

struct table_leaves table_leaves_make(struct arena *arena)
{
    return (struct table_leaves){
        .sections = {leaves_of(boat_fields(), arena), leaves_of(gas_fields(), arena),
                     leaves_of(radio_fields(), arena)},
        .gear = leaves_of(equipment_fields(), arena),
        .absence = leaves_of(absence_fields(), arena)};
}

/* ---- nodes ---- */

const struct yaml_node *list_under(const struct yaml_node *tree, const char *key)
{
    const struct yaml_node *node = tree == NULL ? NULL : yaml_get(tree, key);
    return node != NULL && node->kind == YAML_SEQUENCE ? node : NULL;
}

static const struct yaml_node *section_node(const struct yaml_node *tree, const char *key)
{
    const struct yaml_node *node = tree == NULL ? NULL : yaml_get(tree, key);
    return node != NULL && node->kind == YAML_MAPPING ? node : NULL;
}

const struct yaml_node *gear_node(const struct yaml_node *tree, const char *tag)
{
    const struct yaml_node *list = list_under(tree, "equipment");
    for (size_t i = 0; list != NULL && i < list->count; i++) {
        const struct yaml_node *node = list->items[i];
        const struct yaml_node *its =
            node->kind == YAML_MAPPING ? yaml_get(node, "tag") : NULL;
        if (its != NULL && its->kind == YAML_SCALAR && text_equal(its->text, tag))
            return node;
    }
    return NULL;
}

bool entry_is_whole(const struct entry *entry)
{
    return entry->models == NULL || (entry->own != NULL && yaml_get(entry->own, "item") != NULL);
}

/* ---- entries ---- */

struct entry *entry_add(struct boat_rows *rows, const struct entry *entry, struct arena *arena)
{
    size_t count = entry->leaves->count;
    rows->entries = arena_grow(arena, rows->entries, rows->count, &rows->room,
                               sizeof *rows->entries);
    struct entry *added = &rows->entries[rows->count++];
    *added = *entry;
    added->cells = arena_array(arena, count, sizeof *added->cells);
    added->asked = arena_array(arena, count, sizeof *added->asked);
    if (entry->kind == ENTRY_SECTION)
        added->fact_rows = arena_array(arena, count, sizeof(void *));
    for (size_t i = 0; i < count; i++)
        added->cells[i] = "";
    return added;
}

/* The fields of a section as they were read, by the place of which it is told whether the
 * model's count. */
static const void *section_facts(const struct boat *boat, size_t section)
{
    const void *const facts[] = {&boat->facts, &boat->gas, &boat->radio};
    return facts[section];
}

static bool key_given(const struct yaml_node *mapping, const char *key)
{
    const struct yaml_node *node = mapping == NULL ? NULL : yaml_get(mapping, key);
    return node != NULL && !(node->kind == YAML_SCALAR && !node->quoted && node->text[0] == '\0');
}

static const char *fact_cell(const struct entry *entry, const struct leaf *leaf,
                             const void *facts, struct arena *arena)
{
    if (key_given(entry->own, leaf->field->key))
        return leaf_cell(leaf, entry->own, arena);
    bool counts = field_place(leaf->field, facts).line > 0;
    return counts ? leaf_cell(leaf, entry->models, arena) : "";
}

static void sections_add(struct boat_rows *rows, const struct table_leaves *leaves,
                         struct arena *arena)
{
    const struct table_boat *boat = rows->boat;
    for (size_t i = 0; section_names[i] != NULL; i++) {
        struct entry *entry = entry_add(
            rows, &(struct entry){.kind = ENTRY_SECTION, .name = section_names[i],
                                  .leaves = &leaves->sections[i],
                                  .own = section_node(boat->tree, section_names[i]),
                                  .models = section_node(boat->model, section_names[i])},
            arena);
        for (size_t k = 0; k < entry->leaves->count; k++)
            entry->cells[k] = fact_cell(entry, &entry->leaves->rows[k],
                                        section_facts(boat->boat, i), arena);
    }
}

static const char *gear_cell(const struct entry *entry, const struct leaf *leaf,
                             struct arena *arena)
{
    bool own = entry_is_whole(entry) || key_given(entry->own, leaf->field->key);
    return leaf_cell(leaf, own ? entry->own : entry->models, arena);
}

static void gear_entry_add(struct boat_rows *rows, const struct equipment *gear,
                     const struct table_leaves *leaves, struct arena *arena)
{
    const char *tag = gear->tag.text;
    struct entry *entry = entry_add(
        rows, &(struct entry){.kind = ENTRY_GEAR, .name = tag, .item = gear->item.value,
                              .leaves = &leaves->gear, .own = gear_node(rows->boat->tree, tag),
                              .models = gear_node(rows->boat->model, tag)},
        arena);
    for (size_t k = 0; k < entry->leaves->count; k++)
        entry->cells[k] = gear_cell(entry, &entry->leaves->rows[k], arena);
}

/* ---- what she has not ---- */

static void absence_add(struct boat_rows *rows, struct absence_row row, struct arena *arena)
{
    rows->absences = arena_grow(arena, rows->absences, rows->absence_count,
                                &rows->absence_room, sizeof *rows->absences);
    rows->absences[rows->absence_count++] = row;
}

enum item_key absence_item(const struct yaml_node *node)
{
    const struct yaml_node *item = node->kind == YAML_MAPPING ? yaml_get(node, "item") : node;
    return item == NULL || item->kind != YAML_SCALAR ? ITEM_NONE
                                                     : choice_find(item_key_list, item->text);
}

static struct absence_row absence_of(const struct yaml_node *node, const struct leaves *leaves,
                                     struct arena *arena)
{
    struct absence_row row = {.item = absence_item(node), .serves = ""};
    if (node->kind == YAML_MAPPING)
        row.serves = leaf_cell(&leaves->rows[leaf_find(leaves, "serves")], node, arena);
    return row;
}

static void own_absences_add(struct boat_rows *rows, enum table_absence list,
                             const struct table_leaves *leaves, struct arena *arena)
{
    const struct yaml_node *nodes =
        list_under(rows->boat->tree, choice_word(table_absence_words, list));
    for (size_t i = 0; nodes != NULL && i < nodes->count; i++) {
        struct absence_row row = absence_of(nodes->items[i], &leaves->absence, arena);
        row.list = list;
        row.own = true;
        row.index = i;
        absence_add(rows, row, arena);
    }
}

/* Those of her model that count, by where they stand. */
static void models_absences_add(struct boat_rows *rows, const struct table_leaves *leaves,
                                struct arena *arena)
{
    const struct boat *boat = rows->boat->boat;
    const struct yaml_node *nodes = list_under(
        rows->boat->model, choice_word(table_absence_words, TABLE_NOT_FITTED));
    for (size_t i = 0; nodes != NULL && i < nodes->count; i++) {
        struct absence_row row = absence_of(nodes->items[i], &leaves->absence, arena);
        row.list = TABLE_NOT_FITTED;
        for (size_t k = 0; k < boat->not_fitted.count; k++) {
            struct place place = boat->not_fitted.rows[k].place;
            if (place.source == boat->likeness.source && boat->likeness.source != NULL &&
                place.line == nodes->items[i]->place.line &&
                place.column == nodes->items[i]->place.column)
                absence_add(rows, row, arena);
        }
    }
}

struct boat_rows boat_rows_of(const struct table_boat *boat, const struct table_leaves *leaves,
                              struct arena *arena)
{
    struct boat_rows rows = {.boat = boat};
    sections_add(&rows, leaves, arena);
    for (size_t i = 0; i < boat->boat->equipment_count; i++) {
        const struct equipment *gear = &boat->boat->equipment[i];
        if (gear->item.value != ITEM_vhf_dsc && gear->tag.text != NULL)
            gear_entry_add(&rows, gear, leaves, arena);
    }
    own_absences_add(&rows, TABLE_NOT_FITTED, leaves, arena);
    models_absences_add(&rows, leaves, arena);
    own_absences_add(&rows, TABLE_NOT_SURVEYED, leaves, arena);
    return rows;
}
