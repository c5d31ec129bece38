/* test_brief.c - the skipper's sheet as a whole: each authority's topics have their line, gear is
 * shown in the order of a walk, the call is the boat's own, and page one stands alone. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "faces_fixture.h"
#include "brief_case.h"
#include "layout.h"
#include "proof.h"

/* ---- topics ---- */

/* What each authority wants people aboard to be told, and words of the line that says so. */
static const struct asked_for { const char *source; enum brief_topic topic; const char *words; }
asked[] = {
    {"N19", TOPIC_DEPUTY, "start, stop, steer; radio; raft; people from the water; flares; lights"},
    {"D9", TOPIC_DEPUTY, "fire gear; a safe port"},
    {"N19", TOPIC_DEPUTY, "What if the skipper cannot go on?"},
    {"N19", TOPIC_JACKETS, "Lifejackets: each puts on each type"},
    {"N15", TOPIC_JACKETS, "Never blown up in a cabin"},
    {"N16", TOPIC_JACKETS, "Children’s by weight"},
    {"N15", TOPIC_LIFESAVING, "All that saves lives, and where the cards hang: Companionway"},
    {"N16", TOPIC_EXITS, "From each berth on deck, where all gather"},
    {"N19", TOPIC_EXITS, "who goes in which raft. Raft places: 8"},
    {"N19", TOPIC_AID, "First-aid kit, torches, flares, horn, throwing line"},
    {"N19", TOPIC_CALL, "Each adult says the call"},
    {"D9", TOPIC_CALL, "reads the position aloud"},
    {"N16", TOPIC_WORN, "When lifejackets are worn. Boom, foredeck, night, falling in"},
    {"N19", TOPIC_DANGERS, "Weight on one side"},
    {"N16", TOPIC_DANGERS, "Dangerous things aboard: gas, petrol, lithium"},
    {"N11", TOPIC_SWIM, "engine off, ladder, count people in, one looks on"},
    {"N18", TOPIC_SWIM, "cord, oars, light"},
    {"D44", TOPIC_ALARMS, "Hear each alarm once"},
    {"N13", TOPIC_HEALTH, "sealed: illness, medicines, allergy, swimming, language, whom to ring"},
    {"N31", TOPIC_ANCHOR, "Anchor shown"},
    {"N24", TOPIC_ANCHOR, "watch at night. Draught: 2.0 m"},
    {"N19", TOPIC_ASHORE, "number, names, route, overdue hour. Base: +999 00 000 000"},
};

static void tamarisk_read(void)
{
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    hire_begin();
}

static enum word topics_title(enum brief_pass pass)
{
    return pass == PASS_EVENING ? WORD_BRIEF_TOPICS_EVENING : WORD_BRIEF_TOPICS_DECK;
}

static bool asks(const struct brief_topic_row *row, const char *source)
{
    for (size_t i = 0; i < TOPIC_SOURCES_MOST && row->sources[i] != NULL; i++)
        if (text_equal(row->sources[i], source))
            return true;
    return false;
}

static void each_topic_of_an_authority_has_its_line(void **state)
{
    (void)state;
    tamarisk_read();
    const struct form_facts *form = brief_form();
    for (size_t i = 0; i < sizeof asked / sizeof *asked; i++) {
        const struct brief_topic_row *row = brief_topic_row(asked[i].topic);
        const struct form_section *section = form_section_of(form, topics_title(row->pass));
        const struct authority *authority = authority_find(test.authorities, asked[i].source);
        assert_non_null(authority);
        assert_true(asks(row, asked[i].source));
        size_t found = 0;
        for (size_t k = 0; k < section->line_count; k++) {
            const char *said = form_line_said(&section->lines[k], section->column_count);
            const char *number = text_format(test.arena, "%zu|",
                                             brief_topic_number(asked[i].topic));
            bool own = strstr(said, number) == said;
            found += own && strstr(said, asked[i].words) != NULL &&
                     strstr(said, authority->tag.text) != NULL;
        }
        if (found != 1)
            fail_msg("%s of %s: %s", asked[i].words, asked[i].source, section_said(section));
    }
}

/* Every topic has one line to tick and to write upon, and each that an authority asks for stands
 * on one that is still in force. */
