/* plain_text.c - runs of glyphs as text operators. Numbers are made of their digits, without
 * printf: a plain writer is no slow one. */
#include "plain.h"

/* Thousandths of the em by which a glyph may stand beside its place before it is put right. */
#define TOLERANCE 2

/* Operators of one text. */
struct operators {
    char at[16 * 1024];
    size_t length;
};

static void words_put(struct operators *out, const char *words)
{
    while (*words != '\0' && out->length + 1 < sizeof out->at)
        out->at[out->length++] = *words++;
}

static void number_put(struct operators *out, int64_t number)
{
    char digits[24];
    size_t count = 0;
    int64_t left = number < 0 ? -number : number;

    do {
        digits[count++] = (char)('0' + left % 10);
        left /= 10;
    } while (left > 0);
    if (number < 0)
        words_put(out, "-");
    while (count > 0)
        words_put(out, (const char[]){digits[--count], '\0'});
}

/* At most three places behind the point. */
static void milli_put(struct operators *out, int64_t milli)
{
    int64_t fraction = (milli < 0 ? -milli : milli) % 1000;

    if (milli < 0 && milli > -1000)
        words_put(out, "-");
    number_put(out, milli / 1000);
    for (int64_t place = 100; fraction > 0; place /= 10) {
        words_put(out, place == 100 ? "." : "");
        words_put(out, (const char[]){(char)('0' + fraction / place), '\0'});
        fraction %= place;
    }
}

static void code_put(struct operators *out, uint16_t code)
{
    static const char digits[] = "0123456789ABCDEF";

    words_put(out, (const char[]){digits[code >> 12], digits[code >> 8 & 15],
                                  digits[code >> 4 & 15], digits[code & 15], '\0'});
}

static void glyphs_put(struct operators *out, const struct run *run,
                       const struct plain_face *face)
{
    int64_t em = face->metrics->units_per_em, pen = 0, place = 0;

    words_put(out, "[<");
    for (size_t i = 0; i < run->count; i++) {
        const struct glyph *glyph = &run->glyphs[i];
        uint16_t code = face->subset.new_id[glyph->id];
        int64_t ideal = (pen + glyph->offset) * 1000 / em, beside = ideal - place;
        if (beside >= TOLERANCE || beside <= -TOLERANCE) {
            words_put(out, "> ");
            number_put(out, -beside);
            words_put(out, " <");
            place = ideal;
        }
        code_put(out, code);
        place += face->subset.widths[code];
        pen += glyph->advance;
    }
    words_put(out, ">] TJ\nET\n");
}

void plain_text_draw(const struct canvas *canvas, const struct page_item *item)
{
    static struct operators out;
    const struct run *run = item->run;

    if (run == NULL || run->count == 0)
        return;
    out.length = 0;
    words_put(&out, "BT\n/");
    words_put(&out, plain_font_key(run->role));
    words_put(&out, " ");
    milli_put(&out, run->size);
    words_put(&out, " Tf\n1 0 0 1 ");
    milli_put(&out, item->area.x);
    words_put(&out, " ");
    milli_put(&out, canvas->height - item->baseline);
    words_put(&out, " Tm\n");
    glyphs_put(&out, run, &canvas->faces[run->role]);
    colour_fill(canvas->page, ink_rgb(canvas->palette, item->fill));
    HPDF_Stream_Write(((HPDF_PageAttr)canvas->page->attr)->stream, (const HPDF_BYTE *)out.at,
                      (HPDF_UINT)out.length);
}
