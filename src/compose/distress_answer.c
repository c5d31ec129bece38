/* distress_answer.c - of the distress card what answers others and undoes one's own: another's
 * MAYDAY, danger that is over, false alerts, what is asked by who answers, and the spelling that
 * they ask for (room: compose). Names no red key to a boat whose set sends no alert. */
#include "distress_room.h"

#include "beacon.h"
#include "text.h"

/* ---- another's MAYDAY ---- */

static void heard_section(struct composing *composing, struct sheet *sheet)
{
    static const struct script_block block = {BLOCK_HEARD, WORD_DISTRESS_HEARD, SCRIPT_RECEIPT};
    struct section_facts *section = script_section(composing, sheet, &block);
    section->note = section_word(composing, WORD_HEARD_LISTEN);
    section->end_note = section_word(composing, boat_can_alert(composing->in->boat)
                                                    ? WORD_HEARD_THEN : WORD_HEARD_THEN_VOICE);
}

/* Where the rescue centre's call is recorded, it is called first, and all stations only then. */
static void relay_section(struct composing *composing, struct sheet *sheet)
{
    static const struct script_block block = {BLOCK_RELAY, WORD_DISTRESS_RELAY, SCRIPT_RELAY};
    struct section_facts *section = script_section(composing, sheet, &block);
    struct arena *arena = composing->arena;
    if (!text_empty(composing->in->base->centre_call.text))
        section->note = phrase_said(
            composing, phrase_word(arena, WORD_RELAY_CENTRE_FIRST, "all_stations",
                                   phrase_verbatim(arena, SPOKEN_ALL_STATIONS), NULL));
}

/* ---- one's own, undone ---- */

static void cancel_section(struct composing *composing, struct sheet *sheet)
{
    static const struct script_block block = {BLOCK_CANCEL, WORD_DISTRESS_CANCEL, SCRIPT_CANCEL};
    struct section_facts *section = script_section(composing, sheet, &block);
    section->note = section_word(composing, WORD_DISTRESS_CANCEL_SET);
    section->end_note = section_word(composing, WORD_DISTRESS_LISTEN);
}

static bool is_beacon_item(enum item_key item)
{
    return item == ITEM_epirb || item == ITEM_personal_beacon;
}

/* EPIRB E3: the identity as it stands on the beacon. */
static void beacon_lines(struct composing *composing, struct section_facts *section)
{
    const struct boat *boat = composing->in->boat;
    struct arena *arena = composing->arena;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        struct beacon beacon;
        if (!is_beacon_item(gear->item.value) || text_empty(gear->hex_id.text))
            continue;
        beacon = beacon_decode(gear->hex_id.text);
        if (!beacon_decodable(&beacon))
            continue;
        const char *name = phrase_said(
            composing, phrase_joined(arena, WORD_JOIN_SPACE,
                                     phrase_item(arena, gear->item.value),
                                     phrase_verbatim(arena, gear->tag.text), NULL));
        section_line_add(composing, section, name,
                         (struct card_text){beacon_grouped(&beacon, arena), gear->hex_id.place});
    }
}

/* On VHF, and by telephone where the number is recorded. Without either the base is rung, whose
 * number is always recorded. */
static const struct phrase *ways_to_tell(struct composing *composing)
{
    const struct base_record *base = composing->in->base;
    const struct phrase *number = phrase_text(composing->arena, &base->centre_phone);
    if (no_radio_aboard(composing->in->boat))
        return number != NULL ? number : phrase_text(composing->arena, &base->phone_24h);
    return phrase_joined(composing->arena, WORD_JOIN_DOT,
                         word_alone(composing, WORD_CHANNEL_16), number, NULL);
}

/* What is said by telephone needs no form of the radio. */
static void beacon_section(struct composing *composing, struct sheet *sheet)
{
    static const struct script_block block = {BLOCK_BEACON, WORD_DISTRESS_BEACON,
                                              SCRIPT_CANCEL_BEACON};
    struct section_facts *section = no_radio_aboard(composing->in->boat)
                                        ? section_add(composing, sheet, block.key, block.title)
                                        : script_section(composing, sheet, &block);
    bool tell_first = composing->in->base->beacon_cancel.value == BEACON_TELL_THEN_OFF;
    section->note = phrase_said(
        composing, phrase_word(composing->arena,
                               tell_first ? WORD_BEACON_TELL_FIRST : WORD_BEACON_OFF_FIRST,
                               "ways", ways_to_tell(composing), NULL));
    beacon_lines(composing, section);
}

/* ---- what is asked ---- */

/* Questions of a line, each with room for its answer; of gear that she does not have, none. */
struct asked_line { enum word questions[3]; size_t count; };

