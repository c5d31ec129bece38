/* job.c - every kind of sheets, in every language, on every paper, for every boat (room:
 * app). What becomes of one boat or part stops no other. */
#include "job.h"
#include "stop.h"

#include "promise.h"

#define LENGTH_OF(list) (sizeof(list) / sizeof *(list))

static const struct set_kind set_kinds[] = {
    {WORD_DOCUMENT_CARDS, SET_OF_CARDS, compose_set},
};

enum paper_key base_paper(const struct fleet *fleet)
{
    const struct base_record *base = fleet->base;
    return base == NULL || base->paper.value == PAPER_NONE ? PAPER_A4 : base->paper.value;
}

/* The one that was asked for, else the base's; and how it is printed. */
static struct paper paper_choose(const struct options *options, const struct fleet *fleet)
{
    enum paper_key asked = (enum paper_key)options->paper;
    const struct finish finish = {options->mono ? PALETTE_MONO : PALETTE_COLOUR,
                                  (enum punch)options->punch, (enum pouch)options->pouch};
    return paper_finished(asked == PAPER_NONE ? base_paper(fleet) : asked, &finish);
}

struct job job_of(const struct options *options, const struct fleet *fleet)
{
    return (struct job){.options = options, .fleet = fleet,
                        .kinds = set_kinds, .kind_count = LENGTH_OF(set_kinds),
                        .languages = fleet->printed,
                        .papers = {paper_choose(options, fleet)}, .paper_count = 1};
}

struct job job_of_kind(const struct options *options, const struct fleet *fleet,
                       const struct set_kind *kind)
{
    struct job job = job_of(options, fleet);
    job.kinds = kind;
    job.kind_count = 1;
    return job;
}

size_t job_part_count(const struct job *job)
{
    return job->kind_count * job->languages.count * job->paper_count;
}

struct job_part job_part_at(const struct job *job, size_t index)
{
    promise(index < job_part_count(job));
    size_t of_kind = job->languages.count * job->paper_count;
    return (struct job_part){.kind = index / of_kind,
                             .language = index % of_kind / job->paper_count,
                             .paper = index % job->paper_count};
}

static void part_run(const struct job_use *use, void *run, struct boat_job *boat, size_t index)
{
    struct sheets sheets = sheets_compose(boat, job_part_at(boat->job, index));
    if (use->last >= STEP_LAY)
        sheets_lay(&sheets);
    sheets_tell(&sheets);
    if (use->last >= STEP_PROVE)
        sheets_prove(&sheets);
    if (use->sheets != NULL)
        use->sheets(run, &sheets);
}

static void boat_run(const struct job_use *use, void *run, struct boat_job *boat)
{
    boat_open(boat);
    if (use->last >= STEP_JUDGE)
        boat_judge(boat);
    if (use->last < STEP_COMPOSE || !boat->sound)
        return;
    for (size_t i = 0; i < job_part_count(boat->job); i++)
        part_run(use, run, boat, i);
}

void job_boat_run(const struct job_use *use, void *run, struct boat_job *boat)
{
    if (use->begin != NULL)
        use->begin(run, boat);
    boat_run(use, run, boat);
    if (use->end != NULL)
        use->end(run, boat);
}

size_t job_run(const struct job *job, const struct job_use *use, void *run)
{
    size_t done = 0;
    for (; done < job->fleet->boat_count && run_stopped() == NULL; done++) {
        arena_exhaustion_from(job->fleet->boats[done].key);
        struct boat_job boat = boat_begin(job, done);
        job_boat_run(use, run, &boat);
        boat_close(&boat);
    }
    arena_exhaustion_from(NULL);
    return done;
}
