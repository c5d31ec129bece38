/* brief_topics.c - what people aboard are told, each topic with who asks for it; and the gear that
 * they are shown for it, in the order in which one walks past it (room: compose). */
#include "brief_room.h"

#include <stdlib.h>

#include "capacity.h"
#include "promise.h"
#include "trait.h"

static const struct brief_topic_row topic_rows[TOPIC_COUNT] = {
    [TOPIC_DEPUTY] = {WORD_BRIEF_T_DEPUTY, PASS_EVENING, {"N19", "D9"}},
    [TOPIC_JACKETS] = {WORD_BRIEF_T_JACKETS, PASS_EVENING, {"N19", "N15", "N16"}},
    [TOPIC_LIFESAVING] = {WORD_BRIEF_T_LIFESAVING, PASS_EVENING, {"N15"}},
    [TOPIC_EXITS] = {WORD_BRIEF_T_EXITS, PASS_EVENING, {"N16", "N19"}},
    [TOPIC_AID] = {WORD_BRIEF_T_AID, PASS_EVENING, {"N19"}},
    [TOPIC_CALL] = {WORD_BRIEF_T_CALL, PASS_EVENING, {"N19", "D9"}},
    [TOPIC_DANGERS] = {WORD_BRIEF_T_DANGERS, PASS_EVENING, {"N19", "N16"}},
    [TOPIC_FIRE] = {WORD_BRIEF_T_FIRE, PASS_EVENING, {NULL}},
    [TOPIC_GAS] = {WORD_BRIEF_T_GAS, PASS_EVENING, {"S85", "S8"}},
    [TOPIC_TOUCH] = {WORD_BRIEF_T_TOUCH, PASS_EVENING, {NULL}},
    [TOPIC_ALARMS] = {WORD_BRIEF_T_ALARMS, PASS_EVENING, {"D44"}},
    [TOPIC_HEALTH] = {WORD_BRIEF_T_HEALTH, PASS_EVENING, {"N13"}},
    [TOPIC_WORN] = {WORD_BRIEF_T_WORN, PASS_DECK, {"N16"}},
    [TOPIC_SWIM] = {WORD_BRIEF_T_SWIM, PASS_DECK, {"N11", "N18"}},
    [TOPIC_ANCHOR] = {WORD_BRIEF_T_ANCHOR, PASS_DECK, {"N31", "N24"}},
    [TOPIC_LIFT] = {WORD_BRIEF_T_LIFT, PASS_DECK, {"N8"}},
    [TOPIC_MOVE] = {WORD_BRIEF_T_MOVE, PASS_DECK, {NULL}},
    [TOPIC_PLAN] = {WORD_BRIEF_T_PLAN, PASS_DECK, {NULL}},
    [TOPIC_ASHORE] = {WORD_BRIEF_T_ASHORE, PASS_DECK, {"N19"}}};

