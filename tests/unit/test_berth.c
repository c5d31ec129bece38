/* test_berth.c - the line under the signs: what people do in a berth and at anchor, whom they
 * ring, and its room on the page. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "app_case.h"
#include "faces_fixture.h"
#include "text.h"

#define BASE_OF(ashore, phone) \
    "base: {name: Base, specimen: yes, phone_24h: \"+999 00 000 000\"}\n" \
    "rescue_centre: {name: Skerry Sound, channel: \"67\"" phone "}\n" \
    "cruising_area: {latitude: north, longitude: east, sea_area: A1}\n" ashore

static const char *of_card(const struct sheet *card, enum block_key block)
{
    return sheet_text(card, block)->text;
}

/* The problem that begins so; NULL: none does. */
static const struct problem *told_of(const char *start, size_t *times)
{
    const struct problem *found = NULL;
    size_t count;
    const struct problem *all = problems_sorted(test.problems, &count);
    *times = 0;
    for (size_t i = 0; i < count; i++)
        if (text_begins(all[i].what, start)) {
            found = &all[i];
            (*times)++;
        }
    return found;
}

/* The card of a specimen boat with that base; NULL: her own. */
static const struct sheet *card_of(const char *base, const char *boat, const char *key)
{
    case_base(&test, base);
    case_boat(&test, boat);
    return case_card(case_compose(&test, false), key);
}

/* ---- in a berth ---- */

static void each_danger_of_a_berth_sends_people_ashore(void **state)
{
    (void)state;
    static const struct { const char *card, *says; } cases[] = {
        {"engine_fire", "**IN A BERTH? GO ASHORE. PHONE 112: FIRE.**"},
        {"galley_fire", "**IN A BERTH? GO ASHORE. PHONE 112: FIRE.**"},
        {"cabin_fire", "**IN A BERTH? GO ASHORE. PHONE 112: FIRE.**"},
        {"battery_fire", "**IN A BERTH? GO ASHORE,** far away. **PHONE 112: FIRE.**"},
        {"gas_leak", "**IN A BERTH? GO ASHORE.** Far off **PHONE 112: GAS.**"},
        {"flooding", "**IN A BERTH? GO ASHORE. Pumps stay on. PHONE +44 20 7946 0001.**"}};
    case_base(&test, "base: {name: Quay, phone_24h: \"+44 20 7946 0000\"}\n"
                     "rescue_centre: {name: Sound, channel: \"67\", phone: \"+44 20 7946 0001\"}\n"
                     "cruising_area: {latitude: north, longitude: east, sea_area: A1}\n"
                     "ashore: {fire_phone: \"112\"}\n");
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        assert_string_equal(of_card(case_card(set, cases[i].card), BLOCK_BERTH), cases[i].says);
    static const char *const at_sea[] = {"man_overboard", "abandon_ship", "abandon_fire",
                                         "diesel_leak", "distress_call", "safety_plan"};
    for (size_t i = 0; i < sizeof at_sea / sizeof at_sea[0]; i++)
        for (enum block_key key = BLOCK_BERTH; key <= BLOCK_BERTH_SAY; key++)
            assert_null(sheet_block(case_card(set, at_sea[i]), key));
}

/* The boat may lie elsewhere than in her own berth. */
static void the_berth_of_the_base_is_told_as_hers_alone(void **state)
{
    (void)state;
    static const struct { const char *base, *says; } cases[] = {
        {BASE_OF("ashore: {fire_phone: \"+999 02\"}\n", ""),
         "**ASHORE:** say marina and berth. Warn the neighbours."},
        {BASE_OF("ashore: {fire_phone: \"+999 02\", marina: Lee Quay}\n", ""),
         "**ASHORE:** say marina and berth (home: Lee Quay). Warn the neighbours."},
        {BASE_OF("ashore: {fire_phone: \"+999 02\", marina: Lee Quay, berth: C}\n", ""),
         "**ASHORE:** say marina and berth (home: Lee Quay, C). Warn the neighbours."}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++)
        assert_string_equal(of_card(card_of(cases[i].base, "tests/fleet/boats/tamarisk.yaml",
                                            "engine_fire"), BLOCK_BERTH_SAY), cases[i].says);
}

