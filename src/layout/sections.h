/* sections.h - the titled blocks of a distress call, laid out at a size and placed as they were
 * laid out. Private to src/layout. */
#ifndef MAYDECK_SECTIONS_H
#define MAYDECK_SECTIONS_H

#include "call.h"

/* A line: the set's word, if it has one, then what to say. */
struct laid_words {
    const struct card_text *line;
    const char *lead;             /* NULL: none */
    mpt tab;                      /* where what is said begins, behind the words */
    struct paragraph said;
    struct point at;              /* from where lines begin */
};

/* Head, notes before the words, lines, script, note behind them. */
struct laid_section {
    enum block_key key;
    const struct section_facts *section;
    struct paragraph note, end_note;      /* empty where there are none */
    struct paragraph *hints;
    struct laid_words *lines;
    struct laid_script script;
    mpt head, height;
    mpt lines_height;             /* of the higher column, and of both */
    mpt lines_in_all;
};

/* Of all its words and its lines to write on; and in how many columns its lines stand. */
struct section_look { struct script_sizes sizes; size_t columns; };

struct laid_section section_lay(const struct pen *pen, enum block_key key,
                                const struct section_look *look, mpt width);
void section_place(struct pen *pen, const struct laid_section *laid, struct area box);

#endif
