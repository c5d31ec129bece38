/* test_safety_plan.c - the composed safety plan: every piece of gear, by places;
 * where the cards hang; what the set stands on. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "compose/compose_room.h"
#include "text.h"

static const struct sheet_set *set;

static const struct sheet *plan_of(const char *gear, const char *not_fitted)
{
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, not_fitted));
    set = case_compose(&test, false);
    return case_card(set, "safety_plan");
}

static const struct plan_place *place_titled(const struct sheet *card, const char *title)
{
    const struct places_facts *places = sheet_places(card);
    for (size_t i = 0; i < places->count; i++)
        if (strcmp(places->places[i].title, title) == 0)
            return &places->places[i];
    fail_msg("no place is called %s", title);
    return NULL;
}

/* "[C1] Torch, hook; ..." of a place; where the cards hang has no tag. */
static const char *rows_text(const struct plan_place *place)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t r = 0; r < place->row_count; r++) {
        const struct plan_row *row = &place->rows[r];
        text_add(&out, r == 0 ? "" : "; ");
        if (row->kind != NULL)
            text_add_format(&out, "[%s] ", row->marker.tag);
        text_add_format(&out, "%s%s%s", row->name, row->detail[0] == '\0' ? "" : ", ",
                        row->detail);
    }
    return out.at;
}

/* ---- lines ---- */

#define COCK(tag, name, more) \
    "  - {item: seacock, tag: " tag ", name: " name ", zone: galley, side: port" more "}\n"
#define TORCH(tag, more) "  - {item: torch, tag: " tag ", zone: saloon" more "}\n"

static void gear_of_one_place_stands_together_by_class(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of(TORCH("C3", ", spot: hook")
                    TORCH("C1", "") "  - {item: lifejacket, tag: E2, zone: saloon, count: 4}\n"
                                    "  - {item: fire_blanket, tag: F9, zone: saloon}\n",
                "");
    assert_string_equal(rows_text(place_titled(card, "Saloon")),
                        "[F9] Fire blanket; [E2] 4 lifejackets; [C1] Torch; [C3] Torch, hook");
}

static void each_line_tells_its_piece_from_the_others(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of("  - {item: fire_extinguisher, tag: F1, zone: saloon, spot: door, kg: 1}\n"
                "  - {item: fire_extinguisher, tag: F2, zone: saloon, spot: seat, kg: 2}\n" TORCH(
                    "C1", ", spot: hook, count: 2"),
                "");
    assert_string_equal(rows_text(place_titled(card, "Saloon")),
                        "[F1] Extinguisher, 1 kg, door; [F2] Extinguisher, 2 kg, seat; "
                        "[C1] 2 torches, hook");
}

/* Two levers side by side: a crew must not take the wrong engine's. */
static void gear_of_one_engine_of_two_says_which(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/samphire.yaml");
    set = case_compose(&test, false);
    const struct plan_place *cockpit = place_titled(case_card(set, "safety_plan"),
                                                    "Cockpit, STARBOARD");
    assert_non_null(strstr(rows_text(cockpit), "[C1] Engine stop, helm, port engine; "
                                               "[C2] Engine stop, helm, starboard engine"));
}

static void seacocks_say_what_they_are_for(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of(COCK("C5", "sink drain", "") COCK("C3", "inlet", "")
                    COCK("C4", "inlet", ", spot: aft") COCK("C9", "log", ", valve: no"),
                "");
    assert_string_equal(rows_text(place_titled(card, "Galley, PORT")),
                        "[C3] Seacock, inlet; [C4] Seacock, inlet, aft; "
                        "[C5] Seacock, sink drain; [C9] Seacock, log: no valve");
}

