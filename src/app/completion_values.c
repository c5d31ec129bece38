/* completion_values.c - what may stand behind an option, by what its row says (room: app), and the
 * tables that scripts for shells have of it. */
#include "choices.h"
#include "completion.h"

#include <string.h>

const char *const completion_topic_words[] = {COMPLETION_TOPIC_LIST(CHOICE_WORD) NULL};

/* ---- values ---- */

/* By what stands for the value in the help, without ",...". */
static const struct {
    const char *argument;
    struct completed_value value;
} value_rows[] = {
    {"BOAT", {VALUE_NAME, COMPLETE_BOATS, NULL}},
    {"CARD", {VALUE_NAME, COMPLETE_CARDS, NULL}},
    {"LANG", {VALUE_NAME, COMPLETE_LANGUAGES, NULL}},
    {"MODEL", {VALUE_NAME, COMPLETE_MODELS, NULL}},
    {"FIGURE", {VALUE_NAME, COMPLETE_FIGURES, NULL}},
    {"NATURE", {VALUE_NAME, COMPLETE_NATURES, NULL}},
    {"HULL", {VALUE_WORDS, COMPLETE_NONE, hull_words}},
    {"DIR", {VALUE_FOLDER, COMPLETE_NONE, NULL}},
    {"BASE", {VALUE_FOLDER, COMPLETE_NONE, NULL}},
    {"FILE", {VALUE_FILE, COMPLETE_NONE, NULL}},
};

#define SEVERAL ",..."

static struct completed_value argument_completed(const char *argument, size_t length)
{
    for (size_t i = 0; i < sizeof value_rows / sizeof *value_rows; i++)
        if (strlen(value_rows[i].argument) == length &&
            strncmp(value_rows[i].argument, argument, length) == 0)
            return value_rows[i].value;
    return (struct completed_value){VALUE_ANY, COMPLETE_NONE, NULL};
}

struct completed_value option_completed(const struct option_row *row, const struct command *of)
{
    struct completed_value value = {VALUE_NONE, COMPLETE_NONE, NULL};
    if (row->argument == NULL)
        return value;
    if (row->choices != NULL)
        return (struct completed_value){VALUE_WORDS, COMPLETE_NONE, row->choices};
    bool several = text_ends(row->argument, SEVERAL);
    value = argument_completed(row->argument,
                               strlen(row->argument) - (several ? strlen(SEVERAL) : 0));
    if (value.kind == VALUE_NAME && several)
        value.kind = VALUE_NAMES;
    /* boats that are to be new are none of those that there are */
    if (value.topic == COMPLETE_BOATS && of->bit == OF_START)
        value = (struct completed_value){VALUE_ANY, COMPLETE_NONE, NULL};
    return value;
}

static const char *words_told_apart(const char *const *words, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "words");
    for (size_t i = 0; words[i] != NULL; i++)
        text_add_format(&out, " %s", words[i]);
    return out.at;
}

const char *completed_told(struct completed_value value, struct arena *arena)
{
    switch (value.kind) {
    case VALUE_NONE:
        break;
    case VALUE_ANY:
        return "any";
    case VALUE_WORDS:
        return words_told_apart(value.words, arena);
    case VALUE_NAME:
    case VALUE_NAMES:
        return text_format(arena, "%s %s", value.kind == VALUE_NAME ? "name" : "names",
                           choice_word(completion_topic_words, value.topic));
    case VALUE_FOLDER:
        return "folder";
    case VALUE_FILE:
        return "file";
    }
    return "";
}

const char *shell_quoted(const char *text, const char *quote, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "'");
    for (; *text != '\0'; text++)
        if (*text == '\'')
            text_add(&out, quote);
        else
            text_add_bytes(&out, text, 1);
    text_add(&out, "'");
    return out.at;
}

/* ---- tables of bash and zsh ---- */

static void option_values_add(struct text_builder *out, const struct command *command)
{
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++) {
        const char *told = completed_told(option_completed(row, command), out->arena);
        if ((row->commands & command->bit) == 0 || row->about == NULL || told[0] == '\0')
            continue;
        text_add_format(out, "    %s:--%s", command->name, row->name);
        if (row->letter != 0)
            text_add_format(out, "|%s:-%c", command->name, row->letter);
        text_add_format(out, ") REPLY='%s' ;;\n", told);
    }
}

static const char *operand_told(const struct command *command, struct arena *arena)
{
    if (command->topics != NULL)
        return words_told_apart(command->topics, arena);
    return (command->bit & OF_PRINTED) != 0 ? "file" : "folder";
}

void completion_tables_add(struct text_builder *out)
{
    text_add(out, "# What stands behind an option: COMMAND:OPTION; nothing: it takes no value.\n"
                  "_maydeck_value() {\n    case $1 in\n");
    for (size_t i = 0; i < command_count; i++)
        option_values_add(out, &commands[i]);
    text_add(out, "    *) REPLY= ;;\n    esac\n}\n\n"
                  "# What a command is given besides options: first, and behind that.\n"
                  "_maydeck_operand() {\n    case $1:$2 in\n");
    for (size_t i = 0; i < command_count; i++) {
        text_add_format(out, "    %s:0) REPLY='%s' ;;\n", commands[i].name,
                        operand_told(&commands[i], out->arena));
        if ((commands[i].bit & (OF_FILE | OF_TOPIC_BASE)) != 0)
            text_add_format(out, "    %s:1) REPLY=%s ;;\n", commands[i].name,
                            (commands[i].bit & OF_FILE) != 0 ? "file" : "folder");
    }
    text_add(out, "    help:0) REPLY='name topics' ;;\n    *) REPLY= ;;\n    esac\n}\n\n");
}
