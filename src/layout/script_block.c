/* script_block.c - a script: one phrase a line, blanks to write on (room: layout). */
#include "call.h"

#include "laid_known.h"
#include "measures.h"
#include "paragraph_known.h"
#include "phrase_known.h"

#include <string.h>

static struct style script_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_SCRIPT, face, size, INK_BLACK};
}

/* The pieces of a line as words and blanks. */
struct phrase {
    struct piece *pieces;
    bool *keep;                /* by piece: of one part of the line with the one before */
    size_t count, room, keep_room;
};

static struct piece *phrase_grow(const struct pen *pen, struct phrase *phrase)
{
    phrase->keep = arena_grow(pen->arena, phrase->keep, phrase->count, &phrase->keep_room,
                              sizeof *phrase->keep);
    phrase->keep[phrase->count] = false;
    phrase->pieces = arena_grow(pen->arena, phrase->pieces, phrase->count, &phrase->room,
                                sizeof *phrase->pieces);
    return &phrase->pieces[phrase->count++];
}

static void words_add(const struct pen *pen, struct phrase *phrase, const char *text, mpt size)
{
    struct style style = script_style(FACE_TEXT, size);
    size_t count;
    struct piece *pieces = pieces_parse(pen, &style, text, &count);
    for (size_t i = 0; i < count; i++) {
        bool point = i == 0 && (pieces[i].text[0] == '.' || pieces[i].text[0] == ',');
        bool dot = i == 0 && text_begins(pieces[i].text, "·");    /* it begins no line */
        *phrase_grow(pen, phrase) = pieces[i];
        phrase->pieces[phrase->count - 1].tied |= dot && phrase->count > 1;
        phrase->keep[phrase->count - 1] = i > 0;
        if (point && phrase->count > 1)
            phrase->pieces[phrase->count - 1].joined = true;
    }
}

static void strong_add(const struct pen *pen, struct phrase *phrase, const char *text, mpt size)
{
    words_add(pen, phrase, text_format(pen->arena, "**%s**", text), size);
}

static void blank_add(const struct pen *pen, struct phrase *phrase, int width_mm, mpt height)
{
    *phrase_grow(pen, phrase) = (struct piece){.text = "", .width = MM(width_mm),
                                               .blank_height = height};
}

/* NORTH SOUTH to be circled becomes NORTH / SOUTH. */
static const char *choice_text(const struct pen *pen, const char *words)
{
    const char *space = strchr(words, ' ');
    if (space == NULL)
        return words;
    return text_format(pen->arena, "%.*s / %s", (int)(space - words), words, space + 1);
}

static struct phrase phrase_make(const struct pen *pen, const struct script_line *line,
                                 struct script_sizes sizes)
{
    struct phrase phrase = {0};
    mpt size = sizes.letters;
    for (size_t i = 0; i < line->count; i++) {
        const struct script_piece *piece = &line->pieces[i];
        switch (piece->kind) {
        case PIECE_WORDS:
            words_add(pen, &phrase, piece->text, size);
            break;
        case PIECE_STRONG:
            strong_add(pen, &phrase, piece->text, size);
            break;
        case PIECE_BLANK:
            blank_add(pen, &phrase, piece->width_mm, sizes.blanks);
            break;
        case PIECE_CHOICE:
            strong_add(pen, &phrase, choice_text(pen, piece->text), size);
            break;
        }
    }
    return phrase;
}

static bool same_words(const struct piece *a, const struct piece *b)
{
    return a->length == b->length && memcmp(a->text, b->text, a->length) == 0;
}

/* After how many pieces the part says the same again, to its end; all of it: it does not. */
static size_t said_again(const struct piece *part, size_t count)
{
    for (size_t every = 1; every < count; every++) {
        size_t i = every;
        while (i < count && same_words(&part[i], &part[i - every]))
            i++;
        if (i == count && count % every == 0)
            return every;
    }
    return count;
}

/* A call sign, a name or an identity stays on one line where it has room there; of a name that is
 * said several times each, where all have none. */
static void parts_keep(const struct pen *pen, const struct phrase *phrase,
                       struct paragraph *paragraph)
{
    bool *keep = arena_array(pen->arena, phrase->count + 1, sizeof *keep);
    for (size_t first = 0; first < phrase->count;) {
        size_t end = first + 1;
        while (end < phrase->count && phrase->keep[end])
            end++;
        size_t every = end - first;
        if (paragraph_length(paragraph, first, end) > paragraph->width)
            every = said_again(&phrase->pieces[first], every);
        bool fits = paragraph_length(paragraph, first, first + every) <= paragraph->width;
        for (size_t i = first + 1; i < end; i++)
            keep[i] = fits && (i - first) % every != 0;
        first = end;
    }
    paragraph_keep(paragraph, keep, pen->arena);
}

