/* test_position.c - positions: printing in three forms, the ways people write them,
 * and what is refused with its place. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "position.h"
#include "text.h"

static struct arena *arena;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1 << 27);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

#define LAT POSITION_LATITUDE
#define LON POSITION_LONGITUDE
#define D POSITION_DEGREES
#define DM POSITION_MINUTES_OF
#define DMS POSITION_SECONDS_OF

/* ---- printing ---- */

static const struct {
    const char *name;
    int64_t e7;
    enum position_axis axis;
    enum position_form form;
    int decimals;
    const char *text;
} printed[] = {
    {"8.1", 435081300, LAT, DM, 3, "43°30.488'N"},
    {"8.1", 435081300, LAT, DMS, 1, "43°30'29.3\"N"},
    {"8.1", 164401900, LON, DM, 3, "016°26.411'E"},
    {"8.1", 164401900, LON, DMS, 1, "016°26'24.7\"E"},
    {"8.1", -169999999, LON, DM, 3, "017°00.000'W"},
    {"8.1", -169999999, LON, DMS, 1, "017°00'00.0\"W"},
    {"8.1", 379999950, LAT, DM, 3, "38°00.000'N"},
    {"8.1", 379999950, LAT, DMS, 1, "38°00'00.0\"N"},
    {"8.1", -10, LAT, DM, 3, "00°00.000'S"},
    {"8.1", -10, LAT, DMS, 1, "00°00'00.0\"S"},
    {"8.1", -1799916667, LON, DM, 3, "179°59.500'W"},
    {"8.1", -1799916667, LON, DMS, 1, "179°59'30.0\"W"},
    {"8.1", 83333, LON, DM, 3, "000°00.500'E"},
    {"8.1", 83333, LON, DMS, 1, "000°00'30.0\"E"},
    {"L01", 434725000, LAT, DM, 3, "43°28.350'N"},
    {"L02", 164350000, LON, DM, 3, "016°26.100'E"},
    {"L04", -5000000, LAT, DM, 3, "00°30.000'S"},
    {"L06", 1799999900, LON, DM, 2, "180°00.00'E"},
    {"L09", 900000000, LAT, DM, 3, "90°00.000'N"},
    {"L10", 621966700, LAT, DM, 1, "62°11.8'N"},
    {"L11", 77333300, LON, DM, 0, "007°44'E"},
    {"L12", -614833300, LON, DM, 2, "061°29.00'W"},
    {"section 8: carry", 439999900, LAT, DM, 2, "44°00.00'N"},
    {"least", 1, LAT, D, 7, "00.0000001°N"},
    {"least west", -1, LON, D, 7, "000.0000001°W"},
    {"rounded to zero", -4, LON, D, 6, "000.000000°W"},
    {"rounded to zero", 4, LON, D, 6, "000.000000°E"},
    {"half is rounded up", -5, LON, D, 6, "000.000001°W"},
    {"whole", 435081300, LAT, D, 0, "44°N"},
    {"degrees", 435081300, LAT, D, 5, "43.50813°N"},
    {"date line", -1800000000, LON, DMS, 0, "180°00'00\"W"},
    {"zero", 0, LON, DM, 1, "000°00.0'E"},
};

static void each_form_is_rounded_once(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof printed / sizeof printed[0]; i++) {
        struct position position = {printed[i].e7, printed[i].e7};
        const char *text = position_axis_text(arena, &position, printed[i].axis, printed[i].form,
                                              printed[i].decimals);
        if (!text_equal(text, printed[i].text))
            fail_msg("%s: %s, not %s", printed[i].name, text, printed[i].text);
    }
    struct position both = {434725000, -164350000};
    assert_string_equal(position_text(arena, &both, DM, 2), "43°28.35'N 016°26.10'W");
}

/* ---- the ways it is written ---- */

#define L 434725000
#define G 164350000

