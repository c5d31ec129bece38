/* fleet.c - reading a base folder and taking each boat from file to pages
 * (room: app). One bad boat never stops the others. */
#include "app.h"

#include <dirent.h>
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#define ARENA_LIMIT ((size_t)1024 * 1024 * 1024)
#define BOAT_BYTES YAML_FILE_LIMIT

static struct rules_input rules_input_make(const struct options *options,
                                           const struct fleet *fleet, const struct boat *boat)
{
    bool charter = options->from.year != 0;
    return (struct rules_input){boat, fleet->base, options->today,
                                charter ? options->from : options->today,
                                charter ? options->to : options->today, fleet->crew};
}

/* ---- folders ---- */

static int by_bytes(const void *a, const void *b)
{
    const char *const *first = a, *const *second = b;
    return strcmp(*first, *second);
}

/* Names in the folder that end in .yaml, in byte order. -1: no such folder. */
static long yaml_files(struct arena *arena, const char *folder, const char ***names)
{
    DIR *stream = opendir(folder);
    size_t count = 0, room = 0;
    *names = NULL;
    if (stream == NULL)
        return -1;
    for (struct dirent *entry; (entry = readdir(stream)) != NULL;) {
        if (entry->d_name[0] == '.' || !text_ends(entry->d_name, ".yaml"))
            continue;
        *names = arena_grow(arena, *names, count, &room, sizeof **names);
        (*names)[count++] = arena_copy(arena, entry->d_name, strlen(entry->d_name));
    }
    closedir(stream);
    if (count > 0)
        qsort(*names, count, sizeof **names, by_bytes);
    return (long)count;
}

/* ---- files ---- */

static const struct place no_place = {0};

/* NULL with a problem of `absent` severity when there is no such file. */
static const struct source *file_read(const struct fleet *fleet, struct arena *arena,
                                      const char *path, enum severity absent,
                                      const char *remedy)
{
    struct source *source = NULL;
    switch (source_read(arena, path, BOAT_BYTES, &source)) {
    case SOURCE_READ:
        return source;
    case SOURCE_ABSENT:
        problem_add(fleet->problems, absent, no_place, remedy, "there is no file %s", path);
        break;
    case SOURCE_NOT_A_FILE:
        problem_add(fleet->problems, absent, no_place, remedy, "%s is not a file", path);
        break;
    case SOURCE_TOO_LARGE:
        problem_add(fleet->problems, SEVERITY_ERROR, no_place,
                    "keep one boat, base or procedure a file", "%s is larger than 256 KiB", path);
        break;
    case SOURCE_FAILED:
        problem_add(fleet->problems, SEVERITY_FAILURE, no_place,
                    "look at the file's owner and rights, and at the disk",
                    "%s cannot be read: %s", path, strerror(errno));
        break;
    }
    return NULL;
}

#define REINSTALL "the program's own files are not complete: clone or install it again"

/* A set with a card missing would number its cards wrongly: all or none. */
static bool procedures_read(struct fleet *fleet, const char *folder)
{
    const char **names;
    bool sound = true;
    long count = yaml_files(fleet->arena, folder, &names);
    const struct procedure **rows = arena_array(fleet->arena, count < 0 ? 0 : (size_t)count,
                                                sizeof *rows);
    for (long i = 0; i < count; i++) {
        if (text_equal(names[i], "sources.yaml"))
            continue;
        const struct source *source = file_read(
            fleet, fleet->arena, text_format(fleet->arena, "%s/%s", folder, names[i]),
            SEVERITY_FAILURE, REINSTALL);
        const struct procedure *procedure = NULL;
        if (source != NULL)
            procedure = procedure_read(source, fleet->authorities, fleet->arena, fleet->problems);
        if (procedure == NULL) {
            sound = false;
            continue;
        }
        size_t at = fleet->procedures.count++;
        for (; at > 0 && rows[at - 1]->order.milli > procedure->order.milli; at--)
            rows[at] = rows[at - 1];
        rows[at] = procedure;
    }
    fleet->procedures.rows = rows;
    return sound && fleet->procedures.count > 0;
}

