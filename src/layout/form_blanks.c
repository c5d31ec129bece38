/* form_blanks.c - what a form asks below the cells of a line, on as many rows as it takes (room:
 * layout). A question that a row can hold is not parted; a longer one is parted between two of
 * its boxes. */
#include "form_blanks.h"

#include "measures.h"

/* ---- the parts ---- */

static mpt room_width(enum form_room room)
{
    switch (room) {
    case FORM_NO_ROOM:
        return 0;
    case FORM_SHORT:
        return FORM_ROOM_SHORT;
    case FORM_LONG:
        return FORM_ROOM_LONG;
    }
    return 0;
}

static mpt blank_words_width(const struct laid_blank *part)
{
    return part->words.line_count == 0 ? 0 : part->words.lines[0].width;
}

static mpt box_width(const struct laid_blank *part)
{
    return part->box == BLANK_BOX ? FORM_TICK_BOX + FORM_BOX_GAP : 0;
}

/* With the gap between words and line. */
static mpt blank_part_width(const struct laid_blank *part)
{
    mpt words = box_width(part) + blank_words_width(part);
    mpt gap = words > 0 && part->room > 0 ? FORM_BLANK_GAP : 0;
    return words + gap + part->room;
}

static void blank_part_add(const struct pen *pen, const struct style *style,
                           const struct form_line *line, struct laid_blanks *laid,
                           struct laid_blank part, const char *words)
{
    if (!text_empty(words))
        part.words = paragraph_make(pen, style, words, ANY_WIDTH, line->origin);
    part.width = blank_part_width(&part);
    laid->parts[laid->count++] = part;
}

/* The parts of one question: its words, with the line where there is nothing to tick; each box;
 * the line behind them. Gives how many. */
static size_t question_add(const struct pen *pen, const struct style *style,
                           const struct form_line *line, struct laid_blanks *laid,
                           const struct form_blank *blank)
{
    size_t before = laid->count;
    mpt room = room_width(blank->room);
    bool ticked = blank->choice_count > 0;
    if (!text_empty(blank->label) || !ticked)
        blank_part_add(pen, style, line, laid, (struct laid_blank){.room = ticked ? 0 : room},
                       blank->label);
    for (size_t i = 0; i < blank->choice_count; i++)
        blank_part_add(pen, style, line, laid, (struct laid_blank){.box = BLANK_BOX},
                       blank->choices[i]);
    if (ticked && room > 0)
        blank_part_add(pen, style, line, laid, (struct laid_blank){.room = room}, NULL);
    return laid->count - before;
}

static size_t blank_parts_most(const struct form_line *line)
{
    size_t count = 0;
    for (size_t i = 0; i < line->blank_count; i++)
        count += line->blanks[i].choice_count + 2;
    return count;
}

/* ---- rows ---- */

/* Where the next part may stand. */
struct blank_flow {
    mpt width, column;            /* of a row; of a column, 0: there are none */
    mpt x;                        /* 0: at the start of a row */
    mpt y;                        /* of the row */
    struct laid_blank *begin;     /* its first part */
    struct laid_blank *end;       /* behind its last */
};

/* The height of a row is that of all its parts. */
static void row_end(struct blank_flow *flow)
{
    mpt tall = FORM_TICK_ROW;
    for (struct laid_blank *part = flow->begin; part < flow->end; part++)
        tall = part->room > 0 ? FORM_BLANK_ROW : tall;
    for (struct laid_blank *part = flow->begin; part < flow->end; part++) {
        part->y = flow->y;
        part->tall = tall;
    }
    flow->y += flow->begin < flow->end ? tall : 0;
    flow->begin = flow->end;
    flow->x = 0;
}

/* Words stay with the first box behind them. */
static bool tied_to_next(const struct laid_blank *parts, size_t index, size_t count)
{
    return index + 1 < count && parts[index].box == BLANK_NO_BOX &&
           parts[index + 1].box == BLANK_BOX;
}

static mpt question_width(const struct laid_blank *parts, size_t count)
{
    mpt width = 0;
    for (size_t i = 0; i < count; i++)
        width += (i == 0 ? 0 : FORM_ASKED_GAP) + parts[i].width;
    return width;
}

/* Behind what stands in the row, at the next column where there are columns. */
static mpt question_start(const struct blank_flow *flow)
{
    if (flow->x == 0)
        return 0;
    if (flow->column == 0)
        return flow->x + FORM_ASKED_APART;
    return (flow->x + FORM_ASKED_GAP + flow->column - 1) / flow->column * flow->column;
}

static void question_flow(struct blank_flow *flow, struct laid_blank *parts, size_t count)
{
    mpt start = question_start(flow);
    if (start + question_width(parts, count) > flow->width)
        row_end(flow);
    else
        flow->x = start;
    for (size_t i = 0; i < count; i++) {
        mpt gap = i == 0 || flow->x == 0 ? 0 : FORM_ASKED_GAP;
        mpt need = parts[i].width;
        if (tied_to_next(parts, i, count))
            need += FORM_ASKED_GAP + parts[i + 1].width;
        if (flow->x > 0 && flow->x + gap + need > flow->width) {
            row_end(flow);
            gap = 0;
        }
        parts[i].x = flow->x + gap;
        flow->end = &parts[i] + 1;
        flow->x = parts[i].x + parts[i].width;
    }
}

