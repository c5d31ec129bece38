/* test_check_code.c - the short code: its published answers, and that whatever a
 * reader would see changed changes it. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>
#include <zlib.h>

#include "card_fixture.h"
#include "text.h"

static const char *code_of(const char *bytes, size_t length)
{
    return check_code_of((const unsigned char *)bytes, length, test.arena);
}

/* CRC-32 values are published; seven base-32 signs and value mod 37 follow. */
static void published_answers(void **state)
{
    (void)state;
    static const struct { const char *text; uint32_t crc; const char *code; } answers[] = {
        {"", 0x00000000, "0000-0000"},
        {"abc", 0x352441C2, "0TJ8-GE22"},
        {"123456789", 0xCBF43926, "35Z8-E96Q"},
        {"card: fire\nboat: 12\nrev: 1\n", 0x09577449, "04NE-X296"},
        {"card: fire\nboat: 12\nrev: 2\n", 0x227A278A, "0H7M-9WAG"}};
    for (size_t i = 0; i < sizeof answers / sizeof answers[0]; i++) {
        assert_int_equal(crc32(0, (const Bytef *)answers[i].text,
                               (uInt)strlen(answers[i].text)), answers[i].crc);
        assert_true(answers[i].crc % 37 < 32);
        assert_string_equal(code_of(answers[i].text, strlen(answers[i].text)), answers[i].code);
    }
}

/* Worked out by hand from CRC-32 alone: the first check values are 32 to 36. */
static void awkward_check_values_are_hashed_again(void **state)
{
    (void)state;
    assert_string_equal(code_of("125", 3), "0107-MNWC");  /* counter 1 gives 32 or more too */
    assert_string_equal(code_of("169", 3), "2MVY-DBCW");
    assert_string_equal(code_of("194", 3), "0BMT-30WV");
    assert_string_equal(code_of("461", 3), "0GVY-ZY0A");  /* up to counter 3 */
}

static uint32_t sign_value(char sign)
{
    static const char signs[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    const char *at = strchr(signs, sign);
    assert_non_null(at);
    return (uint32_t)(at - signs);
}

/* Read back by hand: the seven signs are the value, the eighth its rest by 37. */
static void the_check_sign_is_the_value_mod_37(void **state)
{
    (void)state;
    for (int i = 0; i < 3000; i++) {
        const char *text = text_format(test.arena, "card %d", i);
        const char *code = code_of(text, strlen(text));
        uint64_t value = 0;
        assert_int_equal(strlen(code), 9);
        assert_int_equal(code[4], '-');
        for (size_t s = 0; s < 8; s++)
            if (s != 4)
                value = value * 32 + sign_value(code[s]);
        assert_true(value <= UINT32_MAX);
        assert_int_equal(sign_value(code[8]), value % 37);
    }
}

/* ---- of a card ---- */

static struct card card_of(const char *boat, const char *key)
{
    case_boat(&test, boat);
    return *case_card(case_compose(&test, false), key);
}

static const char *code(const struct card *card)
{
    return check_code(card, test.arena);
}

/* The word is replaced where it stands; the code must follow. */
static void must_matter(const struct card *card, const char **word, const char *what)
{
    const char *before = *word, *old = code(card);
    *word = before == NULL ? "x" : text_format(test.arena, "%sx", before);
    if (strcmp(old, code(card)) == 0)
        fail_msg("%s may change without the code following", what);
    *word = before;
    assert_string_equal(old, code(card));
}

static void every_word_round_the_steps_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    const struct { const char **word; const char *what; } words[] = {
        {&card.boat, "boat"}, {&card.key, "key"}, {&card.language, "language"},
        {&card.title, "title"}, {&card.number_text, "number"}, {&card.signs, "signs"},
        {&card.call_line, "call line"}, {&card.decision.ask, "question"},
        {&card.decision.yes, "yes"}, {&card.decision.no, "no"},
        {&card.contact_left, "rescue centre"}, {&card.contact_right, "base"},
        {&card.call.title, "call title"}, {&card.call.station, "station"}, {&card.mark, "mark"},
        {&card.footer_left[0], "deferral"}, {&card.footer_left[1], "approval"},
        {&card.gear_date, "dates"}};
    assert_string_equal(card.code, code(&card));
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        must_matter(&card, words[i].word, words[i].what);
}

