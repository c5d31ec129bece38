/* safety_places.c - the gear of a safety plan by places: what stands in one zone, on one side
 * and level, is one place, each piece of it a line (room: compose). Never leaves a piece
 * out: each is on the plan of its own level. */
#include "gear_words.h"

#include <stdlib.h>

#include "promise.h"

/* A piece of gear and where it stands. */
struct piece {
    const struct equipment *gear;    /* NULL: the cards hang there */
    struct marker marker;
    int32_t station_mm;        /* how far aft its zone counts on this boat */
    size_t index;              /* in the boat's file: keeps the order of equals */
};

/* ---- order ---- */

static int class_rank(enum item_class class)
{
    switch (class) {
    case ITEM_FIRE:
        return 0;
    case ITEM_RESCUE:
        return 1;
    case ITEM_CONTROL:
        return 2;
    }
    promise_unreached();
}

static int tag_number(const char *tag)
{
    int number = 0;
    for (size_t i = 1; tag[0] != '\0' && tag[i] >= '0' && tag[i] <= '9' && number < 100000; i++)
        number = number * 10 + (tag[i] - '0');
    return number;
}

static int sign_of(long long difference)
{
    return (difference > 0) - (difference < 0);
}

/* By how far aft, then zone, side and level: equal in one place alone. Where the cards hang is a
 * place of its own, the last of its zone and side. */
static int place_compare(const struct piece *a, const struct piece *b)
{
    const struct marker *first = &a->marker, *second = &b->marker;
    if (a->station_mm != b->station_mm)
        return sign_of((long long)a->station_mm - b->station_mm);
    if (first->zone->family != second->zone->family)
        return sign_of((long long)first->zone->family - (long long)second->zone->family);
    if (first->side != second->side)
        return sign_of((long long)first->side - (long long)second->side);
    if (first->zone != second->zone)
        return sign_of(first->zone - second->zone);
    if (a->gear == NULL || b->gear == NULL)
        return (a->gear == NULL) - (b->gear == NULL);
    return sign_of((long long)first->level - (long long)second->level);
}

/* Of two pieces of one place. */
static int order_in_place(const struct piece *a, const struct piece *b)
{
    int order = sign_of((long long)a->marker.x_mm - b->marker.x_mm);
    if (order == 0)
        order = class_rank(a->gear->kind->class) - class_rank(b->gear->kind->class);
    if (order == 0)
        order = tag_number(a->marker.tag) - tag_number(b->marker.tag);
    return order != 0 ? order : sign_of((long long)a->index - (long long)b->index);
}

static int piece_compare(const void *first, const void *second)
{
    int order = first == second ? 0 : place_compare(first, second);
    return order != 0 || first == second ? order : order_in_place(first, second);
}

/* The mean of what was measured in the zone; of a zone in which nothing was, its middle. */
static int32_t station_of(const struct boat *boat, const struct zone *zone,
                          const struct piece *pieces, size_t count)
{
    int64_t sum = 0, measured = 0;
    for (size_t i = 0; i < count; i++)
        if (pieces[i].marker.exact && pieces[i].marker.zone->family == zone->family) {
            sum += pieces[i].marker.x_mm;
            measured++;
        }
    const struct zone *family = zone_of(zone->family);
    return measured > 0
               ? (int32_t)(sum / measured)
               : (int32_t)(boat->facts.loa_m.milli * (family->from + family->to) / 200);
}

static struct piece *pieces_of(struct composing *composing, const struct marker *here,
                               size_t *count)
{
    const struct boat *boat = composing->in->boat;
    size_t all = boat->equipment_count;
    struct piece *pieces = arena_array(composing->arena, all + 1, sizeof *pieces);
    for (size_t i = 0; i < all; i++)
        pieces[i] = (struct piece){&boat->equipment[i], marker_of(boat, &boat->equipment[i]), 0, i};
    *count = all;
    if (here != NULL)
        pieces[(*count)++] = (struct piece){NULL, *here, 0, all};
    for (size_t i = 0; i < *count; i++)
        pieces[i].station_mm = station_of(boat, pieces[i].marker.zone, pieces, *count);
    if (*count > 0)
        qsort(pieces, *count, sizeof *pieces, piece_compare);
    return pieces;
}

