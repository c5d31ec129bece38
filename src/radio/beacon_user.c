/* beacon_user.c - first-generation beacons of the user protocols (room: radio).
 * C/S T.001 Annex A2. Never reads a position: with these
 * protocols it is no part of the identity. */
#include "beacon_parts.h"

#include <stdio.h>
#include <string.h>

#include "promise.h"

enum {
    CHARACTERS_FROM = 40 - 25,      /* bit 40, counted in the 15 digits */
    MARITIME_CHARACTERS = 6, CALL_SIGN_LETTERS = 4, CALL_SIGN_FIGURES = 3,
    FIGURES_FROM = 64, FIGURE_BITS = 4, FIGURE_SPACE = 10, FIGURE_HIGHEST = 9
};

static void homing_read(struct beacon *beacon)
{
    static const enum beacon_homing homings[] = {BEACON_HOMING_NONE, BEACON_HOMING_121_5,
                                                 BEACON_HOMING_SART, BEACON_HOMING_OTHER};
    beacon->homing = homings[beacon_message_bits(beacon, 84, 85)];
}

static void spare_check(struct beacon *beacon)
{
    if (beacon_message_bits(beacon, 82, 83) != 0)
        beacon_fault_add(beacon, BEACON_FAULT_SPARE_BITS);
}

/* Which of a ship's beacons: 0 the first or only one, then 1 to 9 and A to Z. */
static void ship_number_read(struct beacon *beacon)
{
    char number = baudot_character(beacon_message_bits(beacon, 76, 81));
    if ((number >= '0' && number <= '9') || (number >= 'A' && number <= 'Z'))
        beacon->number[0] = number;
    else
        beacon_fault_add(beacon, BEACON_FAULT_BEACON_NUMBER);
}

/* What both protocols of ships have behind the identity. */
static void ship_read(struct beacon *beacon)
{
    beacon->kind = BEACON_EPIRB;
    ship_number_read(beacon);
    spare_check(beacon);
    homing_read(beacon);
}

static uint64_t number_from(const char *figures)
{
    uint64_t number = 0;
    for (; *figures != '\0'; figures++)
        number = number * 10 + (uint64_t)(*figures - '0');
    return number;
}

static void maritime_read(struct beacon *beacon)
{
    char field[MARITIME_CHARACTERS + 1];
    size_t wrong = baudot_read(beacon->digits, CHARACTERS_FROM, MARITIME_CHARACTERS, field);
    ship_read(beacon);
    if (wrong > 0)
        beacon_fault_add_at(beacon, BEACON_FAULT_BAUDOT, wrong);
    else if (strspn(field, "0123456789") == MARITIME_CHARACTERS)
        beacon_mmsi_tail_take(beacon, number_from(field));
    else
        beacon_call_sign_take(beacon, field, PADDED_LEFT);
}

/* The last three as figures of four bits each; the first that is none, or 0. */
static size_t figures_read(const struct beacon *beacon, char *out)
{
    size_t wrong = 0;
    for (size_t i = 0; i < CALL_SIGN_FIGURES; i++) {
        size_t at = FIGURES_FROM + i * FIGURE_BITS;
        uint64_t figure = beacon_message_bits(beacon, at, at + FIGURE_BITS - 1);
        out[i] = figure == FIGURE_SPACE ? ' ' : (char)('0' + (int)figure);
        if (figure > FIGURE_HIGHEST && figure != FIGURE_SPACE && wrong == 0)
            wrong = CALL_SIGN_LETTERS + i + 1;
    }
    out[CALL_SIGN_FIGURES] = '\0';
    return wrong;
}

static void user_call_sign_read(struct beacon *beacon)
{
    char field[CALL_SIGN_LETTERS + CALL_SIGN_FIGURES + 1];
    size_t no_letter = baudot_read(beacon->digits, CHARACTERS_FROM, CALL_SIGN_LETTERS, field);
    size_t no_figure = figures_read(beacon, field + CALL_SIGN_LETTERS);
    ship_read(beacon);
    if (no_letter > 0)
        beacon_fault_add_at(beacon, BEACON_FAULT_BAUDOT, no_letter);
    else if (no_figure > 0)
        beacon_fault_add_at(beacon, BEACON_FAULT_FIGURE, no_figure);
    else
        beacon_call_sign_take(beacon, field, PADDED_RIGHT);
}

/* By bits 40-42. */
static const enum beacon_kind serial_kinds[] = {
    BEACON_ELT, BEACON_ELT, BEACON_EPIRB_FLOAT_FREE, BEACON_ELT,
    BEACON_EPIRB_NOT_FLOAT_FREE, BEACON_KIND_NOT_TOLD, BEACON_PLB, BEACON_KIND_NOT_TOLD,
};

enum { AVIATION_OPERATOR = 1, AVIATION_ADDRESS = 3 };

static void serial_read(struct beacon *beacon)
{
    uint64_t type = beacon_message_bits(beacon, 40, 42);
    promise(type < sizeof serial_kinds / sizeof serial_kinds[0]);
    beacon->kind = serial_kinds[type];
    homing_read(beacon);
    if (beacon->kind == BEACON_KIND_NOT_TOLD) {
        beacon_fault_add(beacon, BEACON_FAULT_RESERVED);
        return;
    }
    if (beacon_message_bits(beacon, 43, 43) != 0)
        beacon->certificate = (unsigned)beacon_message_bits(beacon, 74, 83);
    if (type == AVIATION_OPERATOR || type == AVIATION_ADDRESS)
        return;
    beacon->coding = BEACON_CODED_SERIAL;
    beacon->serial_given = true;
    beacon->serial = (unsigned)beacon_message_bits(beacon, 44, 63);
}

static void aviation_read(struct beacon *beacon)
{
    beacon->kind = BEACON_ELT;
    homing_read(beacon);
}

static void user_national_read(struct beacon *beacon)
{
    beacon->kind = BEACON_NATIONAL;
    beacon->coding = BEACON_CODED_NATIONAL;
}

static void test_read(struct beacon *beacon) { beacon->kind = BEACON_TEST; }
static void orbitography_read(struct beacon *beacon) { beacon->kind = BEACON_ORBITOGRAPHY; }

/* By bits 37-39. 101 is the short form of a second-generation identity. */
static const struct { enum beacon_protocol protocol; void (*read)(struct beacon *); } users[] = {
    {BEACON_USER_ORBITOGRAPHY, orbitography_read}, {BEACON_USER_AVIATION, aviation_read},
    {BEACON_USER_MARITIME, maritime_read}, {BEACON_USER_SERIAL, serial_read},
    {BEACON_USER_NATIONAL, user_national_read}, {BEACON_SECOND, beacon_second_read},
    {BEACON_USER_CALL_SIGN, user_call_sign_read}, {BEACON_USER_TEST, test_read},
};

void beacon_user_read(struct beacon *beacon)
{
    uint64_t code = beacon_message_bits(beacon, 37, 39);
    promise(code < sizeof users / sizeof users[0]);
    beacon->protocol = users[code].protocol;
    users[code].read(beacon);
}
