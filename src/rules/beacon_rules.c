/* beacon_rules.c - the coded identities of distress beacons: can they be, and are they
 * this boat's (room: rules). Decoding is src/radio's. No card prints an identity, so
 * what is wrong here holds none back; the alert is what it spoils. */
#include "rules_room.h"

#include "beacon.h"
#include "radio.h"
#include "text.h"

#include <string.h>

#define READ_LABEL "read the identity off the beacon's label again, 15 or 23 signs 0-9 and A-F"
#define DEALER "have a dealer or the beacon register look at its coding"

/* What each fault means for people, in the order of enum beacon_fault. A format takes
 * the place of the fault, from 1, where it has %zu. */
static const struct {
    enum beacon_fault fault;
    enum check_name check;
    const char *what, *remedy;
} beacon_fault_rows[] = {
    {BEACON_FAULT_SPACE, CHECK_beacon_unreadable, "it has a space too many at sign %zu",
     READ_LABEL},
    {BEACON_FAULT_LOOK_ALIKE, CHECK_beacon_unreadable,
     "sign %zu is a letter that only looks like a digit (O, I, L, S, G, Z)", READ_LABEL},
    {BEACON_FAULT_SIGN, CHECK_beacon_unreadable, "sign %zu is not 0-9 or A-F", READ_LABEL},
    {BEACON_FAULT_LENGTH, CHECK_beacon_unreadable, "it has not 15 or 23 digits", READ_LABEL},
    {BEACON_FAULT_FRAME, CHECK_beacon_unreadable,
     "it is as long as a whole transmission, but does not begin like one", READ_LABEL},
    {BEACON_FAULT_CHECK_BITS, CHECK_beacon_unreadable,
     "it is a whole transmission whose own check bits do not fit: a sign is wrong", READ_LABEL},
    {BEACON_FAULT_FIXED_BITS, CHECK_beacon_impossible,
     "23 digits, but it does not begin as such an identity must", READ_LABEL},
    {BEACON_FAULT_RESERVED, CHECK_beacon_impossible, "its coding is not in use", READ_LABEL},
    {BEACON_FAULT_BAUDOT, CHECK_beacon_impossible,
     "sign %zu of what it codes is no letter or digit", READ_LABEL},
    {BEACON_FAULT_FIGURE, CHECK_beacon_impossible,
     "sign %zu of the call sign it codes is no digit", READ_LABEL},
    {BEACON_FAULT_ALIGNMENT, CHECK_beacon_impossible,
     "the call sign it codes has a space inside or on the wrong side", READ_LABEL},
    {BEACON_FAULT_BLANK, CHECK_beacon_impossible, "no ship's identity is coded in it", DEALER},
    {BEACON_FAULT_BEACON_NUMBER, CHECK_beacon_impossible,
     "its number on board is not 0-9 or A-Z", READ_LABEL},
    {BEACON_FAULT_MMSI_RANGE, CHECK_beacon_impossible,
     "what it codes is longer than an MMSI", READ_LABEL},
    {BEACON_FAULT_NOT_NUMBERED, CHECK_beacon_impossible,
     "its certificate or serial number is one that no beacon has", READ_LABEL},
    {BEACON_FAULT_AIS_RANGE, CHECK_beacon_impossible,
     "the AIS number it codes is over 9999", READ_LABEL},
    {BEACON_FAULT_DEVICE_IDENTITY, CHECK_beacon_device_identity,
     "it is coded with the number of a tender or an AIS device: alerts so coded may be thrown "
     "away", DEALER ": the parent ship's MMSI, or a serial number"},
    {BEACON_FAULT_COUNTRY_NOT_MMSI, CHECK_beacon_impossible,
     "its country code is not that of the MMSI in it", READ_LABEL},
    {BEACON_FAULT_TEST, CHECK_beacon_test, "it is coded for tests: nobody comes", DEALER},
    {BEACON_FAULT_ORBITOGRAPHY, CHECK_beacon_test,
     "it is coded for measuring satellites: nobody comes", DEALER},
    {BEACON_FAULT_AVIATION, CHECK_beacon_wrong_kind, "it is coded for an aircraft", DEALER},
    {BEACON_FAULT_SHIP_SECURITY, CHECK_beacon_wrong_kind,
     "it is coded as a ship's security alert, not for distress", DEALER},
    {BEACON_FAULT_SPARE_BITS, CHECK_beacon_doubtful, "bits that must be zero are not",
     READ_LABEL},
    {BEACON_FAULT_TAC, CHECK_beacon_doubtful, "its type-approval number is 10000 or less",
     READ_LABEL},
    {BEACON_FAULT_SHORT_FORM, CHECK_beacon_doubtful,
     "15 digits of a beacon whose identity has 23: the ship's part is cut off", READ_LABEL},
};

