/* date.h - calendar dates of day, month or year precision (room: base). */
#ifndef MAYDECK_DATE_H
#define MAYDECK_DATE_H

#include <stdbool.h>
#include <stdint.h>

#include "arena.h"

/* month 0: only the year is known; day 0: only year and month. */
struct date {
    int year;
    int month;
    int day;
};

/* Reads 2027, 2027-04 or 2027-04-30 exactly; false for anything else and for
 * days that are not (2027-02-29). Years 1900 to 2199. */
bool date_parse(const char *string, struct date *out);

/* The last day the date covers: 2027-04 gives 2027-04-30. */
struct date date_last_day(struct date date);

/* Negative, zero or positive as a is before, equal to or after b, by their
 * last days. */
int date_compare(struct date a, struct date b);

/* As written: 2027, 2027-04 or 2027-04-30. */
char *date_text(struct arena *arena, struct date date);

/* The date (UTC, proleptic Gregorian) of seconds since 1970-01-01; clipped to
 * the years 1 to 9999. */
struct date date_from_seconds(int64_t seconds);

#endif
