/* append.h - a file that only grows, whoever else writes into it (room: draw). It does not know
 * what the lines say. */
#ifndef MAYDECK_APPEND_H
#define MAYDECK_APPEND_H

#include "arena.h"
#include "draw.h"
#include "problem.h"
#include "source.h"

/* What to do where there is no such file yet. */
enum append_where { APPEND_IF_THERE, APPEND_MAKE };

/* Begun; there is none, and none is to be made; refused by the system, which is told. */
enum append_begun { APPEND_BEGUN, APPEND_ABSENT, APPEND_FAILED };

/* A file that this run alone writes into until append_end. */
struct appending {
    const char *path;
    int file;
    const struct source *source;    /* all that stood in it */
    size_t length;                  /* bytes of the file, with the mark that may stand before */
    struct arena *arena;
};

/* More than a file that only grows is allowed to be. */
#define APPEND_LIMIT ((size_t)256 * 1024 * 1024)

/* Opens the file, waits until no other run writes into it, and reads it. It must be a regular
 * file, or a link to one. Until append_end nothing else may open the path. */
enum append_begun append_begin(const char *path, enum append_where where, struct arena *arena,
                               struct problems *problems, struct appending *out);

/* Cuts the file after its first `kept` bytes, writes `more` behind them in one piece, makes both
 * last, and lets others write. Where the system refuses, the file is left with no part of
 * `more` (if it allows that), and it is told: false. Nothing is touched where nothing is to be
 * cut or written. */
bool append_end(struct appending *appending, size_t kept, struct bytes more,
                struct problems *problems);

/* The same as append_end, but others do not write yet: more may follow. Of what stood in the file
 * `source` tells as before. */
bool append_more(struct appending *appending, size_t kept, struct bytes more,
                 struct problems *problems);

/* Bytes of the file, with the mark that may stand before its text. */
size_t append_length(const struct appending *appending);

#endif
