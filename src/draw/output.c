/* output.c - bytes to files (room: draw). A file appears whole or not at all, and
 * nothing but a regular file is ever replaced. It does not know what it writes. */
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "draw.h"
#include "temporary.h"

/* The temporary file that stands on disk just now, or NULL. A global because the
 * handler of arena exhaustion is given no context. */
static const char *unfinished;

static void unfinished_remove(void)
{
    if (unfinished != NULL)
        unlink(unfinished);
    unfinished = NULL;
}

/* How to mend what the system refused. */
static const char *refusal_remedy(int error)
{
    switch (error) {
    case ENOSPC:
    case EDQUOT:
        return "make room on the disk, or name another folder";
    case EROFS:
        return "name a folder on a disk that can be written";
    case EACCES:
    case EPERM:
        return "look at the folder's owner and rights, or name another folder";
    case ENOENT:
        return "make the folder that it would stand in, or name another";
    case ENAMETOOLONG:
        return "name it shorter";
    default:
        return "look at the disk, or name another folder";
    }
}

/* Tells that the system refused; the reason is taken from errno. Always false. */
bool system_refused(struct problems *problems, const char *what, const char *path, int error)
{
    problem_add(problems, SEVERITY_FAILURE, (struct place){0}, refusal_remedy(error),
                "%s %s: %s", what, path, strerror(error));
    return false;
}

static bool use_refused(struct problems *problems, const char *path, const char *why,
                        const char *remedy)
{
    problem_add(problems, SEVERITY_USE, (struct place){0}, remedy, "%s %s", path, why);
    return false;
}

/* ---- folders ---- */

/* Makes that one folder unless it is there. */
static bool level_ready(const char *folder, struct problems *problems)
{
    struct stat status;
    int refusal = mkdir(folder, 0777) == 0 ? 0 : errno;

    if (refusal == 0)
        return true;
    if (stat(folder, &status) != 0)
        return system_refused(problems, "cannot make the folder", folder, refusal);
    if (!S_ISDIR(status.st_mode))
        return use_refused(problems, folder, "is not a folder",
                           "name a folder, or one that is yet to be made");
    return true;
}

/* Those above it first: of a/b/c, a and a/b. What was made stays where the next cannot be. */
static bool levels_ready(const char *folder, struct arena *arena, struct problems *problems)
{
    for (const char *slash = strchr(folder + 1, '/'); slash != NULL;
         slash = strchr(slash + 1, '/'))
        if (slash[-1] != '/' &&
            !level_ready(arena_copy(arena, folder, (size_t)(slash - folder)), problems))
            return false;
    return level_ready(folder, problems);
}

bool folder_ready(const char *folder, struct arena *arena, struct problems *problems)
{
    if (text_empty(folder))
        return use_refused(problems, "\"\"", "is not the name of a folder",
                           "name a folder, such as cards, or . for this one");
    if (!levels_ready(folder, arena, problems))
        return false;
    if (access(folder, W_OK | X_OK) != 0)
        return system_refused(problems, "cannot write into the folder", folder, errno);
    return true;
}

/* A device, folder or link in the file's place is left as it is. */
bool target_replaceable(const char *path, struct problems *problems)
{
    struct stat status;

    if (lstat(path, &status) != 0) {
        if (errno == ENOENT)
            return true;
        return system_refused(problems, "cannot look at", path, errno);
    }
    if (S_ISREG(status.st_mode))
        return true;
    problem_add(problems, SEVERITY_FAILURE, (struct place){0},
                "move it away, or name another folder",
                "%s is there already and is not a regular file", path);
    return false;
}

bool bytes_write(int file, struct bytes content)
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

/* ---- temporary files ---- */

#define TEMPORARY_START ".maydeck-"
#define TEMPORARY_END ".tmp"
#define TRIES 1000

/* Keeps the sweeping of other runs off. Where the disk knows no locks nothing is ever
 * swept. False: another run sweeps it just now. */
static bool lock_take(int file)
{
    struct flock lock = {.l_type = F_WRLCK, .l_whence = SEEK_SET};

    return fcntl(file, F_SETLK, &lock) == 0 || (errno != EACCES && errno != EAGAIN);
}

/* Opens a new file; false with errno. The process id only makes names rarely meet: what
 * keeps two runs apart, on two machines too, is O_EXCL. */
bool temporary_open(const char *folder, struct arena *arena, struct temporary *out)
{
    struct stat status;

    for (int i = 0; i < TRIES; i++) {
        out->path = text_format(arena, "%s/" TEMPORARY_START "%ld-%d" TEMPORARY_END, folder,
                                (long)getpid(), i);
        out->file = open(out->path, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
        if (out->file < 0 && errno == EEXIST)
            continue;
        if (out->file < 0)
            return false;
        if (lock_take(out->file) && fstat(out->file, &status) == 0 && status.st_nlink > 0) {
            out->device = status.st_dev;
            out->inode = status.st_ino;
            unfinished = out->path;
            return true;
        }
        (void)close(out->file);   /* swept by another run before it was locked */
    }
    errno = EEXIST;
    return false;
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

/* Only what this run wrote is given the name: under its own may stand another's by now. */
bool temporary_rename(const struct temporary *temporary, const char *path)
{
    struct stat status;

    if (lstat(temporary->path, &status) != 0)
        return false;
    if (status.st_dev != temporary->device || status.st_ino != temporary->inode) {
        unfinished = NULL;
        errno = ENOENT;
        return false;
    }
    return rename(temporary->path, path) == 0;
}

/* Between closing and renaming another run may sweep the file: then it is written again. */
static bool whole_write(const char *folder, const char *path, struct bytes content,
                        struct arena *arena)
{
    struct temporary temporary;

    for (int i = 0; i < 3; i++) {
        if (!temporary_open(folder, arena, &temporary))
            return false;
        if (!file_finish(temporary.file, content))
            return false;
        if (temporary_rename(&temporary, path))
            return true;
        if (errno != ENOENT)
            return false;
    }
    return false;
}

/* A killed run's file is locked by nobody. */
static void stale_remove(const char *path)
{
    struct flock lock = {.l_type = F_WRLCK, .l_whence = SEEK_SET};
    int file = open(path, O_WRONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);

    if (file < 0)
        return;
    if (fcntl(file, F_SETLK, &lock) == 0)
        unlink(path);
    (void)close(file);
}

void folder_sweep(const char *folder, struct arena *arena)
{
    DIR *stream = opendir(folder);

    for (const struct dirent *entry; stream != NULL && (entry = readdir(stream)) != NULL;)
        if (text_begins(entry->d_name, TEMPORARY_START) &&
            text_ends(entry->d_name, TEMPORARY_END))
            stale_remove(text_format(arena, "%s/%s", folder, entry->d_name));
    if (stream != NULL)
        closedir(stream);
}

/* ---- files ---- */

/* Makes the new name last. Some file systems cannot do that for a folder and say
 * EINVAL; there is nothing else to be done on them. */
bool folder_sync(const char *folder)
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
    const char *path;
    int error;

    if (text_empty(name) || strchr(name, '/'))
        return use_refused(problems, name, "is not the name of a file",
                           "name it without a slash");
    path = text_format(arena, "%s/%s", folder, name);
    if (!target_replaceable(path, problems))
        return false;
    arena_on_exhaustion(unfinished_remove);
    if (!whole_write(folder, path, content, arena)) {
        error = errno;
        unfinished_remove();
        return system_refused(problems, "cannot write", path, error);
    }
    unfinished = NULL;
    if (!folder_sync(folder))
        return system_refused(problems, "cannot make sure of the folder", folder, errno);
    return true;
}
