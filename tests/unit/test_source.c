/* test_source.c - reading files and finding lines, columns and offsets. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "source.h"
#include "text.h"

#define LIMIT ((size_t)16 * 1024 * 1024)

struct bench {
    struct arena *arena;
    char folder[64];
};

static int bench_set_up(void **state)
{
    static struct bench bench;

    bench.arena = arena_new(LIMIT);
    (void)snprintf(bench.folder, sizeof bench.folder, "/tmp/maydeck-source-XXXXXX");
    *state = &bench;
    return mkdtemp(bench.folder) == NULL;
}

static const char *path_in(struct bench *bench, const char *name)
{
    return text_format(bench->arena, "%s/%s", bench->folder, name);
}

static int bench_tear_down(void **state)
{
    static const char *const names[] = {"file", "pipe", "secret"};
    struct bench *bench = *state;

    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++)
        (void)unlink(path_in(bench, names[i]));
    int left = rmdir(bench->folder);
    arena_free(bench->arena);
    return left;
}

static const char *file_write(struct bench *bench, const char *bytes, size_t length)
{
    const char *path = path_in(bench, "file");
    FILE *file = fopen(path, "wb");

    assert_non_null(file);
    assert_int_equal(fwrite(bytes, 1, length, file), length);
    assert_int_equal(fclose(file), 0);
    return path;
}

static void test_read(void **state)
{
    struct bench *bench = *state;
    struct source *source = NULL;
    const char *path = file_write(bench, "a\nb\0c", 5);

    assert_int_equal(source_read(bench->arena, path, 5, &source), SOURCE_READ);
    assert_string_equal(source->name, path);
    assert_int_equal(source->length, 5);
    assert_memory_equal(source->bytes, "a\nb\0c", 6);
    assert_int_equal(source->line_count, 2);
}

static void test_read_empty_and_marked(void **state)
{
    struct bench *bench = *state;
    struct source *source = NULL;

    assert_int_equal(source_read(bench->arena, file_write(bench, "", 0), 0, &source),
                     SOURCE_READ);
    assert_int_equal(source->length, 0);
    assert_int_equal(source->line_count, 1);
    assert_int_equal(
        source_read(bench->arena, file_write(bench, "\xEF\xBB\xBFhi", 5), 5, &source),
        SOURCE_READ);
    assert_string_equal(source->bytes, "hi");
    assert_int_equal(source->length, 2);
}

static void test_read_refusals(void **state)
{
    struct bench *bench = *state;
    struct source *source = source_from(bench->arena, "x", "", 0);
    const char *path = file_write(bench, "123456", 6);

    assert_int_equal(source_read(bench->arena, path, 5, &source), SOURCE_TOO_LARGE);
    assert_null(source);
    assert_int_equal(source_read(bench->arena, path_in(bench, "none"), 5, &source),
                     SOURCE_ABSENT);
    assert_int_equal(source_read(bench->arena, path_in(bench, "file/under"), 5, &source),
                     SOURCE_ABSENT);
    assert_int_equal(source_read(bench->arena, "", 5, &source), SOURCE_ABSENT);
    assert_int_equal(source_read(bench->arena, bench->folder, 5, &source), SOURCE_NOT_A_FILE);
    assert_int_equal(source_read(bench->arena, "/dev/null", 5, &source), SOURCE_NOT_A_FILE);
    assert_int_equal(source_read(bench->arena, "/dev/zero", 5, &source), SOURCE_NOT_A_FILE);
}

/* Nobody writes into the pipe: opening it for reading would wait for ever. */
static void test_read_pipe(void **state)
{
    struct bench *bench = *state;
    struct source *source = NULL;
    const char *path = path_in(bench, "pipe");

    assert_int_equal(mkfifo(path, 0600), 0);
    (void)alarm(20);
    assert_int_equal(source_read(bench->arena, path, 5, &source), SOURCE_NOT_A_FILE);
    (void)alarm(0);
}

/* These files say that they have no bytes, and then have some. */
static void test_read_more_than_told(void **state)
{
    struct bench *bench = *state;
    struct source *source = NULL;

    if (access("/proc/self/status", R_OK) != 0)
        skip();
    assert_int_equal(source_read(bench->arena, "/proc/self/status", LIMIT, &source),
                     SOURCE_READ);
    assert_true(source->length > 100);
    assert_int_equal(source_read(bench->arena, "/proc/self/status", 100, &source),
                     SOURCE_TOO_LARGE);
}

static void test_read_failure_keeps_errno(void **state)
{
    struct bench *bench = *state;
    struct source *source = NULL;
    const char *path = path_in(bench, "loop");

    assert_int_equal(symlink("loop", path), 0);
    errno = 0;
    enum source_result result = source_read(bench->arena, path, 5, &source);
    int reason = errno;
    (void)unlink(path);
    assert_int_equal(result, SOURCE_FAILED);
    assert_int_equal(reason, ELOOP);
}

/* A file that opens and gives no bytes: that of the process's own memory, at its beginning. */
static void test_read_failure_ends(void **state)
{
    struct bench *bench = *state;
    struct source *source = NULL;

    if (access("/proc/self/mem", R_OK) != 0)
        skip();
    (void)alarm(20);
    assert_int_equal(source_read(bench->arena, "/proc/self/mem", LIMIT, &source), SOURCE_FAILED);
    (void)alarm(0);
    assert_null(source);
}

static struct source *source_of(void **state, const char *bytes)
{
    struct bench *bench = *state;

    return source_from(bench->arena, "t", bytes, strlen(bytes));
}

static void line_is(const struct source *source, int line, const char *expected)
{
    size_t length;
    const char *bytes = source_line(source, line, &length);

    assert_int_equal(length, strlen(expected));
    assert_memory_equal(bytes, expected, length);
}

