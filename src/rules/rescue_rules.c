/* rescue_rules.c - a raft and a beacon that she does not have (room: rules). Whether she
 * must have them is for the base's law and insurer: the message names none. */
#include "rules_room.h"

#include "text.h"

static void raft_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    if (boat_fitted(boat, "liferaft") == ANSWER_NO)
        rule_tell(run, CHECK_raft_missing, place_not_fitted(boat, "liferaft", NULL),
                  "put one aboard for everybody, then take liferaft out of not_fitted and add it "
                  "to\nequipment with persons, painter, release and its service date",
                  "liferaft is not fitted: people who must leave her have none");
}

static bool beyond_a1(const struct base_record *base)
{
    return base != NULL && base->sea_area.text != NULL && !text_equal(base->sea_area.text, "A1");
}

static void beacon_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct base_record *base = run->in->base;
    static const char remedy[] =
        "put one aboard that is registered for her, then take epirb out of not_fitted and\n"
        "add it to equipment with hex_id, expires and lanyard";
    if (boat_fitted(boat, "epirb") != ANSWER_NO)
        return;
    struct place place = place_not_fitted(boat, "epirb", NULL);
    if (beyond_a1(base))
        rule_tell(run, CHECK_beacon_missing_beyond_a1, place, remedy,
                  "epirb is not fitted, and the base sails in sea area %s, where coast stations "
                  "may not hear VHF", base->sea_area.text);
    else
        rule_tell(run, CHECK_beacon_missing, place, remedy,
                  "epirb is not fitted: where VHF fails nothing else calls for help%s",
                  base != NULL && base->sea_area.text == NULL ? " (sea area not recorded)" : "");
}

void rescue_rules(const struct rule_run *run)
{
    raft_check(run);
    beacon_check(run);
}
