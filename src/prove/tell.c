/* tell.c - failures of the proof as errors of a boat, and the cards that are held for them
 * (room: prove). */
#include "prove_room.h"


static const char *failure_where(const struct hazard_failure *failure, struct arena *arena)
{
    const char *step = failure->local != NULL ? "the base's own line"
                       : failure->step == NULL
                           ? "its call"
                           : text_format(arena, "step %d (%s)", failure->step->number,
                                         failure->step->id);
    if (failure->gear == NULL)
        return step;
    return text_format(arena, "%s, %s %s", step,
                       failure->gear->tag.text == NULL ? "" : failure->gear->tag.text,
                       failure->gear->kind->key);
}

static const char *failure_hazard(const struct hazard_failure *failure)
{
    return failure->row == NULL || failure->row->hazard == HAZARD_ANY
               ? "" : hazard_words[failure->row->hazard - 1];
}

static void failure_tell(const struct hazard_failure *failure, struct arena *arena,
                         struct problems *problems)
{
    const char *hazard = failure_hazard(failure);
    problem_add_check(problems, "leads_into_hazard", SEVERITY_ERROR, failure->place,
                      failure->local != NULL
                          ? "leave that line out of lines: the card is not printed"
                      : failure->gear != NULL
                          ? "look at where that gear is recorded; if it is true, the procedure "
                            "lacks a case for such a boat: the card is not printed"
                          : "give the procedure a case for such a boat: the card is not printed",
                      "%s: %s: %s%s%s (%s)", failure->chain, failure_where(failure, arena),
                      hazard, text_empty(hazard) ? "" : ": ", failure->what, failure->rule);
}

static bool is_unsafe(const struct hazard_failures *failures, const struct sheet *sheet)
{
    for (size_t i = 0; i < failures->count; i++)
        if (failures->rows[i].from == sheet)
            return true;
    return false;
}

static const struct sheet_set *unsafe_held(const struct sheet_set *set,
                                           const struct hazard_failures *failures,
                                           struct arena *arena)
{
    const struct sheet **sheets = arena_array(arena, set->count, sizeof *sheets);
    struct sheet_set *judged = arena_alloc(arena, sizeof *judged);
    *judged = *set;
    judged->sheets = sheets;
    for (size_t i = 0; i < set->count; i++) {
        sheets[i] = set->sheets[i];
        if (!is_unsafe(failures, sheets[i]))
            continue;
        struct sheet *held = arena_alloc(arena, sizeof *held);
        *held = *sheets[i];
        held->held = held->unsafe = true;
        sheets[i] = held;
        judged->held++;
    }
    return judged;
}

const struct sheet_set *hazards_judge(const struct compose_input *input,
                                      const struct sheet_set *set, struct arena *arena,
                                      struct problems *problems)
{
    const struct forbids forbids = forbids_all();
    const struct hazard_failures failures = hazards_prove(input, set, &forbids, NULL, arena);
    for (size_t i = 0; i < failures.count; i++)
        failure_tell(&failures.rows[i], arena, problems);
    return failures.count == 0 ? set : unsafe_held(set, &failures, arena);
}
