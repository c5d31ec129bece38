/* test_overboard.c - a person in the water: reckoned vectors. */
#include "figure_case.h"

#include "overboard.h"

static void distance_run_agrees(void **state)
{
    static const struct { double kn, s, m, lengths, per_minute; } rows[] = {
        {4, 10, 20.58, 1.715, 123.5}, {5, 30, 77.17, 6.431, 154.3}, {6, 10, 30.87, 2.572, 185.2},
        {6, 30, 92.60, 7.717, 185.2}, {6, 60, 185.2, 15.43, 185.2}, {8, 20, 82.31, 6.859, 246.9},
        {8, 120, 493.9, 41.16, 246.9}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_four_digits("run", i, rows[i].m, distance_run_m(rows[i].kn, rows[i].s));
        assert_four_digits("lengths", i, rows[i].lengths,
                           distance_run_m(rows[i].kn, rows[i].s) / 12.0);
        assert_four_digits("a minute", i, rows[i].per_minute, distance_run_m(rows[i].kn, 60));
    }
}

static void the_swim_to_a_late_lifebuoy_agrees(void **state)
{
    static const struct { double kn, s, m; } rows[] = {
        {4, 3, 6.173}, {6, 3, 9.260}, {6, 10, 30.87}, {8, 5, 20.58}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++)
        assert_four_digits("swim", i, rows[i].m, distance_run_m(rows[i].kn, rows[i].s));
}

static const struct { double eye, wave, length, head, hidden, s, traced; } waves[] = {
    {2.5, 0.5, 12, 0.25, 60.00, 19.44, 57.0},  {2.5, 1.0, 20, 0.25, 36.67, 11.88, 33.75},
    {2.5, 2.0, 40, 0.25, 37.14, 12.03, 33.5},  {2.0, 1.5, 30, 0.20, 29.42, 9.532, 26.5},
    {4.0, 2.0, 40, 0.25, 54.29, 17.59, 48.75}};

static void the_head_is_hidden_beyond_that_distance(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(waves); i++) {
        double metres = 0.0;
        assert_true(head_hidden_beyond_m(waves[i].eye, waves[i].wave, waves[i].length,
                                         waves[i].head, &metres));
        assert_four_digits("hidden", i, waves[i].hidden, metres);
        assert_four_digits("seconds at 6 kn", i, waves[i].s, metres / distance_run_m(6, 1));
    }
}

/* A sinusoid traced by the eye gives 5 to 10 % less: 90 % is what may be printed. */
static void nine_tenths_of_it_are_no_more_than_was_traced(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS(waves); i++) {
        double metres = 0.0;
        head_hidden_beyond_m(waves[i].eye, waves[i].wave, waves[i].length, waves[i].head,
                             &metres);
        double printed = HIDDEN_PRINTED_SHARE * metres;
        assert_true(printed <= waves[i].traced * 1.005);
        assert_true(printed >= waves[i].traced * 0.9);
    }
}

static void a_low_wave_hides_nothing(void **state)
{
    double metres = 7.0;
    (void)state;
    assert_false(head_hidden_beyond_m(2.5, 0.25, 12, 0.25, &metres));
    assert_false(head_hidden_beyond_m(2.5, 0.1, 12, 0.25, &metres));
    assert_true(metres > 6.9 && metres < 7.1);
}

static void sweep_widths_are_corrected(void **state)
{
    static const struct { double nm, weather, tired, corrected, metres; } rows[] = {
        {0.4, 1, 1, 0.4000, 740.8}, {0.4, 0.5, 1, 0.2000, 370.4},
        {0.4, 0.25, 1, 0.1000, 185.2}, {0.2, 0.25, 0.9, 0.04500, 83.34}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        double nm = sweep_corrected_nm(rows[i].nm, rows[i].weather, rows[i].tired);
        assert_four_digits("sweep", i, rows[i].corrected, nm);
        assert_four_digits("metres", i, rows[i].metres, nm * 1852.0);
    }
}

