/* check_rows.h - what `check` says of each boat, as a table or as JSON (room: app). Private to
 * src/app. */
#ifndef MAYDECK_CHECK_ROWS_H
#define MAYDECK_CHECK_ROWS_H

#include "job.h"

/* One card, with all its pages, in one language. */
struct check_card {
    const char *card, *number, *name, *language;
    const char *state;        /* ready, held, draft */
    const char *code;         /* NULL: held back, or it bears none */
    size_t pages;             /* that can be printed */
};

/* The date of one piece of gear. */
struct check_date {
    const char *date;         /* NULL: it needs one and has none */
    const char *item, *tag, *from;
    bool stamped;
    int line;
};

/* A fact that is recorded, and on no card of hers. */
struct check_fact {
    const char *owner;        /* a tag, boat, gas or radio */
    const char *field, *value;
    int line;
};

struct check_row {
    const char *key;
    bool read;                /* her file could be used */
    bool composed;
    size_t recorded, items;   /* kinds of gear mentioned, of all */
    size_t ready, of;         /* cards */
    const struct sheet_not_hers *not_hers;
    size_t not_hers_count;
    const struct check_card *cards;    /* of all kinds and languages */
    size_t card_count;
    const struct check_date *dates;
    size_t date_count;
    const struct check_fact *facts;    /* of the first kind of sheets and the first language */
    size_t fact_count;
    const struct check_date *first_date;   /* among those; NULL: none recorded */
    const struct problems *problems;   /* all that was found of her */
};

/* ---- check_rows.c; all texts are copied into the arena of the fleet ---- */

/* The row of a boat that is yet to be read. */
struct check_row check_row_of(const struct boat_job *boat);

/* What is to be said of her record. */
void check_row_record(struct check_row *row, const struct boat_job *boat);

/* What is to be said of these sheets of hers: which are ready, and which she needs none of. */
void check_row_sheets(struct check_row *row, const struct sheets *sheets);

/* ---- check_unprinted.c ---- */

/* What is recorded and on none of these sheets: for the row, and as a note. */
void check_row_unprinted(struct check_row *row, const struct sheets *sheets);

/* The cards that are not a boat's, each reason once, and the table of the fleet. */
void check_rows_print(const struct fleet *fleet, const struct check_row *rows, size_t count,
                      struct text_builder *out);

/* ---- check_json.c ---- */

/* The result of a check as JSON (see check_schema_print), on standard output. */
void check_json_print(const struct options *options, const struct fleet *fleet,
                      const struct check_row *rows, size_t count);
/* Its JSON Schema (draft 2020-12). */
void check_schema_print(void);

/* ---- check_list.c ---- */
void check_list_print(void);

#endif
