/* run.c - runs of type of a size, and their measures (room: type). It never breaks
 * lines, and it never gives a run in which a letter would be missing. */
#include <string.h>

#include "face_private.h"
#include "promise.h"

/* Widths are rounded up: what was measured to fit does fit. */
static mpt width_of(const struct face *face, int64_t units, mpt size)
{
    int units_per_em = face->metrics.units_per_em;

    promise(units_per_em > 0 && size >= 0);
    return (mpt)((units * size + units_per_em - 1) / units_per_em);
}

bool run_shape(const struct faces *faces, enum face_role role, mpt size, const char *text,
               size_t length, struct arena *arena, struct run *out, uint32_t *missing)
{
    const struct shape *shape = shape_of(faces, role, text, length, missing);

    if (shape == NULL)
        return false;
    struct glyph *glyphs = arena_array(arena, shape->count, sizeof *glyphs);
    if (shape->count > 0)
        memcpy(glyphs, shape->glyphs, shape->count * sizeof *glyphs);
    *out = (struct run){
        .role = role,
        .size = size,
        .text = arena_copy(arena, text, length),
        .glyphs = glyphs,
        .count = shape->count,
        .width = width_of(&faces->of[role], shape->units, size),
    };
    return true;
}

mpt run_width(const struct faces *faces, enum face_role role, mpt size, const char *text,
              size_t length, uint32_t *missing)
{
    uint32_t lost;
    const struct shape *shape = shape_of(faces, role, text, length, missing ? missing : &lost);

    return shape != NULL ? width_of(&faces->of[role], shape->units, size) : 0;
}

int64_t run_units(const struct faces *faces, enum face_role role, const char *text, size_t length)
{
    uint32_t lost;
    const struct shape *shape = shape_of(faces, role, text, length, &lost);

    return shape != NULL ? shape->units : 0;
}

mpt units_width(const struct faces *faces, enum face_role role, int64_t units, mpt size)
{
    promise(role < FACE_COUNT);
    return width_of(&faces->of[role], units, size);
}

/* Rounded down, below zero too. */
static mpt scaled_down(int64_t units, mpt size, int units_per_em)
{
    int64_t scaled = units * size;
    int64_t down = scaled / units_per_em;
    return (mpt)(scaled % units_per_em < 0 ? down - 1 : down);
}

static mpt scaled_up(int64_t units, mpt size, int units_per_em)
{
    return -scaled_down(-units, size, units_per_em);
}

/* HarfBuzz looks a glyph's box up anew in the file each time. */
static const struct glyph_ink *glyph_ink_of(const struct face *face, uint16_t id)
{
    struct glyph_ink *ink = &face->inks[id];
    hb_glyph_extents_t box;

    promise(id < face->glyph_count);
    if (ink->known)
        return ink;
    ink->known = true;
    ink->any = hb_font_get_glyph_extents(face->font, id, &box) && box.width != 0;
    if (ink->any) {
        ink->left = box.x_bearing;
        ink->right = box.x_bearing + box.width;
        ink->top = box.y_bearing;
        ink->foot = box.y_bearing + box.height;
    }
    return ink;
}

struct run_ink run_ink(const struct faces *faces, const struct run *run)
{
    const struct face *face = &faces->of[run->role];
    int64_t pen = 0, left = INT32_MAX, right = INT32_MIN, high = INT32_MIN, low = INT32_MAX;
    int em = face->metrics.units_per_em;

    for (size_t i = 0; i < run->count; pen += run->glyphs[i++].advance) {
        const struct glyph *glyph = &run->glyphs[i];
        const struct glyph_ink *ink = glyph_ink_of(face, glyph->id);
        if (!ink->any)
            continue;
        int64_t x = pen + glyph->offset;
        left = x + ink->left < left ? x + ink->left : left;
        right = x + ink->right > right ? x + ink->right : right;
        high = glyph->rise + ink->top > high ? glyph->rise + ink->top : high;
        low = glyph->rise + ink->foot < low ? glyph->rise + ink->foot : low;
    }
    if (left == INT32_MAX)
        return (struct run_ink){0, 0, 0, 0};
    return (struct run_ink){scaled_down(left, run->size, em), scaled_down(-high, run->size, em),
                            scaled_up(right, run->size, em), scaled_up(-low, run->size, em)};
}
