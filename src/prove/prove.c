/* prove.c - every chain of cards that exits and words lead through, from every card of a boat
 * (room: prove). A card stands in one chain once: a circle ends where it closes. */
#include "prove_room.h"

/* ---- failures ---- */

static const struct visit *chain_first(const struct visit *visit)
{
    while (visit->before != NULL)
        visit = visit->before;
    return visit;
}

static const char *chain_words(const struct visit *visit)
{
    struct arena *arena = visit->walk->arena;
    return visit->before == NULL
               ? visit->sheet->name
               : text_format(arena, "%s > %s", chain_words(visit->before), visit->sheet->name);
}

static struct place event_place(const struct visit *visit, const struct event *event)
{
    if (event->gear != NULL)
        return event->gear->place;
    if (event->local != NULL)
        return event->local->does.place;
    if (event->step != NULL)
        return event->step->taken != NULL ? event->step->taken->place : event->step->step->place;
    return visit->sheet->origin;
}

/* The same was found on the way here by another chain, or of another piece. */
static bool is_found(const struct hazard_walk *walk, const struct hazard_failure *failure)
{
    for (size_t i = 0; i < walk->failure_count; i++) {
        const struct hazard_failure *other = &walk->failures[i];
        if (other->sheet == failure->sheet && other->step == failure->step &&
            other->gear == failure->gear && other->local == failure->local &&
            text_equal(other->rule, failure->rule) &&
            text_equal(other->what, failure->what) &&
            (other->from == failure->from || other->from == other->sheet))
            return true;
    }
    return false;
}

void failure_add(struct visit *visit, const struct event *event, const struct forbid *row,
                 const char *rule, const char *what)
{
    struct hazard_walk *walk = visit->walk;
    struct hazard_failure failure = {
        .sheet = visit->sheet, .from = chain_first(visit)->sheet, .step = event->step,
        .gear = event->gear, .local = event->local, .row = row, .rule = rule,
        .chain = chain_words(visit), .what = what, .place = event_place(visit, event)};
    if (is_found(walk, &failure))
        return;
    walk->failures = arena_grow(walk->arena, walk->failures, walk->failure_count,
                                &walk->failure_room, sizeof *walk->failures);
    walk->failures[walk->failure_count++] = failure;
}

/* ---- chains ---- */

static bool is_on_chain(const struct visit *visit, const struct sheet *sheet)
{
    for (; visit != NULL; visit = visit->before)
        if (visit->sheet == sheet)
            return true;
    return false;
}

/* Everything that burns or leaks below, where a card is about no space of its own. */
static enum zone_key space_of(const struct sheet *sheet, const struct visit *before)
{
    if (sheet->space != ZONE_NONE)
        return sheet->space;
    if (sheet->procedure->danger_in.value != ZONE_NONE)
        return sheet->procedure->danger_in.value;
    return before == NULL ? ZONE_NONE : before->space;
}

static struct composing *composing_of(struct hazard_walk *walk, const struct sheet *sheet)
{
    for (size_t i = 0; i < walk->set->count; i++) {
        if (walk->set->sheets[i] != sheet)
            continue;
        if (walk->states[i] == NULL)
            walk->states[i] = composing_again(walk->input, walk->set, sheet, walk->arena);
        return walk->states[i];
    }
    return NULL;
}

/* The events of the cards before, as far as they are done when one goes on from that step. */
static void events_inherit(struct visit *visit, const struct visit *before,
                           const struct card_step *step)
{
    for (size_t i = 0; i < before->events.count; i++) {
        const struct event *event = &before->events.at[i];
        if (i < before->own || (event->step != NULL && event->step->number <= step->number))
            event_add(visit, *event);
    }
    visit->own = visit->events.count;
}

static void sheet_visit(struct hazard_walk *walk, const struct sheet *sheet,
                        const struct visit *before, const struct way_on *way);

static bool leads_to(const struct visit *visit, const struct sheet *sheet, const char *card)
{
    return text_equal(sheet->procedure_key, card) &&
           (sheet->space == ZONE_NONE || visit->sheet->space == ZONE_NONE ||
            sheet->space == visit->sheet->space);
}

static void way_follow(struct visit *visit, const struct way_on *way)
{
    const struct sheet_set *set = visit->walk->set;
    bool found = false;
    for (size_t i = 0; i < set->count; i++) {
        if (!leads_to(visit, set->sheets[i], way->card))
            continue;
        found = true;
        if (!set->sheets[i]->held && !is_on_chain(visit, set->sheets[i]))
            sheet_visit(visit->walk, set->sheets[i], visit, way);
    }
    if (!found && way->required)
        failure_add(visit, &(struct event){.step = way->step}, NULL, "R15",
                    text_format(visit->walk->arena, "it leads to %s, a card she has not",
                                way->card));
}

static void sheet_visit(struct hazard_walk *walk, const struct sheet *sheet,
                        const struct visit *before, const struct way_on *way)
{
    struct visit visit = {.walk = walk, .sheet = sheet, .composing = composing_of(walk, sheet),
                          .before = before, .space = space_of(sheet, before)};
    if (before != NULL) {
        visit.hazards = way->hazards;
        events_inherit(&visit, before, way->step);
    }
    events_make(&visit);
    visit_judge(&visit);
    for (size_t i = 0; i < visit.way_count; i++)
        way_follow(&visit, &visit.ways[i]);
}

struct hazard_failures hazards_prove(const struct compose_input *input,
                                     const struct sheet_set *set,
                                     const struct forbids *forbids, const char *from,
                                     struct arena *arena)
{
    struct hazard_walk walk = {
        .input = input, .set = set, .forbids = forbids, .arena = arena,
        .states = arena_array(arena, set->count, sizeof *walk.states)};
    for (size_t i = 0; i < set->count; i++)
        walk.states[i] = NULL;
    for (size_t i = 0; i < set->count; i++)
        if (!set->sheets[i]->held && sheet_steps(set->sheets[i])->count > 0 &&
            (from == NULL || text_equal(set->sheets[i]->procedure_key, from)))
            sheet_visit(&walk, set->sheets[i], NULL, NULL);
    return (struct hazard_failures){walk.failures, walk.failure_count};
}
