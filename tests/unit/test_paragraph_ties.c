/* test_paragraph_ties.c - what no line break may part, however wide the column: numbers
 * and units, channels, identities, signals. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "pen_fixture.h"
#include "pseudo_case.h"
#include "text.h"

/* "aaa / bb cc" */
static const char *lines_text(const struct paragraph *paragraph)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t l = 0; l < paragraph->line_count; l++) {
        text_add(&out, l > 0 ? " / " : "");
        for (size_t i = paragraph->lines[l].first; i < paragraph->lines[l].end; i++)
            text_add_format(&out, "%s%.*s",
                            i > paragraph->lines[l].first && !paragraph->pieces[i].joined ? " "
                                                                                          : "",
                            (int)paragraph->pieces[i].length, paragraph->pieces[i].text);
    }
    return out.at;
}

static struct paragraph made(const char *text, mpt width)
{
    struct style style = {ROLE_BOX, FACE_TEXT, 12000, INK_BLACK};
    return paragraph_make(&pen, &style, text, width, (struct place){0});
}

/* However wide the column: no line ends between the two. */
static void never_torn(const char *text, const char *first, const char *second)
{
    const char *torn = text_format(test.arena, "%s / %s", first, second);
    const char *kept = text_format(test.arena, "%s %s", first, second);
    for (mpt width = MM(24); width < MM(120); width += MM(0.5)) {
        struct paragraph paragraph = made(text, width);
        const char *lines = lines_text(&paragraph);
        if (strstr(lines, torn) != NULL || strstr(lines, kept) == NULL)
            fail_msg("torn: %s", lines);
    }
}

static void a_number_stays_with_its_unit(void **state)
{
    (void)state;
    never_torn("Hold the key for 5 s. Then wait", "5", "s.");
    never_torn("If no one answers, look again every 10 minutes.", "10", "minutes.");
    never_torn("She carries one raft for 8 persons and a dinghy", "8", "persons");
    never_torn("A powder extinguisher of 2 kg by the door", "2", "kg");
    never_torn("WHITE SAILING YACHT, 12.6 METRES. OVER", "12.6", "METRES.");
    never_torn("Call on it with 25 W at once, then go", "25", "W");
    never_torn("Channel 16, with 25 W, at once.", "25", "W,");
    never_torn("Again in 2 minutes, handheld E4, EPIRB E3 on.", "2", "minutes,");
}

static void a_name_stays_with_its_number(void **state)
{
    (void)state;
    never_torn("If she still burns, leave her. Card 11, ABANDON.", "Card", "11,");
    never_torn("After that call after step 5 by yourself", "step", "5");
    never_torn("The rescue centre answers on VHF 16 then 67", "VHF", "16");
    never_torn("Turn the knob to Channel 16, then speak", "Channel", "16,");
    never_torn("Then say on channel 16 what is wrong", "channel", "16");
    never_torn("Again in a while, then with EPIRB E3 on", "EPIRB", "E3");
    never_torn("Again in a while, then with handheld E4, flares", "handheld", "E4,");
}

/* Other languages have other words for them; what is said on the radio stays as it is. */
static void a_language_ties_by_its_own_words(void **state)
{
    (void)state;
    card.words = pseudo_words(&test);
    never_torn("Again every 10 mіnutes or so, without an end", "10", "mіnutes");
    never_torn("Again in a while, then with hаndheld E4, and so on", "hаndheld", "E4,");
    never_torn("A YELLOW SAILING YACHT, 12.6 METRES. OVER", "12.6", "METRES.");
    never_torn("the words are MAYDAY RELAY MAYDAY RELAY MAYDAY RELAY", "MAYDAY", "RELAY");
    bool torn = false;
    for (mpt width = MM(24); width < MM(120); width += MM(0.5)) {
        struct paragraph paragraph = made("Again every 10 minutes or so, without an end", width);
        torn = torn || strstr(lines_text(&paragraph), "10 / minutes") != NULL;
    }
    assert_true(torn);
}

static void groups_of_digits_stay_together(void **state)
{
    (void)state;
    never_torn("The identity to say is 200 014 730, then", "200", "014");
    never_torn("The identity to say is 200 014 730, then", "014", "730,");
    never_torn("Base, day and night: +999 00 000 000", "+999", "00");
    never_torn("she lies at 12 30.50 north and waits", "12", "30.50");
}

/* The dot between two things ends a line, it never begins one. */
static void no_line_begins_with_a_dot(void **state)
{
    (void)state;
    never_torn("open the hatch to look · put water on fuel · go in", "look", "·");
    never_torn("open the hatch to look · put water on fuel · go in", "fuel", "·");
}

static void signals_are_never_torn(void **state)
{
    (void)state;
    never_torn("the words are MAYDAY RELAY MAYDAY RELAY MAYDAY RELAY", "MAYDAY", "RELAY");
    never_torn("call ALL STATIONS ALL STATIONS ALL STATIONS", "ALL", "STATIONS");
    for (mpt width = MM(17); width < MM(80); width += MM(0.5)) {
        struct paragraph paragraph = made("PAN PAN PAN PAN PAN PAN", width);
        for (size_t l = 0; l < paragraph.line_count; l++)
            assert_int_equal(paragraph.lines[l].first % 2, 0);
    }
    struct paragraph narrow = made("PAN PAN PAN PAN PAN PAN", MM(18));
    assert_int_equal(narrow.line_count, 3);           /* between the pairs it may be broken */
}

static void a_bold_word_and_its_full_stop_stay_together(void **state)
{
    (void)state;
    for (mpt width = MM(20); width < MM(60); width += MM(0.5)) {
        struct paragraph paragraph = made("Say it, then **leave the boat**. Do not wait.", width);
        assert_non_null(strstr(lines_text(&paragraph), "boat."));
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_number_stays_with_its_unit),
        TEST(a_name_stays_with_its_number),
        TEST(a_language_ties_by_its_own_words),
        TEST(groups_of_digits_stay_together),
        TEST(no_line_begins_with_a_dot),
        TEST(signals_are_never_torn),
        TEST(a_bold_word_and_its_full_stop_stay_together),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
