/* text.c - building and comparing strings (room: base). Never asks a locale
 * and never cuts a string. */
#include "text.h"

#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include "promise.h"

#define BUILDER_START 64
#define MADE_AT_ONCE 256

struct text_builder text_builder_in(struct arena *arena)
{
    return (struct text_builder){
        .arena = arena,
        .at = arena_alloc(arena, BUILDER_START),
        .capacity = BUILDER_START,
    };
}

/* Room for `more` bytes and the closing NUL. */
static void builder_reserve(struct text_builder *builder, size_t more)
{
    promise(builder->length < builder->capacity);
    if (more < builder->capacity - builder->length)
        return;
    if (more > SIZE_MAX / 4 || builder->capacity > SIZE_MAX / 4)
        arena_exhausted();
    size_t larger = builder->capacity * 2;
    if (larger - builder->length <= more)
        larger = builder->length + more + 1;
    builder->at = arena_extend(builder->arena, builder->at, builder->capacity, larger);
    builder->capacity = larger;
}

void text_add_bytes(struct text_builder *builder, const char *at, size_t length)
{
    builder_reserve(builder, length);
    if (length > 0)
        memcpy(builder->at + builder->length, at, length);
    builder->length += length;
    builder->at[builder->length] = '\0';
}

void text_add(struct text_builder *builder, const char *string)
{
    promise(string != NULL);
    text_add_bytes(builder, string, strlen(string));
}

/* As much of the text as there is room for. Gives how long all of it is; a format that cannot
 * be printed is a fault of the program, not of its input. */
static size_t format_into(char *at, size_t room, const char *format, va_list list)
{
    va_list copy;

    va_copy(copy, list);
    int length = vsnprintf(at, room, format, copy);
    va_end(copy);
    promise(length >= 0);
    return (size_t)length;
}

/* Where there is room the text is made at once; else its length is known then. */
void text_add_format(struct text_builder *builder, const char *format, ...)
{
    va_list list;

    va_start(list, format);
    size_t room = builder->capacity - builder->length;
    size_t length = format_into(builder->at + builder->length, room, format, list);
    if (length >= room) {
        builder->at[builder->length] = '\0';
        builder_reserve(builder, length);
        (void)vsnprintf(builder->at + builder->length, length + 1, format, list);
    }
    va_end(list);
    builder->length += length;
}

char *text_format_list(struct arena *arena, const char *format, va_list list)
{
    char made[MADE_AT_ONCE];
    size_t length = format_into(made, sizeof made, format, list);

    if (length < sizeof made)
        return arena_copy(arena, made, length);
    char *text = arena_alloc(arena, length + 1);
    (void)vsnprintf(text, length + 1, format, list);
    return text;
}

char *text_format(struct arena *arena, const char *format, ...)
{
    va_list list;

    va_start(list, format);
    char *text = text_format_list(arena, format, list);
    va_end(list);
    return text;
}

bool text_empty(const char *string)
{
    return string == NULL || string[0] == '\0';
}

bool text_begins(const char *string, const char *start)
{
    if (string == NULL || start == NULL)
        return false;
    return strncmp(string, start, strlen(start)) == 0;
}

bool text_ends(const char *string, const char *end)
{
    if (string == NULL || end == NULL)
        return false;
    size_t length = strlen(string);
    size_t tail = strlen(end);
    return tail <= length && memcmp(string + length - tail, end, tail) == 0;
}

char *text_plain(struct arena *arena, const char *text)
{
    size_t length = text == NULL ? 0 : strlen(text), kept = 0;
    char *out = arena_alloc(arena, length + 1);

    for (size_t i = 0; i < length;) {
        if (text[i] == '*' && text[i + 1] == '*')
            i += 2;
        else
            out[kept++] = text[i++];
    }
    return out;
}

bool is_digit(char letter)
{
    return letter >= '0' && letter <= '9';
}

unsigned hex_digit_value(char digit)
{
    promise(is_digit(digit) || (digit >= 'A' && digit <= 'F'));
    return (unsigned)(is_digit(digit) ? digit - '0' : digit - 'A' + 10);
}

uint64_t bytes_hash(uint64_t hash, const void *at, size_t length)
{
    const unsigned char *bytes = at;

    for (size_t i = 0; i < length; i++)
        hash = (hash ^ bytes[i]) * UINT64_C(1099511628211);
    return hash;
}

uint64_t bytes_hash_fast(uint64_t hash, const void *at, size_t length)
{
    const unsigned char *bytes = at;
    uint64_t eight;

    for (; length >= sizeof eight; bytes += sizeof eight, length -= sizeof eight) {
        memcpy(&eight, bytes, sizeof eight);
        hash = (hash ^ eight) * UINT64_C(1099511628211);
        hash ^= hash >> 32;
    }
    return bytes_hash(hash, bytes, length);
}
