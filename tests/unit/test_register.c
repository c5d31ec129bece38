/* test_register.c - rows of printed sheets: sorted, and read back by the program's own
 * reader of YAML. */
#include "record_test.h"

#include "register.h"
#include "yaml_tree.h"

static const struct printed_sheet sheets[] = {
    {"tamarisk", "flooding", "en", "3EHB-1W4H", {2026, 11, 20}},
    {"bramble", "flooding", "en", "3A3T-DAAZ", {2026, 11, 20}},
    {"tamarisk", "engine_fire", "qps", "0TJ8-GE2D", {2026, 11, 20}},
    {"tamarisk", "engine_fire", "en", "9ZZZ-0000", {2026, 11, 20}},
    {"tamarisk", "engine_fire", "en", "1AAA-1111", {2026, 11, 20}},
    {"tamarisk", "engine_fire", "en", "ZZZZ-ZZZZ", {2026, 5, 2}},
};
enum { SHEETS = sizeof sheets / sizeof sheets[0] };

static void rows_are_sorted(void **state)
{
    (void)state;
    assert_string_equal(
        register_text(sheets, SHEETS, test.arena),
        "- {boat: \"bramble\", sheet: \"flooding\", language: \"en\", code: \"3A3T-DAAZ\", "
        "printed: 2026-11-20}\n"
        "- {boat: \"tamarisk\", sheet: \"engine_fire\", language: \"en\", code: \"ZZZZ-ZZZZ\", "
        "printed: 2026-05-02}\n"
        "- {boat: \"tamarisk\", sheet: \"engine_fire\", language: \"en\", code: \"1AAA-1111\", "
        "printed: 2026-11-20}\n"
        "- {boat: \"tamarisk\", sheet: \"engine_fire\", language: \"en\", code: \"9ZZZ-0000\", "
        "printed: 2026-11-20}\n"
        "- {boat: \"tamarisk\", sheet: \"engine_fire\", language: \"qps\", code: \"0TJ8-GE2D\", "
        "printed: 2026-11-20}\n"
        "- {boat: \"tamarisk\", sheet: \"flooding\", language: \"en\", code: \"3EHB-1W4H\", "
        "printed: 2026-11-20}\n");
}

static void the_order_they_come_in_is_lost(void **state)
{
    (void)state;
    struct printed_sheet turned[SHEETS];
    for (size_t i = 0; i < SHEETS; i++)
        turned[i] = sheets[SHEETS - 1 - i];
    assert_string_equal(register_text(turned, SHEETS, test.arena),
                        register_text(sheets, SHEETS, test.arena));
}

static void no_rows_give_no_text(void **state)
{
    (void)state;
    assert_string_equal(register_text(NULL, 0, test.arena), "");
}

/* A boat is called as her file is, whatever stands in that name. */
static void what_is_written_is_read_back(void **state)
{
    static const char *const boats[] = {"tern", "a \"b\" \\ c", "no: #1, {x}", "Žuta 'ptica'",
                                        "yes", "007"};
    (void)state;
    for (size_t i = 0; i < sizeof boats / sizeof boats[0]; i++) {
        struct printed_sheet sheet = {boats[i], "flooding", "en", "3EHB-1W4H", {2026, 11, 20}};
        const char *text = register_text(&sheet, 1, test.arena);
        const struct yaml_node *root =
            yaml_tree_read(file_of("register.yaml", text), test.arena, test.problems);
        assert_non_null(root);
        assert_int_equal(root->kind, YAML_SEQUENCE);
        assert_int_equal(root->count, 1);
        assert_string_equal(yaml_get(root->items[0], "boat")->text, boats[i]);
        assert_string_equal(yaml_get(root->items[0], "code")->text, "3EHB-1W4H");
        assert_string_equal(yaml_get(root->items[0], "printed")->text, "2026-11-20");
    }
    assert_int_equal(problems_count(test.problems, SEVERITY_NOTE), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(rows_are_sorted),
        TEST(the_order_they_come_in_is_lost),
        TEST(no_rows_give_no_text),
        TEST(what_is_written_is_read_back),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
