/* pdf_private.h - what the files of the room draw share: the canvas a page is
 * drawn on. Private to src/draw; the only header that brings in libharu.
 *
 * Libharu keeps its first error and then refuses everything, so the results of
 * its drawing calls are not looked at one by one: pdf.c asks once, before saving. */
#ifndef MAYDECK_PDF_PRIVATE_H
#define MAYDECK_PDF_PRIVATE_H

#include <hpdf.h>

#include "content.h"
#include "draw.h"
#include "packing.h"

/* The faces as this document embeds them; `font` is NULL where none is used. */
struct pdf_face {
    HPDF_Dict font;
    struct subset subset;
    const struct face_metrics *metrics;
    uint16_t space;                 /* its number in the face */
};

/* A document being written, and what packs its streams. */
struct pdf_file {
    HPDF_Doc document;
    struct arena *arena;
    z_stream packer, small_packer;  /* for pages; for signs, of which there are many */
    unsigned char *packed;          /* room for one packed stream */
    size_t room;
};

/* A page being drawn: its operators go to `content`. */
struct canvas {
    HPDF_Page page;
    struct content *content;
    enum palette palette;
    mpt height;
    const struct pdf_face *faces;   /* by role */
    struct pdf_forms *forms;
    struct page_tags *tags;
    struct arena *arena;
};

/* Everything that must hold before ink: sizes, coordinates, known signs of the
 * right class, no text without ink. Problems are told with the item's origin. */
bool page_check(const struct page *page, struct problems *problems);

/* A Type0 font object in the document; NULL when libharu failed. */
HPDF_Dict font_embed(struct pdf_file *file, const struct subset *subset,
                     const struct face_metrics *metrics, const char *name);

/* The name of a role's font in a page: F1, F2, ... */
const char *font_key(enum face_role role);

/* ---- pdf_object.c ---- */

/* A dictionary of its own number in the file, for objects that others refer to. NULL: no
 * memory. */
HPDF_Dict dictionary_new(HPDF_Doc document);

/* How hard zlib tries. Of the pages of the specimens: 1.77 M instructions and 8.6 kB a page;
 * level 1 1.62 M and 9.0, level 4 2.43 M and 8.2, level 6 3.24 M and 7.8. */
#define PACKING_LEVEL 3

/* A dictionary of its own number whose entries are spelled by hand. NULL: no memory. */
HPDF_Dict spelled_new(HPDF_Doc document);
void spelled_set(HPDF_Dict dictionary, struct content *entries);

/* The number of an object among what libharu keeps with it. */
#define OBJECT_NUMBER 0x00FFFFFF

void file_begin(struct pdf_file *file, HPDF_Doc document, struct arena *arena);

/* A compressed stream of these bytes; the same of one that is there, and empty; one of bytes that
 * are packed already; and one that is not compressed. NULL, false: no memory. */
HPDF_Dict stream_new(struct pdf_file *file, const unsigned char *bytes, size_t length);
bool stream_fill(struct pdf_file *file, HPDF_Dict stream, const unsigned char *bytes,
                 size_t length);
HPDF_Dict stream_packed_new(HPDF_Doc document, const unsigned char *bytes, size_t length);
HPDF_Dict stream_plain_new(HPDF_Doc document, const unsigned char *bytes, size_t length);

/* ---- pdf_identity.c ---- */

/* Room for the identity in the trailer; and the identity over it, when all is written. False: the
 * library wrote no such room. */
void identity_reserve(HPDF_Doc document);
bool identity_put(unsigned char *at, size_t length, struct problems *problems);

/* ---- pdf_form.c ---- */

struct pdf_forms;
struct pdf_forms *forms_new(struct pdf_file *file);

/* The forms by their names, for the resources of pages. */
HPDF_Dict forms_dictionary(const struct pdf_forms *forms);

/* A sign is drawn in a square of so many units, and a black line of these units runs round it. */
#define SIGN_MODULE 100.0
#define SIGN_KEYLINE 3.0

/* The sign in its module (pdf_sign.c). */
void sign_write(struct content *content, enum palette palette, enum sign_class sign,
                enum symbol_key glyph);

/* ---- pdf_facts.c, pdf_colour.c: what the document says of itself ---- */

/* Title, subject and maker, twice: for old readers and as XMP; its language; how it is to be
 * shown and printed; what its pages are called. */
void facts_add(HPDF_Doc document, const struct document *about, struct arena *arena);

/* Which colours its numbers mean: sRGB, by a profile made here. */
void colours_add(struct pdf_file *file);

/* ---- pdf_tags.c, pdf_tree.c: what is read ---- */

/* The structure tree of a document being written; and its last words, when all pages are in it. */
struct tree;
struct tree *tree_begin(HPDF_Doc document, const char *language, struct arena *arena);
void tree_end(struct tree *tree);

/* What an element of such a part is called, which its stretches are too. */
const char *element_type(enum reading_kind kind);

/* A page while its content is written: each stretch of it is of one part of what is read, or of
 * none. */
struct page_tags {
    const struct page *page;
    bool begun;                     /* a stretch is being written */
    size_t part;                    /* whose */
    size_t *owners;                 /* by number of the stretch, decoration left out: its part */
    size_t count, room;
};

/* What is written from here on is of that part; 0: decoration. */
void tags_go_to(const struct canvas *canvas, size_t part);
void tags_end(const struct canvas *canvas);

/* The same for a stretch whose glyphs do not tell its text: in hexadecimal UTF-16. */
void tags_spell(const struct canvas *canvas, size_t part, const char *utf16);

/* The elements of a page that is written. */
void tree_page_add(struct tree *tree, const struct canvas *canvas);

/* ---- items ---- */

/* What follows the words of a text, so that words of two texts are not read as one. */
enum text_end { TEXT_SPACED, TEXT_JOINED };

/* Draw one item each. */
void shape_draw(const struct canvas *canvas, const struct page_item *item);
void text_draw(const struct canvas *canvas, const struct page_item *item, enum text_end end);
void sign_draw(const struct canvas *canvas, const struct page_item *item);

/* Points for libharu, which writes boxes of pages: the one place where lengths leave the
 * integers. */
HPDF_REAL points(mpt length);

/* UTF-16BE with its mark, as PDF wants strings for people. */
HPDF_Binary text_string(HPDF_Doc document, const char *text, struct arena *arena);

#endif
