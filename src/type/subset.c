/* subset.c - which glyphs are used, and faces cut down to them (room: type). It
 * knows no PDF: what a subset is embedded in is the draw room's matter. */
#include <hb-subset.h>
#include <string.h>
#include <zlib.h>

#include "face_private.h"
#include "promise.h"
#include "utf8.h"

/* So many subsets a face are kept: boats differ in few letters, and memory must not grow with
 * them. */
#define SUBSETS_KEPT 8

/* By glyph id of a face: whether used, and the code point it stands for. */
struct glyphs_used {
    bool *used;
    uint32_t *unicode;
};
struct usage {
    struct glyphs_used of[FACE_COUNT];
    bool any[FACE_COUNT];
};

/* Tables a PDF viewer does not read: it has glyph ids, not characters. */
static const hb_tag_t dropped_tables[] = {
    HB_TAG('G', 'S', 'U', 'B'), HB_TAG('G', 'P', 'O', 'S'), HB_TAG('G', 'D', 'E', 'F'),
    HB_TAG('k', 'e', 'r', 'n'), HB_TAG('n', 'a', 'm', 'e'), HB_TAG('c', 'm', 'a', 'p'),
    HB_TAG('O', 'S', '/', '2'), HB_TAG('p', 'o', 's', 't'), HB_TAG('c', 'v', 't', ' '),
    HB_TAG('f', 'p', 'g', 'm'), HB_TAG('p', 'r', 'e', 'p'), HB_TAG('h', 'd', 'm', 'x'),
    HB_TAG('g', 'a', 's', 'p'), HB_TAG('L', 'T', 'S', 'H'), HB_TAG('V', 'D', 'M', 'X'),
    HB_TAG('D', 'S', 'I', 'G'), HB_TAG('F', 'F', 'T', 'M'),
};

static struct glyphs_used glyphs_new(size_t count, struct arena *arena)
{
    return (struct glyphs_used){arena_array(arena, count, sizeof(bool)),
                                arena_array(arena, count, sizeof(uint32_t))};
}

struct usage *usage_new(const struct faces *faces, struct arena *arena)
{
    struct usage *usage = arena_alloc(arena, sizeof *usage);

    for (size_t i = 0; i < FACE_COUNT; i++)
        usage->of[i] = glyphs_new(faces->of[i].glyph_count, arena);
    return usage;
}

/* Where two letters share a glyph the lower code point names it, so that the
 * order in which runs are added does not matter. */
static void glyph_use(struct glyphs_used *glyphs, uint16_t id, uint32_t code_point)
{
    uint32_t *known = &glyphs->unicode[id];

    glyphs->used[id] = true;
    if (*known == 0 || code_point < *known)
        *known = code_point;
}

void usage_add(struct usage *usage, const struct run *run)
{
    size_t length = strlen(run->text);

    promise(run->role < FACE_COUNT);
    for (size_t i = 0; i < run->count; i++) {
        size_t index = run->glyphs[i].cluster;
        uint32_t code_point = 0;
        utf8_next(run->text, length, &index, &code_point);
        glyph_use(&usage->of[run->role], run->glyphs[i].id, code_point);
        usage->any[run->role] = true;
    }
}

bool usage_any(const struct usage *usage, enum face_role role)
{
    promise(role < FACE_COUNT);
    return usage->any[role];
}

static hb_subset_input_t *input_make(const bool *used, size_t count)
{
    hb_subset_input_t *input = hb_subset_input_create_or_fail();

    if (input == NULL)
        return NULL;
    hb_set_t *glyphs = hb_subset_input_glyph_set(input);
    for (size_t i = 0; i < count; i++)
        if (used[i])
            hb_set_add(glyphs, (hb_codepoint_t)i);
    hb_set_t *dropped = hb_subset_input_set(input, HB_SUBSET_SETS_DROP_TABLE_TAG);
    for (size_t i = 0; i < sizeof dropped_tables / sizeof dropped_tables[0]; i++)
        hb_set_add(dropped, dropped_tables[i]);
    hb_subset_input_set_flags(input, HB_SUBSET_FLAGS_NOTDEF_OUTLINE | HB_SUBSET_FLAGS_NO_HINTING);
    return input;
}

/* Numbers, widths and letters of the new glyphs. */
static void glyphs_describe(const struct face *face, const uint32_t *unicode,
                            const hb_map_t *new_of_old, struct arena *arena, struct subset *out)
{
    uint16_t *new_id = arena_array(arena, face->glyph_count, sizeof *new_id);
    uint16_t *widths = arena_array(arena, out->subset_glyphs, sizeof *widths);
    uint32_t *letters = arena_array(arena, out->subset_glyphs, sizeof *letters);
    int64_t em = face->metrics.units_per_em;

    for (size_t old = 0; old < face->glyph_count; old++) {
        hb_codepoint_t id = hb_map_get(new_of_old, (hb_codepoint_t)old);
        if (id == HB_MAP_VALUE_INVALID || id >= out->subset_glyphs)
            continue;
        int64_t advance = hb_font_get_glyph_h_advance(face->font, (hb_codepoint_t)old);
        new_id[old] = (uint16_t)id;
        widths[id] = (uint16_t)((advance * 1000 + em / 2) / em);
        letters[id] = unicode[old];
    }
    out->new_id = new_id;
    out->widths = widths;
    out->unicode = letters;
}

