/* help.c - what --help and `help` tell, from the rows of commands and options and from the topics
 * of the manual (room: app). */
#include "manual.h"

#include <stdio.h>

/* ---- commands ---- */

const char *command_operands(const struct command *command)
{
    if ((command->bit & OF_FILE) != 0)
        return "BASE FILE";
    if ((command->bit & OF_PRINTED) != 0)
        return "DIR";
    if ((command->bit & OF_TOPIC_BASE) != 0)
        return "TOPIC [BASE]";
    return command->topics == NULL ? "BASE" : "TOPIC";
}

/* Which options are told: all, without those that every command has, or these alone. */
enum options_told { OPTIONS_ALL, OPTIONS_OWN, OPTIONS_OF_ALL };

static const char *operands_about(const struct command *command)
{
    if ((command->bit & OF_PRINTED) != 0)
        return "DIR is a folder that was printed into, or a PDF in one.";
    return command->topics == NULL ? "BASE is a folder with base.yaml and boats/*.yaml."
                                   : "TOPIC is the first word of a line above.";
}

/* Is it told of each command, or of all at once? */
static bool is_of_all(const struct option_row *row)
{
    return row->kind == OPTION_HELP || row->kind == OPTION_VERSION;
}

static void options_tell(struct manual *manual, unsigned commands_told, enum options_told told)
{
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++) {
        if ((row->commands & commands_told) == 0 || row->about == NULL ||
            (told == OPTIONS_OWN && is_of_all(row)) || (told == OPTIONS_OF_ALL && !is_of_all(row)))
            continue;
        if (!manual->within)
            manual_terms(manual, OPTION_LETTERS);
        manual_option(manual, row);
    }
    manual_terms_end(manual);
}

static void command_tell(struct manual *manual, const struct command *command,
                         enum options_told told)
{
    manual_text(manual, command->help);
    manual_text(manual, operands_about(command));
    options_tell(manual, command->bit, told);
}

static const char *command_usage(const struct command *command, struct arena *arena)
{
    return text_format(arena, "maydeck %s [OPTION]... %s", command->name,
                       command_operands(command));
}

void commands_tell(struct manual *manual, const struct fleet *fleet)
{
    (void)fleet;
    for (size_t i = 0; i < command_count; i++) {
        manual_part(manual, commands[i].name);
        manual_text(manual, text_format(manual->out.arena, "`%s`",
                                        command_usage(&commands[i], manual->out.arena)));
        command_tell(manual, &commands[i], OPTIONS_OWN);
    }
    manual_part(manual, "Every command");
    options_tell(manual, OF_ALL, OPTIONS_OF_ALL);
}

/* ---- on the screen ---- */

static void manual_show(const struct manual *manual)
{
    fwrite(manual->out.at, 1, manual->out.length, stdout);
}

void help_of(const struct command *command, struct arena *arena)
{
    struct manual manual = manual_on_screen(arena);
    manual_text(&manual, text_format(arena, "Usage: %s", command_usage(command, arena)));
    command_tell(&manual, command, OPTIONS_ALL);
    manual_text(&manual, "Names with \"...\" may be several, with commas between, or the option "
                         "given again.");
    manual_text(&manual, "Exit status: 0 good; 1 a card is held back or an input is wrong; 2 wrong "
                         "use; 3 the system failed (file, disk, memory).");
    manual_show(&manual);
}

static void names_tell(struct manual *manual)
{
    manual_part(manual, "Commands:");
    manual_terms(manual, COMMAND_LETTERS);
    for (size_t i = 0; i < command_count; i++)
        manual_term(manual, commands[i].name, commands[i].about);
    manual_term(manual, "help", "tell of a command or of one of the topics below");
    manual_part(manual, "Options:");
    manual_terms(manual, OPTION_LETTERS);
    manual_term(manual, "-h, --help", "tell how it is used");
    manual_term(manual, "-V, --version", "tell the version");
    manual_text(manual, "`maydeck help COMMAND` or `maydeck COMMAND --help` tells more of each "
                        "command, `maydeck help TOPIC` of:");
    manual->owed = false;
    manual_terms(manual, COMMAND_LETTERS);
    for (size_t i = 0; i < manual_topic_count; i++)
        if (manual_topics[i].name != NULL)
            manual_term(manual, manual_topics[i].name, manual_topics[i].about);
    manual_text(manual, "It also tells of a key of these files, a kind of gear, a zone, a card, a "
                        "check and a figure by its name: `maydeck help spot`.");
}

void help_general(struct arena *arena)
{
    struct manual manual = manual_on_screen(arena);
    manual_text(&manual, "Usage: maydeck COMMAND [OPTION]... BASE");
    manual_text(&manual, "Prints emergency action cards for the boats of a charter base.");
    names_tell(&manual);
    manual_show(&manual);
}

/* ---- topics ---- */

static const struct manual_topic *topic_find(const char *name)
{
    for (size_t i = 0; i < manual_topic_count; i++)
        if (manual_topics[i].name != NULL && text_equal(manual_topics[i].name, name))
            return &manual_topics[i];
    return NULL;
}

static void topic_show(const struct manual_topic *topic, const struct fleet *fleet,
                       struct arena *arena)
{
    struct manual manual = manual_on_screen(arena);
    manual_section(&manual, topic->title);
    manual.owed = true;
    manual_topic_tell(&manual, topic, fleet);
    manual_show(&manual);
}

static bool is_command(const char *name)
{
    for (size_t i = 0; i < command_count; i++)
        if (text_equal(commands[i].name, name))
            return true;
    return false;
}

/* A topic that is made of the program's texts, or another word that they know. */
static bool text_topic_show(const struct manual_topic *topic, const char *name,
                            enum exit_status *status)
{
    struct fleet fleet;
    bool told = fleet_begin(NEED_TEXTS, &fleet) != OWN_FILES_SOUND;
    struct manual manual = manual_on_screen(fleet.arena);
    if (!told && topic != NULL)
        topic_show(topic, &fleet, fleet.arena);
    else if (!told && word_tell(&manual, &fleet, name))
        manual_show(&manual);
    else if (!told) {
        fleet_close(&fleet);
        return false;
    }
    *status = report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return true;
}

bool help_of_topic(const char *name, struct arena *arena, enum exit_status *status)
{
    const struct manual_topic *topic = topic_find(name);
    if (topic == NULL && is_command(name))
        return false;
    if (topic == NULL || topic->reads)
        return text_topic_show(topic, name, status);
    topic_show(topic, NULL, arena);
    return true;
}
