/* boat_traits.c - what a boat is, from her record (room: record). Three answers: yes, no,
 * and not recorded. */
#include "record.h"

#include "promise.h"

#define TRAIT_WORD(name, word, ...) word,
const char *const trait_words[] = {TRAIT_LIST(TRAIT_WORD) NULL};
#undef TRAIT_WORD

#define TRAIT_ROW(name, word, sentence, unrecorded) [name] = {sentence, ANSWER_##unrecorded},
static const struct { const char *sentence; enum answer unrecorded; } trait_rows[] = {
    TRAIT_LIST(TRAIT_ROW)};
#undef TRAIT_ROW

const char *trait_sentence(enum trait trait)
{
    promise(trait > TRAIT_NONE && trait < TRAIT_COUNT);
    return trait_rows[trait].sentence;
}

#define ANSWER_IF(is) ((is) ? ANSWER_YES : ANSWER_NO)

/* ---- the engines ---- */

/* Has an engine what is asked of it? */
typedef enum answer (*engine_test)(const struct engine *engine);

static enum answer burns_diesel(const struct engine *engine)
{
    return engine->fuel.value == FUEL_NONE ? ANSWER_NOT_RECORDED
                                           : ANSWER_IF(engine->fuel.value == FUEL_DIESEL);
}

static enum answer burns_petrol(const struct engine *engine)
{
    return engine->fuel.value == FUEL_NONE ? ANSWER_NOT_RECORDED
                                           : ANSWER_IF(engine->fuel.value == FUEL_PETROL);
}

static enum answer drives_her(const struct engine *engine)
{
    return engine->drive.value == DRIVE_NONE ? ANSWER_NOT_RECORDED
                                             : ANSWER_IF(engine->drive.value != DRIVE_GENERATOR);
}

static enum answer is_outboard(const struct engine *engine)
{
    return engine->drive.value == DRIVE_NONE ? ANSWER_NOT_RECORDED
                                             : ANSWER_IF(engine->drive.value == DRIVE_OUTBOARD);
}

static enum answer is_jet(const struct engine *engine)
{
    return engine->drive.value == DRIVE_NONE ? ANSWER_NOT_RECORDED
                                             : ANSWER_IF(engine->drive.value == DRIVE_JET);
}

static enum answer is_generator(const struct engine *engine)
{
    return engine->drive.value == DRIVE_NONE ? ANSWER_NOT_RECORDED
                                             : ANSWER_IF(engine->drive.value == DRIVE_GENERATOR);
}

/* Both: one that is not so decides, whatever is not recorded of the other. */
static enum answer both(enum answer first, enum answer second)
{
    if (first == ANSWER_NO || second == ANSWER_NO)
        return ANSWER_NO;
    return first == ANSWER_YES && second == ANSWER_YES ? ANSWER_YES : ANSWER_NOT_RECORDED;
}

static enum answer contrary(enum answer answer)
{
    return answer == ANSWER_NOT_RECORDED ? answer : ANSWER_IF(answer == ANSWER_NO);
}

static enum answer is_inside(const struct engine *engine)
{
    return contrary(is_outboard(engine));
}

static enum answer is_petrol_inside(const struct engine *engine)
{
    return both(burns_petrol(engine), is_inside(engine));
}

static enum answer takes_current(const struct engine *engine)
{
    return engine->fuel.value == FUEL_NONE ? ANSWER_NOT_RECORDED
                                           : ANSWER_IF(engine->fuel.value == FUEL_ELECTRIC);
}

static enum answer drives_by_current(const struct engine *engine)
{
    return both(takes_current(engine), drives_her(engine));
}

static enum answer drives_by_fuel(const struct engine *engine)
{
    return both(contrary(takes_current(engine)), drives_her(engine));
}

