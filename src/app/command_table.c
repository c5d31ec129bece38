/* command_table.c - the records of a base as a table for spreadsheets (room: app). */
#include "draw.h"
#include "fleet.h"
#include "table.h"
#include "told.h"

#include <stdio.h>
#include <string.h>

/* The folder and the name of a path. */
static bool table_put(const struct options *options, const struct fleet *fleet,
                      const struct text_builder *table)
{
    const char *slash = strrchr(options->table, '/');
    const char *folder = slash == NULL ? "."
                         : slash == options->table
                             ? "/"
                             : text_format(fleet->arena, "%.*s", (int)(slash - options->table),
                                           options->table);
    struct bytes bytes = {(const unsigned char *)table->at, table->length};
    folder_sweep(folder, fleet->arena);
    if (!file_put(folder, slash == NULL ? options->table : slash + 1, bytes, fleet->arena,
                  fleet->problems))
        return false;
    told_lines("%s: written\n", options->table);
    return true;
}

static void base_table_make(const struct options *options, const struct fleet *fleet)
{
    struct table_boats boats = table_boats_open(fleet);
    if (boats.count == 0)
        return;
    struct text_builder table = table_write(&boats, fleet->arena);
    if (options->table == NULL)
        fwrite(table.at, 1, table.length, stdout);
    else
        table_put(options, fleet, &table);
}

enum exit_status command_table(const struct options *options)
{
    struct fleet fleet;
    if (fleet_open(options, NEED_TEXTS | NEED_NO_DAY, &fleet))
        base_table_make(options, &fleet);
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status;
}