static bool asks_this_boat(const struct boat *boat, enum word question)
{
    if (question == WORD_ASKED_RAFT)
        return boat_fitted(boat, ITEM_liferaft) == ANSWER_YES;
    return question != WORD_ASKED_BEACON || boat_has_beacon(boat);
}

static struct script_line asked_line(struct composing *composing, const struct asked_line *row)
{
    enum { ANSWER_WIDTH = 12 };
    struct script_piece *pieces = arena_array(composing->arena, 2 * row->count, sizeof *pieces);
    size_t count = 0;
    for (size_t i = 0; i < row->count; i++) {
        if (!asks_this_boat(composing->in->boat, row->questions[i]))
            continue;
        pieces[count++] = (struct script_piece){
            .kind = PIECE_WORDS, .text = section_word(composing, row->questions[i])};
        pieces[count++] = (struct script_piece){.kind = PIECE_BLANK, .text = "answer",
                                                .width_mm = ANSWER_WIDTH};
    }
    return (struct script_line){.element = ELEMENT_OTHER, .pieces = pieces, .count = count};
}

static const struct script *asked_script(struct composing *composing)
{
    static const struct asked_line rows[] = {
        {{WORD_ASKED_JACKETS, WORD_ASKED_HURT}, 2},
        {{WORD_ASKED_RAFT, WORD_ASKED_BEACON, WORD_ASKED_PHONE}, 3},
        {{WORD_ASKED_SEEN}, 1}};
    enum { ASKED_LINES = sizeof rows / sizeof *rows };
    struct script *script = arena_alloc(composing->arena, sizeof *script);
    struct script_line *lines = arena_array(composing->arena, ASKED_LINES, sizeof *lines);
    for (size_t i = 0; i < ASKED_LINES; i++)
        lines[i] = asked_line(composing, &rows[i]);
    *script = (struct script){.lines = lines, .count = ASKED_LINES};
    return script;
}

/* What stops the alarm of a set that can be answered by one. */
static const char *silence_words(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    const struct phrase *steps = steps_phrase(composing, WORD_SILENCE_STEPS,
                                              &boat->radio.silence_steps);
    if (!boat_can_alert(boat))
        return NULL;
    return steps == NULL ? section_word(composing, WORD_SILENCE_PLAIN)
                         : phrase_said(composing, steps);
}

static void asked_section(struct composing *composing, struct sheet *sheet)
{
    struct section_facts *section = section_add(composing, sheet, BLOCK_ASKED,
                                               WORD_DISTRESS_ASKED);
    section->note = silence_words(composing);
    section->script = asked_script(composing);
    section->end_note = section_word(composing, WORD_STAY_ON_16);
}

void answers_make(struct composing *composing, struct sheet *sheet)
{
    static const struct script_block over = {BLOCK_DOWNGRADE, WORD_DISTRESS_DOWNGRADE,
                                             SCRIPT_DOWNGRADE};
    bool radio = !no_radio_aboard(composing->in->boat);
    if (radio) {
        heard_section(composing, sheet);
        relay_section(composing, sheet);
        script_section(composing, sheet, &over);
    }
    if (boat_can_alert(composing->in->boat))
        cancel_section(composing, sheet);
    if (boat_has_beacon(composing->in->boat))
        beacon_section(composing, sheet);
    if (radio)
        asked_section(composing, sheet);
}

/* ---- spelling ---- */

static void spell_line(struct composing *composing, struct section_facts *section, enum word lead,
                       struct card_text said)
{
    if (said.text != NULL)
        section_line_add(composing, section, section_word(composing, lead), said);
}

void spell_section(struct composing *composing, struct sheet *sheet)
{
    const struct boat *boat = composing->in->boat;
    struct arena *arena = composing->arena;
    struct section_facts *section = section_add(composing, sheet, BLOCK_SPELL,
                                               WORD_DISTRESS_SPELL);
    const char *name = spelled_name(boat, arena, composing->problems);
    uint32_t bad = 0;
    if (name == NULL) {
        composing->held = true;
        return;
    }
    spell_line(composing, section, WORD_SPELL_NAME,
               (struct card_text){spell(arena, name, &bad), boat->facts.name.place});
    if (call_sign_given(&boat->radio.call_sign))
        spell_line(composing, section, WORD_SPELL_CALL_SIGN,
                   (struct card_text){spell(arena, boat->radio.call_sign.text, &bad),
                                      boat->radio.call_sign.place});
    if (boat->radio.mmsi.text != NULL)
        spell_line(composing, section, WORD_SPELL_MMSI,
                   (struct card_text){mmsi_spelled(arena, boat->radio.mmsi.text),
                                      boat->radio.mmsi.place});
}
