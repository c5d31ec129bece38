/* slots_gather.c - gathers what any card of a set shows on the views of the boat, each with where
 * it belongs (room: layout). What lies on both sides stands on both. */
#include "slots_gather.h"

#include "measures.h"
#include "text.h"
#include "trait.h"

#include <string.h>

static int32_t thousandths_along(const struct boat *boat, int32_t mm)
{
    int64_t along = (int64_t)mm * 1000 / (int64_t)boat->facts.loa_m.milli;
    return along < 0 ? 0 : along > 1000 ? 1000 : (int32_t)along;
}

static void slot_add(struct gathering *gathering, struct fixed_slot slot, struct slot_item item)
{
    struct arena *arena = gathering->pen->arena;
    slot.kind = item.kind;
    gathering->slots = arena_grow(arena, gathering->slots, gathering->count,
                                  &gathering->slot_room, sizeof *gathering->slots);
    gathering->items = arena_grow(arena, gathering->items, gathering->count,
                                  &gathering->item_room, sizeof *gathering->items);
    gathering->slots[gathering->count] = slot;
    gathering->items[gathering->count++] = item;
}

/* Where a zone lies along the boat, as far as it is drawn. */
static struct slot_item zone_item(const struct zone *zone)
{
    int32_t from = zone->from * 10, to = zone->to * 10;
    from = from > 990 ? 990 : from;
    to = to > 1000 ? 1000 : to;
    return (struct slot_item){.from = from, .to = to, .at = (from + to) / 2};
}

/* ---- tags ---- */

static bool tag_known(const struct gathering *gathering, const char *tag)
{
    for (size_t i = 0; i < gathering->count; i++)
        if (gathering->slots[i].marker != NULL && text_equal(gathering->slots[i].text, tag))
            return true;
    return false;
}

static void tag_gather_on(struct gathering *gathering, const struct marker *marker, enum side side)
{
    const struct boat *boat = gathering->boat;
    struct view_place place = view_place_of(boat, marker->zone, side, marker->level);
    struct slot_item item = {.from = thousandths_along(boat, marker->from_mm),
                             .to = thousandths_along(boat, marker->to_mm),
                             .at = thousandths_along(boat, marker->x_mm)};
    item.kind = SLOT_TAG;
    item.queue = place.queue;
    item.out = marker->y_mm;
    slot_add(gathering,
             (struct fixed_slot){.text = marker->tag, .marker = marker, .zone = marker->zone,
                                 .view = place.view, .body = place.body}, item);
}

static void tag_gather(struct gathering *gathering, const struct marker *marker)
{
    if (tag_known(gathering, marker->tag))
        return;
    if (marker->drawn != SIDE_BOTH) {
        tag_gather_on(gathering, marker, marker->drawn);
        return;
    }
    tag_gather_on(gathering, marker, SIDE_PORT);
    tag_gather_on(gathering, marker, SIDE_STARBOARD);
}

/* ---- names ---- */

static struct style name_style(const struct pen *pen)
{
    return (struct style){ROLE_PLAN_LABEL, FACE_TEXT,
                          size_rule(pen->paper, ROLE_PLAN_LABEL).floor, INK_BLACK};
}

/* Of one family there is one name. */
static bool name_known(const struct gathering *gathering, const struct zone *zone,
                       struct view_place at)
{
    for (size_t i = 0; i < gathering->count; i++) {
        const struct fixed_slot *slot = &gathering->slots[i];
        if (slot->kind == SLOT_NAME && slot->view == at.view && slot->body == at.body &&
            slot->zone->family == zone->family)
            return true;
    }
    return false;
}

/* The space at which a name is parted so that its longer line is shortest; NULL: it has none. */
static const char *name_parting(const char *name)
{
    const char *best = NULL;
    size_t length = strlen(name), least = length;
    for (const char *at = strchr(name, ' '); at != NULL; at = strchr(at + 1, ' ')) {
        size_t first = (size_t)(at - name), second = length - first - 1;
        size_t longer = first > second ? first : second;
        if (longer < least) {
            least = longer;
            best = at;
        }
    }
    return best;
}

static mpt widest_in(const struct gathering *gathering, const struct view_body *body,
                     const struct slot_item *item)
{
    mpt widest = 0;
    for (int32_t along = item->from; along <= item->to; along += 10) {
        mpt half = body_half(&gathering->views, body, along);
        widest = half > widest ? half : widest;
    }
    return 2 * widest;
}

