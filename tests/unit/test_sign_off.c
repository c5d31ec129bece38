/* test_sign_off.c - the sheet that is signed: sections of lines that hold each text of a procedure
 * with what it stands on, and where to sign. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "sign_off.h"
#include "text.h"

static const struct procedure *dark(void)
{
    const char *text = case_procedure_text(
        &test, "dark", 10,
        "steps:\n"
        "  - id: light\n"
        "    cases:\n"
        "      - {id: torch, when: {fitted: torch}, uses: [torch]}\n"
        "      - {id: none}\n"
        "    practice: yes\n"
        "  - id: valves\n"
        "    when: {fitted: seacock}\n"
        "    uses: [{seacock: shut}]\n"
        "    does: [flame]\n"
        "    sources: [S1]\n",
        "steps:\n"
        "  light:\n"
        "    cases:\n"
        "      torch: {act: \"**TAKE** the torch.\"}\n"
        "      none: {act: \"**WAIT** for the day.\"}\n"
        "    because: It is dark.\n"
        "  valves:\n"
        "    act: \"**SHUT** them.\"\n");
    case_procedures(&test, (const char *const[]){text, NULL});
    return test.procedures.rows[0];
}

static const struct sign_off *sheet_of(const struct procedure *procedure)
{
    const struct sign_off_input input = {procedure, test.authorities, test.words};
    return sign_off_compose(&input, test.arena);
}

static const struct sign_section *section_of(const struct sign_off *sheet, const char *title)
{
    for (size_t i = 0; i < sheet->count; i++)
        if (text_equal(sheet->sections[i].title, title))
            return &sheet->sections[i];
    fail_msg("the sheet has no section %s", title);
    return NULL;
}

static void line_is(const struct sign_section *section, size_t index, enum sign_line_kind kind,
                    size_t depth, const char *text)
{
    assert_true(index < section->count);
    assert_string_equal(section->lines[index].text, text);
    assert_int_equal(section->lines[index].kind, kind);
    assert_int_equal(section->lines[index].depth, depth);
}

static void each_case_has_its_boats_words_and_footing(void **state)
{
    (void)state;
    const struct sign_section *light = section_of(sheet_of(dark()), "Step light");
    size_t line = 0;
    line_is(light, line++, SIGN_TEXT, 0, "where: torch fitted");
    line_is(light, line++, SIGN_STRONG, 1, "**TAKE** the torch.");
    line_is(light, line++, SIGN_STRONG, 1, "because: It is dark.");
    line_is(light, line++, SIGN_TEXT, 1, "gear: Torch");
    line_is(light, line++, SIGN_BASIS, 1, "PRACTICE: no authority's text says it; who signs "
            "answers for it");
    line_is(light, line++, SIGN_TEXT, 0, "on every other boat");
    line_is(light, line++, SIGN_STRONG, 1, "**WAIT** for the day.");
}

static void a_step_without_cases_is_told_whole(void **state)
{
    (void)state;
    const struct sign_section *valves = section_of(sheet_of(dark()), "Step valves");
    line_is(valves, 0, SIGN_TEXT, 0, "not on every card");
    line_is(valves, 1, SIGN_TEXT, 1, "where: seacock fitted");
    line_is(valves, 2, SIGN_STRONG, 0, "**SHUT** them.");
    line_is(valves, 3, SIGN_TEXT, 0, "gear: Seacock: shut");
    line_is(valves, 4, SIGN_TEXT, 0, "is proved as: flame");
    assert_int_equal(valves->lines[5].kind, SIGN_BASIS);
    assert_true(text_begins(valves->lines[5].text, "source S1: "));
}

static void who_signs_writes_by_hand_and_the_base_pastes(void **state)
{
    (void)state;
    const struct sign_off *sheet = sheet_of(dark());
    const struct sign_section *signature =
        section_of(sheet, "I have read all of this and approve it");
    for (size_t i = 0; i < signature->count; i++)
        assert_int_equal(signature->lines[i].kind, SIGN_BLANK);
    assert_int_equal(signature->count, 6);
    const struct sign_section *paste = section_of(sheet, "For base.yaml, once it is signed");
    assert_string_equal(sheet->fingerprint, case_fingerprint(&test, "dark"));
    line_is(paste, 1, SIGN_PASTE, 0,
            text_format(test.arena, "  - {card: dark, text: %s, initials: , qualification: , date: "
                        ", until: }", sheet->fingerprint));
}

static void as_text_it_says_each_line(void **state)
{
    (void)state;
    const struct sign_off *sheet = sheet_of(dark());
    struct text_builder out = text_builder_in(test.arena);
    sign_off_text(sheet, &out);
    assert_non_null(strstr(out.at, sheet->fingerprint));
    assert_non_null(strstr(out.at, "\n   on every other boat\n      WAIT for the day.\n"));
    assert_non_null(strstr(out.at, "\n   Signature: ____"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_case_has_its_boats_words_and_footing),
        cmocka_unit_test(a_step_without_cases_is_told_whole),
        cmocka_unit_test(who_signs_writes_by_hand_and_the_base_pastes),
        cmocka_unit_test(as_text_it_says_each_line)};
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
