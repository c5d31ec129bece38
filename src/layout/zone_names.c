/* zone_names.c - names of zones on a plan: light, and they give way to everything
 * else on it (room: layout). */
#include "zone_names.h"

#include "measures.h"

#include <string.h>

#define EDGES 4               /* of a box */

struct naming {
    struct pen *pen;
    const struct hull_view *view;
    struct taken taken;
};

static void take(struct naming *naming, struct area area)
{
    naming->taken.areas[naming->taken.count++] = area;
}

static void edges_take(struct naming *naming, struct area box)
{
    take(naming, (struct area){box.x, box.y, box.width, 0});
    take(naming, (struct area){box.x, box.y + box.height, box.width, 0});
    take(naming, (struct area){box.x, box.y, 0, box.height});
    take(naming, (struct area){box.x + box.width, box.y, 0, box.height});
}

/* Bulkheads, the mast, the cockpit: what was drawn inside the outline so far. */
static void lines_take(struct naming *naming, size_t from)
{
    const struct pen *pen = naming->pen;
    for (size_t i = from; i < pen->count; i++) {
        const struct page_item *item = &pen->items[i];
        bool net = item->part == PART_NET;   /* a name may stand on it */
        if (item->kind == PAGE_ELLIPSE || (item->kind == PAGE_LINE && !net))
            take(naming, item->area);
        if (item->kind == PAGE_BOX && item->fill == INK_NONE)
            edges_take(naming, item->area);
    }
}

static mpt zone_edge(const struct hull_view *view, int hundredths)
{
    return view->area.y + (mpt)((int64_t)view->area.height * hundredths / 100);
}

/* The nearest free line to the middle of the zone, within the zone. */
static bool name_find(const struct naming *naming, const struct zone *zone, mpt width, mpt height,
                      struct area *box)
{
    const struct hull_view *view = naming->view;
    mpt low = zone_edge(view, zone->from), high = zone_edge(view, zone->to);
    mpt centre = view->area.x + view->area.width / 2;
    for (mpt off = 0; off <= (high - low) / 2; off += ZONE_NAME_STEP)
        for (int side = 0; side < 2; side++) {
            mpt middle = (low + high) / 2 + (side == 0 ? off : -off);
            *box = box_at((struct point){centre, middle}, width, height);
            if (hull_encloses(view, *box) &&
                free_of(*box, naming->taken.areas, naming->taken.count, ZONE_NAME_GAP))
                return true;
        }
    return false;
}

static void zone_name_place(struct naming *naming, const struct plan_zone *plan_zone)
{
    struct pen *pen = naming->pen;
    struct style style = {ROLE_PLAN_LABEL, FACE_TEXT,
                          size_rule(pen->paper, ROLE_PLAN_LABEL).floor, INK_GREY};
    mpt width = pen_width(pen, &style, plan_zone->name), height = style.size;
    struct area box;
    if (plan_zone->side != SIDE_NONE || !name_find(naming, plan_zone->zone, width, height, &box))
        return;
    if (plan_zone->zone->id == ZONE_trampoline)
        pen_box(pen, (struct area){box.x - ZONE_NAME_GAP, box.y, box.width + 2 * ZONE_NAME_GAP,
                                   box.height}, INK_WHITE, INK_NONE, 0, 0);
    pen_text(pen, &style, box.x, baseline_in(box.y, height, style.size), plan_zone->name,
             strlen(plan_zone->name), pen->sheet->origin);
    take(naming, box);
}

void zone_names_place(struct pen *pen, const struct hull_view *view,
                      const struct taken *tags, size_t drawn_from)
{
    const struct sheet *sheet = pen->sheet;
    const struct plan_facts *plan = sheet_plan(sheet);
    size_t room = tags->count + EDGES * (pen->count - drawn_from) + plan->landmark_count;
    struct naming naming = {.pen = pen, .view = view};
    naming.taken.areas = arena_array(pen->arena, room, sizeof(struct area));
    for (size_t i = 0; i < tags->count; i++)
        take(&naming, tags->areas[i]);
    lines_take(&naming, drawn_from);
    for (size_t i = 0; i < plan->landmark_count; i++)
        zone_name_place(&naming, &plan->landmarks[i]);
}
