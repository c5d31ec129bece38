/* print_made.h - what the printing of one boat came to: files that wait for their names, what is
 * to be told of them, and what is wrong (room: app). It crosses from the process that made it to
 * the one that names the files. Private to src/app. */
#ifndef MAYDECK_PRINT_MADE_H
#define MAYDECK_PRINT_MADE_H

#include "drafts.h"
#include "packet.h"
#include "problem.h"

/* A file of hers, as the list of the folder has it too. */
struct print_file {
    const char *name;
    const char *language, *paper;
    size_t cards, of_cards;        /* how many of how many cards it holds */
    const char *rows;              /* of the register, a line a sheet in the file */
    bool written;                  /* false: only listed */
    struct file_draft draft;       /* of one that was written */
};

enum print_event_kind {
    PRINT_TOLD,        /* a text for standard output */
    PRINT_FILE,        /* a file, with the text that tells that it stands; "": none */
    PRINT_TALLY,       /* tells how many files without a text of their own stand since the last
                          tally, where any does; its text names them all */
};

struct print_event {
    enum print_event_kind kind;
    const char *text;
    struct print_file file;        /* of PRINT_FILE */
};

struct print_message {
    enum severity severity;
    bool told;                     /* false: it counts, but `check` tells it */
    bool shared;                   /* it may be said of other boats in the same words */
    const char *text;
};

struct print_made {
    struct print_event *events;
    size_t event_count, event_room;
    struct print_message *messages;
    size_t message_count, message_room;
    size_t deficiencies;           /* that `check` tells of */
    long process;                  /* that made it */
    bool stands;                   /* her files of an earlier run are what this run would print */
    const char *record;            /* sum of her file; NULL: it was not read */
    const char *inputs;            /* sum of all that her pages are made of; NULL likewise */
    struct arena *arena;
};

struct print_event *print_event_add(struct print_made *made, enum print_event_kind kind,
                                    const char *text);
void print_message_add(struct print_made *made, const struct print_message *message);

void print_made_pack(const struct print_made *made, struct text_builder *out);

/* False: these are not the bytes of one. */
bool print_made_unpack(struct packet *packet, struct arena *arena, struct print_made *made);

#endif
