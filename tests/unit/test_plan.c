/* test_plan.c - the boat beside the steps of a card, as it is drawn: each tag once, in its view,
 * on its side, in the order along the boat and at one place on all cards of a set; names of her
 * rooms, and the space where it burns. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "layout/boat_slots.h"
#include "text.h"

#define TAGS_MOST 96

static const char *const boats[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/bramble.yaml",
    "tests/fleet/boats/samphire.yaml", "tests/islands/boats/eelgrass.yaml",
    "tests/islands/boats/sundew.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof *boats)

static const struct sheet_set *set;
static struct boat_slots slots;

static struct pen empty_pen(void)
{
    return (struct pen){.faces = faces, .slots = &slots, .arena = test.arena,
                        .problems = test.problems, .paper = paper_of(PAPER_A4)};
}

/* The cards of a boat, a file or a text, and the places of their tags. */
static void boat_begin(const char *boat)
{
    case_boat(&test, boat);
    set = case_compose(&test, true);
    struct pen pen = empty_pen();
    slots = boat_slots_find(set, &pen);
}

static bool has_plan(const struct sheet *card)
{
    return card->kind == SHEET_CARD && sheet_block(card, BLOCK_PLAN) != NULL;
}

/* The right column of a card, of that height. */
static struct area column_of(mpt height)
{
    const struct page_needs needs = {.way = 0};
    struct area area = frame_make(paper_of(PAPER_A4), TEMPLATE_CARD, &needs).at[AREA_RIGHT];
    area.height = height;
    return area;
}

static mpt floor_height(void)
{
    struct pen pen = empty_pen();
    return plan_heights(&pen).floor;
}

static mpt aim_height(void)
{
    struct pen pen = empty_pen();
    return plan_heights(&pen).aim;
}

static struct pen drawn(const struct sheet *card, mpt height)
{
    struct pen pen = empty_pen();
    pen.sheet = card;
    plan_place(&pen, column_of(height));
    return pen;
}

/* Calls `look` for each card of each boat, at the least height of the plan and at its aim. */
static void each_plan(void (*look)(const struct sheet *card, const struct pen *pen))
{
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        boat_begin(boats[b]);
        const mpt heights[] = {floor_height(), aim_height()};
        size_t looked = 0;
        for (size_t i = 0; i < set->count; i++)
            for (size_t h = 0; has_plan(set->sheets[i]) && h < 2; h++, looked++) {
                struct pen pen = drawn(set->sheets[i], heights[h]);
                if (pen.failed)
                    fail_msg("%s", case_problems_text(&test));
                look(set->sheets[i], &pen);
            }
        assert_true(looked > 6);
    }
}

/* ---- what was drawn ---- */

struct drawn_tag { const char *text; struct area box; bool round; };

static size_t tags_drawn(const struct pen *pen, struct drawn_tag tags[TAGS_MOST])
{
    size_t count = 0;
    for (size_t i = 1; i < pen->count; i++) {
        const struct page_item *text = &pen->items[i], *box = &pen->items[i - 1];
        if (text->kind != PAGE_TEXT || text->role != ROLE_PLAN_TAG)
            continue;
        assert_int_equal(box->kind, PAGE_BOX);
        assert_int_equal(box->fill, INK_BLACK);
        assert_int_equal(text->fill, INK_WHITE);
        assert_true(text->area.x >= box->area.x);     /* the box holds its text */
        assert_true(text->area.x + text->area.width <= box->area.x + box->area.width);
        assert_true(count < TAGS_MOST);
        tags[count++] = (struct drawn_tag){text->run->text, box->area, box->radius > 0};
    }
    return count;
}

