/* plain.h - a plain writer of laid-out pages: what putting given words, lines and signs at given
 * places into a PDF takes, with libharu's own calls, level 6 and no thought. It is a yardstick, not
 * a printer: nothing of src/draw is in it, so that it stays as it is when that is made better. */
#ifndef MAYDECK_PLAIN_H
#define MAYDECK_PLAIN_H

#include <hpdf.h>

#include "page.h"
#include "text.h"

/* A face cut down to the letters of all pages of the run, and what is written of it each time. */
struct plain_face {
    struct subset subset;          /* without bytes: not used */
    const struct face_metrics *metrics;
    const char *name;              /* with the letters that say that it is a subset */
    const char *letters;           /* from codes back to letters */
};

/* A page that is drawn upon. */
struct canvas {
    HPDF_Page page;
    enum palette palette;
    mpt height;
    const struct plain_face *faces;    /* by role */
};

/* ---- plain_dump.c ---- */

/* The page that a dump (page_dump) tells of. NULL, with words on standard error: it cannot be
 * read. */
const struct page *plain_dump_read(const char *path, const struct faces *faces,
                                   struct arena *arena);

/* ---- plain_font.c ---- */

/* The face as it is written into each document. */
struct plain_face plain_face_of(const struct faces *faces, const struct usage *usage,
                                enum face_role role, struct arena *arena,
                                struct problems *problems);

/* A font object of it in the document; NULL: libharu failed. */
HPDF_Dict plain_font_add(HPDF_Doc document, const struct plain_face *face);

/* The name of a role's font in a page. */
const char *plain_font_key(enum face_role role);

/* ---- items ---- */

void plain_shape_draw(const struct canvas *canvas, const struct page_item *item);
void plain_sign_draw(const struct canvas *canvas, const struct page_item *item);
void plain_text_draw(const struct canvas *canvas, const struct page_item *item);

HPDF_REAL points(mpt length);
HPDF_REAL canvas_y(const struct canvas *canvas, mpt y);
void colour_fill(HPDF_Page page, struct rgb colour);
void colour_stroke(HPDF_Page page, struct rgb colour);

#endif
