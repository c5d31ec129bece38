/* print_commit.c - the files of a run get their names (room: app). Only here does a file of a print
 * appear: the list of the folder tells of it before, and its boat's lines are told after. */
#include "print_commit.h"
#include "stop.h"
#include "told.h"

#include <stdio.h>
#include <string.h>

#define WAITING_LIMIT ((size_t)1024 * 1024 * 1024)

/* Where memory runs out, it is told which boat is the first without a print. */
static void remaining_mark(const struct print_run *run, size_t begun)
{
    const struct fleet *fleet = run->fleet;
    arena_exhaustion_from(begun < fleet->boat_count ? fleet->boats[begun].key : NULL);
}

struct print_commit print_commit_begin(const struct print_run *run, struct printed_file *list)
{
    const struct fleet *fleet = run->fleet;
    remaining_mark(run, 0);
    return (struct print_commit){
        .run = run, .list = list, .arena = arena_new(WAITING_LIMIT),
        .registered = register_writing_begin(register_path(run->options, fleet->arena)),
        .deficiencies = arena_array(fleet->arena, fleet->boat_count, sizeof(size_t))};
}

/* ---- what is wrong ---- */

static void severity_take(struct print_commit *commit, enum severity severity)
{
    commit->failed = commit->failed || severity == SEVERITY_FAILURE;
    commit->used_wrongly = commit->used_wrongly || severity == SEVERITY_USE;
    commit->held = commit->held || severity >= SEVERITY_HELD;
}

static void made_message_tell(struct print_commit *commit, const struct print_message *message)
{
    struct names *told = &commit->told;
    severity_take(commit, message->severity);
    if (!message->told || (message->shared && names_hold(told, message->text)))
        return;
    if (message->shared)
        names_add(told, message->text, commit->run->fleet->arena);
    told_refusal(message->text);
}

/* What was found here, beside what the boats' own processes told. */
static void problems_tell(struct print_commit *commit, const struct problems *problems)
{
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    for (size_t i = 0; i < count; i++) {
        struct text_builder text = text_builder_in(commit->arena);
        problem_print(&list[i], &text);
        severity_take(commit, list[i].severity);
        told_refusal(text.at);
    }
}

/* ---- names ---- */

/* Two boats may have files of one name, as where a card and the set of such a boat are both
 * drafts. */
static void name_take(struct print_commit *commit, struct print_file *file,
                      struct problems *problems)
{
    const char *folder = commit->run->options->output;
    if (!names_hold(&commit->written, file->name)) {
        names_add(&commit->written, file->name, commit->run->fleet->arena);
        return;
    }
    problem_add(problems, SEVERITY_ERROR, NO_PLACE,
                "give one of the two boats' files another name",
                "%s was written by this run already and would be written over", file->name);
    file_drafts_drop(folder, &file->draft, 1, commit->arena);
    file->name = NULL;
}

/* ---- the list of the folder ---- */

static bool made_is_whole(const struct print_made *made)
{
    for (size_t i = 0; i < made->message_count; i++)
        if (made->messages[i].severity >= SEVERITY_HELD)
            return false;
    return true;
}

/* Files of hers that were written and have a name of their own. */
static size_t files_written(const struct print_made *made)
{
    size_t count = 0;
    for (size_t i = 0; i < made->event_count; i++)
        count += made->events[i].kind == PRINT_FILE && made->events[i].file.written ? 1 : 0;
    return count;
}

static struct printed_row row_of_file(const struct print_commit *commit,
                                      const struct print_waiting *boat,
                                      const struct print_file *file)
{
    return (struct printed_row){
        .file = file->name, .sum = file->draft.sum, .bytes = (size_t)file->draft.bytes,
        .boat = boat->key, .language = file->language, .paper = file->paper,
        .cards = file->cards, .of_cards = file->of_cards, .record = boat->made.record,
        .inputs = boat->made.inputs, .version = MAYDECK_VERSION,
        .date = commit->run->options->today, .run = commit->run->id,
        .complete = made_is_whole(&boat->made), .deficiencies = boat->made.deficiencies,
        .files = files_written(&boat->made)};
}

