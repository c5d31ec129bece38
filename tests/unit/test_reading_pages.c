/* test_reading_pages.c - every page of the specimen fleet, read back from its PDF by poppler: what
 * the structure tree gives are the facts of the sheet, in the order in which they are read. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "card_case.h"
#include "pdf_case.h"
#include "reading_case.h"
#include "text.h"

static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                    "tests/fleet/boats/samphire.yaml",
                                    "tests/fleet/boats/bramble.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof boats[0])

static struct card_case test;

static int open_all(void **state)
{
    case_begin(&test);
    return pdf_case_open(state);
}

static int close_all(void **state)
{
    case_end(&test);
    return pdf_case_close(state);
}

/* ---- steps ---- */

static const char *item_words(const char *words, const struct row_item *item)
{
    for (size_t t = 0; t < item->tag_count; t++)
        words = joined(words, item->tags[t]);
    return joined(joined(joined(words, item->name), item->spot), item->end);
}

/* The place first, then its gear. */
static void rows_expect(struct reading_back *back, const struct card_row *rows, size_t count)
{
    for (size_t r = 0; r < count; r++) {
        const char *words = joined(rows[r].place, rows[r].spot);
        for (size_t i = 0; i < rows[r].item_count; i++)
            words = item_words(words, &rows[r].items[i]);
        expect_next(back, "LBody", words);
    }
}

/* One side, then the other; then what lies on neither. */
static void table_expect(struct reading_back *back, const struct card_step *step)
{
    for (size_t g = 0; g < step->table_count; g++) {
        expect_next(back, "P", step->table[g].head);
        rows_expect(back, step->table[g].rows, step->table[g].row_count);
    }
}

static void step_expect(struct reading_back *back, const struct card_step *step)
{
    const char *lethal = "";
    expect_next(back, "Lbl", text_format(test.arena, "%d", step->number));
    expect_next(back, "H2", step->headline.text);
    for (size_t i = 0; i < step->lethal_count; i++)
        lethal = joined(lethal, step->lethal[i].text);
    for (size_t i = 0; i < step->condition_count; i++)
        lethal = joined(lethal, step->conditions[i].text);
    expect_next(back, "P", lethal);
    rows_expect(back, step->rows, step->row_count);
    table_expect(back, step);
    for (size_t i = 0; i < step->figure_count; i++)
        expect_next(back, "P", step->figures[i].text);
}

static void decision_expect(struct reading_back *back, const struct decision_facts *decision)
{
    expect_next(back, "P", decision->ask);
    expect_next(back, "P", joined(decision->yes_word, decision->yes));
    expect_next(back, "P", joined(decision->no_word, decision->no));
}

static void warnings_expect(struct reading_back *back, const struct warnings_facts *warnings)
{
    for (size_t i = 0; i < warnings->count; i++) {
        while (back->next < back->count && back->texts[back->next].text[0] == '[')
            back->next++;
        expect_next(back, "P", joined(warnings->word, warnings->items[i].text));
    }
    while (back->next < back->count && back->texts[back->next].text[0] == '[')
        back->next++;
}

/* ---- the script: words with blanks between them ---- */

/* The texts that are left as one, and where the words searched for last end in it. */
struct said_words { const char *words; size_t at; };

static struct said_words said_next(const struct reading_back *back)
{
    struct text_builder words = text_builder_in(test.arena);
    for (size_t i = back->next; i < back->count; i++)
        text_add_format(&words, "%s ", back->texts[i].text);
    return (struct said_words){words.at, 0};
}

static void piece_expect(const struct reading_back *back, struct said_words *said,
                         const struct script_piece *piece)
{
    const char *plain = text_plain(test.arena, piece->text);
    const char *found = strstr(said->words + said->at, plain);
    if (found == NULL)
        fail_msg("%s: \"%s\" is not said in \"%s\"", back->page->id, plain,
                 said->words + said->at);
    said->at = (size_t)(found - said->words) + strlen(plain);
}

static void script_expect(struct reading_back *back, const struct script *script)
{
    struct said_words said = said_next(back);
    size_t passed = 0;
    for (size_t i = 0; script != NULL && i < script->count; i++)
        for (size_t k = 0; k < script->lines[i].count; k++) {
            const struct script_piece *piece = &script->lines[i].pieces[k];
            if (piece->kind == PIECE_WORDS || piece->kind == PIECE_STRONG)
                piece_expect(back, &said, piece);
        }
    for (; passed < said.at; back->next++)
        passed += strlen(back->texts[back->next].text) + 1;
}