/* The two sides of a zone are two places; what was measured stands in its order along her. */
static void places_are_parted_by_side(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of("  - {item: torch, tag: C1, zone: saloon, side: port}\n"
                "  - {item: torch, tag: C2, zone: saloon, side: starboard}\n"
                "  - {item: torch, tag: C3, zone: saloon, side: port, spot: hook, "
                "at: [5.0, -1.2]}\n",
                "");
    const struct places_facts *safety = sheet_places(card);
    assert_int_equal(safety->count, 3); /* and the radio */
    assert_string_equal(safety->places[0].title, "Saloon, PORT");
    assert_string_equal(safety->places[0].zone_name, "Saloon");
    assert_string_equal(rows_text(&safety->places[0]), "[C3] Torch, hook; [C1] Torch");
    assert_true(safety->places[0].rows[0].marker.exact);
    assert_string_equal(rows_text(&safety->places[1]), "[C2] Torch");
    assert_string_equal(rows_text(&safety->places[2]), "[E9] Radio, over the table");
}

/* A zone lies where its gear was measured, before where most boats have it. */
static void a_zone_counts_where_it_was_measured(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of("  - {item: torch, tag: C1, zone: saloon}\n"
                "  - {item: knife, tag: E1, zone: galley, side: port, at: [3.0, -1.0]}\n"
                "  - {item: knife, tag: E2, zone: galley, side: starboard, spot: drawer}\n",
                "");
    const struct places_facts *safety = sheet_places(card);
    assert_string_equal(safety->places[0].title, "Galley, PORT");
    assert_string_equal(safety->places[1].title, "Galley, STARBOARD");
    assert_string_equal(safety->places[2].title, "Saloon");
    assert_int_equal(safety->places[1].marker.x_mm, 3000);
}

/* ---- nothing is left out, nothing holds it ---- */

static size_t times_told(const char *tag)
{
    size_t times = 0;
    for (size_t i = 0; i < set->count; i++) {
        const struct places_facts *safety = sheet_places(set->sheets[i]);
        for (size_t p = 0; safety != NULL && p < safety->count; p++)
            for (size_t r = 0; r < safety->places[p].row_count; r++)
                times += strcmp(safety->places[p].rows[r].marker.tag, tag) == 0 ? 1 : 0;
    }
    return times;
}

static void every_piece_of_gear_stands_on_it_once(void **state)
{
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml",
                                        "tests/fleet/boats/bramble.yaml"};
    (void)state;
    for (size_t b = 0; b < 3; b++) {
        const struct boat *boat = case_boat(&test, boats[b]);
        set = case_compose(&test, false);
        for (size_t i = 0; i < boat->equipment_count; i++)
            if (times_told(boat->equipment[i].tag.text) != 1)
                fail_msg("%s: %s stands there %zu times", boats[b], boat->equipment[i].tag.text,
                         times_told(boat->equipment[i].tag.text));
    }
}

static void it_is_first_and_never_held_back(void **state)
{
    (void)state;
    const struct sheet *card = plan_of(TORCH("C1", ""), "");
    assert_ptr_equal(set->sheets[0], card);
    assert_false(card->held);
    assert_true(set->held > 0);                       /* the others lack nearly everything */
    assert_null(strstr(sheet_text(card, BLOCK_MARK)->text, "DRAFT"));
    assert_false(sheet_block(card, BLOCK_CALL) != NULL);
    assert_int_equal(sheet_steps(card)->count, 0);
}

/* ---- the index ---- */

/* "EPIRB [E3] Companionway, PORT | ..." */
static const char *index_text(const struct sheet *card)
{
    struct text_builder out = text_builder_in(test.arena);
    const struct index_facts *index = sheet_index(card);
    for (size_t i = 0; i < index->count; i++) {
        text_add_format(&out, "%s%s", i == 0 ? "" : " | ", index->entries[i].name);
        for (size_t s = 0; s < index->entries[i].spot_count; s++) {
            const struct index_spot *spot = &index->entries[i].spots[s];
            for (size_t t = 0; t < spot->tag_count; t++)
                text_add_format(&out, " [%s]", spot->tags[t]);
            text_add_format(&out, " %s", spot->place);
        }
    }
    return out.at;
}

