/* call_silent.c - what calls for help without a voice: beacons, the telephone, flares, arms; with
 * the first call, when nobody answers it, or where there is nothing to speak by (room: compose). */
#include "call_room.h"

/* How each is named in a list of ways, and in a line of its own. */
static const struct means_words { enum word way, alone; } means_words_of[MEANS_COUNT] = {
    [MEANS_RED_KEY] = {WORD_COUNT, WORD_COUNT},
    [MEANS_SECOND_STATION] = {WORD_COUNT, WORD_COUNT},
    [MEANS_FIXED_SET] = {WORD_THEN_SET, WORD_COUNT},
    [MEANS_HANDHELD_DECK] = {WORD_THEN_HANDHELD, WORD_COUNT},
    [MEANS_HANDHELD_BELOW] = {WORD_THEN_HANDHELD, WORD_COUNT},
    [MEANS_PHONE] = {WORD_THEN_PHONE, WORD_PHONE_CENTRE},
    [MEANS_EPIRB] = {WORD_THEN_EPIRB, WORD_BEACON_NOW},
    [MEANS_PERSONAL_BEACON] = {WORD_THEN_BEACON, WORD_BEACON_NOW},
    [MEANS_FLARES] = {WORD_THEN_FLARES, WORD_FLARES_NOW},
    [MEANS_SART] = {WORD_THEN_SART, WORD_BEACON_NOW},
    [MEANS_SIGNALS] = {WORD_THEN_SIGNALS, WORD_WAVE_WHISTLE},
};

/* The words that the rung's condition puts about a way. */
static enum word condition_word(enum rung_condition condition)
{
    switch (condition) {
    case RUNG_UPWIND:
        return WORD_WAY_UPWIND;
    case RUNG_AT_RAIL:
        return WORD_WAY_AT_RAIL;
    case RUNG_IN_RAFT:
        return WORD_WAY_IN_RAFT;
    case RUNG_SPARE_AERIAL:
        return WORD_WAY_SPARE_AERIAL;
    case RUNG_FREE:
    case RUNG_OUTSIDE_SMOKE:
    case RUNG_CLEAN_AIR:
    case RUNG_CARRIED:
    case RUNG_WITH_CALL:
    case RUNG_UPRIGHT:
        break;
    }
    return WORD_COUNT;
}

/* The rescue centre's number, which the line of numbers may have no room for on this card. */
static const struct phrase *phone_phrase_in(const struct composing *composing, enum word word)
{
    const struct text_value *phone = &composing->in->base->centre_phone;
    return phrase_word(composing->arena, word, "number",
                       phrase_verbatim(composing->arena, phone->text), NULL);
}

/* "EPIRB E3 on (far upwind)" */
static const struct phrase *way_phrase(struct composing *composing, const struct rung *rung)
{
    enum word word = means_words_of[rung->means].way, about = condition_word(rung->rule->condition);
    bool spark = rung->means == MEANS_PHONE && rung->rule->condition == RUNG_UPWIND;
    if (rung->drafted != NULL)
        return rung->drafted;
    const struct phrase *way = rung->gear != NULL ? call_gear(composing, word, rung->gear)
                               : rung->means == MEANS_PHONE
                                   ? phone_phrase_in(composing, spark ? WORD_THEN_PHONE_ON : word)
                                   : word_alone(composing, word);
    return about == WORD_COUNT ? way
                               : phrase_word(composing->arena, about, "way", way, NULL);
}

/* Is it sent with the first call? A beacon, where VHF may not be heard. */
static bool goes_with_call(const struct composing *composing, const struct rung *rung)
{
    bool beacon = rung->means == MEANS_EPIRB || rung->means == MEANS_PERSONAL_BEACON;
    return beacon && rung->drafted == NULL &&
           (rung->rule->condition == RUNG_WITH_CALL || base_beyond_a1(composing->in->base));
}

/* ---- with the first call ---- */

static void with_call_line(struct composing *composing, struct call_lines *lines,
                           const struct ladder *ladder)
{
    const struct phrase *beacons[MEANS_COUNT] = {NULL};
    size_t count = 0;
    for (size_t i = 0; i < ladder->count; i++)
        if (goes_with_call(composing, &ladder->rungs[i]))
            beacons[count++] = way_phrase(composing, &ladder->rungs[i]);
    if (count == 0)
        return;
    const struct phrase *list = phrase_list(composing->arena, WORD_JOIN_COMMA, beacons, count);
    call_line_add(composing, lines,
                  for_mayday(composing, ladder->calling,
                             phrase_word(composing->arena, WORD_BEACON_FIRST, "beacons", list,
                                         NULL)), composing->in->boat->place);
}

/* ---- without an answer ---- */

/* Whether a way is in the list that is made: those of grave danger stand apart where the card
 * knows a milder call too. */
enum way_list { WAYS_ALL, WAYS_OF_EACH_CALL, WAYS_OF_DISTRESS };

/* Arms and whistle go without saying beside what is seen from afar; the distress card has room to
 * say it. */
static bool goes_unsaid(const struct ladder *ladder, const struct rung *rung)
{
    size_t seen = 0;
    for (size_t i = 0; i < ladder->count; i++)
        seen += means_is_distress(ladder->rungs[i].means) &&
                ladder->rungs[i].means != MEANS_RED_KEY;
    return rung->means == MEANS_SIGNALS && !ladder->calling->apart &&
           seen > 1;
}

static bool is_way(const struct composing *composing, const struct ladder *ladder,
                   const struct rung *rung)
{
    if (rung->means == MEANS_FIXED_SET && rung->rule->condition != RUNG_SPARE_AERIAL)
        return false;
    return means_words_of[rung->means].way != WORD_COUNT && rung != ladder_worked(ladder) &&
           !(is_voice(rung->means) && rung->drafted != NULL) &&
           !goes_with_call(composing, rung) && !goes_unsaid(ladder, rung);
}

