/* test_authorities.c - reading the sources that the cards stand on. */
#include "record_test.h"

#include "procedure.h"

static const struct authorities *sources_of(const char *rows)
{
    const char *whole = text_format(test.arena, "sources:\n%s", rows);
    return authorities_read(file_of("sources.yaml", whole), test.arena, test.problems);
}

#define ROW_OF(key, tag) \
    "  - {key: " key ", issuer: Office, id: N 1, title: Fires, tag: " tag \
    ", read: 2026-11, status: current, grade: VB}\n"

static void sources_are_found_by_key(void **state)
{
    (void)state;
    const struct authorities *all = sources_of(ROW_OF("S1", "N 1") ROW_OF("S2", "N 2 twice 14"));
    expect_errors(0);
    assert_int_equal(all->count, 2);
    assert_string_equal(authority_find(all, "S2")->tag.text, "N 2 twice 14");
    assert_int_equal(authority_find(all, "S1")->grade.value, GRADE_VB);
    assert_int_equal(authority_find(all, "S1")->read.date.month, 11);
    assert_null(authority_find(all, "S3"));
}

static void a_key_is_given_once(void **state)
{
    (void)state;
    assert_null(sources_of(ROW_OF("S1", "N 1") ROW_OF("S2", "N 2") ROW_OF("S1", "N 3")));
    expect_errors(1);
    expect_error(4, "source S1 is given twice (first on line 2)",
                 "give each source a key of its own");
}

static void a_tag_is_short(void **state)
{
    (void)state;
    assert_non_null(sources_of(ROW_OF("S1", "fourteen signs")));
    assert_null(sources_of(ROW_OF("S1", "fifteen signs..")));
    expect_errors(1);
    expect_error(2, "tag is 15 characters long, at most 14 fit",
                 "shorten it: it is printed on the card");
}

static void status_and_grade_are_from_lists(void **state)
{
    (void)state;
    assert_null(sources_of("  - {key: S1, issuer: O, id: N, title: T, tag: N, read: 2026-11,\n"
                           "     status: curent, grade: VD}\n"));
    expect_errors(2);
    expect_error_with(3, "curent", "current");
    expect_error_with(3, "VD", "VA");
}

static void every_column_is_needed(void **state)
{
    (void)state;
    assert_null(sources_of("  - {key: S1, read: yesterday}\n"));
    expect_errors(7);
    expect_error_with(2, "yesterday", "2027");
    expect_error_with(2, "grade", "source");
}

static void a_file_without_sources_is_refused(void **state)
{
    (void)state;
    assert_null(authorities_read(file_of("sources.yaml", "source: []\n"), test.arena,
                                 test.problems));
    expect_error_with(1, "source", "sources");
    test.problems = problems_new(test.arena);
    assert_null(authorities_read(file_of("sources.yaml", "sources: none\n"), test.arena,
                                 test.problems));
    expect_errors(1);
    expect_error(1, "\"sources\" must be a list, not a text", NULL);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(sources_are_found_by_key),
        TEST(a_key_is_given_once),
        TEST(a_tag_is_short),
        TEST(status_and_grade_are_from_lists),
        TEST(every_column_is_needed),
        TEST(a_file_without_sources_is_refused),
    };
    int failed = cmocka_run_group_tests_name("authorities", tests, NULL, NULL);
    return failed != 0;
}
