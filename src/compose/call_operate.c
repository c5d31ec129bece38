/* call_operate.c - the left side of the call panel: how to work what this boat has to call
 * with, from its record, and what else calls for help (room: compose). Never says what is
 * to be said. */
#include "call_room.h"

/* Lines of the panel's left side; numbered ones first. */
struct lines {
    struct card_text *at;
    size_t count, room;
    int number;
};

static void line_add(struct composing *composing, struct lines *lines, const char *text,
                     struct place origin)
{
    lines->at = arena_grow(composing->arena, lines->at, lines->count, &lines->room,
                           sizeof *lines->at);
    lines->at[lines->count++] = (struct card_text){.text = text, .origin = origin};
}

/* A line that is one of the things to do, in their order. */
static void numbered_line_add(struct composing *composing, struct lines *lines, const char *text,
                              struct place origin)
{
    line_add(composing, lines,
             text_format(composing->arena, "**%d** %s", ++lines->number, text), origin);
}

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
static const char *gear_place(const struct composing *composing, const struct equipment *gear)
{
    return place_words(composing, gear->place_zone, gear->place_side, NULL);
}

/* A sentence with the gear's {tag} and {place}. */
const char *call_gear_words(struct composing *composing, enum word word,
                              const struct equipment *gear)
{
    marker_add(composing, gear);
    return words_fill(composing->in->words, composing->arena, word, "tag",
                      TEXT_OR_EMPTY(gear->tag), "place", gear_place(composing, gear), NULL);
}

static void power_line(struct composing *composing, struct lines *lines)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    const struct words *words = composing->in->words;
    if (radio->power_switch.text == NULL)
        numbered_line_add(composing, lines, words_get(words, WORD_SET_ON_PLAIN),
                          composing->in->boat->radio_place);
    else
        numbered_line_add(composing, lines,
                          words_fill(words, composing->arena, WORD_SET_ON, "switch",
                                     radio->power_switch.text, NULL),
                          radio->power_switch.place);
}

/* The red key, as this set has it; only where a DSC alert can be sent. */
static void key_line(struct composing *composing, struct lines *lines,
                     const struct calling *calling)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    const struct words *words = composing->in->words;
    const char *cover = radio->distress_key.text != NULL ? radio->distress_key.text
                                                         : words_get(words, WORD_SET_KEY_PLAIN);
    const char *press = radio->hold_s.given
                            ? words_fill(words, composing->arena, WORD_SET_KEY, "cover", cover,
                                         "seconds", radio->hold_s.text, NULL)
                            : words_fill(words, composing->arena, WORD_SET_KEY_NO_HOLD, "cover",
                                         cover, NULL);
    if (calling->other)
        press = words_fill(words, composing->arena, WORD_MAYDAY_ONLY, "what", press, NULL);
    numbered_line_add(composing, lines, press, radio->distress_key.place);
}

/* Without a fixed set the handheld is the radio that is worked. */
static void handheld_lines(struct composing *composing, struct lines *lines)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->place;
    if (!fitted(composing, ITEM_vhf_handheld, origin))
        return;
    numbered_line_add(composing, lines,
                      call_gear_words(composing, WORD_SET_HANDHELD_FIRST,
                                      handheld_best(composing)), origin);
    numbered_line_add(composing, lines, words_get(words, WORD_SET_CHANNEL_HANDHELD), origin);
    numbered_line_add(composing, lines, words_get(words, WORD_SET_TALK), origin);
}

static void set_lines(struct composing *composing, struct lines *lines,
                      const struct calling *calling)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->radio_place;
    if (!fitted(composing, ITEM_vhf_dsc, origin)) {
        line_add(composing, lines, words_get(words, WORD_SET_NO_FIXED), origin);
        handheld_lines(composing, lines);
        return;
    }
    marker_add(composing, call_first_gear(composing, ITEM_vhf_dsc));
    power_line(composing, lines);
    if (calling->mayday && dsc_ready(composing->in->boat))
        key_line(composing, lines, calling);
    numbered_line_add(composing, lines,
                      words_fill(words, composing->arena, WORD_SET_CHANNEL, "channel",
                                 composing->in->base->centre_channel.text, NULL), origin);
    numbered_line_add(composing, lines, words_get(words, WORD_SET_TALK), origin);
    if (calling->mayday && !dsc_ready(composing->in->boat))
        line_add(composing, lines, words_get(words, WORD_SET_NO_DSC), origin);
}

