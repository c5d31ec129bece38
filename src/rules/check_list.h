/* check_list.h - every check, one row each (private to src/rules). Columns: id,
 * severity of what it finds, sentence, source. Adding a check is adding a row here
 * and a call of rule_tell in the file of its family. */
#ifndef MAYDECK_CHECK_LIST_H
#define MAYDECK_CHECK_LIST_H

/* What the stages before and after the checks have to say, each under one id. */
#define FAMILY_LIST(X) \
    X(run, FAILURE, "the run itself cannot go on, or was asked for in a wrong way", "maydeck") \
    X(program, FAILURE, "a procedure, word or face of the program is wrong", "maydeck") \
    X(base, ERROR, "base.yaml cannot be read, or says something that cannot be", "maydeck") \
    X(record, ERROR, "a boat's file cannot be read, or says something that cannot be", \
      "maydeck") \
    X(cards, HELD, "a fact that a card needs is not recorded", "maydeck") \
    X(page, ERROR, "a card does not fit its page, or does not pass proofreading", "maydeck")

#define CHECK_LIST(X) \
    /* the base */ \
    X(centre_unchecked, DEFICIENCY, \
      "the rescue centre's channel and number were not checked within a year", "judged") \
    X(approval_lapsed, DEFICIENCY, "an approval of a card has lapsed", "the base's approvals") \
    X(approval_lapses_during, NOTE, "an approval lapses before the charter ends", \
      "the base's approvals") \
    X(interval_unused, NOTE, "an interval of the base changes nothing", \
      "the row of the item in src/figure/gear_rules.c") \
    X(interval_twice, DEFICIENCY, "an item has two intervals", "reason") \
    /* dates of gear: the row of each kind in src/figure/gear_rules.c names its source */ \
    X(gear_expired, DEFICIENCY, "a piece of gear is out of date when the charter begins", \
      "the date stamped on it, else its interval") \
    X(gear_expires_during, DEFICIENCY, "a piece of gear runs out before the charter ends", \
      "the date stamped on it, else its interval") \
    X(gear_inside_margin, NOTE, "a piece of gear runs out within the base's margin", \
      "the base's margin_days") \
    X(gear_date_unknown, DEFICIENCY, "gear that runs out unseen has no date", "judged") \
    X(gear_dates_order, DEFICIENCY, "a piece was serviced or fitted before it was made", \
      "reason") \
    X(gear_date_to_come, DEFICIENCY, "something was done to a piece on a day to come", "reason") \
    /* capacities */ \
    X(persons_too_many, DEFICIENCY, "more people than the boat may carry", "the boat's papers") \
    X(raft_places_few, DEFICIENCY, "fewer places in the rafts than people", \
      "the raft's approval: one place a person") \
    X(raft_places_without_one, NOTE, "with one raft lost there are too few places", "judged") \
    X(jackets_few, DEFICIENCY, "fewer lifejackets than people", "trade practice") \
    X(jackets_unfit, DEFICIENCY, "not everybody has a lifejacket that fits", \
      "the body mass on its label") \
    X(jackets_unsized, NOTE, "whom a lifejacket fits is not recorded", "judged") \
    X(rating_without_system, DEFICIENCY, "a rating tells not whether it is EN or US", \
      "EN 3 and the US scale share letters, not units") \
    X(rating_unknown, DEFICIENCY, "a rating is none of either system", "EN 3; US scale") \
    X(co2_in_cabins, NOTE, "a carbon dioxide extinguisher is stowed in or next to the cabins", \
      "United Kingdom workboat code: not for accommodation save for electrical risk") \
    X(co2_share_unknown, NOTE, "how much of the cabin's air it would be is not known", "judged") \
    /* across the fleet */ \
    X(mmsi_twice, ERROR, "two boats have the same MMSI", "ITU-R M.585: one ship, one number") \
    X(call_sign_twice, ERROR, "two boats have the same call sign", "ITU Radio Regulations 19") \
    X(beacon_twice, ERROR, "two boats have a beacon of the same identity", "C/S T.001") \
    /* the silencing of checks */ \
    X(silence_unknown, ERROR, "a silenced check does not exist", "maydeck") \
    X(silence_of_error, ERROR, "an error is silenced: it must be put right instead", "maydeck") \
    X(silence_lapsed, DEFICIENCY, "the date by which a silence lapses is past", "maydeck") \
    X(silence_idle, NOTE, "a silenced check has nothing to say", "maydeck")

/* What is wrong with the boat, not with her record: an error, but her cards are true
 * and are printed. */
#define DANGER_LIST(X) \
    X(co2_share, ERROR, "carbon dioxide would be more than 3 % of the air in the cabins", \
      "NIOSH: short-term limit 3 %, immediately dangerous 4 %")

#endif
