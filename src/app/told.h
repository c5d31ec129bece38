/* told.h - text on standard output and standard error, in lines no wider than the terminal (room:
 * app). Private to src/app. */
#ifndef MAYDECK_TOLD_H
#define MAYDECK_TOLD_H

#include "text.h"

/* Characters that a line on standard output has room for: what COLUMNS in the environment tells,
 * else the width of the terminal that it is. 0: no limit, where it is none and nothing tells. */
size_t told_columns(void);

/* Lines that are wider than that are broken at spaces, and go on two characters further in (of one
 * that begins far in, two from the edge). No word is broken: one that is wider stands alone. What
 * a line of ^~~ marked stays marked, and a comment of YAML a comment. 0: no line is touched. */
void lines_fold(const char *text, size_t length, size_t columns, struct text_builder *out);

/* Characters of the widest line. */
size_t lines_width(const struct text_builder *text);

/* The text on standard output, folded. Nothing of it may be meant for a program. */
void told_print(const struct text_builder *text);

/* The same by a format. */
void told_lines(const char *format, ...) __attribute__((format(printf, 1, 2)));

/* The text on standard error, folded to the width of the terminal that this is. */
void told_refusal(const char *text);

#endif
