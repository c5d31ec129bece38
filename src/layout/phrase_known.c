/* phrase_known.c - lines of scripts that were laid out before, by their words, sizes and measure
 * (room: layout). It lays out none. */
#include "phrase_known.h"

#include "text_known.h"

/* Powers of two. */
#define LINE_SLOTS 256
#define PHRASE_SLOTS 4096

/* A piece by what it says. */
struct line_piece {
    enum piece_kind kind;
    int width_mm;
    const struct known_text *text;
};

struct known_line {
    struct known_line *next;
    uint64_t hash;
    const struct known_text *label;
    struct line_piece *pieces;
    size_t count;
};

struct kept_phrase {
    struct kept_phrase *next;
    struct phrase_key key;
    struct laid_phrase laid;
};

struct known_phrases {
    struct arena *arena;
    struct known_texts *texts;
    struct known_line **lines;        /* LINE_SLOTS of them */
    struct kept_phrase **phrases;     /* PHRASE_SLOTS of them */
};

struct known_phrases *phrases_begin(struct arena *arena, struct known_texts *texts)
{
    struct known_phrases *known = arena_alloc(arena, sizeof *known);
    *known = (struct known_phrases){
        arena, texts, arena_array(arena, LINE_SLOTS, sizeof *known->lines),
        arena_array(arena, PHRASE_SLOTS, sizeof *known->phrases)};
    return known;
}

struct arena *phrases_arena(const struct known_phrases *known)
{
    return known->arena;
}

/* ---- lines ---- */

static const struct known_text *text_or_none(struct known_phrases *known, const char *text)
{
    return text == NULL ? NULL : text_known(known->texts, text);
}

static struct line_piece line_piece_of(struct known_phrases *known,
                                       const struct script_piece *piece)
{
    return (struct line_piece){piece->kind, piece->width_mm, text_or_none(known, piece->text)};
}

static bool line_is(struct known_phrases *known, const struct known_line *one,
                    const struct script_line *line)
{
    if (one->count != line->count || one->label != text_or_none(known, line->label))
        return false;
    for (size_t i = 0; i < line->count; i++) {
        struct line_piece piece = line_piece_of(known, &line->pieces[i]);
        const struct line_piece *own = &one->pieces[i];
        if (own->kind != piece.kind || own->width_mm != piece.width_mm || own->text != piece.text)
            return false;
    }
    return true;
}

static uint64_t hash_with(uint64_t hash, uint64_t more)
{
    return (hash ^ more) * UINT64_C(0x9E3779B97F4A7C15) >> 8;
}

static uint64_t line_hash(struct known_phrases *known, const struct script_line *line)
{
    uint64_t hash = line->count;
    for (size_t i = 0; i < line->count; i++) {
        const struct known_text *text = text_or_none(known, line->pieces[i].text);
        hash = hash_with(hash, text == NULL ? 0 : text->hash);
    }
    return hash;
}

struct known_line *line_known(struct known_phrases *known, const struct script_line *line)
{
    uint64_t hash = line_hash(known, line);
    struct known_line **slot = &known->lines[hash & (LINE_SLOTS - 1)];
    for (struct known_line *one = *slot; one != NULL; one = one->next)
        if (one->hash == hash && line_is(known, one, line))
            return one;
    struct known_line *now = arena_alloc(known->arena, sizeof *now);
    *now = (struct known_line){*slot, hash, text_or_none(known, line->label),
                               arena_array(known->arena, line->count, sizeof *now->pieces),
                               line->count};
    for (size_t i = 0; i < line->count; i++)
        now->pieces[i] = line_piece_of(known, &line->pieces[i]);
    return *slot = now;
}

/* ---- phrases ---- */

static struct kept_phrase **phrase_slot(const struct known_phrases *known,
                                        const struct phrase_key *key)
{
    uint64_t hash = hash_with(key->line->hash, (uint64_t)key->sizes.letters);
    hash = hash_with(hash, (uint64_t)key->width);
    return &known->phrases[hash & (PHRASE_SLOTS - 1)];
}

const struct laid_phrase *phrase_known(const struct known_phrases *known,
                                       const struct phrase_key *key)
{
    for (const struct kept_phrase *one = *phrase_slot(known, key); one != NULL; one = one->next)
        if (one->key.line == key->line && one->key.words == key->words &&
            one->key.sizes.letters == key->sizes.letters &&
            one->key.sizes.blanks == key->sizes.blanks && one->key.width == key->width)
            return &one->laid;
    return NULL;
}

struct laid_phrase *phrase_know(struct known_phrases *known, const struct phrase_key *key)
{
    struct kept_phrase **slot = phrase_slot(known, key);
    struct kept_phrase *one = arena_alloc(known->arena, sizeof *one);
    *one = (struct kept_phrase){.next = *slot, .key = *key};
    *slot = one;
    return &one->laid;
}
