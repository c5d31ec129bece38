/* completion_zsh.c - the script by which zsh completes (room: app), with what each option does. */
#include "completion.h"

static const char zsh_head[] =
    "#compdef maydeck\n"
    "# Completion of maydeck for zsh, made by `maydeck completion zsh`: _maydeck in a folder of "
    "fpath.\n\n";

static const char zsh_body[] =
    "# Completes the word as what $1 tells; $2 is the base on the line.\n"
    "_maydeck_complete() {\n"
    "    local -a told names\n"
    "    told=(${=1})\n"
    "    case $told[1] in\n"
    "    words) compadd -- $told[2,-1] ;;\n"
    "    names|name)\n"
    "        [[ $told[1] == names ]] && compset -P '*,'\n"
    "        [[ $told[2] == topics && -n $PREFIX ]] && told[2]=words\n"
    "        names=(${(f)\"$($program completion $told[2] ${2:+\"$2\"} 2>/dev/null)\"})\n"
    "        compadd -- $names ;;\n"
    "    folder) _files -/ ;;\n"
    "    file) _files ;;\n"
    "    esac\n"
    "}\n\n"
    "_maydeck() {\n"
    "    local program=${(Q)words[1]} command=$words[2] base= wanted= option= REPLY\n"
    "    local -i index operands=0 before=0\n"
    "    program=${program/#\\~\\//$HOME/}\n"
    "    if ((CURRENT == 2)); then\n"
    "        _maydeck_commands\n"
    "        return\n"
    "    fi\n"
    "    # the words behind the command: options with their values, and what is left\n"
    "    for ((index = 3; index <= $#words; index++)); do\n"
    "        option=$words[index]\n"
    "        if [[ $option == --*=* ]]; then\n"
    "            _maydeck_value $command:${option%%=*}\n"
    "            ((index == CURRENT)) && wanted=$REPLY\n"
    "            [[ $option == --base=* ]] && base=${(Q)option#*=}\n"
    "        elif [[ $option == -* ]]; then\n"
    "            _maydeck_value $command:$option\n"
    "            [[ -n $REPLY ]] || continue\n"
    "            ((index++))\n"
    "            ((index == CURRENT)) && wanted=$REPLY\n"
    "            [[ $option == --base ]] && base=${(Q)words[index]}\n"
    "        elif ((index != CURRENT)); then\n"
    "            ((operands == 0)) && base=${(Q)option}\n"
    "            ((operands++))\n"
    "            ((index < CURRENT)) && ((before++))\n"
    "        fi\n"
    "    done\n"
    "    base=${base/#\\~\\//$HOME/}\n"
    "    if [[ -n $wanted ]]; then\n"
    "        [[ $words[CURRENT] == --*=* ]] && compset -P '*='\n"
    "        _maydeck_complete $wanted $base\n"
    "    elif [[ $words[CURRENT] == -* ]]; then\n"
    "        _maydeck_options $command\n"
    "    else\n"
    "        _maydeck_operand $command $before\n"
    "        _maydeck_complete \"$REPLY\" ''\n"
    "    fi\n"
    "}\n\n"
    "if [[ $funcstack[1] == _maydeck ]]; then _maydeck \"$@\"; else compdef _maydeck maydeck; fi\n";

static void described_add(struct text_builder *out, const char *head, const char *name,
                          const char *about)
{
    text_add_format(out, " %s",
                    shell_quoted(text_format(out->arena, "%s%s:%s", head, name, about), "'\\''",
                                 out->arena));
}

static void zsh_options_add(struct text_builder *out, const struct command *command)
{
    const struct option_row *row;
    text_add_format(out, "    %s) rows=(\n       ", command->name);
    for (size_t i = 0; (row = option_at(i)) != NULL; i++)
        if ((row->commands & command->bit) != 0 && row->about != NULL) {
            described_add(out, "--", row->name, row->about);
            text_add(out, "\n       ");
        }
    text_add(out, ") ;;\n");
}

void completion_zsh(struct text_builder *out)
{
    text_add(out, zsh_head);
    text_add(out, "_maydeck_commands() {\n    local -a rows\n    rows=(");
    for (size_t i = 0; i < command_count; i++)
        described_add(out, "", commands[i].name, commands[i].about);
    described_add(out, "", "help", "tell of a command or a topic");
    text_add(out, ")\n    _describe command rows\n}\n\n"
                  "_maydeck_options() {\n    local -a rows\n    case $1 in\n");
    for (size_t i = 0; i < command_count; i++)
        zsh_options_add(out, &commands[i]);
    text_add(out, "    esac\n    _describe -o option rows\n}\n\n");
    completion_tables_add(out);
    text_add(out, zsh_body);
}
