/* pdf_text.c - runs of glyphs as text operators, and texts for people as PDF
 * strings (room: draw). Libharu's own text calls are not used: its fonts can drop
 * a part of a letter without a word. */
#include <string.h>

#include "pdf_private.h"
#include "text.h"
#include "utf8.h"

/* Thousandths of the em by which a glyph may stand beside its place before a
 * correction is written; corrections do not add up. */
#define TOLERANCE 2

static void unit_add(struct text_builder *out, uint32_t unit)
{
    text_add_format(out, "%04X", (unsigned)unit);
}

/* Hexadecimal UTF-16BE without a mark. */
static void utf16_add(struct text_builder *out, const char *text, size_t length)
{
    size_t index = 0;
    uint32_t code_point;

    while (index < length && utf8_next(text, length, &index, &code_point)) {
        if (code_point >= 0x10000) {
            unit_add(out, 0xD800 + ((code_point - 0x10000) >> 10));
            unit_add(out, 0xDC00 + ((code_point - 0x10000) & 0x3FF));
        } else {
            unit_add(out, code_point);
        }
    }
}

/* The same of two texts, with the mark before them. */
static struct text_builder spelled(const char *text, const char *behind, struct arena *arena)
{
    struct text_builder hex = text_builder_in(arena);

    text_add(&hex, "FEFF");
    utf16_add(&hex, text, strlen(text));
    utf16_add(&hex, behind, strlen(behind));
    return hex;
}

HPDF_Binary text_string(HPDF_Doc document, const char *text, struct arena *arena)
{
    struct text_builder hex = spelled(text, "", arena);
    unsigned char *bytes = arena_alloc(arena, hex.length / 2);

    for (size_t i = 0; i < hex.length / 2; i++)
        bytes[i] = (unsigned char)(hex_digit_value(hex.at[2 * i]) << 4 |
                                   hex_digit_value(hex.at[2 * i + 1]));
    return HPDF_Binary_New(document->mmgr, bytes, (HPDF_UINT)(hex.length / 2));
}

static uint32_t letter_of(uint32_t code_point)
{
    return code_point == 0x00A0 || code_point == 0x202F ? ' ' : code_point;
}

/* Whether the glyphs' own letters give the text back, one by one. They do not
 * where a glyph is shared (Greek Alpha drawn by Latin A) or several make one
 * letter: then the text is written beside them. */
static bool letters_tell(const struct run *run, const struct subset *subset)
{
    size_t length = strlen(run->text), index = 0;

    for (size_t i = 0; i < run->count; i++) {
        uint32_t code_point = 0, known = subset->unicode[subset->new_id[run->glyphs[i].id]];
        if (!utf8_next(run->text, length, &index, &code_point) ||
            letter_of(code_point) != letter_of(known))
            return false;
    }
    return index == length;
}

/* Glyphs being written as the operand of TJ; places in thousandths of the em. */
struct glyph_line {
    struct content *out;
    int64_t place;
    int32_t rise;
};

static void rise_set(struct glyph_line *line, const struct run *run, int32_t rise, int64_t em)
{
    if (rise == line->rise)
        return;
    content_add(line->out, ")] TJ ");
    content_milli_add(line->out, (int64_t)rise * run->size / em);
    content_add(line->out, "Ts [(");
    line->rise = rise;
}

static void glyphs_add(struct content *out, const struct run *run, const struct pdf_face *face,
                       enum text_end end)
{
    struct glyph_line line = {.out = out};
    int64_t em = face->metrics->units_per_em, pen = 0;

    content_add(out, "[(");
    for (size_t i = 0; i < run->count; i++) {
        const struct glyph *glyph = &run->glyphs[i];
        uint16_t id = face->subset.new_id[glyph->id];
        int64_t ideal = ((pen + glyph->offset) * 1000) / em;
        int64_t beside = ideal - line.place;
        rise_set(&line, run, glyph->rise, em);
        if (beside >= TOLERANCE || beside <= -TOLERANCE) {
            content_add(out, ")");
            content_whole_add(out, -beside);
            content_add(out, "(");
            line.place = ideal;
        }
        content_glyph_add(out, id);
        line.place += face->subset.widths[id];
        pen += glyph->advance;
    }
    rise_set(&line, run, 0, em);
    if (end == TEXT_SPACED)
        content_glyph_add(out, face->subset.new_id[face->space]);
    content_add(out, ")] TJ\n");
}

/* Face and size last from one text to the next. */
static void face_set(struct content *out, const struct run *run)
{
    struct pen_state *state = &out->state;

    if (state->face == (int)run->role && state->size == run->size)
        return;
    state->face = (int)run->role;
    state->size = run->size;
    content_add(out, "/");
    content_add(out, font_key(run->role));
    content_add(out, " ");
    content_milli_add(out, run->size);
    content_add(out, "Tf\n");
}

void text_draw(const struct canvas *canvas, const struct page_item *item, enum text_end end)
{
    const struct run *run = item->run;
    const struct pdf_face *face = &canvas->faces[run->role];
    struct content *out = canvas->content;

    if (run->count == 0)
        return;
    if (letters_tell(run, &face->subset))
        tags_go_to(canvas, item->reading);
    else
        tags_spell(canvas, item->reading,
                   spelled(run->text, end == TEXT_SPACED ? " " : "", canvas->arena).at);
    content_fill_set(out, ink_rgb(canvas->palette, item->fill));
    content_add(out, "BT\n");
    face_set(out, run);
    content_add(out, "1 0 0 1 ");
    content_milli_add(out, item->area.x);
    content_milli_add(out, (int64_t)canvas->height - item->baseline);
    content_add(out, "Tm\n");
    glyphs_add(out, run, face, end);
    content_add(out, "ET\n");
}