/* ---- lines ---- */

/* Does gear of the kind stand there for another engine too? */
static bool twin_here(const struct composing *composing, const struct equipment *gear)
{
    const struct boat *boat = composing->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *other = &boat->equipment[i];
        if (other != gear && other->kind == gear->kind && other->serves.count == 1 &&
            other->place_zone == gear->place_zone && other->place_side == gear->place_side &&
            other->serves.items[0].value != gear->serves.items[0].value)
            return true;
    }
    return false;
}

/* On a boat with two engines: which one the gear is for, unless its place on the
 * same side of the boat, alone of its kind, tells; NULL where it is for both. */
static const struct phrase *engine_told(const struct composing *composing,
                                        const struct equipment *gear)
{
    if (composing->in->boat->engine_space_count < 2 || gear->serves.count != 1)
        return NULL;
    const struct zone *space = zone_of(gear->serves.items[0].value);
    if ((space->side != SIDE_PORT && space->side != SIDE_STARBOARD) ||
        (space->side == gear->place_side && !twin_here(composing, gear)))
        return NULL;
    return word_alone(composing, space->side == SIDE_PORT ? WORD_ENGINE_PORT
                                                          : WORD_ENGINE_STARBOARD);
}

static const struct phrase *spot_told(const struct composing *composing,
                                      const struct equipment *gear)
{
    const struct phrase *behind = phrase_text(composing->arena, &gear->behind);
    return phrase_joined(composing->arena, WORD_JOIN_COMMA,
                         phrase_text(composing->arena, &gear->spot),
                         behind == NULL ? NULL
                                        : phrase_word(composing->arena, WORD_BEHIND, "what",
                                                      behind, NULL), NULL);
}

/* Where one works it from; NULL: at its own place. */
static const struct phrase *worked_told(const struct composing *composing,
                                        const struct equipment *gear)
{
    if (gear->from.place_zone == NULL)
        return NULL;
    return phrase_word(composing->arena, WORD_WORKED_FROM, "place",
                       place_phrase(composing, worked_zone(gear), worked_side(gear),
                                    worked_spot(gear)), NULL);
}

/* The spot, the engine it is for, where it is worked from and with what, and what else a crew
 * can use. */
static const struct phrase *gear_detail(const struct composing *composing,
                                        const struct equipment *gear)
{
    const struct phrase *parts[] = {
        spot_told(composing, gear), engine_told(composing, gear), worked_told(composing, gear),
        handle_phrase(composing, gear), only_phrase(composing, gear), gear_told(composing, gear)};
    return phrase_list(composing->arena, WORD_JOIN_COMMA, parts, sizeof parts / sizeof *parts);
}

/* What an opening is for, and that it has no valve; NULL: neither is to be told. */
static const struct phrase *purpose(struct composing *composing, const struct equipment *gear)
{
    struct arena *arena = composing->arena;
    const struct phrase *name = phrase_text(arena, &gear->name);
    if (gear->valve.answer != ANSWER_NO)
        return name;
    const struct phrase *none = word_alone(composing, WORD_VALVE_NONE);
    return name == NULL ? none
                        : phrase_word(arena, WORD_OPENING_HANDLED, "opening", name, "how", none,
                                      NULL);
}

struct gear_words gear_words_of(struct composing *composing, const struct equipment *gear)
{
    struct gear_words words = {gear_name(composing, gear, 1, CAPACITY_WEIGHT),
                               gear_detail(composing, gear)};
    if (gear->kind->item == ITEM_seacock) {
        words.name = phrase_item(composing->arena, ITEM_seacock);
        words.detail = phrase_joined(composing->arena, WORD_JOIN_COMMA, purpose(composing, gear),
                                     words.detail, NULL);
    }
    return words;
}