static void what_saves_lives_is_in_the_index(void **state)
{
    (void)state;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    set = case_compose(&test, false);
    assert_string_equal(index_text(case_card(set, "safety_plan")),
                        "EPIRB [E3] Companionway, PORT | Raft [E2] Cabin roof | "
                        "8 lifejackets [E1] Saloon, STARBOARD | "
                        "Flares [E5] Cockpit locker, STARBOARD | "
                        "Handheld radio [E4] Companionway, PORT | "
                        "Grab bag [E20] Companionway, PORT");
}

/* The box of a tag tells its level there too. */
static void the_index_tells_levels(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of("  - {item: flares, tag: E1, zone: cockpit_locker, side: port}\n"
                "  - {item: grab_bag, tag: E2, zone: saloon}\n", "");
    const struct index_facts *index = sheet_index(card);
    assert_int_equal(index->entries[0].spots[0].level, LEVEL_DECK);
    assert_int_equal(index->entries[1].spots[0].level, LEVEL_BELOW);
}

/* Pieces of one place stand together, and all are counted. What she has not is not named. */
static void the_index_has_every_piece(void **state)
{
    (void)state;
    const struct sheet *card =
        plan_of("  - {item: lifejacket, tag: E1, zone: saloon, count: 4}\n"
                "  - {item: lifejacket, tag: E2, zone: cockpit_locker, side: port, count: 2}\n"
                "  - {item: lifejacket, tag: E3, zone: saloon, spot: under the seat}\n",
                "");
    assert_string_equal(index_text(card), "7 lifejackets [E1] [E3] Saloon [E2] Cockpit locker, "
                                          "PORT | Radio [E9] Chart table, PORT");
    assert_true(sheet_block(plan_of(TORCH("C1", ""), ""), BLOCK_INDEX) != NULL);
}

/* ---- sources ---- */

static void every_tag_printed_on_a_card_is_among_the_sources(void **state)
{
    (void)state;
    size_t tags = 0;
    case_boat(&test, "tests/fleet/boats/tamarisk.yaml");
    set = case_compose(&test, false);
    const char *sources = sheet_text(case_card(set, "safety_plan"), BLOCK_SOURCES)->text;
    for (size_t i = 0; i < set->count; i++)
        for (size_t c = 0; c < sheet_warnings(set->sheets[i], BLOCK_CAUTIONS)->count; c++, tags++)
            assert_non_null(
                strstr(sources,
                       text_format(test.arena, "**%s** ",
                                   sheet_warnings(set->sheets[i], BLOCK_CAUTIONS)->items[c].tag)));
    assert_true(tags > 10);
    assert_null(strstr(sources, "TM 55"));            /* of steps only: no tag is printed */
}

/* ---- where the cards hang ---- */

/* The line that tells where the cards hang; NULL: there is none. */
static const struct plan_row *here_of(const struct places_facts *plan)
{
    for (size_t i = 0; i < plan->count; i++)
        if (plan->places[i].rows[0].kind == NULL)
            return &plan->places[i].rows[0];
    return NULL;
}

static const struct places_facts *hung(const char *type, const char *mounted)
{
    case_boat(&test, text_format(test.arena,
                                 "boat: {name: Tamarisk, specimen: yes, hull: %s, rig: sail, "
                                 "loa_m: 12, beam_m: 4, persons_max: 8%s}\n" CASE_RADIO
                                 "equipment: []\n",
                                 type, mounted));
    set = case_compose(&test, false);
    test.problems = problems_new(test.arena);
    safety_plan_notes(test.boat, test.problems);
    return sheet_places(case_card(set, "safety_plan"));
}

