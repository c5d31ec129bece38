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
     "held back and named; the others are printed. With --card only BOAT-CARD.pdf is\n"
     "written, with --draft BOAT-draft.pdf: neither touches the set BOAT.pdf. Older\n"
     "files of these boats in DIR are named.",
     command_print},
    {"check", "tell what is wrong, missing or out of date, print nothing", "bcDdfuwxjlSP",
     "Reads the base and its boats, composes and lays out every card, and tells what is\n"
     "wrong, out of date or contradictory, which cards are held back and what to record.\n"
     "Dates of gear are held against today, or against a charter with --from and --to.\n"
     "Then come the items that the cards ask for and that neither the record mentions\n"
     "nor a message has named, with the lines to paste; and last a table of the fleet:\n"
     "\"recorded\" counts the items of the register that the boat's record mentions,\n"
     "fitted or not fitted, of all; pieces of one item count once.",
     command_check},
    {"why", "tell what each part of a card stands on", "bcaDdF",
     "Tells, step by step, which case was taken, from which lines of the procedure and\n"
     "of the boat file, on which sources, and what still awaits sign-off. Without\n"
     "--card or --all it names the cards that exist. With --figure it tells how one\n"
     "figure computed from the record comes about, or with --figure all every one.",
     command_why},
    {"call", "show what to say on the radio", "bcnRGXsIpB",
     "Shows the radio script of one boat, a phrase a line, ____ where something is to\n"
     "be filled in: the general MAYDAY, or what one of the options asks for. A position\n"
     "is filled into it and shown in other forms. The bearing of a mark is turned into\n"
     "the true direction from it; with M it is magnetic, and the base's variation is\n"
     "used. A position is written as \"43 28.35 N 016 26.10 E\" or \"43.4725, 16.435\".",
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
    {'F', "figure", "FIGURE", "one figure (such as beat_pumps), or all"},
    {'o', "output", "DIR", "where the files go (default: cards)"},
    {'d', "date", "DATE", "stands in for today (2026-11-25)"},
    {'D', "draft", NULL, "also print cards that lack facts, marked DRAFT (BOAT-draft.pdf)"},
    {'q', "quiet", NULL, "print nothing but problems"},
    {'e', "each", NULL, "also write one file a card (BOAT-CARD.pdf)"},
    {'n', "nature", "NATURE", "a MAYDAY of this nature (such as fire)"},
    {'R', "relay", NULL, "MAYDAY RELAY for another boat"},
    {'G', "downgrade", NULL, "help is no longer needed at once"},
    {'X', "cancel", NULL, "cancel a false alert"},
    {'s', "spell", NULL, "name and call sign spelled, MMSI, beacons"},
    {'I', "itu-figures", NULL, "with --spell: the ITU's words for the figures, for training"},
    {'p', "position", "POSITION", "fill this position in (such as \"43 28.35 N 16 26.1 E\")"},
    {'B', "bearing", "BEARING", "of a mark, as taken (such as \"100 M\" or \"086 T\")"},
    {'t', "type", "TYPE", "monohull or catamaran"},
    {'f', "from", "DATE", "first day of a charter"},
    {'u', "to", "DATE", "its last day, when the boat is handed back"},
    {'w', "crew", "LIST", "body masses in kg, such as 80,75,18"},
    {'x', "fail", "SEVERITY", "exit 1 from `deficiency` on (default), or from `error`"},
    {'P', "page", NULL, "also the audit of each page: what was measured, by which rule"},
    {'j', "json", NULL, "all that was found as JSON, on standard output"},
    {'l', "list", NULL, "list every check; needs no BASE"},
    {'S', "schema", NULL, "print the JSON Schema of --json; needs no BASE"},
    {'m', "dump", NULL, NULL},
    {'h', "help", NULL, "tell how it is used"},
    {'V', "version", NULL, "tell the version"},
};
#define OPTION_COUNT (sizeof option_rows / sizeof *option_rows)