static void operate_expect(struct reading_back *back, const struct call_facts *call, size_t line)
{
    size_t act = line - call->act_first;
    if (back->page->sheet->kind != SHEET_DISTRESS || line < call->act_first ||
        act >= call->act_count) {
        expect_next(back, "P", call->operate[line].text);
        return;
    }
    expect_next(back, "Lbl", text_format(test.arena, "%zu", act + 1));
    expect_next(back, "P", call->acts[act].text);
}

static bool is_next(const struct reading_back *back, const char *text)
{
    const char *plain = text_plain(test.arena, text);
    return back->next < back->count && text_equal(back->texts[back->next].text, plain);
}

/* The last lines may stand below list and script. */
static void call_expect(struct reading_back *back, const struct call_facts *call)
{
    size_t count = call->operate_count, line = 0;
    bool alone = call->script == NULL || back->page->sheet->kind == SHEET_DISTRESS;
    expect_next(back, "H2", joined(call->title, call->station));
    while (line < count && (alone || is_next(back, call->operate[line].text)))
        operate_expect(back, call, line++);
    script_expect(back, call->script);
    while (line < count)
        operate_expect(back, call, line++);
}

static void section_expect(struct reading_back *back, const struct section_facts *section)
{
    expect_next(back, "H2", section->title);
    expect_next(back, "P", section->note);
    for (size_t i = 0; i < section->hint_count; i++)
        expect_next(back, "P", section->hints[i].text);
    for (size_t i = 0; i < section->line_count; i++)
        expect_next(back, "LBody", joined(section->lead == NULL ? "" : section->lead[i],
                                          section->lines[i].text));
    script_expect(back, section->script);
    expect_next(back, "P", section->end_note);
}

/* ---- what is read last ---- */

/* Tags and words within the picture: its alternative is looked at by itself. */
static void picture_pass(struct reading_back *back)
{
    while (back->next < back->count && text_equal(back->texts[back->next].type, "Figure"))
        back->next++;
}

/* Words of shapes and of which way one looks stand among them. */
static void legend_expect(struct reading_back *back, const struct legend_facts *legend)
{
    for (size_t i = 0; i < sizeof legend->words / sizeof *legend->words; i++) {
        while (back->next < back->count &&
               !text_equal(back->texts[back->next].text, legend->words[i]))
            back->next++;
        expect_next(back, "P", legend->words[i]);
    }
    back->next++;
}

static void footer_expect(struct reading_back *back, const struct footer_facts *footer)
{
    expect_next(back, "P", footer->left[0]);
    expect_next(back, "P", footer->left[1]);
    expect_next(back, "P", text_format(test.arena, "%s %s · %s", footer->code_word, footer->code,
                                       footer->printed));
    expect_next(back, "P", footer->dates);
}

/* ---- pages ---- */

static void cases_expect(struct reading_back *back, const struct cases_facts *cases)
{
    for (size_t i = 0; i < cases->count; i++)
        expect_next(back, "P", cases->items[i].text);
}

static void words_expect(struct reading_back *back, const struct block *block)
{
    switch (facts_kind_of(block->key)) {
    case FACTS_TEXT:
        expect_next(back, "P", block->facts.text->text);
        break;
    case FACTS_CASES:
        cases_expect(back, block->facts.cases);
        break;
    case FACTS_TITLE:
        expect_next(back, "H1", block->facts.title->title);
        expect_next(back, "P", block->facts.title->boat);
        expect_next(back, "P", block->facts.title->number);
        break;
    case FACTS_SIGNS:
        expect_next(back, "P", joined(block->facts.signs->word, block->facts.signs->signs));
        break;
    case FACTS_STEPS:
        for (size_t i = 0; i < block->facts.steps->count; i++)
            step_expect(back, &block->facts.steps->items[i]);
        break;
    case FACTS_DECISION:
        decision_expect(back, block->facts.decision);
        break;
    case FACTS_WARNINGS:
        warnings_expect(back, block->facts.warnings);
        break;
    case FACTS_CALL:
        call_expect(back, block->facts.call);
        break;
    case FACTS_SECTION:
        section_expect(back, block->facts.section);
        break;
    case FACTS_PLACES:
        places_expect(back, block->facts.places);
        break;
    case FACTS_INDEX: case FACTS_SEEN:
        index_expect(back, block);
        break;
    case FACTS_ROWS:
        rows_expect(back, block->facts.rows->rows, block->facts.rows->count);
        break;
    case FACTS_CONTACT:
        expect_next(back, "P", block->facts.contact->left);
        expect_next(back, "P", block->facts.contact->right);
        break;
    case FACTS_PLAN:
        picture_pass(back);
        break;
    case FACTS_LEGEND:
        legend_expect(back, block->facts.legend);
        break;
    case FACTS_FOOTER:
        footer_expect(back, block->facts.footer);
        break;
    case FACTS_FORM: case FACTS_PAGES: case FACTS_BARE:
        break;
    }
}

