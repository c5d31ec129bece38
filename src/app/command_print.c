/* command_print.c - the files that are printed: one PDF a boat and language; or one a card,
 * with all its pages (room: app). What fails of one boat or file stops no other. */
#include "draw.h"
#include "job.h"
#include "layout.h"
#include "print_list.h"
#include "print_older.h"
#include "print_overview.h"
#include "print_stickers.h"
#include "progress.h"
#include "register_file.h"

#include <stdio.h>
#include <string.h>

/* Pages that were asked for, and the sheet of each. */
struct chosen {
    const struct page **pages;
    const struct sheet **sheets;
    size_t count;
};

/* The run, and the names of the files that it wrote. */
struct printing {
    const struct options *options;
    const struct fleet *fleet;
    struct progress progress;
    struct names written;
    size_t chosen;                 /* pages of the boat being printed that were asked for */
    struct print_record record;    /* of her, for the register */
};

static struct chosen pages_choose(const struct sheets *sheets)
{
    struct chosen chosen = {0};
    chosen.pages = arena_array(sheets->boat->arena, sheets->page_count, sizeof *chosen.pages);
    chosen.sheets = arena_array(sheets->boat->arena, sheets->page_count, sizeof *chosen.sheets);
    for (size_t i = 0; i < sheets->page_count; i++) {
        const struct sheet_page *page = &sheets->pages[i];
        if (page->page == NULL || !card_wanted(sheets->boat->job->options, page->sheet))
            continue;
        chosen.pages[chosen.count] = page->page;
        chosen.sheets[chosen.count++] = page->sheet;
    }
    return chosen;
}

static const char *cards_ending(const struct sheets *sheets)
{
    return sheets_ending(sheets, base_paper(sheets->boat->job->fleet));
}

static void dump_write(const struct sheets *sheets, const struct chosen *chosen)
{
    const struct boat_job *boat = sheets->boat;
    for (size_t i = 0; i < chosen->count; i++) {
        struct text_builder out = text_builder_in(boat->arena);
        page_dump(chosen->pages[i], &out);
        file_put(boat->job->options->output,
                 text_format(boat->arena, "%s-%s%s.dump", boat->key, chosen->pages[i]->id,
                             cards_ending(sheets)),
                 (struct bytes){(const unsigned char *)out.at, out.length}, boat->arena,
                 boat->problems);
    }
}

/* tern.pdf is the final set; a draft or a single card is never called so. */
static const char *file_name(const struct sheets *sheets, const char *card)
{
    const struct boat_job *boat = sheets->boat;
    return text_format(boat->arena, "%s%s%s%s%s.pdf", boat->key, card == NULL ? "" : "-",
                       card == NULL ? "" : card, boat->job->options->draft ? "-draft" : "",
                       cards_ending(sheets));
}

/* A boat called as this file would be, such as tamarisk-flooding? Or was a file of that name
 * written by this run, as where a card and the set of such a boat are both drafts? */
static bool name_taken(const struct printing *printing, const struct boat_job *boat,
                       const char *name)
{
    const char *other = arena_copy(boat->arena, name, strlen(name) - strlen(".pdf"));
    if (!text_equal(other, boat->key) && names_hold(&printing->fleet->base_keys, other))
        problem_add(boat->problems, SEVERITY_ERROR, (struct place){0},
                    "give that boat's file another name",
                    "%s would be the file of one card, a draft, a language or a paper and of "
                    "the boat %s", name, other);
    else if (names_hold(&printing->written, name))
        problem_add(boat->problems, SEVERITY_ERROR, (struct place){0},
                    "give one of the two boats' files another name",
                    "%s was written by this run already and would be written over", name);
    else
        return false;
    return true;
}

/* One file of these pages; false, with a problem, when it could not be made. With --list it is
 * only looked whether it would have a name of its own. */
static bool file_write(struct printing *printing, const struct sheets *sheets,
                       const struct document *document, const char *name)
{
    const struct boat_job *boat = sheets->boat;
    struct bytes bytes;
    if (name_taken(printing, boat, name))
        return false;
    if (!printing->options->list &&
        (!pdf_make(document, printing->fleet->faces, boat->arena, &bytes, boat->problems) ||
         !file_put(printing->options->output, name, bytes, boat->arena, boat->problems)))
        return false;
    names_add(&printing->written, name, printing->fleet->arena);
    return true;
}

