/* command_schema.c - the JSON Schema of a kind of file, or of what `check --json` says, on standard
 * output (room: app). Reads no base. */
#include "check_rows.h"
#include "fleet.h"
#include "schema.h"

#include <stdio.h>

enum exit_status command_schema(const struct options *options)
{
    struct fleet fleet;
    if (options->topic == SCHEMA_CHECK) {
        check_schema_print();
        return EXIT_GOOD;
    }
    if (fleet_begin(NEED_TEXTS, &fleet) == OWN_FILES_SOUND)
        fputs(schema_make(options->topic, &fleet.known, fleet.arena), stdout);
    enum exit_status status = report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return status;
}
