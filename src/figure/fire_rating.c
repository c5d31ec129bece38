/* fire_rating.c - what the rating on an extinguisher says: reading it, comparing
 * it within its system, and the test fires behind it (room: figure). Never turns a
 * rating of one system into the other's. */
#include "capacity.h"

#include <math.h>
#include <string.h>

#include "text.h"

enum { RATING_DIGITS = 3 };

/* Moves past a number of 1 to 999 without leading zero; 0: there is none, or it is longer. */
static int number_take(const char **at)
{
    int value = 0;
    int digits = 0;
    if (**at == '0')
        return 0;
    for (; **at >= '0' && **at <= '9'; (*at)++, digits++)
        if (digits < RATING_DIGITS)
            value = value * 10 + (**at - '0');
    return digits <= RATING_DIGITS ? value : 0;
}

static int *class_number(struct fire_rating *rating, char class)
{
    bool en = rating->system == RATING_SYSTEM_EN;
    if (class == 'A')
        return &rating->a;
    if (class == 'B')
        return &rating->b;
    return class == 'F' && en ? &rating->f : NULL;
}

static bool *class_letter(struct fire_rating *rating, char class)
{
    bool us = rating->system == RATING_SYSTEM_US;
    if (class == 'C')
        return &rating->c;
    if (class == 'D')
        return &rating->d;
    return class == 'K' && us ? &rating->k : NULL;
}

/* One class, such as 70B or C, in the American system 10-B; false when it is none
 * or came before. */
static bool class_take(const char **at, struct fire_rating *rating)
{
    bool numbered = **at >= '0' && **at <= '9';
    int value = numbered ? number_take(at) : 0;
    if (numbered && rating->system == RATING_SYSTEM_US && *(*at)++ != '-')
        return false;
    if (**at == '\0')
        return false;
    char class = *(*at)++;
    int *number = class_number(rating, class);
    bool *letter = class_letter(rating, class);
    if (numbered && number != NULL && *number == 0 && value > 0) {
        *number = value;
        return true;
    }
    if (!numbered && letter != NULL && !*letter) {
        *letter = true;
        return true;
    }
    return false;
}

static bool classes_read(const char *at, enum rating_system system, struct fire_rating *out)
{
    const char between = system == RATING_SYSTEM_EN ? ' ' : ':';
    struct fire_rating rating = {.system = system};
    while (class_take(&at, &rating)) {
        if (*at == '\0') {
            *out = rating;
            return true;
        }
        if (*at++ != between)
            return false;
    }
    return false;
}

enum rating_reading fire_rating_parse(const char *string, struct fire_rating *out)
{
    struct fire_rating unused;
    if (text_begins(string, "en ") || text_begins(string, "EN "))
        return classes_read(string + 3, RATING_SYSTEM_EN, out) ? RATING_READ : RATING_WRONG;
    if (text_begins(string, "us ") || text_begins(string, "US "))
        return classes_read(string + 3, RATING_SYSTEM_US, out) ? RATING_READ : RATING_WRONG;
    if (classes_read(string, RATING_SYSTEM_EN, &unused) ||
        classes_read(string, RATING_SYSTEM_US, &unused))
        return RATING_WITHOUT_SYSTEM;
    return RATING_WRONG;
}

static int class_value(const struct fire_rating *rating, char class)
{
    if (class == 'A')
        return rating->a;
    return class == 'B' ? rating->b : rating->f;
}

enum rating_order fire_rating_compare(const struct fire_rating *one,
                                      const struct fire_rating *other, char class)
{
    if (one->system != other->system || (class != 'A' && class != 'B' && class != 'F'))
        return RATING_NOT_COMPARABLE;
    int a = class_value(one, class);
    int b = class_value(other, class);
    if (a == b)
        return RATING_EQUAL;
    return a < b ? RATING_LESS : RATING_MORE;
}

/* ---- test fires of EN 3-7 ---- */

static const double pi = 3.14159265358979323846;
static const double square_foot_m2 = 0.09290304;

double en_fire_litres(int b)
{
    return (double)b;
}

double en_fire_fuel_litres(int b)
{
    return (double)b * 2.0 / 3.0;
}

double en_fire_area_m2(int b)
{
    return pi * (double)b / 100.0;
}

double en_fire_diameter_m(int b)
{
    return sqrt(4.0 * en_fire_area_m2(b) / pi);
}

double us_fire_area_m2(int b)
{
    return (double)b * square_foot_m2;
}
