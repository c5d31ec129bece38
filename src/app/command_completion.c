/* command_completion.c - scripts for shells, and the names that they ask for, on standard output
 * (room: app). Writes no file and reads no boat. */
#include "completion.h"

#include <stdio.h>

static bool completion_make(const struct options *options, struct fleet *fleet,
                            struct text_builder *out)
{
    enum completion_topic topic = (enum completion_topic)options->topic;
    if (topic == COMPLETE_BASH)
        completion_bash(out);
    else if (topic == COMPLETE_ZSH)
        completion_zsh(out);
    else if (topic == COMPLETE_FISH)
        completion_fish(out);
    else
        return completion_names(options, topic, fleet, out);
    return true;
}

enum exit_status command_completion(const struct options *options)
{
    struct fleet fleet;
    if (fleet_begin(NEED_TEXTS, &fleet) == OWN_FILES_SOUND) {
        struct text_builder out = text_builder_in(fleet.arena);
        text_add(&out, "");
        if (completion_make(options, &fleet, &out))
            fwrite(out.at, 1, out.length, stdout);
    }
    enum exit_status status = report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return status;
}
