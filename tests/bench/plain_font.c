/* plain_font.c - a subset as font objects of a document: a Type0 font over a CIDFontType2 whose
 * codes are the subset's glyph ids. */
#include <string.h>
#include <zlib.h>

#include "plain.h"
#include "promise.h"

#define SYMBOLIC 4            /* FontDescriptor flag: not the standard Latin set */
#define LETTERS_A_BLOCK 100   /* bfchar limit of the CMap format */
#define TAG_LENGTH 6

const char *plain_font_key(enum face_role role)
{
    static const char *const keys[FACE_COUNT] = {
        [FACE_TEXT] = "F1",
        [FACE_BOLD] = "F2",
        [FACE_CODE] = "F3",
    };

    promise(role < FACE_COUNT && keys[role] != NULL);
    return keys[role];
}

/* ABCDEF+Name: the letters follow from the subset's bytes, so equal subsets have
 * equal names and different ones do not. */
static char *tagged_name(const struct subset *subset, const char *name, struct arena *arena)
{
    char tag[TAG_LENGTH + 1] = {0};
    unsigned long sum = crc32_z(0, subset->bytes, subset->length);

    for (size_t i = 0; i < TAG_LENGTH; i++) {
        tag[i] = (char)('A' + (int)(sum % 26));
        sum /= 26;
    }
    return text_format(arena, "%s+%s", tag, name);
}

/* The units of the face in thousandths of the em, as PDF counts; rounded half away from
 * zero. */
static HPDF_INT32 per_mille(int units, const struct face_metrics *metrics)
{
    int em = metrics->units_per_em, half = units < 0 ? -em / 2 : em / 2;

    return (HPDF_INT32)((units * 1000 + half) / em);
}

/* The box that holds every glyph of the face. */
static HPDF_Array bounds_make(HPDF_Doc document, const struct face_metrics *metrics)
{
    HPDF_Array box = HPDF_Array_New(document->mmgr);

    for (size_t i = 0; box != NULL && i < 4; i++)
        HPDF_Array_AddNumber(box, per_mille(metrics->bounds[i], metrics));
    return box;
}

/* A dictionary of its own number in the file. */
static HPDF_Dict dictionary_new(HPDF_Doc document)
{
    HPDF_Dict dictionary = HPDF_Dict_New(document->mmgr);

    if (dictionary == NULL || HPDF_Xref_Add(document->xref, dictionary) != HPDF_OK)
        return NULL;
    return dictionary;
}

/* A stream of these bytes, which libharu packs when it saves. */
static HPDF_Dict stream_new(HPDF_Doc document, const unsigned char *bytes, size_t length)
{
    HPDF_Dict stream = HPDF_DictStream_New(document->mmgr, document->xref);

    if (stream == NULL)
        return NULL;
    stream->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
    if (HPDF_Stream_Write(stream->stream, bytes, (HPDF_UINT)length) != HPDF_OK)
        return NULL;
    return stream;
}

/* What a viewer needs to know of the face, and the subset's bytes. */
static HPDF_Dict descriptor_make(HPDF_Doc document, const struct subset *subset,
                                 const struct face_metrics *metrics, const char *name)
{
    HPDF_Dict descriptor = dictionary_new(document);
    HPDF_Dict file = stream_new(document, subset->bytes, subset->length);

    if (descriptor == NULL || file == NULL)
        return NULL;
    HPDF_Dict_AddNumber(file, "Length1", (HPDF_INT32)subset->length);
    HPDF_Dict_AddName(descriptor, "Type", "FontDescriptor");
    HPDF_Dict_AddName(descriptor, "FontName", name);
    HPDF_Dict_AddNumber(descriptor, "Flags", SYMBOLIC);
    HPDF_Dict_Add(descriptor, "FontBBox", bounds_make(document, metrics));
    HPDF_Dict_AddNumber(descriptor, "ItalicAngle", metrics->italic_angle);
    HPDF_Dict_AddNumber(descriptor, "Ascent", per_mille(metrics->ascent, metrics));
    HPDF_Dict_AddNumber(descriptor, "Descent", per_mille(metrics->descent, metrics));
    HPDF_Dict_AddNumber(descriptor, "CapHeight", per_mille(metrics->cap_height, metrics));
    HPDF_Dict_AddNumber(descriptor, "XHeight", per_mille(metrics->x_height, metrics));
    HPDF_Dict_AddNumber(descriptor, "StemV", 0);   /* unknown, says ISO 32000-2 */
    HPDF_Dict_Add(descriptor, "FontFile2", file);
    return descriptor;
}

/* [0 [w0 w1 ...]]: the widths of all glyphs from number 0 on. */
static HPDF_Array widths_make(HPDF_Doc document, const struct subset *subset)
{
    HPDF_Array outer = HPDF_Array_New(document->mmgr);
    HPDF_Array inner = HPDF_Array_New(document->mmgr);

    if (outer == NULL || inner == NULL)
        return NULL;
    for (size_t i = 0; i < subset->subset_glyphs; i++)
        HPDF_Array_AddNumber(inner, subset->widths[i]);
    HPDF_Array_AddNumber(outer, 0);
    HPDF_Array_Add(outer, inner);
    return outer;
}

