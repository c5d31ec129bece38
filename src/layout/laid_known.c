/* laid_known.c - where parts of cards are kept that were laid out before (room: layout). It lays
 * out none. */
#include "laid_known.h"

/* A power of two. */
#define PART_SLOTS 1024

struct known_part {
    struct known_part *next;
    struct laid_key key;
    void *laid;
};

struct known_parts {
    struct arena *arena;
    struct known_part **slots;    /* PART_SLOTS of them */
    size_t count;
};

struct known_parts *parts_begin(struct arena *arena)
{
    _Static_assert((PART_SLOTS & (PART_SLOTS - 1)) == 0, "a mask finds the slot");
    struct known_parts *known = arena_alloc(arena, sizeof *known);
    *known = (struct known_parts){arena, arena_array(arena, PART_SLOTS, sizeof *known->slots), 0};
    return known;
}

size_t parts_count(const struct known_parts *known)
{
    return known->count;
}

static bool laid_keys_equal(const struct laid_key *a, const struct laid_key *b)
{
    return a->part == b->part && a->of == b->of && a->way == b->way && a->size == b->size &&
           a->width == b->width && a->words == b->words;
}

void **part_known(struct known_parts *known, const struct laid_key *key)
{
    uint64_t hash = (uint64_t)(uintptr_t)key->of ^ ((uint64_t)(uint32_t)key->size << 32);
    hash = (hash ^ (uint64_t)key->part << 60) * UINT64_C(0x9E3779B97F4A7C15);
    struct known_part **slot = &known->slots[hash >> 40 & (PART_SLOTS - 1)];
    for (struct known_part *one = *slot; one != NULL; one = one->next)
        if (laid_keys_equal(&one->key, key))
            return &one->laid;
    struct known_part *now = arena_alloc(known->arena, sizeof *now);
    *now = (struct known_part){*slot, *key, NULL};
    known->count++;
    *slot = now;
    return &now->laid;
}
