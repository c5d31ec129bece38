/* test_app_options.c - the command line by the rows of commands and options: each kind into
 * its member, shortened and misspelt names by the command's own, and what goes together. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "app/options.h"
#include "app_case.h"

enum { WORDS_MOST = 12 };

static struct arena *arena;
static struct options options;
static const struct command *command;
static enum exit_status status;
static const char *said;

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

/* Reads words parted by single spaces as a command line. */
static void line_read(const char *line)
{
    char *words[WORDS_MOST + 1] = {arena_copy(arena, "maydeck", 7)};
    int count = 1;
    while (*line != '\0') {
        size_t length = strcspn(line, " ");
        assert_true(count < WORDS_MOST);
        words[count++] = arena_copy(arena, line, length);
        line += length + (line[length] == ' ' ? 1 : 0);
    }
    options = (struct options){0};
    case_catch_begin();
    command = options_read(count, words, arena, &options, &status);
    said = case_catch_end(arena);
}

static void expect_read(const char *line, const char *name)
{
    line_read(line);
    if (command == NULL)
        fail_msg("\"%s\" is refused: %s", line, said);
    assert_string_equal(command->name, name);
    assert_string_equal(options.base, "base");
    assert_string_equal(said, "");
}

static void expect_refused(const char *line, const char *what, const char *remedy)
{
    line_read(line);
    assert_null(command);
    assert_int_equal(status, EXIT_USE);
    if (strstr(said, what) == NULL || strstr(said, remedy) == NULL)
        fail_msg("\"%s\" gives: %s", line, said);
}

static void each_kind_finds_its_member(void **state)
{
    (void)state;
    expect_read("print base --draft -o out --date 2026-11-25 --each", "print");
    assert_true(options.draft && options.each);
    assert_false(options.quiet || options.dump || options.all);
    assert_string_equal(options.output, "out");
    assert_true(options.today.year == 2026 && options.today.month == 11 &&
                options.today.day == 25);
    expect_read("check base --fail error --crew 80,75 --json", "check");
    assert_int_equal(options.fail_from, FAIL_FROM_ERROR);
    assert_string_equal(options.crew, "80,75");
    assert_true(options.json);
    expect_read("check base --fail=deficiency", "check");
    assert_int_equal(options.fail_from, FAIL_FROM_DEFICIENCY);
}

static void nothing_is_left_of_the_line_before(void **state)
{
    (void)state;
    expect_read("print base --draft --boat tern", "print");
    expect_read("print base", "print");
    assert_false(options.draft);
    assert_int_equal(options.boats.count, 0);
    assert_string_equal(options.output, "cards");
}

static void lists_take_commas_and_repeats(void **state)
{
    static const char *const wanted[] = {"tern", "plover", "knot"};
    (void)state;
    expect_read("print --boat tern,plover base --boat knot,tern", "print");
    assert_int_equal(options.boats.count, 3);
    for (size_t i = 0; i < 3; i++)
        assert_string_equal(options.boats.at[i], wanted[i]);
    expect_refused("print base --boat tern,,knot", "--boat does not take", "write names");
    expect_refused("print base --boat ,", "--boat does not take", "write names");
}

static void a_single_option_is_given_once(void **state)
{
    (void)state;
    expect_refused("print base -o a --output b", "--output is given twice", "give it once");
    expect_refused("check base --json --json", "--json is given twice", "give it once");
}

/* --d is --date or --draft of print; of call there is only --downgrade. */
static void shortened_names_are_the_commands_own(void **state)
{
    (void)state;
    expect_read("print base --qui --dr", "print");
    assert_true(options.quiet && options.draft);
    expect_refused("print base --d", "may stand for several options", "--date, --draft");
    expect_read("call base --dow", "call");
    assert_true(options.downgrade);
}

static void misspelt_names_are_mended_by_the_commands_own(void **state)
{
    (void)state;
    expect_refused("print base --drft", "--drft", "--draft");
    expect_refused("check base --ouptut", "--ouptut", "remedy: ");
    expect_refused("print base --json", "--json", "it belongs to: check");
    expect_refused("pirnt base", "no such command \"pirnt\"", "did you mean \"print\"?");
    expect_refused("print base -x", "no such option \"-x\"", "see maydeck print --help");
}

static void values_are_judged(void **state)
{
    (void)state;
    expect_refused("print base --date 2026-13-01", "--date does not take \"2026-13-01\"",
                   "look at a calendar: there is no such day");
    expect_refused("print base --date 25.11.2026", "--date does not take", "write 2026-11-25");
    expect_refused("print base –list", "begins with a dash that is no hyphen", "write --list");
    expect_refused("print base -list", "no such option \"-list\"", "did you mean \"--list\"?");
    expect_refused("print base --language en", "no such option", "did you mean \"--lang\"?");
    expect_refused("print base --date 2026-11", "--date does not take",
                   "write the day too, such as 2026-11-01");
    expect_refused("print base --date soon", "--date does not take",
                   "write year, month and day, such as 2026-11-25");
    expect_refused("check base --fail note", "--fail does not take \"note\"",
                   "write deficiency or error");
    expect_refused("print base -o", "a value is missing after --output", "write --output DIR");
    expect_refused("print base --draft=yes", "--draft takes no value", "see maydeck print");
}

static void what_excludes_what_follows_from_the_rows(void **state)
{
    (void)state;
    expect_refused("why base --all --card flooding", "exclude each other", "leave one");
    expect_refused("check base --json --page", "exclude each other", "leave one");
    expect_refused("check base --from 2026-05-01", "says nothing without --to", "last day");
    expect_refused("check base --from 2026-05-02 --to 2026-05-01", "--to lies before --from",
                   "handed back");
}

static void one_base_is_named(void **state)
{
    (void)state;
    expect_refused("print", "no base folder was named", "name one folder");
    expect_refused("print a b", "more than one base folder", "name one folder");
    line_read("check --list");
    assert_non_null(command);
    assert_null(options.base);
}

/* Help is no misuse, and runs no command. */
static void help_is_told(void **state)
{
    (void)state;
    line_read("print --help");
    assert_null(command);
    assert_int_equal(status, EXIT_GOOD);
    assert_non_null(strstr(said, "Usage: maydeck print"));
    line_read("help check");
    assert_non_null(strstr(said, "Usage: maydeck check"));
    line_read("why -V");
    assert_null(command);
    assert_int_equal(strncmp(said, "maydeck ", 8), 0);
}

/* No command has two rows of one name or letter, and each row belongs to some. */
static void rows_are_sound(void **state)
{
    const struct option_row *row, *other;
    (void)state;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++) {
        assert_true((row->commands & OF_ALL) != 0);
        for (size_t k = i + 1; (other = option_at(k)) != NULL; k++) {
            if ((row->commands & other->commands) == 0)
                continue;
            assert_string_not_equal(row->name, other->name);
            assert_true(row->letter == 0 || row->letter != other->letter);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_kind_finds_its_member),
        cmocka_unit_test(nothing_is_left_of_the_line_before),
        cmocka_unit_test(lists_take_commas_and_repeats),
        cmocka_unit_test(a_single_option_is_given_once),
        cmocka_unit_test(shortened_names_are_the_commands_own),
        cmocka_unit_test(misspelt_names_are_mended_by_the_commands_own),
        cmocka_unit_test(values_are_judged),
        cmocka_unit_test(what_excludes_what_follows_from_the_rows),
        cmocka_unit_test(one_base_is_named),
        cmocka_unit_test(help_is_told),
        cmocka_unit_test(rows_are_sound),
    };
    return cmocka_run_group_tests_name("app options", tests, set_up, tear_down) != 0;
}
