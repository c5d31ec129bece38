/* renew.h - what hangs on board held against what would be printed today (room: app). Private to
 * src/app. */
#ifndef MAYDECK_RENEW_H
#define MAYDECK_RENEW_H

#include "json.h"
#include "register_file.h"

/* Cards of one boat that are to be printed again alike. */
struct reprint {
    const char *boat, *language, *paper;
    struct names cards;
};

/* What is found of a card; NEVER: none of it was ever printed. */
#define RENEW_KIND_LIST(X) \
    X(RENEW_REPLACE, "replace") X(RENEW_HELD, "held_back") \
    X(RENEW_HANGS_HELD, "hangs_held_back") X(RENEW_NOT_HUNG, "printed_not_hung") \
    X(RENEW_PRINT_AGAIN, "print_again") X(RENEW_TAKE_DOWN, "take_down") \
    X(RENEW_CHANGES, "changes_by_itself") X(RENEW_NEVER, "never_printed")
enum renew_kind { RENEW_NOTHING, RENEW_KIND_LIST(CHOICE_NAME) RENEW_KIND_COUNT };

/* All texts are as old as the run's arena; NULL: not told. */
struct renew_finding {
    enum renew_kind kind;
    const char *card, *name, *language;
    const char *other_language;    /* the same, where it is not the base's first */
    const char *code, *now;        /* of what hangs or was printed last, and of today */
    const char *place, *printed, *on;
    const char *why;
    struct json_list reasons;      /* texts: what is another now */
};

/* What is found of a boat. */
enum renew_state { RENEW_STATE_NONE, RENEW_JUDGED, RENEW_NOT_JUDGED, RENEW_GONE };
struct renew_boat {
    const char *boat;
    enum renew_state state;
    size_t right, of, hanging;     /* cards that hang as recorded, of all; cards that hang */
    struct renew_finding *findings;
    size_t count, room;
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
    struct renew_boat hers;        /* what is found of her */
    /* with --json */
    struct renew_boat *told;
    size_t told_count, told_room;
};

/* Languages of rows and of the base's cards. */
struct languages renew_languages(const struct renewing *renewing);

/* ---- renew_judge.c ---- */

void renew_begin(void *run, struct boat_job *boat);
void renew_sheets(void *run, struct sheets *sheets);
void renew_end(void *run, struct boat_job *boat);

/* Of boats that the base has no more. */
void renew_gone_boats(struct renewing *renewing);

/* ---- renew_told.c ---- */

/* Adds a finding of the boat that is being judged: of that kind, with what the row tells of the
 * card. What else it tells the caller adds. */
struct renew_finding *finding_add(struct renewing *renewing, enum renew_kind kind,
                                  const struct register_row *row);

/* Shows or keeps what was found of her. */
void renew_boat_tell(struct renewing *renewing, const struct renew_boat *boat);

/* All that was kept, as JSON. */
void renew_json_print(const struct renewing *renewing);

/* ---- renew_reasons.c ---- */

/* Why the sheet is another than what `hung` says, a text each; what it said is in the rows. */
struct json_list renew_reasons(const struct register_rows *rows, const struct sheets *sheets,
                               const struct sheet *sheet, const struct register_row *hung,
                               struct arena *arena);

/* ---- renew_due.c ---- */

/* Finds which cards that hang as they should change by themselves, by the first day on which each
 * does, up to `until`; how many. */
size_t renew_due(struct renewing *renewing, const struct sheets *sheets, struct date until);

/* ---- renew_code_told.c ---- */

/* What a code is of today: a card whose last print had it, or has it now. */
#define CODE_STATE_LIST(X) \
    X(CODE_CURRENT, "current") X(CODE_OLD, "old") X(CODE_OLD_HELD, "old_held_back")
enum code_state { CODE_STATE_NONE, CODE_STATE_LIST(CHOICE_NAME) CODE_STATE_COUNT };
struct code_card {
    enum code_state state;
    const char *boat, *card, *name;
    const char *now;               /* its code of today, where that is another; else NULL */
    bool printed;                  /* the register has the print */
    struct json_list reasons;      /* texts */
};

/* What was found of a code, which may be none that the register or a card of today has. */
struct code_told {
    const char *code;
    bool current;
    struct code_card *cards;
    size_t count, room;
    const struct register_row **rows;  /* of the register, in its order */
    size_t row_count, row_room;
};
void codes_text_print(const struct code_told *codes, size_t count, struct arena *arena);
void codes_json_print(const struct renewing *renewing, const struct code_told *codes,
                      size_t count);

/* ---- renew_code.c ---- */

/* What cards have the codes that were typed. */
enum exit_status renew_codes(struct renewing *renewing);

#endif