/* ---- leaves ---- */

/* May a page of that sheet be the back of the one before it? On paper of one side only of a card of
 * steps, which has its call there: plans and the distress call hang side by side. */
static bool has_backs(const struct chosen *chosen, size_t index)
{
    return chosen->pages[index]->paper->sides == TWO_SIDES ||
           sheet_steps(chosen->sheets[index])->count > 0;
}

static bool is_back(const struct chosen *chosen, size_t index)
{
    size_t first = index;
    while (first > 0 && chosen->sheets[first - 1] == chosen->sheets[index])
        first--;
    return has_backs(chosen, index) && (index - first) % 2 == 1;
}

static bool has_two_sides(const struct chosen *chosen)
{
    bool two = false;
    for (size_t i = 0; i < chosen->count; i++)
        two = two || chosen->pages[i]->paper->sides == TWO_SIDES || is_back(chosen, i);
    return two;
}

/* Where something has a back, all is printed on both sides, and each leaf that has none gets a
 * blank one. */
static struct chosen leaves_fill(const struct boat_job *boat, const struct chosen *chosen)
{
    struct chosen filled = {0};
    filled.pages = arena_array(boat->arena, 2 * chosen->count, sizeof *filled.pages);
    for (size_t i = 0; i < chosen->count; i++) {
        bool backed = is_back(chosen, i) || (i + 1 < chosen->count && is_back(chosen, i + 1));
        filled.pages[filled.count++] = chosen->pages[i];
        if (!backed && has_two_sides(chosen))
            filled.pages[filled.count++] = page_blank(chosen->pages[i], boat->arena);
    }
    return filled;
}

/* Of these pages, under her name and what they are. */
static struct document document_of(const struct sheets *sheets, const struct chosen *chosen,
                                   const char *title)
{
    const struct boat_job *boat = sheets->boat;
    struct chosen filled = leaves_fill(boat, chosen);
    return (struct document){
        .title = words_fill(sheets->input.words, boat->arena, WORD_DOCUMENT_TITLE, "boat",
                            boat->boat->facts.name.text, "what", title, NULL),
        .subject = boat->job->fleet->base->name.text,
        .language = words_language(sheets->input.words), .pages = filled.pages,
        .count = filled.count,
        .two_sides = has_two_sides(chosen)};
}

static void set_write(struct printing *printing, const struct sheets *sheets,
                      const struct chosen *chosen)
{
    const struct options *options = printing->options;
    const struct set_kind *kind = &sheets->boat->job->kinds[sheets->part.kind];
    struct document document = document_of(sheets, chosen,
                                           words_get(sheets->input.words, kind->title));
    const char *name = file_name(sheets, NULL);
    if (!file_write(printing, sheets, &document, name))
        return;
    record_sheets(&printing->record, sheets, chosen->sheets, chosen->count);
    if (!options->quiet)
        printf("%s/%s: %zu of %zu cards%s\n", options->output, name, chosen->count,
               sheets->page_count,
               options->draft ? "; a draft, not to be hung: the final set is left as it is" : "");
}

/* A card asked for by name is told alone. */
static void card_tell(const struct options *options, const struct sheets *sheets,
                      const char *name)
{
    if (!options->quiet)
        printf("%s/%s: one of %zu cards%s; the set is left as it is\n", options->output, name,
               sheets->page_count, options->draft ? ", a draft, not to be hung" : "");
}

/* Those of --each are told together. */
static void each_card_tell(const struct options *options, const struct sheets *sheets,
                           size_t written)
{
    if (!options->quiet && written > 0)
        printf("%s/%s-*%s%s.pdf: %zu files, one a card\n", options->output, sheets->boat->key,
               options->draft ? "-draft" : "", cards_ending(sheets), written);
}

/* Of the pages from `first` on, those of the same sheet. */
static size_t pages_of_sheet(const struct chosen *chosen, size_t first)
{
    size_t count = 1;
    while (first + count < chosen->count &&
           chosen->sheets[first + count] == chosen->sheets[first])
        count++;
    return count;
}

