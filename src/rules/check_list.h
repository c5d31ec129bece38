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
    /* across the fleet */ \
    X(mmsi_twice, ERROR, "two boats have the same MMSI", "ITU-R M.585: one ship, one number") \
    X(call_sign_twice, ERROR, "two boats have the same call sign", "ITU Radio Regulations 19") \
    X(beacon_twice, ERROR, "two boats have a beacon of the same identity", "C/S T.001") \
    /* the silencing of checks */ \
    X(silence_unknown, ERROR, "a silenced check does not exist", "maydeck") \
    X(silence_of_error, ERROR, "an error is silenced: it must be put right instead", "maydeck") \
    X(silence_lapsed, DEFICIENCY, "the date by which a silence lapses is past", "maydeck") \
    X(silence_idle, NOTE, "a silenced check has nothing to say", "maydeck")

#endif
