/* test_draft_facts.c - each fact of the radio, of what else calls for help and of the base
 * taken out of a specimen's record in turn: a draft says that it is not recorded, or says
 * nothing of it, and never that it is not there. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "source.h"
#include "text.h"

#define FILE_LIMIT ((size_t)256 * 1024)

static const char *file_text(const char *path)
{
    struct source *source = NULL;
    assert_int_equal(source_read(test.arena, path, FILE_LIMIT, &source), SOURCE_READ);
    return source->bytes;
}

/* The text without the first line that holds `part`. */
static const char *without_line(const char *text, const char *part)
{
    const char *at = strstr(text, part);
    assert_non_null(at);
    const char *from = at, *to = strchr(at, '\n') + 1;
    while (from > text && from[-1] != '\n')
        from--;
    return text_format(test.arena, "%.*s%s", (int)(from - text), text, to);
}

/* All that the cards of the set say. */
static const char *all_said(const struct sheet_set *set)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < set->count; i++)
        if (sheet_source_of(set->sheets[i]->kind) != FROM_RECORD)
            sheet_dump(set->sheets[i], &out);
    return out.at;
}

static size_t times_said(const char *text, enum word word)
{
    const char *words = words_get(test.words, word);
    size_t count = 0;
    for (const char *at = text; (at = strstr(at, words)) != NULL; at += strlen(words))
        count++;
    return count;
}

/* What is true of boats only of which it is recorded that they have none. */
static const enum word denials[] = {WORD_SET_NO_FIXED, WORD_CALL_NO_RADIO,
                                    WORD_CALL_NO_RADIO_ABOARD, WORD_GO_ON_DECK,
                                    WORD_SET_KEY_DEAD};

static void nothing_is_denied(const char *said, const char *fact)
{
    for (size_t i = 0; i < sizeof denials / sizeof *denials; i++)
        if (times_said(said, denials[i]) > 0)
            fail_msg("without %s a draft says \"%s\"", fact, words_get(test.words, denials[i]));
}

#define HANDHELD "{item: vhf_handheld, tag: E4, zone: "

#define CHARGER "in_charger: "

/* With her handheld on deck and out of its charger, where all cards may use it. */
static const char *tamarisk(void)
{
    const char *file = file_text("tests/fleet/boats/tamarisk.yaml");
    const char *yes = strstr(file, CHARGER "yes");
    assert_non_null(yes);
    const char *text = text_format(test.arena, "%.*s" CHARGER "no%s", (int)(yes - file), file,
                                   yes + strlen(CHARGER "yes"));
    const char *at = strstr(text, HANDHELD "companionway");
    assert_non_null(at);
    at += strlen(HANDHELD);
    return text_format(test.arena, "%.*scockpit%s", (int)(at - text), text,
                       at + strlen("companionway"));
}

static const char *draft_of(const char *boat)
{
    case_boat(&test, boat);
    return all_said(case_compose(&test, true));
}

/* The whole record leaves nothing to say of this kind. */
static void a_whole_record_denies_nothing(void **state)
{
    (void)state;
    nothing_is_denied(draft_of(tamarisk()), "nothing");
}

/* What stood on the cards is seen to be missing there. */
static void what_is_printed_is_said_not_to_be_recorded(void **state)
{
    (void)state;
    static const struct { const char *line; enum word said; } facts[] = {
        {"  call_sign: ", WORD_NOT_RECORDED},    {"  mmsi: ", WORD_NOT_RECORDED},
        {"  mmsi_programmed: ", WORD_DRAFT_DSC}, {"  dsc: ", WORD_DRAFT_DSC},
        {"  side: port", WORD_DRAFT_SIDE},       {"  power_switch: ", WORD_NOT_RECORDED},
        {"  distress_key: ", WORD_NOT_RECORDED}, {"  hold_s: ", WORD_NOT_RECORDED},
        {"  nature_steps: ", WORD_NOT_RECORDED},
        {"{item: vhf_handheld,", WORD_NOT_RECORDED}, {"{item: epirb,", WORD_NOT_RECORDED},
        {"{item: flares,", WORD_NOT_RECORDED},
    };
    const char *whole = tamarisk();
    for (size_t i = 0; i < sizeof facts / sizeof *facts; i++) {
        size_t before = times_said(draft_of(whole), facts[i].said);
        const char *said = draft_of(without_line(whole, facts[i].line));
        nothing_is_denied(said, facts[i].line);
        if (times_said(said, facts[i].said) <= before)
            fail_msg("without %s a draft does not tell that it lacks", facts[i].line);
    }
}

/* The whole section: neither a set nor that there is none. */
static void a_set_that_nobody_recorded_is_not_denied(void **state)
{
    (void)state;
    const char *whole = tamarisk(), *from = strstr(whole, "radio:\n"),
               *to = strstr(whole, "equipment:\n");
    const char *rest = text_format(test.arena, "%.*s%s", (int)(from - whole), whole, to);
    nothing_is_denied(draft_of(without_line(rest, "{item: vhf_handheld,")), "any radio");
    nothing_is_denied(draft_of(rest), "radio");
    const struct sheet_set *set = case_compose(&test, true);
    const struct call_facts *call = sheet_call(case_card(set, "distress_call"));
    assert_true(case_card(set, "distress_call")->held);
    assert_string_equal(call->station, words_fill(test.words, test.arena, WORD_DRAFT_FACT, "fact",
                                                  "Radio", NULL));
}

static void a_number_of_the_centre_that_lacks_is_told(void **state)
{
    (void)state;
    case_base(&test, without_line(file_text("tests/fleet/base.yaml"), "  phone: "));
    const char *said = draft_of(tamarisk());
    assert_non_null(strstr(said, text_format(test.arena, "Skerry Sound** %s",
                                             words_get(test.words, WORD_NOT_RECORDED))));
    const struct sheet_set *set = case_compose(&test, false);
    assert_null(strstr(all_said(set), words_get(test.words, WORD_NOT_RECORDED)));
    assert_false(case_card(set, "distress_call")->held);
}

/* A final card waits rather than that it denies what nobody recorded. */
static void a_final_card_waits_for_what_it_would_deny(void **state)
{
    (void)state;
    static const char *const gear[] = {"{item: vhf_handheld,", "{item: epirb,", "{item: flares,"};
    for (size_t i = 0; i < sizeof gear / sizeof *gear; i++) {
        case_boat(&test, without_line(tamarisk(), gear[i]));
        const struct sheet_set *set = case_compose(&test, false);
        for (size_t c = 0; c < set->count; c++) {
            struct text_builder said = text_builder_in(test.arena);
            sheet_dump(set->sheets[c], &said);
            if (!set->sheets[c]->held)
                nothing_is_denied(said.at, gear[i]);
        }
    }
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_whole_record_denies_nothing),
        TEST(what_is_printed_is_said_not_to_be_recorded),
        TEST(a_set_that_nobody_recorded_is_not_denied),
        TEST(a_number_of_the_centre_that_lacks_is_told),
        TEST(a_final_card_waits_for_what_it_would_deny),
    };
    return cmocka_run_group_tests_name("draft_facts", tests, NULL, NULL) != 0;
}
