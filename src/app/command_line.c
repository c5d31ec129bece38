/* command_line.c - the command line into struct options, by the rows of options.h (room: app).
 * What is abbreviated, misspelt or given twice is judged by the options of its own command. */
#include "command_reading.h"

#include <getopt.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "known_names.h"
#include "promise.h"
#include "told.h"

bool refuse(struct reading *reading, const char *remedy, const char *what)
{
    told_refusal(text_format(reading->arena, "maydeck: error: %s\n  remedy: %s\n", what, remedy));
    reading->status = EXIT_USE;
    return false;
}

const char *see_help(const struct reading *reading)
{
    return text_format(reading->arena, "see maydeck %s%s--help",
                       reading->command == NULL ? "" : reading->command->name,
                       reading->command == NULL ? "" : " ");
}

/* ---- the options of the command ---- */

bool has_option(const struct reading *reading, const struct option_row *row)
{
    return (row->commands & reading->command->bit) != 0;
}

/* The row's index; OPTIONS_MOST: the command has no such option. */
static size_t row_of(const struct reading *reading, const char *name, char letter)
{
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if (has_option(reading, row) &&
            (name != NULL ? text_equal(row->name, name) : row->letter == letter))
            return i;
    return OPTIONS_MOST;
}

static bool is_given(const struct reading *reading, const char *name)
{
    size_t index = row_of(reading, name, 0);
    return index < OPTIONS_MOST && reading->given[index] > 0;
}

static void own_options(const struct reading *reading, struct option *out, char *letters)
{
    const struct option_row *row;
    *letters++ = ':';
    for (size_t i = 0; (row = option_at(i)) != NULL; i++) {
        if (!has_option(reading, row))
            continue;
        *out++ = (struct option){row->name,
                                 row->argument == NULL ? no_argument : required_argument, NULL,
                                 LONG + (int)i};
        if (row->letter != 0)
            *letters++ = row->letter;
        if (row->letter != 0 && row->argument != NULL)
            *letters++ = ':';
    }
    *out = (struct option){0};
    *letters = '\0';
}

static bool value_missing(struct reading *reading)
{
    size_t index = optopt >= LONG ? (size_t)(optopt - LONG) : row_of(reading, NULL, (char)optopt);
    const struct option_row *row = option_at(index);
    return refuse(reading, text_format(reading->arena, "write --%s %s", row->name, row->argument),
                  text_format(reading->arena, "a value is missing after --%s", row->name));
}

/* ---- values ---- */

static bool value_refuse(struct reading *reading, const struct option_row *row,
                         const char *remedy)
{
    return refuse(reading, remedy,
                  text_format(reading->arena, "--%s does not take \"%s\"", row->name, optarg));
}

static bool list_take(struct reading *reading, const struct option_row *row, struct names *names)
{
    for (const char *at = optarg;; at++) {
        size_t length = strcspn(at, ",");
        if (length == 0)
            return value_refuse(reading, row, "write names with commas between, such as a,b");
        const char *name = arena_copy(reading->arena, at, length);
        if (!names_hold(names, name))
            names_add(names, name, reading->arena);
        at += length;
        if (*at == '\0')
            return true;
    }
}

/* Of a year or a month: its first day as one that may be meant. */
static const char *day_remedy(struct arena *arena, struct date date)
{
    return text_format(arena, "write the day too, such as %s",
                       date_text(arena, date_first_day(date)));
}

static bool date_take(struct reading *reading, const struct option_row *row, struct date *date)
{
    if (date_parse(optarg, date) && date->day != 0)
        return true;
    if (date_parse(optarg, date))
        return value_refuse(reading, row, day_remedy(reading->arena, *date));
    struct date meant = date_meant(reading->arena, optarg);
    return value_refuse(reading, row,
                        meant.day != 0 ? date_remedy(reading->arena, optarg)
                                       : "write year, month and day, such as 2026-11-25");
}

static bool choice_take(struct reading *reading, const struct option_row *row, unsigned *choice)
{
    struct text_builder list = text_builder_in(reading->arena);
    *choice = choice_find(row->choices, optarg);
    if (*choice != 0)
        return true;
    for (size_t i = 0; row->choices[i] != NULL; i++)
        text_add_format(&list, "%s%s", i == 0 ? "write " : " or ", row->choices[i]);
    return value_refuse(reading, row, list.at);
}

static bool value_take(struct reading *reading, const struct option_row *row)
{
    void *at = (char *)reading->options + row->at;
    switch (row->kind) {
    case OPTION_FLAG:
    case OPTION_ALONE:
        *(bool *)at = true;
        return true;
    case OPTION_TEXT:
        *(const char **)at = optarg;
        return true;
    case OPTION_LIST:
        return list_take(reading, row, at);
    case OPTION_DATE:
        return date_take(reading, row, at);
    case OPTION_CHOICE:
        return choice_take(reading, row, at);
    case OPTION_HELP:
        help_of(reading->command, reading->arena);
        return false;
    case OPTION_VERSION:
        puts("maydeck " MAYDECK_VERSION);
        return false;
    }
    promise_unreached();
}

static bool option_take(struct reading *reading, size_t index)
{
    const struct option_row *row = option_at(index);
    if (reading->given[index]++ > 0 && row->kind != OPTION_LIST)
        return refuse(reading, "give it once",
                      text_format(reading->arena, "--%s is given twice", row->name));
    if (option_is_of_pages(row))
        text_add_format(&reading->options->pages_by, "--%s=%s\n", row->name,
                        row->argument == NULL ? "" : optarg);
    return value_take(reading, row);
}

/* ---- which go together ---- */

