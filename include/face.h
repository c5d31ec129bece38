/* face.h - type faces, shaped runs and subsets (room: type). Only src/type sees
 * HarfBuzz; nothing here knows pages. */
#ifndef MAYDECK_FACE_H
#define MAYDECK_FACE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "problem.h"

/* The roles of the faces; fonts/faces.txt says which file plays which. */
enum face_role {
    FACE_TEXT,       /* Roboto Condensed Regular */
    FACE_BOLD,       /* Roboto Condensed Bold */
    FACE_CODE,       /* Hack Bold: codes, where 0/O, 1/I/l and 8/B differ */
    FACE_COUNT
};

/* Lengths on a page are integers of a thousandth of a point. */
typedef int32_t mpt;
#define MPT_PER_POINT 1000
/* 1 mm = 2834.6457 mpt, rounded to the nearest. */
#define MM(millimetres) ((mpt)((millimetres) * 2834.645669 + 0.5))

struct faces;

/* Opens the faces named in `folder`/faces.txt (lines `role file package
 * installed-path sha256:version...`, # comments). A file that is missing, or whose SHA-256 is none
 * of the known ones, is a SEVERITY_FAILURE that names the file, its package and
 * the version to install; then NULL. The faces belong to faces_close. */
struct faces *faces_open(const char *folder, struct arena *arena, struct problems *problems);

/* The file of the folder that lists the faces with their sums. */
const char *faces_list_path(const char *folder, struct arena *arena);

/* The libraries by whose versions shapes and subsets follow, in one line. */
const char *face_libraries(struct arena *arena);
void faces_close(struct faces *faces);

struct glyph {
    uint16_t id;        /* in the face's file */
    uint32_t cluster;   /* byte offset of its text in the run's string */
    int32_t advance;    /* font units, kerning included */
    int32_t offset;     /* font units: shift to the right before drawing */
    int32_t rise;       /* font units: shift up before drawing (loose accents) */
};

/* A line of text, shaped: kerning on, ligatures off, left to right. */
struct run {
    enum face_role role;
    mpt size;
    const char *text;
    const struct glyph *glyphs;
    size_t count;
    mpt width;          /* sum of advances x size / units per em, rounded up */
};

/* Shapes `length` bytes of `text` (copied into the arena). False when a code
 * point has no glyph in the face: *missing holds it; never draw such a run. */
bool run_shape(const struct faces *faces, enum face_role role, mpt size, const char *text,
               size_t length, struct arena *arena, struct run *out, uint32_t *missing);

/* Width only: the same number as run_shape gives. 0 with *missing set when a
 * glyph is missing (missing may be NULL). */
mpt run_width(const struct faces *faces, enum face_role role, mpt size, const char *text,
              size_t length, uint32_t *missing);

/* The same in font units, and the width that so many have at a size. */
int64_t run_units(const struct faces *faces, enum face_role role, const char *text, size_t length);
mpt units_width(const struct faces *faces, enum face_role role, int64_t units, mpt size);

/* How many texts were shaped since the faces were opened: a text that is kept is shaped once. */
size_t texts_shaped(const struct faces *faces);

/* Where the ink of a run stands, from its start on the base line; y down, so `top`
 * is negative. Rounded outward. All zero for a run that leaves no ink. */
struct run_ink { mpt left, top, right, bottom; };
struct run_ink run_ink(const struct faces *faces, const struct run *run);

/* Real metrics in font units. */
struct face_metrics {
    int units_per_em;
    int ascent, descent;        /* hhea; descent is negative */
    int cap_height, x_height;   /* OS/2 */
    int bounds[4];              /* head: xMin yMin xMax yMax */
    int italic_angle;
};
const struct face_metrics *face_metrics(const struct faces *faces, enum face_role role);
const char *face_postscript_name(const struct faces *faces, enum face_role role);

/* A face cut down to the glyphs that were used. Glyph ids are renumbered: the
 * subset's id of face glyph `g` is new_id[g] (0 for unused ones). */
struct subset {
    const unsigned char *bytes;  /* a TrueType file without name, cmap, OS/2, post, layout tables */
    size_t length;
    const uint16_t *new_id;      /* indexed by the face's glyph id */
    size_t face_glyphs;
    size_t subset_glyphs;
    const uint16_t *widths;      /* by new id, thousandths of the em, rounded */
    const uint32_t *unicode;     /* by new id, the code point it stands for (0: none) */
    const unsigned char *packed; /* the file as zlib packs it (RFC 1950) */
    size_t packed_length;
};

/* The set of glyphs used so far, one a face; add every run that will be drawn. */
struct usage;
struct usage *usage_new(const struct faces *faces, struct arena *arena);
void usage_add(struct usage *usage, const struct run *run);
bool usage_any(const struct usage *usage, enum face_role role);

/* The glyphs used, and those of all visible ASCII, so that most boats have the same subset: the
 * first ones of a run are kept with the faces, for whoever uses the same glyphs. False (with a
 * SEVERITY_FAILURE) when HarfBuzz could not. */
bool subset_make(const struct faces *faces, const struct usage *usage, enum face_role role,
                 struct arena *arena, struct subset *out, struct problems *problems);

#endif
