/* fault.c - makes system calls and allocations fail on order (test shim).
 *
 * Loaded into the tested program with LD_PRELOAD. It never touches calls outside
 * the folder it is told, and never allocates memory itself.
 *
 *   FAULT_CALL    open (for writing), look (stat and lstat), read, write, fsync,
 *                 close (of what is open for writing), rename, mkdir, unlink, opendir,
 *                 readdir, or malloc (which stands for malloc, calloc and realloc)
 *   FAULT_AT      which of these calls fails, from 1; 0: none, only count
 *   FAULT_STAYS   if set, all later ones fail too
 *   FAULT_ERRNO   ENOSPC, EROFS, EACCES, EIO, EDQUOT, EINTR or ENOMEM; SHORT: a write
 *                 that takes only half of the bytes
 *   FAULT_FOLDER  only files in this folder count (absolute, without links)
 *   FAULT_SLOW_MS each write takes half of the bytes, and so many milliseconds
 *   FAULT_SPARE   libraries, parted by colons, whose own allocations never fail
 *   FAULT_COUNT   a file that is given the number of calls seen at the end
 */
#define _GNU_SOURCE
#include <dirent.h>
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdarg.h>
#include <stdatomic.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

/* glibc's own names for its allocator: asking dlsym for them would allocate. */
extern void *__libc_malloc(size_t size);
extern void *__libc_calloc(size_t count, size_t size);
extern void *__libc_realloc(void *old, size_t size);

/* The function that this one stands before. */
#define REAL(type, name) (__extension__(type)dlsym(RTLD_NEXT, #name))

/* A preloaded library has no caller to keep state for it. */
static atomic_long seen;
static const char *call, *folder, *spare;
static long fail_at, slow_ms;
static bool stays, cut_short;
static int reason;

struct error_name {
    const char *name;
    int number;
};

static const struct error_name error_names[] = {
    {"ENOSPC", ENOSPC}, {"EROFS", EROFS}, {"EACCES", EACCES}, {"EIO", EIO},
    {"EDQUOT", EDQUOT}, {"EINTR", EINTR}, {"ENOMEM", ENOMEM},
};

static int error_named(const char *name)
{
    for (size_t index = 0; index < sizeof error_names / sizeof *error_names; index++)
        if (name && strcmp(name, error_names[index].name) == 0)
            return error_names[index].number;
    return EIO;
}

__attribute__((constructor)) static void orders_read(void)
{
    const char *at = getenv("FAULT_AT");
    const char *error = getenv("FAULT_ERRNO");

    const char *slow = getenv("FAULT_SLOW_MS");

    slow_ms = slow ? strtol(slow, NULL, 10) : 0;
    fail_at = at ? strtol(at, NULL, 10) : 0;
    stays = getenv("FAULT_STAYS") != NULL;
    cut_short = error && strcmp(error, "SHORT") == 0;
    reason = error_named(error);
    folder = getenv("FAULT_FOLDER");
    spare = getenv("FAULT_SPARE");
    call = getenv("FAULT_CALL");
}

__attribute__((destructor)) static void count_tell(void)
{
    const char *file = getenv("FAULT_COUNT");

    call = NULL;
    FILE *out = file ? fopen(file, "w") : NULL;
    if (out) {
        fprintf(out, "%ld\n", atomic_load(&seen));
        fclose(out);
    }
}

static bool ordered(const char *name)
{
    return call && strcmp(call, name) == 0;
}

/* Counts a call that was ordered; true if this one is to fail. */
static bool due(void)
{
    long number = atomic_fetch_add(&seen, 1) + 1;

    return fail_at > 0 && (stays ? number >= fail_at : number == fail_at);
}

/* ---- files ---- */

static bool begins_with_folder(const char *path)
{
    size_t length = folder ? strlen(folder) : 0;

    return length && strncmp(path, folder, length) == 0 &&
           (path[length] == '/' || path[length] == '\0');
}

static bool descriptor_inside(int descriptor)
{
    char link[64], path[PATH_MAX];

    snprintf(link, sizeof link, "/proc/self/fd/%d", descriptor);
    ssize_t length = readlink(link, path, sizeof path - 1);
    if (length < 0)
        return false;
    path[length] = '\0';
    return begins_with_folder(path);
}

/* `path` as seen from `at`, a descriptor of a folder or AT_FDCWD. */
static bool path_inside(int at, const char *path)
{
    char whole[PATH_MAX];

    if (path[0] == '/')
        return begins_with_folder(path);
    if (at != AT_FDCWD)
        return descriptor_inside(at);
    if (!getcwd(whole, sizeof whole))
        return false;
    size_t length = strlen(whole);
    if (length + 1 + strlen(path) >= sizeof whole)
        return false;
    whole[length] = '/';
    memcpy(whole + length + 1, path, strlen(path) + 1);
    return begins_with_folder(whole);
}

static bool path_fails(const char *name, int at, const char *path)
{
    if (!ordered(name) || !path_inside(at, path) || !due())
        return false;
    errno = reason;
    return true;
}

static bool descriptor_fails(const char *name, int descriptor)
{
    if (!ordered(name) || !descriptor_inside(descriptor) || !due())
        return false;
    errno = reason;
    return true;
}

static bool open_fails(int at, const char *path, int flags)
{
    return (flags & O_ACCMODE) != O_RDONLY && path_fails("open", at, path);
}

static mode_t mode_of(int flags, va_list arguments)
{
    return flags & (O_CREAT | O_TMPFILE) ? (mode_t)va_arg(arguments, unsigned) : 0;
}

int open(const char *path, int flags, ...)
{
    va_list arguments;

    va_start(arguments, flags);
    mode_t mode = mode_of(flags, arguments);
    va_end(arguments);
    if (open_fails(AT_FDCWD, path, flags))
        return -1;
    return REAL(int (*)(const char *, int, ...), open)(path, flags, mode);
}

