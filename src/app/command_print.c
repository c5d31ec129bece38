/* command_print.c - one PDF a boat, one page a card (room: app). */
#include "app.h"

#include <stdio.h>
#include <unistd.h>

struct chosen {
    const struct page **pages;
    size_t count;
};

static struct chosen pages_choose(const struct options *options, const struct fleet *fleet,
                                  const struct boat_work *work)
{
    struct chosen chosen = {0};
    chosen.pages = arena_array(fleet->arena, work->set->count, sizeof *chosen.pages);
    for (size_t i = 0; i < work->set->count; i++)
        if (work->pages[i] != NULL && card_wanted(options, work->set->cards[i]))
            chosen.pages[chosen.count++] = work->pages[i];
    return chosen;
}

static void dump_write(const struct options *options, const struct fleet *fleet,
                       const struct boat_work *work, const struct chosen *chosen)
{
    for (size_t i = 0; i < chosen->count; i++) {
        struct text_builder out = text_builder_in(fleet->arena);
        page_dump(chosen->pages[i], &out);
        file_put(options->output,
                 text_format(fleet->arena, "%s-%s.dump", work->key, chosen->pages[i]->card),
                 (struct bytes){(const unsigned char *)out.at, out.length}, fleet->arena,
                 fleet->problems);
    }
}

static void pdf_write(const struct options *options, const struct fleet *fleet,
                      const struct boat_work *work, const struct chosen *chosen)
{
    struct document document = {
        .title = text_format(fleet->arena, "%s: emergency cards", work->boat->facts.name.text),
        .subject = fleet->base->name.text, .language = words_language(fleet->words),
        .pages = chosen->pages, .count = chosen->count};
    const char *name = text_format(fleet->arena, "%s.pdf", work->key);
    struct bytes bytes;
    if (pdf_make(&document, fleet->faces, fleet->arena, &bytes, fleet->problems) &&
        file_put(options->output, name, bytes, fleet->arena, fleet->problems))
        printf("%s/%s: %zu of %zu cards\n", options->output, name, chosen->count,
               work->set->count);
}

/* An older print must not pass for a new one. */
static void nothing_tell(const struct options *options, const struct fleet *fleet,
                         const char *key)
{
    const char *older = text_format(fleet->arena, "%s/%s.pdf", options->output, key);
    printf("%s: no card could be printed%s%s\n", key,
           access(older, F_OK) == 0 ? "; not of this run: " : "",
           access(older, F_OK) == 0 ? older : "");
}

static void boat_print(const struct options *options, const struct fleet *fleet, size_t index)
{
    struct boat_work work = boat_work(options, fleet, index);
    struct chosen chosen = {0};
    if (work.set != NULL)
        chosen = pages_choose(options, fleet, &work);
    if (problems_reach(fleet->problems, SEVERITY_USE))
        return;
    if (chosen.count == 0)
        nothing_tell(options, fleet, work.key);
    else if (options->dump)
        dump_write(options, fleet, &work, &chosen);
    else
        pdf_write(options, fleet, &work, &chosen);
}

enum exit_status command_print(const struct options *options)
{
    struct fleet fleet;
    if (fleet_open(options, &fleet) &&
        folder_ready(options->output, fleet.arena, fleet.problems))
        for (size_t i = 0; i < fleet.boat_count; i++)
            boat_print(options, &fleet, i);
    enum exit_status status = report(&fleet, false);
    fleet_close(&fleet);
    return status;
}
