/* heap.c - what happens when the heap is exhausted (room: base).
 *
 * Stands before malloc for the whole program: HarfBuzz goes on after a failed
 * allocation with a width or a subset that is wrong, libharu 2.3 may crash, and
 * neither tells. A wrong card must not appear, so the program ends as it does
 * when an arena is exhausted: with status 3 and nothing half-written. The
 * sanitizers bring a malloc of their own. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <stdlib.h>

#include "arena.h"

/* Two compilers, two names for it. */
#if defined(__SANITIZE_ADDRESS__)
#define HEAP_IS_WATCHED 1
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
#define HEAP_IS_WATCHED 1
#endif
#endif

#ifndef HEAP_IS_WATCHED

#define NEXT(type, name) (__extension__(type) dlsym(RTLD_NEXT, #name))

static void *found(void *memory, size_t size)
{
    if (memory == NULL && size != 0)
        arena_exhausted();
    return memory;
}

void *malloc(size_t size)
{
    static void *(*next)(size_t);
    if (next == NULL)
        next = NEXT(void *(*)(size_t), malloc);
    return found(next(size), size);
}

void *calloc(size_t count, size_t size)
{
    static void *(*next)(size_t, size_t);
    if (next == NULL)
        next = NEXT(void *(*)(size_t, size_t), calloc);
    return found(next(count, size), count > 0 ? size : 0);
}

void *realloc(void *old, size_t size)
{
    static void *(*next)(void *, size_t);
    if (next == NULL)
        next = NEXT(void *(*)(void *, size_t), realloc);
    return found(next(old, size), size);
}

#endif
