/* arena.c - memory that is given back all at once (room: base). What is dealt out is
 * zeroed then, when it is about to be written; only a block that one large piece has to
 * itself comes zeroed from the system, which need not touch it. Never gives back a part
 * of an arena. */
#include "arena.h"

#include <stdalign.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "promise.h"

#define ALIGNMENT alignof(max_align_t)

/* Under the address sanitizer each allocation has a block of its own, so that
 * a write past its end is seen. */
#ifdef MEMORY_IS_WATCHED
#define BLOCK_SIZE ((size_t)1)
#else
#define BLOCK_SIZE ((size_t)64 * 1024)
#endif

struct block {
    struct block *next;
    size_t size;  /* bytes after this head */
    size_t used;
    bool zeroed;  /* all of it, before any was dealt out */
    alignas(max_align_t) unsigned char bytes[];
};

struct arena {
    struct block *first;
    size_t limit;
    size_t total;  /* bytes of all blocks */
};

/* The one variable of the program that outlives a call: memory can run out in
 * any room, and none of them is handed what the draw room has to clean up. */
static void (*exhaustion_clean_up)(void);

void arena_on_exhaustion(void (*clean_up)(void))
{
    exhaustion_clean_up = clean_up;
}

/* Beside the function above: what is done hangs on who asks for memory. */
static const char *exhaustion_from;

void arena_exhaustion_from(const char *from)
{
    exhaustion_from = from;
}

static void exhaustion_say(const char *text)
{
    ssize_t written = write(STDERR_FILENO, text, strlen(text));
    (void)written;  /* nobody is left to be told */
}

/* Ready made and written without stdio, which might want memory itself. */
_Noreturn void arena_exhausted(void)
{
    const char *from = exhaustion_from;
    void (*clean_up)(void) = exhaustion_clean_up;

    exhaustion_clean_up = NULL;
    if (clean_up != NULL)
        clean_up();
    exhaustion_say("maydeck: error: out of memory");
    if (from != NULL) {
        exhaustion_say(": nothing is done from ");
        exhaustion_say(from);
        exhaustion_say(" on");
    }
    exhaustion_say("\n  remedy: end other programs, or ask for fewer boats at once; -j 1 takes the "
                   "least\n");
    _exit(3);
}

struct arena *arena_new(size_t limit)
{
    struct arena *arena = calloc(1, sizeof *arena);

    if (arena == NULL)
        arena_exhausted();
    arena->limit = limit;
    return arena;
}

void arena_free(struct arena *arena)
{
    if (arena == NULL)
        return;
    for (struct block *block = arena->first; block != NULL;) {
        struct block *next = block->next;
        free(block);
        block = next;
    }
    free(arena);
}

size_t arena_size(const struct arena *arena)
{
    return arena->total;
}

/* A new block with room for `size`: larger where the limit allows it. */
static struct block *block_new(struct arena *arena, size_t size)
{
    promise(arena->total <= arena->limit);
    size_t left = arena->limit - arena->total;
    size_t wanted = size < BLOCK_SIZE ? BLOCK_SIZE : size;

    if (size > left || size > SIZE_MAX - sizeof(struct block))
        arena_exhausted();
    if (wanted > left)
        wanted = size;
    bool zeroed = wanted > BLOCK_SIZE;
    struct block *block = zeroed ? calloc(1, sizeof *block + wanted)
                                 : malloc(sizeof *block + wanted);
    if (block == NULL)
        arena_exhausted();
    block->used = 0;
    block->size = wanted;
    block->zeroed = zeroed;
    arena->total += wanted;
    return block;
}

/* The block with more room left stays first and goes on being used. */
static void block_link(struct arena *arena, struct block *block, size_t size)
{
    struct block *first = arena->first;

    if (first != NULL && first->size - first->used > block->size - size) {
        block->next = first->next;
        first->next = block;
    } else {
        block->next = first;
        arena->first = block;
    }
}

static size_t rounded_up(size_t size)
{
    return (size + ALIGNMENT - 1) / ALIGNMENT * ALIGNMENT;
}

void *arena_alloc(struct arena *arena, size_t size)
{
    if (size > SIZE_MAX - ALIGNMENT)
        arena_exhausted();
    if (size == 0)
        size = 1;
    size_t rounded = rounded_up(size);
    struct block *block = arena->first;

    if (block == NULL || block->size - block->used < rounded) {
        block = block_new(arena, size);
        block_link(arena, block, size);
        if (block->size < rounded)  /* made to measure: nothing follows in it */
            rounded = block->size;
    }
    promise(rounded <= block->size - block->used);
    void *at = block->bytes + block->used;
    block->used += rounded;
    return block->zeroed ? at : memset(at, 0, rounded);
}

void *arena_array(struct arena *arena, size_t count, size_t size)
{
    if (size != 0 && count > SIZE_MAX / size)
        arena_exhausted();
    return arena_alloc(arena, count * size);
}

char *arena_copy(struct arena *arena, const char *bytes, size_t length)
{
    if (length == SIZE_MAX)
        arena_exhausted();
    char *copy = arena_alloc(arena, length + 1);
    if (length > 0)
        memcpy(copy, bytes, length);
    return copy;
}

/* What was dealt out last may grow where it stands, while its block has room. */
static bool extended(struct arena *arena, const void *at, size_t size, size_t larger)
{
    struct block *block = arena->first;
    size_t held = rounded_up(size), wanted = rounded_up(larger);

    if (block == NULL || (const unsigned char *)at + held != block->bytes + block->used ||
        wanted - held > block->size - block->used)
        return false;
    if (!block->zeroed)
        memset(block->bytes + block->used, 0, wanted - held);
    block->used += wanted - held;
    return true;
}

void *arena_extend(struct arena *arena, void *at, size_t size, size_t larger)
{
    promise(size <= larger && (at != NULL || size == 0));
    if (larger > SIZE_MAX - ALIGNMENT)
        arena_exhausted();
    if (size > 0 && extended(arena, at, size, larger))
        return at;
    void *copy = arena_alloc(arena, larger);
    if (size > 0)
        memcpy(copy, at, size);
    return copy;
}

void *arena_grow(struct arena *arena, void *items, size_t count,
                 size_t *capacity, size_t size)
{
    promise(count <= *capacity && (items != NULL || *capacity == 0));
    if (count < *capacity)
        return items;
    if (*capacity > SIZE_MAX / 2)
        arena_exhausted();
    size_t larger = *capacity < 8 ? 8 : *capacity * 2;
    if (size != 0 && larger > SIZE_MAX / size)
        arena_exhausted();
    void *grown = arena_extend(arena, items, *capacity * size, larger * size);
    *capacity = larger;
    return grown;
}