static struct point middle_of(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

/* How often a tag is drawn; the first of its boxes, and the last, from the left. */
struct found_tag { size_t count; struct drawn_tag left, right; };

static struct found_tag tag_find(const struct pen *pen, const char *text)
{
    struct drawn_tag tags[TAGS_MOST];
    struct found_tag found = {0};
    size_t count = tags_drawn(pen, tags);
    for (size_t i = 0; i < count; i++) {
        if (!text_equal(tags[i].text, text))
            continue;
        if (found.count == 0 || tags[i].box.x < found.left.box.x)
            found.left = tags[i];
        if (found.count == 0 || tags[i].box.x > found.right.box.x)
            found.right = tags[i];
        found.count++;
    }
    return found;
}

/* The bar with the name of a view, as wide as the view; of no size where it has none such. */
static struct area view_bar(const struct sheet *card, const struct pen *pen, enum plan_word head)
{
    for (size_t i = 2; i < pen->count; i++)
        if (pen->items[i].kind == PAGE_TEXT && pen->items[i].fill == INK_WHITE &&
            text_equal(pen->items[i].run->text, sheet_plan(card)->words[head]))
            return pen->items[i - 2].area;
    return (struct area){0};
}

static bool overlap(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

static bool is_label(const struct page_item *item)
{
    return item->kind == PAGE_TEXT && item->role == ROLE_PLAN_LABEL;
}

/* ---- tags ---- */

static void each_tag_is_there(const struct sheet *card, const struct pen *pen)
{
    struct drawn_tag tags[TAGS_MOST];
    size_t wanted = 0;
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        size_t times = marker->drawn == SIDE_BOTH ? 2 : 1;
        if (tag_find(pen, marker->tag).count != times)
            fail_msg("%s: %s is not drawn %zu times", card->name, marker->tag, times);
        wanted += times;
    }
    assert_int_equal(tags_drawn(pen, tags), wanted);
}

static void every_tag_of_a_card_stands_once_and_no_other(void **state)
{
    (void)state;
    each_plan(each_tag_is_there);
}

/* What lies between a catamaran's hulls lies beside her deck. */
static enum plan_word head_of(const struct marker *marker)
{
    const struct boat *boat = test.boat;
    bool sided = marker->drawn == SIDE_PORT || marker->drawn == SIDE_STARBOARD ||
                 marker->drawn == SIDE_BOTH || marker->zone->side != SIDE_NONE;
    bool below = marker->level == LEVEL_BELOW;
    if (boat->facts.hull.value == HULL_CATAMARAN)
        return below && marker->zone->in_hulls && sided ? PLAN_HEAD_HULLS
                                                        : PLAN_HEAD_DECK_SALOON;
    if (!boat_has_cabin(boat))
        return PLAN_HEAD_WHOLE;
    return below ? PLAN_HEAD_BELOW : PLAN_HEAD_DECK;
}

/* A tag that is larger than its least reaches over the edge of a hull that is narrower. */
static void each_tag_is_in_its_view(const struct sheet *card, const struct pen *pen)
{
    const mpt slack = MM(0.5);
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        struct found_tag found = tag_find(pen, marker->tag);
        struct area bar = view_bar(card, pen, head_of(marker));
        mpt middle = bar.x + bar.width / 2, left = middle_of(found.left.box).x;
        mpt right = middle_of(found.right.box).x;
        enum side side = marker->drawn == SIDE_NONE ? marker->zone->side : marker->drawn;
        if (found.left.box.x < bar.x - slack ||
            found.right.box.x + found.right.box.width > bar.x + bar.width + slack)
            fail_msg("%s: %s stands outside of its view", card->name, marker->tag);
        bool wrong = (side == SIDE_PORT && right >= middle) ||
                     (side == SIDE_STARBOARD && left <= middle) ||
                     (side == SIDE_BOTH && (left >= middle || right <= middle));
        if (wrong)
            fail_msg("%s: %s stands on the wrong side", card->name, marker->tag);
    }
}

static void tags_stand_in_the_view_of_their_level_and_on_their_side(void **state)
{
    (void)state;
    each_plan(each_tag_is_in_its_view);
}

/* Each hull of several has places of its own, and so has the deck between them. */
static bool are_of_one_body(const struct marker *a, const struct marker *b)
{
    return head_of(a) == head_of(b) &&
           (test.boat->facts.hull.value == HULL_MONOHULL ||
            (a->drawn == b->drawn && a->zone->in_hulls == b->zone->in_hulls));
}

