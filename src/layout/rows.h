/* rows.h - lines of gear: its sign, tags, name and place, under a step or as a list of their
 * own. Private to src/layout. */
#ifndef MAYDECK_LAYOUT_ROWS_H
#define MAYDECK_LAYOUT_ROWS_H

#include "layout_room.h"

struct style row_style(enum face_role face, mpt size);

/* From the left edge of the column to the first tag, behind the sign. */
mpt row_indent(const struct pen *pen);

/* Of the sign of a row, `x` being the column's left edge. */
struct area row_sign_area(const struct pen *pen, mpt x, mpt top);

/* A tag in its black box: how wide the box must be, and the tag centred in the box, whose
 * height it takes from its line `area` where that is lower. */
mpt row_tag_width(const struct pen *pen, const char *tag, mpt size);
void row_tag_place(struct pen *pen, const char *tag, mpt size, struct area area,
                   struct place origin);

/* The widest box of their tags: those of one column are equally wide. */
mpt rows_tag_width(const struct pen *pen, const struct card_row *rows, size_t count, mpt size);

/* From row to row at least: for the sign, or the tag in its box where that is higher. */
mpt row_pitch_least(const struct pen *pen, mpt size);

/* All of a row, with boxes of tags so wide. */
mpt row_width(const struct pen *pen, const struct card_row *row, mpt size, mpt tag);

/* What a row has room in: boxes of tags so wide, the column. */
struct row_room { mpt tag, width; };

/* A row that is too long for one line has two, parted at a joint of its words: how many bytes of
 * `where` stand on the first, what stands on the second ("": there is none), how far the longer
 * passes the room (<= 0: it does not), and how much higher the row is for it. */
struct row_lines {
    size_t first;
    const char *second;
    mpt excess, extra;
};
struct row_lines row_lines(const struct pen *pen, const struct card_row *row, mpt size,
                           struct row_room room);

/* `line`: from the column's left edge, as high as the pitch; a second line stands below it. */
void row_place(struct pen *pen, const struct card_row *row, mpt size, mpt tag,
               struct area line);

/* Tells how far a line of that part of the page (a line of the steps) is too long, and how
 * many letters that is. False: it is not. */
bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size, const char *what);

/* ---- the block of rows: gear as a plain list ---- */

struct laid_rows {
    const struct rows_facts *rows;
    mpt size, width;
    mpt tag;                      /* width of the boxes of tags */
    mpt pitch, height;            /* with least spacing */
    mpt excess;                   /* how far the longest row passes the width; <= 0: it does
                                     not */
};
struct laid_rows rows_lay(const struct pen *pen, mpt size, mpt width);

/* Tells of each row that is too long; false: of none. */
bool rows_excess_tell(struct pen *pen, const struct laid_rows *laid);

/* Spread over the height of the column, as far as still looks like one list. */
void rows_place(struct pen *pen, const struct laid_rows *laid, struct area column);

#endif