int open64(const char *path, int flags, ...)
{
    va_list arguments;

    va_start(arguments, flags);
    mode_t mode = mode_of(flags, arguments);
    va_end(arguments);
    if (open_fails(AT_FDCWD, path, flags))
        return -1;
    return REAL(int (*)(const char *, int, ...), open64)(path, flags, mode);
}

int openat(int at, const char *path, int flags, ...)
{
    va_list arguments;

    va_start(arguments, flags);
    mode_t mode = mode_of(flags, arguments);
    va_end(arguments);
    if (open_fails(at, path, flags))
        return -1;
    return REAL(int (*)(int, const char *, int, ...), openat)(at, path, flags, mode);
}

int mkstemp(char *pattern)
{
    if (path_fails("open", AT_FDCWD, pattern))
        return -1;
    return REAL(int (*)(char *), mkstemp)(pattern);
}

FILE *fopen(const char *path, const char *mode)
{
    if (strpbrk(mode, "wa+") && path_fails("open", AT_FDCWD, path))
        return NULL;
    return REAL(FILE *(*)(const char *, const char *), fopen)(path, mode);
}

ssize_t read(int descriptor, void *bytes, size_t length)
{
    if (descriptor_fails("read", descriptor))
        return -1;
    return REAL(ssize_t (*)(int, void *, size_t), read)(descriptor, bytes, length);
}

int stat(const char *path, struct stat *out)
{
    if (path_fails("look", AT_FDCWD, path))
        return -1;
    return REAL(int (*)(const char *, struct stat *), stat)(path, out);
}

int lstat(const char *path, struct stat *out)
{
    if (path_fails("look", AT_FDCWD, path))
        return -1;
    return REAL(int (*)(const char *, struct stat *), lstat)(path, out);
}

DIR *opendir(const char *path)
{
    if (path_fails("opendir", AT_FDCWD, path))
        return NULL;
    return REAL(DIR *(*)(const char *), opendir)(path);
}

struct dirent *readdir(DIR *stream)
{
    if (descriptor_fails("readdir", dirfd(stream)))
        return NULL;
    return REAL(struct dirent *(*)(DIR *), readdir)(stream);
}

ssize_t write(int descriptor, const void *bytes, size_t length)
{
    ssize_t (*real)(int, const void *, size_t) =
        REAL(ssize_t (*)(int, const void *, size_t), write);

    if (slow_ms > 0 && descriptor_inside(descriptor)) {
        struct timespec pause = {slow_ms / 1000, slow_ms % 1000 * 1000000};
        nanosleep(&pause, NULL);
        return real(descriptor, bytes, (length + 1) / 2);
    }
    if (!descriptor_fails("write", descriptor))
        return real(descriptor, bytes, length);
    return cut_short ? real(descriptor, bytes, (length + 1) / 2) : -1;
}

int fsync(int descriptor)
{
    if (descriptor_fails("fsync", descriptor))
        return -1;
    return REAL(int (*)(int), fsync)(descriptor);
}

int fdatasync(int descriptor)
{
    if (descriptor_fails("fsync", descriptor))
        return -1;
    return REAL(int (*)(int), fdatasync)(descriptor);
}

/* As Linux does, a close that fails has closed. What was only read cannot be lost by it. */
int close(int descriptor)
{
    int flags = call ? fcntl(descriptor, F_GETFL) : -1;
    bool written = flags >= 0 && (flags & O_ACCMODE) != O_RDONLY;
    bool fails = written && descriptor_fails("close", descriptor);
    int result = REAL(int (*)(int), close)(descriptor);

    if (!fails)
        return result;
    errno = reason;
    return -1;
}

int rename(const char *from, const char *to)
{
    if (path_fails("rename", AT_FDCWD, to))
        return -1;
    return REAL(int (*)(const char *, const char *), rename)(from, to);
}

int renameat(int at_from, const char *from, int at_to, const char *to)
{
    if (path_fails("rename", at_to, to))
        return -1;
    return REAL(int (*)(int, const char *, int, const char *), renameat)(at_from, from, at_to, to);
}

int mkdir(const char *path, mode_t mode)
{
    if (path_fails("mkdir", AT_FDCWD, path))
        return -1;
    return REAL(int (*)(const char *, mode_t), mkdir)(path, mode);
}

int unlink(const char *path)
{
    if (path_fails("unlink", AT_FDCWD, path))
        return -1;
    return REAL(int (*)(const char *), unlink)(path);
}

/* ---- memory ---- */

/* Is the library that holds `address` named in FAULT_SPARE? */
static bool spared(const void *address)
{
    Dl_info info;

    if (!spare || !dladdr(address, &info) || !info.dli_fname)
        return false;
    for (const char *name = spare; *name;) {
        size_t length = strcspn(name, ":");
        char word[64];
        if (length > 0 && length < sizeof word) {
            memcpy(word, name, length);
            word[length] = '\0';
            if (strstr(info.dli_fname, word))
                return true;
        }
        name += length + (name[length] == ':');
    }
    return false;
}

static bool memory_fails(const void *caller)
{
    if (!ordered("malloc") || spared(caller) || !due())
        return false;
    errno = ENOMEM;
    return true;
}

void *malloc(size_t size)
{
    return memory_fails(__builtin_return_address(0)) ? NULL : __libc_malloc(size);
}

void *calloc(size_t count, size_t size)
{
    return memory_fails(__builtin_return_address(0)) ? NULL : __libc_calloc(count, size);
}

void *realloc(void *old, size_t size)
{
    return memory_fails(__builtin_return_address(0)) ? NULL : __libc_realloc(old, size);
}
