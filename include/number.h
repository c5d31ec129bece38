/* number.h - decimal numbers as integers of thousandths (room: base). */
#ifndef MAYDECK_NUMBER_H
#define MAYDECK_NUMBER_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"

/* Reads [-]digits[.1 to 3 digits], nothing else: no sign +, no exponent, no
 * spaces, no leading zeros before another digit; at most 9 digits before the
 * point. 12.6 gives 12600. */
bool number_parse_milli(const char *string, int64_t *milli);

/* 12600 gives "12.6", 2000 gives "2". */
char *number_text_milli(struct arena *arena, int64_t milli);

/* 1, 10, 100, ... for an exponent from 0 to 18. */
int64_t power_of_ten(int exponent);

/* The value, or INT_MAX where an int cannot hold it. */
int int_clipped(size_t value);

#endif
