/* print_boat.c - the files of one boat: one PDF a language and paper, or one a card with all its
 * pages (room: app). They are written under names that nobody knows and get theirs from the run:
 * what fails of one boat or file stops no other. */
#include "print_boat.h"

#include "layout.h"
#include "print_inputs.h"
#include "print_list.h"
#include "print_overview.h"
#include "print_pages.h"
#include "printed_put.h"
#include "register_file.h"

#include <string.h>

/* The boat that is being printed. */
struct boat_printing {
    const struct print_run *run;
    struct print_made made;
    size_t chosen;                 /* pages of hers that were asked for */
};

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

/* Is there a boat called as this file would be, such as tamarisk-flooding? */
static bool boat_named_so(const struct boat_printing *printing, const struct boat_job *boat,
                          const char *name)
{
    const char *other = arena_copy(boat->arena, name, strlen(name) - strlen(".pdf"));
    if (text_equal(other, boat->key) || !names_hold(&printing->run->fleet->base_keys, other))
        return false;
    problem_add(boat->problems, SEVERITY_ERROR, NO_PLACE, "give that boat's file another name",
                "%s would be the file of one card, a draft, a language or a paper and of "
                "the boat %s", name, other);
    return true;
}

/* One file of these pages, told by `text` once it stands; NULL, with a problem, when it could not
 * be made. With --list it is only looked whether it would have a name of its own. */
static struct print_event *file_make(struct boat_printing *printing, const struct sheets *sheets,
                                     const struct document *document, const char *name,
                                     const char *text)
{
    const struct boat_job *boat = sheets->boat;
    const struct print_run *run = printing->run;
    struct file_draft draft = {.state = DRAFT_NONE};
    struct bytes bytes;
    if (boat_named_so(printing, boat, name))
        return NULL;
    if (!run->options->list &&
        (!pdf_make(document, run->fleet->faces, boat->arena, &bytes, boat->problems) ||
         !file_draft_write(run->options->output, name, bytes, boat->arena, boat->problems,
                           &draft)))
        return NULL;
    if (draft.state == DRAFT_WAITING)
        print_drafts_add(run->drafts, &draft);
    struct print_event *event = print_event_add(&printing->made, PRINT_FILE, text);
    event->file = (struct print_file){
        .name = name, .language = words_language(sheets->input.words),
        .paper = boat->job->papers[sheets->part.paper].key, .rows = "",
        .written = !run->options->list, .draft = draft};
    return event;
}

/* The lines of the register for these sheets: of final cards that are written, not of specimens
 * where there is no register. */
static const char *rows_of(const struct boat_printing *printing, const struct sheets *sheets,
                           const struct chosen *chosen)
{
    const struct options *options = printing->run->options;
    bool specimen = sheets->boat->boat->facts.specimen.answer == ANSWER_YES;
    if (options->list || options->draft || (specimen && !printing->run->registered))
        return "";
    return register_lines(sheets, chosen->sheets, chosen->count);
}

static const char *unless_quiet(const struct boat_printing *printing, const char *text)
{
    return printing->run->options->quiet ? "" : text;
}

static void set_write(struct boat_printing *printing, const struct sheets *sheets,
                      const struct chosen *chosen)
{
    const struct options *options = printing->run->options;
    struct arena *arena = sheets->boat->arena;
    const struct set_kind *kind = &sheets->boat->job->kinds[sheets->part.kind];
    struct document document = chosen_document(sheets, chosen,
                                               words_get(sheets->input.words, kind->title));
    const char *name = file_name(sheets, NULL);
    const char *text = text_format(
        arena, "%s/%s: %zu of %zu cards%s\n", options->output, name, chosen->count,
        sheets->page_count,
        options->draft ? "; a draft, not to be hung: the final set is left as it is" : "");
    struct print_event *event = file_make(printing, sheets, &document, name,
                                          unless_quiet(printing, text));
    if (event == NULL)
        return;
    event->file.cards = chosen->count;
    event->file.of_cards = sheets->page_count;
    event->file.rows = rows_of(printing, sheets, chosen);
}

/* A card asked for by name is told alone, with how many of the pages are its own. */
static const char *card_text(const struct boat_printing *printing, const struct sheets *sheets,
                             const char *name, size_t pages)
{
    const struct options *options = printing->run->options;
    if (options->cards.count > 0)
        return unless_quiet(printing, text_format(sheets->boat->arena,
                                          "%s/%s: %zu of %zu pages%s; the set is left as it is\n",
                                          options->output, name, pages, sheets->page_count,
                                          options->draft ? ", a draft, not to be hung" : ""));
    return options->list ? text_format(sheets->boat->arena, "%s/%s\n", options->output, name) : "";
}

