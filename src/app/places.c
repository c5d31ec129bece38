/* places.c - where the program finds its procedures and faces: beside itself in
 * a clone, or where it was installed (room: app). */
#include "fleet.h"

#include <string.h>
#include <unistd.h>

#define PARENTS 4

/* The folder the program stands in, without a last slash; NULL if the system
 * does not tell. */
static char *own_folder(struct arena *arena)
{
    char path[4096];
    ssize_t length = readlink("/proc/self/exe", path, sizeof path - 1);
    if (length <= 0)
        return NULL;
    path[length] = '\0';
    char *slash = strrchr(path, '/');
    return slash == NULL ? NULL : arena_copy(arena, path, (size_t)(slash - path));
}

static const char *parent_of(struct arena *arena, const char *folder)
{
    const char *slash = strrchr(folder, '/');
    return slash == NULL || slash == folder ? NULL
                                            : arena_copy(arena, folder, (size_t)(slash - folder));
}

/* Messages name files as short as they can be: below the working folder without
 * its path. */
static const char *seen_from_here(struct arena *arena, const char *path)
{
    char here[4096];
    if (getcwd(here, sizeof here) == NULL)
        return path;
    const char *inside = text_format(arena, "%s/", here);
    return text_begins(path, inside) ? path + strlen(inside) : path;
}

/* Either of the two marks a clone: where one was lost, the program must miss it there and
 * not go on with what is installed elsewhere. */
static bool knowledge_in(struct arena *arena, const char *folder)
{
    return is_there(text_format(arena, "%s/procedures/manifest.txt", folder)) ||
           is_there(text_format(arena, "%s/procedures/sources.yaml", folder));
}

/* In a clone the program stands in out/ or deeper; out/fonts holds the faces. */
static const char *in_clone(struct arena *arena, const char *what)
{
    const char *folder = own_folder(arena);
    const char *inside = text_equal(what, "fonts") ? "out/fonts" : what;
    for (int i = 0; folder != NULL && i <= PARENTS; i++) {
        if (knowledge_in(arena, folder) && is_there(text_format(arena, "%s/%s", folder, inside)))
            return seen_from_here(arena, text_format(arena, "%s/%s", folder, inside));
        folder = parent_of(arena, folder);
    }
    return NULL;
}

const char *program_folder(struct arena *arena, const char *what)
{
    const char *clone = in_clone(arena, what);
    return clone != NULL ? clone : text_format(arena, "%s/%s", MAYDECK_DATA_FOLDER, what);
}
