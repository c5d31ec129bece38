/* test_safety_kinds.c - safety plans of boats of every kind, with gear in each of their zones: the
 * proofreader finds nothing, and the plan is turned as its reader looks. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "faces_fixture.h"
#include "proof.h"
#include "text.h"

#define TORCH_LINE "  - {item: torch, tag: C1, zone: saloon, side: port}\n"

static const struct page *const *pages;
static size_t page_count;

/* Only the safety plan, whatever the other cards lack. */
static void lay_out(const char *boat)
{
    case_boat(&test, boat);
    const struct sheet *plan = case_card(case_compose(&test, false), "safety_plan");
    struct sheet_set only = {.sheets = &plan, .count = 1};
    test.problems = problems_new(test.arena);
    struct layout_input input = {&only, faces, paper_of(PAPER_A4), false};
    struct laid_set laid = layout_set(&input, test.arena, test.problems);
    pages = case_pages(&test, &laid).at;
    page_count = case_pages(&test, &laid).count;
}

/* All words of a block of the first page, with single spaces. */
static void must_say(enum block_key block, const char *words)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < pages[0]->count; i++)
        if (pages[0]->items[i].kind == PAGE_TEXT && pages[0]->items[i].block == block)
            text_add_format(&out, "%s ", pages[0]->items[i].run->text);
    if (out.at == NULL || strstr(out.at, words) == NULL)
        fail_msg("`%s` does not stand in `%s`", words, out.at == NULL ? "" : out.at);
}

/* Gear in every zone that she may have, to port, to starboard, on both sides and amidships. */
static const char *gear_everywhere(enum hull hull)
{
    static const char *const sides[] = {"port", "starboard", "both", "centre"};
    struct text_builder gear = text_builder_in(test.arena);
    size_t tag = 0;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        for (size_t s = 0; s < 4; s++) {
            bool sided = zone->side != SIDE_NONE;
            bool which = hull == HULL_CATAMARAN && (zone->in_hulls || key == ZONE_engine_space) &&
                         s >= (zone->in_hulls ? 3 : 2);
            if (!hull_has_zone(hull, zone) || (sided && s > 0) || which)
                continue;
            tag++;
            text_add_format(&gear, "  - {item: %s%zu, zone: %s%s%s, spot: hook %zu}\n",
                            tag % 2 == 0 ? "torch, tag: C" : "knife, tag: E", tag / 2 + 10,
                            zone_word(key), sided ? "" : ", side: ",
                            sided ? "" : sides[s], tag);
        }
    }
    return gear.at;
}

static void kind_lay_out(enum hull hull, const char *rig, const char *faces_to,
                         const char *gear)
{
    lay_out(text_format(test.arena,
                        "boat: {name: Tamarisk, specimen: yes, hull: %s, rig: %s, loa_m: 12, "
                        "beam_m: 5, persons_max: 8, mounted: {zone: cockpit, faces: %s}}\n"
                        CASE_RADIO "equipment:\n%s", choice_word(hull_words, hull), rig, faces_to,
                        gear));
}

/* What the proofreader finds on the plan itself. */
static void plan_is_sound(const struct page *page)
{
    struct proof_report report;
    proof_page(page, faces, test.arena, &report);
    for (size_t i = 0; i < report.count; i++)
        if (proof_rule(report.findings[i].rule)->severity == PROOF_ERROR)
            fail_msg("%s: %s: %s", page->id, proof_rule(report.findings[i].rule)->sentence,
                     report.findings[i].measured);
}

static void every_kind_of_boat_has_a_sound_plan(void **state)
{
    static const enum hull hulls[] = {HULL_MONOHULL, HULL_CATAMARAN, HULL_TRIMARAN};
    static const char *const rigs[] = {"sail", "motor"}, *const ways[] = {"bow", "stern"};
    (void)state;
    for (size_t h = 0; h < 3; h++)
        for (size_t r = 0; r < 2; r++)
            for (size_t w = 0; w < 2; w++) {
                kind_lay_out(hulls[h], rigs[r], ways[w], gear_everywhere(hulls[h]));
                assert_true(page_count > 2);
                for (size_t p = 0; p < page_count; p++) {
                    if (pages[p] == NULL)
                        fail_msg("%s", case_problems_text(&test));
                    plan_is_sound(pages[p]);
                }
            }
}

/* The words over the boat: the hand stands behind its side. */
static const char *head_text(const struct page *page)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < page->count; i++)
        if (page->items[i].kind == PAGE_TEXT && page->items[i].block == BLOCK_PLAN &&
            page->items[i].role == ROLE_ROW)
            text_add_format(&out, "%s ", page->items[i].run->text);
    return out.at;
}

static void the_plan_is_turned_to_who_faces_aft(void **state)
{
    (void)state;
    kind_lay_out(HULL_MONOHULL, "sail", "bow", TORCH_LINE);
    assert_string_equal(head_text(pages[0]), "PORT left BOW STARB’D right ");
    kind_lay_out(HULL_MONOHULL, "sail", "starboard", TORCH_LINE);
    assert_string_equal(head_text(pages[0]), "PORT left BOW STARB’D right ");
    kind_lay_out(HULL_MONOHULL, "sail", "stern", TORCH_LINE);
    assert_string_equal(head_text(pages[0]), "STARB’D left STERN PORT right ");
    must_say(BLOCK_LEGEND, "facing the stern");
}

/* Names of 34 letters and long spots have lines of their own, at no smaller size. */
static void long_names_have_lines_of_their_own(void **state)
{
    (void)state;
    kind_lay_out(HULL_MONOHULL, "sail", "bow",
                 "  - {item: torch, tag: C1, zone: saloon, side: port, "
                 "name: \"Long-winded name of a piece, to 34\", "
                 "spot: under the mattress at the foot end}\n");
    must_say(BLOCK_LABELS, "Long-winded name of a piece, to 34 under the mattress at the foot end");
    for (size_t i = 0; i < pages[0]->count; i++)
        if (pages[0]->items[i].kind == PAGE_TEXT && pages[0]->items[i].block == BLOCK_LABELS)
            assert_true(pages[0]->items[i].run->size >= 12000);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_kind_of_boat_has_a_sound_plan),
        TEST(the_plan_is_turned_to_who_faces_aft),
        TEST(long_names_have_lines_of_their_own),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