/* Procedures, words and faces: the program's own. */
static bool own_files_read(struct fleet *fleet)
{
    const char *folder = program_folder(fleet->arena, "procedures");
    const struct source *words = file_read(fleet, fleet->arena,
                                           text_format(fleet->arena, "%s/words/en.yaml", folder),
                                           SEVERITY_FAILURE, REINSTALL);
    const struct source *sources = file_read(fleet, fleet->arena,
                                             text_format(fleet->arena, "%s/sources.yaml", folder),
                                             SEVERITY_FAILURE, REINSTALL);
    if (words == NULL || sources == NULL)
        return false;
    fleet->words = words_read(words, fleet->arena, fleet->problems);
    fleet->authorities = authorities_read(sources, fleet->arena, fleet->problems);
    if (fleet->words == NULL || fleet->authorities == NULL)
        return false;
    bool procedures = procedures_read(fleet, folder);
    fleet->faces = faces_open(program_folder(fleet->arena, "fonts"), fleet->arena,
                              fleet->problems);
    return fleet->faces != NULL && procedures;
}

/* ---- the base ---- */

static bool is_folder(const char *path)
{
    struct stat status;
    return stat(path, &status) == 0 && S_ISDIR(status.st_mode);
}

static bool base_read_from(const struct options *options, struct fleet *fleet)
{
    bool sound = true;
    const char *own = text_format(fleet->arena, "%s/procedures", options->base);
    if (!is_folder(options->base)) {
        problem_add(fleet->problems, SEVERITY_USE, no_place,
                    "name the folder that holds base.yaml and boats/", "%s is not a folder",
                    options->base);
        return false;
    }
    if (is_folder(own)) {
        problem_add(fleet->problems, SEVERITY_ERROR, no_place,
                    "move that folder away: a base's own procedures are not read yet",
                    "%s: a base's own procedures cannot be used yet", own);
        return false;
    }
    const struct source *source = file_read(fleet, fleet->arena,
                                            text_format(fleet->arena, "%s/base.yaml",
                                                        options->base),
                                            SEVERITY_USE,
                                            "name the folder that holds base.yaml and boats/");
    problems_about(fleet->problems, NULL, "base");
    if (source != NULL)
        fleet->base = base_read(source, fleet->arena, fleet->problems, &sound);
    problems_about(fleet->problems, NULL, "run");
    return fleet->base != NULL && sound;
}

static const char *without_yaml(struct arena *arena, const char *name)
{
    return arena_copy(arena, name, strlen(name) - strlen(".yaml"));
}

static void no_such_boat(struct fleet *fleet, const char *boat)
{
    const char *nearest = text_nearest(boat, fleet->boat_keys, fleet->boat_count);
    struct text_builder list = text_builder_in(fleet->arena);
    for (size_t i = 0; i < fleet->boat_count; i++)
        text_add_format(&list, "%s%s", i == 0 ? "boats of this base: " : ", ",
                        fleet->boat_keys[i]);
    const char *remedy = nearest == NULL
                             ? list.at
                             : text_format(fleet->arena, "did you mean \"%s\"?", nearest);
    problem_add(fleet->problems, SEVERITY_USE, no_place, remedy, "there is no boat \"%s\"", boat);
}

static bool boats_list(const struct options *options, struct fleet *fleet)
{
    const char *folder = text_format(fleet->arena, "%s/boats", options->base);
    const char **names, **paths, **keys;
    long count = yaml_files(fleet->arena, folder, &names);
    if (count <= 0) {
        problem_add(fleet->problems, SEVERITY_USE, no_place,
                    "put one file a boat into the folder boats/, such as boats/tamarisk.yaml",
                    "there are no boat files in %s", folder);
        return false;
    }
    paths = arena_array(fleet->arena, (size_t)count, sizeof *paths);
    keys = arena_array(fleet->arena, (size_t)count, sizeof *keys);
    fleet->boat_paths = paths;
    fleet->boat_keys = keys;
    for (size_t i = 0; i < (size_t)count; i++)
        keys[i] = without_yaml(fleet->arena, names[i]);
    fleet->boat_count = (size_t)count;
    size_t chosen = 0;
    for (size_t i = 0; i < (size_t)count; i++)
        if (options->boat == NULL || text_equal(options->boat, keys[i])) {
            paths[chosen] = text_format(fleet->arena, "%s/%s", folder, names[i]);
            keys[chosen++] = keys[i];
        }
    if (chosen == 0)
        no_such_boat(fleet, options->boat);
    fleet->boat_count = chosen;
    return chosen > 0;
}

bool fleet_begin(struct fleet *fleet)
{
    *fleet = (struct fleet){.arena = arena_new(ARENA_LIMIT)};
    fleet->sources = fleet->arena;
    fleet->identities = identities_new(fleet->arena);
    fleet->problems = problems_new(fleet->arena);
    problems_about(fleet->problems, NULL, "program");
    bool sound = own_files_read(fleet);
    problems_about(fleet->problems, NULL, "run");
    return sound;
}

