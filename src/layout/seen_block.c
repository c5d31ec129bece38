/* seen_block.c - the index of cards in one column or two: groups with dark heads, and below each
 * its lines: sign, what one sees, number of the card (room: layout). No line is cut short; one
 * that is too wide goes on below itself. */
#include "seen.h"

#include "measures.h"

#include <string.h>

/* ---- items ---- */

static struct style seen_style(mpt size, enum ink ink)
{
    return (struct style){ROLE_ROW, FACE_BOLD, size, ink};
}

static mpt widest_number(const struct pen *pen, const struct laid_seen *laid)
{
    struct style style = seen_style(laid->size, INK_BLACK);
    mpt widest = 0;
    for (size_t i = 0; i < laid->count; i++) {
        const struct seen_line *line = laid->items[i].line;
        mpt width = line == NULL ? 0 : pen_width(pen, &style, line->number);
        widest = width > widest ? width : widest;
    }
    return widest;
}

static void items_list(struct laid_seen *laid, struct arena *arena)
{
    const struct seen_facts *seen = laid->seen;
    size_t count = 0;
    for (size_t i = 0; i < seen->count; i++)
        count += seen->groups[i].count + 1;
    laid->items = arena_array(arena, count, sizeof *laid->items);
    for (size_t i = 0; i < seen->count; i++) {
        const struct seen_group *group = &seen->groups[i];
        laid->items[laid->count++] = (struct seen_item){.group = group};
        for (size_t k = 0; k < group->count; k++)
            laid->items[laid->count++] =
                (struct seen_item){.group = group, .line = &group->lines[k]};
    }
}

static void items_lay(const struct pen *pen, struct laid_seen *laid)
{
    struct style style = seen_style(laid->size, INK_BLACK);
    mpt sign = grown(pen->paper, GEAR_SIGN), words = grown(pen->paper, ROW_WORDS_AT);
    mpt width = laid->width - words - SEEN_NUMBER_GAP - widest_number(pen, laid) - SEEN_PAD;
    for (size_t i = 0; i < laid->count; i++) {
        struct seen_item *item = &laid->items[i];
        item->height = laid->head;
        if (item->line == NULL)
            continue;
        item->words = paragraph_make(pen, &style, item->line->text, width, item->line->origin);
        mpt high = paragraph_height(&item->words);
        item->height = (high > sign ? high : sign) + SEEN_LINE_CLEAR;
        laid->wide = laid->wide || item->words.widest_piece > width;
    }
}

/* ---- columns ---- */

/* May a column begin with a line, and so cut a group? */
enum group_cut { GROUPS_WHOLE, GROUPS_CUT };

/* With the room above it, which a head has where it is not the first of its column. */
static mpt item_height(const struct laid_seen *laid, size_t index, size_t first)
{
    const struct seen_item *item = &laid->items[index];
    if (item->line != NULL)
        return item->height + laid->ease;
    return item->height + (index > first ? SEEN_HEAD_GAP + laid->ease : 0);
}

/* Up to which item a column goes on from `first` that is no higher: to the end of a group, or of
 * a line that is not the last that could stand below its head. */
static size_t column_end(const struct laid_seen *laid, size_t first, mpt height,
                         enum group_cut cut)
{
    mpt high = laid->top + (laid->items[first].line == NULL ? 0 : laid->head);
    size_t end = first;
    for (size_t i = first; i < laid->count; i++) {
        high += item_height(laid, i, first);
        if (high > height)
            break;
        bool last = i + 1 == laid->count || laid->items[i + 1].line == NULL;
        if (last || (cut == GROUPS_CUT && laid->items[i].line != NULL))
            end = i + 1;
    }
    return end;
}

static bool columns_stand(struct laid_seen *laid, size_t columns, mpt height, enum group_cut cut)
{
    size_t first = 0;
    laid->column_count = 0;
    while (first < laid->count && laid->column_count < columns) {
        size_t end = column_end(laid, first, height, cut);
        laid->columns[laid->column_count++] = (struct seen_column){first, end};
        if (end == first)
            return false;
        first = end;
    }
    return first == laid->count;
}

