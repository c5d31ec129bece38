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
#define STERN_ROOM MM(2)
#define DRIFT_AIM MM(7)

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

/* What is to port stands to port, whatever stands there already. */
static bool own_side(const struct hull_view *view, const struct marker *marker, struct area box)
{
    mpt off = box.x + box.width / 2 - (view->area.x + view->area.width / 2);
    return !(marker->side == SIDE_PORT && off > 0) && !(marker->side == SIDE_STARBOARD && off < 0);
}

/* A stern platform lies behind the hull; what is on it may stand there, as far as
 * the legend leaves room. */
static bool allowed(const struct hull_view *view, const struct marker *marker, struct area box)
{
    mpt stern = view->area.y + view->area.height;
    if (marker->zone->to <= 100 || hull_holds(view, box))
        return hull_holds(view, box);
    return box.y + box.height <= stern + STERN_ROOM && box.x >= view->area.x &&
           box.x + box.width <= view->area.x + view->area.width;
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
                if (own_side(view, marker, *out) && allowed(view, marker, *out) &&
                    free_of(*out, taken, count, TAG_GAP))
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

/* One way to draw the plan, and what became of its tags. */
struct plan_trial {
    struct hull_view view;
    mpt size;
    struct area *boxes;
    bool *found;
    size_t placed;
    mpt drift;            /* how far the worst tag stands from its true place */
};

static mpt distance(mpt a, mpt b)
{
    return a < b ? b - a : a - b;
}

static void drift_note(struct plan_trial *trial, const struct marker *marker, struct area box)
{
    struct point true_place = hull_point(&trial->view, marker);
    mpt drift = distance(true_place.x, box.x + box.width / 2) +
                distance(true_place.y, box.y + box.height / 2);
    trial->drift = drift > trial->drift ? drift : trial->drift;
}

/* Exact places first, so that only the others move. */
static void tags_find(struct sheet *sheet, struct plan_trial *trial)
{
    const struct card *card = sheet->card;
    struct area *taken = arena_array(sheet->arena, card->marker_count, sizeof *taken);
    for (int pass = 0; pass < 2; pass++)
        for (size_t i = 0; i < card->marker_count; i++) {
            const struct marker *marker = &card->markers[i];
            if (marker->exact != (pass == 0))
                continue;
            trial->found[i] = place_find(&trial->view, marker,
                                         tag_box_width(sheet, marker, trial->size),
                                         trial->size * 118 / 100, taken, trial->placed,
                                         &trial->boxes[i]);
            if (!trial->found[i])
                continue;
            drift_note(trial, marker, trial->boxes[i]);
            taken[trial->placed++] = trial->boxes[i];
        }
}

static struct plan_trial plan_try(struct sheet *sheet, struct area area, int widening, mpt size)
{
    size_t count = sheet->card->marker_count;
    struct plan_trial trial = {
        .view = hull_view_in(sheet->card->boat_record, area, widening), .size = size,
        .boxes = arena_array(sheet->arena, count, sizeof *trial.boxes),
        .found = arena_array(sheet->arena, count, sizeof *trial.found)};
    tags_find(sheet, &trial);
    return trial;
}

static bool trial_better(const struct plan_trial *a, const struct plan_trial *b)
{
    return a->placed > b->placed || (a->placed == b->placed && a->drift < b->drift);
}

/* A boat's own look first; where tags would drift from their places, smaller
 * tags, then a wider hull. */
static struct plan_trial plan_choose(struct sheet *sheet, struct area area)
{
    static const int widenings[2][3] = {{165, 195, 225}, {150, 165, 180}};
    const struct size_rule *rule = size_rule(ROLE_PLAN_TAG);
    const int *wide = widenings[sheet->card->boat_record->catamaran ? 1 : 0];
    struct plan_trial best = plan_try(sheet, area, wide[0], rule->aim);
    for (size_t i = 0; i < 6; i++) {
        mpt size = i % 2 == 0 ? rule->aim : rule->floor;
        struct plan_trial trial = plan_try(sheet, area, wide[i / 2], size);
        if (trial_better(&trial, &best))
            best = trial;
        if (best.placed == sheet->card->marker_count && best.drift <= DRIFT_AIM)
            break;
    }
    return best;
}

/* ---- names of zones: light, and they give way to everything ---- */

/* Boxes that a name must not touch. */
struct taken {
    struct area *areas;
    size_t count;
};

/* Bulkheads, the mast: what was drawn inside the outline so far. */
static void lines_take(const struct sheet *sheet, size_t from, struct taken *taken)
{
    for (size_t i = from; i < sheet->count; i++) {
        enum page_kind kind = sheet->items[i].kind;
        if (kind == PAGE_LINE || kind == PAGE_ELLIPSE)
            taken->areas[taken->count++] = sheet->items[i].area;
    }
}

static mpt zone_edge(const struct hull_view *view, int hundredths)
{
    return view->area.y + (mpt)((int64_t)view->area.height * hundredths / 100);
}

/* The nearest free line to the middle of the zone, within the zone. */
static bool zone_name_find(const struct hull_view *view, const struct zone *zone, mpt width,
                           mpt height, const struct taken *taken, struct area *box)
{
    mpt low = zone_edge(view, zone->from), high = zone_edge(view, zone->to);
    mpt centre = view->area.x + view->area.width / 2;
    for (mpt off = 0; off <= (high - low) / 2; off += MM(0.5))
        for (int side = 0; side < 2; side++) {
            mpt middle = (low + high) / 2 + (side == 0 ? off : -off);
            *box = box_at((struct point){centre, middle}, width, height);
            if (hull_encloses(view, *box) && free_of(*box, taken->areas, taken->count, MM(0.3)))
                return true;
        }
    return false;
}

static void zone_name_place(struct sheet *sheet, const struct hull_view *view,
                            const struct plan_zone *plan_zone, struct taken *taken)
{
    struct style style = label_style(INK_GREY);
    mpt width = sheet_width(sheet, &style, plan_zone->name), height = style.size;
    struct area box;
    if (!zone_name_find(view, plan_zone->zone, width, height, taken, &box))
        return;
    sheet_text(sheet, &style, box.x, baseline_in(box.y, height, style.size), plan_zone->name,
               strlen(plan_zone->name), sheet->card->origin);
    taken->areas[taken->count++] = box;
}

static void zone_names_place(struct sheet *sheet, const struct hull_view *view,
                             const struct area *boxes, size_t drawn_from)
{
    const struct card *card = sheet->card;
    size_t room = card->marker_count + (sheet->count - drawn_from) + card->plan_zone_count;
    struct taken taken = {arena_array(sheet->arena, room, sizeof(struct area)), 0};
    for (size_t i = 0; i < card->marker_count; i++)
        taken.areas[taken.count++] = boxes[i];
    lines_take(sheet, drawn_from, &taken);
    for (size_t i = 0; i < card->plan_zone_count; i++)
        zone_name_place(sheet, view, &card->plan_zones[i], &taken);
}

/* ---- words round the plan ---- */

static mpt word_place(struct sheet *sheet, enum face_role face, mpt x, mpt baseline,
                      enum plan_word word)
{
    struct style style = label_style(INK_BLACK);
    const char *text = sheet->card->plan_words[word];
    style.face = face;
    return x + sheet_text(sheet, &style, x, baseline, text, strlen(text), sheet->card->origin);
}

static mpt word_width(const struct sheet *sheet, enum face_role face, enum plan_word word)
{
    struct style style = label_style(INK_BLACK);
    style.face = face;
    return sheet_width(sheet, &style, sheet->card->plan_words[word]);
}

/* PORT left ... BOW ... right STARB'D, in words on both sides. */
static void head_words_place(struct sheet *sheet, struct area area)
{
    mpt size = size_rule(ROLE_PLAN_LABEL)->floor, gap = MM(1);
    mpt baseline = baseline_in(area.y, HEAD_HEIGHT - MM(0.8), size);
    mpt bow = area.x + (area.width - word_width(sheet, FACE_BOLD, PLAN_BOW)) / 2;
    mpt right = area.x + area.width - word_width(sheet, FACE_BOLD, PLAN_STARBOARD) - gap -
                word_width(sheet, FACE_TEXT, PLAN_STARBOARD_HINT);
    mpt x = word_place(sheet, FACE_BOLD, area.x, baseline, PLAN_PORT);
    word_place(sheet, FACE_TEXT, x + gap, baseline, PLAN_PORT_HINT);
    word_place(sheet, FACE_BOLD, bow, baseline, PLAN_BOW);
    x = word_place(sheet, FACE_TEXT, right, baseline, PLAN_STARBOARD_HINT);
    word_place(sheet, FACE_BOLD, x + gap, baseline, PLAN_STARBOARD);
}

/* Square: on deck; round: below; and which way left and right are meant. */
static void legend_place(struct sheet *sheet, struct area area)
{
    mpt y = area.y + area.height - LEGEND_HEIGHT, mark = MM(2.6), gap = MM(1.2);
    mpt size = size_rule(ROLE_PLAN_LABEL)->floor;
    mpt baseline = baseline_in(y + MM(1), LEGEND_HEIGHT - MM(1), size);
    mpt mark_top = y + MM(1) + (LEGEND_HEIGHT - MM(1) - mark) / 2, x = area.x;
    sheet_box(sheet, (struct area){x, mark_top, mark, mark}, INK_BLACK, INK_NONE, 0, 0);
    x = word_place(sheet, FACE_TEXT, x + mark + gap, baseline, PLAN_DECK) + MM(3);
    sheet_box(sheet, (struct area){x, mark_top, mark + MM(1), mark}, INK_BLACK, INK_NONE, 0,
              mark / 2);
    word_place(sheet, FACE_TEXT, x + mark + MM(1) + gap, baseline, PLAN_BELOW);
    x = area.x + area.width - word_width(sheet, FACE_TEXT, PLAN_FACING);
    word_place(sheet, FACE_TEXT, x, baseline, PLAN_FACING);
}

/* ---- all ---- */

static void not_placed_tell(struct sheet *sheet, const struct marker *marker)
{
    sheet->failed = true;
    problem_add(sheet->problems, SEVERITY_ERROR, marker->origin,
                "record `at: [metres aft of the bow, metres to starboard]` for tags of that "
                "zone, or give them a nearer zone",
                "%s: no room on the plan for the tag %s in %s", sheet->card->title, marker->tag,
                marker->zone->key);
}

static void tags_place(struct sheet *sheet, const struct plan_trial *trial, size_t drawn_from)
{
    const struct card *card = sheet->card;
    zone_names_place(sheet, &trial->view, trial->boxes, drawn_from);
    for (size_t i = 0; i < card->marker_count; i++) {
        if (trial->found[i])
            tag_draw(sheet, &card->markers[i], trial->boxes[i], trial->size);
        else
            not_placed_tell(sheet, &card->markers[i]);
    }
}

void plan_place(struct sheet *sheet, struct area area)
{
    struct area middle = {area.x + SIDE_MARGIN, area.y + HEAD_HEIGHT,
                          area.width - 2 * SIDE_MARGIN,
                          area.height - HEAD_HEIGHT - LEGEND_HEIGHT - MM(1)};
    sheet->block = "plan";
    struct plan_trial trial = plan_choose(sheet, middle);
    head_words_place(sheet, area);
    size_t drawn_from = sheet->count;
    hull_draw(sheet, &trial.view);
    tags_place(sheet, &trial, drawn_from);
    legend_place(sheet, area);
}