static const struct { const char *text; int64_t latitude, longitude; } written[] = {
    {"43.4725, 16.435", L, G}, {"43.4725,16.435", L, G}, {"43.4725 16.435", L, G},
    {"-43.5 16.4", -435000000, 164000000}, {"-43.5, -16.4", -435000000, -164000000},
    {"+43.4725 +16.435", L, G}, {"43.4725 -16.435", L, -G},
    {"\xE2\x88\x92" "43.5 16.4", -435000000, 164000000},
    {"43.4725 N 16.435 E", L, G}, {"43.4725N 16.435E", L, G}, {"43.4725N16.435E", L, G},
    {"43.4725°N, 016.435°E", L, G}, {"43.4725 n 16.435 e", L, G},
    {"43.4725 S 16.435 W", -L, -G}, {"N 43.4725 E 16.435", L, G},
    {"43 28.35 N 016 26.1 E", L, G}, {"43°28.350'N 016°26.100'E", L, G},
    {"4328.35N 01626.10E", L, G}, {"4328.350 N, 01626.100 E", L, G},   /* as a plotter */
    {"N4328.35 E01626.1", L, G}, {"01626.1e 4328.35n", L, G}, {"4328.35S 01626.1W", -L, -G},
    {"43° 28.35' N, 016° 26.1' E", L, G}, {"43°28.35′N 016°26.1′E", L, G},
    {"43°28.35\xE2\x80\x99N 16°26.1\xE2\x80\x99" "E", L, G}, {"43º28.35'N 016º26.1'E", L, G},
    {"N 43 28.35 E 016 26.1", L, G}, {"N43°28.35' E016°26.1'", L, G},
    {"N 43 28.35 016 26.1 E", L, G}, {"43 28.35 N E 016 26.1", L, G},
    {"43 28 21 N 016 26 6 E", L, G}, {"43°28'21.0\"N 016°26'06.0\"E", L, G},
    {"43°28′21″N 016°26′06″E", L, G}, {"43°28'21''N 016°26'06''E", L, G},
    {"43°28'21\xE2\x80\x9DN 016°26'06\xE2\x80\x9D" "E", L, G},
    {"016 26.1 E 43 28.35 N", L, G}, {"E 16.435, S 43.4725", -L, G},
    {"  43.4725   16.435  ", L, G},
    {"43°30'29.3\"N 016°26'24.7\"E", 435081389, 164401944},
    {"43 N 16 E", 430000000, 160000000}, {"43, 16", 430000000, 160000000},
    {"43 28 N 016 26 E", 434666667, 164333333},
    {"90 N 180 E", 900000000, 1800000000}, {"-90 -180", -900000000, -1800000000},
    {"90 00.000 S 180 00 00.0 W", -900000000, -1800000000},
    {"0, 0", 0, 0}, {"-0.0 -0.0", 0, 0}, {"0 S 0 W", 0, 0},
    {"43.47250000004 16.43499999996", L, G}, {"0.00000005 0.000000049999", 1, 0},
    {"043 28.35 N 16 26.1 E", L, G},
    {"59 59 59.999999999 N 0 59.999999999 W", 600000000, -10000000},
};

static void positions_are_read(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof written / sizeof written[0]; i++) {
        struct position position = {7, 7};
        struct position_error error = {.fault = POSITION_EMPTY};
        bool read = position_parse(written[i].text, &position, &error);
        if (!read || position.latitude_e7 != written[i].latitude ||
            position.longitude_e7 != written[i].longitude)
            fail_msg("\"%s\": fault %d at %zu; %lld %lld", written[i].text, (int)error.fault,
                     error.at, (long long)position.latitude_e7, (long long)position.longitude_e7);
        assert_int_equal(error.fault, POSITION_SOUND);
    }
}

/* ---- refused ---- */

