/* test_bearing.c - bearings, magnetic variation, the direction from a mark, and how a
 * position is spoken. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "position.h"
#include "radio.h"
#include "text.h"

static struct arena *arena;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1 << 22);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

/* ---- reckoning: L14 to L16, and with variation ---- */

static const struct { const char *taken, *variation, *true_bearing, *from_mark; } reckoned[] = {
    {"180 T", "0", "180", "000"}, {"359 T", "0", "359", "179"}, {"360 T", "0", "000", "180"},
    {"0 T", "0", "000", "180"}, {"179 T", "0", "179", "359"},
    {"100 M", "14 W", "086", "266"}, {"100 M", "14 E", "114", "294"},
    {"100 T", "14 W", "100", "280"},
    {"350 M", "14 E", "004", "184"}, {"5 M", "14 W", "351", "171"}, {"360 M", "14 W", "346", "166"},
    {"100 M", "4.5 E", "105", "285"},      /* 104.5: half is rounded up, once for both */
    {"100 M", "4.4 E", "104", "284"}, {"359 M", "0.6 E", "000", "180"},
    {"100.4 M", "0.4 E", "101", "281"}, {"000 M", "90 W", "270", "090"},
};

static void true_bearing_and_direction_from_the_mark(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof reckoned / sizeof reckoned[0]; i++) {
        struct bearing bearing;
        int tenths = 0;
        assert_int_equal(bearing_parse(reckoned[i].taken, &bearing), BEARING_SOUND);
        assert_true(variation_parse(reckoned[i].variation, &tenths));
        int64_t towards = bearing_true(&bearing, tenths);
        assert_string_equal(bearing_text(arena, towards), reckoned[i].true_bearing);
        assert_string_equal(bearing_text(arena, bearing_reverse(towards)), reckoned[i].from_mark);
    }
}

/* Twice the other way is the same way, all round. */
static void reverse_of_reverse(void **state)
{
    (void)state;
    for (int64_t milli = 0; milli < 360000; milli += 37) {
        assert_true(bearing_reverse(bearing_reverse(milli)) == milli);
        int64_t apart = bearing_reverse(milli) - milli;
        assert_true(apart == 180000 || apart == -180000);
        assert_true(bearing_reverse(milli) >= 0 && bearing_reverse(milli) < 360000);
    }
}

/* ---- reading ---- */

static const struct { const char *text; int64_t milli; bool magnetic; } bearings[] = {
    {"100 M", 100000, true}, {"266 T", 266000, false}, {"266T", 266000, false},
    {"100M", 100000, true}, {"100 m", 100000, true}, {"266t", 266000, false},
    {"005 T", 5000, false}, {"5 T", 5000, false}, {"100.5 M", 100500, true},
    {"100.125 T", 100125, false}, {"100° M", 100000, true}, {"100°T", 100000, false},
    {"360 T", 360000, false}, {"000 T", 0, false},
};
/* A hand-bearing compass reads magnetic: what nobody said is not taken for true. */
static const char *const letterless[] = {
    "266", "100", "005", "5", "0", "360", "100.5", "100.125", "100°",
};
static const char *const no_bearings[] = {
    "", " ", "M", "361", "360.001", "1000", "-5", "+5", "100 X", "100 MAG", "100  M", "100 ",
    " 100", "100.M", "100.5.5", "100.1234", "100,5", "NE", "100 °M", "1e2", "100 M T", "0100",
};

static void bearings_are_read(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof bearings / sizeof bearings[0]; i++) {
        struct bearing bearing = {.milli = 7};
        if (bearing_parse(bearings[i].text, &bearing) != BEARING_SOUND ||
            bearing.milli != bearings[i].milli ||
            bearing.magnetic != bearings[i].magnetic)
            fail_msg("\"%s\"", bearings[i].text);
    }
    for (size_t i = 0; i < sizeof no_bearings / sizeof no_bearings[0]; i++) {
        struct bearing bearing = {.milli = 7};
        if (bearing_parse(no_bearings[i], &bearing) != BEARING_NONE || bearing.milli != 7)
            fail_msg("\"%s\" was taken for a bearing", no_bearings[i]);
    }
    for (size_t i = 0; i < sizeof letterless / sizeof letterless[0]; i++) {
        struct bearing bearing = {.milli = 7};
        if (bearing_parse(letterless[i], &bearing) != BEARING_NO_LETTER || bearing.milli != 7)
            fail_msg("\"%s\" was taken for true or magnetic", letterless[i]);
    }
}

