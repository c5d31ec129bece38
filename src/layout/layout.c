/* layout.c - a set of sheets onto pages (room: layout).
 *
 * Each sheet is first taken to stand whole, on one page or on as many as its template knows
 * that it needs. What all pages share is found, then each page takes the largest sizes of its
 * own. Where a card of steps is full, the lines of the head that all share go to their floors,
 * before the others are laid out; then, where pages are full, what yields goes from their
 * sheets, or they take more pages, and all is tried again, since the others may have room then:
 * until nothing is full, or nothing is left that yields. What the last try finds wrong is told,
 * and nothing of the tries before. */
#include "laying_set.h"
#include "paragraph_known.h"

#include <stdlib.h>
#include <string.h>

#define SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

/* Of more than that no page leaves behind what it was tried with. */
#define SCRATCH_MOST ((size_t)1024 * 1024)

static bool is_laid(const struct laying_set *set, const struct sheet *sheet)
{
    return !sheet->unsafe && (!sheet->held || set->input->draft);
}

/* ---- all pages ---- */

static void page_lay(const struct laying_set *set, const struct shared *shared, size_t sheet,
                     size_t index)
{
    struct laying *laying = &set->laying[sheet];
    const struct made_page *made = page_made(set, shared, sheet, index);
    problems_join(set->problems, made->problems);
    laying->full[index] = made->full;
    laying->pages[index] = made->page;
}

static struct laying *layings_begin(const struct laying_set *set)
{
    size_t count = set->input->set->count;
    struct laying *layings = arena_array(set->arena, count, sizeof *layings);
    for (size_t i = 0; i < count; i++) {
        struct laying *laying = &layings[i];
        laying->whole = set->input->set->sheets[i];
        laying->trim = trim_nothing();
        laying->sheets = arena_array(set->arena, SHEET_PAGES_MOST, sizeof *laying->sheets);
        laying->templates = arena_array(set->arena, SHEET_PAGES_MOST,
                                        sizeof *laying->templates);
        laying->pages = arena_array(set->arena, SHEET_PAGES_MOST, sizeof *laying->pages);
        laying->full = arena_array(set->arena, SHEET_PAGES_MOST, sizeof *laying->full);
    }
    return layings;
}

/* How each sheet stands on its pages this time. */
static struct page_list sheets_split(const struct laying_set *set)
{
    const struct sheet_set *sheets = set->input->set;
    const struct sheet **list = arena_array(set->arena, sheets->count * SHEET_PAGES_MOST,
                                            sizeof *list);
    struct page_list pages = {.sheets = list, .lines = set->head_lines};
    for (size_t i = 0; i < sheets->count; i++) {
        struct laying *laying = &set->laying[i];
        if (!is_laid(set, laying->whole))
            continue;
        struct pen trial = pen_for(set, laying->whole, set->arena);
        enum template_key key = template_of(laying->whole, set->input->paper);
        for (size_t p = 0; p < SHEET_PAGES_MOST; p++)
            laying->templates[p] = key;
        laying->count = template_works[key].split(laying, &trial);
        for (size_t p = 0; p < laying->count; p++)
            list[pages.count++] = laying->sheets[p];
    }
    return pages;
}

/* Those of them by which the cards that come about share sizes and room. */
static struct page_list pages_kept(const struct laying_set *set, const struct page_list *all)
{
    const struct sheet **list = arena_array(set->arena, all->count + 1, sizeof *list);
    struct page_list kept = {.sheets = list, .lines = all->lines};
    for (size_t i = 0; i < set->input->set->count; i++)
        for (size_t p = 0; p < set->laying[i].count && !set->laying[i].lost; p++)
            list[kept.count++] = set->laying[i].sheets[p];
    return kept;
}

/* How much stands on a card, roughly: of the fullest it is known first that it is too full. */
static size_t fullness(const struct sheet *sheet)
{
    const struct steps_facts *steps = sheet_steps(sheet);
    size_t rows = steps->count;
    for (size_t i = 0; i < steps->count; i++)
        rows += steps->items[i].row_count + steps->items[i].figure_count;
    return rows;
}

struct card_order { size_t sheet, fullness; };

static int fullest_first(const void *a, const void *b)
{
    const struct card_order *first = a, *second = b;
    if (first->fullness != second->fullness)
        return first->fullness > second->fullness ? -1 : 1;
    return first->sheet < second->sheet ? -1 : 1;
}

