/* measure.c - what a command takes, with all that it starts:
 *
 *   measure COMMAND...
 *
 * Prints on standard error, in one line: microseconds of processor time, microseconds of the
 * clock, and the most memory that one process of them held, in KiB. Ends as the command does.
 * What leaves its parent is waited for too, so that no child's time is lost. */
#define _GNU_SOURCE
#include <stdio.h>
#include <stdlib.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

static long micro_of(struct timeval time)
{
    return time.tv_sec * 1000000L + time.tv_usec;
}

static long clock_now(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return now.tv_sec * 1000000L + now.tv_nsec / 1000;
}

int main(int count, char **words)
{
    if (count < 2) {
        fprintf(stderr, "measure: use: measure COMMAND...\n");
        return 2;
    }
    prctl(PR_SET_CHILD_SUBREAPER, 1);
    long begin = clock_now();
    pid_t child = fork();
    if (child == 0) {
        execvp(words[1], words + 1);
        perror(words[1]);
        _exit(127);
    }
    int status, result = 126;
    for (pid_t ended; (ended = wait(&status)) > 0;)
        if (ended == child)
            result = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    long end = clock_now();
    struct rusage usage;
    getrusage(RUSAGE_CHILDREN, &usage);
    fprintf(stderr, "%ld %ld %ld\n", micro_of(usage.ru_utime) + micro_of(usage.ru_stime),
            end - begin, usage.ru_maxrss);
    return result;
}
