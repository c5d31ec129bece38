/* pdf_look_said.c - what a PDF says of itself, from its packet of XMP, which is not packed (room:
 * draw). */
#include <string.h>

#include "look.h"
#include "text.h"
#include "utf8.h"

/* The stretch of the packet that is read. */
struct said {
    struct bytes pdf;
    size_t from, to;
    struct arena *arena;
};

/* The text with the characters that XML writes in other words, and nothing that a terminal
 * obeys. */
static const char *said_text(const struct said *said, size_t from, size_t to)
{
    static const struct { const char *written, *meant; } words[] = {
        {"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&apos;", "'"}, {"&amp;", "&"}};
    struct text_builder out = text_builder_in(said->arena);
    text_add(&out, "");
    for (size_t at = from, step; at < to; at += step) {
        const char *meant = NULL;
        step = 1;
        for (size_t i = 0; i < sizeof words / sizeof *words && meant == NULL; i++)
            if (bytes_stand_at(said->pdf, at, words[i].written)) {
                meant = words[i].meant;
                step = strlen(words[i].written);
            }
        if (meant != NULL)
            text_add(&out, meant);
        else
            text_add_bytes(&out, (const char *)said->pdf.at + at, 1);
    }
    for (size_t at = 0, next = 0; at < out.length; at = next) {
        uint32_t code_point;
        if (!utf8_next(out.at, out.length, &next, &code_point))
            next++;
        else if (utf8_refusal(code_point) == NULL)
            continue;
        memset(out.at + at, '?', next - at);
    }
    return out.at;
}

/* The first <rdf:li> of that stretch into `*text`, and the byte behind it; BYTES_NOWHERE: none. */
static size_t item_read(const struct said *said, size_t from, size_t to, const char **text)
{
    size_t begin = bytes_find(said->pdf, from, to, "<rdf:li");
    if (begin != BYTES_NOWHERE)
        begin = bytes_find(said->pdf, begin, to, ">");
    if (begin == BYTES_NOWHERE)
        return BYTES_NOWHERE;
    size_t end = bytes_find(said->pdf, ++begin, to, "</rdf:li>");
    if (end != BYTES_NOWHERE)
        *text = said_text(said, begin, end);
    return end;
}

/* The stretch of a property; false: it is not there. */
static bool property_find(const struct said *said, const char *name, size_t *from, size_t *to)
{
    const char *end = text_format(said->arena, "</%s>", name);
    *from = bytes_find(said->pdf, said->from, said->to, text_format(said->arena, "<%s>", name));
    if (*from == BYTES_NOWHERE)
        return false;
    *to = bytes_find(said->pdf, *from, said->to, end);
    return *to != BYTES_NOWHERE;
}

static const char *property_text(const struct said *said, const char *name)
{
    const char *text = NULL;
    size_t from, to;
    if (property_find(said, name, &from, &to))
        item_read(said, from, to, &text);
    return text;
}

static void codes_take(const struct said *said, struct pdf_look *look)
{
    struct pdf_code *codes = NULL;
    size_t room = 0, from, to;
    const char *text = NULL;
    if (!property_find(said, "xmp:Identifier", &from, &to))
        return;
    while ((from = item_read(said, from, to, &text)) != BYTES_NOWHERE) {
        const char *gap = strchr(text, ' ');
        if (gap == NULL)
            continue;
        codes = arena_grow(said->arena, codes, look->code_count, &room, sizeof *codes);
        codes[look->code_count++] = (struct pdf_code){
            arena_copy(said->arena, text, (size_t)(gap - text)), gap + 1};
    }
    look->codes = codes;
}

void said_look(struct bytes pdf, struct pdf_look *look, struct arena *arena)
{
    struct said said = {.pdf = pdf, .arena = arena};
    said.from = bytes_find(pdf, 0, pdf.length, "<x:xmpmeta");
    if (said.from == BYTES_NOWHERE)
        return;
    said.to = bytes_find(pdf, said.from, pdf.length, "</x:xmpmeta>");
    if (said.to == BYTES_NOWHERE)
        return;
    look->ours = bytes_find(pdf, said.from, said.to,
                            "<pdf:Producer>maydeck</pdf:Producer>") != BYTES_NOWHERE;
    look->title = property_text(&said, "dc:title");
    look->language = property_text(&said, "dc:language");
    codes_take(&said, look);
}
