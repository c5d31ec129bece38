/* help.c - what --help tells, from the rows of commands and options (room: app). */
#include <stdio.h>

#include "options.h"
#include "procedure_reference.h"

enum { NAME_ROOM = 40 };

/* What it tells of an option that takes one of several words, with these words. */
static void about_print(const struct option_row *row)
{
    printf("%s", row->about);
    for (size_t i = 0; row->choices != NULL && row->choices[i] != NULL; i++)
        printf("%s%s", i == 0 ? ": " : row->choices[i + 1] == NULL ? " or " : ", ",
               row->choices[i]);
    putchar('\n');
}

/* -o, --output DIR */
static void option_help(const struct option_row *row)
{
    char name[NAME_ROOM], letter[] = "    ";
    if (row->letter != 0) {
        letter[0] = '-';
        letter[1] = row->letter;
        letter[2] = ',';
    }
    snprintf(name, sizeof name, "--%s%s%s", row->name, row->argument == NULL ? "" : " ",
             row->argument == NULL ? "" : row->argument);
    printf("  %s%-19s ", letter, name);
    about_print(row);
}

static const char *operands_of(const struct command *command)
{
    if ((command->bit & OF_FILE) != 0)
        return "BASE FILE";
    if ((command->bit & OF_PRINTED) != 0)
        return "DIR";
    return command->topics == NULL ? "BASE" : "TOPIC";
}

static void usage_help(const struct command *command)
{
    printf("Usage: maydeck %s [OPTION]... %s\n\n%s\n\n", command->name, operands_of(command),
           command->help);
    if ((command->bit & OF_PRINTED) != 0)
        puts("DIR is a folder that was printed into, or a PDF in one.\n\nOptions:");
    else if (command->topics == NULL)
        puts("BASE is a folder with base.yaml and boats/*.yaml.\n\nOptions:");
    else
        puts("TOPIC is the first word of a line above.\n\nOptions:");
}

void help_of(const struct command *command)
{
    usage_help(command);
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if ((row->commands & command->bit) != 0 && row->about != NULL)
            option_help(row);
    puts("\nNames with \"...\" may be several, with commas between, or the option given again.\n\n"
         "Exit status: 0 good; 1 a card is held back or an input is wrong;\n"
         "2 wrong use; 3 the system failed (file, disk, memory).");
}

void help_general(void)
{
    puts("Usage: maydeck COMMAND [OPTION]... BASE\n\n"
         "Prints emergency action cards for the boats of a charter base.\n\nCommands:");
    for (size_t i = 0; i < command_count; i++)
        printf("  %-8s %s\n", commands[i].name, commands[i].about);
    printf("  %-8s %s\n", "help", "tell of a command, or what the files of a card may hold");
    puts("\nOptions:\n"
         "  -h, --help              tell how it is used\n"
         "  -V, --version           tell the version\n\n"
         "`maydeck help COMMAND` or `maydeck COMMAND --help` tells more of each,\n"
         "`maydeck help procedure` every key of a card's own files, for who writes cards.");
}

bool help_of_topic(const char *name, struct arena *arena)
{
    static const struct {
        const char *name;
        void (*tell)(struct text_builder *out);
    } topics[] = {{"procedure", procedure_reference}};
    for (size_t i = 0; i < sizeof topics / sizeof *topics; i++) {
        if (!text_equal(topics[i].name, name))
            continue;
        struct text_builder out = text_builder_in(arena);
        topics[i].tell(&out);
        fputs(out.at, stdout);
        return true;
    }
    return false;
}
