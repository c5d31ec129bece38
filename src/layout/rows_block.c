/* rows_block.c - lines of gear: sign, tags, name and place (room: layout). */
#include "rows.h"

#include "measures.h"

#include <string.h>

struct style row_style(enum face_role face, mpt size)
{
    return (struct style){ROLE_ROW, face, size, INK_BLACK};
}

mpt row_indent(const struct pen *pen)
{
    return grown(pen->paper, STEP_INDENT);
}

struct area row_sign_area(const struct pen *pen, mpt x, mpt top)
{
    mpt side = grown(pen->paper, GEAR_SIGN);
    return (struct area){x + grown(pen->paper, STEP_SIGN_AT), top, side, side};
}

/* ---- tags ---- */

static struct style row_tag_style(mpt size)
{
    return (struct style){ROLE_ROW, FACE_BOLD, size, INK_WHITE};
}

mpt row_tag_width(const struct pen *pen, const char *tag, mpt size)
{
    struct style style = row_tag_style(size);
    return pen_width(pen, &style, tag) + ROW_TAG_PAD;
}

void row_tag_place(struct pen *pen, const char *tag, mpt size, struct area area,
                   struct place origin)
{
    struct style style = row_tag_style(size);
    mpt height = em_share(size, EM_TAG_BOX), most = area.height - ROW_TAG_SLACK;
    mpt x = area.x + (area.width - pen_width(pen, &style, tag)) / 2;
    mpt baseline = baseline_in(area.y, area.height, size);
    struct area box = area;
    box.height = height > most ? most : height;
    box.y += (area.height - box.height) / 2;
    pen_box(pen, box, INK_BLACK, INK_NONE, 0, TAG_CORNER);
    pen_text(pen, &style, x, baseline, tag, strlen(tag), origin);
}

mpt rows_tag_width(const struct pen *pen, const struct card_row *rows, size_t count, mpt size)
{
    mpt widest = 0;
    for (size_t r = 0; r < count; r++)
        for (size_t t = 0; t < rows[r].tag_count; t++) {
            mpt width = row_tag_width(pen, rows[r].tags[t], size);
            widest = width > widest ? width : widest;
        }
    return widest;
}

/* ---- rows ---- */

static mpt row_text_start(const struct pen *pen, const struct card_row *row, mpt tag)
{
    return row_indent(pen) + (mpt)row->tag_count * (tag + ROW_TAG_GAP) + ROW_TAG_GAP;
}

mpt row_width(const struct pen *pen, const struct card_row *row, mpt size, mpt tag)
{
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    return row_text_start(pen, row, tag) + pen_width(pen, &bold, row->name) + ROW_WHERE_GAP +
           pen_width(pen, &plain, row->where);
}

static mpt where_width(const struct pen *pen, const char *where, size_t length, mpt size)
{
    struct style plain = row_style(FACE_TEXT, size);
    return pen_width(pen, &plain, arena_copy(pen->arena, where, length));
}

/* Is it too long for one line at the smallest size too? Smaller type goes before a second line,
 * and so does a name that yields. */
static bool needs_second_line(const struct pen *pen, const struct card_row *row, mpt size,
                              struct row_room room)
{
    mpt floor = size_rule(pen->paper, ROLE_ROW).floor;
    mpt tag = ROW_TAG_PAD + (mpt)((int64_t)(room.tag - ROW_TAG_PAD) * floor / size);
    return row->lesser == NULL && row_width(pen, row, floor, tag) > room.width;
}

/* How much of `where` stands on the first line: all of it, or, where that is too long, what is
 * before the last joint that still fits. */
static size_t first_line(const struct pen *pen, const struct card_row *row, mpt size,
                         struct row_room room)
{
    mpt over = row_width(pen, row, size, room.tag) - room.width;
    size_t length = strlen(row->where), first = length;
    if (over <= 0 || !needs_second_line(pen, row, size, room))
        return length;
    mpt whole = where_width(pen, row->where, length, size);
    for (size_t i = length; i-- > 1 && first == length;)
        if (strchr(",:;", row->where[i]) != NULL && row->where[i + 1] == ' ' &&
            where_width(pen, row->where, i + 1, size) + over <= whole)
            first = i + 1;
    return first;
}

/* The rest, on a line below the name; "": there is none. */
static const char *second_line(const struct card_row *row, size_t first)
{
    return row->where[first] == '\0' ? "" : row->where + first + 1;
}

