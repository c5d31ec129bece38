/* states.c - the product of what a record can say of the facts that a part of a card hangs on.
 * All other gear is as one of a few grounds has it: all on deck, all below, none. */
#include "states.h"

#include "asked.h"
#include "promise.h"
#include "text.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const enum where grounds[] = {ON_OPEN_DECK, AT_COMPANIONWAY, BELOW_DECK, INSIDE_SPACE,
                                     NOT_FITTED};
enum {
    PRODUCT_ON_ALL_GROUNDS = 400, PRODUCT_AS_A_WHOLE = 4000,
    GROUND_COUNT = sizeof grounds / sizeof *grounds
};

size_t case_number(const struct house *house, const struct step_case *step_case)
{
    size_t number = 0;
    for (size_t i = 0; i < house->procedures.count; i++) {
        const struct procedure *procedure = house->procedures.rows[i];
        for (size_t k = 0; k < procedure->step_count; k++)
            for (size_t c = 0; c < procedure->steps[k].case_count; c++, number++)
                if (&procedure->steps[k].cases[c] == step_case)
                    return number;
    }
    return number;
}

/* ---- one state ---- */

struct state {
    const struct house *house;
    const struct unit *unit;
    const struct hull_kind *hull;
    const struct procedure_set *set;
    struct form *forms;
    size_t count, varied;              /* the first of them are those that vary */
    const char *ground;
    struct tally *tally;
};

static bool is_known(const struct state *state)
{
    const struct base_record *base = state->house->base;
    for (size_t i = 0; i < state->count; i++)
        if (!state->forms[i].known)
            return false;
    return base->drowning_breaths.value != BREATHS_NONE && base->sting.value != STING_NONE &&
           base->tide.value != TIDE_UNSAID;
}

static void state_print(const struct state *state)
{
    printf("    boat: %s; all else %s\n", state->hull->told, state->ground);
    for (size_t i = 0; i < state->varied; i++)
        printf("      %s\n", state->forms[i].told);
}

static void taken_mark(const struct house *house, const struct sheet_set *set)
{
    for (size_t i = 0; i < set->count; i++)
        for (size_t k = 0; k < sheet_steps(set->sheets[i])->count; k++) {
            const struct card_step *step = &sheet_steps(set->sheets[i])->items[k];
            if (step->taken != NULL && !set->sheets[i]->held)
                house->taken[case_number(house, step->taken)] = true;
        }
}

/* False: the same was told of another boat. */
static bool told_first(const struct state *state, const char *words)
{
    struct told *told = &state->tally->told;
    for (size_t i = 0; i < told->count; i++)
        if (text_equal(told->at[i], words))
            return false;
    told->at = arena_grow(state->house->arena, told->at, told->count, &told->room,
                          sizeof *told->at);
    told->at[told->count++] = text_format(state->house->arena, "%s", words);
    return true;
}

static void failure_print(const struct state *state, const struct hazard_failure *failure,
                          struct arena *arena)
{
    const char *gear = failure->gear == NULL ? "" : failure->gear->kind->key;
    const char *words = text_format(
        arena, "FAILS  %s, %s: %s (%s%s%s)%s%s", failure->chain,
        failure->step == NULL ? "its call" : failure->step->id, failure->what, failure->rule,
        failure->row == NULL ? "" : " ", failure->row == NULL ? "" : failure->row->id,
        text_empty(gear) ? "" : ": ", gear);
    if (!told_first(state, words))
        return;
    printf("%s\n", words);
    state_print(state);
}

static void failures_print(const struct state *state, const struct hazard_failures *failures,
                           struct arena *arena)
{
    for (size_t i = 0; i < failures->count; i++)
        failure_print(state, &failures->rows[i], arena);
    state->tally->failures += failures->count > 0 ? 1 : 0;
}

/* A card that is held though all is recorded has no words for such a boat. */
static void held_tell(const struct state *state, struct problems *problems,
                      struct arena *arena)
{
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        if (list[i].severity >= SEVERITY_HELD)
            text_add_format(&out, "HELD   though all is recorded: %s\n", list[i].what);
    state->tally->failures++;
    if (!told_first(state, out.at))
        return;
    printf("%s", out.at);
    state_print(state);
}

static struct compose_input state_input(const struct state *state, const struct boat *boat)
{
    return (struct compose_input){.boat = boat, .base = state->house->base,
                                  .procedures = state->set,
                                  .authorities = state->house->authorities,
                                  .words = state->house->words, .today = {2026, 11, 25}};
}

/* All that what is composed follows from, but for the procedures. */
static bool is_new(const struct state *state, const char *file, struct arena *arena)
{
    const struct base_record *base = state->house->base;
    const char *text = text_format(arena, "%d %d %d %d %s", is_known(state) ? 1 : 0,
                                   (int)base->drowning_breaths.value, (int)base->sting.value,
                                   (int)base->tide.value, file);
    return seen_first(text, strlen(text));
}

