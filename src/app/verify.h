/* verify.h - what is found of files that were printed, held against the list beside them. Private
 * to src/app. */
#ifndef MAYDECK_VERIFY_H
#define MAYDECK_VERIFY_H

#include "app.h"
#include "json.h"
#include "printed.h"
#include "problem.h"

/* What a file is. Only the first is good. Those from VERIFIED_MISSING on are no PDF that could be
 * looked at. */
#define VERIFIED_LIST(X) \
    X(VERIFIED_AS_LISTED, "as listed") X(VERIFIED_OLDER_ROW, "as before a stopped print") \
    X(VERIFIED_OTHER, "not as listed") X(VERIFIED_UNLISTED, "not listed") \
    X(VERIFIED_DAMAGED, "damaged") X(VERIFIED_MISSING, "missing") \
    X(VERIFIED_UNREAD, "not read") X(VERIFIED_LEFT_OVER, "left over")
enum verified_state { VERIFIED_NONE, VERIFIED_LIST(CHOICE_NAME) VERIFIED_COUNT };
extern const char *const verified_words[];     /* NULL-ended, each at its value less one */

/* Is the boat's file still what the cards were printed of? */
#define RECORD_NOW_LIST(X) \
    X(RECORD_SAME, "same") X(RECORD_CHANGED, "changed") X(RECORD_GONE, "gone") \
    X(RECORD_NOT_COMPARED, "not compared")
enum record_now { RECORD_NONE, RECORD_NOW_LIST(CHOICE_NAME) RECORD_COUNT };
extern const char *const record_now_words[];

/* One file. What only the list knows is NULL, and `row` too, where it has no row of it. */
struct verified_file {
    const char *file;
    enum verified_state state;
    const char *state_word, *record_word;
    const char *wrong;             /* why it is damaged or was not read; else NULL */
    const struct printed_row *row; /* the one that it is as; else the last of its file */
    enum record_now record;
    bool last_run;                 /* it is of the run that printed last */
    bool ours;                     /* it says that this program made it */
    const char *title, *language;  /* as it says itself; NULL: it does not */
    size_t pages;
    struct json_list codes;        /* of struct pdf_code */
};

struct verifying {
    const struct options *options;
    struct arena *arena;
    struct problems *problems;
    const char *folder;
    const struct printed_list *list;
    bool listed;                   /* there is a list */
    bool list_whole;
    const char *last_run;          /* NULL: none is known */
    bool claimed;                  /* a print is at work in the folder */
    struct verified_file *files;
    size_t count, room;
};

/* ---- verify_look.c ---- */

/* Looks at that PDF and adds what is found. */
void verify_file(struct verifying *verifying, const char *name);

/* Adds files that are listed and not there, and those that stopped runs left. */
void verify_absent(struct verifying *verifying);
void verify_left_over(struct verifying *verifying, const char *name);

/* Is that a file with which nothing is wrong? With a base, its record must be the same too. */
bool verified_good(const struct verified_file *file);

/* ---- verify_print.c ---- */

void verify_print(const struct verifying *verifying);
void verify_json(const struct verifying *verifying);

#endif
