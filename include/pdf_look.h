/* pdf_look.h - is a PDF whole, and what does it say of itself? (room: draw) It draws nothing, and
 * believes nothing that a file says. */
#ifndef MAYDECK_PDF_LOOK_H
#define MAYDECK_PDF_LOOK_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "draw.h"

/* A page's check code and the id of its card, as the document names them: "0TJ8-GE2D",
 * "flooding". */
struct pdf_code { const char *code, *card; };

struct pdf_look {
    const char *wrong;             /* why it is not whole, in a few words; NULL: it is */
    bool ours;                     /* it says that this program made it */
    size_t pages;
    const char *title, *language;  /* NULL: it says none */
    const struct pdf_code *codes;  /* in the order of the pages, each card once */
    size_t code_count;
};

/* Looks at all of it: head and end, whether the table of objects leads to each of them, whether
 * each ends, and whether each stream is as long as it says and can be unpacked. Of a file that
 * keeps its table in a stream, as other makers do, only head and end. What it says of itself is
 * given as far as it can be read. */
struct pdf_look pdf_look(struct bytes pdf, struct arena *arena);

#endif
