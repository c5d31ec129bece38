/* completion_names.c - names, a line each, for shells that complete words (room: app): from the
 * program's own tables, and of a base the names of its files. Reads no boat. */
#include "completion.h"

#include "figure.h"
#include "manual.h"

#include <string.h>

static void name_line_add(struct text_builder *out, const char *name)
{
    text_add_format(out, "%s\n", name);
}

static void choice_lines_add(struct text_builder *out, const char *const *words)
{
    for (; *words != NULL; words++)
        name_line_add(out, *words);
}

/* ---- of a base ---- */

static bool base_is_named(const struct options *options, struct fleet *fleet)
{
    if (options->base == NULL)
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    text_format(fleet->arena, "name the base too: maydeck completion %s "
                                "tests/fleet", choice_word(completion_topic_words,
                                                           options->topic)),
                    "no base folder was named");
    else if (!is_there(text_format(fleet->arena, "%s/base.yaml", options->base)))
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "name the folder that holds base.yaml and boats/",
                    "%s is not a base", options->base);
    else
        return true;
    return false;
}

/* What lies in that folder of the base by the names of files that would be read. */
static bool file_names_add(const struct options *options, const char *folder,
                           struct fleet *fleet, struct text_builder *out)
{
    struct names found = {0};
    if (!base_is_named(options, fleet))
        return false;
    const char *path = text_format(fleet->arena, "%s/%s", options->base, folder);
    int error = is_there(path) ? folder_names(fleet->arena, path, &found) : 0;
    if (error != 0)
        folder_refused(fleet->problems, path, error);
    for (size_t i = 0; error == 0 && i < found.count; i++)
        if (is_boat_file(fleet->arena, found.at[i]))
            text_add_format(out, "%.*s\n", (int)(strlen(found.at[i]) - strlen(".yaml")),
                            found.at[i]);
    return error == 0;
}

static bool card_names_add(const struct options *options, struct fleet *fleet,
                           struct text_builder *out)
{
    bool sound = options->base == NULL || base_is_named(options, fleet);
    if (sound && options->base != NULL)
        sound = base_procedures_read(options, fleet);
    for (size_t i = 0; sound && i < fleet->procedures.count; i++)
        name_line_add(out, fleet->procedures.rows[i]->key.text);
    return sound;
}

/* ---- of the program ---- */

static void figure_names_add(struct text_builder *out)
{
    for (size_t i = 0; i < figure_count(); i++)
        name_line_add(out, figure_at(i)->id);
    name_line_add(out, "all");
}

static void topic_names_add(struct text_builder *out)
{
    for (size_t i = 0; i < command_count; i++)
        name_line_add(out, commands[i].name);
    for (size_t i = 0; i < manual_topic_count; i++)
        if (manual_topics[i].name != NULL)
            name_line_add(out, manual_topics[i].name);
}

static void help_words_add(const struct fleet *fleet, struct text_builder *out)
{
    struct names names = {0};
    words_told_gather(&names, fleet, fleet->arena);
    for (size_t i = 0; i < names.count; i++)
        name_line_add(out, names.at[i]);
}

static void own_names_add(enum completion_topic topic, const struct fleet *fleet,
                          struct text_builder *out)
{
    if (topic == COMPLETE_FIGURES)
        figure_names_add(out);
    if (topic == COMPLETE_NATURES)
        choice_lines_add(out, nature_words);
    if (topic == COMPLETE_ITEMS)
        choice_lines_add(out, item_key_list);
    if (topic == COMPLETE_ZONES)
        choice_lines_add(out, zone_key_list);
    if (topic == COMPLETE_TOPICS)
        topic_names_add(out);
    if (topic == COMPLETE_WORDS)
        help_words_add(fleet, out);
    for (size_t i = 0; topic == COMPLETE_CHECKS && check_at(i) != NULL; i++)
        name_line_add(out, check_at(i)->id);
    for (size_t i = 0; topic == COMPLETE_LANGUAGES && i < fleet->languages.count; i++)
        name_line_add(out, words_language(fleet->languages.rows[i]));
}

bool completion_names(const struct options *options, enum completion_topic topic,
                      struct fleet *fleet, struct text_builder *out)
{
    if (topic == COMPLETE_BOATS)
        return file_names_add(options, "boats", fleet, out);
    if (topic == COMPLETE_MODELS)
        return file_names_add(options, "models", fleet, out);
    if (topic == COMPLETE_CARDS)
        return card_names_add(options, fleet, out);
    own_names_add(topic, fleet, out);
    return true;
}
