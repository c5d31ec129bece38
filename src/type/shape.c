/* shape.c - the shapes of texts, kept from one call to the next: fitting sets the same words
 * again and again (room: type). It knows no sizes, and gives no shape in which a letter would
 * be missing. */
#include <string.h>

#include "face_private.h"
#include "promise.h"
#include "text.h"
#include "utf8.h"

/* Stands for bytes that are no UTF-8 in *missing. */
#define REPLACEMENT 0xFFFD

/* A power of two; more texts than slots only make chains. */
#define SHAPE_SLOTS 8192
/* A boat's set has about 2 MB of shapes. Of more the room is given back, and all begins anew. */
#define SHAPES_MOST ((size_t)4 * 1024 * 1024)
#define SHAPES_LIMIT ((size_t)1024 * 1024 * 1024)

/* A shape that is kept, by its face and text. */
struct kept_shape {
    struct kept_shape *next;
    uint64_t hash;
    enum face_role role;
    size_t length;
    const char *text;
    struct shape shape;
};

struct shapes {
    struct arena *arena;
    struct kept_shape **slots;    /* SHAPE_SLOTS of them */
    size_t bytes;                 /* kept since it began */
    size_t shaped;                /* texts, kept or not, since the faces were opened */
};

/* Every ligature would make one glyph of two letters, which neither the search
 * in a PDF nor the spacing of wide capitals wants. */
static const hb_feature_t features[] = {
    {HB_TAG('k', 'e', 'r', 'n'), 1, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('l', 'i', 'g', 'a'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('c', 'l', 'i', 'g'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('d', 'l', 'i', 'g'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
    {HB_TAG('c', 'a', 'l', 't'), 0, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END},
};

/* ---- keeping ---- */

static void shapes_begin(struct shapes *shapes)
{
    _Static_assert((SHAPE_SLOTS & (SHAPE_SLOTS - 1)) == 0, "a mask finds the slot");
    shapes->arena = arena_new(SHAPES_LIMIT);
    shapes->slots = arena_array(shapes->arena, SHAPE_SLOTS, sizeof *shapes->slots);
    shapes->bytes = 0;
}

struct shapes *shapes_new(struct arena *arena)
{
    struct shapes *shapes = arena_alloc(arena, sizeof *shapes);
    shapes_begin(shapes);
    return shapes;
}

void shapes_close(struct shapes *shapes)
{
    if (shapes == NULL)
        return;
    arena_free(shapes->arena);
    shapes->arena = NULL;
}

static struct kept_shape **shape_slot(const struct shapes *shapes, uint64_t hash)
{
    return &shapes->slots[(hash ^ hash >> 32) & (SHAPE_SLOTS - 1)];
}

static uint64_t shape_hash(enum face_role role, const char *text, size_t length)
{
    return bytes_hash_fast(BYTES_HASH_START + (uint64_t)role, text, length);
}

static const struct shape *shape_find(const struct shapes *shapes, uint64_t hash,
                                      enum face_role role, const char *text, size_t length)
{
    for (const struct kept_shape *kept = *shape_slot(shapes, hash); kept != NULL; kept = kept->next)
        if (kept->hash == hash && kept->role == role && kept->length == length &&
            memcmp(kept->text, text, length) == 0)
            return &kept->shape;
    return NULL;
}

/* Room for a text's shape, linked in its slot. */
static struct shape *shape_keep(struct shapes *shapes, uint64_t hash, enum face_role role,
                                const char *text, size_t length, size_t glyph_count)
{
    size_t bytes = sizeof(struct kept_shape) + length + glyph_count * sizeof(struct glyph);

    if (shapes->bytes + bytes > SHAPES_MOST) {
        arena_free(shapes->arena);
        shapes_begin(shapes);
    }
    struct kept_shape **slot = shape_slot(shapes, hash);
    struct kept_shape *kept = arena_alloc(shapes->arena, sizeof *kept);
    *kept = (struct kept_shape){
        .next = *slot, .hash = hash, .role = role, .length = length,
        .text = arena_copy(shapes->arena, text, length),
        .shape.glyphs = arena_array(shapes->arena, glyph_count, sizeof(struct glyph))};
    *slot = kept;
    shapes->bytes += bytes;
    return &kept->shape;
}

/* ---- making ---- */

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

static void buffer_shape(const struct faces *faces, enum face_role role, const char *text,
                         size_t length)
{
    hb_buffer_t *buffer = faces->buffer;

    hb_buffer_clear_contents(buffer);
    hb_buffer_add_utf8(buffer, text, (int)length, 0, (int)length);
    hb_buffer_set_direction(buffer, HB_DIRECTION_LTR);
    hb_buffer_set_language(buffer, faces->language);
    hb_buffer_guess_segment_properties(buffer);
    hb_shape(faces->of[role].font, buffer, features, sizeof features / sizeof features[0]);
}

/* Glyph 0 is the face's "no such letter": a box, or nothing at all. */
static bool letters_complete(const hb_glyph_info_t *infos, size_t count, const char *text,
                             size_t length, uint32_t *missing)
{
    for (size_t i = 0; i < count; i++)
        if (infos[i].codepoint == 0) {
            size_t index = infos[i].cluster;
            *missing = REPLACEMENT;
            utf8_next(text, length, &index, missing);
            return false;
        }
    return true;
}

static const struct shape *shape_make(const struct faces *faces, uint64_t hash,
                                      enum face_role role, const char *text, size_t length,
                                      uint32_t *missing)
{
    unsigned int count = 0;

    if (length > INT32_MAX || utf8_first_invalid(text, length) != length) {
        *missing = REPLACEMENT;
        return NULL;
    }
    buffer_shape(faces, role, text, length);
    faces->shapes->shaped++;
    const hb_glyph_info_t *infos = hb_buffer_get_glyph_infos(faces->buffer, &count);
    const hb_glyph_position_t *places = hb_buffer_get_glyph_positions(faces->buffer, NULL);
    if (!letters_complete(infos, count, text, length, missing))
        return NULL;
    struct shape *shape = shape_keep(faces->shapes, hash, role, text, length, count);
    for (size_t i = 0; i < count; i++) {
        shape->glyphs[i] = glyph_from(&infos[i], &places[i]);
        shape->units += places[i].x_advance;
    }
    shape->count = count;
    return shape;
}

const struct shape *shape_of(const struct faces *faces, enum face_role role, const char *text,
                             size_t length, uint32_t *missing)
{
    promise(role < FACE_COUNT);
    uint64_t hash = shape_hash(role, text, length);
    const struct shape *shape = shape_find(faces->shapes, hash, role, text, length);
    return shape != NULL ? shape : shape_make(faces, hash, role, text, length, missing);
}

size_t texts_shaped(const struct faces *faces)
{
    return faces->shapes->shaped;
}
