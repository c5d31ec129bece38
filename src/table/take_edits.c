/* take_edits.c - what a table asks of one boat's file as edits of it (room: table). What is her
 * model's is refused, with the way to do it: it is that of her sisters too. */
#include "take_editing.h"

#include <string.h>

#include "text.h"

/* ---- telling and noting ---- */

void change_tell(struct boat_editing *editing, const char *what, const char *from,
                        const char *to)
{
    struct change_list *list = editing->changes;
    list->rows = arena_grow(editing->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] =
        (struct table_change){editing->rows->boat->key, what, text_empty(from) ? NULL : from,
                              text_empty(to) ? NULL : to};
}

void edit_add(struct boat_editing *editing, struct yaml_edit edit)
{
    editing->edits = arena_grow(editing->arena, editing->edits, editing->count, &editing->room,
                                sizeof *editing->edits);
    editing->edits[editing->count++] = edit;
}

const struct yaml_node *word_node(struct boat_editing *editing, const char *word)
{
    struct yaml_node *node = arena_alloc(editing->arena, sizeof *node);
    *node = (struct yaml_node){.kind = YAML_SCALAR, .text = word};
    return node;
}

/* ---- mappings that are made ---- */

void pair_put(struct boat_editing *editing, struct mapping_making *making,
                     const char *key, const struct yaml_node *value)
{
    making->pairs = arena_grow(editing->arena, making->pairs, making->count, &making->room,
                               sizeof *making->pairs);
    making->pairs[making->count++] = (struct yaml_pair){.key = key, .value = value};
}

const struct yaml_node *mapping_made(struct boat_editing *editing,
                                            const struct mapping_making *making)
{
    struct yaml_node *node = arena_alloc(editing->arena, sizeof *node);
    *node = (struct yaml_node){.kind = YAML_MAPPING, .flow = true, .pairs = making->pairs,
                               .count = making->count};
    return node;
}

/* ---- one key of an entry ---- */

/* Leaves of one key, from `from` to before `to`. */
struct leaf_group {
    const struct entry *entry;
    size_t from, to;
};

static const struct field *group_field(const struct leaf_group *group)
{
    return group->entry->leaves->rows[group->from].field;
}

const char *leaf_wanted(const struct entry *entry, size_t leaf)
{
    return entry->asked[leaf].text != NULL ? entry->asked[leaf].text : entry->cells[leaf];
}

/* The first leaf that the table changes; `to` where it changes none. */
static size_t group_changed(const struct leaf_group *group)
{
    size_t leaf = group->from;
    while (leaf < group->to && group->entry->asked[leaf].text == NULL)
        leaf++;
    return leaf;
}

static const struct yaml_node *leaf_value(struct boat_editing *editing, const struct entry *entry,
                                          size_t leaf)
{
    const char *fault;
    return cell_node(leaf_field(&entry->leaves->rows[leaf]), leaf_wanted(entry, leaf),
                     editing->arena, &fault);
}

static size_t group_filled(const struct leaf_group *group)
{
    size_t count = 0;
    for (size_t i = group->from; i < group->to; i++)
        count += leaf_wanted(group->entry, i)[0] != '\0' ? 1 : 0;
    return count;
}

/* Does the only leaf that says something stand for the whole value? */
static bool leaf_stands_alone(const struct leaf *leaf, const struct yaml_node *old)
{
    return leaf->sub == NULL ||
           (old != NULL && old->kind == YAML_SCALAR && leaf->part != NULL &&
            text_equal(leaf->sub, leaf->field->part->lone));
}

/* All that the key is to say; NULL: nothing, or an error was told. What a cell says was looked at
 * when it was taken. */
static const struct yaml_node *group_value(struct boat_editing *editing,
                                           const struct leaf_group *group,
                                           const struct yaml_node *old)
{
    struct mapping_making making = {0};
    size_t filled = group_filled(group), changed = group_changed(group);
    for (size_t i = group->from; i < group->to; i++) {
        const struct leaf *leaf = &group->entry->leaves->rows[i];
        if (leaf_wanted(group->entry, i)[0] == '\0')
            continue;
        const struct yaml_node *node = leaf_value(editing, group->entry, i);
        if (node == NULL || (filled == 1 && leaf_stands_alone(leaf, old)))
            return node;
        if (leaf->sub == NULL && changed < group->to) {
            const struct asked_cell *asked = &group->entry->asked[changed];
            taking_error(editing->taking, asked->row, asked->column,
                         text_format(editing->arena, "empty the column %s, or those of its states",
                                     leaf->head),
                         "%s is given as one text and by state too", leaf->head);
            return NULL;
        }
        pair_put(editing, &making, leaf->sub, node);
    }
    return making.count == 0 ? NULL : mapping_made(editing, &making);
}