/* Which gear is shown for what. */
#define SHOWN_LIST(X) \
    X(engine_start, DEPUTY) X(engine_stop, DEPUTY) X(throttle, DEPUTY) X(vhf_dsc, DEPUTY) \
    X(liferaft, DEPUTY) X(flares, DEPUTY) X(light_switch, DEPUTY) X(recovery_sling, DEPUTY) \
    X(recovery_tackle, DEPUTY) X(autopilot, DEPUTY) X(fire_extinguisher, DEPUTY) \
    X(lifejacket, JACKETS) X(harness_tether, WORN) X(jackstay, WORN) \
    X(lifejacket, LIFESAVING) X(liferaft, LIFESAVING) X(hydrostatic_release, LIFESAVING) \
    X(epirb, LIFESAVING) X(personal_beacon, LIFESAVING) X(sart, LIFESAVING) \
    X(vhf_handheld, LIFESAVING) X(grab_bag, LIFESAVING) X(horseshoe_buoy, LIFESAVING) \
    X(danbuoy, LIFESAVING) X(mob_light, LIFESAVING) X(mob_button, LIFESAVING) \
    X(thermal_aid, LIFESAVING) X(water_emergency, LIFESAVING) X(blankets, LIFESAVING) \
    X(knife, LIFESAVING) X(aed, AID) X(hatch, EXITS) X(escape_hatch, EXITS) \
    X(watertight_door, EXITS) X(washboards, EXITS) X(liferaft, EXITS) X(capsize_line, EXITS) \
    X(first_aid_kit, AID) X(torch, AID) X(flares, AID) X(foghorn, AID) X(heaving_line, AID) \
    X(searchlight, AID) X(vhf_dsc, CALL) X(vhf_handheld, CALL) X(position_display, CALL) \
    X(emergency_aerial, CALL) X(lpg_bottle_valve, DANGERS) X(petrol_stowage, DANGERS) \
    X(lithium_bank, DANGERS) X(engine_extinguisher, FIRE) X(fixed_extinguisher, FIRE) \
    X(fire_extinguisher, FIRE) X(fire_blanket, FIRE) X(fire_port, FIRE) \
    X(engine_vent_closure, FIRE) X(engine_blower, FIRE) X(bucket_lanyard, FIRE) \
    X(lpg_locker, GAS) X(lpg_bottle_valve, GAS) X(lpg_remote_switch, GAS) \
    X(lpg_cabin_valve, GAS) X(cooker, GAS) X(seacock, TOUCH) X(softwood_bung, TOUCH) \
    X(bilge_pump_electric, TOUCH) X(bilge_pump_manual, TOUCH) X(bilge_access, TOUCH) \
    X(leak_kit, TOUCH) X(battery_isolator_service, TOUCH) X(battery_isolator_engine, TOUCH) \
    X(battery_isolator_thruster, TOUCH) X(inverter_switch, TOUCH) X(shore_power_inlet, TOUCH) \
    X(solar_isolator, TOUCH) X(fuel_shutoff_diesel, TOUCH) X(fuel_shutoff_petrol, TOUCH) \
    X(fuel_shutoff_generator, TOUCH) X(fuel_shutoff_heater, TOUCH) X(generator_stop, TOUCH) \
    X(heater_stop, TOUCH) X(smoke_alarm, ALARMS) X(co_alarm, ALARMS) X(gas_alarm, ALARMS) \
    X(bilge_alarm, ALARMS) X(engine_stop, SWIM) X(boarding_ladder, SWIM) \
    X(bathing_platform, SWIM) X(dinghy, SWIM) X(outboard_kill, SWIM) X(anchor_main, ANCHOR) \
    X(anchor_kedge, ANCHOR) X(windlass, ANCHOR) X(recovery_sling, LIFT) \
    X(recovery_tackle, LIFT) X(boarding_ladder, LIFT) X(mob_button, LIFT) \
    X(emergency_tiller, MOVE)

static const struct shown_row { enum item_key item; enum brief_topic topic; } shown_rows[] = {
#define SHOWN_ROW(item, topic) {ITEM_##item, TOPIC_##topic},
    SHOWN_LIST(SHOWN_ROW)
#undef SHOWN_ROW
};

const struct brief_topic_row *brief_topic_row(enum brief_topic topic)
{
    promise(topic < TOPIC_COUNT);
    return &topic_rows[topic];
}

size_t brief_topic_number(enum brief_topic topic)
{
    promise(topic < TOPIC_COUNT);
    return (size_t)topic + 1;
}

bool brief_topic_shows(enum brief_topic topic, enum item_key item)
{
    for (size_t i = 0; i < sizeof shown_rows / sizeof *shown_rows; i++)
        if (shown_rows[i].item == item && shown_rows[i].topic == topic)
            return true;
    return false;
}

/* ---- a topic ---- */

/* "46 CFR 185, MGN 280, superseded": who asks for it; "practice" where no authority does. */
static const struct phrase *topic_tags(struct briefing *briefing,
                                       const struct brief_topic_row *row)
{
    struct composing *composing = &briefing->writer.composing;
    const struct phrase *tags = NULL;
    for (size_t i = 0; i < TOPIC_SOURCES_MOST && row->sources[i] != NULL; i++) {
        const struct authority *authority = authority_find(composing->in->authorities,
                                                           row->sources[i]);
        promise(authority != NULL);
        const struct phrase *tag = phrase_text(composing->arena, &authority->tag);
        if (authority->status.value == SOURCE_SUPERSEDED)
            tag = phrase_word(composing->arena, WORD_BRIEF_SUPERSEDED, "tag", tag, NULL);
        tags = phrase_joined(composing->arena, WORD_JOIN_SEMICOLON, tags, tag, NULL);
    }
    return tags == NULL ? brief_word(briefing, WORD_BRIEF_PRACTICE) : tags;
}