static struct plan_row gear_line(struct composing *composing, const struct piece *piece)
{
    const struct equipment *gear = piece->gear;
    struct plan_row row = {.kind = gear->kind, .marker = piece->marker};
    struct gear_words words = gear_words_of(composing, gear);
    row.name = phrase_said(composing, words.name);
    row.detail = phrase_said(composing, words.detail);
    return row;
}

static struct plan_row here_line(struct composing *composing, const struct piece *piece)
{
    static const enum word words[] = {
        [FACING_BOW] = WORD_HERE_BOW, [FACING_STARBOARD] = WORD_HERE_STARBOARD,
        [FACING_STERN] = WORD_HERE_STERN, [FACING_PORT] = WORD_HERE_PORT};
    enum facing facing = composing->in->boat->facts.mounted_faces.value;
    struct plan_row row = {.marker = piece->marker};
    row.name = phrase_said(composing, word_alone(composing, WORD_HERE));
    row.detail = phrase_said(composing, word_alone(composing, words[facing]));
    return row;
}

/* ---- places ---- */

/* "Port hull" says its side itself. */
const char *plan_place_title(struct composing *composing, const struct marker *marker)
{
    const struct zone *zone = marker->zone;
    bool named = zone->side != SIDE_NONE && zone->id == zone->family;
    enum side side = named ? SIDE_NONE : marker->side;
    const struct phrase *side_said = side == SIDE_NONE
                                         ? NULL : place_phrase(composing, NULL, side, NULL);
    return phrase_said(composing,
                       phrase_joined(composing->arena, WORD_JOIN_COMMA,
                                     phrase_zone(composing->arena, zone),
                                     phrase_upper(composing->arena, side_said), NULL));
}

static size_t together(const struct piece *pieces, size_t count)
{
    size_t length = 1;
    while (length < count && place_compare(&pieces[0], &pieces[length]) == 0)
        length++;
    return length;
}

/* "C3: Galley, PORT.", for one who does not see the plan. */
static const char *row_told(struct composing *composing, const struct plan_row *row,
                            const char *title)
{
    const char *tag = row->kind == NULL ? row->name : row->marker.tag;
    return phrase_said(composing,
                       phrase_word(composing->arena, WORD_TAG_TOLD, "tag",
                                   phrase_verbatim(composing->arena, tag), "place",
                                   phrase_verbatim(composing->arena, title), NULL));
}

static struct plan_place place_of_pieces(struct composing *composing, const struct piece *pieces,
                                         size_t count)
{
    struct plan_row *rows = arena_array(composing->arena, count, sizeof *rows);
    struct plan_place place = {.marker = pieces[0].marker, .rows = rows, .row_count = count};
    place.marker.tag = "";
    place.marker.x_mm = pieces[0].station_mm;
    place.title = plan_place_title(composing, &place.marker);
    place.zone_name = phrase_said(composing,
                                  phrase_zone(composing->arena, place.marker.zone));
    for (size_t i = 0; i < count; i++) {
        rows[i] = pieces[i].gear != NULL ? gear_line(composing, &pieces[i])
                                         : here_line(composing, &pieces[i]);
        rows[i].marker.told = row_told(composing, &rows[i], place.title);
    }
    return place;
}

const struct plan_place *plan_places(struct composing *composing, const struct marker *here,
                                     size_t *count)
{
    size_t piece_count;
    const struct piece *pieces = pieces_of(composing, here, &piece_count);
    struct plan_place *places = arena_array(composing->arena, piece_count, sizeof *places);
    *count = 0;
    for (size_t i = 0; i < piece_count;) {
        size_t length = together(pieces + i, piece_count - i);
        places[(*count)++] = place_of_pieces(composing, pieces + i, length);
        i += length;
    }
    return places;
}