static void each_tag_is_in_order(const struct sheet *card, const struct pen *pen)
{
    const struct plan_facts *plan = sheet_plan(card);
    for (size_t a = 0; a < plan->marker_count; a++)
        for (size_t b = 0; b < plan->marker_count; b++) {
            const struct marker *ahead = &plan->markers[a], *abaft = &plan->markers[b];
            if (a == b || ahead->to_mm > abaft->from_mm || !are_of_one_body(ahead, abaft))
                continue;
            if (middle_of(tag_find(pen, ahead->tag).left.box).y >
                middle_of(tag_find(pen, abaft->tag).left.box).y + 1)
                fail_msg("%s: %s stands abaft %s", card->name, ahead->tag, abaft->tag);
        }
}

static void what_lies_ahead_stands_ahead(void **state)
{
    (void)state;
    each_plan(each_tag_is_in_order);
}

static void each_tag_tells_its_level(const struct sheet *card, const struct pen *pen)
{
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        assert_int_equal(tag_find(pen, marker->tag).left.round, marker->level == LEVEL_BELOW);
    }
}

static void tags_below_are_round_and_tags_on_deck_are_square(void **state)
{
    (void)state;
    each_plan(each_tag_tells_its_level);
}

/* ---- one place on all cards ---- */

static void same_place(const struct sheet *first, const struct sheet *second)
{
    struct pen one = drawn(first, floor_height()), other = drawn(second, floor_height());
    for (size_t m = 0; m < sheet_plan(first)->marker_count; m++) {
        const char *tag = sheet_plan(first)->markers[m].tag;
        struct found_tag found = tag_find(&other, tag);
        if (found.count == 0)
            continue;
        struct point a = middle_of(tag_find(&one, tag).left.box), b = middle_of(found.left.box);
        if (a.x - b.x > 1 || b.x - a.x > 1 || a.y - b.y > 1 || b.y - a.y > 1)
            fail_msg("%s stands elsewhere on %s than on %s", tag, second->name, first->name);
    }
}

static void a_thing_stands_at_one_place_on_every_card(void **state)
{
    (void)state;
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        boat_begin(boats[b]);
        for (size_t i = 0; i < set->count; i++)
            for (size_t j = 0; j < i; j++)
                if (has_plan(set->sheets[i]) && has_plan(set->sheets[j]))
                    same_place(set->sheets[i], set->sheets[j]);
    }
}

/* ---- names ---- */

