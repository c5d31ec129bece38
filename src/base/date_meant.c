/* date_meant.c - the date that was meant by one that is written otherwise (room: base). Never
 * guesses which of two is the month. */
#include "date.h"

#include <string.h>

#include "text.h"

/* Up to three numbers with one sign between them. */
struct date_groups {
    int values[3];
    size_t digits[3];
    size_t count;
    size_t named;        /* which of them was a month's name, from 1; 0: none */
    char separator;
};

/* The month that the text begins with, by its first three letters; 0: with none. */
static int month_named(struct arena *arena, const char *text)
{
    static const char *const names[] = {"JAN", "FEB", "MAR", "APR", "MAY", "JUN",
                                        "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"};
    const char *upper = text_upper(arena, text);

    for (int i = 0; i < 12; i++)
        if (text_begins(upper, names[i]))
            return i + 1;
    return 0;
}

static size_t letters_at(const char *text)
{
    return strspn(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz");
}

/* A number, or a month's name as its number; how many letters it has, 0: it is neither. */
static size_t date_group_read(struct arena *arena, const char *text, struct date_groups *groups)
{
    size_t digits = strspn(text, "0123456789"), letters = letters_at(text);
    int month = letters >= 3 && groups->named == 0 ? month_named(arena, text) : 0;
    int value = month;

    if (month == 0 && (digits == 0 || digits > 4))
        return 0;
    for (size_t i = 0; month == 0 && i < digits; i++)
        value = value * 10 + text[i] - '0';
    groups->digits[groups->count] = month == 0 ? digits : 2;
    groups->values[groups->count++] = value;
    groups->named = month == 0 ? groups->named : groups->count;
    return month == 0 ? digits : letters;
}

static bool groups_read(struct arena *arena, const char *text, struct date_groups *groups)
{
    *groups = (struct date_groups){0};
    for (;; text++) {
        bool full = groups->count == 3;
        size_t length = full ? 0 : date_group_read(arena, text, groups);
        if (length == 0)
            return false;
        text += length;
        if (*text == '\0')
            return true;
        if (strchr("./- ,", *text) == NULL)
            return false;
        groups->separator = *text;
        if (text[1] == ' ')     /* 30. April 2027 */
            text++;
    }
}

/* Day and month before a year: 3/4/2027 can be March or April. */
static bool order_is_doubtful(const struct date_groups *groups)
{
    return groups->named == 0 && groups->separator != '.' && groups->values[0] <= 12 &&
           groups->values[1] <= 12 && groups->values[0] != groups->values[1];
}

/* The one date the groups can mean; all zero if there is none. */
static struct date groups_date(const struct date_groups *groups)
{
    const int *values = groups->values;
    size_t last = groups->count - 1;

    if (groups->count == 2 && groups->digits[0] == 4)
        return (struct date){.year = values[0], .month = values[1]};
    if (groups->count == 2 && groups->digits[1] == 4)
        return (struct date){.year = values[1], .month = values[0]};
    if (groups->count != 3 || (groups->digits[0] != 4 && groups->digits[last] != 4))
        return (struct date){0};
    if (groups->digits[0] == 4)
        return (struct date){.year = values[0], .month = values[1], .day = values[2]};
    if (order_is_doubtful(groups))
        return (struct date){0};
    if (values[1] > 12 || groups->named == 1)
        return (struct date){.year = values[2], .month = values[0], .day = values[1]};
    return (struct date){.year = values[2], .month = values[1], .day = values[0]};
}

struct date date_meant(struct arena *arena, const char *text)
{
    struct date_groups groups;

    return groups_read(arena, text, &groups) ? groups_date(&groups) : (struct date){0};
}

const char *date_remedy(struct arena *arena, const char *text)
{
    struct date date = date_meant(arena, text);
    const char *written = date_text(arena, date);

    if (date.year != 0 && date_parse(written, &date))
        return text_format(arena, "write %s", written);
    if (date.year != 0 && date.day != 0)
        return "look at a calendar: there is no such day";
    return "write year, month and day, or less, with hyphens: 2027-04-30, 2027-04, 2027";
}
