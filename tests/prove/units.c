/* units.c - the parts of a card that are proved one by one: what each reads of a boat, the kinds
 * of boats that it is tried on, and the cards that it leads to. */
#include "states.h"

#include "promise.h"
#include "text.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* ---- the procedures of a chain ---- */

static bool said_leads(const struct said_list *list, const char *key)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->items[i].card.text, key))
            return true;
    return false;
}

static bool leads_directly(const struct procedure *from, const struct procedure *to)
{
    const char *key = to->key.text;
    for (size_t i = 0; i < from->lead_count; i++)
        if (text_equal(from->leads[i].text, key))
            return true;
    return said_leads(&from->decision.yes, key) || said_leads(&from->decision.no, key);
}

struct procedure_set chain_set(const struct house *house, const struct procedure *procedure,
                               struct arena *arena)
{
    size_t count = house->procedures.count, chosen = 0;
    const struct procedure *const *rows = house->procedures.rows;
    const struct procedure **out = arena_array(arena, count, sizeof *out);
    bool *in = arena_array(arena, count, sizeof *in);
    for (size_t i = 0; i < count; i++)
        in[i] = rows[i] == procedure;
    for (bool more = true; more;) {
        more = false;
        for (size_t i = 0; i < count; i++)
            for (size_t k = 0; k < count; k++)
                if (in[i] && !in[k] && leads_directly(rows[i], rows[k]))
                    in[k] = more = true;
    }
    for (size_t i = 0; i < count; i++)
        if (in[i])
            out[chosen++] = rows[i];
    return (struct procedure_set){out, chosen};
}

/* ---- boats ---- */

/* What the prover writes itself must be sound. */
const struct boat *boat_made(const char *text, struct arena *arena,
                                    struct problems *problems)
{
    const struct source *source = source_from(arena, "boat.yaml", text, strlen(text));
    bool sound = false;
    const struct boat *boat = boat_read(source, "boat", arena, problems, &sound);
    if (boat != NULL && sound)
        return boat;
    struct text_builder out = text_builder_in(arena);
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    for (size_t i = 0; i < count; i++)
        if (list[i].severity >= SEVERITY_ERROR)
            problem_print(&list[i], &out);
    fprintf(stderr, "%s%s", out.at, text);
    exit(2);
}

const struct boat *hull_boat(const struct hull_kind *hull, struct arena *arena)
{
    return boat_made(boat_written(hull, NULL, 0, arena), arena, problems_new(arena));
}

const struct reads *unit_reads(const struct unit *unit, const struct boat *boat,
                               struct arena *arena)
{
    struct reads *reads = arena_alloc(arena, sizeof *reads);
    memset(reads, 0, sizeof *reads);
    reads->boat = boat;
    reads->procedure = unit->procedure;
    reads_condition(reads, unit->procedure->when);
    reads->of_card = reads->traits;
    reads->traits = 0;
    if (unit->step != NULL)
        reads_step(reads, unit->step);
    else if (text_equal(unit->name, "decision")) {
        reads_said(reads, &unit->procedure->decision.yes);
        reads_said(reads, &unit->procedure->decision.no);
    } else
        reads_panel(reads);
    return reads;
}

/* Two boats that differ in nothing that the part asks for. */
static bool hulls_alike(const struct unit *unit, unsigned long traits, size_t one, size_t other)
{
    struct arena *arena = arena_new(STATE_ARENA);
    const struct hull_kind *hulls[] = {&hull_kinds[one], &hull_kinds[other]};
    struct trait_answers answers[2];
    bool rooms[2];
    for (size_t i = 0; i < 2; i++) {
        struct reads *reads = arena_alloc(arena, sizeof *reads);
        reads->boat = hull_boat(hulls[i], arena);
        reads->procedure = unit->procedure;
        const char *space = hulls[i]->spaces[0];
        answers[i] = traits_read(reads, traits,
                                 space == NULL ? ZONE_NONE : zone_find(space)->id);
        rooms[i] = boat_is(reads->boat, TRAIT_CABIN, ZONE_NONE);
    }
    arena_free(arena);
    return text_equal(hulls[0]->spaces[0], hulls[1]->spaces[0]) && rooms[0] == rooms[1] &&
           memcmp(&answers[0], &answers[1], sizeof answers[0]) == 0;
}

/* What hangs on what she is neither by itself nor by its card, is tried on one with one engine and
 * on one with two. */
bool hull_is_tried(const struct unit *unit, size_t hull)
{
    struct arena *arena = arena_new(STATE_ARENA);
    const struct reads *reads = unit_reads(unit, NULL, arena);
    unsigned long asked = reads->traits | reads->of_card;
    bool tried = asked != 0 || hull < 2;
    arena_free(arena);
    for (size_t i = 0; i < hull && tried; i++)
        tried = asked == 0 || !hulls_alike(unit, asked, i, hull);
    return tried;
}
