/* number.c - decimal numbers as integers of thousandths (room: base). Never
 * uses floating point, so that nothing is rounded. */
#include "number.h"

#include <limits.h>

#include "promise.h"
#include "text.h"

#define NUMBER_DIGITS 9
#define MILLI_DIGITS 3

/* Reads one to `most` digits at *at and moves past them; how many, or 0. */
static int number_digits_take(const char **at, int most, int64_t *value)
{
    int count = 0;

    for (; **at >= '0' && **at <= '9'; (*at)++, count++) {
        if (count == most)
            return 0;
        *value = *value * 10 + (**at - '0');
    }
    return count;
}

bool number_parse_milli(const char *string, int64_t *milli)
{
    const char *at = string;
    int64_t value = 0;
    int fraction = 0;

    if (*at == '-')
        at++;
    if (at[0] == '0' && at[1] >= '0' && at[1] <= '9')
        return false;
    if (number_digits_take(&at, NUMBER_DIGITS, &value) == 0)
        return false;
    if (*at == '.') {
        at++;
        fraction = number_digits_take(&at, MILLI_DIGITS, &value);
        if (fraction == 0)
            return false;
    }
    if (*at != '\0')
        return false;
    for (; fraction < MILLI_DIGITS; fraction++)
        value *= 10;
    *milli = string[0] == '-' ? -value : value;
    return true;
}

char *number_text_milli(struct arena *arena, int64_t milli)
{
    /* Unsigned, since the smallest value has no positive twin. */
    uint64_t size = milli < 0 ? 0 - (uint64_t)milli : (uint64_t)milli;
    unsigned long long whole = size / 1000;
    unsigned int fraction = (unsigned int)(size % 1000);
    const char *sign = milli < 0 ? "-" : "";
    int places = MILLI_DIGITS;

    if (fraction == 0)
        return text_format(arena, "%s%llu", sign, whole);
    for (; fraction % 10 == 0; places--)
        fraction /= 10;
    return text_format(arena, "%s%llu.%0*u", sign, whole, places, fraction);
}

int64_t power_of_ten(int exponent)
{
    int64_t power = 1;

    promise(exponent >= 0 && exponent <= 18);
    for (; exponent > 0; exponent--)
        power *= 10;
    return power;
}

int int_clipped(size_t value)
{
    return value > INT_MAX ? INT_MAX : (int)value;
}