static bool apart_kept(struct reading *reading)
{
    const char *const *names;
    for (size_t i = 0; (names = options_apart(i)) != NULL; i++) {
        const char *first = NULL;
        for (; *names != NULL; names++) {
            if (!is_given(reading, *names))
                continue;
            if (first != NULL)
                return refuse(reading, "leave one of them out",
                              text_format(reading->arena, "--%s and --%s exclude each other",
                                          first, *names));
            first = *names;
        }
    }
    return true;
}

static bool needs_met(struct reading *reading)
{
    struct option_need need;
    for (size_t i = 0; (need = option_need_at(i)).option != NULL; i++)
        if (is_given(reading, need.option) && !is_given(reading, need.needed))
            return refuse(reading, need.remedy,
                          text_format(reading->arena, "--%s says nothing without --%s",
                                      need.option, need.needed));
    return true;
}

static bool charter_sound(struct reading *reading)
{
    const struct options *options = reading->options;
    return options->from.year == 0 || date_compare(options->to, options->from) >= 0 ||
           refuse(reading,
                  text_format(reading->arena,
                              "--from is the first day, --to the day she is handed back: write "
                              "--from %s --to %s if they were exchanged",
                              date_text(reading->arena, options->to),
                              date_text(reading->arena, options->from)),
                  "--to lies before --from");
}

/* ---- the whole ---- */

static bool options_take(struct reading *reading, int argc, char **argv)
{
    struct option list[OPTIONS_MOST + 1];
    char letters[2 * OPTIONS_MOST + 2];
    int value;
    own_options(reading, list, letters);
    optind = 0;     /* from the first word, also where a line was read before */
    opterr = 0;
    while ((value = getopt_long(argc, argv, letters, list, NULL)) != -1) {
        if (value == ':')
            return value_missing(reading);
        if (value == '?')
            return option_refuse(reading, argv);
        if (!option_take(reading, value >= LONG ? (size_t)(value - LONG)
                                               : row_of(reading, NULL, (char)value)))
            return false;
    }
    return apart_kept(reading) && needs_met(reading) && charter_sound(reading);
}

static const struct command *command_find(struct reading *reading, const char *name)
{
    const char **names = arena_array(reading->arena, command_count, sizeof *names);
    for (size_t i = 0; i < command_count; i++) {
        if (text_equal(commands[i].name, name))
            return &commands[i];
        names[i] = commands[i].name;
    }
    refuse(reading,
           text_nearest_remedy(reading->arena, name, names, command_count, see_help(reading)),
           text_format(reading->arena, "no such command \"%s\"", name));
    return NULL;
}

/* maydeck help [COMMAND], -h, --help */
static void help_tell(struct reading *reading, int argc, char **argv)
{
    if (argc > 3)
        refuse(reading, "name one command", "help tells of one command");
    else if (argc < 3 || argv[2][0] == '-')
        help_general(reading->arena);
    else if (!help_of_topic(argv[2], reading->arena, &reading->status))
        reading->command = command_find(reading, argv[2]);
    if (reading->command != NULL)
        help_of(reading->command, reading->arena);
}

/* The date on the wall where the program runs: the only place that asks the clock. */
static bool today_local(struct date *today)
{
    time_t now = time(NULL);
    struct tm local;
    if (localtime_r(&now, &local) == NULL)
        return false;
    *today = (struct date){local.tm_year + 1900, local.tm_mon + 1, local.tm_mday};
    return true;
}

enum { SECONDS_DIGITS = 11 };

/* Digits and nothing else: no sign, no space. */
static bool seconds_parse(const char *text, int64_t *seconds)
{
    size_t digits = strspn(text, "0123456789");
    *seconds = 0;
    for (size_t i = 0; i < digits && digits <= SECONDS_DIGITS; i++)
        *seconds = *seconds * 10 + (text[i] - '0');
    return digits > 0 && digits <= SECONDS_DIGITS && text[digits] == '\0';
}

/* Where --date does not tell: SOURCE_DATE_EPOCH, a day in UTC, else the clock. */
static bool today_default(struct date *today)
{
    const char *epoch = getenv("SOURCE_DATE_EPOCH");
    int64_t seconds;
    if (epoch == NULL || epoch[0] == '\0')
        return today_local(today);
    if (!seconds_parse(epoch, &seconds))
        return false;
    *today = date_from_seconds(seconds);
    return today->year <= 2199;
}

static bool is_one_of(const char *word, const char *a, const char *b, const char *c)
{
    return text_equal(word, a) || text_equal(word, b) || (c != NULL && text_equal(word, c));
}

static bool command_line(struct reading *reading, int argc, char **argv)
{
    reading->command = command_find(reading, argv[1]);
    if (reading->command == NULL)
        return false;
    reading->options->output = "cards";
    reading->options->pages_by = text_builder_in(reading->arena);
    if (!today_default(&reading->options->today))
        return refuse(reading, "give seconds since 1970, or unset it",
                      "SOURCE_DATE_EPOCH is no time");
    return options_take(reading, argc - 1, argv + 1) && streams_sound(reading) &&
           operand_take(reading, argc - 1, argv + 1);
}

const struct command *options_read(int argc, char **argv, struct arena *arena,
                                   struct options *options, enum exit_status *status)
{
    struct reading reading = {.options = options, .arena = arena, .status = EXIT_GOOD};
    bool run = false;
    if (argc < 2)
        refuse(&reading, see_help(&reading), "no command was named");
    else if (is_one_of(argv[1], "help", "--help", "-h"))
        help_tell(&reading, argc, argv);
    else if (is_one_of(argv[1], "--version", "-V", NULL))
        puts("maydeck " MAYDECK_VERSION);
    else
        run = command_line(&reading, argc, argv);
    *status = reading.status;
    return run ? reading.command : NULL;
}
