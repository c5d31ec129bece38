/* test_brief_short.c - each showstopper of the skipper's sheet where it is and where it is not: on
 * page one and told as a deficiency. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "card_fixture.h"
#include "brief_case.h"

/* Good to the end of every charter here; for six people. */
#define JACKETS \
    "  - {item: lifejacket, tag: E1, zone: cockpit_locker, side: port, count: 6, " \
    "service_due: 2028-01}\n"
#define RAFT \
    "  - {item: liferaft, tag: E2, zone: coachroof, spot: ahead of mast, persons: 6, " \
    "service_due: 2028-01}\n"
#define OTHERS \
    "  - {item: epirb, tag: E3, zone: companionway, expires: 2029-01}\n" \
    "  - {item: flares, tag: E4, zone: cockpit, side: port, expires: 2029-01}\n" \
    "  - {item: vhf_handheld, tag: E5, zone: cockpit, side: port}\n" \
    "  - {item: grab_bag, tag: E6, zone: cockpit, side: port, expires: 2029-01}\n" \
    "  - {item: fire_extinguisher, tag: F1, zone: cockpit, side: port, service_due: 2029-01}\n"
#define DO_NOT_SAIL "DO NOT SAIL WITHOUT THE BASE"

/* What the boat has, who sails, and what page one says of it. `not_said` is said of none. */
struct short_row {
    const char *name, *gear, *not_fitted;
    struct hire hire;
    const char *said;
    bool grave;
};

#define WEEK .days = {{2027, 5, 1}, {2027, 5, 8}, 0}
#define SIX {WEEK, .people = 6}
static const int fit[] = {80, 70, 20}, unfit[] = {80, 70, 12};

#define SIZED \
    "  - {item: lifejacket, tag: E1, zone: cockpit_locker, side: port, spot: bag, count: 2, " \
    "kg_low: 40, service_due: 2028-01}\n" \
    "  - {item: lifejacket, tag: E7, zone: cockpit_locker, side: port, spot: net, count: 4, " \
    "kg_low: 15, kg_high: 40, wearer: child, service_due: 2028-01}\n"

static const struct short_row rows[] = {
    {"nothing is short", JACKETS RAFT OTHERS, "", SIX, NULL, false},
    {"the day itself is good", "  - {item: liferaft, tag: E2, zone: coachroof, persons: 6, "
     "service_due: 2027-05-08}\n" JACKETS OTHERS, "", SIX, NULL, false},
    {"a raft that ends during the charter", "  - {item: liferaft, tag: E2, zone: coachroof, "
     "persons: 6, service_due: 2027-05-07}\n" JACKETS OTHERS, "", SIX,
     "E2|Raft, 6 persons: good until 2027-05-07, before hand-back. Cabin roof", true},
    {"its places are not counted", "  - {item: liferaft, tag: E2, zone: coachroof, "
     "persons: 6, service_due: 2027-05-07}\n" JACKETS OTHERS, "", SIX,
     "|Raft places good until 2027-05-08: 0. People aboard: 6.", true},
    {"a raft past its date", "  - {item: liferaft, tag: E2, zone: coachroof, persons: 6, "
     "service_due: 2027-04}\n" JACKETS OTHERS, "", SIX, "E2|Raft, 6 persons: date past, 2027-04.",
     true},
    {"a raft without a date", "  - {item: liferaft, tag: E2, zone: coachroof, persons: 6}\n"
     JACKETS OTHERS, "", SIX, "E2|Raft, 6 persons: date not recorded.", true},
    {"a raft whose places nobody recorded", "  - {item: liferaft, tag: E2, zone: coachroof, "
     "service_due: 2028-01}\n" JACKETS OTHERS, "", SIX, "E2|Raft: for how many is not recorded.",
     true},
    {"seven in a raft of six", JACKETS RAFT OTHERS, "", {WEEK, .people = 7},
     "|Raft places: 6. People aboard: 7.", true},
    {"two rafts hold them", JACKETS RAFT OTHERS
     "  - {item: liferaft, tag: E8, zone: coachroof, persons: 4, service_due: 2028-01}\n"
     "  - {item: lifejacket, tag: E10, zone: saloon, side: port, service_due: 2028-01}\n", "",
     {WEEK, .people = 7}, NULL, false},
    {"no raft", JACKETS OTHERS, "  - liferaft\n", SIX, "|No raft on board. People aboard: 6.",
     true},
    {"a raft that is not recorded", JACKETS OTHERS, "", SIX, "|Raft not recorded: count it as none",
     true},
    {"too few lifejackets", JACKETS RAFT OTHERS, "", {WEEK, .people = 7},
     "|Lifejackets: 6. People aboard: 7.", true},
    {"lifejackets past their date", RAFT OTHERS "  - {item: lifejacket, tag: E1, zone: saloon, "
     "side: port, count: 6, service_due: 2027-03}\n", "", SIX,
     "|Lifejackets: 0. People aboard: 6. Counted: those good until 2027-05-08.", true},
    {"no lifejackets", RAFT OTHERS, "  - lifejacket\n", SIX, "|No lifejackets on board.", true},
    {"lifejackets that are not recorded", RAFT OTHERS, "", SIX, "|Lifejackets not recorded", true},
    {"none for a child", JACKETS RAFT OTHERS, "", {WEEK, .people = 6, .children = 1},
     "|Lifejackets for children: 0. Children aboard: 1.", true},
    {"children's do not serve adults", SIZED RAFT OTHERS, "", {WEEK, .people = 6, .children = 2},
     "|Lifejackets for adults: 2. Adults aboard: 4.", true},
    {"one that fits no body", SIZED RAFT OTHERS, "", {WEEK, .people = 3, .kg = unfit},
     "|Lifejackets of a recorded size fit 2 of 3 people.", true},
    {"sizes that nobody recorded", JACKETS RAFT OTHERS, "", {WEEK, .people = 3, .kg = fit},
     "|Lifejackets of a recorded size fit 0 of 3 people. Size not recorded of 6: read the labels.",
     true},
    {"all fit", SIZED RAFT OTHERS, "", {WEEK, .people = 3, .children = 1, .kg = fit}, NULL, false},
    {"one too many for her papers", JACKETS RAFT OTHERS, "", {WEEK, .people = 9},
     "|People aboard: 9. The boat may carry 8.", true},
    {"an EPIRB that is not recorded", JACKETS RAFT
     "  - {item: flares, tag: E4, zone: cockpit, side: port, expires: 2029-01}\n"
     "  - {item: vhf_handheld, tag: E5, zone: cockpit, side: port}\n"
     "  - {item: grab_bag, tag: E6, zone: cockpit, side: port, expires: 2029-01}\n"
     "  - {item: fire_extinguisher, tag: F1, zone: cockpit, side: port, service_due: 2029-01}\n",
     "", SIX, "|EPIRB: not recorded.", false},
    {"no extinguisher", JACKETS RAFT
     "  - {item: epirb, tag: E3, zone: companionway, expires: 2029-01}\n"
     "  - {item: flares, tag: E4, zone: cockpit, side: port, expires: 2029-01}\n"
     "  - {item: vhf_handheld, tag: E5, zone: cockpit, side: port}\n"
     "  - {item: grab_bag, tag: E6, zone: cockpit, side: port, expires: 2029-01}\n",
     "  - fire_extinguisher\n", SIX, "|Extinguisher: none on board.", false},
    {"an alarm without a date", JACKETS RAFT OTHERS
     "  - {item: co_alarm, tag: C1, zone: saloon, side: port, spot: by the door}\n", "", SIX,
     "C1|CO alarm: date not recorded. Saloon, PORT, by the door.", false},
};

