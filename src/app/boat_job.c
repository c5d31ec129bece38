/* boat_job.c - one boat from her file to a record that is judged (room: app). All she has
 * lives in her own arena, and all that is wrong with her is told in her own list. */
#include "job.h"

#include "promise.h"

#define BOAT_ARENA_LIMIT ((size_t)1024 * 1024 * 1024)

struct boat_job boat_begin(const struct job *job, size_t index)
{
    promise(index < job->fleet->boat_count);
    struct arena *arena = arena_new(BOAT_ARENA_LIMIT);
    return (struct boat_job){.job = job, .index = index, .key = job->fleet->boats[index].key,
                             .arena = arena, .problems = problems_new(arena)};
}

/* One that could not be read was told when the fleet was opened. */
const struct source *boat_source(const struct boat_job *boat)
{
    const struct boat_asked *asked = &boat->job->fleet->boats[boat->index];
    if (boat->source != NULL)
        return boat->source;
    if (asked->source != NULL || asked->path == NULL)
        return asked->source;
    struct file_absent absent = {SEVERITY_ERROR, "put the boat's file there"};
    const struct source *source = file_read(asked->path, absent, boat->arena, boat->problems);
    if (source == NULL || source_hash(source) == asked->hash)
        return source;
    problem_add(boat->problems, SEVERITY_ERROR, source_whole(source), "do it again",
                "the file was changed while this run was at work");
    return NULL;
}

void boat_open(struct boat_job *boat)
{
    const struct fleet *fleet = boat->job->fleet;
    problems_about(boat->problems, boat->key, "record");
    boat->source = boat_source(boat);
    struct boat_input input = {boat->source, boat->key, &fleet->models};
    problems_know(boat->problems, &boat->job->fleet->known);
    if (input.source != NULL)
        boat->boat = boat_read_by(&input, boat->job->walk, boat->arena, boat->problems,
                                  &boat->sound);
    boat->sound = boat->boat != NULL && boat->sound;
    if (boat->boat != NULL && fleet->procedures_sound)
        boat->sound = boat_cards_check(boat->boat, fleet->base, &fleet->procedures, boat->arena,
                                       boat->problems) && boat->sound;
    if (boat->boat != NULL && boat->boat->likeness.model != NULL)
        fleet->boats[boat->index].model =
            text_format(fleet->arena, "%s", boat->boat->likeness.model);
}

/* Identities come after the rules, which are silent where an error was told already. */
void boat_judge(struct boat_job *boat)
{
    const struct fleet *fleet = boat->job->fleet;
    problems_about(boat->problems, boat->key, "record");
    if (boat->boat != NULL) {
        struct rules_input input = rules_input_of(boat->job->options, fleet, boat->boat);
        input.today_behind = fleet->today_behind;
        boat->sound = rules_check(&input, boat->arena, boat->problems) && boat->sound;
        lost_gear_tell(boat);
    }
    boat->sound = identities_own(fleet->identities, boat->key, boat->source, boat->problems) &&
                  boat->sound;
    boat->sound = boat->sound && fleet->ready;
    problems_about(boat->problems, boat->key, "run");
}

void boat_close(struct boat_job *boat)
{
    problems_join(boat->job->fleet->boats[boat->index].problems, boat->problems);
    arena_free(boat->arena);
    *boat = (struct boat_job){.job = boat->job, .index = boat->index, .key = boat->key};
}