static void the_plan_says_which_way_its_reader_looks(void **state)
{
    static const struct { const char *word; enum facing facing; const char *words; } rows[] = {
        {"bow", FACING_BOW, "You look to the bow."},
        {"stern", FACING_STERN, "You look to the stern."},
        {"port", FACING_PORT, "You look to port: the bow is on your right."},
        {"starboard", FACING_STARBOARD, "You look to starboard: the bow is on your left."}};
    (void)state;
    for (size_t i = 0; i < 4; i++) {
        const struct places_facts *safety =
            hung("monohull", text_format(test.arena, ", mounted: {zone: companionway, faces: %s}",
                                         rows[i].word));
        const struct plan_row *here = here_of(safety);
        assert_non_null(here);
        assert_int_equal(safety->facing, rows[i].facing);
        assert_string_equal(here->name, "YOU ARE HERE");
        assert_string_equal(here->detail, rows[i].words);
        assert_int_equal(here->marker.x_mm, 12000 * 62 / 100);
        assert_int_equal(problems_count(test.problems, SEVERITY_NOTE), 0);
    }
}

static void where_nobody_recorded_it_nothing_is_drawn_and_a_note_tells(void **state)
{
    static const struct { const char *type, *mounted; } rows[] = {
        {"monohull", ""},
        {"monohull", ", mounted: {zone: bridgedeck, faces: bow}"},      /* she has none */
        {"catamaran", ", mounted: {zone: aft_cabin, faces: bow}"}};     /* of which hull? */
    (void)state;
    for (size_t i = 0; i < 3; i++) {
        const struct places_facts *plan = hung(rows[i].type, rows[i].mounted);
        assert_null(here_of(plan));
        assert_int_equal(plan->facing, FACING_NONE);
        assert_int_equal(problems_count(test.problems, SEVERITY_NOTE), 1);
    }
    assert_non_null(here_of(hung("catamaran", ", mounted: {zone: aft_cabin_port, faces: bow}")));
}

/* ---- the check code ---- */

static void the_code_changes_with_what_is_printed(void **state)
{
    static const char *const changed[] = {TORCH("C1", ", spot: hook"), TORCH("C2", ""),
                                          TORCH("C1", ", at: [5.0, 0.0]"),
                                          TORCH("C1", ", side: port")};
    (void)state;
    const char *code = sheet_footer(plan_of(TORCH("C1", ""), ""))->code;
    for (size_t i = 0; i < 4; i++)
        assert_string_not_equal(sheet_footer(plan_of(changed[i], ""))->code, code);
    assert_string_equal(sheet_footer(plan_of(TORCH("C1", ""), ""))->code, code);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

/* The plan shows where the piece is, and says from where a hand works it. */
static void gear_worked_from_elsewhere_stands_at_its_own_place(void **state)
{
    (void)state;
    const struct sheet *card = plan_of(
        "  - {item: bilge_pump_manual, tag: C1, zone: saloon, side: port, spot: under seat, "
        "behind: a lid, from: {zone: cockpit, side: starboard, spot: helm}}\n", "");
    assert_string_equal(rows_text(place_titled(card, "Saloon, PORT")),
                        "[C1] Hand pump, under seat, behind a lid, worked from Cockpit, "
                        "starboard, helm");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(gear_worked_from_elsewhere_stands_at_its_own_place),
        TEST(gear_of_one_place_stands_together_by_class),
        TEST(each_line_tells_its_piece_from_the_others),
        TEST(gear_of_one_engine_of_two_says_which),
        TEST(seacocks_say_what_they_are_for),
        TEST(places_are_parted_by_side),
        TEST(a_zone_counts_where_it_was_measured),
        TEST(what_saves_lives_is_in_the_index),
        TEST(the_index_has_every_piece),
        TEST(the_index_tells_levels),
        TEST(every_piece_of_gear_stands_on_it_once),
        TEST(it_is_first_and_never_held_back),
        TEST(every_tag_printed_on_a_card_is_among_the_sources),
        TEST(the_plan_says_which_way_its_reader_looks),
        TEST(where_nobody_recorded_it_nothing_is_drawn_and_a_note_tells),
        TEST(the_code_changes_with_what_is_printed),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
