/* laying_page.c - one page of a sheet, as a try has it (room: layout). Where it was laid out in the
 * same way before, it is not again. */
#include "laying_set.h"

#include "paragraph_known.h"

struct pen pen_for(const struct laying_set *set, const struct sheet *sheet, struct arena *arena)
{
    return (struct pen){.faces = set->input->faces, .known = set->paragraphs,
                        .texts = paragraphs_texts(set->paragraphs), .arena = arena,
                        .problems = set->problems,
                        .sheet = sheet, .paper = set->input->paper, .slots = &set->slots};
}

/* What stands for a page of a plan that is not asked for. */
static const struct page measured_page;

bool is_measured(const struct laying_set *set, const struct laying *laying)
{
    const struct sheets_asked *asked = set->asked;
    return asked != NULL && laying->count > 0 &&
           template_works[laying->templates[0]].failure == FULL_IS_TOLD &&
           !asked->asked(asked->of, laying->whole);
}

static const char *page_id(const struct laying *laying, size_t index, struct arena *arena)
{
    return index == 0 ? laying->whole->id
                      : text_format(arena, "%s_%zu", laying->whole->id, index + 1);
}

static const struct page *page_of(struct pen *pen, const char *id)
{
    struct page *page = arena_alloc(pen->arena, sizeof *page);
    const char *label = sheet_title(pen->sheet)->number;
    struct page_item *items = arena_array(pen->arena, pen->count, sizeof *items);
    for (size_t i = 0; i < pen->count; i++)
        items[i] = pen->items[i];
    pen->items = items;
    pen->room = pen->count;
    *page = (struct page){.id = id, .sheet = pen->sheet, .title = pen->sheet->name,
                          .label = text_empty(label) ? NULL : label,
                          .language = pen->sheet->language, .paper = pen->paper,
                          .palette = pen->paper->palette, .trim = pen->paper->trim,
                          .width = pen->paper->width, .height = pen->paper->height,
                          .items = items, .count = pen->count};
    reading_settle(pen, page);
    return page;
}

/* What the page with that index has of what all share, and what it needs beside it. */
static struct shared shared_by(const struct laying_set *set, const struct shared *shared,
                               const struct laying *laying, size_t index)
{
    struct pen trial = pen_for(set, laying->sheets[index], set->scratch);
    struct shared own = {shared->sizes, page_needs_of(&trial, &shared->needs)};
    if (own.needs.height[AREA_BERTH] == 0)
        own.sizes.berth = 0;
    return own;
}

/* Of the sheet's pages, the one of that index; what it tells goes to problems of its own. */
static struct made_page page_make(const struct laying_set *set, const struct shared *own,
                                  const struct laying *laying, size_t index)
{
    const struct sheet *sheet = laying->sheets[index];
    enum template_key key = laying->templates[index];
    const struct template_work *work = &template_works[key];
    struct problems *problems = problems_part(set->problems);
    struct pen pen = pen_for(set, sheet, set->arena), trial = pen_for(set, sheet, set->scratch);
    pen.whole = trial.whole = laying->whole;
    pen.problems = trial.problems = problems;
    pen.growing = set->scratch;
    if (work->fits != NULL && is_measured(set, laying))
        return (struct made_page){&measured_page, !work->fits(&trial, &own->needs), problems};
    struct frame frame = frame_make(pen.paper, key, &own->needs);
    head_place(&pen, &frame, own->sizes);
    bool fits = work->place(&pen, &trial, own);
    bool full = !fits || (pen.failed && work->failure == FULL_PAGE_FAILS);
    if (fits)
        foot_place(&pen, &frame);
    cut_marks_place(&pen);
    return (struct made_page){
        pen.failed || !fits ? NULL : page_of(&pen, page_id(laying, index, set->arena)), full,
        problems};
}

const struct made_page *page_made(const struct laying_set *set, const struct shared *shared,
                                  size_t sheet, size_t index)
{
    struct laying *laying = &set->laying[sheet];
    const struct shared own = shared_by(set, shared, laying, index);
    const struct made_page *made = page_known(set->known[sheet], laying, index, &own);
    if (made != NULL)
        return made;
    struct made_page *now = page_know(&set->known[sheet], laying, index, &own, set->arena);
    *now = page_make(set, &own, laying, index);
    laying->tries[index]++;
    return now;
}
