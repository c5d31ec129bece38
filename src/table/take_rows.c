/* take_rows.c - rows of a table held against the record: which entry each is of, and what it says
 * otherwise (room: table). A row that is missing says nothing. */
#include "taken_row.h"

#include <string.h>

#include "item_fields.h"
#include "known_names.h"
#include "text.h"

#define TABLE_MARK_LIST(X) X(MARK_NEW, "new")
enum table_mark { MARK_NONE, TABLE_MARK_LIST(CHOICE_NAME) };
static const char *const table_mark_words[] = {TABLE_MARK_LIST(CHOICE_WORD) NULL};

#define TAKEN_OUT_LIST(X) X(OUT_NO, "no") X(OUT_YES, "yes")
enum taken_out { OUT_UNSAID, TAKEN_OUT_LIST(CHOICE_NAME) };
static const char *const taken_out_words[] = {TAKEN_OUT_LIST(CHOICE_WORD) NULL};

/* ---- rows of facts ---- */

static struct entry *section_find(const struct table_row *row, const char *dot)
{
    size_t length = (size_t)(dot - row->item);
    for (size_t i = 0; i < row->boat->count; i++) {
        struct entry *entry = &row->boat->entries[i];
        if (entry->kind == ENTRY_SECTION && strlen(entry->name) == length &&
            strncmp(entry->name, row->item, length) == 0)
            return entry;
    }
    return NULL;
}

static void fact_row_take(const struct table_row *row, const char *dot)
{
    struct entry *entry = section_find(row, dot);
    size_t leaf = entry == NULL ? 0 : leaf_find(entry->leaves, dot + 1);
    leaf_cells_refuse(row, row->taking->leaves->gear.count);
    if (row->out)
        ROW_ERROR(row, TABLE_OUT, "empty the cell in the column value instead",
                  "a fact of a boat is not taken out");
    if (entry == NULL || leaf == entry->leaves->count) {
        ROW_ERROR(row, TABLE_ITEM, "begin with the rows that `maydeck table` writes",
                  "there is no fact \"%s\" of a boat", row->item);
        return;
    }
    if (entry->fact_rows[leaf] != NULL)
        ROW_ERROR(row, TABLE_ITEM, "keep one of the two rows",
                  "row %zu has the same fact of the boat", entry->fact_rows[leaf]->number);
    entry->fact_rows[leaf] = row->row;
    if (row_passes(row, value_mark(entry->cells[leaf], "", row->taking->arena),
                   value_mark(row->value, "", row->taking->arena)))
        return;
    leaf_ask(row, entry, leaf, row->taking->columns[TABLE_VALUE]);
    /* that of the fixed radio, which has no row of gear */
    if (choice_find(table_column_words, dot + 1) == TABLE_TAG && entry->cells[leaf][0] != '\0' &&
        entry->asked[leaf].text != NULL)
        ROW_ERROR(row, TABLE_VALUE, "write it as it was: cards on board name the gear by it",
                  "%s is the tag of that gear for the boat's life", entry->cells[leaf]);
}

/* ---- rows of gear ---- */

static void gear_cells_ask(const struct table_row *row, struct entry *entry)
{
    for (size_t i = 0; i < entry->leaves->count; i++)
        leaf_ask(row, entry, i, row->taking->leaf_columns[i]);
}

static enum item_key row_item(const struct table_row *row)
{
    enum item_key item = choice_find(item_key_list, row->item);
    if (item == ITEM_NONE)
        ROW_ERROR(row, TABLE_ITEM,
                  known_remedy(row->taking->arena, problems_known(row->taking->problems),
                               row->item, item_key_list, "`maydeck list items` names them all"),
                  "there is no item \"%s\"", row->item);
    return item;
}

static size_t new_before(const struct boat_rows *rows, enum item_class class)
{
    size_t count = 0;
    for (size_t i = 0; i < rows->count; i++)
        if (rows->entries[i].kind == ENTRY_GEAR && rows->entries[i].fate == ENTRY_NEW &&
            item_kind_of(rows->entries[i].item)->class == class)
            count++;
    return count;
}

/* A piece of the record, or one that is new too, of which just the same is told: a table that is
 * taken twice must not add a piece twice. */
static const struct entry *same_piece(const struct boat_rows *rows, const struct entry *entry)
{
    for (const struct entry *other = rows->entries; other < entry; other++) {
        size_t leaf = 0, count = other->kind == ENTRY_GEAR && other->item == entry->item
                                     ? entry->leaves->count
                                     : 0;
        while (leaf < count && (leaf_has_own_column(&entry->leaves->rows[leaf]) ||
                                text_equal(leaf_wanted(other, leaf), leaf_wanted(entry, leaf))))
            leaf++;
        if (count > 0 && leaf == count)
            return other;
    }
    return NULL;
}

