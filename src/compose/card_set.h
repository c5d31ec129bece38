/* card_set.h - which cards a set has, and the index of them: what these files share. Private to
 * src/compose. */
#ifndef MAYDECK_CARD_SET_H
#define MAYDECK_CARD_SET_H

#include "compose_room.h"

/* cards_chosen.c */

/* The word by which the base or the boat leaves its card out; NULL: nobody does. And where that
 * stands: "left out by base.yaml, line 12". */
const struct text_value *card_left_out(const struct compose_input *in,
                                       const struct procedure *procedure);
const char *left_out_reason(const struct text_value *where, struct arena *arena);

/* Tells that the card being made leads to the card of that procedure, which is left out, and holds
 * it; false: it is not left out. */
bool left_out_tell(struct composing *composing, const char *key);

/* base_cards.c: the nearest key of a card, and which there are. */
const char *card_key_remedy(const struct procedure_set *procedures, const char *card,
                            struct arena *arena);

/* compose_set.c */

/* The name of a card before it is known whether the boat has it. */
const char *procedure_name(struct composing *composing, const struct procedure *procedure);

/* Of a card that each engine space has one of, on a boat with several: "PORT ENGINE"; NULL of all
 * others. */
const struct phrase *slot_space_phrase(const struct composing *composing,
                                       const struct slot *slot);

/* The card of the distress call; NULL: the set has none. (boxes.c) */
const struct slot *distress_slot(const struct composing *composing);

/* seen_index.c: which card to take by what one sees, hears or smells first, of all cards of the
 * set that are printed (`others` are its sheets); and the line above it. */
void seen_make(struct composing *composing, struct sheet *sheet,
               const struct sheet_list *others);
const struct cases_facts *seen_call_line(struct composing *composing, const struct sheet *sheet,
                                         const struct sheet_list *others);

#endif
