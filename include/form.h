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

struct form_line {
    const struct form_cell *cells; /* one a column of its section */
    enum form_voice voice;
    struct place origin;
};

enum form_start {
    FORM_GOES_ON,      /* below the section before it, where a line of it has room there */
    FORM_NEW_PAGE
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

#endif
