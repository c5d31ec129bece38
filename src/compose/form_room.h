/* form_room.h - how forms are composed: begun, written section by section and line by line, and
 * made the one sheet of a set. Private to src/compose. */
#ifndef MAYDECK_FORM_ROOM_H
#define MAYDECK_FORM_ROOM_H

#include "compose_room.h"

/* A form being written. */
struct form_writer {
    struct composing composing;
    struct form_section *sections;
    size_t count, room;
    struct form_line *lines;      /* of the last section */
    size_t line_room;
    const struct views_facts *views;      /* pages shown small below all sections; NULL: none */
    struct form_blank *blanks;    /* of the last line */
    size_t blank_room;
};

/* What stands at its head and foot. */
struct form_head {
    const char *id;               /* of the sheet: survey */
    const struct phrase *title;   /* in capitals */
    const char *over;             /* in the band, in the place of the boat's name; NULL: her name */
    const struct phrase *signs;   /* below the band; NULL: nothing */
    size_t alone;                 /* see struct form_facts */
};

/* A form about the boat of the input: of a card it has nothing. */
struct form_writer form_begin(const struct compose_input *input, struct arena *arena,
                              struct problems *problems);

/* Begins a section; its lines are those that are added next. The columns must live on. */
void form_section_add(struct form_writer *writer, const struct form_section *section);

/* A line of the last section: as many cells as it has columns, which are copied. */
void form_line_add(struct form_writer *writer, const struct form_cell *cells,
                   enum form_voice voice, struct place origin);

/* Asks that below the cells of the last line, behind what was asked there before. The choices are
 * copied. */
void form_blank_add(struct form_writer *writer, const struct form_blank *blank);

/* So many of what is asked below the last line stand to a row. */
void form_blanks_align(struct form_writer *writer, size_t across);

/* The form as the one sheet of a set. */
const struct sheet_set *form_end(struct form_writer *writer, const struct form_head *head);

/* The same of stickers, which have neither head nor foot. */
const struct sheet_set *stickers_end(struct form_writer *writer, const struct form_head *head,
                                     const struct stickers_facts *stickers);

/* The text of a word of the form that stands alone; of a phrase: phrase_said. */
const char *form_word(const struct form_writer *writer, enum word word);

#endif
