/* sheets.c - one part of a job for one boat: composing it, and telling what was found (room:
 * app). */
#include "job.h"
#include "layout.h"
#include "prove.h"

#include "promise.h"

struct compose_input compose_input_of(const struct boat_job *boat, const struct words *words)
{
    const struct fleet *fleet = boat->job->fleet;
    const struct options *options = boat->job->options;
    return (struct compose_input){boat->boat, fleet->base, &fleet->procedures, fleet->authorities,
                                  words, fleet->languages, options->today, options->draft,
                                  fleet->hire};
}

/* A boat has the same cards, cases and gear in each language: it is told once. */
static struct problems *hazards_told(const struct sheets *sheets)
{
    return sheets_are_first_of_kind(sheets) ? sheets->problems
                                            : problems_new(sheets->boat->arena);
}

static const struct set_kind *set_kind_of(const struct sheets *sheets)
{
    promise(sheets->part.kind < sheets->boat->job->kind_count);
    return &sheets->boat->job->kinds[sheets->part.kind];
}

struct sheets sheets_compose(struct boat_job *boat, struct job_part part)
{
    struct sheets sheets = {
        .boat = boat, .part = part, .problems = problems_new(boat->arena),
        .input = compose_input_of(boat, boat->job->languages.rows[part.language])};
    const struct set_kind *kind = set_kind_of(&sheets);
    problems_about(sheets.problems, boat->key, "cards");
    sheets.set = kind->compose(&sheets.input, boat->arena, sheets.problems);
    if (kind->made_of == SET_OF_CARDS)
        sheets.set = hazards_judge(&sheets.input, sheets.set, boat->arena, hazards_told(&sheets));
    boat->parts_made++;
    return sheets;
}

/* ---- laying out ---- */

static size_t pages_count(const struct laid_set *laid)
{
    size_t count = 0;
    for (size_t i = 0; i < laid->count; i++)
        count += laid->sheets[i].page_count;
    return count;
}

static void pages_list(struct sheets *sheets)
{
    const struct laid_set *laid = &sheets->laid;
    sheets->pages = arena_array(sheets->boat->arena, pages_count(laid), sizeof *sheets->pages);
    for (size_t i = 0; i < laid->count; i++)
        for (size_t p = 0; p < laid->sheets[i].page_count; p++) {
            const struct sheet *sheet = laid->sheets[i].sheet;
            const struct page *page = laid->sheets[i].pages[p];
            sheets->pages[sheets->page_count++] = (struct sheet_page){
                .sheet = sheet, .id = page == NULL ? sheet->id : page->id, .page = page};
        }
}

static bool sheet_asked(const void *of, const struct sheet *sheet)
{
    const struct options *options = of;
    return card_wanted(options, sheet);
}

void sheets_lay(struct sheets *sheets)
{
    const struct job *job = sheets->boat->job;
    struct layout_input layout = {sheets->set, job->fleet->faces,
                                  &job->papers[sheets->part.paper],
                                  sheets->input.draft};
    const struct sheets_asked asked = {sheet_asked, job->options};
    problems_about(sheets->problems, sheets->boat->key, "page");
    sheets->laid = layout_asked(&layout, job->asked_only ? &asked : NULL, sheets->boat->arena,
                                sheets->problems);
    pages_list(sheets);
}

bool sheets_are_first_of_kind(const struct sheets *sheets)
{
    return sheets->part.language == 0 && sheets->part.paper == 0;
}

const char *sheets_ending(const struct sheets *sheets, enum paper_key usual)
{
    struct text_builder out = text_builder_in(sheets->boat->arena);
    const struct paper *paper = &sheets->boat->job->papers[sheets->part.paper];
    if (sheets->input.words != sheets->boat->job->fleet->first_language)
        text_add_format(&out, ".%s", words_language(sheets->input.words));
    if (!text_equal(paper->key, paper_of(usual)->key))
        text_add_format(&out, ".%s", paper->key);
    if (paper->palette == PALETTE_MONO)
        text_add(&out, MONO_ENDING);
    return out.at;
}

/* ---- which cards were asked for ---- */

bool card_named(const struct options *options, const char *key, const char *procedure_key)
{
    return options->cards.count == 0 || names_hold(&options->cards, key) ||
           names_hold(&options->cards, procedure_key);
}

bool card_wanted(const struct options *options, const struct sheet *sheet)
{
    return card_named(options, sheet->id, sheet->procedure_key);
}

void no_such_card(struct boat_job *boat, const struct names *keys, const char *name)
{
    problem_add(boat->problems, SEVERITY_USE, (struct place){0},
                names_remedy(keys, name, "cards of this boat: ", boat->arena),
                "there is no card \"%s\"", name);
}

/* Tells of a card that she could have why it is not made; false: there is no such card. */
static bool not_made_tell(const struct sheets *sheets, const char *name)
{
    const struct sheet_set *set = sheets->set;
    const struct procedure_set *procedures = sheets->input.procedures;
    struct boat_job *boat = sheets->boat;
    for (size_t i = 0; i < set->not_hers_count; i++) {
        const struct sheet_not_hers *card = &set->not_hers[i];
        if (!card->left_out || !text_equal(card->procedure_key, name))
            continue;
        problem_add(boat->problems, SEVERITY_USE, (struct place){0},
                    text_format(boat->arena, "take %s out of leave_out there", name),
                    "the card %s is not made: %s", card->name, card->reason);
        return true;
    }
    for (size_t i = 0; i < procedures->count; i++) {
        if (!text_equal(procedures->rows[i]->key.text, name) ||
            !card_not_asked_for(&sheets->input, procedures->rows[i]))
            continue;
        problem_add(boat->problems, SEVERITY_USE, (struct place){0},
                    text_format(boat->arena, "write cards: {add: [%s]} in base.yaml, or in the "
                                "file of the boat", name),
                    "the card %s is made only where it is asked for", name);
        return true;
    }
    return false;
}

/* False, with a problem, when none of hers is called so. */
static bool card_exists(const struct sheets *sheets, const char *name)
{
    struct names keys = {0};
    for (size_t i = 0; i < sheets->set->count; i++) {
        const struct sheet *sheet = sheets->set->sheets[i];
        if (text_equal(name, sheet->id) || text_equal(name, sheet->procedure_key))
            return true;
        names_add(&keys, sheet->id, sheets->boat->arena);
    }
    if (!not_made_tell(sheets, name))
        no_such_card(sheets->boat, &keys, name);
    return false;
}

static bool cards_exist(const struct sheets *sheets)
{
    const struct names *asked = &sheets->boat->job->options->cards;
    bool all = true;
    if (sheets->set->count == 0) {
        problem_add(sheets->boat->problems, SEVERITY_ERROR, (struct place){0},
                    "look at `when:` of the procedures", "no card is for this boat");
        return false;
    }
    for (size_t i = 0; i < asked->count; i++)
        all = card_exists(sheets, asked->at[i]) && all;
    return all;
}

void sheets_tell(struct sheets *sheets)
{
    problems_join(sheets->boat->problems, sheets->problems);
    if (set_kind_of(sheets)->made_of == SET_OF_CARDS)
        lost_facts_tell(sheets);
    problems_about(sheets->boat->problems, sheets->boat->key, "run");
    sheets->asked_exist = set_kind_of(sheets)->made_of == SET_OF_FORMS || cards_exist(sheets);
}
