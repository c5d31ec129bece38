/* yaml_scalar.c - what can be wrong with a single text of a file although YAML
 * allows it (room: yaml): text lost behind "#", escapes that make characters
 * nobody sees, anchors and tags. Never changes a text. */
#include "yaml_reader.h"

#include <stdint.h>
#include <string.h>

#include "text.h"
#include "utf8.h"
#include "yaml_slip.h"

/* A mark so many characters further on the same line. */
static struct mark mark_after(struct mark mark, size_t characters)
{
    mark.index += characters;
    mark.column += (int)characters;
    return mark;
}

static size_t characters_between(const char *bytes, size_t from, size_t to)
{
    size_t count = 0;
    uint32_t code_point;

    for (; from < to; count++)
        if (!utf8_next(bytes, to, &from, &code_point))
            from++;
    return count;
}

static bool byte_begins_word(char byte)
{
    unsigned char value = (unsigned char)byte;

    return (value >= '0' && value <= '9') || (value >= 'A' && value <= 'Z') ||
           (value >= 'a' && value <= 'z') || value >= 0x80;
}

/* `locker #2` means "locker" to YAML. A comment has a space after its "#". */
static void cut_check(struct yaml_reader *reader, const struct piece *piece)
{
    const char *bytes = reader->clean->bytes;
    size_t end = reader_offset(reader, piece->end);
    size_t at = end;

    while (bytes[at] == ' ' || bytes[at] == '\t')
        at++;
    if (at == end || bytes[at] != '#' || !byte_begins_word(bytes[at + 1]))
        return;
    size_t stop = at + strcspn(bytes + at, " \t\r\n");
    struct place place = reader_spot(reader, piece->end.line,
                                     piece->end.column + (int)(at - end),
                                     (int)characters_between(bytes, at, stop));
    reader_error(reader, place,
                 "put the text in quotes; if a comment is meant, put a space after #",
                 "the text would be cut here: what follows \"#\" counts as a comment");
    reader->cut_line = place.line;
}

void fold_tell(struct yaml_reader *reader)
{
    const struct piece *last = &reader->last;

    if (last->kind != PIECE_SCALAR || last->style != SCALAR_PLAIN ||
        last->start.line == last->end.line || last->text[0] == '\0')
        return;
    problem_add(reader->problems, SEVERITY_NOTE, piece_place(reader, last),
                "put the text in quotes to show that this is meant",
                "the text goes on to line %d; the lines are read as one", last->end.line);
}

/* What an escape of one letter stands for. Hexadecimal ones are read. */
struct escape {
    char letter;
    uint32_t code_point;
    size_t digits;
};

static const struct escape escapes[] = {
    {.letter = '0', .code_point = 0x00},   {.letter = 'a', .code_point = 0x07},
    {.letter = 'b', .code_point = 0x08},   {.letter = 't', .code_point = 0x09},
    {.letter = '\t', .code_point = 0x09},  {.letter = 'n', .code_point = 0x0A},
    {.letter = 'v', .code_point = 0x0B},   {.letter = 'f', .code_point = 0x0C},
    {.letter = 'r', .code_point = 0x0D},   {.letter = 'e', .code_point = 0x1B},
    {.letter = 'N', .code_point = 0x85},   {.letter = '_', .code_point = 0xA0},
    {.letter = 'L', .code_point = 0x2028}, {.letter = 'P', .code_point = 0x2029},
    {.letter = 'x', .digits = 2},          {.letter = 'u', .digits = 4},
    {.letter = 'U', .digits = 8},
};

static uint32_t hexadecimal_read(const char *at, size_t digits)
{
    uint32_t value = 0;

    for (size_t i = 0; i < digits; i++) {
        uint32_t low = (unsigned char)at[i] & 0x0Fu;
        value = value * 16 + (at[i] > '9' ? low + 9 : low);
    }
    return value;
}

/* The escape behind a backslash, or NULL for those that stand for a sign one
 * sees. libyaml has made sure that the digits are there. */
static const struct escape *escape_find(const char *at, uint32_t *code_point)
{
    for (size_t i = 0; i < sizeof escapes / sizeof escapes[0]; i++) {
        if (escapes[i].letter != *at)
            continue;
        *code_point = escapes[i].digits == 0 ? escapes[i].code_point
                                             : hexadecimal_read(at + 1, escapes[i].digits);
        return &escapes[i];
    }
    return NULL;
}

static void escape_tell(struct yaml_reader *reader, size_t offset, const struct escape *escape,
                        uint32_t code_point)
{
    struct place place = source_place(reader->clean, offset);

    place.source = reader->source;
    place.span = (int)escape->digits + 2;
    if (code_point == '\n')
        reader_error(reader, place, "write the text as one line", "\\n makes a line break");
    else if (code_point == '\t')
        reader_error(reader, place, "use a space", "a tab inside a text is not allowed");
    else
        reader_error(reader, place, "delete it",
                     "the escape makes the character U+%04X, which is not allowed: %s",
                     (unsigned int)code_point, utf8_refusal(code_point));
}