static void topics_stand_once_and_on_sources_in_force(void **state)
{
    (void)state;
    tamarisk_read();
    const struct form_facts *form = brief_form();
    size_t lines = 0;
    for (enum brief_pass pass = 0; pass < PASS_COUNT; pass++) {
        const struct form_section *section = form_section_of(form, topics_title(pass));
        lines += section->line_count;
        for (size_t i = 0; i < section->line_count; i++) {
            assert_non_null(section->lines[i].cells[2].text);
            assert_non_null(section->lines[i].cells[3].text);
        }
    }
    assert_int_equal(lines, TOPIC_COUNT);
    for (enum brief_topic topic = 0; topic < TOPIC_COUNT; topic++) {
        const struct brief_topic_row *row = brief_topic_row(topic);
        bool current = row->sources[0] == NULL;
        for (size_t i = 0; i < TOPIC_SOURCES_MOST && row->sources[i] != NULL; i++) {
            const struct authority *authority = authority_find(test.authorities,
                                                               row->sources[i]);
            assert_non_null(authority);
            current = current || authority->status.value == SOURCE_CURRENT;
        }
        assert_true(current);
    }
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_TOPICS_EVENING), "superseded"),
                     3);
}

static void what_the_record_lacks_is_asked_for(void **state)
{
    (void)state;
    hire_begin();
    case_boat(&test, "boat: {name: Tern, specimen: yes, hull: monohull, rig: sail, loa_m: 9, "
                     "beam_m: 3, persons_max: 8}\ngas: {carried: no}\n");
    const struct form_facts *form = brief_form();
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_TOPICS_DECK),
                                "Draught: NOT RECORDED: ask the base"), 1);
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_TOPICS_EVENING),
                                "cards hang: NOT RECORDED: ask the base"), 1);
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_TOPICS_EVENING),
                                "Raft places: NOT RECORDED: ask the base"), 1);
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_TOPICS_EVENING),
                                "Gas: none on board"), 1);
}

/* ---- the walk ---- */

/* Each piece that is shown for a topic stands once, below or on deck, from the bow aft. */
static void each_piece_is_passed_once_from_the_bow_aft(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml",
                                        "tests/islands/boats/sundew.yaml"};
    static const enum word walks[] = {WORD_BRIEF_WALK_BELOW, WORD_BRIEF_WALK_DECK};
    for (size_t b = 0; b < sizeof boats / sizeof *boats; b++) {
        hire_begin();
        case_boat(&test, boats[b]);
        const struct form_facts *form = brief_form();
        size_t passed = 0, shown = 0;
        for (size_t w = 0; w < 2; w++) {
            if (b == 2 && w == 0)
                continue;             /* an open boat has no walk below */
            const struct form_section *walk = form_section_of(form, walks[w]);
            int station = 0;
            for (size_t i = 0; i < walk->line_count; i++, passed++) {
                const struct equipment *gear = gear_of_tag(test.boat,
                                                           walk->lines[i].cells[0].text);
                assert_non_null(gear);
                const struct zone *zone = worked_zone(gear);
                assert_true((zone->level == LEVEL_BELOW) == (w == 0));
                assert_true(zone->from + zone->to >= station);
                station = zone->from + zone->to;
            }
        }
        for (size_t i = 0; i < test.boat->equipment_count; i++) {
            bool is_shown = false;
            for (enum brief_topic topic = 0; topic < TOPIC_COUNT; topic++)
                is_shown = is_shown ||
                           brief_topic_shows(topic, test.boat->equipment[i].kind->item);
            shown += is_shown;
        }
        assert_int_equal(passed, shown);
        assert_true(passed > 10);
    }
}

/* ---- the call ---- */

static void the_call_is_hers_and_practice_has_a_position(void **state)
{
    (void)state;
    tamarisk_read();
    const struct form_facts *form = brief_form();
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_IDENTITY),
                                "Name|TAMARISK: TANGO ALFA MIKE ALFA ROMEO INDIA SIERRA KILO"), 1);
    assert_int_equal(lines_with(form_section_of(form, WORD_BRIEF_IDENTITY),
                                "MMSI|200 014 730: TWO ZERO ZERO"), 1);
    const struct form_section *call = form_section_of(form, WORD_BRIEF_CALL);
    assert_string_equal(form_line_said(&call->lines[0], 1), "MAYDAY, MAYDAY, MAYDAY");
    assert_int_equal(lines_with(call, "LAT … DEGREES … MINUTES NORTH"), 1);
    const struct form_section *practice = form_section_of(form, WORD_BRIEF_REHEARSE);
    assert_int_equal(lines_with(practice, "LAT 12 DEGREES 34.56 MINUTES NORTH"), 1);
    assert_int_equal(lines_with(practice, "LONG 123 DEGREES 45.67 MINUTES EAST AT 1030 UTC"), 1);
    assert_int_equal(lines_with(practice, "1430 by the clock aboard (UTC +4) is 1030 UTC."), 1);
    assert_int_equal(practice->start, FORM_NEW_PAGE);
}