/* One file a card, with all its pages. One that cannot be written stops no other. */
static void cards_write(struct printing *printing, const struct sheets *sheets,
                        const struct chosen *chosen)
{
    const struct options *options = printing->options;
    size_t written = 0;
    for (size_t i = 0, count; i < chosen->count; i += count) {
        const struct sheet *sheet = chosen->sheets[i];
        count = pages_of_sheet(chosen, i);
        const struct chosen own = {&chosen->pages[i], &chosen->sheets[i], count};
        struct document document = document_of(sheets, &own, sheet->name);
        const char *name = file_name(sheets, sheet->id);
        if (!file_write(printing, sheets, &document, name))
            continue;
        record_sheets(&printing->record, sheets, own.sheets, own.count);
        written++;
        if (options->cards.count > 0)
            card_tell(options, sheets, name);
        else if (options->list)
            printf("%s/%s\n", options->output, name);
    }
    if (options->cards.count == 0 && !options->list)
        each_card_tell(options, sheets, written);
}

/* All pages small on one more. */
static void overview_write(struct printing *printing, const struct sheets *sheets,
                           const struct chosen *chosen)
{
    const struct options *options = printing->options;
    const struct page *page = overview_page(sheets, chosen->pages, chosen->sheets, chosen->count);
    struct chosen one = *chosen;
    const char *name = file_name(sheets, "proof");
    if (page == NULL || options->list)
        return;
    one.pages = &page;
    one.count = 1;
    if (options->dump) {
        dump_write(sheets, &one);
        return;
    }
    struct document document = document_of(sheets, &one,
                                           words_get(sheets->input.words,
                                                     WORD_DOCUMENT_OVERVIEW));
    if (file_write(printing, sheets, &document, name) && !options->quiet)
        printf("%s/%s: %zu pages on one\n", options->output, name, chosen->count);
}

/* ---- the run ---- */

static void boat_begin_print(void *run, struct boat_job *boat)
{
    struct printing *printing = run;
    printing->chosen = 0;
    progress_tell(&printing->progress, boat->index, boat->key);
}

/* The files of the pages that were asked for. */
static void chosen_print(struct printing *printing, const struct sheets *sheets,
                         const struct chosen *chosen)
{
    const struct options *options = printing->options;
    if (options->dump)
        dump_write(sheets, chosen);
    else if (options->cards.count == 0)
        set_write(printing, sheets, chosen);
    if (!options->dump && (options->each || options->cards.count > 0))
        cards_write(printing, sheets, chosen);
    if (options->proof)
        overview_write(printing, sheets, chosen);
}

static void list_tell(const struct sheets *sheets)
{
    struct text_builder out = text_builder_in(sheets->boat->arena);
    sheets_list_add(sheets, &out);
    if (out.length > 0)
        fwrite(out.at, 1, out.length, stdout);
}

static void sheets_print(void *run, struct sheets *sheets)
{
    struct printing *printing = run;
    const struct options *options = printing->options;
    struct chosen chosen = pages_choose(sheets);
    progress_clear(&printing->progress);
    printing->chosen += chosen.count;
    if (chosen.count > 0)
        chosen_print(printing, sheets, &chosen);
    if (options->list)
        list_tell(sheets);
}

static void boat_end_print(void *run, struct boat_job *boat)
{
    struct printing *printing = run;
    progress_clear(&printing->progress);
    record_write(&printing->record, boat);
    if (printing->chosen == 0)
        printf("%s: no card could be printed\n", boat->key);
}

static void boats_print(const struct options *options, struct fleet *fleet)
{
    static const struct job_use use = {.last = STEP_PROVE, .begin = boat_begin_print,
                                       .sheets = sheets_print, .end = boat_end_print};
    struct job job = job_of(options, fleet);
    struct printing printing = {.options = options, .fleet = fleet};
    job.asked_only = options->cards.count > 0;
    if (!options->quiet)
        printing.progress = progress_begin(fleet->boat_count);
    if (!options->list)
        folder_sweep(options->output, fleet->arena);
    job_run(&job, &use, &printing);
    if (!options->dump && !options->list)
        older_tell(fleet, options->output, &printing.written);
}

enum exit_status command_print(const struct options *options)
{
    struct fleet fleet;
    bool begun = fleet_open(options, NEED_TEXTS | NEED_FACES, &fleet) &&
                 (options->list ||
                  folder_ready(options->output, fleet.arena, fleet.problems));
    if (begun)
        (options->stickers ? stickers_print : boats_print)(options, &fleet);
    enum exit_status status = report_of_cards(&fleet);
    if (begun && !options->quiet)
        report_left_for_check(&fleet);
    fleet_close(&fleet);
    return status;
}
