/* brief_changes.h - what her cards say otherwise since the last charter (room: app). Private to
 * src/app. */
#ifndef MAYDECK_BRIEF_CHANGES_H
#define MAYDECK_BRIEF_CHANGES_H

#include "app.h"
#include "brief.h"
#include "fleet.h"

/* Gives the hire of the fleet what the register of the base has, where there is one and --since is
 * told. What is wrong with it is in the problems of the fleet. */
void hire_register_take(const struct options *options, struct fleet *fleet);

/* The hire of the input with what is otherwise on these cards of hers than on those that hung on
 * the day since when it is told: each reason once, with the number of the first card it is on. */
const struct hire *hire_with_changes(const struct compose_input *input,
                                     const struct sheet_set *cards, struct arena *arena);

#endif
