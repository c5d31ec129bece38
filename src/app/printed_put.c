/* printed_put.c - PDFs into a folder, each with its row in the list there (room: app). The row is
 * safe before the file has its name. */
#include "printed_put.h"

#include <errno.h>
#include <string.h>

bool printed_run_begin(const char *folder, struct arena *arena, struct problems *problems,
                       struct printed_run *out)
{
    *out = (struct printed_run){.hold = -1};
    if (!unforetold_make(out->id)) {
        problem_add(problems, SEVERITY_FAILURE, NO_PLACE, "look at the system's random device",
                    "the system gives no name for the run: %s", strerror(errno));
        return false;
    }
    if (!folder_claim(folder, arena, problems, &out->hold))
        return false;
    if (printed_begin(folder, arena, problems, &out->list))
        return true;
    folder_release(out->hold);
    return false;
}

const char *record_sum(const struct boat_job *boat)
{
    char sum[SHA256_TEXT];
    if (boat->source == NULL)
        return NULL;
    source_sum(boat->source, sum);
    return arena_copy(boat->arena, sum, strlen(sum));
}

struct printed_row printed_row_of(const struct printed_run *run, const struct sheets *sheets,
                                  const char *name)
{
    const struct boat_job *boat = sheets->boat;
    return (struct printed_row){
        .file = name, .boat = boat->key, .language = words_language(sheets->input.words),
        .paper = boat->job->papers[sheets->part.paper].key, .record = record_sum(boat),
        .version = MAYDECK_VERSION, .date = boat->job->options->today, .run = run->id,
        .complete = true,
        .deficiencies = problems_count(boat->problems, SEVERITY_DEFICIENCY)};
}

bool printed_put(struct printed_run *run, struct printed_row row, struct bytes bytes,
                 struct arena *arena, struct problems *problems)
{
    const char *folder = run->list.folder;
    struct file_draft draft;
    size_t committed = 0;
    if (!file_draft_write(folder, row.file, bytes, arena, problems, &draft))
        return false;
    row.sum = draft.sum;
    row.bytes = draft.bytes;
    if (!printed_note(&run->list, &row, 1, problems)) {
        file_drafts_drop(folder, &draft, 1, arena);
        return false;
    }
    bool good = file_drafts_commit(folder, &draft, 1, arena, problems, &committed);
    if (committed == 1)
        printed_place(&run->list, row.file);
    return good;
}

void printed_run_end(struct printed_run *run, struct problems *problems)
{
    printed_end(&run->list, problems);
    folder_release(run->hold);
}
