/* row_words.c - what a row says of a piece of gear: where it is worked, what it is called, how
 * the step leaves it and what must be so for that (room: compose). */
#include "compose_room.h"

#include "figure.h"
#include "item_states.h"

/* ---- where ---- */

static const struct phrase *side_phrase(const struct composing *composing, enum side side)
{
    static const enum word words_of_sides[] = {
        [SIDE_PORT] = WORD_SIDE_PORT, [SIDE_STARBOARD] = WORD_SIDE_STARBOARD,
        [SIDE_CENTRE] = WORD_SIDE_CENTRE, [SIDE_BOTH] = WORD_SIDE_BOTH};
    return side == SIDE_NONE ? NULL
                             : phrase_word(composing->arena, words_of_sides[side], NULL);
}

const struct phrase *place_phrase(const struct composing *composing, const struct zone *zone,
                                  enum side side, const struct text_value *spot)
{
    struct arena *arena = composing->arena;
    return phrase_joined(arena, WORD_JOIN_COMMA, phrase_zone(arena, zone),
                         side_phrase(composing, side), phrase_text(arena, spot));
}

const struct phrase *row_place_phrase(struct composing *composing, const struct equipment *gear)
{
    struct arena *arena = composing->arena;
    const struct phrase *side = side_phrase(composing, worked_side(gear));
    if (side == NULL)
        side = side_unrecorded(composing, gear, worked_spot(gear));
    return phrase_joined(arena, WORD_JOIN_COMMA, phrase_zone(arena, worked_zone(gear)),
                         phrase_upper(arena, side), NULL);
}

static const struct phrase *behind_phrase(const struct composing *composing,
                                          const struct equipment *gear)
{
    const struct phrase *behind = phrase_text(composing->arena, &gear->behind);
    return behind == NULL ? NULL
                          : phrase_word(composing->arena, WORD_BEHIND, "what", behind, NULL);
}

const struct phrase *row_spot_phrase(const struct composing *composing,
                                     const struct equipment *gear)
{
    return phrase_joined(composing->arena, WORD_JOIN_COMMA,
                         phrase_text(composing->arena, worked_spot(gear)),
                         behind_phrase(composing, gear), NULL);
}

/* ---- how it is left ---- */

bool gear_is_inside_here(const struct composing *composing, const struct equipment *gear)
{
    enum zone_key space = composing->slot->space;
    return space != ZONE_NONE && gear_inside(composing, gear, &space, 1) == TRUTH_YES;
}

/* A control inside the burning space: it is left as it is. */
static bool is_left_inside(const struct composing *composing, const struct equipment *gear)
{
    return gear_is_inside_here(composing, gear) && gear->kind->class == ITEM_CONTROL;
}

const struct phrase *row_end_phrase(struct composing *composing, const struct equipment *gear,
                             enum end_state state)
{
    const struct phrase *end = is_left_inside(composing, gear)
                                   ? word_alone(composing, WORD_INSIDE_LEAVE)
                                   : gear_handling(composing, gear, state);
    if (end == NULL)
        end = handling_unrecorded(composing, gear, state);
    return end == NULL ? NULL
                       : phrase_word(composing->arena, WORD_ROW_END, "end", end, NULL);
}

/* ---- what must be so ---- */

const struct phrase *handle_phrase(const struct composing *composing,
                                   const struct equipment *gear)
{
    const struct gear_spot *handle = &gear->handle;
    return !handle->section.given
               ? NULL
               : phrase_word(composing->arena, WORD_HANDLE_AT, "place",
                             place_phrase(composing, handle->place_zone, handle->place_side,
                                          &handle->spot), NULL);
}

/* The handle is fetched for those states alone that somebody brings about by it. */
static const struct phrase *handle_fetched(const struct composing *composing,
                                           const struct equipment *gear, enum end_state state)
{
    bool worked = state == STATE_ANY ||
                  item_state_field(gear->item.value, state) != GEAR_FIELD_NONE;
    return worked ? handle_phrase(composing, gear) : NULL;
}

const struct phrase *only_phrase(const struct composing *composing,
                                 const struct equipment *gear)
{
    static const enum word words_of[] = {
        [ONLY_ENGINE_RUNNING] = WORD_ENGINE_RUNNING, [ONLY_ENGINE_STOPPED] = WORD_ENGINE_STOPPED,
        [ONLY_PLATFORM_UP] = WORD_PLATFORM_UP, [ONLY_PLATFORM_DOWN] = WORD_PLATFORM_DOWN};
    const struct phrase *conditions = NULL;
    for (size_t i = 0; i < gear->only_when.count; i++)
        conditions = phrase_joined(composing->arena, WORD_JOIN_COMMA, conditions,
                                   word_alone(composing, words_of[gear->only_when.items[i].value]),
                                   NULL);
    return conditions == NULL ? NULL
                              : phrase_word(composing->arena, WORD_ONLY_WHEN, "conditions",
                                            conditions, NULL);
}

const struct phrase *row_condition_phrase(const struct composing *composing,
                                   const struct equipment *gear, enum end_state state)
{
    if (is_left_inside(composing, gear))
        return NULL;
    return phrase_joined(composing->arena, WORD_JOIN_SEMICOLON, only_phrase(composing, gear),
                         handle_fetched(composing, gear, state), gear_warned(composing, gear));
}

/* ---- what it is called ---- */

/* Of an extinguisher how long it lasts, for whoever uses it, or its weight. */
static const struct phrase *capacity_phrase(struct composing *composing,
                                            const struct equipment *gear,
                                            enum capacity_told told)
{
    struct arena *arena = composing->arena;
    bool extinguisher = gear->kind->class == ITEM_FIRE;
    if (gear->persons.given)
        return phrase_counted(arena, WORD_PERSONS, (uint64_t)(gear->persons.milli / 1000),
                              "count", phrase_verbatim(arena, gear->persons.text), NULL);
    if (extinguisher && told == CAPACITY_SECONDS && gear->discharge_s.given)
        return figure_discharge(gear, arena);
    if (extinguisher && gear->kg.given)
        return phrase_word(arena, WORD_KILOGRAMS, "count",
                           phrase_verbatim(arena, gear->kg.text), NULL);
    return persons_unrecorded(composing, gear);
}

const struct phrase *gear_called(const struct composing *composing,
                                 const struct equipment *gear, size_t pieces)
{
    struct arena *arena = composing->arena;
    if (gear->name.text != NULL)
        return phrase_text(arena, &gear->name);
    if (gear->count.given && gear->count.milli > 1000)
        return phrase_items(arena, gear->item.value, (uint64_t)(gear->count.milli / 1000));
    return pieces > 1 ? phrase_items(arena, gear->item.value, pieces)
                      : phrase_item(arena, gear->item.value);
}

const struct phrase *gear_name(struct composing *composing, const struct equipment *gear,
                               size_t pieces, enum capacity_told told)
{
    const struct phrase *name = gear_called(composing, gear, pieces);
    const struct phrase *capacity = capacity_phrase(composing, gear, told);
    return phrase_joined(composing->arena, WORD_JOIN_COMMA, name, capacity, NULL);
}
