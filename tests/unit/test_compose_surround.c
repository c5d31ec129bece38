/* test_compose_surround.c - what stands round the instructions: approvals, marks,
 * the base's own rules, gear dates, warnings, contacts. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <ctype.h>
#include <string.h>

#include "card_fixture.h"
#include "text.h"

#define STEP "steps: [{id: use, sources: [S5], uses: [torch], also: [flares]}]\n"
#define STEP_TEXTS "steps: {use: {act: \"**USE.**\"}}\n"
#define TORCH "  - {item: torch, tag: C1, zone: saloon}\n"
#define NO_FLARES "  - flares\n"

/* The card `smoke` of a boat with this gear, from more than one step. */
static const struct sheet *card_more(const char *gear, const char *not_fitted, const char *logic,
                                     const char *texts)
{
    const char *const whole[] = {
        case_procedure_text(&test, "smoke", 10, text_format(test.arena, STEP "%s", logic),
                            text_format(test.arena, STEP_TEXTS "%s", texts)), NULL};
    case_procedures(&test, whole);
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, not_fitted));
    return case_card(case_compose(&test, false), "smoke");
}

static const struct sheet *card_with(const char *gear, const char *not_fitted)
{
    return card_more(gear, not_fitted, "", "");
}

static void base_with(const char *approvals, const char *own_lines)
{
    case_base(&test, text_format(
        test.arena, "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
        "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n"
        "cruising_area: {latitude: north, longitude: east, sea_area: A1}\n"
        "languages: [en]\napprovals: %s\nlines: %s\n", approvals, own_lines));
}

/* ---- approvals and marks ---- */

/* What the card is, and that nobody approved it: one beside the other. */
static const char *marks_of(const struct sheet *card)
{
    const char *mark = sheet_text(card, BLOCK_MARK)->text;
    const char *unapproved = sheet_text(card, BLOCK_UNAPPROVED)->text;
    return text_format(test.arena, "%s%s%s", mark,
                       text_empty(mark) || text_empty(unapproved) ? "" : " | ", unapproved);
}

static bool approved_text(const char *text, const char *card, const char *from,
                          const char *until)
{
    const char *expected = "Approved AB, master, ";
    base_with(text_format(test.arena, "[{card: %s, text: \"%s\", initials: AB, qualification: "
                          "master, date: %s, until: %s}]", card, text, from, until), "[]");
    const struct sheet *made = card_with(TORCH, NO_FLARES);
    const struct footer_facts *footer = sheet_footer(made);
    bool in_footer = strstr(footer->left[1], expected) != NULL;
    bool marked = strstr(marks_of(made), words_get(test.words, WORD_MARK_NOT_APPROVED)) != NULL;
    assert_int_equal(in_footer, !marked);         /* exactly one of the two is said */
    if (in_footer)
        assert_non_null(strstr(footer->left[1], text_format(test.arena, "%s%s.", expected, from)));
    return in_footer;
}

/* With the fingerprint of the card's text as it is. */
static bool approved(const char *card, const char *from, const char *until)
{
    (void)card_with(TORCH, NO_FLARES);
    return approved_text(case_fingerprint(&test, "smoke"), card, from, until);
}

static void an_approval_is_of_one_text(void **state)
{
    (void)state;
    (void)card_with(TORCH, NO_FLARES);
    char *text = text_format(test.arena, "%s", case_fingerprint(&test, "smoke"));
    assert_int_equal(strlen(text), 19);
    assert_true(approved_text(text, "smoke", "2026-10-01", "2027-10-01"));
    for (size_t i = 0; text[i] != '\0'; i++)        /* as people type it */
        text[i] = text[i] == '-' ? ' ' : (char)tolower((unsigned char)text[i]);
    assert_true(approved_text(text, "smoke", "2026-10-01", "2027-10-01"));
    text[0] = text[0] == '0' ? '1' : '0';
    assert_false(approved_text(text, "smoke", "2026-10-01", "2027-10-01"));
    text[18] = '\0';
    assert_false(approved_text(text, "smoke", "2026-10-01", "2027-10-01"));
    assert_false(approved_text("FIRE", "smoke", "2026-10-01", "2027-10-01"));
}

