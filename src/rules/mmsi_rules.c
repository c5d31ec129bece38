/* mmsi_rules.c - is the number in the record the ship's, is it the set's, and is the
 * handheld's its own (room: rules). Never repairs one. */
#include "rules_room.h"

#include "radio.h"
#include "text.h"

#define FROM_LICENCE \
    "write the nine digits of the ship's radio licence in quotes, such as mmsi: \"NNNNNNNNN\""
#define OR_EMPTY \
    FROM_LICENCE "; where she has\nnone, leave the value empty"
#define SHIP_REMEDY \
    "write the ship's own MMSI from its radio licence: nine digits, the first 2 to 7"
#define HANDHELD_REMEDY \
    "let the handheld show its MMSI and write it in quotes: its own begins with 8, such as\n" \
    "mmsi: \"8NNNNNNNN\"; some administrations let it bear the ship's"
#define UNKNOWN_MID_REMEDY \
    "compare it with the ship's radio licence; if it stands there, the table is the older:\n" \
    "add to the boat's file, with a reason and a date,\n" \
    "`silenced: [{check: mmsi_mid_unknown, reason: , until: }]`"

/* The MID that specimens have, since it is no country's. */
#define SPECIMEN_MID "200"

/* ---- whose the digits are: alike for ship and handheld ---- */

static void real_mid_check(const struct rule_run *run, const struct text_value *value,
                           const struct mmsi *mmsi)
{
    if (text_equal(mmsi->mid, SPECIMEN_MID))
        rule_tell(run, CHECK_mmsi_reserved, value->place,
                  "write the MMSI of the ship's radio licence, or mark a boat that is only\n"
                  "an example with `specimen: yes`",
                  "MMSI %s: MID %s is no country's; it is for specimen boats", mmsi->digits,
                  mmsi->mid);
    else if (mmsi->administration == NULL)
        rule_tell(run, CHECK_mmsi_mid_unknown, value->place, UNKNOWN_MID_REMEDY,
                  "MMSI %s: MID %s is no country's (ITU table of " RADIO_TABLES_DATED ")",
                  mmsi->digits, mmsi->mid);
}

static void specimen_mid_check(const struct rule_run *run, const struct text_value *value,
                               const struct mmsi *mmsi)
{
    if (mmsi->administration != NULL)
        rule_tell(run, CHECK_mmsi_of_specimen, value->place,
                  "give it an MMSI with " SPECIMEN_MID " as its MID, which is no country's",
                  "MMSI %s of a specimen boat could be a real one (MID %s, %s)", mmsi->digits,
                  mmsi->mid, mmsi->administration->name);
}

static void mid_check(const struct rule_run *run, const struct text_value *value,
                      const struct mmsi *mmsi)
{
    enum answer specimen = boat_specimen(run->in->boat);
    if (specimen == ANSWER_YES)
        specimen_mid_check(run, value, mmsi);
    if (specimen != ANSWER_NO)
        return;
    real_mid_check(run, value, mmsi);
    if (mmsi_looks_made_up(mmsi))
        rule_tell(run, CHECK_mmsi_made_up, value->place,
                  "compare it with the ship's radio licence",
                  "MMSI %s looks like one put in for the time being", mmsi->digits);
}

/* ---- the ship's ---- */

static void ship_fault_tell(const struct rule_run *run, const struct text_value *value,
                            const struct mmsi *mmsi)
{
    const char *words = mmsi_fault_words(mmsi, run->arena);
    if (mmsi->fault == MMSI_OTHER_FORM)
        rule_tell(run, CHECK_mmsi_form, value->place, SHIP_REMEDY,
                  "MMSI %s is not a ship's: it %s", mmsi->digits, words);
    else
        rule_tell(run, mmsi->fault == MMSI_LENGTH ? CHECK_mmsi_length : CHECK_mmsi_damaged,
                  value->place, mmsi->fault == MMSI_WORDS ? OR_EMPTY : FROM_LICENCE,
                  "MMSI `%s` %s", value->text, words);
}

