/* test_printed.c - the list of what was printed: rows as lines and back, what is damaged told and
 * left out, the last row of a file found; and the list in its folder, from run to run. */
#include "record_test.h"

#include <sys/stat.h>
#include <unistd.h>

#include "app/fleet.h"
#include "app/printed_file.h"
#include "app_case.h"
#include "sha256.h"

#define SUM_OF_A "ca978112ca1bbdcafac231b39a23dc4da786eff8147c4e72b9807785afee48bb"

static const char *folder;

static int folder_begin(void **state)
{
    test_begin(state);
    folder = case_folder(test.arena);
    return 0;
}

static int folder_end(void **state)
{
    case_folder_sweep(folder);
    return test_end(state);
}

#define IN_FOLDER(function) \
    cmocka_unit_test_setup_teardown(function, folder_begin, folder_end)

/* A row of a file that holds that text. */
static struct printed_row row_of(const char *file, const char *content, const char *run)
{
    char *sum = arena_alloc(test.arena, SHA256_TEXT);
    sha256_text((const unsigned char *)content, strlen(content), sum);
    return (struct printed_row){
        .file = file, .sum = sum, .bytes = strlen(content), .boat = "tern", .language = "en",
        .paper = "a4", .cards = 37, .of_cards = 38, .record = SUM_OF_A, .inputs = NULL,
        .version = "1.0", .date = {2027, 4, 30}, .run = run, .complete = true,
        .deficiencies = 12, .files = 3};
}

#define FIRST_RUN "00000000000000aa"
#define SECOND_RUN "00000000000000bb"

static const char *list_text(const struct printed_row *rows, size_t count)
{
    struct text_builder out = text_builder_in(test.arena);
    printed_head_add(&out);
    for (size_t i = 0; i < count; i++)
        printed_row_add(&rows[i], &out);
    return out.at;
}

/* The rows of a text; `whole`: nothing was damaged. */
static struct printed_list *text_read(const char *text, bool whole)
{
    struct printed_list *list = printed_list_new(test.arena);
    assert_int_equal(printed_read(list, file_of("printed.csv", text), test.arena, test.problems),
                     whole);
    assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY) > 0, !whole);
    return list;
}

/* ---- rows ---- */

static void rows_are_read_as_written(void **state)
{
    static const char *const names[] = {"tern.pdf", "a, \"b\".pdf", "100%.pdf", "new\nline.pdf",
                                        "\xC5\xBDuta.pdf", "bad\xFF\xC5.pdf", " x.pdf", "7;8.pdf"};
    (void)state;
    for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
        struct printed_row row = row_of(names[i], "a", FIRST_RUN);
        const struct printed_row *read = printed_find(text_read(list_text(&row, 1), true),
                                                      names[i]);
        assert_non_null(read);
        assert_string_equal(read->sum, SUM_OF_A);
        assert_int_equal(read->bytes, 1);
        assert_string_equal(read->boat, "tern");
        assert_int_equal(read->cards, 37);
        assert_int_equal(read->of_cards, 38);
        assert_string_equal(read->record, SUM_OF_A);
        assert_null(read->inputs);
        assert_int_equal(date_compare(read->date, row.date), 0);
        assert_string_equal(read->run, FIRST_RUN);
        assert_true(read->complete);
        assert_int_equal(read->deficiencies, 12);
        assert_int_equal(read->files, 3);
        assert_null(read->older);
    }
}

static void of_a_file_the_last_row_counts(void **state)
{
    (void)state;
    struct printed_row rows[] = {row_of("a.pdf", "a", FIRST_RUN), row_of("b.pdf", "b", FIRST_RUN),
                                 row_of("a.pdf", "c", SECOND_RUN)};
    struct printed_list *list = text_read(list_text(rows, 3), true);
    const struct printed_row *last = printed_find(list, "a.pdf");
    assert_string_equal(last->run, SECOND_RUN);
    assert_string_equal(last->older->run, FIRST_RUN);
    assert_null(last->older->older);
    assert_ptr_equal(printed_at(list, 2), last);
    assert_null(printed_at(list, 3));
    assert_null(printed_find(list, "c.pdf"));
}

static void ten_thousand_are_found(void **state)
{
    (void)state;
    struct printed_list *list = printed_list_new(test.arena);
    for (int i = 0; i < 10000; i++) {
        struct printed_row row = row_of(text_format(test.arena, "%d.pdf", i), "a", FIRST_RUN);
        row.bytes = (size_t)i;
        printed_add(list, &row);
    }
    for (int i = 0; i < 10000; i++)
        assert_int_equal(printed_find(list, text_format(test.arena, "%d.pdf", i))->bytes, i);
}

/* The text with the first `from` in it as `to`. */
static const char *text_with(const char *text, const char *from, const char *to)
{
    const char *at = strstr(text, from);
    assert_non_null(at);
    return text_format(test.arena, "%.*s%s%s", (int)(at - text), text, to, at + strlen(from));
}

