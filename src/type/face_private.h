/* face_private.h - what the files of the room type share: the faces as HarfBuzz
 * holds them, and the lines of faces.txt. Private to src/type. */
#ifndef MAYDECK_FACE_PRIVATE_H
#define MAYDECK_FACE_PRIVATE_H

#include <hb.h>

#include "face.h"
#include "source.h"

/* One opened face. `name` is its PostScript name. */
struct face {
    hb_face_t *face;
    hb_font_t *font;          /* scaled to font units */
    struct face_metrics metrics;
    const char *name;
    size_t glyph_count;
};

/* A text that was measured, and its advances in font units. Free while length is 0. */
struct measured {
    int64_t units;
    unsigned char role, length;
    char text[46];
};

/* Fitting measures the same words at many sizes: a slot keeps the last one of its
 * hash. A power of two. */
#define MEASURED_SLOTS 4096

/* `buffer` is used again for every run: shaping is what fitting does most. */
struct faces {
    struct face of[FACE_COUNT];
    struct measured *measured;
    hb_buffer_t *buffer;
    hb_language_t language;
};

/* A known SHA-256 sum of a font file and the package version that has it. */
struct known_sum {
    const char *sum;
    const char *version;
    struct known_sum *next;
};

/* A line of faces.txt. */
struct face_line {
    bool given;
    const char *file;
    const char *package;
    const char *installed;    /* where the package puts the file */
    const struct known_sum *sums;
    struct place place;
};

/* Reads `folder`/faces.txt into one line a role. False, with problems added,
 * when it cannot be read, a line is malformed or a role is missing or twice. */
bool face_list_read(const char *folder, struct arena *arena, struct face_line lines[FACE_COUNT],
                    struct problems *problems);

/* text, bold or code. */
const char *face_role_word(enum face_role role);

#endif
