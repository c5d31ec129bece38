/* test_proof_near.c - what the proofreader is told to stand near is all that does. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "proof/proof_near.h"
#include "text.h"

#define SIDE 400000
#define THINGS 150
#define FRAMED 7                /* the thing that has a frame */
#define PAGES 20

/* Numbers that are the same in each run. */
static uint32_t seed;
static mpt number_below(uint32_t most)
{
    seed = seed * 1664525u + 1013904223u;
    return (mpt)((seed >> 8) % most);
}

/* Boxes and lines on the page, a few of them off it. */
static void things_scatter(struct page_item *items, struct area *ink)
{
    for (size_t i = 0; i < THINGS; i++) {
        mpt x = number_below(SIDE + 100000) - 50000, y = number_below(SIDE + 100000) - 50000;
        struct point to = {x + number_below(60000), y + number_below(60000)};
        items[i] = (struct page_item){.kind = i % 3 == 0 ? PAGE_LINE : PAGE_BOX,
                                      .area = {x, y, to.x - x, to.y - y}, .line_width = 1000,
                                      .from = {x, y}, .to = to};
        ink[i] = area_grown(items[i].area, 500);
    }
}

static bool set_has(const struct near_set *set, size_t item)
{
    size_t found;
    return near_next(set, item, &found) && found == item;
}

/* Both ways through a set give the same things, each once and in order. */
static size_t both_ways_count(const struct near_set *set)
{
    size_t count = 0, back = 0, at;
    for (size_t i = 0; near_next(set, i, &i); i++)
        count++;
    for (at = THINGS; near_before(set, at, &at);) {
        assert_true(set_has(set, at));
        back++;
    }
    assert_int_equal(back, count);
    return count;
}

/* Asks for what stands near each thing; gives how many were named. */
static size_t page_ask(const struct proofing *p, mpt within, const struct page_item *frame)
{
    size_t given = 0;

    for (size_t i = 0; i < THINGS; i++) {
        struct near_set near = near_item(p, i, within);
        given += both_ways_count(&near);
        for (size_t k = 0; k < THINGS; k++)
            if (area_gap(p->ink[i], p->ink[k]) < within)
                assert_true(set_has(&near, k));
        if (area_gap(frame->area, p->ink[i]) < within)
            assert_true(set_has(&near, FRAMED));
    }
    return given;
}

static void nothing_near_is_left_out(void **state)
{
    struct arena *arena = arena_new((size_t)64 << 20);
    struct page_item *items = arena_array(arena, THINGS, sizeof *items);
    struct area *ink = arena_array(arena, THINGS, sizeof *ink);
    const struct page_item **frames = arena_array(arena, THINGS, sizeof *frames);
    size_t given = 0;

    (void)state;
    seed = 1;
    for (int i = 0; i < PAGES; i++) {
        struct page page = {.width = SIDE, .height = SIDE, .items = items, .count = THINGS};
        things_scatter(items, ink);
        frames[FRAMED] = &items[number_below(THINGS)];
        struct proofing p = {.page = &page, .ink = ink, .arena = arena,
                             .nearness = nearness_new(&page, ink, frames, arena)};
        given += page_ask(&p, number_below(5000), frames[FRAMED]);
    }
    assert_true(given < (size_t)PAGES * THINGS * THINGS / 4);  /* most are far off, and not named */
    arena_free(arena);
}

/* An edge in common is not enough, on whichever side. */
static void areas_that_touch_do_not_meet(void **state)
{
    static const struct { mpt x, y; bool meet; } moved[] = {
        {10, 0, false}, {-10, 0, false}, {0, 20, false}, {0, -20, false}, {10, 20, false},
        {9, 0, true}, {-9, 0, true}, {0, 19, true}, {0, -19, true}, {9, -19, true}};
    const struct area area = {100, 200, 10, 20};
    (void)state;
    for (size_t i = 0; i < sizeof moved / sizeof *moved; i++) {
        const struct area other = {area.x + moved[i].x, area.y + moved[i].y, 10, 20};
        assert_int_equal(area_meets(area, other), moved[i].meet);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(nothing_near_is_left_out),
                                       cmocka_unit_test(areas_that_touch_do_not_meet)};

    return cmocka_run_group_tests_name("proof_near", tests, NULL, NULL) != 0;
}
