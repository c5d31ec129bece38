/* beacon_second.c - second-generation identities: 23 digits, or the 15 of the short
 * form (room: radio). C/S T.018 section 3.6 and Appendix B.
 * Never says what kind of beacon it is: the identity does not. */
#include "beacon_parts.h"

#include <stdio.h>
#include <string.h>

#include "promise.h"
#include "text.h"

enum {
    FIXED_BITS = 13,              /* bits 1 and 12-14: 1101 */
    TAC_LOWEST = 10001,
    CHARACTERS = 7,
    MMSI_HIGHEST = 999999999, MMSI_NONE = 111111,
    AIS_HIGHEST = 9999, AIS_NONE = 10922
};

static void second_mmsi_read(struct beacon *beacon)
{
    uint64_t mmsi = beacon_bits(beacon->digits, 49, 78), ais = beacon_bits(beacon->digits, 79, 92);
    if (mmsi > MMSI_HIGHEST) {
        beacon_fault_add(beacon, BEACON_FAULT_MMSI_RANGE);
    } else if (mmsi != MMSI_NONE) {
        beacon->coding = BEACON_CODED_MMSI;
        snprintf(beacon->mmsi, sizeof beacon->mmsi, "%09u", (unsigned)mmsi % 1000000000U);
        if (mmsi / 1000000 != beacon->country)
            beacon_fault_add(beacon, BEACON_FAULT_COUNTRY_NOT_MMSI);
        if (text_begins(beacon->mmsi, "97") || text_begins(beacon->mmsi, "98"))
            beacon_fault_add(beacon, BEACON_FAULT_DEVICE_IDENTITY);
    }
    if (ais <= AIS_HIGHEST)
        snprintf(beacon->ais, sizeof beacon->ais, "%04u", (unsigned)ais % 10000U);
    else if (ais != AIS_NONE)
        beacon_fault_add(beacon, BEACON_FAULT_AIS_RANGE);
}

/* All spaces: the ship has no call sign, which is allowed here. */
static void second_call_sign_read(struct beacon *beacon)
{
    char field[CHARACTERS + 1];
    size_t wrong = baudot_read(beacon->digits, 49, CHARACTERS, field);
    if (wrong > 0)
        beacon_fault_add_at(beacon, BEACON_FAULT_BAUDOT, wrong);
    else if (strspn(field, " ") < CHARACTERS)
        beacon_call_sign_take(beacon, field, PADDED_RIGHT);
    if (beacon_bits(beacon->digits, 91, 92) != 0)
        beacon_fault_add(beacon, BEACON_FAULT_SPARE_BITS);
}

static void second_nothing_read(struct beacon *beacon)
{
    if (beacon_bits(beacon->digits, 49, 92) != 0)
        beacon_fault_add(beacon, BEACON_FAULT_SPARE_BITS);
}

static void spare_read(struct beacon *beacon) { beacon_fault_add(beacon, BEACON_FAULT_RESERVED); }

/* By bits 46-48: what the vessel's identity is; reading it where it is a ship's. */
static const struct { enum beacon_kind kind; void (*read)(struct beacon *); } vessels[] = {
    {BEACON_KIND_NOT_TOLD, second_nothing_read}, {BEACON_KIND_NOT_TOLD, second_mmsi_read},
    {BEACON_KIND_NOT_TOLD, second_call_sign_read}, {BEACON_ELT, NULL}, {BEACON_ELT, NULL},
    {BEACON_ELT, NULL}, {BEACON_KIND_NOT_TOLD, spare_read}, {BEACON_TEST, NULL},
};

static void vessel_read(struct beacon *beacon)
{
    uint64_t type = beacon_bits(beacon->digits, 46, 48);
    promise(type < sizeof vessels / sizeof vessels[0]);
    if (beacon_bits(beacon->digits, 45, 45) != 0)
        beacon_fault_add(beacon, BEACON_FAULT_TEST);
    beacon->kind = beacon_has(beacon, BEACON_FAULT_TEST) ? BEACON_TEST : vessels[type].kind;
    if (beacon->generation == BEACON_FIRST_GENERATION)
        beacon_fault_add(beacon, BEACON_FAULT_SHORT_FORM);
    else if (vessels[type].read != NULL)
        vessels[type].read(beacon);
}

/* A short form comes here as one of the first generation's protocols, its country
 * already taken. */
void beacon_second_read(struct beacon *beacon)
{
    bool is_short = beacon->generation == BEACON_FIRST_GENERATION;
    uint64_t fixed = beacon_bits(beacon->digits, 1, 1) << 3 | beacon_bits(beacon->digits, 12, 14);
    beacon->protocol = BEACON_SECOND;
    if (!is_short)
        beacon_country_take(beacon, beacon_bits(beacon->digits, 2, 11));
    if (fixed != FIXED_BITS) {
        beacon_fault_add(beacon, BEACON_FAULT_FIXED_BITS);
        return;
    }
    beacon->certificate = (unsigned)beacon_bits(beacon->digits, 15, 30);
    beacon->coding = BEACON_CODED_SERIAL;
    beacon->serial_given = true;
    beacon->serial = (unsigned)beacon_bits(beacon->digits, 31, 44);
    if (beacon->certificate < TAC_LOWEST)
        beacon_fault_add(beacon, BEACON_FAULT_TAC);
    vessel_read(beacon);
    beacon->generation = BEACON_SECOND_GENERATION;
}
