/* proof_set.c - the cards of a boat together: blocks at one place, one name an item,
 * sources, exits that lead to a card (room: proof). Rules G14, G16, G19, G22. */
#include "paper.h"
#include "proof_room.h"

#include "promise.h"

#include <string.h>

#define PLACE_SLACK MM(0.5)

/* ---- G22 ---- */

/* What of a block stands at one place: its first thing; of steps and plan, whose first things
 * differ in size, the upper left corner of all of it; what grows from the foot of the page, its
 * lower left corner. */
enum fixed_corner { CORNER_OF_FIRST, CORNER_OF_ALL, CORNER_AT_FOOT };

/* Which pages have a block at one place: all, or those that have the line for a berth above it,
 * and those that have not. */
enum fixed_among { AMONG_ALL, AMONG_THOSE_WITH_IT };

/* Blocks of every card, and those of cards with steps only. */
static const struct fixed_block {
    enum block_key key;
    enum fixed_corner corner;
    bool with_steps;
    enum fixed_among among;
} fixed[] = {{BLOCK_MARK, CORNER_OF_FIRST, false, AMONG_ALL},
             {BLOCK_UNAPPROVED, CORNER_OF_FIRST, false, AMONG_ALL},
             {BLOCK_TITLE, CORNER_OF_FIRST, false, AMONG_ALL},
             {BLOCK_SIGNS, CORNER_OF_FIRST, false, AMONG_ALL},
             {BLOCK_CALL_LINE, CORNER_OF_FIRST, false, AMONG_THOSE_WITH_IT},
             {BLOCK_CALL, CORNER_AT_FOOT, true, AMONG_ALL},
             {BLOCK_FOOTER, CORNER_AT_FOOT, false, AMONG_ALL},
             {BLOCK_STEPS, CORNER_OF_ALL, true, AMONG_THOSE_WITH_IT},
             {BLOCK_PLAN, CORNER_OF_ALL, true, AMONG_THOSE_WITH_IT}};

static struct area corner_of(const struct proof_block *block, const struct page_item *first,
                             enum fixed_corner corner)
{
    struct area all = block->area;
    switch (corner) {
    case CORNER_OF_FIRST:
        return first->area;
    case CORNER_OF_ALL:
        return all;
    case CORNER_AT_FOOT:
        return (struct area){all.x, FOOT_OF(all), 0, 0};
    }
    promise_unreached();
}

static bool block_corner(const struct proofing *p, const struct fixed_block *row,
                         struct area *corner, const struct page_item **first)
{
    for (size_t i = 0; i < p->block_count; i++)
        if (p->blocks[i].key == row->key) {
            *first = &p->page->items[p->blocks[i].first];
            *corner = corner_of(&p->blocks[i], *first, row->corner);
            return true;
        }
    return false;
}

static mpt areas_apart(struct area a, struct area b)
{
    mpt x = a.x > b.x ? a.x - b.x : b.x - a.x, y = a.y > b.y ? a.y - b.y : b.y - a.y;
    return x > y ? x : y;
}

/* Are the two laid out alike? All pages of a set are; of paper with two sides the same sides of
 * cards of one kind. */
static bool are_alike(const struct proofing *a, const struct proofing *b)
{
    return a->page->paper->sides == ONE_SIDE ||
           (a->sheet->kind == b->sheet->kind && a->page_index == b->page_index);
}

/* Where the first page has a block that must stand there on the others too; page NULL: none has
 * yet. */
struct fixed_model { const char *page; struct area corner; };

static void corner_judge(struct proofing *p, const struct fixed_block *row,
                         struct fixed_model *model)
{
    const struct page_item *first;
    struct area own;
    if ((row->with_steps && sheet_steps(p->whole)->count == 0) ||
        !block_corner(p, row, &own, &first))
        return;
    proof_measured(p, 1);
    if (model->page == NULL)
        *model = (struct fixed_model){p->page->id, own};
    else if (areas_apart(own, model->corner) > PLACE_SLACK)
        proof_found(p, RULE_BLOCKS_SET, first, "\"%s\" stands %s mm from where %s has it",
                    block_word(row->key), mm_words(p->arena, areas_apart(own, model->corner)),
                    model->page);
}

static bool has_berth_line(const struct proofing *p)
{
    return sheet_block(p->sheet, BLOCK_BERTH) != NULL ||
           sheet_block(p->sheet, BLOCK_ANCHOR) != NULL;
}

/* Of the pages that are laid out as that one is. */
static void block_judge(struct proofing *const *all, size_t count, const struct fixed_block *row,
                        const struct proofing *like)
{
    struct fixed_model with = {NULL}, without = {NULL};
    for (size_t i = 0; i < count; i++) {
        bool apart = row->among == AMONG_THOSE_WITH_IT && has_berth_line(all[i]);
        if (are_alike(all[i], like))
            corner_judge(all[i], row, apart ? &with : &without);
    }
}

/* ---- G16 ---- */

/* What one tag is called somewhere. */
struct term {
    const char *tag, *name;
    const struct item_kind *kind;
    enum block_key block;
    struct place origin;
};
struct term_list { struct term *at; const char **sheets; size_t count, room, sheet_room; };

/* Cards may add how long an extinguisher lasts, the safety plan what it holds:
 * "Extinguisher, empty in 9 s", "Extinguisher, 2 kg". */
