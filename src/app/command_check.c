/* command_check.c - everything but printing (room: app). */
#include "check_rest.h"
#include "check_rows.h"
#include "findings.h"
#include "layout.h"
#include "reasons.h"
#include "told.h"

/* What keeps figures off her cards, what her safety plan cannot show, and what is on neither. */
static void notes_tell(const struct sheets *sheets, struct check_row *row)
{
    struct boat_job *boat = sheets->boat;
    problems_about(boat->problems, boat->key, "cards");
    safety_plan_notes(boat->boat, boat->problems);
    figure_notes(&sheets->input, sheets->set, boat->arena, boat->problems);
    room_notes(&sheets->laid, boat->arena, boat->problems);
    check_row_unprinted(row, sheets);
    problems_about(boat->problems, boat->key, "run");
}

/* ---- the run ---- */

/* What is left of each boat when her arena is gone. */
struct check_run {
    const struct options *options;
    struct check_row *rows;
    size_t count;
    struct rest_row *rest;         /* what else to record, a row a boat that is composed */
    size_t rest_count;
    struct text_builder figures;   /* for the base, if asked for */
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
        notes_tell(sheets, &check->rows[sheets->boat->index]);
        check->rest[check->rest_count++] = rest_row_of(sheets);
        if (check->options->figures)
            figures_for_base(&sheets->input, &check->figures);
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
    run->rest = arena_array(fleet->arena, job.kind_count * fleet->boat_count, sizeof *run->rest);
    job_run(&job, &use, run);
    if (run->audit.length > 0)
        proof_people_print(&run->audit);
}

/* Of one boat alone each finding is told in full. */
static enum finding_grouping grouping_of(const struct fleet *fleet)
{
    return fleet->boat_count > 1 ? FINDINGS_ALIKE : FINDINGS_ALONE;
}

/* What is to be mended first, then what else to record, and the table where the eye ends. */
static void text_tell(const struct check_run *run, const struct fleet *fleet)
{
    struct text_builder out = text_builder_in(fleet->arena);
    struct finding_groups groups = finding_groups_of(fleet_problems(fleet), grouping_of(fleet),
                                                     fleet->arena);
    findings_print(fleet, &groups, &out);
    rest_rows_print(fleet, run->rest, run->rest_count, &out);
    text_add_bytes(&out, run->figures.at, run->figures.length);
    text_add_bytes(&out, run->audit.at, run->audit.length);
    if (run->count > 0)
        check_rows_print(fleet, run->rows, run->count, &out);
    told_print(&out);
}

static enum exit_status base_check(const struct options *options, struct fleet *fleet)
{
    enum severity least = options->fail_from != FAIL_FROM_ERROR ? SEVERITY_DEFICIENCY
                                                                     : SEVERITY_HELD;
    struct check_run run = {.options = options};
    bool open = fleet_open(options, NEED_TEXTS | NEED_FACES, fleet);
    run.figures = text_builder_in(fleet->arena);
    run.audit = text_builder_in(fleet->arena);
    if (open && options->differs)
        boats_differ_print(options, fleet);
    if (options->differs)
        return report(fleet, SEVERITY_HELD);
    if (!open && status_of(fleet_problems(fleet), least) == EXIT_USE)
        return report(fleet, least);
    if (open)
        boats_check(&run, fleet);
    report_refusals(fleet);
    if (options->json)
        check_json_print(options, fleet, run.rows, run.count);
    else
        text_tell(&run, fleet);
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
