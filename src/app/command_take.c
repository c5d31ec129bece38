/* command_take.c - what was changed in a table, told and taken into the boats' files (room: app).
 * Nothing is written unless all of it can be. */
#include "draw.h"
#include "fleet.h"
#include "table.h"
#include "told.h"

#include <errno.h>
#include <string.h>

/* ---- the table ---- */

static const struct source *table_read(const struct options *options, const struct fleet *fleet)
{
    struct source *source = NULL;
    switch (source_read(fleet->arena, options->file, CSV_FILE_LIMIT, &source)) {
    case SOURCE_READ:
        return source;
    case SOURCE_ABSENT:
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "name the file that the spreadsheet saved", "there is no file %s",
                    options->file);
        break;
    case SOURCE_NOT_A_FILE:
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "name the file that the spreadsheet saved", "%s is not a file",
                    options->file);
        break;
    case SOURCE_TOO_LARGE:
        problem_add(fleet->problems, SEVERITY_ERROR, NO_PLACE,
                    "take the boats in several tables", "%s is larger than 16 MiB",
                    options->file);
        break;
    case SOURCE_FAILED:
        problem_add(fleet->problems, SEVERITY_FAILURE, NO_PLACE,
                    "look at the file's owner and rights, and at the disk",
                    "%s cannot be read: %s", options->file, strerror(errno));
        break;
    }
    return NULL;
}

/* ---- telling ---- */

static void changes_print(const struct take *take)
{
    size_t count;
    const struct table_change *changes = take_changes(take, &count);
    for (size_t i = 0; i < count; i++)
        told_lines("%s %s: %s -> %s\n", changes[i].boat, changes[i].what,
                   changes[i].from == NULL ? "(nothing)" : changes[i].from,
                   changes[i].to == NULL ? "(nothing)" : changes[i].to);
}

static size_t files_changed(const struct take *take, const struct table_boats *boats)
{
    size_t count = 0;
    for (size_t i = 0; i < boats->count; i++)
        count += take_edited(take, i) != NULL ? 1 : 0;
    return count;
}

static void rest_print(const struct options *options, size_t values, size_t files)
{
    if (values == 0)
        told_lines("%s says what the boats' files say: nothing is to change\n", options->file);
    else
        told_lines("%zu change%s in %zu file%s; nothing was written: to write, add --write\n",
                   values, values == 1 ? "" : "s", files, files == 1 ? "" : "s");
}

/* ---- writing ---- */

struct take_writing {
    const struct options *options;
    const struct fleet *fleet;
    const char *folder;
    struct file_content *files;
    const struct source **old;
    const char **kept;           /* names of the files as they were */
    size_t count;
};

/* Is the file still what was read when the run began? */
static bool file_is_as_read(const struct fleet *fleet, const struct source *old)
{
    struct source *now = NULL;
    bool same = source_read(fleet->arena, old->name, YAML_FILE_LIMIT, &now) == SOURCE_READ &&
                now->marked == old->marked && now->length == old->length &&
                memcmp(now->bytes, old->bytes, old->length) == 0;
    if (!same)
        problem_add(fleet->problems, SEVERITY_FAILURE, NO_PLACE, "do it again",
                    "%s was changed by somebody else just now: nothing was written", old->name);
    return same;
}

/* The file as it was, under the first name that is free. */
static bool old_keep(struct take_writing *writing, size_t index)
{
    struct arena *arena = writing->fleet->arena;
    const struct source *old = writing->old[index];
    const char *bytes = old->bytes;
    size_t length = old->length;
    const char *name = writing->files[index].name;
    size_t stem = strlen(name) - strlen(".yaml");
    for (size_t number = 1;; number++) {
        writing->kept[index] =
            text_format(arena, "%.*s" KEPT_FILE_END "%zu", (int)stem, name, number);
        if (!is_there(text_format(arena, "%s/%s", writing->folder, writing->kept[index])))
            break;
        if (is_unlooked())
            return false;
    }
    if (old->marked) {
        bytes = text_format(arena, CSV_MARK "%s", old->bytes);
        length += strlen(CSV_MARK);
    }
    return file_put(writing->folder, writing->kept[index],
                    (struct bytes){(const unsigned char *)bytes, length}, arena,
                    writing->fleet->problems);
}

static struct take_writing writing_of(const struct options *options, const struct fleet *fleet,
                                      const struct table_boats *boats, const struct take *take)
{
    struct take_writing writing = {
        .options = options, .fleet = fleet,
        .folder = text_format(fleet->arena, "%s/boats", options->base),
        .files = arena_array(fleet->arena, boats->count, sizeof *writing.files),
        .old = arena_array(fleet->arena, boats->count, sizeof(void *)),
        .kept = arena_array(fleet->arena, boats->count, sizeof *writing.kept)};
    for (size_t i = 0; i < boats->count; i++) {
        const struct yaml_edited *edited = take_edited(take, i);
        if (edited == NULL)
            continue;
        writing.old[writing.count] = boats->rows[i].source;
        writing.files[writing.count++] = (struct file_content){
            text_format(fleet->arena, "%s.yaml", boats->rows[i].key),
            {(const unsigned char *)edited->bytes, edited->length}};
    }
    return writing;
}

/* Two runs write one after another, and the second finds that the files are no longer those that
 * it read. */
static void take_files_write(struct take_writing *writing)
{
    const struct fleet *fleet = writing->fleet;
    bool good = true;
    size_t put = 0, kept = 0;
    int hold = folder_hold(writing->folder, fleet->arena);
    for (size_t i = 0; i < writing->count; i++)
        good = file_is_as_read(fleet, writing->old[i]) && good;
    for (; good && kept < writing->count; kept++)
        good = old_keep(writing, kept);
    if (good)
        files_put(writing->folder, writing->files, writing->count, &put, fleet->arena,
                  fleet->problems);
    folder_release(hold);
    for (size_t i = put; i < kept; i++)
        file_withdraw(writing->folder, writing->kept[i], fleet->arena);
    for (size_t i = 0; i < put; i++)
        told_lines("%s/%s: changed; as it was: %s\n", writing->folder, writing->files[i].name,
                   writing->kept[i]);
    if (put > 0)
        told_lines("next: maydeck check %s; then go on with a table written anew\n",
                   writing->options->base);
}

/* ---- the whole ---- */

static void changes_take(const struct options *options, const struct fleet *fleet,
                         const struct csv_table *table)
{
    size_t values;
    struct table_boats boats = table_boats_open(fleet);
    const struct take *take = table_take(table, &boats, fleet->arena, fleet->problems);
    if (take != NULL)
        changes_print(take);
    if (take == NULL || !take_judge(options, fleet, &boats, take) || !fleet->ready) {
        told_lines("nothing was written: mend first what is wrong\n");
        return;
    }
    if (take_passed(take) > 0)
        told_lines("%zu row%s passed over: unchanged in the table, but not in the boats' files "
                   "since it was written\n", take_passed(take), take_passed(take) == 1 ? "" : "s");
    take_changes(take, &values);
    struct take_writing writing = writing_of(options, fleet, &boats, take);
    if (options->write && writing.count > 0)
        take_files_write(&writing);
    else
        rest_print(options, values, files_changed(take, &boats));
}

enum exit_status command_take(const struct options *options)
{
    struct fleet fleet;
    if (fleet_open(options, NEED_TEXTS, &fleet)) {
        const struct source *source = table_read(options, &fleet);
        const struct csv_table *table =
            source == NULL ? NULL : csv_read(source, fleet.arena, fleet.problems);
        if (table != NULL)
            changes_take(options, &fleet, table);
    }
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status;
}
