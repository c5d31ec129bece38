/* paragraph.c - words to lines by total fit (room: layout).
 *
 * The fewest lines, and among those the least sum of squared slack (Knuth and
 * Plass 1981 with ragged right). No hyphenation. A last
 * line of one word costs so much that it is taken only when there is no other
 * way. */
#include "layout_room.h"

#include <string.h>

#include "text.h"

/* As much as one line's slack of 17 mm. */
#define FIRST_WORD_COST ((int64_t)500 * 500)

/* The style of a bold piece: the paragraph's, in the bold face. */
static struct style bold_of(const struct style *style)
{
    struct style bold = *style;
    bold.face = FACE_BOLD;
    return bold;
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
