/* completion_bash.c - the script by which bash completes (room: app). It needs nothing but bash,
 * and asks the program itself for names. */
#include "completion.h"

static const char bash_head[] =
    "# Completion of maydeck for bash, made by `maydeck completion bash`.\n"
    "# In ~/.bashrc: source <(maydeck completion bash)\n\n";

static const char bash_body[] =
    "# A word of the line as the program is given it.\n"
    "_maydeck_bare() {\n"
    "    REPLY=${1//\\\\/}\n"
    "    case $REPLY in\n"
    "    \\\"*) REPLY=${REPLY#\\\"} REPLY=${REPLY%\\\"} ;;\n"
    "    \\'*) REPLY=${REPLY#\\'} REPLY=${REPLY%\\'} ;;\n"
    "    \\~/*) REPLY=$HOME/${REPLY#\\~/} ;;\n"
    "    esac\n"
    "}\n\n"
    "# Those lines of standard input that go on with $2, behind $1.\n"
    "_maydeck_offer() {\n"
    "    local word quoted\n"
    "    while IFS= read -r word; do\n"
    "        [[ $word == \"$2\"* ]] || continue\n"
    "        printf -v quoted %q \"$word\"\n"
    "        COMPREPLY+=(\"$1$quoted\")\n"
    "    done\n"
    "}\n\n"
    "_maydeck_paths() {\n"
    "    local path\n"
    "    compopt -o filenames 2>/dev/null\n"
    "    while IFS= read -r path; do COMPREPLY+=(\"$path\"); done < <(compgen \"$1\" -- \"$2\")\n"
    "}\n\n"
    "# Completes $3 as what $1 tells; $2 is the base on the line.\n"
    "_maydeck_complete() {\n"
    "    local before= last=$3\n"
    "    local -a told\n"
    "    read -ra told <<<\"$1\"\n"
    "    case ${told[0]} in\n"
    "    words) _maydeck_offer '' \"$last\" < <(printf '%s\\n' \"${told[@]:1}\") ;;\n"
    "    names|name)\n"
    "        if [[ ${told[0]} == names && $last == *,* ]]; then\n"
    "            before=${last%,*}, last=${last##*,}\n"
    "        fi\n"
    "        [[ ${told[1]} == topics && $last ]] && told[1]=words\n"
    "        _maydeck_offer \"$before\" \"$last\" < <(\n"
    "            \"$program\" completion \"${told[1]}\" ${2:+\"$2\"} 2>/dev/null) ;;\n"
    "    folder) _maydeck_paths -d \"$last\" ;;\n"
    "    file) _maydeck_paths -f \"$last\" ;;\n"
    "    esac\n"
    "}\n\n"
    "_maydeck() {\n"
    "    local cur=${COMP_WORDS[COMP_CWORD]} command=${COMP_WORDS[1]} program base= wanted=\n"
    "    local index operands=0 before=0 REPLY\n"
    "    COMPREPLY=()\n"
    "    _maydeck_bare \"${COMP_WORDS[0]}\"\n"
    "    program=$REPLY\n"
    "    if ((COMP_CWORD == 1)); then\n"
    "        _maydeck_offer '' \"$cur\" < <(_maydeck_commands)\n"
    "        return\n"
    "    fi\n"
    "    # the words behind the command: options with their values, and what is left\n"
    "    for ((index = 2; index < ${#COMP_WORDS[@]}; index++)); do\n"
    "        if [[ ${COMP_WORDS[index]} == -* ]]; then\n"
    "            _maydeck_value \"$command:${COMP_WORDS[index]}\"\n"
    "            [[ $REPLY ]] || continue\n"
    "            [[ ${COMP_WORDS[index + 1]-} == '=' ]] && ((index++))\n"
    "            ((index++))\n"
    "            ((index == COMP_CWORD || index - 1 == COMP_CWORD)) && wanted=$REPLY\n"
    "            ((index - 1 == COMP_CWORD)) && [[ $cur == '=' ]] && cur=\n"
    "            _maydeck_bare \"${COMP_WORDS[index]-}\"\n"
    "            [[ ${COMP_WORDS[index - 1]} == --base ]] && base=$REPLY\n"
    "        elif ((index != COMP_CWORD)); then\n"
    "            _maydeck_bare \"${COMP_WORDS[index]}\"\n"
    "            ((operands == 0)) && base=$REPLY\n"
    "            ((operands++, index < COMP_CWORD && before++))\n"
    "        fi\n"
    "    done\n"
    "    if [[ $wanted && ${COMP_WORDS[COMP_CWORD]} != -* ]]; then\n"
    "        _maydeck_complete \"$wanted\" \"$base\" \"$cur\"\n"
    "    elif [[ $cur == -* ]]; then\n"
    "        _maydeck_offer '' \"$cur\" < <(_maydeck_options \"$command\")\n"
    "    else\n"
    "        _maydeck_operand \"$command\" \"$before\"\n"
    "        _maydeck_complete \"$REPLY\" '' \"$cur\"\n"
    "    fi\n"
    "}\n\n"
    "complete -F _maydeck maydeck\n";

static void bash_options_add(struct text_builder *out, const struct command *command)
{
    const struct option_row *row;
    text_add_format(out, "    %s) printf '%%s\\n'", command->name);
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if ((row->commands & command->bit) != 0 && row->about != NULL)
            text_add_format(out, " --%s", row->name);
    text_add(out, " ;;\n");
}

void completion_bash(struct text_builder *out)
{
    text_add(out, bash_head);
    text_add(out, "_maydeck_commands() {\n    printf '%s\\n'");
    for (size_t i = 0; i < command_count; i++)
        text_add_format(out, " %s", commands[i].name);
    text_add(out, " help\n}\n\n_maydeck_options() {\n    case $1 in\n");
    for (size_t i = 0; i < command_count; i++)
        bash_options_add(out, &commands[i]);
    text_add(out, "    esac\n}\n\n");
    completion_tables_add(out);
    text_add(out, bash_body);
}
