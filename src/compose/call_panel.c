/* call_panel.c - the panel at the foot: how to work this boat's set, from its
 * record, and the script to say (room: compose). */
#include "compose.h"

/* Lines of the panel's left side; numbered ones first. */
struct lines {
    struct card_text *at;
    size_t count, room;
    int number;
};

static void line_add(struct composing *composing, struct lines *lines, bool numbered,
                     const char *text, struct place origin)
{
    lines->at = arena_grow(composing->arena, lines->at, lines->count, &lines->room,
                           sizeof *lines->at);
    if (numbered)
        text = text_format(composing->arena, "**%d** %s", ++lines->number, text);
    lines->at[lines->count++] = (struct card_text){.text = text, .origin = origin};
}

static bool fitted(struct composing *composing, const char *item, struct place place)
{
    struct condition condition = {.kind = CONDITION_FITTED, .item = item, .place = place};
    return condition_judge(composing, &condition) == TRUTH_YES;
}

static const struct equipment *first_gear(const struct composing *composing, const char *item)
{
    size_t index = 0;
    return gear_next(composing, item, &index);
}

/* The handheld that may be taken without going into the vapour. */
static const struct equipment *handheld_at_hand(const struct composing *composing)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_next(composing, "vhf_handheld", &index)) != NULL;)
        if (gear->from_cockpit.answer == ANSWER_YES)
            return gear;
    return NULL;
}

/* Of several handhelds the one that is reached without going below. */
static const struct equipment *handheld_best(const struct composing *composing)
{
    const struct equipment *at_hand = handheld_at_hand(composing);
    return at_hand != NULL ? at_hand : first_gear(composing, "vhf_handheld");
}

/* Zone and side: the spot stands on the gear's own row and on the plan. */
static const char *gear_place(const struct composing *composing, const struct equipment *gear)
{
    return place_words(composing, gear->place_zone, gear->place_side, NULL);
}

/* A sentence with the gear's {tag} and {place}. */
static const char *gear_words(struct composing *composing, enum word word,
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
        line_add(composing, lines, true, words_get(words, WORD_SET_ON_PLAIN),
                 composing->in->boat->radio_place);
    else
        line_add(composing, lines, true,
                 words_fill(words, composing->arena, WORD_SET_ON, "switch",
                            radio->power_switch.text, NULL),
                 radio->power_switch.place);
}

/* The red key, as this set has it; only where a DSC alert can be sent. */
static void key_line(struct composing *composing, struct lines *lines, bool mayday_only)
{
    const struct radio_facts *radio = &composing->in->boat->radio;
    const struct words *words = composing->in->words;
    const char *key = radio->distress_key.text != NULL ? radio->distress_key.text
                                                       : words_get(words, WORD_SET_KEY_PLAIN);
    enum word word = mayday_only ? WORD_SET_KEY_MAYDAY_ONLY : WORD_SET_KEY;
    if (!radio->hold_s.given)
        word = WORD_SET_NO_KEY_HOLD;
    line_add(composing, lines, true,
             words_fill(words, composing->arena, word, "key", key, "seconds",
                        radio->hold_s.given ? radio->hold_s.text : "", NULL),
             radio->distress_key.place);
}

/* Without a fixed set the handheld is the radio that is worked. */
static void handheld_lines(struct composing *composing, struct lines *lines)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->place;
    if (!fitted(composing, "vhf_handheld", origin))
        return;
    line_add(composing, lines, true,
             gear_words(composing, WORD_SET_HANDHELD_FIRST, handheld_best(composing)), origin);
    line_add(composing, lines, true, words_get(words, WORD_SET_CHANNEL_HANDHELD), origin);
    line_add(composing, lines, true, words_get(words, WORD_SET_TALK), origin);
}

static void set_lines(struct composing *composing, struct lines *lines, bool mayday, bool other)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->radio_place;
    if (!fitted(composing, "vhf_dsc", origin)) {
        line_add(composing, lines, false, words_get(words, WORD_SET_NO_FIXED), origin);
        handheld_lines(composing, lines);
        return;
    }
    marker_add(composing, first_gear(composing, "vhf_dsc"));
    power_line(composing, lines);
    if (mayday && dsc_ready(composing->in->boat))
        key_line(composing, lines, other);
    line_add(composing, lines, true, words_get(words, WORD_SET_CHANNEL), origin);
    line_add(composing, lines, true, words_get(words, WORD_SET_TALK), origin);
    if (mayday && !dsc_ready(composing->in->boat))
        line_add(composing, lines, false, words_get(words, WORD_SET_NO_DSC), origin);
}

static void second_station_line(struct composing *composing, struct lines *lines)
{
    struct place origin = composing->in->boat->place;
    if (fitted(composing, "vhf_handheld", origin))
        line_add(composing, lines, false,
                 gear_words(composing, WORD_SET_HANDHELD, handheld_best(composing)),
                 origin);
    else
        line_add(composing, lines, false,
                 words_get(composing->in->words, WORD_SET_HANDHELD_NONE), origin);
}

/* Where coast stations may not hear VHF, the beacon goes with the first call. */
static bool beyond_a1(const struct composing *composing)
{
    const char *area = composing->in->base->sea_area.text;
    return area != NULL && !text_equal(area, "A1");
}