/* A rescue centre without a number is rung by that of the land. */
static void no_number_is_made_up(void **state)
{
    (void)state;
    const struct sheet *card = card_of(BASE_OF("ashore: {fire_phone: \"+999 02\"}\n", ""),
                                       "tests/fleet/boats/tamarisk.yaml", "flooding");
    assert_non_null(strstr(of_card(card, BLOCK_BERTH), "PHONE +999 02."));
    card = card_of(BASE_OF("", ", phone: \"+999 00 000 001\""),
                   "tests/fleet/boats/tamarisk.yaml", "flooding");
    assert_false(card->held);
    card = card_of(BASE_OF("", ""), "tests/fleet/boats/tamarisk.yaml", "flooding");
    assert_true(card->held);
    const struct sheet_set *set = case_compose(&test, false);
    assert_true(case_card(set, "engine_fire")->held);
    assert_true(case_card(set, "gas_leak")->held);
    assert_false(case_card(set, "man_overboard")->held);
    size_t times;
    const struct problem *told = told_of("fire_phone is not recorded: it holds back", &times);
    assert_non_null(told);
    assert_int_equal(times, 1);    /* once, though many cards wait for it */
    assert_int_equal(told->severity, SEVERITY_HELD);
    assert_non_null(strstr(told->remedy, "fire_phone: (as it is dialled there)"));
    card = case_card(case_compose(&test, true), "engine_fire");
    assert_non_null(strstr(of_card(card, BLOCK_BERTH), "NOT RECORDED: FIRE."));
    assert_non_null(strstr(of_card(card, BLOCK_MARK), words_get(test.words, WORD_MARK_DRAFT)));
}

/* ---- at anchor ---- */

#define JACKETS(tag, where) "  - {item: lifejacket, tag: " tag ", zone: " where ", count: 8}\n"
#define HANDHELD "  - {item: vhf_handheld, tag: E2, zone: cockpit, in_charger: no}\n"
#define DINGHY(facts) "  - {item: dinghy, tag: E3, zone: foredeck" facts "}\n"
#define RAFT(where) "  - {item: liferaft, tag: E4, zone: " where ", persons: 8}\n"
#define ROW "**AT ANCHOR? DINGHY: ROW ACROSS the wind, clear.** Jackets on."
#define STAY "**AT ANCHOR? STAY UPWIND ON DECK.**"
#define STAY_RAFT STAY " Raft ready."

/* A boat of 8 people. Only where it is known that nobody is left behind, nobody goes below for a
 * jacket and nobody into the water without one is the dinghy named; and nothing that is below. */
static void a_dinghy_is_named_where_it_holds_all(void **state)
{
    (void)state;
    static const struct { const char *gear, *fire, *gas; } cases[] = {
        {JACKETS("E1", "cockpit") HANDHELD DINGHY(", persons: 8") RAFT("coachroof"),
         ROW " Take handheld.", ROW " Take handheld."},
        {JACKETS("E1", "cockpit") DINGHY(", persons: 8") RAFT("coachroof"), ROW, ROW},
        {JACKETS("E1", "cockpit") DINGHY(", persons: 7") RAFT("coachroof"), STAY_RAFT, STAY},
        {JACKETS("E1", "cockpit") DINGHY("") RAFT("coachroof"), STAY_RAFT, STAY},
        {JACKETS("E1", "saloon") DINGHY(", persons: 8") RAFT("coachroof"), STAY_RAFT, STAY},
        {JACKETS("E1", "cockpit") JACKETS("E5", "saloon") DINGHY(", persons: 8"), STAY, STAY},
        {DINGHY(", persons: 8"), STAY, STAY},
        {JACKETS("E1", "cockpit") DINGHY(", persons: 8, from_cockpit: no"), STAY, STAY},
        {JACKETS("E1", "cockpit") RAFT("saloon"), STAY, STAY},
        {"", STAY, STAY}};
    case_base(&test, "tests/fleet/base.yaml");
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        case_boat(&test, case_boat_text(&test, CASE_RADIO, cases[i].gear, ""));
        const struct sheet_set *set = case_compose(&test, true);
        assert_string_equal(of_card(case_card(set, "cabin_fire"), BLOCK_ANCHOR), cases[i].fire);
        assert_string_equal(of_card(case_card(set, "gas_leak"), BLOCK_ANCHOR), cases[i].gas);
        assert_null(sheet_block(case_card(set, "flooding"), BLOCK_ANCHOR));
    }
}

/* ---- on the page ---- */

static const struct page_item *first_of(const struct page *page, enum block_key block)
{
    for (size_t i = 0; page != NULL && i < page->count; i++)
        if (page->items[i].block == block && page->items[i].kind == PAGE_TEXT)
            return &page->items[i];
    return NULL;
}

static struct laid_set laid_on(enum paper_key paper, const struct sheet_set *set)
{
    struct layout_input input = {set, faces, paper_of(paper), false};
    return layout_set(&input, test.arena, test.problems);
}

/* Under the signs, over the bar, at one place on all cards that have it, in type as large as that
 * of the signs may be. */
