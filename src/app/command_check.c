/* command_check.c - everything but printing (room: app). */
#include "check_rows.h"
#include "layout.h"
#include "reasons.h"
#include "asked.h"

#include <stdio.h>

/* ---- what else to record ---- */

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

/* Those that neither the record nor a message mentions, in walking order. */
static struct asked_list rest_of(const struct sheets *sheets, const struct asked_list *asked)
{
    struct asked_item *rows = arena_array(sheets->boat->arena, asked->count, sizeof *rows);
    struct asked_list rest = {.rows = rows};
    for (size_t i = 0; i < asked->count; i++) {
        const struct item_kind *kind = asked->rows[i].kind;
        if (boat_fitted(sheets->boat->boat, kind->item) == ANSWER_NOT_RECORDED &&
            !told_as_unrecorded(sheets->set, kind))
            rows[rest.count++] = asked->rows[i];
    }
    return rest;
}

static void rest_add(const struct sheets *sheets, const struct asked_list *rest,
                     struct text_builder *out)
{
    const struct boat_job *boat = sheets->boat;
    const char *const *tags = starter_tags(rest, boat->boat, sheets->set->unrecorded,
                                           sheets->set->unrecorded_count, boat->arena);
    const struct zone *zone = NULL;
    text_add_format(out,
                    "%s: not recorded either, though no card waits for it just now: %zu.\n"
                    "Add to equipment what she has, and to not_fitted the names of what she "
                    "has not:\n", boat->key, rest->count);
    for (size_t i = 0; i < rest->count; i++) {
        const struct asked_item *row = &rest->rows[i];
        if (row->usual != zone)
            text_add_format(out, "  # on most boats: %s\n", row->usual->key);
        zone = row->usual;
        text_add_format(out, "  %s  # %s\n", starter_entry(row, tags[i], boat->arena),
                        row->kind->record);
    }
    text_add(out, "\n");
}

static void rest_tell(const struct sheets *sheets, struct text_builder *out)
{
    struct asked_list asked = asked_of(sheets);
    struct asked_list rest = rest_of(sheets, &asked);
    if (rest.count > 0)
        rest_add(sheets, &rest, out);
}

/* What keeps figures off her cards, and what her safety plan cannot show, as notes; and the
 * figures that are for the base. */
static void notes_tell(const struct sheets *sheets, struct text_builder *out)
{
    struct boat_job *boat = sheets->boat;
    problems_about(boat->problems, boat->key, "cards");
    safety_plan_notes(boat->boat, boat->problems);
    figure_notes(&sheets->input, sheets->set, boat->arena, boat->problems);
    room_notes(&sheets->laid, boat->arena, boat->problems);
    figures_for_base(&sheets->input, out);
    problems_about(boat->problems, boat->key, "run");
}

/* ---- the run ---- */

/* What is left of each boat when her arena is gone. */
struct check_run {
    const struct options *options;
    struct check_row *rows;
    size_t count;
    struct text_builder rest;      /* for the base, and what else to record */
    struct text_builder audit;     /* of her pages, if asked for */
};

static void boat_begun(void *run, struct boat_job *boat)
{
    struct check_run *check = run;
    check->rows[check->count++] = check_row_of(boat);
}

static void sheets_check(void *run, struct sheets *sheets)
{
    struct check_run *check = run;
    if (sheets_are_first_of_kind(sheets)) {
        notes_tell(sheets, &check->rest);
        rest_tell(sheets, &check->rest);
    }
    check_row_sheets(&check->rows[sheets->boat->index], sheets);
    if (check->options->page)
        audit_add(sheets, &check->audit);
}

static void boat_checked(void *run, struct boat_job *boat)
{
    struct check_run *check = run;
    check_row_record(&check->rows[boat->index], boat);
}

static void boats_check(struct check_run *run, const struct fleet *fleet)
{
    static const struct job_use use = {.last = STEP_PROVE, .begin = boat_begun,
                                       .sheets = sheets_check, .end = boat_checked};
    struct job job = job_of(run->options, fleet);
    run->rows = arena_array(fleet->arena, fleet->boat_count, sizeof *run->rows);
    job_run(&job, &use, run);
    if (run->audit.length > 0)
        proof_people_print(&run->audit);
}

/* Problems first, then what else to record, and the table where the eye ends. */
static enum exit_status text_tell(const struct check_run *run, const struct fleet *fleet,
                                  enum severity least)
{
    enum exit_status status = report(fleet, least);
    fputs(run->rest.at == NULL ? "" : run->rest.at, stdout);
    fputs(run->audit.at == NULL ? "" : run->audit.at, stdout);
    if (run->count > 0)
        check_rows_print(run->rows, run->count);
    return status;
}

static enum exit_status base_check(const struct options *options, struct fleet *fleet)
{
    enum severity least = options->fail_from == FAIL_FROM_DEFICIENCY ? SEVERITY_DEFICIENCY
                                                                     : SEVERITY_HELD;
    struct check_run run = {.options = options};
    bool open = fleet_open(options, NEED_TEXTS | NEED_FACES, fleet);
    run.rest = text_builder_in(fleet->arena);
    run.audit = text_builder_in(fleet->arena);
    if (open)
        boats_check(&run, fleet);
    if (!options->json)
        return text_tell(&run, fleet, least);
    check_json_print(options, fleet, run.rows, run.count);
    return status_of(fleet_problems(fleet), least);
}

enum exit_status command_check(const struct options *options)
{
    struct fleet fleet;
    if (options->list || options->schema) {
        (options->list ? check_list_print : check_schema_print)();
        return EXIT_GOOD;
    }
    enum exit_status status = base_check(options, &fleet);
    fleet_close(&fleet);
    return status;
}
