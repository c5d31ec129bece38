/* register_file.h - the register of a base, BASE/register.csv: the one thing besides records that a
 * base keeps (room: app). Private to src/app. */
#ifndef MAYDECK_REGISTER_FILE_H
#define MAYDECK_REGISTER_FILE_H

#include "append.h"
#include "fleet.h"
#include "job.h"
#include "register.h"

const char *register_path(const struct options *options, struct arena *arena);

/* What a run adds, once it knows what is there: rows as lines. `of` is its own. */
typedef void rows_choose(void *of, const struct register_rows *there, struct text_builder *lines);

/* Takes the register for this run alone, mends a row that a killed run tore, lets `choose` add
 * rows, and writes them in one piece. What is wrong with rows that are there goes to `damages`.
 * False, told in `problems`: refused by the system. Where there is no register and none is to be
 * made, nothing is done. */
struct register_telling {
    struct arena *arena;
    struct problems *problems, *damages;
};
bool register_change(const char *path, enum append_where where, rows_choose *choose, void *of,
                     const struct register_telling *telling);

/* Reads it without changing it. False, with a problem, where there is none or it cannot be read:
 * then there are no rows. */
bool register_take(const struct options *options, const struct fleet *fleet,
                   struct register_rows *rows);

/* ---- register_print.c: what `print` records ---- */

/* Rows of what is to be printed, a line a sheet that is registered; of sheets that follow each
 * other several may be one. "": none is. */
const char *register_lines(const struct sheets *sheets, const struct sheet *const *list,
                           size_t count);

/* Rows that wait to be written: a register is read as a whole before any is added. */
struct register_writing {
    const char *path;
    struct arena *arena;
    struct text_builder lines;
    struct names boats;
};

struct register_writing register_writing_begin(const char *path);

/* Takes the lines of files of that boat that stand now. Those of one boat come one after the
 * other. */
void register_writing_add(struct register_writing *writing, const char *boat, const char *lines);

/* Adds those that wait to the register, but for prints that it has already. Where it cannot be
 * written, each boat is told. The second does so only once enough of them wait. */
void register_writing_flush(struct register_writing *writing, struct problems *problems);
void register_writing_flush_large(struct register_writing *writing, struct problems *problems);
void register_writing_end(struct register_writing *writing, struct problems *problems);

#endif
