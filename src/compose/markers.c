/* markers.c - where each tag of a card stands on the boat (room: compose). */
#include "compose_room.h"

/* Across the boat, in thousandths of half the beam, positive to starboard.
 * Hulls of a catamaran and floats of a trimaran lie well out; what is on the bridge deck
 * nearer in. */
static int32_t offset_of(const struct boat *boat, const struct zone *zone, enum side side)
{
    int32_t out = 0;
    if (side == SIDE_PORT)
        out = -1;
    else if (side == SIDE_STARBOARD)
        out = 1;
    if (boat->catamaran)
        return out * (zone->in_hulls ? 740 : 330);
    if (zone->multihull_only && zone->side != SIDE_NONE)
        return out * 890;
    return out * 560;
}

/* The bilge of a hull, the port hull: the zone itself tells the side. */
static enum side marker_side(const struct equipment *gear)
{
    return gear->place_side != SIDE_NONE ? gear->place_side : gear->place_zone->side;
}

/* In the middle of what is known. */
static void marker_stretch(const struct boat *boat, const struct stretch *stretch,
                           struct marker *marker)
{
    int64_t loa_mm = boat->facts.loa_m.milli;
    marker->from_mm = (int32_t)(loa_mm * stretch->from / 100);
    marker->to_mm = (int32_t)(loa_mm * stretch->to / 100);
    marker->x_mm = (int32_t)(loa_mm * (stretch->from + stretch->to) / 200);
}

static void place_by_zone(const struct boat *boat, const struct equipment *gear,
                          struct marker *marker)
{
    const struct zone *zone = gear->place_zone;
    int64_t half_beam_mm = boat->facts.beam_m.milli / 2;
    marker_stretch(boat, &(struct stretch){zone->from, zone->to}, marker);
    marker->y_mm = (int32_t)(half_beam_mm * offset_of(boat, zone, marker->side) / 1000);
}

/* The side that all sided gear of a place is on, which is not measured there; SIDE_NONE: none is
 * sided, or it is on several. */
static enum side neighbours_side(const struct boat *boat, const struct zone *zone)
{
    enum side found = SIDE_NONE;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *other = &boat->equipment[i];
        if (other->place_zone != zone || other->place_side == SIDE_NONE)
            continue;
        if (found != SIDE_NONE && other->place_side != found)
            return SIDE_NONE;
        found = other->place_side;
    }
    return found;
}

/* What is measured is drawn as measured, and what lies in a narrow place in its middle. */
static enum side drawn_side(const struct composing *composing, const struct marker *marker,
                            const struct text_value *spot)
{
    if (marker->side != SIDE_NONE || marker->exact)
        return marker->side;
    if (spot_on_both_sides(composing, spot))
        return SIDE_BOTH;
    return marker->zone->narrow ? SIDE_NONE
                                : neighbours_side(composing->in->boat, marker->zone);
}

static bool marker_known(const struct composing *composing, const char *tag)
{
    for (size_t i = 0; i < composing->marker_count; i++)
        if (text_equal(composing->markers[i].tag, tag))
            return true;
    return false;
}

struct marker marker_of(const struct boat *boat, const struct equipment *gear)
{
    struct marker marker = {.tag = TEXT_OR_EMPTY(gear->tag), .zone = gear->place_zone,
                            .origin = gear->place, .side = marker_side(gear),
                            .drawn = marker_side(gear),
                            .level = gear->place_zone->level};
    if (gear->below.answer == ANSWER_YES)
        marker.level = LEVEL_BELOW;
    marker.exact = gear->at.given;
    if (marker.exact) {
        marker.x_mm = marker.from_mm = marker.to_mm = (int32_t)gear->at.first.milli;
        marker.y_mm = (int32_t)gear->at.second.milli;
    } else {
        place_by_zone(boat, gear, &marker);
    }
    return marker;
}

struct marker worked_marker_of(const struct boat *boat, const struct equipment *gear)
{
    struct equipment worked = *gear;
    if (gear->from.place_zone != NULL) {
        worked.place_zone = worked_zone(gear);
        worked.place_side = worked_side(gear);
        worked.at.given = false;
        worked.below.answer = ANSWER_NOT_RECORDED;
    }
    return marker_of(boat, &worked);
}

/* "C3: Galley, port." */
static const char *marker_told(struct composing *composing, const struct equipment *gear)
{
    const struct phrase *place = place_phrase(composing, worked_zone(gear), worked_side(gear),
                                              NULL);
    return phrase_said(composing,
                       phrase_word(composing->arena, WORD_TAG_TOLD, "tag",
                                   phrase_verbatim(composing->arena, gear->tag.text), "place",
                                   place, NULL));
}

void marker_add(struct composing *composing, const struct equipment *gear)
{
    const char *tag = TEXT_OR_EMPTY(gear->tag);
    if (text_empty(tag) || gear->place_zone == NULL || marker_known(composing, tag))
        return;
    gear_dates_add(&composing->dates, gear, composing->in->base);
    composing->markers = arena_grow(composing->arena, composing->markers, composing->marker_count,
                                    &composing->marker_room, sizeof *composing->markers);
    struct marker *marker = &composing->markers[composing->marker_count++];
    *marker = worked_marker_of(composing->in->boat, gear);
    struct stretch stretch = spot_stretch(composing, marker->zone, worked_spot(gear));
    if (!marker->exact)
        marker_stretch(composing->in->boat, &stretch, marker);
    marker->drawn = drawn_side(composing, marker, worked_spot(gear));
    marker->name = phrase_said(composing, phrase_zone(composing->arena, marker->zone));
    marker->told = marker_told(composing, gear);
}
