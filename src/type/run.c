/* run.c - text to glyphs: shaping and measuring (room: type). It never breaks
 * lines, and it never gives a run in which a letter would be missing. */
#include <string.h>

#include "face_private.h"
#include "promise.h"
#include "text.h"
#include "utf8.h"

/* Stands for bytes that are no UTF-8 in *missing. */
#define REPLACEMENT 0xFFFD

/* Every ligature would make one glyph of two letters, which neither the search
 * in a PDF nor the spacing of wide capitals wants. */
static const hb_feature_t features[] = {
    {HB_TAG('k', 'e', 'r', 'n'), 1, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('l', 'i', 'g', 'a'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('c', 'l', 'i', 'g'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('d', 'l', 'i', 'g'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('c', 'a', 'l', 't'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
};

/* The glyphs of a text, in the shared buffer until the next call. */
struct shaped {
    const hb_glyph_info_t *glyphs;
    const hb_glyph_position_t *places;
    size_t count;
};

static struct shaped buffer_shape(const struct faces *faces, enum face_role role,
                                  const char *text, size_t length)
{
    hb_buffer_t *buffer = faces->buffer;
    struct shaped shaped;
    unsigned int count = 0;

    hb_buffer_clear_contents(buffer);
    hb_buffer_add_utf8(buffer, text, (int)length, 0, (int)length);
    hb_buffer_set_direction(buffer, HB_DIRECTION_LTR);
    hb_buffer_set_language(buffer, faces->language);
    hb_buffer_guess_segment_properties(buffer);
    hb_shape(faces->of[role].font, buffer, features, sizeof features / sizeof features[0]);
    shaped.glyphs = hb_buffer_get_glyph_infos(buffer, &count);
    shaped.places = hb_buffer_get_glyph_positions(buffer, NULL);
    shaped.count = count;
    return shaped;
}

/* Glyph 0 is the face's "no such letter": a box, or nothing at all. */
static bool letters_complete(const struct shaped *shaped, const char *text, size_t length,
                             uint32_t *missing)
{
    for (size_t i = 0; i < shaped->count; i++)
        if (shaped->glyphs[i].codepoint == 0) {
            size_t index = shaped->glyphs[i].cluster;
            *missing = REPLACEMENT;
            utf8_next(text, length, &index, missing);
            return false;
        }
    return true;
}

static int64_t shaped_units(const struct shaped *shaped)
{
    int64_t units = 0;

    for (size_t i = 0; i < shaped->count; i++)
        units += shaped->places[i].x_advance;
    return units;
}

/* Widths are rounded up: what was measured to fit does fit. */
static mpt width_of(const struct face *face, int64_t units, mpt size)
{
    int units_per_em = face->metrics.units_per_em;

    promise(units_per_em > 0 && size >= 0);
    return (mpt)((units * size + units_per_em - 1) / units_per_em);
}

/* Shapes and checks: false when a letter is missing or the bytes are no UTF-8. */
static bool text_shape(const struct faces *faces, enum face_role role, const char *text,
                       size_t length, struct shaped *out, uint32_t *missing)
{
    promise(role < FACE_COUNT);
    if (length > INT32_MAX || utf8_first_invalid(text, length) != length) {
        *missing = REPLACEMENT;
        return false;
    }
    *out = buffer_shape(faces, role, text, length);
    return letters_complete(out, text, length, missing);
}

static struct glyph glyph_from(const hb_glyph_info_t *info, const hb_glyph_position_t *place)
{
    return (struct glyph){
        .id = (uint16_t)info->codepoint,
        .cluster = info->cluster,
        .advance = place->x_advance,
        .offset = place->x_offset,
        .rise = place->y_offset,
    };
}

bool run_shape(const struct faces *faces, enum face_role role, mpt size, const char *text,
               size_t length, struct arena *arena, struct run *out, uint32_t *missing)
{
    struct shaped shaped;

    if (!text_shape(faces, role, text, length, &shaped, missing))
        return false;
    struct glyph *glyphs = arena_array(arena, shaped.count, sizeof *glyphs);
    for (size_t i = 0; i < shaped.count; i++)
        glyphs[i] = glyph_from(&shaped.glyphs[i], &shaped.places[i]);
    *out = (struct run){
        .role = role,
        .size = size,
        .text = arena_copy(arena, text, length),
        .glyphs = glyphs,
        .count = shaped.count,
        .width = width_of(&faces->of[role], shaped_units(&shaped), size),
    };
    return true;
}

/* The slot of a text, whatever it holds; NULL for one that no slot can keep. */
static struct measured *slot_of(const struct faces *faces, const char *text, size_t length)
{
    _Static_assert((MEASURED_SLOTS & (MEASURED_SLOTS - 1)) == 0, "a mask finds the slot");

    if (length == 0 || length > sizeof faces->measured->text)
        return NULL;
    return &faces->measured[bytes_hash(BYTES_HASH_START, text, length) & (MEASURED_SLOTS - 1)];
}

static bool slot_holds(const struct measured *slot, enum face_role role, const char *text,
                       size_t length)
{
    return slot->length == length && slot->role == role && memcmp(slot->text, text, length) == 0;
}

static void slot_fill(struct measured *slot, enum face_role role, const char *text,
                      size_t length, int64_t units)
{
    *slot = (struct measured){.units = units, .role = (unsigned char)role,
                              .length = (unsigned char)length};
    memcpy(slot->text, text, length);
}

mpt run_width(const struct faces *faces, enum face_role role, mpt size, const char *text,
              size_t length, uint32_t *missing)
{
    struct measured *slot = slot_of(faces, text, length);
    struct shaped shaped;
    uint32_t lost;

    if (slot != NULL && slot_holds(slot, role, text, length))
        return width_of(&faces->of[role], slot->units, size);
    if (!text_shape(faces, role, text, length, &shaped, missing ? missing : &lost))
        return 0;
    int64_t units = shaped_units(&shaped);
    if (slot != NULL)
        slot_fill(slot, role, text, length, units);
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

struct run_ink run_ink(const struct faces *faces, const struct run *run)
{
    const struct face *face = &faces->of[run->role];
    int64_t pen = 0, left = INT32_MAX, right = INT32_MIN, high = INT32_MIN, low = INT32_MAX;
    int em = face->metrics.units_per_em;

    for (size_t i = 0; i < run->count; pen += run->glyphs[i++].advance) {
        const struct glyph *glyph = &run->glyphs[i];
        hb_glyph_extents_t box;
        if (!hb_font_get_glyph_extents(face->font, glyph->id, &box) || box.width == 0)
            continue;
        int64_t x = pen + glyph->offset + box.x_bearing, y = glyph->rise + box.y_bearing;
        left = x < left ? x : left;
        right = x + box.width > right ? x + box.width : right;
        high = y > high ? y : high;
        low = y + box.height < low ? y + box.height : low;
    }
    if (left > right)
        return (struct run_ink){0, 0, 0, 0};
    return (struct run_ink){scaled_down(left, run->size, em), scaled_down(-high, run->size, em),
                            scaled_up(right, run->size, em), scaled_up(-low, run->size, em)};
}
