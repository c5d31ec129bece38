/* test_app_json.c - objects as JSON by a table of members, and their schema from the same. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "app/json.h"

struct part { const char *text; int line; };

struct whole {
    const char *name;
    bool good;
    size_t count;
    struct part part;
    const struct part *none;
    struct json_list parts;
};

static const struct json_member part_members[] = {
    {"text", JSON_TEXT_OR_NULL, offsetof(struct part, text), NULL, NULL, NULL},
    {"line", JSON_NUMBER_OR_NULL, offsetof(struct part, line), NULL, NULL, "of a file"},
};
static const struct json_shape part_shape = {"part", sizeof(struct part), part_members, 2};
static const struct json_member whole_members[] = {
    {"name", JSON_TEXT, offsetof(struct whole, name), NULL, "\"minLength\": 1", NULL},
    {"good", JSON_FLAG, offsetof(struct whole, good), NULL, NULL, NULL},
    {"count", JSON_COUNT, offsetof(struct whole, count), NULL, NULL, NULL},
    {"part", JSON_OBJECT, offsetof(struct whole, part), &part_shape, NULL, NULL},
    {"none", JSON_OBJECT_OR_NULL, offsetof(struct whole, none), &part_shape, NULL, NULL},
    {"parts", JSON_LIST, offsetof(struct whole, parts), &part_shape, NULL, NULL},
};
static const struct json_shape whole_shape = {"whole", sizeof(struct whole), whole_members, 6};

static void objects_written(void **state)
{
    struct arena *arena = arena_new(1u << 20);
    struct text_builder out = text_builder_in(arena);
    static const struct part parts[] = {{"a\"\\\n\x7f\xff", 3}, {NULL, 0}};
    struct whole whole = {"x", true, 7, {"\xc3\xa9", 1}, NULL, {parts, 2}};

    (void)state;
    json_add(&whole_shape, &whole, &out);
    assert_string_equal(out.at,
        "{\n  \"name\": \"x\",\n  \"good\": true,\n  \"count\": 7,\n"
        "  \"part\": {\"text\": \"\xc3\xa9\", \"line\": 1},\n  \"none\": null,\n  \"parts\": [\n"
        "    {\"text\": \"a\\\"\\\\\\u000a\\u007f\\ufffd\", \"line\": 3},\n"
        "    {\"text\": null, \"line\": null}]\n}\n");
    arena_free(arena);
}

static void schema_names_all(void **state)
{
    struct arena *arena = arena_new(1u << 20);
    struct text_builder out = text_builder_in(arena);

    (void)state;
    json_schema_add(&whole_shape, "of a test", &out);
    for (size_t i = 0; i < 6; i++)
        assert_non_null(strstr(out.at, text_format(arena, "\"%s\": {\"", whole_members[i].name)));
    const char *part = strstr(out.at, "    \"part\": {\n      \"type\": \"object\",\n"
                                      "      \"additionalProperties\": true,\n"
                                      "      \"required\": [\"text\", \"line\"],\n");
    assert_non_null(part);
    assert_null(strstr(part + 10, "\"part\": {\n"));    /* defined once */
    assert_non_null(strstr(out.at, "\"name\": {\"type\": \"string\", \"minLength\": 1}"));
    arena_free(arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(objects_written),
        cmocka_unit_test(schema_names_all),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
