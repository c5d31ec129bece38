/* test_assignment.c - least total length: reckoned vectors, every other
 * assignment tried, and no two leaders that cross. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <math.h>

#include "arena.h"
#include "face.h"
#include "geometry.h"
#include "layout/assignment.h"

#define MOST 32
#define UNIT 1000               /* of the vectors' coordinates */
#define ARENA_LIMIT ((size_t)64 * 1024 * 1024)

struct layout_case {
    struct point sites[MOST], ports[MOST];
    size_t site_count, port_count;
};

static const double *lengths_of(const struct layout_case *layout, struct arena *arena)
{
    double *at = arena_array(arena, layout->site_count * layout->port_count, sizeof *at);
    for (size_t s = 0; s < layout->site_count; s++)
        for (size_t p = 0; p < layout->port_count; p++)
            at[s * layout->port_count + p] = length_between(layout->sites[s], layout->ports[p]);
    return at;
}

static double solve(const struct layout_case *layout, size_t *chosen)
{
    struct arena *arena = arena_new(ARENA_LIMIT);
    struct costs costs = {layout->site_count, layout->port_count, lengths_of(layout, arena)};
    assignment_solve(&costs, arena, chosen);
    double sum = assignment_sum(&costs, chosen);
    arena_free(arena);
    return sum;
}

static size_t crossings(const struct layout_case *layout, const size_t *chosen)
{
    size_t count = 0;
    for (size_t a = 0; a < layout->site_count; a++)
        for (size_t b = a + 1; b < layout->site_count; b++)
            count += segments_meet(layout->sites[a], layout->ports[chosen[a]], layout->sites[b],
                                   layout->ports[chosen[b]]);
    return count;
}

/* ---- reckoned vectors ---- */

static const struct vector {
    const char *id;
    struct layout_case layout;
    size_t chosen[5];
    double total;
} vectors[] = {
    {.id = "A", .layout = {{{2, 1}, {5, 3}, {3, 5}}, {{0, 1}, {0, 3}, {0, 5}}, 3, 3},
     .chosen = {0, 1, 2}, .total = 10.00},
    {.id = "B", .layout = {{{9, 2}, {1, 1}}, {{10, 11}, {10, 10}}, 2, 2},
     .chosen = {1, 0}, .total = 21.52},
    {.id = "C", .layout = {{{3, 1}, {7, 1}, {3, 3}, {7, 3}},
                           {{0, 1}, {0, 3}, {10, 1}, {10, 3}}, 4, 4},
     .chosen = {0, 2, 1, 3}, .total = 12.00},
    {.id = "D", .layout = {{{2, 2}, {4, 6}, {6, 1}, {8, 5}, {5, 3}},
                           {{0, 1}, {0, 4}, {0, 7}, {10, 1}, {10, 4}, {10, 7}}, 5, 6},
     .chosen = {0, 2, 3, 4, 1}, .total = 17.69},
    {.id = "E", .layout = {{{0, 0}, {1, 3}, {2, 1}}, {{6, 0}, {6, 2}, {6, 4}}, 3, 3},
     .chosen = {0, 2, 1}, .total = 15.22}};

static struct layout_case scaled(const struct layout_case *layout)
{
    struct layout_case out = *layout;
    for (size_t i = 0; i < MOST; i++) {
        out.sites[i] = (struct point){layout->sites[i].x * UNIT, layout->sites[i].y * UNIT};
        out.ports[i] = (struct point){layout->ports[i].x * UNIT, layout->ports[i].y * UNIT};
    }
    return out;
}

static void test_vectors(void **state)
{
    (void)state;
    for (size_t v = 0; v < sizeof vectors / sizeof *vectors; v++) {
        struct layout_case layout = scaled(&vectors[v].layout);
        size_t chosen[MOST] = {0};
        double sum = solve(&layout, chosen);
        for (size_t i = 0; i < layout.site_count; i++)
            if (chosen[i] != vectors[v].chosen[i])
                fail_msg("%s: site %zu went to port %zu", vectors[v].id, i, chosen[i]);
        if (fabs(sum / UNIT - vectors[v].total) > 0.005)
            fail_msg("%s: total %f", vectors[v].id, sum / UNIT);
        assert_int_equal(crossings(&layout, chosen), 0);
    }
}

/* Sorted by height, the leaders of B would cross. */
static void test_vector_b_is_a_trap(void **state)
{
    (void)state;
    struct layout_case layout = scaled(&vectors[1].layout);
    assert_int_equal(crossings(&layout, (size_t[]){0, 1}), 1);
}

/* ---- random layouts ---- */

static uint32_t random_next(uint32_t *state)
{
    *state = *state * 1664525u + 1013904223u;
    return *state >> 8;
}

