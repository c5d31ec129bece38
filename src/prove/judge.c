/* judge.c - the events of a card held against the table and against what the cards of its chain
 * never allow (room: prove). */
#include "prove_room.h"

/* Was that done before the event, on this card or on one that led to it? */
static bool done_before(const struct visit *visit, size_t index, enum act act)
{
    for (size_t i = 0; i < index; i++)
        if (visit->events.at[i].act == act)
            return true;
    return false;
}

static bool done_later(const struct visit *visit, size_t index, enum act act)
{
    for (size_t i = index + 1; i < visit->events.count; i++)
        if (visit->events.at[i].act == act)
            return true;
    return false;
}

static bool is_made_right(const struct visit *visit, size_t index, const struct forbid *row)
{
    const struct event *event = &visit->events.at[index];
    return (row->guard != GUARD_NONE && (event->guards & FLAG(row->guard)) != 0) ||
           (row->first != ACT_NONE && done_before(visit, index, row->first)) ||
           (row->later != ACT_NONE && done_later(visit, index, row->later));
}

static bool row_breaks(const struct visit *visit, size_t index, const struct forbid *row)
{
    const struct event *event = &visit->events.at[index];
    if (row->act != event->act ||
        (row->hazard != HAZARD_ANY && (event->hazards & FLAG(row->hazard)) == 0))
        return false;
    if (row->since != ACT_NONE && !done_before(visit, index, row->since))
        return false;
    return !is_made_right(visit, index, row);
}

static void event_judge(struct visit *visit, size_t index)
{
    const struct forbids *forbids = visit->walk->forbids;
    for (size_t i = 0; i < forbids->count; i++)
        if (row_breaks(visit, index, &forbids->rows[i]))
            failure_add(visit, &visit->events.at[index], &forbids->rows[i],
                        forbids->rows[i].rule, forbids->rows[i].why);
}

/* ---- nevers ---- */

/* A never is a row of the table for whatever is so: words and acts that make the act right under
 * a hazard make it right here too. */
static struct forbid never_row(const struct forbids *forbids, enum act act)
{
    for (size_t i = 0; i < forbids->count; i++)
        if (forbids->rows[i].act == act && forbids->rows[i].guard != GUARD_NONE) {
            struct forbid row = forbids->rows[i];
            row.hazard = HAZARD_ANY;
            return row;
        }
    return (struct forbid){.act = act};
}

static void never_judge(struct visit *visit, const struct visit *by, const struct warning *never,
                        enum act act)
{
    struct forbid row = never_row(visit->walk->forbids, act);
    row.since = act == ACT_GO_BELOW || act == ACT_REACH_IN ? ACT_ALL_OUT : row.since;
    for (size_t i = visit->own; i < visit->events.count; i++)
        if (row_breaks(visit, i, &row))
            failure_add(visit, &visit->events.at[i], NULL, "R15",
                        text_format(visit->walk->arena, "%s says: never %s",
                                    by->sheet->name, TEXT_OR_EMPTY(never->say)));
}

static void nevers_judge(struct visit *visit, const struct visit *by)
{
    const struct procedure *procedure = by->sheet->procedure;
    for (size_t i = 0; i < procedure->never_count; i++) {
        const struct warning *never = &procedure->nevers[i];
        if (condition_truth(by->composing, never->when) == TRUTH_NO)
            continue;
        for (size_t k = 0; k < never->forbids.count; k++)
            never_judge(visit, by, never, never->forbids.items[k].value);
    }
}

/* ---- the base's own lines ---- */

/* Such a line stands beside the steps and is obeyed before any of them or after all: what makes
 * an act right has to be done on a card before, and no words of it are known. */
static bool local_breaks(const struct visit *visit, const struct forbid *row, enum act act)
{
    return row->act == act &&
           (row->hazard == HAZARD_ANY || (visit->hazards & FLAG(row->hazard)) != 0) &&
           (row->since == ACT_NONE || done_before(visit, visit->events.count, row->since)) &&
           (row->first == ACT_NONE || !done_before(visit, visit->own, row->first));
}

static void local_nevers_judge(struct visit *visit, const struct visit *by,
                               const struct event *event)
{
    const struct procedure *procedure = by->sheet->procedure;
    for (size_t i = 0; i < procedure->never_count; i++)
        for (size_t k = 0; k < procedure->nevers[i].forbids.count; k++)
            if (procedure->nevers[i].forbids.items[k].value == event->act &&
                condition_truth(by->composing, procedure->nevers[i].when) != TRUTH_NO)
                failure_add(visit, event, NULL, "R15",
                            text_format(visit->walk->arena, "%s says: never %s", by->sheet->name,
                                        TEXT_OR_EMPTY(procedure->nevers[i].say)));
}

static void own_line_judge(struct visit *visit, const struct own_line *line)
{
    const struct forbids *forbids = visit->walk->forbids;
    for (size_t i = 0; i < line->does.count; i++) {
        struct event event = {.act = line->does.items[i].value, .local = line,
                              .hazards = visit->hazards};
        for (size_t k = 0; k < forbids->count; k++)
            if (local_breaks(visit, &forbids->rows[k], event.act))
                failure_add(visit, &event, &forbids->rows[k], forbids->rows[k].rule,
                            forbids->rows[k].why);
        for (const struct visit *by = visit; by != NULL; by = by->before)
            local_nevers_judge(visit, by, &event);
    }
}

static void own_lines_judge(struct visit *visit)
{
    const struct compose_input *input = visit->walk->input;
    const struct sheet *sheet = visit->sheet;
    const struct own_line *line;
    for (size_t i = 0; (line = own_line_next(input->base, input->boat, sheet->procedure_key,
                                             sheet->id, &i)) != NULL;)
        own_line_judge(visit, line);
}

void visit_judge(struct visit *visit)
{
    for (size_t i = visit->own; i < visit->events.count; i++)
        event_judge(visit, i);
    for (const struct visit *by = visit; by != NULL; by = by->before)
        nevers_judge(visit, by);
    own_lines_judge(visit);
}