static void ship_check(const struct rule_run *run)
{
    const struct text_value *value = &run->in->boat->radio.mmsi;
    struct mmsi mmsi;
    if (text_empty(value->text))
        return;
    if (mmsi_decode_as(value->text, MMSI_SHIP, &mmsi))
        mid_check(run, value, &mmsi);
    else
        ship_fault_tell(run, value, &mmsi);
}

/* ---- the handheld's ---- */

static bool is_the_ships(const struct rule_run *run, const struct mmsi *mmsi)
{
    const struct text_value *value = &run->in->boat->radio.mmsi;
    struct mmsi ship;
    return !text_empty(value->text) && mmsi_decode(value->text, &ship) &&
           text_equal(ship.digits, mmsi->digits);
}

static void handheld_check(const struct rule_run *run, const struct text_value *value)
{
    struct mmsi mmsi;
    if (mmsi_decode_as(value->text, MMSI_HANDHELD, &mmsi))
        mid_check(run, value, &mmsi);
    else if (mmsi.fault == MMSI_OTHER_FORM && is_the_ships(run, &mmsi))
        rule_tell(run, CHECK_handheld_mmsi_ships, value->place,
                  "ask the administration that licensed the ship whether it allows this",
                  "the handheld bears the ship's own MMSI %s: its alert looks like the "
                  "ship's", mmsi.digits);
    else
        rule_tell(run, CHECK_handheld_mmsi, value->place, HANDHELD_REMEDY,
                  "the handheld's MMSI `%s` %s", value->text,
                  mmsi_fault_words(&mmsi, run->arena));
}

static void handhelds_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->kind == NULL || gear->kind->item != ITEM_vhf_handheld)
            continue;
        if (!text_empty(gear->mmsi.text))
            handheld_check(run, &gear->mmsi);
        else if (gear->dsc.answer == ANSWER_YES)
            rule_tell(run, CHECK_handheld_mmsi_unrecorded,
                      place_else(gear->mmsi.place, gear->dsc.place), HANDHELD_REMEDY,
                      "the handheld %s has DSC, and its MMSI is not recorded: no card speaks of "
                      "its red key", gear->tag.text == NULL ? "" : gear->tag.text);
    }
}

/* ---- is it in the set ---- */

/* Only the DSC key is lost by this, so the cards are printed, for voice only. */
static void programmed_check(const struct rule_run *run)
{
    const struct radio_facts *radio = &run->in->boat->radio;
    if (radio->dsc.answer != ANSWER_YES)
        return;
    if (text_empty(radio->mmsi.text))
        rule_tell(run, CHECK_mmsi_missing, place_else(radio->mmsi.place, radio->dsc.place),
                  "record `mmsi:` from the ship's radio licence and have a dealer program it\n"
                  "into the set, which takes it only once; do not guess it",
                  "DSC not available: voice only (the MMSI is not recorded)");
    else if (radio->mmsi_programmed.answer == ANSWER_NOT_RECORDED)
        rule_tell(run, CHECK_mmsi_programming_unknown,
                  place_else(radio->mmsi_programmed.place, radio->dsc.place),
                  "let the set show its MMSI; if it shows this one, record\n"
                  "`mmsi_programmed: yes`, if it shows none, `mmsi_programmed: no`",
                  "DSC not available: voice only (whether the set has its MMSI is not "
                  "recorded)");
    else if (radio->mmsi_programmed.answer == ANSWER_NO)
        rule_tell(run, CHECK_mmsi_not_programmed, radio->mmsi_programmed.place,
                  "have a dealer program the MMSI into the set, which takes it only once,\n"
                  "then record `mmsi_programmed: yes`",
                  "DSC not available: voice only (the set has no MMSI programmed)");
}

void mmsi_rules(const struct rule_run *run)
{
    programmed_check(run);
    ship_check(run);
    handhelds_check(run);
}
