/* test_capacity.c - liferaft places against persons, and lifejackets against
 * bodies: the matching is compared with trying everything. */
#include "boat_case.h"

#include "capacity.h"

/* A boat with these pieces, given as the fields after the tag. */
static const struct boat *boat_with(const char *const *pieces)
{
    const char *text = MONOHULL "equipment:\n  - {item: anchor_main, tag: C1, zone: saloon}\n";
    for (int i = 0; pieces[i] != NULL; i++)
        text = text_format(test.arena, "%s  - {tag: E%d, zone: saloon, spot: place %d, %s}\n",
                           text, i + 1, i, pieces[i]);
    const struct boat *boat = boat_of(text);
    expect_errors(0);
    return boat;
}

/* ---- liferafts ---- */

static struct raft_capacity rafts_of(const char *one, const char *two, int64_t persons)
{
    const char *const pieces[] = {one, two, NULL};
    const struct boat *boat = boat_with(pieces);
    return raft_capacity(boat->equipment, boat->equipment_count, persons);
}

/* The twelve places as one raft, two rafts, and two in one row. */
static void places_are_compared_with_persons(void **state)
{
    (void)state;
    static const struct {
        const char *one, *two;
        int64_t persons, places, spare;
        bool enough, short_without_one;
    } cases[] = {
        {"item: liferaft, persons: 8", NULL, 8, 8, 0, true, false},
        {"item: liferaft, persons: 8", NULL, 9, 8, -1, false, false},
        {"item: liferaft, persons: 12", NULL, 10, 12, 2, true, false},
        {"item: liferaft, persons: 6", NULL, 7, 6, -1, false, false},
        {"item: liferaft, persons: 8", NULL, 0, 8, 8, true, false},
        {"item: liferaft, persons: 8", "item: liferaft, persons: 4", 10, 12, 2, true, true},
        {"item: liferaft, persons: 8", "item: liferaft, persons: 4", 4, 12, 8, true, false},
        {"item: liferaft, persons: 8", "item: liferaft, persons: 4", 5, 12, 7, true, true},
        {"item: liferaft, persons: 6, count: 2", NULL, 10, 12, 2, true, true},
        {"item: liferaft, persons: 6, count: 2", NULL, 6, 12, 6, true, false},
        {"item: liferaft, persons: 6, count: 3", NULL, 12, 18, 6, true, false},
        {"item: lifejacket, count: 8", NULL, 1, 0, -1, false, false},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        struct raft_capacity found = rafts_of(cases[i].one, cases[i].two, cases[i].persons);
        assert_int_equal(found.places, cases[i].places);
        assert_int_equal(found.spare, cases[i].spare);
        assert_int_equal(found.enough, cases[i].enough);
        assert_int_equal(found.short_without_one, cases[i].short_without_one);
        assert_int_equal(found.unrecorded, 0);
    }
}

static void a_raft_without_a_number_has_no_places(void **state)
{
    (void)state;
    struct raft_capacity found = rafts_of("item: liferaft", "item: liferaft, persons: 8", 8);
    assert_int_equal(found.rafts, 2);
    assert_int_equal(found.unrecorded, 1);
    assert_int_equal(found.places, 8);
    assert_int_equal(found.largest, 8);
    assert_true(found.enough);
    assert_false(found.short_without_one);   /* the other may hold all of them */
    assert_false(rafts_of("item: liferaft", NULL, 1).enough);
}

/* ---- lifejackets ---- */

static void jackets_are_counted_by_wearer(void **state)
{
    (void)state;
    const char *const pieces[] = {
        "item: lifejacket, count: 8, wearer: adult, kg_low: 40",
        "item: lifejacket, count: 2, wearer: child, kg_low: 10, kg_high: 20",
        "item: lifejacket, wearer: child, kg_high: 40",
        "item: lifejacket, count: 3", "item: liferaft, persons: 8", NULL};
    const struct boat *boat = boat_with(pieces);
    struct jacket_count found = jackets_counted(boat->equipment, boat->equipment_count);
    assert_int_equal(found.adult, 8);
    assert_int_equal(found.child, 3);
    assert_int_equal(found.unsaid, 3);
    assert_int_equal(found.unsized, 4);

    size_t count = 0;
    const struct jacket_size *sizes = jacket_sizes(boat->equipment, boat->equipment_count,
                                                   test.arena, &count);
    assert_int_equal(count, 2);
    assert_int_equal(sizes[0].low_g, 40000);
    assert_true(sizes[0].high_g == JACKET_NO_UPPER);
    assert_int_equal(sizes[0].count, 8);
    assert_int_equal(sizes[1].low_g, 10000);
    assert_int_equal(sizes[1].high_g, 20000);
    assert_int_equal(sizes[1].count, 2);
}

