/* readers_values.h - the values that test_readers puts into fields which not every value of
 * their kind suits. */
#ifndef MAYDECK_READERS_VALUES_H
#define MAYDECK_READERS_VALUES_H

/* Words that no card has of itself. */
#define WORD_ONE "quokka"
#define WORD_TWO "numbat"
#define VALUES_MOST 12

static const struct { const char *path, *values[VALUES_MOST]; } own_values[] = {
    {"boat/name", {"Quokka", "Numbat"}},
    {"boat/name_spoken", {"Quokka", "Numbat"}},
    {"boat/name_latin", {"Quokka", "Numbat"}},
    {"boat/flag", {"QZ", "HR", "US"}},
    {"boat/specimen", {"yes", "no"}},
    {"boat/mounted/zone", {"{zone: saloon, faces: bow}", "{zone: cockpit, faces: bow}"}},
    {"boat/mounted/faces", {"{zone: saloon, faces: bow}", "{zone: saloon, faces: port}"}},
    {"boat/rooms",
     {"[forepeak, forward_cabin, forward_heads, saloon, galley, navigation_station, aft_heads, "
      "aft_cabin]", "[saloon, galley, navigation_station, aft_cabin]"}},
    {"engines/fuel", {"diesel", "petrol", "electric"}},
    {"radio/call_sign", {"QALD3", "QUOK5"}},
    {"radio/mmsi", {"\"200014810\"", "\"200014820\""}},
    {"radio/tag", {"E1", "E61"}},
    {"radio/zone", {"navigation_station", "cockpit"}},
    {"radio/second_station/zone", {"{zone: cockpit}", "{zone: saloon}"}},
    {"radio/second_station/side",
     {"{zone: cockpit, side: port}", "{zone: cockpit, side: starboard}"}},
    {"radio/second_station/spot", {"{zone: cockpit, spot: " WORD_ONE "}", "{zone: cockpit}"}},
    {"retired_tags", {"[C80]", "[C80, C5]"}},
    {"tags_given", {"[F3]", "[F30]"}},
    {"silenced/check", {"bilge_pump_electric_missing", "raft_too_small"}},
    {"silenced/reason", {"it is quokka", "it is numbat"}},
    {"silenced/until", {"2026-11", "2027-05"}},
    {"base/position", {"12 30.50 N 060 15.25 E", "12 31.50 N 060 15.25 E"}},
    {"base/specimen", {"yes", "no"}},
    {"base/phone_24h", {"\"+999 00 000 000\"", "\"+999 00 000 009\""}},
    {"ashore/fire_phone", {"\"+999 02\"", "\"+999 09\""}},
    {"lines/does", {"[]", "[pump_off]"}},
    {"clocks/offset", {"+2", "-3:30"}},
    {"rescue_centre/phone", {"\"+999 00 000 001\"", "\"+999 00 000 009\""}},
    {"rescue_centre/channel", {"\"67\"", "\"10\""}},
    {"rescue_centre/call", {"QUOKKA", "NUMBAT"}},
    {"cruising_area/latitude", {"north", "both"}},
    {"cruising_area/longitude", {"east", "both"}},
    {"cruising_area/variation", {"4 E", "9 E"}},
    {"cruising_area/variation_on", {"2026-01-01", "2024-01-01"}},
    {"intervals/item", {"grab_bag", "torch"}},
    {"shelters/position", {"12 34.20 N 060 20.10 E", "12 39.20 N 060 20.10 E"}},
    {"approvals/card", {"flooding", "gas_leak"}},
    {"approvals/text", {TEXT_NOW, "FEDC-BA98-7654-3210"}},
    {"approvals/until", {"2026-10", "2027-11"}},
    {"approvals/date", {"2026-08", "2026-09"}},
    {"lines/card", {"flooding", "gas_leak"}},
    {"equipment/tag", {"C61", "C62", "E61", "E62", "F61", "F62"}},
    {"equipment/how",
     {WORD_ONE, WORD_TWO, "{shut: " WORD_ONE "}", "{off: " WORD_ONE "}", "{shut: " WORD_TWO "}"}},
    {"equipment/at", {"[6.00, -1.00]", "[3.00, -0.50]"}},
    {"equipment/cuts", {"[vhf_dsc]", "[]"}},
    {"equipment/inside", {"[engine_space]", "[galley]", "[]"}},
    {"equipment/past", {"[engine_space]", "[galley]", "[]"}},
    {"equipment/space", {"saloon", "own_box", "engine_space"}},
    {"equipment/hex_id", {"\"990D0 00134 00001\"", "\"9908D 74A71 034D1\""}},
    {"equipment/mmsi", {"\"200014810\"", "\"200014820\"", "\"972001481\"", "\"970012345\""}},
    {"equipment/rating", {"en 13A 70B", "en 5A 34B", "13A 70B"}},
    {"equipment/zone", {"saloon", "cockpit", "galley"}},
    {"equipment/serves", {"[engine_space]"}},
    {"equipment/from", {"{zone: cockpit, spot: " WORD_ONE "}", "{zone: saloon, spot: x}"}},
    {"equipment/from/zone", {"{zone: cockpit}", "{zone: saloon}"}},
    {"equipment/from/side", {"{zone: cockpit, side: port}", "{zone: cockpit, side: starboard}"}},
    {"equipment/from/spot", {"{zone: cockpit, spot: " WORD_ONE "}", "{zone: cockpit}"}},
    {"equipment/handle", {"{zone: cockpit, spot: " WORD_ONE "}", WORD_TWO}},
    {"equipment/handle/zone", {"{zone: cockpit}", "{zone: saloon}"}},
    {"equipment/handle/side", {"{zone: cockpit, side: port}", "{zone: cockpit, side: starboard}"}},
    {"equipment/handle/spot", {"{zone: cockpit, spot: " WORD_ONE "}", "{zone: cockpit}"}},
};

#endif
