/* base_places.c - the positions and the variation that a base records, from text to
 * numbers (room: record). Never takes one that contradicts the cruising area: a wrong
 * letter puts a harbour on the other side of the world. */
#include "record.h"

#include "text.h"

static enum hemisphere hemisphere_of(int64_t e7)
{
    return e7 > 0 ? HEMISPHERE_UP : e7 < 0 ? HEMISPHERE_DOWN : HEMISPHERE_NONE;
}

/* On the line itself it agrees with both. */
static bool hemisphere_agrees(enum hemisphere area, enum hemisphere side)
{
    return area == HEMISPHERE_NONE || area == HEMISPHERE_BOTH || side == HEMISPHERE_NONE ||
           area == side;
}

/* One coordinate of a position, and what the cruising area says of it. */
struct coordinate {
    const struct hemisphere_value *area;
    const char *const *words;
    enum hemisphere side;
};

/* False, with an error, where the area lies on one side and this on the other. */
static bool inside_area(const struct text_value *value, const char *key,
                        const struct coordinate *coordinate, struct problems *problems)
{
    if (hemisphere_agrees(coordinate->area->value, coordinate->side))
        return true;
    problem_add(problems, SEVERITY_ERROR, value->place,
                "correct its letter, or write `both` there if the boats sail on both sides",
                "%s `%s` lies %s, but the cruising area is %s", key, value->text,
                choice_word(coordinate->words, coordinate->side),
                choice_word(coordinate->words, coordinate->area->value));
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
    const struct coordinate latitude = {&base->latitude, latitude_words,
                                        hemisphere_of(read.latitude_e7)};
    const struct coordinate longitude = {&base->longitude, longitude_words,
                                         hemisphere_of(read.longitude_e7)};
    bool latitude_inside = inside_area(value, key, &latitude, problems);
    *position = read;
    return inside_area(value, key, &longitude, problems) && latitude_inside;
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

bool base_beyond_a1(const struct base_record *base)
{
    return base->sea_area.value != SEA_AREA_A1;
}
