/* text_known.c - texts that were measured before: fitting asks how wide the same words are at one
 * size after the other (room: layout). It takes none apart itself. */
#include "text_known.h"

#include <string.h>

#include "text.h"

/* Powers of two. A text that is asked for again mostly lies where it lay: it is looked for there
 * first, and its bytes are compared, since its room may have been given to another. */
#define TEXT_SLOTS 4096
#define TEXT_PLACES 4096

struct text_place {
    const char *at;
    struct known_text *text;
};

struct known_texts {
    struct arena *arena;
    struct known_text **slots;    /* TEXT_SLOTS of them, by hash */
    struct text_place *places;    /* TEXT_PLACES of them, by address */
    size_t count;
};

struct known_texts *texts_begin(struct arena *arena)
{
    _Static_assert((TEXT_SLOTS & (TEXT_SLOTS - 1)) == 0, "a mask finds the slot");
    _Static_assert((TEXT_PLACES & (TEXT_PLACES - 1)) == 0, "a mask finds the place");
    struct known_texts *known = arena_alloc(arena, sizeof *known);
    known->arena = arena;
    known->slots = arena_array(arena, TEXT_SLOTS, sizeof *known->slots);
    known->places = arena_array(arena, TEXT_PLACES, sizeof *known->places);
    return known;
}

struct arena *texts_arena(const struct known_texts *known)
{
    return known->arena;
}

size_t texts_count(const struct known_texts *known)
{
    return known->count;
}

void units_forget(int64_t *units)
{
    for (size_t face = 0; face < FACE_COUNT; face++)
        units[face] = UNITS_UNKNOWN;
}

static struct known_text *known_text_add(struct known_texts *known, uint64_t hash,
                                         const char *text, size_t length)
{
    struct known_text **slot = &known->slots[(hash ^ hash >> 32) & (TEXT_SLOTS - 1)];
    for (struct known_text *one = *slot; one != NULL; one = one->next)
        if (one->hash == hash && one->length == length && memcmp(one->text, text, length) == 0)
            return one;
    struct known_text *one = arena_alloc(known->arena, sizeof *one);
    *one = (struct known_text){.next = *slot, .hash = hash, .length = length,
                               .text = arena_copy(known->arena, text, length)};
    units_forget(one->units);
    *slot = one;
    known->count++;
    return one;
}

struct known_text *text_known(struct known_texts *known, const char *text)
{
    uint64_t spread = (uint64_t)(uintptr_t)text * UINT64_C(0x9E3779B97F4A7C15);
    struct text_place *place = &known->places[spread >> 40 & (TEXT_PLACES - 1)];
    if (place->at != text || strcmp(place->text->text, text) != 0) {
        size_t length = strlen(text);
        uint64_t hash = bytes_hash_fast(BYTES_HASH_START, text, length);
        *place = (struct text_place){text, known_text_add(known, hash, text, length)};
    }
    return place->text;
}

mpt text_width(const struct pen *pen, struct known_text *text, enum face_role face, mpt size)
{
    int64_t *units = &text->units[face];
    if (*units == UNITS_UNKNOWN)
        *units = run_units(pen->faces, face, text->text, text->length);
    return units_width(pen->faces, face, *units, size);
}

mpt stretch_width(const struct pen *pen, struct stretch *stretch, enum face_role face, mpt size)
{
    int64_t *units = &stretch->units[face];
    if (*units == UNITS_UNKNOWN)
        *units = run_units(pen->faces, face, stretch->start, stretch->length);
    return units_width(pen->faces, face, *units, size);
}
