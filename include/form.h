/* form.h - facts of a form: a printed sheet that people work through and write upon, such as the
 * walk round a boat (room: compose). Sections stand one below the other in the order of their
 * list, on as many pages as they take; a line is never parted between two. Texts may hold
 * **bold** parts. A form calls nobody, names no case and has no check code. */
#ifndef MAYDECK_FORM_H
#define MAYDECK_FORM_H

#include <stddef.h>

#include "item.h"
#include "source.h"

/* What the cells of a column are. */
enum form_cell_kind {
    FORM_NUMBER,       /* a short text, as wide as the widest of them */
    FORM_SIGN,         /* the sign of a kind of gear, and its tag behind it */
    FORM_TEXT,         /* words on as many lines as they take */
    FORM_TICK,         /* a box to tick */
    FORM_BLANK         /* a line to write upon, behind the words of the cell */
};

struct form_column {
    enum form_cell_kind kind;
    const char *head;  /* over the column; "" for none */
    int share;         /* of FORM_TEXT and FORM_BLANK: of the width of the form, in thousandths;
                          0: what the others leave, shared evenly */
};

struct form_cell {
    const char *text;              /* of FORM_TICK: NULL where the line has no box, else "" */
    const struct item_kind *kind;  /* of FORM_SIGN; NULL: it has no sign */
};

enum form_voice {
    FORM_PLAIN, FORM_STRONG,
    FORM_SPOKEN        /* in capitals: what is said on the radio, or must be found at once */
};

/* How much is to be written behind words. */
enum form_room { FORM_NO_ROOM, FORM_SHORT, FORM_LONG };

/* What is asked below the cells of a line: words, boxes to tick, and a line to write upon. */
struct form_blank {
    const char *label;             /* before it; "" for none */
    const char *const *choices;    /* a box to tick before each */
    size_t choice_count;
    enum form_room room;           /* behind all of these */
};

struct form_line {
    const struct form_cell *cells; /* one a column of its section */
    enum form_voice voice;
    struct place origin;
    const struct form_blank *blanks; /* one behind the other, on as many rows as they take, from
                                        the first column of words to the edge */
    size_t blank_count;
    size_t across;                 /* so many to a row, in columns; 0: each as wide as it is */
};

enum form_start {
    FORM_GOES_ON,      /* below the section before it, where a line of it has room there */
    FORM_NEW_PAGE,
    FORM_WHOLE         /* not parted where a page can hold all of it */
};

enum form_manner {
    FORM_LISTED,
    FORM_WARNED        /* in a thick frame: nobody may pass over it */
};

#define FORM_COLUMNS_MOST 9

struct form_section {
    const char *title;             /* in a dark bar, on each page that it stands on */
    const char *note;              /* below it, once; "" for none */
    const struct form_column *columns;
    size_t column_count;
    const struct form_line *lines;
    size_t line_count;
    enum form_start start;
    enum form_manner manner;
    /* Of a section that stands alone (see below): the line that stands last where the page has no
       room for the last 1, 2, 3 ... of its lines, which then go on behind the page, one a line of
       the section; the first two stay. NULL: all of them must stand there. */
    const struct form_line *rest;
};

struct form_facts {
    const struct form_section *sections;
    size_t count;
    size_t alone;      /* so many of the first stand on one page, or the form is not made; 0: none
                          must */
};

/* Pages of other sheets, small, each with what it is called by below it. */
struct page;
struct form_view {
    const struct page *page;
    const char *number, *code;     /* 3P; its check code, "" where the page is
                                      not the first of its sheet */
};
struct views_facts {
    const struct form_view *items;
    size_t count;
};

/* What sticks to a piece of gear: its tag, what it is called, and how a hand brings it into each
 * state of which that is recorded. */
struct sticker {
    const struct item_kind *kind;
    const char *tag, *name;
    const char *const *states;     /* across: **SHUT** */
    size_t state_count;
    struct place origin;
};
struct stickers_facts {
    const char *foot;              /* on each: whose it is, and that she is a specimen */
    const struct sticker *items;
    size_t count;
};

#endif
