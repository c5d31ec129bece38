/* command_operand.c - what a command line names besides options: a base folder, or what a list is
 * of (room: app). Never looks into the folder. */
#include "command_reading.h"

#include <getopt.h>
#include <string.h>

#include "fleet.h"
#include "known_names.h"

/* ---- a base ---- */

static bool asks_without_base(const struct reading *reading)
{
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if (row->kind == OPTION_ALONE && reading->given[i] > 0)
            return true;
    return false;
}

/* Bytes of the dash that word processors make of a hyphen, at the start of a word; 0: none. */
static size_t dash_length(const char *word)
{
    static const char *const dashes[] = {"\u2010", "\u2011", "\u2012", "\u2013", "\u2014",
                                         "\u2015", "\u2212"};
    for (size_t i = 0; i < sizeof dashes / sizeof *dashes; i++)
        if (text_begins(word, dashes[i]))
            return strlen(dashes[i]);
    return 0;
}

static bool dash_refuse(struct reading *reading, const char *word)
{
    const char *name = word;
    while (dash_length(name) > 0)
        name += dash_length(name);
    return refuse(reading, text_format(reading->arena, "write --%s, with two hyphens", name),
                  text_format(reading->arena, "\"%s\" begins with a dash that is no hyphen", word));
}

/* The one option that takes a list and was given; NULL: none, or several. */
static const struct option_row *list_given(const struct reading *reading)
{
    const struct option_row *row, *found = NULL;
    size_t count = 0;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if (row->kind == OPTION_LIST && reading->given[i] > 0) {
            found = row;
            count++;
        }
    return count == 1 ? found : NULL;
}

/* `--card flooding gas_leak BASE`: the names that no folder has belong to the list. NULL: no
 * list was given, or all are folders. */
static const char *list_meant(const struct reading *reading, int argc, char **argv)
{
    const struct option_row *row = list_given(reading);
    struct text_builder out = text_builder_in(reading->arena);
    bool more = false;
    if (row == NULL)
        return NULL;
    const struct names *names =
        (const void *)((const char *)reading->options + row->at);
    text_add_format(&out, "names of a list have commas between: write --%s ", row->name);
    for (size_t i = 0; i < names->count; i++)
        text_add_format(&out, "%s%s", i == 0 ? "" : ",", names->at[i]);
    for (int i = optind; i < argc; i++)
        if (!is_folder(argv[i])) {
            text_add_format(&out, ",%s", argv[i]);
            more = true;
        }
    return more ? out.at : NULL;
}

static const char *text_or(const char *text, const char *otherwise)
{
    return text == NULL ? otherwise : text;
}

static bool base_take(struct reading *reading, int argc, char **argv)
{
    struct options *options = reading->options;
    const char *remedy = text_format(reading->arena, "name one folder, such as: maydeck %s %s",
                                     reading->command->name, "tests/fleet");
    if (optind == argc && asks_without_base(reading))
        return true;
    for (int i = optind; i < argc; i++)
        if (dash_length(argv[i]) > 0)
            return dash_refuse(reading, argv[i]);
    if (optind + 1 < argc)
        return refuse(reading, text_or(list_meant(reading, argc, argv), remedy),
                      "more than one base folder");
    if (optind == argc)
        return refuse(reading, remedy, "no base folder was named");
    options->base = argv[optind];
    return true;
}

/* ---- a list ---- */

/* The words with commas between. */
static const char *words_told(struct arena *arena, const char *const *words)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; words[i] != NULL; i++)
        text_add_format(&out, "%s%s", i == 0 ? "write one of: " : ", ", words[i]);
    return out.at;
}

static bool topic_take(struct reading *reading, int argc, char **argv)
{
    const char *const *topics = reading->command->topics;
    const char *remedy = words_told(reading->arena, topics);
    if (optind + 2 == argc && (reading->command->bit & OF_TOPIC_BASE) != 0)
        reading->options->base = argv[--argc];
    if (optind + 1 != argc)
        return refuse(reading, remedy, text_format(reading->arena, optind == argc
                                                       ? "it was not told what to %s"
                                                       : "one thing at a time: what to %s",
                                                   reading->command->bit == OF_LIST ? "list"
                                                                                    : "print"));
    unsigned topic = choice_find(topics, argv[optind]);
    reading->options->topic = topic;
    return topic > 0 ||
           refuse(reading,
                  known_remedy(reading->arena, NULL, argv[optind], topics, remedy),
                  text_format(reading->arena, "there is no %s of \"%s\"",
                              reading->command->name, argv[optind]));
}

/* ---- a base and a file ---- */

static bool file_take(struct reading *reading, int argc, char **argv)
{
    const char *remedy = text_format(reading->arena, "name the base and the file, such as: "
                                     "maydeck %s tests/fleet gear.csv", reading->command->name);
    for (int i = optind; i < argc; i++)
        if (dash_length(argv[i]) > 0)
            return dash_refuse(reading, argv[i]);
    if (optind + 2 != argc)
        return refuse(reading, remedy, optind == argc       ? "no base folder was named"
                                       : optind + 1 == argc ? "no file was named"
                                                            : "more than one file was named");
    reading->options->base = argv[optind];
    reading->options->file = argv[optind + 1];
    return true;
}

/* ---- what was printed ---- */

static bool printed_operand_take(struct reading *reading, int argc, char **argv)
{
    const char *remedy = text_format(reading->arena, "name one folder that was printed into, or "
                                     "one PDF, such as: maydeck %s cards", reading->command->name);
    for (int i = optind; i < argc; i++)
        if (dash_length(argv[i]) > 0)
            return dash_refuse(reading, argv[i]);
    if (optind + 1 != argc)
        return refuse(reading, remedy, optind == argc ? "no folder was named"
                                                      : "more than one folder was named");
    reading->options->file = argv[optind];
    return true;
}

bool operand_take(struct reading *reading, int argc, char **argv)
{
    if ((reading->command->bit & OF_FILE) != 0)
        return file_take(reading, argc, argv);
    if ((reading->command->bit & OF_PRINTED) != 0)
        return printed_operand_take(reading, argc, argv);
    return reading->command->topics == NULL ? base_take(reading, argc, argv)
                                            : topic_take(reading, argc, argv);
}
