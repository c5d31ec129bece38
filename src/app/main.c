/* main.c - the program: read the command line, run the command (room: app). */
#include "app.h"

int main(int argc, char **argv)
{
    struct options options = {0};
    enum exit_status status = EXIT_GOOD;
    const struct command *command = options_read(argc, argv, &options, &status);
    return (int)(command == NULL ? status : command->run(&options));
}
