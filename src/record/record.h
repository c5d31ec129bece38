/* record.h - what the files of this room share. Private to src/record. */
#ifndef MAYDECK_RECORD_H
#define MAYDECK_RECORD_H

#include "boat.h"
#include "reading.h"

/* ---- placeholder.c ---- */

/* What a text is: words of a language, or a name or code, which can be "X". */
enum text_use { TEXT_WORDS, TEXT_NAME };

/* What of a text stands where a fact is yet to be written, such as tbd: the text itself
 * or words in it; NULL: nothing. */
const char *placeholder_in(const char *text, enum text_use use, struct arena *arena);

/* ---- boat_fields.c ---- */

/* A boat's file as its tables read it. */
struct boat_file {
    struct boat record;
    struct section_value boat, gas, radio;
    struct entries_value engines, equipment, not_fitted, silenced;
};

/* ---- base_fields.c ---- */

/* A base's file as its tables read it. */
struct base_file {
    struct base_record record;
    struct section_value base, rescue_centre, cruising_area, dates;
    struct entries_value intervals, shelters, approvals, local_rules;
};

/* ---- base_places.c ---- */

/* Reads the texts of positions and of the variation into numbers. What is wrong with
 * one, or lies outside the cruising area's hemispheres, is an error, and the number
 * stays not given. The cruising area must have been read. */
void base_places_settle(struct base_record *base, struct problems *problems);
void shelter_settle(const struct base_record *base, struct shelter *shelter,
                    struct problems *problems);

/* ---- boat_*.c ---- */

/* One boat as it is being read: all entries, also those that cannot be used. */
struct boat_reading {
    struct boat *boat;
    struct equipment *gear;
    size_t gear_count;
    struct arena *arena;
    struct problems *problems;
};

/* Looks up kinds and zones, settles sides and positions, and tells what cannot
 * be. An entry whose place cannot be used has no place_zone afterwards. */
void places_settle(struct boat_reading *reading);

/* Positions given as `at: [x, y]`. */
void position_settle(struct boat_reading *reading, struct equipment *gear);

/* Is it one of the boat's engine spaces? Tells those that she does not have. */
bool boat_has_space(const struct boat *boat, enum zone_key space);
void spaces_exist(const struct boat_reading *reading, const struct zone_values *serves);

/* Tells handling that is not given by state where gear has two, and states it has not. */
void handling_check(const struct boat_reading *reading, const struct equipment *gear);

/* Tells tags that are missing, of the wrong form, used twice or retired. */
void tags_check(struct boat_reading *reading);

/* Tells gear that stands twice in one place. */
void doubles_check(struct boat_reading *reading);

/* What `not_fitted` says; tells what is both fitted and not fitted, or said twice. */
void absences_take(struct boat_reading *reading, const struct entries_value *entries);
void absences_check(const struct boat_reading *reading);

/* Is a piece recorded, or the item in not_fitted? Whatever she is. */
enum answer fitted_as_recorded(const struct boat *boat, enum item_key item);

/* Are the two entries of one kind, with nothing in their places that parts them? */
bool equipment_same_place(const struct equipment *a, const struct equipment *b);

#endif
