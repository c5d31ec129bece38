/* boat_files.c - the boat files of a base (room: app): which there are, which are not read
 * though they lie there, and the identities in all of them. */
#include "app.h"

#include <errno.h>
#include <string.h>

static const struct place no_place = {0};

/* ---- what is no boat's file ---- */

static const char *small_letters(struct arena *arena, const char *text)
{
    char *copy = arena_copy(arena, text, strlen(text));
    for (char *at = copy; *at != '\0'; at++)
        if (*at >= 'A' && *at <= 'Z')
            *at = (char)(*at - 'A' + 'a');
    return copy;
}

/* As file managers name what was copied. */
static bool is_copy(struct arena *arena, const char *name)
{
    const char *small = small_letters(arena, name);
    return text_begins(small, "copy of ") || strstr(small, " copy") != NULL ||
           strstr(small, "(copy") != NULL;
}

static bool is_boat_file(struct arena *arena, const char *name)
{
    return name[0] != '.' && text_ends(name, ".yaml") && !is_copy(arena, name);
}

/* Was it meant to be a boat's file? Then she lacks her cards. */
static bool seems_boat_file(struct arena *arena, const char *folder, const char *name)
{
    const char *small = small_letters(arena, name);
    return strstr(small, ".yaml") != NULL || strstr(small, ".yml") != NULL ||
           is_folder(text_format(arena, "%s/%s", folder, name));
}

static void stray_tell(const struct fleet *fleet, const char *folder, const char *name)
{
    bool meant = seems_boat_file(fleet->arena, folder, name);
    problem_add(fleet->problems, meant ? SEVERITY_DEFICIENCY : SEVERITY_NOTE, no_place,
                meant ? "if she is a boat of this base, name the file as the boat, such as "
                        "tamarisk.yaml;\nif not, move it out of boats/"
                      : "move it out of boats/",
                is_copy(fleet->arena, name)
                    ? "%s/%s is not read: its name is that of a copy"
                    : "%s/%s is not read: a boat's file lies in boats/ itself and is called "
                      "NAME.yaml", folder, name);
}

/* ---- which boats there are ---- */

static void no_such_boat(const struct fleet *fleet, const char *boat)
{
    const struct names *base = &fleet->base_keys;
    const char *nearest = text_nearest(boat, base->at, base->count);
    struct text_builder list = text_builder_in(fleet->arena);
    for (size_t i = 0; i < base->count; i++)
        text_add_format(&list, "%s%s", i == 0 ? "boats of this base: " : ", ", base->at[i]);
    const char *remedy = nearest == NULL
                             ? list.at
                             : text_format(fleet->arena, "did you mean \"%s\"?", nearest);
    problem_add(fleet->problems, SEVERITY_USE, no_place, remedy, "there is no boat \"%s\"", boat);
}

static bool keys_choose(const struct options *options, struct fleet *fleet)
{
    const struct names *base = &fleet->base_keys;
    const char **keys = arena_array(fleet->arena, base->count, sizeof *keys);
    fleet->boat_keys = keys;
    bool known = true;
    for (size_t i = 0; i < base->count; i++)
        if (options->boats.count == 0 || names_hold(&options->boats, base->at[i]))
            keys[fleet->boat_count++] = base->at[i];
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

bool boats_list(const struct options *options, struct fleet *fleet)
{
    const char *folder = boats_folder(options, fleet);
    struct names found;
    int error = folder_names(fleet->arena, folder, &found);
    if (error != 0 && error != ENOENT && error != ENOTDIR) {
        folder_refused(fleet, folder, error);
        return false;
    }
    for (size_t i = 0; i < found.count; i++) {
        const char *name = found.at[i];
        if (is_boat_file(fleet->arena, name))
            names_add(&fleet->base_keys,
                      arena_copy(fleet->arena, name, strlen(name) - strlen(".yaml")),
                      fleet->arena);
        else
            stray_tell(fleet, folder, name);
    }
    if (fleet->base_keys.count > 0)
        return keys_choose(options, fleet);
    problem_add(fleet->problems, SEVERITY_USE, no_place,
                "put one file a boat into the folder boats/, such as boats/tamarisk.yaml",
                "there are no boat files in %s", folder);
    return false;
}

/* ---- what they hold ---- */

/* A boat that was not asked for is read for her identities alone. */
static void other_read(struct fleet *fleet, const char *path, const char *key)
{
    const struct source *source = file_read(
        fleet, path, SEVERITY_ERROR,
        "move it away: her identities cannot be held against those of the others");
    if (source != NULL && !identities_add(fleet->identities, source, key))
        problem_add(fleet->problems, SEVERITY_DEFICIENCY, source_whole(source),
                    text_format(fleet->arena, "look at it with --boat %s and mend it", key),
                    "the file has errors: only its lines were searched for identities");
}

void boats_read(const struct options *options, struct fleet *fleet)
{
    const struct source **sources = arena_array(fleet->arena, fleet->boat_count,
                                                sizeof *sources);
    const char *folder = boats_folder(options, fleet);
    size_t chosen = 0;
    fleet->boat_sources = sources;
    for (size_t i = 0; i < fleet->base_keys.count; i++) {
        const char *key = fleet->base_keys.at[i];
        const char *path = text_format(fleet->arena, "%s/%s.yaml", folder, key);
        if (chosen == fleet->boat_count || !text_equal(fleet->boat_keys[chosen], key)) {
            other_read(fleet, path, key);
            continue;
        }
        problems_about(fleet->problems, key, "record");
        sources[chosen] = file_read(fleet, path, SEVERITY_ERROR, "put the boat's file there");
        if (sources[chosen] != NULL)
            identities_add(fleet->identities, sources[chosen], key);
        problems_about(fleet->problems, NULL, "run");
        chosen++;
    }
}
