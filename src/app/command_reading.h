/* command_reading.h - a command line being read: what the files that read it share. Private to
 * src/app. */
#ifndef MAYDECK_COMMAND_READING_H
#define MAYDECK_COMMAND_READING_H

#include "options.h"

/* Values of getopt_long: a letter, or this and the index of the row. */
enum { LONG = 256 };

struct reading {
    const struct command *command;
    struct options *options;
    struct arena *arena;
    unsigned given[OPTIONS_MOST];   /* how often, a row each */
    enum exit_status status;
};

/* Tells what is wrong with the command line. Always false, so that a reader can leave with it. */
bool refuse(struct reading *reading, const char *remedy, const char *what);

/* "see maydeck print --help" */
const char *see_help(const struct reading *reading);

/* Is the row one of the command's? */
bool has_option(const struct reading *reading, const struct option_row *row);

/* ---- option_unknown.c ---- */

/* Tells of the option that getopt_long refused last. Always false. */
bool option_refuse(struct reading *reading, char **argv);

/* ---- command_operand.c ---- */

/* Takes the base or the topic that was named behind the options; false (told): it is missing,
 * unknown, or one of several. */
bool operand_take(struct reading *reading, int argc, char **argv);

/* ---- command_streams.c ---- */

/* Takes "-" where the command has it for standard input or output; false (told): it has it not, or
 * cannot do with it what was asked for. */
bool streams_sound(struct reading *reading);

#endif
