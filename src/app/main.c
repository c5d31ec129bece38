/* main.c - the program: read the command line, run the command (room: app). */
#include "fleet.h"
#include "stop.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <unistd.h>

/* What the words of a command line may take up. */
#define ARGUMENTS_LIMIT ((size_t)64 * 1024 * 1024)

/* Where standard input, output or error was closed before, the first files to be opened would take
 * its number, and what is told would be written into them. What stands in its place takes nothing,
 * so that it is told, too. False: not even that can be opened. */
static bool streams_stand(void)
{
    for (int file = STDIN_FILENO; file <= STDERR_FILENO; file++)
        if (fcntl(file, F_GETFD) < 0 && errno == EBADF && open("/dev/null", O_RDONLY) != file)
            return false;
    return true;
}

int main(int argc, char **argv)
{
    if (!streams_stand())
        return EXIT_SYSTEM;
    struct options options = {0};
    enum exit_status status = EXIT_GOOD;
    refusals_await();
    struct arena *arena = arena_new(ARGUMENTS_LIMIT);
    const struct command *command = options_read(argc, argv, arena, &options, &status);
    if (command != NULL)
        status = command->run(&options);
    arena_free(arena);
    if (unlooked_tell())
        status = EXIT_SYSTEM;
    /* What could not be told counts as failed: a full disk under standard output or error. */
    if (fflush(stdout) != 0 || ferror(stdout) != 0) {
        fputs("maydeck: failure: standard output could not be written\n"
              "  remedy: make room on the disk, or send it elsewhere, then do it again\n", stderr);
        status = EXIT_SYSTEM;
    }
    if (fflush(stderr) != 0 || ferror(stderr) != 0)
        status = EXIT_SYSTEM;
    return (int)status;
}
