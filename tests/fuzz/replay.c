/* replay.c - takes files through a harness, one after the other, and tells of each that nothing
 * broke and all held:
 *
 *   replay FILE...
 */
#include "fuzz.h"

#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "source.h"

enum { INPUT_MOST = 1 << 20 };

/* Which file is being taken; told by whatever ends the program. */
static const char *replayed = "";

static void told(const char *text)
{
    ssize_t written = write(STDOUT_FILENO, text, strlen(text));
    (void)written;      /* nobody is left to be told */
}

static void broken_tell(void)
{
    told("not ok ");
    told(replayed);
    told("\n");
}

static void broken(int number)
{
    broken_tell();
    (void)signal(number, SIG_DFL);
    (void)raise(number);
}

/* Sanitizers leave by a way of their own. */
extern void __sanitizer_set_death_callback(void (*callback)(void)) __attribute__((weak));

static void watch(void)
{
    static const int signals[] = {SIGABRT, SIGFPE, SIGILL};
    for (size_t i = 0; i < sizeof signals / sizeof *signals; i++)
        (void)signal(signals[i], broken);
    if (__sanitizer_set_death_callback != NULL)
        __sanitizer_set_death_callback(broken_tell);
    else
        (void)signal(SIGSEGV, broken);
}

int main(int count, char **files)
{
    watch();
    if (count < 2) {
        printf("not ok replay has no files\n");
        return 1;
    }
    if (harness.open != NULL)
        harness.open();
    for (int i = 1; i < count; i++) {
        struct arena *arena = arena_new(4 * (size_t)INPUT_MOST);
        struct source *source = NULL;
        replayed = files[i];
        if (source_read(arena, files[i], INPUT_MOST, &source) != SOURCE_READ) {
            printf("not ok %s cannot be read\n", files[i]);
            return 1;
        }
        fuzz_one(source->bytes, source->length);
        printf("ok %s\n", files[i]);
        (void)fflush(stdout);
        arena_free(arena);
    }
    return 0;
}