static void file_prove(const struct state *state, const char *file, struct arena *arena)
{
    struct problems *problems = problems_new(arena);
    const struct boat *boat = boat_made(file, arena, problems);
    struct compose_input input = state_input(state, boat);
    const struct sheet_set *set = compose_set(&input, arena, problems);
    const struct hazard_failures failures =
        hazards_prove(&input, set, &state->house->forbids,
                                            state->unit->procedure->key.text, arena);
    state->tally->states++;
    state->tally->held += set->held > 0 ? 1 : 0;
    taken_mark(state->house, set);
    failures_print(state, &failures, arena);
    if (set->held > 0 && is_known(state))
        held_tell(state, problems, arena);
    if (state->house->stop && state->tally->failures > 0)
        exit(1);
}

/* A boat that an earlier part of the card was proved on is not proved again. */
static void state_prove(const struct state *state)
{
    struct arena *arena = arena_new(STATE_ARENA);
    const char *file = boat_written(state->hull, state->forms, state->count, arena);
    if (is_new(state, file, arena))
        file_prove(state, file, arena);
    arena_free(arena);
}

/* ---- all states ---- */

/* What the ground has of an item: with that place, and all of it known. */
static struct form ground_form(const struct item_read *read, enum where where,
                               struct arena *arena)
{
    struct forms forms = forms_of(read, arena);
    struct form found = forms.at[1];
    for (size_t i = 0; i < forms.count; i++)
        if (forms.at[i].where == where && forms.at[i].known)
            found = forms.at[i];
    return found;
}

static bool is_varied(const struct state *state, enum item_key item)
{
    for (size_t i = 0; i < state->varied; i++)
        if (state->forms[i].item == item)
            return true;
    return false;
}

static void ground_lay(struct state *state, const struct reads *all, enum where where,
                       struct arena *arena)
{
    static const char *const told[WHERE_COUNT] = {
        [ON_OPEN_DECK] = "on deck", [AT_COMPANIONWAY] = "at the companionway",
        [BELOW_DECK] = "below", [INSIDE_SPACE] = "inside the space", [NOT_FITTED] = "not fitted"};
    state->count = state->varied;
    for (size_t i = 0; i < all->count; i++)
        if (!is_varied(state, all->items[i].item)) {
            struct form *form = &state->forms[state->count++];
            *form = ground_form(&all->items[i], where, arena);
            form->entry = entry_written(state->hull, form, arena);
        }
    state->ground = told[where];
}

/* All that the procedures of the chain ask of a record, wherever it may be. */
static const struct reads *ground_reads(const struct procedure_set *set, struct arena *arena)
{
    static const enum item_key always[] = {ITEM_personal_beacon, ITEM_sart};
    struct reads *all = arena_alloc(arena, sizeof *all);
    memset(all, 0, sizeof *all);
    for (size_t i = 0; i < set->count; i++)
        reads_procedure(all, set->rows[i]);
    const struct asked_list asked = asked_items(set->rows, set->count, HULL_NONE, arena);
    for (size_t i = 0; i < asked.count; i++)
        (void)reads_item(all, asked.rows[i].kind->item);
    for (size_t i = 0; i < sizeof always / sizeof *always; i++)
        (void)reads_item(all, always[i]);
    for (size_t i = 0; i < all->count; i++)
        all->items[i].offered = true;
    return all;
}

/* The next of the product; false after the last. */
static bool state_next(const struct forms *forms, size_t *at, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (++at[i] < forms[i].count)
            return true;
        at[i] = 0;
    }
    return false;
}

/* How many of a group are elsewhere than that one. */
static size_t strangers(const struct forms *forms, const size_t *at, size_t count, size_t one)
{
    size_t found = 0;
    for (size_t i = 0; i < count; i++)
        found += forms[i].group == forms[one].group &&
                         forms[i].at[at[i]].where != forms[one].at[at[one]].where ? 1 : 0;
    return found;
}

/* Of a group at most one is elsewhere than all others. */
static bool groups_count(const struct forms *forms, const size_t *at, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        bool alike = false;
        if (forms[i].group == 0 || (i > 0 && forms[i - 1].group == forms[i].group))
            continue;
        for (size_t k = i; k < count && !alike; k++)
            alike = forms[k].group == forms[i].group && strangers(forms, at, count, k) <= 1;
        if (!alike)
            return false;
    }
    return true;
}

/* How many other than those two are elsewhere than the second. */
static size_t others_apart(const struct forms *forms, const size_t *at, size_t count,
                           size_t one, size_t like)
{
    size_t found = 0;
    for (size_t i = 0; i < count; i++)
        found += i != one && forms[i].at[at[i]].where != forms[like].at[at[like]].where ? 1 : 0;
    return found;
}

