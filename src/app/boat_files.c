/* boat_files.c - the boat files of a base (room: app): which there are, and the identities in
 * all of them. */
#include "fleet.h"

#include <errno.h>
#include <string.h>

#include "utf8.h"

/* ---- which boats there are ---- */

const char *boat_of_file(const struct fleet *fleet, const char *file)
{
    const char *name = strrchr(file, '/') == NULL ? file : strrchr(file, '/') + 1;
    if (!text_ends(name, ".yaml"))
        return file;
    return arena_copy(fleet->arena, name, strlen(name) - strlen(".yaml"));
}

static void no_such_boat(const struct fleet *fleet, const char *boat)
{
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                names_remedy(&fleet->base_keys, boat_of_file(fleet, boat),
                             "boats of this base: ", fleet->arena),
                "there is no boat \"%s\"", boat);
}

static struct boat_asked boat_of(const struct fleet *fleet, const char *key)
{
    struct boat_asked boat = {.key = key, .problems = problems_new(fleet->arena)};
    problems_about(boat.problems, key, "record");
    return boat;
}

static bool boats_choose(const struct options *options, struct fleet *fleet)
{
    const struct names *base = &fleet->base_keys;
    fleet->boats = arena_array(fleet->arena, base->count, sizeof *fleet->boats);
    bool known = true;
    for (size_t i = 0; i < base->count; i++)
        if (options->boats.count == 0 || names_hold(&options->boats, base->at[i]))
            fleet->boats[fleet->boat_count++] = boat_of(fleet, base->at[i]);
    for (size_t i = 0; i < options->boats.count; i++)
        if (!names_hold(base, options->boats.at[i])) {
            no_such_boat(fleet, options->boats.at[i]);
            known = false;
        }
    return known;
}

static const char *boats_folder(const struct options *options, const struct fleet *fleet)
{
    return text_format(fleet->arena, "%s/boats", options->base);
}

/* The boat's key is her file's name, which terminals, file names and spreadsheets are to show. */
static bool name_sound(const struct fleet *fleet, const char *folder, const char *name)
{
    const char *wrong = utf8_text_refusal(name);
    if (wrong != NULL)
        problem_add(fleet->problems, SEVERITY_ERROR, NO_PLACE,
                    "give the file the boat's name in plain letters, such as tamarisk.yaml",
                    "%s/%s is not read: its name holds %s", folder, name, wrong);
    return wrong == NULL;
}

/* Larger than what the longest list of names takes. */
#define NAMES_ARENA_LIMIT ((size_t)1024 * 1024 * 1024)

/* What lies in boats/: the keys of those that are boats' files; the others are told. */
static void boats_sort_out(const char *folder, const struct names *found, struct arena *own,
                           struct fleet *fleet)
{
    for (size_t i = 0; i < found->count; i++) {
        const char *name = found->at[i];
        bool boat = is_boat_file(own, name);
        if (boat && name_sound(fleet, folder, name))
            names_add(&fleet->base_keys, arena_copy(own, name, strlen(name) - strlen(".yaml")),
                      fleet->arena);
        else if (!boat)
            boat_stray_tell(fleet, folder, name);
    }
}

bool boats_list(const struct options *options, struct fleet *fleet)
{
    const char *folder = boats_folder(options, fleet);
    struct arena *own = arena_new(NAMES_ARENA_LIMIT);
    struct names found;
    int error = folder_names(own, folder, &found);
    bool read = error == 0 || error == ENOENT || error == ENOTDIR;
    if (read)
        boats_sort_out(folder, &found, own, fleet);
    else
        folder_refused(fleet->problems, folder, error);
    arena_free(own);
    if (!read)
        return false;
    if (boat_is_given(options))
        return boat_given_take(options, fleet);
    if (fleet->base_keys.count > 0)
        return boats_choose(options, fleet);
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                "put one file a boat into the folder boats/, such as boats/tamarisk.yaml",
                "there are no boat files in %s", folder);
    return false;
}

/* ---- what they hold ---- */

/* They stand in the order of their keys. */
struct boat_asked *boat_asked_find(const struct fleet *fleet, const char *key)
{
    size_t low = 0, high = fleet->boat_count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        int order = strcmp(fleet->boats[middle].key, key);
        if (order == 0)
            return &fleet->boats[middle];
        low = order < 0 ? middle + 1 : low;
        high = order < 0 ? high : middle;
    }
    return NULL;
}

/* Larger than any file of a boat, with what reading its identities takes. */
#define FILE_ARENA_LIMIT ((size_t)64 * 1024 * 1024)

uint64_t source_hash(const struct source *source)
{
    return bytes_hash_fast(BYTES_HASH_START, source->bytes, source->length);
}

/* A boat that was not asked for is read for her identities alone. */
static void other_read(const struct fleet *fleet, const char *path, const char *key)
{
    struct arena *own = arena_new(FILE_ARENA_LIMIT);
    const struct source *source = file_read(
        path, (struct file_absent){SEVERITY_ERROR, "move it away: her identities cannot be held "
                                                   "against those of the others"},
        own, fleet->problems);
    if (source != NULL && !identities_add(fleet->identities, source, key))
        problem_add(fleet->problems, SEVERITY_DEFICIENCY,
                    source_whole(source_from(fleet->arena, path, "", 0)),
                    text_format(own, "look at it with --boat %s and mend it", key),
                    "the file has errors: only its lines were searched for identities");
    arena_free(own);
}

/* What was read lives as long as the run. */
static void asked_read(const struct fleet *fleet, const char *path, struct boat_asked *boat)
{
    struct file_absent absent = {SEVERITY_ERROR, "put the boat's file there"};
    if (boat->source == NULL)
        boat->source = file_read(path, absent, fleet->arena, boat->problems);
    if (boat->source != NULL)
        identities_add(fleet->identities, boat->source, boat->key);
}

static void asked_identities_read(const struct fleet *fleet, const char *path,
                                  struct boat_asked *boat)
{
    struct arena *own = arena_new(FILE_ARENA_LIMIT);
    struct file_absent absent = {SEVERITY_ERROR, "put the boat's file there"};
    const struct source *source = file_read(path, absent, own, boat->problems);
    if (source != NULL) {
        identities_add(fleet->identities, source, boat->key);
        boat->path = arena_copy(fleet->arena, path, strlen(path));
        boat->hash = source_hash(source);
    }
    arena_free(own);
}

void boats_read(const struct options *options, unsigned needs, struct fleet *fleet)
{
    const char *folder = boats_folder(options, fleet);
    size_t next = 0;    /* of those that were asked for, which are in the same order */
    for (size_t i = 0; i < fleet->base_keys.count; i++) {
        const char *key = fleet->base_keys.at[i];
        struct arena *own = arena_new(FILE_ARENA_LIMIT);
        const char *path = text_format(own, "%s/%s.yaml", folder, key);
        bool asked = next < fleet->boat_count && text_equal(fleet->boats[next].key, key);
        bool later = (needs & NEED_BOATS_LATER) != 0 && !boat_is_given(options);
        if (!asked)
            other_read(fleet, path, key);
        else
            (later ? asked_identities_read : asked_read)(fleet, path, &fleet->boats[next++]);
        arena_free(own);
    }
}
