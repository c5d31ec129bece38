/* test_budget.c - what a card of steps holds at the most: its texts at the least size on the
 * first paper, and what stands on its page, of every boat of the specimens. Longer than that
 * nobody reads it in an emergency, whatever the room. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <dirent.h>
#include <stdio.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/layout_room.h"
#include "layout/measures.h"
#include "text.h"

#define ITEMS_MOST 15
#define PLACES_MOST 10
#define PLACES_MOST_SILENT 13    /* of a card without the words of a call: nobody may send one */
#define STEPS_MOST 8
#define NEVERS_MOST 3
#define CAUTIONS_MOST 2

#define PT(points) ((mpt)((points) * MPT_PER_POINT))
#define STEPS_WIDTH MM(110.9)
#define BOX_WIDTH MM(62)
#define PAGE_WIDTH MM(190)
#define BAR_WIDTH MM(184)

/* What is measured, and what told of it. */
struct measured {
    struct pen pen;               /* of the page */
    struct text_builder told;     /* of the boat */
    size_t cards, over;           /* of all boats */
};

static void too_much(struct measured *of, const char *what, size_t is, size_t most)
{
    if (is <= most)
        return;
    of->over++;
    text_add_format(&of->told, "\n  %s: %s: %zu, at most %zu", of->pen.sheet->name, what, is, most);
}

/* ---- texts at their least size ---- */

static size_t lines_of(const struct measured *of, const char *text, struct style style, mpt width)
{
    struct place nowhere = {0};
    return paragraph_make(&of->pen, &style, text, width, nowhere).line_count;
}

static size_t box_lines(const struct measured *of, const char *word, const char *text)
{
    struct style style = {ROLE_BOX, FACE_TEXT, PT(12), INK_BLACK};
    return lines_of(of, text_format(test.arena, "**%s** %s", word, text), style, BOX_WIDTH);
}

static void decision_measure(struct measured *of)
{
    const struct decision_facts *asked = sheet_decision(of->pen.sheet);
    struct style ask = {ROLE_BOX, FACE_BOLD, PT(12.5), INK_BLACK};
    if (sheet_block(of->pen.sheet, BLOCK_DECISION) == NULL)
        return;
    too_much(of, asked->ask, lines_of(of, asked->ask, ask, BOX_WIDTH), 2);
    too_much(of, asked->yes, box_lines(of, asked->yes_word, asked->yes), 2);
    too_much(of, asked->no, box_lines(of, asked->no_word, asked->no), 2);
}

static void warnings_measure(struct measured *of)
{
    const struct warnings_facts *nevers = sheet_warnings(of->pen.sheet, BLOCK_NEVER);
    const struct warnings_facts *cautions = sheet_warnings(of->pen.sheet, BLOCK_CAUTIONS);
    size_t lines = 0;
    for (size_t i = 0; i < nevers->count; i++)
        too_much(of, nevers->items[i].text,
                 box_lines(of, nevers->word, nevers->items[i].text), 1);
    for (size_t i = 0; i < cautions->count; i++)
        lines += box_lines(of, cautions->word, cautions->items[i].text);
    too_much(of, "lines of cautions", lines, 4);
    too_much(of, "sentences of NEVER", nevers->count, NEVERS_MOST);
    too_much(of, "cautions", cautions->count, CAUTIONS_MOST);
}

static void head_measure(struct measured *of)
{
    struct style signs = {ROLE_SIGNS, FACE_TEXT, PT(12), INK_BLACK};
    struct style bar = {ROLE_CALL_LINE, FACE_TEXT, PT(12), INK_BLACK};
    const struct cases_facts *cases = sheet_cases(of->pen.sheet);
    struct text_builder all = text_builder_in(test.arena);
    const struct signs_facts *when = sheet_signs(of->pen.sheet);
    const char *words = text_format(test.arena, "**%s** %s", when->word, when->signs);
    for (size_t i = 0; i < cases->count; i++)
        text_add_format(&all, "%s%s", i == 0 ? "" : " | ", cases->items[i].text);
    too_much(of, words, lines_of(of, words, signs, PAGE_WIDTH), 1);
    if (all.length > 0)
        too_much(of, all.at, lines_of(of, all.at, bar, BAR_WIDTH), 1);
}

