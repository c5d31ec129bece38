/* heap.c - what happens when the heap is exhausted (room: base).
 *
 * Stands before malloc for the whole program: HarfBuzz goes on after a failed
 * allocation with a width or a subset that is wrong, libharu 2.3 may crash, and
 * neither tells. A wrong card must not appear, so the program ends as it does
 * when an arena is exhausted: with status 3 and nothing half-written. In a static
 * program the linker puts these functions before those of the C library; else they
 * have their names, and the loader finds the C library's behind them. The
 * sanitizers bring a malloc of their own. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <stdlib.h>

#include "arena.h"

#ifndef MEMORY_IS_WATCHED

static void *found(void *memory, size_t size)
{
    if (memory == NULL && size != 0)
        arena_exhausted();
    return memory;
}

#ifdef HEAP_IS_WRAPPED

void *__real_malloc(size_t size);
void *__real_calloc(size_t count, size_t size);
void *__real_realloc(void *old, size_t size);
void *__wrap_malloc(size_t size);
void *__wrap_calloc(size_t count, size_t size);
void *__wrap_realloc(void *old, size_t size);

void *__wrap_malloc(size_t size)
{
    return found(__real_malloc(size), size);
}

void *__wrap_calloc(size_t count, size_t size)
{
    return found(__real_calloc(count, size), count > 0 ? size : 0);
}

void *__wrap_realloc(void *old, size_t size)
{
    return found(__real_realloc(old, size), size);
}

#else

#define NEXT(type, name) (__extension__(type) dlsym(RTLD_NEXT, #name))

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
#endif
