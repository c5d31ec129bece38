/* renew.h - what hangs on board held against what would be printed today (room: app). Private to
 * src/app. */
#ifndef MAYDECK_RENEW_H
#define MAYDECK_RENEW_H

#include "register_file.h"

/* Cards of one boat that are to be printed again alike. */
struct reprint {
    const char *boat, *language, *paper;
    struct names cards;
};

/* A run of `renew`. */
struct renewing {
    const struct options *options;
    const struct fleet *fleet;
    struct register_rows rows;     /* in the order of the register */
    struct register_rows by_boat;  /* the same, those of each boat side by side */
    bool found;                    /* there is something to do */
    struct reprint *reprints;
    size_t reprint_count, reprint_room;
    /* the boat that is being judged */
    struct register_rows own;      /* her rows */
    bool *judged;                  /* of each of them that hangs: its card is one of hers today */
    struct arena *arena;
    struct text_builder out;       /* what is told of her, a line a finding */
    struct names never;            /* her cards that were never printed */
    size_t right, sheets;          /* cards that hang as they should; sheets of hers */
};

/* Languages of rows and of the base's cards. */
struct languages renew_languages(const struct renewing *renewing);

/* ---- renew_judge.c ---- */

void renew_begin(void *run, struct boat_job *boat);
void renew_sheets(void *run, struct sheets *sheets);
void renew_end(void *run, struct boat_job *boat);

/* Of boats that the base has no more. */
void renew_gone_boats(struct renewing *renewing);

/* ---- renew_reasons.c ---- */

/* Adds why the sheet is another than what `hung` says, a line each behind `indent`; what it said
 * is in the rows. */
void renew_reasons(const struct register_rows *rows, const struct sheets *sheets,
                   const struct sheet *sheet, const struct register_row *hung,
                   const char *indent, struct text_builder *out);

/* ---- renew_due.c ---- */

/* Adds which cards that hang as they should change by themselves, by the first day on which each
 * does, up to `until`; how many. */
size_t renew_due(const struct renewing *renewing, const struct sheets *sheets,
                 struct date until, struct text_builder *out);

/* ---- renew_code.c ---- */

/* What cards have the codes that were typed. */
enum exit_status renew_codes(struct renewing *renewing);

#endif
