/* output.c - bytes to files (room: draw). A file appears whole or not at all, and
 * nothing but a regular file is ever replaced. It does not know what it writes. */
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "drafts.h"
#include "temporary.h"

/* The temporary file that stands on disk just now, or NULL. A global because the
 * handler of arena exhaustion is given no context. */
static const char *unfinished;

void temporary_discard(void)
{
    if (unfinished != NULL)
        unlink(unfinished);
    unfinished = NULL;
}

void temporary_keep(void)
{
    unfinished = NULL;
}

static void temporaries_remove(void)
{
    temporary_discard();
    guarded_remove();
}

void temporaries_watch(void)
{
    arena_on_exhaustion(temporaries_remove);
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
#define TRIES 100

/* Keeps the sweeping of other runs off. Where the disk knows no locks nothing is ever
 * swept. False: another run sweeps it just now. */
static bool lock_take(int file)
{
    struct flock lock = {.l_type = F_WRLCK, .l_whence = SEEK_SET};

    return fcntl(file, F_SETLK, &lock) == 0 || (errno != EACCES && errno != EAGAIN);
}

bool folder_is_temporary(const char *name)
{
    return text_begins(name, TEMPORARY_START) && text_ends(name, TEMPORARY_END);
}

enum taking { TAKING_GOOD, TAKING_SWEPT, TAKING_REFUSED };

/* Makes the file that was opened this run's own. What is refused, with errno, leaves nothing; nor
 * does what another run is about to sweep. */
static enum taking temporary_take(struct temporary *out)
{
    struct stat status;

    if (!lock_take(out->file)) {
        unlink(out->path);
        return TAKING_SWEPT;
    }
    if (fstat(out->file, &status) != 0) {
        int error = errno;
        unlink(out->path);
        errno = error;
        return TAKING_REFUSED;
    }
    if (status.st_nlink == 0)
        return TAKING_SWEPT;
    out->device = status.st_dev;
    out->inode = status.st_ino;
    unfinished = out->path;
    return TAKING_GOOD;
}

/* Opens a new file; false with errno. Nobody can have planted something under its name; what keeps
 * two runs apart, on two machines too, is O_EXCL. */
bool temporary_open(const char *folder, struct arena *arena, struct temporary *out)
{
    char name[UNFORETOLD_TEXT];

    for (int i = 0; i < TRIES; i++) {
        if (!unforetold_make(name))
            return false;
        out->path = text_format(arena, "%s/" TEMPORARY_START "%s" TEMPORARY_END, folder, name);
        out->file = open(out->path, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
        if (out->file < 0 && errno == EEXIST)
            continue;
        if (out->file < 0)
            return false;
        enum taking taking = temporary_take(out);
        if (taking == TAKING_GOOD)
            return true;
        int error = errno;
        (void)close(out->file);
        errno = error;
        if (taking == TAKING_REFUSED)
            return false;
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

/* ---- files ---- */

bool file_name_sound(const char *name, struct problems *problems)
{
    return (!text_empty(name) && strchr(name, '/') == NULL) ||
           use_refused(problems, name, "is not the name of a file", "name it without a slash");
}

bool file_put(const char *folder, const char *name, struct bytes content, struct arena *arena,
              struct problems *problems)
{
    const char *path;
    int error;

    if (!file_name_sound(name, problems))
        return false;
    path = text_format(arena, "%s/%s", folder, name);
    if (!target_replaceable(path, problems))
        return false;
    temporaries_watch();
    if (!whole_write(folder, path, content, arena)) {
        error = errno;
        temporary_discard();
        return system_refused(problems, "cannot write", path, error);
    }
    temporary_keep();
    if (!folder_sync(folder))
        return system_refused(problems, "cannot make sure of the folder", folder, errno);
    return true;
}
