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

/* A file that could not be read was told when the fleet was opened. */
void boat_open(struct boat_job *boat)
{
    const struct fleet *fleet = boat->job->fleet;
    struct boat_input input = {fleet->boats[boat->index].source, boat->key, &fleet->models};
    problems_about(boat->problems, boat->key, "record");
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
    boat->sound = identities_own(fleet->identities, boat->key, boat->problems) && boat->sound;
    boat->sound = boat->sound && fleet->ready;
    problems_about(boat->problems, boat->key, "run");
}

void boat_close(struct boat_job *boat)
{
    problems_join(boat->job->fleet->boats[boat->index].problems, boat->problems);
    arena_free(boat->arena);
    *boat = (struct boat_job){.job = boat->job, .index = boat->index, .key = boat->key};
}