static const struct phrase *ways_phrase(struct composing *composing, const struct ladder *ladder,
                                        enum way_list which)
{
    const struct phrase *ways[MEANS_COUNT + 1] = {NULL};
    size_t count = 0;
    if (which != WAYS_OF_DISTRESS)
        ways[count++] = word_alone(composing, WORD_NO_ANSWER);
    for (size_t i = 0; i < ladder->count; i++) {
        const struct rung *rung = &ladder->rungs[i];
        bool distress = means_is_distress(rung->means);
        if (!is_way(composing, ladder, rung) ||
            (which != WAYS_ALL && distress != (which == WAYS_OF_DISTRESS)))
            continue;
        ways[count++] = way_phrase(composing, rung);
    }
    return phrase_list(composing->arena, WORD_JOIN_COMMA, ways, count);
}

static void ways_line(struct composing *composing, struct call_line_list *list,
                      const struct phrase *ways)
{
    if (!phrase_is_empty(ways))
        call_line_put(composing, list,
                      phrase_word(composing->arena, WORD_NO_ANSWER_WAYS, "ways", ways, NULL),
                      composing->in->boat->place);
}

void no_answer_lines(struct composing *composing, struct call_lines *lines,
                     const struct ladder *ladder)
{
    const struct calling *calling = ladder->calling;
    with_call_line(composing, lines, ladder);
    if (!calling->other) {
        ways_line(composing, lines->after, ways_phrase(composing, ladder, WAYS_ALL));
        return;
    }
    const struct phrase *grave = ways_phrase(composing, ladder, WAYS_OF_DISTRESS);
    const struct phrase *each = ways_phrase(composing, ladder, WAYS_OF_EACH_CALL);
    if (phrase_is_empty(grave))
        ways_line(composing, lines->after, each);
    else
        ways_line(composing, lines->after,
                  phrase_word(composing->arena, WORD_WAYS_AND_MAYDAY, "ways", each, "grave",
                              grave, NULL));
}

/* ---- without a radio ---- */

/* A handheld that lies where the vapour is, or in its charger, stays there. */
static void handheld_left_line(struct composing *composing, struct call_lines *lines)
{
    const struct equipment *handheld = call_first_gear(composing, ITEM_vhf_handheld);
    if (handheld != NULL)
        call_line_add(composing, lines,
                      phrase_word(composing->arena, WORD_SET_HANDHELD_BELOW, "tag",
                                  phrase_verbatim(composing->arena, handheld->tag.text), NULL),
                      handheld->place);
}

static const struct phrase *alone_phrase(struct composing *composing,
                                         const struct ladder *ladder, const struct rung *rung)
{
    bool upwind = !set_is_first(ladder->calling) && ladder->calling->from != CALL_FROM_ON_DECK;
    enum word word = means_words_of[rung->means].alone;
    if (rung->drafted != NULL)
        return rung->drafted;
    if (rung->means == MEANS_PHONE)
        return phone_phrase_in(composing, upwind ? WORD_PHONE_UPWIND : word);
    if (rung->gear == NULL)
        return word_alone(composing, word);
    marker_add(composing, rung->gear);
    if (word == WORD_BEACON_NOW && upwind)
        word = WORD_BEACON_UPWIND;
    return phrase_word(composing->arena, word, "beacon",
                       phrase_item(composing->arena, rung->gear->item.value), "tag",
                       phrase_verbatim(composing->arena, rung->gear->tag.text), "place",
                       gear_place_phrase(composing, rung->gear, NULL), NULL);
}

/* Who cannot call has nothing to wait for: what is left is done at once, the beacons first. */
static void alone_lines(struct composing *composing, struct call_lines *lines,
                        const struct ladder *ladder, bool (*chosen)(enum means means))
{
    for (size_t i = 0; i < ladder->count; i++) {
        const struct rung *rung = &ladder->rungs[i];
        if (means_words_of[rung->means].alone == WORD_COUNT || !chosen(rung->means))
            continue;
        const struct phrase *line = alone_phrase(composing, ladder, rung);
        if (means_is_distress(rung->means))
            line = for_mayday(composing, ladder->calling, line);
        call_line_add(composing, lines, line,
                      rung->gear != NULL ? rung->gear->place : composing->in->boat->place);
    }
}

static bool is_beacon(enum means means)
{
    return means == MEANS_EPIRB || means == MEANS_PERSONAL_BEACON;
}

static bool is_no_beacon(enum means means)
{
    return !is_beacon(means);
}

/* Where one stays who cannot call; on the hull of a boat upside down nothing is to be said. */
static void stay_line(struct composing *composing, struct call_lines *lines,
                      const struct ladder *ladder)
{
    enum call_from from = ladder->calling->from;
    enum word word = from == CALL_FROM_HANDHELD_CARRIED ? WORD_SET_UPWIND
                     : from == CALL_FROM_ON_DECK        ? WORD_SET_CLEAN_AIR
                                                        : WORD_SET_DECK;
    if (!lies_inverted(composing))
        call_word_add(composing, lines, word, composing->in->boat->place);
}

void no_radio_lines(struct composing *composing, struct call_lines *lines,
                    const struct ladder *ladder)
{
    if (!set_is_first(ladder->calling)) {
        handheld_left_line(composing, lines);
        stay_line(composing, lines, ladder);
    }
    alone_lines(composing, lines, ladder, is_beacon);
    alone_lines(composing, lines, ladder, is_no_beacon);
}
