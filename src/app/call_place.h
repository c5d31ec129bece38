/* call_place.h - where a call says that the boat is (room: app). Private to src/app. */
#ifndef MAYDECK_CALL_PLACE_H
#define MAYDECK_CALL_PLACE_H

#include "fleet.h"
#include "json.h"
#include "position.h"

struct call_place {
    bool position_given, bearing_given;
    bool of_another;          /* the position is that of the boat that a relay is about */
    const char *time;         /* of four figures, by the clock that scripts name; NULL: not given */
    const char *time_told;    /* how it came about */
    struct position position;
    struct bearing bearing;
};

/* Reads --position, --bearing and --time. False, with a problem, when one is wrong, has no
 * place in what is asked for, or is magnetic and the base's variation is not recorded. */
bool call_place_read(const struct options *options, const struct fleet *fleet,
                     struct call_place *place);

/* call_time.c: reads --time. */
bool call_time_read(const struct options *options, const struct fleet *fleet,
                    struct call_place *place);

/* A position in its three forms and as it is spoken, and what makes one doubt it (texts). */
struct position_told {
    const char *degrees, *minutes, *seconds, *say;
    bool of_another;
    struct json_list doubts;
};
struct position_told position_told_of(const struct call_place *place, const struct fleet *fleet);

/* The true bearing of a mark and the true direction from it, in three figures; NULL: the bearing
 * was not magnetic, or that is not recorded. */
struct bearing_told {
    const char *mark, *from_mark, *point, *magnetic, *variation, *variation_on, *say;
};
struct bearing_told bearing_told_of(const struct bearing *bearing, const struct fleet *fleet);

/* Adds all that is given of these, and the time, as text. */
void call_place_add(const struct call_place *place, const struct fleet *fleet,
                    struct text_builder *out);

#endif
