/* test_rules_identity.c - MMSI, call sign and flag: each check of the family told, and
 * not told. Vectors are in test_mmsi_rules.c and test_identity_rules.c. */
#include "rules_rows.h"

#define SAILS(flag, call_sign, mmsi) \
    {.boat = BOAT_WITH(", flag: " flag) RADIO(", call_sign: " call_sign ", mmsi: " mmsi)}
#define CALL "\"9A2345\""
#define NUMBER "\"238014810\""
#define SOUND SAILS("HR", CALL, NUMBER)
#define NUMBERED(mmsi) SAILS("HR", CALL, mmsi)
#define CALLED(call_sign) SAILS("HR", call_sign, NUMBER)
#define INVENTED(call_sign, mmsi) \
    {.boat = SPECIMEN RADIO(", call_sign: " call_sign ", mmsi: " mmsi)}
#define SET(facts) {.boat = BOAT RADIO(", call_sign: " CALL ", dsc: yes" facts)}
#define HANDHELD(mmsi) \
    {.boat = BOAT RADIO(", call_sign: " CALL ", mmsi: " NUMBER) GEAR \
         PIECE("vhf_handheld, zone: saloon, mmsi: " mmsi)}

static const struct rule_row rows[] = {
    {"mmsi_damaged", NUMBERED("2.38015E+08"), 2, "a number with an exponent", SOUND},
    {"mmsi_length", NUMBERED("\"23801481\""), 2, "has 8 digits, not nine", SOUND},
    {"mmsi_form", NUMBERED("\"002380148\""), 2, "it is a coast station's", SOUND},
    {"mmsi_mid_unknown", NUMBERED("\"217014810\""), 2, "MID 217 is no country's", SOUND},
    {"mmsi_made_up", NUMBERED("\"238123456\""), 2, "put in for the time being", SOUND},
    {"mmsi_reserved", NUMBERED("\"200014810\""), 2, "it is for specimen boats", SOUND},
    {"mmsi_of_specimen", INVENTED("QALD3", NUMBER), 2, "of a specimen boat could be a real one",
     INVENTED("QALD3", "\"200014810\"")},
    {"mmsi_missing", SET(""), 2, "the MMSI is not recorded", SET(", mmsi: " NUMBER)},
    {"mmsi_not_programmed", SET(", mmsi: " NUMBER ", mmsi_programmed: no"), 2,
     "the set has no MMSI programmed", SET(", mmsi: " NUMBER ", mmsi_programmed: yes")},
    {"mmsi_programming_unknown", SET(", mmsi: " NUMBER), 2, "whether the set has its MMSI",
     SET(", mmsi: " NUMBER ", mmsi_programmed: no")},
    {"handheld_mmsi", HANDHELD("\"238014811\""), 4, "the handheld's MMSI `238014811`",
     HANDHELD("\"823812341\"")},
    {"handheld_mmsi_ships", HANDHELD(NUMBER), 4, "bears the ship's own MMSI 238014810",
     HANDHELD("\"823812341\"")},
    {"handheld_mmsi_unrecorded",
     {.boat = BOAT GEAR PIECE("vhf_handheld, tag: E5, zone: saloon, dsc: yes")}, 3,
     "the handheld E5 has DSC, and its MMSI is not recorded",
     {.boat = BOAT GEAR PIECE("vhf_handheld, tag: E5, zone: saloon, dsc: no")}},
    {"call_sign_missing", {.boat = BOAT RADIO("")}, 2, "call sign not recorded",
     {.boat = BOAT RADIO(", call_sign: none")}},
    {"call_sign_characters", CALLED("9a2345"), 2, "is a small letter", SOUND},
    {"call_sign_length", CALLED("\"9A\""), 2, "it has 2 characters", SOUND},
    {"call_sign_impossible", CALLED("1AAB"), 2, "none can begin with 1A", SOUND},
    {"call_sign_of_a_body", CALLED("4U2345"), 2, "no yacht has it", SOUND},
    {"call_sign_series_unknown", CALLED("4NAB"), 2, "no country holds the series 4N", SOUND},
    {"call_sign_halved", CALLED("3D2345"), 2, "share the series 3D", SOUND},
    {"call_sign_pattern", CALLED("9A2AB"), 2, "has the pattern of", SOUND},
    {"call_sign_reserved", CALLED("QALD3"), 2, "nobody holds the series Q", SOUND},
    {"call_sign_of_specimen", INVENTED("\"9A2345\"", "\"200014810\""), 2,
     "of a specimen boat could be a real one", INVENTED("QALD3", "\"200014810\"")},
    {"identities_disagree", SAILS("GR", CALL, NUMBER), 2, "are not of one country", SOUND},
    {"flag_unknown", SAILS("QZ", CALL, NUMBER), 1, "QZ", SOUND},
};

const struct rule_table rule_table_identity = RULE_TABLE(identity_rules, rows);

int main(void)
{
    return rows_run(&rule_table_identity);
}
