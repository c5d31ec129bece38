/* test_app_files.c - files and folders read, with a message for each refusal. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <errno.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "app/fleet.h"
#include "app_case.h"

static struct arena *arena;
static const char *folder;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)16 * 1024 * 1024);
    folder = case_folder(arena);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    case_folder_sweep(folder);
    arena_free(arena);
    return 0;
}

static const char *path_of(const char *name)
{
    return text_format(arena, "%s/%s", folder, name);
}

static void kinds_are_told_apart(void **state)
{
    (void)state;
    case_file_make(folder, "below/file", "x");
    assert_int_equal(symlink("below", path_of("to_folder")), 0);
    assert_int_equal(symlink("below/file", path_of("to_file")), 0);
    assert_int_equal(symlink("nowhere", path_of("to_nothing")), 0);
    assert_true(is_folder(folder) && is_folder(path_of("to_folder")));
    assert_false(is_folder(path_of("below/file")) || is_folder(path_of("none")));
    assert_true(is_plain_file(path_of("below/file")));
    assert_false(is_plain_file(path_of("to_file")) || is_plain_file(folder));
    assert_true(is_there(path_of("to_nothing")) && is_there(path_of("below/file")));
    assert_false(is_there(path_of("none")));
}

/* Hidden ones too, and neither the folder itself nor the one above it. */
static void names_come_in_order(void **state)
{
    static const char *const wanted[] = {".hidden", "a.yaml", "b.yaml", "c"};
    struct names names;
    (void)state;
    case_file_make(folder, "b.yaml", "");
    case_file_make(folder, "c/inside", "");
    case_file_make(folder, ".hidden", "");
    case_file_make(folder, "a.yaml", "");
    assert_int_equal(folder_names(arena, folder, &names), 0);
    assert_int_equal(names.count, 4);
    for (size_t i = 0; i < 4; i++)
        assert_string_equal(names.at[i], wanted[i]);
    assert_int_equal(folder_names(arena, path_of("none"), &names), ENOENT);
    assert_int_equal(names.count, 0);
    assert_int_equal(folder_names(arena, path_of("a.yaml"), &names), ENOTDIR);
}

/* The one problem that reading the file gives. */
static const struct problem *refusal_of(const char *name, enum severity absent)
{
    struct problems *problems = problems_new(arena);
    size_t count;
    assert_null(file_read(path_of(name), (struct file_absent){absent, "put it there"}, arena,
                          problems));
    const struct problem *list = problems_sorted(problems, &count);
    assert_int_equal(count, 1);
    assert_false(text_empty(list[0].remedy));
    assert_non_null(strstr(list[0].what, name));
    return &list[0];
}

static void each_refusal_has_its_words(void **state)
{
    size_t length = (size_t)300 * 1024;
    char *large = arena_alloc(arena, length + 1);
    (void)state;
    memset(large, '#', length);
    case_file_make(folder, "large", large);
    case_file_make(folder, "folder/inside", "");
    const struct problem *absent = refusal_of("none", SEVERITY_ERROR);
    assert_int_equal(absent->severity, SEVERITY_ERROR);
    assert_string_equal(absent->remedy, "put it there");
    assert_non_null(strstr(refusal_of("folder", SEVERITY_USE)->what, "is not a file"));
    assert_int_equal(refusal_of("folder", SEVERITY_USE)->severity, SEVERITY_USE);
    assert_int_equal(refusal_of("large", SEVERITY_USE)->severity, SEVERITY_ERROR);
    assert_int_equal(refusal_of("large", SEVERITY_FAILURE)->severity, SEVERITY_FAILURE);
}

static void a_file_is_read(void **state)
{
    struct problems *problems = problems_new(arena);
    (void)state;
    case_file_make(folder, "a", "one\n");
    const struct source *source = file_read(
        path_of("a"), (struct file_absent){SEVERITY_ERROR, ""}, arena, problems);
    assert_non_null(source);
    assert_int_equal(source->length, 4);
    assert_false(problems_reach(problems, SEVERITY_SILENCED));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(kinds_are_told_apart, set_up, tear_down),
        cmocka_unit_test_setup_teardown(names_come_in_order, set_up, tear_down),
        cmocka_unit_test_setup_teardown(each_refusal_has_its_words, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_file_is_read, set_up, tear_down),
    };
    return cmocka_run_group_tests_name("app files", tests, NULL, NULL) != 0;
}
