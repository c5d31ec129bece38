/* conflict_rules.c - facts of one record that stand against each other: what an isolator
 * takes away, what lies inside the space that burns, one piece written twice (room:
 * rules). What holds a card back is told there and not again here. */
#include "rules_room.h"

#include "text.h"

/* ---- isolators ---- */

/* Not when the record does not say: the cards then wait for it, and tell. */
static bool no_handheld_in_reach(const struct boat *boat)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of_kind(boat, ITEM_vhf_handheld, &index)) != NULL;)
        if (gear->from_cockpit.answer != ANSWER_NO)
            return false;
    return boat_fitted(boat, ITEM_vhf_handheld) != ANSWER_NOT_RECORDED;
}

static void cut_unrecorded_tell(const struct rule_run *run, const struct equipment *gear)
{
    const struct boat *boat = run->in->boat;
    if (boat_fitted(boat, ITEM_vhf_dsc) == ANSWER_NO &&
        boat_fitted(boat, ITEM_bilge_pump_electric) == ANSWER_NO)
        return;
    rule_tell(run, CHECK_isolator_unrecorded, place_else(gear->cuts.place, gear->place),
              "turn it off, and see what goes dead; then write what it cuts, such as\n"
              "cuts: [vhf_dsc, bilge_pump_electric], or cuts: [] for neither",
              "whether %s cuts the radio and the pumps is not recorded: it is taken to do so",
              gear_named(run, gear));
}

/* The service isolator cuts radio and pumps on most boats, and the cards are made for
 * it; of another one nobody expects it. */
static bool is_expected_to_cut(const struct equipment *gear)
{
    return gear->kind->item == ITEM_battery_isolator_service;
}

static void radio_cut_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct item_value *radio = item_value_find(&gear->cuts, ITEM_vhf_dsc);
    if (radio == NULL)
        return;
    if (no_handheld_in_reach(run->in->boat))
        rule_tell(run, CHECK_isolator_leaves_no_radio, radio->place,
                  "keep a charged handheld where it is reached without going below, and write "
                  "its\nplace with from_cockpit: yes; or have the radio wired past this isolator "
                  "and take\nvhf_dsc out of cuts",
                  "%s cuts the fixed radio, and no handheld can be reached from the cockpit",
                  gear_named(run, gear));
    else if (!is_expected_to_cut(gear))
        rule_tell(run, CHECK_isolator_cuts_radio, radio->place,
                  "have the radio wired past this isolator and take vhf_dsc out of cuts; until "
                  "then\ntell each crew so",
                  "%s cuts the fixed radio: with it off only a handheld calls for help",
                  gear_named(run, gear));
}

static void pumps_cut_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct item_value *pump = item_value_find(&gear->cuts, ITEM_bilge_pump_electric);
    if (pump == NULL)
        return;
    if (boat_fitted(run->in->boat, ITEM_bilge_pump_manual) == ANSWER_NO)
        rule_tell(run, CHECK_isolator_leaves_no_pump, pump->place,
                  "have the pump wired past this isolator and take bilge_pump_electric out of "
                  "cuts;\nor have a hand pump fitted and write it down as bilge_pump_manual",
                  "%s cuts the electric bilge pumps, and she has no hand pump",
                  gear_named(run, gear));
    else if (!is_expected_to_cut(gear))
        rule_tell(run, CHECK_isolator_cuts_pumps, pump->place,
                  "have the pump wired past this isolator and take bilge_pump_electric out of "
                  "cuts; until\nthen tell each crew so",
                  "%s cuts the electric bilge pumps: with it off nothing pumps by itself",
                  gear_named(run, gear));
}

/* No card turns off the thruster's: what it cuts is looked at where it is recorded. */
static void isolator_check(const struct rule_run *run, const struct equipment *gear)
{
    if (!gear->cuts.given && gear->kind->item != ITEM_battery_isolator_thruster)
        cut_unrecorded_tell(run, gear);
    radio_cut_check(run, gear);
    pumps_cut_check(run, gear);
}

static void isolators_check(const struct rule_run *run)
{
    static const enum item_key isolators[] = {
        ITEM_battery_isolator_service, ITEM_battery_isolator_engine,
        ITEM_battery_isolator_thruster};
    for (size_t i = 0; i < sizeof isolators / sizeof *isolators; i++) {
        size_t index = 0;
        for (const struct equipment *gear;
             (gear = gear_of_kind(run->in->boat, isolators[i], &index)) != NULL;)
            isolator_check(run, gear);
    }
}

/* ---- pumps ---- */

/* A label is for a free outlet at full voltage: on board no pump moves more. Litres an
 * hour taken for litres a minute make pumps seem to win that lose. */
static void pump_check(const struct rule_run *run, const struct equipment *gear)
{
    if (gear->kind->item != ITEM_bilge_pump_electric || !gear->measured_lpm.given ||
        !gear->rated_lph.given || gear->measured_lpm.milli * 60 <= gear->rated_lph.milli)
        return;
    rule_tell(run, CHECK_pump_over_label, gear->measured_lpm.place,
              "time a bucket at its outlet, engine off: 60 times the litres by the seconds; "
              "then correct\nmeasured_lpm, or rated_lph as printed on the pump",
              "%s is measured at %s litres a minute, more than the %s litres an hour of its label",
              gear_named(run, gear), gear->measured_lpm.text, gear->rated_lph.text);
}

/* ---- inside the space that burns ---- */

/* Of the fixed extinguisher the place of its pull is what counts; one that goes off by
 * itself may lie where it is needed. */
