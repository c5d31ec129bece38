/* boxes_block.c - the right column's boxes: decision, never, cautions, lines of the base (room:
 * layout). Each is laid out once, with its tags of sources, and placed as it was. */
#include "boxes.h"

#include "laid_known.h"
#include "measures.h"
#include "paragraph_known.h"

#include <string.h>

static struct style box_style(enum face_role face, mpt size, enum ink ink)
{
    return (struct style){ROLE_BOX, face, size, ink};
}

static mpt text_width(mpt width)
{
    return width - 2 * BOX_PAD_X;
}

static mpt padded(mpt height)
{
    return height + 2 * BOX_PAD_Y;
}

static mpt paragraph_padded(const struct paragraph *paragraph)
{
    return padded(paragraph_height(paragraph));
}

static void frame_place(struct pen *pen, struct area area)
{
    pen_box(pen, area, INK_NONE, INK_BLACK, FRAME, FRAME_CORNER);
}

static void box_line_across(struct pen *pen, struct area area, mpt y)
{
    pen_line(pen, (struct point){area.x, y}, (struct point){area.x + area.width, y}, INK_BLACK,
             HAIR);
}

/* ---- decision: the question reversed, both exits below ---- */

static struct paragraph exit_lay(const struct pen *pen, const char *word, const char *text,
                                 mpt size, mpt width)
{
    struct style say = box_style(FACE_TEXT, size, INK_BLACK);
    return paragraph_make(pen, &say, text_format(pen->arena, "**%s** %s", word, text),
                          text_width(width), sheet_decision(pen->sheet)->origin);
}

static struct laid_decision decision_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct decision_facts *decision = sheet_decision(pen->sheet);
    struct style ask = box_style(FACE_BOLD, size, INK_WHITE);
    struct laid_decision laid = {.height = 0};
    if (sheet_block(pen->sheet, BLOCK_DECISION) == NULL)
        return laid;
    laid.ask = paragraph_make(pen, &ask, decision->ask, text_width(width), decision->origin);
    laid.yes = exit_lay(pen, decision->yes_word, decision->yes, size, width);
    laid.no = exit_lay(pen, decision->no_word, decision->no, size, width);
    laid.height = paragraph_padded(&laid.ask) + paragraph_padded(&laid.yes) +
                  paragraph_padded(&laid.no);
    return laid;
}

