/* test_seen_block.c - the index of cards in columns: whole groups where they have room, else cut
 * between two lines under their head again; no line lost, none wider than its column. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/measures.h"
#include "layout/seen.h"
#include "pen_fixture.h"
#include "text.h"

#define GROUPS 5
static const struct area page = {MM(10), MM(50), MM(190), MM(215)};

/* The card is an index of that many lines in each group. */
static void lines_of(const size_t *counts, const char *words)
{
    struct seen_facts *seen = FACTS(test.arena, &card, seen, BLOCK_SEEN);
    struct seen_group *groups = arena_array(test.arena, GROUPS, sizeof *groups);
    *seen = (struct seen_facts){"What do you see?", "Take card", groups, GROUPS};
    for (size_t i = 0; i < GROUPS; i++) {
        struct seen_line *lines = arena_array(test.arena, counts[i], sizeof *lines);
        for (size_t k = 0; k < counts[i]; k++)
            lines[k] = (struct seen_line){words, "10P", SYMBOL_flood, {.line = 1}};
        groups[i] = (struct seen_group){"GROUP", lines, counts[i]};
    }
}

static size_t lines_standing(const struct laid_seen *laid)
{
    size_t lines = 0, next = 0;
    for (size_t i = 0; i < laid->column_count; i++) {
        assert_int_equal(laid->columns[i].first, next);
        next = laid->columns[i].end;
        assert_non_null(laid->items[next - 1].line);    /* no head is the last of a column */
        for (size_t k = laid->columns[i].first; k < next; k++)
            lines += laid->items[k].line != NULL ? 1 : 0;
    }
    assert_int_equal(next, laid->count);
    return lines;
}

/* The texts placed in that ink. */
static size_t texts_in(enum ink ink)
{
    size_t count = 0;
    for (size_t i = 0; i < pen.count; i++)
        count += pen.items[i].kind == PAGE_TEXT && pen.items[i].fill == ink ? 1 : 0;
    return count;
}

static void groups_stay_whole_where_they_have_room(void **state)
{
    (void)state;
    lines_of((const size_t[]){2, 5, 4, 3, 2}, "Smell gas");
    struct laid_seen laid = seen_fit(&pen, page);
    assert_int_equal(laid.column_count, 2);
    assert_int_equal(lines_standing(&laid), 16);
    assert_null(laid.items[laid.columns[1].first].line);
    assert_int_equal(laid.size, size_rule(pen.paper, ROLE_ROW).aim);
    assert_true(laid.ease > 0 && laid.over <= 0 && !laid.wide);
}

static void a_group_is_cut_under_its_head_again(void **state)
{
    (void)state;
    lines_of((const size_t[]){2, 38, 2, 2, 2}, "Smell gas");
    struct laid_seen laid = seen_fit(&pen, page);
    assert_int_equal(laid.column_count, 2);
    assert_int_equal(lines_standing(&laid), 46);
    assert_non_null(laid.items[laid.columns[1].first].line);
    assert_true(laid.size >= size_rule(pen.paper, ROLE_ROW).floor);
    seen_place(&pen, &laid, page);
    assert_int_equal(texts_in(INK_WHITE), GROUPS + 1);    /* heads, one of them twice */
    assert_int_equal(texts_in(INK_BLACK), 2 * 46 + 2 * 2);
}

/* Words go on below themselves, and nothing is placed below the area. */
static void all_of_it_stands_within_the_area(void **state)
{
    (void)state;
    lines_of((const size_t[]){3, 9, 6, 4, 4}, "Engine smoke or fire, STARBOARD ENGINE");
    struct laid_seen laid = seen_fit(&pen, page);
    assert_true(laid.over <= 0 && !laid.wide);
    seen_place(&pen, &laid, page);
    for (size_t i = 0; i < pen.count; i++) {
        struct area box = pen.items[i].area;
        assert_true(box.x >= page.x && box.x + box.width <= page.x + page.width);
        assert_true(box.y >= page.y && box.y + box.height <= page.y + page.height);
    }
}

static void what_no_page_holds_is_told(void **state)
{
    (void)state;
    lines_of((const size_t[]){30, 30, 30, 30, 30}, "Smell gas");
    assert_true(seen_fit(&pen, page).over > 0);
    lines_of((const size_t[]){1, 1, 1, 1, 1}, "Buchstabenreichesunterseegeschwader");
    assert_true(seen_fit(&pen, (struct area){0, 0, MM(40), MM(200)}).wide);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(groups_stay_whole_where_they_have_room),
        TEST(a_group_is_cut_under_its_head_again),
        TEST(all_of_it_stands_within_the_area),
        TEST(what_no_page_holds_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