/* ---- placing ---- */

/* Files of the boats that wait, side by side. */
struct placing {
    struct file_draft *drafts;
    struct printed_row *rows;
    struct print_file **files;
    size_t count;
};

static void file_add(struct print_commit *commit, const struct print_waiting *boat,
                     struct print_file *file, struct placing *placing)
{
    placing->rows[placing->count] = row_of_file(commit, boat, file);
    placing->drafts[placing->count] = file->draft;
    placing->files[placing->count++] = file;
}

static struct placing placing_of(struct print_commit *commit, struct problems *problems)
{
    struct placing placing = {0};
    size_t most = 0;
    for (size_t i = 0; i < commit->waiting_count; i++)
        most += commit->waiting[i].made.event_count;
    placing.drafts = arena_array(commit->arena, most, sizeof *placing.drafts);
    placing.rows = arena_array(commit->arena, most, sizeof *placing.rows);
    placing.files = arena_array(commit->arena, most, sizeof *placing.files);
    for (size_t i = 0; i < commit->waiting_count; i++)
        for (size_t k = 0; k < commit->waiting[i].made.event_count; k++) {
            struct print_event *event = &commit->waiting[i].made.events[k];
            if (event->kind != PRINT_FILE)
                continue;
            name_take(commit, &event->file, problems);
            if (event->file.name != NULL && event->file.draft.state == DRAFT_WAITING)
                file_add(commit, &commit->waiting[i], &event->file, &placing);
        }
    return placing;
}

/* What the list cannot tell of gets no name. */
static void unlisted_drop(const struct print_commit *commit, struct placing *placing,
                          struct problems *problems)
{
    const char *folder = commit->run->options->output;
    for (size_t i = 0; i < placing->count; i++)
        problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                    "mend what the system refused, then do it again",
                    "%s/%s is not printed: the list " PRINTED_NAME " could not be written first",
                    folder, placing->files[i]->name);
    file_drafts_drop(folder, placing->drafts, placing->count, commit->arena);
}

static void all_place(struct print_commit *commit, struct problems *problems)
{
    const char *folder = commit->run->options->output;
    struct placing placing = placing_of(commit, problems);
    size_t committed;
    if (placing.count == 0)
        return;
    if (printed_note(commit->list, placing.rows, placing.count, problems))
        file_drafts_commit(folder, placing.drafts, placing.count, commit->arena, problems,
                           &committed);
    else
        unlisted_drop(commit, &placing, problems);
    for (size_t i = 0; i < placing.count; i++) {
        placing.files[i]->draft = placing.drafts[i];
        if (placing.drafts[i].state == DRAFT_PLACED)
            printed_place(commit->list, placing.files[i]->name);
        else
            placing.files[i]->name = NULL;
    }
}

/* ---- telling ---- */

/* A file without a name has none: it could not be placed. */
static void placed_tell(struct print_commit *commit, const struct print_waiting *boat,
                      const struct print_event *event, size_t *tally)
{
    if (event->file.name == NULL)
        return;
    *tally += text_empty(event->text) ? 1 : 0;    /* told with others */
    if (boat->made.stands)
        printed_place(commit->list, event->file.name);
    told_lines("%s", event->text);
    register_writing_add(&commit->registered, boat->key, event->file.rows);
}

static void boat_tell(struct print_commit *commit, const struct print_waiting *boat)
{
    size_t tally = 0;
    for (size_t i = 0; i < boat->made.event_count; i++) {
        const struct print_event *event = &boat->made.events[i];
        if (event->kind == PRINT_FILE)
            placed_tell(commit, boat, event, &tally);
        else if (event->kind == PRINT_TOLD)
            told_lines("%s", event->text);
        else if (tally > 0)
            told_lines("%s: %zu files, one a card\n", event->text, tally);
        tally = event->kind == PRINT_TALLY ? 0 : tally;
    }
    fflush(stdout);
    for (size_t i = 0; i < boat->made.message_count; i++)
        made_message_tell(commit, &boat->made.messages[i]);
}