/* As even as can be: the least height at which they stand. */
static bool columns_even(struct laid_seen *laid, size_t columns, mpt height, enum group_cut cut)
{
    if (!columns_stand(laid, columns, height, cut))
        return false;
    for (mpt less = height; less > 0; less -= SEEN_EVEN_STEP) {
        struct laid_seen tried = *laid;
        if (!columns_stand(&tried, columns, less, cut))
            break;
        *laid = tried;
    }
    return true;
}

/* ---- fitting ---- */

static struct laid_seen seen_laid_at(const struct pen *pen, mpt width, size_t columns, mpt size)
{
    struct laid_seen laid = {.seen = sheet_seen(pen->sheet), .size = size};
    laid.width = (width - (mpt)(columns - 1) * SEEN_COLUMN_GAP) / (mpt)columns;
    laid.top = line_pitch(ROLE_ROW, size) + SEEN_LINE_CLEAR;
    laid.head = line_pitch(ROLE_ROW, size) + SEEN_LINE_CLEAR;
    items_list(&laid, pen->arena);
    items_lay(pen, &laid);
    struct style style = seen_style(size, INK_BLACK);
    mpt heads = pen_width(pen, &style, laid.seen->ask) + SEEN_NUMBER_GAP +
                pen_width(pen, &style, laid.seen->take) + 2 * SEEN_PAD;
    laid.wide = laid.wide || heads > laid.width;
    return laid;
}

/* With as much room between lines as there is. */
static void seen_ease(struct laid_seen *laid, size_t columns, mpt height, enum group_cut cut)
{
    struct laid_seen eased = *laid;
    for (eased.ease = SEEN_EASE_MOST; eased.ease > 0; eased.ease -= SEEN_EASE_STEP)
        if (columns_even(&eased, columns, height, cut)) {
            *laid = eased;
            return;
        }
    columns_even(laid, columns, height, cut);
}

/* A step smaller, but the floor itself is tried too; below it: it was. */
static mpt size_below(struct size_rule rule, mpt size)
{
    mpt smaller = size - SIZE_STEP;
    return size > rule.floor && smaller < rule.floor ? rule.floor : smaller;
}

static bool seen_try(const struct pen *pen, struct area area, enum group_cut cut,
                     struct laid_seen *out)
{
    struct size_rule rule = size_rule(pen->paper, ROLE_ROW);
    for (mpt size = rule.aim; size >= rule.floor; size = size_below(rule, size))
        for (size_t columns = SEEN_COLUMNS_MOST; columns > 0; columns--) {
            *out = seen_laid_at(pen, area.width, columns, size);
            if (out->wide || !columns_stand(out, columns, area.height, cut))
                continue;
            seen_ease(out, columns, area.height, cut);
            return true;
        }
    return false;
}

static mpt height_in_all(const struct laid_seen *laid)
{
    mpt height = laid->top;
    for (size_t i = 0; i < laid->count; i++)
        height += item_height(laid, i, 0);
    return height;
}

struct laid_seen seen_fit(const struct pen *pen, struct area area)
{
    struct laid_seen laid;
    if (seen_try(pen, area, GROUPS_WHOLE, &laid) || seen_try(pen, area, GROUPS_CUT, &laid))
        return laid;
    laid = seen_laid_at(pen, area.width, 1, size_rule(pen->paper, ROLE_ROW).floor);
    laid.over = height_in_all(&laid) - area.height;
    return laid;
}

/* ---- placing ---- */

static void seen_word_place(struct pen *pen, const struct style *style, struct point at,
                            const char *text, struct place origin)
{
    pen_text(pen, style, at.x, at.y, text, strlen(text), origin);
}

