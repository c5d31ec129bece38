/* safety_places.c - the gear of a safety plan by places: what stands at one place
 * shares a label, gear of one kind there a line (room: compose). Never leaves a
 * piece out: each is on the plan of its own level. */
#include "compose_room.h"

#include <stdlib.h>

#include "promise.h"

/* A piece of gear and where it stands. */
struct piece {
    const struct equipment *gear;
    struct marker marker;
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

/* Two places of one level in one zone on one side are one place. */
static int place_compare(const struct marker *a, const struct marker *b)
{
    if (a->x_mm != b->x_mm)
        return sign_of((long long)a->x_mm - b->x_mm);
    if (a->y_mm != b->y_mm)
        return sign_of((long long)a->y_mm - b->y_mm);
    if (a->zone != b->zone)
        return sign_of(a->zone - b->zone);
    if (a->side != b->side)
        return sign_of((long long)a->side - (long long)b->side);
    return sign_of((long long)a->level - (long long)b->level);
}

static int piece_compare(const void *first, const void *second)
{
    const struct piece *a = first, *b = second;
    int order = place_compare(&a->marker, &b->marker);
    if (order == 0)
        order = class_rank(a->gear->kind->class) - class_rank(b->gear->kind->class);
    if (order == 0)
        order = tag_number(a->marker.tag) - tag_number(b->marker.tag);
    return order != 0 ? order : sign_of((long long)a->index - (long long)b->index);
}

static struct piece *pieces_of(struct composing *composing, size_t *count)
{
    const struct boat *boat = composing->in->boat;
    struct piece *pieces = arena_array(composing->arena, boat->equipment_count, sizeof *pieces);
    *count = 0;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        struct marker marker = marker_of(boat, &boat->equipment[i]);
        pieces[(*count)++] = (struct piece){&boat->equipment[i], marker, i};
    }
    if (*count > 0)
        qsort(pieces, *count, sizeof *pieces, piece_compare);
    return pieces;
}

/* ---- lines ---- */

static bool is_seacock(const struct equipment *gear)
{
    return gear->kind->item == ITEM_seacock;
}

/* Seacocks of one place share a line whatever they are for: the flooding card has
 * each by name. The record lets no other gear of one kind stand at one spot twice. */
static bool same_line(const struct equipment *a, const struct equipment *b)
{
    return a == b || (is_seacock(a) && is_seacock(b));
}

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

/* Tags that follow each other stand as one chip from three on: "C11–C14". The
 * pieces come in order of their tags. */
static size_t run_length(const struct equipment *const *pieces, size_t count)
{
    size_t length = 1;
    while (length < count && tag_number(TEXT_OR_EMPTY(pieces[length]->tag)) ==
                                 tag_number(TEXT_OR_EMPTY(pieces[length - 1]->tag)) + 1)
        length++;
    return length;
}

static const struct phrase *tags_run(struct composing *composing,
                                     const struct equipment *const *pieces, size_t run)
{
    struct arena *arena = composing->arena;
    const struct phrase *first = phrase_verbatim(arena, pieces[0]->tag.text);
    if (run == 1)
        return first;
    return phrase_word(arena, WORD_TAG_RANGE, "first", first, "last",
                       phrase_verbatim(arena, pieces[run - 1]->tag.text), NULL);
}

static void chips_make(struct composing *composing, const struct equipment *const *pieces,
                       size_t count, struct plan_row *row)
{
    const char **chips = arena_array(composing->arena, count, sizeof *chips);
    for (size_t i = 0; i < count;) {
        size_t run = run_length(pieces + i, count - i);
        if (run < 3)
            run = 1;
        if (pieces[i]->tag.text != NULL)
            chips[row->chip_count++] = phrase_said(composing,
                                                   tags_run(composing, pieces + i, run));
        i += run;
    }
    row->chips = chips;
}

/* That a seacock has no valve, and what else is told of it; NULL: nothing is. */
static const struct phrase *seacock_told(struct composing *composing,
                                         const struct equipment *gear)
{
    const struct phrase *none = gear->valve.answer == ANSWER_NO
                                    ? word_alone(composing, WORD_VALVE_NONE) : NULL;
    return phrase_joined(composing->arena, WORD_JOIN_COMMA, none, handle_phrase(composing, gear),
                         gear_told(composing, gear));
}

