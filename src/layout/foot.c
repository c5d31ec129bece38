/* foot.c - the lines at the foot of a page: what it is, its code, the dates of its gear, and a line
 * of 100 mm (room: layout). */
#include <string.h>

#include "layout_room.h"
#include "measures.h"

enum footer_end { FOOTER_LEFT, FOOTER_RIGHT };

/* Its texts in the order in which they are read; the third is made of several parts. */
enum { FOOTER_FIRST, FOOTER_SECOND, FOOTER_CODE, FOOTER_DATES, FOOTER_TEXTS };

/* Sets a text of the footer at the left or the right end of its line. */
static void footer_text(struct pen *pen, struct area line, const char *text, enum footer_end end)
{
    struct style style = {ROLE_FOOTER, FACE_TEXT, size_rule(pen->paper, ROLE_FOOTER).floor,
                          INK_BLACK};
    mpt width = pen_width(pen, &style, text);
    mpt x = end == FOOTER_RIGHT ? line.x + line.width - width : line.x;
    pen_text(pen, &style, x, baseline_in(line.y, line.height, style.size), text, strlen(text),
             pen->sheet->origin);
    if (width > line.width)
        pen_too_long(pen, pen->sheet->origin, width - line.width,
                     "shorten the qualification in the approval", "a line of the footer");
}

/* "Check code 0TJ8-GE2D · printed ..." with the code in a face of its own; a sheet without
 * one says when it was printed. */
struct code_words {
    struct style words, code;
    const char *before, *after;
    mpt width;
};

static struct code_words code_words_lay(const struct pen *pen)
{
    const struct footer_facts *footer = sheet_footer(pen->sheet);
    mpt size = size_rule(pen->paper, ROLE_FOOTER).floor;
    bool coded = !text_empty(footer->code);
    struct code_words laid = {
        .words = {ROLE_FOOTER, FACE_TEXT, size, INK_BLACK},
        .code = {ROLE_CODE, FACE_CODE, size_rule(pen->paper, ROLE_CODE).floor, INK_BLACK}};
    laid.before = coded ? text_format(pen->arena, "%s ", footer->code_word) : "";
    laid.after = text_format(pen->arena, "%s%s", coded ? " · " : "", footer->printed);
    laid.width = pen_width(pen, &laid.words, laid.before) +
                 pen_width(pen, &laid.code, footer->code) +
                 pen_width(pen, &laid.words, laid.after);
    return laid;
}

static void code_line_place(struct pen *pen, struct area line, enum footer_end end)
{
    const char *code = sheet_footer(pen->sheet)->code;
    struct code_words laid = code_words_lay(pen);
    mpt x = end == FOOTER_RIGHT ? line.x + line.width - laid.width : line.x;
    mpt baseline = baseline_in(line.y, line.height, laid.words.size);
    struct place origin = pen->sheet->origin;
    paragraph_begin(pen);
    x += pen_text(pen, &laid.words, x, baseline, laid.before, strlen(laid.before), origin);
    x += pen_text(pen, &laid.code, x, baseline, code, strlen(code), origin);
    pen_text(pen, &laid.words, x, baseline, laid.after, strlen(laid.after), origin);
    paragraph_end(pen);
}

/* NULL of the text that is made of parts. */
static const char *footer_words(const struct pen *pen, int text)
{
    const struct footer_facts *footer = sheet_footer(pen->sheet);
    return text == FOOTER_CODE ? NULL : text == FOOTER_DATES ? footer->dates : footer->left[text];
}

static mpt footer_width(const struct pen *pen, int text)
{
    struct style style = {ROLE_FOOTER, FACE_TEXT, size_rule(pen->paper, ROLE_FOOTER).floor,
                          INK_BLACK};
    return text == FOOTER_CODE ? code_words_lay(pen).width
                               : pen_width(pen, &style, footer_words(pen, text));
}

/* What the left or the right texts have. */
static mpt footer_half(mpt width, enum footer_end end)
{
    mpt left = part_of(PART_OF_FOOTER_LEFT, width);
    return end == FOOTER_LEFT ? left : width - left - FOOTER_GAP;
}

