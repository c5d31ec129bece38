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

void decimal_add(struct text_builder *out, int64_t milli)
{
    int64_t size = milli < 0 ? -milli : milli;
    int fraction = (int)(size % 1000);

    text_add_format(out, "%s%lld", milli < 0 ? "-" : "", (long long)(size / 1000));
    if (fraction % 10 != 0)
        text_add_format(out, ".%03d", fraction);
    else if (fraction % 100 != 0)
        text_add_format(out, ".%02d", fraction / 10);
    else if (fraction != 0)
        text_add_format(out, ".%d", fraction / 100);
}

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
    struct text_builder *out;
    int64_t place;
    int32_t rise;
};

static void rise_set(struct glyph_line *line, const struct run *run, int32_t rise, int64_t em)
{
    if (rise == line->rise)
        return;
    text_add(line->out, ">] TJ ");
    decimal_add(line->out, (int64_t)rise * run->size / em);
    text_add(line->out, " Ts [<");
    line->rise = rise;
}

static void glyphs_add(struct text_builder *out, const struct run *run,
                       const struct pdf_face *face)
{
    struct glyph_line line = {.out = out};
    int64_t em = face->metrics->units_per_em, pen = 0;

    text_add(out, "[<");
    for (size_t i = 0; i < run->count; i++) {
        const struct glyph *glyph = &run->glyphs[i];
        uint16_t id = face->subset.new_id[glyph->id];
        int64_t ideal = ((pen + glyph->offset) * 1000) / em;
        int64_t beside = ideal - line.place;
        rise_set(&line, run, glyph->rise, em);
        if (beside >= TOLERANCE || beside <= -TOLERANCE) {
            text_add_format(out, "> %lld <", (long long)-beside);
            line.place = ideal;
        }
        text_add_format(out, "%04X", (unsigned)id);
        line.place += face->subset.widths[id];
        pen += glyph->advance;
    }
    rise_set(&line, run, 0, em);
    text_add(out, ">] TJ");
}

static void place_add(struct text_builder *out, const struct canvas *canvas,
                      const struct page_item *item)
{
    text_add_format(out, "BT\n/%s ", font_key(item->run->role));
    decimal_add(out, item->run->size);
    text_add(out, " Tf\n1 0 0 1 ");
    decimal_add(out, item->area.x);
    text_add(out, " ");
    decimal_add(out, canvas->height - item->baseline);
    text_add(out, " Tm\n");
}

void text_draw(const struct canvas *canvas, const struct page_item *item, enum text_end end)
{
    const struct run *run = item->run;
    const struct pdf_face *face = &canvas->faces[run->role];
    struct text_builder out = text_builder_in(canvas->arena);

    if (run->count == 0)
        return;
    if (letters_tell(run, &face->subset))
        tags_go_to(canvas, item->reading);
    else
        tags_spell(canvas, item->reading,
                   spelled(run->text, end == TEXT_SPACED ? " " : "", canvas->arena).at);
    place_add(&out, canvas, item);
    glyphs_add(&out, run, face);
    if (end == TEXT_SPACED)
        text_add_format(&out, " <%04X> Tj", (unsigned)face->subset.new_id[face->space]);
    text_add(&out, "\nET\n");
    colour_fill(canvas->page, ink_rgb(canvas->palette, item->fill));
    HPDF_Stream_WriteStr(((HPDF_PageAttr)canvas->page->attr)->stream, out.at);
}