static void decision_place(struct pen *pen, const struct laid_decision *laid, struct area area)
{
    struct area head = area;
    mpt x = area.x + BOX_PAD_X, yes = area.y + paragraph_padded(&laid->ask);
    mpt no = yes + paragraph_padded(&laid->yes);
    head.height = yes - area.y;
    pen->block = BLOCK_DECISION;
    pen_box(pen, head, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    frame_place(pen, area);
    paragraph_place(pen, &laid->ask, x, area.y + BOX_PAD_Y);
    paragraph_place(pen, &laid->yes, x, yes + BOX_PAD_Y);
    box_line_across(pen, area, no);
    paragraph_place(pen, &laid->no, x, no + BOX_PAD_Y);
}

/* ---- tags of sources ---- */

static bool tag_is_new(const struct card_warning *warnings, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (text_equal(warnings[index].tag, warnings[i].tag))
            return false;
    return !text_empty(warnings[index].tag);
}

static const char *tags_joined(const struct pen *pen, const struct card_warning *warnings,
                               size_t count)
{
    struct text_builder builder = text_builder_in(pen->arena);
    for (size_t i = 0; i < count; i++)
        if (tag_is_new(warnings, i))
            text_add_format(&builder, "%s%s", builder.length == 0 ? "[" : "; ", warnings[i].tag);
    text_add(&builder, builder.length == 0 ? "" : "]");
    return builder.at;
}

static struct laid_warning untagged(struct paragraph text)
{
    return (struct laid_warning){.text = text, .height = paragraph_height(&text)};
}

/* The tags end the last line where it has room for them, else they take one of their own. */
static struct laid_warning tags_lay(const struct pen *pen, struct paragraph text,
                                    const char *tags)
{
    struct style style = {ROLE_SOURCE_TAG, FACE_TEXT,
                          size_rule(pen->paper, ROLE_SOURCE_TAG).floor, INK_BLACK};
    struct laid_warning laid = {.text = text, .tags = tags, .tag_style = style,
                                .height = paragraph_height(&text)};
    bool room = text.line_count > 0 && text.lines[text.line_count - 1].width + BOX_TAG_GAP +
                                               pen_width(pen, &style, tags) <= text.width;
    laid.tag_line = room ? 0 : line_pitch(style.role, style.size);
    laid.height += laid.tag_line;
    return laid;
}

static void source_tags_place(struct pen *pen, const struct laid_warning *laid, mpt x, mpt top)
{
    const struct paragraph *text = &laid->text;
    mpt foot = top + paragraph_height(text);
    mpt baseline = baseline_in(foot, laid->tag_line, laid->tag_style.size);
    if (laid->tag_line == 0) {
        x += text->lines[text->line_count - 1].width + BOX_TAG_GAP;
        baseline = baseline_in(foot - text->line_height, text->line_height, text->style.size);
    }
    pen_text(pen, &laid->tag_style, x, baseline, laid->tags, strlen(laid->tags), text->origin);
}

static void warning_place(struct pen *pen, const struct laid_warning *laid, mpt x, mpt top)
{
    paragraph_place(pen, &laid->text, x, top);
    if (laid->tags != NULL)
        source_tags_place(pen, laid, x, top);
}

/* ---- never: each a sentence with the word before it, on lines of its own ---- */

static enum symbol_key never_symbol(const struct sheet *sheet)
{
    const struct warnings_facts *nevers = sheet_warnings(sheet, BLOCK_NEVER);
    for (size_t i = 0; i < nevers->count; i++)
        if (nevers->items[i].symbol != SYMBOL_NONE)
            return nevers->items[i].symbol;
    return SYMBOL_NONE;
}

/* Read alone, by a red torch, each must still say what it is: the word stands before it. */
static struct paragraph warning_paragraph(const struct pen *pen, const char *word,
                                          const struct card_warning *warning, mpt size,
                                          mpt width)
{
    struct style style = box_style(FACE_TEXT, size, INK_BLACK);
    return paragraph_make(pen, &style, text_format(pen->arena, "**%s** %s", word, warning->text),
                          width, warning->origin);
}

/* The sources of all of them stand behind the last. */
static struct laid_nevers nevers_lay(const struct pen *pen, struct box_measure measure)
{
    const struct sheet *sheet = pen->sheet;
    const struct warnings_facts *nevers = sheet_warnings(sheet, BLOCK_NEVER);
    struct laid_nevers laid = {.count = nevers->count};
    if (measure.form < BOXES_WITHOUT_SIGN)
        laid.symbol = never_symbol(sheet);
    laid.nevers = arena_array(pen->arena, laid.count, sizeof *laid.nevers);
    laid.indent = laid.symbol == SYMBOL_NONE ? 0 : SIGN_OF_BOX + BOX_SIGN_GAP;
    mpt words = 0, sign = laid.symbol == SYMBOL_NONE ? 0 : SIGN_OF_BOX;
    for (size_t i = 0; i < laid.count; i++) {
        struct paragraph text = warning_paragraph(pen, nevers->word, &nevers->items[i],
                                                  measure.size,
                                                  text_width(measure.width) - laid.indent);
        laid.nevers[i] = untagged(text);
        if (i + 1 == laid.count && measure.form < BOXES_WITHOUT_SOURCES)
            laid.nevers[i] = tags_lay(pen, text, tags_joined(pen, nevers->items, laid.count));
        words += laid.nevers[i].height;
    }
    if (laid.count > 0)
        laid.height = padded(words > sign ? words : sign);
    return laid;
}

static void nevers_place(struct pen *pen, const struct laid_nevers *laid, struct area area)
{
    const struct warnings_facts *nevers = sheet_warnings(pen->sheet, BLOCK_NEVER);
    mpt top = area.y + BOX_PAD_Y, x = area.x + BOX_PAD_X;
    struct area sign = {x, area.y + (area.height - SIGN_OF_BOX) / 2, SIGN_OF_BOX, SIGN_OF_BOX};
    pen->block = BLOCK_NEVER;
    frame_place(pen, area);
    if (laid->symbol != SYMBOL_NONE)
        pen_sign(pen, sign, SIGN_PROHIBITION, laid->symbol, nevers->items[0].origin);
    for (size_t i = 0; i < laid->count; i++) {
        warning_place(pen, &laid->nevers[i], x + laid->indent, top);
        top += laid->nevers[i].height;
    }
}

/* ---- cautions and lines of the base: one frame each kind ---- */

static struct laid_warnings warnings_lay(const struct pen *pen, const char *word,
                                         const struct card_warning *warnings, size_t count,
                                         struct box_measure measure)
{
    struct laid_warnings laid = {.count = count};
    laid.warnings = arena_array(pen->arena, count, sizeof *laid.warnings);
    for (size_t i = 0; i < count; i++) {
        struct paragraph text = warning_paragraph(pen, word, &warnings[i], measure.size,
                                                  text_width(measure.width));
        laid.warnings[i] = untagged(text);
        if (measure.form == BOXES_WHOLE)
            laid.warnings[i] = tags_lay(pen, text, tags_joined(pen, &warnings[i], 1));
        else if (measure.form == BOXES_WITHOUT_SIGN && i + 1 == count)
            laid.warnings[i] = tags_lay(pen, text, tags_joined(pen, warnings, count));
        laid.height += padded(laid.warnings[i].height);
    }
    return laid;
}

static void warnings_place(struct pen *pen, const struct laid_warnings *laid, struct area area)
{
    mpt top = area.y;
    frame_place(pen, area);
    for (size_t i = 0; i < laid->count; i++) {
        if (i > 0)
            box_line_across(pen, area, top);
        warning_place(pen, &laid->warnings[i], area.x + BOX_PAD_X, top + BOX_PAD_Y);
        top += padded(laid->warnings[i].height);
    }
}

/* ---- all ---- */

static mpt with_gap(mpt height)
{
    return height == 0 ? 0 : height + BOX_GAP;
}

static struct laid_boxes boxes_new(const struct pen *pen, struct box_measure measure)
{
    const struct sheet *sheet = pen->sheet;
    const struct warnings_facts *rules = sheet_warnings(sheet, BLOCK_OWN_LINES);
    const struct warnings_facts *cautions = sheet_warnings(sheet, BLOCK_CAUTIONS);
    struct laid_boxes laid = {
        .size = measure.size,
        .width = measure.width,
        .decision = decision_lay(pen, measure.size, measure.width),
        .nevers = nevers_lay(pen, measure),
        .cautions = warnings_lay(pen, cautions->word, cautions->items, cautions->count, measure),
        .own_lines = warnings_lay(pen, rules->word, rules->items, rules->count, measure)};
    laid.height = with_gap(laid.decision.height) + with_gap(laid.nevers.height) +
                  with_gap(laid.cautions.height) + with_gap(laid.own_lines.height);
    return laid;
}

/* They hang on no height: a column that is tried again has them at the same sizes. */
struct laid_boxes boxes_lay(const struct pen *pen, struct box_measure measure)
{
    const struct laid_key key = {LAID_BOXES, pen->sheet, measure.form, measure.size,
                                 measure.width, pen->sheet->words};
    if (pen->known == NULL)
        return boxes_new(pen, measure);
    void **known = part_known(paragraphs_parts(pen->known), &key);
    if (*known == NULL) {
        struct pen own = *pen;
        own.arena = paragraphs_arena(pen->known);
        struct laid_boxes *now = arena_alloc(own.arena, sizeof *now);
        *now = boxes_new(&own, measure);
        *known = now;
    }
    const struct laid_boxes *laid = *known;
    return *laid;
}

/* The area of a box of that height; what follows begins below it. */
static struct area box_next(struct area *rest, mpt height)
{
    struct area area = {rest->x, rest->y, rest->width, height};
    rest->y += with_gap(height);
    return area;
}

void boxes_place(struct pen *pen, const struct laid_boxes *laid, mpt x, mpt top)
{
    struct area rest = {x, top, laid->width, 0};
    if (laid->decision.height > 0)
        decision_place(pen, &laid->decision, box_next(&rest, laid->decision.height));
    if (laid->nevers.count > 0)
        nevers_place(pen, &laid->nevers, box_next(&rest, laid->nevers.height));
    pen->block = BLOCK_CAUTIONS;
    if (laid->cautions.count > 0)
        warnings_place(pen, &laid->cautions, box_next(&rest, laid->cautions.height));
    pen->block = BLOCK_OWN_LINES;
    if (laid->own_lines.count > 0)
        warnings_place(pen, &laid->own_lines, box_next(&rest, laid->own_lines.height));
}