static void piece_new(const struct table_row *row)
{
    enum item_key item = row_item(row);
    if (row->out)
        ROW_ERROR(row, TABLE_OUT, "take the row out", "a new piece cannot be taken out");
    if (item == ITEM_NONE)
        return;
    enum item_class class = item_kind_of(item)->class;
    const char *tag = boat_free_tag_after(row->boat->boat->boat, class,
                                          new_before(row->boat, class), row->taking->arena);
    if (tag == NULL) {
        ROW_ERROR(row, TABLE_TAG, "take out of retired_tags what was never on her",
                  "she has no tag %c left", (char)class);
        return;
    }
    struct entry *entry = entry_add(
        row->boat, &(struct entry){.kind = ENTRY_GEAR, .name = tag, .item = item,
                                   .leaves = &row->taking->leaves->gear, .row = row->row,
                                   .row_column = row->taking->columns[TABLE_TAG],
                                   .fate = ENTRY_NEW},
        row->taking->arena);
    gear_cells_ask(row, entry);
    const struct entry *there = same_piece(row->boat, entry);
    if (there != NULL)
        ROW_ERROR(row, TABLE_TAG, "if it is that one, take the row out: it was taken before; of "
                  "several alike in one\nplace write how many into count",
                  "%s is such a %s, in the same place", there->name, item_word(item));
}

static struct entry *piece_find(const struct boat_rows *rows, const char *tag)
{
    for (size_t i = 0; i < rows->count; i++)
        if (rows->entries[i].kind == ENTRY_GEAR && rows->entries[i].fate != ENTRY_NEW &&
            text_equal(rows->entries[i].name, tag))
            return &rows->entries[i];
    return NULL;
}

/* Was it taken out before? */
static bool is_gone(const struct boat *boat, const char *tag)
{
    for (size_t i = 0; i < boat->retired_tags.count; i++)
        if (text_equal(boat->retired_tags.items[i].text, tag))
            return true;
    for (size_t i = 0; i < boat->likeness.tags.count; i++)
        if (text_equal(boat->likeness.tags.items[i].text, tag))
            return true;
    return false;
}

static void piece_take(const struct table_row *row)
{
    struct entry *entry = piece_find(row->boat, row->tag);
    if (entry == NULL && row->out && is_gone(row->boat->boat->boat, row->tag))
        return;
    if (entry == NULL && is_gone(row->boat->boat->boat, row->tag) &&
        row_passes(row, "", gear_row_mark(row)))
        return;
    if (entry == NULL) {
        ROW_ERROR(row, TABLE_TAG, "correct it; a new piece has new in this column, and gets the "
                  "next free tag",
                  "no piece of %s has the tag \"%s\"", row->boat->boat->key, row->tag);
        return;
    }
    if (entry->row != NULL) {
        ROW_ERROR(row, TABLE_TAG, "keep one of the two rows; a new piece has new in this column",
                  "row %zu has the tag %s of %s too", entry->row->number, row->tag,
                  row->boat->boat->key);
        return;
    }
    entry->row = row->row;
    entry->row_column = row->taking->columns[TABLE_TAG];
    if (!text_equal(row->item, item_word(entry->item))) {
        ROW_ERROR(row, TABLE_ITEM, "a piece of another kind is a new one: write yes into out here, "
                  "and add a row\nwith new in the column tag",
                  "%s is %s, and here \"%s\"", row->tag, item_word(entry->item), row->item);
        return;
    }
    if (row_passes(row, gear_mark(entry->leaves, entry->cells, row->taking->arena),
                   gear_row_mark(row)))
        return;
    if (row->out)
        entry->fate = ENTRY_OUT;
    else
        gear_cells_ask(row, entry);
}

static void gear_row_take(const struct table_row *row)
{
    if (row->value[0] != '\0')
        ROW_ERROR(row, TABLE_VALUE, "empty the cell, or the one of the tag",
                  "a piece of gear has its values in the columns behind");
    else if (choice_find(table_mark_words, row->tag) == MARK_NEW)
        piece_new(row);
    else
        piece_take(row);
}

/* ---- rows of what she has not ---- */

/* In whichever of the lists it stands. */
static struct absence_row *absence_find(const struct boat_rows *rows, enum item_key item,
                                        const char *serves)
{
    for (size_t i = 0; i < rows->absence_count; i++)
        if (rows->absences[i].item == item && text_equal(rows->absences[i].serves, serves))
            return &rows->absences[i];
    return NULL;
}

static void absence_new(const struct table_row *row, struct absence_row absence)
{
    struct boat_rows *rows = row->boat;
    if (row->out)               /* it is out already */
        return;
    rows->absences = arena_grow(row->taking->arena, rows->absences, rows->absence_count,
                                &rows->absence_room, sizeof *rows->absences);
    rows->absences[rows->absence_count++] = absence;
}

