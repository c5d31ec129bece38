/* beacon_words.c - a beacon's coding for people, in one line (room: radio). Never
 * gives the serial number: people would take it for the one on the label. */
#include "beacon.h"

#include "promise.h"
#include "text.h"

enum { GROUP_DIGITS = 5 };

/* By what a beacon's identity is coded: it stands before the kind of beacon. */
static const char *const beacon_coding_words[] = {
    [BEACON_CODED_OTHERWISE] = "",
    [BEACON_CODED_MMSI] = "MMSI-coded ",
    [BEACON_CODED_CALL_SIGN] = "call-sign-coded ",
    [BEACON_CODED_SERIAL] = "serial-coded ",
    [BEACON_CODED_NATIONAL] = "nationally coded ",
};

static const char *const beacon_kind_words[] = {
    [BEACON_KIND_NOT_TOLD] = "beacon",
    [BEACON_EPIRB_FLOAT_FREE] = "float-free EPIRB",
    [BEACON_EPIRB_NOT_FLOAT_FREE] = "EPIRB (not float-free)",
    [BEACON_EPIRB] = "EPIRB",
    [BEACON_PLB] = "personal beacon (PLB)",
    [BEACON_ELT] = "aircraft beacon (ELT)",
    [BEACON_SHIP_SECURITY] = "ship security beacon",
    [BEACON_TEST] = "test beacon",
    [BEACON_ORBITOGRAPHY] = "orbitography beacon",
    [BEACON_NATIONAL] = "beacon",
};

static const char *const beacon_homing_words[] = {
    [BEACON_HOMING_NOT_TOLD] = "",
    [BEACON_HOMING_NONE] = ", no homing signal",
    [BEACON_HOMING_121_5] = ", homing 121.5 MHz",
    [BEACON_HOMING_SART] = ", homing by radar transponder (SART)",
    [BEACON_HOMING_OTHER] = ", another homing signal",
};

/* A country code that no administration has belongs to no country, or marks a device of
 * its own. */
static const char *country_name(const struct beacon *beacon)
{
    if (beacon->administration != NULL)
        return beacon->administration->name;
    return beacon_has(beacon, BEACON_FAULT_DEVICE_IDENTITY)
               ? "a tender's or AIS identity, no country's" : "no country's";
}

/* What the code says of the ship that carries the beacon; nothing where it does not say
 * it. */
static void ship_add(struct text_builder *out, const struct beacon *beacon)
{
    if (beacon->mmsi[0] != '\0')
        text_add_format(out, ", MMSI %s", mmsi_in_threes(out->arena, beacon->mmsi));
    if (beacon->call_sign[0] != '\0')
        text_add_format(out, ", call sign %s", beacon->call_sign);
    if (beacon->number[0] != '\0' && !text_equal(beacon->number, "0"))
        text_add_format(out, ", beacon number %s", beacon->number);
    if (beacon->ais[0] != '\0')
        text_add_format(out, ", AIS identity ending in %s", beacon->ais);
}

const char *beacon_words(const struct beacon *beacon, struct arena *arena)
{
    if (beacon->outcome == BEACON_UNREADABLE)
        return NULL;
    promise(beacon->coding < sizeof beacon_coding_words / sizeof beacon_coding_words[0]);
    promise(beacon->kind < sizeof beacon_kind_words / sizeof beacon_kind_words[0]);
    promise(beacon->homing < sizeof beacon_homing_words / sizeof beacon_homing_words[0]);
    struct text_builder out = text_builder_in(arena);
    bool second = beacon->generation == BEACON_SECOND_GENERATION;
    text_add_format(&out, "%s%s%s", beacon_coding_words[beacon->coding],
                    second ? "second-generation " : "", beacon_kind_words[beacon->kind]);
    ship_add(&out, beacon);
    if (!beacon_has(beacon, BEACON_FAULT_FIXED_BITS))
        text_add_format(&out, ", country code %03u (%s)", beacon->country, country_name(beacon));
    text_add(&out, beacon_homing_words[beacon->homing]);
    if (beacon_has(beacon, BEACON_FAULT_SHORT_FORM))
        text_add(&out, ", short form of its identity");
    return out.at;
}

/* In fives, so that people can read it out to each other. */
const char *beacon_grouped(const struct beacon *beacon, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; beacon->identity[i] != '\0'; i++) {
        if (i > 0 && i % GROUP_DIGITS == 0)
            text_add(&out, " ");
        text_add_bytes(&out, &beacon->identity[i], 1);
    }
    return out.at;
}