static struct paragraph phrase_break(const struct pen *pen, const struct phrase *phrase, mpt size,
                                     mpt width)
{
    struct paragraph paragraph = {.style = script_style(FACE_TEXT, size), .width = width,
                                  .pieces = phrase->pieces, .piece_count = phrase->count};
    paragraph.line_height = line_pitch(ROLE_SCRIPT, size);
    paragraph.space = run_width(pen->faces, FACE_TEXT, size, " ", 1, NULL);
    paragraph.origin = pen->sheet->boat->facts.name.place;
    paragraph_break(&paragraph, pen->arena);
    if (paragraph.line_count > 1)
        parts_keep(pen, phrase, &paragraph);
    return paragraph;
}

static size_t blanks_in(const struct paragraph *paragraph, size_t line)
{
    size_t blanks = 0;
    for (size_t i = paragraph->lines[line].first; i < paragraph->lines[line].end; i++)
        blanks += paragraph->pieces[i].blank_height > 0 ? 1 : 0;
    return blanks;
}

/* Of the blanks of a line; 0: it has none. */
static mpt blanks_height(const struct paragraph *paragraph, size_t line)
{
    mpt height = 0;
    for (size_t i = paragraph->lines[line].first; i < paragraph->lines[line].end; i++)
        if (paragraph->pieces[i].blank_height > height)
            height = paragraph->pieces[i].blank_height;
    return height;
}

static mpt set_line_height(const struct paragraph *paragraph, size_t line)
{
    mpt height = blanks_height(paragraph, line);
    mpt clear = height - (BLANK_HEIGHT - BLANK_CLEAR) +
                em_share(paragraph->style.size, EM_DESCENT);
    if (height == 0)
        return paragraph->line_height;
    return clear > height ? clear : height;
}

static void words_place(struct pen *pen, const struct paragraph *paragraph, size_t *piece,
                        size_t end, mpt *x, mpt baseline)
{
    struct line line = {*piece, *piece, 0};
    struct paragraph part = *paragraph;
    while (line.end < end && paragraph->pieces[line.end].blank_height == 0)
        line.end++;
    part.lines = &line;
    *x = line_place(pen, &part, 0, *x, baseline);
    *piece = line.end;
}

/* Blanks of a line share what is left of the measure. */
static void blank_line_place(struct pen *pen, const struct paragraph *paragraph, size_t line,
                             mpt x, mpt top)
{
    const struct line *set = &paragraph->lines[line];
    mpt height = set_line_height(paragraph, line), size = paragraph->style.size;
    mpt baseline = top + height - em_share(size, EM_DESCENT);
    mpt share = blanks_in(paragraph, line) == 0
                    ? 0
                    : (paragraph->width - set->width) / (mpt)blanks_in(paragraph, line);
    for (size_t i = set->first; i < set->end;) {
        if (i > set->first && !paragraph->pieces[i].joined)
            x += paragraph->space;
        if (paragraph->pieces[i].blank_height == 0) {
            words_place(pen, paragraph, &i, set->end, &x, baseline);
            continue;
        }
        mpt width = paragraph->pieces[i++].width + (share > 0 ? share : 0);
        pen_line(pen, (struct point){x, baseline + BLANK_DROP},
                 (struct point){x + width, baseline + BLANK_DROP}, INK_BLACK, BLANK_RULE);
        pen_part(pen, PART_BLANK);
        x += width;
    }
}

static void phrase_place(struct pen *pen, const struct paragraph *paragraph, mpt x, mpt top)
{
    size_t outer = reading_begin(pen, READING_SPOKEN);
    paragraph_begin(pen);
    for (size_t i = 0; i < paragraph->line_count; i++) {
        if (blanks_in(paragraph, i) > 0)
            blank_line_place(pen, paragraph, i, x, top);
        else
            line_place(pen, paragraph, i, x,
                       baseline_in(top, paragraph->line_height, paragraph->style.size));
        if (paragraph->lines[i].width > paragraph->width)
            pen_too_long(pen, paragraph->origin,
                         paragraph->lines[i].width - paragraph->width,
                         "give a shorter name_spoken, or shorter looks", "a line of the call");
        top += set_line_height(paragraph, i);
    }
    paragraph_end(pen);
    reading_end(pen, outer);
}

static mpt label_width(const struct pen *pen, const char *label, mpt size)
{
    struct style style = script_style(FACE_BOLD, size);
    if (label == NULL)
        return 0;
    return pen_width(pen, &style, label) + CALL_LABEL_PADS_X + CALL_LABEL_GAP;
}

/* The plate reaches round all ink of its word, whatever signs and accents it has. */
static struct area plate_round(struct area plate, struct run_ink ink, mpt baseline)
{
    mpt top = baseline + ink.top - CALL_LABEL_PAD_Y;
    mpt foot = baseline + ink.bottom + CALL_LABEL_PAD_Y, end = plate.y + plate.height;
    top = top < plate.y ? top : plate.y;
    return (struct area){plate.x, top, plate.width, (foot > end ? foot : end) - top};
}

