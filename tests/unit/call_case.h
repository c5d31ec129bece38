/* call_case.h - the panel of a card on a boat with this to call with, and its lines in the
 * program's words. */
#ifndef MAYDECK_CALL_CASE_H
#define MAYDECK_CALL_CASE_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

/* The whole set, which knows the position. */
#define SET_RADIO CASE_RADIO "  gnss: yes\n"
#define HANDHELD \
    "  - {item: vhf_handheld, tag: E4, zone: companionway, side: port, spot: charger, " \
    "from_cockpit: yes}\n"
#define HANDHELD_BELOW \
    "  - {item: vhf_handheld, tag: E4, zone: saloon, side: port, from_cockpit: no}\n"
#define HANDHELD_DECK \
    "  - {item: vhf_handheld, tag: E4, zone: cockpit, side: port, from_cockpit: yes, " \
    "in_charger: no}\n"
#define HANDHELD_KEY \
    "  - {item: vhf_handheld, tag: E4, zone: cockpit, side: port, from_cockpit: yes, " \
    "in_charger: no, dsc: yes, mmsi: \"899990123\"}\n"
#define STATION ", second_station: {zone: cockpit, side: port, spot: at the wheel}"
#define DECK_PLACE "Cockpit, port"
#define EPIRB_DECK "  - {item: epirb, tag: E3, zone: cockpit, side: starboard}\n"
#define EPIRB \
    "  - {item: epirb, tag: E3, zone: companionway, side: starboard, from_cockpit: yes}\n"
#define FLARES "  - {item: flares, tag: E5, zone: cockpit_locker, side: port, from_cockpit: yes}\n"
#define NO_DSC \
    "radio: {tag: E9, call_sign: QTAB2, dsc: no, zone: navigation_station, side: port, " \
    "power_switch: breaker VHF}\n"

/* The panel of one of the program's own cards, on a boat with this to call with.
 * Other facts the card asks for are not recorded: they are not the panel's. */
static inline const struct call_facts *panel(const char *card, const char *radio, const char *gear,
                                     const char *not_fitted)
{
    case_boat(&test, case_boat_text(&test, radio, gear, not_fitted));
    const struct sheet *sheet = case_card(case_compose(&test, false), card);
    assert_non_null(sheet_block(sheet, BLOCK_CALL));
    return sheet_call(sheet);
}

static inline const char *word(enum word word_)
{
    return words_get(test.words, word_);
}

static inline const char *tagged(enum word word_, const char *tag, const char *place)
{
    return words_fill(test.words, test.arena, word_, "tag", tag, "place", place, NULL);
}

static inline const char *numbered(int number, const char *text)
{
    return text_format(test.arena, "**%d** %s", number, text);
}

static inline const char *set_channel(void)
{
    return words_fill(test.words, test.arena, WORD_SET_CHANNEL, "channel", "67", NULL);
}

static inline const char *set_on(void)
{
    return numbered(1, words_fill(test.words, test.arena, WORD_SET_ON, "switch", "breaker VHF",
                                  NULL));
}

static inline const char *key(enum word word_)
{
    return numbered(2, words_fill(test.words, test.arena, word_, "cover", "Lift the red lid",
                                  "seconds", "5", NULL));
}

static inline const char *mayday_only(const char *what)
{
    return words_fill(test.words, test.arena, WORD_MAYDAY_ONLY, "what", what, NULL);
}

/* What is done where nobody answers, from the word after "Say it again at once" on. */
static inline const char *no_answer(const char *ways)
{
    return text_format(test.arena, "%s%s%s.", word(WORD_NO_ANSWER), text_empty(ways) ? "" : ", ",
                       ways);
}

#define PHONE "phone +999 00 000 001"

static inline const char *instead(enum word cause, const char *act)
{
    return words_fill(test.words, test.arena, cause, "act", act, NULL);
}

static inline const char *instead_handheld(enum word cause, const char *place)
{
    return instead(cause, tagged(WORD_USE_HANDHELD, "E4", place));
}

static inline const char *first_tried(enum word word_, const char *means)
{
    return words_fill(test.words, test.arena, word_, "means", means, NULL);
}

static inline const char *alone(enum word word_, const char *beacon, const char *tag,
                                const char *place)
{
    return words_fill(test.words, test.arena, word_, "beacon", beacon, "tag", tag, "place",
                      place, NULL);
}

static inline const char *phone(enum word word_)
{
    return words_fill(test.words, test.arena, word_, "number", "+999 00 000 001", NULL);
}

static inline void expect_lines(const struct call_facts *call, const char *const *lines)
{
    size_t count = 0;
    for (; lines[count] != NULL; count++) {
        assert_true(count < call->operate_count);
        assert_string_equal(call->operate[count].text, lines[count]);
    }
    assert_int_equal(count, call->operate_count);
}

#define EXPECT_LINES(call, ...) expect_lines(call, (const char *const[]){__VA_ARGS__, NULL})

#define HANDHELD_PLACE "Companionway, port"

static inline const char *said(const struct call_facts *call)
{
    assert_non_null(call->script);
    return script_text(call->script, test.arena);
}

#endif
