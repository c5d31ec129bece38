/* fact_rules.c - checks of single fields, one row each (room: rules): a value that is
 * wrong, or one that is not recorded. Not here: fields that hold a card back when they
 * are not recorded. */
#include "rules_room.h"

/* One thing that may be wrong with, or missing in, the record of one piece of gear. */
struct fact {
    enum check_name check;
    enum item_key item;       /* none: every kind */
    enum gear_field field;
    unsigned value;           /* of its enum; 0: told where it is not recorded */
    bool catamaran;           /* on catamarans only */
    bool one_will_do;         /* not told where another of its kind has `yes` */
    bool below;               /* told only of pieces below deck */
    const char *says;         /* after the name of the piece */
    const char *remedy;
};

#define CAPSIZED(kind) \
    {.check = CHECK_inverted_out_of_reach, .item = kind, .field = GEAR_reach_inverted, \
     .value = ANSWER_NO, .catamaran = true, .one_will_do = true, \
     .says = "cannot be reached when she has capsized", \
     .remedy = "stow it where people in and on the upturned hull get at it, then write its " \
               "place and\nreach_inverted: yes"}, \
    {.check = CHECK_inverted_unrecorded, .item = kind, .field = GEAR_reach_inverted, \
     .catamaran = true, .one_will_do = true, \
     .says = "may be out of reach when she has capsized: that is not recorded", \
     .remedy = "think her upside down, and look whether a hand gets at it; then write\n" \
               "reach_inverted: yes or reach_inverted: no"}

#define MADE_FAST(kind) \
    {.check = CHECK_beacon_made_fast, .item = kind, .field = GEAR_lanyard, \
     .value = LANYARD_MADE_FAST, \
     .says = "is tied to the boat by its own line: it goes down with her", \
     .remedy = "untie it and stow the line in its pocket: it is for the raft or a person; " \
               "then write\nlanyard: stowed"}

#define REACH(kind) \
    {.check = CHECK_reach_unrecorded, .item = kind, .field = GEAR_from_cockpit, .below = true, \
     .says = "lies below, and cards for fire and gas take it for out of reach", \
     .remedy = "if a hand gets it from deck, head in the open air, write from_cockpit: yes, " \
               "else\nfrom_cockpit: no"}

#define CHAIN_END(name, how, ...) \
    {.check = CHECK_##name, .item = ITEM_anchor_main, .field = GEAR_chain_end, .value = how, \
     __VA_ARGS__}
#define CHAIN_CORD \
    "tie it to its eye in the locker with cord as strong as the chain's pull in a blow, long " \
    "enough\nto be cut on deck; then write chain_end: cord"

#define UNTRIED(kind, how) \
    {.check = CHECK_gear_untried, .item = kind, .field = GEAR_tried, \
     .says = "has no date on which it was tried on this boat", \
     .remedy = how ", then write that day as tried"}

