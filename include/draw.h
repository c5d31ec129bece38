/* draw.h - pages to bytes, bytes to files (room: draw). It decides nothing.
 * Only src/draw sees hpdf.h. */
#ifndef MAYDECK_DRAW_H
#define MAYDECK_DRAW_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "face.h"
#include "page.h"
#include "problem.h"
#include "text.h"

/* One PDF: pages of one boat in one language, such as all her cards. */
struct document {
    const char *title;             /* "TAMARISK - emergency cards" */
    const char *subject;
    const char *language;
    const struct page *const *pages;
    size_t count;
    bool two_sides;                /* every second page is the back of the one before it */
};

struct bytes { const unsigned char *at; size_t length; };

/* Writes the document into memory. Same input, same bytes: no clock, no locale,
 * /ID from the content. False with a SEVERITY_FAILURE in `problems`: when libharu
 * or HarfBuzz failed, and before anything is drawn when a page holds what would
 * be blank or mislead: a sign that is none, smaller than 7 mm or in the frame
 * of another class than its symbol's, a text without ink, a line without width,
 * a place off any paper. Each names the card and carries the item's origin. */
bool pdf_make(const struct document *document, const struct faces *faces, struct arena *arena,
              struct bytes *out, struct problems *problems);

/* The libraries by whose versions the bytes of a PDF follow, in one line. */
const char *draw_libraries(struct arena *arena);

/* The page as stable text, what golden tests compare. Lengths in thousandths of a
 * point; a missing block or glyph is "-"; texts are quoted, with \" \\ and \xNN.
 *     page CARD LANGUAGE WIDTHxHEIGHT "TITLE"
 *     KIND BLOCK X,Y WIDTHxHEIGHT ...     one line an item, in order, ending with
 *       text     role= ink= baseline= face= size= width= "TEXT"
 *       box      fill= stroke= [line=] radius=
 *       ellipse  fill= stroke= [line=]
 *       line     fill= stroke= [line=] X,Y X,Y
 *       path     fill= stroke= [line=] M X,Y  L X,Y  C X,Y X,Y X,Y  Z
 *       sign     class= glyph= */
void page_dump(const struct page *page, struct text_builder *out);

/* Makes `folder`, and those above it, where they are not there. SEVERITY_USE if the name is
 * empty, or one of them is a file, device or something else; SEVERITY_FAILURE if the system
 * refuses, or would refuse to write into it. The one that failed is named. */
bool folder_ready(const char *folder, struct arena *arena, struct problems *problems);

/* The file appears whole or not at all: temporary file beside it under a name of this
 * run's own, every write checked, fsync, close, rename, fsync of the folder. A failure,
 * or something in its place that is no regular file, is a
 * SEVERITY_FAILURE that names file and reason; the temporary file is removed. */
bool file_put(const char *folder, const char *name, struct bytes content, struct arena *arena,
              struct problems *problems);

/* Several files of one folder, in the place of those that are there. All are written and safe
 * on the disk before the first gets its name; so either none is changed or, only where giving a
 * name fails midway, the first `*put` are, and what is told says so. Each keeps its rights. */
struct file_content { const char *name; struct bytes content; };
bool files_put(const char *folder, const struct file_content *files, size_t count, size_t *put,
               struct arena *arena, struct problems *problems);

/* Keeps other runs that ask for it off the folder until folder_release; waits for one that holds
 * it, then sweeps the folder. -1, which may be released too: the file system knows no such
 * locks. */
int folder_hold(const char *folder, struct arena *arena);
void folder_release(int hold);

/* Removes a file that this run has put there and that is good for nothing now. */
void file_withdraw(const char *folder, const char *name, struct arena *arena);

/* Removes the temporary files that killed runs left in the folder, and none of a run
 * that is still at work; nothing while some run has the folder for itself. */
void folder_sweep(const char *folder, struct arena *arena);

/* The smallest side at which a sign may be drawn: 7 mm. The side includes the
 * black line round the frame. */
#define SIGN_SMALLEST MM(7.0)

#endif