/* What a seacock is for, and what is told of it; NULL: neither is to be told. */
static const struct phrase *purpose(struct composing *composing, const struct equipment *gear)
{
    struct arena *arena = composing->arena;
    const struct phrase *name = phrase_text(arena, &gear->name);
    const struct phrase *told = seacock_told(composing, gear);
    if (name == NULL || told == NULL)
        return name == NULL ? told : name;
    return phrase_word(arena, WORD_OPENING_HANDLED, "opening", name, "how", told, NULL);
}

static bool purpose_told(struct composing *composing, const struct equipment *const *pieces,
                         size_t before, const struct equipment *gear)
{
    for (size_t i = 0; i < before; i++)
        if (phrase_equal(purpose(composing, pieces[i]), purpose(composing, gear)))
            return true;
    return false;
}

static void seacocks_name(struct composing *composing, const struct equipment *const *pieces,
                          size_t count, struct plan_row *row)
{
    struct arena *arena = composing->arena;
    enum item_key item = pieces[0]->kind->item;
    const struct phrase **purposes = arena_array(arena, count, sizeof *purposes);
    for (size_t i = 0; i < count; i++)
        if (!purpose_told(composing, pieces, i, pieces[i]))
            purposes[i] = purpose(composing, pieces[i]);
    row->name = phrase_said(composing, count == 1 ? phrase_item(arena, item)
                                                  : phrase_items(arena, item, count));
    row->detail = phrase_said(composing,
                              phrase_list(arena, WORD_JOIN_COMMA, purposes, count));
}

static struct plan_row plan_row_of(struct composing *composing,
                                   const struct equipment *const *pieces,
                                   size_t count)
{
    struct plan_row row = {.kind = pieces[0]->kind, .origin = pieces[0]->place};
    chips_make(composing, pieces, count, &row);
    if (is_seacock(pieces[0])) {
        seacocks_name(composing, pieces, count, &row);
        return row;
    }
    row.name = phrase_said(composing, gear_name(composing, pieces[0], count, CAPACITY_WEIGHT));
    row.detail = phrase_said(composing, gear_detail(composing, pieces[0]));
    return row;
}

/* ---- places ---- */

/* The lines of one place from its pieces, each with all that share it. */
static void plan_rows_of(struct composing *composing, const struct piece *pieces, size_t count,
                         struct plan_place *place)
{
    struct plan_row *rows = arena_array(composing->arena, count, sizeof *rows);
    bool *told = arena_array(composing->arena, count, sizeof *told);
    const struct equipment **line = arena_array(composing->arena, count, sizeof *line);
    for (size_t i = 0; i < count; i++) {
        size_t pieces_in_line = 0;
        if (told[i])
            continue;
        for (size_t j = i; j < count; j++) {
            if (told[j] || !same_line(pieces[i].gear, pieces[j].gear))
                continue;
            told[j] = true;
            line[pieces_in_line++] = pieces[j].gear;
        }
        rows[place->row_count++] = plan_row_of(composing, line, pieces_in_line);
    }
    place->rows = rows;
}

/* "Port hull" says its side itself. */
static const struct phrase *place_title(const struct composing *composing,
                                        const struct equipment *gear)
{
    const struct zone *zone = gear->place_zone;
    bool named = zone->side != SIDE_NONE && zone->id == zone->family;
    return place_phrase(composing, zone, named ? SIDE_NONE : gear->place_side, NULL);
}

static size_t together(const struct piece *pieces, size_t count)
{
    size_t length = 1;
    while (length < count && place_compare(&pieces[0].marker, &pieces[length].marker) == 0)
        length++;
    return length;
}

const struct plan_place *plan_places(struct composing *composing, size_t *count)
{
    size_t piece_count;
    const struct piece *pieces = pieces_of(composing, &piece_count);
    struct plan_place *places = arena_array(composing->arena, piece_count, sizeof *places);
    *count = 0;
    for (size_t i = 0; i < piece_count;) {
        size_t length = together(pieces + i, piece_count - i);
        struct plan_place *place = &places[(*count)++];
        place->marker = pieces[i].marker;
        place->marker.tag = "";
        place->title = phrase_said(composing, place_title(composing, pieces[i].gear));
        plan_rows_of(composing, pieces + i, length, place);
        i += length;
    }
    return places;
}
