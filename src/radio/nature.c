/* nature.c - the natures of distress a set offers and the words for each
 * (room: radio). Symbols and order: Rec. ITU-R M.493; phrases: the standard
 * phrases for use at sea, first person. EPIRB emission (112) is left out: no
 * crew can choose it. Never says which nature an emergency has. */
#include "radio.h"

#include "text.h"

/* Collision has an open end: the script leaves a blank for what was hit. */
static const struct nature nature_rows[] = {
    {.symbol = 100, .key = "fire", .label = "Fire/explosion",
     .brief = "Fire/explosion", .phrase = "I AM ON FIRE"},
    {.symbol = 101, .key = "flooding", .label = "Flooding",
     .brief = "Flooding", .phrase = "I AM FLOODING"},
    {.symbol = 102, .key = "collision", .label = "Collision",
     .brief = "Collision", .phrase = "I HAVE COLLIDED WITH ..."},
    {.symbol = 103, .key = "grounding", .label = "Grounding",
     .brief = "Grounding", .phrase = "I AM AGROUND"},
    {.symbol = 104, .key = "listing", .label = "Listing/in danger of capsizing",
     .brief = "Listing/capsizing", .phrase = "I AM IN DANGER OF CAPSIZING"},
    {.symbol = 105, .key = "sinking", .label = "Sinking",
     .brief = "Sinking", .phrase = "I AM SINKING"},
    {.symbol = 106, .key = "adrift", .label = "Disabled and adrift",
     .brief = "Disabled and adrift", .phrase = "I AM NOT UNDER COMMAND, DRIFTING"},
    {.symbol = 107, .key = "undesignated", .label = "Undesignated distress",
     .brief = "Undesignated", .phrase = "I REQUIRE IMMEDIATE ASSISTANCE"},
    {.symbol = 108, .key = "abandon", .label = "Abandoning ship",
     .brief = "Abandoning ship", .phrase = "CREW MUST ABANDON VESSEL"},
    {.symbol = 109, .key = "piracy", .label = "Piracy/armed robbery attack",
     .brief = "Piracy/robbery", .phrase = "I AM UNDER ATTACK BY PIRATES"},
    {.symbol = 110, .key = "mob", .label = "Man overboard",
     .brief = "Man overboard", .phrase = "I HAVE LOST PERSON OVERBOARD"},
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
