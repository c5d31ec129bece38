/* check_rest.c - what else to record of each boat (room: app). */
#include "check_rest.h"
#include "alike.h"
#include "asked.h"
#include "findings.h"

#include <string.h>

static struct asked_list asked_of(const struct sheets *sheets)
{
    const struct sheet_set *set = sheets->set;
    const struct boat_job *boat = sheets->boat;
    const struct procedure **wanted = arena_array(boat->arena, set->count, sizeof *wanted);
    size_t count = 0;
    for (size_t i = 0; i < set->count; i++)
        if (card_wanted(boat->job->options, set->sheets[i]))
            wanted[count++] = set->sheets[i]->procedure;
    return asked_items(wanted, count, boat->boat->facts.hull.value, boat->arena);
}

static bool told_as_unrecorded(const struct sheet_set *set, const struct item_kind *kind)
{
    for (size_t i = 0; i < set->unrecorded_count; i++)
        if (set->unrecorded[i] == kind->item)
            return true;
    return false;
}

/* Those that neither the record nor a message mentions, in walking order. What is not
 * surveyed is mentioned. */
static struct asked_list rest_of(const struct sheets *sheets, const struct asked_list *asked)
{
    struct asked_item *rows = arena_array(sheets->boat->arena, asked->count, sizeof *rows);
    struct asked_list rest = {.rows = rows};
    for (size_t i = 0; i < asked->count; i++) {
        const struct item_kind *kind = asked->rows[i].kind;
        if (boat_fitted(sheets->boat->boat, kind->item) == ANSWER_NOT_RECORDED &&
            !boat_unwalked(sheets->boat->boat, kind->item) &&
            boat_unsurveyed(sheets->boat->boat, kind->item, ZONE_NONE) == NULL &&
            !told_as_unrecorded(sheets->set, kind))
            rows[rest.count++] = asked->rows[i];
    }
    return rest;
}

/* What may be pasted, in walking order: the zone where most boats have it, the entry, and what
 * to look at. */
static const char *paste_lines_of(const struct sheets *sheets, const struct asked_list *rest)
{
    const struct boat_job *boat = sheets->boat;
    struct text_builder out = text_builder_in(boat->arena);
    const char *const *tags = starter_tags(rest, boat->boat, sheets->set->unrecorded,
                                           sheets->set->unrecorded_count, boat->arena);
    const struct zone *zone = NULL;
    for (size_t i = 0; i < rest->count; i++) {
        const struct asked_item *row = &rest->rows[i];
        if (row->usual != zone)
            text_add_format(&out, "  # on most boats: %s\n", row->usual->key);
        zone = row->usual;
        text_add_format(&out, "  %s  # %s\n", starter_entry(row, tags[i], boat->arena),
                        row->kind->record);
    }
    return arena_copy(boat->job->fleet->arena, out.at, out.length);
}

struct rest_row rest_row_of(const struct sheets *sheets)
{
    const struct boat_job *boat = sheets->boat;
    struct asked_list asked = asked_of(sheets);
    struct asked_list rest = rest_of(sheets, &asked);
    struct rest_row row = {.boat = boat->key};
    for (size_t i = 0; i < rest.count; i++)
        names_add(&row.items, rest.rows[i].kind->key, boat->job->fleet->arena);
    if (rest.count > 0)
        row.lines = paste_lines_of(sheets, &rest);
    return row;
}

/* ---- telling ---- */

static void paste_lines_print(const struct rest_row *row, struct text_builder *out)
{
    text_add_format(out, "%s: not recorded either, though no card waits for it just now: %zu.\n"
                    "Add to equipment what she has, and to not_fitted the names of what she "
                    "has not:\n%s\n", row->boat, row->items.count, row->lines);
}

/* All boats that lack the same items as that one, which is the first of them. */
static void items_print(const struct fleet *fleet, const struct rest_row *rows, size_t first,
                        const struct alike *alike, struct text_builder *out)
{
    struct names boats = {0};
    for (size_t i = first; i < alike->count; i = alike->next[i])
        names_add(&boats, rows[i].boat, fleet->arena);
    text_add_format(out, "%s: not recorded either, though no card waits for it just now "
                    "(--boat gives the lines to paste):\n", boats_words(fleet, &boats));
    struct line_fill fill = line_fill_begin(out, 2, "  ");
    for (size_t i = 0; i < rows[first].items.count; i++)
        line_fill_add(&fill, rows[first].items.at[i]);
    line_fill_end(&fill);
}

static const char *items_joined(const struct rest_row *row, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < row->items.count; i++)
        text_add_format(&out, "%s\n", row->items.at[i]);
    return out.at;
}

void rest_rows_print(const struct fleet *fleet, const struct rest_row *rows, size_t count,
                     struct text_builder *out)
{
    const char **items = arena_array(fleet->arena, count, sizeof *items);
    for (size_t i = 0; i < count; i++)
        items[i] = rows[i].items.count == 0 ? NULL : items_joined(&rows[i], fleet->arena);
    struct alike alike = alike_of(items, count, fleet->arena);
    for (size_t i = 0; i < count; i++) {
        if (items[i] == NULL || alike.first[i] != i)
            continue;
        if (fleet->boat_count == 1)
            paste_lines_print(&rows[i], out);
        else
            items_print(fleet, rows, i, &alike, out);
    }
}
