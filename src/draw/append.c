/* append.c - lines at the end of a file that several runs write into (room: draw). A run has the
 * file for itself while it reads and writes; what a killed run left unfinished is for the reader
 * of the lines to find. */
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "append.h"
#include "text.h"

/* Bytes of the mark that may stand before the text of a file. */
#define MARK_LENGTH 3
#define OPENING_TRIES 20

static const char *append_remedy(int error)
{
    switch (error) {
    case ENOSPC:
    case EDQUOT:
        return "make room on the disk";
    case EROFS:
        return "put its folder on a disk that can be written";
    case EACCES:
    case EPERM:
        return "look at the owner and the rights of the file and its folder";
    case ENOLCK:
    case EOPNOTSUPP:
        return "put its folder on a disk that knows locks: without them two runs at once "
               "would\nspoil the file";
    default:
        return "look at the disk, and at the owner and the rights of the file";
    }
}

/* Always false. */
static bool append_refused(struct problems *problems, const char *what, const char *path, int error)
{
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE, append_remedy(error), "cannot %s %s: %s",
                what, path, strerror(error));
    return false;
}

/* ---- beginning ---- */

static bool lock_wait(int file)
{
    struct flock lock = {.l_type = F_WRLCK, .l_whence = SEEK_SET};

    while (fcntl(file, F_SETLKW, &lock) != 0)
        if (errno != EINTR)
            return false;
    return true;
}

/* Does the path still lead to the file that is open? An editor may have put another in its
 * place while this run waited. */
static bool same_file(int file, const char *path)
{
    struct stat open_one, named;

    return fstat(file, &open_one) == 0 && stat(path, &named) == 0 &&
           open_one.st_dev == named.st_dev && open_one.st_ino == named.st_ino;
}

static bool regular(int file)
{
    struct stat status;

    return fstat(file, &status) == 0 && S_ISREG(status.st_mode);
}

/* The file, locked; -1 with errno. */
static int locked_open(const char *path, enum append_where where)
{
    int flags = O_RDWR | O_APPEND | O_CLOEXEC | O_NONBLOCK | (where == APPEND_MAKE ? O_CREAT : 0);

    for (int i = 0; i < OPENING_TRIES; i++) {
        int file = open(path, flags, 0666);
        int error;
        if (file < 0)
            return -1;
        if (!regular(file)) {
            (void)close(file);
            errno = EINVAL;
            return -1;
        }
        if (lock_wait(file) && same_file(file, path))
            return file;
        error = errno;
        (void)close(file);
        if (error == ENOLCK || error == EOPNOTSUPP || error == EIO) {
            errno = error;
            return -1;
        }
    }
    errno = EBUSY;
    return -1;
}

/* NULL with errno. */
static const struct source *whole_read(int file, const char *path, struct arena *arena)
{
    struct stat status;
    size_t done = 0;

    if (fstat(file, &status) != 0)
        return NULL;
    if (status.st_size < 0 || (uint64_t)status.st_size > APPEND_LIMIT) {
        errno = EFBIG;
        return NULL;
    }
    char *bytes = arena_alloc(arena, (size_t)status.st_size + 1);
    while (done < (size_t)status.st_size) {
        ssize_t count = pread(file, bytes + done, (size_t)status.st_size - done, (off_t)done);
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return NULL;
        if (count == 0)
            break;
        done += (size_t)count;
    }
    return source_from(arena, path, bytes, done);
}

enum append_begun append_begin(const char *path, enum append_where where, struct arena *arena,
                               struct problems *problems, struct appending *out)
{
    *out = (struct appending){.path = path, .arena = arena, .file = locked_open(path, where)};
    if (out->file < 0 && errno == ENOENT && where == APPEND_IF_THERE)
        return APPEND_ABSENT;
    if (out->file < 0) {
        append_refused(problems, "write into", path, errno);
        return APPEND_FAILED;
    }
    out->source = whole_read(out->file, path, arena);
    if (out->source != NULL) {
        out->length = out->source->length + (out->source->marked ? MARK_LENGTH : 0);
        return APPEND_BEGUN;
    }
    append_refused(problems, "read", path, errno);
    (void)close(out->file);
    return APPEND_FAILED;
}

size_t append_length(const struct appending *appending)
{
    return appending->length;
}

/* ---- ending ---- */

/* Of one call where the disk takes it so: then no reader ever sees a part. */
static bool more_write(int file, struct bytes more)
{
    size_t done = 0;

    while (done < more.length) {
        ssize_t count = write(file, more.at + done, more.length - done);
        if (count < 0 && errno == EINTR)
            continue;
        if (count == 0)
            errno = EIO;
        if (count <= 0)
            return false;
        done += (size_t)count;
    }
    return true;
}

/* Makes the name of a file that may be new last. */
static bool folder_of_sync(const struct appending *appending)
{
    const char *slash = strrchr(appending->path, '/');
    const char *folder = slash == NULL ? "."
                                       : arena_copy(appending->arena, appending->path,
                                                    (size_t)(slash - appending->path) + 1);
    int file = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (file < 0)
        return false;
    bool good = fsync(file) == 0 || errno == EINVAL;
    int error = errno;
    (void)close(file);
    errno = error;
    return good;
}

static bool lines_write(const struct appending *appending, size_t kept, struct bytes more)
{
    int file = appending->file;
    if (kept < append_length(appending) && ftruncate(file, (off_t)kept) != 0)
        return false;
    if (more_write(file, more) && fsync(file) == 0)
        return true;
    int error = errno;
    if (ftruncate(file, (off_t)kept) == 0)
        (void)fsync(file);
    errno = error;
    return false;
}

/* False with errno. */
static bool lines_put(struct appending *appending, size_t kept, struct bytes more)
{
    bool touched = kept < append_length(appending) || more.length > 0;
    bool made = append_length(appending) == 0;

    if (touched && !lines_write(appending, kept, more))
        return false;
    appending->length = touched ? kept + more.length : appending->length;
    return !touched || !made || folder_of_sync(appending);
}

bool append_more(struct appending *appending, size_t kept, struct bytes more,
                 struct problems *problems)
{
    return lines_put(appending, kept, more) ||
           append_refused(problems, "write into", appending->path, errno);
}

bool append_end(struct appending *appending, size_t kept, struct bytes more,
                struct problems *problems)
{
    bool good = lines_put(appending, kept, more);
    int error = errno;

    if (close(appending->file) != 0 && good) {
        good = false;
        error = errno;
    }
    appending->file = -1;
    return good || append_refused(problems, "write into", appending->path, error);
}
