/* layout.c - a set of sheets onto pages (room: layout).
 *
 * Each sheet is first taken to stand whole, on one page or on as many as its template knows
 * that it needs. What all pages share is found, then each page takes the largest sizes of its
 * own. Where cards are full, the lines of the head that all share go to their floors; then, where
 * pages are full, what yields goes from their sheets, or they take more pages, and
 * all is tried again, since the others may have room then: until nothing is full, or nothing is
 * left that yields. What the last try finds wrong is told, and nothing of the tries before. */
#include "boat_slots.h"
#include "page_known.h"
#include "paragraph_known.h"

#define SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

struct laying_set {
    const struct layout_input *input;
    const struct sheets_asked *asked;   /* NULL: all are */
    struct arena *arena;         /* for the pages */
    struct arena *scratch;       /* for the trials of this try, thrown away with it */
    struct problems *problems;   /* of this try */
    struct laying *laying;       /* one a sheet of the set */
    struct known_page **known;   /* the same, of all tries */
    struct known_paragraphs *paragraphs;
    struct boat_slots slots;     /* where tags stand on every card */
    enum head_lines head_lines;
};

static struct pen pen_for(const struct laying_set *set, const struct sheet *sheet,
                          struct arena *arena)
{
    return (struct pen){.faces = set->input->faces, .known = set->paragraphs,
                        .texts = paragraphs_texts(set->paragraphs), .arena = arena,
                        .problems = set->problems,
                        .sheet = sheet, .paper = set->input->paper, .slots = &set->slots};
}

/* What stands for a page of a plan that is not asked for. */
static const struct page measured_page;

/* Of a plan that is not asked for only is found how many pages it has: what all pages share hangs
 * on that, and so do numbers of pages. */
static bool is_measured(const struct laying_set *set, const struct laying *laying)
{
    const struct sheets_asked *asked = set->asked;
    return asked != NULL && laying->count > 0 &&
           template_works[laying->templates[0]].failure == FULL_IS_TOLD &&
           !asked->asked(asked->of, laying->whole);
}

static bool is_laid(const struct laying_set *set, const struct sheet *sheet)
{
    return !sheet->unsafe && (!sheet->held || set->input->draft);
}

/* ---- one page ---- */

static const char *page_id(const struct laying *laying, size_t index, struct arena *arena)
{
    return index == 0 ? laying->whole->id
                      : text_format(arena, "%s_%zu", laying->whole->id, index + 1);
}

static const struct page *page_of(struct pen *pen, const char *id)
{
    struct page *page = arena_alloc(pen->arena, sizeof *page);
    const char *label = sheet_title(pen->sheet)->number;
    *page = (struct page){.id = id, .sheet = pen->sheet, .title = pen->sheet->name,
                          .label = text_empty(label) ? NULL : label,
                          .language = pen->sheet->language, .paper = pen->paper,
                          .palette = pen->paper->palette, .trim = pen->paper->trim,
                          .width = pen->paper->width, .height = pen->paper->height,
                          .items = pen->items, .count = pen->count};
    reading_settle(pen, page);
    return page;
}

/* Of the sheet's pages, the one of that index; what it tells goes to problems of its own. */
static struct made_page page_make(const struct laying_set *set, const struct shared *shared,
                                  const struct laying *laying, size_t index)
{
    const struct sheet *sheet = laying->sheets[index];
    enum template_key key = laying->templates[index];
    const struct template_work *work = &template_works[key];
    struct problems *problems = problems_part(set->problems);
    struct pen pen = pen_for(set, sheet, set->arena), trial = pen_for(set, sheet, set->scratch);
    pen.whole = trial.whole = laying->whole;
    pen.problems = trial.problems = problems;
    struct shared own = {shared->sizes, page_needs_of(&trial, &shared->needs)};
    if (work->fits != NULL && is_measured(set, laying))
        return (struct made_page){&measured_page, !work->fits(&trial, &own.needs), problems};
    struct frame frame = frame_make(pen.paper, key, &own.needs);
    head_place(&pen, &frame, own.sizes);
    bool fits = work->place(&pen, &trial, &own);
    bool full = !fits || (pen.failed && work->failure == FULL_PAGE_FAILS);
    if (fits)
        foot_place(&pen, &frame);
    cut_marks_place(&pen);
    return (struct made_page){
        pen.failed || !fits ? NULL : page_of(&pen, page_id(laying, index, set->arena)), full,
        problems};
}