/* `slot` without its text. */
static void name_line_gather(struct gathering *gathering, struct fixed_slot slot,
                          struct slot_item item, const char *text)
{
    struct style style = name_style(gathering->pen);
    item.width = pen_width(gathering->pen, &style, text) + 2 * ZONE_NAME_GAP;
    slot.text = text;
    slot_add(gathering, slot, item);
}

/* A name stands where its zone begins, what lies in it below the name. One that is broader than
 * the hull there takes two lines. */
static void name_gather(struct gathering *gathering, const struct plan_zone *named)
{
    const struct zone *zone = named->zone;
    const struct pen *pen = gathering->pen;
    struct view_place place = view_place_of(gathering->boat, zone, named->side, zone->level);
    struct slot_item item = zone_item(zone);
    struct style style = name_style(pen);
    const struct view_body *body = &gathering->views.views[place.view].bodies[place.body];
    struct fixed_slot slot = {.zone = zone, .view = place.view, .body = place.body,
                              .lesser = named->yields};
    const char *space = name_parting(named->name);
    mpt width = pen_width(pen, &style, named->name) + 2 * ZONE_NAME_GAP;
    if (name_known(gathering, zone, place))
        return;
    item.kind = SLOT_NAME;
    item.queue = QUEUE_MIDDLE;
    item.at = item.from + (item.to - item.from) / 4;
    if (space == NULL || width <= widest_in(gathering, body, &item)) {
        name_line_gather(gathering, slot, item, named->name);
        return;
    }
    name_line_gather(gathering, slot, item,
                  arena_copy(pen->arena, named->name, (size_t)(space - named->name)));
    item.kind = SLOT_NAME_BELOW;
    name_line_gather(gathering, slot, item, space + 1);
}

static void mast_gather(struct gathering *gathering)
{
    if (!boat_is(gathering->boat, TRAIT_SAIL, ZONE_NONE))
        return;
    const struct zone *zone = zone_of(ZONE_mast);
    struct slot_item item = zone_item(zone);
    item.kind = SLOT_MARK;
    item.queue = QUEUE_MIDDLE;
    item.width = MAST;
    item.from = item.to = item.at;
    struct view_place place = view_place_of(gathering->boat, zone, SIDE_NONE, LEVEL_DECK);
    slot_add(gathering, (struct fixed_slot){.text = "", .zone = zone, .view = place.view,
                                            .body = place.body}, item);
}

/* ---- what the cards show ---- */

static void plan_gather(struct gathering *gathering, const struct plan_facts *plan)
{
    for (size_t i = 0; i < plan->marker_count; i++)
        tag_gather(gathering, &plan->markers[i]);
    for (size_t i = 0; i < plan->landmark_count; i++)
        name_gather(gathering, &plan->landmarks[i]);
    for (size_t i = 0; i < plan->marker_count; i++) {
        const struct marker *marker = &plan->markers[i];
        name_gather(gathering,
                    &(struct plan_zone){marker->zone, marker->name, marker->side, true});
    }
}

static bool is_step_card(const struct sheet *sheet)
{
    return sheet_steps(sheet)->count > 0 && sheet_block(sheet, BLOCK_PLAN) != NULL;
}

static bool shows(const struct sheet *sheet, const char *tag)
{
    const struct plan_facts *plan = sheet_plan(sheet);
    for (size_t i = 0; i < plan->marker_count; i++)
        if (text_equal(plan->markers[i].tag, tag))
            return true;
    return false;
}

/* Sheets past the 64th count as one. */
static void cards_find(struct gathering *gathering, const struct sheet_set *set)
{
    struct arena *arena = gathering->pen->arena;
    gathering->own_cards = arena_array(arena, gathering->count, sizeof *gathering->own_cards);
    for (size_t i = 0; i < gathering->count; i++)
        for (size_t s = 0; s < set->count && gathering->slots[i].marker != NULL; s++)
            if (is_step_card(set->sheets[s]) && shows(set->sheets[s], gathering->slots[i].text))
                gathering->own_cards[i] |= (uint64_t)1 << (s < 63 ? s : 63);
}

struct gathering slots_gather(const struct sheet_set *set, const struct pen *pen)
{
    struct gathering gathering = {.pen = pen};
    for (size_t i = 0; i < set->count; i++) {
        const struct sheet *sheet = set->sheets[i];
        if (!is_step_card(sheet))
            continue;
        if (gathering.boat == NULL) {
            gathering.boat = sheet->boat;
            gathering.views = plan_views_of(sheet->boat);
            mast_gather(&gathering);
        }
        plan_gather(&gathering, sheet_plan(sheet));
    }
    cards_find(&gathering, set);
    return gathering;
}
