/* radio_gear_rules.c - the fixed radio as the record has it, and whom the base calls (room:
 * rules). MMSI and call sign are judged elsewhere; without a set, or without knowing,
 * the cards speak. */
#include "rules_room.h"

#include "text.h"

/* Above this the aerial can only be on the mast. Judged: no rail or arch of a sailing
 * yacht is so high. */
#define MAST_AERIAL_MILLI 6000

static void dsc_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct radio_facts *radio = &boat->radio;
    if (radio->dsc.answer == ANSWER_NO)
        rule_tell(run, CHECK_dsc_missing, radio->dsc.place,
                  "have a set with a distress key put in and the ship's MMSI programmed, then "
                  "write\ndsc: yes, mmsi and mmsi_programmed: yes",
                  "the fixed radio has no DSC: nobody is called by one key, and the alert gives "
                  "no position");
    else if (radio->dsc.answer == ANSWER_NOT_RECORDED)
        rule_tell(run, CHECK_dsc_unrecorded, place_else(radio->dsc.place, boat->radio_place),
                  "look for a red key under a lid, marked DISTRESS; then write dsc: yes or "
                  "dsc: no in\nthe section radio:",
                  "whether the fixed radio has DSC is not recorded: the cards are for voice "
                  "only");
}

static void position_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct radio_facts *radio = &boat->radio;
    if (radio->gnss.answer == ANSWER_NO)
        rule_tell(run, CHECK_dsc_without_position, radio->gnss.place,
                  "have the set connected to a position receiver, see that it shows the "
                  "position, then\nwrite gnss: yes; until then write the keys that enter one as "
                  "manual_position_steps",
                  "the fixed radio does not know the position: its distress alert gives none");
    else if (radio->gnss.answer == ANSWER_NOT_RECORDED)
        rule_tell(run, CHECK_dsc_position_unrecorded,
                  place_else(radio->gnss.place, radio->dsc.place),
                  "switch the set on, and see whether it shows the position; then write gnss: "
                  "yes or\ngnss: no",
                  "whether the fixed radio knows the position is not recorded");
}

static void distress_key_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct radio_facts *radio = &boat->radio;
    bool key = radio->distress_key.text != NULL, hold = radio->hold_s.given;
    if (key && hold)
        return;
    struct place refused = key ? radio->hold_s.place : radio->distress_key.place;
    rule_tell(run, CHECK_dsc_key_unrecorded, place_else(refused, radio->dsc.place),
              "read in the set's manual how the red key is uncovered and for how many seconds "
              "it is\nheld, without pressing it; then write distress_key and hold_s",
              "%s%s%s of the fixed radio %s not recorded: the cards cannot say how this set's "
              "red key is worked", key ? "" : "distress_key", key || hold ? "" : " and ",
              hold ? "" : "hold_s", key || hold ? "is" : "are");
}

static void switch_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    if (text_empty(boat->radio.power_switch.text))
        rule_tell(run, CHECK_radio_switch_unrecorded,
                  place_else(boat->radio.power_switch.place, boat->radio_place),
                  "turn switches off until the set goes dead, then write that one as "
                  "power_switch, as it\nis labelled, and where",
                  "power_switch of the fixed radio is not recorded: the cards cannot say what "
                  "turns it on");
}

static void aerial_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct radio_facts *radio = &boat->radio;
    if (!radio->antenna_m.given || radio->antenna_m.milli < MAST_AERIAL_MILLI ||
        !text_empty(radio->emergency_aerial.text) ||
        boat_fitted(boat, ITEM_emergency_aerial) == ANSWER_YES)
        return;
    rule_tell(run, CHECK_spare_aerial_missing, radio->antenna_m.place,
              "put a spare aerial aboard, try it on the set, and write where it is as "
              "emergency_aerial\nin the section radio:",
              "the radio's aerial goes with the mast, and emergency_aerial is %s",
              boat_fitted(boat, ITEM_emergency_aerial) == ANSWER_NO ? "not fitted"
                                                                 : "not recorded");
}

/* "E9", "C40": a tag, and no place in words. */
static void position_tag_check(const struct rule_run *run)
{
    const struct text_value *value = &run->in->boat->radio.position_read_at;
    if (!has_tag_form(value->text) || gear_of_tag(run->in->boat, value->text) != NULL)
        return;
    rule_tell(run, CHECK_position_tag_unknown, value->place,
              "write the tag of the piece that shows the position, or where it is read in a few "
              "words,\nsuch as position_read_at: plotter at the wheel",
              "position_read_at: no piece of this boat has the tag %s", value->text);
}

void radio_gear_rules(const struct rule_run *run)
{
    position_tag_check(run);
    const struct boat *boat = run->in->boat;
    if (boat_fitted(boat, ITEM_vhf_dsc) != ANSWER_YES)
        return;
    dsc_check(run);
    switch_check(run);
    aerial_check(run);
    if (boat->radio.dsc.answer != ANSWER_YES)
        return;
    position_check(run);
    distress_key_check(run);
}