static void page_lay(const struct laying_set *set, const struct shared *shared, size_t sheet,
                     size_t index)
{
    struct laying *laying = &set->laying[sheet];
    const struct made_page *made = page_known(set->known[sheet], laying, index, shared);
    if (made == NULL) {
        struct made_page *now = page_know(&set->known[sheet], laying, index, shared, set->arena);
        *now = page_make(set, shared, laying, index);
        made = now;
    }
    problems_join(set->problems, made->problems);
    laying->full[index] = made->full;
    laying->pages[index] = made->page;
}

/* ---- all pages ---- */

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

static void set_try(struct laying_set *set)
{
    set->scratch = arena_new(SCRATCH_LIMIT);
    struct page_list all = sheets_split(set), kept = pages_kept(set, &all);
    struct pen trial = pen_for(set, NULL, set->scratch);
    struct shared of_all = shared_find(&all, &trial), of_kept = shared_find(&kept, &trial);
    for (size_t i = 0; i < set->input->set->count; i++)
        for (size_t p = 0; p < set->laying[i].count; p++)
            page_lay(set, set->laying[i].lost ? &of_all : &of_kept, i, p);
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

/* The line for a berth is as tall on all cards that have it: where what to say there yields on
 * one of them, it does on all. */
static void berth_say_agree(struct laying_set *set)
{
    int least = trim_nothing().least[BLOCK_BERTH_SAY];
    for (size_t i = 0; i < set->input->set->count; i++)
        if (!set->laying[i].lost && set->laying[i].trim.least[BLOCK_BERTH_SAY] < least)
            least = set->laying[i].trim.least[BLOCK_BERTH_SAY];
    for (size_t i = 0; i < set->input->set->count; i++)
        if (!set->laying[i].lost)
            set->laying[i].trim.least[BLOCK_BERTH_SAY] = least;
}

/* Type above its floor goes before anything that a card says. False: no card is full, or the lines
 * of the head are at their floors. */
static bool head_lines_lessen(struct laying_set *set)
{
    if (set->head_lines == HEAD_LINES_LEAST)
        return false;
    for (size_t i = 0; i < set->input->set->count; i++) {
        const struct laying *laying = &set->laying[i];
        if (is_full(laying) && !laying->lost && sheet_block(laying->whole, BLOCK_STEPS) != NULL)
            set->head_lines = HEAD_LINES_LEAST;
    }
    return set->head_lines == HEAD_LINES_LEAST;
}

/* False: nothing is full, or nothing is left that yields. */
static bool set_lessen(struct laying_set *set)
{
    bool lessened = false;
    for (size_t i = 0; i < set->input->set->count; i++) {
        struct laying *laying = &set->laying[i];
        if (is_full(laying))
            lessened |= template_works[laying->templates[0]].lessen(laying);
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
    } while (head_lines_lessen(set) || set_lessen(set));
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

static struct laid_set set_laid(const struct laying_set *set)
{
    size_t count = set->input->set->count;
    struct laid_sheet *laid = arena_array(set->arena, count, sizeof *laid);
    for (size_t i = 0; i < count; i++) {
        struct laying *laying = &set->laying[i];
        pages_join(laying);
        for (size_t p = 0; p < laying->count && is_measured(set, laying); p++)
            laying->pages[p] = NULL;
        laid[i] = (struct laid_sheet){laying->whole, laying->pages,
                                      laying->count > 0 ? laying->count : 1, NULL, 0};
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
