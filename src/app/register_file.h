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

/* Rows of the boat that is being printed. */
struct print_record {
    struct register_row *rows;
    size_t count, room;
};

/* Takes note that a file with a page of each of these sheets stands, of which several behind each
 * other may be one; none of a draft, which is not to be hung, or of what is only listed. */
void record_sheets(struct print_record *record, const struct sheets *sheets,
                   const struct sheet *const *list, size_t count);

/* Adds those to the register that it has not yet, and forgets them. Printing a
 * specimen makes no register where there is none. */
void record_write(struct print_record *record, struct boat_job *boat);

#endif
