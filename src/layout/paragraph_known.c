/* paragraph_known.c - paragraphs that were broken before: fitting asks for the same words at the
 * same sizes again and again (room: layout). It breaks none itself. */
#include "paragraph_known.h"

#include <string.h>

#include "text.h"

/* A power of two; more paragraphs than slots only make chains. */
#define PARAGRAPH_SLOTS 16384
#define PARAGRAPHS_LIMIT ((size_t)1024 * 1024 * 1024)

/* All that pieces and lines hang on. */
struct paragraph_key {
    enum page_role role;
    enum face_role face;
    mpt size, width;
    const struct words *words;
    const struct paper *paper;
    uint64_t hash;
};

struct known_paragraph {
    struct known_paragraph *next;
    struct paragraph_key key;
    const char *text;
    struct paragraph paragraph;
};

struct known_paragraphs {
    struct arena *arena;
    struct known_paragraph **slots;    /* PARAGRAPH_SLOTS of them */
};

struct known_paragraphs *paragraphs_begin(struct arena *arena)
{
    _Static_assert((PARAGRAPH_SLOTS & (PARAGRAPH_SLOTS - 1)) == 0, "a mask finds the slot");
    struct known_paragraphs *known = arena_alloc(arena, sizeof *known);
    known->arena = arena_new(PARAGRAPHS_LIMIT);
    known->slots = arena_array(known->arena, PARAGRAPH_SLOTS, sizeof *known->slots);
    return known;
}

void paragraphs_end(struct known_paragraphs *known)
{
    arena_free(known->arena);
    known->arena = NULL;
}

static struct paragraph_key key_of(const struct pen *pen, const struct style *style,
                                   const char *text, mpt width)
{
    const mpt lengths[] = {style->size, width};
    uint64_t hash = bytes_hash_fast(BYTES_HASH_START, lengths, sizeof lengths);
    return (struct paragraph_key){style->role, style->face, style->size, width,
                                  pen->sheet->words, pen->paper,
                                  bytes_hash_fast(hash, text, strlen(text))};
}

static bool keys_equal(const struct paragraph_key *a, const struct paragraph_key *b)
{
    return a->hash == b->hash && a->role == b->role && a->face == b->face && a->size == b->size &&
           a->width == b->width && a->words == b->words && a->paper == b->paper;
}

static struct known_paragraph **paragraph_slot(const struct known_paragraphs *known, uint64_t hash)
{
    return &known->slots[(hash ^ hash >> 32) & (PARAGRAPH_SLOTS - 1)];
}

/* The paragraph stands as long as what is known: so do its words. */
static const struct paragraph *paragraph_add(const struct pen *pen, const struct paragraph_key *key,
                                             const struct style *style, const char *text)
{
    struct known_paragraphs *known = pen->known;
    struct known_paragraph **slot = paragraph_slot(known, key->hash);
    struct known_paragraph *one = arena_alloc(known->arena, sizeof *one);
    struct pen own = *pen;
    own.arena = known->arena;
    *one = (struct known_paragraph){*slot, *key, arena_copy(known->arena, text, strlen(text)),
                                    {.piece_count = 0}};
    one->paragraph = paragraph_new(&own, style, one->text, key->width);
    *slot = one;
    return &one->paragraph;
}

static const struct paragraph *paragraph_find(const struct known_paragraphs *known,
                                              const struct paragraph_key *key, const char *text)
{
    const struct known_paragraph *one = *paragraph_slot(known, key->hash);
    for (; one != NULL; one = one->next)
        if (keys_equal(&one->key, key) && strcmp(one->text, text) == 0)
            return &one->paragraph;
    return NULL;
}

struct paragraph paragraph_make(const struct pen *pen, const struct style *style,
                                const char *text, mpt width, struct place origin)
{
    struct paragraph paragraph;
    if (pen->known != NULL) {
        struct paragraph_key key = key_of(pen, style, text, width);
        const struct paragraph *found = paragraph_find(pen->known, &key, text);
        paragraph = found != NULL ? *found : *paragraph_add(pen, &key, style, text);
    } else {
        paragraph = paragraph_new(pen, style, text, width);
    }
    paragraph.style = *style;
    paragraph.origin = origin;
    return paragraph;
}