/* A card that the record cannot fill is a showstopper of its own here: the boats have few facts. */
static bool is_of_cards(const char *line)
{
    return strstr(line, "|Cards held back") == line;
}

static void short_check(const struct short_row *row)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, row->gear, row->not_fitted));
    hire = row->hire;
    const struct form_section *section = form_section_of(brief_form(), WORD_BRIEF_STOPPERS);
    size_t others = 0;
    for (size_t i = 0; i < section->line_count; i++)
        others += is_of_cards(form_line_said(&section->lines[i], 2)) ? 0 : 1;
    if (row->said == NULL ? others > 0 : lines_with(section, row->said) != 1)
        fail_msg("%s: %s", row->name, section_said(section));
    if (lines_with(section, DO_NOT_SAIL) != (row->grave ? 1 : 0))
        fail_msg("%s, grave: %s", row->name, section_said(section));
    assert_int_equal(section->manner, FORM_WARNED);
    assert_true(strstr(case_problems_text(&test), "deficiency: ") != NULL);
    assert_true((strstr(case_problems_text(&test), "do not sail without the base's word") !=
                 NULL) == row->grave);
}

static void each_stands_where_it_is_and_nowhere_else(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        short_check(&rows[i]);
}

static void a_boat_without_a_radio_is_told_apart_from_one_of_which_none_is_recorded(void **state)
{
    (void)state;
    static const struct { const char *gear, *not_fitted, *said; } radios[] = {
        {"", "  - vhf_dsc\n  - vhf_handheld\n", "|No radio on board."},
        {"", "  - vhf_handheld\n", "|No radio is recorded"},
        {"  - {item: vhf_handheld, tag: E5, zone: cockpit, side: port}\n", "  - vhf_dsc\n", NULL}};
    for (size_t i = 0; i < sizeof radios / sizeof *radios; i++) {
        case_boat(&test, case_boat_text(&test, "radio: {call_sign: QTAB2}\n",
                                        text_format(test.arena, "%s%s", JACKETS RAFT,
                                                    radios[i].gear), radios[i].not_fitted));
        hire_begin();
        const struct form_section *section = form_section_of(brief_form(), WORD_BRIEF_STOPPERS);
        assert_int_equal(lines_with(section, "adio"), radios[i].said == NULL ? 0 : 1);
        assert_int_equal(lines_with(section, DO_NOT_SAIL), radios[i].said == NULL ? 0 : 1);
        if (radios[i].said != NULL)
            assert_int_equal(lines_with(section, radios[i].said), 1);
    }
}

static void cards_that_are_held_back_are_named_by_their_numbers(void **state)
{
    (void)state;
    case_boat(&test, case_boat_text(&test, CASE_RADIO, JACKETS RAFT OTHERS, ""));
    hire_begin();
    const struct form_section *section = form_section_of(brief_form(), WORD_BRIEF_STOPPERS);
    if (lines_with(section, "|Cards held back, not on board: 3, 4, 5,") != 1)
        fail_msg("%s", section_said(section));
    assert_non_null(strstr(case_problems_text(&test), "cards held back: 3 ENGINE FIRE; 4 "));
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    hire.days = (struct charter){{2026, 12, 1}, {2026, 12, 8}, 0};
    assert_int_equal(lines_with(form_section_of(brief_form(), WORD_BRIEF_STOPPERS),
                                "None by the record"), 1);
    assert_string_equal(case_problems_text(&test), "");
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_stands_where_it_is_and_nowhere_else),
        TEST(a_boat_without_a_radio_is_told_apart_from_one_of_which_none_is_recorded),
        TEST(cards_that_are_held_back_are_named_by_their_numbers),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
