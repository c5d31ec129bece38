/* command_print.c - the files that are printed: one PDF a boat, one page a card; or one a
 * card (room: app). What fails of one boat or file stops no other. */
#include "app.h"

#include <stdio.h>
#include <string.h>

struct chosen {
    const struct page **pages;
    size_t count;
};

/* The run, and the names of the files that it wrote. */
struct printing {
    const struct options *options;
    struct fleet *fleet;
    struct progress progress;
    struct names written;
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

/* tern.pdf is the final set; a draft or a single card is never called so. */
static const char *file_name(const struct options *options, struct arena *arena, const char *key,
                             const char *card)
{
    return text_format(arena, "%s%s%s%s.pdf", key, card == NULL ? "" : "-",
                       card == NULL ? "" : card, options->draft ? "-draft" : "");
}

/* A boat called as this file would be, such as tamarisk-flooding? */
static bool name_taken(const struct fleet *fleet, const char *key, const char *name)
{
    const char *other = arena_copy(fleet->arena, name, strlen(name) - strlen(".pdf"));
    if (text_equal(other, key) || !names_hold(&fleet->base_keys, other))
        return false;
    problem_add(fleet->problems, SEVERITY_ERROR, (struct place){0},
                "give that boat's file another name",
                "%s would be the file of one card or a draft and of the boat %s", name, other);
    return true;
}

/* One file of these pages; false, with a problem, when it could not be made. */
static bool file_write(struct printing *printing, const struct fleet *fleet, const char *key,
                       const struct chosen *chosen, const char *title, const char *name)
{
    const struct options *options = printing->options;
    struct document document = {
        .title = title, .subject = fleet->base->name.text,
        .language = words_language(fleet->words), .pages = chosen->pages,
        .count = chosen->count};
    struct bytes bytes;
    if (name_taken(fleet, key, name) ||
        !pdf_make(&document, fleet->faces, fleet->arena, &bytes, fleet->problems) ||
        !file_put(options->output, name, bytes, fleet->arena, fleet->problems))
        return false;
    names_add(&printing->written, name, printing->fleet->arena);
    return true;
}

static void set_write(struct printing *printing, const struct fleet *fleet,
                      const struct boat_work *work, const struct chosen *chosen)
{
    const struct options *options = printing->options;
    const char *title = text_format(fleet->arena, "%s: emergency cards",
                                    work->boat->facts.name.text);
    const char *name = file_name(options, fleet->arena, work->key, NULL);
    if (file_write(printing, fleet, work->key, chosen, title, name) && !options->quiet)
        printf("%s/%s: %zu of %zu cards%s\n", options->output, name, chosen->count,
               work->set->count,
               options->draft ? "; a draft, not to be hung: the final set is left as it is" : "");
}

/* A card asked for by name is told alone, those of --each together. */
static void cards_tell(const struct options *options, const struct boat_work *work,
                       const char *last, size_t written)
{
    const char *draft = options->draft ? "-draft" : "";
    if (options->quiet || written == 0)
        return;
    if (options->cards.count == 0)
        printf("%s/%s-*%s.pdf: %zu files, one a card\n", options->output, work->key, draft,
               written);
    else
        printf("%s/%s: one of %zu cards%s; the set is left as it is\n", options->output, last,
               work->set->count, options->draft ? ", a draft, not to be hung" : "");
}

/* One file a card. */
static void cards_write(struct printing *printing, const struct fleet *fleet,
                        const struct boat_work *work, const struct chosen *chosen)
{
    const struct options *options = printing->options;
    size_t written = 0;
    for (size_t i = 0; i < chosen->count; i++) {
        struct chosen one = {.pages = &chosen->pages[i], .count = 1};
        const char *name = file_name(options, fleet->arena, work->key, chosen->pages[i]->card);
        const char *title = text_format(fleet->arena, "%s: %s", work->boat->facts.name.text,
                                        chosen->pages[i]->title);
        bool made = file_write(printing, fleet, work->key, &one, title, name);
        written += made ? 1 : 0;
        if (made && options->cards.count > 0)
            cards_tell(options, work, name, 1);
    }
    if (options->cards.count == 0)
        cards_tell(options, work, NULL, written);
}

/* ---- older files ---- */

/* The boat that a file belongs to by its name: of tern and tern-two, tern-two has
 * tern-two-flooding.pdf. NULL: none. */
static const char *owner_of(const struct names *keys, const char *name)
{
    const char *owner = NULL;
    for (size_t i = 0; i < keys->count; i++) {
        size_t length = strlen(keys->at[i]);
        if (text_begins(name, keys->at[i]) &&
            (name[length] == '-' || text_equal(name + length, ".pdf")) &&
            (owner == NULL || length > strlen(owner)))
            owner = keys->at[i];
    }
    return owner;
}

static bool is_printed_boat(const struct fleet *fleet, const char *key)
{
    for (size_t i = 0; i < fleet->boat_count; i++)
        if (text_equal(fleet->boat_keys[i], key))
            return true;
    return false;
}

/* An older print of a boat of this run must not pass for a new one. */
static void older_tell(const struct printing *printing)
{
    const struct fleet *fleet = printing->fleet;
    const char *folder = printing->options->output;
    struct names found;
    int error = folder_names(fleet->arena, folder, &found);
    if (error != 0)
        folder_refused(fleet, folder, error);
    for (size_t i = 0; i < found.count; i++) {
        const char *name = found.at[i];
        const char *owner = owner_of(&fleet->base_keys, name);
        if (owner != NULL && text_ends(name, ".pdf") && is_printed_boat(fleet, owner) &&
            !names_hold(&printing->written, name) &&
            is_plain_file(text_format(fleet->arena, "%s/%s", folder, name)))
            printf("%s/%s: not of this run\n", folder, name);
    }
}

/* ---- the run ---- */

static void boat_print_in(struct printing *printing, const struct fleet *fleet, size_t index)
{
    const struct options *options = printing->options;
    progress_tell(&printing->progress, index, fleet->boat_keys[index]);
    struct boat_work work = boat_work(options, fleet, index);
    struct chosen chosen = {0};
    progress_clear(&printing->progress);
    if (work.set != NULL)
        chosen = pages_choose(options, fleet, &work);
    if (chosen.count == 0)
        printf("%s: no card could be printed\n", work.key);
    else if (options->dump)
        dump_write(options, fleet, &work, &chosen);
    else if (options->cards.count == 0)
        set_write(printing, fleet, &work, &chosen);
    if (!options->dump && (options->each || options->cards.count > 0))
        cards_write(printing, fleet, &work, &chosen);
}

static void boat_print(struct printing *printing, size_t index)
{
    struct fleet one = fleet_for_boat(printing->fleet);
    boat_print_in(printing, &one, index);
    arena_free(one.arena);
}

enum exit_status command_print(const struct options *options)
{
    struct fleet fleet;
    if (fleet_open(options, &fleet) &&
        folder_ready(options->output, fleet.arena, fleet.problems)) {
        struct printing printing = {options, &fleet,
                                    progress_begin(options->quiet, fleet.boat_count), {0}};
        folder_sweep(options->output, fleet.arena);
        for (size_t i = 0; i < fleet.boat_count; i++)
            boat_print(&printing, i);
        if (!options->dump)
            older_tell(&printing);
    }
    enum exit_status status = report_of_cards(&fleet);
    if (!options->quiet && status != EXIT_USE)
        report_left_for_check(&fleet);
    fleet_close(&fleet);
    return status;
}