/* The cards of steps that come about, the fullest first; gives how many. */
static size_t cards_order(const struct laying_set *set, struct card_order *cards)
{
    size_t count = 0;
    for (size_t i = 0; i < set->input->set->count; i++)
        if (!set->laying[i].lost && sheet_block(set->laying[i].whole, BLOCK_STEPS) != NULL)
            cards[count++] = (struct card_order){i, fullness(set->laying[i].whole)};
    qsort(cards, count, sizeof *cards, fullest_first);
    return count;
}

/* Is a card of steps full with these lines of the head? Type above its floor goes before anything
 * that a card says, so that the others need not be tried with them. */
static bool some_card_is_full(const struct laying_set *set, const struct shared *shared)
{
    struct card_order *cards = arena_array(set->scratch, set->input->set->count, sizeof *cards);
    size_t count = cards_order(set, cards);
    for (size_t i = 0; i < count; i++)
        for (size_t p = 0; p < set->laying[cards[i].sheet].count; p++)
            if (page_made(set, shared, cards[i].sheet, p)->full)
                return true;
    return false;
}

/* What all cards are tried with now: where it is not what they were tried with before, each is laid
 * out again. */
static struct shared shared_now(struct laying_set *set, const struct page_list *kept)
{
    struct pen trial = pen_for(set, NULL, set->scratch);
    struct shared now = shared_find(kept, &trial);
    bool differs = set->is_tried && !shared_equal(&set->tried, &now);
    for (size_t i = 0; i < set->input->set->count && differs; i++)
        set->laying[i].changes++;
    set->is_tried = true;
    set->tried = now;
    return now;
}

/* Of the pages with lines of the head that leave each card of steps room, as far as there are
 * such. */
static struct shared shared_of_kept(struct laying_set *set, struct page_list *kept)
{
    struct shared shared = shared_now(set, kept);
    if (set->head_lines == HEAD_LINES_LEAST || !some_card_is_full(set, &shared))
        return shared;
    set->head_lines = kept->lines = HEAD_LINES_LEAST;
    return shared_now(set, kept);
}

/* Before a page is laid out nothing in it is needed any more. */
static void scratch_forget(struct laying_set *set)
{
    if (arena_size(set->scratch) <= SCRATCH_MOST)
        return;
    arena_free(set->scratch);
    set->scratch = arena_new(SCRATCH_LIMIT);
}

static void set_try(struct laying_set *set)
{
    set->scratch = arena_new(SCRATCH_LIMIT);
    struct page_list all = sheets_split(set), kept = pages_kept(set, &all);
    struct pen trial = pen_for(set, NULL, set->scratch);
    struct shared of_kept = shared_of_kept(set, &kept);
    all.lines = set->head_lines;
    struct shared of_all = shared_find(&all, &trial);
    for (size_t i = 0; i < set->input->set->count; i++)
        for (size_t p = 0; p < set->laying[i].count; p++) {
            paragraphs_forget(set->paragraphs);
            scratch_forget(set);
            page_lay(set, set->laying[i].lost ? &of_all : &of_kept, i, p);
        }
    arena_free(set->scratch);
    set->scratch = NULL;
}

static bool is_full(const struct laying *laying)
{
    for (size_t p = 0; p < laying->count; p++)
        if (laying->full[p])
            return true;
    return false;
}

static bool has_berth_lines(const struct sheet *sheet)
{
    return sheet_block(sheet, BLOCK_BERTH) != NULL || sheet_block(sheet, BLOCK_ANCHOR) != NULL ||
           sheet_block(sheet, BLOCK_BERTH_SAY) != NULL;
}

/* The line for a berth is as tall on all cards that have it: where what to say there yields on
 * one of them, it does on all. */
static void berth_say_agree(struct laying_set *set)
{
    int least = trim_nothing().least[BLOCK_BERTH_SAY];
    for (size_t i = 0; i < set->input->set->count; i++)
        if (!set->laying[i].lost && set->laying[i].trim.least[BLOCK_BERTH_SAY] < least)
            least = set->laying[i].trim.least[BLOCK_BERTH_SAY];
    for (size_t i = 0; i < set->input->set->count; i++) {
        struct laying *laying = &set->laying[i];
        int *own = &laying->trim.least[BLOCK_BERTH_SAY];
        if (laying->lost || *own == least || !has_berth_lines(laying->whole))
            continue;
        *own = least;
        laying->changes++;
    }
}

