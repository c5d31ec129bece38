/* test_proof_legible.c - heights, distances and contrast, by tables
 * reckoned beforehand. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <math.h>

#include "proof/legible.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))
#define CAP 0.718               /* of the standard sans face that the tables are made for */
#define X 0.523

/* Four digits, as the tables have them. */
static void assert_near(double found, double expected, const char *what, size_t row)
{
    double slack = fabs(expected) * 0.0006;
    if (fabs(found - expected) > slack)
        fail_msg("%s %zu: %g, not %g", what, row, found, expected);
}

/* ---- reading distance ---- */

static void angle_gives_height_and_size(void **state)
{
    (void)state;
    static const struct {
        double distance, minutes, height, by_cap, by_x, share;
    } rows[] = {
        {400, 16, 1.862, 7.350, 10.09, 214.9},  {400, 20, 2.327, 9.187, 12.61, 171.9},
        {500, 16, 2.327, 9.187, 12.61, 214.9},  {500, 20, 2.909, 11.48, 15.77, 171.9},
        {500, 22, 3.200, 12.63, 17.34, 156.3},  {700, 20, 4.072, 16.08, 22.07, 171.9},
        {1000, 20, 5.818, 22.97, 31.53, 171.9}, {2000, 20, 11.64, 45.94, 63.06, 171.9},
        {1000, 30, 8.727, 34.45, 47.30, 114.6}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        double height = legible_height_mm(rows[i].distance, rows[i].minutes);
        assert_near(height, rows[i].height, "height", i);
        assert_near(legible_points(height, CAP), rows[i].by_cap, "size by capitals", i);
        assert_near(legible_points(height, X), rows[i].by_x, "size by small letters", i);
        assert_near(rows[i].distance / height, rows[i].share, "distance a height", i);
    }
}

static void size_gives_height_and_angle(void **state)
{
    (void)state;
    static const struct {
        double points, cap, small, cap_500, small_500, small_700;
    } rows[] = {
        {8, 2.026, 1.476, 13.93, 10.15, 7.249},  {9, 2.280, 1.661, 15.67, 11.42, 8.155},
        {10, 2.533, 1.845, 17.42, 12.69, 9.061}, {11, 2.786, 2.030, 19.16, 13.95, 9.967},
        {12, 3.040, 2.214, 20.90, 15.22, 10.87}, {14, 3.546, 2.583, 24.38, 17.76, 12.69},
        {18, 4.559, 3.321, 31.35, 22.83, 16.31}, {24, 6.079, 4.428, 41.80, 30.44, 21.75}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        double cap = legible_letter_mm(rows[i].points, CAP);
        double small = legible_letter_mm(rows[i].points, X);
        assert_near(cap, rows[i].cap, "capitals", i);
        assert_near(small, rows[i].small, "small letters", i);
        assert_near(legible_minutes(cap, 500), rows[i].cap_500, "capitals at 500", i);
        assert_near(legible_minutes(small, 500), rows[i].small_500, "small letters at 500", i);
        assert_near(legible_minutes(small, 700), rows[i].small_700, "small letters at 700", i);
    }
}

/* ---- nominal sizes, to a tenth of a point ---- */

static void distance_gives_size(void **state)
{
    (void)state;
    static const struct { double distance, k, cap, small; } rows[] = {
        {350, .004, 5.5, 7.6},    {350, .005, 6.9, 9.5},    {350, .007, 9.7, 13.3},
        {450, .004, 7.1, 9.8},    {450, .005, 8.9, 12.2},   {450, .007, 12.4, 17.1},
        {600, .004, 9.5, 13.0},   {600, .005, 11.8, 16.3},  {600, .007, 16.6, 22.8},
        {1000, .004, 15.8, 21.7}, {1000, .005, 19.7, 27.1}, {1000, .007, 27.6, 37.9},
        {2000, .004, 31.6, 43.4}, {2000, .005, 39.5, 54.2}, {2000, .007, 55.3, 75.9}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        double height = rows[i].distance * rows[i].k;
        assert_true(fabs(legible_points(height, CAP) - rows[i].cap) <= 0.06);
        assert_true(fabs(legible_points(height, X) - rows[i].small) <= 0.06);
    }
}

/* k 0.004 is 13.75'; 15' is k 0.00436 and 16' 0.00465; at 15' 12 pt
 * reach 0.51 m by their small letters, and 14 pt 0.59 m. The rule takes k 0.0044. */
