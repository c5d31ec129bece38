/* figure_block.c - figures under a step: words like a row's, without tag or symbol
 * (room: layout). Never smaller than a row. */
#include "measures.h"
#include "steps.h"

#define FIGURE_LINES_MOST 2

/* Never larger than rows at their floor: a figure stands back behind the gear. */
static struct paragraph figure_paragraph(const struct pen *pen, const struct card_figure *figure,
                                         mpt row_size, mpt width)
{
    mpt floor = size_rule(pen->paper, ROLE_ROW).floor, size = row_size > floor ? floor : row_size;
    struct style style = {ROLE_ROW, FACE_TEXT, size, INK_BLACK};
    return paragraph_make(pen, &style, figure->text, width, figure->origin);
}

bool figure_fits(const struct pen *pen, const struct card_figure *figure, mpt width)
{
    mpt floor = size_rule(pen->paper, ROLE_ROW).floor;
    struct paragraph words = figure_paragraph(pen, figure, floor, width);
    return words.line_count <= FIGURE_LINES_MOST;
}

static mpt figure_height(const struct paragraph *figure)
{
    return (mpt)figure->line_count * NOTE_CLEAR + paragraph_height(figure);
}

struct laid_figures figures_lay(const struct pen *pen, const struct card_step *step,
                                mpt row_size, mpt width)
{
    struct laid_figures laid = {.count = step->figure_count};
    laid.figures = arena_array(pen->arena, laid.count, sizeof *laid.figures);
    for (size_t i = 0; i < laid.count; i++) {
        laid.figures[i] = figure_paragraph(pen, &step->figures[i], row_size, width);
        laid.height += figure_height(&laid.figures[i]);
    }
    return laid;
}

void figures_place(struct pen *pen, const struct laid_figures *laid, mpt x, mpt top)
{
    for (size_t i = 0; i < laid->count; i++) {
        paragraph_place(pen, &laid->figures[i], x, top + NOTE_CLEAR);
        top += figure_height(&laid->figures[i]);
    }
}
