/* cut_marks.c - marks at the corners along which a sheet is cut smaller before it is laminated
 * (room: layout). They stand on the cut itself, since printers do not reach the edge beyond it. */
#include "layout_room.h"

#include "measures.h"

/* From the corner along both edges of the cut; `across` and `down` lead into the page. */
static void corner_mark(struct pen *pen, struct point corner, int across, int down)
{
    struct point aside = {corner.x + across * TRIM_MARK, corner.y};
    struct point below = {corner.x, corner.y + down * TRIM_MARK};
    pen_line(pen, corner, aside, INK_BLACK, HAIR);
    pen_part(pen, PART_CUT);
    pen_line(pen, corner, below, INK_BLACK, HAIR);
    pen_part(pen, PART_CUT);
}

void cut_marks_place(struct pen *pen)
{
    mpt left = pen->paper->trim, top = left;
    mpt right = pen->paper->width - left, foot = pen->paper->height - top;
    if (pen->paper->trim == 0)
        return;
    pen->block = BLOCK_NONE;
    size_t outer = reading_skip(pen);
    corner_mark(pen, (struct point){left, top}, 1, 1);
    corner_mark(pen, (struct point){right, top}, -1, 1);
    corner_mark(pen, (struct point){left, foot}, 1, -1);
    corner_mark(pen, (struct point){right, foot}, -1, -1);
    reading_end(pen, outer);
}
