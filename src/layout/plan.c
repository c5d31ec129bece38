/* plan.c - the small plan: outline, tags at their places, words round it (room:
 * layout). Tags never overlap and stay on the boat; names of zones give way. */
#include "layout_room.h"

#include <string.h>

#define HEAD_HEIGHT MM(4.2)
#define LEGEND_HEIGHT MM(4.4)
#define TAG_GAP MM(0.4)
#define SEARCH_STEP MM(0.6)
#define SEARCH_RINGS 70
#define SIDE_MARGIN MM(2)

static struct style label_style(enum ink ink)
{
    return (struct style){ROLE_PLAN_LABEL, FACE_TEXT, size_rule(ROLE_PLAN_LABEL)->floor, ink};
}

static struct style tag_style(mpt size)
{
    return (struct style){ROLE_PLAN_TAG, FACE_BOLD, size, INK_WHITE};
}

static bool overlap(struct area a, struct area b, mpt gap)
{
    return a.x < b.x + b.width + gap && b.x < a.x + a.width + gap &&
           a.y < b.y + b.height + gap && b.y < a.y + a.height + gap;
}

static bool free_of(struct area box, const struct area *taken, size_t count, mpt gap)
{
    for (size_t i = 0; i < count; i++)
        if (overlap(box, taken[i], gap))
            return false;
    return true;
}

static struct area box_at(struct point centre, mpt width, mpt height)
{
    return (struct area){centre.x - width / 2, centre.y - height / 2, width, height};
}

/* A stern platform lies behind the hull; what is on it may stand there. */
static bool allowed(const struct hull_view *view, const struct marker *marker, struct area box)
{
    return hull_holds(view, box) || marker->zone->to > 100;
}

/* The free place nearest to the true one: rings of growing distance, in a fixed
 * order, fore and aft before sideways. */
static bool place_find(const struct hull_view *view, const struct marker *marker, mpt width,
                       mpt height, const struct area *taken, size_t count, struct area *out)
{
    struct point true_place = hull_point(view, marker);
    for (mpt ring = 0; ring <= SEARCH_RINGS; ring++)
        for (mpt side = 0; side <= ring; side++) {
            mpt dx = side * SEARCH_STEP, dy = (ring - side) * SEARCH_STEP;
            const struct point tries[] = {{dx, dy}, {-dx, dy}, {dx, -dy}, {-dx, -dy}};
            for (size_t i = 0; i < 4; i++) {
                struct point centre = {true_place.x + tries[i].x, true_place.y + tries[i].y};
                *out = box_at(centre, width, height);
                if (allowed(view, marker, *out) && free_of(*out, taken, count, TAG_GAP))
                    return true;
            }
        }
    return false;
}

static void tag_draw(struct sheet *sheet, const struct marker *marker, struct area box, mpt size)
{
    struct style style = tag_style(size);
    mpt width = sheet_width(sheet, &style, marker->tag);
    if (marker->level == LEVEL_BELOW)
        sheet_box(sheet, box, INK_BLACK, INK_NONE, 0, box.height / 2);
    else
        sheet_box(sheet, box, INK_BLACK, INK_NONE, 0, 0);
    sheet_text(sheet, &style, box.x + (box.width - width) / 2,
               baseline_in(box.y, box.height, size), marker->tag, strlen(marker->tag),
               marker->origin);
}

static mpt tag_box_width(const struct sheet *sheet, const struct marker *marker, mpt size)
{
    struct style style = tag_style(size);
    mpt pad = marker->level == LEVEL_BELOW ? MM(2.2) : MM(1.4);
    return sheet_width(sheet, &style, marker->tag) + pad;
}

/* Exact places first, so that only the others move. */
static size_t tags_find(struct sheet *sheet, const struct hull_view *view, mpt size,
                        struct area *boxes, bool *found)
{
    const struct card *card = sheet->card;
    struct area *taken = arena_array(sheet->arena, card->marker_count, sizeof *taken);
    size_t placed = 0;
    for (int pass = 0; pass < 2; pass++)
        for (size_t i = 0; i < card->marker_count; i++) {
            const struct marker *marker = &card->markers[i];
            if (marker->exact != (pass == 0))
                continue;
            found[i] = place_find(view, marker, tag_box_width(sheet, marker, size),
                                  size * 118 / 100, taken, placed, &boxes[i]);
            if (found[i])
                taken[placed++] = boxes[i];
        }
    return placed;
}

static void zone_name_place(struct sheet *sheet, const struct hull_view *view,
                            const struct zone *zone, const char *name, const struct area *boxes)
{
    struct style style = label_style(INK_GREY);
    mpt width = sheet_width(sheet, &style, name), height = style.size * 110 / 100;
    mpt middle = view->area.y +
                 (mpt)((int64_t)view->area.height * (zone->from + zone->to) / 200);
    mpt centre = view->area.x + view->area.width / 2;
    static const mpt shifts[] = {0, MM(3), -MM(3), MM(6), -MM(6)};
    for (size_t i = 0; i < sizeof shifts / sizeof *shifts; i++) {
        struct area box = box_at((struct point){centre, middle + shifts[i]}, width, height);
        if (!hull_holds(view, box) || !free_of(box, boxes, sheet->card->marker_count, MM(0.3)))
            continue;
        sheet_text(sheet, &style, box.x, baseline_in(box.y, height, style.size), name,
                   strlen(name), sheet->card->origin);
        return;
    }
}

