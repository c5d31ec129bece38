/* test_procedure_reference.c - the reference for authors: made of the tables, a key a
 * line. */
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
    const char *line = text_format(test.arena, "\n%s  ", field_path_text(path, test.arena));
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
    assert_non_null(strstr(out.at, "\nsteps/{id}/cases/{id}/act  text, needed: "));
}

static void choices_are_told(void **state)
{
    (void)state;
    assert_non_null(strstr(reference(), "colour of the stripe [fire, rescue, control, warning]\n"));
    assert_non_null(strstr(reference(), "\nsurely  "));
}

/* Two spaces part a key from what it means, and stand nowhere else. */
static void keys_stand_apart(void **state)
{
    (void)state;
    size_t keys = 0;
    for (const char *line = reference(); *line != '\0';) {
        size_t length = strcspn(line, "\n");
        const char *apart = strstr(line, "  ");
        assert_true(length == 0 || (line[0] != ' ' && line[length - 1] != ' '));
        if (apart != NULL && apart < line + length) {
            const char *again = strstr(apart + 2, "  ");
            assert_true(again == NULL || again > line + length);
            keys++;
        }
        line += length + 1;
    }
    assert_true(keys > 50);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_key_is_told),
        TEST(choices_are_told),
        TEST(keys_stand_apart),
    };
    int failed = cmocka_run_group_tests_name("procedure reference", tests, NULL, NULL);
    return failed != 0;
}