static void no_answer_line(struct composing *composing, struct lines *lines, bool mayday,
                           bool from_deck)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->place;
    struct text_builder builder = text_builder_in(composing->arena);
    bool epirb = mayday && fitted(composing, "epirb", origin);
    text_add(&builder, words_get(words, WORD_NO_ANSWER));
    if (!from_deck && !by_handheld_only(composing->in->boat) &&
        fitted(composing, "vhf_handheld", origin))
        text_add(&builder, gear_words(composing, WORD_THEN_HANDHELD,
                                      handheld_best(composing)));
    if (epirb && !beyond_a1(composing))
        text_add(&builder, gear_words(composing, WORD_THEN_EPIRB,
                                      first_gear(composing, "epirb")));
    if (mayday && !epirb && fitted(composing, "flares", origin))
        text_add(&builder, gear_words(composing, WORD_THEN_FLARES,
                                      first_gear(composing, "flares")));
    text_add(&builder, ".");
    if (epirb && beyond_a1(composing))
        line_add(composing, lines, false,
                 gear_words(composing, WORD_BEACON_FIRST, first_gear(composing, "epirb")),
                 origin);
    line_add(composing, lines, false, builder.at, origin);
}

static void deck_lines(struct composing *composing, struct lines *lines)
{
    const struct words *words = composing->in->words;
    struct place origin = composing->in->boat->place;
    bool any = fitted(composing, "vhf_handheld", origin);
    const struct equipment *at_hand = handheld_at_hand(composing);
    if (at_hand != NULL)
        line_add(composing, lines, true,
                 gear_words(composing, WORD_SET_HANDHELD_FIRST, at_hand), at_hand->place);
    else if (any)
        line_add(composing, lines, false,
                 gear_words(composing, WORD_SET_HANDHELD_BELOW,
                            first_gear(composing, "vhf_handheld")), origin);
    line_add(composing, lines, true, words_get(words, WORD_SET_DECK), origin);
    if (at_hand != NULL) {
        line_add(composing, lines, true, words_get(words, WORD_SET_CHANNEL_HANDHELD), origin);
        line_add(composing, lines, true, words_get(words, WORD_SET_TALK), origin);
    }
    line_add(composing, lines, false, words_get(words, WORD_SET_LEAVE_FIXED), origin);
}

/* What the set's own panel says, a line each. */
static const struct card_text *operate_lines(struct composing *composing, bool mayday, bool other,
                                             bool from_deck, size_t *count)
{
    struct lines lines = {0};
    if (from_deck) {
        deck_lines(composing, &lines);
    } else {
        set_lines(composing, &lines, mayday, other);
        if (!by_handheld_only(composing->in->boat) ||
            boat_fitted(composing->in->boat, "vhf_handheld") != ANSWER_YES)
            second_station_line(composing, &lines);
    }
    if (!from_deck || handheld_at_hand(composing) != NULL)
        no_answer_line(composing, &lines, mayday, from_deck);
    *count = lines.count;
    return lines.at;
}

static struct script_request request_of(const struct composing *composing,
                                        const struct procedure_call *call, bool labelled)
{
    const char *label = labelled ? text_upper(composing->arena, TEXT_OR_EMPTY(call->if_)) : NULL;
    enum script_form form = SCRIPT_MAYDAY;
    if (text_equal(call->signal.text, "pan_pan"))
        form = SCRIPT_PAN_PAN;
    else if (text_equal(call->signal.text, "securite"))
        form = SCRIPT_SECURITE;
    return (struct script_request){
        .form = form, .label = label, .nature = call->say.text, .assistance = call->assist.text,
        .from_handheld = text_equal(call->from.text, "handheld_on_deck") ||
                         by_handheld_only(composing->in->boat)};
}

static enum word panel_title(const struct composing *composing,
                             const struct script_request *first, bool both, bool from_deck)
{
    if (from_deck)
        return handheld_at_hand(composing) != NULL ? WORD_CALL_HANDHELD : WORD_CALL_NO_RADIO;
    if (both)
        return WORD_CALL_BOTH;
    return first->form == SCRIPT_MAYDAY ? WORD_CALL_MAYDAY : WORD_CALL_PAN_PAN;
}

static const char *station_words(struct composing *composing, bool from_deck)
{
    const struct equipment *gear = from_deck ? handheld_at_hand(composing)
                                             : first_gear(composing, "vhf_dsc");
    if (gear == NULL && !from_deck)
        gear = first_gear(composing, "vhf_handheld");
    if (gear == NULL)
        return "";
    bool handheld = text_equal(gear->item.text, "vhf_handheld");
    return gear_words(composing, handheld ? WORD_HANDHELD_AT : WORD_RADIO_AT, gear);
}

static void panel_fill(struct composing *composing, struct card *card,
                       const struct script_request *request, bool from_deck)
{
    bool both = request->other != NULL;
    card->call = (struct card_call){
        .given = true,
        .title = words_get(composing->in->words, panel_title(composing, request, both, from_deck)),
        .station = station_words(composing, from_deck),
        .script = script_make(request, composing->in->boat, composing->in->base,
                              composing->arena, composing->problems),
        .origin = card->origin};
    card->call.operate = operate_lines(composing, request->form == SCRIPT_MAYDAY,
                                       both || card->distress, from_deck,
                                       &card->call.operate_count);
    if (card->call.script == NULL)
        composing->held = true;
}

/* The distress card's panel leaves the nature to be filled in. */
static void general_call_make(struct composing *composing, struct card *card)
{
    struct script_request request = call_request(composing->in->boat, SCRIPT_MAYDAY, NULL);
    panel_fill(composing, card, &request, false);
}

void call_make(struct composing *composing, struct card *card)
{
    const struct procedure *procedure = composing->slot->procedure;
    struct script_request requests[2];
    bool both = procedure->call_count > 1;
    if (card->distress) {
        general_call_make(composing, card);
        return;
    }
    if (procedure->call_count == 0)
        return;
    for (size_t i = 0; i < 2 && i < procedure->call_count; i++)
        requests[i] = request_of(composing, &procedure->calls[i], both);
    if (both)
        requests[0].other = &requests[1];
    panel_fill(composing, card, &requests[0],
               text_equal(procedure->calls[0].from.text, "handheld_on_deck"));
}
