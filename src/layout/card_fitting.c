/* card_fitting.c - what stands on the page of a card: all of it, as far as there is room (room:
 * layout). Figures yield first, the last of them before the others, then the seconds of
 * extinguishers. */
#include "pages.h"
#include "steps.h"

#define FIGURES_MOST 2

size_t whole_split(struct laying *laying, struct pen *pen)
{
    laying->sheets[0] = sheet_trimmed(laying->whole, &laying->trim, pen->arena);
    return 1;
}

bool page_lessen(struct laying *laying, size_t index)
{
    const struct sheet *sheet = laying->sheets[index];
    int most = yields_highest(sheet);
    if (most == YIELDS_NEVER)
        return false;
    for (size_t i = 0; i < sheet->block_count; i++)
        laying->trim.least[sheet->blocks[i].key] = most;
    return true;
}

bool rank_lessen(struct laying *laying)
{
    bool lessened = false;
    for (size_t i = 0; i < laying->count; i++)
        lessened |= laying->full[i] && page_lessen(laying, i);
    return lessened;
}

/* More figures than a card may have. */
static bool too_many_figures(const struct sheet *sheet)
{
    return sheet_steps(sheet)->figure_count > FIGURES_MOST;
}

static bool figure_has_room(void *of, const struct card_figure *figure)
{
    const struct pen *pen = of;
    struct frame frame = frame_make(pen->paper, TEMPLATE_CARD, &(struct page_needs){.way = 0});
    return figure_fits(pen, figure, frame.at[AREA_LEFT].width - step_indent(pen));
}

size_t card_split(struct laying *laying, struct pen *pen)
{
    struct pen *kept = arena_alloc(pen->arena, sizeof *kept);
    *kept = *pen;
    laying->trim.stands = figure_has_room;
    laying->trim.of = kept;
    whole_split(laying, pen);
    while (too_many_figures(laying->sheets[0]) && page_lessen(laying, 0))
        whole_split(laying, pen);
    return laying->call_behind ? call_behind_split(laying, pen) : 1;
}

/* A second side for the call is the last that helps: what yielded then has room again. */
bool card_lessen(struct laying *laying)
{
    return rank_lessen(laying) || call_behind_take(laying);
}