/* It is among them already: it stays, goes, or moves to the other list. */
static void absence_held(const struct table_row *row, struct absence_row *found,
                         struct absence_row asked)
{
    if (found->row != NULL) {
        ROW_ERROR(row, TABLE_ITEM, "keep one of the two rows", "row %zu says it too",
                  found->row->number);
        return;
    }
    found->row = row->row;
    if (row->out && !found->own)
        ROW_ERROR(row, TABLE_OUT, "record the piece that she has, in a row with new as its tag",
                  "that she has none, her model says");
    else if (row->out)
        found->fate = ABSENCE_OUT;
    else if (found->list != asked.list) {
        if (found->own)
            found->fate = ABSENCE_OUT;
        absence_new(row, asked);
    }
}

static const char *absence_mark(const struct table_row *row, const struct absence_row *found)
{
    return found == NULL ? ""
                         : value_mark(choice_word(table_absence_words, found->list),
                                      found->serves, row->taking->arena);
}

static void absence_take(const struct table_row *row, enum table_absence list)
{
    const struct leaves *gear = &row->taking->leaves->gear;
    size_t leaf = leaf_find(gear, gear_field_word(GEAR_serves));
    const char *serves = cell_canonical(
        leaf_field(&gear->rows[leaf]),
        cell_plain(row_cell(row, row->taking->leaf_columns[leaf]), row->taking->arena),
        row->taking->arena);
    enum item_key item = row_item(row);
    leaf_cells_refuse(row, leaf);
    if (item == ITEM_NONE)
        return;
    struct absence_row asked = {.list = list, .item = item, .serves = serves, .row = row->row,
                                .fate = ABSENCE_NEW};
    struct absence_row *found = absence_find(row->boat, item, serves);
    if (row_passes(row, absence_mark(row, found),
                   value_mark(row->value, serves, row->taking->arena)))
        return;
    if (found == NULL)
        absence_new(row, asked);
    else
        absence_held(row, found, asked);
}

static void untagged_take(const struct table_row *row)
{
    const char *dot = strchr(row->item, '.');
    unsigned list = choice_find(table_absence_words, row->value);
    if (dot != NULL)
        fact_row_take(row, dot);
    else if (list > 0)
        absence_take(row, list);
    else if (row->value[0] != '\0')
        ROW_ERROR(row, TABLE_VALUE, "write not_fitted or not_surveyed, or new as the tag of a "
                  "piece that she has",
                  "\"%s\" is neither not_fitted nor not_surveyed", row->value);
    else
        ROW_ERROR(row, TABLE_TAG, "write its tag; of a new piece write new, of gear that she has "
                  "not, not_fitted\ninto the column value",
                  "the row has no tag");
}

/* ---- all rows ---- */

static bool is_other_boat(const struct taking *taking, const char *key)
{
    for (size_t i = 0; taking->boats->others[i] != NULL; i++)
        if (text_equal(taking->boats->others[i], key))
            return true;
    return false;
}

static const char *boats_remedy(const struct taking *taking, const char *key)
{
    size_t count = taking->boats->count;
    const char **keys = arena_array(taking->arena, count, sizeof *keys);
    struct text_builder all = text_builder_in(taking->arena);
    for (size_t i = 0; i < count; i++) {
        keys[i] = taking->boats->rows[i].key;
        text_add_format(&all, "%s%s", i == 0 ? "boats of this base: " : ", ", keys[i]);
    }
    return text_nearest_remedy(taking->arena, key, keys, count, all.at);
}

static struct boat_rows *row_boat(const struct table_row *row)
{
    const char *key = own_cell(row, TABLE_BOAT);
    for (size_t i = 0; i < row->taking->boats->count; i++)
        if (text_equal(row->taking->rows[i].boat->key, key))
            return &row->taking->rows[i];
    if (is_other_boat(row->taking, key))
        ROW_ERROR(row, TABLE_BOAT, "mend the boat's file first, or take her rows out",
                  "the file of %s cannot be used", key);
    else
        ROW_ERROR(row, TABLE_BOAT, boats_remedy(row->taking, key), "there is no boat \"%s\"",
                  key);
    return NULL;
}

static bool row_is_out(const struct table_row *row)
{
    static const struct field field = {.key = "out", .kind = FIELD_ANSWER};
    struct cell_said said = cell_said(
        &field, "", row_cell(row, row->taking->columns[TABLE_OUT]), row->taking->arena);
    unsigned answer = choice_find(taken_out_words, said.text);
    if (said.text[0] != '\0' && answer == OUT_UNSAID)
        ROW_ERROR(row, TABLE_OUT, "write yes where the piece is gone for good, else nothing",
                  "\"%s\" is neither yes nor no", said.text);
    return answer == OUT_YES;
}

void rows_take(struct taking *taking)
{
    for (size_t i = 0; i < taking->table->count; i++) {
        struct table_row row = {.taking = taking, .row = &taking->table->rows[i]};
        row.boat = row_boat(&row);
        if (row.boat == NULL)
            continue;
        row.tag = own_cell(&row, TABLE_TAG);
        row.item = own_cell(&row, TABLE_ITEM);
        row.value = own_cell(&row, TABLE_VALUE);
        row.out = row_is_out(&row);
        (row.tag[0] != '\0' ? gear_row_take : untagged_take)(&row);
    }
}
