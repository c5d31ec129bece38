/* child_case.h - runs in a child process what ends the process, and looks at how it
 * ended and what it said on standard error (shared by unit tests). Include it after
 * cmocka.h. */
#ifndef MAYDECK_CHILD_CASE_H
#define MAYDECK_CHILD_CASE_H

#include <string.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

/* A child that came back from what was to end it leaves with this status. */
enum { CHILD_CAME_BACK = 77 };

struct child_ending {
    int status;        /* as waitpid gives it */
    char said[1024];   /* the start of what it wrote to standard error */
};

/* Runs `fault` in a child of this process and waits for the child's end. */
static struct child_ending child_ending_of(void (*fault)(void))
{
    struct child_ending ending = {0};
    int ends[2];

    assert_int_equal(pipe(ends), 0);
    pid_t child = fork();
    assert_true(child >= 0);
    if (child == 0) {
        (void)dup2(ends[1], STDERR_FILENO);
        fault();
        _exit(CHILD_CAME_BACK);
    }
    close(ends[1]);
    size_t length = 0;
    ssize_t got;
    while ((got = read(ends[0], ending.said + length, sizeof ending.said - 1 - length)) > 0)
        length += (size_t)got;
    close(ends[0]);
    assert_int_equal(waitpid(child, &ending.status, 0), child);
    return ending;
}

#endif
