/* call_set.c - the radio that is spoken by, act by act: its switch, its red key, the channel, and
 * what one does while speaking (room: compose). What the record lacks is said in plain words. */
#include "call_room.h"

#include "reading.h"
#include "text.h"

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

/* ---- the red key ---- */

/* As this set has it. */
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

bool handheld_alerts(const struct ladder *ladder, const struct equipment *handheld)
{
    return ladder->calling->mayday && handheld != NULL &&
           ladder->calling->from != CALL_FROM_HANDHELD &&
           ladder->calling->from != CALL_FROM_HANDHELD_CARRIED &&
           handheld->dsc.answer == ANSWER_YES && !text_empty(handheld->mmsi.text);
}

static void key_line(struct composing *composing, struct call_lines *lines,
                     const struct ladder *ladder, const struct rung *worked)
{
    const struct phrase *press = NULL;
    struct place origin = said_place(composing, &composing->in->boat->radio.distress_key);
    if (worked->means == MEANS_FIXED_SET && ladder_rung(ladder, MEANS_RED_KEY) != NULL)
        press = key_pressed(composing);
    if (is_handheld(worked->means) && handheld_alerts(ladder, worked->gear)) {
        press = word_alone(composing, WORD_SET_KEY_HANDHELD);
        origin = worked->gear->place;
    }
    if (press != NULL)
        call_act_add(composing, lines, for_mayday(composing, ladder->calling, press), origin);
}

/* A set that has a key which sends nothing; where nobody recorded it, a draft says that. */
static void no_key_line(struct composing *composing, struct call_lines *lines,
                        const struct ladder *ladder, const struct rung *worked)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    bool declared = radio->dsc.answer == ANSWER_NO ||
                    radio->mmsi_programmed.answer == ANSWER_NO;
    if (worked->means != MEANS_FIXED_SET || !ladder->calling->mayday ||
        ladder_rung(ladder, MEANS_RED_KEY) != NULL)
        return;
    if (!declared && unrecorded(composing) != NULL)
        call_word_add(composing, lines, WORD_DRAFT_DSC, composing->in->boat->radio_place);
    else if (radio->dsc.answer == ANSWER_YES)
        call_word_add(composing, lines, WORD_SET_KEY_DEAD, composing->in->boat->radio_place);
}

/* ---- the position ---- */

/* An alert that is not known to bear the position bears none. */
static void position_say_line(struct composing *composing, struct call_lines *lines,
                              const struct ladder *ladder)
{
    const struct answer_value *gnss = &composing->in->boat->radio.gnss;
    if (ladder_rung(ladder, MEANS_RED_KEY) != NULL && gnss->answer != ANSWER_YES)
        call_line_add(composing, lines,
                      for_mayday(composing, ladder->calling,
                                 word_alone(composing, WORD_SAY_POSITION)),
                      place_or(gnss->place, composing->in->boat->radio_place));
}

/* Where the position is read: on a piece of gear, or at a place in words. Who is at the set sees
 * that it is read there: only the distress card has room to say so. */
static const struct phrase *position_line_phrase(struct composing *composing,
                                                 const struct calling *calling)
{
    const struct text_value *at = &composing->in->boat->radio.position_read_at;
    const struct equipment *gear = gear_of_tag(composing->in->boat, at->text);
    const struct phrase *place = phrase_text(composing->arena, at);
    if (gear != NULL && gear->item.value != ITEM_vhf_dsc)
        return call_gear(composing, WORD_READ_POSITION_ON, gear);
    if (gear != NULL)
        return calling->apart ? word_alone(composing, WORD_READ_POSITION_SET) : NULL;
    return place == NULL || has_tag_form(at->text)
               ? NULL : phrase_word(composing->arena, WORD_READ_POSITION, "place", place, NULL);
}

/* May it lie in the smoke, while the radio that one speaks by does not? Of a place in words
 * nobody knows. Where the radio lies there too, words about the smoke stand above both. */
