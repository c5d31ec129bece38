/* main.c - the program: read the command line, run the command (room: app). */
#include "fleet.h"
#include "options.h"
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

/* Does the command change no file? Then nothing is lost but what was not read. */
static bool only_tells(const struct command *command, const struct options *options)
{
    const unsigned telling = OF_CHECK | OF_WHY | OF_CALL | OF_LIST | OF_RENEW | OF_DUE | OF_TABLE |
                             OF_VERIFY;
    if (command == NULL)
        return true;
    bool writes = options->print || options->file != NULL || options->table != NULL;
    return (command->bit & telling) != 0 && (command->bit == OF_VERIFY || !writes);
}

/* What could not be told counts as failed: a full disk under standard output or error. */
static enum exit_status output_end(const struct command *command, const struct options *options,
                                   enum exit_status status)
{
    if (fflush(stdout) == 0 && ferror(stdout) == 0)
        return status;
    bool gone = reader_is_gone();
    if (gone && status < EXIT_SYSTEM && only_tells(command, options))
        end_by_reader();
    fputs(gone ? "maydeck: failure: standard output was closed before all was told\n"
                 "  remedy: let what reads it read to the end, then do it again\n"
               : "maydeck: failure: standard output could not be written\n"
                 "  remedy: make room on the disk, or send it elsewhere, then do it again\n",
          stderr);
    return EXIT_SYSTEM;
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
    status = output_end(command, &options, status);
    if (fflush(stderr) != 0 || ferror(stderr) != 0)
        status = EXIT_SYSTEM;
    return (int)status;
}
