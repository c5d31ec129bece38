/* judging.h - what is so on one boat, as one of her cards asks it: conditions of
 * procedures, gear that the card concerns, how far one goes for it (room: compose).
 * The answers are those that composing the card rests on: whoever explains a card
 * asks here and never decides anew. */
#ifndef MAYDECK_JUDGING_H
#define MAYDECK_JUDGING_H

#include "compose.h"

/* The state of composing one card; what it holds is compose's own. */
struct composing;

/* The state in which `sheet`, one of `set`, was composed from `input`, all of which
 * must outlive it. It collects problems and missing facts of its own: nothing of them
 * reaches the run's. In `arena`; cannot fail. */
struct composing *composing_again(const struct compose_input *input, const struct sheet_set *set,
                                  const struct sheet *sheet, struct arena *arena);

/* What holds `sheet` back, the sheet of that state: it is composed once more, alone.
 * The list, sorted as problems are, has `*count` entries and belongs to the state; how to
 * mend them stands in the run's own problems, where proposed tags are kept apart over
 * all cards. */
const struct problem *card_held_by(struct composing *composing, const struct sheet *sheet,
                                   size_t *count);

/* ---- conditions ---- */

enum truth { TRUTH_NO, TRUTH_YES, TRUTH_UNKNOWN };

/* Does the condition hold for this boat and this card's engine space? Facts that
 * keep it from being decided are noted as missing and hold the card. A NULL
 * condition holds. */
enum truth condition_judge(struct composing *composing, const struct condition *condition);

/* The same, but nothing is noted: for asking of a part what need not hold the card. */
enum truth condition_truth(struct composing *composing, const struct condition *condition);

/* May this piece of gear stand under a step taken on this condition? False when
 * the condition asks of this item something that this very piece lacks. */
bool condition_admits(const struct composing *composing, const struct condition *condition,
                      const struct equipment *gear);

/* Is the gear inside the burning space of this card? */
enum truth gear_inside(const struct composing *composing, const struct equipment *gear,
                       const enum zone_key *zones, size_t count);

/* Does it cut the other item off? Not recorded counts as yes. */
bool gear_cuts(const struct equipment *gear, enum item_key other);

/* The words that are for this boat: the first whose condition holds; NULL when a fact is
 * missing that decides, or the list is empty. */
const struct said *said_take(struct composing *composing, const struct said_list *list);

/* ---- gear ---- */

/* Is the item asked of that engine space in particular? On a boat with two a card of one
 * asks of its own; another card asks of both, for kinds that each engine has. */
bool space_asked(const struct composing *composing, enum item_key item, enum zone_key space);

/* The gear of one kind that this card concerns: the first at or after *index;
 * NULL when there is no more. */
const struct equipment *gear_next(const struct composing *composing, enum item_key item,
                                  size_t *index);

/* How far one goes for it; not recorded counts as below. */
enum reach gear_reach(const struct equipment *gear);

/* The same on the card being made: gear in a locker where its vapour lies is out of
 * reach, and so is a radio that may stand in its charger where there is vapour. */
enum reach reach_here(const struct composing *composing, const struct equipment *gear);

/* Is the card being made about a boat that lies on her side or upside down? Then only gear that
 * is recorded as reached so is reached. */
bool lies_inverted(const struct composing *composing);

/* May there be what the card being made takes vapour from? Not recorded counts as there. */
bool vapour_about(const struct composing *composing);

/* Is it within this reach, and not inside the space that the card is about? */
bool gear_within(const struct composing *composing, const struct equipment *gear,
                 enum reach reach);

/* ---- the boat ---- */

/* Has she no fixed radio, as the record declares? Then only a handheld can call. */
bool by_handheld_only(const struct boat *boat);

#endif
