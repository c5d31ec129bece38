/* layout_room.h - what the files of this room share. Private to src/layout. */
#ifndef MAYDECK_LAYOUT_ROOM_H
#define MAYDECK_LAYOUT_ROOM_H

#include "layout.h"
#include "template.h"

/* ---- pen.c: a page being made ---- */

struct pen {
    const struct faces *faces;
    struct arena *arena;
    struct problems *problems;
    const struct sheet *sheet;
    const struct paper *paper;
    enum block_key block;         /* where new items belong */
    size_t paragraph, paragraphs; /* the one being set (0: none), and how many so far */
    struct page_item *items;
    size_t count, room;
    bool failed;                  /* something does not fit or has no glyph */
};

struct style {
    enum page_role role;
    enum face_role face;
    mpt size;
    enum ink ink;
};

/* Places one line of text; gives its width. A letter without a glyph is an
 * error with the place of the text. */
mpt pen_text(struct pen *pen, const struct style *style, mpt x, mpt baseline,
             const char *text, size_t length, struct place origin);
mpt pen_width(const struct pen *pen, const struct style *style, const char *text);

/* The ink of a line of text, from its start on the base line; all zero where the face lacks a
 * letter of it. */
struct run_ink pen_ink(const struct pen *pen, const struct style *style, const char *text,
                       size_t length);
void pen_box(struct pen *pen, struct area area, enum ink fill, enum ink stroke,
             mpt line_width, mpt radius);
void pen_ellipse(struct pen *pen, struct area area, enum ink fill);
void pen_line(struct pen *pen, struct point from, struct point to, enum ink ink,
              mpt width);
void pen_path(struct pen *pen, const struct path_step *steps, size_t count, enum ink fill,
              enum ink stroke, mpt line_width);
void pen_sign(struct pen *pen, struct area area, enum sign_class sign,
              enum symbol_key glyph, struct place origin);

/* gear_sign.c: the sign of that kind of gear; without one, the frame of its class and
 * the letters in it, at that size (NULL: the letter of the class). */
void gear_sign_place(struct pen *pen, struct area area, const struct item_kind *kind,
                     mpt size, const char *letters, struct place origin);

/* Tells what the line or shape placed last is for. */
void pen_part(struct pen *pen, enum page_part part);

/* Text in the middle of a height, by its capitals. */
mpt baseline_in(mpt top, mpt height, mpt size);

/* The largest size from aim to floor of a rule at which it fits, in steps; else the floor.
 * `fits` answers for a size; `of` is what it was given to know. */
mpt size_that_fits(struct size_rule rule, mpt step, bool (*fits)(void *of, mpt size), void *of);

/* Gives the style the largest size of its role at which the text is not wider than that, or
 * its floor; gives the width that the text has. */
#define SIZE_STEP 250
mpt style_fit(const struct pen *pen, struct style *style, const char *text, mpt width);

/* Tenths of a millimetre, rounded up: "0.4". */
const char *mm_text(struct arena *arena, mpt length);

/* The block does not fit: says by how much, and what to cut. */
void pen_too_long(struct pen *pen, struct place origin, mpt excess, const char *remedy,
                  const char *what);

/* ---- paragraph.c: words to lines ---- */

struct piece {
    const char *text;
    size_t length;
    bool bold;
    bool joined;          /* no space and no break before it */
    bool tied;            /* a space, but no break before it */
    mpt width;
    mpt blank_height;     /* > 0: a blank to write on, `width` its least width */
};

struct line { size_t first, end; mpt width; };

struct paragraph {
    struct style style;   /* of its regular words; bold ones take FACE_BOLD */
    const struct piece *pieces;
    size_t piece_count;
    const struct line *lines;
    size_t line_count;
    mpt width;            /* the measure */
    mpt line_height;
    mpt space;
    mpt widest_piece;     /* an unbreakable word wider than the measure is an error */
    struct place origin;
};

/* Breaks a text with **bold** parts by total fit: the fewest lines, then the
 * least ragged; a number stays with its unit, no last line of one word. */
struct paragraph paragraph_make(const struct pen *pen, const struct style *style,
                                const char *text, mpt width, struct place origin);
struct piece *pieces_parse(const struct pen *pen, const struct style *style, const char *text,
                           size_t *count);