/* HarfBuzz's objects live and die here; what is kept is copied to the arena. */
static bool face_cut(const struct face *face, const hb_subset_input_t *input,
                     const uint32_t *unicode, struct arena *arena, struct subset *out)
{
    hb_subset_plan_t *plan = hb_subset_plan_create_or_fail(face->face, input);
    hb_face_t *cut = plan ? hb_subset_plan_execute_or_fail(plan) : NULL;

    if (cut != NULL) {
        hb_blob_t *blob = hb_face_reference_blob(cut);
        unsigned int length = 0;
        const char *bytes = hb_blob_get_data(blob, &length);
        out->bytes = (const unsigned char *)arena_copy(arena, bytes, length);
        out->length = length;
        out->face_glyphs = face->glyph_count;
        out->subset_glyphs = hb_face_get_glyph_count(cut);
        hb_blob_destroy(blob);
        glyphs_describe(face, unicode, hb_subset_plan_old_to_new_glyph_mapping(plan), arena, out);
    }
    hb_face_destroy(cut);
    hb_subset_plan_destroy(plan);
    return cut != NULL && out->length > 0;
}

/* As small as zlib can: most are used for all boats of a run. */
static bool subset_pack(struct subset *subset, struct arena *arena)
{
    uLongf length = compressBound((uLong)subset->length);
    unsigned char *packed = arena_alloc(arena, length);
    bool done = compress2(packed, &length, subset->bytes, (uLong)subset->length,
                          Z_BEST_COMPRESSION) == Z_OK;

    subset->packed = packed;
    subset->packed_length = length;
    return done;
}

static bool subset_cut(const struct face *face, const struct glyphs_used *glyphs,
                       struct arena *arena, struct subset *out)
{
    hb_subset_input_t *input = input_make(glyphs->used, face->glyph_count);
    bool made = input != NULL && face_cut(face, input, glyphs->unicode, arena, out) &&
                subset_pack(out, arena);

    hb_subset_input_destroy(input);
    return made;
}

/* ---- what is kept ---- */

struct kept_subset {
    struct glyphs_used glyphs;
    struct subset subset;
};
struct subsets {
    struct arena *arena;
    struct kept_subset kept[FACE_COUNT][SUBSETS_KEPT];
    size_t count[FACE_COUNT];
};

struct subsets *subsets_new(struct arena *arena)
{
    struct subsets *subsets = arena_alloc(arena, sizeof *subsets);

    subsets->arena = arena;
    return subsets;
}

static bool glyphs_equal(const struct glyphs_used *a, const struct glyphs_used *b, size_t count)
{
    return memcmp(a->used, b->used, count * sizeof *a->used) == 0 &&
           memcmp(a->unicode, b->unicode, count * sizeof *a->unicode) == 0;
}

static const struct subset *subset_known(const struct subsets *subsets, enum face_role role,
                                         const struct glyphs_used *glyphs, size_t count)
{
    for (size_t i = 0; i < subsets->count[role]; i++)
        if (glyphs_equal(&subsets->kept[role][i].glyphs, glyphs, count))
            return &subsets->kept[role][i].subset;
    return NULL;
}

static struct glyphs_used glyphs_copy(const struct glyphs_used *of, size_t count,
                                      struct arena *arena)
{
    struct glyphs_used copy = glyphs_new(count, arena);

    memcpy(copy.used, of->used, count * sizeof *copy.used);
    memcpy(copy.unicode, of->unicode, count * sizeof *copy.unicode);
    return copy;
}

static void ascii_use(const struct face *face, struct glyphs_used *glyphs)
{
    for (uint32_t letter = ' '; letter <= '~'; letter++) {
        hb_codepoint_t id;
        if (hb_font_get_nominal_glyph(face->font, letter, &id))
            glyph_use(glyphs, (uint16_t)id, letter);
    }
}

/* Makes it in the arena of the faces while there is room for one more, else in the caller's. */
bool subset_make(const struct faces *faces, const struct usage *usage, enum face_role role,
                 struct arena *arena, struct subset *out, struct problems *problems)
{
    const struct face *face = &faces->of[role];
    struct subsets *subsets = faces->subsets;
    struct glyphs_used glyphs = glyphs_copy(&usage->of[role], face->glyph_count, arena);

    ascii_use(face, &glyphs);
    const struct subset *known = subset_known(subsets, role, &glyphs, face->glyph_count);
    bool kept = known == NULL && subsets->count[role] < SUBSETS_KEPT;
    bool made = known != NULL ||
                subset_cut(face, &glyphs, kept ? subsets->arena : arena, out);

    if (known != NULL)
        *out = *known;
    else if (made && kept)
        subsets->kept[role][subsets->count[role]++] = (struct kept_subset){
            glyphs_copy(&glyphs, face->glyph_count, subsets->arena), *out};
    if (!made)
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "the %s face could not be cut down to the letters used",
                    face_role_word(role));
    return made;
}
