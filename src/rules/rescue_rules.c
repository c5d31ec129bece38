/* rescue_rules.c - raft, beacon and recovery gear that she does not have (room: rules). Whether she
 * must have them is for the base's law and insurer: the message names none. */
#include "rules_room.h"

#include "text.h"

static void raft_missing_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    if (boat_fitted(boat, ITEM_liferaft) == ANSWER_NO)
        rule_tell(run, CHECK_raft_missing, place_not_fitted(boat, ITEM_liferaft, ZONE_NONE),
                  "put one aboard for everybody, then take liferaft out of not_fitted and add it "
                  "to\nequipment with persons, painter, release and its service date",
                  "liferaft is not fitted: people who must leave her have none");
}

static void epirb_missing_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct base_record *base = run->in->base;
    static const char remedy[] =
        "put one aboard that is registered for her, then take epirb out of not_fitted and\n"
        "add it to equipment with hex_id, expires and lanyard";
    if (boat_fitted(boat, ITEM_epirb) != ANSWER_NO)
        return;
    struct place place = place_not_fitted(boat, ITEM_epirb, ZONE_NONE);
    if (base != NULL && base->sea_area.value > SEA_AREA_A1)
        rule_tell(run, CHECK_beacon_missing_beyond_a1, place, remedy,
                  "epirb is not fitted, and the base sails in sea area %s, where coast stations "
                  "may not hear VHF", choice_word(sea_area_words, base->sea_area.value));
    else
        rule_tell(run, CHECK_beacon_missing, place, remedy,
                  "epirb is not fitted: where VHF fails nothing else calls for help%s",
                  base != NULL && base->sea_area.value == SEA_AREA_NONE
                      ? " (sea area not recorded)" : "");
}

/* Seven people could not lift one man without gear. */
static void recovery_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    if (boat_fitted(boat, ITEM_recovery_tackle) == ANSWER_NO &&
        boat_fitted(boat, ITEM_recovery_sling) == ANSWER_NO)
        rule_tell(run, CHECK_lifting_gear_missing,
                  place_not_fitted(boat, ITEM_recovery_tackle, ZONE_NONE),
                  "make a tackle or a sling ready with a halyard and its winch, try it with a "
                  "person, then\ntake it out of not_fitted and add it to equipment",
                  "neither recovery_tackle nor recovery_sling is fitted: nothing lifts a person "
                  "out of the water");
    if (boat_fitted(boat, ITEM_boarding_ladder) == ANSWER_NO)
        rule_tell(run, CHECK_ladder_missing,
                  place_not_fitted(boat, ITEM_boarding_ladder, ZONE_NONE),
                  "fit one that is let down from the water, then take boarding_ladder out of "
                  "not_fitted and add it\nto equipment",
                  "boarding_ladder is not fitted: nobody climbs out of the water");
}

void rescue_rules(const struct rule_run *run)
{
    raft_missing_check(run);
    recovery_check(run);
    epirb_missing_check(run);
}
