/* paragraph.c - words to lines by total fit (room: layout).
 *
 * The fewest lines, and among those the least sum of squared slack (Knuth and
 * Plass 1981 with ragged right). No hyphenation. A last
 * line of one word costs so much that it is taken only when there is no other
 * way. */
#include "text_known.h"

#include <string.h>

#include "text.h"

/* As much as one line's slack of 17 mm. */
#define FIRST_WORD_COST ((int64_t)500 * 500)

/* ---- parsing ---- */

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

/* The style of a bold piece: the paragraph's, in the bold face. */
static struct style bold_of(const struct style *style)
{
    struct style bold = *style;
    bold.face = FACE_BOLD;
    return bold;
}

static void piece_add(struct parser *parser, const char *at, size_t length)
{
    struct style style = parser->bold ? bold_of(parser->style) : *parser->style;
    if (length == 0)
        return;
    parser->pieces = arena_grow(parser->pen->arena, parser->pieces, parser->count,
                                &parser->room, sizeof *parser->pieces);
    struct piece *piece = &parser->pieces[parser->count];
    *piece = (struct piece){.text = at, .length = length, .bold = parser->bold};
    piece->joined = parser->count > 0 && !parser->space;
    piece->units = run_units(parser->pen->faces, style.face, at, length);
    piece->width = units_width(parser->pen->faces, style.face, piece->units, style.size);
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

/* ---- breaking ---- */

struct break_state {
    size_t lines;
    int64_t cost;
    size_t from;
    bool reached;
};

static bool may_break_before(const struct paragraph *paragraph, size_t piece)
{
    return !paragraph->pieces[piece].joined && !paragraph->pieces[piece].tied;
}

static mpt pieces_width(const struct paragraph *paragraph, size_t first, size_t end)
{
    mpt width = 0;
    for (size_t i = first; i < end; i++)
        width += paragraph->pieces[i].width +
                 (i > first && !paragraph->pieces[i].joined ? paragraph->space : 0);
    return width;
}

static size_t words_in(const struct paragraph *paragraph, size_t first, size_t end)
{
    size_t words = 0;
    for (size_t i = first; i < end; i++)
        if (i == first || may_break_before(paragraph, i))
            words++;
    return words;
}

/* Does the line end right behind the first word of a sentence? */
static bool ends_on_first_word(const struct paragraph *paragraph, size_t first, size_t end)
{
    if (end == paragraph->piece_count || end < first + 2)
        return false;
    const struct piece *before = &paragraph->pieces[end - 2];
    return before->length > 0 && strchr(".?!:", before->text[before->length - 1]) != NULL;
}

static int64_t line_cost(const struct paragraph *paragraph, size_t first, size_t end, mpt width)
{
    int64_t slack = (paragraph->width - width) / 100;
    int64_t cost = slack * slack;
    bool last = end == paragraph->piece_count;
    if (last && first > 0 && words_in(paragraph, first, end) == 1)
        cost += (int64_t)1 << 40;
    if (ends_on_first_word(paragraph, first, end))
        cost += FIRST_WORD_COST;
    return cost;
}

static bool better(const struct break_state *a, size_t lines, int64_t cost)
{
    return !a->reached || lines < a->lines || (lines == a->lines && cost < a->cost);
}

/* By how much a line to before `end` is wider that begins one piece earlier, with that one. */
static mpt first_width(const struct paragraph *paragraph, size_t first, size_t end)
{
    bool space = first + 1 < end && !paragraph->pieces[first + 1].joined;
    return paragraph->pieces[first].width + (space ? paragraph->space : 0);
}

/* One word alone at the end is avoided even at the price of another line only
 * if the line count stays: the count decides first. */
static void try_lines_to(const struct paragraph *paragraph, struct break_state *states,
                         size_t end)
{
    mpt width = 0;
    for (size_t first = end; first-- > 0;) {
        width += first_width(paragraph, first, end);
        bool alone = first + 1 == end;
        if (width > paragraph->width && !alone)
            break;
        if (!states[first].reached || (first > 0 && !may_break_before(paragraph, first)))
            continue;
        size_t lines = states[first].lines + 1;
        int64_t cost = states[first].cost + line_cost(paragraph, first, end, width);
        if (better(&states[end], lines, cost))
            states[end] = (struct break_state){lines, cost, first, true};
    }
}

static void lines_collect(struct paragraph *paragraph, const struct break_state *states,
                          struct arena *arena)
{
    size_t count = states[paragraph->piece_count].lines;
    struct line *lines = arena_array(arena, count, sizeof *lines);
    size_t end = paragraph->piece_count;
    for (size_t i = count; i-- > 0;) {
        size_t first = states[end].from;
        lines[i] = (struct line){first, end, pieces_width(paragraph, first, end)};
        end = first;
    }
    paragraph->lines = lines;
    paragraph->line_count = count;
}

/* All pieces on one line, whether that holds them or not. */
static void lines_one(struct paragraph *paragraph, struct arena *arena, mpt width)
{
    struct line *line = arena_array(arena, 1, sizeof *line);
    *line = (struct line){0, paragraph->piece_count, width};
    paragraph->lines = line;
    paragraph->line_count = 1;
}

static void lines_break(struct paragraph *paragraph, struct arena *arena, mpt whole)
{
    size_t count = paragraph->piece_count;
    struct break_state *states = arena_array(arena, count + 1, sizeof *states);
    states[0].reached = true;
    for (size_t end = 1; end <= count; end++)
        if (end == count || may_break_before(paragraph, end))
            try_lines_to(paragraph, states, end);
    if (!states[count].reached)
        lines_one(paragraph, arena, whole);
    else
        lines_collect(paragraph, states, arena);
}

/* Words tied or joined together that are wider than the measure still get a
 * line of their own, which then is too wide: the caller tells. */
void paragraph_break(struct paragraph *paragraph, struct arena *arena)
{
    mpt whole = pieces_width(paragraph, 0, paragraph->piece_count);
    if (paragraph->piece_count > 0 && whole <= paragraph->width)
        lines_one(paragraph, arena, whole);
    else if (paragraph->piece_count > 0)
        lines_break(paragraph, arena, whole);
    for (size_t i = 0; i < paragraph->line_count; i++)
        if (paragraph->lines[i].width > paragraph->widest_piece)
            paragraph->widest_piece = paragraph->lines[i].width;
}

void paragraph_keep(struct paragraph *paragraph, const bool *keep, struct arena *arena)
{
    struct paragraph kept = *paragraph;
    struct piece *pieces = arena_array(arena, paragraph->piece_count + 1, sizeof *pieces);
    for (size_t i = 0; i < paragraph->piece_count; i++) {
        pieces[i] = paragraph->pieces[i];
        pieces[i].tied |= i > 0 && keep[i];
    }
    kept.pieces = pieces;
    kept.widest_piece = 0;
    paragraph_break(&kept, arena);
    if (kept.line_count <= paragraph->line_count &&
        (kept.widest_piece <= kept.width || kept.widest_piece <= paragraph->widest_piece))
        *paragraph = kept;
}

mpt paragraph_length(const struct paragraph *paragraph, size_t first, size_t end)
{
    return pieces_width(paragraph, first, end);
}

struct paragraph paragraph_new(const struct pen *pen, const struct style *style,
                               const char *text, mpt width)
{
    struct paragraph paragraph = {.style = *style, .width = width};
    paragraph.line_height = (style->size * size_rule(pen->paper, style->role).leading + 99) / 100;
    paragraph.space = run_width(pen->faces, style->face, style->size, " ", 1, NULL);
    paragraph.pieces = pieces_parse(pen, style, text, &paragraph.piece_count);
    paragraph_break(&paragraph, pen->arena);
    return paragraph;
}

mpt line_width(const struct paragraph *paragraph)
{
    return paragraph->line_count > 0 ? paragraph->lines[0].width : 0;
}

mpt paragraph_height(const struct paragraph *paragraph)
{
    return (mpt)paragraph->line_count * paragraph->line_height;
}

/* ---- placing ---- */

void paragraph_begin(struct pen *pen)
{
    pen->paragraph = ++pen->paragraphs;
}

void paragraph_end(struct pen *pen)
{
    pen->paragraph = 0;
}

/* Neighbours of one weight are set as one run, their spaces in it. A line that is set by
 * itself is a paragraph too. */
mpt line_place(struct pen *pen, const struct paragraph *paragraph, size_t line, mpt x,
               mpt baseline)
{
    const struct line *set = &paragraph->lines[line];
    bool alone = pen->paragraph == 0;
    if (alone)
        paragraph_begin(pen);
    for (size_t i = set->first; i < set->end;) {
        struct text_builder builder = text_builder_in(pen->arena);
        bool bold = paragraph->pieces[i].bold, joined = paragraph->pieces[i].joined;
        struct style style = bold ? bold_of(&paragraph->style) : paragraph->style;
        if (i > set->first && !paragraph->pieces[i].joined)
            x += paragraph->space;
        for (size_t begin = i; i < set->end && paragraph->pieces[i].bold == bold; i++) {
            if (i > begin && !paragraph->pieces[i].joined)
                text_add(&builder, " ");
            text_add_bytes(&builder, paragraph->pieces[i].text, paragraph->pieces[i].length);
        }
        x += pen_text(pen, &style, x, baseline, builder.at, builder.length,
                      paragraph->origin);
        if (joined)
            pen_joined(pen);
    }
    if (alone)
        paragraph_end(pen);
    return x;
}

void paragraph_place(struct pen *pen, const struct paragraph *paragraph, mpt x, mpt top)
{
    paragraph_begin(pen);
    for (size_t i = 0; i < paragraph->line_count; i++) {
        mpt baseline = baseline_in(top + (mpt)i * paragraph->line_height, paragraph->line_height,
                                   paragraph->style.size);
        line_place(pen, paragraph, i, x, baseline);
        if (paragraph->lines[i].width > paragraph->width)
            pen_too_long(pen, paragraph->origin,
                         paragraph->lines[i].width - paragraph->width,
                         "use a shorter word, or write it in two words",
                         text_format(pen->arena, "a word in the block \"%s\"",
                                     block_word(pen->block)));
    }
    paragraph_end(pen);
}