static const struct { const char *text; int tenths; const char *printed; } variations[] = {
    {"4 E", 40, "4 E"}, {"14 W", -140, "14 W"}, {"4.5E", 45, "4.5 E"}, {"4.5 w", -45, "4.5 W"},
    {"4°E", 40, "4 E"}, {"4° E", 40, "4 E"}, {"4°30'E", 45, "4.5 E"}, {"4°30′ W", -45, "4.5 W"},
    {"4°03'W", -41, "4.1 W"}, {"4°02'W", -40, "4 W"}, {"4°59'E", 50, "5 E"},
    {"0", 0, "0"}, {"0 E", 0, "0"}, {"0.0 W", 0, "0"}, {"0.5 W", -5, "0.5 W"},
    {"90 E", 900, "90 E"},
};
static const char *const no_variations[] = {
    "", "E", "4", "4.5", "-4 E", "-4", "+4", "4 N", "4 M", "4 EAST", "4  E", "4 E ", " 4 E", "E 4",
    "4,5 E", "4.55 E", "4.5°30'E", "4°60'E", "4°30E", "4°30", "90.1 E", "91 E", "4°30'", "4°30''E",
};

static void variations_are_read(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof variations / sizeof variations[0]; i++) {
        int tenths = 7;
        if (!variation_parse(variations[i].text, &tenths) || tenths != variations[i].tenths)
            fail_msg("\"%s\": %d", variations[i].text, tenths);
        assert_string_equal(variation_text(arena, tenths), variations[i].printed);
    }
    for (size_t i = 0; i < sizeof no_variations / sizeof no_variations[0]; i++) {
        int tenths = 7;
        if (variation_parse(no_variations[i], &tenths) || tenths != 7)
            fail_msg("\"%s\" was taken for a variation", no_variations[i]);
    }
}

/* ---- points ---- */

static const struct { int64_t milli; const char *digits, *point; } points[] = {
    {0, "000", "N"}, {11250, "011", "NNE"}, {174800, "175", "S"}, {359600, "000", "N"},
    {348700, "349", "NNW"}, {270800, "271", "W"}, {11249, "011", "N"}, {360000, "000", "N"},
    {348750, "349", "N"}, {359499, "359", "N"},
};

static void sixteen_points(void **state)
{
    (void)state;
    static const char *const names[] = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S",
                                        "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    for (size_t i = 0; i < sizeof points / sizeof points[0]; i++) {
        assert_string_equal(bearing_text(arena, points[i].milli), points[i].digits);
        assert_string_equal(compass_point(points[i].milli), points[i].point);
    }
    for (int64_t i = 0; i < 16; i++)
        assert_string_equal(compass_point(i * 22500), names[i]);
}

/* ---- spoken ---- */

static const struct { struct position position; int decimals; const char *words; } spoken[] = {
    {{434725000, 164350000}, 3,   /* L01, L02 */
     "FOUR THREE DEGREES TWO EIGHT DECIMAL THREE FIVE ZERO MINUTES NORTH, "
     "ZERO ONE SIX DEGREES TWO SIX DECIMAL ONE ZERO ZERO MINUTES EAST"},
    {{621966700, 77333300}, 0,    /* L11 */
     "SIX TWO DEGREES ONE TWO MINUTES NORTH, ZERO ZERO SEVEN DEGREES FOUR FOUR MINUTES EAST"},
    {{621966700, 77333300}, 1,    /* L10 */
     "SIX TWO DEGREES ONE ONE DECIMAL EIGHT MINUTES NORTH, "
     "ZERO ZERO SEVEN DEGREES FOUR FOUR DECIMAL ZERO MINUTES EAST"},
    {{-5000000, -614833300}, 2,
     "ZERO ZERO DEGREES THREE ZERO DECIMAL ZERO ZERO MINUTES SOUTH, "
     "ZERO SIX ONE DEGREES TWO NINE DECIMAL ZERO ZERO MINUTES WEST"},
    {{-10, 1799999900}, 2,   /* the side it is shown on is the side it is said on */
     "ZERO ZERO DEGREES ZERO ZERO DECIMAL ZERO ZERO MINUTES SOUTH, "
     "ONE EIGHT ZERO DEGREES ZERO ZERO DECIMAL ZERO ZERO MINUTES EAST"},
    {{10008333, 0}, 2, /* zeros in front of a decimal are said */
     "ZERO ONE DEGREES ZERO ZERO DECIMAL ZERO FIVE MINUTES NORTH, "
     "ZERO ZERO ZERO DEGREES ZERO ZERO DECIMAL ZERO ZERO MINUTES EAST"},
};

static void positions_are_spoken_digit_by_digit(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof spoken / sizeof spoken[0]; i++)
        assert_string_equal(position_spoken(arena, &spoken[i].position, spoken[i].decimals),
                            spoken[i].words);
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(true_bearing_and_direction_from_the_mark),
        CASE(reverse_of_reverse),
        CASE(bearings_are_read),
        CASE(variations_are_read),
        CASE(sixteen_points),
        CASE(positions_are_spoken_digit_by_digit),
    };
    return cmocka_run_group_tests_name("bearing", tests, NULL, NULL) != 0;
}