static void label_of_call_place(struct pen *pen, const char *label, mpt size, struct point at,
                                mpt height)
{
    struct style style = script_style(FACE_BOLD, size);
    struct area box = {at.x, at.y + CALL_LABEL_PAD_Y,
                       pen_width(pen, &style, label) + CALL_LABEL_PADS_X,
                       height - 2 * CALL_LABEL_PAD_Y};
    mpt baseline = baseline_in(at.y, height, size);
    struct run_ink ink = pen_ink(pen, &style, label, strlen(label));
    style.ink = INK_WHITE;
    pen_box(pen, plate_round(box, ink, baseline), INK_BLACK, INK_NONE, 0, CALL_LABEL_CORNER);
    pen_text(pen, &style, at.x + CALL_LABEL_PAD_X, baseline, label, strlen(label),
             pen->sheet->origin);
}

/* ---- the script ---- */

static struct laid_phrase phrase_laid(const struct pen *pen, const struct script_line *line,
                                      const struct phrase *phrase, struct script_sizes sizes,
                                      mpt width)
{
    struct laid_phrase laid = {.label = line->label,
                               .indent = label_width(pen, line->label, sizes.letters)};
    laid.words = phrase_break(pen, phrase, sizes.letters, width - laid.indent);
    for (size_t i = 0; i < laid.words.line_count; i++)
        laid.height += set_line_height(&laid.words, i);
    return laid;
}

/* What it says, by which it is known wherever it stands. */
static struct known_line *known_line_of(const struct pen *pen, const struct script_line *line)
{
    const struct laid_key here = {.part = LAID_SCRIPT_LINES, .of = line};
    void **known = part_known(paragraphs_parts(pen->known), &here);
    if (*known == NULL)
        *known = line_known(paragraphs_phrases(pen->known), line);
    return *known;
}

/* Its pieces at these sizes, for all measures. */
static const struct phrase *known_phrase_of(const struct pen *pen, const struct script_line *line,
                                            struct known_line *words, struct script_sizes sizes)
{
    const struct laid_key key = {LAID_PHRASES, words, 0, sizes.letters, sizes.blanks,
                                 pen->sheet->words};
    void **known = part_known(paragraphs_parts(pen->known), &key);
    if (*known == NULL) {
        struct phrase *phrase = arena_alloc(pen->arena, sizeof *phrase);
        *phrase = phrase_make(pen, line, sizes);
        *known = phrase;
    }
    return *known;
}

static struct laid_phrase phrase_lay(const struct pen *pen, const struct script_line *line,
                                     struct script_sizes sizes, mpt width)
{
    if (pen->known == NULL) {
        struct phrase phrase = phrase_make(pen, line, sizes);
        return phrase_laid(pen, line, &phrase, sizes, width);
    }
    struct known_phrases *known = paragraphs_phrases(pen->known);
    struct known_line *words = known_line_of(pen, line);
    struct phrase_key key = {words, pen->sheet->words, sizes, width};
    const struct laid_phrase *found = phrase_known(known, &key);
    if (found == NULL) {
        struct pen own = *pen;
        own.arena = phrases_arena(known);
        const struct phrase *phrase = known_phrase_of(&own, line, words, sizes);
        struct laid_phrase now = phrase_laid(&own, line, phrase, sizes, width);
        *phrase_know(known, &key) = now;
        return now;
    }
    struct laid_phrase laid = *found;
    laid.label = line->label;
    laid.words.origin = pen->sheet->boat->facts.name.place;
    return laid;
}

struct laid_script script_lay_with(const struct pen *pen, const struct script *script,
                                   struct script_sizes sizes, mpt width)
{
    struct laid_script laid = {.size = sizes.letters,
                               .count = script == NULL ? 0 : script->count};
    laid.phrases = arena_array(pen->arena, laid.count, sizeof *laid.phrases);
    for (size_t i = 0; i < laid.count; i++) {
        laid.phrases[i] = phrase_lay(pen, &script->lines[i], sizes, width);
        laid.height += laid.phrases[i].height;
    }
    return laid;
}

struct laid_script script_lay(const struct pen *pen, const struct script *script, mpt size,
                              mpt width)
{
    return script_lay_with(pen, script, (struct script_sizes){size, BLANK_HEIGHT}, width);
}

mpt gap_between(mpt room, size_t count)
{
    mpt gap = count > 1 && room > 0 ? room / (mpt)(count - 1) : 0;
    return gap > CALL_GAP_MOST ? CALL_GAP_MOST : gap;
}

mpt script_place(struct pen *pen, const struct laid_script *laid, struct area column)
{
    mpt gap = gap_between(column.height - laid->height, laid->count), top = column.y;
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_phrase *phrase = &laid->phrases[i];
        if (phrase->label != NULL)
            label_of_call_place(pen, phrase->label, laid->size, (struct point){column.x, top},
                                phrase->words.line_height);
        phrase_place(pen, &phrase->words, column.x + phrase->indent, top);
        top += phrase->height + gap;
    }
    return laid->count == 0 ? 0 : top - gap - column.y;
}
