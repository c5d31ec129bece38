/* boat_absences.c - what a boat does not have, and what nobody has looked for (room: record):
 * `not_fitted` and `not_surveyed`, where an entry may be about one engine space of two, and
 * whether gear is fitted. Neither nothing said nor not surveyed is taken for not fitted. */
#include "record.h"

#include "item.h"
#include "text.h"
#include "trait.h"

/* ---- reading ---- */

/* An entry that is a name alone says so of the whole boat. */
static bool is_name_alone(const struct absence *absence)
{
    return absence->item.place.line == absence->place.line &&
           absence->item.place.column == absence->place.column;
}

/* A model may give the day of a change with it. */
static bool is_of_model_alone(const struct absence *absence)
{
    return absence->changed.place.line > 0 && absence->serves.place.line == 0;
}

static struct absence_list list_taken(const struct boat *boat,
                                      const struct entries_value *entries)
{
    struct absence *rows = entries->items;
    for (size_t i = 0; i < entries->count; i++)
        rows[i].whole = is_name_alone(&rows[i]) || is_of_model_alone(&rows[i]);
    return (struct absence_list){rows, entries->count, place_or(entries->place, boat->place)};
}

void absences_take(struct boat_reading *reading, const struct boat_file *file)
{
    struct boat *boat = reading->boat;
    boat->not_fitted = list_taken(boat, &file->not_fitted);
    boat->not_surveyed = list_taken(boat, &file->not_surveyed);
}

/* ---- asking ---- */

static bool list_covers(const struct zone_values *spaces, enum zone_key space)
{
    for (size_t i = 0; i < spaces->count; i++)
        if (zone_in_space(zone_of(space), spaces->items[i].value))
            return true;
    return false;
}

bool gear_serves(const struct equipment *gear, enum zone_key space)
{
    return list_covers(&gear->serves, space);
}

bool absence_covers(const struct absence *absence, enum zone_key space)
{
    return absence->whole || list_covers(&absence->serves, space);
}

const struct absence *boat_absence(const struct boat *boat, enum item_key item,
                                   enum zone_key space)
{
    for (size_t i = 0; i < boat->not_fitted.count; i++) {
        const struct absence *absence = &boat->not_fitted.rows[i];
        if (absence->item.value == item && absence_covers(absence, space))
            return absence;
    }
    return NULL;
}

const struct absence *boat_unsurveyed(const struct boat *boat, enum item_key item,
                                      enum zone_key space)
{
    for (size_t i = 0; i < boat->not_surveyed.count; i++) {
        const struct absence *entry = &boat->not_surveyed.rows[i];
        if (entry->item.value == item && (space == ZONE_NONE || absence_covers(entry, space)))
            return entry;
    }
    return NULL;
}

/* Said of each of her engine spaces, or of the boat as a whole. */
static bool nowhere_fitted(const struct boat *boat, enum item_key item)
{
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (boat_absence(boat, item, boat->engine_spaces[i]) == NULL)
            return boat_absence(boat, item, ZONE_NONE) != NULL;
    return boat->engine_space_count > 0 || boat_absence(boat, item, ZONE_NONE) != NULL;
}

static bool is_piece_of(const struct equipment *gear, enum item_key item)
{
    return gear->kind != NULL && gear->kind->item == item;
}

enum answer fitted_as_recorded(const struct boat *boat, enum item_key item)
{
    if (boat_unwalked(boat, item))
        return ANSWER_NOT_RECORDED;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (is_piece_of(&boat->equipment[i], item))
            return ANSWER_YES;
    return nowhere_fitted(boat, item) ? ANSWER_NO : ANSWER_NOT_RECORDED;
}

enum answer boat_fitted(const struct boat *boat, enum item_key item)
{
    enum answer recorded = fitted_as_recorded(boat, item);
    if (recorded != ANSWER_NOT_RECORDED || boat_unwalked(boat, item) ||
        boat_unsurveyed(boat, item, ZONE_NONE) != NULL)
        return recorded;
    return boat_cannot_have(boat, item) ? ANSWER_NO : recorded;
}

enum answer boat_fitted_for(const struct boat *boat, enum item_key item, enum zone_key space)
{
    bool may_serve = false;
    if (space == ZONE_NONE || boat->engine_space_count < 2 || boat_unwalked(boat, item))
        return boat_fitted(boat, item);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (!is_piece_of(gear, item))
            continue;
        if (gear_serves(gear, space))
            return ANSWER_YES;
        may_serve = may_serve || !gear->serves.given;
    }
    if (boat_absence(boat, item, space) != NULL)
        return ANSWER_NO;
    if (boat_unsurveyed(boat, item, space) != NULL)
        return ANSWER_NOT_RECORDED;
    if (boat_cannot_have(boat, item))
        return ANSWER_NO;
    return may_serve ? ANSWER_YES : ANSWER_NOT_RECORDED;
}
