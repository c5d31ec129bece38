/* command_print.c - the files that are printed: one PDF a boat and language; or one a card,
 * with all its pages (room: app). Boats are printed by several processes; their files get their
 * names here, boat after boat. */
#include "layout.h"
#include "many.h"
#include "number.h"
#include "print_commit.h"
#include "print_inputs.h"
#include "print_older.h"
#include "print_stream.h"
#include "print_stickers.h"
#include "stop.h"


/* ---- how many at once ---- */

#define PROCESSES_MOST 64

/* False, with a problem, where -j is no such number. Without -j: as many as the machine has. */
static bool processes_read(const struct options *options, struct fleet *fleet, unsigned *out)
{
    int64_t milli = 0;
    *out = many_processors();
    if (options->processes == NULL)
        return true;
    if (number_parse_milli(options->processes, &milli) && milli % 1000 == 0 && milli >= 1000 &&
        milli <= (int64_t)PROCESSES_MOST * 1000) {
        *out = (unsigned)(milli / 1000);
        return true;
    }
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                text_format(fleet->arena, "write a number from 1 to %d, or leave it out: then each "
                            "processor of the machine works", PROCESSES_MOST),
                "--jobs does not take \"%s\"", options->processes);
    return false;
}

/* ---- the end of the run ---- */

static enum exit_status status_of_commit(const struct print_commit *commit)
{
    if (commit->failed)
        return EXIT_SYSTEM;
    if (commit->used_wrongly)
        return EXIT_USE;
    return commit->held ? EXIT_FOUND : EXIT_GOOD;
}

static void left_for_check_tell(const struct print_commit *commit)
{
    const struct fleet *fleet = commit->run->fleet;
    deficiencies_tell("base.yaml", deficiencies_for_check(fleet->base_problems));
    for (size_t i = 0; i < commit->begun; i++)
        deficiencies_tell(fleet->boats[i].key, commit->deficiencies[i]);
}

/* ---- the run ---- */

struct print_work {
    const struct print_run *run;
    struct print_commit *commit;
};

static void boat_work(void *of, size_t index, struct text_builder *out)
{
    const struct print_work *work = of;
    boat_print(work->run, index, out);
}

static bool made_boat_take(void *of, size_t index, struct many_result *result)
{
    const struct print_work *work = of;
    return print_commit_take(work->commit, index, result);
}

/* Later problems go to `late`: those of before were told. */
static enum exit_status boats_print(const struct print_run *run, struct printed_file *list,
                                    unsigned processes, struct problems *late)
{
    static const struct many_use use = {boat_work, made_boat_take};
    const struct fleet *fleet = run->fleet;
    const struct options *options = run->options;
    struct print_commit commit = print_commit_begin(run, list);
    struct print_work work = {run, &commit};
    if (!options->quiet)
        commit.progress = progress_begin(fleet->boat_count);
    stop_await();
    many_run(&use, &work, fleet->boat_count, processes);
    print_commit_end(&commit);
    if (list != NULL) {
        printed_end(list, late);
        older_tell(fleet, options->output, &commit.written, late);
    }
    if (!options->quiet)
        left_for_check_tell(&commit);
    return status_of_commit(&commit);
}

/* ---- the folder ---- */

/* The folder that is printed into. */
struct print_folder {
    bool claimed, listed;
    int hold;
    struct printed_file list;      /* where it is listed */
};

static bool is_written(const struct options *options)
{
    return !options->dump && !options->list;
}

/* Claims the folder for this run and opens its list. False, with a problem, where it cannot be
 * printed into. */
static bool folder_begin(const struct options *options, const struct fleet *fleet,
                         struct print_folder *folder)
{
    folder->hold = -1;
    if (options->list)
        return true;
    if (!folder_ready(options->output, fleet->arena, fleet->problems) ||
        !folder_claim(options->output, fleet->arena, fleet->problems, &folder->hold))
        return false;
    folder->claimed = true;
    folder->listed = is_written(options) && printed_begin(options->output, fleet->arena,
                                                          fleet->problems, &folder->list);
    return folder->listed || !is_written(options);
}

static void folder_end(const struct options *options, const struct fleet *fleet,
                       const struct print_folder *folder)
{
    if (!folder->claimed)
        return;
    folder_claimed_sweep(options->output, folder->hold, fleet->arena);
    folder_release(folder->hold);
}

static struct print_run run_of(const struct options *options, const struct fleet *fleet,
                               const struct job *job, const struct print_folder *folder)
{
    struct print_run run = {
        .options = options, .fleet = fleet, .job = job,
        .drafts = print_drafts_new(options->output, fleet->arena),
        .registered = is_plain_file(register_path(options, fleet->arena))};
    if (folder->listed) {
        run.listed = printed_by_boat(folder->list.list, fleet->arena);
        run_name(&run);
    }
    return run;
}

/* All of the run but stickers. What was wrong when it began is told before any boat is printed. */
static enum exit_status base_cards_print(const struct options *options, struct fleet *fleet)
{
    struct print_folder folder = {0};
    struct job job = job_of(options, fleet);
    job.asked_only = options->cards.count > 0;
    unsigned processes;
    bool begun = processes_read(options, fleet, &processes) &&
                 folder_begin(options, fleet, &folder);
    struct print_run run = run_of(options, fleet, &job, &folder);
    enum exit_status status = begun ? report_of_run_and_base(fleet) : report_of_cards(fleet);
    struct problems *late = problems_new(fleet->arena);
    if (begun)
        status = status_worst(status, boats_print(&run, folder.listed ? &folder.list : NULL,
                                                  processes, late));
    folder_end(options, fleet, &folder);
    return status_worst(status, report_late(fleet, late));
}

enum exit_status command_print(const struct options *options)
{
    struct fleet fleet;
    enum exit_status status;
    bool stream = print_is_stream(options);
    unsigned later = options->stickers || stream ? 0 : NEED_BOATS_LATER;
    bool begun = fleet_open(options, NEED_TEXTS | NEED_FACES | later, &fleet);
    if (begun && stream) {
        status = print_stream(options, &fleet);
    } else if (begun && !options->stickers) {
        status = base_cards_print(options, &fleet);
    } else {
        if (begun && folder_ready(options->output, fleet.arena, fleet.problems))
            stickers_print(options, &fleet);
        status = report_of_cards(&fleet);
        if (begun && !options->quiet)
            report_left_for_check(&fleet);
    }
    fleet_close(&fleet);
    return status;
}