static bool is_in_lines(const struct yaml_node *node)
{
    return node->kind != YAML_SCALAR && !node->flow;
}

/* Another value for a key that is there; NULL: none. */
void key_put(struct boat_editing *editing, const struct yaml_node *in, const char *key,
                      const struct yaml_node *value)
{
    const struct yaml_node *old = yaml_get(in, key);
    if (old != NULL && value != NULL && !is_in_lines(old)) {
        edit_add(editing, (struct yaml_edit){YAML_EDIT_SET, in, key, 0, value});
        return;
    }
    if (old != NULL)
        edit_add(editing, (struct yaml_edit){YAML_EDIT_REMOVE, in, key, 0, NULL});
    if (value != NULL)
        edit_add(editing, (struct yaml_edit){YAML_EDIT_ADD, in, key, 0, value});
}

/* What stays of the value keeps its place. */
static void parts_put(struct boat_editing *editing, const struct leaf_group *group,
                      const struct yaml_node *old)
{
    for (size_t i = group->from; i < group->to; i++)
        if (group->entry->asked[i].text != NULL && group->entry->leaves->rows[i].sub != NULL)
            key_put(editing, old, group->entry->leaves->rows[i].sub,
                      leaf_wanted(group->entry, i)[0] == '\0'
                          ? NULL
                          : leaf_value(editing, group->entry, i));
}

static void group_put(struct boat_editing *editing, const struct leaf_group *group)
{
    const struct entry *entry = group->entry;
    const char *key = group_field(group)->key;
    const struct yaml_node *old = yaml_get(entry->own, key);
    const struct yaml_node *value = group_value(editing, group, old);
    if (old != NULL && value != NULL && value_is_parted(group_field(group), old) &&
        value->kind == YAML_MAPPING)
        parts_put(editing, group, old);
    else
        key_put(editing, entry->own, key, value);
}

/* ---- what is her model's ---- */

/* The whole piece as it is to be, for her own file. */
static const char *whole_line(struct boat_editing *editing, const struct entry *entry)
{
    struct mapping_making making = {0};
    pair_put(editing, &making, "item", word_node(editing, item_word(entry->item)));
    pair_put(editing, &making, "tag", word_node(editing, entry->name));
    for (size_t i = 0; i < entry->leaves->count;) {
        struct leaf_group group = {entry, i, i};
        while (group.to < entry->leaves->count &&
               entry->leaves->rows[group.to].field == entry->leaves->rows[i].field)
            group.to++;
        const struct yaml_node *value =
            yaml_get(mapping_made(editing, &making), group_field(&group)->key) != NULL
                ? NULL
                : group_value(editing, &group, NULL);
        if (value != NULL)
            pair_put(editing, &making, group_field(&group)->key, value);
        i = group.to;
    }
    return yaml_line(mapping_made(editing, &making), editing->arena);
}

static void models_tell(struct boat_editing *editing, const struct leaf_group *group)
{
    const struct entry *entry = group->entry;
    const struct asked_cell *asked = &entry->asked[group_changed(group)];
    const char *hers = editing->rows->boat->source->name;
    const char *model = editing->rows->boat->boat->likeness.source->name;
    const char *remedy =
        entry->kind == ENTRY_GEAR
            ? text_format(editing->arena,
                          "for all boats like it change %s; for her alone write the whole piece "
                          "into %s,\nin the place of her line of %s if she has one:\n  - %s",
                          model, hers, entry->name, whole_line(editing, entry))
            : text_format(editing->arena, "change it in %s, for all boats like it", model);
    taking_error(editing->taking, asked->row, asked->column, remedy,
                 "%s of %s is her model's", group_field(group)->key, entry->name);
}

/* May her own file say it? What it does not hold of a model's piece is the model's, but for what
 * is one boat's own; of a section she may have each key otherwise, but not without it. */
static bool group_is_hers(struct boat_editing *editing, const struct leaf_group *group)
{
    const struct entry *entry = group->entry;
    const struct field *field = group_field(group);
    bool hers = true;
    if (entry->kind == ENTRY_GEAR)
        hers = entry_is_whole(entry) || field->own;
    else if (entry->models != NULL && yaml_get(entry->models, field->key) != NULL)
        hers = group_filled(group) > 0;
    if (!hers)
        models_tell(editing, group);
    return hers;
}

