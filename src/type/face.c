/* face.c - opens the faces, checks their files and reads their metrics (room:
 * type). A font file is parsed only after its checksum was found among the known
 * ones; the file of an unknown sum is never handed to HarfBuzz. */
#include <hb-ot.h>
#include <string.h>

#include "face_private.h"
#include "promise.h"
#include "sha256.h"
#include "text.h"

#define FONT_LIMIT (8 * 1024 * 1024)
#define POSTSCRIPT_NAME_ID 6

/* Offsets in the tables of a TrueType file (OpenType specification 1.9). */
enum { HEAD_BOUNDS = 36, HEAD_LENGTH = 54, HHEA_ASCENT = 4, HHEA_DESCENT = 6, HHEA_LENGTH = 36,
       OS2_X_HEIGHT = 86, OS2_CAP_HEIGHT = 88, OS2_LENGTH = 96, POST_ANGLE = 4, POST_LENGTH = 32 };

static int signed_16(const unsigned char *at)
{
    return (int16_t)(uint16_t)(at[0] << 8 | at[1]);
}

/* Copies the first `length` bytes of a table; false when it is shorter. */
static bool table_copy(hb_face_t *face, hb_tag_t tag, unsigned char *out, size_t length)
{
    hb_blob_t *blob = hb_face_reference_table(face, tag);
    unsigned int size = 0;
    const char *bytes = hb_blob_get_data(blob, &size);
    bool whole = bytes != NULL && size >= length;

    if (whole)
        memcpy(out, bytes, length);
    hb_blob_destroy(blob);
    return whole;
}

static bool metrics_read(hb_face_t *face, struct face_metrics *out)
{
    unsigned char head[HEAD_LENGTH], hhea[HHEA_LENGTH], os2[OS2_LENGTH], post[POST_LENGTH];

    if (!table_copy(face, HB_TAG('h', 'e', 'a', 'd'), head, sizeof head) ||
        !table_copy(face, HB_TAG('h', 'h', 'e', 'a'), hhea, sizeof hhea) ||
        !table_copy(face, HB_TAG('O', 'S', '/', '2'), os2, sizeof os2) ||
        !table_copy(face, HB_TAG('p', 'o', 's', 't'), post, sizeof post))
        return false;
    out->units_per_em = (int)hb_face_get_upem(face);
    for (size_t i = 0; i < 4; i++)
        out->bounds[i] = signed_16(head + HEAD_BOUNDS + 2 * i);
    out->ascent = signed_16(hhea + HHEA_ASCENT);
    out->descent = signed_16(hhea + HHEA_DESCENT);
    out->x_height = signed_16(os2 + OS2_X_HEIGHT);
    out->cap_height = signed_16(os2 + OS2_CAP_HEIGHT);
    out->italic_angle = signed_16(post + POST_ANGLE);
    return out->units_per_em > 0;
}

static const char *name_read(hb_face_t *face, struct arena *arena)
{
    char name[64];
    unsigned int length = sizeof name;

    hb_ot_name_get_utf8(face, POSTSCRIPT_NAME_ID, HB_LANGUAGE_INVALID, &length, name);
    return arena_copy(arena, name, strlen(name));
}

/* The font is made once and scaled to its own units: runs are kept in them. */
static bool face_make(struct face *out, const struct source *file, struct arena *arena)
{
    hb_blob_t *blob = hb_blob_create(file->bytes, (unsigned int)file->length,
                                     HB_MEMORY_MODE_READONLY, NULL, NULL);

    out->face = hb_face_create(blob, 0);
    hb_blob_destroy(blob);
    out->glyph_count = hb_face_get_glyph_count(out->face);
    if (out->glyph_count == 0 || !metrics_read(out->face, &out->metrics))
        return false;
    out->font = hb_font_create(out->face);
    hb_ot_font_set_funcs(out->font);
    hb_font_set_scale(out->font, out->metrics.units_per_em, out->metrics.units_per_em);
    hb_font_make_immutable(out->font);
    out->name = name_read(out->face, arena);
    out->inks = arena_array(arena, out->glyph_count, sizeof *out->inks);
    return true;
}

static bool sum_known(const struct face_line *line, const struct source *file, const char *path,
                      struct arena *arena, struct problems *problems)
{
    char found[SHA256_TEXT];
    const struct known_sum *sum;
    struct text_builder versions = text_builder_in(arena);

    sha256_text((const unsigned char *)file->bytes, file->length, found);
    for (sum = line->sums; sum != NULL; sum = sum->next) {
        if (text_equal(sum->sum, found))
            return true;
        text_add_format(&versions, "%s%s", sum == line->sums ? "" : " or ", sum->version);
    }
    problem_add(problems, SEVERITY_FAILURE, (struct place){0},
                text_format(arena, "install version %s of the package %s and copy its fonts again",
                            versions.at, line->package),
                "the font file %s is not one that was checked: its SHA-256 is %s", path, found);
    return false;
}

static bool face_open(struct face *out, const struct face_line *line, const char *folder,
                      struct arena *arena, struct problems *problems)
{
    const char *path = text_format(arena, "%s/%s", folder, line->file);
    struct source *file = NULL;

    if (source_read(arena, path, FONT_LIMIT, &file) != SOURCE_READ) {
        problem_add(problems, SEVERITY_FAILURE, (struct place){0},
                    text_format(arena, "install the package %s %s and copy its fonts again",
                                line->package, line->sums->version),
                    "the font file %s cannot be read", path);
        return false;
    }
    if (!sum_known(line, file, path, arena, problems))
        return false;
    if (!face_make(out, file, arena)) {
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "the font file %s lacks a table that is needed", path);
        return false;
    }
    return true;
}

/* "und" is said outright: left open, HarfBuzz would ask the locale. */
static void shaping_prepare(struct faces *faces)
{
    faces->buffer = hb_buffer_create();
    faces->language = hb_language_from_string("und", -1);
}

struct faces *faces_open(const char *folder, struct arena *arena, struct problems *problems)
{
    struct face_line lines[FACE_COUNT] = {{0}};
    struct faces *faces = arena_alloc(arena, sizeof *faces);
    bool good = face_list_read(folder, arena, lines, problems);

    if (!good)
        return NULL;
    for (size_t i = 0; i < FACE_COUNT; i++)
        good = face_open(&faces->of[i], &lines[i], folder, arena, problems) && good;
    faces->shapes = shapes_new(arena);
    faces->subsets = subsets_new(arena);
    shaping_prepare(faces);
    if (good && hb_buffer_allocation_successful(faces->buffer))
        return faces;
    if (good)
        problem_add(problems, SEVERITY_FAILURE, (struct place){0}, NULL,
                    "no memory for shaping text");
    faces_close(faces);
    return NULL;
}

void faces_close(struct faces *faces)
{
    if (faces == NULL)
        return;
    for (size_t i = 0; i < FACE_COUNT; i++) {
        hb_font_destroy(faces->of[i].font);
        hb_face_destroy(faces->of[i].face);
    }
    hb_buffer_destroy(faces->buffer);
    shapes_close(faces->shapes);
}

const struct face_metrics *face_metrics(const struct faces *faces, enum face_role role)
{
    promise(role < FACE_COUNT);
    return &faces->of[role].metrics;
}

const char *face_postscript_name(const struct faces *faces, enum face_role role)
{
    promise(role < FACE_COUNT);
    return faces->of[role].name;
}