static const struct { const char *text; enum position_fault fault; size_t at; } refused[] = {
    {"", POSITION_EMPTY, 1}, {"  ", POSITION_EMPTY, 1},
    {"180.1, 16", POSITION_LATITUDE_RANGE, 1},
    {"43.5, 180.1", POSITION_LONGITUDE_RANGE, 7}, /* L07 */
    {"90.0001, 16", POSITION_LATITUDE_RANGE, 1}, /* L08 */
    {"90.000000001 16", POSITION_LATITUDE_RANGE, 1},
    {"90 00.001 N 16 E", POSITION_LATITUDE_RANGE, 1},
    {"43 N 180 00 01 W", POSITION_LONGITUDE_RANGE, 6},
    {"43 N 999999999 W", POSITION_LONGITUDE_RANGE, 6},
    {"4328.35, 01626.1", POSITION_RUN_TOGETHER, 1},
    {"4328.35N 1626.1E", POSITION_RUN_TOGETHER, 10},   /* 16 or 162 degrees? */
    {"04328.35N 01626.1E", POSITION_RUN_TOGETHER, 1},
    {"432835N 0162606E", POSITION_RUN_TOGETHER, 1},    /* seconds, or decimals? */
    {"43 28.35 N 01626.1 E", POSITION_RUN_TOGETHER, 12},
    {"4328.35N 016 26.1 E", POSITION_RUN_TOGETHER, 1},
    {"4328.35°N 01626.1°E", POSITION_RUN_TOGETHER, 1},
    {"4360.00N 01626.1E", POSITION_MINUTES, 1}, {"4328.35N 01660.0E", POSITION_MINUTES, 10},
    {"9000.01N 01626.1E", POSITION_LATITUDE_RANGE, 1},
    {"4328.35N 18000.01E", POSITION_LONGITUDE_RANGE, 10},
    {"4328.35N 01626.1N", POSITION_TWO_LATITUDES, 17},
    {"4328.35S -01626.1", POSITION_NO_LETTER, 10},
    {"-4328.35S 01626.1E", POSITION_SIGN_AND_LETTER, 1},
    {"43°60.0'N 016°26.1'E", POSITION_MINUTES, 4}, /* L18 */
    {"43 28.35 N 016 75 E", POSITION_MINUTES, 16},
    {"43 28 60 N 016 26 00 E", POSITION_SECONDS, 7},
    {"43 28 59 N 016 26 61.5 E", POSITION_SECONDS, 19},
    {"-43 N 16 E", POSITION_SIGN_AND_LETTER, 1}, {"43 N -16 E", POSITION_SIGN_AND_LETTER, 6},
    {"N -43 E 16", POSITION_SIGN_AND_LETTER, 3}, {"+43.5 N 16 E", POSITION_SIGN_AND_LETTER, 1},
    {"43 28.35 016 26.1", POSITION_NO_LETTER, 1}, {"43 28.35, 16 26.1", POSITION_NO_LETTER, 1},
    {"43.5 N 16.4", POSITION_NO_LETTER, 8}, {"43.5 16.4 E", POSITION_NO_LETTER, 1},
    {"43 28.35 N 016 26.1", POSITION_NO_LETTER, 12}, {"-43 28.35 16 26.1", POSITION_NO_LETTER, 1},
    {"43 28.35 N 016 26.1 N", POSITION_TWO_LATITUDES, 21}, {"43 N 16 S", POSITION_TWO_LATITUDES, 9},
    {"43 E 16 W", POSITION_TWO_LONGITUDES, 9}, {"E 43 E 16", POSITION_TWO_LONGITUDES, 6},
    {"156600", POSITION_SEXAGESIMAL, 1}, {"156629.3", POSITION_SEXAGESIMAL, 1},
    {"43.4725", POSITION_ONE_VALUE, 8}, {"43 16", POSITION_ONE_VALUE, 6},
    {"43 16.4", POSITION_ONE_VALUE, 8}, {"43 28.35 N", POSITION_ONE_VALUE, 11},
    {"-156600", POSITION_ONE_VALUE, 8},
    {"43,4725 16,435", POSITION_DECIMAL_COMMA, 3}, {"43,4725", POSITION_DECIMAL_COMMA, 3},
    {"43,16", POSITION_DECIMAL_COMMA, 3}, {"43,16.435", POSITION_DECIMAL_COMMA, 3},
    {"43 28,35 N 016 26,1 E", POSITION_DECIMAL_COMMA, 6}, {"43.5,16,4", POSITION_DECIMAL_COMMA, 8},
    {"43:28:21 N 016:26:06 E", POSITION_SIGN, 3}, {"43 28.35 north", POSITION_SIGN, 11},
    {"43 28.35 N 016 26.1 O", POSITION_SIGN, 21}, {"43\xC2\xA0" "28.35 N", POSITION_SIGN, 3},
    {"43°28.35'N \xFF", POSITION_SIGN, 12}, {"43\t16", POSITION_SIGN, 3},
    {"43. 5", POSITION_NUMBER, 4}, {".5 16", POSITION_SIGN, 1}, {"43.5, ", POSITION_NUMBER, 7},
    {"N E 16", POSITION_NUMBER, 3}, {"43.5,, 16", POSITION_NUMBER, 6},
    {"--43 16", POSITION_NUMBER, 2},
    {"1234567890 16", POSITION_NUMBER, 10}, {"N 43 28 E", POSITION_NUMBER, 10},
    {"43.5.5 16", POSITION_SIGN, 5},
    {"43'28.35°N 16 E", POSITION_MARK, 3}, {"43°28.35\"N 16 E", POSITION_MARK, 9},
    {"43°28°N 16 E", POSITION_MARK, 6}, {"43'' N 16 E", POSITION_MARK, 3},
    {"43.5 16.4 5", POSITION_MORE, 11}, {"43 N 16 E 5", POSITION_MORE, 11},
    {"43 N 16 E E", POSITION_MORE, 11}, {"43.5, 16.4,", POSITION_MORE, 11},
    {"43 28 21.5 N 16 26 06 12 E", POSITION_MORE, 23},
    {"N N N N N N N N N N N N N N N N N N", POSITION_MORE, 35},
};

static void what_can_be_read_in_two_ways_is_refused(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof refused / sizeof refused[0]; i++) {
        struct position position = {7, 8};
        struct position_error error = {.fault = POSITION_SOUND};
        bool read = position_parse(refused[i].text, &position, &error);
        if (read || error.fault != refused[i].fault || error.at != refused[i].at)
            fail_msg("\"%s\": fault %d at %zu", refused[i].text, (int)error.fault, error.at);
        assert_int_equal(position.latitude_e7, 7);
        assert_int_equal(position.longitude_e7, 8);
        assert_true(strlen(position_fault_text(error.fault)) > 5);
        assert_true(strlen(position_fault_remedy(error.fault)) > 10);
    }
}

