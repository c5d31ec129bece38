/* index_block.c - the index at the foot of a safety plan: what saves lives, its tags and places,
 * in two columns within a frame (room: layout). */
#include "measures.h"
#include "safety.h"

#include <string.h>

#define INDEX_COLUMNS 2

/* Where the next word of an entry goes. It is measured and placed in one and the same way. */
struct index_pen {
    struct pen *pen;              /* NULL: it is only measured */
    const struct pen *known;
    struct area cell;             /* of the entry */
    mpt x, y;                     /* of the left end and the head of its line */
};

static struct style index_style(const struct pen *pen, enum face_role face, enum ink ink)
{
    return (struct style){ROLE_ROW, face, size_rule(pen->paper, ROLE_ROW).floor, ink};
}

static mpt index_pitch(const struct pen *pen)
{
    mpt line = line_pitch(ROLE_ROW, size_rule(pen->paper, ROLE_ROW).floor);
    return line + INDEX_LINE_GAP;
}

static void index_line_next(struct index_pen *at)
{
    at->x = at->cell.x + INDEX_INDENT;
    at->y += index_pitch(at->known);
}

static void index_words(struct index_pen *at, enum face_role face, const char *text, mpt gap,
                        struct place origin)
{
    struct style style = index_style(at->known, face, INK_BLACK);
    mpt baseline = baseline_in(at->y, index_pitch(at->known), style.size);
    if (at->pen != NULL)
        pen_text(at->pen, &style, at->x, baseline, text, strlen(text), origin);
    at->x += pen_width(at->known, &style, text) + gap;
}

static mpt index_tag_width(const struct pen *pen, const char *tag)
{
    struct style style = index_style(pen, FACE_BOLD, INK_WHITE);
    return pen_width(pen, &style, tag) + CHIP_PAD;
}

static void index_tag(struct index_pen *at, const struct index_spot *spot, const char *tag)
{
    struct style style = index_style(at->known, FACE_BOLD, INK_WHITE);
    mpt high = em_share(style.size, EM_TAG_BOX), width = index_tag_width(at->known, tag);
    if (at->pen != NULL)
        tag_chip_draw(at->pen, (struct area){at->x, at->y + (index_pitch(at->known) - high) / 2,
                                             width, high}, spot->level, tag, &style, spot->origin);
    at->x += width + CHIP_GAP;
}

static mpt spot_width(const struct pen *pen, const struct index_spot *spot)
{
    struct style style = index_style(pen, FACE_TEXT, INK_BLACK);
    mpt width = pen_width(pen, &style, spot->place);
    for (size_t i = 0; i < spot->tag_count; i++)
        width += index_tag_width(pen, spot->tags[i]) + CHIP_GAP;
    return width;
}

/* Tags and place stay on one line, and the next ones go on behind them. */
static void index_spot_write(struct index_pen *at, const struct index_spot *spot)
{
    mpt right = at->cell.x + at->cell.width;
    if (at->x + spot_width(at->known, spot) > right && at->x > at->cell.x + INDEX_INDENT)
        index_line_next(at);
    for (size_t i = 0; i < spot->tag_count; i++) {
        if (at->x + index_tag_width(at->known, spot->tags[i]) > right)
            index_line_next(at);
        index_tag(at, spot, spot->tags[i]);
    }
    struct style style = index_style(at->known, FACE_TEXT, INK_BLACK);
    if (at->x + pen_width(at->known, &style, spot->place) > right)
        index_line_next(at);
    index_words(at, FACE_TEXT, spot->place, INDEX_SPOT_GAP, spot->origin);
}

/* Gives its height. */
static mpt index_entry_write(const struct pen *known, struct pen *pen,
                             const struct index_entry *entry, struct area cell)
{
    struct index_pen at = {pen, known, cell, cell.x, cell.y};
    size_t outer = pen == NULL ? 0 : reading_begin(pen, READING_LINE);
    index_words(&at, FACE_BOLD, entry->name, INDEX_NAME_GAP, entry->spots[0].origin);
    for (size_t i = 0; i < entry->spot_count; i++)
        index_spot_write(&at, &entry->spots[i]);
    if (pen != NULL)
        reading_end(pen, outer);
    return at.y + index_pitch(known) - cell.y;
}

/* All entries in the area, two abreast; gives their height. */
static mpt index_write(const struct pen *known, struct pen *pen, struct area area)
{
    const struct index_facts *index = sheet_index(known->sheet);
    mpt gap = INDEX_COLUMN_GAP, width = (area.width - gap) / INDEX_COLUMNS, top = area.y;
    for (size_t i = 0; i < index->count; i += INDEX_COLUMNS) {
        mpt highest = 0;
        for (size_t c = 0; c < INDEX_COLUMNS && i + c < index->count; c++) {
            struct area cell = {area.x + (mpt)c * (width + gap), top, width, 0};
            mpt height = index_entry_write(known, pen, &index->entries[i + c], cell);
            highest = height > highest ? height : highest;
        }
        top += highest;
    }
    return top - area.y;
}

mpt index_height(const struct pen *pen, mpt width)
{
    if (sheet_index(pen->sheet)->count == 0)
        return 0;
    struct area area = {0, 0, width - 2 * INDEX_PAD_X, 0};
    return index_write(pen, NULL, area) + 2 * INDEX_PAD_Y;
}

void index_place(struct pen *pen, struct area area)
{
    if (sheet_index(pen->sheet)->count == 0)
        return;
    pen->block = BLOCK_INDEX;
    pen_box(pen, area, INK_NONE, INK_BLACK, THIN_FRAME, FRAME_CORNER);
    index_write(pen, pen, (struct area){area.x + INDEX_PAD_X, area.y + INDEX_PAD_Y,
                                        area.width - 2 * INDEX_PAD_X, 0});
}