/* Each cell in turn of the first row says what none can: that row is left out, the other stays. */
static void what_cannot_be_is_told_and_left_out(void **state)
{
    static const char *const wrong[][2] = {
        {"x.pdf", "../x.pdf"}, {"x.pdf", "%0x.pdf"}, {"x.pdf", "%00.pdf"}, {"x.pdf", "%2F.pdf"},
        {SUM_OF_A, "ca97"}, {SUM_OF_A, ""}, {",1,", ",,"}, {",1,", ",one,"},
        {",1,", ",1234567890123456,"}, {"37 of 38", "39 of 38"}, {"37 of 38", "37"},
        {"37 of 38", "37 of "}, {",en,", ",,"}, {"2027-04-30", "2027-04"},
        {FIRST_RUN, "00000000000000a"}, {FIRST_RUN, "00000000000000AA"}, {",yes,", ",perhaps,"},
        {",12,", ",,"}, {",3\n", ",\n"}, {",-,1.0", ",none,1.0"}};
    (void)state;
    for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
        struct printed_row rows[] = {row_of("x.pdf", "a", FIRST_RUN),
                                     row_of("y.pdf", "b", FIRST_RUN)};
        const char *text = text_with(list_text(rows, 2), wrong[i][0], wrong[i][1]);
        test.problems = problems_new(test.arena);
        struct printed_list *list = text_read(text, false);
        assert_non_null(printed_find(list, "y.pdf"));
        assert_null(printed_at(list, 1));
        assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY), 1);
    }
}

static void a_torn_or_foreign_list_is_told(void **state)
{
    (void)state;
    struct printed_row rows[] = {row_of("x.pdf", "a", FIRST_RUN), row_of("y.pdf", "b", FIRST_RUN)};
    const char *text = list_text(rows, 2);
    struct printed_list *list = text_read(arena_copy(test.arena, text, strlen(text) - 4), false);
    assert_non_null(printed_find(list, "x.pdf"));
    assert_null(printed_find(list, "y.pdf"));
    test.problems = problems_new(test.arena);
    assert_null(printed_at(text_read(text_with(text, "sha256", "sum"), false), 0));
    test.problems = problems_new(test.arena);
    assert_null(printed_at(text_read(text_with(text, "\nx.pdf", "\n\"x.pdf"), false), 0));
    test.problems = problems_new(test.arena);
    assert_null(printed_at(text_read("file", false), 0));
    test.problems = problems_new(test.arena);
    assert_null(printed_at(text_read("", true), 0));
}

/* ---- in a folder ---- */

static const char *list_path(void)
{
    return text_format(test.arena, "%s/" PRINTED_NAME, folder);
}

/* A run that places some files and is then stopped, or ends. */
enum run_end { RUN_STOPPED, RUN_ENDS };
static void run_of(const struct printed_row *rows, size_t count, enum run_end end)
{
    struct printed_file printed;
    assert_true(printed_begin(folder, test.arena, test.problems, &printed));
    assert_true(printed_note(&printed, rows, count, test.problems));
    for (size_t i = 0; i < count && end == RUN_ENDS; i++)
        printed_place(&printed, rows[i].file);
    if (end == RUN_ENDS)
        assert_true(printed_end(&printed, test.problems));
    else
        assert_int_equal(close(printed.appending.file), 0);
}

static void a_run_leaves_one_row_a_file(void **state)
{
    (void)state;
    struct printed_row first[] = {row_of("a.pdf", "old", FIRST_RUN),
                                  row_of("b.pdf", "b", FIRST_RUN),
                                  row_of("gone.pdf", "gone", FIRST_RUN)};
    struct printed_row second = row_of("a.pdf", "new", SECOND_RUN);
    case_file_make(folder, "a.pdf", "old");
    case_file_make(folder, "b.pdf", "b");
    case_file_make(folder, "gone.pdf", "gone");
    run_of(first, 3, RUN_ENDS);
    assert_string_equal(case_file_content(test.arena, list_path()), list_text(first, 3));
    case_file_make(folder, "a.pdf", "new");
    assert_int_equal(unlink(text_format(test.arena, "%s/gone.pdf", folder)), 0);
    run_of(&second, 1, RUN_ENDS);
    const struct printed_row left[] = {first[1], second};
    assert_string_equal(case_file_content(test.arena, list_path()), list_text(left, 2));
    assert_false(problems_reach(test.problems, SEVERITY_NOTE));
}

/* Stopped before the second file got its name: the row that was true before is. */
static void of_a_stopped_run_what_is_so_stays(void **state)
{
    (void)state;
    struct printed_row first[] = {row_of("a.pdf", "a one", FIRST_RUN),
                                  row_of("b.pdf", "b one", FIRST_RUN)};
    struct printed_row second[] = {row_of("a.pdf", "a two", SECOND_RUN),
                                   row_of("b.pdf", "b two", SECOND_RUN)};
    case_file_make(folder, "a.pdf", "a one");
    case_file_make(folder, "b.pdf", "b one");
    run_of(first, 2, RUN_ENDS);
    case_file_make(folder, "a.pdf", "a two");
    run_of(second, 2, RUN_STOPPED);
    run_of(NULL, 0, RUN_ENDS);
    const struct printed_row left[] = {second[0], first[1]};
    assert_string_equal(case_file_content(test.arena, list_path()), list_text(left, 2));
}