/* Identity: codes stand for glyphs directly, not for characters of a collection. */
static HPDF_Dict system_make(HPDF_Doc document)
{
    HPDF_Dict system = HPDF_Dict_New(document->mmgr);

    if (system == NULL)
        return NULL;
    HPDF_Dict_Add(system, "Registry", HPDF_String_New(document->mmgr, "Adobe", NULL));
    HPDF_Dict_Add(system, "Ordering", HPDF_String_New(document->mmgr, "Identity", NULL));
    HPDF_Dict_AddNumber(system, "Supplement", 0);
    return system;
}

/* The font proper, under the Type0 font that wraps it: glyphs by number, and their
 * widths. */
static HPDF_Dict descendant_make(HPDF_Doc document, const struct subset *subset,
                                 const char *name, HPDF_Dict descriptor)
{
    HPDF_Dict font = dictionary_new(document);

    if (font == NULL)
        return NULL;
    HPDF_Dict_AddName(font, "Type", "Font");
    HPDF_Dict_AddName(font, "Subtype", "CIDFontType2");
    HPDF_Dict_AddName(font, "BaseFont", name);
    HPDF_Dict_Add(font, "CIDSystemInfo", system_make(document));
    HPDF_Dict_Add(font, "FontDescriptor", descriptor);
    HPDF_Dict_AddName(font, "CIDToGIDMap", "Identity");
    HPDF_Dict_AddNumber(font, "DW", subset->widths[0]);
    HPDF_Dict_Add(font, "W", widths_make(document, subset));
    return font;
}

/* One code and its letter in UTF-16BE. */
static void cmap_letter_add(struct text_builder *out, size_t id, uint32_t letter)
{
    if (letter < 0x10000)
        text_add_format(out, "<%04zX> <%04X>\n", id, (unsigned)letter);
    else
        text_add_format(out, "<%04zX> <%04X%04X>\n", id,
                        (unsigned)(0xD800 + ((letter - 0x10000) >> 10)),
                        (unsigned)(0xDC00 + ((letter - 0x10000) & 0x3FF)));
}

/* In blocks of a hundred, the limit of the format; glyph 0 stands for no letter. */
static void cmap_letters_add(struct text_builder *out, const struct subset *subset)
{
    struct text_builder block = text_builder_in(out->arena);
    size_t count = 0;

    promise(subset->subset_glyphs == 0 || subset->unicode != NULL);
    for (size_t id = 1; id <= subset->subset_glyphs; id++) {
        if (id < subset->subset_glyphs && subset->unicode[id] != 0) {
            cmap_letter_add(&block, id, subset->unicode[id]);
            count++;
        }
        if (count == LETTERS_A_BLOCK || (id == subset->subset_glyphs && count > 0)) {
            text_add_format(out, "%zu beginbfchar\n%sendbfchar\n", count, block.at);
            block = text_builder_in(out->arena);
            count = 0;
        }
    }
}

/* The map from codes back to letters, by which a reader of the PDF searches and copies
 * its words. */
static const char *letters_of(const struct subset *subset, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
                   "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
                   "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
                   "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n");
    cmap_letters_add(&out, subset);
    text_add(&out, "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
    return out.at;
}

struct plain_face plain_face_of(const struct faces *faces, const struct usage *usage,
                                enum face_role role, struct arena *arena,
                                struct problems *problems)
{
    struct plain_face face = {.metrics = face_metrics(faces, role)};

    if (!usage_any(usage, role) ||
        !subset_make(faces, usage, role, arena, &face.subset, problems))
        return (struct plain_face){0};
    face.name = tagged_name(&face.subset, face_postscript_name(faces, role), arena);
    face.letters = letters_of(&face.subset, arena);
    return face;
}

HPDF_Dict plain_font_add(HPDF_Doc document, const struct plain_face *face)
{
    HPDF_Dict descriptor = descriptor_make(document, &face->subset, face->metrics, face->name);
    HPDF_Dict descendant =
        descriptor ? descendant_make(document, &face->subset, face->name, descriptor) : NULL;
    HPDF_Dict letters = stream_new(document, (const unsigned char *)face->letters,
                                   strlen(face->letters));
    HPDF_Dict font = dictionary_new(document);
    HPDF_Array descendants = HPDF_Array_New(document->mmgr);

    if (descendant == NULL || letters == NULL || font == NULL || descendants == NULL)
        return NULL;
    HPDF_Array_Add(descendants, descendant);
    HPDF_Dict_AddName(font, "Type", "Font");
    HPDF_Dict_AddName(font, "Subtype", "Type0");
    HPDF_Dict_AddName(font, "BaseFont", face->name);
    HPDF_Dict_AddName(font, "Encoding", "Identity-H");
    HPDF_Dict_Add(font, "DescendantFonts", descendants);
    HPDF_Dict_Add(font, "ToUnicode", letters);
    return font;
}