static bool position_in_smoke(const struct composing *composing, const struct ladder *ladder,
                              const struct rung *worked)
{
    const struct equipment *gear =
        gear_of_tag(composing->in->boat, composing->in->boat->radio.position_read_at.text);
    bool near = gear != NULL && reach_here(composing, gear) <= REACH_DECK;
    return ladder->calling->from == CALL_FROM_FIXED_IN_FIRE && !near &&
           !stands_in_smoke(composing, ladder, worked);
}

/* It goes where a card has no room; the distress card keeps it. */
static void position_read_line(struct composing *composing, struct call_lines *lines,
                               const struct ladder *ladder, const struct rung *worked)
{
    const struct calling *calling = ladder->calling;
    const struct phrase *line = position_line_phrase(composing, calling);
    if (line == NULL || position_in_smoke(composing, ladder, worked))
        return;
    call_line_add(composing, lines, line,
                  said_place(composing, &composing->in->boat->radio.position_read_at));
    lines->yielding = calling->apart ? 0 : lines->all.count;
}

/* ---- speaking ---- */

static const struct phrase *channel_set(struct composing *composing)
{
    return phrase_word(composing->arena, WORD_SET_CHANNEL, "channel",
                       phrase_verbatim(composing->arena,
                                       composing->in->base->centre_channel.text), NULL);
}

/* Who leaves the boat cannot stay on deck. */
static enum word upwind_word(const struct calling *calling)
{
    return calling->from == CALL_FROM_HANDHELD_CARRIED ? WORD_SET_UPWIND : WORD_SET_DECK;
}

static void handheld_taken_line(struct composing *composing, struct call_lines *lines,
                                const struct rung *worked)
{
    if (worked->drafted != NULL)
        call_act_add(composing, lines, worked->drafted, composing->in->boat->place);
    else if (worked->rule->condition == RUNG_CARRIED)
        call_act_word_add(composing, lines, WORD_SET_HANDHELD_CARRIED, worked->gear->place);
    else
        call_act_add(composing, lines,
                     call_gear(composing, WORD_SET_HANDHELD_FIRST, worked->gear),
                     worked->gear->place);
}

/* The radio in hand: switched on, taken up, or the handset on deck. */
static void taken_line(struct composing *composing, struct call_lines *lines,
                       const struct rung *worked)
{
    if (is_handheld(worked->means)) {
        handheld_taken_line(composing, lines, worked);
    } else if (worked->means == MEANS_SECOND_STATION) {
        call_act_add(composing, lines,
                     phrase_word(composing->arena, WORD_SET_SECOND, "place",
                                 second_station_named(composing), NULL),
                     composing->in->boat->radio.second_station.section.place);
    } else {
        marker_add(composing, worked->gear);
        power_line(composing, lines);
    }
}

/* Where the radio that is spoken by is recorded. */
static struct place worked_place(const struct composing *composing, const struct rung *worked)
{
    const struct boat *boat = composing->in->boat;
    if (worked->means == MEANS_SECOND_STATION)
        return boat->radio.second_station.section.place;
    if (!is_handheld(worked->means))
        return boat->radio_place;
    return worked->gear != NULL ? worked->gear->place : boat->place;
}

void worked_lines(struct composing *composing, struct call_lines *lines,
                  const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    if (worked == NULL)
        return;
    struct place origin = worked_place(composing, worked);
    bool upwind = worked->rule->condition == RUNG_UPWIND ||
                  worked->rule->condition == RUNG_CARRIED ||
                  worked->rule->condition == RUNG_CLEAN_AIR;
    taken_line(composing, lines, worked);
    if (upwind)
        call_act_word_add(composing, lines, upwind_word(ladder->calling), origin);
    key_line(composing, lines, ladder, worked);
    if (is_handheld(worked->means))
        call_act_word_add(composing, lines, WORD_SET_CHANNEL_HANDHELD, origin);
    else
        call_act_add(composing, lines, channel_set(composing), origin);
    call_act_word_add(composing, lines, WORD_SET_TALK, origin);
    no_key_line(composing, lines, ladder, worked);
    position_say_line(composing, lines, ladder);
    if (!upwind)
        position_read_line(composing, lines, ladder, worked);
}