static void small_letters_reach_as_corrected(void **state)
{
    (void)state;
    assert_near(legible_minutes(0.004 * 1000, 1000), 13.75, "k 0.004", 0);
    double k_15 = legible_height_mm(1000, 15) / 1000, k_16 = legible_height_mm(1000, 16) / 1000;
    assert_true(fabs(k_15 - 0.00436) < 0.000006);
    assert_true(fabs(k_16 - 0.00465) < 0.000006);
    assert_true(fabs(legible_letter_mm(12, X) / k_15 - 510) < 5);
    assert_true(fabs(legible_letter_mm(14, X) / k_15 - 590) < 5);
    assert_true(READ_SMALL >= k_15 && READ_SMALL < k_16);
}

/* ---- contrast ---- */

static struct rgb colour(unsigned code)
{
    return (struct rgb){(unsigned char)(code >> 16), (unsigned char)(code >> 8 & 0xFF),
                        (unsigned char)(code & 0xFF)};
}

static void white_light_contrast(void **state)
{
    (void)state;
    static const struct { unsigned ink, ground; double first, second, ratio; } rows[] = {
        {0x000000, 0xFFFFFF, 0, 1.000, 21.00},      {0x767676, 0xFFFFFF, 0.1812, 1.000, 4.542},
        {0xC00000, 0xFFFFFF, 0.1121, 1.000, 6.479}, {0xFFFFFF, 0xD00000, 1.000, 0.1341, 5.703},
        {0x000000, 0xFFD200, 0, 0.6735, 14.47},     {0xFFFFFF, 0xF28C00, 1.000, 0.3763, 2.463},
        {0xFFFFFF, 0x00703C, 1.000, 0.1191, 6.208}, {0x808080, 0xFFFFFF, 0.2159, 1.000, 3.949}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        struct rgb ink = colour(rows[i].ink), ground = colour(rows[i].ground);
        assert_near(light_level(LIGHT_WHITE, ink), rows[i].first, "ink", i);
        assert_near(light_level(LIGHT_WHITE, ground), rows[i].second, "ground", i);
        assert_near(light_contrast(LIGHT_WHITE, ink, ground), rows[i].ratio, "ratio", i);
    }
}

static void red_light_contrast(void **state)
{
    (void)state;
    static const struct { unsigned ink, ground; double ratio; } rows[] = {
        {0x000000, 0xFFFFFF, 21.00}, {0xC00000, 0xFFFFFF, 1.819}, {0xFFFFFF, 0xD00000, 1.542},
        {0x000000, 0xFFD200, 21.00}, {0xFFFFFF, 0x00703C, 21.00}, {0xFFFFFF, 0xF28C00, 1.119}};
    for (size_t i = 0; i < COUNT_OF(rows); i++)
        assert_near(light_contrast(LIGHT_RED, colour(rows[i].ink), colour(rows[i].ground)),
                    rows[i].ratio, "red light", i);
}

/* ---- colours and pairs in three lights, to a tenth ---- */

enum { WHITE = 0xFFFFFF, PAPER = 0xECECE7, BLACK = 0, SIGNAL_BLACK = 0x2B2B2C, RED = 0x9B2423,
       RED_LIT = 0xC8102E, GREEN = 0x237F52, BLUE = 0x005387, YELLOW = 0xF9A800,
       ORANGE = 0xD05D29, GREY_20 = 0xCCCCCC, GREY_60 = 0x666666, MAGENTA = 0xC2187A };

static void colours_have_their_levels(void **state)
{
    (void)state;
    static const struct { unsigned code; double white, red; } rows[] = {
        {WHITE, 1.000, 1.000}, {PAPER, 0.836, 0.839}, {BLACK, 0, 0}, {SIGNAL_BLACK, 0.024, 0.024},
        {RED, 0.084, 0.328}, {RED_LIT, 0.128, 0.578}, {GREEN, 0.161, 0.017}, {BLUE, 0.079, 0},
        {YELLOW, 0.481, 0.947}, {ORANGE, 0.214, 0.631}, {GREY_20, 0.604, 0.604},
        {GREY_60, 0.133, 0.133}, {MAGENTA, 0.135, 0.539}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        assert_true(fabs(light_level(LIGHT_WHITE, colour(rows[i].code)) - rows[i].white) < 0.0006);
        assert_true(fabs(light_level(LIGHT_RED, colour(rows[i].code)) - rows[i].red) < 0.0006);
    }
}