/* Of all rafts; NULL: whether there is one, or for how many one is, nobody recorded. */
static const struct phrase *raft_places_said(const struct briefing *briefing)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct raft_capacity raft = raft_capacity(boat->equipment, boat->equipment_count, 0);
    if (boat_fitted(boat, ITEM_liferaft) == ANSWER_NOT_RECORDED || raft.unrecorded > 0)
        return NULL;
    return brief_number(briefing, (size_t)raft.places);
}

static const struct phrase *recorded_or_ask(const struct briefing *briefing,
                                            const struct phrase *recorded)
{
    return recorded == NULL ? brief_word(briefing, WORD_BRIEF_UNRECORDED) : recorded;
}

static const struct phrase *topic_said(struct briefing *briefing,
                                       const struct brief_topic_row *row)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct boat_facts *facts = &briefing->writer.composing.in->boat->facts;
    const struct base_record *base = briefing->writer.composing.in->base;
    const struct phrase *draught =
        facts->draught_m.given ? phrase_word(arena, WORD_BRIEF_METRES, "metres",
                                             phrase_verbatim(arena, facts->draught_m.text), NULL)
                               : NULL;
    const struct phrase *topic =
        phrase_word(arena, row->word, "place",
                    recorded_or_ask(briefing,
                                    phrase_zone(arena, zone_of(facts->mounted_zone.value))),
                    "places", recorded_or_ask(briefing, raft_places_said(briefing)), "draught",
                    recorded_or_ask(briefing, draught), "phone",
                    recorded_or_ask(briefing, phrase_text(arena, &base->phone_24h)), NULL);
    if (row->word == WORD_BRIEF_T_GAS && !boat_is(briefing->writer.composing.in->boat, TRAIT_GAS,
                                                  ZONE_NONE))
        topic = brief_word(briefing, WORD_BRIEF_T_NO_GAS);
    return phrase_word(arena, WORD_BRIEF_ASKED_BY, "topic", topic, "tags",
                       topic_tags(briefing, row), NULL);
}

enum { TOPIC_COLUMNS = 4, WALK_COLUMNS = 5 };

void brief_topics_add(struct briefing *briefing, enum brief_pass pass)
{
    const struct form_writer *writer = &briefing->writer;
    struct place boat = writer->composing.in->boat->place;
    const struct form_column columns[TOPIC_COLUMNS] = {
        {FORM_NUMBER, form_word(writer, WORD_BRIEF_HEAD_NUMBER), 0},
        {FORM_TEXT, form_word(writer, WORD_BRIEF_HEAD_TOPIC), 0},
        {FORM_TICK, form_word(writer, WORD_BRIEF_HEAD_DONE), 0},
        {FORM_BLANK, form_word(writer, WORD_BRIEF_HEAD_SHOWN), 180}};
    brief_section_add(briefing,
                      &(struct brief_section){
                          .title = pass == PASS_EVENING ? WORD_BRIEF_TOPICS_EVENING
                                                        : WORD_BRIEF_TOPICS_DECK,
                          .note = brief_word(briefing, WORD_BRIEF_TOPICS_NOTE),
                          .columns = columns, .column_count = TOPIC_COLUMNS});
    for (enum brief_topic topic = 0; topic < TOPIC_COUNT; topic++) {
        if (topic_rows[topic].pass != pass)
            continue;
        const struct form_cell cells[TOPIC_COLUMNS] = {
            brief_cell(briefing, brief_number(briefing, brief_topic_number(topic))),
            brief_cell(briefing, topic_said(briefing, &topic_rows[topic])), {"", NULL},
            brief_blank(briefing, NULL)};
        form_line_add(&briefing->writer, cells, FORM_PLAIN, boat);
    }
}

