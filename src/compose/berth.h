/* berth.h - the line on what to do in a berth and at anchor. Private to src/compose. */
#ifndef MAYDECK_BERTH_H
#define MAYDECK_BERTH_H

#include "compose_room.h"

/* Adds the line to a card whose procedure has one. */
void berth_make(struct composing *composing, struct sheet *sheet);

/* A fact of the base that words name. One that is not recorded holds the card. */
const struct phrase *base_name_phrase(struct composing *composing, enum base_name name);

#endif
