/* form_place.c - a section of a form as it was laid out, placed on its page (room: layout). */
#include "form_block.h"

#include "measures.h"
#include "rows.h"

static void sign_cell_place(struct pen *pen, const struct form_cell *cell, struct area box,
                            struct place origin)
{
    mpt side = grown(pen->paper, GEAR_SIGN), x = box.x + FORM_PAD_X;
    mpt size = size_rule(pen->paper, ROLE_ROW).floor;
    if (cell->kind != NULL)
        pen_symbol(pen, (struct area){x, box.y + (box.height - side) / 2, side, side},
                   cell->kind->symbol, origin);
    if (text_empty(cell->text))
        return;
    mpt width = row_tag_width(pen, cell->text, size);
    row_tag_place(pen, cell->text, size,
                  (struct area){x + side + FORM_SIGN_GAP, box.y, width, box.height}, origin);
}

/* Behind the words of its cell, at the foot of the line. */
static void blank_place(struct pen *pen, const struct paragraph *words, struct area box)
{
    mpt y = box.y + box.height - FORM_BLANK_DOWN, x = box.x + FORM_PAD_X, widest = 0;
    for (size_t i = 0; i < words->line_count; i++)
        widest = words->lines[i].width > widest ? words->lines[i].width : widest;
    x += widest == 0 ? 0 : widest + FORM_BLANK_GAP;
    pen_line(pen, (struct point){x, y}, (struct point){box.x + box.width - FORM_PAD_X, y},
             INK_BLACK, BLANK_RULE);
    pen_part(pen, PART_BLANK);
}

/* Words of a blank stand at its line, all others in the middle. */
static void cell_words_place(struct pen *pen, enum form_cell_kind kind,
                             const struct paragraph *words, struct area box)
{
    mpt height = paragraph_height(words);
    mpt top = kind == FORM_BLANK ? box.y + box.height - height - FORM_PAD_Y
                                 : box.y + (box.height - height) / 2;
    if (words->line_count > 0)
        paragraph_place(pen, words, box.x + FORM_PAD_X, top);
}

static void form_cell_place(struct pen *pen, enum form_cell_kind kind, const struct form_cell *cell,
                       const struct paragraph *words, struct area box)
{
    if (kind == FORM_TICK && cell->text != NULL)
        form_tick_place(pen, box);
    else if (kind != FORM_TICK)
        cell_words_place(pen, kind, words, box);
    if (kind == FORM_BLANK && cell->text != NULL)
        blank_place(pen, words, box);
}

static void form_rule_place(struct pen *pen, struct point corner, mpt width)
{
    pen_line(pen, corner, (struct point){corner.x + width, corner.y}, INK_BLACK, HAIR);
}

static void form_line_place(struct pen *pen, const struct laid_form_section *laid, size_t index,
                            struct point corner)
{
    const struct form_line *line = &laid->section->lines[index];
    const struct laid_form_line *own = &laid->lines[index];
    size_t outer = reading_begin(pen, READING_LINE);
    mpt x = corner.x;
    for (size_t i = 0; i < laid->section->column_count; i++) {
        struct area box = {x, corner.y, laid->width[i], own->cells};
        enum form_cell_kind kind = laid->section->columns[i].kind;
        if (kind == FORM_SIGN)
            sign_cell_place(pen, &line->cells[i], box, line->origin);
        else
            form_cell_place(pen, kind, &line->cells[i], &own->words[i], box);
        x += laid->width[i];
    }
    struct blank_corners corners = {
        .beside = {corner.x + own->beside, corner.y},
        .below = {corner.x + laid->indent, corner.y + own->cells}, .cells = own->cells};
    blanks_place(pen, &own->blanks, &corners);
    reading_end(pen, outer);
}

static void bar_place(struct pen *pen, const struct laid_form_section *laid, struct point corner,
                      mpt width)
{
    size_t outer = reading_begin(pen, READING_HEADING);
    pen_box(pen, (struct area){corner.x, corner.y, width, laid->bar}, INK_BLACK, INK_NONE, 0,
            FRAME_CORNER);
    paragraph_place(pen, &laid->title, corner.x + FORM_PAD_X, corner.y + FORM_BAR_PAD);
    reading_end(pen, outer);
}

/* Over a box in its middle, else over where words begin; `foot` is where the lowest end. */
static void heads_place(struct pen *pen, const struct laid_form_section *laid,
                        struct point foot)
{
    size_t outer = reading_begin(pen, READING_LINE);
    for (size_t i = 0; i < laid->section->column_count; i++) {
        const struct paragraph *words = &laid->head.words[i];
        mpt in = laid->section->columns[i].kind == FORM_TICK && words->line_count > 0
                     ? (laid->width[i] - words->lines[0].width) / 2
                     : FORM_PAD_X;
        if (!text_empty(laid->section->columns[i].head))
            paragraph_place(pen, words, foot.x + in, foot.y - paragraph_height(words));
        foot.x += laid->width[i];
    }
    reading_end(pen, outer);
}

void form_section_place(struct pen *pen, const struct laid_form_section *laid,
                        struct point corner, mpt width)
{
    struct area frame = {corner.x, corner.y, width, laid->height};
    pen->block = BLOCK_FORM;
    bar_place(pen, laid, corner, width);
    corner.y += laid->bar;
    if (laid->heads_in_bar)
        heads_place(pen, laid, (struct point){corner.x, corner.y - FORM_BAR_PAD});
    if (laid->note_height > 0)
        paragraph_place(pen, &laid->note, corner.x + FORM_PAD_X, corner.y + FORM_PAD_Y);
    corner.y += laid->note_height;
    if (laid->head.height > 0) {
        corner.y += laid->head.height;
        heads_place(pen, laid, (struct point){corner.x, corner.y - FORM_PAD_Y});
        form_rule_place(pen, corner, width);
    }
    for (size_t i = 0; i < laid->section->line_count; i++) {
        form_line_place(pen, laid, i, corner);
        corner.y += laid->lines[i].height;
        if (laid->section->manner != FORM_WARNED)
            form_rule_place(pen, corner, width);
    }
    if (laid->section->manner == FORM_WARNED)
        pen_box(pen, frame, INK_NONE, INK_BLACK, FRAME, FRAME_CORNER);
}
