/* pdf_private.h - what the files of the room draw share: the canvas a page is
 * drawn on. Private to src/draw; the only header that brings in libharu.
 *
 * Libharu keeps its first error and then refuses everything, so the results of
 * its drawing calls are not looked at one by one: pdf.c asks once, before saving. */
#ifndef MAYDECK_PDF_PRIVATE_H
#define MAYDECK_PDF_PRIVATE_H

#include <hpdf.h>

#include "draw.h"

/* The faces as this document embeds them; `font` is NULL where none is used. */
struct pdf_face {
    HPDF_Dict font;
    struct subset subset;
    const struct face_metrics *metrics;
};

/* A page being drawn. */
struct canvas {
    HPDF_Page page;
    mpt height;
    const struct pdf_face *faces;   /* by role */
    struct arena *arena;
};

/* Everything that must hold before ink: sizes, coordinates, known signs of the
 * right class, no text without ink. Problems are told with the item's origin. */
bool page_check(const struct page *page, struct problems *problems);

/* A Type0 font object in the document; NULL when libharu failed. */
HPDF_Dict font_embed(HPDF_Doc document, const struct subset *subset,
                     const struct face_metrics *metrics, const char *name, struct arena *arena);

/* The name of a role's font in a page: F1, F2, ... */
const char *font_key(enum face_role role);

/* Draw one item each. */
void shape_draw(const struct canvas *canvas, const struct page_item *item);
void text_draw(const struct canvas *canvas, const struct page_item *item);
void sign_draw(const struct canvas *canvas, const struct page_item *item);

/* Points for libharu: the one place where lengths leave the integers. */
HPDF_REAL points(mpt length);
HPDF_REAL canvas_y(const struct canvas *canvas, mpt y);

void ink_fill(HPDF_Page page, enum ink ink);
void ink_stroke(HPDF_Page page, enum ink ink);

/* UTF-16BE with its mark, as PDF wants strings for people. */
HPDF_Binary text_string(HPDF_Doc document, const char *text, struct arena *arena);

/* Milli-units as a decimal number of at most three places: 12600 is 12.6. */
void decimal_add(struct text_builder *out, int64_t milli);

#endif
