/* print_pages.c - the pages of one boat that were asked for, as leaves of a document (room: app).
 * Writes nothing. */
#include "print_pages.h"

#include "layout.h"

struct chosen pages_choose(const struct sheets *sheets)
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

size_t chosen_of_sheet(const struct chosen *chosen, size_t first)
{
    size_t count = 1;
    while (first + count < chosen->count &&
           chosen->sheets[first + count] == chosen->sheets[first])
        count++;
    return count;
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

struct document chosen_document(const struct sheets *sheets, const struct chosen *chosen,
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