static struct trait_fact some_engine(const struct boat *boat, engine_test test,
                                     enum zone_key space)
{
    struct trait_fact some = {boat->engines_given ? ANSWER_NO : ANSWER_NOT_RECORDED,
                              boat->engines_place};
    for (size_t i = 0; i < boat->engine_count; i++) {
        const struct engine *engine = &boat->engines[i];
        enum answer is = space == ZONE_NONE || engine->space.value == space ? test(engine)
                                                                            : ANSWER_NO;
        if (is == ANSWER_YES)
            return (struct trait_fact){is, engine->place};
        if (is == ANSWER_NOT_RECORDED)
            some = (struct trait_fact){is, engine->place};
    }
    return some;
}

/* Where no engine is recorded, as many as most boats of her hull have. */
static struct trait_fact two_engines(const struct boat *boat)
{
    struct trait_fact two = {boat->engines_given ? ANSWER_NO : ANSWER_NOT_RECORDED,
                             boat->engines_place};
    size_t known = 0, possible = 0;
    for (size_t i = 0; i < boat->engine_count; i++) {
        enum answer drives = drives_her(&boat->engines[i]);
        known += drives == ANSWER_YES ? 1 : 0;
        possible += drives != ANSWER_NO ? 1 : 0;
    }
    if (known > 1 || (!boat->engines_given && boat->engine_space_count > 1))
        two.recorded = ANSWER_YES;
    else if (possible > 1)
        two.recorded = ANSWER_NOT_RECORDED;
    return two;
}

/* One that drives her and stands in no way in that space: another space, or outside. Where no
 * engine is recorded, as many spaces as most boats of her hull have. */
static struct trait_fact other_engine(const struct boat *boat, enum zone_key space)
{
    struct trait_fact other = {ANSWER_NO, boat->engines_place};
    if (!boat->engines_given)
        other.recorded = ANSWER_IF(boat->engine_space_count > 1);
    for (size_t i = 0; space != ZONE_NONE && i < boat->engine_count; i++)
        if (boat->engines[i].space.value != space &&
            drives_her(&boat->engines[i]) == ANSWER_YES)
            return (struct trait_fact){ANSWER_YES, boat->engines[i].place};
    return other;
}

/* ---- what else burns ---- */

/* Yes if one says so; not recorded if one of them is not. */
static struct trait_fact either(struct trait_fact first, struct trait_fact second)
{
    if (first.recorded == ANSWER_YES || second.recorded == ANSWER_NO)
        return first;
    return second.recorded == ANSWER_YES || first.recorded == ANSWER_NO ? second : first;
}

/* Heaters burn diesel too; whether she has one is no engine's fact, so that a heater which
 * nobody recorded leaves open only what her engines leave open. */
static struct trait_fact has_diesel(const struct boat *boat, enum zone_key space)
{
    struct trait_fact engines = some_engine(boat, burns_diesel, space);
    struct trait_fact heater = trait_by_gear(boat, ITEM_fuel_shutoff_heater);
    if (space != ZONE_NONE || heater.recorded != ANSWER_YES)
        return engines;
    return either(engines, heater);
}

static struct trait_fact has_petrol(const struct boat *boat)
{
    return either(some_engine(boat, burns_petrol, ZONE_NONE),
                  trait_by_gear(boat, ITEM_petrol_stowage));
}

/* Her engines tell; where none is recorded, what stops it. */
static struct trait_fact has_generator(const struct boat *boat, enum zone_key space)
{
    return boat->engines_given ? some_engine(boat, is_generator, space)
                               : trait_by_gear(boat, ITEM_generator_stop);
}

static struct trait_fact has_generator_alone(const struct boat *boat, enum zone_key space)
{
    struct trait_fact alone = has_generator(boat, space);
    struct trait_fact driving = some_engine(boat, drives_by_fuel, space);
    if (alone.recorded != ANSWER_NO && driving.recorded != ANSWER_NO)
        return (struct trait_fact){contrary(driving.recorded), driving.place};
    return alone;
}

/* ---- the rest ---- */