static void every_word_of_the_steps_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct card_step *steps = arena_array(test.arena, card.step_count, sizeof *steps);
    memcpy(steps, card.steps, card.step_count * sizeof *steps);
    card.steps = steps;
    for (size_t s = 0; s < card.step_count; s++) {
        struct card_row *rows = arena_array(test.arena, steps[s].row_count, sizeof *rows);
        if (steps[s].row_count > 0)
            memcpy(rows, steps[s].rows, steps[s].row_count * sizeof *rows);
        steps[s].rows = rows;
        must_matter(&card, &steps[s].headline.text, "headline");
        struct card_text *lethal = arena_array(test.arena, steps[s].lethal_count, sizeof *lethal);
        if (steps[s].lethal_count > 0)
            memcpy(lethal, steps[s].lethal, steps[s].lethal_count * sizeof *lethal);
        steps[s].lethal = lethal;
        for (size_t l = 0; l < steps[s].lethal_count; l++)
            must_matter(&card, &lethal[l].text, "lethal line");
        for (size_t r = 0; r < steps[s].row_count; r++) {
            const char **tags = arena_array(test.arena, rows[r].tag_count, sizeof *tags);
            memcpy(tags, rows[r].tags, rows[r].tag_count * sizeof *tags);
            rows[r].tags = tags;
            for (size_t t = 0; t < rows[r].tag_count; t++)
                must_matter(&card, &tags[t], "tag");
            must_matter(&card, &rows[r].timed, "name with seconds");
            must_matter(&card, &rows[r].weighed, "name with weight");
            must_matter(&card, &rows[r].where, "place");
        }
    }
}

static void every_cell_of_the_table_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "flooding");
    struct card_step step = *case_step(&card, "seacocks");
    struct table_row *table = arena_array(test.arena, step.table_count, sizeof *table);
    assert_true(step.table_count > 0);
    memcpy(table, step.table, step.table_count * sizeof *table);
    step.table = table;
    card.steps = &step;
    card.step_count = 1;
    must_matter(&card, &step.table_note, "table note");
    for (size_t i = 0; i < step.table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            must_matter(&card, &table[i].cells[c].tag, "cell tag");
            must_matter(&card, &table[i].cells[c].name, "cell name");
        }
}

static void every_warning_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct card_warning never = card.nevers[0], caution = card.cautions[0];
    struct card_warning rule = {.text = "Anchor lights on", .tag = "Harbour"};
    card.nevers = &never;
    card.cautions = &caution;
    card.local_rules = &rule;
    card.never_count = card.caution_count = card.local_rule_count = 1;
    must_matter(&card, &never.text, "never");
    must_matter(&card, &never.tag, "never's source");
    must_matter(&card, &caution.text, "caution");
    must_matter(&card, &caution.tag, "caution's source");
    must_matter(&card, &rule.text, "local rule");
    must_matter(&card, &rule.tag, "local rule's source");
}

static void every_word_of_the_call_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "flooding");
    struct card_text operate = card.call.operate[0];
    struct script_piece piece = {.kind = PIECE_STRONG, .text = "I AM FLOODING."};
    struct script_line line = {.label = "RISING", .pieces = &piece, .count = 1};
    struct script script = {.lines = &line, .count = 1};
    card.call.operate = &operate;
    card.call.operate_count = 1;
    card.call.script = &script;
    must_matter(&card, &operate.text, "a line of the set");
    must_matter(&card, &line.label, "label");
    must_matter(&card, &piece.text, "a spoken word");
}

static void every_section_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "distress_call");
    struct card_section *sections = arena_array(test.arena, card.section_count, sizeof *sections);
    assert_true(card.section_count > 0);
    memcpy(sections, card.sections, card.section_count * sizeof *sections);
    card.sections = sections;
    for (size_t i = 0; i < card.section_count; i++) {
        must_matter(&card, &sections[i].title, "a section's title");
        must_matter(&card, &sections[i].note, "a section's note");
        must_matter(&card, &sections[i].end_note, "a section's last line");
        struct card_text *lines = arena_array(test.arena, sections[i].line_count, sizeof *lines);
        if (sections[i].line_count > 0)
            memcpy(lines, sections[i].lines, sections[i].line_count * sizeof *lines);
        sections[i].lines = lines;
        for (size_t l = 0; l < sections[i].line_count; l++)
            must_matter(&card, &lines[l].text, "a section's line");
    }
}

/* Words that come from the words file are printed like all others. */
static void every_signal_word_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct plan_zone zone = card.plan_zones[0];
    const struct { const char **word; const char *what; } words[] = {
        {&card.when_word, "WHEN"}, {&card.yes_word, "YES"}, {&card.no_word, "NO"},
        {&card.never_word, "NEVER"}, {&card.caution_word, "CAUTION"},
        {&card.code_word, "check code"}, {&zone.name, "a zone's name on the plan"}};
    card.plan_zones = &zone;
    card.plan_zone_count = 1;
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
        must_matter(&card, words[i].word, words[i].what);
    for (size_t i = 0; i < PLAN_WORD_COUNT; i++)
        must_matter(&card, &card.plan_words[i], "a word round the plan");
}

/* NEVER must not become CAUTION under the same code. */
static void a_never_is_not_a_caution(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct card_warning warnings[] = {{.text = "go below", .tag = "A"},
                                      {.text = "use a phone", .tag = "B"}};
    card.nevers = warnings;
    card.never_count = 2;
    card.cautions = NULL;
    card.caution_count = 0;
    const char *two_nevers = code(&card);
    card.never_count = 1;
    card.cautions = &warnings[1];
    card.caution_count = 1;
    assert_string_not_equal(two_nevers, code(&card));
}

