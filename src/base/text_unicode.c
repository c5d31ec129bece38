/* text_unicode.c - upper case, composed and folded form of texts (room: base). All
 * knowledge of letters is utf8proc's; bytes that are no valid UTF-8 stay as
 * they are. */
#include "text.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <utf8proc.h>

#include "utf8.h"

/* utf8proc hands out memory of malloc: copied and freed here. */
static char *text_mapped(struct arena *arena, const char *string, utf8proc_option_t options)
{
    utf8proc_uint8_t *mapped = NULL;
    utf8proc_ssize_t length =
        utf8proc_map((const utf8proc_uint8_t *)string, (utf8proc_ssize_t)strlen(string),
                     &mapped, options);

    if (length == UTF8PROC_ERROR_NOMEM)
        arena_exhausted();
    if (length < 0)
        return arena_copy(arena, string, strlen(string));
    char *text = arena_copy(arena, (const char *)mapped, (size_t)length);
    free(mapped);
    return text;
}

/* ASCII is composed as it stands. */
static bool is_ascii(const char *string)
{
    while (*string != '\0' && (unsigned char)*string < 0x80)
        string++;
    return *string == '\0';
}

char *text_nfc(struct arena *arena, const char *string)
{
    if (is_ascii(string))
        return arena_copy(arena, string, strlen(string));
    return text_mapped(arena, string, UTF8PROC_STABLE | UTF8PROC_COMPOSE);
}

char *text_folded(struct arena *arena, const char *string)
{
    return text_mapped(arena, string,
                       UTF8PROC_STABLE | UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT |
                           UTF8PROC_CASEFOLD | UTF8PROC_STRIPMARK);
}

/* Lower case of ASCII; what is none is left as it is. */
static unsigned char ascii_lower(char letter)
{
    return (unsigned char)(letter >= 'A' && letter <= 'Z' ? letter - 'A' + 'a' : letter);
}

/* Most words differ in their first letter, and most letters are ASCII. */
static bool first_letters_differ(const char *a, size_t length, const char *b)
{
    unsigned char one = length > 0 ? ascii_lower(a[0]) : 0, other = ascii_lower(b[0]);

    return one < 0x80 && other < 0x80 && one != other;
}

bool text_equal_any_case(const char *a, size_t length, const char *b)
{
    if (first_letters_differ(a, length, b))
        return false;
    size_t at_a = 0, at_b = 0, length_b = strlen(b);
    uint32_t one, other;

    while (at_a < length && at_b < length_b) {
        if (!utf8_next(a, length, &at_a, &one) || !utf8_next(b, length_b, &at_b, &other))
            return false;
        if (utf8proc_tolower((utf8proc_int32_t)one) != utf8proc_tolower((utf8proc_int32_t)other))
            return false;
    }
    return at_a == length && at_b == length_b;
}

static void upper_add(struct text_builder *builder, uint32_t code_point)
{
    utf8proc_uint8_t bytes[4];
    utf8proc_int32_t upper = utf8proc_toupper((utf8proc_int32_t)code_point);
    utf8proc_ssize_t length = utf8proc_encode_char(upper, bytes);

    text_add_bytes(builder, (const char *)bytes, (size_t)length);
}

/* Of ASCII alone. */
static char *plain_upper(struct arena *arena, const char *string)
{
    char *upper = arena_copy(arena, string, strlen(string));

    for (char *at = upper; *at != '\0'; at++)
        if (*at >= 'a' && *at <= 'z')
            *at = (char)(*at - 'a' + 'A');
    return upper;
}

char *text_upper(struct arena *arena, const char *string)
{
    if (is_ascii(string))
        return plain_upper(arena, string);
    struct text_builder builder = text_builder_in(arena);
    size_t length = strlen(string);

    for (size_t index = 0; index < length;) {
        uint32_t code_point;
        if (utf8_next(string, length, &index, &code_point))
            upper_add(&builder, code_point);
        else
            text_add_bytes(&builder, string + index++, 1);
    }
    return builder.at;
}

long text_code_points(const char *string)
{
    size_t length = strlen(string);
    long count = 0;
    uint32_t code_point;

    for (size_t index = 0; index < length; count++)
        if (!utf8_next(string, length, &index, &code_point))
            return -1;
    return count;
}

/* Combining, and of no width of its own. */
static bool is_accent(uint32_t code_point)
{
    utf8proc_category_t category = utf8proc_category((utf8proc_int32_t)code_point);
    return category == UTF8PROC_CATEGORY_MN || category == UTF8PROC_CATEGORY_ME;
}

size_t text_accents_most(const char *string)
{
    size_t length = strlen(string), accents = 0, most = 0;
    uint32_t code_point;

    for (size_t index = 0; index < length;) {
        if (!utf8_next(string, length, &index, &code_point)) {
            index++;
            code_point = 0;
        }
        accents = code_point >= 0x80 && is_accent(code_point) ? accents + 1 : 0;
        most = accents > most ? accents : most;
    }
    return most;
}