static void the_practice_position_lies_where_the_base_sails(void **state)
{
    (void)state;
    tamarisk_read();
    case_base(&test, "tests/islands/base.yaml");
    hire.days = (struct charter){{2027, 3, 20}, {2027, 4, 3}, 0};
    const struct form_section *practice = form_section_of(brief_form(), WORD_BRIEF_REHEARSE);
    assert_int_equal(lines_with(practice, "MINUTES SOUTH"), 1);
    assert_int_equal(lines_with(practice, "MINUTES WEST AT 1530 UTC"), 1);
    assert_int_equal(lines_with(practice, "From 2027-03-20: 1430 by the clock aboard (UTC -1) is "
                                          "1530 UTC."), 1);
    assert_int_equal(lines_with(practice, "From 2027-03-28: 1430 by the clock aboard (UTC 0) is "
                                          "1430 UTC."), 1);
    hire.days = (struct charter){{2027, 10, 25}, {2027, 11, 3}, 0};
    practice = form_section_of(brief_form(), WORD_BRIEF_REHEARSE);
    assert_int_equal(lines_with(practice, "aboard on 2027-11-03 is not recorded"), 1);
}

/* ---- people ---- */

static void a_line_stands_for_each_child(void **state)
{
    (void)state;
    tamarisk_read();
    assert_int_equal(form_section_of(brief_form(), WORD_BRIEF_CHILDREN_BLANKS)->line_count, 1);
    hire.children = 3;
    assert_int_equal(form_section_of(brief_form(), WORD_BRIEF_CHILDREN_BLANKS)->line_count, 3);
}

static void what_was_done_since_is_told_only_where_it_is_asked_for(void **state)
{
    (void)state;
    tamarisk_read();
    const struct form_facts *form = brief_form();
    for (size_t i = 0; i < form->count; i++)
        assert_false(text_equal(form->sections[i].title, word_text(WORD_BRIEF_SINCE_RECORD)));
    hire.since = (struct date){2026, 10, 24};
    assert_int_equal(lines_with(form_section_of(brief_form(), WORD_BRIEF_SINCE_RECORD),
                                "E20|Grab bag: serviced 2026-10-24."), 1);
    hire.since = (struct date){2026, 10, 25};
    assert_int_equal(lines_with(form_section_of(brief_form(), WORD_BRIEF_SINCE_RECORD),
                                "Nothing is recorded."), 1);
}

/* ---- pages ---- */

static const struct laid_sheet *brief_laid(enum paper_key paper)
{
    const struct layout_input input = {brief_set(), faces, paper_of(paper), false};
    struct laid_set *laid = arena_alloc(test.arena, sizeof *laid);
    test.problems = problems_new(test.arena);
    *laid = layout_set(&input, test.arena, test.problems);
    assert_int_equal(laid->count, 1);
    assert_string_equal(case_problems_text(&test), "");
    const struct proof_report *reports = proof_set(laid, faces, test.arena);
    for (size_t i = 0; i < laid->sheets[0].page_count; i++)
        for (size_t k = 0; k < reports[i].count; k++) {
            const struct proof_finding *finding = &reports[i].findings[k];
            if (proof_rule(finding->rule)->severity != PROOF_AIM)
                fail_msg("page %zu, %s: %s", i + 1, proof_rule(finding->rule)->id,
                         finding->measured);
        }
    return &laid->sheets[0];
}

/* The titles of the sections of a page, with bars between. */
static const char *titles_of(const struct laid_sheet *laid, size_t page)
{
    const struct form_facts *form = sheet_form(laid->pages[page]->sheet);
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < form->count; i++)
        text_add_format(&out, "%s|", form->sections[i].title);
    return out.at;
}

#define PAGE_ONE "SHOWSTOPPERS|WHO CALLS|MAYDAY, VHF 16, word by word|WHO DOES WHAT|"

