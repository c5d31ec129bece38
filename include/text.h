/* text.h - making and comparing strings (room: base).
 *
 * Strings are NUL-terminated UTF-8 in an arena: the yaml room refuses NUL and
 * control characters, so nothing is lost by that. A piece of a string is given
 * as pointer and length. No locale is ever asked. */
#ifndef MAYDECK_TEXT_H
#define MAYDECK_TEXT_H

#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include "arena.h"

/* A string being built. Start with text_builder_in. `at` is always
 * NUL-terminated once something was added (and "" before). */
struct text_builder {
    struct arena *arena;
    char *at;
    size_t length;
    size_t capacity;
};

struct text_builder text_builder_in(struct arena *arena);
void text_add(struct text_builder *builder, const char *string);
void text_add_bytes(struct text_builder *builder, const char *at, size_t length);
void text_add_format(struct text_builder *builder, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* printf into the arena; only %s %.*s %c %d %zu %ld %lld %x and widths are
 * meant to be used (no floating point: the locale must not matter). */
char *text_format(struct arena *arena, const char *format, ...)
    __attribute__((format(printf, 2, 3)));
char *text_format_list(struct arena *arena, const char *format, va_list list);

/* NULL equals NULL only. It stands here since keys and ids are compared by the million, and most
 * differ in their first letter. */
static inline bool text_equal(const char *a, const char *b)
{
    if (a == NULL || b == NULL)
        return a == b;
    return a[0] == b[0] && strcmp(a, b) == 0;
}

/* Are the first `length` bytes of `a` the whole of `b`, whatever the case of their letters? */
bool text_equal_any_case(const char *a, size_t length, const char *b);

bool text_empty(const char *string);                    /* NULL or "" */
bool text_begins(const char *string, const char *start);
bool text_ends(const char *string, const char *end);

bool is_digit(char letter);                             /* 0 to 9 */
unsigned hex_digit_value(char digit);                   /* of 0 to 9 and A to F */

/* FNV-1a, 64 bits: `hash` is BYTES_HASH_START, or what was made of bytes before these.
 * For tables within one run: never printed, never kept. */
#define BYTES_HASH_START UINT64_C(14695981039346656037)
uint64_t bytes_hash(uint64_t hash, const void *at, size_t length);

/* Eight bytes at a time; of another machine it may be another number, so it is for tables in
 * memory alone. */
uint64_t bytes_hash_fast(uint64_t hash, const void *at, size_t length);

/* Upper case of all letters (utf8proc's simple mapping), and NFC. */
char *text_upper(struct arena *arena, const char *string);
char *text_nfc(struct arena *arena, const char *string);

/* Without case, accents and typographic forms ("\u2026" is "..."): for comparing words
 * that people write in many ways, never for printing. */
char *text_folded(struct arena *arena, const char *string);

/* The text without the ** that stand round its bold words; "" for NULL. */
char *text_plain(struct arena *arena, const char *text);

/* Number of code points, -1 where the bytes are no valid UTF-8. */
long text_code_points(const char *string);

/* How many accents stand over each other at most: those that one letter has besides itself, as
 * the text is written. */
size_t text_accents_most(const char *string);

/* The candidate nearest to `word` by edit distance (insert, delete, replace,
 * swap of neighbours), if near enough to be a slip of the finger: at most a
 * third of the word's length, at least 1 and at most 3 changes. Else NULL.
 * The first of equals wins. */
const char *text_nearest(const char *word, const char *const *candidates, size_t count);

/* A remedy: did you mean "WORD"? */
const char *text_meant(struct arena *arena, const char *word);

/* The remedy for a word that is none of the candidates: text_meant of the nearest one, or
 * `otherwise` where none is near. */
const char *text_nearest_remedy(struct arena *arena, const char *word,
                                const char *const *candidates, size_t count,
                                const char *otherwise);

/* Words in a list that a NULL ends. */
size_t text_list_length(const char *const *list);

#endif
