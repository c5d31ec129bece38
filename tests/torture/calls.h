/* calls.h - the calls that can be made to fail, and the page of memory by which the driver orders
 * it and learns how often each was made. Shared by the shim and the driver. */
#ifndef MAYDECK_TORTURE_CALLS_H
#define MAYDECK_TORTURE_CALLS_H

#include <stdatomic.h>

/* X(call, errors that a system gives for it). SHORT: only a part of the bytes is taken or given.
 * `write_out` and `write_err` are writes to standard output and error. `create` opens for
 * writing; `any` is each call of all kinds but malloc. */
#define CALL_LIST(X)                                        \
    X(open, "EACCES EMFILE EIO ENOMEM")                     \
    X(create, "ENOSPC EROFS EACCES EMFILE EDQUOT")          \
    X(read, "EIO EINTR SHORT")                              \
    X(pread, "EIO EINTR SHORT")                             \
    X(write, "ENOSPC EIO EDQUOT EFBIG EINTR SHORT")         \
    X(write_out, "ENOSPC EIO EPIPE EINTR SHORT")            \
    X(write_err, "ENOSPC EIO")                              \
    X(fsync, "EIO ENOSPC EDQUOT")                           \
    X(close, "EIO EINTR ENOSPC")                            \
    X(rename, "EACCES EIO ENOSPC EROFS")                    \
    X(mkdir, "EACCES ENOSPC EROFS EIO")                     \
    X(unlink, "EACCES EIO EROFS")                           \
    X(ftruncate, "EIO EACCES")                              \
    X(fchmod, "EPERM EROFS EIO")                            \
    X(opendir, "EACCES EMFILE EIO ENOMEM")                  \
    X(readdir, "EIO EBADF")                                 \
    X(stat, "EACCES EIO ENOMEM")                            \
    X(lstat, "EACCES EIO ENOMEM")                           \
    X(fstat, "EIO ENOMEM")                                  \
    X(access, "EACCES EROFS EIO")                           \
    X(readlink, "EACCES EIO")                               \
    X(getcwd, "EACCES ENOENT")                              \
    X(flock, "EINTR ENOLCK EWOULDBLOCK EOPNOTSUPP")         \
    X(lock, "EINTR ENOLCK EAGAIN EOPNOTSUPP EIO")           \
    X(pipe, "EMFILE ENFILE")                                \
    X(fork, "EAGAIN ENOMEM")                                \
    X(waitpid, "EINTR")                                     \
    X(poll, "EINTR ENOMEM")                                 \
    X(getrandom, "EINTR ENOSYS")                            \
    X(malloc, "ENOMEM")                                     \
    X(any, "KILL TERM")

#define CALL_VALUE(name, errors) CALL_##name,
enum call { CALL_LIST(CALL_VALUE) CALL_COUNT };

/* Who makes the call: the process that was begun, or one that it forked. */
enum caller { CALLER_PARENT, CALLER_WORKER, CALLER_COUNT };

/* What an order makes of a call in the place of an error. */
enum { FAULT_SHORT = 10001, FAULT_KILL, FAULT_TERM };

/* Call number `at` (from 1) of that kind fails; 0: none. */
struct fault_order {
    enum call call;
    enum caller caller;
    long at;
    int error;
    int stays;                  /* all later ones too */
    long slow_ms;               /* each write of a file takes so long, and half of the bytes */
};

struct torture_page {
    struct fault_order order;
    atomic_long seen[CALLER_COUNT][CALL_COUNT];
    atomic_long struck;
};

/* The environment names the file that is the page. */
#define TORTURE_PAGE "TORTURE_PAGE"

#endif
