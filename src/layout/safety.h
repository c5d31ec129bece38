/* safety.h - what the files of the safety plan's page share. Private to src/layout. */
#ifndef MAYDECK_SAFETY_H
#define MAYDECK_SAFETY_H

#include "band_boat.h"

/* ---- band_list.c: the list of one side of a band, laid out at the sizes it has ---- */

struct laid_row {
    const struct band_row *of;
    struct paragraph title;       /* the name of its place; no lines where it stands there */
    struct paragraph words[2];    /* its name, and the spot on lines of its own */
    int word_count;
    mpt title_over;               /* what is free over the line at its head, */
    mpt title_base;               /* from there to its base line, */
    mpt title_height;             /* and all of it */
    mpt words_height;
};

struct laid_list {
    struct laid_row *rows;
    size_t count;
};

/* What all lists of a page have in common. */
struct list_style {
    mpt width;                    /* of a column */
    mpt tag;                      /* of the boxes of tags: all are as wide as the widest */
    mpt pitch_least, pitch_most;  /* from row to row */
};
struct list_style list_style_of(const struct pen *pen, mpt width);

struct laid_list list_lay(const struct pen *pen, const struct band_list *list,
                          const struct list_style *style);
mpt list_height(const struct laid_list *list, mpt pitch);

/* The middle of a row at that pitch, below the list's top. */
mpt list_row_middle(const struct laid_list *list, size_t row, mpt pitch);

/* Where its words end, right of the list's left edge. */
mpt list_row_end(const struct laid_row *row, const struct list_style *style);

/* Height of a line with the name of a place, which the name of a zone on the boat has too. */
mpt list_title_height(const struct pen *pen);

void list_place(struct pen *pen, const struct laid_list *list, const struct list_style *style,
                struct point corner, mpt pitch);

/* How much of a row's words passes one line of type; 0: nothing does. */
mpt list_row_cut(const struct pen *pen, const struct laid_row *row,
                 const struct list_style *style);

/* What a list gets shorter by when such a row has one line. */
mpt list_line_saved(const struct laid_row *row, const struct list_style *style);

/* Square: on deck; round: below. */
void tag_chip_draw(struct pen *pen, struct area box, enum level level, const char *tag,
                   const struct style *style, struct place origin);

/* ---- band_tags.c: the tags on the boat, with level lines to their rows ---- */

struct band_tag {
    const struct band_row *of;
    enum list_side list;
    struct area box;
    struct span within;           /* where it may move */
    mpt list_end;                 /* x at which its row ends, or begins */
};

struct band_tags {
    struct band_tag *at;
    size_t count;
};

/* A band where it stands, with its lists. */
struct laid_band {
    struct placed_band placed;
    struct laid_list lists[LIST_COUNT];
};

/* What a page consists of when it has been fitted. */
struct banded_page {
    struct frame frame;
    struct list_style style;
    struct laid_band *bands;
    struct placed_band *placed;   /* the same bands, as the boat knows them */
    size_t count;
    mpt pitch;
    struct band_boat boat;
    struct band_tags tags;
};

/* Finds where each tag stands. False: her bow is too narrow for those at one height. */
bool band_tags_find(struct pen *pen, struct banded_page *page);

/* Lines first, then tags over them. */
void band_leaders_place(struct pen *pen, const struct banded_page *page);
void band_tags_place(struct pen *pen, const struct banded_page *page);

/* The names of zones, in the hull, where they are not too wide for it. */
void band_names_place(struct pen *pen, const struct banded_page *page);

/* ---- index_block.c: what saves lives, in two columns ---- */

mpt index_height(const struct pen *pen, mpt width);
void index_place(struct pen *pen, struct area area);

/* ---- safety_words.c: port, bow and starboard above the boat; the legend below it ---- */

void safety_head_place(struct pen *pen, struct area head);
void safety_legend_place(struct pen *pen, struct area area);

#endif