static void headlines_measure(struct measured *of)
{
    struct style style = {ROLE_HEADLINE, FACE_TEXT, PT(16), INK_BLACK};
    const struct steps_facts *steps = sheet_steps(of->pen.sheet);
    for (size_t i = 0; i < steps->count; i++)
        too_much(of, steps->items[i].headline.text,
                 lines_of(of, steps->items[i].headline.text, style, STEPS_WIDTH), 1);
}

/* ---- what stands on the page ---- */

static void gear_measure(struct measured *of)
{
    const struct steps_facts *steps = sheet_steps(of->pen.sheet);
    bool silent = sheet_block(of->pen.sheet, BLOCK_CALL) == NULL ||
                  sheet_call(of->pen.sheet)->silent;
    size_t places = 0, items = 0;
    for (size_t s = 0; s < steps->count; s++) {
        places += steps->items[s].row_count;
        for (size_t r = 0; r < steps->items[s].row_count; r++)
            items += steps->items[s].rows[r].item_count;
    }
    too_much(of, "steps", steps->count, STEPS_MOST);
    too_much(of, "places", places, silent ? PLACES_MOST_SILENT : PLACES_MOST);
    too_much(of, "pieces of gear", items, ITEMS_MOST);
}

static void page_measure(struct measured *of, const struct page *page)
{
    of->pen = (struct pen){.faces = faces, .arena = test.arena, .problems = test.problems,
                           .sheet = page->sheet, .paper = page->paper};
    headlines_measure(of);
    decision_measure(of);
    warnings_measure(of);
    head_measure(of);
    gear_measure(of);
}

/* ---- all boats ---- */

static void boat_measure(struct measured *of, const char *base, const char *file)
{
    set_up(NULL);
    case_base(&test, text_format(test.arena, "%s/base.yaml", base));
    case_boat(&test, text_format(test.arena, "%s/boats/%s", base, file));
    struct layout_input input = {case_compose(&test, true), faces, paper_of(PAPER_A4), false};
    struct laid_set laid = layout_set(&input, test.arena, test.problems);
    struct case_pages pages = case_pages(&test, &laid);
    of->told = text_builder_in(test.arena);
    for (size_t p = 0; p < pages.count; p++)
        if (pages.at[p] != NULL && sheet_steps(pages.at[p]->sheet)->count > 0) {
            page_measure(of, pages.at[p]);
            of->cards++;
        }
    if (of->told.length > 0)
        print_message("%s/%s:%s\n", base, file, of->told.at);
    tear_down(NULL);
}

static void base_measure(struct measured *of, const char *base)
{
    char folder[64];
    snprintf(folder, sizeof folder, "%s/boats", base);
    DIR *dir = opendir(folder);
    assert_non_null(dir);
    for (struct dirent *entry = readdir(dir); entry != NULL; entry = readdir(dir))
        if (text_ends(entry->d_name, ".yaml"))
            boat_measure(of, base, entry->d_name);
    closedir(dir);
}

/* Those of the islands that are like a model are cards of the same procedures. */
static void every_card_keeps_its_budget(void **state)
{
    static const char *const bases[] = {"tests/fleet", "tests/unusual", "tests/hazard"};
    struct measured of = {.cards = 0};
    (void)state;
    for (size_t b = 0; b < sizeof bases / sizeof *bases; b++)
        base_measure(&of, bases[b]);
    boat_measure(&of, "tests/islands", "eelgrass.yaml");
    boat_measure(&of, "tests/islands", "sundew.yaml");
    assert_true(of.cards > 200);
    assert_int_equal(of.over, 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_card_keeps_its_budget),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
