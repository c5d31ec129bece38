/* call.h - what is said and done at the radio, laid out at a size and placed as it was laid
 * out. Private to src/layout. */
#ifndef MAYDECK_CALL_H
#define MAYDECK_CALL_H

#include "layout_room.h"

/* ---- script_block.c ---- */

struct laid_phrase {
    const char *label;            /* in a dark box before the words, or NULL */
    mpt indent;                   /* of the words, behind the label */
    struct paragraph words;       /* and blanks */
    mpt height;
};

struct laid_script {
    mpt size, height;             /* height: without gaps between the phrases */
    struct laid_phrase *phrases;
    size_t count;
};

/* Of its letters, and the height of its lines to write on. */
struct script_sizes { mpt letters, blanks; };

/* A script in a column of that width; NULL is a script of no phrases. */
struct laid_script script_lay(const struct pen *pen, const struct script *script, mpt size,
                              mpt width);
struct laid_script script_lay_with(const struct pen *pen, const struct script *script,
                                   struct script_sizes sizes, mpt width);

/* From the column's top; what height it has more than the script goes between phrases, as
 * far as they still belong together. Gives the height with those gaps. */
mpt script_place(struct pen *pen, const struct laid_script *laid, struct area column);

/* Between each two of so many things, of the room that is left. */
mpt gap_between(mpt room, size_t count);

/* ---- call_block.c ---- */

/* How wide the list of a call panel is, how many of its last lines stand below it, and its lines as
 * wide as that. */
struct list_way { mpt width; size_t under; const struct paragraph *lines; };

/* The call panel: how to work the set on the left, what to say on the right. Where there is
 * nothing to say, the lines have the whole panel. */
struct laid_panel {
    mpt size, height;
    mpt list;                     /* width of the left */
    mpt columns;                  /* height of both, without the head and what stands below */
    size_t under;                 /* lines below both */
    bool above;                   /* there are no columns: the lines stand above what to say, as
                                     many beside each other as have room */
    struct paragraph *operate;    /* a line each */
    size_t operate_count;
    mpt operate_height;
    struct laid_script script;
    const struct card_text *longest;  /* the line on working the set that makes the panel
                                         taller than its script; NULL when none does */
};
struct laid_panel panel_lay(const struct pen *pen, mpt size, mpt width);
void panel_place(struct pen *pen, const struct laid_panel *laid, struct area panel);

/* Its frame with the dark head: what call it is, and with which radio; the height of the head. */
void panel_head_place(struct pen *pen, struct area panel);
mpt panel_head_height(const struct pen *pen);

/* The line of numbers to call by telephone; and its height where it takes two lines, as it may on
 * paper of two sides, 0: it takes one. */
mpt contact_height(const struct pen *trial);
void contact_place(struct pen *pen, struct area area);

/* ---- spoken_block.c: the call right across a page ---- */

/* What is done, in its turn or as a line alone. */
struct laid_act {
    struct paragraph words;
    const char *number;           /* NULL: a line alone, as wide as the block */
    mpt height;
};

struct laid_spoken {
    mpt height;                   /* without gaps between the phrases */
    mpt spare;                    /* what of a greater height has use */
    struct laid_act *acts;        /* a pair of numbered ones stands side by side */
    size_t count;
    mpt acts_height;
    struct laid_script script;
};
struct laid_spoken spoken_lay(const struct pen *pen, mpt size, mpt width);
void spoken_place(struct pen *pen, const struct laid_spoken *laid, struct area area);

#endif
