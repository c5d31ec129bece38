/* completion_fish.c - the script by which fish completes (room: app): a line an option and
 * command, with what it does. */
#include "completion.h"

static const char fish_head[] =
    "# Completion of maydeck for fish, made by `maydeck completion fish`:\n"
    "# maydeck.fish in ~/.config/fish/completions\n\n"
    "# Is that the command of the line?\n"
    "function __maydeck_of\n"
    "    set -l words (commandline -opc)\n"
    "    test (count $words) -ge 2; and contains -- $words[2] $argv\n"
    "end\n\n"
    "function __maydeck_first\n"
    "    test (count (commandline -opc)) -eq 1\n"
    "end\n\n";

static const char fish_body[] =
    "# What the line names besides options and their values: $argv are its words.\n"
    "function __maydeck_operands\n"
    "    set -l skip no\n"
    "    for word in $argv[3..-1]\n"
    "        if test $skip = yes\n"
    "            set skip no\n"
    "        else if contains -- \"$argv[2]:$word\" $__maydeck_valued\n"
    "            set skip yes\n"
    "        else if not string match -q -- '-*' $word\n"
    "            echo -- $word\n"
    "        end\n"
    "    end\n"
    "end\n\n"
    "# Are there so many of them before the cursor?\n"
    "function __maydeck_named\n"
    "    test (count (__maydeck_operands (commandline -opc))) -eq $argv[1]\n"
    "end\n\n"
    "# Names of a topic, of the base on the line.\n"
    "function __maydeck_name\n"
    "    set -l words (commandline -o)\n"
    "    set -l operands (__maydeck_operands $words)\n"
    "    set -l program (string replace -r '^~/' \"$HOME/\" -- $words[1])\n"
    "    set -l topic $argv[1]\n"
    "    set -l token (commandline -ct)\n"
    "    if test \"$words[2]\" = help; set -e operands; end\n"
    "    if test $topic = topics -a -n \"$token\"; set topic words; end\n"
    "    set -l base (string replace -r '^~/' \"$HOME/\" -- $operands[1])\n"
    "    $program completion $topic $base 2>/dev/null\n"
    "end\n\n"
    "# The same, behind those that the word has already, with commas between.\n"
    "function __maydeck_names\n"
    "    set -l token (commandline -ct)\n"
    "    set -l before (string replace -r '^--[a-z-]+=' '' -- \"$token\" |\n"
    "        string replace -r '[^,]*$' '')\n"
    "    for name in (__maydeck_name $argv)\n"
    "        echo -- \"$before$name\"\n"
    "    end\n"
    "end\n\n"
    "complete -c maydeck -f\n";

/* "-x -a '(__maydeck_names boats)'" */
static const char *fish_value(struct completed_value value, struct arena *arena)
{
    const char *told = completed_told(value, arena);
    switch (value.kind) {
    case VALUE_NONE:
        return "";
    case VALUE_ANY:
        return " -x";
    case VALUE_WORDS:
        return text_format(arena, " -x -a '%s'", told + sizeof "words");
    case VALUE_NAME:
    case VALUE_NAMES:
        return text_format(arena, " -x -a '(__maydeck_%s)'", told);
    case VALUE_FOLDER:
        return " -x -a '(__fish_complete_directories (commandline -ct))'";
    case VALUE_FILE:
        break;
    }
    return " -r -F";
}

static void fish_option_add(struct text_builder *out, const struct command *command,
                            const struct option_row *row)
{
    struct arena *arena = out->arena;
    text_add_format(out, "complete -c maydeck -n '__maydeck_of %s' -l %s", command->name,
                    row->name);
    if (row->letter != 0)
        text_add_format(out, " -s %c", row->letter);
    text_add_format(out, "%s -d %s\n", fish_value(option_completed(row, command), arena),
                    shell_quoted(row->about, "\\'", arena));
}

static void operand_line_add(struct text_builder *out, const struct command *command,
                             int before, const char *offered)
{
    text_add_format(out, "complete -c maydeck -n '__maydeck_of %s; and __maydeck_named %d' %s\n",
                    command->name, before, offered);
}

#define FOLDERS "-a '(__fish_complete_directories (commandline -ct))'"

static void operands_add(struct text_builder *out, const struct command *command)
{
    struct text_builder words = text_builder_in(out->arena);
    text_add(&words, "-a '");
    for (size_t i = 0; command->topics != NULL && command->topics[i] != NULL; i++)
        text_add_format(&words, "%s%s", i == 0 ? "" : " ", command->topics[i]);
    text_add(&words, "'");
    operand_line_add(out, command, 0, command->topics != NULL ? words.at
                                      : (command->bit & OF_PRINTED) != 0 ? "-F" : FOLDERS);
    if ((command->bit & OF_FILE) != 0)
        operand_line_add(out, command, 1, "-F");
    if ((command->bit & OF_TOPIC_BASE) != 0)
        operand_line_add(out, command, 1, FOLDERS);
}

static void valued_add(struct text_builder *out)
{
    text_add(out, "# Options that take a value.\nset -g __maydeck_valued");
    for (size_t i = 0; i < command_count; i++) {
        const struct option_row *row;
        for (size_t k = 0; (row = option_at(k)) != NULL; k++) {
            if ((row->commands & commands[i].bit) == 0 || row->argument == NULL)
                continue;
            text_add_format(out, " %s:--%s", commands[i].name, row->name);
            if (row->letter != 0)
                text_add_format(out, " %s:-%c", commands[i].name, row->letter);
        }
    }
    text_add(out, "\n\n");
}

void completion_fish(struct text_builder *out)
{
    text_add(out, fish_head);
    valued_add(out);
    text_add(out, fish_body);
    for (size_t i = 0; i < command_count; i++) {
        text_add_format(out, "complete -c maydeck -n __maydeck_first -a %s -d %s\n",
                        commands[i].name, shell_quoted(commands[i].about, "\\'", out->arena));
        operands_add(out, &commands[i]);
        const struct option_row *row;
        for (size_t k = 0; (row = option_at(k)) != NULL; k++)
            if ((row->commands & commands[i].bit) != 0 && row->about != NULL)
                fish_option_add(out, &commands[i], row);
    }
    text_add(out, "complete -c maydeck -n __maydeck_first -a help -d "
                  "'tell of a command or a topic'\n"
                  "complete -c maydeck -n '__maydeck_of help; and __maydeck_named 0' -a "
                  "'(__maydeck_name topics)'\n");
}