/* ---- the walk ---- */

/* A piece, and where one stands before it. */
struct shown_piece {
    const struct equipment *gear;
    const struct zone *zone;
    enum side side;
    size_t index;
};

static int shown_compare(const void *first, const void *second)
{
    const struct shown_piece *a = first, *b = second;
    int a_station = a->zone->from + a->zone->to, b_station = b->zone->from + b->zone->to;
    if (a_station != b_station)
        return a_station < b_station ? -1 : 1;
    if (a->zone->family != b->zone->family)
        return a->zone->family < b->zone->family ? -1 : 1;
    if (a->side != b->side)
        return a->side < b->side ? -1 : 1;
    return (a->index > b->index) - (a->index < b->index);
}

/* "2, 3": the numbers of its topics; NULL: it is shown for none. */
static const struct phrase *topic_numbers(const struct briefing *briefing, enum item_key item)
{
    const struct phrase *numbers = NULL;
    for (enum brief_topic topic = 0; topic < TOPIC_COUNT; topic++)
        if (brief_topic_shows(topic, item))
            numbers = phrase_joined(briefing->writer.composing.arena, WORD_JOIN_COMMA, numbers,
                                    brief_number(briefing, brief_topic_number(topic)), NULL);
    return numbers;
}

/* A hand that stands on deck is shown it there, wherever the thing itself is. */
static bool shown_in(const struct briefing *briefing, const struct equipment *gear,
                     enum brief_pass pass)
{
    bool below = worked_zone(gear)->level == LEVEL_BELOW;
    return below == (pass == PASS_EVENING) &&
           topic_numbers(briefing, gear->kind->item) != NULL;
}

static struct shown_piece *pieces_shown(const struct briefing *briefing, enum brief_pass pass,
                                        size_t *count)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    struct shown_piece *pieces = arena_array(briefing->writer.composing.arena,
                                             boat->equipment_count, sizeof *pieces);
    *count = 0;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (shown_in(briefing, gear, pass))
            pieces[(*count)++] = (struct shown_piece){gear, worked_zone(gear), worked_side(gear),
                                                      i};
    }
    if (*count > 0)
        qsort(pieces, *count, sizeof *pieces, shown_compare);
    return pieces;
}

void brief_walk_add(struct briefing *briefing, enum brief_pass pass)
{
    const struct form_writer *writer = &briefing->writer;
    const struct form_column columns[WALK_COLUMNS] = {
        {FORM_SIGN, form_word(writer, WORD_BRIEF_HEAD_TAG), 0},
        {FORM_TEXT, form_word(writer, WORD_BRIEF_HEAD_WHAT), 0},
        {FORM_NUMBER, form_word(writer, WORD_BRIEF_HEAD_TOPIC), 0},
        {FORM_TICK, form_word(writer, WORD_BRIEF_HEAD_DONE), 0},
        {FORM_BLANK, form_word(writer, WORD_BRIEF_HEAD_SHOWN), 180}};
    size_t count;
    const struct shown_piece *pieces = pieces_shown(briefing, pass, &count);
    if (count == 0)
        return;
    brief_section_add(briefing, &(struct brief_section){
                                    .title = pass == PASS_EVENING ? WORD_BRIEF_WALK_BELOW
                                                                  : WORD_BRIEF_WALK_DECK,
                                    .columns = columns, .column_count = WALK_COLUMNS});
    for (size_t i = 0; i < count; i++) {
        const struct equipment *gear = pieces[i].gear;
        const struct phrase *said =
            phrase_word(writer->composing.arena, WORD_BRIEF_WALK_LINE, "gear",
                        brief_gear(briefing, gear), "place", brief_place(briefing, gear), NULL);
        const struct form_cell cells[WALK_COLUMNS] = {
            brief_sign(gear), brief_cell(briefing, said),
            brief_cell(briefing, topic_numbers(briefing, gear->kind->item)), {"", NULL},
            brief_blank(briefing, NULL)};
        form_line_add(&briefing->writer, cells, FORM_PLAIN, gear->place);
    }
}
