/* table_block.c - the table of openings under a step: port beside starboard, set closer
 * than rows (room: layout). It cuts no words: what is too long is told. */
#include "steps.h"

#include "measures.h"

#include <string.h>

struct laid_cell {
    const char *start;        /* NULL: the cell is empty */
    const char *rest;         /* on a second line, or NULL */
    mpt over;                 /* how far it passes its column */
    mpt down;                 /* from the table's top */
};

struct laid_line {
    const struct table_row *row;
    struct laid_cell cells[TABLE_CELLS];
    mpt head_down;            /* of a head in the middle of the table */
};

static mpt table_size(const struct pen *pen, mpt row_size)
{
    mpt aim = size_rule(pen->paper, ROLE_TABLE).aim;
    return row_size > aim ? aim : row_size;
}

static mpt table_pitch(const struct laid_table *laid)
{
    return line_pitch(ROLE_TABLE, laid->size);
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

static mpt column_width(const struct laid_table *laid)
{
    return laid->width / (mpt)TABLE_CELLS;
}

/* What the words of a cell have of its column. */
static mpt cell_room(const struct laid_table *laid)
{
    return column_width(laid) - laid->tag - CELL_START - CELL_END;
}

static const char *words_before(const struct pen *pen, const char *text, size_t length)
{
    while (length > 0 && text[length - 1] == ' ')
        length--;
    return arena_copy(pen->arena, text, length);
}

/* Handling of its own has a line of its own where both are too long for one. */
static struct laid_cell cell_lay(const struct pen *pen, const struct laid_table *laid,
                                 const struct table_cell *cell)
{
    struct style style = row_style(FACE_TEXT, laid->size);
    mpt room = cell_room(laid), rest = 0;
    struct laid_cell own = {.start = cell->name, .over = -room};
    if (cell->name == NULL)
        return own;
    if (pen_width(pen, &style, cell->name) > room && cell->handling_at > 0) {
        own.start = words_before(pen, cell->name, cell->handling_at);
        own.rest = cell->name + cell->handling_at;
        rest = pen_width(pen, &style, own.rest);
    }
    mpt start = pen_width(pen, &style, own.start);
    own.over = (start > rest ? start : rest) - room;
    return own;
}

/* Columns go down by themselves, but a head in the middle stands below both. */
struct downs { mpt of[TABLE_CELLS]; };

static mpt lowest(const struct downs *downs)
{
    mpt low = downs->of[0];
    for (size_t c = 1; c < TABLE_CELLS; c++)
        low = downs->of[c] > low ? downs->of[c] : low;
    return low;
}

static void line_lay(const struct pen *pen, const struct laid_table *laid,
                     struct laid_line *line, struct downs *downs)
{
    mpt pitch = table_pitch(laid);
    line->head_down = lowest(downs);
    for (size_t c = 0; c < TABLE_CELLS; c++) {
        struct laid_cell *cell = &line->cells[c];
        *cell = cell_lay(pen, laid, &line->row->cells[c]);
        cell->down = downs->of[c];
        if (line->row->head != NULL)
            downs->of[c] = line->head_down + pitch;
        else if (cell->start != NULL)
            downs->of[c] += cell->rest != NULL ? 2 * pitch : pitch;
    }
}

/* ---- the whole ---- */

static void excess_find(struct laid_table *laid)
{
    laid->excess = -laid->width;
    for (size_t i = 0; i < laid->step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++)
            if (laid->lines[i].cells[c].over > laid->excess) {
                laid->excess = laid->lines[i].cells[c].over;
                laid->excess_at = laid->step->table[i].cells[c].origin;
            }
}

struct laid_table table_lay(const struct pen *pen, const struct card_step *step, mpt row_size,
                            mpt width)
{
    mpt size = table_size(pen, row_size);
    struct laid_table laid = {.step = step, .size = size, .width = width,
                              .tag = table_tag(pen, step, size)};
    struct laid_line *lines = arena_array(pen->arena, step->table_count, sizeof *lines);
    struct downs downs = {{table_pitch(&laid), table_pitch(&laid)}};
    for (size_t i = 0; i < step->table_count; i++) {
        lines[i].row = &step->table[i];
        line_lay(pen, &laid, &lines[i], &downs);
    }
    laid.lines = lines;
    laid.height = step->table_count == 0 ? 0 : lowest(&downs);
    excess_find(&laid);
    return laid;
}

bool table_tell(struct pen *pen, const struct laid_table *laid)
{
    bool told = false;
    for (size_t i = 0; i < laid->step->table_count; i++)
        for (size_t c = 0; c < TABLE_CELLS; c++)
            told |= too_long_tell(pen, laid->step->table[i].cells[c].origin,
                                  laid->lines[i].cells[c].over, laid->size,
                                  "a line of the steps");
    return told;
}

/* ---- placing ---- */

/* What is read of the columns: one is read to its end before the next. */
struct column_parts { size_t of[TABLE_CELLS]; };

static size_t column_begin(struct pen *pen)
{
    size_t outer = reading_begin(pen, READING_GROUP), part = reading_part_open(pen);
    reading_end(pen, outer);
    return part;
}

static struct column_parts columns_begin(struct pen *pen)
{
    struct column_parts parts;
    for (size_t c = 0; c < TABLE_CELLS; c++)
        parts.of[c] = column_begin(pen);
    return parts;
}

static void table_head_place(struct pen *pen, const struct laid_table *laid, mpt x, mpt top,
                             const struct column_parts *parts)
{
    const struct card_step *step = laid->step;
    struct style bold = row_style(FACE_BOLD, laid->size), plain = row_style(FACE_TEXT, laid->size);
    mpt baseline = baseline_in(top, table_pitch(laid), laid->size), at = x;
    struct area sign = row_sign_area(pen, x - row_indent(pen), top + TABLE_SIGN_DOWN);
    pen_symbol(pen, sign, step->table_kind->symbol, step->headline.origin);
    size_t outer = reading_resume(pen, parts->of[0]);
    at += pen_text(pen, &bold, at, baseline, step->table_heads[0], strlen(step->table_heads[0]),
                   step->headline.origin);
    pen_text(pen, &plain, at + TABLE_NOTE_GAP, baseline, step->table_note,
             strlen(step->table_note), step->headline.origin);
    reading_resume(pen, parts->of[1]);
    pen_text(pen, &bold, x + column_width(laid), baseline, step->table_heads[1],
             strlen(step->table_heads[1]), step->headline.origin);
    reading_end(pen, outer);
}

static void cell_place(struct pen *pen, const struct laid_table *laid,
                       const struct laid_cell *own, const struct table_cell *cell,
                       struct point at)
{
    struct style plain = row_style(FACE_TEXT, laid->size);
    mpt pitch = table_pitch(laid), baseline = baseline_in(at.y, pitch, laid->size);
    if (own->start == NULL)
        return;
    size_t outer = reading_begin(pen, READING_LINE);
    if (!text_empty(cell->tag))
        row_tag_place(pen, cell->tag, laid->size, (struct area){at.x, at.y, laid->tag, pitch},
                      cell->origin);
    at.x += laid->tag + CELL_START;
    pen_text(pen, &plain, at.x, baseline, own->start, strlen(own->start), cell->origin);
    if (own->rest != NULL)
        pen_text(pen, &plain, at.x, baseline_in(at.y + pitch, pitch, laid->size), own->rest,
                 strlen(own->rest), cell->origin);
    reading_end(pen, outer);
}

static void subhead_place(struct pen *pen, const struct laid_table *laid, const char *head,
                          mpt x, mpt top)
{
    struct style bold = row_style(FACE_BOLD, laid->size);
    pen_text(pen, &bold, x, baseline_in(top, table_pitch(laid), laid->size), head, strlen(head),
             laid->step->headline.origin);
}

static void line_cells_place(struct pen *pen, const struct laid_table *laid,
                             const struct laid_line *line, struct point corner,
                             const struct column_parts *parts)
{
    for (size_t c = 0; c < TABLE_CELLS; c++) {
        size_t outer = reading_resume(pen, parts->of[c]);
        cell_place(pen, laid, &line->cells[c], &line->row->cells[c],
                   (struct point){corner.x + (mpt)c * laid->width / (mpt)TABLE_CELLS,
                                  corner.y + line->cells[c].down});
        reading_end(pen, outer);
    }
}

/* What stands under a head in the middle lies in neither column. */
void table_place(struct pen *pen, const struct laid_table *laid, mpt x, mpt top)
{
    struct column_parts parts = columns_begin(pen);
    table_head_place(pen, laid, x, top, &parts);
    for (size_t i = 0; i < laid->step->table_count; i++) {
        const struct laid_line *line = &laid->lines[i];
        if (line->row->head != NULL) {
            parts.of[0] = parts.of[1] = column_begin(pen);
            size_t outer = reading_resume(pen, parts.of[0]);
            subhead_place(pen, laid, line->row->head, x, top + line->head_down);
            reading_end(pen, outer);
        }
        line_cells_place(pen, laid, line, (struct point){x, top}, &parts);
    }
}