static const char *option_name(int letter)
{
    for (size_t i = 0; i < OPTION_COUNT; i++)
        if (option_rows[i].letter == letter)
            return option_rows[i].name;
    return "";
}

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
        printf("  %s  %-19s %s\n", row->letter == 'o' ? "-o" : "  ", name, row->about);
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
struct kept { char letter; size_t at; };
static const struct kept flags[] = {
    {'q', offsetof(struct options, quiet)}, {'e', offsetof(struct options, each)},
    {'R', offsetof(struct options, relay)}, {'G', offsetof(struct options, downgrade)},
    {'X', offsetof(struct options, cancel)}, {'s', offsetof(struct options, spell)},
    {'I', offsetof(struct options, itu_figures)},
    {'a', offsetof(struct options, all)}, {'j', offsetof(struct options, json)},
    {'l', offsetof(struct options, list)}, {'S', offsetof(struct options, schema)},
    {'D', offsetof(struct options, draft)}, {'m', offsetof(struct options, dump)},
    {'P', offsetof(struct options, page)},
};
static const struct kept texts[] = {
    {'b', offsetof(struct options, boat)}, {'c', offsetof(struct options, card)},
    {'o', offsetof(struct options, output)}, {'n', offsetof(struct options, nature)},
    {'t', offsetof(struct options, type)}, {'w', offsetof(struct options, crew)},
    {'p', offsetof(struct options, position)}, {'B', offsetof(struct options, bearing)},
    {'F', offsetof(struct options, figure)},
};
static const struct kept dates[] = {
    {'d', offsetof(struct options, today)}, {'f', offsetof(struct options, from)},
    {'u', offsetof(struct options, to)},
};

/* Where the table keeps the option's value; NULL: not in this table. */
static void *kept_at(const struct kept *table, size_t count, int letter,
                     struct options *options)
{
    for (size_t i = 0; i < count; i++)
        if (table[i].letter == letter)
            return (char *)options + table[i].at;
    return NULL;
}
#define KEPT(table) kept_at(table, sizeof table / sizeof *table, letter, options)

static bool date_take(int letter, struct date *out, enum exit_status *status)
{
    char what[32];
    if (date_parse(optarg, out) && out->day != 0)
        return true;
    snprintf(what, sizeof what, "--%s does not take", option_name(letter));
    *status = wrong_use(what, optarg, "write it as 2026-11-25");
    return false;
}

static bool fail_take(struct options *options, enum exit_status *status)
{
    options->fail_on_error = strcmp(optarg, "error") == 0;
    if (options->fail_on_error || strcmp(optarg, "deficiency") == 0)
        return true;
    *status = wrong_use("--fail does not take", optarg, "write error or deficiency");
    return false;
}

static bool option_take(int letter, struct options *options, enum exit_status *status)
{
    bool *flag = KEPT(flags);
    const char **text = KEPT(texts);
    struct date *date = KEPT(dates);
    if (flag != NULL)
        *flag = true;
    else if (text != NULL)
        *text = optarg;
    else if (date != NULL)
        return date_take(letter, date, status);
    else
        return fail_take(options, status);
    return true;
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

/* A charter has two ends; without one it is today's. */
static bool charter_sound(struct options *options, const char *help, enum exit_status *status)
{
    if ((options->from.year == 0) != (options->to.year == 0))
        *status = wrong_use("--from and --to go together", NULL, help);
    else if (options->from.year != 0 && date_compare(options->to, options->from) < 0)
        *status = wrong_use("--to lies before --from", NULL,
                            "--from is the first day, --to the day she is handed back");
    else
        return true;
    return false;
}

/* The audit is text for people. */
static bool audit_sound(const struct options *options, const char *help,
                        enum exit_status *status)
{
    if (options->page && options->json)
        *status = wrong_use("--page and --json do not go together", NULL, help);
    return !(options->page && options->json);
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
    if (!charter_sound(options, help, status) || !audit_sound(options, help, status))
        return false;
    if (optind == argc && (options->list || options->schema))
        return true;
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