static void page_one_stands_alone_and_all_pages_pass_proofreading(void **state)
{
    (void)state;
    static const char *const boats[] = {
        "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/samphire.yaml",
        "tests/fleet/boats/bramble.yaml", "tests/islands/boats/thrift.yaml",
        "tests/islands/boats/sundew.yaml", "tests/islands/boats/eelgrass.yaml",
        "tests/unusual/boats/albatross.yaml", "tests/unusual/boats/bare.yaml",
        "tests/unusual/boats/laden.yaml", "tests/unusual/boats/skua.yaml",
        "tests/unusual/boats/unknown.yaml", "tests/unusual/boats/teasel.yaml"};
    static const enum paper_key papers[] = {PAPER_A4, PAPER_LETTER};
    for (size_t b = 0; b < sizeof boats / sizeof *boats; b++)
        for (size_t p = 0; p < 2; p++) {
            hire_begin();
            case_boat(&test, boats[b]);
            assert_string_equal(titles_of(brief_laid(papers[p]), 0), PAGE_ONE);
        }
}

/* More showstoppers than page one has room for: the gravest stay, the others are counted there and
 * stand on the page behind, none twice. */
static void what_page_one_cannot_hold_goes_on_behind_it(void **state)
{
    (void)state;
    struct text_builder gear = text_builder_in(test.arena);
    for (int i = 1; i <= 16; i++)
        text_add_format(&gear, "  - {item: smoke_alarm, tag: F%d, zone: saloon, spot: place %d}\n",
                        i, i);
    hire_begin();
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear.at, "  - liferaft\n  - lifejacket\n"));
    const size_t whole = form_section_of(brief_form(), WORD_BRIEF_STOPPERS)->line_count;
    const struct laid_sheet *laid = brief_laid(PAPER_A4);
    assert_string_equal(titles_of(laid, 0), PAGE_ONE);
    const char *behind = titles_of(laid, 1);
    assert_ptr_equal(strstr(behind, "SHOWSTOPPERS|WHAT DIFFERS HERE|"), behind);
    const struct form_section *first = form_section_of(sheet_form(laid->pages[0]->sheet),
                                                       WORD_BRIEF_STOPPERS);
    const struct form_section *second = form_section_of(sheet_form(laid->pages[1]->sheet),
                                                        WORD_BRIEF_STOPPERS);
    assert_int_equal(first->line_count - 1 + second->line_count, whole);
    assert_int_equal(lines_with(first, "DO NOT SAIL"), 1);
    assert_int_equal(lines_with(first, "No raft on board"), 1);
    assert_int_equal(lines_with(first, text_format(test.arena, "%zu more on the next sheet",
                                                   second->line_count)), 1);
    assert_int_equal(lines_with(first, "Smoke alarm: date not recorded") +
                     lines_with(second, "Smoke alarm: date not recorded"), 16);
    assert_true(second->line_count >= 10);
}

/* The gravest stay on page one: where even they have no room there is no sheet. */
static void a_page_too_small_for_the_gravest_is_told(void **state)
{
    (void)state;
    tamarisk_read();
    hire.days = (struct charter){{2029, 5, 1}, {2029, 5, 8}, 0};
    const struct layout_input input = {brief_set(), faces, paper_of(PAPER_A5), false};
    test.problems = problems_new(test.arena);
    const struct laid_set laid = layout_set(&input, test.arena, test.problems);
    assert_null(laid.sheets[0].pages[0]);
    assert_non_null(strstr(case_problems_text(&test), "what must stand on one page is "));
    assert_non_null(strstr(case_problems_text(&test), "take larger paper"));
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_topic_of_an_authority_has_its_line),
        TEST(topics_stand_once_and_on_sources_in_force),
        TEST(what_the_record_lacks_is_asked_for),
        TEST(each_piece_is_passed_once_from_the_bow_aft),
        TEST(the_call_is_hers_and_practice_has_a_position),
        TEST(the_practice_position_lies_where_the_base_sails),
        TEST(a_line_stands_for_each_child),
        TEST(what_was_done_since_is_told_only_where_it_is_asked_for),
        TEST(page_one_stands_alone_and_all_pages_pass_proofreading),
        TEST(what_page_one_cannot_hold_goes_on_behind_it),
        TEST(a_page_too_small_for_the_gravest_is_told),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