/* Goes through the escapes of a text in double quotes. True if one is wrong. */
static bool escapes_check(struct yaml_reader *reader, size_t offset, size_t end)
{
    const char *bytes = reader->clean->bytes;
    bool wrong = false;

    for (; offset + 1 < end && !reader->stopped; offset++) {
        uint32_t code_point = 0;
        if (bytes[offset] != '\\')
            continue;
        const struct escape *escape = escape_find(bytes + offset + 1, &code_point);
        if (escape != NULL && utf8_refusal(code_point) != NULL) {
            escape_tell(reader, offset, escape, code_point);
            wrong = true;
        }
        offset++;
    }
    return wrong;
}

/* Points at the first tab inside the text, not at those that only part it from
 * its neighbours. */
static void tab_check(struct yaml_reader *reader, const struct piece *piece, size_t offset,
                      size_t end)
{
    const char *tab = memchr(reader->clean->bytes + offset, '\t', end - offset);

    if (strchr(piece->text, '\t') == NULL || tab == NULL)
        return;
    struct place place = source_place(reader->clean, (size_t)(tab - reader->clean->bytes));
    place.source = reader->source;
    place.span = 1;
    reader_error(reader, place, "use a space", "a tab inside a text is not allowed");
}

/* To YAML they are letters, and would be printed. */
static void quotes_check(struct yaml_reader *reader, const struct piece *piece)
{
    if (piece->style != SCALAR_PLAIN || !quotes_around(piece->text))
        return;
    const char *bare = quotes_off(reader->arena, piece->text);
    const char *straight =
        strlen(bare) > PROPOSAL_LIMIT ? "the text" : quotes_on(reader->arena, bare);
    const char *remedy =
        text_format(reader->arena,
                    "write %s, with straight quotes\nif these are to be printed, put straight "
                    "ones around them",
                    straight);
    reader_error(reader, piece_place(reader, piece), remedy,
                 "the text stands in typographic quotes, which would be a part of it");
}

/* More than any language has on one letter; they would run into the lines above and below. */
enum { ACCENTS_MOST = 3 };

static void accents_check(struct yaml_reader *reader, const struct piece *piece)
{
    if (text_accents_most(piece->text) > ACCENTS_MOST)
        reader_error(reader, piece_place(reader, piece),
                     "type the text anew, with the letters of your keyboard",
                     "more than three accents stand on one letter of the text");
}

void scalar_check(struct yaml_reader *reader, const struct piece *piece)
{
    size_t offset = reader_offset(reader, piece->start);
    size_t end = reader_offset(reader, piece->end);
    bool escaped = piece->style == SCALAR_DOUBLE && escapes_check(reader, offset, end);

    if (piece->style == SCALAR_PLAIN)
        cut_check(reader, piece);
    quotes_check(reader, piece);
    accents_check(reader, piece);
    if (!escaped)
        tab_check(reader, piece, offset, end);
    if (!escaped && piece->style != SCALAR_BLOCK && strchr(piece->text, '\n') != NULL)
        reader_error(reader, piece_place(reader, piece), "write the text as one line",
                     "the text holds an empty line");
}

static void mark_tell(struct yaml_reader *reader, char sign, struct place place)
{
    if (sign == '&')
        reader_error(reader, place, "put the text in quotes; if an anchor is meant, delete it",
                     "a value cannot begin with \"&\" (YAML anchors are not allowed)");
    else if (sign == '*')
        reader_error(reader, place,
                     "put the text in quotes; if an alias is meant, write out what it stands for",
                     "a value cannot begin with \"*\" (YAML aliases are not allowed)");
    else
        reader_error(reader, place, "put the text in quotes; if a tag is meant, delete it",
                     "a value cannot begin with \"!\" (YAML tags are not allowed)");
}

/* An anchor and a tag may both stand before the value, in either order. */
void marks_check(struct yaml_reader *reader, const struct piece *piece)
{
    const char *bytes = reader->clean->bytes;
    struct mark mark = piece->start;

    if (!piece->marked && piece->kind != PIECE_ALIAS)
        return;
    size_t offset = reader_offset(reader, piece->start);
    while (bytes[offset] == '&' || bytes[offset] == '!' || bytes[offset] == '*') {
        size_t end = offset + strcspn(bytes + offset, " \t\r\n,[]{}");
        size_t span = characters_between(bytes, offset, end);
        mark_tell(reader, bytes[offset], reader_place(reader, mark, mark_after(mark, span)));
        size_t gap = strspn(bytes + end, " \t");
        mark = mark_after(mark, span + gap);
        offset = end + gap;
    }
}
