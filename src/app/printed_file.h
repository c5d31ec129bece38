/* printed_file.h - the list of what was printed, in the folder that is printed into. Private to
 * src/app. */
#ifndef MAYDECK_PRINTED_FILE_H
#define MAYDECK_PRINTED_FILE_H

#include "append.h"
#include "names.h"
#include "printed.h"
#include "sha256.h"

/* A list that this run adds to. */
struct printed_file {
    const char *folder;
    struct arena *arena;
    struct arena *scratch;         /* of what was read at the beginning */
    struct appending appending;    /* its file is -1 while there is no list */
    struct printed_list *list;     /* all rows that stood in it when it was opened */
    struct names placed;           /* files of this run, which it vouches for */
    size_t noted;                  /* rows that it added */
};

/* Opens the list of a folder that this run has claimed; where there is none, the first row that is
 * added begins one. A damaged
 * one is told and begun anew with the rows that stand; as it was, it stays beside it. False, told:
 * the system refuses, and nothing is to be printed. */
bool printed_begin(const char *folder, struct arena *arena, struct problems *problems,
                   struct printed_file *out);

/* Adds rows and makes them last: before their files get their names. False, told: refused; those
 * files do not get their names. */
bool printed_note(struct printed_file *printed, const struct printed_row *rows, size_t count,
                  struct problems *problems);

/* The run placed that file, or looked at it: it is as its last row says. */
void printed_place(struct printed_file *printed, const char *file);

/* Closes the list. Unless all its rows are this run's and their files were placed, it is read once
 * more, so that a run keeps no rows of its own: what is in it besides the last row of each file
 * that still lies there is taken out; of files that the run does not vouch for (printed_place) it
 * is looked whether they are of that many bytes, and where they have several rows, which of them
 * is true. False, told: refused; all rows stand then. */
bool printed_end(struct printed_file *printed, struct problems *problems);

/* The sum of a boat's file, as struct printed_row has it in `record`. */
void source_sum(const struct source *source, char out[SHA256_TEXT]);

/* The list of a folder, to be looked at. False: there is none, and `problems` has nothing of it;
 * or, told, it cannot be read. What is damaged is told, *whole is false then. */
bool printed_look(const char *folder, struct arena *arena, struct problems *problems,
                  struct printed_list **list, bool *whole);

#endif
