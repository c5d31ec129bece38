/* yaml_write.c - values as YAML that the strict reader reads as the same values (room: yaml).
 * Whether a text needs quotes is asked of the reader itself. Never writes over lines. */
#include "yaml_editing.h"

#include <stdint.h>
#include <string.h>

#include "text.h"
#include "utf8.h"
#include "yaml_slip.h"
#include "yaml_value.h"

/* Is the text one that a line without quotes gives back, as a value in its place? */
static bool plain_reads_same(struct arena *arena, const char *text, enum yaml_style style)
{
    struct problems *problems = problems_new(arena);
    const char *line = text_format(arena, style == STYLE_FLOW ? "{a: %s}\n" : "a: %s\n", text);
    const struct source *source = source_from(arena, "", line, strlen(line));
    const struct yaml_node *tree = yaml_tree_read(source, arena, problems);
    size_t told;

    (void)problems_sorted(problems, &told);
    if (tree == NULL || told > 0 || tree->kind != YAML_MAPPING || tree->count != 1)
        return false;
    const struct yaml_node *value = tree->pairs[0].value;
    return value->kind == YAML_SCALAR && !value->quoted && text_equal(value->text, text);
}

/* An empty text, or a word that stands for nothing, would be read as a value that is
 * left out. */
static bool plain_will_do(struct arena *arena, const char *text, enum yaml_style style)
{
    return text[0] != '\0' && !text_stands_for_nothing(text) &&
           plain_reads_same(arena, text, style);
}

/* `sign` is the quote that the text had before, kept where it was ' or "; NUL: none. */
static const char *scalar_written(struct arena *arena, const struct yaml_node *value,
                                  enum yaml_style style,
                                  char sign)
{
    const char *text = text_nfc(arena, value->text);

    if (text[0] == '\0' && !value->quoted)
        return "";
    if (sign == '\'')
        return single_quotes_on(arena, text);
    if (sign == '"' || value->quoted || !plain_will_do(arena, text, style))
        return quotes_on(arena, text);
    return text;
}

static const char *list_written(struct arena *arena, const struct yaml_node *list)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "[");
    for (size_t i = 0; i < list->count; i++)
        text_add_format(&out, "%s%s", i > 0 ? ", " : "",
                        value_written(arena, list->items[i], STYLE_FLOW, '\0'));
    text_add(&out, "]");
    return out.at;
}

static const char *mapping_written(struct arena *arena, const struct yaml_node *mapping)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "{");
    for (size_t i = 0; i < mapping->count; i++)
        text_add_format(&out, "%s%s", i > 0 ? ", " : "",
                        member_written(arena, mapping->pairs[i].key, mapping->pairs[i].value,
                                       STYLE_FLOW));
    text_add(&out, "}");
    return out.at;
}

const char *value_written(struct arena *arena, const struct yaml_node *value, enum yaml_style style,
                          char sign)
{
    switch (value->kind) {
    case YAML_SCALAR:
        return scalar_written(arena, value, style, sign);
    case YAML_SEQUENCE:
        return list_written(arena, value);
    case YAML_MAPPING:
        break;
    }
    return mapping_written(arena, value);
}

const char *key_written(struct arena *arena, const char *key, enum yaml_style style)
{
    const struct yaml_node node = {.kind = YAML_SCALAR, .text = key};

    return key[0] != '\0' && key[key_length(key)] == '\0'
               ? key
               : scalar_written(arena, &node, style, '\0');
}

/* In brackets a value that is left out still needs the space behind its colon. */
const char *member_written(struct arena *arena, const char *key, const struct yaml_node *value,
                           enum yaml_style style)
{
    const char *written = value_written(arena, value, style, '\0');

    if (key == NULL)
        return written;
    return text_format(arena, "%s:%s%s", key_written(arena, key, style),
                       written[0] != '\0' || style == STYLE_FLOW ? " " : "", written);
}

/* What no YAML of one line can hold, or the reader would refuse; NULL where there is
 * nothing. */
const char *text_unwritable(const char *text)
{
    size_t length = strlen(text);
    uint32_t code_point;

    for (size_t index = 0; index < length;) {
        if (!utf8_next(text, length, &index, &code_point))
            return "holds bytes that are not valid UTF-8";
        if (code_point == '\n' || code_point == '\r')
            return "holds a line break";
        if (utf8_refusal(code_point) != NULL)
            return "holds a character that is not allowed";
    }
    return NULL;
}

static const char *pair_unwritable(const struct yaml_pair *pair)
{
    const char *fault = text_unwritable(pair->key);

    return fault != NULL ? fault : value_unwritable(pair->value);
}

/* The first fault found in the value, whichever text of it has it. */
const char *value_unwritable(const struct yaml_node *value)
{
    const char *fault = NULL;

    if (value->kind == YAML_SCALAR)
        return text_unwritable(value->text);
    for (size_t i = 0; fault == NULL && i < value->count; i++)
        fault = value->kind == YAML_MAPPING ? pair_unwritable(&value->pairs[i])
                                            : value_unwritable(value->items[i]);
    return fault;
}

const char *yaml_line(const struct yaml_node *value, struct arena *arena)
{
    return value_written(arena, value, STYLE_FLOW, '\0');
}