static void zone_names_place(struct sheet *sheet, const struct hull_view *view,
                             const struct area *boxes)
{
    const struct card *card = sheet->card;
    for (size_t i = 0; i < card->plan_zone_count; i++)
        zone_name_place(sheet, view, card->plan_zones[i].zone, card->plan_zones[i].name, boxes);
}

static void centred_text(struct sheet *sheet, const struct style *style, mpt centre, mpt baseline,
                         const char *text)
{
    mpt width = sheet_width(sheet, style, text);
    sheet_text(sheet, style, centre - width / 2, baseline, text, strlen(text),
               sheet->card->origin);
}

/* PORT and STARB'D at the sides of the bow, and what that means, in words. */
static void side_words_place(struct sheet *sheet, struct area area)
{
    struct style bold = label_style(INK_BLACK), plain = label_style(INK_BLACK);
    const char *const *words = sheet->card->plan_words;
    mpt pitch = plain.size * 115 / 100;
    bold.face = FACE_BOLD;
    for (size_t side = 0; side < 2; side++) {
        const char *word = words[1 + 2 * side], *hint = words[2 + 2 * side];
        mpt right = area.x + area.width;
        mpt word_x = side == 0 ? area.x : right - sheet_width(sheet, &bold, word);
        mpt hint_x = side == 0 ? area.x : right - sheet_width(sheet, &plain, hint);
        mpt baseline = baseline_in(area.y, HEAD_HEIGHT - MM(0.8), bold.size);
        sheet_text(sheet, &bold, word_x, baseline, word, strlen(word), sheet->card->origin);
        sheet_text(sheet, &plain, hint_x, baseline + pitch, hint, strlen(hint),
                   sheet->card->origin);
    }
}

static void legend_place(struct sheet *sheet, struct area area)
{
    struct style style = label_style(INK_BLACK);
    const char *const *words = sheet->card->plan_words;
    mpt y = area.y + area.height - LEGEND_HEIGHT, mark = MM(2.6), gap = MM(1.2);
    mpt deck = sheet_width(sheet, &style, words[5]), below = sheet_width(sheet, &style, words[6]);
    mpt x = area.x + (area.width - (deck + below + 2 * mark + 2 * gap + MM(5))) / 2;
    mpt baseline = baseline_in(y + MM(1), LEGEND_HEIGHT - MM(1), style.size);
    mpt mark_top = y + MM(1) + (LEGEND_HEIGHT - MM(1) - mark) / 2;
    sheet_box(sheet, (struct area){x, mark_top, mark, mark}, INK_BLACK, INK_NONE, 0, 0);
    x += mark + gap;
    x += sheet_text(sheet, &style, x, baseline, words[5], strlen(words[5]), sheet->card->origin);
    x += MM(5);
    sheet_box(sheet, (struct area){x, mark_top, mark + MM(1), mark}, INK_BLACK, INK_NONE, 0,
              mark / 2);
    sheet_text(sheet, &style, x + mark + MM(1) + gap, baseline, words[6], strlen(words[6]),
               sheet->card->origin);
}

static void not_placed_tell(struct sheet *sheet, const struct marker *marker)
{
    sheet->failed = true;
    problem_add(sheet->problems, SEVERITY_ERROR, marker->origin,
                "record `at: [metres aft of the bow, metres to starboard]` for tags of that "
                "zone, or give them a nearer zone",
                "%s: no room on the plan for the tag %s in %s", sheet->card->title, marker->tag,
                marker->zone->key);
}

static void tags_place(struct sheet *sheet, const struct hull_view *view)
{
    const struct card *card = sheet->card;
    const struct size_rule *rule = size_rule(ROLE_PLAN_TAG);
    struct area *boxes = arena_array(sheet->arena, card->marker_count, sizeof *boxes);
    bool *found = arena_array(sheet->arena, card->marker_count, sizeof *found);
    mpt size = rule->aim;
    while (tags_find(sheet, view, size, boxes, found) < card->marker_count && size > rule->floor)
        size -= 250;
    zone_names_place(sheet, view, boxes);
    for (size_t i = 0; i < card->marker_count; i++) {
        if (found[i])
            tag_draw(sheet, &card->markers[i], boxes[i], size);
        else
            not_placed_tell(sheet, &card->markers[i]);
    }
}

void plan_place(struct sheet *sheet, struct area area)
{
    struct style bow = label_style(INK_BLACK);
    struct area middle = {area.x + SIDE_MARGIN, area.y + HEAD_HEIGHT,
                          area.width - 2 * SIDE_MARGIN,
                          area.height - HEAD_HEIGHT - LEGEND_HEIGHT - MM(1)};
    struct hull_view view = hull_view_in(sheet->card->boat_record, middle);
    bow.face = FACE_BOLD;
    sheet->block = "plan";
    centred_text(sheet, &bow, area.x + area.width / 2,
                 baseline_in(area.y, HEAD_HEIGHT - MM(0.8), bow.size),
                 sheet->card->plan_words[0]);
    hull_draw(sheet, &view);
    tags_place(sheet, &view);
    side_words_place(sheet, area);
    legend_place(sheet, area);
}
