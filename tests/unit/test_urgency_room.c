/* test_urgency_room.c - where a card has no room for the words of two calls, those of the milder
 * one yield: the exit that leads to it names the card that has them, the graver call stays. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "proof.h"
#include "text.h"

static const struct sheet_set *set_of(const char *base, const char *boat)
{
    case_base(&test, text_format(test.arena, "tests/%s/base.yaml", base));
    case_boat(&test, text_format(test.arena, "tests/%s/boats/%s.yaml", base, boat));
    return case_compose(&test, false);
}

static const char *said_by(const struct script *script)
{
    return script_text(script, test.arena);
}

static size_t times_told(const char *words)
{
    size_t count, times = 0;
    const struct problem *all = problems_sorted(test.problems, &count);
    for (size_t i = 0; i < count; i++)
        times += strstr(all[i].what, words) != NULL;
    return times;
}

/* ---- what is composed ---- */

/* What both calls say alike belongs to the graver one too. */
static void the_graver_call_alone_is_all_of_its_own(void **state)
{
    (void)state;
    static const struct { const char *base, *boat, *card; } cases[] = {
        {"fleet", "samphire", "flooding"}, {"hazard", "galangal", "gas_leak"}};
    for (size_t i = 0; i < 2; i++) {
        const struct sheet *card = case_card(set_of(cases[i].base, cases[i].boat), cases[i].card);
        const struct call_facts *call = sheet_call(card);
        assert_non_null(call->lesser);
        assert_non_null(strstr(said_by(call->script), "PAN PAN, PAN PAN, PAN PAN"));
        assert_null(strstr(said_by(call->lesser), "PAN PAN"));
        assert_non_null(strstr(said_by(call->lesser), "MAYDAY, MAYDAY, MAYDAY"));
        assert_non_null(strstr(said_by(call->lesser), "I REQUIRE IMMEDIATE ASSISTANCE."));
        assert_non_null(strstr(said_by(call->lesser), "PERSONS ON BOARD"));
        assert_non_null(strstr(said_by(call->lesser), "OVER"));
        assert_string_equal(sheet_decision(card)->no_lesser,
                            text_format(test.arena, "%s **PAN PAN: card 2.**",
                                        sheet_decision(card)->no));
    }
}

static void a_card_of_one_call_has_nothing_that_yields_so(void **state)
{
    (void)state;
    static const char *const cards[] = {"engine_fire_port", "galley_fire", "cabin_fire",
                                        "diesel_leak_port", "man_overboard"};
    const struct sheet_set *set = set_of("fleet", "samphire");
    for (size_t i = 0; i < sizeof cards / sizeof *cards; i++) {
        const struct sheet *card = case_card(set, cards[i]);
        assert_non_null(card);
        assert_null(sheet_call(card)->lesser);
        assert_null(sheet_decision(card)->no_lesser);
    }
}

/* ---- on the page ---- */

static void judged_good(const struct laid_set *laid)
{
    const struct proof_report *reports = proof_set(laid, faces, test.arena);
    size_t at = 0;
    for (size_t i = 0; i < laid->count; i++)
        for (size_t p = 0; p < laid->sheets[i].page_count; p++, at++)
            assert_int_equal(reports[at].errors, 0);
}

static const struct laid_sheet *laid_card(const struct laid_set *laid, const char *id)
{
    for (size_t i = 0; i < laid->count; i++)
        if (text_equal(laid->sheets[i].sheet->id, id))
            return &laid->sheets[i];
    return NULL;
}

/* A card on one side whose milder call has yielded, and one that has room for both. */
static void it_yields_where_there_is_no_room(void **state)
{
    (void)state;
    static const struct { const char *base, *boat; bool yields; } cases[] = {
        {"fleet", "samphire", true}, {"islands", "eelgrass", true}, {"fleet", "bramble", false}};
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        const struct sheet_set *set = set_of(cases[i].base, cases[i].boat);
        struct layout_input input = {set, faces, paper_of(PAPER_A4), false};
        struct laid_set laid = layout_set(&input, test.arena, test.problems);
        const struct laid_sheet *card = laid_card(&laid, "flooding");
        assert_int_equal(card->page_count, 1);
        const struct sheet *page = card->pages[0]->sheet;
        const char *said = said_by(sheet_call(page)->script);
        assert_non_null(strstr(said, "MAYDAY, MAYDAY, MAYDAY"));
        assert_int_equal(strstr(said, "PAN PAN") == NULL, cases[i].yields);
        assert_int_equal(strstr(sheet_decision(page)->no, "PAN PAN: card 2.") != NULL,
                         cases[i].yields);
        judged_good(&laid);
        test.problems = problems_new(test.arena);
        room_notes(&laid, test.arena, test.problems);
        assert_int_equal(times_told("the words of PAN PAN find no room on the card 7"),
                         cases[i].yields ? 1 : 0);
    }
}

/* Is the milder call said, and does the exit name another card for it? */
struct found { bool said, named; };

static struct found found_on(const struct laid_sheet *card)
{
    struct found found = {false, false};
    for (size_t p = 0; p < card->page_count; p++) {
        const struct sheet *page = card->pages[p]->sheet;
        if (sheet_block(page, BLOCK_CALL) != NULL)
            found.said = strstr(said_by(sheet_call(page)->script), "PAN PAN") != NULL;
        if (sheet_block(page, BLOCK_DECISION) != NULL)
            found.named = strstr(sheet_decision(page)->no, "PAN PAN: card 2.") != NULL;
    }
    return found;
}

/* On paper of two sides the exit and the call may be on different pages: the exit follows the
 * call, so that it never names a card for words that stand beside it, nor none for words that do
 * not. A card that has no room at all is not made. */
static void the_exit_follows_the_call_on_every_paper(void **state)
{
    (void)state;
    static const char *const boats[] = {"samphire", "tamarisk", "bramble"};
    size_t said = 0, named = 0;
    for (size_t i = 0; i < 3 * 3; i++) {
        const struct sheet_set *set = set_of("fleet", boats[i / 3]);
        struct layout_input input = {set, faces, paper_of(PAPER_A4 + i % 3), false};
        struct laid_set laid = layout_set(&input, test.arena, test.problems);
        const struct laid_sheet *card = laid_card(&laid, "flooding");
        test.problems = problems_new(test.arena);
        if (card->pages[0] == NULL)
            continue;
        struct found found = found_on(card);
        assert_int_equal(found.said, !found.named);
        said += found.said;
        named += found.named;
    }
    assert_true(said >= 3 && named >= 1);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_graver_call_alone_is_all_of_its_own),
        TEST(a_card_of_one_call_has_nothing_that_yields_so),
        TEST(it_yields_where_there_is_no_room),
        TEST(the_exit_follows_the_call_on_every_paper),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
