/* call_operate.c - the left side of the call panel: how to work what this boat has to call
 * with, from its record, and what else calls for help (room: compose). Never says what is
 * to be said. */
#include "call_room.h"

static bool fitted(struct composing *composing, enum item_key item, struct place place)
{
    struct condition condition = {.kind = CONDITION_FITTED, .item = item, .place = place};
    return condition_judge(composing, &condition) == TRUTH_YES;
}

const struct equipment *call_first_gear(const struct composing *composing, enum item_key item)
{
    size_t index = 0;
    return gear_next(composing, item, &index);
}

const struct phrase *handheld_drafted(struct composing *composing)
{
    return fitted(composing, ITEM_vhf_handheld, composing->in->boat->place)
               ? NULL : item_unrecorded(composing, ITEM_vhf_handheld);
}

/* The first piece that is no farther away; NULL: none. */
static const struct equipment *first_within(const struct composing *composing, enum item_key item,
                                            enum reach most)
{
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;)
        if (reach_here(composing, gear) <= most)
            return gear;
    return NULL;
}

/* The handheld that may be taken without going into vapour or smoke. */
const struct equipment *handheld_at_hand(const struct composing *composing)
{
    return first_within(composing, ITEM_vhf_handheld, REACH_DECK);
}

/* Of several handhelds the one that is reached without going below. */
static const struct equipment *handheld_best(const struct composing *composing)
{
    const struct equipment *at_hand = handheld_at_hand(composing);
    return at_hand != NULL ? at_hand : call_first_gear(composing, ITEM_vhf_handheld);
}

/* Zone and side: the spot stands on the gear's own row and on the plan. */
const struct phrase *call_gear(struct composing *composing, enum word word,
                               const struct equipment *gear)
{
    marker_add(composing, gear);
    return phrase_word(composing->arena, word, "tag",
                       phrase_verbatim(composing->arena, gear->tag.text), "place",
                       gear_place_phrase(composing, gear, NULL), NULL);
}

static void power_line(struct composing *composing, struct call_lines *lines)
{
    const struct text_value *recorded = &composing->in->boat->radio.power_switch;
    const struct phrase *power = recorded_or_not(composing,
                                                 phrase_text(composing->arena, recorded));
    if (power == NULL)
        call_act_word_add(composing, lines, WORD_SET_ON_PLAIN, composing->in->boat->radio_place);
    else
        call_act_add(composing, lines,
                     phrase_word(composing->arena, WORD_SET_ON, "switch", power, NULL),
                     said_place(composing, recorded));
}

/* The red key, as this set has it. */
static const struct phrase *key_pressed(struct composing *composing)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    struct arena *arena = composing->arena;
    const struct phrase *cover = recorded_or_not(composing,
                                                 phrase_text(arena, &radio->distress_key));
    const struct phrase *seconds = radio->hold_s.given
                                       ? phrase_verbatim(arena, radio->hold_s.text)
                                       : unrecorded(composing);
    if (cover == NULL)
        cover = word_alone(composing, WORD_SET_KEY_PLAIN);
    if (seconds == NULL)
        return phrase_word(arena, WORD_SET_KEY_NO_HOLD, "cover", cover, NULL);
    return phrase_word(arena, WORD_SET_KEY, "cover", cover, "seconds", seconds, NULL);
}

/* Only where a DSC alert can be sent; where the card knows a milder call too, for MAYDAY. */
static void key_line(struct composing *composing, struct call_lines *lines,
                     const struct calling *calling)
{
    const struct phrase *press = key_pressed(composing);
    if (calling->other)
        press = phrase_word(composing->arena, WORD_MAYDAY_ONLY, "what", press, NULL);
    call_act_add(composing, lines, press,
                 said_place(composing, &composing->in->boat->radio.distress_key));
}