/* Is the name drawn, on one line or on two? */
static bool name_stands(const struct pen *pen, const char *name)
{
    for (size_t i = 0; i < pen->count; i++) {
        if (!is_label(&pen->items[i]))
            continue;
        const char *first = pen->items[i].run->text;
        if (text_equal(first, name))
            return true;
        for (size_t j = 0; j < pen->count; j++)
            if (is_label(&pen->items[j]) &&
                text_equal(text_format(test.arena, "%s %s", first, pen->items[j].run->text), name))
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

/* No tag lies on another, no word on another, and no tag on a word. */
static void nothing_covers_another(const struct sheet *card, const struct pen *pen)
{
    struct drawn_tag tags[TAGS_MOST];
    size_t count = tags_drawn(pen, tags);
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < i; j++)
            if (overlap(tags[i].box, tags[j].box))
                fail_msg("%s: %s lies on %s", card->name, tags[i].text, tags[j].text);
    for (size_t i = 0; i < pen->count; i++) {
        const struct page_item *word = &pen->items[i];
        for (size_t j = 0; is_label(word) && j < count; j++)
            if (overlap(word->area, tags[j].box))
                fail_msg("%s: %s lies on %s", card->name, tags[j].text, word->run->text);
        for (size_t j = 0; is_label(word) && j < i; j++)
            if (is_label(&pen->items[j]) && overlap(word->area, pen->items[j].area))
                fail_msg("%s: `%s` lies on `%s`", card->name, word->run->text,
                         pen->items[j].run->text);
    }
}

static void no_name_and_no_tag_is_covered(void **state)
{
    (void)state;
    each_plan(nothing_covers_another);
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
        struct point middle = middle_of(tag_find(pen, marker->tag).left.box);
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
    boat_begin("tests/fleet/boats/samphire.yaml");
    for (size_t i = 0; i < 2; i++) {
        const struct sheet *card = case_card(set, spaces[i].card);
        struct pen pen = drawn(card, floor_height());
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
    struct area column = column_of(aim_height());
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

/* ---- boats made up ---- */

#define GEAR(tag, rest) "  - {item: torch, tag: " tag ", " rest "}\n"
#define NONE_FITTED "  - flares\n"

static const struct sheet *torch_card(const char *gear)
{
    const char *const whole[] = {
        case_procedure_text(&test, "dark", 10,
                            "steps: [{id: use, sources: [S5], uses: [torch]}]\n",
                            "steps: {use: {act: \"**TAKE** it.\"}}\n"), NULL};
    case_procedures(&test, whole);
    boat_begin(case_boat_text(&test, CASE_RADIO, gear, NONE_FITTED));
    return case_card(set, "dark");
}

static void what_lies_on_both_sides_stands_on_both(void **state)
{
    (void)state;
    const struct sheet *card = torch_card(GEAR("C1", "zone: cockpit_locker, side: both, count: 2"));
    struct pen pen = drawn(card, floor_height());
    assert_int_equal(tag_find(&pen, "C1").count, 2);
    each_tag_is_in_its_view(card, &pen);
}

/* Two in one zone, told apart by where they were measured. */
static void places_that_are_measured_are_in_order(void **state)
{
    (void)state;
    const struct sheet *card = torch_card(GEAR("C1", "zone: saloon, spot: aft, side: port, at: [6.2, -1]")
                                          GEAR("C2", "zone: saloon, side: starboard, at: [4.5, 1]")
                                          GEAR("C3", "zone: saloon, spot: shelf, side: port, at: [5.4, -1]"));
    struct pen pen = drawn(card, aim_height());
    mpt first = middle_of(tag_find(&pen, "C2").left.box).y;
    mpt second = middle_of(tag_find(&pen, "C3").left.box).y;
    mpt third = middle_of(tag_find(&pen, "C1").left.box).y;
    assert_true(first < second && second < third);
    each_tag_is_in_its_view(card, &pen);
}

/* Rooms whose names begin alike are each named. */
static void names_that_begin_alike_are_both_drawn(void **state)
{
    (void)state;
    const struct sheet *card = torch_card(GEAR("C1", "zone: forward_cabin, side: port")
                                          GEAR("C2", "zone: forward_heads, side: port")
                                          GEAR("C3", "zone: aft_cabin, side: port")
                                          GEAR("C4", "zone: aft_heads, side: port"));
    struct pen pen = drawn(card, aim_height());
    each_room_is_named(card, &pen);
    nothing_covers_another(card, &pen);
}

/* More than a place holds is an error with the line of each that has none; nothing is left out
 * in silence. */
static void what_has_no_room_is_told(void **state)
{
    (void)state;
    struct text_builder gear = text_builder_in(test.arena);
    for (int i = 1; i <= 60; i++)
        text_add_format(&gear, GEAR("C%d", "zone: forepeak, spot: hook %d"), i, i);
    const struct sheet *card = torch_card(gear.at);
    struct pen pen = drawn(card, floor_height());
    size_t missing = 0, told = problems_count(test.problems, SEVERITY_ERROR);
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const char *what = text_format(test.arena, "%s: no room on the plan for the tag %s in "
                                       "forepeak", card->name, sheet_plan(card)->markers[m].tag);
        missing += case_problem(&test, what) != NULL ? 1 : 0;
    }
    assert_true(missing > 0);
    assert_int_equal(told, missing);
    assert_true(pen.failed);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_tag_of_a_card_stands_once_and_no_other),
        TEST(tags_stand_in_the_view_of_their_level_and_on_their_side),
        TEST(what_lies_ahead_stands_ahead),
        TEST(tags_below_are_round_and_tags_on_deck_are_square),
        TEST(a_thing_stands_at_one_place_on_every_card),
        TEST(all_her_rooms_are_named),
        TEST(no_name_and_no_tag_is_covered),
        TEST(only_the_space_where_it_burns_is_hatched),
        TEST(each_engine_space_is_hatched_in_its_hull),
        TEST(all_stays_within_the_column),
        TEST(what_lies_on_both_sides_stands_on_both),
        TEST(places_that_are_measured_are_in_order),
        TEST(names_that_begin_alike_are_both_drawn),
        TEST(what_has_no_room_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
