/* gear_date.h - the day until which a piece of gear is good, and whether it lasts
 * a charter (room: figure). Each row of the table names the source of its
 * rule. */
#ifndef MAYDECK_GEAR_DATE_H
#define MAYDECK_GEAR_DATE_H

#include <stdbool.h>
#include <stddef.h>

#include "boat.h"
#include "date.h"
#include "item_fields.h"

enum { GEAR_FIELDS_FROM = 3 };

/* How the date of one kind of gear is found. A stamped date, or the earlier of
 * both, beats all that could be computed. Else `months` are added to the first of
 * `from` that is recorded, and never past `life_months` from making; a row without
 * `from` knows stamps alone. The months of the base (`intervals:`) stand in for
 * `months` unless `months_fixed`. */
struct gear_rule {
    enum item_key item;                      /* none: the kinds without a row of their own */
    enum gear_field from[GEAR_FIELDS_FROM];  /* in this order; GEAR_FIELD_NONE ends it */
    int months;                              /* 0: only where the base sets months */
    int life_months;                         /* from `made` at most; 0: no such limit */
    enum year_means year_means;
    bool whole_years;                        /* of the mark, the year alone counts */
    bool months_fixed;                       /* the base may not change them */
    bool disposable;                         /* a row for pieces with `disposable: yes` */
    bool us_rated;                           /* ... whose rating is of the US system */
    bool needed;                             /* without a date it is not known to be good */
    const char *why;                         /* why a date is needed, or why it is not */
    const char *source;                      /* whose word the months are, in plain words */
};

/* The row for this piece: never NULL. */
const struct gear_rule *gear_rule_of(const struct equipment *gear);

/* All rows, in order; NULL past the end. */
const struct gear_rule *gear_rule_at(size_t index);

/* How far ahead the stamp in that field can lie: further ahead, it was misread. */
struct stamp_limit {
    enum item_key item;                      /* none: the kinds without a row of their own */
    enum gear_field field;                   /* expires or service_due */
    int months;                              /* from today */
    const char *source;                      /* whose word it is, in plain words */
};

/* The row for stamps of that field on that kind: never NULL. */
const struct stamp_limit *stamp_limit_of(enum item_key item, enum gear_field field);

/* All rows, in order; NULL past the end. */
const struct stamp_limit *stamp_limit_at(size_t index);

struct gear_date {
    bool known;
    struct date last;                /* the last day it is good, that day included */
    struct date mark;                /* the same as marked or computed: 2027-04 */
    bool stamped;                    /* false: computed */
    enum gear_field field;           /* the recorded date it comes from */
    struct place place;              /* of that date in the boat file */
    int months;                      /* added to it; 0 for a stamp */
    const struct interval *interval; /* of the base, where its months were used; or NULL */
    const struct gear_rule *rule;    /* of its kind, known or not */
};

/* Finds the date; false, and `known` false, when the record gives none. base NULL:
 * no intervals, months hold to their end. */
bool gear_date(const struct equipment *gear, const struct base_record *base,
               struct gear_date *out);

/* The fields that hold dates, first those that are stamped on the piece or its
 * certificate; ended by GEAR_FIELD_NONE. */
extern const enum gear_field gear_date_fields[];

/* The recorded value of one of those; NULL for other fields. */
const struct date_value *gear_date_field(const struct equipment *gear, enum gear_field field);

/* What several pieces are good for together. All zero: of none. */
struct gear_dates {
    struct gear_date first;          /* `known` false while none has a date */
    const struct equipment *piece;   /* the one that runs out first */
    size_t undated;                  /* how many need a date and have none */
};

/* Takes one piece more into it; of two that run out on one day the first stays. */
void gear_dates_add(struct gear_dates *dates, const struct equipment *gear,
                    const struct base_record *base);

/* To be printed: 2027-04 where that month holds to its end, as a label reads, else
 * the full day. */
struct date gear_date_shown(const struct gear_date *date);

/* ---- through a charter ---- */

/* Full local calendar dates; the boat is handed back on the last. */
struct charter {
    struct date start, end;
    int margin_days;                 /* a date should last beyond the end; below 0 counts as 0 */
};

enum charter_outcome {
    CHARTER_EXPIRED,                 /* before the first day */
    CHARTER_EXPIRES_DURING,          /* good on the first day, not on the last */
    CHARTER_OK,
    CHARTER_OK_INSIDE_MARGIN,        /* good on the last day, not for the margin after it */
    CHARTER_NOT_KNOWN,               /* no date */
    CHARTER_DATES_WRONG              /* the charter ends before it starts */
};

enum charter_outcome charter_outcome(const struct gear_date *date, const struct charter *charter);

/* Is this a failure for a piece of this rule? A date that is not known is one
 * where the rule needs it. */
bool charter_outcome_fails(enum charter_outcome outcome, const struct gear_rule *rule);

/* The base's margin in whole days, a part of a day counted as one. */
int charter_margin_days(const struct base_record *base);

#endif
