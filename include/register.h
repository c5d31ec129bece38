/* register.h - what was printed of a base's cards and what hangs on board, as rows of a table
 * that only grows; what a card said when it was printed, and what is another since (room:
 * register). It knows no pages, opens no file and reads no clock. */
#ifndef MAYDECK_REGISTER_H
#define MAYDECK_REGISTER_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "choice.h"
#include "compose.h"
#include "date.h"
#include "problem.h"
#include "sheet.h"
#include "source.h"
#include "text.h"

/* ---- rows ---- */

/* What a row tells of a card. */
#define REGISTER_EVENT_LIST(X) \
    X(EVENT_PRINTED, "printed") X(EVENT_HUNG, "hung") X(EVENT_TAKEN_DOWN, "taken_down")
enum register_event { EVENT_NONE, REGISTER_EVENT_LIST(CHOICE_NAME) EVENT_COUNT };

/* The columns in their order; later versions may add others behind them. */
#define REGISTER_COLUMN_LIST(X) \
    X(COLUMN_EVENT, "event") X(COLUMN_BOAT, "boat") X(COLUMN_CARD, "card") \
    X(COLUMN_NUMBER, "number") X(COLUMN_NAME, "name") X(COLUMN_LANGUAGE, "language") \
    X(COLUMN_PAPER, "paper") X(COLUMN_CODE, "code") X(COLUMN_DATE, "date") \
    X(COLUMN_PLACE, "place") X(COLUMN_BY, "by") X(COLUMN_UNTIL, "until") \
    X(COLUMN_DATES, "dates") X(COLUMN_PROGRAM, "program") X(COLUMN_TEXTS, "texts") \
    X(COLUMN_CONTENT, "content")
enum register_column { COLUMN_NONE, REGISTER_COLUMN_LIST(CHOICE_NAME) COLUMN_COUNT };

/* What a cell holds that has nothing to say: no cell of a row is empty. */
#define REGISTER_NOTHING "-"

/* One event of one card of one boat in one language. No text holds a control character; those
 * that have nothing to say are REGISTER_NOTHING. */
struct register_row {
    enum register_event event;
    const char *boat;          /* key of the boat: tern */
    const char *card;          /* id of the sheet among hers: engine_fire_port */
    const char *number;        /* 3P */
    const char *name;          /* for people: 3P ENGINE FIRE, PORT ENGINE */
    const char *language;      /* en */
    const char *paper;         /* a4 */
    const char *code;          /* check code: 0TJ8-GE2D */
    struct date date;          /* full: of the print, or on which it was hung or taken down */
    const char *place;         /* where it hangs */
    const char *by;            /* who hung it or took it down */
    const char *until;         /* the first date on which the print goes out of date by itself */
    const char *dates;         /* what its foot says of the dates of its gear */
    const char *program;       /* version of the program that printed it */
    const char *texts;         /* fingerprint of its procedure's texts */
    const char *content;       /* what it said, see register_content; nothing where another row
                                  of the same code has it, and of cards that are not printed */
    struct place at;           /* where the row stands in the file */
};

struct register_rows {
    const struct register_row *rows;   /* in the order of the file */
    size_t count;
    size_t whole;              /* bytes of the text up to the last line end: what stands behind it
                                  is torn, or lacks its line end */
    bool last_whole;           /* what stands behind it is a whole row all the same */
};

/* The rows of the file. A line is a row: whatever is wrong with one, the others stand. Each
 * damaged one is told with its place; lines that begin with # are skipped, so is the head, and
 * columns behind the last are allowed. A spreadsheet may have put other signs between cells. */
struct register_rows register_read(const struct source *source, struct arena *arena,
                                   struct problems *problems);

/* The head of a register, a line with its end. */
void register_head_add(struct text_builder *out);

/* A row as a line with its end. */
void register_row_add(const struct register_row *row, struct text_builder *out);

/* What is to be written behind the whole lines before any other row is: nothing, the line end
 * that is missing, or the torn rest as a line that is skipped; the head of a new file. `kept`: how
 * many bytes of the text stay. A torn rest is told. */
void register_mend(const struct source *source, const struct register_rows *rows, size_t *kept,
                   struct text_builder *out, struct problems *problems);

