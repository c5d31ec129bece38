/* layout_room.h - what the files of this room share. Private to src/layout. */
#ifndef MAYDECK_LAYOUT_ROOM_H
#define MAYDECK_LAYOUT_ROOM_H

#include "layout.h"
#include "template.h"

/* ---- pen.c: a page being made ---- */

struct boat_slots;
/* What is read of the page so far: see reading.c. */
struct reading {
    struct reading_part *parts;
    size_t count, room;
    size_t of_block[BLOCK_COUNT]; /* the part of each block; 0: none yet */
    size_t open;                  /* where new items belong; 0: to their block */
    size_t text;                  /* the text being read; 0: none */
    size_t text_paragraph;        /* of its words */
};

struct known_paragraphs;
struct known_texts;
struct pen {
    const struct faces *faces;
    struct known_texts *texts;           /* what was measured before; NULL: each is measured anew */
    struct known_paragraphs *known;      /* what was broken before; NULL: each is made anew */
    const struct boat_slots *slots;      /* of the set: where tags stand on the boat */
    struct arena *arena;
    struct problems *problems;
    const struct sheet *sheet;
    const struct sheet *whole;    /* all of it, where the page has a part; NULL: the sheet */
    const struct paper *paper;
    enum block_key block;         /* where new items belong */
    size_t paragraph, paragraphs; /* the one being set (0: none), and how many so far */
    struct reading reading;
    struct page_item *items;
    size_t count, room;
    struct arena *growing;        /* where items grow until the page is whole; NULL: in `arena` */
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

/* A sign of the register in the frame of its class. */
void pen_symbol(struct pen *pen, struct area area, enum symbol_key symbol, struct place origin);

/* Another page as a picture, as wide as that: its height follows. */
void pen_view(struct pen *pen, struct point corner, mpt width, const struct page *view);

/* Tells what the line or shape placed last is for. */
void pen_part(struct pen *pen, enum page_part part);

/* The text placed last stands directly behind the one before it. */
void pen_joined(struct pen *pen);

/* ---- reading.c: how the page is read to one who does not see it ----
 *
 * All words belong to their block, a text a paragraph, in the order of block.h; shapes and signs
 * are decoration, since the words beside them say what they mean. What else is to be told of a
 * block is told by these: entries of lists, headings, groups. */

/* What is placed from here on belongs to a new part of that kind, within the part that is open,
 * else within the pen's block. Gives what reading_end puts back. */
size_t reading_begin(struct pen *pen, enum reading_kind kind);

/* The same for a part that was begun before, and for what is not to be read. */
size_t reading_resume(struct pen *pen, size_t part);
size_t reading_skip(struct pen *pen);
void reading_end(struct pen *pen, size_t outer);

/* The part that is open: for reading_resume. */
size_t reading_part_open(const struct pen *pen);

/* Tells a new text, shape or sign which part it belongs to; and a line that it is a blank. */
void reading_text(struct pen *pen, struct page_item *item);
void reading_shape(struct pen *pen, struct page_item *item);
void reading_blank(struct pen *pen, struct page_item *item);

/* Gives the page the parts in the order in which they are read. Its items are the pen's. */
void reading_settle(struct pen *pen, struct page *page);

/* The plan of the card, which may stand on another of its pages. */
const struct plan_facts *pen_plan(const struct pen *pen);

/* Text in the middle of a height, by its capitals. */
mpt baseline_in(mpt top, mpt height, mpt size);

/* The largest size from aim to floor of a rule at which it fits, in steps; else the floor.
 * `fits` answers for a size; `of` is what it was given to know. */
mpt size_that_fits(struct size_rule rule, mpt step, bool (*fits)(void *of, mpt size), void *of);

/* The same, in steps from the floor, where what fits at a size fits at all that are smaller: it
 * asks few times. */
mpt size_largest(struct size_rule rule, mpt step, bool (*fits)(void *of, mpt size), void *of);

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
    int64_t units;        /* the same in font units: at no size */
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
/* The same, of no place, made anew. */
struct paragraph paragraph_new(const struct pen *pen, const struct style *style,
                               const char *text, mpt width);
/* pieces.c: the words of a text. */
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

/* The height that the sheet's title band needs where it takes two lines; 0: it takes one. */
mpt band_height_least(struct pen *trial);

/* Sizes of lines in the head that all pages of a set share. */
struct head_sizes { mpt when, berth; };
void head_place(struct pen *pen, const struct frame *frame, struct head_sizes sizes);

/* call_cells.c: who calls when, in a bar; and the height of a bar whose words take several lines,
 * as they may on paper of two sides, 0: they take one. */
void call_cells_place(struct pen *pen, struct area bar);
mpt call_line_height(const struct pen *trial);

/* The signs of what happens, as they stand below the title. */
struct paragraph when_lay(const struct pen *pen, mpt size, mpt width);

/* berth_block.c: how many lines of that size the texts for a berth and at anchor take; 0: the
 * sheet has none. */
size_t berth_lines(const struct pen *pen, mpt size);
void berth_place(struct pen *pen, struct area area, mpt size);

/* cut_marks.c: marks along which the sheet is cut, where it is. */
void cut_marks_place(struct pen *pen);

/* foot.c: the height of the footer where its texts stand one below the other, as they may on
 * paper of two sides; 0: two are beside two. */
mpt footer_height(const struct pen *pen);
void foot_place(struct pen *pen, const struct frame *frame);

struct row_setting;

/* Which rows have place and gear on one line. */
enum row_forms {
    FORMS_OF_LINES,               /* none */
    FORMS_BY_STEP,                /* those of steps in which all have room for it */
    FORMS_BY_ROW,                 /* all that have room for it */
    FORMS_BARE,                   /* those too that have it only without a locator */
    FORMS_COUNT
};
struct step_sizes { mpt headline, row; enum row_forms forms; };

/* The steps of a card at these sizes in a column of that width. */
struct laid_steps {
    struct step_sizes sizes;
    mpt width, height;            /* with least spacing */
    mpt excess;                   /* how far the longest line passes the column; <= 0: it does
                                     not */
    struct place excess_at;       /* what that line is about */
    const struct row_setting *setting;
    const struct laid_step *steps;
    size_t count;
};
struct laid_steps steps_lay(const struct pen *pen, struct step_sizes sizes, mpt width);

/* steps_fit.c: the steps at the largest sizes at which they fit into the area, or else at their
 * floors in the form that is lowest. */
struct laid_steps steps_fit(const struct pen *pen, struct area area);

/* Tells of each line of gear that is too long; false: of none. */
bool steps_excess_tell(struct pen *pen, const struct laid_steps *laid);

/* Spread over the height of the column. */
void steps_place(struct pen *pen, const struct laid_steps *laid, struct area column);

/* steps_budget.c: false, with a problem, where a card has more steps or rows than it may. */
bool budget_kept(struct pen *pen);

/* Where the first gear of the step with the most is recorded. */
struct place longest_step_place(const struct sheet *sheet);

/* What makes the steps shorter. */
const char *steps_remedy(const struct pen *pen);

void plan_place(struct pen *pen, struct area area);

/* ---- safety_page.c ---- */

/* false, with problems, when its gear is too much for a page. It shares no height with the other
 * cards but that of the head and the footer. */
bool safety_place(struct pen *pen, const struct page_needs *needs);

/* The same without placing anything or telling of it. */
bool safety_fits(struct pen *trial, const struct page_needs *needs);

#endif