/* Where the set cannot be had, nobody goes through smoke or water for another. */
static void second_station_line(struct composing *composing, struct lines *lines)
{
    struct place origin = composing->in->boat->place;
    const struct equipment *handheld = NULL;
    if (fitted(composing, ITEM_vhf_handheld, origin))
        handheld = first_within(composing, ITEM_vhf_handheld, REACH_COMPANIONWAY);
    if (handheld != NULL)
        line_add(composing, lines,
                 call_gear_words(composing, WORD_SET_HANDHELD, handheld), origin);
    else
        line_add(composing, lines,
                 words_get(composing->in->words, WORD_SET_HANDHELD_NONE), origin);
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

static void then_add(struct composing *composing, struct text_builder *builder, enum word word,
                     const struct equipment *gear)
{
    if (gear != NULL)
        text_add(builder, call_gear_words(composing, word, gear));
}

static void no_answer_line(struct composing *composing, struct lines *lines,
                           const struct calling *calling)
{
    struct place origin = composing->in->boat->place;
    struct text_builder builder = text_builder_in(composing->arena);
    const struct equipment *epirb =
        calling->mayday ? fetched(composing, ITEM_epirb, calling) : NULL;
    text_add(&builder, words_get(composing->in->words, WORD_NO_ANSWER));
    if (!calling->from_deck && !by_handheld_only(composing->in->boat))
        then_add(composing, &builder, WORD_THEN_HANDHELD,
                 fetched(composing, ITEM_vhf_handheld, calling));
    if (!base_beyond_a1(composing->in->base))
        then_add(composing, &builder, WORD_THEN_EPIRB, epirb);
    if (calling->mayday && epirb == NULL && !calling->from_deck)
        then_add(composing, &builder, WORD_THEN_FLARES, fetched(composing, ITEM_flares, calling));
    text_add(&builder, ".");
    if (epirb != NULL && base_beyond_a1(composing->in->base))
        line_add(composing, lines,
                 call_gear_words(composing, WORD_BEACON_FIRST, epirb), origin);
    line_add(composing, lines, builder.at, origin);
}

/* Who leaves the boat cannot stay on deck. */
static const char *upwind_words(const struct words *words, const struct calling *calling)
{
    return words_get(words, calling->from == CALL_FROM_HANDHELD_CARRIED ? WORD_SET_UPWIND
                                                                        : WORD_SET_DECK);
}

/* ---- without a radio ---- */

/* A line about gear that is for a MAYDAY alone where the card knows two signals. */
static void distress_means_add(struct composing *composing, struct lines *lines, enum word word,
                               const struct equipment *gear, const struct calling *calling)
{
    if (gear == NULL)
        return;
    const char *line = call_gear_words(composing, word, gear);
    if (calling->other)
        line = words_fill(composing->in->words, composing->arena, WORD_MAYDAY_ONLY, "what", line,
                          NULL);
    line_add(composing, lines, line, gear->place);
}

/* What is left to those who cannot call: beacon, phone, flares, sound; with vapour about
 * only what makes neither spark nor flame there. */
static void no_radio_lines(struct composing *composing, struct lines *lines,
                           const struct calling *calling)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->place;
    const struct equipment *handheld = call_first_gear(composing, ITEM_vhf_handheld);
    if (calling->from_deck && handheld != NULL)
        line_add(composing, lines,
                 words_fill(words, composing->arena, WORD_SET_HANDHELD_BELOW, "tag",
                            TEXT_OR_EMPTY(handheld->tag), NULL), handheld->place);
    if (calling->from_deck)
        line_add(composing, lines, upwind_words(words, calling), origin);
    if (calling->mayday)
        distress_means_add(composing, lines,
                           calling->from_deck ? WORD_BEACON_UPWIND : WORD_BEACON_NOW,
                           fetched(composing, ITEM_epirb, calling), calling);
    line_add(composing, lines,
             words_get(words, calling->from_deck ? WORD_PHONE_UPWIND : WORD_PHONE_CENTRE), origin);
    if (calling->mayday && !calling->from_deck)
        distress_means_add(composing, lines, WORD_FLARES_NOW,
                           fetched(composing, ITEM_flares, calling), calling);
    line_add(composing, lines, words_get(words, WORD_WAVE_WHISTLE), origin);
}

/* ---- from deck, where there is vapour or nobody may go below ---- */

static void leave_fixed_line(struct composing *composing, struct lines *lines)
{
    if (!by_handheld_only(composing->in->boat))
        line_add(composing, lines, words_get(composing->in->words, WORD_SET_LEAVE_FIXED),
                 composing->in->boat->place);
}

static void deck_lines(struct composing *composing, struct lines *lines,
                       const struct calling *calling)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->place;
    const struct equipment *at_hand = handheld_at_hand(composing);
    if (at_hand != NULL)
        numbered_line_add(composing, lines,
                          call_gear_words(composing, WORD_SET_HANDHELD_FIRST, at_hand),
                          at_hand->place);
    else
        numbered_line_add(composing, lines, words_get(words, WORD_SET_HANDHELD_CARRIED), origin);
    numbered_line_add(composing, lines, upwind_words(words, calling), origin);
    numbered_line_add(composing, lines, words_get(words, WORD_SET_CHANNEL_HANDHELD), origin);
    numbered_line_add(composing, lines, words_get(words, WORD_SET_TALK), origin);
}

/* ---- the panel's left side ---- */

/* Where the fixed set stands in the smoke, or who works it must leave the deck. */
static void before_fixed_lines(struct composing *composing, struct lines *lines,
                               const struct calling *calling)
{
    const struct equipment *set = call_first_gear(composing, ITEM_vhf_dsc);
    const struct equipment *handheld = handheld_at_hand(composing);
    const struct equipment *worked = set != NULL || handheld != NULL
                                         ? set : call_first_gear(composing, ITEM_vhf_handheld);
    if (calling->from == CALL_FROM_DECK_FIRST && handheld != NULL && set != NULL)
        line_add(composing, lines,
                 call_gear_words(composing, WORD_SET_DECK_FIRST, handheld), handheld->place);
    if (calling->from == CALL_FROM_FIXED_IN_FIRE && worked != NULL &&
        reach_here(composing, worked) > REACH_DECK)
        line_add(composing, lines,
                 words_get(composing->in->words, WORD_SET_OUTSIDE_SMOKE), worked->place);
}

static void fixed_lines(struct composing *composing, struct lines *lines,
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
const struct card_text *operate_lines(struct composing *composing,
                                      const struct calling *calling, size_t *count)
{
    struct lines lines = {0};
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
    *count = lines.count;
    return lines.at;
}
