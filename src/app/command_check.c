/* command_check.c - everything but printing (room: app). */
#include "app.h"
#include "starter.h"

#include <stdio.h>

static void state_tell(const struct boat_work *work)
{
    size_t ready = 0;
    printf("%s: ", work->key);
    if (work->boat != NULL)
        printf("recorded %zu of %zu, ", boat_items_mentioned(work->boat), item_count());
    if (work->set == NULL) {
        puts("no cards: errors in her file or in the base's");
        return;
    }
    for (size_t i = 0; i < work->set->count; i++)
        ready += work->pages[i] != NULL && !work->set->cards[i]->held ? 1 : 0;
    printf("cards ready %zu of %zu\n", ready, work->set->count);
    for (size_t i = 0; i < work->set->not_hers_count; i++)
        printf("%s: no card %s: %s\n", work->key, work->set->not_hers[i].title,
               work->set->not_hers[i].reason);
}

/* ---- how the pages were proofread ---- */

static void proofs_print(const struct options *options, const struct fleet *fleet,
                         const struct boat_work *work)
{
    struct text_builder out = text_builder_in(fleet->arena);
    for (size_t i = 0; work->set != NULL && i < work->set->count; i++)
        if (work->reports[i].measured > 0 && card_wanted(options, work->set->cards[i]))
            proof_print(&work->reports[i], work->key, work->set->cards[i]->key, &out);
    if (out.length > 0)
        fputs(out.at, stdout);
}

/* ---- what else to record ---- */

static struct asked_list asked_of(const struct options *options, const struct fleet *fleet,
                                  const struct boat_work *work)
{
    const struct procedure **wanted = arena_array(fleet->arena, work->set->count,
                                                  sizeof *wanted);
    size_t count = 0;
    for (size_t i = 0; i < work->set->count; i++)
        if (card_wanted(options, work->set->cards[i]))
            wanted[count++] = work->set->cards[i]->procedure;
    return asked_items(wanted, count, work->boat->facts.type.text, fleet->arena);
}

static bool told(const struct card_set *set, const struct item_kind *kind)
{
    for (size_t i = 0; i < set->unrecorded_count; i++)
        if (text_equal(set->unrecorded[i], kind->key))
            return true;
    return false;
}

/* Those that neither the record nor a message mentions, in walking order. */
static struct asked_list rest_of(const struct fleet *fleet, const struct boat_work *work,
                                 const struct asked_list *asked)
{
    struct asked_item *rows = arena_array(fleet->arena, asked->count, sizeof *rows);
    struct asked_list rest = {.rows = rows};
    for (size_t i = 0; i < asked->count; i++) {
        const struct item_kind *kind = asked->rows[i].kind;
        if (boat_fitted(work->boat, kind->key) == ANSWER_NOT_RECORDED && !told(work->set, kind))
            rows[rest.count++] = asked->rows[i];
    }
    return rest;
}

static void rest_print(const struct fleet *fleet, const struct boat_work *work,
                       const struct asked_list *rest)
{
    const char *const *tags = starter_tags(rest, work->boat, work->set->unrecorded,
                                           work->set->unrecorded_count, fleet->arena);
    const struct zone *zone = NULL;
    printf("\n%s: not recorded either, though no card waits for it just now: %zu.\n"
           "Add to equipment what she has, and to not_fitted the names of what she has not:\n",
           work->key, rest->count);
    for (size_t i = 0; i < rest->count; i++) {
        const struct asked_item *row = &rest->rows[i];
        if (row->usual != zone)
            printf("  # on most boats: %s\n", row->usual->key);
        zone = row->usual;
        printf("  %s  # %s\n", starter_entry(row, tags[i], fleet->arena), row->kind->record);
    }
}

static void rest_tell(const struct options *options, const struct fleet *fleet,
                      const struct boat_work *work)
{
    if (work->set == NULL)
        return;
    struct asked_list asked = asked_of(options, fleet, work);
    struct asked_list rest = rest_of(fleet, work, &asked);
    if (rest.count > 0)
        rest_print(fleet, work, &rest);
}

enum exit_status command_check(const struct options *options)
{
    struct fleet fleet;
    bool open = fleet_open(options, &fleet);
    size_t count = open ? fleet.boat_count : 0;
    struct boat_work *works = arena_array(fleet.arena, count, sizeof *works);
    for (size_t i = 0; i < count; i++) {
        works[i] = boat_work(options, &fleet, i);
        state_tell(&works[i]);
        if (options->page)
            proofs_print(options, &fleet, &works[i]);
    }
    /* On a terminal the lists come last, where they are seen. */
    fflush(stdout);
    enum exit_status status = report(&fleet, true);
    for (size_t i = 0; status != EXIT_USE && i < count; i++)
        rest_tell(options, &fleet, &works[i]);
    fleet_close(&fleet);
    return status;
}
