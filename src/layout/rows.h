/* rows.h - rows of gear by place: signs, place, tags, names and end states, under a step or as a
 * list of their own. Private to src/layout. */
#ifndef MAYDECK_LAYOUT_ROWS_H
#define MAYDECK_LAYOUT_ROWS_H

#include "layout_room.h"

struct style row_style(enum face_role face, mpt size);

/* A tag in its black box: how wide the box must be, and the tag centred in the box, whose
 * height it takes from its line `area` where that is lower. */
mpt row_tag_width(const struct pen *pen, const char *tag, mpt size);
void row_tag_place(struct pen *pen, const char *tag, mpt size, struct area area,
                   struct place origin);

/* The first sign of a column, its left edge at `x`. */
struct area row_sign_area(const struct pen *pen, mpt x, mpt top);

/* ---- how the rows of a column are set ---- */

struct row_setting {
    mpt size, place_size;         /* of names; of places */
    mpt width;                    /* of the column */
    mpt tag;                      /* the boxes of tags are equally wide */
    size_t signs;                 /* side by side: one or two */
    bool located;                 /* the sheet has a plan: each row shows where it is */
};

/* Rows with names of that size, in a column of that width; then with room for these rows. */
struct row_setting row_setting_make(const struct pen *pen, mpt size, mpt width);
void row_setting_widen(const struct pen *pen, struct row_setting *setting,
                       const struct card_row *rows, size_t count);

/* ---- a row ---- */

enum row_form {
    ROW_OF_LINES,                 /* the place, and below it the gear, on as many lines as it
                                     takes */
    ROW_ON_ONE_LINE,              /* both, where that fits */
    ROW_BARE,                     /* the same in the room of the locator too */
    ROW_RUNNING                   /* the gear runs on behind the place, over as many lines as it
                                     takes: in a table */
};
#define ROW_FORM_COUNT (ROW_RUNNING + 1)

struct laid_row {
    const struct card_row *row;
    enum row_form form;
    mpt height;
    mpt signs_down;               /* where its signs begin, below its upper edge */
    size_t place_lines, item_lines;
    mpt over;                     /* how far its longest line passes its room; <= 0: none does; */
    struct place over_at;         /* and whose words end it */
};
struct laid_row row_lay(const struct pen *pen, const struct row_setting *setting,
                        const struct card_row *row, enum row_form form);

/* `area`: of the column's width, and as high as the row or higher. */
void row_place(struct pen *pen, const struct row_setting *setting, const struct laid_row *laid,
               struct area area);

/* How far its place and spot pass their room where they stand on one line. */
mpt row_place_over(const struct pen *pen, const struct row_setting *setting,
                   const struct card_row *row);

/* So many letters of that size are as wide, or wider. */
int letters_of(mpt width, mpt size);

/* Tells how far a line of that part of the page (a line of the steps) is too long, and how
 * many letters that is. False: it is not. */
bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size, const char *what);

/* ---- locator.c ---- */

/* The boat, bow up, with a dot where the plan of the set has that tag: square on deck, round
 * below. */
void locator_place(struct pen *pen, struct area area, const char *tag);

/* ---- the block of rows: gear as a plain list ---- */

struct laid_rows {
    struct row_setting setting;
    const struct laid_row *rows;
    size_t count;
    mpt height;                   /* with least spacing */
    mpt excess;                   /* how far the longest row passes the width; <= 0: it does
                                     not */
};
struct laid_rows rows_lay(const struct pen *pen, mpt size, mpt width);

/* Tells of each row that is too long; false: of none. */
bool rows_excess_tell(struct pen *pen, const struct laid_rows *laid);

/* Spread over the height of the column, as far as still looks like one list. */
void rows_place(struct pen *pen, const struct laid_rows *laid, struct area column);

#endif
