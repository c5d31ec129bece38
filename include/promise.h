/* promise.h - what the program promises itself (room: base).
 *
 * A promise guards what only a fault in this program can break: an index into a
 * table of fixed size, an order that a search relies on, a pointer that a caller
 * owes, the end of a switch over an enum. It is looked at in every build, the
 * released one too: a card that rests on a broken promise must not appear.
 * Never promise what a user, a file, the disk or the memory can cause: those are
 * problems (problem.h) or end as arena_exhausted does. The condition must have no
 * side effect and be cheap beside the work it guards. */
#ifndef MAYDECK_PROMISE_H
#define MAYDECK_PROMISE_H

/* Goes on where `condition` holds; else prints file, line and the condition to
 * standard error and aborts. */
#define promise(condition) \
    ((condition) ? (void)0 : promise_broken(__FILE__, __LINE__, #condition))

/* Stands where no way leads: after a switch that returns for every value. */
#define promise_unreached() promise_broken(__FILE__, __LINE__, "no way leads here")

/* Prints which promise is broken and aborts. Takes no memory and uses no stream,
 * since either may be what broke. A file half written under its temporary name is
 * removed by the next run. */
_Noreturn void promise_broken(const char *file, int line, const char *condition);

#endif