static void it_stands_between_signs_and_bar(void **state)
{
    (void)state;
    case_base(&test, "tests/fleet/base.yaml");
    case_boat(&test, "tests/fleet/boats/bramble.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    struct laid_set laid = laid_on(PAPER_A4, set);
    mpt top = 0;
    size_t lines = 0;
    for (size_t i = 0; i < laid.count; i++) {
        const struct page *page = laid.sheets[i].pages[0];
        const struct page_item *berth = first_of(page, BLOCK_BERTH);
        assert_int_equal(berth != NULL, sheet_block(set->sheets[i], BLOCK_BERTH) != NULL);
        if (berth == NULL)
            continue;
        lines++;
        top = lines == 1 ? berth->area.y : top;
        assert_int_equal(berth->area.y, top);
        assert_true(first_of(page, BLOCK_SIGNS)->area.y < berth->area.y);
        assert_true(first_of(page, BLOCK_CALL_LINE)->area.y >
                    berth->area.y + berth->area.height);
    }
    assert_true(lines >= 6);
}

/* What those ashore say goes where one card has no room, and from all cards then; what to do
 * stands on each. */
static void what_to_say_yields_on_all_cards_or_none(void **state)
{
    (void)state;
    static const struct { const char *boat; bool said; } cases[] = {
        {"tests/fleet/boats/bramble.yaml", true}, {"tests/fleet/boats/samphire.yaml", false}};
    case_base(&test, "tests/fleet/base.yaml");
    for (size_t i = 0; i < 2; i++) {
        case_boat(&test, cases[i].boat);
        const struct sheet_set *set = case_compose(&test, false);
        struct laid_set laid = laid_on(PAPER_A4, set);
        for (size_t s = 0; s < laid.count; s++) {
            bool has = sheet_block(set->sheets[s], BLOCK_BERTH) != NULL;
            const struct page *page = laid.sheets[s].pages[0];
            assert_int_equal(first_of(page, BLOCK_BERTH) != NULL, has);
            assert_int_equal(first_of(page, BLOCK_BERTH_SAY) != NULL, has && cases[i].said);
        }
        test.problems = problems_new(test.arena);
        room_notes(&laid, test.arena, test.problems);
        size_t times;
        told_of("what to say from a berth finds no room", &times);
        assert_int_equal(times, cases[i].said ? 0 : 1);
    }
}

/* The lines of the head are as large as they may be where all cards have room; else they go to
 * their floors before the call of a card goes to a second side. */
static void lines_of_the_head_shrink_before_a_call_goes_behind(void **state)
{
    (void)state;
    static const struct { const char *boat; bool large; } cases[] = {
        {"tests/islands/boats/sundew.yaml", true}, {"tests/islands/boats/thrift.yaml", false}};
    case_base(&test, text_format(test.arena, "%s" CORE_ALONE,
                                 case_file_content(test.arena, "tests/islands/base.yaml")));
    for (size_t i = 0; i < 2; i++) {
        case_boat(&test, cases[i].boat);
        const struct sheet_set *set = case_compose(&test, false);
        struct laid_set laid = laid_on(PAPER_A4, set);
        size_t lines = 0;
        for (size_t s = 0; s < laid.count; s++) {
            const struct page_item *berth = first_of(laid.sheets[s].pages[0], BLOCK_BERTH);
            if (berth == NULL)
                continue;
            lines++;
            assert_int_equal(laid.sheets[s].page_count, 1);
            assert_int_equal(berth->run->size > size_rule(paper_of(PAPER_A4), ROLE_BERTH).floor,
                             cases[i].large);
        }
        assert_true(lines >= 3);
    }
}

/* On narrow paper each text has lines of its own, and none is lost. */
static void on_narrow_paper_each_text_has_lines_of_its_own(void **state)
{
    (void)state;
    case_base(&test, "tests/fleet/base.yaml");
    case_boat(&test, "tests/fleet/boats/bramble.yaml");
    const struct sheet_set *set = case_compose(&test, false);
    struct laid_set laid = laid_on(PAPER_A5, set);
    size_t fronts = 0;
    for (size_t i = 0; i < laid.count; i++) {
        const struct page *front = laid.sheets[i].pages[0];
        const struct page_item *berth = first_of(front, BLOCK_BERTH);
        const struct page_item *anchor = first_of(front, BLOCK_ANCHOR);
        if (berth == NULL || anchor == NULL)
            continue;
        fronts++;
        assert_true(anchor->area.y >= berth->area.y + berth->area.height);
        for (size_t p = 1; p < laid.sheets[i].page_count; p++)
            assert_null(first_of(laid.sheets[i].pages[p], BLOCK_BERTH));
    }
    assert_true(fronts >= 3);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_danger_of_a_berth_sends_people_ashore),
        TEST(the_berth_of_the_base_is_told_as_hers_alone),
        TEST(no_number_is_made_up),
        TEST(a_dinghy_is_named_where_it_holds_all),
        TEST(it_stands_between_signs_and_bar),
        TEST(what_to_say_yields_on_all_cards_or_none),
        TEST(lines_of_the_head_shrink_before_a_call_goes_behind),
        TEST(on_narrow_paper_each_text_has_lines_of_its_own),
    };
    int failed = cmocka_run_group_tests_name("berth", tests, NULL, NULL);
    return failed != 0;
}
