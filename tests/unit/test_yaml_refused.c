/* test_yaml_refused.c - a value that is refused is not given, but keeps its place. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "yaml_fields_record.h"

static void read_into(struct arena *arena, const char *input, struct record *record)
{
    const struct source *source = source_from(arena, "t", input, strlen(input));
    struct problems *problems = problems_new(arena);
    *record = (struct record){0};
    fields_read(yaml_tree_read(source, arena, problems), &table, record, arena, problems);
}

/* One field of each kind, refused, then sound; both on line 2. */
static void each_kind_keeps_its_place(void **state)
{
    static const struct { const char *key, *refused, *sound; } rows[] = {
        {"spot", "{a: b}", "by the door"}, {"side", "left", "port"},
        {"hold_s", "500", "5"},            {"fitted", "true", "yes"},
        {"due", "2027-13", "2027-12"},     {"zones", "deck", "[cockpit]"},
        {"uses", "{a: b}", "[one, two]"},  {"steps", "one", "[one]"},
    };
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct field *field = field_find(&table, rows[i].key);
        struct arena *arena = arena_new((size_t)1 << 24);
        struct record record;
        read_into(arena, text_format(arena, "name: x\n%s: %s\n", rows[i].key, rows[i].refused),
                  &record);
        assert_null(field_text(field, &record, arena));
        assert_int_equal(field_place(field, &record).line, 2);
        assert_int_equal(field_place(field, &record).column, (int)strlen(rows[i].key) + 3);
        read_into(arena, text_format(arena, "name: x\n%s: %s\n", rows[i].key, rows[i].sound),
                  &record);
        assert_non_null(field_text(field, &record, arena));
        assert_int_equal(field_place(field, &record).line, 2);
        read_into(arena, text_format(arena, "name: x\n%s:\n", rows[i].key), &record);
        assert_int_equal(field_place(field, &record).line, 0);
        arena_free(arena);
    }
    (void)state;
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(each_kind_keeps_its_place)};
    return cmocka_run_group_tests_name("yaml_refused", tests, NULL, NULL) != 0;
}
