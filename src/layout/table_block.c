/* table_block.c - the table of openings under a step: port beside starboard, set closer
 * than rows (room: layout). It cuts no words: what is too long is told. */
#include "steps.h"

#include <string.h>

#define CELL_START MM(1.2)     /* from the tag to the words */
#define CELL_END MM(1.5)       /* from them to the next column */

static mpt table_size(const struct pen *pen, mpt row_size)
{
    mpt aim = size_rule(pen->paper, ROLE_TABLE).aim;
    return row_size > aim ? aim : row_size;
}

static mpt table_pitch(mpt size)
{
    return line_pitch(ROLE_TABLE, size);
}

static mpt table_tag(const struct pen *pen, const struct card_step *step, mpt size)
{
    mpt widest = 0;
    for (size_t i = 0; i < step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++)
            if (step->table[i].cells[c].tag != NULL) {
                mpt width = row_tag_width(pen, step->table[i].cells[c].tag, size);
                widest = width > widest ? width : widest;
            }
    return widest;
}

/* ---- cells ---- */

/* Where the words of a cell begin and end, in its column. */
static mpt cell_room(mpt tag, mpt width)
{
    return width / (mpt)TABLE_CELLS - tag - CELL_START - CELL_END;
}

/* Handling of its own has a line of its own where both are too long for one. */
static size_t cell_break(const struct pen *pen, const struct table_cell *cell, mpt size,
                         mpt room)
{
    struct style style = row_style(FACE_TEXT, size);
    if (cell->name == NULL || pen_width(pen, &style, cell->name) <= room)
        return 0;
    return cell->handling_at;
}

static const char *cell_start(const struct pen *pen, const struct table_cell *cell,
                              size_t parted)
{
    size_t length = parted > 0 ? parted : strlen(cell->name);
    while (parted > 0 && length > 0 && cell->name[length - 1] == ' ')
        length--;
    return arena_copy(pen->arena, cell->name, length);
}

static mpt cell_width(const struct pen *pen, const struct table_cell *cell, mpt size,
                      mpt room)
{
    struct style style = row_style(FACE_TEXT, size);
    size_t parted = cell_break(pen, cell, size, room);
    mpt start = pen_width(pen, &style, cell_start(pen, cell, parted));
    mpt rest = parted == 0 ? 0 : pen_width(pen, &style, cell->name + parted);
    return start > rest ? start : rest;
}

/* Columns go down by themselves, but a head in the middle stands below both. */
struct tops { mpt of[TABLE_CELLS]; };

static mpt lowest(const struct tops *tops)
{
    mpt low = tops->of[0];
    for (size_t c = 1; c < TABLE_CELLS; c++)
        low = tops->of[c] > low ? tops->of[c] : low;
    return low;
}

static void line_pass(const struct pen *pen, const struct table_row *line, mpt size, mpt room,
                      struct tops *tops)
{
    mpt pitch = table_pitch(size), low = lowest(tops);
    for (size_t c = 0; c < TABLE_CELLS; c++) {
        const struct table_cell *cell = &line->cells[c];
        if (line->head != NULL)
            tops->of[c] = low + pitch;
        else if (cell->name != NULL)
            tops->of[c] += cell_break(pen, cell, size, room) > 0 ? 2 * pitch : pitch;
    }
}

/* ---- measuring ---- */

mpt table_height(const struct pen *pen, const struct card_step *step, mpt row_size,
                 mpt width)
{
    mpt size = table_size(pen, row_size), room = cell_room(table_tag(pen, step, size), width);
    struct tops tops = {{table_pitch(size), table_pitch(size)}};
    for (size_t i = 0; i < step->table_count; i++)
        line_pass(pen, &step->table[i], size, room, &tops);
    return step->table_count == 0 ? 0 : lowest(&tops);
}

static mpt cell_excess(const struct pen *pen, const struct table_cell *cell, mpt size,
                       mpt room)
{
    return cell->name == NULL ? -room : cell_width(pen, cell, size, room) - room;
}

