/* test_sheet_kind.c - a kind of sheet that no table has: a plain list of gear, made of a row
 * of its own. It is marked, coded and proofread as its columns say, and nothing else knows
 * it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "compose/compose_room.h"
#include "faces_fixture.h"
#include "layout/hull_parts.h"
#include "layout/rows.h"
#include "proof.h"
#include "text.h"

static const char *name_of_first;      /* what the list calls its first piece; NULL: its name */

/* ---- the composer ---- */

static struct card_row list_row(struct composing *composing, const struct equipment *gear)
{
    const char **tags = arena_array(composing->arena, 1, sizeof *tags);
    struct row_item *item = arena_alloc(composing->arena, sizeof *item);
    tags[0] = gear->tag.text;
    *item = (struct row_item){
        .kind = gear->kind, .tags = tags, .tag_count = 1, .spot = "", .end = "",
        .name = name_of_first != NULL && text_equal(tags[0], "E1")
                    ? name_of_first
                    : phrase_said(composing, gear_name(composing, gear, 1, CAPACITY_WEIGHT)),
        .origin = gear->place};
    return (struct card_row){
        .place = phrase_said(composing, row_place_phrase(composing, gear)),
        .spot = phrase_said(composing, row_spot_phrase(composing, gear)), .items = item,
        .item_count = 1, .origin = gear->place};
}

static void list_compose(struct composing *composing, struct sheet *sheet,
                         const struct sheet_list *others)
{
    const struct boat *boat = composing->in->boat;
    struct card_row *rows = arena_array(composing->arena, boat->equipment_count, sizeof *rows);
    struct rows_facts *list = arena_alloc(composing->arena, sizeof *list);
    (void)others;
    for (size_t i = 0; i < boat->equipment_count; i++)
        rows[i] = list_row(composing, &boat->equipment[i]);
    *list = (struct rows_facts){rows, boat->equipment_count};
    block_add(composing, sheet, BLOCK_ROWS)->rows = list;
    signs_make(composing, sheet, NULL, signs_joined(composing, sheet));
}

static const struct kind_composing plain = {list_compose, no_call_compose, ALONE, CODED, MARKED};

#define GEAR \
    "  - {item: knife, tag: E1, zone: cockpit, side: port}\n" \
    "  - {item: torch, tag: C1, zone: saloon, spot: by the steps}\n"

/* A sheet of that kind, of a specimen; of its names those of the safety plan. */
static const struct sheet *made_as(const struct kind_composing *kind)
{
    static struct compose_input input;
    input = (struct compose_input){.boat = test.boat, .base = test.base,
                                   .procedures = &test.procedures,
                                   .authorities = test.authorities, .words = test.words,
                                   .today = test.today};
    struct composing composing = {.in = &input, .arena = test.arena, .problems = test.problems};
    struct sheet *sheet = arena_alloc(test.arena, sizeof *sheet);
    slots_make(&composing);
    sheet_make_as(&composing, kind, slot_of(&composing, "safety_plan"),
                  &(struct sheet_list){NULL, 0}, sheet);
    return sheet;
}

static struct kind_composing plain_but(enum sheet_code code, enum sheet_marks marks)
{
    struct kind_composing kind = plain;
    kind.code = code;
    kind.marks = marks;
    return kind;
}

/* ---- the columns ---- */

static void a_kind_has_the_blocks_that_its_composer_adds(void **state)
{
    (void)state;
    const struct sheet *sheet = made_as(&plain);
    assert_int_equal(sheet_rows(sheet)->count, 3);    /* and the radio */
    assert_string_equal(sheet_rows(sheet)->rows[0].items[0].tags[0], "E1");
    assert_non_null(sheet_block(sheet, BLOCK_TITLE));
    assert_null(sheet_block(sheet, BLOCK_PLAN));
    assert_null(sheet_block(sheet, BLOCK_CONTACT));
}

