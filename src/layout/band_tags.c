/* band_tags.c - on the safety plan's boat: each tag level with its row, at its side of the boat,
 * with a level line to the row; and the names of zones (room: layout). Two tags at one height
 * come from the two sides of the page and only move apart. */
#include "measures.h"
#include "plan_tag.h"
#include "safety.h"

#include <string.h>

/* ---- where tags stand ---- */

static struct style tag_style_of(const struct pen *pen)
{
    return plan_tag_style(size_rule(pen->paper, ROLE_PLAN_TAG).aim);
}

/* The mark of where the cards hang is as broad as it is high. */
static struct area tag_size(const struct pen *pen, const struct plan_row *row)
{
    struct style style = tag_style_of(pen);
    mpt pads = row->marker.level == LEVEL_BELOW ? PLAN_TAG_PADS_ROUND : PLAN_TAG_PADS;
    if (row->kind == NULL)
        return (struct area){0, 0, HERE_MARK, HERE_MARK};
    return (struct area){0, 0, pen_width(pen, &style, row->marker.tag) + pads,
                         em_share(style.size, EM_TAG_BOX)};
}

/* What is on both sides has a tag on the side of each list. */
static struct marker marker_in_list(const struct banded_page *page, const struct band_tag *tag)
{
    struct marker marker = tag->of->row->marker;
    bool starboard = (tag->list == LIST_RIGHT) == (page->boat.range.up == BOW_UP);
    if (marker.side == SIDE_BOTH)
        marker.side = starboard ? SIDE_STARBOARD : SIDE_PORT;
    return marker;
}

/* Over the outline by a quarter of the tag at most, and by no more where the outline is drawn in
 * short straight lines. */
static bool within_find(const struct banded_page *page, struct band_tag *tag, enum boat_body body)
{
    mpt over = tag->box.width / 4 - TAG_OVER_CLEAR, inset = tag->box.height / 4;
    struct stretch at = {tag->box.y + inset, tag->box.y + tag->box.height - inset};
    struct span span;
    if (!body_span(&page->boat, body, at, &span))
        return false;
    tag->within = (struct span){span.left - over, span.right + over};
    return tag->within.right - tag->within.left >= tag->box.width;
}

/* At the side that it is on, within the outline where she is broad enough, else over it; in a hull
 * of several, and amidships, in the middle. */
static bool tag_stand(const struct banded_page *page, struct band_tag *tag)
{
    struct marker marker = marker_in_list(page, tag);
    enum boat_body body = body_of(page->boat.boat, &marker);
    bool sided = marker.side == SIDE_PORT || marker.side == SIDE_STARBOARD;
    if (!within_find(page, tag, body))
        return false;
    mpt in = tag->box.width / 4 + OUTLINE_LARGE / 2 + TAG_OFF_LINE;
    mpt least = tag->within.left + in, most = tag->within.right - in - tag->box.width;
    if (least > most) {
        least = tag->within.left;
        most = tag->within.right - tag->box.width;
    }
    if (!sided || body == BODY_PORT_HULL || body == BODY_STARBOARD_HULL)
        tag->box.x = (least + most) / 2;
    else
        tag->box.x = tag->list == LIST_LEFT ? least : most;
    return true;
}

/* Moves the left one of two that overlap to the left and the other to the right. */
static bool tags_part(struct band_tag *left, struct band_tag *right)
{
    mpt needed = left->box.x + left->box.width + PLAN_TAG_GAP - right->box.x;
    mpt left_room = left->box.x - left->within.left;
    mpt right_room = right->within.right - right->box.x - right->box.width;
    mpt apart = right->box.y - left->box.y;
    mpt high = (apart < 0 ? right->box.height : left->box.height) + PLAN_TAG_GAP;
    if (needed <= 0 || apart >= high || -apart >= high)
        return true;
    mpt by = needed / 2 < left_room ? needed / 2 : left_room;
    by = needed - by > right_room ? needed - right_room : by;
    left->box.x -= by;
    right->box.x += needed - by;
    return by <= left_room;
}

static void tags_of_list(const struct pen *pen, struct banded_page *page, size_t band,
                         enum list_side list)
{
    const struct laid_band *laid = &page->bands[band];
    const struct laid_list *rows = &laid->lists[list];
    struct area column = page->frame.at[list == LIST_LEFT ? AREA_LEFT : AREA_RIGHT];
    for (size_t i = 0; i < rows->count; i++) {
        struct band_tag *tag = &page->tags.at[page->tags.count++];
        *tag = (struct band_tag){.of = rows->rows[i].of, .list = list};
        tag->box = tag_size(pen, tag->of->row);
        tag->box.y = laid->placed.at.top + list_row_middle(rows, i, page->pitch) -
                     tag->box.height / 2;
        tag->list_end = list == LIST_LEFT
                            ? column.x + list_row_end(&rows->rows[i], &page->style)
                            : column.x;
    }
}