static const enum block_key read_last[] = {BLOCK_CONTACT, BLOCK_PLAN, BLOCK_LEGEND,
                                           BLOCK_SOURCES, BLOCK_FOOTER};
#define LAST_COUNT (sizeof read_last / sizeof *read_last)

static bool is_last(enum block_key key)
{
    for (size_t i = 0; i < LAST_COUNT; i++)
        if (read_last[i] == key)
            return true;
    return false;
}

static void page_expect(struct reading_back *back)
{
    const struct sheet *sheet = back->page->sheet;
    for (size_t i = 0; i < sheet->block_count; i++)
        if (!is_last(sheet->blocks[i].key))
            words_expect(back, &sheet->blocks[i]);
    for (size_t i = 0; i < LAST_COUNT; i++)
        if (sheet_block(sheet, read_last[i]) != NULL)
            words_expect(back, sheet_block(sheet, read_last[i]));
    if (back->next < back->count)
        fail_msg("%s: nothing but this is read:%s", back->page->id, what_is_left(back));
}

/* The specimens' names have no letter that JSON would write in another way. */
static void picture_expect(const struct page *page, const char *objects)
{
    const struct plan_facts *plan = sheet_plan(page->sheet);
    struct text_builder told = text_builder_in(test.arena);
    text_add_format(&told, "\"/Alt\": \"u:%s", plan->told);
    for (size_t i = 0; i < plan->marker_count; i++)
        text_add_format(&told, " %s", plan->markers[i].told);
    const struct places_facts *places = sheet_places(page->sheet);
    for (size_t i = 0; i < places->count; i++)
        for (size_t r = 0; r < places->places[i].row_count; r++)
            text_add_format(&told, " %s", places->places[i].rows[r].marker.told);
    text_add(&told, "\"");
    bool drawn = false;
    for (size_t i = 0; i < page->count; i++)
        drawn = drawn || page->items[i].block == BLOCK_PLAN;
    if (drawn && strstr(objects, told.at) == NULL)
        fail_msg("%s: no picture is told as %s", page->id, told.at);
}

/* A mark that is there twice, letters in the frame of a sign, and how long the line is by which
 * one sees that the page was printed at its size. */
static bool need_not_be_read(const struct page_item *item)
{
    return item->block == BLOCK_MARK || item->block == BLOCK_UNAPPROVED ||
           item->role == ROLE_PLAN_TAG ||
           (item->block == BLOCK_FOOTER && text_begins(item->run->text, "100"));
}

static void all_words_are_read(const struct page *page)
{
    for (size_t i = 0; i < page->count; i++) {
        const struct page_item *item = &page->items[i];
        if (item->kind == PAGE_TEXT && item->reading == 0)
            assert_true(need_not_be_read(item) || is_read_elsewhere(page, item));
    }
}

static size_t count_of(const char *text, const char *words)
{
    size_t count = 0;
    while ((text = strstr(text, words)) != NULL) {
        text += strlen(words);
        count++;
    }
    return count;
}

static size_t blanks_on(const struct page *page)
{
    size_t count = 0;
    for (size_t i = 0; i < page->count; i++)
        count += page->items[i].part == PART_BLANK ? 1 : 0;
    return count;
}

static void set_expect(const struct case_pages *pages)
{
    struct reading_back *backs = arena_array(test.arena, pages->count, sizeof *backs);
    size_t blanks = 0;
    bytes_store(pdf_of(pages->at, pages->count), "set.pdf");
    const char *objects = command_read("qpdf --json set.pdf");
    reading_back_take("set.pdf", backs, pages->count);
    for (size_t i = 0; i < pages->count; i++) {
        backs[i].page = pages->at[i];
        page_expect(&backs[i]);
        picture_expect(pages->at[i], objects);
        all_words_are_read(pages->at[i]);
        blanks += blanks_on(pages->at[i]);
    }
    assert_true(blanks > 0);
    assert_int_equal(count_of(objects, "\"/S\": \"/Form\""), blanks);
    assert_int_equal(count_of(objects, text_format(test.arena, "\"/Alt\": \"u:%s\"",
                                                   words_get(test.words, WORD_BLANK_TOLD))),
                     blanks);
}

static void each_page_is_read_as_its_facts_stand(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        case_boat(&test, boats[b]);
        struct layout_input input = {case_compose(&test, false), pdf_case.faces,
                                     paper_of(PAPER_A4), false};
        struct laid_set laid = layout_set(&input, test.arena, test.problems);
        struct case_pages pages = case_pages(&test, &laid);
        set_expect(&pages);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_page_is_read_as_its_facts_stand),
    };
    return cmocka_run_group_tests_name("reading_pages", tests, open_all, close_all) != 0;
}
