/* survey.h - the survey: a sheet to walk round a boat with, in the order of the walk (room:
 * compose). It tells what is recorded of each piece, and asks for what is not. */
#ifndef MAYDECK_SURVEY_H
#define MAYDECK_SURVEY_H

#include "asked.h"
#include "compose.h"

/* The survey of the boat of the input, which may be one of survey_new_boat. */
const struct sheet_set *survey_compose(const struct compose_input *input, struct arena *arena,
                                       struct problems *problems);

/* A boat of which nothing is recorded but of which kind she is. Rig none: it may be any. */
const struct boat *survey_new_boat(enum hull hull, enum rig rig, struct arena *arena);

/* All gear of her kind that a new file asks for, in the order of the walk. */
struct asked_list survey_asked(const struct compose_input *input, struct arena *arena);

/* Does something have a use for the fact, and is it not recorded of the piece? Never said of how
 * it is worked. */
bool survey_lacks(const struct boat *boat, const struct asked_item *asked,
                  const struct equipment *gear, enum gear_field field);

#endif
