/* test_arena.c - the arena: alignment, zeroes, growth, and the way out when
 * memory ends. The latter is looked at in a child process. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdalign.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include "arena.h"
#include "child_case.h"

#define OUT_OF_MEMORY                 \
    "maydeck: error: out of memory\n" \
    "  remedy: end other programs, or ask for fewer boats at once; -j 1 takes the least\n"

#define LIMIT ((size_t)16 * 1024 * 1024)

static void test_aligned_zeroed_apart(void **state)
{
    (void)state;
    struct arena *arena = arena_new(LIMIT);
    unsigned char *last = NULL;

    for (size_t size = 0; size < 3000; size += 7) {
        unsigned char *at = arena_alloc(arena, size);
        assert_non_null(at);
        assert_int_equal((uintptr_t)at % alignof(max_align_t), 0);
        for (size_t i = 0; i < size; i++)
            assert_int_equal(at[i], 0);
        memset(at, 0xAA, size);
        assert_ptr_not_equal(at, last);
        last = at;
    }
    arena_free(arena);
}

static void test_large_block(void **state)
{
    (void)state;
    struct arena *arena = arena_new(LIMIT);
    char *small = arena_copy(arena, "small", 5);
    unsigned char *large = arena_alloc(arena, 1024 * 1024);

    large[0] = 1;
    large[1024 * 1024 - 1] = 2;
    char *after = arena_copy(arena, "after", 5);
    assert_string_equal(small, "small");
    assert_string_equal(after, "after");
    assert_int_equal(large[0] + large[1024 * 1024 - 1], 3);
    arena_free(arena);
}

static void test_copy(void **state)
{
    (void)state;
    struct arena *arena = arena_new(LIMIT);

    assert_string_equal(arena_copy(arena, "abcdef", 3), "abc");
    assert_string_equal(arena_copy(arena, NULL, 0), "");
    assert_memory_equal(arena_copy(arena, "a\0b", 3), "a\0b", 4);
    arena_free(arena);
}

static void test_grow_keeps_elements(void **state)
{
    (void)state;
    struct arena *arena = arena_new(LIMIT);
    int *items = NULL;
    size_t capacity = 0;

    for (size_t count = 0; count < 1000; count++) {
        items = arena_grow(arena, items, count, &capacity, sizeof *items);
        assert_true(capacity > count);
        items[count] = (int)count;
    }
    for (int i = 0; i < 1000; i++)
        assert_int_equal(items[i], i);
    arena_free(arena);
}

/* What was dealt out last grows where it stands, with zeros behind; else it is copied. */
static void test_extend(void **state)
{
    (void)state;
    struct arena *arena = arena_new(LIMIT);
    unsigned char *first = arena_alloc(arena, 10);
    memset(first, 7, 10);
    unsigned char *larger = arena_extend(arena, first, 10, 1000);
#ifndef MEMORY_IS_WATCHED
    assert_ptr_equal(larger, first);
#endif
    for (size_t i = 0; i < 1000; i++)
        assert_int_equal(larger[i], i < 10 ? 7 : 0);
    memset(larger, 8, 1000);
    unsigned char *behind = arena_alloc(arena, 10);
    memset(behind, 9, 10);
    unsigned char *moved = arena_extend(arena, larger, 1000, 5000);
    assert_ptr_not_equal(moved, larger);
    for (size_t i = 0; i < 5000; i++)
        assert_int_equal(moved[i], i < 1000 ? 8 : 0);
    assert_int_equal(behind[0], 9);
    assert_int_equal(larger[999], 8);
    unsigned char *huge = arena_extend(arena, moved, 5000, 200000);    /* beyond its block */
    assert_int_equal(huge[999], 8);
    assert_int_equal(huge[1000], 0);
    assert_int_equal(huge[5000], 0);
    assert_int_equal(huge[199999], 0);
    assert_non_null(arena_extend(arena, NULL, 0, 0));
    arena_free(arena);
}

static void test_free_of_nothing(void **state)
{
    (void)state;
    arena_free(NULL);
    struct arena *arena = arena_new(LIMIT);
    arena_free(arena);
}

