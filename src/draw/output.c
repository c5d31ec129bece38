/* output.c - bytes to files (room: draw). A file appears whole or not at all, and
 * nothing but a regular file is ever replaced. It does not know what it writes. */
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "draw.h"

/* The temporary file that stands on disk just now, or NULL. A global because the
 * handler of arena exhaustion is given no context. */
static const char *unfinished;

static void unfinished_remove(void)
{
    if (unfinished != NULL)
        unlink(unfinished);
    unfinished = NULL;
}

/* Tells that the system refused; the reason is taken from errno. Always false. */
static bool system_refused(struct problems *problems, const char *what, const char *path,
                           int error)
{
    problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL, "%s %s: %s", what, path,
                strerror(error));
    return false;
}

static bool use_refused(struct problems *problems, const char *path, const char *why)
{
    problem_add(problems, SEVERITY_USE, (struct place){0}, NULL, "%s %s", path, why);
    return false;
}

bool folder_ready(const char *folder, struct arena *arena, struct problems *problems)
{
    struct stat status;

    (void)arena;
    if (mkdir(folder, 0777) == 0)
        return true;
    if (errno != EEXIST)
        return system_refused(problems, "cannot make the folder", folder, errno);
    if (stat(folder, &status) != 0)
        return system_refused(problems, "cannot look at", folder, errno);
    if (!S_ISDIR(status.st_mode))
        return use_refused(problems, folder, "is not a folder");
    return true;
}

/* A device, folder or link in the file's place is left as it is. */
static bool target_replaceable(const char *path, struct problems *problems)
{
    struct stat status;

    if (lstat(path, &status) != 0) {
        if (errno == ENOENT)
            return true;
        return system_refused(problems, "cannot look at", path, errno);
    }
    if (!S_ISREG(status.st_mode))
        return use_refused(problems, path, "is there already and is not a regular file");
    return true;
}

static bool bytes_write(int file, struct bytes content)
{
    size_t done = 0;

    while (done < content.length) {
        ssize_t count = write(file, content.at + done, content.length - done);
        if (count < 0 && errno == EINTR)
            continue;
        if (count <= 0) {
            if (count == 0)
                errno = EIO;
            return false;
        }
        done += (size_t)count;
    }
    return true;
}

/* Closed in any case, exactly once; the first error is the one that is told. */
static bool file_finish(int file, struct bytes content)
{
    bool good = bytes_write(file, content) && fsync(file) == 0;
    int error = errno;

    if (close(file) != 0 && good)
        return false;
    errno = error;
    return good;
}

/* What a killed run left behind under the name is in the way of nobody. */
static bool temporary_write(const char *path, struct bytes content)
{
    int file;

    if (unlink(path) != 0 && errno != ENOENT)
        return false;
    file = open(path, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
    if (file < 0)
        return false;
    unfinished = path;
    return file_finish(file, content);
}

/* Makes the new name last. Some file systems cannot do that for a folder and say
 * EINVAL; there is nothing else to be done on them. */
static bool folder_sync(const char *folder)
{
    int file = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    bool good;
    int error;

    if (file < 0)
        return false;
    good = fsync(file) == 0 || errno == EINVAL;
    error = errno;
    if (close(file) != 0 && good)
        return false;
    errno = error;
    return good;
}

bool file_put(const char *folder, const char *name, struct bytes content, struct arena *arena,
              struct problems *problems)
{
    const char *path, *temporary;
    int error;

    if (text_empty(name) || strchr(name, '/'))
        return use_refused(problems, name, "is not the name of a file");
    path = text_format(arena, "%s/%s", folder, name);
    temporary = text_format(arena, "%s/.%s.tmp", folder, name);
    if (!target_replaceable(path, problems))
        return false;
    arena_on_exhaustion(unfinished_remove);
    if (!temporary_write(temporary, content) || rename(temporary, path) != 0) {
        error = errno;
        unfinished_remove();
        return system_refused(problems, "cannot write", path, error);
    }
    unfinished = NULL;
    if (!folder_sync(folder))
        return system_refused(problems, "cannot make sure of the folder", folder, errno);
    return true;
}
