/* test_script_block.c - a script on paper: a phrase a line, blanks to write on,
 * labels, and that the measured height is the height taken. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_case.h"
#include "layout/call.h"
#include "text.h"

static struct card_case test;
static struct faces *faces;
static struct sheet card;
static struct pen pen;

static int set_up(void **state)
{
    (void)state;
    case_begin(&test);
    faces = case_faces(&test);
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    card = (struct sheet){.name = "CARD", .language = "en", .words = test.words,
                          .boat = test.boat};
    pen = (struct pen){.faces = faces, .arena = test.arena, .problems = test.problems,
                       .sheet = &card, .paper = paper_of(PAPER_A4), .block = BLOCK_CALL};
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    faces_close(faces);
    case_end(&test);
    return 0;
}

static const struct script *script_of(const struct script_request *request)
{
    const struct script *script = script_make(request, test.boat, test.base, test.arena,
                                              test.problems);
    assert_non_null(script);
    return script;
}

static const struct script *mayday(void)
{
    return script_of(&(struct script_request){.form = SCRIPT_MAYDAY, .nature = "I AM ON FIRE"});
}

static const struct script *both(void)
{
    static const struct script_request holding = {
        .form = SCRIPT_PAN_PAN, .label = "STEADY", .nature = "I AM FLOODING",
        .assistance = "I REQUIRE A PUMP"};
    return script_of(&(struct script_request){.form = SCRIPT_MAYDAY, .label = "RISING",
                                              .nature = "I AM FLOODING", .other = &holding});
}

static struct area column_of(mpt width, mpt height)
{
    return (struct area){MM(60), MM(200), width, height};
}

/* Laid out in a column and placed from its top; gives the height with gaps. */
static mpt script_set(const struct script *script, mpt size, struct area column)
{
    struct laid_script laid = script_lay(&pen, script, size, column.width);
    return script_place(&pen, &laid, column);
}

/* The panel's own width, and sizes from the floor to the aim. */
#define PANEL_WIDTH MM(133)
static const mpt sizes[] = {12000, 12500, 13000, 13500, 14000};
#define SIZE_COUNT (sizeof sizes / sizeof sizes[0])

static mpt bottom_of_all(void)
{
    mpt bottom = 0;
    for (size_t i = 0; i < pen.count; i++) {
        mpt own = pen.items[i].area.y + pen.items[i].area.height;
        bottom = own > bottom ? own : bottom;
    }
    return bottom;
}

/* What is measured before a page is made is what the page then takes. */
static void the_measured_height_is_the_height_taken(void **state)
{
    (void)state;
    const struct script *const scripts[] = {mayday(), both()};
    for (size_t s = 0; s < 2; s++)
        for (size_t i = 0; i < SIZE_COUNT; i++) {
            struct area column = column_of(PANEL_WIDTH, 0);
            pen.count = 0;
            struct laid_script laid = script_lay(&pen, scripts[s], sizes[i], column.width);
            assert_int_equal(pen.count, 0);          /* laying out places nothing */
            mpt taken = script_place(&pen, &laid, column);
            assert_int_equal(taken, laid.height);    /* a column without height has no gaps */
            assert_true(pen.count > scripts[s]->count);
            assert_true(bottom_of_all() <= column.y + taken);
            assert_true(bottom_of_all() > column.y + taken - MM(3));
        }
    assert_false(pen.failed);
    assert_int_equal(script_set(NULL, 12000, column_of(PANEL_WIDTH, 0)), 0);
}

static size_t blanks_of(const struct script *script)
{
    size_t blanks = 0;
    for (size_t i = 0; i < script->count; i++)
        for (size_t p = 0; p < script->lines[i].count; p++)
            blanks += script->lines[i].pieces[p].kind == PIECE_BLANK ? 1 : 0;
    return blanks;
}

/* The baseline of the nearest text that ends above this line of writing. */
static mpt text_above(mpt y)
{
    mpt above = 0;
    for (size_t i = 0; i < pen.count; i++)
        if (pen.items[i].kind == PAGE_TEXT && pen.items[i].baseline < y - MM(2) &&
            pen.items[i].baseline > above)
            above = pen.items[i].baseline;
    return above;
}

/* Every blank has a rule at least as long as it needs, and room above it for
 * figures of a wax pencil: lines with blanks are 7.6 mm high. */
static void every_blank_can_be_written_on(void **state)
{
    (void)state;
    for (size_t i = 0; i < SIZE_COUNT; i++) {
        const struct script *script = mayday();
        size_t rules = 0;
        pen.count = 0;
        script_set(script, sizes[i], column_of(PANEL_WIDTH, 0));
        for (size_t n = 0; n < pen.count; n++) {
            const struct page_item *item = &pen.items[n];
            if (item->kind != PAGE_LINE)
                continue;
            rules++;
            assert_int_equal(item->from.y, item->to.y);
            assert_true(item->area.width >= MM(14));
            assert_true(item->from.y - text_above(item->from.y) >= MM(7));
        }
        assert_int_equal(rules, blanks_of(script));
    }
}

/* From one blank to the next below it, with lines to write on of that height. */
static void assert_blanks_apart(mpt height)
{
    mpt last = 0;
    size_t steps = 0;
    struct laid_script laid = script_lay_with(&pen, mayday(),
                                              (struct script_sizes){12000, height}, PANEL_WIDTH);
    pen.count = 0;
    script_place(&pen, &laid, column_of(PANEL_WIDTH, 0));
    for (size_t n = 0; n < pen.count; n++) {
        if (pen.items[n].kind != PAGE_LINE || pen.items[n].from.y == last)
            continue;
        if (last > 0) {
            assert_true(pen.items[n].from.y - last >= height);
            steps++;
        }
        last = pen.items[n].from.y;
    }
    assert_int_equal(steps, 2);                        /* LAT, LONG, persons */
}

