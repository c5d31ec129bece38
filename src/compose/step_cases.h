/* step_cases.h - which case of a step is taken on this boat. Private to src/compose. */
#ifndef MAYDECK_STEP_CASES_H
#define MAYDECK_STEP_CASES_H

#include "compose_room.h"

/* The first case that holds; NULL: none does. Where a case cannot be decided, later ones are not
 * tried, and `undecided` is what it asks: the card waits, and a draft shows the step's own
 * words. */
const struct step_case *case_take(struct composing *composing,
                                  const struct procedure_step *step,
                                  const struct condition **undecided);

#endif