/* Without a fixed set the handheld is the radio that is worked. */
static void handheld_lines(struct composing *composing, struct call_lines *lines)
{
    struct place origin = composing->in->boat->place;
    const struct phrase *first = handheld_drafted(composing);
    if (first == NULL && !fitted(composing, ITEM_vhf_handheld, origin))
        return;
    if (first == NULL)
        first = call_gear(composing, WORD_SET_HANDHELD_FIRST, handheld_best(composing));
    call_act_add(composing, lines, first, origin);
    call_act_word_add(composing, lines, WORD_SET_CHANNEL_HANDHELD, origin);
    call_act_word_add(composing, lines, WORD_SET_TALK, origin);
}

static const struct phrase *channel_set(struct composing *composing)
{
    return phrase_word(composing->arena, WORD_SET_CHANNEL, "channel",
                       phrase_verbatim(composing->arena,
                                       composing->in->base->centre_channel.text), NULL);
}

/* Where nobody recorded whether the set can alert, a draft says that. */
static enum word no_alert_word(struct composing *composing)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    bool declared = radio->dsc.answer == ANSWER_NO ||
                    radio->mmsi_programmed.answer == ANSWER_NO;
    return declared || unrecorded(composing) == NULL ? WORD_SET_NO_DSC : WORD_DRAFT_DSC;
}

static void set_lines(struct composing *composing, struct call_lines *lines,
                      const struct calling *calling)
{
    struct place origin = composing->in->boat->radio_place;
    bool alert = dsc_ready(composing->in->boat);
    if (!fitted(composing, ITEM_vhf_dsc, origin)) {
        const struct phrase *drafted = item_unrecorded(composing, ITEM_vhf_dsc);
        call_line_add(composing, lines,
                      drafted != NULL ? drafted : word_alone(composing, WORD_SET_NO_FIXED), origin);
        handheld_lines(composing, lines);
        return;
    }
    marker_add(composing, call_first_gear(composing, ITEM_vhf_dsc));
    power_line(composing, lines);
    if (calling->mayday && alert)
        key_line(composing, lines, calling);
    call_act_add(composing, lines, channel_set(composing), origin);
    call_act_word_add(composing, lines, WORD_SET_TALK, origin);
    if (calling->mayday && !alert)
        call_word_add(composing, lines, no_alert_word(composing), origin);
}

/* Where the set cannot be had, nobody goes through smoke or water for another. */
static void second_station_line(struct composing *composing, struct call_lines *lines)
{
    struct place origin = composing->in->boat->place;
    const struct phrase *drafted = handheld_drafted(composing);
    const struct equipment *handheld = NULL;
    if (fitted(composing, ITEM_vhf_handheld, origin))
        handheld = first_within(composing, ITEM_vhf_handheld, REACH_COMPANIONWAY);
    if (drafted != NULL && lines->acts.count > 0 &&
        call_first_gear(composing, ITEM_vhf_dsc) == NULL)
        return;    /* it was the first thing to take */
    const struct phrase *line = drafted;
    if (line == NULL)
        line = handheld != NULL ? call_gear(composing, WORD_SET_HANDHELD, handheld)
                                : word_alone(composing, WORD_SET_HANDHELD_NONE);
    call_line_put(composing, lines->after, line, origin);
}

/* The best piece that may be fetched; NULL: none, or none is fitted. */
static const struct equipment *fetched(struct composing *composing, enum item_key item,
                                       const struct calling *calling)
{
    if (!fitted(composing, item, composing->in->boat->place))
        return NULL;
    const struct equipment *at_hand = first_within(composing, item, REACH_DECK);
    return at_hand != NULL ? at_hand : first_within(composing, item, calling->most);
}

/* A way to be heard by that gear; NULL: there is none. */
struct way { enum word word; enum item_key item; };

static const struct phrase *then_use(struct composing *composing, const struct way *way,
                                     const struct equipment *gear)
{
    return gear == NULL ? item_unrecorded(composing, way->item)
                        : call_gear(composing, way->word, gear);
}

