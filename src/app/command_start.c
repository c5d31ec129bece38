/* command_start.c - new files to be filled in; nothing that is there is ever
 * changed (room: app). */
#include "asked.h"
#include "draw.h"
#include "fleet.h"
#include "known_names.h"
#include "register_file.h"
#include "start_schemas.h"
#include "told.h"

#include <string.h>

static bool hull_sound(const struct options *options, const struct fleet *fleet)
{
    if (options->hull == NULL || choice_find(hull_words, options->hull) > 0)
        return true;
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                known_remedy(fleet->arena, &fleet->known, options->hull, hull_words,
                             "write monohull, catamaran or trimaran"),
                "--hull does not take \"%s\"", options->hull);
    return false;
}

/* ---- a model ---- */

static const char *model_remedy(const char *name, const struct fleet *fleet)
{
    const struct models *models = &fleet->models;
    const char **keys = arena_array(fleet->arena, models->count + 1, sizeof *keys);
    struct text_builder all = text_builder_in(fleet->arena);
    for (size_t i = 0; i < models->count; i++) {
        keys[i] = model_key(models->rows[i]);
        text_add_format(&all, "%s%s", i == 0 ? "there is: " : ", ", keys[i]);
    }
    keys[models->count] = NULL;
    if (models->count == 0)
        return "write the model first, from the file of a boat of that kind, without what is hers";
    return known_remedy(fleet->arena, NULL, name, keys, all.at);
}

/* The model of that name, read without errors; NULL, with what is wrong, where there is none. */
static const struct model *model_to_start(const struct options *options, struct fleet *fleet)
{
    models_read(options, fleet);
    for (size_t i = 0; i < fleet->models.count; i++) {
        const struct model *model = fleet->models.rows[i];
        if (!text_equal(model_key(model), options->like))
            continue;
        problems_join(fleet->problems, model_problems(model));
        return problems_reach(model_problems(model), SEVERITY_ERROR) ? NULL : model;
    }
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, model_remedy(options->like, fleet),
                "no model \"%s\" in %s/models", options->like, options->base);
    return NULL;
}

/* ---- names of files ---- */

/* File names that need no quoting anywhere; the boat's own name is in the file. */
static const char file_name_signs[] =
    "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";

/* The words of the name with _ between: sea_rose of "Sea Rose". */
static const char *key_proposed(const char *name, struct arena *arena)
{
    char *plain = arena_copy(arena, name_plain(arena, name), strlen(name_plain(arena, name)));
    for (char *at = plain; *at != '\0'; at++)
        if (*at == ' ')
            *at = '_';
    bool sound = strlen(plain) > 0 && strspn(plain, file_name_signs) == strlen(plain);
    return sound ? plain : "sea_rose";
}

static bool key_sound(const char *key, struct arena *arena, struct problems *problems)
{
    size_t length = strlen(key);
    if (length > 0 && length <= 64 && strspn(key, file_name_signs) == length && key[0] != '-')
        return true;
    problem_add(problems, SEVERITY_USE, NO_PLACE,
                text_format(arena, "use letters A to Z, digits, - and _, such as %s; the boat's "
                            "name as painted goes into the file", key_proposed(key, arena)),
                "\"%s\" cannot be the name of a boat's file", key);
    return false;
}

static bool file_new(const struct fleet *fleet, const char *folder, const char *name,
                     const char *content)
{
    struct bytes bytes = {(const unsigned char *)content, strlen(content)};
    if (!file_put(folder, name, bytes, fleet->arena, fleet->problems))
        return false;
    told_lines("%s/%s: written, to be filled in\n", folder, name);
    return true;
}

/* True, with a problem, when something is there. */
static bool is_in_the_way(const struct fleet *fleet, const char *path, const char *remedy)
{
    if (is_there(path))
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, remedy,
                    "%s is there already, and is never changed", path);
    return is_there(path);
}

static const char *boat_path(const struct options *options, const struct fleet *fleet,
                             size_t index)
{
    return text_format(fleet->arena, "%s/boats/%s.yaml", options->base, options->boats.at[index]);
}

/* What would be written is not there yet, and something would be. */
static bool nothing_in_the_way(const struct options *options, const struct fleet *fleet,
                               const char *base_file)
{
    bool clear = true;
    if (options->boats.count == 0)
        clear = !is_in_the_way(fleet, base_file,
                               text_format(fleet->arena,
                                           "for one more boat: maydeck start %s --boat NAME",
                                           options->base));
    for (size_t i = 0; i < options->boats.count; i++)
        clear = !is_in_the_way(fleet, boat_path(options, fleet, i),
                               "give the new boat's file another name, or go on filling in "
                               "that one") && clear;
    return clear;
}

