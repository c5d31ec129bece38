/* asked.h - what a set of procedures asks a boat's record for (room: procedure). It
 * never looks at a boat. */
#ifndef MAYDECK_ASKED_H
#define MAYDECK_ASKED_H

#include "procedure.h"
#include "starter.h"

/* Every item that the procedures name in uses, also or a condition, each once, in
 * the order of a walk by usual zones: the deck from stern to bow, then below from
 * the companionway forward, then aft. What only a boat of another hull is
 * asked is left out; HULL_NONE: nothing is. */
struct asked_list asked_items(const struct procedure *const *procedures, size_t count,
                              enum hull hull, struct arena *arena);

/* The same with every other item of the register that such a boat may have: what a new file
 * offers, since checks, dates and figures ask for more than procedures do. */
struct asked_list items_offered(const struct procedure *const *procedures, size_t count,
                                enum hull hull, struct arena *arena);

/* Must the procedure know whether a boat has the item before its card may be printed? So it
 * is where a step uses it, where a condition asks for it (not under `surely`), and where
 * must_know names it. Gear that a step only shows `also` is none of these: a card goes
 * without it. */
bool procedure_needs(const struct procedure *procedure, enum item_key item);

#endif
