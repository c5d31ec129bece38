/* pieces.c - a text taken apart into its words, and which of them no line may part (room:
 * layout). It breaks no lines. */
#include "text_known.h"

#include <string.h>

#include "text.h"

static bool is_word(const struct piece *piece, const char *word)
{
    return strlen(word) == piece->length && memcmp(word, piece->text, piece->length) == 0;
}

/* Is it a word of the set, in the language of the sheet? */
static bool in_set(const struct pen *pen, const struct piece *piece, enum word_set set)
{
    return words_in_set(pen->sheet->words, set, piece->text, piece->length);
}

/* The word without the point or comma behind it. */
static struct piece unpointed(struct piece piece)
{
    while (piece.length > 1 && strchr(".,;:?!", piece.text[piece.length - 1]) != NULL)
        piece.length--;
    return piece;
}

static bool begins(const struct piece *piece, const char *start)
{
    return piece->length >= strlen(start) && memcmp(start, piece->text, strlen(start)) == 0;
}

/* Digits, perhaps of a telephone number: +999. */
static bool is_number(const struct piece *piece)
{
    size_t i = piece->text[0] == '+' ? 1 : 0;
    bool digits = i < piece->length;
    for (; i < piece->length; i++)
        digits = digits && is_digit(piece->text[i]);
    return digits;
}

/* What is said on the radio is English in every language. */
#define SPOKEN_UNIT "METRES"
static const struct { const char *first, *second; } spoken_pairs[] = {
    {"PAN", "PAN"}, {"MAYDAY", "RELAY"}, {"ALL", "STATIONS"}};

static bool is_spoken_pair(const struct piece *before, const struct piece *after)
{
    for (size_t i = 0; i < sizeof spoken_pairs / sizeof *spoken_pairs; i++)
        if (is_word(before, spoken_pairs[i].first) && !before->tied &&
            begins(after, spoken_pairs[i].second))
            return true;
    return false;
}

static bool is_unit(const struct pen *pen, const struct piece *piece)
{
    const struct piece word = unpointed(*piece);
    return is_word(&word, SPOKEN_UNIT) || in_set(pen, &word, SET_UNITS);
}

/* A number, or a tag such as E4. */
static bool is_numeral(const struct piece *piece)
{
    return is_digit(piece->text[0]) || (piece->length > 1 && is_digit(piece->text[1]));
}

/* A number stays with its unit and all its groups of digits, a channel, card or step
 * with its number, a dot between two things with the first. */
static bool ties(const struct pen *pen, const struct piece *before, const struct piece *after)
{
    if (before->blank_height > 0 || after->blank_height > 0)
        return false;
    if (is_word(after, "·") || (is_number(before) && is_digit(after->text[0])))
        return true;
    if (is_digit(before->text[before->length - 1]) && is_unit(pen, after))
        return true;
    return is_spoken_pair(before, after) ||
           (is_numeral(after) && in_set(pen, before, SET_NUMBERED));
}

struct parser {
    const struct pen *pen;
    const struct style *style;
    struct piece *pieces;
    size_t count, room;
    bool bold;
    bool space;                   /* a space stands before the next piece */
};

static void piece_add(struct parser *parser, const char *at, size_t length)
{
    enum face_role face = parser->bold ? FACE_BOLD : parser->style->face;
    if (length == 0)
        return;
    parser->pieces = arena_grow(parser->pen->arena, parser->pieces, parser->count,
                                &parser->room, sizeof *parser->pieces);
    struct piece *piece = &parser->pieces[parser->count];
    *piece = (struct piece){.text = at, .length = length, .bold = parser->bold};
    piece->joined = parser->count > 0 && !parser->space;
    piece->units = run_units(parser->pen->faces, face, at, length);
    piece->width = units_width(parser->pen->faces, face, piece->units, parser->style->size);
    piece->tied = parser->count > 0 &&
                  ties(parser->pen, &parser->pieces[parser->count - 1], piece);
    parser->count++;
    parser->space = false;
}

static struct piece *text_parse(const struct pen *pen, const struct style *style, const char *text,
                                size_t *count)
{
    struct parser parser = {.pen = pen, .style = style};
    const char *begin = text;
    for (const char *at = text;; at++) {
        bool mark = at[0] == '*' && at[1] == '*';
        if (*at != '\0' && *at != ' ' && !mark)
            continue;
        piece_add(&parser, begin, (size_t)(at - begin));
        if (*at == '\0')
            break;
        if (mark) {
            parser.bold = !parser.bold;
            at++;
        } else {
            parser.space = true;
        }
        begin = at + 1;
    }
    *count = parser.count;
    return parser.pieces;
}

/* The text's pieces as they were parsed before, else as they are now. */
static const struct known_pieces *known_pieces_of(const struct pen *pen, enum face_role face,
                                                  struct known_text *text)
{
    struct style style = {.face = face};
    struct pen own = *pen;
    for (struct known_pieces *one = text->pieces; one != NULL; one = one->next)
        if (one->words == pen->sheet->words && one->face == face)
            return one;
    own.arena = texts_arena(pen->texts);
    struct known_pieces *now = arena_alloc(own.arena, sizeof *now);
    *now = (struct known_pieces){.next = text->pieces, .words = pen->sheet->words, .face = face};
    now->pieces = text_parse(&own, &style, text->text, &now->count);
    return text->pieces = now;
}

struct piece *pieces_parse(const struct pen *pen, const struct style *style, const char *text,
                           size_t *count)
{
    if (pen->texts == NULL)
        return text_parse(pen, style, text, count);
    const struct known_pieces *known = known_pieces_of(pen, style->face,
                                                       text_known(pen->texts, text));
    struct piece *pieces = arena_array(pen->arena, known->count, sizeof *pieces);
    for (size_t i = 0; i < known->count; i++) {
        pieces[i] = known->pieces[i];
        pieces[i].width = units_width(pen->faces, pieces[i].bold ? FACE_BOLD : style->face,
                                      pieces[i].units, style->size);
    }
    *count = known->count;
    return pieces;
}
