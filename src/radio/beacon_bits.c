/* beacon_bits.c - single fields of a beacon identity (room: radio): bits, the
 * country code, call signs, MMSIs. Never decides which field stands where. */
#include "beacon_parts.h"

#include <stdio.h>
#include <string.h>

#include "promise.h"
#include "text.h"


enum {
    BITS_A_DIGIT = 4, FIRST_BIT = 26, COUNTRY_HIGHEST = 999, MMSI_TAIL_HIGHEST = 999999,
    DEVICES_FIRST = 970, DEVICES_LAST = 989
};

/* ---- bits ---- */

uint64_t beacon_bits(const char *digits, size_t first, size_t last)
{
    uint64_t value = 0;
    promise(first >= 1 && first <= last && last - first < 64);
    for (size_t bit = first - 1; bit < last; bit++) {
        unsigned digit = hex_digit_value(digits[bit / BITS_A_DIGIT]);
        unsigned down = BITS_A_DIGIT - 1 - (unsigned)(bit % BITS_A_DIGIT);
        value = value << 1 | (digit >> down & 1U);
    }
    return value;
}

void beacon_bits_set(char *digits, size_t first, size_t last, uint64_t value)
{
    promise(first >= 1 && first <= last && last - first < 64);
    for (size_t bit = last; bit >= first; bit--, value >>= 1) {
        char *digit = &digits[(bit - 1) / BITS_A_DIGIT];
        unsigned mask = 8U >> (bit - 1) % BITS_A_DIGIT;
        unsigned now = (hex_digit_value(*digit) & ~mask) | ((value & 1) != 0 ? mask : 0U);
        *digit = "0123456789ABCDEF"[now];
    }
}

uint64_t beacon_message_bits(const struct beacon *beacon, size_t first, size_t last)
{
    promise(first >= FIRST_BIT && last - FIRST_BIT < BITS_A_DIGIT * BEACON_SHORT_DIGITS);
    return beacon_bits(beacon->digits, first - FIRST_BIT + 1, last - FIRST_BIT + 1);
}

/* ---- faults ---- */

void beacon_fault_add(struct beacon *beacon, enum beacon_fault fault)
{
    promise(fault < BEACON_FAULT_COUNT);
    beacon->faults |= UINT32_C(1) << fault;
}

void beacon_fault_add_at(struct beacon *beacon, enum beacon_fault fault, size_t at)
{
    beacon_fault_add(beacon, fault);
    if (beacon->fault_at == 0)
        beacon->fault_at = at;
}

/* ---- fields ---- */

void beacon_call_sign_take(struct beacon *beacon, const char *field, enum beacon_padding padding)
{
    const char *start = field + strspn(field, " ");
    size_t length = strcspn(start, " ");
    bool ends_there = start[length + strspn(start + length, " ")] == '\0';
    bool at_edge = padding == PADDED_LEFT ? start[length] == '\0' : start == field;
    if (*start == '\0') {
        beacon_fault_add(beacon, BEACON_FAULT_BLANK);
        return;
    }
    if (!ends_there || !at_edge)
        beacon_fault_add(beacon, BEACON_FAULT_ALIGNMENT);
    beacon->coding = BEACON_CODED_CALL_SIGN;
    snprintf(beacon->call_sign, sizeof beacon->call_sign, "%s", start);
    for (size_t end = strlen(beacon->call_sign); end > 0 && beacon->call_sign[end - 1] == ' ';)
        beacon->call_sign[--end] = '\0';
}

void beacon_country_take(struct beacon *beacon, uint64_t code)
{
    char mid[5];
    beacon->country = (unsigned)code;
    snprintf(mid, sizeof mid, "%03u", beacon->country % 10000U);
    if (code <= COUNTRY_HIGHEST)
        beacon->administration = mid_find(mid);
    if (code >= DEVICES_FIRST && code <= DEVICES_LAST)
        beacon_fault_add(beacon, BEACON_FAULT_DEVICE_IDENTITY);
    else if (beacon->administration == NULL)
        beacon_fault_add(beacon, BEACON_FAULT_COUNTRY_UNKNOWN);
}

void beacon_mmsi_tail_take(struct beacon *beacon, uint64_t tail)
{
    if (tail > MMSI_TAIL_HIGHEST || beacon->country > COUNTRY_HIGHEST) {
        beacon_fault_add(beacon, BEACON_FAULT_MMSI_RANGE);
        return;
    }
    beacon->coding = BEACON_CODED_MMSI;
    snprintf(beacon->mmsi, sizeof beacon->mmsi, "%03u%06u", beacon->country % 1000U,
             (unsigned)tail % 1000000U);
}
