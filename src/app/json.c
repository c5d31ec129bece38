/* json.c - objects as JSON by a table of members (room: app). */
#include "json.h"

#include <stdio.h>
#include <string.h>

#include "utf8.h"

/* RFC 8259: quotes, backslashes and control characters escaped; bytes that are no
 * UTF-8 (a file's name may hold them) as the replacement character. */
void json_text_add(struct text_builder *out, const char *text)
{
    size_t length = text == NULL ? 0 : strlen(text), index = 0;
    if (text == NULL) {
        text_add(out, "null");
        return;
    }
    text_add(out, "\"");
    while (index < length) {
        size_t start = index;
        uint32_t code_point;
        if (!utf8_next(text, length, &index, &code_point)) {
            text_add(out, "\\ufffd");
            index = start + 1;
        } else if (code_point == '"' || code_point == '\\') {
            text_add_format(out, "\\%c", (int)code_point);
        } else if (code_point < 0x20 || code_point == 0x7F) {
            text_add_format(out, "\\u%04x", (unsigned)code_point);
        } else {
            text_add_bytes(out, text + start, index - start);
        }
    }
    text_add(out, "\"");
}

static void object_add(const struct json_shape *shape, const void *object, int depth,
                       struct text_builder *out);

static void list_add(const struct json_shape *shape, const struct json_list *list, int depth,
                     struct text_builder *out)
{
    text_add(out, "[");
    for (size_t i = 0; i < list->count; i++) {
        text_add_format(out, "%s\n%*s", i == 0 ? "" : ",", (depth + 1) * 2, "");
        object_add(shape, (const char *)list->at + i * shape->size, depth, out);
    }
    text_add(out, "]");
}

static void texts_add(const struct json_list *list, struct text_builder *out)
{
    const char *const *texts = list->at;
    text_add(out, "[");
    for (size_t i = 0; i < list->count; i++) {
        text_add(out, i == 0 ? "" : ", ");
        json_text_add(out, texts[i]);
    }
    text_add(out, "]");
}

static void pointed_add(const struct json_shape *shape, const void *object, int depth,
                        struct text_builder *out)
{
    if (object == NULL)
        text_add(out, "null");
    else
        object_add(shape, object, depth, out);
}

static void number_or_null_add(int number, struct text_builder *out)
{
    if (number == 0)
        text_add(out, "null");
    else
        text_add_format(out, "%d", number);
}

static void value_add(const struct json_member *member, const void *object, int depth,
                      struct text_builder *out)
{
    const void *at = (const char *)object + member->at;
    switch (member->kind) {
    case JSON_TEXT:
    case JSON_TEXT_OR_NULL:
        json_text_add(out, *(const char *const *)at);
        break;
    case JSON_FLAG:
        text_add(out, *(const bool *)at ? "true" : "false");
        break;
    case JSON_COUNT:
        text_add_format(out, "%zu", *(const size_t *)at);
        break;
    case JSON_NUMBER_OR_NULL:
        number_or_null_add(*(const int *)at, out);
        break;
    case JSON_OBJECT:
        object_add(member->of, at, depth + 1, out);
        break;
    case JSON_OBJECT_OR_NULL:
        pointed_add(member->of, *(const void *const *)at, depth + 1, out);
        break;
    case JSON_LIST:
        list_add(member->of, at, depth + 1, out);
        break;
    case JSON_TEXTS:
        texts_add(at, out);
        break;
    }
}

/* The members of the whole have a line each, those of all others stand in one line. */
static void object_add(const struct json_shape *shape, const void *object, int depth,
                       struct text_builder *out)
{
    text_add(out, depth == 0 ? "{\n  " : "{");
    for (size_t i = 0; i < shape->count; i++) {
        const struct json_member *member = &shape->members[i];
        text_add(out, i == 0 ? "" : depth == 0 ? ",\n  " : ", ");
        text_add_format(out, "\"%s\": ", member->name);
        value_add(member, object, depth, out);
    }
    text_add(out, depth == 0 ? "\n}\n" : "}");
}

void json_add(const struct json_shape *shape, const void *object, struct text_builder *out)
{
    object_add(shape, object, 0, out);
}

void json_print(const struct json_shape *shape, const void *object, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    json_add(shape, object, &out);
    fwrite(out.at, 1, out.length, stdout);
}
