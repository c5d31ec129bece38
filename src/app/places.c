/* places.c - where the program finds its procedures and faces (room: app): in the folder that
 * MAYDECK_DATA names; beside itself, ../share/maydeck, where it was installed or unpacked; in a
 * clone; and last where it was built to be installed. All of them come from one folder: a set
 * is never made of the procedures of one and the faces of another. */
#define _XOPEN_SOURCE 700    /* realpath */
#include "fleet.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <sys/auxv.h>
#include <unistd.h>

#define PARENTS 4
#define BESIDE "share/maydeck"

/* Who asks for a folder with a variable that is set and empty asks for none. */
static const char *named_folder(void)
{
    const char *named = getenv("MAYDECK_DATA");
    return named != NULL && *named != '\0' ? named : NULL;
}

/* The path of the program, links followed; NULL if the system does not tell. Where there is no
 * /proc, as in a bare root, it is known by what it was started as. */
static const char *own_path(struct arena *arena)
{
    char path[PATH_MAX];
    ssize_t length = readlink("/proc/self/exe", path, sizeof path - 1);
    if (length > 0)
        return arena_copy(arena, path, (size_t)length);
    const char *started = (const char *)getauxval(AT_EXECFN);
    return started != NULL && realpath(started, path) != NULL
               ? arena_copy(arena, path, strlen(path)) : NULL;
}

/* The folder a path lies in, without a last slash: "" for what lies in the root; NULL above it. */
static const char *parent_of(struct arena *arena, const char *path)
{
    const char *slash = strrchr(path, '/');
    return slash == NULL ? NULL : arena_copy(arena, path, (size_t)(slash - path));
}

static const char *own_folder(struct arena *arena)
{
    const char *path = own_path(arena);
    return path == NULL ? NULL : parent_of(arena, path);
}

/* Messages name files as short as they can be: below the working folder without
 * its path. */
static const char *seen_from_here(struct arena *arena, const char *path)
{
    char here[PATH_MAX];
    if (getcwd(here, sizeof here) == NULL)
        return path;
    const char *inside = text_format(arena, "%s/", here);
    return text_begins(path, inside) ? path + strlen(inside) : path;
}

/* The folder that is installed or unpacked with the program, whether it is there or not. */
static const char *folder_beside(struct arena *arena)
{
    const char *folder = own_folder(arena);
    const char *above = folder == NULL ? NULL : parent_of(arena, folder);
    return above == NULL ? NULL : text_format(arena, "%s/" BESIDE, above);
}

/* Either of the two marks a clone: where one was lost, the program must miss it there and
 * not go on with what is installed elsewhere. */
static bool knowledge_in(struct arena *arena, const char *folder)
{
    return is_there(text_format(arena, "%s/procedures/manifest.txt", folder)) ||
           is_there(text_format(arena, "%s/procedures/sources.yaml", folder));
}

/* In a clone the program stands in out/ or deeper. NULL: it stands in none. */
static const char *own_clone(struct arena *arena)
{
    const char *folder = own_folder(arena);
    for (int i = 0; folder != NULL && i <= PARENTS; i++) {
        if (knowledge_in(arena, folder))
            return folder;
        folder = parent_of(arena, folder);
    }
    return NULL;
}

const char *program_folder(struct arena *arena, const char *what)
{
    const char *beside = folder_beside(arena);
    const char *folder = MAYDECK_DATA_FOLDER, *clone;
    if (named_folder() != NULL)
        folder = named_folder();
    else if (beside != NULL && is_there(beside))
        folder = beside;
    else if ((clone = own_clone(arena)) != NULL)    /* whose out/fonts holds the faces */
        folder = text_equal(what, "fonts") ? text_format(arena, "%s/out", clone) : clone;
    return seen_from_here(arena, text_format(arena, "%s/%s", folder, what));
}

const char *program_folder_remedy(struct arena *arena)
{
    const char *beside = folder_beside(arena);
    if (named_folder() != NULL)
        return text_format(arena, "MAYDECK_DATA names the folder %s, so no other was looked in: "
                           "name the one that holds procedures and fonts, or unset it",
                           named_folder());
    const char *near = beside == NULL ? "" : text_format(arena, "%s, in a clone that the program "
                                                         "stands in, and in ", beside);
    return text_format(arena, "looked in %s" MAYDECK_DATA_FOLDER ": install the program again, or "
                       "name with MAYDECK_DATA the folder that holds procedures and fonts", near);
}