/* Beside the one, all but one at most are at the same kind of place. */
static bool others_count(const struct forms *forms, const size_t *at, size_t count, size_t one)
{
    for (size_t i = 0; i < count; i++)
        if (i != one && others_apart(forms, at, count, one, i) <= 1)
            return true;
    return count <= 1;
}

static size_t coarse_product(const struct forms *forms, size_t count)
{
    size_t product = 1;
    for (size_t i = 0; i < count; i++) {
        size_t coarse = 0;
        for (size_t k = 0; k < forms[i].count; k++)
            coarse += forms[i].at[k].fine ? 0 : 1;
        product *= coarse;
    }
    return product;
}

/* The first form at that kind of place. */
static bool is_plain(const struct forms *forms, size_t at, enum where where)
{
    size_t first = 0;
    while (first < forms->count && forms->at[first].where != where)
        first++;
    return first == at;
}

/* All but two are plain at the same kind of place. */
static bool pairs_count(const struct forms *forms, const size_t *at, size_t count)
{
    for (enum where where = NOT_RECORDED; where < WHERE_COUNT; where++) {
        size_t apart = 0;
        for (size_t i = 0; i < count && apart <= 2; i++)
            apart += is_plain(&forms[i], at[i], where) ? 0 : 1;
        if (apart <= 2)
            return true;
    }
    return false;
}

/* Forms that no condition tells apart change one row of a card and no other: no two of them
 * need to meet; and where much else varies, each meets the plain ones of it. Of a product that
 * is too large as a whole any two items meet in all ways. */
static bool state_counts(const struct forms *forms, const size_t *at, size_t count,
                         size_t coarse)
{
    size_t fine = 0, one = 0;
    for (size_t i = 0; i < count; i++)
        if (forms[i].at[at[i]].fine)
            fine++, one = i;
    if (fine > 1 || (coarse > PRODUCT_AS_A_WHOLE && !pairs_count(forms, at, count)))
        return false;
    return groups_count(forms, at, count) &&
           (fine == 0 || coarse <= PRODUCT_ON_ALL_GROUNDS ||
            others_count(forms, at, count, one));
}

size_t product_of(const struct forms *forms, size_t count)
{
    size_t at[READS_MOST] = {0}, product = 0, coarse = coarse_product(forms, count);
    do
        product += state_counts(forms, at, count, coarse) ? 1 : 0;
    while (state_next(forms, at, count));
    return product;
}

static void product_prove(struct state *state, const struct forms *forms)
{
    size_t at[READS_MOST] = {0}, coarse = coarse_product(forms, state->varied);
    do {
        if (!state_counts(forms, at, state->varied, coarse))
            continue;
        for (size_t i = 0; i < state->varied; i++)
            state->forms[i] = forms[i].at[at[i]];
        state_prove(state);
    } while (state_next(forms, at, state->varied));
}

/* ---- a part of a card ---- */

size_t grounds_of(const struct forms *varied, size_t count)
{
    return product_of(varied, count) > PRODUCT_ON_ALL_GROUNDS ? 1 : GROUND_COUNT;
}

static void hull_prove(struct state *state, const struct reads *ground)
{
    struct arena *arena = arena_new(STATE_ARENA);
    const struct reads *reads = unit_reads(state->unit, hull_boat(state->hull, arena), arena);
    struct forms *varied = arena_array(arena, READS_MOST, sizeof *varied);
    state->varied = reads->count;
    for (size_t i = 0; i < state->varied; i++) {
        varied[i] = forms_of(&reads->items[i], arena);
        for (size_t k = 0; k < varied[i].count; k++)
            varied[i].at[k].entry = entry_written(state->hull, &varied[i].at[k], arena);
        state->forms[i].item = reads->items[i].item;
    }
    for (size_t g = 0; g < grounds_of(varied, state->varied); g++) {
        ground_lay(state, ground, grounds[g], arena);
        product_prove(state, varied);
    }
    arena_free(arena);
}

void unit_prove(const struct house *house, const struct unit *unit, struct tally *tally)
{
    struct arena *arena = arena_new(STATE_ARENA);
    const struct procedure_set set = chain_set(house, unit->procedure, arena);
    struct state state = {.house = house, .unit = unit, .set = &set, .tally = tally,
                          .forms = arena_array(arena, READS_MOST, sizeof *state.forms)};
    const struct reads *ground = ground_reads(&set, arena);
    for (size_t h = 0; h < hull_kind_count; h++) {
        if (!hull_is_tried(unit, h))
            continue;
        state.hull = &hull_kinds[h];
        hull_prove(&state, ground);
    }
    arena_free(arena);
}