static mpt random_between(uint32_t *state, mpt low, mpt high)
{
    return low + (mpt)(random_next(state) % (uint32_t)(high - low + 1));
}

/* Places on a hull, and as many labels on each side of it as there are places. */
static struct layout_case random_plan(uint32_t *state, size_t sites)
{
    struct layout_case layout = {.site_count = sites, .port_count = 2 * sites};
    for (size_t i = 0; i < sites; i++)
        layout.sites[i] = (struct point){random_between(state, MM(70), MM(140)),
                                         random_between(state, MM(60), MM(260))};
    for (size_t i = 0; i < sites; i++) {
        mpt y = MM(60) + (mpt)(i * (size_t)MM(200) / sites);
        layout.ports[i] = (struct point){MM(62), y};
        layout.ports[sites + i] = (struct point){MM(148), y};
    }
    return layout;
}

/* Tries every assignment; the first of those of least sum is left in `best`. */
struct trying {
    const struct layout_case *layout;
    size_t now[MOST], best[MOST];
    bool taken[MOST];
    double least;
};

static void try_from(struct trying *trying, size_t site, double sum)
{
    const struct layout_case *layout = trying->layout;
    if (sum >= trying->least - 1e-6)
        return;
    if (site == layout->site_count) {
        trying->least = sum;
        for (size_t i = 0; i < site; i++)
            trying->best[i] = trying->now[i];
        return;
    }
    for (size_t port = 0; port < layout->port_count; port++) {
        if (trying->taken[port])
            continue;
        trying->taken[port] = true;
        trying->now[site] = port;
        try_from(trying, site + 1,
                 sum + length_between(layout->sites[site], layout->ports[port]));
        trying->taken[port] = false;
    }
}

static void equals_brute_force(const struct layout_case *layout)
{
    struct trying trying = {.layout = layout, .least = 1e300};
    size_t chosen[MOST] = {0};
    double sum = solve(layout, chosen);
    try_from(&trying, 0, 0);
    if (fabs(sum - trying.least) > 1e-5)
        fail_msg("%zu sites: %f, least %f", layout->site_count, sum, trying.least);
    for (size_t i = 0; i < layout->site_count; i++)
        assert_int_equal(chosen[i], trying.best[i]);
}

static void test_brute_force(void **state)
{
    uint32_t seed = 20261125;
    (void)state;
    for (size_t run = 0; run < 400; run++) {
        struct layout_case layout = random_plan(&seed, 2 + run % 7);
        layout.port_count = layout.site_count + (layout.site_count <= 6 ? layout.site_count : 0);
        equals_brute_force(&layout);
    }
}

/* On a grid many assignments have the same sum: the first of them is taken. */
static void test_ties(void **state)
{
    uint32_t seed = 7;
    (void)state;
    for (size_t run = 0; run < 400; run++) {
        struct layout_case layout = {.site_count = 2 + run % 4};
        layout.port_count = layout.site_count + run % 3;
        for (size_t i = 0; i < layout.site_count; i++)
            layout.sites[i] = (struct point){random_between(&seed, 1, 3) * UNIT,
                                             random_between(&seed, 1, 3) * UNIT};
        for (size_t i = 0; i < layout.port_count; i++)
            layout.ports[i] = (struct point){random_between(&seed, 0, 1) * 4 * UNIT,
                                             random_between(&seed, 0, 3) * UNIT};
        equals_brute_force(&layout);
    }
}

static void test_equal_sums_take_the_first(void **state)
{
    (void)state;
    struct layout_case layout = {{{0, 0}, {0, 0}}, {{5, 0}, {5, 0}, {5, 0}}, 2, 3};
    size_t chosen[MOST] = {9, 9};
    solve(&layout, chosen);
    assert_int_equal(chosen[0], 0);
    assert_int_equal(chosen[1], 1);
}

static void test_no_crossing(void **state)
{
    uint32_t seed = 4;
    (void)state;
    for (size_t run = 0; run < 10000; run++) {
        struct layout_case layout = random_plan(&seed, 5 + run % 8);
        size_t chosen[MOST] = {0};
        solve(&layout, chosen);
        if (crossings(&layout, chosen) > 0)
            fail_msg("plan %zu has leaders that cross", run);
    }
}

static void test_nothing_to_assign(void **state)
{
    (void)state;
    struct layout_case layout = {.port_count = 3};
    size_t chosen[MOST] = {0};
    assert_true(solve(&layout, chosen) <= 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_vectors),
        cmocka_unit_test(test_vector_b_is_a_trap),
        cmocka_unit_test(test_brute_force),
        cmocka_unit_test(test_ties),
        cmocka_unit_test(test_equal_sums_take_the_first),
        cmocka_unit_test(test_no_crossing),
        cmocka_unit_test(test_nothing_to_assign),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