static size_t rows_on_page(const struct banded_page *page)
{
    size_t rows = 0;
    for (size_t b = 0; b < page->count; b++)
        rows += page->bands[b].lists[LIST_LEFT].count + page->bands[b].lists[LIST_RIGHT].count;
    return rows;
}

bool band_tags_find(struct pen *pen, struct banded_page *page)
{
    struct band_tags *tags = &page->tags;
    *tags = (struct band_tags){arena_array(pen->arena, rows_on_page(page) + 1, sizeof *tags->at),
                               0};
    for (size_t b = 0; b < page->count; b++)
        for (int list = 0; list < LIST_COUNT; list++)
            tags_of_list(pen, page, b, (enum list_side)list);
    for (size_t i = 0; i < tags->count; i++)
        if (!tag_stand(page, &tags->at[i]))
            return false;
    for (size_t i = 0; i < tags->count; i++)
        for (size_t j = 0; j < tags->count; j++)
            if (tags->at[i].list == LIST_LEFT && tags->at[j].list == LIST_RIGHT &&
                !tags_part(&tags->at[i], &tags->at[j]))
                return false;
    return true;
}

/* ---- lines and tags ---- */

static void band_leader_place(struct pen *pen, const struct band_tag *tag, enum ink ink,
                              mpt width)
{
    mpt y = tag->box.y + tag->box.height / 2;
    bool left = tag->list == LIST_LEFT;
    struct point from = {left ? tag->list_end + LEADER_OFF_WORDS : tag->list_end - LEADER_OFF_WORDS,
                         y};
    struct point to = {left ? tag->box.x : tag->box.x + tag->box.width, y};
    pen_line(pen, from, to, ink, width);
    pen_part(pen, PART_LEADER);
}

void band_leaders_place(struct pen *pen, const struct banded_page *page)
{
    pen->block = BLOCK_LEADERS;
    for (size_t i = 0; i < page->tags.count; i++)
        band_leader_place(pen, &page->tags.at[i], INK_WHITE, LEADER_HALO);
    for (size_t i = 0; i < page->tags.count; i++)
        band_leader_place(pen, &page->tags.at[i], INK_BLACK, LEADER_LINE);
}

/* A wedge at the ring, whose tip is that way from its middle. */
static void wedge_place(struct pen *pen, struct area box, struct point way)
{
    struct point centre = {box.x + box.width / 2, box.y + box.height / 2};
    mpt inner = box.width * 30 / 100, out = box.width / 2, half = box.width * 22 / 100;
    struct point base = {centre.x + way.x * inner / 2, centre.y + way.y * inner / 2};
    struct path_step *steps = arena_array(pen->arena, 4, sizeof *steps);
    steps[0] = (struct path_step){.verb = PATH_MOVE,
                                  .to = {centre.x + way.x * out, centre.y + way.y * out}};
    steps[1] = (struct path_step){.verb = PATH_LINE,
                                  .to = {base.x + way.y * half, base.y + way.x * half}};
    steps[2] = (struct path_step){.verb = PATH_LINE,
                                  .to = {base.x - way.y * half, base.y - way.x * half}};
    steps[3] = (struct path_step){.verb = PATH_CLOSE};
    pen_path(pen, steps, 4, INK_BLACK, INK_WHITE, HERE_RIM);
}

/* A ring with a wedge that points the way its reader looks: up the page where it is turned. */
static void here_mark_draw(struct pen *pen, struct area box, enum facing facing)
{
    static const struct point ways[FACING_COUNT] = {
        [FACING_NONE] = {0, -1}, [FACING_BOW] = {0, -1}, [FACING_STARBOARD] = {1, 0},
        [FACING_STERN] = {0, -1}, [FACING_PORT] = {-1, 0}};
    struct point centre = {box.x + box.width / 2, box.y + box.height / 2};
    mpt inner = box.width * 30 / 100;
    pen_ellipse(pen, box, INK_WHITE);
    pen_box(pen, (struct area){centre.x - inner, centre.y - inner, 2 * inner, 2 * inner},
            INK_WHITE, INK_BLACK, HERE_RING, inner);
    wedge_place(pen, box, ways[facing]);
    pen_ellipse(pen, box_at(centre, HERE_DOT, HERE_DOT), INK_BLACK);
}

