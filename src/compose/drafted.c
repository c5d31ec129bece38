/* drafted.c - what a draft says in the place of a fact that nobody recorded (room: compose).
 * Each gives NULL for a final card, which waits for the fact or goes without it; a sheet that
 * says one of these bears the mark of a draft. */
#include "compose_room.h"

#include "item_fields.h"
#include "item_states.h"

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

/* A place with two sides, and nothing that tells which; nor a spot, which is more exact. */
static bool lacks_side(const struct equipment *gear, const struct text_value *spot)
{
    const struct zone *zone = worked_zone(gear);
    bool marked = gear->at.given && zone == gear->place_zone;
    bool spotted = spot != NULL && spot->text != NULL;
    return worked_side(gear) == SIDE_NONE && !marked && !spotted && !zone->narrow;
}

const struct phrase *side_unrecorded(struct composing *composing, const struct equipment *gear,
                                     const struct text_value *spot)
{
    if (!lacks_side(gear, spot) || unrecorded(composing) == NULL)
        return NULL;
    return word_alone(composing, WORD_DRAFT_SIDE);
}

const struct phrase *gear_place_phrase(struct composing *composing, const struct equipment *gear,
                                       const struct text_value *spot)
{
    struct arena *arena = composing->arena;
    const struct phrase *place = place_phrase(composing, worked_zone(gear), worked_side(gear),
                                              NULL);
    return phrase_joined(arena, WORD_JOIN_COMMA, place, side_unrecorded(composing, gear, spot),
                         phrase_text(arena, spot));
}

const struct phrase *handling_unrecorded(struct composing *composing,
                                         const struct equipment *gear, enum end_state state)
{
    enum item_key item = gear->kind->item;
    bool told_in_how = state == STATE_ANY ? !item_is_contrary(item)
                                          : item_state_field(item, state) == GEAR_how;
    bool asked = told_in_how && item_field(item, GEAR_how) == BELONGS_MUST;
    return asked ? unrecorded(composing) : NULL;
}

const struct phrase *persons_unrecorded(struct composing *composing,
                                        const struct equipment *gear)
{
    if (gear->kind->item != ITEM_liferaft || unrecorded(composing) == NULL)
        return NULL;
    return word_alone(composing, WORD_DRAFT_PERSONS);
}
