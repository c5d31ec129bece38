/* test_app_manual.c - texts of the manual: taken apart into paragraphs, terms and lines that are
 * shown, in lines of a width and as source in which no letter is taken for a request. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "app/manual.h"

static struct arena *arena;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)4 * 1024 * 1024);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static const char *on_screen(size_t width, const char *text)
{
    struct manual manual = manual_on_screen(arena);
    manual.width = width;
    manual_text(&manual, text);
    manual_terms_end(&manual);
    return manual.out.at;
}

static const char *as_source(const char *text)
{
    struct manual manual = manual_as_source(arena);
    manual_section(&manual, "part");
    manual_text(&manual, text);
    manual_terms_end(&manual);
    return manual.out.at;
}

static void paragraphs_fill_lines(void **state)
{
    (void)state;
    assert_string_equal(on_screen(10, "one two\nthree four\n\nfive\n"),
                        "one two\nthree four\n\nfive\n");
    assert_string_equal(on_screen(9, "one two\nthree four\n"), "one two\nthree\nfour\n");
    assert_string_equal(on_screen(5, "a muchlongerword b\n"), "a\nmuchlongerword\nb\n");
    /* a letter of two bytes takes one place */
    assert_string_equal(on_screen(7, "\u00e9\u00e9\u00e9 \u00e9\u00e9\u00e9\n"),
                        "\u00e9\u00e9\u00e9 \u00e9\u00e9\u00e9\n");
}

static void terms_stand_beside_or_above(void **state)
{
    (void)state;
    const char *text = "gas  cooking gas\n  aboard\nspot  where\n";
    assert_string_equal(on_screen(80, text), "  gas   cooking gas aboard\n  spot  where\n");
    assert_string_equal(on_screen(40, text),
                        "  gas\n        cooking gas aboard\n  spot\n        where\n");
    assert_string_equal(on_screen(80, "before\n\n`-x`  that\n\nafter\n"),
                        "before\n\n  -x  that\n\nafter\n");
}

static void lines_are_shown(void **state)
{
    (void)state;
    assert_string_equal(on_screen(12, "so:\n\n    a  long line of it\n    .b\n\nend\n"),
                        "so:\n\n    a  long line of it\n    .b\n\nend\n");
    assert_string_equal(as_source("    a  long line\n    .b\n"),
                        ".Sh PART\n.Bd -literal -offset indent\na  long line\n\\&.b\n.Ed\n");
}

static void source_keeps_letters(void **state)
{
    (void)state;
    assert_string_equal(as_source(".start 'quoted' back\\slash\n"),
                        ".Sh PART\n\\&.start 'quoted' back\\eslash\n");
    assert_string_equal(as_source("One. Two\n\nthree\n"), ".Sh PART\nOne.\nTwo\n.Pp\nthree\n");
    assert_string_equal(as_source("a --card and up-to-date \u00b0\n"),
                        ".Sh PART\na \\-\\-card and up-to-date \\[u00B0]\n");
}

static void marked_words_get_macros(void **state)
{
    (void)state;
    assert_string_equal(as_source("see `check`, (`base.yaml`) or `BASE`.\n"),
                        ".Sh PART\nsee\n.Ic check ,\n.Pa ( base.yaml )\nor\n.Ar BASE .\n");
    /* what could be a macro or a mark by itself is neither */
    assert_string_equal(as_source("`up Sh \"x\"`\n"),
                        ".Sh PART\n.Ic \\&up \\&Sh \\&\\(dqx\\(dq\n");
    assert_string_equal(as_source("gas  cooking\n"),
                        ".Sh PART\n.Bl -tag -width Ds\n.It Ic \\&gas\ncooking\n.El\n");
}

/* No fact of the same table is told twice by one check. */
static void lack_is_another(size_t index, const struct fact_lack *lack)
{
    struct fact_lack other;
    assert_true(fact_lack_at(index, &other));
    if (other.table == lack->table && text_equal(other.key, lack->key))
        assert_string_not_equal(other.check, lack->check);
}

static void what_is_missed_is_told(void **state)
{
    (void)state;
    struct fact_lack lack;
    size_t count = 0;
    for (; fact_lack_at(count, &lack); count++) {
        struct field_path path = {field_find(lack.table, lack.key), lack.table, NULL};
        assert_non_null(path.field);
        assert_non_null(check_find(lack.check));
        const char *meaning = key_meaning(&path, arena);
        if (strstr(meaning, lack.check) == NULL || strstr(meaning, lack.so) == NULL)
            fail_msg("%s: %s", lack.key, meaning);
        for (size_t i = 0; i < count; i++)
            lack_is_another(i, &lack);
    }
    assert_true(count > 15);
}

static void gear_and_readers_are_told(void **state)
{
    (void)state;
    const struct field_path outer = {field_find(boat_file_fields(), "equipment"),
                                     boat_file_fields(), NULL};
    const struct field_path path = {gear_field_row(GEAR_name), equipment_fields(), &outer};
    const char *meaning = key_meaning(&path, arena);
    assert_non_null(strstr(meaning, "`check` misses it of seacock."));
    assert_non_null(strstr(meaning, "It may stand at all other gear."));
    assert_non_null(strstr(meaning, "the lines of gear on the safety plan"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(paragraphs_fill_lines, set_up, tear_down),
        cmocka_unit_test_setup_teardown(terms_stand_beside_or_above, set_up, tear_down),
        cmocka_unit_test_setup_teardown(lines_are_shown, set_up, tear_down),
        cmocka_unit_test_setup_teardown(source_keeps_letters, set_up, tear_down),
        cmocka_unit_test_setup_teardown(marked_words_get_macros, set_up, tear_down),
        cmocka_unit_test_setup_teardown(what_is_missed_is_told, set_up, tear_down),
        cmocka_unit_test_setup_teardown(gear_and_readers_are_told, set_up, tear_down),
    };
    return cmocka_run_group_tests_name("manual", tests, NULL, NULL) != 0;
}
