/* test_append.c - a file that only grows: made or left alone, read, cut and added to; what is no
 * regular file is never written. */
#include "record_test.h"

#include <sys/stat.h>
#include <unistd.h>

#include "app_case.h"
#include "append.h"

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

static const char *path_of(const char *name)
{
    return text_format(test.arena, "%s/%s", folder, name);
}

static struct bytes bytes_of(const char *text)
{
    return (struct bytes){(const unsigned char *)text, strlen(text)};
}

/* Begins, cuts to `kept` bytes (all: -1) and adds. */
static void file_add(const char *path, long kept, const char *more)
{
    struct appending appending;
    assert_int_equal(append_begin(path, APPEND_MAKE, test.arena, test.problems, &appending),
                     APPEND_BEGUN);
    assert_true(append_end(&appending, kept < 0 ? append_length(&appending) : (size_t)kept,
                           bytes_of(more), test.problems));
}

static void a_file_is_made_only_where_it_is_asked_for(void **state)
{
    (void)state;
    struct appending appending;
    const char *path = path_of("new.csv");
    assert_int_equal(append_begin(path, APPEND_IF_THERE, test.arena, test.problems, &appending),
                     APPEND_ABSENT);
    assert_int_equal(access(path, F_OK), -1);
    file_add(path, -1, "one\n");
    file_add(path, -1, "two\n");
    assert_string_equal(case_file_content(test.arena, path), "one\ntwo\n");
    assert_int_equal(append_begin(path, APPEND_IF_THERE, test.arena, test.problems, &appending),
                     APPEND_BEGUN);
    assert_string_equal(appending.source->bytes, "one\ntwo\n");
    assert_true(append_end(&appending, append_length(&appending), bytes_of(""), test.problems));
    expect_errors(0);
}

static void what_is_torn_is_cut_off(void **state)
{
    (void)state;
    const char *path = path_of("torn.csv");
    case_file_make(folder, "torn.csv", "\xEF\xBB\xBFone\ntw");
    file_add(path, 7, "# tw\nthree\n");
    assert_string_equal(case_file_content(test.arena, path), "\xEF\xBB\xBFone\n# tw\nthree\n");
}

static void nothing_to_add_touches_nothing(void **state)
{
    (void)state;
    struct stat before, after;
    const char *path = path_of("still.csv");
    case_file_make(folder, "still.csv", "one\n");
    assert_int_equal(stat(path, &before), 0);
    file_add(path, -1, "");
    assert_int_equal(stat(path, &after), 0);
    assert_int_equal(before.st_mtim.tv_nsec, after.st_mtim.tv_nsec);
    assert_int_equal(before.st_size, after.st_size);
}

static void refused(const char *path)
{
    struct appending appending;
    test.problems = problems_new(test.arena);
    assert_int_equal(append_begin(path, APPEND_MAKE, test.arena, test.problems, &appending),
                     APPEND_FAILED);
    assert_int_equal(problems_count(test.problems, SEVERITY_FAILURE), 1);
}

static void what_is_no_regular_file_is_refused(void **state)
{
    (void)state;
    assert_int_equal(mkdir(path_of("folder"), 0777), 0);
    assert_int_equal(mkfifo(path_of("fifo"), 0666), 0);
    refused(path_of("folder"));
    refused(path_of("fifo"));
    refused(path_of("none/register.csv"));
    refused("/dev/null");
    case_file_make(folder, "real.csv", "one\n");
    assert_int_equal(symlink(path_of("real.csv"), path_of("link.csv")), 0);
    test.problems = problems_new(test.arena);
    file_add(path_of("link.csv"), -1, "two\n");
    assert_string_equal(case_file_content(test.arena, path_of("real.csv")), "one\ntwo\n");
}

/* Added in several goes, the first of which cuts; nobody else can begin in between. */
static void more_can_follow(void **state)
{
    (void)state;
    struct appending appending;
    const char *path = path_of("more.csv");
    case_file_make(folder, "more.csv", "\xEF\xBB\xBFold\ntorn");
    assert_int_equal(append_begin(path, APPEND_MAKE, test.arena, test.problems, &appending),
                     APPEND_BEGUN);
    assert_true(append_more(&appending, 7, bytes_of("one\n"), test.problems));
    assert_int_equal(append_length(&appending), 11);
    assert_true(append_more(&appending, 11, bytes_of("two\n"), test.problems));
    assert_true(append_more(&appending, 15, bytes_of(""), test.problems));
    assert_true(append_end(&appending, append_length(&appending), bytes_of("three\n"),
                           test.problems));
    assert_string_equal(case_file_content(test.arena, path),
                        "\xEF\xBB\xBFold\none\ntwo\nthree\n");
}

/* A process may be begun without standard input: then the folder of the file gets its number. */
static void standard_input_may_be_closed(void **state)
{
    (void)state;
    struct appending appending;
    int kept = dup(STDIN_FILENO);
    assert_int_equal(append_begin(path_of("none.csv"), APPEND_MAKE, test.arena, test.problems,
                                  &appending), APPEND_BEGUN);
    (void)close(STDIN_FILENO);
    bool added = append_end(&appending, 0, bytes_of("one\n"), test.problems);
    if (kept >= 0) {
        assert_int_equal(dup2(kept, STDIN_FILENO), STDIN_FILENO);
        (void)close(kept);
    }
    assert_true(added);
    expect_errors(0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        IN_FOLDER(a_file_is_made_only_where_it_is_asked_for),
        IN_FOLDER(what_is_torn_is_cut_off),
        IN_FOLDER(nothing_to_add_touches_nothing),
        IN_FOLDER(what_is_no_regular_file_is_refused),
        IN_FOLDER(more_can_follow),
        IN_FOLDER(standard_input_may_be_closed),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
