/* drafted.c - what a draft says in the place of a fact that nobody recorded (room: compose).
 * Each gives NULL for a final card, which waits for the fact or goes without it; a sheet that
 * says one of these bears the mark of a draft. */
#include "compose_room.h"

#include "item_fields.h"

const struct phrase *unrecorded(struct composing *composing)
{
    if (!composing->in->draft)
        return NULL;
    composing->drafted = true;
    return word_alone(composing, WORD_NOT_RECORDED);
}

const struct phrase *recorded_or_not(struct composing *composing, const struct phrase *recorded)
{
    return recorded != NULL ? recorded : unrecorded(composing);
}

const struct phrase *item_unrecorded(struct composing *composing, enum item_key item)
{
    if (fitted_judge(composing, item, NOTE_NOTHING) != TRUTH_UNKNOWN ||
        unrecorded(composing) == NULL)
        return NULL;
    if (item == ITEM_vhf_handheld)
        return word_alone(composing, WORD_DRAFT_HANDHELD);
    return phrase_word(composing->arena, WORD_DRAFT_FACT, "fact",
                       phrase_item(composing->arena, item), NULL);
}

const char *script_unrecorded(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    bool alerts = !by_handheld_only(boat) && boat->radio.dsc.answer != ANSWER_NO &&
                  boat->radio.mmsi_programmed.answer != ANSWER_NO;
    if (!composing->in->draft)
        return NULL;
    if (boat->radio.call_sign.text == NULL || (alerts && !dsc_ready(boat)))
        composing->drafted = true;
    return phrase_said(composing, word_alone(composing, WORD_NOT_RECORDED));
}

/* A place with two sides, and nothing that tells which. */
static bool lacks_side(const struct equipment *gear)
{
    return gear->place_side == SIDE_NONE && !gear->at.given && !gear->place_zone->narrow;
}

const struct phrase *gear_place_phrase(struct composing *composing, const struct equipment *gear,
                                       const struct text_value *spot)
{
    struct arena *arena = composing->arena;
    const struct phrase *place = place_phrase(composing, gear->place_zone, gear->place_side,
                                              NULL);
    const struct phrase *side = NULL;
    if (lacks_side(gear) && unrecorded(composing) != NULL)
        side = word_alone(composing, WORD_DRAFT_SIDE);
    return phrase_joined(arena, WORD_JOIN_COMMA, place, side, phrase_text(arena, spot));
}

const struct phrase *handling_unrecorded(struct composing *composing,
                                         const struct equipment *gear)
{
    return item_field(gear->kind->item, GEAR_how) == BELONGS_MUST ? unrecorded(composing) : NULL;
}

const struct phrase *persons_unrecorded(struct composing *composing,
                                        const struct equipment *gear)
{
    if (gear->kind->item != ITEM_liferaft || unrecorded(composing) == NULL)
        return NULL;
    return word_alone(composing, WORD_DRAFT_PERSONS);
}