static void pairs_in_three_lights(void **state)
{
    (void)state;
    static const struct { unsigned a, b; double ratio[LIGHT_COUNT]; } rows[] = {
        {BLACK, WHITE, {21.0, 21.0, 21.0}}, {SIGNAL_BLACK, PAPER, {11.9, 11.9, 12.0}},
        {WHITE, RED, {7.9, 9.3, 2.8}},      {WHITE, RED_LIT, {5.9, 8.9, 1.7}},
        {RED, WHITE, {7.9, 9.3, 2.8}},      {WHITE, GREEN, {5.0, 6.5, 15.7}},
        {WHITE, BLUE, {8.1, 10.4, 21.0}},   {BLACK, YELLOW, {10.6, 9.4, 19.9}},
        {YELLOW, WHITE, {2.0, 2.2, 1.1}},   {BLACK, ORANGE, {5.3, 4.8, 13.6}},
        {WHITE, ORANGE, {4.0, 4.4, 1.5}},   {BLACK, RED, {2.7, 2.3, 7.6}},
        {BLACK, RED_LIT, {3.6, 2.4, 12.6}}, {BLACK, GREEN, {4.2, 3.2, 1.3}},
        {BLACK, BLUE, {2.6, 2.0, 1.0}},     {RED, GREEN, {1.6, 1.4, 5.7}},
        {RED, BLUE, {1.0, 1.1, 7.6}},       {GREEN, BLUE, {1.6, 1.6, 1.3}},
        {RED, YELLOW, {4.0, 4.1, 2.6}},     {GREEN, YELLOW, {2.5, 2.9, 14.9}},
        {BLUE, YELLOW, {4.1, 4.6, 19.9}},   {ORANGE, YELLOW, {2.0, 1.9, 1.5}},
        {RED, ORANGE, {2.0, 2.1, 1.8}},     {BLACK, GREY_20, {13.1, 13.1, 13.1}},
        {WHITE, GREY_60, {5.7, 5.7, 5.7}},  {MAGENTA, WHITE, {5.7, 7.3, 1.8}}};
    for (size_t i = 0; i < COUNT_OF(rows); i++)
        for (enum light light = LIGHT_WHITE; light < LIGHT_COUNT; light++) {
            double found = light_contrast(light, colour(rows[i].a), colour(rows[i].b));
            if (fabs(found - rows[i].ratio[light]) > 0.051)
                fail_msg("pair %zu %s: %g, not %g", i, light_word(light), found,
                         rows[i].ratio[light]);
        }
}

/* The inks of the page are those colours, and the worst light decides. */
static void inks_are_judged_by_the_worst_light(void **state)
{
    (void)state;
    static const struct { enum ink ink, ground; double ratio; enum light light; } rows[] = {
        {INK_WHITE, INK_FIRE, 2.78, LIGHT_RED},     {INK_WHITE, INK_RESCUE, 4.97, LIGHT_WHITE},
        {INK_BLACK, INK_CONTROL, 1.00, LIGHT_RED},  {INK_BLACK, INK_WARNING, 9.4, LIGHT_GREY},
        {INK_WARNING, INK_WHITE, 1.05, LIGHT_RED},  {INK_WHITE, INK_CONTROL, 8.1, LIGHT_WHITE}};
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        struct contrast worst = contrast_worst(PALETTE_COLOUR, rows[i].ink, rows[i].ground);
        assert_true(fabs(worst.ratio - rows[i].ratio) < 0.06);
        assert_int_equal(worst.light, rows[i].light);
    }
    assert_true(contrast_worst(PALETTE_COLOUR, INK_GREY, INK_WHITE).ratio >= 7.0);
}

/* Without colour every ink is a grey, white glyphs stand out on each field as far as large words
 * must, and no two fields of classes are one tone. */
static void inks_without_colour_are_greys(void **state)
{
    (void)state;
    static const enum ink fields[] = {INK_FIRE, INK_RESCUE, INK_CONTROL, INK_WARNING};
    for (int ink = INK_NONE; ink < INK_COUNT; ink++) {
        struct rgb colour = ink_rgb(PALETTE_MONO, (enum ink)ink);
        assert_true(colour.red == colour.green && colour.green == colour.blue);
    }
    for (size_t i = 0; i < COUNT_OF(fields); i++) {
        assert_true(fields[i] == INK_WARNING ||
                    contrast_worst(PALETTE_MONO, INK_WHITE, fields[i]).ratio >= 4.5);
        for (size_t j = 0; j < i; j++)
            assert_true(contrast_worst(PALETTE_MONO, fields[i], fields[j]).ratio > 1.2);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(angle_gives_height_and_size),
        cmocka_unit_test(size_gives_height_and_angle),
        cmocka_unit_test(distance_gives_size),
        cmocka_unit_test(small_letters_reach_as_corrected),
        cmocka_unit_test(white_light_contrast),
        cmocka_unit_test(red_light_contrast),
        cmocka_unit_test(colours_have_their_levels),
        cmocka_unit_test(pairs_in_three_lights),
        cmocka_unit_test(inks_are_judged_by_the_worst_light),
        cmocka_unit_test(inks_without_colour_are_greys)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
