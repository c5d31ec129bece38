/* print_lost.c - what the last prints of a boat had and her record has no more (room: app). The
 * register is read once a run, before any boat is looked at, and never written here. */
#include "register_file.h"

/* ---- the rows of each boat ---- */

void prints_take(const struct options *options, struct fleet *fleet)
{
    const char *path = register_path(options, fleet->arena);
    struct source *source = NULL;
    if (!is_plain_file(path))
        return;
    if (source_read(fleet->arena, path, APPEND_LIMIT, &source) != SOURCE_READ) {
        problem_add_check(fleet->problems, "lost_since_print", SEVERITY_DEFICIENCY, NO_PLACE,
                          "look at the file, its owner and its rights",
                          "%s cannot be read: what the last prints had is not known", path);
        return;
    }
    struct register_rows all = register_read(source, fleet->arena, problems_new(fleet->arena));
    struct register_rows by_boat = rows_by_boat(&all, fleet->arena);
    struct register_rows *own = arena_array(fleet->arena, fleet->boat_count, sizeof *own);
    for (size_t i = 0; i < fleet->boat_count; i++) {
        own[i] = rows_of_boat(&by_boat, fleet->boats[i].key);
        fleet->boats[i].prints = &own[i];
    }
}

/* ---- what is lost ---- */

static void piece_tell(struct boat_job *boat, const struct register_loss *loss)
{
    bool placed = loss->where != NULL;
    problem_add_check(boat->problems, "lost_since_print", SEVERITY_DEFICIENCY,
                      boat->boat->place,
                      text_format(boat->arena,
                                  "what she still has: write it again with its tag; what is gone: "
                                  "add to retired_tags: %s", loss->tag),
                      "%s %s%s%s%s is in the record no longer; the print of %s had it",
                      loss->was == NULL ? "gear" : loss->was, loss->tag, placed ? " (" : "",
                      placed ? loss->where : "", placed ? ")" : "",
                      date_text(boat->arena, loss->printed));
}

void lost_gear_tell(struct boat_job *boat)
{
    const struct fleet *fleet = boat->job->fleet;
    const struct register_rows *prints = fleet->boats[boat->index].prints;
    if (prints == NULL || prints->count == 0)
        return;
    struct register_losses losses = register_losses(prints, boat->boat, &fleet->languages,
                                                    boat->arena);
    for (size_t i = 0; i < losses.count; i++)
        piece_tell(boat, &losses.at[i]);
}

/* Where a card would be printed otherwise than it was. */
static void sheet_losses_tell(const struct sheets *sheets, const struct register_rows *prints,
                              const struct sheet *sheet)
{
    struct boat_job *boat = sheets->boat;
    const struct register_row now = row_of_sheet(&sheets->input, sheet, boat->arena);
    const struct register_row *last = print_last(prints, &now, NULL);
    const char *packed = last == NULL || text_equal(last->code, now.code)
                             ? NULL : content_of(prints, last);
    const char *old = packed == NULL ? NULL : content_unpack(packed, boat->arena);
    struct register_changes changes = {0};
    if (old != NULL)
        changes = register_changes(old, register_content(&sheets->input, sheet, boat->arena),
                                   boat->arena);
    for (size_t i = 0; i < changes.lost_count; i++)
        problem_add_check(boat->problems, "lost_since_print", SEVERITY_NOTE, boat->boat->place,
                          "if it is so still, write it again; if not, print her cards anew",
                          "since the print of %s: %s", date_text(boat->arena, last->date),
                          changes.lost[i]);
}

void lost_facts_tell(const struct sheets *sheets)
{
    const struct boat_asked *boat = &sheets->boat->job->fleet->boats[sheets->boat->index];
    if (boat->prints == NULL || sheets->input.draft)
        return;
    for (size_t i = 0; i < sheets->set->count; i++)
        if (!sheets->set->sheets[i]->held && sheet_is_registered(sheets->set->sheets[i]))
            sheet_losses_tell(sheets, boat->prints, sheets->set->sheets[i]);
}
