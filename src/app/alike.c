/* alike.c - which of many texts are equal (room: app). */
#include "alike.h"

#include <string.h>

#include "text.h"

/* The slot of that text, which holds the index of the first equal one plus 1, or is free. */
static size_t *alike_slot(const char *const *texts, const char *text, size_t *slots, size_t mask)
{
    size_t at = (size_t)bytes_hash_fast(BYTES_HASH_START, text, strlen(text)) & mask;
    while (slots[at] != 0 && !text_equal(texts[slots[at] - 1], text))
        at = (at + 1) & mask;
    return &slots[at];
}

struct alike alike_of(const char *const *texts, size_t count, struct arena *arena)
{
    size_t room = 16;
    while (room < 2 * count)
        room *= 2;
    size_t *slots = arena_array(arena, room, sizeof *slots);
    size_t *first = arena_array(arena, count, sizeof *first);
    size_t *next = arena_array(arena, count, sizeof *next);
    size_t *size = arena_array(arena, count, sizeof *size);
    size_t *last = arena_array(arena, count, sizeof *last);
    for (size_t i = 0; i < count; i++) {
        size_t none = 0;
        size_t *slot = texts[i] == NULL ? &none : alike_slot(texts, texts[i], slots, room - 1);
        if (*slot == 0)
            *slot = i + 1;
        first[i] = *slot - 1;
        next[i] = count;
        if (first[i] != i)
            next[last[first[i]]] = i;
        last[first[i]] = i;
        size[first[i]]++;
    }
    return (struct alike){count, first, next, size};
}
