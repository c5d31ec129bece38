/* test_labels.c - labels beside the plan: none overlaps, all stay in their column,
 * no leader crosses another or comes near a foreign box. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "arena.h"
#include "face.h"
#include "geometry.h"
#include "layout/labels.h"

#define MOST 24
#define ARENA_LIMIT ((size_t)256 * 1024 * 1024)
#define CLEARANCE MM(0.5)

static const struct label_columns columns = {.left = {MM(10), MM(60), MM(60), MM(200)},
                                             .right = {MM(140), MM(60), MM(60), MM(200)},
                                             .gap = MM(1), .clearance = CLEARANCE,
                                             .own_side = false};

static uint32_t random_next(uint32_t *state)
{
    *state = *state * 1664525u + 1013904223u;
    return *state >> 8;
}

static mpt random_between(uint32_t *state, mpt low, mpt high)
{
    return low + (mpt)(random_next(state) % (uint32_t)(high - low + 1));
}

static bool near(struct area a, struct area b)
{
    mpt gap = MM(1.2);
    return a.x < b.x + b.width + gap && b.x < a.x + a.width + gap &&
           a.y < b.y + b.height + gap && b.y < a.y + a.height + gap;
}

/* Boxes on a boat between the columns, none on another. */
static size_t random_labels(uint32_t *state, struct label *labels, size_t count)
{
    size_t made = 0;
    for (size_t tries = 0; made < count && tries < 400; tries++) {
        struct area box = {random_between(state, MM(76), MM(124)),
                           random_between(state, MM(65), MM(245)),
                           random_between(state, MM(4), MM(9)),
                           random_between(state, MM(4), MM(14))};
        bool free = true;
        for (size_t i = 0; i < made; i++)
            free = free && !near(box, labels[i].box);
        mpt height = random_between(state, MM(13), MM(34));
        if (free)
            labels[made++] = (struct label){.box = box, .height = height, .drop = MM(5),
                                            .foot = made % 3 == 0 ? MM(5) : height - MM(1)};
    }
    return made;
}

/* As level with the middle of the box as the label reaches. */
static void leader_arrives_level(const struct label *label)
{
    mpt middle = label->box.y + label->box.height / 2;
    mpt low = label->top + label->drop, high = label->top + label->foot;
    assert_int_equal(label->to.y, middle < low ? low : middle > high ? high : middle);
}

static void labels_stand_in_their_columns(const struct label *labels, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const struct area *column = labels[i].side == LABEL_RIGHT ? &columns.right : &columns.left;
        assert_true(labels[i].top >= column->y);
        assert_true(labels[i].top + labels[i].height <= column->y + column->height);
        leader_arrives_level(&labels[i]);
        assert_int_equal(labels[i].to.x,
                         labels[i].side == LABEL_RIGHT ? column->x : column->x + column->width);
        for (size_t j = 0; j < i; j++)
            if (labels[i].side == labels[j].side)
                assert_true(labels[i].top >= labels[j].top + labels[j].height + columns.gap ||
                            labels[j].top >= labels[i].top + labels[i].height + columns.gap);
    }
}

/* Said again, apart from the code that is tested. */
static void leaders_are_clean(const struct label *labels, size_t count, size_t run)
{
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < count; j++) {
            if (i == j)
                continue;
            if (segments_meet(labels[i].from, labels[i].to, labels[j].from, labels[j].to))
                fail_msg("plan %zu: leaders %zu and %zu cross", run, i, j);
            if (segment_to_box(labels[i].from, labels[i].to, labels[j].box) < CLEARANCE)
                fail_msg("plan %zu: leader %zu comes near box %zu", run, i, j);
        }
}

static enum labels_found arrange(struct label *labels, size_t count, mpt *over)
{
    struct arena *arena = arena_new(ARENA_LIMIT);
    enum labels_found found = labels_arrange(labels, count, &columns, arena, over);
    arena_free(arena);
    return found;
}

/* Most plans of up to 12 places can be led; none is led that is not clean. */
static void test_random_plans(void **state)
{
    uint32_t seed = 11;
    size_t led = 0, keyed = 0;
    (void)state;
    for (size_t run = 0; run < 3000; run++) {
        struct label labels[MOST];
        mpt over = 0;
        size_t count = random_labels(&seed, labels, 3 + run % 10);
        enum labels_found found = arrange(labels, count, &over);
        if (found == LABELS_NO_ROOM)
            continue;
        labels_stand_in_their_columns(labels, count);
        led += found == LABELS_LED ? 1 : 0;
        keyed += found == LABELS_KEYED ? 1 : 0;
        if (found == LABELS_LED)
            leaders_are_clean(labels, count, run);
        assert_int_equal(labels_clean(labels, count, CLEARANCE), found == LABELS_LED);
    }
    assert_true(led + keyed > 2900);
    assert_true(led > 20 * keyed);
}