static bool one_name(const char *a, const char *b)
{
    size_t length = strcspn(a, ",");
    return length == strcspn(b, ",") && strncmp(a, b, length) == 0;
}

static void term_judge(struct proofing *p, struct term_list *terms, const struct term *term)
{
    proof_measured(p, 1);
    for (size_t i = 0; i < terms->count; i++) {
        const struct term *known = &terms->at[i];
        if (!text_equal(known->tag, term->tag))
            continue;
        struct page_item words = {.origin = term->origin, .block = term->block, .kind = PAGE_BOX};
        if (!one_name(known->name, term->name) || known->kind != term->kind)
            proof_found(p, RULE_ONE_TERM, &words, "%s is \"%s\" here and \"%s\" on %s",
                        term->tag, term->name, known->name, terms->sheets[i]);
        return;
    }
    size_t at = terms->count++;
    terms->at = arena_grow(p->arena, terms->at, at, &terms->room, sizeof *terms->at);
    terms->sheets = arena_grow(p->arena, terms->sheets, at, &terms->sheet_room,
                              sizeof *terms->sheets);
    terms->at[at] = *term;
    terms->sheets[at] = p->page->id;
}

static void row_terms(struct proofing *p, struct term_list *terms, enum block_key block,
                      const struct card_row *rows, size_t count)
{
    for (size_t r = 0; r < count; r++)
        for (size_t i = 0; i < rows[r].item_count; i++) {
            const struct row_item *item = &rows[r].items[i];
            struct term term = {item->tag_count == 1 ? item->tags[0] : NULL, item->name,
                                item->kind, block, item->origin};
            if (term.tag != NULL)
                term_judge(p, terms, &term);
        }
}

static void place_terms(struct proofing *p, struct term_list *terms,
                        const struct plan_place *place)
{
    for (size_t r = 0; r < place->row_count; r++) {
        const struct plan_row *row = &place->rows[r];
        struct term term = {row->marker.tag, row->name, row->kind, BLOCK_LABELS,
                            row->marker.origin};
        if (row->kind != NULL && !text_empty(term.tag))
            term_judge(p, terms, &term);
    }
}

static void terms_judge(struct proofing *const *all, size_t count)
{
    struct term_list terms = {0};
    for (size_t i = 0; i < count; i++) {
        const struct sheet *sheet = all[i]->sheet;
        const struct steps_facts *steps = sheet_steps(sheet);
        for (size_t s = 0; s < steps->count; s++)
            row_terms(all[i], &terms, BLOCK_STEPS, steps->items[s].rows,
                      steps->items[s].row_count);
        row_terms(all[i], &terms, BLOCK_ROWS, sheet_rows(sheet)->rows, sheet_rows(sheet)->count);
        for (size_t s = 0; s < sheet_places(sheet)->count; s++)
            place_terms(all[i], &terms, &sheet_places(sheet)->places[s]);
    }
}

/* ---- G19 ---- */

/* Does a sheet that lists the sources of a set name it? */
static bool source_listed(const struct laid_set *laid, const char *tag)
{
    for (size_t i = 0; i < laid->count; i++)
        if (strstr(sheet_text(laid->sheets[i].sheet, BLOCK_SOURCES)->text, tag) != NULL)
            return true;
    return false;
}

/* Each sentence has its source on its page or, where that has no room for any, on the safety
 * plan. */
static void sources_judge(const struct laid_set *laid, struct proofing *p, enum block_key block)
{
    const struct warnings_facts *warnings = sheet_warnings(p->sheet, block);
    for (size_t i = 0; i < warnings->count; i++) {
        const char *tag = warnings->items[i].tag;
        struct page_item words_of = {.origin = warnings->items[i].origin, .block = block,
                                     .kind = PAGE_BOX};
        proof_measured(p, 1);
        if (text_empty(tag) || (!block_says(p, block, tag) && !source_listed(laid, tag)))
            proof_found(p, RULE_WARNING_SOURCE, &words_of, "no source with \"%s\"",
                        warnings->items[i].text);
    }
}

/* ---- G14 ---- */

static void set_exit_judge(const struct laid_set *laid, struct proofing *p, const char *sheet)
{
    if (text_empty(sheet) || sheet_block(p->sheet, BLOCK_DECISION) == NULL)
        return;
    proof_measured(p, 1);
    for (size_t i = 0; i < laid->count; i++)
        if (text_equal(laid->sheets[i].sheet->procedure_key, sheet) ||
            text_equal(laid->sheets[i].sheet->id, sheet))
            return;
    proof_found(p, RULE_EXIT_CARD, NULL, "no card %s in the set", sheet);
}

void proof_together(const struct laid_set *laid, struct proofing *const *all, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        bool first = true;
        for (size_t before = 0; before < i; before++)
            first = first && !are_alike(all[before], all[i]);
        for (size_t f = 0; first && f < sizeof fixed / sizeof *fixed; f++)
            block_judge(all, count, &fixed[f], all[i]);
    }
    terms_judge(all, count);
    proof_views_together(all, count);
    for (size_t i = 0; i < count; i++) {
        sources_judge(laid, all[i], BLOCK_NEVER);
        sources_judge(laid, all[i], BLOCK_CAUTIONS);
        set_exit_judge(laid, all[i], sheet_decision(all[i]->sheet)->yes_card);
        set_exit_judge(laid, all[i], sheet_decision(all[i]->sheet)->no_card);
    }
}