/* The parts of a row from `first` on; gives behind the last. */
static size_t row_parts_end(const struct laid_blanks *laid, size_t first)
{
    size_t end = first;
    while (end < laid->count && laid->parts[end].y == laid->parts[first].y)
        end++;
    return end;
}

/* What a row leaves is given to its long lines. */
static void row_widen(struct laid_blanks *laid, size_t first, size_t end, mpt slack)
{
    size_t many = 0;
    mpt shift = 0;
    for (size_t i = first; i < end; i++)
        many += laid->parts[i].room >= FORM_ROOM_LONG ? 1 : 0;
    for (size_t i = first; many > 0 && i < end; i++) {
        struct laid_blank *part = &laid->parts[i];
        mpt more = part->room >= FORM_ROOM_LONG ? slack / (mpt)many : 0;
        part->x += shift;
        part->room += more;
        part->width += more;
        shift += more;
    }
}

static void rows_widen(struct laid_blanks *laid, mpt width, mpt column)
{
    for (size_t first = laid->beside, end; first < laid->count; first = end) {
        end = row_parts_end(laid, first);
        const struct laid_blank *last = &laid->parts[end - 1];
        mpt slack = width - last->x - last->width;
        laid->over = -slack > laid->over ? -slack : laid->over;
        if (slack > 0 && column == 0)
            row_widen(laid, first, end, slack);
    }
}

/* ---- beside the words ---- */

/* Does the question stand there, behind those that do? Then its parts are placed; `end` is where
 * they end. */
static bool question_beside(struct laid_blank *parts, size_t count, mpt room, mpt *end)
{
    mpt start = *end == 0 ? 0 : *end + FORM_ASKED_APART;
    if (start + question_width(parts, count) > room)
        return false;
    for (size_t i = 0; i < count; i++) {
        parts[i].x = start;
        start += parts[i].width + FORM_ASKED_GAP;
    }
    *end = start - FORM_ASKED_GAP;
    return true;
}

static void beside_shift(struct laid_blanks *laid, mpt shift)
{
    for (size_t i = 0; i < laid->beside; i++)
        laid->parts[i].x += shift;
}

struct laid_blanks blanks_lay(const struct pen *pen, const struct style *style,
                              const struct form_line *line, struct blank_space space)
{
    struct laid_blanks laid = {
        .parts = arena_array(pen->arena, blank_parts_most(line), sizeof *laid.parts)};
    struct blank_flow flow = {.width = space.width,
                              .column = line->across == 0 ? 0
                                                          : space.width / (mpt)line->across};
    mpt end = 0;
    flow.begin = flow.end = laid.parts;
    for (size_t i = 0; i < line->blank_count; i++) {
        size_t first = laid.count;
        size_t count = question_add(pen, style, line, &laid, &line->blanks[i]);
        bool beside = first == laid.beside &&
                      question_beside(laid.parts + first, count, space.beside, &end);
        if (beside)
            laid.beside = laid.count;
        if (beside)
            flow.begin = flow.end = laid.parts + laid.count;
        else
            question_flow(&flow, laid.parts + first, count);
    }
    row_end(&flow);
    beside_shift(&laid, space.beside - end);
    rows_widen(&laid, space.width, flow.column);
    laid.height = flow.y == 0 ? 0 : flow.y + FORM_PAD_Y;
    return laid;
}

/* ---- placing ---- */

void form_tick_place(struct pen *pen, struct area area)
{
    pen_box(pen, (struct area){area.x + (area.width - FORM_TICK_BOX) / 2,
                               area.y + (area.height - FORM_TICK_BOX) / 2, FORM_TICK_BOX,
                               FORM_TICK_BOX},
            INK_NONE, INK_BLACK, THIN_FRAME, 0);
}

/* In a row of that area's height. */
static void blank_part_place(struct pen *pen, const struct laid_blank *part, struct area area)
{
    mpt x = area.x;
    if (part->box == BLANK_BOX) {
        form_tick_place(pen, (struct area){x, area.y, FORM_TICK_BOX, area.height});
        x += FORM_TICK_BOX + FORM_BOX_GAP;
    }
    if (part->words.line_count > 0)
        paragraph_place(pen, &part->words, x,
                        area.y + (area.height - paragraph_height(&part->words)) / 2);
    if (part->room == 0)
        return;
    mpt end = area.x + part->width, foot = area.y + area.height - FORM_BLANK_DOWN;
    pen_line(pen, (struct point){end - part->room, foot}, (struct point){end, foot}, INK_BLACK,
             BLANK_RULE);
    pen_part(pen, PART_BLANK);
}

void blanks_place(struct pen *pen, const struct laid_blanks *laid,
                  const struct blank_corners *corners)
{
    for (size_t i = 0; i < laid->count; i++) {
        const struct laid_blank *part = &laid->parts[i];
        struct point beside = corners->beside, below = corners->below;
        blank_part_place(pen, part,
                         i < laid->beside
                             ? (struct area){beside.x + part->x, beside.y, part->width,
                                             corners->cells}
                             : (struct area){below.x + part->x, below.y + part->y,
                                             part->width, part->tall});
    }
}
