/* trait.h - what a boat is, as far as her cards hang on it: her hull, what moves her, what
 * she burns (room: record). Adding a trait is adding a row here and its judging in
 * src/record/boat_traits.c. */
#ifndef MAYDECK_TRAIT_H
#define MAYDECK_TRAIT_H

#include "boat.h"

/* TRAIT(name in C, word in procedures, sentence, what it counts as where it is not recorded:
 * the answer with which a card does less harm). */
#define TRAIT_LIST(TRAIT) \
    TRAIT(TRAIT_MONOHULL, "monohull", "she is a monohull", NO) \
    TRAIT(TRAIT_CATAMARAN, "catamaran", "she is a catamaran", NO) \
    TRAIT(TRAIT_TRIMARAN, "trimaran", "she is a trimaran", NO) \
    TRAIT(TRAIT_SAIL, "sail", "she has sails", NO) \
    TRAIT(TRAIT_CABIN, "cabin", "she has rooms below", YES) \
    TRAIT(TRAIT_GALLEY, "cooking", "people cook aboard", YES) \
    TRAIT(TRAIT_GAS, "gas", "she carries cooking gas", YES) \
    TRAIT(TRAIT_DSC, "dsc", "she can send a digital alert", YES) \
    TRAIT(TRAIT_RED_KEY, "red_key", "the red key of her fixed set sends an alert", NO) \
    TRAIT(TRAIT_DIESEL, "diesel", "diesel is burned aboard", YES) \
    TRAIT(TRAIT_PETROL, "petrol", "she carries petrol", YES) \
    TRAIT(TRAIT_PETROL_TANK, "petrol_tank", "an engine inside her burns petrol", NO) \
    TRAIT(TRAIT_ELECTRIC, "electric", "an electric motor drives her", NO) \
    TRAIT(TRAIT_ENGINE, "engine", "an engine drives her", YES) \
    TRAIT(TRAIT_OUTBOARD, "outboard", "an outboard drives her", NO) \
    TRAIT(TRAIT_JET, "jet", "a jet drives her", NO) \
    TRAIT(TRAIT_GENERATOR, "generator", "she has a generator", YES) \
    TRAIT(TRAIT_GENERATOR_ALONE, "generator_alone", "only a generator burns fuel there", NO) \
    TRAIT(TRAIT_TWO_ENGINES, "two_engines", "two engines or more drive her", NO) \
    TRAIT(TRAIT_DINGHY_FOR_ALL, "dinghy_for_all", "her dinghy holds all whom she may carry", NO) \
    TRAIT(TRAIT_CUTTERS_FIT, "cutters_fit", "her cutters cut her thickest wire", NO) \
    TRAIT(TRAIT_LAY_DOWN, "lay_down_place", "where a person is laid down is recorded", NO) \
    TRAIT(TRAIT_SECOND_STATION, "second_station", "one speaks by her fixed set on deck", NO) \
    TRAIT(TRAIT_DRAUGHT, "draught", "her draught is recorded", NO) \
    TRAIT(TRAIT_OTHER_ENGINE, "other_engine", "another engine drives her from elsewhere", NO)

enum trait {
    TRAIT_NONE,
#define TRAIT_ENUM(name, ...) name,
    TRAIT_LIST(TRAIT_ENUM)
#undef TRAIT_ENUM
    TRAIT_COUNT
};

/* Their words, NULL-ended, each at its value less one. */
extern const char *const trait_words[];

/* "she carries cooking gas" */
const char *trait_sentence(enum trait trait);

/* What her record says of it, and the place of the fact that says so, or where it would
 * stand. `space`: of the engines in that space alone; ZONE_NONE: of the boat. */
struct trait_fact { enum answer recorded; struct place place; };
struct trait_fact boat_trait(const struct boat *boat, enum trait trait, enum zone_key space);

/* The same, not recorded being taken for the answer with which a card does less harm. */
bool boat_is(const struct boat *boat, enum trait trait, enum zone_key space);

/* What no boat has that is known to lack this: gear of a generator without a generator.
 * TRAIT_NONE: any boat may have it. */
enum trait item_needs_trait(enum item_key item);

/* Is it known of her that she cannot have the item? */
bool boat_cannot_have(const struct boat *boat, enum item_key item);

#endif
