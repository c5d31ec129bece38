/* said_lines.h - all that the cards of a set say, a line a fact, and how two sets differ. */
#ifndef MAYDECK_SAID_LINES_H
#define MAYDECK_SAID_LINES_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "sheet.h"

/* The lines of one sheet that stand on its page, but for dates and code. */
struct said_sheet {
    const char *id;
    bool held;
    const char *whole;                /* all of them, to tell equal ones soon */
    const char *const *lines;
    size_t count;
};

struct all_said {
    const struct said_sheet *sheets;
    size_t count;
};

struct all_said said_by(const struct sheet *const *sheets, size_t count, struct arena *arena);

/* That sheet; NULL: there is none. */
const struct said_sheet *said_sheet(const struct all_said *said, const char *id);

/* Is the line in the sheet? */
bool said_in(const struct said_sheet *sheet, const char *line);

/* Is the line one of the sheet's with words left out, and perhaps others joined? */
bool said_less(const struct said_sheet *sheet, const char *line);

#endif
