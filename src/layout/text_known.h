/* text_known.h - texts that were taken apart and measured before, at no size: their widths at each
 * size follow without looking at them again. Private to src/layout. */
#ifndef MAYDECK_TEXT_KNOWN_H
#define MAYDECK_TEXT_KNOWN_H

#include "layout_room.h"

/* A stretch of a text with **bold** parts: of one weight, with the spaces at its ends. */
struct stretch {
    const char *start;
    size_t length;
    bool bold;
    int64_t units[FACE_COUNT];    /* its width in font units; UNITS_UNKNOWN: nobody asked */
};
#define UNITS_UNKNOWN (-1)

/* The pieces of a text by the words of a language and the face of what is not bold. */
struct known_pieces {
    struct known_pieces *next;
    const struct words *words;
    enum face_role face;
    const struct piece *pieces;   /* of no width, but in font units */
    size_t count;
};

struct known_text {
    struct known_text *next;
    uint64_t hash;
    size_t length;
    const char *text;
    int64_t units[FACE_COUNT];    /* of all of it, as it stands */
    bool parted;                  /* its stretches are known */
    struct stretch *stretches;
    size_t stretch_count;
    struct known_pieces *pieces;
};

/* Nothing is known yet. What is known stands as long as the arena. */
struct known_texts *texts_begin(struct arena *arena);

/* The text, by its bytes. */
struct known_text *text_known(struct known_texts *known, const char *text);

struct arena *texts_arena(const struct known_texts *known);

void units_forget(int64_t *units);

/* Texts that were met for the first time. */
size_t texts_count(const struct known_texts *known);

/* Widths: of all of it, and of its stretches. */
mpt text_width(const struct pen *pen, struct known_text *text, enum face_role face, mpt size);
mpt stretch_width(const struct pen *pen, struct stretch *stretch, enum face_role face, mpt size);

#endif