/* On cards, and where the call has a page. */
static void lines_of_blanks_are_as_far_apart_as_a_hand_writes(void **state)
{
    (void)state;
    assert_blanks_apart(MM(7.6));
    assert_blanks_apart(MM(10));
}

static void nothing_leaves_the_column(void **state)
{
    (void)state;
    const struct script *const scripts[] = {mayday(), both()};
    for (size_t s = 0; s < 2; s++)
        for (size_t i = 0; i < SIZE_COUNT; i++) {
            struct area column = column_of(PANEL_WIDTH, 0);
            pen.count = 0;
            script_set(scripts[s], sizes[i], column);
            for (size_t n = 0; n < pen.count; n++) {
                struct area area = pen.items[n].area;
                assert_true(area.x >= column.x && area.y >= column.y);
                assert_true(area.x + area.width <= column.x + column.width + 200);
            }
        }
}

/* All words, in the order they are spoken. */
static const char *words_placed(void)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t n = 0; n < pen.count; n++)
        if (pen.items[n].kind == PAGE_TEXT)
            text_add_format(&out, "%s ", pen.items[n].run->text);
    return out.at;
}

static const char *words_said(const struct script *script)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < script->count; i++) {
        if (script->lines[i].label != NULL)
            text_add_format(&out, "%s ", script->lines[i].label);
        for (size_t p = 0; p < script->lines[i].count; p++)
            if (script->lines[i].pieces[p].kind != PIECE_BLANK)
                text_add_format(&out, "%s ", script->lines[i].pieces[p].text);
    }
    return out.at;
}

static void every_word_is_placed_in_the_order_spoken(void **state)
{
    (void)state;
    const struct script *const scripts[] = {mayday(), both()};
    for (size_t s = 0; s < 2; s++)
        for (size_t i = 0; i < SIZE_COUNT; i++) {
            pen.count = 0;
            script_set(scripts[s], sizes[i], column_of(PANEL_WIDTH, 0));
            assert_string_equal(words_placed(), words_said(scripts[s]));
        }
}

static void what_is_to_be_circled_has_a_stroke_between(void **state)
{
    (void)state;
    case_base(&test, "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
              "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n"
              "cruising_area: {latitude: both, longitude: both, sea_area: A1}\n");
    script_set(mayday(), 12000, column_of(PANEL_WIDTH, 0));
    assert_non_null(strstr(words_placed(), "NORTH / SOUTH"));
    assert_non_null(strstr(words_placed(), "EAST / WEST"));
}

/* White on black, and the words it belongs to stand to its right. */
static void labels_stand_before_their_words(void **state)
{
    (void)state;
    size_t labels = 0;
    script_set(both(), 13000, column_of(PANEL_WIDTH, 0));
    for (size_t n = 0; n + 2 < pen.count; n++) {
        const struct page_item *box = &pen.items[n], *label = box + 1, *words = box + 2;
        if (box->kind != PAGE_BOX)
            continue;
        labels++;
        assert_int_equal(box->fill, INK_BLACK);
        assert_int_equal(label->fill, INK_WHITE);
        assert_true(label->area.x >= box->area.x);
        assert_true(label->area.x + label->area.width <= box->area.x + box->area.width);
        assert_int_equal(words->kind, PAGE_TEXT);
        assert_true(words->area.x >= box->area.x + box->area.width + MM(1));
        assert_int_equal(words->baseline, label->baseline);
    }
    assert_int_equal(labels, 5);   /* two signals, the MAYDAY's own line, two natures */
}

/* Room that is left goes between the phrases, and not below the last. */
static void room_left_goes_between_the_phrases(void **state)
{
    (void)state;
    const struct script *script = mayday();
    mpt least = script_lay(&pen, script, 13000, PANEL_WIDTH).height;
    mpt gaps = (mpt)(script->count - 1);
    for (mpt room = 0; room <= MM(30); room += MM(1.7)) {
        pen.count = 0;
        mpt taken = script_set(script, 13000, column_of(PANEL_WIDTH, least + room));
        assert_true(taken <= least + room);
        assert_true(taken <= least + gaps * MM(1.6));
        if (room <= gaps * MM(1.6))
            assert_in_range(least + room - taken, 0, gaps);
        assert_true(bottom_of_all() <= MM(200) + taken);
    }
}

static void a_name_that_is_too_long_is_told(void **state)
{
    (void)state;
    struct boat boat = *test.boat;
    boat.facts.name_spoken.text = "Wassereinbruchsbekaempfungsausruestungswart";
    test.boat = card.boat = &boat;
    script_set(mayday(), 12000, column_of(MM(60), 0));
    assert_true(pen.failed);
    size_t count;
    const struct problem *told = problems_sorted(test.problems, &count);
    assert_true(count > 0);
    assert_non_null(strstr(told[0].what, "a line of the call is "));
    assert_non_null(strstr(told[0].remedy, "name_spoken"));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_measured_height_is_the_height_taken),
        TEST(every_blank_can_be_written_on),
        TEST(lines_of_blanks_are_as_far_apart_as_a_hand_writes),
        TEST(nothing_leaves_the_column),
        TEST(every_word_is_placed_in_the_order_spoken),
        TEST(what_is_to_be_circled_has_a_stroke_between),
        TEST(labels_stand_before_their_words),
        TEST(room_left_goes_between_the_phrases),
        TEST(a_name_that_is_too_long_is_told),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
