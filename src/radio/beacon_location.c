/* beacon_location.c - first-generation beacons of the location protocols, whose
 * identity has a place for a position (room: radio). C/S T.001 Annex A3.
 * Never reads the position: where one stands, the default takes its
 * place, since the register knows the beacon by that. */
#include "beacon_parts.h"

#include <stdio.h>

#include "promise.h"


enum position_layout { LAYOUT_NONE, LAYOUT_STANDARD, LAYOUT_NATIONAL, LAYOUT_RETURN_LINK };

enum { IDENTITY_LAST_BIT = 85, RETURN_LINK_MMSI = 15, RETURN_LINK_APPROVAL_HIGHEST = 948 };

/* Where the position begins, and what stands there when there is none: north and
 * east (0), degrees all ones, minutes zero. */
static const struct { size_t first; uint64_t none; } layouts[] = {
    [LAYOUT_STANDARD] = {.first = 65, .none = UINT64_C(0x1FF) << 11 | UINT64_C(0x3FF)},
    [LAYOUT_NATIONAL] = {.first = 59, .none = UINT64_C(0x7F) << 19 | UINT64_C(0xFF) << 5},
    [LAYOUT_RETURN_LINK] = {.first = 67, .none = UINT64_C(0xFF) << 10 | UINT64_C(0x1FF)},
};

/* ---- who it is ---- */

static void standard_mmsi_read(struct beacon *beacon)
{
    beacon_mmsi_tail_take(beacon, beacon_message_bits(beacon, 41, 60));
    snprintf(beacon->number, sizeof beacon->number, "%u",
             (unsigned)beacon_message_bits(beacon, 61, 64) % 16U);
}

static void security_read(struct beacon *beacon)
{
    beacon_mmsi_tail_take(beacon, beacon_message_bits(beacon, 41, 60));
    if (beacon_message_bits(beacon, 61, 64) != 0)
        beacon_fault_add(beacon, BEACON_FAULT_SPARE_BITS);
}

static void serial_take(struct beacon *beacon, size_t first, size_t last)
{
    beacon->coding = BEACON_CODED_SERIAL;
    beacon->serial_given = true;
    beacon->serial = (unsigned)beacon_message_bits(beacon, first, last);
}

static void standard_serial_read(struct beacon *beacon)
{
    serial_take(beacon, 51, 64);
    beacon->certificate = (unsigned)beacon_message_bits(beacon, 41, 50);
    if (beacon->certificate == 0 || beacon->serial == 0)
        beacon_fault_add(beacon, BEACON_FAULT_NOT_NUMBERED);
}

static void location_national_read(struct beacon *beacon)
{
    serial_take(beacon, 41, 58);
    beacon->coding = BEACON_CODED_NATIONAL;
}

/* ---- return link ---- */

enum { TYPE_EPIRB = 1, TYPE_PLB = 2, TYPE_TEST = 3 };

/* By bits 41-42: the kind, and the thousands of its type-approval certificates. */
static const struct { enum beacon_kind kind; unsigned certificates_from; } return_links[] = {
    {BEACON_ELT, 2000}, {BEACON_EPIRB, 1000}, {BEACON_PLB, 3000}, {BEACON_TEST, 0},
};

/* With an MMSI there are no aircraft: the first two types are a ship's two EPIRBs. */
static void return_link_mmsi_read(struct beacon *beacon, uint64_t type)
{
    beacon->kind = type == TYPE_TEST ? BEACON_TEST : type == TYPE_PLB ? BEACON_PLB : BEACON_EPIRB;
    beacon_mmsi_tail_take(beacon, beacon_message_bits(beacon, 47, 66));
    if (beacon->kind == BEACON_EPIRB)
        snprintf(beacon->number, sizeof beacon->number, "%s", type == 0 ? "0" : "1");
}

/* What a certificate counts from is the kind's; the number within it is not 0, nor one that
 * no approval is given. */
static void return_link_certificate_read(struct beacon *beacon, unsigned from)
{
    unsigned number = (unsigned)beacon_message_bits(beacon, 43, 52);
    beacon->certificate = from + number;
    if (number == 0 || number > RETURN_LINK_APPROVAL_HIGHEST || beacon->serial == 0)
        beacon_fault_add(beacon, BEACON_FAULT_NOT_NUMBERED);
}

