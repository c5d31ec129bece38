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
        if (!name_stands(pen, sheet_plan(card)->landmarks[z].name))
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

/* ---- the space ---- */

/* What is hatched; of no size where nothing is. */
static struct area hatched(const struct pen *pen)
{
    for (size_t i = 0; i < pen->count; i++)
        if (pen->items[i].kind == PAGE_BOX && pen->items[i].part == PART_HATCH)
            return pen->items[i].area;
    return (struct area){0};
}

static bool holds_point(struct area area, struct point point)
{
    return point.x >= area.x && point.x <= area.x + area.width && point.y >= area.y &&
           point.y <= area.y + area.height;
}

static size_t hatches;

/* Its own tags within, and no line of it elsewhere; what lies ahead or abaft of it outside. */
static void space_alone_is_hatched(const struct sheet *card, const struct pen *pen)
{
    struct area area = hatched(pen);
    assert_true(card->space != ZONE_NONE || area.width == 0);
    hatches += area.width > 0 ? 1 : 0;
    for (size_t i = 0; i < pen->count; i++)
        if (pen->items[i].kind == PAGE_LINE && pen->items[i].part == PART_HATCH) {
            assert_true(holds_point(area, pen->items[i].from));
            assert_true(holds_point(area, pen->items[i].to));
        }
    for (size_t m = 0; area.width > 0 && m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        struct point middle = box_middle(tag_find(pen, marker->tag).left.box);
        const struct zone *space = zone_of(card->space);
        bool away = marker->zone->to <= space->from || marker->zone->from >= space->to;
        if (zone_within(marker->zone, card->space) && marker->drawn != SIDE_BOTH &&
            (middle.y < area.y || middle.y > area.y + area.height))
            fail_msg("%s: %s stands outside of the space", card->name, marker->tag);
        if (away && holds_point(area, middle))
            fail_msg("%s: %s stands within the space", card->name, marker->tag);
    }
}

static void only_the_space_where_it_burns_is_hatched(void **state)
{
    (void)state;
    hatches = 0;
    each_plan(space_alone_is_hatched);
    assert_true(hatches > 6);
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
        TEST(only_the_space_where_it_burns_is_hatched),
        TEST(each_engine_space_is_hatched_in_its_hull),
        TEST(all_stays_within_the_column),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