void paragraph_break(struct paragraph *paragraph, struct arena *arena);

/* Breaks it again so that no line begins with a piece of which `keep` is true, if that
 * takes no more lines and makes none too wide; else it stays as it is. */
void paragraph_keep(struct paragraph *paragraph, const bool *keep, struct arena *arena);

/* The width of the pieces from `first` to before `end` on one line. */
mpt paragraph_length(const struct paragraph *paragraph, size_t first, size_t end);
mpt paragraph_height(const struct paragraph *paragraph);

/* Of the first line; 0: there is none. */
mpt line_width(const struct paragraph *paragraph);
void paragraph_place(struct pen *pen, const struct paragraph *paragraph, mpt x, mpt top);

/* What is placed between these two is of one paragraph (page.h). */
void paragraph_begin(struct pen *pen);
void paragraph_end(struct pen *pen);

/* Places the words of one line from x on; gives where it ended. */
mpt line_place(struct pen *pen, const struct paragraph *paragraph, size_t line, mpt x,
               mpt baseline);

/* ---- blocks ---- */

void head_place(struct pen *pen, const struct frame *frame, mpt when_size);

/* The signs of what happens, as they stand below the title. */
struct paragraph when_lay(const struct pen *pen, mpt size, mpt width);
void foot_place(struct pen *pen, const struct frame *frame);

struct step_sizes { mpt headline, row; };

/* The steps of a card at these sizes in a column of that width. */
struct laid_steps {
    struct step_sizes sizes;
    mpt width, height;            /* with least spacing */
    mpt excess;                   /* how far the longest line passes the column; <= 0: it does
                                     not */
    struct place excess_at;       /* what that line is about */
    mpt tag;                      /* width of the boxes of tags */
    mpt pitch;                    /* from row to row at least */
    const struct laid_step *steps;
    size_t count;
};
struct laid_steps steps_lay(const struct pen *pen, struct step_sizes sizes, mpt width);

/* Tells of each line of gear that is too long; false: of none. */
bool steps_excess_tell(struct pen *pen, const struct laid_steps *laid);

/* Spread over the height of the column. */
void steps_place(struct pen *pen, const struct laid_steps *laid, struct area column);

/* steps_budget.c: false, with a problem, where a card has more steps or rows than it may. */
bool budget_kept(struct pen *pen);

/* What makes the steps shorter. */
const char *steps_remedy(const struct pen *pen);

void plan_place(struct pen *pen, struct area area);

/* ---- distress_page.c ---- */
/* `needs`: what the set shares; the way its columns are laid out in is found here. */
bool distress_fits(struct pen *pen, const struct page_needs *needs);
bool distress_place(struct pen *pen, const struct page_needs *needs);

/* ---- safety_page.c ---- */

/* false, with problems, when its gear is too much for a page. It shares no height with the other
 * cards but that of the head and the footer. */
bool safety_place(struct pen *pen, const struct page_needs *needs);

/* ---- hull.c: the boat's outline ---- */

/* Half the breadth of the hull at `along` (thousandths from bow to transom), in
 * thousandths of its greatest half breadth. */
int32_t hull_half_breadth(int32_t along);

struct hull_view {
    struct area area;             /* the boat's own rectangle on paper */
    bool catamaran, trimaran;     /* neither: one hull */
    bool mast, cabin;             /* drawn where she has them */
    int32_t loa_mm, beam_mm;
    enum plan_part part;          /* what is drawn inside the outline */
    bool large;                   /* a page of its own: stronger lines */
};

/* The boat in the middle of `area`, drawn `widening` hundredths as wide as it is
 * for its length. */
struct hull_view hull_view_in(const struct boat *boat, struct area area, int widening);
void hull_draw(struct pen *pen, const struct hull_view *view);

/* Where a marker's centre belongs on paper, and whether a box of that size
 * round a point lies on the boat. */
struct point hull_point(const struct hull_view *view, const struct marker *marker);
bool hull_holds(const struct hull_view *view, struct area box);

/* The part of a catamaran a point lies on, by its distance from the middle line: -1
 * the port hull, 0 the bridge deck, 1 the starboard hull. 0 on a monohull. */
int hull_body(const struct hull_view *view, struct point point);

/* The same for a box that must lie wholly within the outline. */
bool hull_encloses(const struct hull_view *view, struct area box);

#endif
