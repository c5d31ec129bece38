/* names.c - lists of names (room: app). */
#include "names.h"

#include <stdlib.h>
#include <string.h>

#include "known_names.h"

/* From so many on they are hashed: of fewer, looking at each is quicker. */
#define HASHED_FROM 16

/* The slot of that name, or the free one where it belongs. There are twice as many slots as names
 * or more: one is always free. */
static const char **name_slot(const struct names *names, const char *name)
{
    size_t mask = names->slot_count - 1;
    size_t slot = (size_t)bytes_hash_fast(BYTES_HASH_START, name, strlen(name)) & mask;
    while (names->slots[slot] != NULL && !text_equal(names->slots[slot], name))
        slot = (slot + 1) & mask;
    return &names->slots[slot];
}

static void names_hash(struct names *names, struct arena *arena)
{
    if (names->count < HASHED_FROM)
        return;
    if (names->slot_count < 2 * names->count) {
        names->slot_count = 4 * HASHED_FROM;
        while (names->slot_count < 2 * names->count)
            names->slot_count *= 2;
        names->slots = arena_array(arena, names->slot_count, sizeof *names->slots);
        names->slotted = 0;
    }
    for (; names->slotted < names->count; names->slotted++)
        *name_slot(names, names->at[names->slotted]) = names->at[names->slotted];
}

void names_add(struct names *names, const char *name, struct arena *arena)
{
    names->at = arena_grow(arena, names->at, names->count, &names->room, sizeof *names->at);
    names->at[names->count++] = arena_copy(arena, name, strlen(name));
    names_hash(names, arena);
}

bool names_hold(const struct names *names, const char *name)
{
    if (names->slotted > 0)
        return *name_slot(names, name) != NULL;
    for (size_t i = 0; i < names->count; i++)
        if (text_equal(names->at[i], name))
            return true;
    return false;
}

static int by_bytes(const void *a, const void *b)
{
    const char *const *first = a, *const *second = b;
    return strcmp(*first, *second);
}

void names_sort(struct names *names)
{
    if (names->count > 0)
        qsort(names->at, names->count, sizeof *names->at, by_bytes);
}

/* Ended by NULL. */
static const char *const *names_ended(const struct names *names, struct arena *arena)
{
    const char **ended = arena_array(arena, names->count + 1, sizeof *ended);
    for (size_t i = 0; i < names->count; i++)
        ended[i] = names->at[i];
    return ended;
}

const char *names_remedy(const struct names *names, const char *name, const char *head,
                         struct arena *arena)
{
    struct text_builder list = text_builder_in(arena);
    text_add(&list, head);
    for (size_t i = 0; i < names->count; i++)
        text_add_format(&list, "%s%s", i == 0 ? "" : ", ", names->at[i]);
    return known_remedy(arena, NULL, name, names_ended(names, arena), list.at);
}