bool fleet_open(const struct options *options, struct fleet *fleet)
{
    bool own = fleet_begin(fleet);
    bool base = base_read_from(options, fleet);
    bool boats = is_folder(options->base) && boats_list(options, fleet);
    problems_about(fleet->problems, NULL, "base");
    if (own && fleet->base != NULL)
        base = base_cards_check(fleet->base, &fleet->procedures, fleet->arena,
                                fleet->problems) && base;
    problems_about(fleet->problems, NULL, "run");
    crew_read(options, fleet);
    if (fleet->base != NULL) {
        struct rules_input input = rules_input_make(options, fleet, NULL);
        base = rules_check_base(&input, fleet->arena, fleet->problems) && base;
    }
    fleet->ready = own && base;
    return boats && !problems_reach(fleet->problems, SEVERITY_USE);
}

void fleet_close(struct fleet *fleet)
{
    faces_close(fleet->faces);
    arena_free(fleet->arena);
}

/* ---- one boat ---- */

struct fleet fleet_for_boat(const struct fleet *fleet)
{
    struct fleet one = *fleet;
    one.arena = arena_new(ARENA_LIMIT);
    return one;
}

bool card_wanted(const struct options *options, const struct card *card)
{
    return options->card == NULL || text_equal(options->card, card->key) ||
           text_equal(options->card, card->procedure_key);
}

static void card_must_exist(const struct options *options, const struct fleet *fleet,
                            const struct card_set *set)
{
    struct text_builder list = text_builder_in(fleet->arena);
    const char **keys = arena_array(fleet->arena, set->count, sizeof *keys);
    for (size_t i = 0; i < set->count; i++) {
        if (card_wanted(options, set->cards[i]))
            return;
        keys[i] = set->cards[i]->key;
        text_add_format(&list, "%s%s", i == 0 ? "cards of this boat: " : ", ", keys[i]);
    }
    const char *nearest = text_nearest(options->card, keys, set->count);
    problem_add(fleet->problems, SEVERITY_USE, no_place,
                nearest == NULL ? list.at
                                : text_format(fleet->arena, "did you mean \"%s\"?", nearest),
                "there is no card \"%s\"", options->card);
}

struct compose_input compose_input_of(const struct options *options, const struct fleet *fleet,
                                      const struct boat *boat)
{
    return (struct compose_input){boat, fleet->base, &fleet->procedures, fleet->authorities,
                                  fleet->words, options->today, options->draft};
}

/* The record, and whether nothing in it holds the boat back. */
static const struct boat *boat_record(const struct options *options, const struct fleet *fleet,
                                      const char *key, size_t index, bool *sound)
{
    problems_about(fleet->problems, key, "record");
    const struct source *source = file_read(fleet, fleet->sources, fleet->boat_paths[index],
                                            SEVERITY_ERROR, "put the boat's file there");
    if (source == NULL)
        return NULL;
    const struct boat *boat = boat_read(source, key, fleet->arena, fleet->problems, sound);
    if (boat == NULL)
        return NULL;
    struct rules_input input = rules_input_make(options, fleet, boat);
    *sound = rules_check(&input, fleet->arena, fleet->problems) && *sound;
    /* Reserved identities send nobody to a wrong boat: copies of an example may be
     * printed, and only `check` tells. */
    if (boat->facts.specimen.answer != ANSWER_YES || fleet->specimens_compared)
        *sound = identities_add(fleet->identities, boat, key, fleet->problems) && *sound;
    return boat;
}

static void boat_compose(const struct options *options, const struct fleet *fleet,
                         struct boat_work *work)
{
    struct compose_input input = compose_input_of(options, fleet, work->boat);
    cards_make(fleet, &input, work);
    pages_proofread(fleet, work);
    problems_about(fleet->problems, work->key, "run");
    card_must_exist(options, fleet, work->set);
}

struct boat_work boat_work(const struct options *options, const struct fleet *fleet, size_t index)
{
    struct boat_work work = {.key = fleet->boat_keys[index]};
    bool sound = true;
    work.boat = boat_record(options, fleet, work.key, index, &sound);
    if (work.boat != NULL && sound && fleet->ready)
        boat_compose(options, fleet, &work);
    problems_about(fleet->problems, NULL, "run");
    return work;
}
