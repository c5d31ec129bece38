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

/* One file of these pages; false when it could not be made. */
static bool file_write(const struct options *options, const struct fleet *fleet,
                       const struct chosen *chosen, const char *title, const char *name)
{
    struct document document = {
        .title = title, .subject = fleet->base->name.text,
        .language = words_language(fleet->words), .pages = chosen->pages,
        .count = chosen->count};
    struct bytes bytes;
    return pdf_make(&document, fleet->faces, fleet->arena, &bytes, fleet->problems) &&
           file_put(options->output, name, bytes, fleet->arena, fleet->problems);
}

static void pdf_write(const struct options *options, const struct fleet *fleet,
                      const struct boat_work *work, const struct chosen *chosen)
{
    const char *title = text_format(fleet->arena, "%s: emergency cards",
                                    work->boat->facts.name.text);
    const char *name = text_format(fleet->arena, "%s.pdf", work->key);
    if (file_write(options, fleet, chosen, title, name) && !options->quiet)
        printf("%s/%s: %zu of %zu cards\n", options->output, name, chosen->count,
               work->set->count);
}

/* A boat called as this card's file would be, such as tamarisk-flooding? */
static bool name_taken(const struct options *options, const struct fleet *fleet,
                       const char *name)
{
    const char *other = text_format(fleet->arena, "%s/boats/%s.yaml", options->base, name);
    if (access(other, F_OK) != 0)
        return false;
    problem_add(fleet->problems, SEVERITY_ERROR, (struct place){0},
                "give that boat's file another name, or leave out --each",
                "%s.pdf would be the file of one card and of the boat %s", name, other);
    return true;
}

/* One file a card, beside the boat's. */
static void each_write(const struct options *options, const struct fleet *fleet,
                       const struct boat_work *work, const struct chosen *chosen)
{
    size_t written = 0;
    for (size_t i = 0; i < chosen->count; i++) {
        struct chosen one = {.pages = &chosen->pages[i], .count = 1};
        const char *name = text_format(fleet->arena, "%s-%s", work->key, chosen->pages[i]->card);
        const char *title = text_format(fleet->arena, "%s: %s", work->boat->facts.name.text,
                                        chosen->pages[i]->title);
        if (!name_taken(options, fleet, name) &&
            file_write(options, fleet, &one, title, text_format(fleet->arena, "%s.pdf", name)))
            written++;
    }
    if (!options->quiet && chosen->count > 0)
        printf("%s/%s-*.pdf: %zu files, one a card\n", options->output, work->key, written);
}

/* An older file of a card that was held back must not pass for a new one. */
static void older_tell(const struct options *options, const struct fleet *fleet,
                       const struct boat_work *work)
{
    for (size_t i = 0; i < work->set->count; i++) {
        const struct card *card = work->set->cards[i];
        const char *older = text_format(fleet->arena, "%s/%s-%s.pdf", options->output, work->key,
                                        card->key);
        if (work->pages[i] == NULL && card_wanted(options, card) && access(older, F_OK) == 0)
            printf("%s: not of this run\n", older);
    }
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

static void boat_print_in(const struct options *options, const struct fleet *fleet,
                          struct progress *progress, size_t index)
{
    progress_tell(progress, index, fleet->boat_keys[index]);
    struct boat_work work = boat_work(options, fleet, index);
    struct chosen chosen = {0};
    if (work.set != NULL)
        chosen = pages_choose(options, fleet, &work);
    if (problems_reach(fleet->problems, SEVERITY_USE))
        return;
    progress_clear(progress);
    if (chosen.count == 0)
        nothing_tell(options, fleet, work.key);
    else if (options->dump)
        dump_write(options, fleet, &work, &chosen);
    else
        pdf_write(options, fleet, &work, &chosen);
    if (options->each && !options->dump && work.set != NULL) {
        each_write(options, fleet, &work, &chosen);
        older_tell(options, fleet, &work);
    }
}

static void boat_print(const struct options *options, const struct fleet *fleet,
                       struct progress *progress, size_t index)
{
    struct fleet one = fleet_for_boat(fleet);
    boat_print_in(options, &one, progress, index);
    arena_free(one.arena);
}

enum exit_status command_print(const struct options *options)
{
    struct fleet fleet;
    if (fleet_open(options, &fleet) &&
        folder_ready(options->output, fleet.arena, fleet.problems)) {
        struct progress progress = progress_begin(options->quiet, fleet.boat_count);
        for (size_t i = 0; i < fleet.boat_count; i++)
            boat_print(options, &fleet, &progress, i);
        progress_clear(&progress);
    }
    enum exit_status status = report_of_cards(&fleet);
    if (!options->quiet && status != EXIT_USE)
        report_left_for_check(&fleet);
    fleet_close(&fleet);
    return status;
}
