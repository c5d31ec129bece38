/* printed_rows.c - rows of what was printed, in their order and by their files; writing them
 * (room: register). Adding and finding take the same time however many there are. */
#include "csv.h"
#include "printed.h"
#include "printed_room.h"

#include <string.h>

#include "utf8.h"

const char *const printed_column_words[] = {PRINTED_COLUMN_LIST(CHOICE_WORD) NULL};

enum { SLOTS_FIRST = 64 };

struct printed_list {
    struct arena *arena;
    struct printed_row **rows;
    size_t count, room;
    struct printed_row **slots;        /* the last row of each file, by the hash of its name */
    size_t slot_count;                 /* a power of two, and at most half of them are taken */
    size_t files;
};

struct printed_list *printed_list_new(struct arena *arena)
{
    struct printed_list *list = arena_alloc(arena, sizeof *list);

    list->arena = arena;
    list->slot_count = SLOTS_FIRST;
    list->slots = arena_array(arena, SLOTS_FIRST, sizeof *list->slots);
    return list;
}

/* ---- by file ---- */

/* Where its last row stands, or would. */
static size_t slot_of(struct printed_row *const *slots, size_t slot_count, const char *file)
{
    size_t slot = (size_t)bytes_hash(BYTES_HASH_START, file, strlen(file)) & (slot_count - 1);

    while (slots[slot] != NULL && !text_equal(slots[slot]->file, file))
        slot = (slot + 1) & (slot_count - 1);
    return slot;
}

static void slots_grow(struct printed_list *list)
{
    size_t slot_count = 2 * list->slot_count;
    struct printed_row **slots = arena_array(list->arena, slot_count, sizeof *slots);

    for (size_t i = 0; i < list->slot_count; i++)
        if (list->slots[i] != NULL)
            slots[slot_of(slots, slot_count, list->slots[i]->file)] = list->slots[i];
    list->slots = slots;
    list->slot_count = slot_count;
}

/* A copy of the text; that of the row before where both are the same, as they mostly are. */
static const char *text_kept(const char *text, const char *before, struct arena *arena)
{
    if (text == NULL || (before != NULL && text_equal(text, before)))
        return text == NULL ? NULL : before;
    return arena_copy(arena, text, strlen(text));
}

static struct printed_row *printed_copy(const struct printed_row *row,
                                        const struct printed_row *before, struct arena *arena)
{
    struct printed_row *copy = arena_alloc(arena, sizeof *copy);

    *copy = *row;
    copy->file = text_kept(row->file, NULL, arena);
    copy->sum = text_kept(row->sum, NULL, arena);
    copy->boat = text_kept(row->boat, before->boat, arena);
    copy->language = text_kept(row->language, before->language, arena);
    copy->paper = text_kept(row->paper, before->paper, arena);
    copy->record = text_kept(row->record, before->record, arena);
    copy->inputs = text_kept(row->inputs, before->inputs, arena);
    copy->version = text_kept(row->version, before->version, arena);
    copy->run = text_kept(row->run, before->run, arena);
    return copy;
}

void printed_add(struct printed_list *list, const struct printed_row *row)
{
    static const struct printed_row none;
    const struct printed_row *before = list->count == 0 ? &none : list->rows[list->count - 1];
    struct printed_row *copy = printed_copy(row, before, list->arena);

    if (2 * (list->files + 1) > list->slot_count)
        slots_grow(list);
    size_t slot = slot_of(list->slots, list->slot_count, copy->file);
    list->files += list->slots[slot] == NULL ? 1 : 0;
    copy->older = list->slots[slot];
    list->slots[slot] = copy;
    list->rows = arena_grow(list->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] = copy;
}

void printed_vouch(struct printed_list *list, const char *file)
{
    struct printed_row *row = list->slots[slot_of(list->slots, list->slot_count, file)];

    if (row != NULL)
        row->vouched = true;
}

const struct printed_row *printed_find(const struct printed_list *list, const char *file)
{
    return list->slots[slot_of(list->slots, list->slot_count, file)];
}

const struct printed_row *printed_at(const struct printed_list *list, size_t index)
{
    return index < list->count ? list->rows[index] : NULL;
}

/* ---- writing ---- */

void printed_head_add(struct text_builder *out)
{
    csv_row_add(out, CSV_DELIMITERS[0], printed_column_words, PRINTED_COLUMN_COUNT - 1);
}

/* Names of files are bytes. What no cell can hold is written %XX. */
static const char *name_written(const char *name, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    bool sound = utf8_first_invalid(name, strlen(name)) == strlen(name);

    text_add(&out, "");
    for (const char *at = name; *at != '\0'; at++) {
        unsigned char byte = (unsigned char)*at;
        if (byte < ' ' || byte == '%' || byte == 0x7F || (byte > 0x7F && !sound))
            text_add_format(&out, "%%%02X", byte);
        else
            text_add_bytes(&out, at, 1);
    }
    return out.at;
}

static const char *or_nothing(const char *text)
{
    return text_empty(text) ? PRINTED_NOTHING : text;
}

void printed_row_add(const struct printed_row *row, struct text_builder *out)
{
    struct arena *arena = out->arena;
    const char *cells[PRINTED_COLUMN_COUNT - 1] = {
        [PRINTED_FILE - 1] = name_written(row->file, arena), [PRINTED_SUM - 1] = row->sum,
        [PRINTED_BYTES - 1] = text_format(arena, "%zu", row->bytes),
        [PRINTED_BOAT - 1] = name_written(row->boat, arena),
        [PRINTED_LANGUAGE - 1] = row->language, [PRINTED_PAPER - 1] = row->paper,
        [PRINTED_CARDS - 1] = row->of_cards == 0 ? PRINTED_NOTHING
                                                 : text_format(arena, "%zu" PRINTED_OF "%zu",
                                                               row->cards, row->of_cards),
        [PRINTED_RECORD - 1] = or_nothing(row->record),
        [PRINTED_INPUTS - 1] = or_nothing(row->inputs), [PRINTED_VERSION - 1] = row->version,
        [PRINTED_DATE - 1] = date_text(arena, row->date), [PRINTED_RUN - 1] = row->run,
        [PRINTED_COMPLETE - 1] = row->complete ? PRINTED_YES : PRINTED_NO,
        [PRINTED_DEFICIENCIES - 1] = text_format(arena, "%zu", row->deficiencies),
        [PRINTED_FILES - 1] = text_format(arena, "%zu", row->files)};

    csv_row_add(out, CSV_DELIMITERS[0], cells, PRINTED_COLUMN_COUNT - 1);
}
