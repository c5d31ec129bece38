/* starved.c - makes allocations of a static program fail on order (test shim), into which nothing
 * can be preloaded. It stands between what src/base/heap.c has before malloc and malloc itself, and
 * takes the same orders as fault.c: FAULT_AT, FAULT_STAYS and FAULT_COUNT. */
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>

void *__real_malloc(size_t size);
void *__real_calloc(size_t count, size_t size);
void *__real_realloc(void *old, size_t size);
void *starved_malloc(size_t size);
void *starved_calloc(size_t count, size_t size);
void *starved_realloc(void *old, size_t size);

static long seen;

/* Counts; true if this one is to fail. */
static bool starves(void)
{
    const char *at = getenv("FAULT_AT");
    long order = at != NULL ? strtol(at, NULL, 10) : 0;

    seen++;
    return order > 0 && (getenv("FAULT_STAYS") != NULL ? seen >= order : seen == order);
}

void *starved_malloc(size_t size)
{
    return starves() ? NULL : __real_malloc(size);
}

void *starved_calloc(size_t count, size_t size)
{
    return starves() ? NULL : __real_calloc(count, size);
}

void *starved_realloc(void *old, size_t size)
{
    return starves() ? NULL : __real_realloc(old, size);
}

__attribute__((destructor)) static void seen_tell(void)
{
    const char *file = getenv("FAULT_COUNT");
    long count = seen;

    unsetenv("FAULT_AT");
    FILE *out = file != NULL ? fopen(file, "w") : NULL;
    if (out != NULL) {
        fprintf(out, "%ld\n", count);
        fclose(out);
    }
}
