/* brief_differs.c - what differs on this boat from what most have, and what to do about it: a row
 * a difference, in the order of the sheet (room: compose). Only what is recorded counts, but where
 * not knowing is the danger. */
#include "brief_room.h"

#include "promise.h"
#include "trait.h"

enum difference_kind {
    DIFFERS_LACKS,        /* the item is said not to be fitted, nor the other one */
    DIFFERS_HAS,          /* each piece of the item */
    DIFFERS_SAYS,         /* each piece whose field has that value */
    DIFFERS_NOT_SAYS,     /* each piece whose field has another value, or none */
    DIFFERS_CUTS,         /* each that is recorded to cut the other item */
    DIFFERS_CUTS_UNKNOWN, /* each of which nobody recorded what it cuts */
    DIFFERS_ONLY_WHEN, DIFFERS_FROM,
    DIFFERS_IS,           /* what the boat is */
    DIFFERS_RADIO         /* what her fixed radio is, by a test */
};

enum radio_test { RADIO_NO_KEY, RADIO_KEY_NOT_SET, RADIO_KEY_UNKNOWN, RADIO_NO_POSITION,
                  RADIO_SECOND_SET };

/* `item` none: any gear. `trait`: only on boats that may be so; none: on all. */
struct difference_row {
    enum difference_kind kind;
    enum word word;
    enum item_key item, other;
    enum gear_field field;
    unsigned value;
    enum trait trait;
    enum radio_test radio;
    const char *card;     /* that says more; NULL: none */
    enum { CARD_HELPS, CARD_NEEDED } needs;    /* only where she has that card */
};