static void a_kind_is_coded_or_not(void **state)
{
    (void)state;
    const struct kind_composing without = plain_but(NOT_CODED, MARKED);
    const struct sheet *coded = made_as(&plain), *bare = made_as(&without);
    assert_string_equal(sheet_footer(coded)->code, check_code(coded, test.arena));
    assert_string_equal(sheet_footer(coded)->code_word, "Check code");
    assert_string_equal(sheet_footer(bare)->code, "");
    assert_string_equal(sheet_footer(bare)->code_word, "");
}

static void the_code_is_of_the_rows(void **state)
{
    (void)state;
    const char *code = sheet_footer(made_as(&plain))->code;
    assert_string_equal(sheet_footer(made_as(&plain))->code, code);
    name_of_first = "Blade";
    assert_string_not_equal(sheet_footer(made_as(&plain))->code, code);
}

static void a_kind_is_marked_or_not(void **state)
{
    (void)state;
    const struct kind_composing without = plain_but(CODED, NOT_MARKED);
    assert_true(text_begins(sheet_text(made_as(&plain), BLOCK_MARK)->text, "SPECIMEN"));
    assert_null(sheet_block(made_as(&without), BLOCK_MARK));
}

/* ---- its page ---- */

static struct pen pen_of(const struct sheet *sheet)
{
    return (struct pen){.faces = faces, .arena = test.arena, .problems = test.problems,
                        .sheet = sheet, .paper = paper_of(PAPER_A4)};
}

static const struct page *page_from(const struct pen *pen)
{
    struct page *page = arena_alloc(test.arena, sizeof *page);
    *page = (struct page){.id = pen->sheet->id, .sheet = pen->sheet, .title = "list",
                          .language = "en", .paper = pen->paper, .width = pen->paper->width,
                          .height = pen->paper->height, .items = pen->items,
                          .count = pen->count};
    return page;
}

static const struct page *list_page(const struct sheet *sheet)
{
    struct pen pen = pen_of(sheet);
    struct page_needs needs = {.height = {[AREA_WHEN] = MM(8)}};
    struct frame frame = frame_make(pen.paper, TEMPLATE_CARD, &needs);
    struct area body = frame.at[AREA_BODY];
    mpt size = size_rule(pen.paper, ROLE_SIGNS).floor;
    head_place(&pen, &frame, (struct head_sizes){size, size});
    struct laid_rows laid = rows_lay(&pen, size_rule(pen.paper, ROLE_ROW).aim, body.width);
    assert_true(laid.excess <= 0 && laid.height <= body.height);
    rows_place(&pen, &laid, body);
    foot_place(&pen, &frame);
    assert_false(pen.failed);
    return page_from(&pen);
}

static size_t found(const struct proof_report *report, enum proof_rule_key rule)
{
    size_t count = 0;
    for (size_t i = 0; i < report->count; i++)
        count += report->findings[i].rule == rule ? 1 : 0;
    return count;
}

static struct proof_report judged(const struct page *page)
{
    struct proof_report report;
    proof_page(page, faces, test.arena, &report);
    return report;
}

static void its_page_passes_as_it_is_made(void **state)
{
    (void)state;
    static const enum sheet_code codes[] = {CODED, NOT_CODED};
    static const enum sheet_marks marks[] = {MARKED, NOT_MARKED};
    for (size_t i = 0; i < 4; i++) {
        const struct kind_composing kind = plain_but(codes[i / 2], marks[i % 2]);
        struct proof_report report = judged(list_page(made_as(&kind)));
        if (report.errors > 0)
            fail_msg("%s: %s", proof_rule(report.findings[0].rule)->id,
                     report.findings[0].measured);
        assert_true(report.measured > 30);
    }
}

/* As if its rows ended before the last. */
static void a_row_that_is_lost_is_found(void **state)
{
    (void)state;
    const struct sheet *sheet = made_as(&plain);
    struct sheet less = *sheet;
    struct rows_facts *rows = FACTS(test.arena, &less, rows, BLOCK_ROWS);
    *rows = *sheet_rows(sheet);
    rows->count--;
    struct page page = *list_page(&less);
    page.sheet = sheet;
    struct proof_report report = judged(&page);
    assert_int_equal(found(&report, RULE_WORDS_LOST), 1);
}

