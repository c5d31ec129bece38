/* table_block.c - the table of openings under a step: port beside starboard, set closer
 * than rows (room: layout). It cuts no words: what is too long is told. */
#include "steps.h"

#include <string.h>

#define CELL_START MM(1.2)     /* from the tag to the words */
#define CELL_END MM(1.5)       /* from them to the next column */

static mpt table_size(const struct sheet *sheet, mpt row_size)
{
    mpt aim = size_rule(sheet->paper, ROLE_TABLE).aim;
    return row_size > aim ? aim : row_size;
}

static mpt table_pitch(mpt size)
{
    return line_pitch(ROLE_TABLE, size);
}

static mpt table_tag(const struct sheet *sheet, const struct card_step *step, mpt size)
{
    mpt widest = 0;
    for (size_t i = 0; i < step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++)
            if (step->table[i].cells[c].tag != NULL) {
                mpt width = row_tag_width(sheet, step->table[i].cells[c].tag, size);
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
static size_t cell_break(const struct sheet *sheet, const struct table_cell *cell, mpt size,
                         mpt room)
{
    struct style style = row_style(FACE_TEXT, size);
    if (cell->name == NULL || sheet_width(sheet, &style, cell->name) <= room)
        return 0;
    return cell->handling_at;
}

static const char *cell_start(const struct sheet *sheet, const struct table_cell *cell,
                              size_t parted)
{
    size_t length = parted > 0 ? parted : strlen(cell->name);
    while (parted > 0 && length > 0 && cell->name[length - 1] == ' ')
        length--;
    return arena_copy(sheet->arena, cell->name, length);
}

static mpt cell_width(const struct sheet *sheet, const struct table_cell *cell, mpt size,
                      mpt room)
{
    struct style style = row_style(FACE_TEXT, size);
    size_t parted = cell_break(sheet, cell, size, room);
    mpt start = sheet_width(sheet, &style, cell_start(sheet, cell, parted));
    mpt rest = parted == 0 ? 0 : sheet_width(sheet, &style, cell->name + parted);
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

static void line_pass(const struct sheet *sheet, const struct table_row *line, mpt size, mpt room,
                      struct tops *tops)
{
    mpt pitch = table_pitch(size), low = lowest(tops);
    for (size_t c = 0; c < TABLE_CELLS; c++) {
        const struct table_cell *cell = &line->cells[c];
        if (line->head != NULL)
            tops->of[c] = low + pitch;
        else if (cell->name != NULL)
            tops->of[c] += cell_break(sheet, cell, size, room) > 0 ? 2 * pitch : pitch;
    }
}

/* ---- measuring ---- */

mpt table_height(const struct sheet *sheet, const struct card_step *step, mpt row_size,
                 mpt width)
{
    mpt size = table_size(sheet, row_size), room = cell_room(table_tag(sheet, step, size), width);
    struct tops tops = {{table_pitch(size), table_pitch(size)}};
    for (size_t i = 0; i < step->table_count; i++)
        line_pass(sheet, &step->table[i], size, room, &tops);
    return step->table_count == 0 ? 0 : lowest(&tops);
}

static mpt cell_excess(const struct sheet *sheet, const struct table_cell *cell, mpt size,
                       mpt room)
{
    return cell->name == NULL ? -room : cell_width(sheet, cell, size, room) - room;
}

mpt table_excess(const struct sheet *sheet, const struct card_step *step, mpt row_size,
                 mpt width, struct place *at)
{
    mpt size = table_size(sheet, row_size), excess = -width;
    mpt room = cell_room(table_tag(sheet, step, size), width);
    for (size_t i = 0; i < step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            mpt over = cell_excess(sheet, &step->table[i].cells[c], size, room);
            if (over <= excess)
                continue;
            excess = over;
            *at = step->table[i].cells[c].origin;
        }
    return excess;
}

bool table_tell(struct sheet *sheet, const struct card_step *step, mpt row_size, mpt width)
{
    mpt size = table_size(sheet, row_size), room = cell_room(table_tag(sheet, step, size), width);
    bool told = false;
    for (size_t i = 0; i < step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            const struct table_cell *cell = &step->table[i].cells[c];
            told |= too_long_tell(sheet, cell->origin, cell_excess(sheet, cell, size, room), size);
        }
    return told;
}

/* ---- placing ---- */

static void table_head_place(struct sheet *sheet, const struct card_step *step, mpt size, mpt x,
                             mpt top, mpt width)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    mpt half = width / (mpt)TABLE_CELLS, baseline = baseline_in(top, table_pitch(size), size);
    struct area sign = {x - INDENT + SIGN_AT, top + MM(0.6), SIGN_SIDE, SIGN_SIDE};
    gear_sign_place(sheet, sign, step->table_kind, size_rule(sheet->paper, ROLE_PLAN_TAG).aim, NULL,
                    step->headline.origin);
    mpt at = x;
    at += sheet_text(sheet, &bold, at, baseline, step->table_heads[0],
                     strlen(step->table_heads[0]), step->headline.origin);
    sheet_text(sheet, &plain, at + MM(2), baseline, step->table_note, strlen(step->table_note),
               step->headline.origin);
    sheet_text(sheet, &bold, x + half, baseline, step->table_heads[1],
               strlen(step->table_heads[1]), step->headline.origin);
}

static void cell_place(struct sheet *sheet, const struct table_cell *cell, mpt size, mpt tag,
                       mpt x, mpt top, mpt room)
{
    struct style plain = row_style(FACE_TEXT, size);
    mpt pitch = table_pitch(size);
    if (cell->name == NULL)
        return;
    if (!text_empty(cell->tag))
        row_tag_place(sheet, cell->tag, size, x, top, pitch, tag, cell->origin);
    size_t parted = cell_break(sheet, cell, size, room);
    const char *start = cell_start(sheet, cell, parted);
    x += tag + CELL_START;
    sheet_text(sheet, &plain, x, baseline_in(top, pitch, size), start, strlen(start),
               cell->origin);
    if (parted > 0)
        sheet_text(sheet, &plain, x, baseline_in(top + pitch, pitch, size),
                   cell->name + parted, strlen(cell->name + parted), cell->origin);
}

static void subhead_place(struct sheet *sheet, const struct card_step *step, const char *head,
                          mpt size, mpt x, mpt top)
{
    struct style bold = row_style(FACE_BOLD, size);
    sheet_text(sheet, &bold, x, baseline_in(top, table_pitch(size), size), head, strlen(head),
               step->headline.origin);
}

void table_place(struct sheet *sheet, const struct card_step *step, mpt row_size, mpt x,
                 mpt top, mpt width)
{
    mpt size = table_size(sheet, row_size), tag = table_tag(sheet, step, size);
    mpt room = cell_room(tag, width);
    struct tops tops = {{top + table_pitch(size), top + table_pitch(size)}};
    table_head_place(sheet, step, size, x, top, width);
    for (size_t i = 0; i < step->table_count; i++) {
        const struct table_row *line = &step->table[i];
        if (line->head != NULL)
            subhead_place(sheet, step, line->head, size, x, lowest(&tops));
        for (size_t c = 0; c < TABLE_CELLS; c++)
            cell_place(sheet, &line->cells[c], size, tag, x + (mpt)c * width / (mpt)TABLE_CELLS,
                       tops.of[c], room);
        line_pass(sheet, line, size, room, &tops);
    }
}
