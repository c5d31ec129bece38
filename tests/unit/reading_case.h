/* reading_case.h - what the tests of read pages share: the texts of each page of a tagged file
 * in the order in which poppler reads them. In the folder and arena of pdf_case.h. */
#ifndef MAYDECK_READING_CASE_H
#define MAYDECK_READING_CASE_H

#include <stddef.h>

#include "page.h"
#include "sheet.h"

/* A text of the tree and the element that it stands in. */
struct read { const char *type, *text; };

/* What is read of a page, and how far the test has come with it. */
struct reading_back {
    const struct page *page;
    struct read *texts;
    size_t count, room, next;
};

/* Of a file in the folder; the test fails where it has not so many pages. */
void reading_back_take(const char *file, struct reading_back *backs, size_t pages);

/* The next text of the page is this one, in an element of that type; none is expected where it
 * is empty or NULL. Bold parts are as others. */
void expect_next(struct reading_back *back, const char *type, const char *text);

/* The rows of a safety plan, each under the name of its place; and the entries of its index, or of
 * that of cards. */
void places_expect(struct reading_back *back, const struct places_facts *places);
void index_expect(struct reading_back *back, const struct block *block);

/* What was not expected yet, a text a line. */
const char *what_is_left(const struct reading_back *back);

/* Both with a space between; "" for NULL. */
const char *joined(const char *first, const char *second);

/* Is it of the index, and the same words of it are read elsewhere on the page? Its heads stand
 * again above each of its columns. */
bool is_read_elsewhere(const struct page *page, const struct page_item *item);

#endif
