/* base_places.c - the positions and the variation that a base records, from text to
 * numbers (room: record). Never takes one that contradicts the cruising area: a wrong
 * letter puts a harbour on the other side of the world. */
#include "record.h"

#include "text.h"

/* Which side of the equator or of Greenwich, as the cruising area names it. NULL on
 * the line itself. */
static const char *side_of(int64_t e7, const char *positive, const char *negative)
{
    return e7 > 0 ? positive : e7 < 0 ? negative : NULL;
}

static bool area_side_agrees(const struct text_value *area, const char *side)
{
    return area->text == NULL || side == NULL || text_equal(area->text, "both") ||
           text_equal(area->text, side);
}

/* False, with an error, where the area lies on one side and this on the other. */
static bool inside_area(const struct text_value *value, const char *key,
                        const struct text_value *area, const char *side,
                        struct problems *problems)
{
    if (area_side_agrees(area, side))
        return true;
    problem_add(problems, SEVERITY_ERROR, value->place,
                "correct its letter, or write `both` there if the boats sail on both sides",
                "%s `%s` lies %s, but the cruising area is %s", key, value->text, side,
                area->text);
    return false;
}

static bool position_value_settle(const struct base_record *base, const struct text_value *value,
                                     const char *key, struct position *position,
                                     struct problems *problems)
{
    struct position_error error = {.fault = POSITION_SOUND};
    struct position read;
    if (value->text == NULL)
        return false;
    if (!position_parse(value->text, &read, &error)) {
        problem_add(problems, SEVERITY_ERROR, value->place, position_fault_remedy(error.fault),
                    "%s `%s` %s (character %zu)", key, value->text,
                    position_fault_text(error.fault), error.at);
        return false;
    }
    bool latitude = inside_area(value, key, &base->latitude,
                                side_of(read.latitude_e7, "north", "south"), problems);
    bool longitude = inside_area(value, key, &base->longitude,
                                 side_of(read.longitude_e7, "east", "west"), problems);
    *position = read;
    return latitude && longitude;
}

void shelter_settle(const struct base_record *base, struct shelter *shelter,
                    struct problems *problems)
{
    shelter->at_given = position_value_settle(base, &shelter->position, "position", &shelter->at,
                                                 problems);
}

void base_places_settle(struct base_record *base, struct problems *problems)
{
    base->berths_given = position_value_settle(base, &base->position, "position", &base->berths,
                                                  problems);
    if (base->variation.text == NULL)
        return;
    base->variation_given = variation_parse(base->variation.text, &base->variation_tenths);
    if (!base->variation_given)
        problem_add(problems, SEVERITY_ERROR, base->variation.place,
                    "write degrees and E or W from the chart, such as 4 E, 4.5 W or 4°30'W",
                    "variation `%s` cannot be read", base->variation.text);
}