#define LACKS(name, item_) \
    {.kind = DIFFERS_LACKS, .word = WORD_BRIEF_D_##name, .item = ITEM_##item_}
#define LACKS_AND(name, item_, ...) \
    {.kind = DIFFERS_LACKS, .word = WORD_BRIEF_D_##name, .item = ITEM_##item_, __VA_ARGS__}
#define SAYS(name, item_, field_, value_) \
    {.kind = DIFFERS_SAYS, .word = WORD_BRIEF_D_##name, .item = ITEM_##item_, \
     .field = GEAR_##field_, .value = value_}
#define NOT_SAYS(name, item_, field_, value_) \
    {.kind = DIFFERS_NOT_SAYS, .word = WORD_BRIEF_D_##name, .item = ITEM_##item_, \
     .field = GEAR_##field_, .value = value_}
#define HAS(name, item_, card_) \
    {.kind = DIFFERS_HAS, .word = WORD_BRIEF_D_##name, .item = ITEM_##item_, .card = card_}
#define CUTS(name, kind_, item_, other_) \
    {.kind = kind_, .word = WORD_BRIEF_D_##name, .item = ITEM_##item_, .other = ITEM_##other_}
#define IS(name, trait_, card_) \
    {.kind = DIFFERS_IS, .word = WORD_BRIEF_D_##name, .trait = trait_, .card = card_}
#define RADIO(name, test) \
    {.kind = DIFFERS_RADIO, .word = WORD_BRIEF_D_##name, .radio = test}

static const struct difference_row difference_rows[] = {
    /* to call, and to get off the boat */
    RADIO(NO_RED_KEY, RADIO_NO_KEY),
    RADIO(KEY_NOT_SET, RADIO_KEY_NOT_SET),
    RADIO(KEY_UNKNOWN, RADIO_KEY_UNKNOWN),
    RADIO(NO_POSITION, RADIO_NO_POSITION),
    RADIO(SECOND_SET, RADIO_SECOND_SET),
    LACKS(NO_FIXED_RADIO, vhf_dsc),
    LACKS(NO_HANDHELD, vhf_handheld),
    SAYS(HANDHELD_FLAT, vhf_handheld, charged, ANSWER_NO),
    SAYS(HANDHELD_BELOW, vhf_handheld, from_cockpit, ANSWER_NO),
    LACKS_AND(NO_EPIRB, epirb, .other = ITEM_personal_beacon),
    LACKS_AND(NO_RAFT, liferaft, .card = "abandon_ship"),
    LACKS(NO_GRAB_BAG, grab_bag),
    LACKS(NO_FLARES, flares),
    SAYS(JACKETS_BELOW, lifejacket, from_cockpit, ANSWER_NO),
    /* fire, gas, current */
    LACKS_AND(NO_FIRE_PORT, fire_port, .card = "engine_fire", .needs = CARD_NEEDED),
    SAYS(PORT_UNFIT, engine_extinguisher, fits_port, ANSWER_NO),
    SAYS(FIXED_AUTOMATIC, fixed_extinguisher, automatic, ANSWER_YES),
    LACKS_AND(NO_BLANKET, fire_blanket, .trait = TRAIT_GALLEY, .card = "galley_fire"),
    LACKS_AND(NO_SMOKE_ALARM, smoke_alarm, .trait = TRAIT_CABIN),
    LACKS_AND(NO_CO_ALARM, co_alarm, .trait = TRAIT_CABIN, .card = "carbon_monoxide"),
    LACKS_AND(NO_GAS_ALARM, gas_alarm, .trait = TRAIT_GAS, .card = "gas_leak"),
    HAS(GAS_SHUT, lpg_bottle_valve, NULL),
    HAS(GAS_SHUT, lpg_remote_switch, NULL),
    SAYS(REMOTE_OPEN, lpg_remote_switch, fails_shut, ANSWER_NO),
    HAS(GAS_SHUT, lpg_cabin_valve, NULL),
    LACKS_AND(NO_CABIN_VALVE, lpg_cabin_valve, .trait = TRAIT_GAS),
    CUTS(CUTS_RADIO, DIFFERS_CUTS, NONE, vhf_dsc),
    CUTS(CUTS_PUMP, DIFFERS_CUTS, NONE, bilge_pump_electric),
    CUTS(CUTS_UNKNOWN, DIFFERS_CUTS_UNKNOWN, battery_isolator_service, vhf_dsc),
    CUTS(CUTS_UNKNOWN, DIFFERS_CUTS_UNKNOWN, battery_isolator_engine, vhf_dsc),
    LACKS(NO_BATTERY_SWITCH, battery_isolator_service),
    HAS(LITHIUM, lithium_bank, "battery_fire"),
    HAS(PETROL, petrol_stowage, "petrol_leak"),
    /* water */
    LACKS(NO_ELECTRIC_PUMP, bilge_pump_electric),
    NOT_SAYS(PUMP_SWITCH, bilge_pump_electric, automatic, ANSWER_YES),
    LACKS(NO_HAND_PUMP, bilge_pump_manual),
    SAYS(NO_VALVE, seacock, valve, ANSWER_NO),
    IS(TWO_HULLS, TRAIT_CATAMARAN, NULL), IS(TWO_HULLS, TRAIT_TRIMARAN, NULL),
    /* people */
    LACKS_AND(NO_HARNESS, harness_tether, .trait = TRAIT_SAIL),
    LACKS(NO_LINE, heaving_line),
    LACKS_AND(NO_LIFTING, recovery_sling, .other = ITEM_recovery_tackle, .card = "man_overboard"),
    LACKS(NO_LADDER, boarding_ladder),
    SAYS(LADDER_DECK, boarding_ladder, from_water, ANSWER_NO),
    LACKS(NO_FIRST_AID, first_aid_kit),
    /* engine, steering, anchor */
    IS(TWO_ENGINES, TRAIT_TWO_ENGINES, NULL),
    IS(PETROL_ENGINE, TRAIT_PETROL_TANK, "petrol_leak"),
    IS(ELECTRIC_DRIVE, TRAIT_ELECTRIC, NULL),
    IS(GENERATOR, TRAIT_GENERATOR, NULL),
    HAS(KILL_CORD, outboard_kill, NULL),
    SAYS(STOP_CABLE, engine_stop, stop, STOP_MECHANICAL),
    SAYS(NEUTRAL, throttle, upright, ANSWER_NO),
    LACKS_AND(NO_TILLER, emergency_tiller, .card = "steering_gone"),
    LACKS(NO_WINDLASS, windlass),
    SAYS(CHAIN_LOOSE, anchor_main, chain_end, CHAIN_END_LOOSE),
    /* what stops a hand */
    {.kind = DIFFERS_ONLY_WHEN, .word = WORD_BRIEF_D_ONLY_WHEN},
    {.kind = DIFFERS_FROM, .word = WORD_BRIEF_D_FROM},
    SAYS(LOCKED, NONE, locked, ANSWER_YES),
    SAYS(SEIZED, NONE, works, WORKS_SEIZED),
    SAYS(STIFF, NONE, works, WORKS_STIFF),
};

static const struct form_column difference_columns[] = {
    {FORM_SIGN, "", 0}, {FORM_TEXT, "", 0}, {FORM_TICK, "", 0}};

/* ---- a line ---- */

static const struct phrase *difference_fact(struct briefing *briefing,
                                            const struct equipment *gear)
{
    struct composing *composing = &briefing->writer.composing;
    return gear == NULL ? second_station_place(composing) : only_phrase(composing, gear);
}

static void difference_line_add(struct briefing *briefing, const struct difference_row *row,
                           const struct equipment *gear, struct place origin)
{
    struct composing *composing = &briefing->writer.composing;
    struct arena *arena = composing->arena;
    const struct phrase *said =
        phrase_word(arena, row->word, "gear", gear == NULL ? NULL : brief_gear(briefing, gear),
                    "place", gear == NULL ? NULL : brief_place(briefing, gear), "fact",
                    difference_fact(briefing, gear), NULL);
    const struct phrase *card = row->card == NULL ? NULL : card_numbers(composing, row->card);
    if (card != NULL)
        said = phrase_joined(arena, WORD_JOIN_SPACE, said,
                             phrase_word(arena, WORD_BRIEF_SEE_CARD, "number", card, NULL), NULL);
    const struct form_cell cells[3] = {brief_sign(gear), brief_cell(briefing, said), {"", NULL}};
    form_line_add(&briefing->writer, cells, FORM_PLAIN, origin);
}

/* ---- gear ---- */

static bool isolates(const struct equipment *gear, enum item_key other)
{
    for (size_t i = 0; i < gear->cuts.count; i++)
        if (gear->cuts.items[i].value == other)
            return true;
    return false;
}

static bool piece_differs(const struct difference_row *row, const struct equipment *gear)
{
    switch (row->kind) {
    case DIFFERS_HAS:
        return true;
    case DIFFERS_SAYS:
        return field_choice(gear_field_row(row->field), gear) == row->value;
    case DIFFERS_NOT_SAYS:
        return field_choice(gear_field_row(row->field), gear) != row->value;
    case DIFFERS_CUTS:
        return isolates(gear, row->other);
    case DIFFERS_CUTS_UNKNOWN:
        return !gear->cuts.given;
    case DIFFERS_ONLY_WHEN:
        return gear->only_when.count > 0;
    case DIFFERS_FROM:
        return gear->from.place_zone != NULL && gear->from.place_zone != gear->place_zone;
    case DIFFERS_LACKS: case DIFFERS_IS: case DIFFERS_RADIO:
        break;
    }
    promise_unreached();
}

static void pieces_add(struct briefing *briefing, const struct difference_row *row)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if ((row->item == ITEM_NONE || gear->kind->item == row->item) && piece_differs(row, gear))
            difference_line_add(briefing, row, gear, gear->place);
    }
}

/* ---- what is not fitted, what the boat is ---- */

static bool may_be(const struct boat *boat, enum trait trait)
{
    return trait == TRAIT_NONE || boat_is(boat, trait, ZONE_NONE);
}

static void lacking_add(struct briefing *briefing, const struct difference_row *row)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct absence *absence = boat_absence(boat, row->item, ZONE_NONE);
    bool hers = row->needs != CARD_NEEDED ||
                slot_of(&briefing->writer.composing, row->card) != NULL;
    bool lacks = boat_fitted(boat, row->item) == ANSWER_NO &&
                 (row->other == ITEM_NONE || boat_fitted(boat, row->other) == ANSWER_NO);
    if (hers && lacks && may_be(boat, row->trait) && !boat_cannot_have(boat, row->item))
        difference_line_add(briefing, row, NULL, absence == NULL ? boat->place : absence->place);
}

static void trait_add(struct briefing *briefing, const struct difference_row *row)
{
    struct trait_fact fact = boat_trait(briefing->writer.composing.in->boat, row->trait,
                                        ZONE_NONE);
    if (fact.recorded == ANSWER_YES)
        difference_line_add(briefing, row, NULL, fact.place);
}

/* ---- the fixed radio ---- */

static bool radio_differs(struct briefing *briefing, enum radio_test test)
{
    const struct radio_facts *radio = &briefing->writer.composing.in->boat->radio;
    bool key = radio->dsc.answer != ANSWER_NO;
    switch (test) {
    case RADIO_NO_KEY:
        return !key;
    case RADIO_KEY_NOT_SET:
        return key && radio->mmsi_programmed.answer == ANSWER_NO;
    case RADIO_KEY_UNKNOWN:
        return key && radio->mmsi_programmed.answer == ANSWER_NOT_RECORDED;
    case RADIO_NO_POSITION:
        return key && radio->gnss.answer != ANSWER_YES;
    case RADIO_SECOND_SET:
        return second_station_place(&briefing->writer.composing) != NULL;
    }
    promise_unreached();
}

static void radio_add(struct briefing *briefing, const struct difference_row *row)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    if (boat_fitted(boat, ITEM_vhf_dsc) == ANSWER_YES && radio_differs(briefing, row->radio))
        difference_line_add(briefing, row, NULL, place_or(boat->radio_place, boat->place));
}

/* ---- the section ---- */

static void difference_row_add(struct briefing *briefing, const struct difference_row *row)
{
    switch (row->kind) {
    case DIFFERS_LACKS:
        lacking_add(briefing, row);
        return;
    case DIFFERS_IS:
        trait_add(briefing, row);
        return;
    case DIFFERS_RADIO:
        radio_add(briefing, row);
        return;
    case DIFFERS_HAS: case DIFFERS_SAYS: case DIFFERS_NOT_SAYS: case DIFFERS_CUTS:
    case DIFFERS_CUTS_UNKNOWN: case DIFFERS_ONLY_WHEN: case DIFFERS_FROM:
        pieces_add(briefing, row);
        return;
    }
    promise_unreached();
}

/* Draught, length, people: limits of every boat, each her own. */
static void limits_add(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct boat_facts *facts = &boat->facts;
    const struct phrase *said =
        phrase_word(arena,
                    facts->draught_m.given ? WORD_BRIEF_LIMITS : WORD_BRIEF_LIMITS_UNKNOWN,
                    "draught", phrase_verbatim(arena, facts->draught_m.text), "length",
                    phrase_verbatim(arena, facts->loa_m.text), "most",
                    phrase_verbatim(arena, facts->persons_max.text), NULL);
    const struct form_cell cells[3] = {brief_sign(NULL), brief_cell(briefing, said), {"", NULL}};
    form_line_add(&briefing->writer, cells, FORM_PLAIN,
                  place_or(facts->draught_m.place, boat->place));
}

void brief_differs_add(struct briefing *briefing)
{
    brief_section_add(briefing, &(struct brief_section){
                                    .title = WORD_BRIEF_DIFFERS,
                                    .note = brief_word(briefing, WORD_BRIEF_DIFFERS_NOTE),
                                    .columns = difference_columns, .column_count = 3,
                                    .start = FORM_NEW_PAGE});
    limits_add(briefing);
    for (size_t i = 0; i < sizeof difference_rows / sizeof *difference_rows; i++)
        difference_row_add(briefing, &difference_rows[i]);
}
