/* face_private.h - what the files of the room type share: the faces as HarfBuzz
 * holds them, and the lines of faces.txt. Private to src/type. */
#ifndef MAYDECK_FACE_PRIVATE_H
#define MAYDECK_FACE_PRIVATE_H

#include <hb.h>

#include "face.h"
#include "source.h"

/* Where the ink of a glyph stands, in font units; y up. */
struct glyph_ink {
    bool known, any;
    int32_t left, right, top, foot;
};

/* One opened face. `name` is its PostScript name. */
struct face {
    hb_face_t *face;
    hb_font_t *font;          /* scaled to font units */
    struct face_metrics metrics;
    const char *name;
    size_t glyph_count;
    struct glyph_ink *inks;   /* by glyph, once it was asked for */
};

/* A text's glyphs in one face and the sum of their advances, in font units: the same at every
 * size. */
struct shape {
    struct glyph *glyphs;
    size_t count;
    int64_t units;
};

/* The shapes made so far, for as long as the faces are open. */
struct shapes;
struct shapes *shapes_new(struct arena *arena);
void shapes_close(struct shapes *shapes);

/* The subsets that were made first. */
struct subsets;
struct subsets *subsets_new(struct arena *arena);

/* `buffer` is used again for every run: shaping is what fitting does most. */
struct faces {
    struct face of[FACE_COUNT];
    struct shapes *shapes;
    struct subsets *subsets;
    hb_buffer_t *buffer;
    hb_language_t language;
};

/* The shape of a text, which stands until the next call. NULL when a letter is missing or the
 * bytes are no UTF-8: *missing tells which. */
const struct shape *shape_of(const struct faces *faces, enum face_role role, const char *text,
                             size_t length, uint32_t *missing);

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