static void the_number_of_a_step_matters(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "flooding");
    struct card_step step = *case_step(&card, "seacocks");
    card.steps = &step;
    card.step_count = 1;
    const char *old = code(&card);
    step.number++;
    assert_string_not_equal(old, code(&card));
    step.number--;
    must_matter(&card, &step.table_heads[0], "a head of the table");
    must_matter(&card, &step.table_heads[1], "a head of the table");
}

/* ---- where things stand ---- */

static void a_moved_tag_changes_the_code(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    struct marker *markers = arena_array(test.arena, card.marker_count, sizeof *markers);
    const char *old = card.code;
    assert_true(card.marker_count > 5);
    memcpy(markers, card.markers, card.marker_count * sizeof *markers);
    card.markers = markers;
    for (size_t i = 0; i < card.marker_count; i++) {
        struct marker kept = markers[i];
        must_matter(&card, &markers[i].tag, "a marker's tag");
        markers[i].x_mm++;
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
        markers[i].y_mm--;
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
        markers[i].zone = zone_find(strcmp(kept.zone->key, "saloon") == 0 ? "galley" : "saloon");
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
        markers[i].level = kept.level == LEVEL_BELOW ? LEVEL_DECK : LEVEL_BELOW;
        assert_string_not_equal(old, code(&card));
        markers[i] = kept;
    }
    assert_string_equal(old, code(&card));
}

static void the_print_date_does_not_matter(void **state)
{
    (void)state;
    struct card first = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    test.today = (struct date){2027, 1, 3};
    struct card later = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    assert_string_not_equal(first.printed, later.printed);
    assert_string_equal(first.code, later.code);
}

/* A figure that finds no room on the page is in the code all the same. */
static void figures_without_room_matter_as_well(void **state)
{
    (void)state;
    struct card card = card_of("tests/fleet/boats/samphire.yaml", "flooding");
    size_t size = card.figures_known_count * sizeof *card.figures_known;
    struct card_figure *figures = arena_alloc(test.arena, size);
    assert_true(card.left_out_count > 0);
    assert_int_equal(card.figures_known_count, card.figure_count + card.left_out_count);
    memcpy(figures, card.figures_known, size);
    card.figures_known = figures;
    for (size_t i = 0; i < card.figures_known_count; i++)
        must_matter(&card, &figures[i].text, "a figure");
    static const struct figure_limit none[] = {{"flooding", 0}};
    const struct set_limits limits = {.figures = none, .figure_count = 1};
    const struct card *full = case_card(case_compose_limited(&test, &limits), "flooding");
    assert_int_equal(full->figure_count, 0);
    assert_string_equal(full->code, card.code);
}

/* What hangs on the day stands on the card and not in the code; an approval is in both. */
static void gear_out_of_date_keeps_the_code(void **state)
{
    (void)state;
    struct card first = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    test.today = (struct date){2041, 1, 3};
    struct card later = card_of("tests/fleet/boats/tamarisk.yaml", "engine_fire");
    assert_string_not_equal(first.footer_right, later.footer_right);
    assert_string_equal(first.footer_left[1], later.footer_left[1]);
    assert_string_equal(first.code, later.code);
    later.gear_undated++;
    assert_string_not_equal(code(&first), code(&later));
}

static void composed_twice_the_codes_are_equal_and_all_differ(void **state)
{
    (void)state;
    static const char *const boats[] = {"tests/fleet/boats/tamarisk.yaml",
                                        "tests/fleet/boats/samphire.yaml"};
    const char *codes[64];
    size_t count = 0;
    for (size_t b = 0; b < 2; b++) {
        case_boat(&test, boats[b]);
        const struct card_set *first = case_compose(&test, false);
        const struct card_set *second = case_compose(&test, false);
        assert_int_equal(first->count, second->count);
        for (size_t i = 0; i < first->count; i++) {
            assert_string_equal(first->cards[i]->code, second->cards[i]->code);
            if (text_equal(first->cards[i]->page, "B"))
                continue;
            for (size_t j = 0; j < count; j++)
                assert_string_not_equal(first->cards[i]->code, codes[j]);
            codes[count++] = first->cards[i]->code;
        }
    }
    assert_true(count > 8);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(published_answers),
        TEST(awkward_check_values_are_hashed_again),
        TEST(the_check_sign_is_the_value_mod_37),
        TEST(every_word_round_the_steps_matters),
        TEST(every_word_of_the_steps_matters),
        TEST(every_cell_of_the_table_matters),
        TEST(every_warning_matters),
        TEST(every_word_of_the_call_matters),
        TEST(every_section_matters),
        TEST(every_signal_word_matters),
        TEST(a_never_is_not_a_caution),
        TEST(the_number_of_a_step_matters),
        TEST(a_moved_tag_changes_the_code),
        TEST(the_print_date_does_not_matter),
        TEST(figures_without_room_matter_as_well),
        TEST(gear_out_of_date_keeps_the_code),
        TEST(composed_twice_the_codes_are_equal_and_all_differ),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
