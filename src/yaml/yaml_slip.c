/* yaml_slip.c - slips of writing that YAML takes for something else (room: yaml):
 * a colon without its space, typographic quotes, spaces that are none. Never knows
 * which keys there are, and tells nothing. */
#include "yaml_slip.h"

#include <string.h>

#include "text.h"

size_t key_length(const char *text)
{
    if (*text < 'a' || *text > 'z')
        return 0;
    return strspn(text, KEY_SIGNS);
}

const char *colon_spaced(struct arena *arena, const char *text)
{
    size_t length = key_length(text);
    const char *value = text + length + 1;

    if (length == 0 || text[length] != ':' || *value == '\0' || *value == '/')
        return NULL;
    if (text_begins(value, "\xC2\xA0"))
        value += 2;
    return text_format(arena, "%.*s: %s", (int)length, text, value);
}

const char *equals_spaced(struct arena *arena, const struct known_names *known, const char *text)
{
    size_t length = key_length(text);

    if (length == 0 || text[length] != '=' || text[length + 1] == '\0' ||
        known_key_sense(known, text, length) != KEY_IS_ONE)
        return NULL;
    return text_format(arena, "%.*s: %s", (int)length, text, text + length + 1);
}

/* Quotes of all languages, opening and closing: they differ in which is which. */
static const char *const quotes[] = {"\u201C", "\u201D", "\u201E", "\u201F", "\u2018", "\u2019",
                                     "\u201A", "\u201B", "\u00AB", "\u00BB", "\u2039", "\u203A"};
enum { QUOTE_COUNT = sizeof quotes / sizeof quotes[0] };

/* Bytes of the quote that the text begins with, or 0. */
static size_t quote_first(const char *text)
{
    if ((unsigned char)text[0] < 0x80)
        return 0;
    for (size_t i = 0; i < QUOTE_COUNT; i++)
        if (text_begins(text, quotes[i]))
            return strlen(quotes[i]);
    return 0;
}

static size_t quote_last(const char *text)
{
    for (size_t i = 0; i < QUOTE_COUNT; i++)
        if (text_ends(text, quotes[i]))
            return strlen(quotes[i]);
    return 0;
}

bool quotes_around(const char *text)
{
    size_t first = quote_first(text);

    return first > 0 && quote_last(text + first) > 0;
}

const char *quotes_off(struct arena *arena, const char *text)
{
    size_t first = quote_first(text);
    size_t last = first > 0 ? quote_last(text + first) : 0;

    return text_format(arena, "%.*s", (int)(strlen(text) - first - last), text + first);
}

const char *quotes_on(struct arena *arena, const char *text)
{
    if (strpbrk(text, "\"\\") == NULL)
        return text_format(arena, "\"%s\"", text);
    return single_quotes_on(arena, text);
}

const char *single_quotes_on(struct arena *arena, const char *text)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "'");
    for (; *text != '\0'; text++)
        text_add_bytes(&out, *text == '\'' ? "''" : text, *text == '\'' ? 2 : 1);
    text_add(&out, "'");
    return out.at;
}

bool looks_like_space(uint32_t code_point)
{
    return code_point == 0xA0 || code_point == 0x1680 ||
           (code_point >= 0x2000 && code_point <= 0x200A) || code_point == 0x202F ||
           code_point == 0x205F || code_point == 0x3000;
}
