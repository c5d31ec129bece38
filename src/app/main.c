/* main.c - the program: read the command line, run the command (room: app). */
#include "app.h"

#include <stdio.h>

int main(int argc, char **argv)
{
    struct options options = {0};
    enum exit_status status = EXIT_GOOD;
    const struct command *command = options_read(argc, argv, &options, &status);
    if (command != NULL)
        status = command->run(&options);
    /* What could not be told counts as failed: a full disk under standard output. */
    if (fflush(stdout) != 0 || ferror(stdout) != 0) {
        fputs("maydeck: failure: standard output could not be written\n", stderr);
        status = EXIT_SYSTEM;
    }
    return (int)status;
}
