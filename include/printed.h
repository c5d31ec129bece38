/* printed.h - the list of what was printed into a folder: a row a PDF, of the run that wrote it
 * (room: register). It opens no file and looks at no PDF.
 *
 * Rows are only ever added; the last of a file's rows counts, and those before it tell what the
 * file was. So a run adds its rows before the files get their names: whenever it is stopped, each
 * file is as one of its rows says. */
#ifndef MAYDECK_PRINTED_H
#define MAYDECK_PRINTED_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "choice.h"
#include "date.h"
#include "problem.h"
#include "source.h"
#include "text.h"

/* What the list is called, beside the files that it tells of. */
#define PRINTED_NAME "printed.csv"
#define PRINTED_LIMIT ((size_t)64 * 1024 * 1024)

/* The columns in their order; later versions may add others. */
#define PRINTED_COLUMN_LIST(X) \
    X(PRINTED_FILE, "file") X(PRINTED_SUM, "sha256") X(PRINTED_BYTES, "bytes") \
    X(PRINTED_BOAT, "boat") X(PRINTED_LANGUAGE, "language") X(PRINTED_PAPER, "paper") \
    X(PRINTED_CARDS, "cards") X(PRINTED_RECORD, "record") X(PRINTED_INPUTS, "inputs") \
    X(PRINTED_VERSION, "version") X(PRINTED_DATE, "date") X(PRINTED_RUN, "run") \
    X(PRINTED_COMPLETE, "complete") X(PRINTED_DEFICIENCIES, "deficiencies") \
    X(PRINTED_FILES, "files")
enum printed_column { PRINTED_NONE, PRINTED_COLUMN_LIST(CHOICE_NAME) PRINTED_COLUMN_COUNT };

/* One PDF. No text but `inputs` and `record` may be empty. */
struct printed_row {
    const char *file;          /* its name in the folder */
    const char *sum;           /* SHA-256 of its bytes */
    size_t bytes;
    const char *boat;          /* key of the boat */
    const char *language, *paper;
    size_t cards, of_cards;    /* how many of how many cards it has; of forms both 0 */
    const char *record;        /* SHA-256 of the boat's file; NULL: she has none */
    const char *inputs;        /* one sum of all that the pages are made of; NULL: not reckoned */
    const char *version;       /* of the program */
    struct date date;          /* full: of the print */
    const char *run;           /* the same of all files of a run, and of no other run */
    bool complete;             /* nothing of the boat was held back */
    size_t deficiencies;       /* that `check` tells of her */
    size_t files;              /* how many of hers the run wrote, this one among them */
    bool vouched;              /* the run that has the list knows that its file is so */
    const struct printed_row *older;   /* the row before it of the same file; NULL: none */
};

struct printed_list;

struct printed_list *printed_list_new(struct arena *arena);

/* Adds a row, which is copied, as the last of its file. */
void printed_add(struct printed_list *list, const struct printed_row *row);

/* Adds the rows of a file; the arena may die after. False: some of it is damaged, which is told,
 * and was left out; a row that stands is whole, but whether its file is as it says is another
 * question. */
bool printed_read(struct printed_list *list, const struct source *source, struct arena *arena,
                  struct problems *problems);

/* That file is known to be as its last row says. */
void printed_vouch(struct printed_list *list, const char *file);

/* The last row of that file; NULL: it has none. */
const struct printed_row *printed_find(const struct printed_list *list, const char *file);

/* All rows in their order; the last one is of the last run. NULL behind the last. */
const struct printed_row *printed_at(const struct printed_list *list, size_t index);

/* The head, and a row, as a line with its end. */
void printed_head_add(struct text_builder *out);
void printed_row_add(const struct printed_row *row, struct text_builder *out);

#endif
