/* json_schema.c - the JSON Schema of objects by the table of their members (room: app).
 * Objects are open: a reader must bear members that were added later. */
#include "json.h"

#include "promise.h"

static void type_add(const struct json_member *member, struct text_builder *out)
{
    static const char *const types[] = {
        [JSON_TEXT] = "\"type\": \"string\"",
        [JSON_TEXT_OR_NULL] = "\"type\": [\"string\", \"null\"]",
        [JSON_FLAG] = "\"type\": \"boolean\"",
        [JSON_COUNT] = "\"type\": \"integer\", \"minimum\": 0",
        [JSON_NUMBER_OR_NULL] = "\"type\": [\"integer\", \"null\"], \"minimum\": 1",
        [JSON_OBJECT] = "\"$ref\": \"#/$defs/%s\"",
        [JSON_OBJECT_OR_NULL] =
            "\"anyOf\": [{\"type\": \"null\"}, {\"$ref\": \"#/$defs/%s\"}]",
        [JSON_LIST] = "\"type\": \"array\", \"items\": {\"$ref\": \"#/$defs/%s\"}",
        [JSON_TEXTS] = "\"type\": \"array\", \"items\": {\"type\": \"string\"}",
    };
    const char *type = types[member->kind];
    for (const char *at = type; *at != '\0'; at++)
        if (at[0] == '%' && at[1] == 's')
            text_add(out, member->of->name), at++;
        else
            text_add_bytes(out, at, 1);
}

static void member_schema_add(const struct json_member *member, int indent,
                              struct text_builder *out)
{
    text_add_format(out, "%*s\"%s\": {", indent, "", member->name);
    type_add(member, out);
    if (member->limits != NULL)
        text_add_format(out, ", %s", member->limits);
    if (member->about != NULL)
        text_add_format(out, ",\n%*s  \"description\": \"%s\"", indent, "", member->about);
    text_add(out, "}");
}

static void shape_schema_add(const struct json_shape *shape, int indent,
                             struct text_builder *out)
{
    text_add_format(out, "%*s\"type\": \"object\",\n%*s\"additionalProperties\": true,\n"
                    "%*s\"required\": [", indent, "", indent, "", indent, "");
    for (size_t i = 0; i < shape->count; i++)
        text_add_format(out, "%s\"%s\"", i == 0 ? "" : ", ", shape->members[i].name);
    text_add_format(out, "],\n%*s\"properties\": {", indent, "");
    for (size_t i = 0; i < shape->count; i++) {
        text_add(out, i == 0 ? "\n" : ",\n");
        member_schema_add(&shape->members[i], indent + 2, out);
    }
    text_add_format(out, "\n%*s}", indent, "");
}

/* The shapes that a shape is made of, each once, behind the one that names it first. */
struct shape_list { const struct json_shape *at[16]; size_t count; };

static void shapes_collect(const struct json_shape *shape, struct shape_list *list)
{
    for (size_t i = 0; i < shape->count; i++) {
        const struct json_shape *of = shape->members[i].of;
        bool known = of == NULL;
        for (size_t k = 0; !known && k < list->count; k++)
            known = list->at[k] == of;
        if (known)
            continue;
        promise(list->count < sizeof list->at / sizeof *list->at);
        list->at[list->count++] = of;
        shapes_collect(of, list);
    }
}

void json_schema_add(const struct json_shape *shape, const char *title,
                     struct text_builder *out)
{
    struct shape_list list = {0};
    shapes_collect(shape, &list);
    text_add_format(out, "{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n"
                    "  \"title\": \"%s\",\n", title);
    shape_schema_add(shape, 2, out);
    text_add(out, ",\n  \"$defs\": {");
    for (size_t i = 0; i < list.count; i++) {
        text_add_format(out, "%s\n    \"%s\": {\n", i == 0 ? "" : ",", list.at[i]->name);
        shape_schema_add(list.at[i], 6, out);
        text_add(out, "\n    }");
    }
    text_add(out, "\n  }\n}\n");
}
