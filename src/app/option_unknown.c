/* option_unknown.c - what is said of an option that the command does not have: what it is short
 * of, whose it is, which one is near (room: app). Takes no value. */
#include "command_reading.h"

#include <getopt.h>
#include <string.h>

enum { LETTERS_ENOUGH = 3 };

/* The commands that have it: "print, check". NULL: none. */
static const char *whose(const struct reading *reading, const char *name)
{
    struct text_builder out = text_builder_in(reading->arena);
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        for (size_t c = 0; text_equal(row->name, name) && c < command_count; c++)
            if ((row->commands & commands[c].bit) != 0 && row->about != NULL)
                text_add_format(&out, "%s%s", out.length == 0 ? "" : ", ", commands[c].name);
    return out.length == 0 ? NULL : out.at;
}

/* The options that the shortened name may stand for, such as "--date, --draft"; NULL: it does
 * not stand for several. */
static const char *candidates(const struct reading *reading, const char *name)
{
    struct text_builder out = text_builder_in(reading->arena);
    const struct option_row *row;
    size_t count = 0;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if (has_option(reading, row) && text_begins(row->name, name)) {
            count++;
            if (row->about != NULL)
                text_add_format(&out, "%s--%s", out.length == 0 ? "" : ", ", row->name);
        }
    return count < 2 ? NULL : out.at;
}

/* An option of which the name is a longer form: --lang of --language. */
static const char *shorter_option(const char *name, const char *const *names, size_t count)
{
    const char *found = NULL;
    for (size_t i = 0; i < count; i++)
        if (strlen(names[i]) >= LETTERS_ENOUGH && text_begins(name, names[i]) &&
            (found == NULL || strlen(names[i]) > strlen(found)))
            found = names[i];
    return found;
}

static const char *nearest_option(const struct reading *reading, const char *name)
{
    const char *names[OPTIONS_MOST];
    const struct option_row *row;
    size_t count = 0;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if (has_option(reading, row) && row->about != NULL)
            names[count++] = row->name;
    const char *nearest = text_nearest(name, names, count);
    return nearest != NULL ? nearest : shorter_option(name, names, count);
}

static bool name_refuse(struct reading *reading, const char *name)
{
    struct arena *arena = reading->arena;
    const char *several = candidates(reading, name);
    const char *others = whose(reading, name);
    const char *nearest = nearest_option(reading, name);
    if (several != NULL)
        return refuse(reading, text_format(arena, "write more of it: %s", several),
                      text_format(arena, "\"--%s\" may stand for several options", name));
    if (others != NULL)
        return refuse(reading,
                      text_format(arena, "leave it out (it belongs to: %s), or %s", others,
                                  see_help(reading)),
                      text_format(arena, "%s has no option --%s", reading->command->name, name));
    return refuse(reading,
                  nearest == NULL ? see_help(reading)
                                  : text_meant(arena, text_format(arena, "--%s", nearest)),
                  text_format(arena, "no such option \"--%s\"", name));
}

/* `-boat` of the command line, where getopt_long stopped within it; NULL: it is one letter. */
static const char *single_dash_word(char **argv)
{
    const char *word = argv[optind];
    bool within = word != NULL && word[0] == '-' && word[1] != '-' && strlen(word) > 2 &&
                  strchr(word + 1, optopt) != NULL;
    return within ? word + 1 : NULL;
}

static bool letter_refuse(struct reading *reading, char **argv)
{
    const char *word = single_dash_word(argv);
    const char *nearest = word == NULL ? NULL : nearest_option(reading, word);
    return refuse(reading,
                  nearest == NULL ? see_help(reading)
                                  : text_meant(reading->arena,
                                               text_format(reading->arena, "--%s", nearest)),
                  word == NULL ? text_format(reading->arena, "no such option \"-%c\"", optopt)
                               : text_format(reading->arena, "no such option \"-%s\"", word));
}

bool option_refuse(struct reading *reading, char **argv)
{
    if (optopt >= LONG)
        return refuse(reading, see_help(reading),
                      text_format(reading->arena, "--%s takes no value",
                                  option_at((size_t)(optopt - LONG))->name));
    if (optopt != 0)
        return letter_refuse(reading, argv);
    const char *name = argv[optind - 1] + 2;
    return name_refuse(reading, arena_copy(reading->arena, name, strcspn(name, "=")));
}
