/* nature.c - the natures of distress a set offers and the words for each
 * (room: radio). Symbols and order: Rec. ITU-R M.493; phrases: the standard
 * phrases for use at sea, first person. EPIRB emission (112) is left out: no
 * crew can choose it. Never says which nature an emergency has. */
#include "radio.h"

#include "text.h"

/* Collision has an open end: the script leaves a blank for what was hit. */
static const struct nature nature_rows[] = {
    {.symbol = 100, .key = "fire", .label = "Fire/explosion",
     .brief = WORD_NATURE_FIRE, .phrase = "I AM ON FIRE"},
    {.symbol = 101, .key = "flooding", .label = "Flooding",
     .brief = WORD_NATURE_FLOODING, .phrase = "I AM FLOODING"},
    {.symbol = 102, .key = "collision", .label = "Collision",
     .brief = WORD_NATURE_COLLISION, .phrase = "I HAVE COLLIDED WITH ..."},
    {.symbol = 103, .key = "grounding", .label = "Grounding",
     .brief = WORD_NATURE_GROUNDING, .phrase = "I AM AGROUND"},
    {.symbol = 104, .key = "listing", .label = "Listing/in danger of capsizing",
     .brief = WORD_NATURE_LISTING, .phrase = "I AM IN DANGER OF CAPSIZING"},
    {.symbol = 105, .key = "sinking", .label = "Sinking",
     .brief = WORD_NATURE_SINKING, .phrase = "I AM SINKING"},
    {.symbol = 106, .key = "adrift", .label = "Disabled and adrift",
     .brief = WORD_NATURE_ADRIFT, .phrase = "I AM NOT UNDER COMMAND, DRIFTING"},
    {.symbol = 107, .key = "undesignated", .label = "Undesignated distress",
     .brief = WORD_NATURE_UNDESIGNATED, .phrase = "I REQUIRE IMMEDIATE ASSISTANCE"},
    {.symbol = 108, .key = "abandon", .label = "Abandoning ship",
     .brief = WORD_NATURE_ABANDON, .phrase = "CREW MUST ABANDON VESSEL"},
    {.symbol = 109, .key = "piracy", .label = "Piracy/armed robbery attack",
     .brief = WORD_NATURE_PIRACY, .phrase = "I AM UNDER ATTACK BY PIRATES"},
    {.symbol = 110, .key = "mob", .label = "Man overboard",
     .brief = WORD_NATURE_MOB, .phrase = "I HAVE LOST PERSON OVERBOARD"},
};

const struct nature *nature_at(size_t index)
{
    return index < sizeof nature_rows / sizeof nature_rows[0] ? &nature_rows[index] : NULL;
}

const struct nature *nature_find(const char *key)
{
    for (size_t i = 0; nature_at(i) != NULL; i++)
        if (text_equal(nature_rows[i].key, key))
            return &nature_rows[i];
    return NULL;
}
