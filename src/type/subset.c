/* subset.c - which glyphs are used, and faces cut down to them (room: type). It
 * knows no PDF: what a subset is embedded in is the draw room's matter. */
#include <hb-subset.h>
#include <string.h>

#include "face_private.h"
#include "promise.h"
#include "utf8.h"

/* By face and its glyph id: whether used, and the code point it stands for. */
struct usage {
    bool *used[FACE_COUNT];
    uint32_t *unicode[FACE_COUNT];
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

struct usage *usage_new(const struct faces *faces, struct arena *arena)
{
    struct usage *usage = arena_alloc(arena, sizeof *usage);

    for (size_t i = 0; i < FACE_COUNT; i++) {
        size_t count = faces->of[i].glyph_count;
        usage->used[i] = arena_array(arena, count, sizeof *usage->used[i]);
        usage->unicode[i] = arena_array(arena, count, sizeof *usage->unicode[i]);
    }
    return usage;
}

/* Where two letters share a glyph the lower code point names it, so that the
 * order in which runs are added does not matter. */
void usage_add(struct usage *usage, const struct run *run)
{
    size_t length = strlen(run->text);

    promise(run->role < FACE_COUNT);
    for (size_t i = 0; i < run->count; i++) {
        size_t index = run->glyphs[i].cluster;
        uint32_t *known = &usage->unicode[run->role][run->glyphs[i].id];
        uint32_t code_point = 0;
        utf8_next(run->text, length, &index, &code_point);
        usage->used[run->role][run->glyphs[i].id] = true;
        usage->any[run->role] = true;
        if (*known == 0 || code_point < *known)
            *known = code_point;
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

bool subset_make(const struct faces *faces, const struct usage *usage, enum face_role role,
                 struct arena *arena, struct subset *out, struct problems *problems)
{
    const struct face *face = &faces->of[role];
    hb_subset_input_t *input = input_make(usage->used[role], face->glyph_count);
    bool made = input != NULL && face_cut(face, input, usage->unicode[role], arena, out);

    hb_subset_input_destroy(input);
    if (!made)
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "the %s face could not be cut down to the letters used",
                    face_role_word(role));
    return made;
}
