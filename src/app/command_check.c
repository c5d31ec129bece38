/* command_check.c - everything but printing (room: app). */
#include "app.h"
#include "reasons.h"
#include "asked.h"

#include <stdio.h>

/* ---- what else to record ---- */

static struct asked_list asked_of(const struct options *options, const struct fleet *fleet,
                                  const struct boat_work *work)
{
    const struct procedure **wanted = arena_array(fleet->arena, work->set->count,
                                                  sizeof *wanted);
    size_t count = 0;
    for (size_t i = 0; i < work->set->count; i++)
        if (card_wanted(options, work->set->cards[i]))
            wanted[count++] = work->set->cards[i]->procedure;
    return asked_items(wanted, count, work->boat->facts.type.text, fleet->arena);
}

static bool told(const struct card_set *set, const struct item_kind *kind)
{
    for (size_t i = 0; i < set->unrecorded_count; i++)
        if (text_equal(set->unrecorded[i], kind->key))
            return true;
    return false;
}

/* Those that neither the record nor a message mentions, in walking order. */
static struct asked_list rest_of(const struct fleet *fleet, const struct boat_work *work,
                                 const struct asked_list *asked)
{
    struct asked_item *rows = arena_array(fleet->arena, asked->count, sizeof *rows);
    struct asked_list rest = {.rows = rows};
    for (size_t i = 0; i < asked->count; i++) {
        const struct item_kind *kind = asked->rows[i].kind;
        if (boat_fitted(work->boat, kind->key) == ANSWER_NOT_RECORDED && !told(work->set, kind))
            rows[rest.count++] = asked->rows[i];
    }
    return rest;
}

static void rest_add(const struct fleet *fleet, const struct boat_work *work,
                     const struct asked_list *rest, struct text_builder *out)
{
    const char *const *tags = starter_tags(rest, work->boat, work->set->unrecorded,
                                           work->set->unrecorded_count, fleet->arena);
    const struct zone *zone = NULL;
    text_add_format(out,
                    "%s: not recorded either, though no card waits for it just now: %zu.\n"
                    "Add to equipment what she has, and to not_fitted the names of what she "
                    "has not:\n", work->key, rest->count);
    for (size_t i = 0; i < rest->count; i++) {
        const struct asked_item *row = &rest->rows[i];
        if (row->usual != zone)
            text_add_format(out, "  # on most boats: %s\n", row->usual->key);
        zone = row->usual;
        text_add_format(out, "  %s  # %s\n", starter_entry(row, tags[i], fleet->arena),
                        row->kind->record);
    }
    text_add(out, "\n");
}

static void rest_tell(const struct options *options, const struct fleet *fleet,
                      const struct boat_work *work, struct text_builder *out)
{
    if (work->set == NULL)
        return;
    struct asked_list asked = asked_of(options, fleet, work);
    struct asked_list rest = rest_of(fleet, work, &asked);
    if (rest.count > 0)
        rest_add(fleet, work, &rest, out);
}

/* What keeps figures off her cards, as notes; and the figures that are for the base. */
static void figures_tell(const struct options *options, const struct fleet *fleet,
                         const struct boat_work *work, struct text_builder *out)
{
    if (work->set == NULL || work->boat == NULL)
        return;
    struct compose_input input = compose_input_of(options, fleet, work->boat);
    figure_notes(&input, work->set, fleet->arena, fleet->problems);
    figures_for_base(&input, out);
}

/* ---- the run ---- */

/* What is left of each boat when her arena is gone. */
struct check_run {
    struct fleet *fleet;
    struct check_row *rows;
    struct text_builder rest;      /* for the base, and what else to record */
    struct text_builder audit;     /* of her pages, if asked for */
    size_t count;
};

static void boat_check(const struct options *options, struct check_run *run, size_t index)
{
    struct fleet one = fleet_for_boat(run->fleet);
    struct boat_work work = boat_work(options, &one, index);
    if (work.set != NULL) {
        problems_about(one.problems, work.key, "cards");
        safety_plan_notes(work.boat, one.problems);
        figures_tell(options, &one, &work, &run->rest);
        problems_about(one.problems, NULL, "run");
    }
    run->rows[index] = check_row_make(&one, &work, run->fleet->arena);
    rest_tell(options, &one, &work, &run->rest);
    if (options->page)
        audit_add(options, &work, &run->audit);
    arena_free(one.arena);
}

static void boats_check(const struct options *options, struct check_run *run)
{
    struct fleet *fleet = run->fleet;
    run->count = fleet->boat_count;
    run->rows = arena_array(fleet->arena, run->count, sizeof *run->rows);
    for (size_t i = 0; i < run->count; i++)
        boat_check(options, run, i);
    check_rows_count(run->rows, run->count, fleet->problems);
}

/* Problems first, then what else to record, and the table where the eye ends. */
static enum exit_status text_tell(const struct options *options, struct check_run *run)
{
    enum exit_status status = report(run->fleet, options->fail_from == FAIL_FROM_DEFICIENCY);
    if (status == EXIT_USE)
        return status;
    fputs(run->rest.at == NULL ? "" : run->rest.at, stdout);
    fputs(run->audit.at == NULL ? "" : run->audit.at, stdout);
    check_rows_print(run->rows, run->count);
    return status;
}

enum exit_status command_check(const struct options *options)
{
    struct fleet fleet;
    if (options->list || options->schema) {
        (options->list ? check_list_print : check_schema_print)();
        return EXIT_GOOD;
    }
    bool open = fleet_open(options, &fleet);
    struct check_run run = {.fleet = &fleet, .rest = text_builder_in(fleet.arena),
                            .audit = text_builder_in(fleet.arena)};
    if (open)
        boats_check(options, &run);
    if (run.audit.length > 0)
        proof_people_print(&run.audit);
    enum exit_status status = status_of(fleet.problems, options->fail_from == FAIL_FROM_DEFICIENCY);
    if (options->json)
        check_json_print(options, &fleet, run.rows, run.count);
    else
        status = text_tell(options, &run);
    fleet_close(&fleet);
    return status;
}
