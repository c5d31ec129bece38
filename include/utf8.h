/* utf8.h - reading UTF-8 one code point at a time (room: base). Classes of
 * characters come from utf8proc, not from tables of our own. */
#ifndef MAYDECK_UTF8_H
#define MAYDECK_UTF8_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* Decodes the code point at bytes[*index] and moves *index past it. False for
 * overlong forms, surrogates, values over U+10FFFF and cut sequences; *index
 * then stays. */
bool utf8_next(const char *bytes, size_t length, size_t *index, uint32_t *code_point);

/* Offset of the first byte that is not valid UTF-8, or `length` if all is. */
size_t utf8_first_invalid(const char *bytes, size_t length);

/* Why a text must not hold this code point, or NULL if it may: control
 * characters (C0, C1, DEL), bidirectional controls, line separators, private
 * use and unassigned code points, zero-width characters. Tab and line feed are
 * the caller's to allow. */
const char *utf8_refusal(uint32_t code_point);

/* The first thing in a text that it must not hold, in the same words, or that its bytes are no
 * UTF-8; NULL: it may be shown as it is. */
const char *utf8_text_refusal(const char *text);

/* A letter of any alphabet, or an accent on one. */
bool utf8_is_letter(uint32_t code_point);

/* Does the mark stand at the very word behind it, as an opening bracket or quotation mark; at
 * the one before it, as a full stop or a closing one? Which of the two a quotation mark does
 * hangs on the language. */
bool utf8_leans_on(uint32_t code_point);
bool utf8_leans_back(uint32_t code_point);

#endif
