/* row_flow.c - the words of a row over its lines (room: layout). A line ends between place and
 * spot, between two pieces of gear, before an end state or before a spot of the gear's own;
 * nowhere else: what is too long then is measured, and told by others. */
#include "row_flow.h"

#include "marked.h"
#include "measures.h"
#include "text.h"

#include <string.h>

/* ---- lines ---- */

static bool is_on_one_line(const struct row_flow *flow)
{
    return flow->form == ROW_ON_ONE_LINE || flow->form == ROW_BARE;
}

/* Between two pieces of gear. */
static mpt item_gap(const struct row_flow *flow)
{
    return flow->form == ROW_RUNNING ? TABLE_OPENING_GAP : ROW_ITEM_GAP;
}

static void flow_line_begin(struct row_flow *flow, mpt size)
{
    flow->top += flow->pitch;
    flow->pitch = line_pitch(ROLE_ROW, size);
    flow->baseline = baseline_in(flow->top, flow->pitch, size);
    flow->x = flow->left;
}

static bool at_line_start(const struct row_flow *flow)
{
    return flow->x == flow->left;
}

/* ---- words ---- */

/* Words of one line, with **bold** parts. */
struct words {
    const char *text;
    struct marked_styles styles;
    struct place origin;
};

static struct words words_at(const char *text, mpt size, struct place origin)
{
    return (struct words){text, {row_style(FACE_TEXT, size), row_style(FACE_BOLD, size)}, origin};
}

static mpt words_width(const struct row_flow *flow, const struct words *words)
{
    return marked_width(flow->pen, &words->styles, words->text);
}

/* Words, or tags, of that entry. */
static void passed(struct row_flow *flow, mpt width, struct place origin)
{
    flow->x += width;
    if (flow->x - flow->right > flow->over) {
        flow->over = flow->x - flow->right;
        flow->over_at = origin;
    }
}

static void words_flow(struct row_flow *flow, const struct words *words)
{
    if (flow->on != NULL)
        marked_place(flow->on, &words->styles, words->text,
                     (struct point){flow->x, flow->baseline}, words->origin);
    passed(flow, words_width(flow, words), words->origin);
}

/* With the space before them; 0 where there are none. */
static mpt behind_width(const struct row_flow *flow, const struct words *words)
{
    return text_empty(words->text) ? 0 : pen_width(flow->pen, &words->styles.plain, " ") +
                                             words_width(flow, words);
}

/* Behind what stands on the line, or on the next one where it has no room there. */
static void behind_flow(struct row_flow *flow, const struct words *words)
{
    if (text_empty(words->text))
        return;
    if (is_on_one_line(flow) || flow->x + behind_width(flow, words) <= flow->right)
        flow->x += pen_width(flow->pen, &words->styles.plain, " ");
    else
        flow_line_begin(flow, words->styles.plain.size);
    words_flow(flow, words);
}

/* ---- the place ---- */

static void place_flow(struct row_flow *flow, const struct card_row *row)
{
    mpt size = flow->setting->place_size, top = flow->top;
    struct words place = words_at(row->place, size, row->origin);
    struct words spot = words_at(row->spot, size, row->origin);
    place.styles.plain = place.styles.bold;
    words_flow(flow, &place);
    behind_flow(flow, &spot);
    flow->place_lines = flow->top > top ? 2 : 1;
}

/* ---- the gear ---- */

static mpt tags_width(const struct row_flow *flow, const struct row_item *item)
{
    mpt tag = flow->setting->tag + ROW_TAG_GAP;
    return item->tag_count == 0 ? 0 : (mpt)item->tag_count * tag + ROW_TAG_GAP;
}

/* What is said of it, behind its tags. */
struct item_words { struct words name, spot, end; };

static struct item_words item_words_of(const struct row_flow *flow, const struct row_item *item)
{
    mpt size = flow->setting->size;
    return (struct item_words){words_at(item->name, size, item->origin),
                               words_at(item->spot, size, item->origin),
                               words_at(item->end, size, item->origin)};
}

static mpt item_width(const struct row_flow *flow, const struct row_item *item)
{
    const struct item_words words = item_words_of(flow, item);
    return tags_width(flow, item) + words_width(flow, &words.name) +
           behind_width(flow, &words.spot) + behind_width(flow, &words.end);
}

/* The words of tags stand on the base line of the others. */
static void tags_flow(struct row_flow *flow, const struct row_item *item)
{
    mpt size = flow->setting->size, pitch = line_pitch(ROLE_ROW, size), x = flow->x;
    mpt top = flow->baseline - baseline_in(0, pitch, size);
    for (size_t t = 0; t < item->tag_count && flow->on != NULL; t++) {
        row_tag_place(flow->on, item->tags[t], size,
                      (struct area){x, top, flow->setting->tag, pitch}, item->origin);
        x += flow->setting->tag + ROW_TAG_GAP;
    }
    passed(flow, tags_width(flow, item), item->origin);
}

static void item_flow(struct row_flow *flow, const struct row_item *item)
{
    const struct item_words words = item_words_of(flow, item);
    if (!at_line_start(flow)) {
        bool has_room = flow->x + item_gap(flow) + item_width(flow, item) <= flow->right;
        if (is_on_one_line(flow) || has_room)
            flow->x += item_gap(flow);
        else
            flow_line_begin(flow, flow->setting->size);
    }
    tags_flow(flow, item);
    words_flow(flow, &words.name);
    behind_flow(flow, &words.spot);
    behind_flow(flow, &words.end);
}

/* ---- the row ---- */

static void items_flow(struct row_flow *flow, const struct card_row *row)
{
    mpt top = flow->top;
    for (size_t i = 0; i < row->item_count; i++)
        item_flow(flow, &row->items[i]);
    flow->item_lines = 1 + (size_t)((flow->top - top) / flow->pitch);
}

void row_flow_run(struct row_flow *flow, const struct card_row *row, struct point from,
                  mpt height)
{
    flow->top = from.y;
    flow->left += from.x;
    flow->right += from.x;
    flow->over = flow->left - flow->right;
    flow->over_at = row->origin;
    flow->pitch = 0;
    flow_line_begin(flow, flow->setting->place_size);
    if (is_on_one_line(flow))
        flow->baseline = baseline_in(from.y, height, flow->setting->place_size);
    place_flow(flow, row);
    if (is_on_one_line(flow))
        flow->x += ROW_PLACE_GAP - ROW_ITEM_GAP;
    else if (flow->form == ROW_OF_LINES)
        flow_line_begin(flow, flow->setting->size);
    items_flow(flow, row);
}