/* The ways to be heard, one after another, where nobody answers. */
static const struct phrase *no_answer_ways(struct composing *composing,
                                           const struct calling *calling,
                                           const struct equipment *epirb)
{
    const struct phrase *ways[4] = {word_alone(composing, WORD_NO_ANSWER)};
    const struct equipment *handheld = NULL;
    if (!calling->from_deck && !by_handheld_only(composing->in->boat))
        handheld = fetched(composing, ITEM_vhf_handheld, calling);
    if (handheld != NULL)
        ways[1] = call_gear(composing, WORD_THEN_HANDHELD, handheld);
    if (calling->mayday && (epirb == NULL || !base_beyond_a1(composing->in->base)))
        ways[2] = then_use(composing, &(struct way){WORD_THEN_EPIRB, ITEM_epirb}, epirb);
    if (calling->mayday && epirb == NULL && ways[2] == NULL && !calling->from_deck)
        ways[3] = then_use(composing, &(struct way){WORD_THEN_FLARES, ITEM_flares},
                           fetched(composing, ITEM_flares, calling));
    return phrase_list(composing->arena, WORD_JOIN_COMMA, ways, sizeof ways / sizeof *ways);
}

static void no_answer_line(struct composing *composing, struct call_lines *lines,
                           const struct calling *calling)
{
    struct place origin = composing->in->boat->place;
    const struct equipment *epirb =
        calling->mayday ? fetched(composing, ITEM_epirb, calling) : NULL;
    const struct phrase *ways = no_answer_ways(composing, calling, epirb);
    if (epirb != NULL && base_beyond_a1(composing->in->base))
        call_line_add(composing, lines, call_gear(composing, WORD_BEACON_FIRST, epirb), origin);
    call_line_put(composing, lines->after,
                  phrase_word(composing->arena, WORD_NO_ANSWER_WAYS, "ways", ways, NULL), origin);
}

/* Who leaves the boat cannot stay on deck. */
static enum word upwind_word(const struct calling *calling)
{
    return calling->from == CALL_FROM_HANDHELD_CARRIED ? WORD_SET_UPWIND : WORD_SET_DECK;
}

/* ---- without a radio ---- */

/* A line about gear that is for a MAYDAY alone where the card knows two signals. */
static void distress_means_add(struct composing *composing, struct call_lines *lines,
                               const struct way *way, const struct calling *calling)
{
    const struct equipment *gear = fetched(composing, way->item, calling);
    const struct phrase *line = then_use(composing, way, gear);
    if (line == NULL)
        return;
    if (calling->other)
        line = phrase_word(composing->arena, WORD_MAYDAY_ONLY, "what", line, NULL);
    call_line_add(composing, lines, line, gear == NULL ? composing->in->boat->place : gear->place);
}

/* A handheld that lies where the vapour is stays there. */
static void handheld_left_line(struct composing *composing, struct call_lines *lines)
{
    const struct equipment *handheld = call_first_gear(composing, ITEM_vhf_handheld);
    if (handheld != NULL)
        call_line_add(composing, lines,
                      phrase_word(composing->arena, WORD_SET_HANDHELD_BELOW, "tag",
                                  phrase_verbatim(composing->arena, handheld->tag.text), NULL),
                      handheld->place);
}

static enum word phone_word(const struct calling *calling)
{
    if (calling->from_deck)
        return WORD_PHONE_UPWIND;
    return calling->apart ? WORD_PHONE_CENTRE_BELOW : WORD_PHONE_CENTRE;
}

/* What is left to those who cannot call: beacon, phone, flares, sound; with vapour about
 * only what makes neither spark nor flame there. */
