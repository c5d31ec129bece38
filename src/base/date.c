/* date.c - calendar dates of day, month or year precision (room: base). Never
 * asks a clock. */
#include "date.h"

#include <string.h>

#include "promise.h"
#include "text.h"

const char *const month_means_words[] = {MONTH_MEANS_LIST(CHOICE_WORD) NULL};

#define YEAR_FIRST 1900
#define YEAR_LAST 2199

/* Reads exactly `count` digits. */
static bool date_digits_read(const char *at, size_t count, int *value)
{
    *value = 0;
    for (size_t i = 0; i < count; i++) {
        if (at[i] < '0' || at[i] > '9')
            return false;
        *value = *value * 10 + (at[i] - '0');
    }
    return true;
}

static bool year_is_leap(int year)
{
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

static int month_days(int year, int month)
{
    static const int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    promise(month >= 1 && month <= 12);
    return month == 2 && year_is_leap(year) ? 29 : days[month - 1];
}

bool date_parse(const char *string, struct date *out)
{
    size_t length = strlen(string);
    struct date date = {0};

    if (length != 4 && length != 7 && length != 10)
        return false;
    if (!date_digits_read(string, 4, &date.year) || date.year < YEAR_FIRST || date.year > YEAR_LAST)
        return false;
    if (length >= 7 && (string[4] != '-' || !date_digits_read(string + 5, 2, &date.month) ||
                        date.month < 1 || date.month > 12))
        return false;
    if (length == 10 && (string[7] != '-' || !date_digits_read(string + 8, 2, &date.day) ||
                         date.day < 1 || date.day > month_days(date.year, date.month)))
        return false;
    *out = date;
    return true;
}

struct date date_first_day(struct date date)
{
    if (date.month == 0)
        date.month = 1;
    if (date.day == 0)
        date.day = 1;
    return date;
}

struct date date_last_day(struct date date)
{
    if (date.month == 0)
        date.month = 12;
    if (date.day == 0)
        date.day = month_days(date.year, date.month);
    return date;
}

struct date date_last_valid_day(struct date mark, enum month_means month, enum year_means year)
{
    if (mark.month == 0) {
        mark.month = year == YEAR_MEANS_LAST_DAY ? 12 : 1;
        mark.day = year == YEAR_MEANS_LAST_DAY ? 31 : 1;
    } else if (mark.day == 0) {
        mark.day = month == MONTH_MEANS_START ? 1 : month_days(mark.year, mark.month);
    }
    return mark;
}

/* Division that rounds down, also below zero, where C rounds towards it. */
static int floor_divide(int value, int by)
{
    return value / by - (value % by < 0 ? 1 : 0);
}

struct date date_add_months(struct date date, int months)
{
    if (date.month == 0) {
        date.year += floor_divide(months, 12);
        return date;
    }
    int counted = date.year * 12 + date.month - 1 + months;
    date.year = floor_divide(counted, 12);
    date.month = counted - date.year * 12 + 1;
    if (date.day > month_days(date.year, date.month))
        date.day = month_days(date.year, date.month);
    return date;
}

int date_compare(struct date a, struct date b)
{
    a = date_last_day(a);
    b = date_last_day(b);
    if (a.year != b.year)
        return a.year < b.year ? -1 : 1;
    if (a.month != b.month)
        return a.month < b.month ? -1 : 1;
    return (a.day > b.day) - (a.day < b.day);
}

char *date_text(struct arena *arena, struct date date)
{
    if (date.month == 0)
        return text_format(arena, "%04d", date.year);
    if (date.day == 0)
        return text_format(arena, "%04d-%02d", date.year, date.month);
    return text_format(arena, "%04d-%02d-%02d", date.year, date.month, date.day);
}

/* Days are counted in years that begin in March, so that the leap day is the
 * last of its year, and in eras of 400 years, which all have 146,097 days. */
static struct date date_from_days(int64_t days)
{
    const int64_t era_days = 146097;
    int64_t shifted = days + 719468;  /* from 0000-03-01 */
    int64_t era = (shifted >= 0 ? shifted : shifted - (era_days - 1)) / era_days;
    int64_t day_of_era = shifted - era * era_days;
    int64_t year_of_era = (day_of_era - day_of_era / 1460 + day_of_era / 36524 -
                           day_of_era / 146096) / 365;
    int64_t day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    int64_t month_from_march = (5 * day_of_year + 2) / 153;
    int64_t month = month_from_march < 10 ? month_from_march + 3 : month_from_march - 9;

    return (struct date){
        .year = (int)(year_of_era + era * 400 + (month <= 2 ? 1 : 0)),
        .month = (int)month,
        .day = (int)(day_of_year - (153 * month_from_march + 2) / 5 + 1),
    };
}

/* The inverse, for years from 1 on. */
static int64_t days_of(struct date date)
{
    int64_t year = date.month <= 2 ? date.year - 1 : date.year;
    int64_t era = year / 400;
    int64_t year_of_era = year - era * 400;
    int64_t month_from_march = date.month > 2 ? date.month - 3 : date.month + 9;
    int64_t day_of_year = (153 * month_from_march + 2) / 5 + date.day - 1;

    return era * 146097 + year_of_era * 365 + year_of_era / 4 - year_of_era / 100 +
           day_of_year - 719468;
}

int64_t date_days_between(struct date from, struct date to)
{
    return days_of(date_last_day(to)) - days_of(date_last_day(from));
}

struct date date_days_later(struct date date, int days)
{
    return date_from_days(days_of(date_last_day(date)) + days);
}

struct date date_from_seconds(int64_t seconds)
{
    const int64_t first = INT64_C(-62135596800);  /* 0001-01-01 */
    const int64_t last = INT64_C(253402300799);   /* 9999-12-31 */
    const int64_t day = 86400;

    if (seconds < first)
        seconds = first;
    if (seconds > last)
        seconds = last;
    return date_from_days(seconds >= 0 ? seconds / day : (seconds - (day - 1)) / day);
}