/* What a check needs of one beacon. */
struct beacon_run {
    const struct rule_run *rules;
    const struct equipment *gear;
    const struct beacon *beacon;
    const char *name;
};

/* Which character stands there, where one does that the eye may not tell. */
static const char *beacon_sign_words(const struct beacon_run *run, enum beacon_fault fault)
{
    if (fault == BEACON_FAULT_LOOK_ALIKE)
        return text_format(run->rules->arena, " (%c for %c?)", (char)run->beacon->sign,
                           run->beacon->meant);
    if (fault == BEACON_FAULT_SIGN)
        return text_format(run->rules->arena, " (U+%04X)", (unsigned)run->beacon->sign);
    return "";
}

static void beacon_fault_tell(const struct beacon_run *run, size_t row)
{
    const char *what = beacon_fault_rows[row].what, *number = strstr(what, "%zu");
    const char *told = what;
    if (number != NULL)
        told = text_format(run->rules->arena, "%.*s%zu%s%s", (int)(number - what), what,
                           run->beacon->fault_at,
                           beacon_sign_words(run, beacon_fault_rows[row].fault),
                           number + strlen("%zu"));
    rule_tell(run->rules, beacon_fault_rows[row].check, run->gear->hex_id.place,
              beacon_fault_rows[row].remedy, "%s: identity `%s`: %s", run->name,
              run->gear->hex_id.text, told);
}

/* A specimen's country code is 200, as its MMSI begins: no country's. */
static void country_check(const struct beacon_run *run)
{
    enum answer said = boat_specimen(run->rules->in->boat);
    bool specimen = said == ANSWER_YES, reserved = run->beacon->country == 200;
    if (said == ANSWER_NOT_RECORDED)
        return;
    if (specimen && !reserved && run->beacon->administration != NULL)
        rule_tell(run->rules, CHECK_beacon_of_specimen, run->gear->hex_id.place,
                  "give it a country code of 200, which is no country's, or leave it out",
                  "%s: identity of a specimen boat could be a real one (country code %u, %s)",
                  run->name, run->beacon->country, run->beacon->administration->name);
    else if (beacon_has(run->beacon, BEACON_FAULT_COUNTRY_UNKNOWN) && !(specimen && reserved))
        rule_tell(run->rules, CHECK_beacon_country_unknown, run->gear->hex_id.place,
                  text_format(run->rules->arena,
                              "compare it with the label; if it is right, write under silenced:\n"
                              "- {check: beacon_country_unknown, reason: , until: }"),
                  "%s: country code %u is no country's (ITU table of " RADIO_TABLES_DATED ")",
                  run->name, run->beacon->country);
}

/* Right in itself, but not what the label says. Never called where a sign is known to
 * be wrong: what would be proposed then is another beacon's. */
static void copy_check(const struct beacon_run *run)
{
    const char *label = beacon_grouped(run->beacon, run->rules->arena);
    if (beacon_has(run->beacon, BEACON_FAULT_WHOLE_MESSAGE))
        rule_tell(run->rules, CHECK_beacon_copied, run->gear->hex_id.place,
                  text_format(run->rules->arena, "compare with the label, then write \"%s\"",
                              label),
                  "%s: this is a whole transmission; the identity in it is %s", run->name, label);
    else if (beacon_has(run->beacon, BEACON_FAULT_POSITION))
        rule_tell(run->rules, CHECK_beacon_copied, run->gear->hex_id.place,
                  text_format(run->rules->arena, "compare with the label, then write \"%s\"",
                              label),
                  "%s: this was copied from a transmission and holds a position; the identity "
                  "is %s", run->name, label);
}