static void test_one_label(void **state)
{
    (void)state;
    struct label label = {.box = {MM(80), MM(100), MM(6), MM(4)}, .height = MM(20),
                          .drop = MM(5), .foot = MM(5)};
    mpt over = 1;
    assert_int_equal(arrange(&label, 1, &over), LABELS_LED);
    assert_int_equal(over, 0);
    assert_int_equal(label.side, LABEL_LEFT);                        /* it lies to port */
    assert_int_equal(label.to.y, MM(102));            /* level with its box */
    assert_int_equal(label.from.x, MM(80));           /* from its port side */
    assert_int_equal(label.from.y, MM(102));
}

static void test_no_label(void **state)
{
    mpt over = 1;
    (void)state;
    assert_int_equal(arrange(NULL, 0, &over), LABELS_LED);
    assert_int_equal(over, 0);
}

/* All places to port: what has no room there stands to starboard. */
static void test_a_full_column_gives_to_the_other(void **state)
{
    struct label labels[10];
    size_t right = 0;
    mpt over = 0;
    (void)state;
    for (size_t i = 0; i < 10; i++)
        labels[i] = (struct label){.box = {MM(80), MM(62) + MM(18) * (mpt)i, MM(6), MM(4)},
                                   .height = MM(30), .drop = MM(5), .foot = MM(5)};
    assert_int_not_equal(arrange(labels, 10, &over), LABELS_NO_ROOM);
    labels_stand_in_their_columns(labels, 10);
    for (size_t i = 0; i < 10; i++)
        right += labels[i].side == LABEL_RIGHT ? 1 : 0;
    assert_in_range(right, 4, 6);
}

static void test_what_has_no_room_is_told(void **state)
{
    struct label labels[14];
    mpt over = 0;
    (void)state;
    for (size_t i = 0; i < 14; i++)
        labels[i] = (struct label){.box = {MM(80), MM(62) + MM(13) * (mpt)i, MM(6), MM(4)},
                                   .height = MM(30), .drop = MM(5), .foot = MM(5)};
    assert_int_equal(arrange(labels, 14, &over), LABELS_NO_ROOM);
    assert_in_range(over, MM(20), MM(40));            /* 14 of 31 mm in two of 200 */
}

/* A place walled in by others: its tags are the key. */
static void test_no_way_out_is_keyed(void **state)
{
    struct label labels[5] = {
        {.box = {MM(100), MM(150), MM(6), MM(4)}, .height = MM(20), .drop = MM(5),
         .foot = MM(5)},
        {.box = {MM(90), MM(61), MM(3), MM(198)}, .height = MM(20), .drop = MM(5),
         .foot = MM(5)},
        {.box = {MM(115), MM(61), MM(3), MM(198)}, .height = MM(20), .drop = MM(5),
         .foot = MM(5)},
        {.box = {MM(94), MM(62), MM(20), MM(3)}, .height = MM(20), .drop = MM(5),
         .foot = MM(5)},
        {.box = {MM(94), MM(255), MM(20), MM(3)}, .height = MM(20), .drop = MM(5),
         .foot = MM(5)}};
    mpt over = 0;
    (void)state;
    assert_int_equal(arrange(labels, 5, &over), LABELS_KEYED);
    labels_stand_in_their_columns(labels, 5);
}

/* The same boxes give the same page. */
static void test_repeats(void **state)
{
    uint32_t seed = 5, again = 5;
    (void)state;
    for (size_t run = 0; run < 50; run++) {
        struct label one[MOST], two[MOST];
        mpt over;
        size_t count = random_labels(&seed, one, 12);
        random_labels(&again, two, 12);
        assert_int_equal(arrange(one, count, &over), arrange(two, count, &over));
        for (size_t i = 0; i < count; i++) {
            assert_int_equal(one[i].top, two[i].top);
            assert_int_equal(one[i].side, two[i].side);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_random_plans),
        cmocka_unit_test(test_one_label),
        cmocka_unit_test(test_no_label),
        cmocka_unit_test(test_a_full_column_gives_to_the_other),
        cmocka_unit_test(test_what_has_no_room_is_told),
        cmocka_unit_test(test_no_way_out_is_keyed),
        cmocka_unit_test(test_repeats),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