/* ---- an entry ---- */

static void leaves_tell(struct boat_editing *editing, const struct leaf_group *group)
{
    const struct entry *entry = group->entry;
    const char *of = entry->kind == ENTRY_SECTION
                         ? entry->name
                         : text_format(editing->arena, "%s %s", entry->name,
                                       item_word(entry->item));
    for (size_t i = group->from; i < group->to; i++)
        if (entry->asked[i].text != NULL)
            change_tell(editing,
                        text_format(editing->arena, "%s %s", of, entry->leaves->rows[i].head),
                        entry->cells[i], entry->asked[i].text);
}

/* Of a new entry what it is to say is gathered. */
static void group_edit(struct boat_editing *editing, const struct leaf_group *group,
                       struct mapping_making *making)
{
    if (group_changed(group) == group->to || !group_is_hers(editing, group))
        return;
    if (group->entry->fate == ENTRY_STAYS)
        leaves_tell(editing, group);
    if (group->entry->own != NULL) {
        group_put(editing, group);
        return;
    }
    const struct yaml_node *value = group_value(editing, group, NULL);
    if (value != NULL)
        pair_put(editing, making, group_field(group)->key, value);
}

/* A section or a piece that her file does not have yet. */
static void entry_put(struct boat_editing *editing, const struct entry *entry,
                      const struct mapping_making *making)
{
    const struct yaml_node *node = mapping_made(editing, making);
    if (entry->kind == ENTRY_GEAR)
        list_gets(editing, EDITED_EQUIPMENT, node);
    else
        key_put(editing, editing->rows->boat->tree, entry->name, node);
    if (entry->fate == ENTRY_NEW)
        change_tell(editing,
                    text_format(editing->arena, "%s %s", entry->name, item_word(entry->item)),
                    NULL, yaml_line(node, editing->arena));
}

static void entry_edit(struct boat_editing *editing, const struct entry *entry)
{
    struct mapping_making making = {0};
    if (entry->fate == ENTRY_NEW)
        pair_put(editing, &making, "item", word_node(editing, item_word(entry->item)));
    if (entry->kind == ENTRY_GEAR)
        pair_put(editing, &making, "tag", word_node(editing, entry->name));
    size_t before = making.count;
    for (size_t i = 0; i < entry->leaves->count;) {
        struct leaf_group group = {entry, i, i};
        while (group.to < entry->leaves->count &&
               entry->leaves->rows[group.to].field == entry->leaves->rows[i].field)
            group.to++;
        group_edit(editing, &group, &making);
        i = group.to;
    }
    if (entry->own == NULL && (making.count > before || entry->fate == ENTRY_NEW))
        entry_put(editing, entry, &making);
}

/* Her sisters have the tag of a model's piece: it is not retired, only not on her. */
static void entry_out(struct boat_editing *editing, const struct entry *entry)
{
    const struct yaml_node *list = list_under(editing->rows->boat->tree, "equipment");
    for (size_t i = 0; list != NULL && i < list->count; i++)
        if (list->items[i] == entry->own)
            list_loses(editing, EDITED_EQUIPMENT, i);
    list_gets(editing, entry->models == NULL ? EDITED_RETIRED : EDITED_NOT_HERE,
              word_node(editing, entry->name));
    change_tell(editing,
                text_format(editing->arena, "%s %s", entry->name, item_word(entry->item)),
                entry->own == NULL ? "as her model has it"
                                   : yaml_line(entry->own, editing->arena),
                NULL);
}

const struct yaml_edited *boat_edit(const struct taking *taking, struct boat_rows *rows,
                                    struct change_list *changes)
{
    struct boat_editing editing = {.taking = taking, .rows = rows, .arena = taking->arena,
                                   .changes = changes};
    for (size_t i = 0; i < rows->count; i++)
        (rows->entries[i].fate == ENTRY_OUT ? entry_out : entry_edit)(&editing,
                                                                      &rows->entries[i]);
    for (size_t i = 0; i < rows->absence_count; i++)
        absence_edit(&editing, &rows->absences[i]);
    lists_put(&editing);
    if (editing.count == 0 || problems_reach(taking->problems, SEVERITY_ERROR))
        return NULL;
    struct yaml_change change = {rows->boat->source, rows->boat->tree, editing.edits,
                                 editing.count};
    return yaml_edit(&change, taking->arena, taking->problems);
}