static void kind_check(const struct beacon_run *run)
{
    bool personal = run->gear->kind->item == ITEM_personal_beacon;
    enum beacon_kind kind = run->beacon->kind;
    bool ships = kind == BEACON_EPIRB || kind == BEACON_EPIRB_FLOAT_FREE ||
                 kind == BEACON_EPIRB_NOT_FLOAT_FREE;
    if (!personal && kind == BEACON_PLB)
        rule_tell(run->rules, CHECK_beacon_other_kind, run->gear->hex_id.place,
                  "record it as personal_beacon, or read the label of the EPIRB",
                  "%s: this is the identity of a personal beacon, not of an EPIRB", run->name);
    if (personal && ships)
        rule_tell(run->rules, CHECK_beacon_other_kind, run->gear->hex_id.place,
                  "record it as epirb, or read the label of the personal beacon",
                  "%s: this is the identity of an EPIRB, not of a personal beacon", run->name);
}

/* ---- against the ship's papers ---- */

static const char *coded(const struct beacon_run *run)
{
    return beacon_words(run->beacon, run->rules->arena);
}

static void beacon_agreement_check(const struct beacon_run *run)
{
    const struct boat *boat = run->rules->in->boat;
    const struct radio_facts *radio = &boat->radio;
    const char *iso = boat->facts.flag.text;
    const struct administration *flag = text_empty(iso) ? NULL : administration_find(iso);
    struct mmsi mmsi;
    bool known = radio->mmsi.text != NULL && mmsi_decode(radio->mmsi.text, &mmsi) &&
                 mmsi.form == MMSI_SHIP;
    unsigned differs = beacon_against(run->beacon, known ? mmsi.digits : NULL,
                                      radio->call_sign.text, flag);
    struct place place = run->gear->hex_id.place;
    if (differs & (BEACON_OTHER_MMSI | BEACON_OTHER_MID))
        rule_tell(run->rules, CHECK_beacon_other_mmsi, place,
                  "one of the two is another ship's, or of a former flag: have the beacon coded "
                  "anew",
                  "%s codes MMSI %s, the boat's is %s", run->name, run->beacon->mmsi,
                  mmsi.digits);
    if (differs & BEACON_OTHER_CALL_SIGN)
        rule_tell(run->rules, CHECK_beacon_other_call_sign, place,
                  "compare both with the licence; have the beacon coded anew if it is hers no "
                  "more",
                  "%s codes call sign %s, the boat's is %s", run->name, run->beacon->call_sign,
                  radio->call_sign.text);
    if ((differs & (BEACON_OTHER_COUNTRY_MMSI | BEACON_OTHER_COUNTRY_FLAG)) &&
        !country_in_dispute(boat, run->beacon->administration))
        rule_tell(run->rules, CHECK_beacon_other_country, place,
                  "the register of that country is searched: have it registered there, or coded "
                  "anew",
                  "%s is of another country than the boat: %s", run->name, coded(run));
}

static void beacon_check(const struct rule_run *rules, const struct equipment *gear)
{
    struct beacon beacon = beacon_decode(gear->hex_id.text);
    struct beacon_run run = {rules, gear, &beacon, gear_named(rules, gear)};
    for (size_t i = 0; i < sizeof beacon_fault_rows / sizeof *beacon_fault_rows; i++)
        if (beacon_has(&beacon, beacon_fault_rows[i].fault))
            beacon_fault_tell(&run, i);
    if (beacon.outcome == BEACON_UNREADABLE)
        return;
    if (!beacon_decodable(&beacon))
        return;
    copy_check(&run);
    country_check(&run);
    kind_check(&run);
    if (gear->kind->item == ITEM_epirb)
        beacon_agreement_check(&run);
}

void beacon_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->hex_id.text != NULL)
            beacon_check(run, gear);
        else if (gear->kind->item == ITEM_epirb)
            rule_tell(run, CHECK_beacon_not_recorded,
                      place_else(gear->hex_id.place, gear->place),
                      "read it off the label and write hex_id: \"...\" in quotes",
                      "%s: its coded identity (hex_id) is not recorded",
                      gear_named(run, gear));
    }
}