/* False: nothing is full, or nothing is left that yields. */
static bool set_lessen(struct laying_set *set)
{
    bool lessened = false;
    for (size_t i = 0; i < set->input->set->count; i++) {
        struct laying *laying = &set->laying[i];
        if (!is_full(laying) || !template_works[laying->templates[0]].lessen(laying))
            continue;
        laying->changes++;
        lessened = true;
    }
    if (lessened)
        berth_say_agree(set);
    return lessened;
}

static void set_fit(struct laying_set *set, struct problems *problems)
{
    do {
        set->problems = problems_part(problems);
        set_try(set);
    } while (set_lessen(set));
}

/* What all cards gave up together for one that comes about on no page is theirs again. False:
 * there is no such card. */
static bool lost_forgotten(struct laying_set *set)
{
    struct laying *again = layings_begin(set);
    bool some = false;
    for (size_t i = 0; i < set->input->set->count; i++) {
        struct laying *laying = &set->laying[i];
        for (size_t p = 0; p < laying->count; p++)
            laying->lost = laying->lost || laying->pages[p] == NULL;
        some = some || laying->lost;
        if (laying->lost)
            again[i] = *laying;
        memcpy(again[i].tries, laying->tries, sizeof laying->tries);
        again[i].changes = laying->changes + 1;
    }
    if (some) {
        set->laying = again;
        set->head_lines = HEAD_LINES_LARGE;
    }
    return some;
}

/* Pages that belong together are made all or not at all: without its back a front tells nothing of
 * what must never be done. Each page of a plan stands by itself. */
static void pages_join(struct laying *laying)
{
    bool whole = true;
    if (template_works[laying->templates[0]].failure != FULL_PAGE_FAILS)
        return;
    for (size_t p = 0; p < laying->count; p++)
        whole = whole && laying->pages[p] != NULL;
    for (size_t p = 0; p < laying->count && !whole; p++)
        laying->pages[p] = NULL;
}

static int tries_most(const struct laying *laying)
{
    int most = 0;
    for (size_t p = 0; p < SHEET_PAGES_MOST; p++)
        most = laying->tries[p] > most ? laying->tries[p] : most;
    return most;
}

static struct laid_set set_laid(const struct laying_set *set)
{
    size_t count = set->input->set->count;
    struct laid_sheet *laid = arena_array(set->arena, count, sizeof *laid);
    for (size_t i = 0; i < count; i++) {
        struct laying *laying = &set->laying[i];
        pages_join(laying);
        for (size_t p = 0; p < laying->count && is_measured(set, laying); p++)
            laying->pages[p] = NULL;
        laid[i] = (struct laid_sheet){.sheet = laying->whole, .pages = laying->pages,
                                      .page_count = laying->count > 0 ? laying->count : 1,
                                      .tries = tries_most(laying), .changes = laying->changes};
        if (laying->count > 0)
            laid[i].yielded_count = yielded_list(laying->whole, &laying->trim, set->arena,
                                                 &laid[i].yielded);
    }
    return (struct laid_set){laid, count};
}

struct laid_set layout_set(const struct layout_input *input, struct arena *arena,
                           struct problems *problems)
{
    return layout_asked(input, NULL, arena, problems);
}

struct laid_set layout_asked(const struct layout_input *input, const struct sheets_asked *asked,
                             struct arena *arena, struct problems *problems)
{
    struct laying_set set = {.input = input, .asked = asked, .arena = arena,
                             .paragraphs = paragraphs_begin(arena)};
    struct pen pen = pen_for(&set, NULL, arena);
    set.slots = boat_slots_find(input->set, &pen);
    set.laying = layings_begin(&set);
    set.known = arena_array(arena, input->set->count, sizeof *set.known);
    set_fit(&set, problems);
    if (lost_forgotten(&set))
        set_fit(&set, problems);
    problems_settle(problems, set.problems);
    struct laid_set laid = set_laid(&set);
    paragraphs_end(set.paragraphs);
    return laid;
}

const struct page *page_blank(const struct page *before, struct arena *arena)
{
    struct page *page = arena_alloc(arena, sizeof *page);
    struct reading_part *all = arena_alloc(arena, sizeof *all);
    *all = (struct reading_part){.kind = READING_GROUP};
    *page = *before;
    page->label = NULL;
    page->items = NULL;
    page->count = 0;
    page->parts = all;
    page->part_count = 1;
    return page;
}
