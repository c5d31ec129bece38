/* proof_case.c - pages of the specimen fleet that a test may spoil. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "proof_case.h"
#include "text.h"

#define ITEMS_SPARE 12
#define ROWS_SPARE 16

static struct card_case test;
static struct faces *faces;

static struct boat_pages {
    const char *word, *file;
    struct laid_set laid;
} boats[] = {{.word = "", .file = "tests/fleet/boats/tamarisk.yaml"},
             {.word = "samphire ", .file = "tests/fleet/boats/samphire.yaml"},
             {.word = "bramble ", .file = "tests/fleet/boats/bramble.yaml"}};
#define BOAT_COUNT (sizeof boats / sizeof *boats)

int proof_case_open(void **state)
{
    (void)state;
    case_begin(&test);
    faces = case_faces(&test);
    for (size_t i = 0; i < BOAT_COUNT; i++) {
        case_boat(&test, boats[i].file);
        struct layout_input input = {case_compose(&test, false), faces, paper_of(PAPER_A4), false};
        boats[i].laid = layout_set(&input, test.arena, test.problems);
        if (problems_reach(test.problems, SEVERITY_HELD))
            fail_msg("%s", case_problems_text(&test));
    }
    return 0;
}

int proof_case_close(void **state)
{
    (void)state;
    faces_close(faces);
    case_end(&test);
    return 0;
}

/* ---- copies ---- */

/* Copies of a list with room for more. */
static void *copied(const void *list, size_t count, size_t spare, size_t size)
{
    void *copy = arena_array(test.arena, count + spare, size);
    if (count > 0)
        memcpy(copy, list, count * size);
    return copy;
}

/* Of each row its gear too. */
static const struct card_row *rows_copied(const struct card_row *rows, size_t count)
{
    struct card_row *copies = copied(rows, count, ROWS_SPARE, sizeof *copies);
    for (size_t r = 0; r < count; r++)
        copies[r].items = copied(rows[r].items, rows[r].item_count, ROWS_SPARE,
                                 sizeof *rows[r].items);
    return copies;
}

static void card_copy(struct proof_try *try, const struct sheet *card)
{
    const struct steps_facts *steps = sheet_steps(card);
    try->card = *card;
    try->steps = copied(steps->items, steps->count, ROWS_SPARE, sizeof *try->steps);
    for (size_t i = 0; i < steps->count; i++)
        try->steps[i].rows = rows_copied(steps->items[i].rows, steps->items[i].row_count);
    if (steps->count > 0)
        FACTS(try->arena, &try->card, steps, BLOCK_STEPS)->items = try->steps;
}

static const struct boat_pages *boat_named(const char **card)
{
    for (size_t i = BOAT_COUNT; i-- > 1;)
        if (text_begins(*card, boats[i].word)) {
            *card += strlen(boats[i].word);
            return &boats[i];
        }
    return &boats[0];
}

static size_t page_index(const struct boat_pages *boat, const char *id)
{
    struct case_pages pages = case_pages(&test, &boat->laid);
    for (size_t i = 0; i < pages.count; i++)
        if (strcmp(pages.at[i]->id, id) == 0)
            return i;
    fail_msg("there is no page %s", id);
    return 0;
}

struct proof_try try_begin(const char *card)
{
    const struct boat_pages *boat = boat_named(&card);
    struct proof_try try = {
        .arena = test.arena, .faces = faces,
        .page = *case_pages(&test, &boat->laid).at[page_index(boat, card)]};
    card_copy(&try, try.page.sheet);
    try.items = copied(try.page.items, try.page.count, ITEMS_SPARE, sizeof *try.items);
    try.page.items = try.items;
    return try;
}

/* ---- judging ---- */

struct proof_report try_judge(struct proof_try *try)
{
    struct proof_report report;
    try->page.sheet = &try->card;
    proof_page(&try->page, try->faces, try->arena, &report);
    return report;
}

/* The boat's pages with the page of the test in the place of her own. */
static struct laid_set laid_with(const struct laid_set *all, struct proof_try *try)
{
    struct laid_sheet *sheets = copied(all->sheets, all->count, 0, sizeof *sheets);
    try->page.sheet = &try->card;
    for (size_t i = 0; i < all->count; i++) {
        const struct page **pages = copied(sheets[i].pages, sheets[i].page_count, 0,
                                           sizeof *pages);
        for (size_t p = 0; p < sheets[i].page_count; p++)
            if (strcmp(pages[p]->id, try->page.id) == 0)
                pages[p] = &try->page;
        sheets[i].pages = pages;
    }
    return (struct laid_set){sheets, all->count};
}

/* The boat whose page it is a copy of: by the boat's record. */
struct proof_report try_judge_in_set(struct proof_try *try)
{
    const struct boat_pages *boat = &boats[0];
    for (size_t i = 0; i < BOAT_COUNT; i++)
        if (boats[i].laid.sheets[0].sheet->boat == try->card.boat)
            boat = &boats[i];
    size_t own = page_index(boat, try->page.id);
    struct laid_set laid = laid_with(&boat->laid, try);
    return proof_set(&laid, try->faces, try->arena)[own];
}

size_t found_of(const struct proof_report *report, enum proof_rule_key rule)
{
    size_t count = 0;
    for (size_t i = 0; i < report->count; i++)
        count += report->findings[i].rule == rule ? 1 : 0;
    return count;
}

static struct proof_report broken_report(const struct proof_break *row, bool broken)
{
    struct proof_try try = try_begin(row->card);
    row->spoil(&try, broken);
    if (proof_rule(row->rule)->judge == PROOF_SET)
        return try_judge_in_set(&try);
    return try_judge(&try);
}

void break_must_be_caught(const struct proof_break *row)
{
    struct proof_report mended = broken_report(row, false), broken = broken_report(row, true);
    if (found_of(&mended, row->rule) > 0)
        for (size_t i = 0; i < mended.count; i++)
            if (mended.findings[i].rule == row->rule)
                fail_msg("%s: the mended page is caught: %s", row->name,
                         mended.findings[i].measured);
    if (found_of(&broken, row->rule) == 0)
        fail_msg("%s: the broken page passes", row->name);
}