static const struct jacket_size fleet_sizes[] = {
    {10000, 20000, 2}, {20000, 40000, 1}, {40000, JACKET_NO_UPPER, 8}};

/* The sizes, then the edges of a size: from its low end, not to its high. */
static void each_body_gets_a_jacket_that_fits(void **state)
{
    (void)state;
    static const struct {
        int64_t kg[10];
        size_t persons, without;
        int64_t first_without_kg;
    } cases[] = {
        {{80, 75, 60, 55, 18, 12}, 6, 0, 0},
        {{80, 75, 15, 14, 13}, 5, 1, 15},
        {{80, 35, 25}, 3, 1, 35},
        {{85, 85, 85, 85, 85, 85, 85, 85, 85}, 9, 1, 85},
        {{10, 20, 40}, 3, 0, 0},
        {{20, 20}, 2, 1, 20},
        {{9}, 1, 1, 9},
        {{8, 9, 300}, 3, 2, 8},
        {{0}, 0, 0, 0},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        int64_t masses[10], without[10] = {0};
        for (size_t j = 0; j < 10; j++)
            masses[j] = cases[i].kg[j] * 1000;
        assert_int_equal(jackets_match(masses, cases[i].persons, fleet_sizes, 3, test.arena,
                                       without), cases[i].without);
        assert_int_equal(without[0], cases[i].first_without_kg * 1000);
        assert_int_equal(masses[0], cases[i].kg[0] * 1000);
        assert_int_equal(fleet_sizes[2].count, 8);
        assert_int_equal(jackets_match(masses, cases[i].persons, fleet_sizes, 3, test.arena, NULL),
                         cases[i].without);
        assert_int_equal(jackets_match(masses, cases[i].persons, NULL, 0, test.arena, NULL),
                         cases[i].persons);
    }
}

/* The fewest left over, found by trying each jacket and none for each person. */
static size_t fewest_without(const int64_t *masses, size_t persons, struct jacket_size *sizes,
                             size_t size_count)
{
    if (persons == 0)
        return 0;
    size_t fewest = 1 + fewest_without(masses + 1, persons - 1, sizes, size_count);
    for (size_t i = 0; i < size_count; i++) {
        if (sizes[i].count == 0 || masses[0] < sizes[i].low_g || masses[0] >= sizes[i].high_g)
            continue;
        sizes[i].count--;
        size_t found = fewest_without(masses + 1, persons - 1, sizes, size_count);
        sizes[i].count++;
        if (found < fewest)
            fewest = found;
    }
    return fewest;
}

/* The same numbers on every machine. */
static int64_t number_below(uint64_t *seed, uint64_t limit)
{
    *seed = *seed * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    return (int64_t)((*seed >> 33) % limit);
}

/* Sizes overlap, nest, are empty; many bodies sit on their edges. */
static void the_greedy_choice_is_as_good_as_trying_everything(void **state)
{
    (void)state;
    uint64_t seed = 11;
    size_t with_some_without = 0, all_served = 0;
    for (int run = 0; run < 4000; run++) {
        struct jacket_size sizes[4];
        int64_t masses[7], without[7];
        size_t size_count = (size_t)number_below(&seed, 5);
        size_t persons = (size_t)number_below(&seed, 8);
        for (size_t i = 0; i < size_count; i++) {
            int64_t low = number_below(&seed, 12), width = number_below(&seed, 7);
            sizes[i] = (struct jacket_size){low, low + width, number_below(&seed, 4)};
            if (width == 6)
                sizes[i].high_g = JACKET_NO_UPPER;
        }
        for (size_t i = 0; i < persons; i++)
            masses[i] = number_below(&seed, 16);
        size_t greedy = jackets_match(masses, persons, sizes, size_count, test.arena, without);
        assert_int_equal(greedy, fewest_without(masses, persons, sizes, size_count));
        for (size_t i = 1; i < greedy; i++)
            assert_true(without[i - 1] <= without[i]);
        with_some_without += greedy > 0 && greedy < persons ? 1 : 0;
        all_served += greedy == 0 && persons > 0 ? 1 : 0;
    }
    assert_true(with_some_without > 1000);
    assert_true(all_served > 100);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(places_are_compared_with_persons),
        TEST(a_raft_without_a_number_has_no_places),
        TEST(jackets_are_counted_by_wearer),
        TEST(each_body_gets_a_jacket_that_fits),
        TEST(the_greedy_choice_is_as_good_as_trying_everything),
    };

    return cmocka_run_group_tests_name("capacity", tests, NULL, NULL) != 0;
}
