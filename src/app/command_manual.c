/* command_manual.c - the pages of the manual on standard output (room: app). Reads no base. */
#include "manual.h"

#include <stdio.h>

enum exit_status command_manual(const struct options *options)
{
    struct fleet fleet;
    if (fleet_begin(NEED_TEXTS, &fleet) == OWN_FILES_SOUND) {
        struct manual manual = manual_as_source(fleet.arena);
        if (options->topic == PAGE_REFERENCE)
            reference_page_add(&manual);
        else
            manual_page_add(&manual, (enum manual_page)options->topic, &fleet);
        fwrite(manual.out.at, 1, manual.out.length, stdout);
    }
    enum exit_status status = report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return status;
}
