/* test_plan_names.c - what stands round the tags on the plan beside the steps: names of her
 * rooms, and the space where it burns. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "plan_case.h"
#include "text.h"

/* ---- names ---- */

static bool is_parted(const char *name, const char *first, const char *second)
{
    return text_equal(text_format(plan_case.cards.arena, "%s %s", first, second), name);
}

/* Is the name drawn, on one line or on two? */
static bool name_stands(const struct pen *pen, const char *name)
{
    for (size_t i = 0; i < pen->count; i++) {
        if (!is_plan_label(&pen->items[i]))
            continue;
        const char *first = pen->items[i].run->text;
        if (text_equal(first, name))
            return true;
        for (size_t j = 0; j < pen->count; j++)
            if (is_plan_label(&pen->items[j]) && is_parted(name, first, pen->items[j].run->text))
                return true;
    }
    return false;
}

static void each_room_is_named(const struct sheet *card, const struct pen *pen)
{
    assert_true(sheet_plan(card)->landmark_count > 0);
    for (size_t z = 0; z < sheet_plan(card)->landmark_count; z++)
        if (!name_stands(pen, sheet_plan(card)->landmarks[z].name) &&
            pen->slots->rows < VIEW_ROWS_MOST)      /* tags go before names */
            fail_msg("%s: no name %s", card->name, sheet_plan(card)->landmarks[z].name);
}

static void all_her_rooms_are_named(void **state)
{
    (void)state;
    each_plan(each_room_is_named);
}

static void no_name_and_no_tag_is_covered(void **state)
{
    (void)state;
    each_plan(nothing_covers_another);
}

/* In a hull, where each takes two lines. */
static void names_that_begin_alike_are_both_drawn(void **state)
{
    (void)state;
    const struct sheet *card = plan_torches(
        "catamaran", PLAN_TORCH("C1", "zone: forward_cabin, side: port")
                     PLAN_TORCH("C2", "zone: forward_heads, side: port"));
    struct pen pen = plan_drawn(card, plan_aim());
    assert_true(name_stands(&pen, "Forward cabin"));
    assert_true(name_stands(&pen, "Forward toilet"));
    nothing_covers_another(card, &pen);
}

/* ---- where nobody enters ---- */

static bool is_hatch(const struct page_item *item, enum page_kind kind)
{
    return item->kind == kind && item->part == PART_HATCH;
}

static bool lies_within(struct area area, struct point point)
{
    return point.x >= area.x && point.x <= area.x + area.width && point.y >= area.y &&
           point.y <= area.y + area.height;
}

/* Is a row hatched that the point lies in? */
static bool hatch_holds(const struct pen *pen, struct point point)
{
    for (size_t i = 0; i < pen->count; i++)
        if (is_hatch(&pen->items[i], PAGE_BOX) && lies_within(pen->items[i].area, point))
            return true;
    return false;
}

/* The same of one that it is level with: what else stands in a row is left out of it. */
static bool hatch_is_level(const struct pen *pen, struct point point)
{
    for (size_t i = 0; i < pen->count; i++) {
        struct area row = pen->items[i].area;
        if (is_hatch(&pen->items[i], PAGE_BOX) && point.y >= row.y && point.y <= row.y + row.height)
            return true;
    }
    return false;
}

static bool is_hatched(const struct sheet *card, const struct zone *zone)
{
    const struct plan_facts *plan = sheet_plan(card);
    for (size_t i = 0; i < plan->hatched_count; i++)
        if (zone_within(zone, plan->hatched[i]))
            return true;
    return false;
}

static size_t hatches;

/* Each line lies in a row that is hatched, and no row under a tag of another place. */
static void spaces_alone_are_hatched(const struct sheet *card, const struct pen *pen)
{
    for (size_t i = 0; i < pen->count; i++) {
        const struct page_item *item = &pen->items[i];
        hatches += is_hatch(item, PAGE_BOX) ? 1 : 0;
        assert_true(sheet_plan(card)->hatched_count > 0 || item->part != PART_HATCH);
        if (is_hatch(item, PAGE_LINE))
            assert_true(hatch_holds(pen, item->from) && hatch_holds(pen, item->to));
    }
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        struct point middle = box_middle(tag_find(pen, marker->tag).left.box);
        if (is_hatched(card, marker->zone) && !hatch_is_level(pen, middle))
            fail_msg("%s: %s stands outside of the space", card->name, marker->tag);
        if (!is_hatched(card, marker->zone) && hatch_holds(pen, middle))
            fail_msg("%s: %s stands within the space", card->name, marker->tag);
    }
}

static void only_spaces_where_it_burns_or_leaks_are_hatched(void **state)
{
    (void)state;
    hatches = 0;
    each_plan(spaces_alone_are_hatched);
    assert_true(hatches > 6);
}

/* All that is hatched, from the left and to the right. */
static struct area hatched(const struct pen *pen)
{
    struct area all = {0};
    for (size_t i = 0; i < pen->count; i++) {
        struct area row = pen->items[i].area;
        if (!is_hatch(&pen->items[i], PAGE_BOX))
            continue;
        mpt left = all.width == 0 || row.x < all.x ? row.x : all.x;
        mpt right = all.x + all.width > row.x + row.width ? all.x + all.width : row.x + row.width;
        all = (struct area){left, row.y, right - left, row.height};
    }
    return all;
}

/* The lines of the space on each side lie in the hull of that side. */
static void each_engine_space_is_hatched_in_its_hull(void **state)
{
    (void)state;
    static const struct { const char *card; bool port; } spaces[] = {
        {"engine_fire_port", true}, {"engine_fire_starboard", false}};
    plan_boat_begin("tests/fleet/boats/samphire.yaml");
    for (size_t i = 0; i < 2; i++) {
        const struct sheet *card = case_card(plan_case.set, spaces[i].card);
        struct pen pen = plan_drawn(card, plan_floor());
        struct area bar = view_bar(card, &pen, PLAN_HEAD_HULLS), area = hatched(&pen);
        mpt middle = bar.x + bar.width / 2;
        assert_true(area.width > 0 && area.x >= bar.x && area.x + area.width <= bar.x + bar.width);
        assert_int_equal(area.x + area.width <= middle, spaces[i].port);
        assert_int_equal(area.x >= middle, !spaces[i].port);
    }
}

/* ---- the column ---- */

static void each_item_is_in_the_column(const struct sheet *card, const struct pen *pen)
{
    struct area column = plan_column(plan_aim());
    for (size_t i = 0; i < pen->count; i++) {
        struct area item = pen->items[i].area;
        if (item.x < column.x - 1 || item.x + item.width > column.x + column.width + 1 ||
            item.y < column.y - 1 || item.y + item.height > column.y + column.height + 1)
            fail_msg("%s: item %zu leaves the column", card->name, i);
    }
}

static void all_stays_within_the_column(void **state)
{
    (void)state;
    each_plan(each_item_is_in_the_column);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, plan_set_up, plan_tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(all_her_rooms_are_named),
        TEST(no_name_and_no_tag_is_covered),
        TEST(names_that_begin_alike_are_both_drawn),
        TEST(only_spaces_where_it_burns_or_leaks_are_hatched),
        TEST(each_engine_space_is_hatched_in_its_hull),
        TEST(all_stays_within_the_column),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