/* Printed on 2026-11-25: both ends of an approval belong to it. */
static void an_approval_counts_from_its_date_until_its_last_day(void **state)
{
    (void)state;
    assert_true(approved("smoke", "2026-10-01", "2027-10-01"));
    assert_true(approved("smoke", "2026-11-25", "2026-11-25"));
    assert_true(approved("smoke", "2026-10-01", "2026-11"));       /* to the end of the month */
    assert_true(approved("smoke", "2026-11", "2027-04"));          /* from its first day */
    assert_true(approved("smoke", "2026", "2026"));
    assert_false(approved("smoke", "2026-12", "2027-04"));
    assert_false(approved("smoke", "2025-10-01", "2026-11-24"));
    assert_false(approved("smoke", "2025-10-01", "2026-10"));
    assert_false(approved("smoke", "2026-11-26", "2027-10-01"));
    assert_false(approved("steam", "2026-10-01", "2027-10-01"));
}

static void both_engines_cards_stand_on_one_approval(void **state)
{
    (void)state;
    base_with(text_format(test.arena, "[{card: engine_fire, text: %s, initials: AB, "
                          "qualification: master, date: 2026-01-01, until: 2027-01-01}]",
                          case_fingerprint(&test, "engine_fire")), "[]");
    case_boat(&test, "tests/fleet/boats/samphire.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    assert_non_null(
        strstr(sheet_footer(case_card(set, "engine_fire_port"))->left[1], "Approved AB"));
    assert_non_null(
        strstr(sheet_footer(case_card(set, "engine_fire_starboard"))->left[1], "Approved AB"));
    assert_null(strstr(sheet_footer(case_card(set, "flooding"))->left[1], "Approved"));
}

static void marks_are_said_in_a_fixed_order(void **state)
{
    (void)state;
    const char *specimen = words_get(test.words, WORD_MARK_SPECIMEN);
    const char *draft = words_get(test.words, WORD_MARK_DRAFT);
    const char *not_approved = words_get(test.words, WORD_MARK_NOT_APPROVED);
    const struct sheet *card = card_with(TORCH, NO_FLARES);
    assert_string_equal(marks_of(card),
                        text_format(test.arena, "%s | %s", specimen, not_approved));
    card = card_with("  - {item: flares, tag: E1, zone: cockpit}\n", "");   /* and no torch */
    assert_true(card->held);
    assert_string_equal(marks_of(card),
                        text_format(test.arena, "%s · %s | %s", specimen, draft, not_approved));
    struct boat real = *test.boat;
    real.facts.specimen.answer = ANSWER_NO;
    test.boat = &real;
    card = case_card(case_compose(&test, true), "smoke");
    assert_string_equal(marks_of(card),
                        text_format(test.arena, "%s | %s", draft, not_approved));
}

/* ---- the base's own rules and contacts ---- */

static void own_lines_stand_on_the_cards_they_name(void **state)
{
    (void)state;
    base_with("[]", "[{card: smoke, say: Call the harbour on 12., source: Harbour, does: []}, "
              "{card: flooding, say: Another., source: Port, does: []}, "
              "{card: smoke, say: No anchoring., source: Park, does: []}]");
    const struct sheet *card = card_with(TORCH, NO_FLARES);
    const struct warnings_facts *rules = sheet_warnings(card, BLOCK_OWN_LINES);
    assert_int_equal(rules->count, 2);
    assert_string_equal(rules->items[0].text, "Call the harbour on 12.");
    assert_string_equal(rules->items[0].tag, "Harbour");
    assert_string_equal(rules->items[1].text, "No anchoring.");
    base_with("[]", "[]");
    assert_int_equal(sheet_warnings(card_with(TORCH, NO_FLARES), BLOCK_OWN_LINES)->count, 0);
}

static void a_line_may_be_for_one_engine_only(void **state)
{
    (void)state;
    base_with("[]", "[{card: engine_fire_port, say: One., source: Base, does: []}, "
              "{card: engine_fire, say: Both., source: Base, does: []}]");
    case_boat(&test, "tests/fleet/boats/samphire.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    assert_int_equal(sheet_warnings(case_card(set, "engine_fire_port"), BLOCK_OWN_LINES)->count,
                     2);
    assert_int_equal(
        sheet_warnings(case_card(set, "engine_fire_starboard"), BLOCK_OWN_LINES)->count, 1);
    assert_string_equal(
        sheet_warnings(case_card(set, "engine_fire_starboard"), BLOCK_OWN_LINES)->items[0].text,
        "Both.");
}

