/* call_cells.c - the line that says who calls when: white on black, a cell each case, a white rule
 * between them (room: layout). All cases stand on one line at one size, or on several lines where
 * the paper is narrow. */
#include "layout_room.h"

#include "marked.h"
#include "measures.h"

struct call_cells {
    const struct pen *pen;
    struct marked_styles styles;
    mpt room;                     /* of all words together */
};

static struct marked_styles cell_styles(mpt size)
{
    return (struct marked_styles){{ROLE_CALL_LINE, FACE_TEXT, size, INK_WHITE},
                                  {ROLE_CALL_LINE, FACE_BOLD, size, INK_WHITE}};
}

static mpt cells_width(const struct call_cells *cells)
{
    const struct cases_facts *cases = sheet_cases(cells->pen->sheet);
    mpt width = 0;
    for (size_t i = 0; i < cases->count; i++)
        width += marked_width(cells->pen, &cells->styles, cases->items[i].text);
    return width;
}

static bool cells_fit(void *of, mpt size)
{
    struct call_cells *cells = of;
    cells->styles = cell_styles(size);
    return cells_width(cells) <= cells->room;
}

/* One case stands at the left; of several each has an equal share of the room that is left. */
static void cells_place(struct pen *pen, const struct call_cells *cells, struct area bar)
{
    const struct cases_facts *cases = sheet_cases(pen->sheet);
    mpt spare = cells->room - cells_width(cells), x = bar.x + CALL_LINE_PAD;
    mpt share = cases->count > 1 ? spare / (mpt)(cases->count - 1) : 0;
    mpt baseline = baseline_in(bar.y, bar.height, cells->styles.bold.size);
    for (size_t i = 0; i < cases->count; i++) {
        const struct card_text *one = &cases->items[i];
        if (i > 0) {
            mpt rule = x + (share + CALL_CELL_GAP) / 2;
            pen_line(pen, (struct point){rule, bar.y}, (struct point){rule, bar.y + bar.height},
                     INK_WHITE, CALL_CELL_RULE);
            x += share + CALL_CELL_GAP;
        }
        x += marked_place(pen, &cells->styles, one->text, (struct point){x, baseline},
                          one->origin);
    }
}

static struct call_cells cells_lay(const struct pen *pen, mpt width)
{
    struct call_cells cells = {.pen = pen};
    mpt parted = (mpt)sheet_cases(pen->sheet)->count - 1;
    cells.room = width - CALL_LINE_PADS - parted * CALL_CELL_GAP;
    cells_fit(&cells, size_that_fits(size_rule(pen->paper, ROLE_CALL_LINE), SIZE_STEP, cells_fit,
                                     &cells));
    return cells;
}

/* All cases as one text, at the least size. */
static struct paragraph cases_broken(const struct pen *pen, mpt width)
{
    const struct cases_facts *cases = sheet_cases(pen->sheet);
    struct style style = cell_styles(size_rule(pen->paper, ROLE_CALL_LINE).floor).plain;
    const char *text = cases->items[0].text;
    for (size_t i = 1; i < cases->count; i++)
        text = text_format(pen->arena, "%s · %s", text, cases->items[i].text);
    return paragraph_make(pen, &style, text, width - CALL_LINE_PADS, cases->items[0].origin);
}

mpt call_line_height(const struct pen *trial)
{
    mpt width = safe_width(trial->paper);
    if (sheet_cases(trial->sheet)->count == 0)
        return 0;
    struct call_cells cells = cells_lay(trial, width);
    struct paragraph broken = cases_broken(trial, width);
    return cells_width(&cells) > cells.room ? paragraph_height(&broken) + CALL_LINE_CLEAR : 0;
}

void call_cells_place(struct pen *pen, struct area bar)
{
    const struct cases_facts *cases = sheet_cases(pen->sheet);
    if (cases->count == 0)
        return;
    pen->block = BLOCK_CALL_LINE;
    pen_box(pen, bar, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    if (call_line_height(pen) > 0) {
        struct paragraph broken = cases_broken(pen, bar.width);
        paragraph_place(pen, &broken, bar.x + CALL_LINE_PAD,
                        bar.y + (bar.height - paragraph_height(&broken)) / 2);
        return;
    }
    struct call_cells cells = cells_lay(pen, bar.width);
    cells_place(pen, &cells, bar);
    mpt over = cells_width(&cells) - cells.room;
    if (over > 0)
        pen_too_long(pen, cases->items[0].origin, over, "shorten the words of the call line",
                     "the line that says when to call");
}