/* What stands over a column: once for who does not see it. */
static void seen_top_place(struct pen *pen, const struct laid_seen *laid, struct point corner,
                           size_t column)
{
    struct style style = seen_style(laid->size, INK_BLACK);
    mpt base = baseline_in(corner.y, laid->top, style.size);
    mpt right = corner.x + laid->width - SEEN_PAD - pen_width(pen, &style, laid->seen->take);
    size_t outer = column == 0 ? reading_begin(pen, READING_HEADING) : reading_skip(pen);
    seen_word_place(pen, &style, (struct point){corner.x, base}, laid->seen->ask,
                    pen->sheet->origin);
    seen_word_place(pen, &style, (struct point){right, base}, laid->seen->take,
                    pen->sheet->origin);
    reading_end(pen, outer);
}

static void seen_head_draw(struct pen *pen, const struct laid_seen *laid, struct point corner,
                           const struct seen_group *group)
{
    struct style style = seen_style(laid->size, INK_WHITE);
    struct area bar = {corner.x, corner.y, laid->width, laid->head};
    pen_box(pen, bar, INK_BLACK, INK_NONE, 0, FRAME_CORNER);
    seen_word_place(pen, &style,
                    (struct point){corner.x + SEEN_PAD,
                                   baseline_in(bar.y, bar.height, style.size)},
                    group->name, group->lines[0].origin);
}

static void seen_head_place(struct pen *pen, const struct laid_seen *laid, struct point corner,
                            const struct seen_group *group)
{
    size_t outer = reading_begin(pen, READING_HEADING);
    seen_head_draw(pen, laid, corner, group);
    reading_end(pen, outer);
}

/* The rule below it leads to the number. */
static void seen_line_place(struct pen *pen, const struct laid_seen *laid, struct point corner,
                            const struct seen_item *item)
{
    struct style style = seen_style(laid->size, INK_BLACK);
    const struct seen_line *line = item->line;
    mpt high = item->height + laid->ease, sign = grown(pen->paper, GEAR_SIGN);
    mpt right = corner.x + laid->width, foot = corner.y + high;
    size_t outer = reading_begin(pen, READING_LINE);
    pen_symbol(pen, (struct area){corner.x, corner.y + (high - sign) / 2, sign, sign},
               line->symbol, line->origin);
    paragraph_place(pen, &item->words, corner.x + grown(pen->paper, ROW_WORDS_AT),
                    corner.y + (high - paragraph_height(&item->words)) / 2);
    seen_word_place(pen, &style,
                    (struct point){right - SEEN_PAD - pen_width(pen, &style, line->number),
                                   baseline_in(corner.y, high, style.size)},
                    line->number, line->origin);
    pen_line(pen, (struct point){corner.x, foot}, (struct point){right, foot}, INK_BLACK, HAIR);
    reading_end(pen, outer);
}

static void seen_column_place(struct pen *pen, const struct laid_seen *laid, size_t column,
                              struct point corner)
{
    const struct seen_column *own = &laid->columns[column];
    seen_top_place(pen, laid, corner, column);
    corner.y += laid->top;
    if (laid->items[own->first].line != NULL) {
        size_t outer = reading_skip(pen);      /* it was read in the column before */
        seen_head_draw(pen, laid, corner, laid->items[own->first].group);
        reading_end(pen, outer);
        corner.y += laid->head;
    }
    for (size_t i = own->first; i < own->end; i++) {
        const struct seen_item *item = &laid->items[i];
        struct point at = {corner.x, corner.y};
        if (item->line == NULL && i > own->first)
            at.y += SEEN_HEAD_GAP + laid->ease;
        if (item->line == NULL)
            seen_head_place(pen, laid, at, item->group);
        else
            seen_line_place(pen, laid, at, item);
        corner.y += item_height(laid, i, own->first);
    }
}

void seen_place(struct pen *pen, const struct laid_seen *laid, struct area area)
{
    pen->block = BLOCK_SEEN;
    for (size_t i = 0; i < laid->column_count; i++)
        seen_column_place(pen, laid, i,
                          (struct point){area.x + (mpt)i * (laid->width + SEEN_COLUMN_GAP),
                                         area.y});
}