void band_tags_place(struct pen *pen, const struct banded_page *page)
{
    struct style style = tag_style_of(pen);
    pen->block = BLOCK_PLAN;
    for (size_t i = 0; i < page->tags.count; i++) {
        const struct band_tag *tag = &page->tags.at[i];
        const struct marker *marker = &tag->of->row->marker;
        if (tag->of->row->kind == NULL)
            here_mark_draw(pen, tag->box, sheet_places(pen->sheet)->facing);
        else
            tag_chip_draw(pen, tag->box, marker->level, marker->tag, &style, marker->origin);
    }
}

/* ---- names of zones ---- */

struct hull_name { const char *text; enum boat_body body; };

static bool name_is_known(const struct hull_name *names, size_t count, const struct hull_name *name)
{
    for (size_t i = 0; i < count; i++)
        if (names[i].body == name->body && text_equal(names[i].text, name->text))
            return true;
    return false;
}

/* The names of a band, in the order from left to right where one hull has two. */
static size_t band_hull_names(const struct banded_page *page, const struct band *band,
                              struct hull_name *names)
{
    size_t count = 0;
    for (int list = 0; list < LIST_COUNT; list++)
        for (size_t i = 0; i < band->lists[list].count; i++) {
            const struct band_row *row = &band->lists[list].rows[i];
            struct band_tag tag = {.of = row, .list = (enum list_side)list};
            struct marker marker = marker_in_list(page, &tag);
            struct hull_name name = {row->place->zone_name, body_of(page->boat.boat, &marker)};
            if (!name_is_known(names, count, &name))
                names[count++] = name;
        }
    return count;
}

/* The largest type at which the name has room in that width; 0: it has none. */
static mpt name_size(const struct pen *pen, const char *text, mpt width)
{
    struct size_rule rule = size_rule(pen->paper, ROLE_PLAN_LABEL);
    for (mpt size = rule.aim; size >= rule.floor; size -= SIZE_STEP) {
        struct style style = {ROLE_PLAN_LABEL, FACE_TEXT, size, INK_BLACK};
        if (pen_width(pen, &style, text) <= width)
            return size;
    }
    return 0;
}

/* In the `rank`-th of so many parts of its hull; on a white ground where a net is drawn. */
static void hull_name_place(struct pen *pen, const struct banded_page *page, struct stretch at,
                            const struct hull_name *name, int rank, int of)
{
    struct span span;
    mpt in = OUTLINE_LARGE / 2 + ZONE_NAME_OFF_LINE;
    if (!body_span(&page->boat, name->body, at, &span))
        return;
    mpt part = (span.right - span.left - 2 * in) / of, left = span.left + in + rank * part;
    mpt size = name_size(pen, name->text, of > 1 ? part - ZONE_NAMES_APART : part);
    if (size == 0)
        return;
    struct style style = {ROLE_PLAN_LABEL, FACE_TEXT, size, INK_BLACK};
    mpt width = pen_width(pen, &style, name->text), x = left + (part - width) / 2;
    if (at.top < page->boat.net.foot && at.foot > page->boat.net.top)
        pen_box(pen, (struct area){x - ZONE_NAME_GAP, at.top, width + 2 * ZONE_NAME_GAP,
                                   at.foot - at.top}, INK_WHITE, INK_NONE, 0, 0);
    pen_text(pen, &style, x, baseline_in(at.top, at.foot - at.top, size), name->text,
             strlen(name->text), pen->sheet->origin);
}

void band_names_place(struct pen *pen, const struct banded_page *page)
{
    mpt height = list_title_height(pen);
    pen->block = BLOCK_PLAN;
    for (size_t b = 0; b < page->count; b++) {
        const struct band *band = page->bands[b].placed.band;
        mpt top = page->bands[b].placed.at.top + BULKHEAD_LARGE;
        struct stretch at = {top, top + height - BULKHEAD_LARGE};
        size_t rows = band->lists[LIST_LEFT].count + band->lists[LIST_RIGHT].count;
        struct hull_name *names = arena_array(pen->arena, rows + 1, sizeof *names);
        size_t count = band_hull_names(page, band, names);
        for (size_t i = 0; i < count; i++) {
            int of = 0, rank = 0;
            for (size_t j = 0; j < count; j++) {
                of += names[j].body == names[i].body;
                rank += j < i && names[j].body == names[i].body;
            }
            hull_name_place(pen, page, at, &names[i], rank, of);
        }
    }
}