static struct trait_fact is_hull(const struct boat *boat, enum hull hull)
{
    return (struct trait_fact){boat->facts.hull.value == HULL_NONE
                                   ? ANSWER_NOT_RECORDED
                                   : ANSWER_IF(boat->facts.hull.value == hull),
                               boat->facts.hull.place};
}

static struct trait_fact has_sails(const struct boat *boat)
{
    return (struct trait_fact){boat->facts.rig.value == RIG_NONE
                                   ? ANSWER_NOT_RECORDED
                                   : ANSWER_IF(boat->facts.rig.value == RIG_SAIL),
                               boat->facts.rig.place};
}

/* Rooms below: a boat without is open. */
static struct trait_fact has_cabin(const struct boat *boat)
{
    const struct zone_values *rooms = &boat->facts.rooms;
    return (struct trait_fact){rooms->given ? ANSWER_IF(boat_has_cabin(boat))
                                            : ANSWER_NOT_RECORDED,
                               rooms->given ? rooms->place : boat->place};
}

/* Where a room for it is recorded, or a cooker. */
static struct trait_fact has_galley(const struct boat *boat)
{
    const struct zone_values *rooms = &boat->facts.rooms;
    struct trait_fact room = {rooms->given ? ANSWER_NO : ANSWER_NOT_RECORDED, rooms->place};
    const struct zone_value *galley = zone_value_find(rooms, ZONE_galley);
    if (galley == NULL)
        galley = zone_value_find(rooms, ZONE_bridgedeck);
    if (galley != NULL)
        room = (struct trait_fact){ANSWER_YES, galley->place};
    return either(room, trait_by_gear(boat, ITEM_cooker));
}

static struct trait_fact has_gas(const struct boat *boat)
{
    const struct answer_value *carried = &boat->gas.carried;
    return (struct trait_fact){carried->answer,
                               carried->answer != ANSWER_NOT_RECORDED ? carried->place
                                                                      : boat->gas_place};
}

/* Of a set without its MMSI the key sends nothing. */
static struct trait_fact has_red_key(const struct boat *boat)
{
    struct trait_fact fixed = trait_by_gear(boat, ITEM_vhf_dsc);
    const struct answer_value *dsc = &boat->radio.dsc;
    const struct answer_value *programmed = &boat->radio.mmsi_programmed;
    const struct answer_value *decides = dsc->answer != ANSWER_YES ? dsc : programmed;
    if (fixed.recorded == ANSWER_NO)
        return fixed;
    return (struct trait_fact){decides->answer, decides->answer == ANSWER_NOT_RECORDED
                                                    ? boat->radio_place : decides->place};
}

/* By the fixed set or by a handheld. */
static struct trait_fact can_alert(const struct boat *boat)
{
    struct trait_fact fixed = trait_by_gear(boat, ITEM_vhf_dsc);
    const struct answer_value *dsc = &boat->radio.dsc;
    if (fixed.recorded != ANSWER_NO)
        fixed = (struct trait_fact){dsc->answer, dsc->answer == ANSWER_NOT_RECORDED
                                                     ? boat->radio_place : dsc->place};
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->item.value == ITEM_vhf_handheld && gear->dsc.answer == ANSWER_YES)
            return (struct trait_fact){ANSWER_YES, gear->place};
    }
    return fixed;
}

static struct trait_fact trait_second_station(const struct boat *boat)
{
    const struct gear_spot *station = &boat->radio.second_station;
    bool on_deck = station->place_zone != NULL && station->place_zone->level != LEVEL_BELOW;
    return (struct trait_fact){ANSWER_IF(on_deck), station->section.place};
}

static struct trait_fact trait_draught(const struct boat *boat)
{
    const struct number_value *draught = &boat->facts.draught_m;
    return (struct trait_fact){ANSWER_IF(draught->given), draught->place};
}

