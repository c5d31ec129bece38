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
    /* MMSI */ \
    X(mmsi_damaged, ERROR, "the MMSI is not made of digits alone", "ITU-R M.585") \
    X(mmsi_length, ERROR, "the MMSI has not nine digits", "ITU-R M.585") \
    X(mmsi_form, ERROR, "the MMSI is of another kind of station than a ship", "ITU-R M.585") \
    X(mmsi_mid_unknown, DEFICIENCY, "no country is known to have the digits of the MMSI", \
      "ITU table of MIDs, " RADIO_TABLES_DATED) \
    X(mmsi_made_up, NOTE, "the MMSI looks like one put in for the time being", "judged") \
    X(mmsi_reserved, ERROR, "a real boat has an MMSI that is kept for specimens", "maydeck") \
    X(mmsi_of_specimen, ERROR, "a specimen has an MMSI that could be a real one", "maydeck") \
    X(mmsi_missing, DEFICIENCY, "the set has DSC, but no MMSI is recorded", "ITU-R M.493") \
    X(mmsi_not_programmed, DEFICIENCY, "the set has no MMSI programmed", "ITU-R M.493") \
    X(mmsi_programming_unknown, DEFICIENCY, "whether the set has its MMSI is not recorded", \
      "ITU-R M.493") \
    X(handheld_mmsi, ERROR, "the handheld's MMSI is neither a handheld's nor the ship's", \
      "ITU-R M.585") \
    X(handheld_mmsi_ships, NOTE, "the handheld bears the ship's own MMSI", "trade practice") \
    /* call sign */ \
    X(call_sign_missing, DEFICIENCY, "no call sign is recorded", "ITU Radio Regulations 19") \
    X(call_sign_characters, ERROR, "the call sign holds what no call sign may hold", \
      "ITU Radio Regulations 19.45") \
    X(call_sign_length, ERROR, "the call sign is too short or too long", \
      "ITU Radio Regulations 19") \
    X(call_sign_impossible, ERROR, "no call sign can begin so", "ITU Radio Regulations 19.50") \
    X(call_sign_of_a_body, ERROR, "the call sign is of a body such as the United Nations", \
      "ITU table of call sign series, " RADIO_TABLES_DATED) \
    X(call_sign_series_unknown, DEFICIENCY, "no country is known to hold the series", \
      "ITU table of call sign series, " RADIO_TABLES_DATED) \
    X(call_sign_halved, NOTE, "two countries share the series, and no letter tells which", \
      "ITU table of call sign series, " RADIO_TABLES_DATED) \
    X(call_sign_pattern, NOTE, "the call sign has not the pattern of a ship's", \
      "ITU Radio Regulations 19.55, 19.56") \
    X(call_sign_reserved, ERROR, "a real boat has a call sign that is kept for specimens", \
      "maydeck") \
    X(call_sign_of_specimen, ERROR, "a specimen has a call sign that could be a real one", \
      "maydeck") \
    X(identities_disagree, DEFICIENCY, "MMSI, call sign and flag are not of one country", \
      "ITU tables, " RADIO_TABLES_DATED) \
    X(flag_unknown, NOTE, "the flag is no country's code", "ISO 3166") \
    /* name */ \
    X(name_unspeakable, ERROR, "the name cannot be called out or spelled", \
      "ITU Radio Regulations, Appendix 14") \
    X(name_latin_missing, DEFICIENCY, "the name is not recorded in Latin letters", "judged") \
    X(name_latin_differs, NOTE, "the Latin spelling is not how such a name is spelled", \
      "ICAO Doc 9303-3") \
    X(name_roman, DEFICIENCY, "the name ends in a numeral that can be said in two ways", \
      "judged") \
    X(name_apostrophe, NOTE, "the name has an apostrophe that is on no keyboard", "judged") \
    X(name_long, NOTE, "the name is longer than AIS can show", "ITU-R M.1371") \
    /* how it is written */ \
    X(without_quotes, NOTE, "other programs do not read a value as it is written", \
      "YAML 1.1 and 1.2") \
    X(centre_phone_short, DEFICIENCY, "the rescue centre has no number that works everywhere", \
      "ITU-T E.164") \
    /* the silencing of checks */ \
    X(silence_unknown, ERROR, "a silenced check does not exist", "maydeck") \
    X(silence_of_error, ERROR, "an error is silenced: it must be put right instead", "maydeck") \
    X(silence_lapsed, DEFICIENCY, "the date by which a silence lapses is past", "maydeck") \
    X(silence_idle, NOTE, "a silenced check has nothing to say", "maydeck")

#endif
