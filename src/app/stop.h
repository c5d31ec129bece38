/* stop.h - signals that end a run, and what it still tells then. Private to src/app. */
#ifndef MAYDECK_STOP_H
#define MAYDECK_STOP_H

#include "names.h"
#include "problem.h"

/* A write that is refused, because the reader of a pipe is gone or a limit of the shell is
 * reached, is told as one and ends no run. For every command. */
void refusals_await(void);

/* Has whoever read standard output gone away, as a pager does that was left before the end? */
bool reader_is_gone(void);

/* Ends the program as SIGPIPE ends one that does not await it, in silence: its exit status tells.
 * Returns where it was started with that signal ignored. */
void end_by_reader(void);

/* From now on SIGINT, SIGTERM and SIGHUP end no run at once: run_stopped tells of the first; a
 * second one of a kind ends the run as ever. What was ignored when the program was started, as
 * nohup does, stays so. Goes over to processes that are forked. */
void stop_await(void);

/* The name of the signal that asked this process to end, such as SIGTERM; NULL: none. */
const char *run_stopped(void);

/* Tells by which signal the run was stopped, how many boats were printed before, and which are not:
 * a SEVERITY_FAILURE. Nothing where no signal came or no boat remains. */
void stop_tell(size_t printed, const struct names *remaining, struct arena *arena,
               struct problems *problems);

#endif
