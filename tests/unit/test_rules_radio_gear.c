/* test_rules_radio_gear.c - the fixed radio as recorded: each check of the family told,
 * and not told. */
#include "rules_rows.h"

#define SET(facts) {.boat = BOAT RADIO(facts)}
#define KEY ", distress_key: Lift the red lid, hold_s: 5"

static const struct rule_row rows[] = {
    {"dsc_missing", SET(", dsc: no"), 2, "the fixed radio has no DSC", SET(", dsc: yes")},
    {"dsc_unrecorded", SET(""), 2, "whether the fixed radio has DSC is not recorded",
     SET(", dsc: no")},
    {"dsc_without_position", SET(", dsc: yes, gnss: no"), 2, "its distress alert gives none",
     SET(", dsc: yes, gnss: yes")},
    {"dsc_position_unrecorded", SET(", dsc: yes"), 2,
     "whether the fixed radio knows the position is not recorded", SET(", dsc: yes, gnss: no")},
    {"dsc_key_unrecorded", SET(", dsc: yes, hold_s: 5"), 2,
     "distress_key of the fixed radio is not recorded", SET(", dsc: yes" KEY)},
    {"dsc_key_unrecorded", SET(", dsc: yes"), 2,
     "distress_key and hold_s of the fixed radio are not recorded", SET(", dsc: no")},
    {"radio_switch_unrecorded", SET(""), 2, "power_switch of the fixed radio is not recorded",
     SET(", power_switch: \"switch 4\"")},
    {"position_tag_unknown", SET(", position_read_at: E9"), 2,
     "no piece of this boat has the tag E9", SET(", position_read_at: plotter at the wheel")},
    {"spare_aerial_missing", SET(", antenna_m: 6"), 2,
     "the radio's aerial goes with the mast, and emergency_aerial is not recorded",
     SET(", antenna_m: 5.9")},
    {"spare_aerial_missing",
     {.boat = BOAT RADIO(", antenna_m: 13") NOT_FITTED("emergency_aerial")}, 2,
     "emergency_aerial is not fitted", SET(", antenna_m: 13, emergency_aerial: under the seat")},
};

const struct rule_table rule_table_radio_gear = RULE_TABLE(radio_gear_rules, rows);

int main(void)
{
    return rows_run(&rule_table_radio_gear);
}
