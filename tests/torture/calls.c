/* calls.c - makes calls fail on order, counts them (test shim). Loaded into the tested program
 * with LD_PRELOAD; it stands before all calls that the program makes itself, reading and looking
 * too, and those to standard output and error. What the C library does within is not seen, but
 * for these two streams. */
#define _GNU_SOURCE
#include <dirent.h>
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/file.h>
#include <sys/mman.h>
#include <sys/random.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "calls.h"

extern void *__libc_malloc(size_t size);
extern void *__libc_calloc(size_t count, size_t size);
extern void *__libc_realloc(void *old, size_t size);

/* What the program finds before these where bounds are checked. */
ssize_t __read_chk(int file, void *out, size_t length, size_t room);
int __poll_chk(struct pollfd *polled, nfds_t count, int wait_ms, size_t room);

static struct torture_page *page;
static enum caller caller;

/* The function that this one stands before. */
#define REAL(type, name) (__extension__(type) dlsym(RTLD_NEXT, #name))

/* Counts; false: this one goes on as ever. */
static bool due(enum call call)
{
    long number = atomic_fetch_add(&page->seen[caller][call], 1) + 1;
    const struct fault_order *order = &page->order;

    return order->at > 0 && order->call == call && order->caller == caller &&
           (order->stays ? number >= order->at : number == order->at);
}

/* The error of this call, left in errno as well; 0: none. */
static int fault(enum call call)
{
    if (page == NULL)
        return 0;
    if (call != CALL_malloc && due(CALL_any)) {
        atomic_fetch_add(&page->struck, 1);
        raise(page->order.error == FAULT_KILL ? SIGKILL : SIGTERM);
    }
    if (!due(call))
        return 0;
    atomic_fetch_add(&page->struck, 1);
    errno = page->order.error;
    return page->order.error;
}

/* ---- files ---- */

static int open_fault(int flags)
{
    return fault((flags & O_ACCMODE) == O_RDONLY ? CALL_open : CALL_create);
}

int open(const char *path, int flags, ...)
{
    va_list arguments;

    va_start(arguments, flags);
    mode_t mode = flags & O_CREAT ? (mode_t)va_arg(arguments, unsigned) : 0;
    va_end(arguments);
    return open_fault(flags) ? -1 : REAL(int (*)(const char *, int, ...), open)(path, flags, mode);
}

/* Of SHORT one byte. */
ssize_t read(int file, void *out, size_t length)
{
    int error = fault(CALL_read);

    if (error != 0 && error != FAULT_SHORT)
        return -1;
    return REAL(ssize_t (*)(int, void *, size_t), read)(file, out, error && length ? 1 : length);
}

ssize_t __read_chk(int file, void *out, size_t length, size_t room)
{
    return read(file, out, length < room ? length : room);
}

ssize_t pread(int file, void *out, size_t length, off_t from)
{
    int error = fault(CALL_pread);

    if (error != 0 && error != FAULT_SHORT)
        return -1;
    return REAL(ssize_t (*)(int, void *, size_t, off_t), pread)(file, out,
                                                                error && length ? 1 : length, from);
}

static ssize_t write_as(enum call call, int file, const void *bytes, size_t length)
{
    int error = fault(call);
    long slow_ms = page != NULL && call == CALL_write ? page->order.slow_ms : 0;

    if (error != 0 && error != FAULT_SHORT)
        return -1;
    if (slow_ms > 0) {
        struct timespec pause = {slow_ms / 1000, slow_ms % 1000 * 1000000};
        nanosleep(&pause, NULL);
    }
    if (error != 0 || slow_ms > 0)
        length = (length + 1) / 2;
    return REAL(ssize_t (*)(int, const void *, size_t), write)(file, bytes, length);
}

ssize_t write(int file, const void *bytes, size_t length)
{
    return write_as(file == STDOUT_FILENO   ? CALL_write_out
                    : file == STDERR_FILENO ? CALL_write_err
                                            : CALL_write,
                    file, bytes, length);
}

int fsync(int file)
{
    return fault(CALL_fsync) ? -1 : REAL(int (*)(int), fsync)(file);
}

/* As Linux does, a close that fails has closed. */
int close(int file)
{
    int error = fault(CALL_close);
    int result = REAL(int (*)(int), close)(file);

    if (error == 0)
        return result;
    errno = error;
    return -1;
}

int rename(const char *from, const char *to)
{
    return fault(CALL_rename) ? -1 : REAL(int (*)(const char *, const char *), rename)(from, to);
}

int mkdir(const char *path, mode_t mode)
{
    return fault(CALL_mkdir) ? -1 : REAL(int (*)(const char *, mode_t), mkdir)(path, mode);
}

int unlink(const char *path)
{
    return fault(CALL_unlink) ? -1 : REAL(int (*)(const char *), unlink)(path);
}

int ftruncate(int file, off_t length)
{
    return fault(CALL_ftruncate) ? -1 : REAL(int (*)(int, off_t), ftruncate)(file, length);
}

