/* options.c - the command line by tables: commands, options, help (room: app). */
#define _GNU_SOURCE
#include "app.h"

#include <getopt.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

const struct command commands[] = {
    {"print", "print the cards of a base's boats", "bcoDdqe",
     "Prints one PDF a boat, one page a card. A card whose facts are not recorded is\n"
     "held back and named; the others are printed.",
     command_print},
    {"check", "tell what is wrong or missing, print nothing", "bcDdp",
     "Reads the base and its boats, composes and lays out every card, and tells\n"
     "what is wrong, which cards are held back and what to record. \"recorded N of M\"\n"
     "counts the items of the register that the boat's record mentions, fitted or\n"
     "not fitted, of all items of the register; pieces of one item count once. At the\n"
     "end stand the items that the cards ask for and that neither the record mentions\n"
     "nor a message has named, where most boats have them, with the lines to paste.",
     command_check},
    {"why", "tell what each part of a card stands on", "bcaDd",
     "Tells, step by step, which case was taken, from which lines of the procedure and\n"
     "of the boat file, on which sources, and what still awaits sign-off. Without\n"
     "--card or --all it names the cards that exist.",
     command_why},
    {"call", "show what to say on the radio", "bcnRGXs",
     "Shows the radio script of one boat, a phrase a line, ____ where something is to\n"
     "be filled in: the general MAYDAY, or what one of the options asks for.",
     command_call},
    {"start", "write a new base folder or boat file to fill in", "bt",
     "Writes BASE/base.yaml if there is none, and BASE/boats/BOAT.yaml with --boat.\n"
     "Both ask for what the cards need, and hold nothing but the questions. No file\n"
     "that is there is ever changed.",
     command_start},
};
const size_t command_count = sizeof commands / sizeof *commands;

static const struct option_row {
    char letter;
    const char *name, *argument, *about;
} option_rows[] = {
    {'b', "boat", "BOAT", "only this boat (its file name without .yaml)"},
    {'c', "card", "CARD", "only this card (such as flooding)"},
    {'a', "all", NULL, "every card"},
    {'p', "page", NULL, "also tell how each page was proofread, a finding a line"},
    {'o', "output", "DIR", "where the files go (default: cards)"},
    {'d', "date", "DATE", "stands in for today (2026-11-25)"},
    {'D', "draft", NULL, "also print cards that lack facts, marked DRAFT"},
    {'q', "quiet", NULL, "print nothing but problems"},
    {'e', "each", NULL, "also write one file a card (BOAT-CARD.pdf)"},
    {'n', "nature", "NATURE", "a MAYDAY of this nature (such as fire)"},
    {'R', "relay", NULL, "MAYDAY RELAY for another boat"},
    {'G', "downgrade", NULL, "help is no longer needed at once"},
    {'X', "cancel", NULL, "cancel a false alert"},
    {'s', "spell", NULL, "name, call sign and MMSI spelled"},
    {'t', "type", "TYPE", "monohull or catamaran"},
    {'m', "dump", NULL, NULL},
    {'h', "help", NULL, "tell how it is used"},
    {'V', "version", NULL, "tell the version"},
};
#define OPTION_COUNT (sizeof option_rows / sizeof *option_rows)

/* ---- help ---- */

static void options_help(const char *letters)
{
    puts("\nOptions:");
    for (size_t i = 0; i < OPTION_COUNT; i++) {
        const struct option_row *row = &option_rows[i];
        bool general = row->letter == 'h' || row->letter == 'V';
        char name[32];
        if (row->about == NULL || (!general && strchr(letters, row->letter) == NULL))
            continue;
        snprintf(name, sizeof name, "--%s%s%s", row->name, row->argument == NULL ? "" : " ",
                 row->argument == NULL ? "" : row->argument);
        printf("  %s  %-16s %s\n", row->letter == 'o' ? "-o" : "  ", name, row->about);
    }
}

static void command_help(const struct command *command)
{
    printf("Usage: maydeck %s [OPTION]... BASE\n\n%s\n\nBASE is a folder with base.yaml and "
           "boats/*.yaml.\n",
           command->name, command->help);
    options_help(command->options);
    puts("\nExit status: 0 good; 1 a card is held back or an input is wrong;\n"
         "2 wrong use; 3 the system failed (file, disk, memory).");
}

static void general_help(void)
{
    puts("Usage: maydeck COMMAND [OPTION]... BASE\n\n"
         "Prints emergency action cards for the boats of a charter base.\n\nCommands:");
    for (size_t i = 0; i < command_count; i++)
        printf("  %-8s %s\n", commands[i].name, commands[i].about);
    puts("\n`maydeck COMMAND --help` tells more of each.");
}

/* ---- reading ---- */

static enum exit_status wrong_use(const char *what, const char *which, const char *remedy)
{
    fprintf(stderr, "maydeck: error: %s%s%s%s\n  remedy: %s\n", what, which == NULL ? "" : " \"",
            which == NULL ? "" : which, which == NULL ? "" : "\"", remedy);
    return EXIT_USE;
}

