/* spot_words.c - how far a spot's own words tell where in its zone a thing lies along the boat:
 * "ahead of mast", "aft face", or that it is
 * on both sides (room: compose). Words of the language of the set; where they tell
 * nothing the whole zone stands. */
#include "compose_room.h"

#include "text.h"

#include <string.h>

/* The rest of a spot behind one of the set's words, which it begins with; NULL: it does not.
 * Both are folded. */
static const char *behind_word(const struct composing *composing, enum word_set set,
                               const char *spot)
{
    const struct list_value *list = words_set(composing->in->words, set);
    const char *longest = NULL;
    for (size_t i = 0; i < list->count; i++) {
        const char *word = text_folded(composing->arena, list->items[i].text);
        const char *rest = text_begins(spot, word) ? spot + strlen(word) : NULL;
        bool ends = rest != NULL && (*rest == ' ' || *rest == ',' || *rest == '\0');
        if (ends && (longest == NULL || rest > longest))
            longest = rest;
    }
    return longest;
}

/* The zone whose name a text begins with, an article before it or not. */
static const struct zone *zone_named(const struct composing *composing, const char *text)
{
    while (*text == ' ')
        text++;
    const char *space = strchr(text, ' ');
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const char *name = text_folded(composing->arena,
                                       words_zone(composing->in->words, key));
        if (text_begins(text, name) || (space != NULL && text_begins(space + 1, name)))
            return zone_of(key);
    }
    return NULL;
}

static int zone_middle(const struct zone *zone)
{
    return (zone->from + zone->to) / 2;
}

/* Ahead of or abaft another zone, as far as the own one reaches. */
static bool beside_zone(const struct composing *composing, const char *spot,
                        struct stretch *stretch)
{
    const char *ahead = behind_word(composing, SET_AHEAD, spot);
    const char *abaft = behind_word(composing, SET_ABAFT, spot);
    const char *rest = ahead != NULL ? ahead : abaft;
    const struct zone *zone = rest == NULL ? NULL : zone_named(composing, rest);
    if (zone == NULL || zone_middle(zone) <= stretch->from || zone_middle(zone) >= stretch->to)
        return false;
    *(ahead != NULL ? &stretch->to : &stretch->from) = zone_middle(zone);
    return true;
}

struct stretch spot_stretch(const struct composing *composing, const struct zone *zone,
                            const struct text_value *spot)
{
    struct stretch stretch = {zone->from, zone->to};
    const char *text = spot == NULL ? NULL : text_for(spot, words_language(composing->in->words));
    if (text == NULL)
        return stretch;
    const char *folded = text_folded(composing->arena, text);
    if (beside_zone(composing, folded, &stretch))
        return stretch;
    int middle = zone_middle(zone);
    if (behind_word(composing, SET_FORE, folded) != NULL)
        stretch.to = middle;
    else if (behind_word(composing, SET_AFT, folded) != NULL)
        stretch.from = middle;
    return stretch;
}

bool spot_on_both_sides(const struct composing *composing, const struct text_value *spot)
{
    const char *text = spot == NULL ? NULL : text_for(spot, words_language(composing->in->words));
    const char *at = text == NULL ? "" : text_folded(composing->arena, text);
    while (*at != '\0') {
        if (behind_word(composing, SET_BOTH_SIDES, at) != NULL)
            return true;
        at += strcspn(at, " ");
        at += strspn(at, " ");
    }
    return false;
}