static void no_radio_lines(struct composing *composing, struct call_lines *lines,
                           const struct calling *calling)
{
    struct place origin = composing->in->boat->place;
    bool deck = calling->from_deck;
    if (deck) {
        handheld_left_line(composing, lines);
        call_word_add(composing, lines, upwind_word(calling), origin);
    }
    if (calling->mayday)
        distress_means_add(composing, lines,
                           &(struct way){deck ? WORD_BEACON_UPWIND : WORD_BEACON_NOW,
                                         ITEM_epirb}, calling);
    call_word_add(composing, lines, phone_word(calling), origin);
    if (calling->mayday && !deck)
        distress_means_add(composing, lines, &(struct way){WORD_FLARES_NOW, ITEM_flares},
                           calling);
    call_word_add(composing, lines, WORD_WAVE_WHISTLE, origin);
}

/* ---- from deck, where there is vapour or nobody may go below ---- */

static void leave_fixed_line(struct composing *composing, struct call_lines *lines)
{
    if (!by_handheld_only(composing->in->boat))
        call_word_add(composing, lines, WORD_SET_LEAVE_FIXED, composing->in->boat->place);
}

static void deck_lines(struct composing *composing, struct call_lines *lines,
                       const struct calling *calling)
{
    struct place origin = composing->in->boat->place;
    const struct equipment *at_hand = handheld_at_hand(composing);
    const struct phrase *drafted = handheld_drafted(composing);
    if (drafted != NULL)
        call_act_add(composing, lines, drafted, origin);
    else if (at_hand != NULL)
        call_act_add(composing, lines, call_gear(composing, WORD_SET_HANDHELD_FIRST, at_hand),
                     at_hand->place);
    else
        call_act_word_add(composing, lines, WORD_SET_HANDHELD_CARRIED, origin);
    call_act_word_add(composing, lines, upwind_word(calling), origin);
    call_act_word_add(composing, lines, WORD_SET_CHANNEL_HANDHELD, origin);
    call_act_word_add(composing, lines, WORD_SET_TALK, origin);
}

/* ---- the panel's left side ---- */

/* Where the fixed set stands in the smoke, or who works it must leave the deck. */
static void before_fixed_lines(struct composing *composing, struct call_lines *lines,
                               const struct calling *calling)
{
    const struct equipment *set = call_first_gear(composing, ITEM_vhf_dsc);
    const struct equipment *handheld = handheld_at_hand(composing);
    const struct equipment *worked = set != NULL || handheld != NULL
                                         ? set : call_first_gear(composing, ITEM_vhf_handheld);
    if (calling->from == CALL_FROM_DECK_FIRST && handheld != NULL && set != NULL)
        call_line_add(composing, lines, call_gear(composing, WORD_SET_DECK_FIRST, handheld),
                      handheld->place);
    if (calling->from == CALL_FROM_FIXED_IN_FIRE && worked != NULL &&
        reach_here(composing, worked) > REACH_DECK)
        call_word_add(composing, lines, WORD_SET_OUTSIDE_SMOKE, worked->place);
}

static void fixed_lines(struct composing *composing, struct call_lines *lines,
                        const struct calling *calling)
{
    before_fixed_lines(composing, lines, calling);
    set_lines(composing, lines, calling);
    if (calling->from == CALL_FROM_DECK_FIRST)
        return;
    if (!by_handheld_only(composing->in->boat) ||
        boat_fitted(composing->in->boat, ITEM_vhf_handheld) != ANSWER_YES)
        second_station_line(composing, lines);
}

/* What the set's own panel says, a line each. */
struct operating operate_lines(struct composing *composing, const struct calling *calling)
{
    struct call_line_list after = {0};
    struct call_lines lines = {.after = &after};
    if (!calling->apart)
        lines.after = &lines.all;
    if (!calling->can_call)
        no_radio_lines(composing, &lines, calling);
    else if (calling->from_deck)
        deck_lines(composing, &lines, calling);
    else
        fixed_lines(composing, &lines, calling);
    if (calling->from_deck)
        leave_fixed_line(composing, &lines);
    if (calling->can_call)
        no_answer_line(composing, &lines, calling);
    return (struct operating){lines.all.at, lines.acts.at, after.at, lines.all.count,
                              lines.acts.count, after.count, lines.act_first};
}
