/* arena.h - memory that is given back all at once (room: base).
 *
 * What is made for a boat lives in that boat's arena and dies with it; nobody
 * frees anything else. Memory is asked for in arena.c alone; what libyaml, libharu,
 * HarfBuzz and utf8proc take for themselves is given back where they are called. */
#ifndef MAYDECK_ARENA_H
#define MAYDECK_ARENA_H

#include <stddef.h>

/* Do the sanitizers look after all memory, with an allocator of their own? Each compiler has a
 * word of its own for it. */
#if defined(__SANITIZE_ADDRESS__)
#define MEMORY_IS_WATCHED 1
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
#define MEMORY_IS_WATCHED 1
#endif
#endif

struct arena;

/* A new, empty arena that may grow to `limit` bytes. Running out of memory or
 * over the limit never returns: see arena_on_exhaustion. */
struct arena *arena_new(size_t limit);

/* Gives back the arena and all that was made in it. NULL is allowed. */
void arena_free(struct arena *arena);

/* Bytes that it has of the system, dealt out or not. */
size_t arena_size(const struct arena *arena);

/* `size` zeroed bytes, aligned for any type. Never NULL; size 0 is allowed. */
void *arena_alloc(struct arena *arena, size_t size);

/* Room for `count` elements of `size` bytes, zeroed; the product is checked. */
void *arena_array(struct arena *arena, size_t count, size_t size);

/* A NUL-terminated copy of `length` bytes. */
char *arena_copy(struct arena *arena, const char *bytes, size_t length);

/* A growing array kept in an arena: returns `items`, or a larger copy of it,
 * with room for one more than `count`; `*capacity` follows. Start with NULL
 * and 0. The caller stores the element and raises its own count. */
void *arena_grow(struct arena *arena, void *items, size_t count,
                 size_t *capacity, size_t size);

/* `size` bytes that were dealt out at `at` as `larger` ones: where they stand, if they were the
 * last that were and there is room behind them, else as a copy. What is new is zeroed. */
void *arena_extend(struct arena *arena, void *at, size_t size, size_t larger);

/* What to run (once) before the process leaves with status 3 because memory
 * ran out: the draw room removes its temporary file here. */
void arena_on_exhaustion(void (*clean_up)(void));

/* From what on nothing is done, should memory run out now: it is told then. The text stands until
 * another is given; NULL: nothing is told. */
void arena_exhaustion_from(const char *from);

/* Leaves the process as above. For a library's own "out of memory" only. */
_Noreturn void arena_exhausted(void);

#endif
