/* form_block.h - a form laid out: its sections at the size of rows, each line as high as its
 * highest cell. Private to src/layout. */
#ifndef MAYDECK_FORM_BLOCK_H
#define MAYDECK_FORM_BLOCK_H

#include "form_blanks.h"
#include "pages.h"

/* A line of a section, or the heads of its columns. */
struct laid_form_line {
    struct paragraph words[FORM_COLUMNS_MOST];
    struct laid_blanks blanks;         /* below the cells, or beside words of one line; */
    mpt beside;                        /* then where the room beside them begins */
    mpt cells;                         /* height of the cells */
    mpt height;                        /* with all below them */
};

struct laid_form_section {
    const struct form_section *section;
    mpt width[FORM_COLUMNS_MOST];      /* of each column */
    struct paragraph title, note;
    mpt bar, note_height;              /* of the dark bar; of the note, 0: it has none */
    struct laid_form_line head;        /* of height 0: none, or they stand in the bar, */
    bool heads_in_bar;                 /* beside the title, where it leaves room */
    mpt indent;                        /* of what is asked below the cells */
    struct laid_form_line *lines;
    mpt height;
    bool wide;                         /* a word is wider than its column */
    struct place wide_at;
};

struct laid_form_section form_section_lay(const struct pen *pen,
                                          const struct form_section *section, mpt width);
void form_section_place(struct pen *pen, const struct laid_form_section *laid,
                        struct point corner, mpt width);

/* The form, of which what stands alone has room in that body if it can: lines that a section may
 * let go stand in a section of their own behind, of the same title. */
const struct form_facts *form_alone_fit(const struct pen *pen, const struct form_facts *form,
                                        const struct area *body);

#endif