/* ---- the end of memory ---- */

static void over_the_limit(void)
{
    struct arena *arena = arena_new(100000);
    for (int i = 0; i < 1000; i++)
        (void)arena_alloc(arena, 1000);
}

static void one_over_the_limit(void)
{
    (void)arena_alloc(arena_new(4096), 4097);
}

static void product_too_large(void)
{
    (void)arena_array(arena_new(SIZE_MAX), SIZE_MAX / 2, 3);
}

static void size_too_large(void)
{
    (void)arena_alloc(arena_new(SIZE_MAX), SIZE_MAX - 4);
}

static void copy_too_large(void)
{
    (void)arena_copy(arena_new(SIZE_MAX), "x", SIZE_MAX);
}

static void clean_up(void)
{
    static const char sign[] = "clean-up\n";
    ssize_t written = write(STDERR_FILENO, sign, sizeof sign - 1);
    (void)written;
    arena_exhausted();  /* a second end while cleaning up must end all the same */
}

static void with_clean_up(void)
{
    arena_on_exhaustion(clean_up);
    over_the_limit();
}

static void test_end_of_memory(void **state)
{
    (void)state;
    static void (*const faults[])(void) = {
        over_the_limit, one_over_the_limit, product_too_large, size_too_large,
        copy_too_large, arena_exhausted,
    };

    for (size_t i = 0; i < sizeof faults / sizeof faults[0]; i++) {
        struct child_ending ending = child_ending_of(faults[i]);
        assert_true(WIFEXITED(ending.status));
        assert_int_equal(WEXITSTATUS(ending.status), 3);
        assert_string_equal(ending.said, OUT_OF_MEMORY);
    }
}

/* The sanitizers' allocator ends the process itself where the system's says no,
 * so that there is nothing to see there. */
#ifdef MEMORY_IS_WATCHED
static void test_system_refuses(void **state)
{
    (void)state;
    skip();
}
#else
static void system_refuses(void)
{
    (void)arena_alloc(arena_new(SIZE_MAX), SIZE_MAX / 2 - 4096);
}

static void test_system_refuses(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(system_refuses);
    assert_true(WIFEXITED(ending.status));
    assert_int_equal(WEXITSTATUS(ending.status), 3);
    assert_non_null(strstr(ending.said, "maydeck: error: out of memory\n"));
}
#endif

static void test_clean_up_runs_once(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(with_clean_up);

    assert_true(WIFEXITED(ending.status));
    assert_int_equal(WEXITSTATUS(ending.status), 3);
    assert_string_equal(ending.said, "clean-up\n" OUT_OF_MEMORY);
}

static void at_work(void)
{
    arena_exhaustion_from("bramble");
    over_the_limit();
}

static void test_tells_from_where(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(at_work);

    assert_true(WIFEXITED(ending.status));
    assert_int_equal(WEXITSTATUS(ending.status), 3);
    assert_non_null(strstr(ending.said, "out of memory: nothing is done from bramble on\n"));
    assert_non_null(strstr(ending.said, "\n  remedy: "));
}

static void within_the_limit(void)
{
    struct arena *arena = arena_new(4096);
    memset(arena_alloc(arena, 4096), 1, 4096);
    _exit(42);
}

static void test_limit_can_be_used_up(void **state)
{
    (void)state;
    struct child_ending ending = child_ending_of(within_the_limit);
    assert_true(WIFEXITED(ending.status));
    assert_int_equal(WEXITSTATUS(ending.status), 42);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_aligned_zeroed_apart),
        cmocka_unit_test(test_large_block),
        cmocka_unit_test(test_copy),
        cmocka_unit_test(test_grow_keeps_elements),
        cmocka_unit_test(test_extend),
        cmocka_unit_test(test_free_of_nothing),
        cmocka_unit_test(test_end_of_memory),
        cmocka_unit_test(test_system_refuses),
        cmocka_unit_test(test_clean_up_runs_once),
        cmocka_unit_test(test_tells_from_where),
        cmocka_unit_test(test_limit_can_be_used_up),
    };

    return cmocka_run_group_tests_name("arena", tests, NULL, NULL) != 0;
}