static enum footer_end end_of(int text)
{
    return text <= FOOTER_SECOND ? FOOTER_LEFT : FOOTER_RIGHT;
}

/* Has each a line of its own, since they have no room beside each other on paper of two sides, or
 * in a language longer than English? */
static bool footer_is_stacked(const struct pen *pen, mpt width)
{
    bool wide = false;
    for (int text = 0; text < FOOTER_TEXTS; text++)
        wide = wide || footer_width(pen, text) > footer_half(width, end_of(text));
    return wide && (pen->paper->sides == TWO_SIDES || words_longer(pen->sheet->words) > 0);
}

mpt footer_height(const struct pen *pen)
{
    mpt lines = 0;
    if (!footer_is_stacked(pen, safe_width(pen->paper)))
        return 0;
    for (int text = 0; text < FOOTER_TEXTS; text++)
        lines += footer_width(pen, text) > 0 ? 1 : 0;
    return lines * FOOTER_PITCH;
}

/* A line of 100 mm, by which one sees that the page was printed at its size. */
static void measure_place(struct pen *pen, struct area area)
{
    if (area.height == 0)
        return;
    struct style style = {ROLE_FOOTER, FACE_TEXT, size_rule(pen->paper, ROLE_FOOTER).floor,
                          INK_BLACK};
    const char *words = sheet_footer(pen->sheet)->measure;
    mpt spare = area.width - MEASURE_LENGTH;
    mpt most = spare - FOOTER_GAP - pen_width(pen, &style, words);
    mpt y = area.y + area.height / 2, left = area.x + (spare / 2 < most ? spare / 2 : most);
    for (int half = 0; half <= 2; half++) {
        mpt x = left + MEASURE_LENGTH / 2 * half;
        pen_line(pen, (struct point){x, y - MEASURE_TICK}, (struct point){x, y + MEASURE_TICK},
                 INK_BLACK, HAIR);
    }
    pen_line(pen, (struct point){left, y}, (struct point){left + MEASURE_LENGTH, y}, INK_BLACK,
             HAIR);
    pen_text(pen, &style, left + MEASURE_LENGTH + FOOTER_GAP,
             baseline_in(area.y, area.height, style.size), words, strlen(words),
             pen->sheet->origin);
}

static void footer_one_place(struct pen *pen, int text, struct area line, enum footer_end end)
{
    if (text == FOOTER_CODE)
        code_line_place(pen, line, end);
    else
        footer_text(pen, line, footer_words(pen, text), end);
}

/* Two on the left and two on the right. */
static void footer_beside_place(struct pen *pen, struct area area)
{
    for (int text = 0; text < FOOTER_TEXTS; text++) {
        struct area line = {area.x, area.y + text % 2 * (area.height / 2),
                            footer_half(area.width, end_of(text)), area.height / 2};
        line.x += end_of(text) == FOOTER_RIGHT ? area.width - line.width : 0;
        footer_one_place(pen, text, line, end_of(text));
    }
}

static void footer_stack_place(struct pen *pen, struct area area)
{
    struct area line = {area.x, area.y, area.width, FOOTER_PITCH};
    for (int text = 0; text < FOOTER_TEXTS; text++) {
        if (footer_width(pen, text) == 0)
            continue;
        footer_one_place(pen, text, line, FOOTER_LEFT);
        line.y += line.height;
    }
}

void foot_place(struct pen *pen, const struct frame *frame)
{
    struct area area = frame->at[AREA_FOOTER];
    if (sheet_block(pen->sheet, BLOCK_FOOTER) == NULL)
        return;
    pen->block = BLOCK_FOOTER;
    (footer_is_stacked(pen, area.width) ? footer_stack_place : footer_beside_place)(pen, area);
    size_t outer = reading_skip(pen);
    measure_place(pen, frame->at[AREA_MEASURE]);
    reading_end(pen, outer);
}
