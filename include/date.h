/* date.h - calendar dates of day, month or year precision (room: base). */
#ifndef MAYDECK_DATE_H
#define MAYDECK_DATE_H

#include <stdbool.h>
#include <stdint.h>

#include "arena.h"
#include "choice.h"

/* month 0: only the year is known; day 0: only year and month. */
struct date {
    int year;
    int month;
    int day;
};

/* Reads 2027, 2027-04 or 2027-04-30 exactly; false for anything else and for
 * days that are not (2027-02-29). Years 1900 to 2199. */
bool date_parse(const char *string, struct date *out);

/* The one date that may be meant by a text that is written another way, such as 30.04.2027 or
 * Apr 2027; there may be no such day. Year 0: none, or one of several. */
struct date date_meant(struct arena *arena, const char *text);

/* How to mend what is no date: "write 2027-04" where only one date can be meant, else how dates
 * are written. */
const char *date_remedy(struct arena *arena, const char *text);

/* The first day the date covers: 2027-04 gives 2027-04-01. */
struct date date_first_day(struct date date);

/* The last day the date covers: 2027-04 gives 2027-04-30. */
struct date date_last_day(struct date date);

/* What a mark without a day stands for, and what one without a month does. Where nobody
 * said otherwise a month holds to its end, and a year to its first day. */
#define MONTH_MEANS_LIST(X) X(MONTH_MEANS_END, "end") X(MONTH_MEANS_START, "start")
enum month_means { MONTH_MEANS_UNSAID, MONTH_MEANS_LIST(CHOICE_NAME) MONTH_MEANS_COUNT };
extern const char *const month_means_words[];   /* NULL-ended, each at its value less one */
enum year_means { YEAR_MEANS_FIRST_DAY, YEAR_MEANS_LAST_DAY };

/* The last day a mark is good for: 2027-05 gives 2027-05-31 or 2027-05-01, 2027
 * gives 2027-01-01 or 2027-12-31, a full date itself. */
struct date date_last_valid_day(struct date mark, enum month_means month, enum year_means year);

/* The date so many months later (negative: earlier), in its own precision. A day
 * that the month lacks becomes the month's last: 2025-01-31 + 1 = 2025-02-28. Add
 * once, from the first date: each step may lose days. A year stays a year, whole
 * years only are counted, the rest is dropped so that it is never later. The
 * result is to lie in the years 1 to 9999. */
struct date date_add_months(struct date date, int months);

/* The full date so many days after the last day of the date. The result is to lie in the years
 * 1 to 9999. */
struct date date_days_later(struct date date, int days);

/* Days from `from` to `to`, negative when `to` is earlier, by their last days. */
int64_t date_days_between(struct date from, struct date to);

/* Negative, zero or positive as a is before, equal to or after b, by their
 * last days. */
int date_compare(struct date a, struct date b);

/* As written: 2027, 2027-04 or 2027-04-30. */
char *date_text(struct arena *arena, struct date date);

/* The date (UTC, proleptic Gregorian) of seconds since 1970-01-01; clipped to
 * the years 1 to 9999. */
struct date date_from_seconds(int64_t seconds);

#endif
