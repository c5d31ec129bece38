/* test_procedure_reference.c - the reference for authors: made of the tables, in lines that
 * can be read. */
#include "record_test.h"

#include "procedure/procedure_fields.h"
#include "procedure_reference.h"

static const char *reference(void)
{
    struct text_builder out = text_builder_in(test.arena);
    procedure_reference(&out);
    return out.at;
}

static void key_expect(const struct field_path *path, void *context)
{
    const char *line = text_format(test.arena, "\n  %s", field_path_text(path, test.arena));
    const struct text_builder *told = context;
    if (strstr(told->at, line) == NULL)
        fail_msg("not told of: %s", line);
    assert_false(text_empty(path->field->about));
}

static void every_key_is_told(void **state)
{
    (void)state;
    struct text_builder out = text_builder_in(test.arena);
    procedure_reference(&out);
    fields_walk(&logic_table, key_expect, &out);
    fields_walk(&head_texts, key_expect, &out);
    assert_non_null(strstr(out.at, "\n  steps/{id}/cases/{id}/act\n"));
}

static void choices_are_told(void **state)
{
    (void)state;
    assert_non_null(strstr(reference(), "colour of the stripe [fire, rescue, control, warning]\n"));
    assert_non_null(strstr(reference(), "  surely "));
}

static void lines_are_short(void **state)
{
    (void)state;
    for (const char *line = reference(); *line != '\0';) {
        size_t length = strcspn(line, "\n");
        assert_true(length <= 100);
        assert_true(length == 0 || line[length - 1] != ' ');
        line += length + 1;
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_key_is_told),
        TEST(choices_are_told),
        TEST(lines_are_short),
    };
    int failed = cmocka_run_group_tests_name("procedure reference", tests, NULL, NULL);
    return failed != 0;
}