/* Behind those of the base; a line for a card that she has not is told. */
static void a_boat_has_lines_of_her_own(void **state)
{
    (void)state;
    base_with("[]", "[{card: smoke, say: Call the yard., source: base, does: []}]");
    (void)card_with(TORCH, NO_FLARES);
    test.problems = problems_new(test.arena);
    case_boat(&test, text_format(
        test.arena, "%slines:\n"
        "  - {card: smoke, say: Her door sticks., source: yard, does: []}\n"
        "  - {card: steam, say: No steam here., source: yard, does: []}\n",
        case_boat_text(&test, CASE_RADIO, TORCH, NO_FLARES)));
    const struct warnings_facts *lines = sheet_warnings(
        case_card(case_compose(&test, false), "smoke"), BLOCK_OWN_LINES);
    assert_int_equal(lines->count, 2);
    assert_string_equal(lines->items[0].text, "Call the yard.");
    assert_string_equal(lines->items[1].text, "Her door sticks.");
    assert_string_equal(lines->items[1].tag, "yard");
    assert_non_null(case_problem(&test, "the line for the card steam stands nowhere: this "
                                        "boat has no such card"));
}

static void the_contact_line_names_centre_channel_and_base(void **state)
{
    (void)state;
    base_with("[]", "[]");
    const struct sheet *card = card_with(TORCH, NO_FLARES);
    assert_string_equal(sheet_contact(card)->left, "**Rescue centre Skerry Sound** VHF 16");
    assert_string_equal(sheet_contact(card)->right, "**Base, no emergencies** +999 00 000 000");
    case_base(&test, "tests/fleet/base.yaml");
    assert_string_equal(sheet_contact(card_with(TORCH, NO_FLARES))->left,
                        "**Rescue centre Skerry Sound** +999 00 000 001 · VHF 16");
}

/* ---- gear dates ---- */

static const char *dates_of(const char *torch, const char *flares)
{
    const char *gear = text_format(
        test.arena, "  - {item: torch, tag: C1, zone: saloon%s}\n"
        "  - {item: flares, tag: E1, zone: galley%s}\n"
        "  - {item: liferaft, tag: E2, zone: coachroof, service_due: 2026-12}\n", torch, flares);
    return sheet_footer(card_with(gear, ""))->dates;
}

static void expect_dates(const char *found, const char *date)
{
    const char *line = words_get(test.words, WORD_GEAR_DATES_NONE);
    if (date != NULL)
        line = words_fill(test.words, test.arena, WORD_GEAR_DATES, "date", date, NULL);
    assert_string_equal(found, text_format(test.arena, "%s %s", line,
                                           words_get(test.words, WORD_REPLACE)));
}

/* The raft of this boat is not on this card: its date is not this card's. */
static void the_first_date_of_the_card_s_own_gear_is_printed(void **state)
{
    (void)state;
    expect_dates(dates_of("", ""), NULL);
    expect_dates(dates_of("", ", expires: 2027-08"), "2027-08");
    expect_dates(dates_of(", service_due: 2027-04-30", ", expires: 2027-08"), "2027-04-30");
    expect_dates(dates_of(", service_due: 2027-04", ", expires: 2027-04-29"), "2027-04-29");
    assert_string_equal(dates_of(", service_due: 2029-01, expires: 2028-01", ""),
                        "Gear dates to 2028-01, 1 undated. Replace when anything here moves.");
}

/* A year alone may mean its first day; that day is said. */
static void a_year_alone_is_told_as_its_first_day(void **state)
{
    (void)state;
    expect_dates(dates_of(", service_due: 2027", ", expires: 2027-08"), "2027-01-01");
    expect_dates(dates_of(", service_due: 2028", ", expires: 2027-08"), "2027-08");
}

static void a_computed_date_is_told_like_a_stamped_one(void **state)
{
    (void)state;
    expect_dates(dates_of("", ", made: 2024-08"), "2027-08");
    expect_dates(dates_of(", expires: 2027-07", ", made: 2024-08-15"), "2027-07");
    expect_dates(dates_of(", expires: 2027-09", ", made: 2024-08-15"), "2027-08-15");
    expect_dates(dates_of(", made: 2024-08", ", expires: 2027-08, made: 2020-01"), "2027-08");
}

/* The base says how months are read, and its own months count. */
static void the_base_has_its_say_in_dates(void **state)
{
    (void)state;
    case_base(&test,
              "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n"
              "rescue_centre: {name: Skerry Sound, channel: \"67\"}\n"
              "cruising_area: {latitude: north, longitude: east, sea_area: A1}\n"
              "dates: {month_means: start}\n"
              "intervals: [{item: torch, months: 6}]\n"
              "languages: [en]\napprovals: []\nlines: []\n");
    expect_dates(dates_of("", ", expires: 2027-08"), "2027-08-01");
    expect_dates(dates_of(", serviced: 2026-10-31", ", expires: 2027-08"), "2027-04-30");
}

/* ---- warnings and signs ---- */

