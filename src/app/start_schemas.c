/* start_schemas.c - the schemas of a base's files, in the base's own folder (room: app): there each
 * editor finds them by the first line of a file, wherever the folder lies and whether or not this
 * program is there. They are the program's, and the only files that `start` writes anew. */
#include "draw.h"
#include "fleet.h"
#include "schema.h"
#include "start_schemas.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>

#define SCHEMA_FOLDER "schema"
enum { SCHEMA_BYTES_MOST = 4 * 1024 * 1024 };

static const enum schema_topic written[] = {SCHEMA_BASE, SCHEMA_BOAT, SCHEMA_MODEL,
                                            SCHEMA_PROCEDURE, SCHEMA_TEXTS, SCHEMA_SOURCES};

/* How what is there stands to the schema; what cannot be read was told. */
enum schema_there { THERE_NOT, THERE_SAME, THERE_OLDER, THERE_NOT_OURS, THERE_UNREAD };

static enum schema_there look(const struct fleet *fleet, const char *path, const char *text)
{
    struct source *source;
    switch (source_read(fleet->arena, path, SCHEMA_BYTES_MOST, &source)) {
    case SOURCE_ABSENT: return THERE_NOT;
    case SOURCE_NOT_A_FILE: case SOURCE_TOO_LARGE: return THERE_NOT_OURS;
    case SOURCE_FAILED:
        problem_add(fleet->problems, SEVERITY_FAILURE, NO_PLACE,
                    "look at the file's owner and rights, and at the disk", "%s cannot be read: %s",
                    path, strerror(errno));
        return THERE_UNREAD;
    case SOURCE_READ: break;
    }
    if (text_equal(source->bytes, text))
        return THERE_SAME;
    return source->length == 0 || strstr(source->bytes, SCHEMA_MARK) != NULL ? THERE_OLDER
                                                                             : THERE_NOT_OURS;
}

/* True: it is there now and was not before. */
static bool schema_write(const struct fleet *fleet, const char *folder, enum schema_topic topic,
                         bool *all)
{
    struct arena *arena = fleet->arena;
    const char *text = schema_make(topic, &fleet->known, arena);
    const char *name = text_format(arena, "%s.json", schema_topic_words[topic - 1]);
    const char *path = text_format(arena, "%s/%s", folder, name);
    enum schema_there there = look(fleet, path, text);
    if (there == THERE_NOT_OURS)
        problem_add(fleet->problems, SEVERITY_NOTE, NO_PLACE,
                    "move it away for editors to get the schema of this program",
                    "%s is there already and is none of this program's: it is left as it is", path);
    *all = *all && there != THERE_UNREAD;
    if (there == THERE_SAME || there == THERE_NOT_OURS || there == THERE_UNREAD)
        return false;
    struct bytes bytes = {(const unsigned char *)text, strlen(text)};
    bool put = file_put(folder, name, bytes, arena, fleet->problems);
    *all = *all && put;
    return put;
}

bool schemas_write(const struct options *options, const struct fleet *fleet)
{
    const char *folder = text_format(fleet->arena, "%s/" SCHEMA_FOLDER, options->base);
    bool any = false, all = true;
    if (!folder_ready(folder, fleet->arena, fleet->problems))
        return false;
    folder_sweep(folder, fleet->arena);
    for (size_t i = 0; i < sizeof written / sizeof *written; i++)
        any = schema_write(fleet, folder, written[i], &all) || any;
    if (any && all)
        printf("%s: written; by it editors offer keys and words, and mark slips\n", folder);
    return all;
}