struct trait_fact boat_trait(const struct boat *boat, enum trait trait, enum zone_key space)
{
    switch (trait) {
    case TRAIT_MONOHULL:
        return is_hull(boat, HULL_MONOHULL);
    case TRAIT_CATAMARAN:
        return is_hull(boat, HULL_CATAMARAN);
    case TRAIT_TRIMARAN:
        return is_hull(boat, HULL_TRIMARAN);
    case TRAIT_SAIL:
        return has_sails(boat);
    case TRAIT_CABIN:
        return has_cabin(boat);
    case TRAIT_GALLEY:
        return has_galley(boat);
    case TRAIT_GAS:
        return has_gas(boat);
    case TRAIT_DSC:
        return can_alert(boat);
    case TRAIT_RED_KEY:
        return has_red_key(boat);
    case TRAIT_DIESEL:
        return has_diesel(boat, space);
    case TRAIT_PETROL:
        return has_petrol(boat);
    case TRAIT_PETROL_TANK:
        return some_engine(boat, is_petrol_inside, space);
    case TRAIT_ELECTRIC:
        return some_engine(boat, drives_by_current, space);
    case TRAIT_ENGINE:
        return some_engine(boat, drives_her, space);
    case TRAIT_JET:
        return some_engine(boat, is_jet, space);
    case TRAIT_OUTBOARD:
        return some_engine(boat, is_outboard, space);
    case TRAIT_GENERATOR:
        return has_generator(boat, space);
    case TRAIT_GENERATOR_ALONE:
        return has_generator_alone(boat, space);
    case TRAIT_DINGHY_FOR_ALL:
        return trait_dinghy_for_all(boat);
    case TRAIT_CUTTERS_FIT:
        return trait_cutters_fit(boat);
    case TRAIT_SECOND_STATION:
        return trait_second_station(boat);
    case TRAIT_DRAUGHT:
        return trait_draught(boat);
    case TRAIT_LAY_DOWN:
        return (struct trait_fact){ANSWER_IF(boat->facts.lay_down_place.text != NULL),
                                   boat->facts.lay_down_place.place};
    case TRAIT_OTHER_ENGINE:
        return other_engine(boat, space);
    case TRAIT_TWO_ENGINES:
        return two_engines(boat);
    case TRAIT_NONE:
    case TRAIT_COUNT:
        break;
    }
    promise_unreached();
}

bool boat_is(const struct boat *boat, enum trait trait, enum zone_key space)
{
    enum answer recorded = boat_trait(boat, trait, space).recorded;
    if (recorded == ANSWER_NOT_RECORDED)
        recorded = trait_rows[trait].unrecorded;
    return recorded == ANSWER_YES;
}

/* ---- gear that goes with it ---- */

enum trait item_needs_trait(enum item_key item)
{
    static const struct { enum item_key item; enum trait trait; } needs[] = {
        {ITEM_generator_stop, TRAIT_GENERATOR},
        {ITEM_fuel_shutoff_generator, TRAIT_GENERATOR},
        {ITEM_fuel_shutoff_diesel, TRAIT_DIESEL},
        {ITEM_fuel_shutoff_petrol, TRAIT_PETROL_TANK},
        {ITEM_lpg_locker, TRAIT_GAS},
        {ITEM_lpg_bottle_valve, TRAIT_GAS},
        {ITEM_lpg_remote_switch, TRAIT_GAS},
        {ITEM_lpg_cabin_valve, TRAIT_GAS},
        {ITEM_lpg_hose, TRAIT_GAS},
        {ITEM_throttle, TRAIT_ENGINE},
        {ITEM_engine_start, TRAIT_ENGINE},
        {ITEM_sail_rope, TRAIT_SAIL},
        {ITEM_front_sail_roller, TRAIT_SAIL},
        {ITEM_mainsail_down, TRAIT_SAIL},
    };
    for (size_t i = 0; i < sizeof needs / sizeof *needs; i++)
        if (needs[i].item == item)
            return needs[i].trait;
    return TRAIT_NONE;
}

bool boat_cannot_have(const struct boat *boat, enum item_key item)
{
    enum trait trait = item_needs_trait(item);
    return trait != TRAIT_NONE && boat_trait(boat, trait, ZONE_NONE).recorded == ANSWER_NO;
}