/* A row that lives as long as the arena, but for its place. */
struct register_row row_copy(const struct register_row *row, struct arena *arena);

/* ---- what hangs ---- */

/* Are both of one card of one boat in one language? */
bool same_card(const struct register_row *a, const struct register_row *b);

/* May a row of the register stand for that print: the same card, code and words of dates? */
bool same_print(const struct register_row *a, const struct register_row *b);

/* Do both name one place, whatever the case of the letters and the spaces? */
bool same_place(const char *a, const char *b);

/* The last print of that card, whatever its code, on that paper or, where it is NULL, on any;
 * NULL: it was never printed. */
const struct register_row *print_last(const struct register_rows *rows,
                                      const struct register_row *card, const char *paper);

/* The same if it is that very print; NULL: another was printed since, or none. An older one that
 * would do is not looked for: who hangs a card has the last print in hand. */
const struct register_row *print_of(const struct register_rows *rows,
                                    const struct register_row *card, const char *paper);

/* The rows of each boat side by side, in the order of the file; and of rows in that order, those of
 * one boat. Where they stand in the text is not kept. */
struct register_rows rows_by_boat(const struct register_rows *rows, struct arena *arena);
struct register_rows rows_of_boat(const struct register_rows *by_boat, const char *boat);

/* Does the card of that row still hang, as it was hung then? Only of rows that hang. */
bool hangs_still(const struct register_rows *rows, size_t index);

/* What a card with that code said, packed; NULL: no row tells. */
const char *content_of(const struct register_rows *rows, const struct register_row *card);

/* ---- a sheet as a row ---- */

/* Is it a sheet that is hung, and has a code by which it is known? */
bool sheet_is_registered(const struct sheet *sheet);

/* All that the sheet says of itself; event, paper, date, place, by, program and content are left
 * out. */
struct register_row row_of_sheet(const struct compose_input *input, const struct sheet *sheet,
                                 struct arena *arena);

/* What the sheet says: all facts of its check code, and the facts of the record and the base
 * that they follow from. Lines of words with tabs between, for register_changes alone. */
const char *register_content(const struct compose_input *input, const struct sheet *sheet,
                             struct arena *arena);

/* Does what a sheet says, of these contents, name gear of that tag? */
bool content_names(const char *content, const char *tag);

/* The same short and on one line, and back: NULL for what was not packed so, or is damaged. */
const char *content_pack(const char *content, struct arena *arena);
const char *content_unpack(const char *packed, struct arena *arena);

/* ---- what is another ---- */

/* Reasons in plain words, each a line, the gravest first. */
struct register_changes {
    const char *const *at;
    size_t count;
    const char *const *lost;   /* those of them that tell of a fact which is no longer recorded */
    size_t lost_count;
};

/* Why a card that said `old` is another now that it says `now`; both as register_content gave
 * them. There is at least one reason unless both are the same. */
struct register_changes register_changes(const char *old, const char *now, struct arena *arena);

/* ---- what is lost ---- */

/* A piece of gear. */
struct register_loss {
    const char *tag;
    const char *was, *where;   /* what it is called, and its place; NULL: not known */
    struct date printed;       /* the last print that has it */
};

struct register_losses {
    const struct register_loss *at;
    size_t count;
};

/* The gear that she had at the last print of each card of hers, and that her record has no more,
 * neither under its tag nor as retired or not fitted. `own`: her rows. While some piece or tag
 * could not be read, nothing counts as lost. What is lost of a piece that she has, or of herself,
 * is in register_changes. */
struct register_losses register_losses(const struct register_rows *own, const struct boat *boat,
                                       const struct languages *languages, struct arena *arena);

/* ---- codes as people read them off ---- */

enum code_reading { CODE_SOUND, CODE_MISTYPED, CODE_NO_CODE };

/* A check code as it is written on cards, from what was typed: any case, O for 0, I and L for 1,
 * hyphens and spaces anywhere. Mistyped: eight signs that cannot be a code, since the last does
 * not fit the others. No code: not eight signs, or signs that no code has; `*wrong` tells which
 * it is, or is NULL. */
enum code_reading code_read(const char *typed, struct arena *arena, const char **code,
                            const char **wrong);

#endif
