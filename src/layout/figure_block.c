/* figure_block.c - figures under a step: words like a row's, without tag or symbol
 * (room: layout). Never smaller than a row. */
#include "layout_room.h"

#define FIGURE_GAP MM(0.4)

/* Never larger than rows at their floor: a figure stands back behind the gear. */
static struct paragraph figure_paragraph(const struct pen *pen,
                                         const struct card_figure *figure, mpt row_size,
                                         mpt width)
{
    mpt floor = size_rule(pen->paper, ROLE_ROW).floor, size = row_size > floor ? floor : row_size;
    struct style style = {ROLE_ROW, FACE_TEXT, size, INK_BLACK};
    return paragraph_make(pen, &style, figure->text, width, figure->origin);
}

mpt figures_height(const struct pen *pen, const struct card_step *step, mpt row_size,
                   mpt width)
{
    mpt height = 0;
    for (size_t i = 0; i < step->figure_count; i++) {
        struct paragraph paragraph = figure_paragraph(pen, &step->figures[i], row_size, width);
        height += paragraph_height(&paragraph) + FIGURE_GAP;
    }
    return height;
}

mpt figures_place(struct pen *pen, const struct card_step *step, mpt row_size,
                  struct area column)
{
    mpt top = column.y;
    for (size_t i = 0; i < step->figure_count; i++) {
        struct paragraph paragraph = figure_paragraph(pen, &step->figures[i], row_size,
                                                      column.width);
        paragraph_place(pen, &paragraph, column.x, top);
        top += paragraph_height(&paragraph) + FIGURE_GAP;
    }
    return top - column.y;
}