static const struct fact facts[] = {
    REACH(ITEM_lifejacket),
    REACH(ITEM_fire_extinguisher),
    REACH(ITEM_vhf_handheld),
    REACH(ITEM_epirb),
    REACH(ITEM_grab_bag),
    {.check = CHECK_pump_feed_unrecorded, .item = ITEM_bilge_pump_electric, .field = GEAR_fed_by,
     .says = "may be fed by the generator: that is not recorded, so flooding leaves it on",
     .remedy = "read its label: 12 or 24 V is fed_by: battery, 230 V is fed_by: mains"},
    {.check = CHECK_gear_locked, .field = GEAR_locked, .value = ANSWER_YES,
     .says = "is under lock: nobody has the key in time",
     .remedy = "take the lock off while she is in use, then write locked: no"},
    {.check = CHECK_pump_not_from_cockpit, .item = ITEM_bilge_pump_manual,
     .field = GEAR_from_cockpit, .value = ANSWER_NO, .one_will_do = true,
     .says = "cannot be worked from the cockpit",
     .remedy = "have a hand pump fitted there: with gas or smoke below nobody can pump; then\n"
               "record it with from_cockpit: yes"},
    {.check = CHECK_gas_switch_fails_open, .item = ITEM_lpg_remote_switch, .field = GEAR_fails_shut,
     .value = ANSWER_NO, .says = "leaves the gas open when the current fails",
     .remedy = "have a valve put in that shuts without current, then write fails_shut: yes"},
    {.check = CHECK_gas_switch_unrecorded, .item = ITEM_lpg_remote_switch, .field = GEAR_fails_shut,
     .says = "may leave the gas open when the current fails: that is not recorded",
     .remedy = "light a burner and cut its current; if the flame dies write fails_shut: yes, "
               "else\nfails_shut: no"},
    {.check = CHECK_gas_valve_kind_unrecorded, .item = ITEM_lpg_bottle_valve, .field = GEAR_kind,
     .says = "is not said to be a handwheel, a lever or a clip-on",
     .remedy = "look at the bottle, then write kind: handwheel, kind: lever or kind: clip-on"},
    {.check = CHECK_raft_line_unrecorded, .item = ITEM_liferaft, .field = GEAR_painter,
     .says = "has no painter recorded: where its line is made fast",
     .remedy = "follow the line from the raft to the strong point it is tied to, or must be tied "
               "to,\nthen write that as painter"},
    {.check = CHECK_raft_line_unrecorded, .item = ITEM_liferaft, .field = GEAR_release,
     .says = "has no release recorded: how it comes free of its stowage",
     .remedy = "look how the lashing opens, then write it as release, such as release: slip "
               "hook"},
    {.check = CHECK_raft_persons_unrecorded, .item = ITEM_liferaft, .field = GEAR_persons,
     .says = "is not said to be for how many people",
     .remedy = "read it off the raft or its service card, then write it as persons"},
    MADE_FAST(ITEM_epirb),
    MADE_FAST(ITEM_personal_beacon),
    MADE_FAST(ITEM_sart),
    {.check = CHECK_beacon_line_unrecorded, .item = ITEM_epirb, .field = GEAR_lanyard,
     .says = "may be tied to the boat by its own line: that is not recorded",
     .remedy = "look at the line; stow it in its pocket and write lanyard: stowed"},
    CAPSIZED(ITEM_grab_bag),
    CAPSIZED(ITEM_vhf_handheld),
    CAPSIZED(ITEM_epirb),
    CAPSIZED(ITEM_liferaft),
    CAPSIZED(ITEM_flares),
    CAPSIZED(ITEM_knife),
    CHAIN_END(chain_end_loose, CHAIN_END_LOOSE,
              .says = "is made fast to nothing at the end of its chain: all of it can run out",
              .remedy = CHAIN_CORD),
    CHAIN_END(chain_end_fixed, CHAIN_END_SHACKLE,
              .says = "is held at the end of its chain by a shackle: nobody lets it go in time",
              .remedy = CHAIN_CORD),
    CHAIN_END(chain_end_unrecorded, CHAIN_END_NONE,
              .says = "may be held at the end of its chain by what no knife cuts: that is not "
                      "recorded",
              .remedy = "let the chain run out at the berth and look; then write chain_end: "
                        "cord,\nchain_end: shackle or chain_end: loose"),
    {.check = CHECK_ladder_from_deck, .item = ITEM_boarding_ladder, .field = GEAR_from_water,
     .value = ANSWER_NO, .one_will_do = true,
     .says = "cannot be let down by a swimmer: a person alone in the water stays there",
     .remedy = "lead a cord from it down to the water that lets it fall, try it from there, then "
               "write\nfrom_water: yes"},
    UNTRIED(ITEM_emergency_tiller, "put it on its stock and steer with it"),
    UNTRIED(ITEM_recovery_tackle, "lift a person out of the water with it, in the harbour"),
    {.check = CHECK_handheld_out_of_reach, .item = ITEM_vhf_handheld, .field = GEAR_from_cockpit,
     .value = ANSWER_NO, .one_will_do = true, .says = "cannot be reached from the cockpit",
     .remedy = "keep it where it is reached without going below, then write its place and\n"
               "from_cockpit: yes"},
    {.check = CHECK_handheld_not_charged, .item = ITEM_vhf_handheld, .field = GEAR_charged,
     .value = ANSWER_NO, .says = "is not kept charged",
     .remedy = "give it a charger with current where it is kept, then write charged: yes"},
    {.check = CHECK_handheld_charge_unrecorded, .item = ITEM_vhf_handheld, .field = GEAR_charged,
     .says = "may be flat: whether it is kept charged is not recorded",
     .remedy = "switch it on, and look for its charger; then write charged: yes or charged: no"},
    {.check = CHECK_handheld_in_charger, .item = ITEM_vhf_handheld, .field = GEAR_in_charger,
     .value = ANSWER_YES,
     .says = "stands in its charger: taking it out may spark, and no card fetches it from there "
             "where there is gas",
     .remedy = "keep it out of the charger under way, charge it in the berth, then write "
               "in_charger: no"},
    {.check = CHECK_handheld_charger_unrecorded, .item = ITEM_vhf_handheld,
     .field = GEAR_in_charger,
     .says = "may stand in its charger: that is not recorded, so no card fetches it where there "
             "is gas",
     .remedy = "look where it is kept under way; then write in_charger: yes or in_charger: no"},
};

/* Is there another piece of the kind that does what this one does not? */
static bool another_has_yes(const struct rule_run *run, const struct fact *fact,
                            const struct field *field)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of_kind(run->in->boat, fact->item, &index)) != NULL;)
        if (field_choice(field, gear) == ANSWER_YES)
            return true;
    return false;
}

/* Below, by its own record or by the zone it lies in. */
static bool piece_is_below(const struct equipment *gear)
{
    return gear->below.answer == ANSWER_YES || gear->place_zone->level == LEVEL_BELOW;
}

/* Has the piece the value, or, where the row has none, no value? */
static bool is_so(const struct rule_run *run, const struct fact *fact,
                  const struct equipment *gear)
{
    const struct field *field = gear_field_row(fact->field);
    if (fact->value == 0)
        return field_text(field, gear, run->arena) == NULL;
    return field_choice(field, gear) == fact->value;
}

static void fact_check(const struct rule_run *run, const struct fact *fact,
                       const struct equipment *gear)
{
    const struct field *field = gear_field_row(fact->field);
    if (!is_so(run, fact, gear) ||
        (fact->one_will_do && another_has_yes(run, fact, field)) ||
        (fact->below && !piece_is_below(gear)))
        return;
    rule_tell(run, fact->check, place_else(field_place(field, gear), gear->place), fact->remedy,
              "%s %s", gear_named(run, gear), fact->says);
}

/* Each row against each piece: a boat has some dozens of pieces, the table some dozens
 * of rows. */
void fact_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++)
        for (size_t k = 0; k < sizeof facts / sizeof *facts; k++)
            if ((facts[k].item == ITEM_NONE ||
                 facts[k].item == boat->equipment[i].kind->item) &&
                (boat->catamaran || !facts[k].catamaran))
                fact_check(run, &facts[k], &boat->equipment[i]);
}
