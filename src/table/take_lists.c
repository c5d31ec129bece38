/* take_lists.c - what a table adds to the lists of a boat's file and takes from them, among it what
 * she has not (room: table). */
#include "take_editing.h"

static const char *const edited_list_words[] = {EDITED_LIST(CHOICE_WORD) NULL};

void list_gets(struct boat_editing *editing, enum edited_list which,
                      const struct yaml_node *node)
{
    struct list_change *list = &editing->lists[which];
    list->adds = arena_grow(editing->arena, list->adds, list->add_count, &list->add_room,
                            sizeof *list->adds);
    list->adds[list->add_count++] = node;
}

void list_loses(struct boat_editing *editing, enum edited_list which, size_t index)
{
    struct list_change *list = &editing->lists[which];
    list->removes = arena_grow(editing->arena, list->removes, list->remove_count,
                               &list->remove_room, sizeof *list->removes);
    list->removes[list->remove_count++] = index;
}

/* ---- what she has not ---- */

static const struct yaml_node *absence_node(struct boat_editing *editing,
                                            const struct absence_row *row)
{
    const struct leaves *leaves = &editing->taking->leaves->absence;
    struct mapping_making making = {0};
    const char *fault;
    if (row->serves[0] == '\0')
        return word_node(editing, item_word(row->item));
    const struct yaml_node *serves = cell_node(
        leaf_field(&leaves->rows[leaf_find(leaves, "serves")]), row->serves, editing->arena,
        &fault);
    pair_put(editing, &making, "item", word_node(editing, item_word(row->item)));
    pair_put(editing, &making, "serves",
             serves == NULL ? word_node(editing, row->serves) : serves);
    return mapping_made(editing, &making);
}

void absence_edit(struct boat_editing *editing, const struct absence_row *row)
{
    const char *list = choice_word(table_absence_words, row->list);
    const char *what = text_format(editing->arena, "%s%s%s", item_word(row->item),
                                   row->serves[0] == '\0' ? "" : " ", row->serves);
    if (row->fate == ABSENCE_OUT) {
        list_loses(editing, (enum edited_list)row->list, row->index);
        change_tell(editing, what, list, NULL);
    } else if (row->fate == ABSENCE_NEW) {
        list_gets(editing, (enum edited_list)row->list, absence_node(editing, row));
        change_tell(editing, what, NULL, list);
    }
}

/* ---- the lists ---- */

static void list_put(struct boat_editing *editing, enum edited_list which)
{
    const struct list_change *change = &editing->lists[which];
    const struct yaml_node *tree = editing->rows->boat->tree;
    const char *key = choice_word(edited_list_words, which);
    const struct yaml_node *old = list_under(tree, key);
    struct yaml_node *added = arena_alloc(editing->arena, sizeof *added);
    *added = (struct yaml_node){.kind = YAML_SEQUENCE, .flow = true, .items = change->adds,
                                .count = change->add_count};
    bool all_go = old != NULL && !old->flow && change->remove_count == old->count;
    if (change->add_count + change->remove_count == 0)
        return;
    if (old == NULL || all_go) {
        key_put(editing, tree, key, change->add_count > 0 ? added : NULL);
        return;
    }
    for (size_t i = 0; i < change->remove_count; i++)
        edit_add(editing, (struct yaml_edit){YAML_EDIT_REMOVE, old, NULL, change->removes[i],
                                             NULL});
    for (size_t i = 0; i < change->add_count; i++)
        edit_add(editing, (struct yaml_edit){YAML_EDIT_ADD, old, NULL, 0, change->adds[i]});
}

void lists_put(struct boat_editing *editing)
{
    for (enum edited_list i = EDITED_NONE + 1; i < EDITED_COUNT; i++)
        list_put(editing, i);
}