static void waiting_commit(struct print_commit *commit)
{
    struct problems *problems = problems_new(commit->arena);
    all_place(commit, problems);
    print_drafts_forget(commit->run->drafts);
    progress_clear(&commit->progress);
    for (size_t i = 0; i < commit->waiting_count; i++)
        boat_tell(commit, &commit->waiting[i]);
    register_writing_flush_large(&commit->registered, problems);
    problems_tell(commit, problems);
    arena_free(commit->arena);
    commit->arena = arena_new(WAITING_LIMIT);
    commit->waiting_count = 0;
    remaining_mark(commit->run, commit->begun);
}

/* ---- the run ---- */

/* A boat whose process ended in the middle: what it wrote is swept with the folder. */
static void lost_take(struct print_commit *commit, struct print_waiting *boat, const char *how)
{
    struct problems *problems = problems_new(commit->arena);
    struct text_builder text = text_builder_in(commit->arena);
    size_t count;
    boat->made = (struct print_made){.arena = commit->arena};
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                text_format(commit->arena, "print her again: --boat %s; if it ends so again, look "
                            "at the memory of this machine, and tell who keeps the program",
                            boat->key),
                "%s: nothing of hers was printed: %s", boat->key, how);
    problem_print(problems_sorted(problems, &count), &text);
    print_message_add(&boat->made, &(struct print_message){.severity = SEVERITY_FAILURE,
                                                           .told = true, .text = text.at});
}

/* What another process wrote waits here now. */
static void drafts_take(struct print_commit *commit, const struct print_made *made)
{
    for (size_t i = 0; i < made->event_count; i++)
        if (made->events[i].kind == PRINT_FILE &&
            made->events[i].file.draft.state == DRAFT_WAITING)
            print_drafts_add(commit->run->drafts, &made->events[i].file.draft);
}

bool print_commit_take(void *of, size_t index, struct many_result *result)
{
    struct print_commit *commit = of;
    struct print_waiting *boat = &commit->waiting[commit->waiting_count++];
    boat->key = commit->run->fleet->boats[index].key;
    if (result->lost != NULL)
        lost_take(commit, boat, result->lost);
    else if (!print_made_unpack(&result->packet, commit->arena, &boat->made))
        lost_take(commit, boat, "what its process answered was cut short");
    else if (boat->made.process != commit->run->drafts->process)
        drafts_take(commit, &boat->made);
    commit->deficiencies[index] = boat->made.deficiencies;
    commit->begun = index + 1;
    if (index + 1 < commit->run->fleet->boat_count)
        progress_tell(&commit->progress, index, boat->key);
    if (commit->waiting_count == PRINT_WAITING_MOST)
        waiting_commit(commit);
    return run_stopped() == NULL;
}

/* The boats that a signal left without a print. */
static void stop_remains_tell(const struct print_commit *commit, struct problems *problems)
{
    const struct fleet *fleet = commit->run->fleet;
    struct names remaining = {0};
    for (size_t i = commit->begun; i < fleet->boat_count; i++)
        names_add(&remaining, fleet->boats[i].key, fleet->arena);
    stop_tell(commit->begun, &remaining, fleet->arena, problems);
}

void print_commit_end(struct print_commit *commit)
{
    struct problems *problems = problems_new(commit->run->fleet->arena);
    waiting_commit(commit);
    arena_exhaustion_from(NULL);
    register_writing_end(&commit->registered, problems);
    stop_remains_tell(commit, problems);
    problems_tell(commit, problems);
    arena_free(commit->arena);
    commit->arena = NULL;
}
