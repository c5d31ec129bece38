/* base_procedures.h - a base's own procedures while they are read: what the files that read them
 * share. Private to src/app. */
#ifndef MAYDECK_BASE_PROCEDURES_H
#define MAYDECK_BASE_PROCEDURES_H

#include "fleet.h"

#define BASE_PROCEDURES "procedures"

/* One of them: NAME.yaml, and its texts by language. */
struct base_card {
    const char *key;                       /* NAME */
    const struct procedure *ours;          /* the program's of that key; NULL: none has it */
    const struct source *logic;
    struct procedure_text_file *texts;
    size_t text_count;
    const struct procedure *procedure;     /* NULL: it cannot be used */
};

/* The folder of a base. */
struct base_folder {
    struct fleet *fleet;
    const struct options *options;
    const char *folder;                    /* BASE/procedures */
    struct procedure_set ours;
    const struct authorities *authorities; /* the program's and the base's; NULL: unsound */
    struct base_card *cards;
    size_t card_count;
};

/* ---- base_folder.c ---- */

/* Finds the cards and reads their files as bytes; what lies there and is not read is told. A file
 * of texts without its logic is a card that cannot be used. False: the folder cannot be read. */
bool base_folder_open(struct base_folder *base);

/* The program's sources and the base's; NULL, with problems: those of the base cannot be used. */
const struct authorities *base_authorities(const struct base_folder *base);

/* ---- base_changes.c ---- */

/* Tells what a base cannot settle of a card: its number, and of one of the program's the kind, and
 * on which boats a card of the core set is. True: nothing was told. */
bool base_card_check(const struct base_folder *base, const struct base_card *card,
                     const struct procedure *procedure, struct problems *problems);

#endif