static void test_lines(void **state)
{
    struct source *source = source_of(state, "one\ntwo\r\nthree\rfour\n\n");

    assert_int_equal(source->line_count, 6);
    line_is(source, 1, "one");
    line_is(source, 2, "two");
    line_is(source, 3, "three");
    line_is(source, 4, "four");
    line_is(source, 5, "");
    line_is(source, 6, "");
    line_is(source, 7, "");
    line_is(source, 0, "");
    line_is(source, -1, "");
}

/* Whatever line end a text has last, the line behind it is empty and begins at its end. */
static void test_last_line_ends(void **state)
{
    static const char *const texts[] = {"a\n", "a\r", "a\r\n", "\n",
                                        "\r", "\r\n", "a\n\r", "a\r\r"};
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
        struct source *source = source_of(state, texts[i]);
        assert_int_equal(source->line_starts[source->line_count - 1], strlen(texts[i]));
    }
}

static void place_is(const struct source *source, size_t offset, int line, int column)
{
    struct place place = source_place(source, offset);

    assert_ptr_equal(place.source, source);
    assert_int_equal(place.line, line);
    assert_int_equal(place.column, column);
    assert_int_equal(place.span, 0);
}

static void test_places(void **state)
{
    struct source *source = source_of(state, "a\xC5\xA1z\r\nx\xFFy\n");

    place_is(source, 0, 1, 1);
    place_is(source, 1, 1, 2);
    place_is(source, 2, 1, 2);  /* inside of a character */
    place_is(source, 3, 1, 3);
    place_is(source, 6, 2, 1);
    place_is(source, 8, 2, 3);  /* the bad byte counts as one */
    place_is(source, 10, 3, 1);
    place_is(source, 9999, 3, 1);
    struct place whole = source_whole(source);
    assert_ptr_equal(whole.source, source);
    assert_int_equal(whole.line + whole.column + whole.span, 0);
}

static void test_offsets(void **state)
{
    struct source *source = source_of(state, "a\xC5\xA1z\r\nx\xFFy\n");

    assert_int_equal(source_offset(source, 1, 1), 0);
    assert_int_equal(source_offset(source, 1, 3), 3);
    assert_int_equal(source_offset(source, 1, 99), 4);
    assert_int_equal(source_offset(source, 2, 3), 8);
    assert_int_equal(source_offset(source, 3, 1), 10);
    assert_int_equal(source_offset(source, 9, 1), 10);
    assert_int_equal(source_offset(source, 0, 5), 0);
    assert_int_equal(source_offset(source, 2, -4), 6);
}

/* What a pipe gives in several pieces is one text, however long, up to the limit. */
static void test_read_stream(void **state)
{
    struct bench *bench = *state;
    struct source *source;
    int ends[2];

    assert_int_equal(pipe(ends), 0);
    assert_int_equal(write(ends[1], "one\ntwo", 7), 7);
    (void)close(ends[1]);
    assert_int_equal(source_read_stream(bench->arena, ends[0], "standard input", 7, &source),
                     SOURCE_READ);
    (void)close(ends[0]);
    assert_string_equal(source->name, "standard input");
    assert_string_equal(source->bytes, "one\ntwo");
    assert_int_equal(source->line_count, 2);
}

/* More than one piece of what it reads at once. */
#define STREAM_LENGTH 60000

static void test_read_long_stream(void **state)
{
    struct bench *bench = *state;
    char *bytes = arena_alloc(bench->arena, STREAM_LENGTH);
    struct source *source;
    int ends[2];

    memset(bytes, 'x', STREAM_LENGTH);
    for (size_t limit = STREAM_LENGTH - 1; limit <= STREAM_LENGTH; limit++) {
        assert_int_equal(pipe(ends), 0);
        assert_int_equal(write(ends[1], bytes, STREAM_LENGTH), STREAM_LENGTH);
        (void)close(ends[1]);
        enum source_result result =
            source_read_stream(bench->arena, ends[0], "standard input", limit, &source);
        (void)close(ends[0]);
        assert_int_equal(result, limit < STREAM_LENGTH ? SOURCE_TOO_LARGE : SOURCE_READ);
        assert_int_equal(source == NULL, limit < STREAM_LENGTH);
    }
    assert_int_equal(source->length, STREAM_LENGTH);
}

static void test_read_stream_failure(void **state)
{
    struct bench *bench = *state;
    struct source *source;
    int ends[2];

    assert_int_equal(pipe(ends), 0);
    (void)close(ends[0]);
    /* the end that is written into cannot be read from */
    assert_int_equal(source_read_stream(bench->arena, ends[1], "standard input", 7, &source),
                     SOURCE_FAILED);
    assert_int_equal(errno, EBADF);
    assert_null(source);
    (void)close(ends[1]);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_read),
        cmocka_unit_test(test_read_empty_and_marked),
        cmocka_unit_test(test_read_refusals),
        cmocka_unit_test(test_read_pipe),
        cmocka_unit_test(test_read_more_than_told),
        cmocka_unit_test(test_read_failure_keeps_errno),
        cmocka_unit_test(test_read_failure_ends),
        cmocka_unit_test(test_read_stream),
        cmocka_unit_test(test_read_long_stream),
        cmocka_unit_test(test_read_stream_failure),
        cmocka_unit_test(test_lines),
        cmocka_unit_test(test_last_line_ends),
        cmocka_unit_test(test_places),
        cmocka_unit_test(test_offsets),
    };

    return cmocka_run_group_tests_name("source", tests, bench_set_up, bench_tear_down) != 0;
}
