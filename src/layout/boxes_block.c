/* boxes_block.c - the right column's boxes: decision, never, cautions, local
 * rules (room: layout). */
#include "layout_room.h"

#include <string.h>

#define PAD_X MM(2.4)
#define PAD_Y MM(0.9)
#define FRAME MM(0.7)
#define BOX_GAP MM(1.4)
#define SIGN_SIDE MM(9)
#define TEXT_WIDTH(width) ((width) - 2 * PAD_X)

static struct style box_style(enum face_role face, mpt size, enum ink ink)
{
    return (struct style){ROLE_BOX, face, size, ink};
}

static mpt padded(mpt height)
{
    return height + 2 * PAD_Y;
}

/* ---- decision: the question reversed, both exits below ---- */

struct decision_parts { struct paragraph ask, yes, no; };

static struct decision_parts decision_parts(const struct pen *pen, mpt size, mpt width)
{
    const struct card *card = pen->card;
    struct style ask = box_style(FACE_BOLD, size, INK_WHITE);
    struct style say = box_style(FACE_TEXT, size, INK_BLACK);
    const char *yes = text_format(pen->arena, "**%s** %s", card->yes_word, card->decision.yes);
    const char *no = text_format(pen->arena, "**%s** %s", card->no_word, card->decision.no);
    return (struct decision_parts){
        paragraph_make(pen, &ask, card->decision.ask, TEXT_WIDTH(width), card->decision.origin),
        paragraph_make(pen, &say, yes, TEXT_WIDTH(width), card->decision.origin),
        paragraph_make(pen, &say, no, TEXT_WIDTH(width), card->decision.origin)};
}

static mpt decision_height(const struct pen *pen, mpt size, mpt width)
{
    if (!pen->card->decision.given)
        return 0;
    struct decision_parts parts = decision_parts(pen, size, width);
    return padded(paragraph_height(&parts.ask)) + padded(paragraph_height(&parts.yes)) +
           padded(paragraph_height(&parts.no));
}

static mpt decision_place(struct pen *pen, mpt size, struct area column, mpt top)
{
    struct decision_parts parts = decision_parts(pen, size, column.width);
    mpt ask = padded(paragraph_height(&parts.ask)), yes = padded(paragraph_height(&parts.yes));
    mpt whole = decision_height(pen, size, column.width), x = column.x + PAD_X;
    pen->block = "decision";
    pen_box(pen, (struct area){column.x, top, column.width, ask}, INK_BLACK, INK_NONE, 0,
            MM(1));
    pen_box(pen, (struct area){column.x, top, column.width, whole}, INK_NONE, INK_BLACK,
            FRAME, MM(1));
    paragraph_place(pen, &parts.ask, x, top + PAD_Y);
    paragraph_place(pen, &parts.yes, x, top + ask + PAD_Y);
    mpt line = top + ask + yes;
    pen_line(pen, (struct point){column.x, line}, (struct point){column.x + column.width, line},
             INK_BLACK, MM(0.35));
    paragraph_place(pen, &parts.no, x, line + PAD_Y);
    return top + whole;
}

/* ---- never: each a sentence with the word before it, on lines of its own ---- */

static enum symbol_key never_symbol(const struct card *card)
{
    for (size_t i = 0; i < card->never_count; i++)
        if (card->nevers[i].symbol != SYMBOL_NONE)
            return card->nevers[i].symbol;
    return SYMBOL_NONE;
}

static mpt never_indent(const struct card *card)
{
    return never_symbol(card) == SYMBOL_NONE ? 0 : SIGN_SIDE + MM(2);
}

/* Read alone, by a red torch, each must still forbid. */
static struct paragraph never_paragraph(const struct pen *pen, size_t index, mpt size,
                                        mpt width)
{
    const struct card *card = pen->card;
    struct style style = box_style(FACE_TEXT, size, INK_BLACK);
    const char *text = text_format(pen->arena, "**%s** %s", card->never_word,
                                   card->nevers[index].text);
    return paragraph_make(pen, &style, text, TEXT_WIDTH(width) - never_indent(card),
                          card->nevers[index].origin);
}

static const char *tags_joined(const struct pen *pen, const struct card_warning *warnings,
                               size_t count)
{
    struct text_builder builder = text_builder_in(pen->arena);
    for (size_t i = 0; i < count; i++) {
        bool known = false;
        for (size_t j = 0; j < i; j++)
            known = known || text_equal(warnings[i].tag, warnings[j].tag);
        if (!known && !text_empty(warnings[i].tag))
            text_add_format(&builder, "%s%s", builder.length == 0 ? "[" : "; ", warnings[i].tag);
    }
    text_add(&builder, builder.length == 0 ? "" : "]");
    return builder.at;
}

static struct style tag_line_style(const struct pen *pen)
{
    return (struct style){ROLE_SOURCE_TAG, FACE_TEXT,
                          size_rule(pen->paper, ROLE_SOURCE_TAG).floor, INK_BLACK};
}

/* The tag ends the last line where it has room there, else takes its own. */
static bool tag_inline(const struct pen *pen, const struct paragraph *text, const char *tags)
{
    struct style style = tag_line_style(pen);
    return text->line_count > 0 &&
           text->lines[text->line_count - 1].width + MM(1.5) +
                   pen_width(pen, &style, tags) <= text->width;
}

static mpt tag_line_height(const struct pen *pen, const struct paragraph *text,
                           const char *tags)
{
    struct style style = tag_line_style(pen);
    return tag_inline(pen, text, tags) ? 0 : line_pitch(style.role, style.size);
}

