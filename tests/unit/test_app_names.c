/* test_app_names.c - lists of names, and how a name that is none of them is mended. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "app/names.h"

static struct arena *arena;
static struct names boats;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1024 * 1024);
    boats = (struct names){0};
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

static void names_are_copied(void **state)
{
    char name[] = "tern";
    (void)state;
    names_add(&boats, name, arena);
    name[0] = 'f';
    assert_string_equal(boats.at[0], "tern");
    assert_true(names_hold(&boats, "tern"));
    assert_false(names_hold(&boats, "fern"));
}

static void a_piece_of_a_name_is_none(void **state)
{
    (void)state;
    assert_false(names_hold(&boats, "tern"));
    names_add(&boats, "tern", arena);
    assert_false(names_hold(&boats, "ter"));
    assert_false(names_hold(&boats, "terns"));
    assert_false(names_hold(&boats, ""));
}

static void order_is_that_of_bytes(void **state)
{
    static const char *const wanted[] = {"", "Alder", "alder", "alder-two", "alder_two", "ässe"};
    (void)state;
    names_sort(&boats);
    assert_int_equal(boats.count, 0);
    for (size_t i = sizeof wanted / sizeof *wanted; i-- > 0;)
        names_add(&boats, wanted[i], arena);
    names_sort(&boats);
    for (size_t i = 0; i < sizeof wanted / sizeof *wanted; i++)
        assert_string_equal(boats.at[i], wanted[i]);
}

static void many_names_are_kept(void **state)
{
    (void)state;
    for (int i = 0; i < 1000; i++)
        names_add(&boats, text_format(arena, "boat%d", i), arena);
    assert_int_equal(boats.count, 1000);
    assert_string_equal(boats.at[0], "boat0");
    assert_true(names_hold(&boats, "boat999"));
}

static void the_nearest_is_proposed(void **state)
{
    (void)state;
    names_add(&boats, "samphire", arena);
    names_add(&boats, "tamarisk", arena);
    assert_string_equal(names_remedy(&boats, "tamarsik", "boats: ", arena),
                        "did you mean \"tamarisk\"?");
    assert_string_equal(names_remedy(&boats, "gorse", "boats: ", arena),
                        "boats: samphire, tamarisk");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(names_are_copied, set_up, tear_down),
        cmocka_unit_test_setup_teardown(a_piece_of_a_name_is_none, set_up, tear_down),
        cmocka_unit_test_setup_teardown(order_is_that_of_bytes, set_up, tear_down),
        cmocka_unit_test_setup_teardown(many_names_are_kept, set_up, tear_down),
        cmocka_unit_test_setup_teardown(the_nearest_is_proposed, set_up, tear_down),
    };
    return cmocka_run_group_tests_name("app names", tests, NULL, NULL) != 0;
}