/* Those of --each are told together. */
static void each_card_tell(struct boat_printing *printing, const struct sheets *sheets)
{
    const struct options *options = printing->run->options;
    if (options->quiet || options->list || options->cards.count > 0)
        return;
    print_event_add(&printing->made, PRINT_TALLY,
                    text_format(sheets->boat->arena, "%s/%s-*%s%s.pdf", options->output,
                                sheets->boat->key, options->draft ? "-draft" : "",
                                cards_ending(sheets)));
}

/* One file a card, with all its pages. One that cannot be written stops no other. */
static void cards_write(struct boat_printing *printing, const struct sheets *sheets,
                        const struct chosen *chosen)
{
    for (size_t i = 0, count; i < chosen->count; i += count) {
        const struct sheet *sheet = chosen->sheets[i];
        count = chosen_of_sheet(chosen, i);
        const struct chosen own = {&chosen->pages[i], &chosen->sheets[i], count};
        struct document document = chosen_document(sheets, &own, sheet->name);
        const char *name = file_name(sheets, sheet->id);
        struct print_event *event = file_make(printing, sheets, &document, name,
                                              card_text(printing, sheets, name, count));
        if (event == NULL)
            continue;
        event->file.cards = count;
        event->file.of_cards = sheets->page_count;
        event->file.rows = rows_of(printing, sheets, &own);
    }
    each_card_tell(printing, sheets);
}

/* All pages small on one more. */
static void overview_write(struct boat_printing *printing, const struct sheets *sheets,
                           const struct chosen *chosen)
{
    const struct options *options = printing->run->options;
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
    struct document document = chosen_document(sheets, &one,
                                               words_get(sheets->input.words,
                                                         WORD_DOCUMENT_OVERVIEW));
    file_make(printing, sheets, &document, name,
              unless_quiet(printing, text_format(sheets->boat->arena, "%s/%s: %zu pages on one\n",
                                         options->output, name, chosen->count)));
}

/* ---- the boat ---- */

/* The files of the pages that were asked for. */
static void chosen_print(struct boat_printing *printing, const struct sheets *sheets,
                         const struct chosen *chosen)
{
    const struct options *options = printing->run->options;
    if (options->dump)
        dump_write(sheets, chosen);
    else if (options->cards.count == 0)
        set_write(printing, sheets, chosen);
    if (!options->dump && (options->each || options->cards.count > 0))
        cards_write(printing, sheets, chosen);
    if (options->proof)
        overview_write(printing, sheets, chosen);
}

static void list_tell(struct boat_printing *printing, const struct sheets *sheets)
{
    struct text_builder out = text_builder_in(sheets->boat->arena);
    sheets_list_add(sheets, &out);
    if (out.length > 0)
        print_event_add(&printing->made, PRINT_TOLD, out.at);
}

static void sheets_print(void *of, struct sheets *sheets)
{
    struct boat_printing *printing = of;
    struct chosen chosen = pages_choose(sheets);
    printing->chosen += chosen.count;
    if (chosen.count > 0)
        chosen_print(printing, sheets, &chosen);
    if (printing->run->options->list)
        list_tell(printing, sheets);
}

static void boat_end_print(void *of, struct boat_job *boat)
{
    struct boat_printing *printing = of;
    printing->made.record = record_sum(boat);
    printing->made.inputs = boat->source == NULL ? NULL : inputs_sum(printing->run, boat);
    if (printing->chosen == 0 && !problems_reach(boat->problems, SEVERITY_USE))
        print_event_add(&printing->made, PRINT_TOLD,
                        text_format(boat->arena, "%s: no card could be printed\n", boat->key));
}

/* All that was said of her, when the fleet was opened too. */
static void messages_take(struct print_made *made, const struct boat_job *boat)
{
    struct problems *all = problems_new(boat->arena);
    problems_join(all, boat->job->fleet->boats[boat->index].problems);
    problems_join(all, boat->problems);
    size_t count;
    const struct problem *list = problems_sorted(all, &count);
    for (size_t i = 0; i < count; i++) {
        struct text_builder text = text_builder_in(boat->arena);
        bool told = is_told_with_cards(&list[i]);
        if (told)
            problem_print(&list[i], &text);
        bool shared = list[i].place.source == NULL || list[i].place.source != boat->source;
        print_message_add(made, &(struct print_message){list[i].severity, told, shared, text.at});
    }
    made->deficiencies = deficiencies_for_check(all);
}

void boat_print(const struct print_run *run, size_t index, struct text_builder *out)
{
    static const struct job_use use = {.last = STEP_PROVE, .sheets = sheets_print,
                                       .end = boat_end_print};
    struct boat_job boat = boat_begin(run->job, index);
    struct boat_printing printing = {.run = run, .made = {.arena = boat.arena}};
    print_drafts_take_over(run->drafts);
    printing.made.process = run->drafts->process;
    if (!files_stand(run, &boat, &printing.made)) {
        job_boat_run(&use, &printing, &boat);
        messages_take(&printing.made, &boat);
    }
    print_made_pack(&printing.made, out);
    arena_free(boat.arena);
}