static void tag_place(struct pen *pen, const struct paragraph *text, const char *tags, mpt x,
                      mpt top)
{
    struct style style = tag_line_style(pen);
    mpt below = tag_line_height(pen, text, tags), height = paragraph_height(text);
    mpt baseline = baseline_in(top + height, below, style.size);
    if (below == 0) {
        x += text->lines[text->line_count - 1].width + MM(1.5);
        baseline = baseline_in(top + height - text->line_height, text->line_height,
                               text->style.size);
    }
    pen_text(pen, &style, x, baseline, tags, strlen(tags), text->origin);
}

/* The sources of all of them end the last line, or take one of their own. */
static mpt never_height(const struct pen *pen, mpt size, mpt width)
{
    const struct card *card = pen->card;
    mpt text = 0;
    if (card->never_count == 0)
        return 0;
    for (size_t i = 0; i < card->never_count; i++) {
        struct paragraph paragraph = never_paragraph(pen, i, size, width);
        text += paragraph_height(&paragraph);
        if (i + 1 == card->never_count)
            text += tag_line_height(pen, &paragraph,
                                    tags_joined(pen, card->nevers, card->never_count));
    }
    mpt sign = never_symbol(card) == SYMBOL_NONE ? 0 : SIGN_SIDE;
    return padded(text > sign ? text : sign);
}

static void never_lines_place(struct pen *pen, mpt size, mpt width, mpt x, mpt top)
{
    const struct card *card = pen->card;
    for (size_t i = 0; i < card->never_count; i++) {
        struct paragraph paragraph = never_paragraph(pen, i, size, width);
        paragraph_place(pen, &paragraph, x, top);
        if (i + 1 == card->never_count)
            tag_place(pen, &paragraph, tags_joined(pen, card->nevers, card->never_count), x,
                      top);
        top += paragraph_height(&paragraph);
    }
}

static mpt never_place(struct pen *pen, mpt size, struct area column, mpt top)
{
    const struct card *card = pen->card;
    mpt height = never_height(pen, size, column.width);
    pen->block = "never";
    pen_box(pen, (struct area){column.x, top, column.width, height}, INK_NONE, INK_BLACK,
            FRAME, MM(1));
    if (never_symbol(card) != SYMBOL_NONE)
        pen_sign(pen,
                 (struct area){column.x + PAD_X, top + (height - SIGN_SIDE) / 2, SIGN_SIDE,
                               SIGN_SIDE},
                 SIGN_PROHIBITION, never_symbol(card), card->nevers[0].origin);
    never_lines_place(pen, size, column.width, column.x + PAD_X + never_indent(card),
                      top + PAD_Y);
    return top + height;
}

/* ---- cautions and local rules: one frame each kind ---- */

static struct paragraph warning_paragraph(const struct pen *pen, const char *word,
                                          const struct card_warning *warning, mpt size, mpt width)
{
    struct style style = box_style(FACE_TEXT, size, INK_BLACK);
    const char *text = text_format(pen->arena, "**%s** %s", word, warning->text);
    return paragraph_make(pen, &style, text, TEXT_WIDTH(width), warning->origin);
}

static mpt warnings_height(const struct pen *pen, const char *word,
                           const struct card_warning *warnings, size_t count, mpt size, mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < count; i++) {
        struct paragraph text = warning_paragraph(pen, word, &warnings[i], size, width);
        height += padded(paragraph_height(&text) +
                         tag_line_height(pen, &text, tags_joined(pen, &warnings[i], 1)));
    }
    return height;
}

static mpt warnings_place(struct pen *pen, const char *word,
                          const struct card_warning *warnings, size_t count, mpt size,
                          struct area column, mpt top)
{
    mpt height = warnings_height(pen, word, warnings, count, size, column.width);
    pen_box(pen, (struct area){column.x, top, column.width, height}, INK_NONE, INK_BLACK,
            FRAME, MM(1));
    for (size_t i = 0; i < count; i++) {
        struct paragraph text = warning_paragraph(pen, word, &warnings[i], size, column.width);
        if (i > 0)
            pen_line(pen, (struct point){column.x, top},
                     (struct point){column.x + column.width, top}, INK_BLACK, MM(0.35));
        paragraph_place(pen, &text, column.x + PAD_X, top + PAD_Y);
        const char *tags = tags_joined(pen, &warnings[i], 1);
        tag_place(pen, &text, tags, column.x + PAD_X, top + PAD_Y);
        top += padded(paragraph_height(&text) + tag_line_height(pen, &text, tags));
    }
    return top;
}

/* ---- all ---- */

static mpt with_gap(mpt height)
{
    return height == 0 ? 0 : height + BOX_GAP;
}

mpt boxes_height(const struct pen *pen, mpt size, mpt width)
{
    const struct card *card = pen->card;
    return with_gap(decision_height(pen, size, width)) +
           with_gap(never_height(pen, size, width)) +
           with_gap(warnings_height(pen, card->caution_word, card->cautions,
                                    card->caution_count, size, width)) +
           with_gap(warnings_height(pen, card->local_word, card->local_rules,
                                    card->local_rule_count, size, width));
}

void boxes_place(struct pen *pen, mpt size, struct area column, mpt top)
{
    const struct card *card = pen->card;
    if (card->decision.given)
        top = decision_place(pen, size, column, top) + BOX_GAP;
    if (card->never_count > 0)
        top = never_place(pen, size, column, top) + BOX_GAP;
    pen->block = "cautions";
    if (card->caution_count > 0)
        top = warnings_place(pen, card->caution_word, card->cautions, card->caution_count, size,
                             column, top) + BOX_GAP;
    pen->block = "local rules";
    if (card->local_rule_count > 0)
        warnings_place(pen, card->local_word, card->local_rules, card->local_rule_count, size,
                       column, top);
}