mpt table_excess(const struct pen *pen, const struct card_step *step, mpt row_size,
                 mpt width, struct place *at)
{
    mpt size = table_size(pen, row_size), excess = -width;
    mpt room = cell_room(table_tag(pen, step, size), width);
    for (size_t i = 0; i < step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            mpt over = cell_excess(pen, &step->table[i].cells[c], size, room);
            if (over <= excess)
                continue;
            excess = over;
            *at = step->table[i].cells[c].origin;
        }
    return excess;
}

bool table_tell(struct pen *pen, const struct card_step *step, mpt row_size, mpt width)
{
    mpt size = table_size(pen, row_size), room = cell_room(table_tag(pen, step, size), width);
    bool told = false;
    for (size_t i = 0; i < step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            const struct table_cell *cell = &step->table[i].cells[c];
            told |= too_long_tell(pen, cell->origin, cell_excess(pen, cell, size, room), size);
        }
    return told;
}

/* ---- placing ---- */

static void table_head_place(struct pen *pen, const struct card_step *step, mpt size, mpt x,
                             mpt top, mpt width)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    mpt half = width / (mpt)TABLE_CELLS, baseline = baseline_in(top, table_pitch(size), size);
    struct area sign = {x - INDENT + SIGN_AT, top + MM(0.6), SIGN_SIDE, SIGN_SIDE};
    gear_sign_place(pen, sign, step->table_kind, size_rule(pen->paper, ROLE_PLAN_TAG).aim, NULL,
                    step->headline.origin);
    mpt at = x;
    at += pen_text(pen, &bold, at, baseline, step->table_heads[0],
                   strlen(step->table_heads[0]), step->headline.origin);
    pen_text(pen, &plain, at + MM(2), baseline, step->table_note, strlen(step->table_note),
             step->headline.origin);
    pen_text(pen, &bold, x + half, baseline, step->table_heads[1],
             strlen(step->table_heads[1]), step->headline.origin);
}

static void cell_place(struct pen *pen, const struct table_cell *cell, mpt size, mpt tag,
                       mpt x, mpt top, mpt room)
{
    struct style plain = row_style(FACE_TEXT, size);
    mpt pitch = table_pitch(size);
    if (cell->name == NULL)
        return;
    if (!text_empty(cell->tag))
        row_tag_place(pen, cell->tag, size, x, top, pitch, tag, cell->origin);
    size_t parted = cell_break(pen, cell, size, room);
    const char *start = cell_start(pen, cell, parted);
    x += tag + CELL_START;
    pen_text(pen, &plain, x, baseline_in(top, pitch, size), start, strlen(start),
             cell->origin);
    if (parted > 0)
        pen_text(pen, &plain, x, baseline_in(top + pitch, pitch, size),
                 cell->name + parted, strlen(cell->name + parted), cell->origin);
}

static void subhead_place(struct pen *pen, const struct card_step *step, const char *head,
                          mpt size, mpt x, mpt top)
{
    struct style bold = row_style(FACE_BOLD, size);
    pen_text(pen, &bold, x, baseline_in(top, table_pitch(size), size), head, strlen(head),
             step->headline.origin);
}

void table_place(struct pen *pen, const struct card_step *step, mpt row_size, mpt x,
                 mpt top, mpt width)
{
    mpt size = table_size(pen, row_size), tag = table_tag(pen, step, size);
    mpt room = cell_room(tag, width);
    struct tops tops = {{top + table_pitch(size), top + table_pitch(size)}};
    table_head_place(pen, step, size, x, top, width);
    for (size_t i = 0; i < step->table_count; i++) {
        const struct table_row *line = &step->table[i];
        if (line->head != NULL)
            subhead_place(pen, step, line->head, size, x, lowest(&tops));
        for (size_t c = 0; c < TABLE_CELLS; c++)
            cell_place(pen, &line->cells[c], size, tag, x + (mpt)c * width / (mpt)TABLE_CELLS,
                       tops.of[c], room);
        line_pass(pen, line, size, room, &tops);
    }
}