static void a_tag_of_no_piece_is_found(void **state)
{
    (void)state;
    struct sheet sheet = *made_as(&plain);
    struct rows_facts *rows = FACTS(test.arena, &sheet, rows, BLOCK_ROWS);
    static const char *const stray[] = {"C77"};
    struct card_row row = sheet_rows(made_as(&plain))->rows[0];
    struct row_item item = row.items[0];
    item.tags = stray;
    row.items = &item;
    *rows = (struct rows_facts){&row, 1};
    struct proof_report report = judged(list_page(&sheet));
    assert_int_equal(found(&report, RULE_TAG_RECORDED), 1);
}

static void a_piece_has_one_name_on_lists_too(void **state)
{
    (void)state;
    const struct sheet *one = made_as(&plain);
    name_of_first = "Blade";
    const struct sheet *other = made_as(&plain);
    const struct page *pages[] = {list_page(one), list_page(other)};
    const struct laid_sheet sheets[] = {{.sheet = one, .pages = &pages[0], .page_count = 1},
                                        {.sheet = other, .pages = &pages[1], .page_count = 1}};
    const struct proof_report *reports = proof_set(&(struct laid_set){sheets, 2}, faces,
                                                   test.arena);
    assert_int_equal(found(&reports[0], RULE_ONE_TERM), 0);
    assert_int_equal(found(&reports[1], RULE_ONE_TERM), 1);
}

/* A line of 1 mm round the boat is enough beside steps, and too thin on an escape plan. */
static void page_rules_hold_for_kinds_that_name_them(void **state)
{
    (void)state;
    struct sheet sheet = *made_as(&plain);
    struct pen pen = pen_of(&sheet);
    struct outline outline = {{MM(50), MM(50), MM(60), MM(150)}, MM(80), MM(30), MM(1),
                              SHAPE_FULL};
    pen.block = BLOCK_PLAN;
    one_hull_draw(&pen, &outline);
    for (enum sheet_kind kind = SHEET_NONE + 1; kind < SHEET_KIND_COUNT; kind++) {
        sheet.kind = kind;
        struct proof_report report = judged(page_from(&pen));
        assert_int_equal(found(&report, RULE_PLAN_LINES) > 0,
                         page_rules_of(kind) == RULES_ESCAPE_PLAN);
    }
}

static void a_row_that_is_too_long_is_told_by_how_much(void **state)
{
    (void)state;
    struct pen pen = pen_of(made_as(&plain));
    struct laid_rows laid = rows_lay(&pen, size_rule(pen.paper, ROLE_ROW).floor, MM(30));
    assert_true(laid.excess > 0);
    assert_true(rows_excess_tell(&pen, &laid));
    assert_true(pen.failed);
    assert_non_null(strstr(case_problems_text(&test), "a line of the list is "));
    laid = rows_lay(&pen, size_rule(pen.paper, ROLE_ROW).floor, MM(190));
    assert_false(rows_excess_tell(&pen, &laid));
}

/* ---- set up ---- */

static int list_set_up(void **state)
{
    set_up(state);
    name_of_first = NULL;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, GEAR, "  - blankets\n"));
    return 0;
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, list_set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_kind_has_the_blocks_that_its_composer_adds),
        TEST(a_kind_is_coded_or_not),
        TEST(the_code_is_of_the_rows),
        TEST(a_kind_is_marked_or_not),
        TEST(its_page_passes_as_it_is_made),
        TEST(a_row_that_is_lost_is_found),
        TEST(a_tag_of_no_piece_is_found),
        TEST(a_piece_has_one_name_on_lists_too),
        TEST(page_rules_hold_for_kinds_that_name_them),
        TEST(a_row_that_is_too_long_is_told_by_how_much),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