static const enum item_key engine_controls[] = {
    ITEM_fuel_shutoff_diesel, ITEM_fuel_shutoff_generator, ITEM_fuel_shutoff_heater,
    ITEM_engine_stop, ITEM_generator_stop, ITEM_engine_blower, ITEM_engine_vent_closure,
    ITEM_engine_extinguisher, ITEM_fixed_extinguisher, ITEM_battery_isolator_engine,
    ITEM_battery_isolator_service, ITEM_NONE};

static bool is_engine_control(const struct equipment *gear)
{
    if (gear->kind->item == ITEM_fixed_extinguisher &&
        gear->automatic.answer == ANSWER_YES)
        return false;
    return item_among(engine_controls, gear->kind->item);
}

/* The zone it is worked from, or one that must be opened or passed to reach it. */
static bool lies_within(const struct equipment *gear, enum zone_key space, struct place *place)
{
    struct zone_value way;
    if (zone_in_space(worked_zone(gear), space)) {
        *place = gear->from.place_zone != NULL ? gear->from.zone.place : gear->zone.place;
        return true;
    }
    for (size_t i = 0; way_zone(gear, i, &way); i++)
        if (zone_in_space(zone_of(way.value), space)) {
            *place = way.place;
            return true;
        }
    return false;
}

static void inside_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct boat *boat = run->in->boat;
    struct place place;
    for (size_t i = 0; i < boat->engine_space_count; i++)
        if (gear_may_serve(boat, gear, boat->engine_spaces[i]) &&
            lies_within(gear, boat->engine_spaces[i], &place)) {
            rule_tell(run, CHECK_control_inside, place,
                      "have it moved, or worked by a pull from outside, then write from: and the "
                      "place it is worked\nfrom, and inside: []; if it is outside already, "
                      "correct the zone",
                      "%s lies inside %s: nobody can reach it when that burns",
                      gear_named(run, gear), zone_word(boat->engine_spaces[i]));
            return;
        }
}

static bool lies_below(const struct equipment *gear, struct place *place)
{
    *place = gear->zone.place;
    if (gear->below.answer == ANSWER_YES || gear->place_zone->level == LEVEL_BELOW)
        return true;
    for (size_t i = 0; i < gear->inside.count; i++) {
        const struct zone *zone = zone_of(gear->inside.items[i].value);
        *place = gear->inside.items[i].place;
        if (zone != NULL && zone->level == LEVEL_BELOW)
            return true;
    }
    return false;
}

static void bottle_check(const struct rule_run *run, const struct equipment *gear)
{
    struct place place;
    if (gear->kind->item == ITEM_lpg_bottle_valve && lies_below(gear, &place))
        rule_tell(run, CHECK_gas_valve_below, place,
                  "have the bottles stand in a locker that opens on deck only and drains "
                  "overboard,\nthen write zone: gas_locker; if they stand there already, "
                  "correct the zone",
                  "%s is below deck: its gas stays in the boat, and a fire there cuts it off",
                  gear_named(run, gear));
}

/* ---- one piece as if it were two ---- */

static char next_sign(const char **at)
{
    while (**at == ' ')
        ++*at;
    char sign = **at;
    if (sign != '\0')
        ++*at;
    return sign >= 'a' && sign <= 'z' ? (char)(sign - 'a' + 'A') : sign;
}

/* Spaces and small letters aside. */
static bool same_number(const struct text_value *a, const struct text_value *b)
{
    const char *one = a->text, *other = b->text;
    if (text_empty(one) || text_empty(other) || text_equal(one, "none"))
        return false;
    for (;;) {
        char sign = next_sign(&one);
        if (sign != next_sign(&other))
            return false;
        if (sign == '\0')
            return true;
    }
}

static void pair_check(const struct rule_run *run, const struct equipment *first,
                       const struct equipment *gear)
{
    bool radio = gear->kind->item == ITEM_vhf_dsc;
    const struct text_value *twice = NULL;
    if (!text_empty(gear->tag.text) && text_equal(first->tag.text, gear->tag.text))
        return;   /* one entry copied: the record has told it */
    if (same_number(&first->hex_id, &gear->hex_id))
        twice = &gear->hex_id;
    else if (!radio && same_number(&first->mmsi, &gear->mmsi))
        twice = &gear->mmsi;
    if (twice != NULL)
        rule_tell(run, CHECK_identity_twice, twice->place,
                  "read both off their labels and correct one; if it is one piece, take out the "
                  "entry\nwhose place is wrong",
                  "%s has the identity %s, as has %s on %s", gear_named(run, gear),
                  twice->text, gear_named(run, first),
                  line_words(first->place, twice->place, run->arena));
    if (first->kind == gear->kind && same_number(&first->serial, &gear->serial))
        rule_tell(run, CHECK_serial_twice, gear->serial.place,
                  "read both off the gear and correct one; if it is one piece, take out the "
                  "entry\nwhose place is wrong",
                  "%s has the serial number %s, as has %s on %s", gear_named(run, gear),
                  gear->serial.text, gear_named(run, first),
                  line_words(first->place, gear->serial.place, run->arena));
}

static void count_check(const struct rule_run *run, const struct equipment *gear)
{
    const struct text_value *one[] = {&gear->hex_id, &gear->mmsi, &gear->serial};
    for (size_t i = 0; gear->count.milli > 1000 && i < sizeof one / sizeof *one; i++)
        if (!text_empty(one[i]->text))
            rule_tell(run, CHECK_identity_of_several, one[i]->place,
                      "write an entry for each piece, with its own tag and number, and take "
                      "count out",
                      "%s is %s pieces, but %s is the number of one", gear_named(run, gear),
                      gear->count.text, one[i]->text);
}

void conflict_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    isolators_check(run);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (is_engine_control(gear))
            inside_check(run, gear);
        bottle_check(run, gear);
        pump_check(run, gear);
        count_check(run, gear);
        for (size_t k = 0; k < i; k++)
            pair_check(run, &boat->equipment[k], gear);
    }
}