/* What is to be filled in; NULL, with what is wrong: of a model that cannot be used. */
static const char *boat_text(const struct options *options, struct fleet *fleet)
{
    enum hull hull = options->hull == NULL ? HULL_NONE : choice_find(hull_words, options->hull);
    struct asked_list offered = items_offered(fleet->procedures.rows, fleet->procedures.count,
                                              hull, fleet->arena);
    if (options->like == NULL)
        return starter_boat(&offered, hull, &fleet->known, fleet->arena);
    const struct model *model = model_to_start(options, fleet);
    return model == NULL ? NULL : starter_sister(&offered, model, &fleet->known, fleet->arena);
}

/* A file that cannot be written stops no other. True when all were. */
static bool boats_write(const struct options *options, const struct fleet *fleet,
                        const char *folder, const char *text)
{
    bool all = true;
    for (size_t i = 0; i < options->boats.count; i++)
        all = file_new(fleet, folder,
                       text_format(fleet->arena, "%s.yaml", options->boats.at[i]), text) && all;
    return all;
}

static void no_rows(void *of, const struct register_rows *there, struct text_builder *lines)
{
    (void)of;
    (void)there;
    (void)lines;
}

/* One that a run was kept from beginning is empty still. */
static bool is_begun(const char *path)
{
    return is_there(path) && (!is_plain_file(path) || file_length(path) > 0);
}

/* A register without rows; one that is there is left as it is. */
static bool register_begin(const struct options *options, const struct fleet *fleet)
{
    const char *path = register_path(options, fleet->arena);
    const struct register_telling telling = {fleet->arena, fleet->problems, fleet->problems};
    if (is_begun(path))
        return true;
    if (!register_change(path, APPEND_MAKE, no_rows, NULL, &telling))
        return false;
    told_lines("%s: begun; `print` and `hang` write into it\n", path);
    return true;
}

/* True, with a problem, where the folder is no base yet; `option` asks for something in one. */
static bool is_no_base(const struct options *options, const struct fleet *fleet,
                       const char *option)
{
    bool base = is_there(text_format(fleet->arena, "%s/base.yaml", options->base));
    if (!base)
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    text_format(fleet->arena, "name the folder that holds base.yaml and boats/, or "
                                "leave out --%s", option),
                    "%s is not a base", options->base);
    return !base;
}

/* For a base that has none. */
static void register_alone(const struct options *options, const struct fleet *fleet)
{
    const char *path = register_path(options, fleet->arena);
    if (is_no_base(options, fleet, "register"))
        return;
    if (!is_begun(path) || !is_in_the_way(fleet, path, "it goes on as it is"))
        register_begin(options, fleet);
}

/* For a base that has none, or older ones. */
static void schemas_alone(const struct options *options, const struct fleet *fleet)
{
    if (!is_no_base(options, fleet, "schemas"))
        schemas_write(options, fleet);
}

/* `text` is what each boat's file is to hold. */
static void files_write(const struct options *options, const struct fleet *fleet,
                        const char *text)
{
    struct arena *arena = fleet->arena;
    const char *boats = text_format(arena, "%s/boats", options->base);
    const char *base_file = text_format(arena, "%s/base.yaml", options->base);
    if (!nothing_in_the_way(options, fleet, base_file) ||
        !folder_ready(options->base, arena, fleet->problems) ||
        !folder_ready(boats, arena, fleet->problems))
        return;
    folder_sweep(options->base, arena);
    folder_sweep(boats, arena);
    if (!schemas_write(options, fleet))     /* what is made last tells that all before is there */
        return;
    bool base = is_there(base_file) ||
                file_new(fleet, options->base, "base.yaml", starter_base(arena));
    base = base && register_begin(options, fleet);
    bool all = boats_write(options, fleet, boats, text);
    if (base && all && options->boats.count == 0)
        told_lines("next: maydeck start %s --boat NAME\n", options->base);
    else if (base && all)
        told_lines("next: fill in, then: maydeck check %s\n", options->base);
}

static bool keys_sound(const struct options *options, const struct fleet *fleet)
{
    bool sound = true;
    for (size_t i = 0; i < options->boats.count; i++)
        sound = key_sound(options->boats.at[i], fleet->arena, fleet->problems) && sound;
    return sound;
}

enum exit_status command_start(const struct options *options)
{
    struct fleet fleet;
    bool own = fleet_begin(NEED_TEXTS, &fleet) == OWN_FILES_SOUND;
    const char *text = NULL;
    if (own && options->begin_register)
        register_alone(options, &fleet);
    else if (own && options->schemas)
        schemas_alone(options, &fleet);
    else if (own && hull_sound(options, &fleet) && keys_sound(options, &fleet))
        text = boat_text(options, &fleet);
    if (text != NULL)
        files_write(options, &fleet, text);
    enum exit_status status = report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return status;
}
