/* test_rules_beacon.c - coded identities of beacons: each check of the family told, and
 * not told. The identities are made up, of Croatia (238) where a country is needed. */
#include "rules_rows.h"

#define FLAGGED(item, identity) \
    BOAT_WITH(", flag: HR") RADIO(", call_sign: \"9A2345\", mmsi: \"238014810\"") GEAR \
    PIECE(item ", zone: saloon, hex_id: \"" identity "\"")
#define EPIRB(identity) FLAGGED("epirb", identity)
#define SOUND "9DCD0 00134 00001"

static const struct rule_row rows[] = {
    {"beacon_not_recorded", {.boat = BOAT GEAR PIECE("epirb, zone: saloon")}, 3,
     "its coded identity (hex_id) is not recorded", {.boat = EPIRB(SOUND)}},
    {"beacon_unreadable", {.boat = EPIRB("9DC9D65O28154D1")}, 4,
     "sign 8 (O for 0?) is a letter that only looks like a digit", {.boat = EPIRB(SOUND)}},
    {"beacon_unreadable", {.boat = EPIRB("9DCD0001340000")}, 4, "it has not 15 or 23 digits",
     {.boat = EPIRB(SOUND)}},
    {"beacon_impossible", {.boat = EPIRB("9DC8075940A04D1")}, 4,
     "of what it codes is no letter or digit", {.boat = EPIRB(SOUND)}},
    {"beacon_doubtful", {.boat = EPIRB("9DC9D65028154DD")}, 4, "bits that must be zero are not",
     {.boat = EPIRB(SOUND)}},
    {"beacon_copied", {.boat = EPIRB("2024F7252457804")}, 4, "holds a position",
     {.boat = EPIRB(SOUND)}},
    {"beacon_other_kind", {.boat = EPIRB("9A6F4048D0004B1")}, 4,
     "this is the identity of a personal beacon, not of an EPIRB",
     {.boat = FLAGGED("personal_beacon", "9A6F4048D0004B1")}},
    {"beacon_other_kind", {.boat = FLAGGED("personal_beacon", SOUND)}, 4,
     "this is the identity of an EPIRB, not of a personal beacon", {.boat = EPIRB(SOUND)}},
    {"beacon_country_unknown", {.boat = EPIRB("9B2D0 00134 00001")}, 4,
     "country code 217 is no country's", {.boat = EPIRB(SOUND)}},
    {"beacon_of_specimen",
     {.boat = SPECIMEN GEAR PIECE("epirb, zone: saloon, hex_id: \"" SOUND "\"")}, 3,
     "identity of a specimen boat could be a real one (country code 238", {.boat = EPIRB(SOUND)}},
    {"beacon_other_call_sign", {.boat = EPIRB("9DC83E1D65028D1")}, 4, "codes call sign",
     {.boat = EPIRB(SOUND)}},
    {"beacon_other_country", {.boat = EPIRB("9DAD0 00134 00001")}, 4,
     "is of another country than the boat", {.boat = EPIRB(SOUND)}},
    {"beacon_device_identity", {.boat = EPIRB("F949D65028154D1")}, 4,
     "coded with the number of a tender or an AIS device", {.boat = EPIRB(SOUND)}},
    {"beacon_test", {.boat = EPIRB("9DDC00000000000")}, 4, "it is coded for tests: nobody comes",
     {.boat = EPIRB(SOUND)}},
    {"beacon_wrong_kind", {.boat = EPIRB("9DC64903E32DF71")}, 4, "it is coded for an aircraft",
     {.boat = EPIRB(SOUND)}},
    {"beacon_other_mmsi", {.boat = EPIRB("9DC9D65028154D1")}, 4, "the boat's is 238014810",
     {.boat = EPIRB(SOUND)}},
};

const struct rule_table rule_table_beacon = RULE_TABLE(beacon_rules, rows);

int main(void)
{
    return rows_run(&rule_table_beacon);
}
