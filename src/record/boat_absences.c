/* boat_absences.c - what a boat does not have (room: record): `not_fitted`, where an
 * entry may be about one engine space of two, and whether gear is fitted. Nothing said is
 * never taken for not fitted. */
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

void absences_take(struct boat_reading *reading, const struct entries_value *entries)
{
    struct absence *rows = entries->items;
    for (size_t i = 0; i < entries->count; i++)
        rows[i].whole = is_name_alone(&rows[i]);
    reading->boat->absences = rows;
    reading->boat->absence_count = entries->count;
}

/* ---- asking ---- */

static bool list_covers(const struct zone_values *spaces, enum zone_key space)
{
    for (size_t i = 0; i < spaces->count; i++)
        if (zone_within(zone_of(space), spaces->items[i].value))
            return true;
    return false;
}

bool gear_serves(const struct equipment *gear, enum zone_key space)
{
    return list_covers(&gear->serves, space);
}

const struct absence *boat_absence(const struct boat *boat, enum item_key item,
                                   enum zone_key space)
{
    for (size_t i = 0; i < boat->absence_count; i++) {
        const struct absence *absence = &boat->absences[i];
        if (absence->item.value == item &&
            (absence->whole || list_covers(&absence->serves, space)))
            return absence;
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
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (is_piece_of(&boat->equipment[i], item))
            return ANSWER_YES;
    return nowhere_fitted(boat, item) ? ANSWER_NO : ANSWER_NOT_RECORDED;
}

enum answer boat_fitted(const struct boat *boat, enum item_key item)
{
    enum answer recorded = fitted_as_recorded(boat, item);
    return recorded == ANSWER_NOT_RECORDED && boat_cannot_have(boat, item) ? ANSWER_NO : recorded;
}

enum answer boat_fitted_for(const struct boat *boat, enum item_key item, enum zone_key space)
{
    bool may_serve = false;
    if (space == ZONE_NONE || boat->engine_space_count < 2)
        return boat_fitted(boat, item);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (!is_piece_of(gear, item))
            continue;
        if (gear_serves(gear, space))
            return ANSWER_YES;
        may_serve = may_serve || !gear->serves.given;
    }
    if (boat_absence(boat, item, space) != NULL || boat_cannot_have(boat, item))
        return ANSWER_NO;
    return may_serve ? ANSWER_YES : ANSWER_NOT_RECORDED;
}

/* ---- contradictions ---- */

/* The piece that an entry about some engines cannot stand beside: one that serves them,
 * or that says of none whom it serves, of a kind that is for all. */
static const struct equipment *piece_against(const struct boat_reading *reading,
                                             const struct absence *absence,
                                             enum zone_key space)
{
    for (size_t i = 0; i < reading->gear_count; i++) {
        const struct equipment *gear = &reading->gear[i];
        if (gear->kind == NULL || gear->item.value != absence->item.value)
            continue;
        if (gear_serves(gear, space) || (!gear->serves.given && !gear->kind->by_engine))
            return gear;
    }
    return NULL;
}

/* Where pieces serve one engine only, the name alone may have been meant for the other. */
static const char *fitted_remedy(const struct boat_reading *reading, enum item_key item)
{
    const struct boat *boat = reading->boat;
    for (size_t i = 0; boat->engine_space_count > 1 && i < boat->engine_space_count; i++)
        if (boat_fitted_for(boat, item, boat->engine_spaces[i]) != ANSWER_YES)
            return text_format(reading->arena,
                               "keep the one that is true; if %s alone has none, write\n"
                               "  - {item: %s, serves: [%s]}",
                               zone_word(boat->engine_spaces[i]), item_word(item),
                               zone_word(boat->engine_spaces[i]));
    return "keep the one that is true";
}

static void fitted_all_the_same_tell(const struct boat_reading *reading,
                                     const struct absence *absence)
{
    for (size_t i = 0; i < reading->gear_count; i++)
        if (reading->gear[i].item.value == absence->item.value) {
            problem_add(reading->problems, SEVERITY_ERROR, absence->place,
                        fitted_remedy(reading, absence->item.value),
                        "%s is in not_fitted, but it is recorded on line %d",
                        item_word(absence->item.value), reading->gear[i].place.line);
            return;
        }
}

static void serving_tell(const struct boat_reading *reading, const struct absence *absence)
{
    for (size_t i = 0; i < absence->serves.count; i++) {
        const struct zone_value *space = &absence->serves.items[i];
        const struct equipment *gear = piece_against(reading, absence, space->value);
        if (gear != NULL)
            problem_add(reading->problems, SEVERITY_ERROR, space->place,
                        "keep the one that is true, or correct `serves` of the piece",
                        "%s for %s is in not_fitted, but the piece on line %d serves it",
                        item_word(absence->item.value), zone_word(space->value),
                        gear->place.line);
    }
}

/* Do two entries say the same of one engine? */
static bool said_by(const struct absence *first, const struct absence *again)
{
    if (first->item.value != again->item.value)
        return false;
    if (first->whole || again->whole)
        return true;
    for (size_t i = 0; i < again->serves.count; i++)
        if (list_covers(&first->serves, again->serves.items[i].value))
            return true;
    return false;
}

static void double_tell(const struct boat_reading *reading, const struct absence *absence)
{
    for (const struct absence *first = reading->boat->absences; first < absence; first++)
        if (said_by(first, absence)) {
            problem_add(reading->problems, SEVERITY_ERROR, absence->place,
                        "keep one: the name alone says that the boat has none at all",
                        "%s is in not_fitted twice (first on line %d)",
                        item_word(absence->item.value),
                        first->place.line);
            return;
        }
}

void absences_check(const struct boat_reading *reading)
{
    for (size_t i = 0; i < reading->boat->absence_count; i++) {
        const struct absence *absence = &reading->boat->absences[i];
        if (absence->item.value == ITEM_NONE)
            continue;
        spaces_exist(reading, &absence->serves);
        double_tell(reading, absence);
        if (absence->whole)
            fitted_all_the_same_tell(reading, absence);
        else
            serving_tell(reading, absence);
    }
}
