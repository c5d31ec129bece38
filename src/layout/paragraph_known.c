/* paragraph_known.c - paragraphs that were broken before: fitting asks for the same words at the
 * same sizes again and again (room: layout). It breaks none itself. */
#include "paragraph_known.h"

#include "laid_known.h"
#include "phrase_known.h"
#include "text_known.h"

/* A power of two; more paragraphs than slots only make chains. */
#define PARAGRAPH_SLOTS 16384
#define PARAGRAPHS_LIMIT ((size_t)1024 * 1024 * 1024)

/* Of a boat with much on her cards so much is known that breaking some of it again costs less than
 * the memory. */
#define PARAGRAPHS_MOST ((size_t)10 * 1024 * 1024)

/* All that pieces and lines hang on. */
struct paragraph_key {
    enum page_role role;
    enum face_role face;
    mpt size, width;
    const struct known_text *text;
    const struct words *words;
    const struct paper *paper;
};

struct known_paragraph {
    struct known_paragraph *next;
    struct paragraph_key key;
    struct paragraph paragraph;
};

struct known_paragraphs {
    struct arena *arena;
    struct known_texts *texts;
    struct known_phrases *phrases;
    struct known_parts *parts;
    struct known_paragraph **slots;    /* PARAGRAPH_SLOTS of them */
};

static void known_fill(struct known_paragraphs *known)
{
    _Static_assert((PARAGRAPH_SLOTS & (PARAGRAPH_SLOTS - 1)) == 0, "a mask finds the slot");
    known->arena = arena_new(PARAGRAPHS_LIMIT);
    known->texts = texts_begin(known->arena);
    known->phrases = phrases_begin(known->arena, known->texts);
    known->parts = parts_begin(known->arena);
    known->slots = arena_array(known->arena, PARAGRAPH_SLOTS, sizeof *known->slots);
}

struct known_paragraphs *paragraphs_begin(struct arena *arena)
{
    struct known_paragraphs *known = arena_alloc(arena, sizeof *known);
    known_fill(known);
    return known;
}

void paragraphs_forget(struct known_paragraphs *known)
{
    if (arena_size(known->arena) <= PARAGRAPHS_MOST)
        return;
    arena_free(known->arena);
    known_fill(known);
}

void paragraphs_end(struct known_paragraphs *known)
{
    arena_free(known->arena);
    known->arena = NULL;
}

struct known_texts *paragraphs_texts(const struct known_paragraphs *known)
{
    return known->texts;
}

struct known_phrases *paragraphs_phrases(const struct known_paragraphs *known)
{
    return known->phrases;
}

struct known_parts *paragraphs_parts(const struct known_paragraphs *known)
{
    return known->parts;
}

struct arena *paragraphs_arena(const struct known_paragraphs *known)
{
    return known->arena;
}

static struct paragraph_key key_of(const struct pen *pen, const struct style *style,
                                   const char *text, mpt width)
{
    return (struct paragraph_key){style->role, style->face, style->size, width,
                                  text_known(pen->known->texts, text), pen->sheet->words,
                                  pen->paper};
}

static bool keys_equal(const struct paragraph_key *a, const struct paragraph_key *b)
{
    return a->text == b->text && a->role == b->role && a->face == b->face && a->size == b->size &&
           a->width == b->width && a->words == b->words && a->paper == b->paper;
}

static struct known_paragraph **paragraph_slot(const struct known_paragraphs *known,
                                               const struct paragraph_key *key)
{
    uint64_t hash = key->text->hash ^ ((uint64_t)(uint32_t)key->size << 32 | (uint32_t)key->width);
    hash *= UINT64_C(0x9E3779B97F4A7C15);
    return &known->slots[hash >> 40 & (PARAGRAPH_SLOTS - 1)];
}

/* The paragraph stands as long as what is known: so do its words. */
static const struct paragraph *paragraph_add(const struct pen *pen, const struct paragraph_key *key,
                                             const struct style *style)
{
    struct known_paragraphs *known = pen->known;
    struct known_paragraph **slot = paragraph_slot(known, key);
    struct known_paragraph *one = arena_alloc(known->arena, sizeof *one);
    struct pen own = *pen;
    own.arena = known->arena;
    own.texts = known->texts;
    *one = (struct known_paragraph){*slot, *key, {.piece_count = 0}};
    one->paragraph = paragraph_new(&own, style, key->text->text, key->width);
    *slot = one;
    return &one->paragraph;
}

static const struct paragraph *paragraph_find(const struct known_paragraphs *known,
                                              const struct paragraph_key *key)
{
    const struct known_paragraph *one = *paragraph_slot(known, key);
    for (; one != NULL; one = one->next)
        if (keys_equal(&one->key, key))
            return &one->paragraph;
    return NULL;
}

struct paragraph paragraph_make(const struct pen *pen, const struct style *style,
                                const char *text, mpt width, struct place origin)
{
    struct paragraph paragraph;
    if (pen->known != NULL) {
        struct paragraph_key key = key_of(pen, style, text, width);
        const struct paragraph *found = paragraph_find(pen->known, &key);
        paragraph = found != NULL ? *found : *paragraph_add(pen, &key, style);
    } else {
        paragraph = paragraph_new(pen, style, text, width);
    }
    paragraph.style = *style;
    paragraph.origin = origin;
    return paragraph;
}
