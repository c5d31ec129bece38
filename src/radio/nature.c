/* nature.c - the natures of distress a set offers and the words for each
 * (room: radio). Symbols and order: Rec. ITU-R M.493; phrases: the standard
 * phrases for use at sea, first person. EPIRB emission (112) is left out: no
 * crew can choose it. Never says which nature an emergency has. */
#include "radio.h"

/* Collision has an open end: the script leaves a blank for what was hit. */
static const struct nature nature_rows[NATURE_COUNT] = {
    [NATURE_FIRE] = {.symbol = 100, .label = "Fire/explosion",
     .brief = WORD_NATURE_FIRE, .phrase = "I AM ON FIRE"},
    [NATURE_FLOODING] = {.symbol = 101, .label = "Flooding",
     .brief = WORD_NATURE_FLOODING, .phrase = "I AM FLOODING"},
    [NATURE_COLLISION] = {.symbol = 102, .label = "Collision",
     .brief = WORD_NATURE_COLLISION, .phrase = "I HAVE COLLIDED WITH ..."},
    [NATURE_GROUNDING] = {.symbol = 103, .label = "Grounding",
     .brief = WORD_NATURE_GROUNDING, .phrase = "I AM AGROUND"},
    [NATURE_LISTING] = {.symbol = 104, .label = "Listing/in danger of capsizing",
     .brief = WORD_NATURE_LISTING, .phrase = "I AM IN DANGER OF CAPSIZING"},
    [NATURE_SINKING] = {.symbol = 105, .label = "Sinking",
     .brief = WORD_NATURE_SINKING, .phrase = "I AM SINKING"},
    [NATURE_ADRIFT] = {.symbol = 106, .label = "Disabled and adrift",
     .brief = WORD_NATURE_ADRIFT, .phrase = "I AM NOT UNDER COMMAND, DRIFTING"},
    [NATURE_UNDESIGNATED] = {.symbol = 107, .label = "Undesignated distress",
     .brief = WORD_NATURE_UNDESIGNATED, .phrase = "I REQUIRE IMMEDIATE ASSISTANCE"},
    [NATURE_ABANDON] = {.symbol = 108, .label = "Abandoning ship",
     .brief = WORD_NATURE_ABANDON, .phrase = "CREW MUST ABANDON VESSEL"},
    [NATURE_PIRACY] = {.symbol = 109, .label = "Piracy/armed robbery attack",
     .brief = WORD_NATURE_PIRACY, .phrase = "I AM UNDER ATTACK BY PIRATES"},
    [NATURE_MOB] = {.symbol = 110, .label = "Man overboard",
     .brief = WORD_NATURE_MOB, .phrase = "I HAVE LOST PERSON OVERBOARD"},
};

const struct nature *nature_of(enum nature_key key)
{
    return key == NATURE_NONE ? NULL : &nature_rows[key];
}
