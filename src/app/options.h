/* options.h - the rows that describe commands and options: what is parsed and what the help
 * tells follows from them alone. Private to the room app. */
#ifndef MAYDECK_OPTIONS_H
#define MAYDECK_OPTIONS_H

#include "app.h"

/* Which commands an option row is for: bits, as in struct command. */
enum command_bit {
    OF_PRINT = 1 << 0,
    OF_CHECK = 1 << 1,
    OF_WHY = 1 << 2,
    OF_CALL = 1 << 3,
    OF_START = 1 << 4,
    OF_LIST = 1 << 5,
    OF_HANG = 1 << 6,
    OF_RENEW = 1 << 7,
    OF_DUE = 1 << 8,
    OF_TABLE = 1 << 9,
    OF_TAKE = 1 << 10,
    OF_BRIEF = 1 << 11,
    OF_SURVEY = 1 << 12,
    OF_VERIFY = 1 << 13,
    OF_SCHEMA = 1 << 14,
    OF_MANUAL = 1 << 15,
    OF_COMPLETION = 1 << 16,
    OF_ALL = OF_PRINT | OF_CHECK | OF_WHY | OF_CALL | OF_START | OF_LIST | OF_HANG | OF_RENEW |
             OF_DUE | OF_TABLE | OF_TAKE | OF_BRIEF | OF_SURVEY | OF_VERIFY | OF_SCHEMA |
             OF_MANUAL | OF_COMPLETION,
    OF_PRINTED = OF_VERIFY,   /* those that are given what was printed in the place of a base */
    OF_FILE = OF_TAKE,        /* those that are given a file behind the base */
    OF_TOPIC_BASE = OF_COMPLETION, /* those that may be given a base behind the topic */
};

enum option_kind {
    OPTION_FLAG,    /* bool */
    OPTION_ALONE,   /* bool: what it asks for needs no BASE */
    OPTION_TEXT,    /* const char * */
    OPTION_LIST,    /* struct names: with commas between, and as often as one likes */
    OPTION_DATE,    /* struct date, to the day */
    OPTION_CHOICE,  /* unsigned: which of the row's choices, the first is 1; 0: not given */
    OPTION_HELP,    /* told at once */
    OPTION_VERSION,
};

/* Those that take a boat's file from standard input. */
enum { OF_GIVEN = OF_PRINT | OF_CHECK | OF_WHY | OF_CALL };

/* One option as some commands have it. Another command may have it in other words, in a row
 * of its own; no command has two rows of one name. */
struct option_row {
    unsigned commands;
    const char *name;
    char letter;                /* its short form; 0: none */
    enum option_kind kind;
    size_t at;                  /* where in struct options its value goes */
    const char *argument;       /* what stands for its value in the help; NULL: it has none */
    const char *about;          /* NULL: not in the help */
    const char *const *choices; /* of OPTION_CHOICE, ended by NULL */
};

/* NULL after the last. */
const struct option_row *option_at(size_t index);
enum { OPTIONS_MOST = 128 };     /* rows there may be */

/* May pages differ by what is given there? Any option counts so that is not known to be another;
 * of the date the pages know by itself. */
bool option_is_of_pages(const struct option_row *row);

/* Options that exclude each other, ended by NULL; NULL after the last set. */
const char *const *options_apart(size_t index);

/* An option that says nothing without another. `option` is NULL after the last. */
struct option_need {
    const char *option, *needed, *remedy;
};
struct option_need option_need_at(size_t index);

void help_general(struct arena *arena);
void help_of(const struct command *command, struct arena *arena);

/* Tells of what is no command but has a help of its own, and how to leave; false: there is no such
 * thing. */
bool help_of_topic(const char *name, struct arena *arena, enum exit_status *status);

#endif