static void leeway_agrees(void **state)
{
    static const struct {
        enum drifter drifter;
        double wind, mps, kn, a_minute, half_hour;
    } rows[] = {
        {DRIFTER_PERSON, 10, 0.04939, 0.09600, 2.963, 88.90},
        {DRIFTER_PERSON, 20, 0.09877, 0.1920, 5.926, 177.8},
        {DRIFTER_PERSON, 30, 0.1482, 0.2880, 8.890, 266.7},
        {DRIFTER_PERSON_VEST, 10, 0.02469, 0.04800, 1.482, 44.45},
        {DRIFTER_PERSON_VEST, 20, 0.04939, 0.09600, 2.963, 88.90},
        {DRIFTER_PERSON_VEST, 30, 0.07408, 0.1440, 4.445, 133.3},
        {DRIFTER_PERSON_SITTING, 10, 0.04251, 0.08263, 2.551, 76.52},
        {DRIFTER_PERSON_SITTING, 20, 0.1248, 0.2426, 7.489, 224.7},
        {DRIFTER_PERSON_SITTING, 30, 0.2071, 0.4026, 12.43, 372.8},
        {DRIFTER_RAFT_DROGUE, 10, 0.1073, 0.2085, 6.436, 193.1},
        {DRIFTER_RAFT_DROGUE, 20, 0.2055, 0.3995, 12.33, 369.9},
        {DRIFTER_RAFT_DROGUE, 30, 0.3038, 0.5905, 18.23, 546.8},
        {DRIFTER_RAFT, 10, 0.1699, 0.3303, 10.20, 305.8},
        {DRIFTER_RAFT, 20, 0.3628, 0.7053, 21.77, 653.1},
        {DRIFTER_RAFT, 30, 0.5557, 1.080, 33.34, 1000},
        {DRIFTER_YACHT, 10, 0.2691, 0.5230, 16.14, 484.3},
        {DRIFTER_YACHT, 20, 0.5381, 1.046, 32.29, 968.6},
        {DRIFTER_YACHT, 30, 0.8072, 1.569, 48.43, 1453}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        double mps = leeway_mps(rows[i].drifter, rows[i].wind);
        assert_four_digits("leeway", i, rows[i].mps, mps);
        assert_four_digits("knots", i, rows[i].kn, mps * 3600.0 / 1852.0);
        assert_four_digits("a minute", i, rows[i].a_minute, mps * 60.0);
        assert_four_digits("half an hour", i, rows[i].half_hour, mps * 1800.0);
    }
}

static void nothing_drifts_against_the_wind(void **state)
{
    (void)state;
    for (double wind = 0.0; wind < 3.0; wind += 0.25) {
        assert_true(leeway_mps(DRIFTER_PERSON_SITTING, wind) >= 0.0);
        assert_true(leeway_mps(DRIFTER_RAFT, wind) >= 0.0);
    }
}

static void a_stopped_yacht_leaves_the_casualty(void **state)
{
    (void)state;
    assert_four_digits("separation", 0, 13.18, separation_m_per_min(10));
    assert_four_digits("separation", 1, 26.36, separation_m_per_min(20));
    assert_four_digits("separation", 2, 39.54, separation_m_per_min(30));
}

static void turns_agree(void **state)
{
    static const struct { double radius, kn, half, full, off; } rows[] = {
        {15, 5, 18.32, 36.64, 30}, {24, 6, 24.43, 48.85, 48}, {30, 4, 45.80, 91.60, 60},
        {40, 8, 30.53, 61.07, 80}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_four_digits("half turn", i, rows[i].half, half_turn_s(rows[i].radius, rows[i].kn));
        assert_four_digits("full", i, rows[i].full, full_circle_s(rows[i].radius, rows[i].kn));
        assert_four_digits("off", i, rows[i].off, half_turn_offset_m(rows[i].radius));
    }
}

static void reach_and_return_agrees(void **state)
{
    static const struct { struct reach_and_return run; double farthest, s, minutes; } rows[] = {
        {{6, 5, 5, 20, 4}, 30.87, 45.00, 0.7500}, {{6, 10, 20, 25, 4}, 92.60, 100.0, 1.667},
        {{8, 30, 60, 60, 5}, 370.4, 294.0, 4.900}, {{5, 5, 0, 30, 3}, 12.86, 43.33, 0.7222}};
    (void)state;
    for (size_t i = 0; i < ROWS(rows); i++) {
        assert_four_digits("farthest", i, rows[i].farthest,
                           reach_and_return_farthest_m(&rows[i].run));
        assert_four_digits("total", i, rows[i].s, reach_and_return_s(&rows[i].run));
        assert_four_digits("minutes", i, rows[i].minutes, reach_and_return_s(&rows[i].run) / 60);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(distance_run_agrees),
        cmocka_unit_test(the_swim_to_a_late_lifebuoy_agrees),
        cmocka_unit_test(the_head_is_hidden_beyond_that_distance),
        cmocka_unit_test(nine_tenths_of_it_are_no_more_than_was_traced),
        cmocka_unit_test(a_low_wave_hides_nothing),
        cmocka_unit_test(sweep_widths_are_corrected),
        cmocka_unit_test(leeway_agrees),
        cmocka_unit_test(nothing_drifts_against_the_wind),
        cmocka_unit_test(a_stopped_yacht_leaves_the_casualty),
        cmocka_unit_test(turns_agree),
        cmocka_unit_test(reach_and_return_agrees),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
