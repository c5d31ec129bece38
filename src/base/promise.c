/* promise.c - the end of a program that broke its own promise (room: base). Takes
 * file, line and the condition that does not hold, prints them, aborts. Never
 * returns, never judges what a user wrote. */
#include "promise.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { MESSAGE_SIZE = 512 };   /* bytes; a longer condition is cut */

_Noreturn void promise_broken(const char *file, int line, const char *condition)
{
    char message[MESSAGE_SIZE];
    int length = snprintf(message, sizeof message,
                          "maydeck: failure: %s:%d: the program broke its own promise: %s\n",
                          file, line, condition);

    if (length < 0)
        abort();
    if (length >= MESSAGE_SIZE) {
        length = MESSAGE_SIZE - 1;
        message[length - 1] = '\n';
    }
    ssize_t written = write(STDERR_FILENO, message, (size_t)length);
    (void)written;  /* nobody is left to be told */
    abort();
}