static void return_link_read(struct beacon *beacon)
{
    uint64_t type = beacon_message_bits(beacon, 41, 42);
    if (beacon_message_bits(beacon, 43, 46) == RETURN_LINK_MMSI) {
        return_link_mmsi_read(beacon, type);
        return;
    }
    promise(type < sizeof return_links / sizeof return_links[0]);
    beacon->kind = return_links[type].kind;
    serial_take(beacon, 53, 66);
    if (type != TYPE_TEST)
        return_link_certificate_read(beacon, return_links[type].certificates_from);
}

/* ---- the table ---- */

/* By bits 37-40. */
static const struct location {
    enum beacon_protocol protocol;
    enum beacon_kind kind;
    enum position_layout layout;
    void (*read)(struct beacon *);   /* NULL: what else it codes is no ship's */
} locations[16] = {
    [0x2] = {BEACON_STANDARD_MMSI, BEACON_EPIRB, LAYOUT_STANDARD, standard_mmsi_read},
    [0x3] = {BEACON_STANDARD_ADDRESS, BEACON_ELT, LAYOUT_STANDARD, NULL},
    [0x4] = {BEACON_STANDARD_ELT, BEACON_ELT, LAYOUT_STANDARD, standard_serial_read},
    [0x5] = {BEACON_STANDARD_OPERATOR, BEACON_ELT, LAYOUT_STANDARD, NULL},
    [0x6] = {BEACON_STANDARD_EPIRB, BEACON_EPIRB, LAYOUT_STANDARD, standard_serial_read},
    [0x7] = {BEACON_STANDARD_PLB, BEACON_PLB, LAYOUT_STANDARD, standard_serial_read},
    [0x8] = {BEACON_NATIONAL_ELT, BEACON_ELT, LAYOUT_NATIONAL, location_national_read},
    [0x9] = {BEACON_ELT_TRACKING, BEACON_ELT, LAYOUT_NONE, NULL},
    [0xA] = {BEACON_NATIONAL_EPIRB, BEACON_EPIRB, LAYOUT_NATIONAL, location_national_read},
    [0xB] = {BEACON_NATIONAL_PLB, BEACON_PLB, LAYOUT_NATIONAL, location_national_read},
    [0xC] = {BEACON_STANDARD_SECURITY, BEACON_SHIP_SECURITY, LAYOUT_STANDARD, security_read},
    [0xD] = {BEACON_RETURN_LINK, BEACON_EPIRB, LAYOUT_RETURN_LINK, return_link_read},
    [0xE] = {BEACON_STANDARD_TEST, BEACON_TEST, LAYOUT_NONE, NULL},
    [0xF] = {BEACON_NATIONAL_TEST, BEACON_TEST, LAYOUT_NONE, NULL},
};

static void position_settle(struct beacon *beacon, enum position_layout layout)
{
    if (layout == LAYOUT_NONE)
        return;
    promise(layout < sizeof layouts / sizeof layouts[0]);
    size_t first = layouts[layout].first;
    beacon->position = BEACON_POSITION_DEFAULT;
    if (beacon_message_bits(beacon, first, IDENTITY_LAST_BIT) == layouts[layout].none)
        return;
    beacon->position = BEACON_POSITION_CARRIED;
    beacon_fault_add(beacon, BEACON_FAULT_POSITION);
    beacon_bits_set(beacon->identity, first - 25, IDENTITY_LAST_BIT - 25, layouts[layout].none);
}

void beacon_location_read(struct beacon *beacon)
{
    const struct location *location = &locations[beacon_message_bits(beacon, 37, 40)];
    beacon->protocol = location->protocol;
    beacon->kind = location->kind;
    if (location->protocol == BEACON_PROTOCOL_RESERVED)
        beacon_fault_add(beacon, BEACON_FAULT_RESERVED);
    if (location->read != NULL)
        location->read(beacon);
    position_settle(beacon, location->layout);
}
