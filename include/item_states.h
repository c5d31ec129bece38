/* item_states.h - the states of each kind of gear, and where an entry tells how a hand brings
 * them about (room: record). The rows are in item_state_list.h. */
#ifndef MAYDECK_ITEM_STATES_H
#define MAYDECK_ITEM_STATES_H

#include <stdbool.h>

#include "arena.h"
#include "boat.h"
#include "end_state.h"
#include "item_fields.h"

/* Can such gear be brought into that state? Never into STATE_ANY. */
bool item_has_state(enum item_key item, enum end_state state);

/* The field that tells how; GEAR_FIELD_NONE: none does, or the item has no such state. */
enum gear_field item_state_field(enum item_key item, enum end_state state);

/* The first state of the item whose handling is in `how`. */
enum end_state item_use(enum item_key item);

/* Has it two contrary states in `how`, so that one text cannot be the handling of both? */
bool item_is_contrary(enum item_key item);

/* "shut, open, leave": the states it has. The second: those whose handling is in `how`. */
const char *item_states_joined(enum item_key item, struct arena *arena);
const char *item_handled_joined(enum item_key item, struct arena *arena);

/* How a hand brings this piece into the state; STATE_ANY: how it is used, of gear without
 * contrary states. NULL: nothing of that is recorded, or there is nothing to tell. */
const struct text_value *gear_handling_of(const struct equipment *gear, enum end_state state);

#endif
