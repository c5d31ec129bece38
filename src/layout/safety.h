/* safety.h - what the files of the safety plan's page share. Private to src/layout. */
#ifndef MAYDECK_SAFETY_H
#define MAYDECK_SAFETY_H

#include "labels.h"
#include "layout_room.h"
#include "plan_spot.h"

/* label_block.c: the label of a place, its name over a rule, then a line for each
 * kind of gear there */

struct laid_row {
    const struct plan_row *row;
    mpt text_x, text_down;        /* where the words begin: behind the tags, or below them */
    struct paragraph words;
    mpt height;
};

struct laid_label {
    const struct plan_place *place;   /* NULL: it is the label of where the card hangs */
    mpt width, height;
    struct paragraph title;
    struct paragraph here;        /* how the card hangs; empty on labels of places */
    struct laid_row *rows;
    size_t row_count;
};

/* At that size of type. How far an unbreakable word passes the right edge is told when the
 * label is placed. */
struct laid_label label_lay(const struct pen *pen, const struct plan_place *place, mpt size,
                            mpt width);

/* The label of where the card hangs. */
struct laid_label here_lay(const struct pen *pen, mpt size, mpt width);
void label_place(struct pen *pen, const struct laid_label *laid, mpt x, mpt top);

/* Where the rule lies below the label's top: leaders arrive there. */
mpt label_drop(mpt size);

/* How far the words of a line of gear pass one line of type; 0: they do not. */
mpt label_row_cut(const struct laid_row *laid);

/* What a label gets shorter by when such a line of gear is cut so far. */
mpt label_line_saved(const struct pen *pen, mpt size);

/* The line from a label to its place, or its halo. */
void label_leader_place(struct pen *pen, const struct label *label, enum ink ink, mpt width);

/* safety_tags.c: the tags of each place together, on the boat */

struct tag_group {
    struct area box;
    size_t columns;           /* chips side by side */
    mpt cell;                 /* width of each */
    mpt size;                 /* of their type */
    bool compact;             /* one mark stands for all tags: the label lists them */
    bool found;
};

#define CHIPS_ALL 99

/* Finds a spot for every place's tags, and for the mark of where the card hangs
 * (the last group, if the record says where). A place with more than `most` chips
 * has one mark for all. */
struct tag_group *tag_groups_find(struct pen *pen, const struct hull_view *view,
                                  size_t most, size_t *placed);

/* How many of them lie partly in another hull than their place, or cannot be shown by
 * a line to it because others lie between. */
size_t tag_groups_lost(const struct places_facts *safety, const struct hull_view *view,
                       const struct tag_group *groups);

/* Marks without tags say nothing where no leader explains them: they count as not
 * found then. Gives how many. */
size_t marks_give_up(const struct places_facts *safety, struct tag_group *groups);
void tag_group_draw(struct pen *pen, const struct plan_place *place,
                    const struct tag_group *group);
void here_mark_draw(struct pen *pen, struct area box, enum facing facing);

/* Square: on deck; round: below. */
void tag_chip_draw(struct pen *pen, struct area box, enum level level, const char *tag,
                   const struct style *style, struct place origin);

/* Tags that stand away from their place: a thin line to a dot there, unless others lie
 * between, or the line would cross a leader that is painted already. */
void true_place_draw(struct pen *pen, const struct hull_view *view,
                     const struct tag_group *groups, size_t index);

/* What that line takes up; no width and no height: there is none. */
struct area true_place_area(const struct hull_view *view, const struct marker *marker,
                            struct area box);

/* safety_words.c: port, bow and starboard above the boat; the legend below it. */
void safety_head_place(struct pen *pen, struct area head);
void safety_legend_place(struct pen *pen, struct area area);

#endif