struct row_lines row_lines(const struct pen *pen, const struct card_row *row, mpt size,
                           struct row_room room)
{
    size_t first = first_line(pen, row, size, room);
    const char *second = second_line(row, first);
    mpt width = text_empty(second)
                    ? row_width(pen, row, size, room.tag)
                    : row_text_start(pen, row, room.tag) +
                          where_width(pen, second, strlen(second), size);
    return (struct row_lines){first, second, width - room.width,
                              text_empty(second) ? 0 : line_pitch(ROLE_ROW, size)};
}

mpt row_pitch_least(const struct pen *pen, mpt size)
{
    mpt tag = em_share(size, EM_TAG_BOX) + ROW_TAG_SLACK, sign = grown(pen->paper, ROW_PITCH);
    return tag > sign ? tag : sign;
}

void row_place(struct pen *pen, const struct card_row *row, mpt size, mpt tag,
               struct area line)
{
    struct row_lines lines = row_lines(pen, row, size, (struct row_room){tag, line.width});
    struct style bold = row_style(FACE_BOLD, size), plain = row_style(FACE_TEXT, size);
    struct area sign = row_sign_area(pen, line.x, line.y);
    struct area box = {line.x + row_indent(pen), line.y, tag, line.height};
    mpt baseline = baseline_in(line.y, line.height, size);
    sign.y += (line.height - sign.height) / 2;
    gear_sign_place(pen, sign, row->kind, size_rule(pen->paper, ROLE_PLAN_TAG).floor,
                    row->tag_count > 0 ? row->tags[0] : "?", row->origin);
    for (size_t t = 0; t < row->tag_count; t++) {
        row_tag_place(pen, row->tags[t], size, box, row->origin);
        box.x += tag + ROW_TAG_GAP;
    }
    mpt start = line.x + row_text_start(pen, row, tag), at = start;
    at += pen_text(pen, &bold, at, baseline, row->name, strlen(row->name), row->origin);
    pen_text(pen, &plain, at + ROW_WHERE_GAP, baseline, row->where, lines.first, row->origin);
    if (!text_empty(lines.second))
        pen_text(pen, &plain, start, baseline + lines.extra, lines.second,
                 strlen(lines.second), row->origin);
}

/* ---- what is too long ---- */

/* At least one, more than less: letters are of many widths. */
static int letters_of(mpt excess, mpt size)
{
    mpt letter = em_share(size, EM_LETTER);
    return (int)((excess + letter - 1) / letter);
}

bool too_long_tell(struct pen *pen, struct place origin, mpt over, mpt size, const char *what)
{
    int letters = letters_of(over, size);
    if (over <= 0)
        return false;
    pen_too_long(pen, origin, over,
                 text_format(pen->arena, "shorten spot, how or name of this entry by about %d "
                             "letter%s", letters, letters == 1 ? "" : "s"),
                 what);
    return true;
}

/* ---- the block of rows ---- */

struct laid_rows rows_lay(const struct pen *pen, mpt size, mpt width)
{
    const struct rows_facts *rows = sheet_rows(pen->sheet);
    struct laid_rows laid = {.rows = rows, .size = size, .width = width, .excess = -width,
                             .tag = rows_tag_width(pen, rows->rows, rows->count, size),
                             .pitch = row_pitch_least(pen, size)};
    for (size_t r = 0; r < rows->count; r++) {
        mpt excess = row_width(pen, &rows->rows[r], size, laid.tag) - width;
        laid.excess = excess > laid.excess ? excess : laid.excess;
    }
    laid.height = (mpt)rows->count * laid.pitch;
    return laid;
}

bool rows_excess_tell(struct pen *pen, const struct laid_rows *laid)
{
    bool told = false;
    for (size_t r = 0; r < laid->rows->count; r++) {
        const struct card_row *row = &laid->rows->rows[r];
        mpt excess = row_width(pen, row, laid->size, laid->tag) - laid->width;
        told |= too_long_tell(pen, row->origin, excess, laid->size, "a line of the list");
    }
    return told;
}

void rows_place(struct pen *pen, const struct laid_rows *laid, struct area column)
{
    mpt count = (mpt)laid->rows->count, extra = column.height - laid->height;
    mpt share = count > 0 && extra > 0 ? extra / count : 0;
    column.height = laid->pitch + (share > ROW_EXTRA_MOST ? ROW_EXTRA_MOST : share);
    pen->block = BLOCK_ROWS;
    for (size_t r = 0; r < laid->rows->count; r++, column.y += column.height)
        row_place(pen, &laid->rows->rows[r], laid->size, laid->tag, column);
}