/* ---- any position ---- */

static uint64_t chance(uint64_t below)
{
    static uint64_t seed = 88172645463325252;
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    return seed % below;
}

/* The letter is the position's own; a half printed as zero reads back as zero, which has no
 * other side than north and east. */
static void half_reads_back(const struct position *position, const struct position *again,
                            enum position_axis axis, enum position_form form, int decimals)
{
    struct angle angle = position_angle(position, axis, form, decimals);
    int64_t e7 = axis == LAT ? position->latitude_e7 : position->longitude_e7;
    int64_t again_e7 = axis == LAT ? again->latitude_e7 : again->longitude_e7;
    bool negative = angle.letter == 'S' || angle.letter == 'W';
    assert_int_equal(negative, e7 < 0);
    if ((angle.degrees | angle.minutes | angle.seconds | angle.fraction) == 0)
        assert_true(again_e7 == 0);
    else
        assert_string_equal(position_axis_text(arena, again, axis, form, decimals),
                            position_axis_text(arena, position, axis, form, decimals));
}

/* What is printed is the nearest of its unit, and reads back as printed. */
static void form_check(const struct position *position, enum position_form form, int decimals)
{
    int64_t fine = form == D ? 1 : form == DM ? 60 : 3600;
    for (int i = 0; i < decimals; i++)
        fine *= 10;
    struct angle angle = position_angle(position, LAT, form, decimals);
    int64_t units = angle.degrees;
    if (form != D)
        units = units * 60 + angle.minutes;
    if (form == DMS)
        units = units * 60 + angle.seconds;
    for (int i = 0; i < decimals; i++)
        units *= 10;
    units += angle.fraction;
    int64_t size = position->latitude_e7 < 0 ? -position->latitude_e7 : position->latitude_e7;
    int64_t off = units * 10000000 - size * fine;
    assert_true(angle.minutes < 60 && angle.seconds < 60);
    assert_true(2 * off <= 10000000 && 2 * off > -10000000);
    struct position again;
    struct position_error error;
    const char *text = position_text(arena, position, form, decimals);
    assert_true(position_parse(text, &again, &error));
    half_reads_back(position, &again, LAT, form, decimals);
    half_reads_back(position, &again, LON, form, decimals);
}

static void any_position_reads_back_as_printed(void **state)
{
    (void)state;
    for (int i = 0; i < 20000; i++) {
        struct position position = {(int64_t)chance(1800000001) - 900000000,
                                    (int64_t)chance(3600000001) - 1800000000};
        form_check(&position, D, (int)chance(8));
        form_check(&position, DM, (int)chance(4));
        form_check(&position, DMS, (int)chance(2));
        struct position again;
        struct position_error error;
        assert_true(position_parse(position_text(arena, &position, D, 7), &again, &error));
        assert_true(again.latitude_e7 == position.latitude_e7);
        assert_true(again.longitude_e7 == position.longitude_e7);
    }
}

/* Any row of signs is either refused with a place inside it (or just behind), or a
 * position that lies on the earth. */
static void any_signs_are_judged(void **state)
{
    (void)state;
    static const char *const signs[] = {"4", "3", "0", "60", "28.35", "16", "N", "E", "s", "W",
                                        "-", " ", " ", ",", ".", "°", "'", "″", "x", "\xC2",
                                        "999999999"};
    size_t read = 0;
    for (int i = 0; i < 200000; i++) {
        struct text_builder text = text_builder_in(arena);
        struct position position = {0};
        struct position_error error;
        for (uint64_t count = 1 + chance(10); count > 0; count--)
            text_add(&text, signs[chance(sizeof signs / sizeof signs[0])]);
        bool sound = position_parse(text.at, &position, &error);
        read += sound;
        assert_int_equal(sound, error.fault == POSITION_SOUND);
        assert_true(sound || (error.at >= 1 && error.at <= strlen(text.at) + 1));
        assert_true(position.latitude_e7 >= -900000000 && position.latitude_e7 <= 900000000);
        assert_true(position.longitude_e7 >= -1800000000 && position.longitude_e7 <= 1800000000);
    }
    assert_true(read > 100);
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(each_form_is_rounded_once),
        CASE(positions_are_read),
        CASE(what_can_be_read_in_two_ways_is_refused),
        CASE(any_position_reads_back_as_printed),
        CASE(any_signs_are_judged),
    };
    return cmocka_run_group_tests_name("position", tests, NULL, NULL) != 0;
}
