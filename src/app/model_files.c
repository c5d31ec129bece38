/* model_files.c - the models of a base (room: app): which there are, which are not read though
 * they lie there. */
#include "fleet.h"

#include <errno.h>
#include <string.h>

static void stray_model_tell(const struct fleet *fleet, const char *folder, const char *name)
{
    problem_add(fleet->problems, SEVERITY_DEFICIENCY, NO_PLACE,
                "if it is a model, name the file such as sloop_12.yaml; if not, move it out of "
                "models/",
                "%s/%s is not read: a model's file lies in models/ itself and is called NAME.yaml",
                folder, name);
}

static const struct model *model_file_read(const struct fleet *fleet, const char *folder,
                                           const char *name)
{
    struct file_absent absent = {SEVERITY_ERROR, "put the model's file there"};
    const char *path = text_format(fleet->arena, "%s/%s", folder, name);
    const struct source *source = file_read(path, absent, fleet->arena, fleet->problems);
    const char *key = arena_copy(fleet->arena, name, strlen(name) - strlen(".yaml"));
    fleet_input_add(fleet, source);
    return source == NULL ? NULL : model_read(source, key, fleet->arena);
}

void models_read(const struct options *options, struct fleet *fleet)
{
    const char *folder = text_format(fleet->arena, "%s/models", options->base);
    struct names found;
    int error = folder_names(fleet->arena, folder, &found);
    if (error != 0 && error != ENOENT) {
        folder_refused(fleet->problems, folder, error);
        return;
    }
    const struct model **rows = arena_array(fleet->arena, found.count, sizeof *rows);
    size_t count = 0;
    for (size_t i = 0; i < found.count; i++) {
        const char *name = found.at[i];
        if (name[0] == '.' || !text_ends(name, ".yaml"))
            stray_model_tell(fleet, folder, name);
        else if ((rows[count] = model_file_read(fleet, folder, name)) != NULL)
            count++;
    }
    fleet->models = (struct models){rows, count};
}