static void what_is_of_another_length_is_told(void **state)
{
    (void)state;
    struct printed_row row = row_of("a.pdf", "whole", FIRST_RUN);
    case_file_make(folder, "a.pdf", "whole");
    run_of(&row, 1, RUN_ENDS);
    case_file_make(folder, "a.pdf", "who");
    run_of(NULL, 0, RUN_ENDS);
    assert_string_equal(case_file_content(test.arena, list_path()), list_text(NULL, 0));
    assert_int_equal(problems_count(test.problems, SEVERITY_NOTE), 1);
}

static void a_damaged_list_is_kept_aside(void **state)
{
    (void)state;
    struct printed_row rows[] = {row_of("a.pdf", "a", FIRST_RUN), row_of("b.pdf", "b", FIRST_RUN)};
    const char *damaged = text_with(list_text(rows, 2), SUM_OF_A, "?");
    case_file_make(folder, "b.pdf", "b");
    case_file_make(folder, PRINTED_NAME, damaged);
    case_file_make(folder, PRINTED_NAME ".damaged-1", "older");
    run_of(NULL, 0, RUN_ENDS);
    assert_string_equal(case_file_content(test.arena, list_path()), list_text(&rows[1], 1));
    assert_string_equal(case_file_content(test.arena, text_format(test.arena, "%s.damaged-1",
                                                                  list_path())), "older");
    assert_string_equal(case_file_content(test.arena, text_format(test.arena, "%s.damaged-2",
                                                                  list_path())), damaged);
    assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY), 1);
    assert_int_equal(problems_count(test.problems, SEVERITY_NOTE), 1);
}

/* What was taken away or damaged while the run had it is told, and nothing is put in its place. */
static void a_list_that_cannot_be_read_back_is_told(void **state)
{
    (void)state;
    struct printed_row row = row_of("a.pdf", "a", FIRST_RUN);
    struct printed_file printed;
    case_file_make(folder, "a.pdf", "a");
    assert_true(printed_begin(folder, test.arena, test.problems, &printed));
    assert_true(printed_note(&printed, &row, 1, test.problems));
    assert_int_equal(unlink(list_path()), 0);
    assert_false(printed_end(&printed, test.problems));
    assert_int_equal(problems_count(test.problems, SEVERITY_FAILURE), 1);
    assert_int_not_equal(access(list_path(), F_OK), 0);

    assert_true(printed_begin(folder, test.arena, test.problems, &printed));
    assert_true(printed_note(&printed, &row, 1, test.problems));
    const char *damaged = text_with(list_text(&row, 1), SUM_OF_A, "?");
    case_file_make(folder, PRINTED_NAME, damaged);
    assert_false(printed_end(&printed, test.problems));
    assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY), 1);
    assert_string_equal(case_file_content(test.arena, list_path()), damaged);
}

static void a_link_is_never_written_through(void **state)
{
    (void)state;
    struct printed_file printed;
    case_file_make(folder, "victim", "keep");
    assert_int_equal(symlink("victim", list_path()), 0);
    assert_false(printed_begin(folder, test.arena, test.problems, &printed));
    assert_int_equal(problems_count(test.problems, SEVERITY_FAILURE), 1);
    assert_string_equal(case_file_content(test.arena,
                                          text_format(test.arena, "%s/victim", folder)), "keep");
}

static void a_list_is_looked_at_without_a_change(void **state)
{
    (void)state;
    struct printed_row row = row_of("a.pdf", "a", FIRST_RUN);
    struct printed_list *list;
    bool whole;
    assert_false(printed_look(folder, test.arena, test.problems, &list, &whole));
    assert_false(problems_reach(test.problems, SEVERITY_NOTE));
    case_file_make(folder, PRINTED_NAME, list_text(&row, 1));
    assert_true(printed_look(folder, test.arena, test.problems, &list, &whole));
    assert_true(whole);
    assert_non_null(printed_find(list, "a.pdf"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(rows_are_read_as_written),
        TEST(of_a_file_the_last_row_counts),
        TEST(ten_thousand_are_found),
        TEST(what_cannot_be_is_told_and_left_out),
        TEST(a_torn_or_foreign_list_is_told),
        IN_FOLDER(a_run_leaves_one_row_a_file),
        IN_FOLDER(of_a_stopped_run_what_is_so_stays),
        IN_FOLDER(what_is_of_another_length_is_told),
        IN_FOLDER(a_damaged_list_is_kept_aside),
        IN_FOLDER(a_list_that_cannot_be_read_back_is_told),
        IN_FOLDER(a_link_is_never_written_through),
        IN_FOLDER(a_list_is_looked_at_without_a_change),
    };
    return cmocka_run_group_tests_name("printed", tests, NULL, NULL) != 0;
}
