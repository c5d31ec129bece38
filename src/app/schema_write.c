/* schema_write.c - a schema as JSON, member by member (room: app). Knows no schema. */
#include "schema.h"

#include "json.h"

#include <stdarg.h>

static void member_begin(struct schema *schema, const char *key)
{
    text_add_format(schema->out, "%s%*s", schema->begun ? ",\n" : schema->depth > 0 ? "\n" : "",
                    schema->depth * 2, "");
    schema->begun = true;
    if (key == NULL)
        return;
    json_text_add(schema->out, key);
    text_add(schema->out, ": ");
}

void schema_open(struct schema *schema, const char *key, char bracket)
{
    member_begin(schema, key);
    text_add_bytes(schema->out, &bracket, 1);
    schema->depth++;
    schema->begun = false;
}

void schema_close(struct schema *schema, char bracket)
{
    schema->depth--;
    if (schema->begun)
        text_add_format(schema->out, "\n%*s", schema->depth * 2, "");
    text_add_bytes(schema->out, &bracket, 1);
    schema->begun = true;
}

void schema_text(struct schema *schema, const char *key, const char *text)
{
    member_begin(schema, key);
    json_text_add(schema->out, text);
}

void schema_raw(struct schema *schema, const char *key, const char *format, ...)
{
    va_list list;
    member_begin(schema, key);
    va_start(list, format);
    text_add(schema->out, text_format_list(schema->arena, format, list));
    va_end(list);
}

void schema_words(struct schema *schema, const char *key, const char *const *words, size_t count)
{
    member_begin(schema, key);
    text_add(schema->out, "[");
    for (size_t i = 0; i < count; i++) {
        text_add(schema->out, i == 0 ? "" : ", ");
        json_text_add(schema->out, words[i]);
    }
    text_add(schema->out, "]");
}

void schema_refer(struct schema *schema, const char *key, const char *name)
{
    schema_raw(schema, key, "{\"$ref\": \"#/$defs/%s\"}", name);
}
