/* test_channel.c - channels of the marine VHF band. Vectors R07 to R10, and a
 * table of channels. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "record/channel.h"

static const struct { const char *channel; int khz; } channels[] = {
    {"16", 156800}, {"70", 156525}, {"06", 156300}, {"77", 156875},   /* R07 to R10 */
    {"13", 156650}, {"67", 156375}, {"08", 156400}, {"72", 156625}, {"15", 156750},
    {"17", 156850}, {"75", 156775}, {"76", 156825},
    {"01", 156050}, {"28", 157400}, {"60", 156025}, {"88", 157425},
};

static void channels_have_their_frequency(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof channels / sizeof channels[0]; i++)
        if (channel_ship_khz(channels[i].channel) != channels[i].khz)
            fail_msg("channel %s: %d kHz", channels[i].channel,
                     channel_ship_khz(channels[i].channel));
}

static void other_texts_are_no_channel(void **state)
{
    (void)state;
    static const char *const none[] = {"", "0", "6", "00", "29", "45", "59", "89", "99", "016",
                                       "6 ", " 6", "+6", "1A", "22A", "1022", "O6", "AIS1"};
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++)
        assert_int_equal(channel_ship_khz(none[i]), 0);
}

/* 28 and 29 of them, no two on one frequency. */
static void the_band_is_whole(void **state)
{
    (void)state;
    int seen[100] = {0}, count = 0;
    for (int number = 0; number < 100; number++) {
        char text[3] = {(char)('0' + number / 10), (char)('0' + number % 10), '\0'};
        seen[number] = channel_ship_khz(text);
        count += seen[number] != 0;
        for (int k = 0; seen[number] != 0 && k < number; k++)
            assert_int_not_equal(seen[k], seen[number]);
    }
    assert_int_equal(count, 57);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(channels_have_their_frequency),
        cmocka_unit_test(other_texts_are_no_channel),
        cmocka_unit_test(the_band_is_whole),
    };
    return cmocka_run_group_tests_name("channel", tests, NULL, NULL) != 0;
}