static enum exit_status unknown_command(const char *name)
{
    const char *names[sizeof commands / sizeof *commands];
    char remedy[80] = "see maydeck --help";
    for (size_t i = 0; i < command_count; i++)
        names[i] = commands[i].name;
    const char *nearest = text_nearest(name, names, command_count);
    if (nearest != NULL)
        snprintf(remedy, sizeof remedy, "did you mean \"%s\"?", nearest);
    return wrong_use("no such command", name, remedy);
}

static const struct command *command_find(const char *name)
{
    for (size_t i = 0; i < command_count; i++)
        if (strcmp(commands[i].name, name) == 0)
            return &commands[i];
    return NULL;
}

/* --date, else SOURCE_DATE_EPOCH, else the clock: the only place that asks it. */
static bool today_default(struct date *today)
{
    const char *epoch = getenv("SOURCE_DATE_EPOCH");
    char *end = NULL;
    if (epoch == NULL || epoch[0] == '\0') {
        *today = date_from_seconds((int64_t)time(NULL));
        return true;
    }
    long long seconds = strtoll(epoch, &end, 10);
    *today = date_from_seconds((int64_t)seconds);
    return *end == '\0' && seconds >= 0 && today->year <= 2199;
}

/* Options that are only kept: where. */
static const struct { char letter; size_t at; } flags[] = {
    {'q', offsetof(struct options, quiet)}, {'e', offsetof(struct options, each)},
    {'R', offsetof(struct options, relay)}, {'G', offsetof(struct options, downgrade)},
    {'X', offsetof(struct options, cancel)}, {'s', offsetof(struct options, spell)},
    {'a', offsetof(struct options, all)}, {'p', offsetof(struct options, page)},
};

static bool flag_take(int letter, struct options *options)
{
    for (size_t i = 0; i < sizeof flags / sizeof *flags; i++)
        if (flags[i].letter == letter) {
            *(bool *)((char *)options + flags[i].at) = true;
            return true;
        }
    return false;
}

static bool option_take(int letter, struct options *options, enum exit_status *status)
{
    switch (letter) {
    case 'b':
        options->boat = optarg;
        return true;
    case 'c':
        options->card = optarg;
        return true;
    case 'o':
        options->output = optarg;
        return true;
    case 'n':
        options->nature = optarg;
        return true;
    case 't':
        options->type = optarg;
        return true;
    case 'D':
        options->draft = true;
        return true;
    case 'm':
        options->dump = true;
        return true;
    case 'd':
        if (date_parse(optarg, &options->today) && options->today.day != 0)
            return true;
        *status = wrong_use("--date does not take", optarg, "write it as 2026-11-25");
        return false;
    default:
        return flag_take(letter, options);
    }
}

static void long_options(struct option *out)
{
    for (size_t i = 0; i < OPTION_COUNT; i++)
        out[i] = (struct option){option_rows[i].name,
                                 option_rows[i].argument == NULL ? no_argument
                                                                 : required_argument,
                                 NULL, option_rows[i].letter};
    out[OPTION_COUNT] = (struct option){0};
}

static bool takes(const struct command *command, int letter)
{
    return letter == 'm' || strchr(command->options, letter) != NULL;
}

static const char *option_name(int letter)
{
    for (size_t i = 0; i < OPTION_COUNT; i++)
        if (option_rows[i].letter == letter)
            return option_rows[i].name;
    return "";
}

/* False: leave with *status. */
static bool command_line(int argc, char **argv, const struct command *command,
                         struct options *options, enum exit_status *status)
{
    struct option list[OPTION_COUNT + 1];
    char help[64];
    int letter;
    snprintf(help, sizeof help, "see maydeck %s --help", command->name);
    long_options(list);
    opterr = 0;
    while ((letter = getopt_long(argc, argv, ":o:", list, NULL)) != -1) {
        if (letter == 'h') {
            command_help(command);
            return false;
        }
        if (letter == '?' || letter == ':') {
            *status = wrong_use(letter == ':' ? "a value is missing after" : "no such option",
                                argv[optind - 1], help);
            return false;
        }
        if (!takes(command, letter)) {
            *status = wrong_use("this command has no option", option_name(letter), help);
            return false;
        }
        if (!option_take(letter, options, status))
            return false;
    }
    if (optind + 1 == argc) {
        options->base = argv[optind];
        return true;
    }
    *status = wrong_use(optind == argc ? "no base folder was named" : "more than one base folder",
                        NULL, "name one folder, such as: maydeck print tests/fleet");
    return false;
}

const struct command *options_read(int argc, char **argv, struct options *options,
                                   enum exit_status *status)
{
    if (argc < 2) {
        *status = wrong_use("no command was named", NULL, "see maydeck --help");
        return NULL;
    }
    if (strcmp(argv[1], "--help") == 0 || strcmp(argv[1], "help") == 0) {
        general_help();
        return NULL;
    }
    if (strcmp(argv[1], "--version") == 0) {
        puts("maydeck " MAYDECK_VERSION);
        return NULL;
    }
    const struct command *command = command_find(argv[1]);
    if (command == NULL) {
        *status = unknown_command(argv[1]);
        return NULL;
    }
    options->output = "cards";
    if (!today_default(&options->today)) {
        *status = wrong_use("SOURCE_DATE_EPOCH is no time", NULL,
                            "give seconds since 1970, or unset it");
        return NULL;
    }
    return command_line(argc - 1, argv + 1, command, options, status) ? command : NULL;
}
