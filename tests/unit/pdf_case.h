/* pdf_case.h - what the tests of PDFs share: faces and a folder of their own, pages
 * made quickly, and what poppler reads back from them. */
#ifndef MAYDECK_PDF_CASE_H
#define MAYDECK_PDF_CASE_H

#include "draw.h"

#define PAGE_SIDE (300 * MPT_PER_POINT)
#define DARK 128

/* Shared by the tests of one program. */
struct pdf_case {
    struct arena *arena;
    struct problems *problems;
    struct faces *faces;
    char folder[64];
};
extern struct pdf_case pdf_case;

/* For cmocka's group setup and teardown: opens the faces and makes the folder;
 * removes it with all that is in it. */
int pdf_case_open(void **state);
int pdf_case_close(void **state);

struct page_item text_item(enum face_role role, mpt size, mpt x, mpt baseline, const char *text);
struct page page_of(const struct page_item *items, size_t count);
struct document document_of(const struct page *const *pages, size_t count);

/* Makes the PDF or fails the test with the first problem. */
struct bytes pdf_of(const struct page *const *pages, size_t count);
void bytes_store(struct bytes bytes, const char *name);
void page_store(const struct page_item *items, size_t count, const char *name);

/* Runs a command in the folder; gives its output. It must succeed and say nothing
 * on its error channel. */
char *command_read(const char *command);

/* A page as grey pixels at 150 dots an inch. */
struct image {
    int width, height;
    const unsigned char *at;
};
struct image page_render(const char *pdf, int page);

/* All pages of a file at once; then page `number`, from 1, of `count`. */
void pages_render(const char *pdf);
struct image page_image(size_t number, size_t count);

/* A page in colour: three bytes a dot, row by row. */
struct picture {
    int width, height;
    const unsigned char *at;
};
struct picture page_picture(const struct page *page, int dots_an_inch);
struct rgb picture_at(const struct picture *picture, int x, int y);

bool dark(const struct image *image, int x, int y);
int grey_at(const struct image *image, double x_points, double y_points);

#endif
