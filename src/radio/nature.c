/* nature.c - the natures of distress a set offers and the words for each
 * (room: radio). Symbols and order: Rec. ITU-R M.493; phrases: the standard
 * phrases for use at sea, first person. EPIRB emission (112) is left out: no
 * crew can choose it. Never says which nature an emergency has. */
#include "radio.h"

/* Collision has an open end: the script leaves a blank for what was hit. */
static const struct nature nature_rows[NATURE_COUNT] = {
    [NATURE_FIRE] = {.symbol = 100, .label = "Fire/explosion",
     .brief = "Fire/explosion", .phrase = "I AM ON FIRE"},
    [NATURE_FLOODING] = {.symbol = 101, .label = "Flooding",
     .brief = "Flooding", .phrase = "I AM FLOODING"},
    [NATURE_COLLISION] = {.symbol = 102, .label = "Collision",
     .brief = "Collision", .phrase = "I HAVE COLLIDED WITH ..."},
    [NATURE_GROUNDING] = {.symbol = 103, .label = "Grounding",
     .brief = "Grounding", .phrase = "I AM AGROUND"},
    [NATURE_LISTING] = {.symbol = 104, .label = "Listing/in danger of capsizing",
     .brief = "Listing/capsizing", .phrase = "I AM IN DANGER OF CAPSIZING"},
    [NATURE_SINKING] = {.symbol = 105, .label = "Sinking",
     .brief = "Sinking", .phrase = "I AM SINKING"},
    [NATURE_ADRIFT] = {.symbol = 106, .label = "Disabled and adrift",
     .brief = "Disabled and adrift", .phrase = "I AM NOT UNDER COMMAND, DRIFTING"},
    [NATURE_UNDESIGNATED] = {.symbol = 107, .label = "Undesignated distress",
     .brief = "Undesignated", .phrase = "I REQUIRE IMMEDIATE ASSISTANCE"},
    [NATURE_ABANDON] = {.symbol = 108, .label = "Abandoning ship",
     .brief = "Abandoning ship", .phrase = "CREW MUST ABANDON VESSEL"},
    [NATURE_PIRACY] = {.symbol = 109, .label = "Piracy/armed robbery attack",
     .brief = "Piracy/robbery", .phrase = "I AM UNDER ATTACK BY PIRATES"},
    [NATURE_MOB] = {.symbol = 110, .label = "Man overboard",
     .brief = "Man overboard", .phrase = "I HAVE LOST PERSON OVERBOARD"},
};

const struct nature *nature_of(enum nature_key key)
{
    return key == NATURE_NONE ? NULL : &nature_rows[key];
}