int fchmod(int file, mode_t mode)
{
    return fault(CALL_fchmod) ? -1 : REAL(int (*)(int, mode_t), fchmod)(file, mode);
}

/* ---- looking ---- */

DIR *opendir(const char *path)
{
    return fault(CALL_opendir) ? NULL : REAL(DIR *(*)(const char *), opendir)(path);
}

struct dirent *readdir(DIR *stream)
{
    return fault(CALL_readdir) ? NULL : REAL(struct dirent *(*)(DIR *), readdir)(stream);
}

int stat(const char *path, struct stat *out)
{
    return fault(CALL_stat) ? -1 : REAL(int (*)(const char *, struct stat *), stat)(path, out);
}

int lstat(const char *path, struct stat *out)
{
    return fault(CALL_lstat) ? -1 : REAL(int (*)(const char *, struct stat *), lstat)(path, out);
}

int fstat(int file, struct stat *out)
{
    return fault(CALL_fstat) ? -1 : REAL(int (*)(int, struct stat *), fstat)(file, out);
}

int access(const char *path, int how)
{
    return fault(CALL_access) ? -1 : REAL(int (*)(const char *, int), access)(path, how);
}

ssize_t readlink(const char *path, char *out, size_t room)
{
    return fault(CALL_readlink)
               ? -1
               : REAL(ssize_t (*)(const char *, char *, size_t), readlink)(path, out, room);
}

char *getcwd(char *out, size_t room)
{
    return fault(CALL_getcwd) ? NULL : REAL(char *(*)(char *, size_t), getcwd)(out, room);
}

/* ---- locks, processes ---- */

int flock(int file, int how)
{
    return fault(CALL_flock) ? -1 : REAL(int (*)(int, int), flock)(file, how);
}

/* The program asks for locks alone by it. */
int fcntl(int file, int what, ...)
{
    va_list arguments;

    va_start(arguments, what);
    void *more = va_arg(arguments, void *);
    va_end(arguments);
    if ((what == F_SETLK || what == F_SETLKW) && fault(CALL_lock))
        return -1;
    return REAL(int (*)(int, int, ...), fcntl)(file, what, more);
}

int pipe(int pair[2])
{
    return fault(CALL_pipe) ? -1 : REAL(int (*)(int *), pipe)(pair);
}

pid_t fork(void)
{
    if (fault(CALL_fork))
        return -1;
    pid_t pid = REAL(pid_t (*)(void), fork)();
    if (pid == 0)
        caller = CALLER_WORKER;
    return pid;
}

pid_t waitpid(pid_t pid, int *status, int how)
{
    return fault(CALL_waitpid) ? -1 : REAL(pid_t (*)(pid_t, int *, int), waitpid)(pid, status, how);
}

int poll(struct pollfd *polled, nfds_t count, int wait_ms)
{
    return fault(CALL_poll)
               ? -1
               : REAL(int (*)(struct pollfd *, nfds_t, int), poll)(polled, count, wait_ms);
}

int __poll_chk(struct pollfd *polled, nfds_t count, int wait_ms, size_t room)
{
    return poll(polled, room / sizeof *polled < count ? room / sizeof *polled : count, wait_ms);
}

ssize_t getrandom(void *out, size_t length, unsigned flags)
{
    return fault(CALL_getrandom)
               ? -1
               : REAL(ssize_t (*)(void *, size_t, unsigned), getrandom)(out, length, flags);
}

/* ---- memory ---- */

void *malloc(size_t size)
{
    return fault(CALL_malloc) ? NULL : __libc_malloc(size);
}

void *calloc(size_t count, size_t size)
{
    return fault(CALL_malloc) ? NULL : __libc_calloc(count, size);
}

void *realloc(void *old, size_t size)
{
    return fault(CALL_malloc) ? NULL : __libc_realloc(old, size);
}

/* ---- standard output and error ---- */

/* As the C library does: again where it was interrupted is for who writes; 0 is a failure. */
static ssize_t cookie_write(void *number, const char *bytes, size_t length)
{
    size_t done = 0;
    int file = *(const int *)number;

    while (done < length) {
        ssize_t count = write(file, bytes + done, length - done);
        if (count <= 0)
            return (ssize_t)done;
        done += (size_t)count;
    }
    return (ssize_t)done;
}

static FILE *stream_of(const int *file)
{
    union { const int *from; void *to; } number = {file};

    return fopencookie(number.to, "w", (cookie_io_functions_t){.write = cookie_write});
}

__attribute__((constructor)) static void page_find(void)
{
    static const int out = STDOUT_FILENO, err = STDERR_FILENO;
    const char *path = getenv(TORTURE_PAGE);
    int file = path ? open(path, O_RDWR | O_CLOEXEC) : -1;

    if (file < 0)
        return;
    stdout = stream_of(&out);
    stderr = stream_of(&err);
    setvbuf(stderr, NULL, _IONBF, 0);
    void *memory = mmap(NULL, sizeof *page, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
    REAL(int (*)(int), close)(file);
    page = memory == MAP_FAILED ? NULL : memory;
}