static void warnings_follow_the_boat_and_name_a_source_that_stands(void **state)
{
    (void)state;
    static const char logic[] =
        "never:\n"
        "  - {id: below, symbol: phatch, sources: [S5]}\n"
        "  - {id: tied, when: {fitted: liferaft}, sources: [S36]}\n"
        "  - {id: phone, sources: [S8, S14]}\n";
    static const char texts[] =
        "never: {below: go below, tied: leave the raft tied, phone: use a phone}\n";
    const struct sheet *card = card_more(TORCH, NO_FLARES "  - liferaft\n", logic, texts);
    const struct warnings_facts *cautions = sheet_warnings(card, BLOCK_CAUTIONS);
    const struct warnings_facts *nevers = sheet_warnings(card, BLOCK_NEVER);
    assert_int_equal(nevers->count, 2);
    assert_string_equal(nevers->items[0].text, "go below");
    assert_int_equal(nevers->items[0].symbol, SYMBOL_phatch);
    assert_string_equal(nevers->items[1].text, "use a phone");
    /* S8 is superseded: the tag is that of the source that stands */
    assert_string_equal(nevers->items[1].tag, authority_find(test.authorities, "S14")->tag.text);
    assert_int_equal(cautions->count, 1);
    assert_string_equal(cautions->items[0].tag, authority_find(test.authorities, "S5")->tag.text);
    card = card_more(TORCH "  - {item: liferaft, tag: E1, zone: coachroof}\n", NO_FLARES, logic,
                     texts);
    assert_int_equal(sheet_warnings(card, BLOCK_NEVER)->count, 3);
}

static void the_head_names_boat_card_and_signs(void **state)
{
    (void)state;
    const struct sheet *card = card_with(TORCH, NO_FLARES);
    assert_string_equal(sheet_title(card)->title, "SMOKE CARD");
    assert_string_equal(sheet_title(card)->boat, "TAMARISK");
    assert_string_equal(sheet_signs(card)->signs, "Smoke · a bang");
    assert_int_equal(sheet_cases(card)->count, 0);
    assert_false(sheet_block(card, BLOCK_CALL) != NULL);
    assert_string_equal(card->language, "en");
    assert_non_null(strstr(sheet_footer(card)->printed, "2026-11-25"));
}

/* Landmarks of the plan are true of the boat's kind: of two hulls each room is in one of them. */
static void the_plan_names_zones_of_this_kind_of_boat(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml"};
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b]);
        const struct sheet *card = case_card(case_compose(&test, false), "flooding");
        bool bridge_deck = false;
        size_t hull_rooms = 0;
        assert_true(sheet_plan(card)->landmark_count > 2);
        for (size_t i = 0; i < sheet_plan(card)->landmark_count; i++) {
            const struct plan_zone *landmark = &sheet_plan(card)->landmarks[i];
            const struct zone *zone = landmark->zone;
            bool in_hull = b == 1 && zone->in_hulls;
            assert_true(zone->drawn || zone->room);
            assert_int_equal(landmark->yields, !zone->drawn);
            assert_true(b == 1 || !zone->catamaran_only);
            assert_int_equal(landmark->side != SIDE_NONE, in_hull);
            assert_true(!in_hull || zone->side == SIDE_NONE || zone->side == landmark->side);
            hull_rooms += b == 1 && zone->in_hulls ? 1 : 0;
            assert_string_equal(sheet_plan(card)->landmarks[i].name,
                                words_zone(test.words, zone->id));
            bridge_deck = bridge_deck || zone->id == ZONE_bridgedeck;
        }
        assert_int_equal(bridge_deck, b == 1);
        assert_int_equal(hull_rooms > 2, b == 1);
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(an_approval_counts_from_its_date_until_its_last_day),
        TEST(an_approval_is_of_one_text),
        TEST(both_engines_cards_stand_on_one_approval),
        TEST(marks_are_said_in_a_fixed_order),
        TEST(own_lines_stand_on_the_cards_they_name),
        TEST(a_boat_has_lines_of_her_own),
        TEST(a_line_may_be_for_one_engine_only),
        TEST(the_contact_line_names_centre_channel_and_base),
        TEST(the_first_date_of_the_card_s_own_gear_is_printed),
        TEST(a_year_alone_is_told_as_its_first_day),
        TEST(a_computed_date_is_told_like_a_stamped_one),
        TEST(the_base_has_its_say_in_dates),
        TEST(warnings_follow_the_boat_and_name_a_source_that_stands),
        TEST(the_head_names_boat_card_and_signs),
        TEST(the_plan_names_zones_of_this_kind_of_boat),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
