/* files.c - reading files and folders with a message for each refusal (room: app). Never
 * judges what a file holds. */
#include "fleet.h"

#include <dirent.h>
#include <errno.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>

/* The first path that the system could not say anything of. A global because who asks for a path
 * asks for yes or no. */
static struct {
    int error;
    char path[1024];
} unlooked;

/* After a look that failed: is nothing there for sure? */
static bool is_absent(const char *path)
{
    if (errno == ENOENT || errno == ENOTDIR || errno == ELOOP || errno == ENAMETOOLONG)
        return true;
    if (unlooked.error == 0) {
        unlooked.error = errno;
        snprintf(unlooked.path, sizeof unlooked.path, "%s", path);
    }
    return false;
}

bool is_unlooked(void)
{
    return unlooked.error != 0;
}

bool unlooked_tell(void)
{
    if (is_unlooked())
        fprintf(stderr, "maydeck: failure: the system cannot tell what %s is: %s\n"
                "  remedy: look at the disk, and at the owner and the rights of what is above it; "
                "then do it\n    again\n", unlooked.path, strerror(unlooked.error));
    return is_unlooked();
}

bool is_folder(const char *path)
{
    struct stat status;
    return stat(path, &status) == 0 ? S_ISDIR(status.st_mode) : !is_absent(path);
}

bool is_plain_file(const char *path)
{
    struct stat status;
    return lstat(path, &status) == 0 ? S_ISREG(status.st_mode) : !is_absent(path);
}

bool is_there(const char *path)
{
    struct stat status;
    return lstat(path, &status) == 0 || !is_absent(path);
}

size_t file_length(const char *path)
{
    struct stat status;
    return stat(path, &status) == 0 && status.st_size > 0 ? (size_t)status.st_size : 0;
}

static int folder_names_read(struct arena *arena, DIR *stream, struct names *names)
{
    for (;;) {
        errno = 0;
        const struct dirent *entry = readdir(stream);
        if (entry == NULL)
            return errno;
        if (text_equal(entry->d_name, ".") || text_equal(entry->d_name, ".."))
            continue;
        names_add(names, entry->d_name, arena);
    }
}

int folder_names(struct arena *arena, const char *folder, struct names *names)
{
    *names = (struct names){0};
    DIR *stream = opendir(folder);
    if (stream == NULL)
        return errno;
    int error = folder_names_read(arena, stream, names);
    closedir(stream);   /* nothing was written: nothing can be lost */
    names_sort(names);
    return error;
}

void folder_refused(struct problems *problems, const char *folder, int error)
{
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                "look at the folder's owner and rights, and at the disk",
                "the folder %s cannot be read: %s", folder, strerror(error));
}

const struct source *file_read(const char *path, struct file_absent absent, struct arena *arena,
                               struct problems *problems)
{
    bool own = absent.severity == SEVERITY_FAILURE;
    struct source *source = NULL;
    switch (source_read(arena, path, YAML_FILE_LIMIT, &source)) {
    case SOURCE_READ:
        return source;
    case SOURCE_ABSENT:
        problem_add(problems, absent.severity, NO_PLACE, absent.remedy, "there is no file %s",
                    path);
        break;
    case SOURCE_NOT_A_FILE:
        problem_add(problems, absent.severity, NO_PLACE, absent.remedy, "%s is not a file", path);
        break;
    case SOURCE_TOO_LARGE:
        problem_add(problems, own ? SEVERITY_FAILURE : SEVERITY_ERROR, NO_PLACE,
                    "keep one boat, base or procedure a file", "%s is larger than 256 KiB", path);
        break;
    case SOURCE_FAILED:
        problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                    "look at the file's owner and rights, and at the disk",
                    "%s cannot be read: %s", path, strerror(errno));
        break;
    }
    return NULL;
}
