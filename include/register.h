/* register.h - what was printed and hung, as rows (room: register). A row names a sheet
 * by boat and id and holds the code that is printed on it, so that whoever finds the
 * sheet can tell which print it is. It knows no pages and reads no clock. */
#ifndef MAYDECK_REGISTER_H
#define MAYDECK_REGISTER_H

#include <stddef.h>

#include "arena.h"
#include "date.h"

/* One sheet of paper. All texts are given; none holds a control character. */
struct printed_sheet {
    const char *boat;          /* key of the boat: tamarisk */
    const char *id;            /* of the sheet among hers: engine_fire_port */
    const char *language;      /* en */
    const char *code;          /* check code: 0TJ8-GE2D */
    struct date printed;       /* a full date */
};

/* The rows as a list in YAML, one a line, each text in double quotes, such as
 *     - {boat: "tern", sheet: "flooding", language: "en", code: "3EHB-1W4H", printed: 2026-11-20}
 * sorted by boat, sheet, language, date and code in the order of their bytes: the same rows
 * give the same text in whatever order they come. "" where there is none. Lives in the
 * arena; cannot fail. */
const char *register_text(const struct printed_sheet *sheets, size_t count,
                          struct arena *arena);

#endif
