/* hazard_words.c - the words of hazards, acts and guards, as procedures and bases write them (room:
 * record). */
#include "hazard.h"

const char *const hazard_words[] = {HAZARD_LIST(CHOICE_WORD) NULL};
const char *const act_words[] = {ACT_LIST(CHOICE_WORD) NULL};
const char *const guard_words[] = {GUARD_LIST(CHOICE_WORD) NULL};
