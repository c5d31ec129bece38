/* beacon_coder.h - an encoder of beacon identities for the tests, which shares
 * nothing with the decoder: bits are written one by one as characters, and the
 * characters of modified Baudot have a table of their own (C/S T.001 Table A3). */
#ifndef MAYDECK_TEST_BEACON_CODER_H
#define MAYDECK_TEST_BEACON_CODER_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdbool.h>
#include <stdio.h>
#include <string.h>

#include "beacon.h"

struct coder {
    char bits[161];
    size_t count;
    char hex[41];
};

static inline void put_bits(struct coder *coder, const char *bits)
{
    size_t length = strlen(bits);
    memcpy(coder->bits + coder->count, bits, length + 1);
    coder->count += length;
}

static inline void put_number(struct coder *coder, uint64_t value, size_t width)
{
    for (size_t i = width; i > 0; i--)
        put_bits(coder, (value >> (i - 1)) % 2 == 0 ? "0" : "1");
}

static const struct { char sign; const char *bits; } baudot_signs[] = {
    {'A', "111000"}, {'B', "110011"}, {'C', "101110"}, {'D', "110010"}, {'E', "110000"},
    {'F', "110110"}, {'G', "101011"}, {'H', "100101"}, {'I', "101100"}, {'J', "111010"},
    {'K', "111110"}, {'L', "101001"}, {'M', "100111"}, {'N', "100110"}, {'O', "100011"},
    {'P', "101101"}, {'Q', "111101"}, {'R', "101010"}, {'S', "110100"}, {'T', "100001"},
    {'U', "111100"}, {'V', "101111"}, {'W', "111001"}, {'X', "110111"}, {'Y', "110101"},
    {'Z', "110001"}, {' ', "100100"}, {'-', "011000"}, {'/', "010111"}, {'0', "001101"},
    {'1', "011101"}, {'2', "011001"}, {'3', "010000"}, {'4', "001010"}, {'5', "000001"},
    {'6', "010101"}, {'7', "011100"}, {'8', "001100"}, {'9', "000011"},
};
enum { BAUDOT_SIGNS = sizeof baudot_signs / sizeof baudot_signs[0] };

static inline void put_baudot(struct coder *coder, const char *text)
{
    for (; *text != '\0'; text++)
        for (size_t i = 0; i < BAUDOT_SIGNS; i++)
            if (baudot_signs[i].sign == *text)
                put_bits(coder, baudot_signs[i].bits);
}

/* The bits as upper-case hexadecimal digits. */
static inline const char *coder_hex(struct coder *coder)
{
    size_t digits = 0;
    for (size_t i = 0; i < coder->count; i += 4) {
        size_t value = 0;
        for (size_t k = 0; k < 4; k++)
            value = value * 2 + (coder->bits[i + k] == '1');
        coder->hex[digits++] = "0123456789ABCDEF"[value];
    }
    coder->hex[digits] = '\0';
    return coder->hex;
}

/* The 21 check bits of 61 bits, by long division on paper. */
static inline void put_check_bits(struct coder *coder)
{
    static const char generator[] = "1001101101100111100011";
    char work[61 + 21 + 1];
    memcpy(work, coder->bits, 61);
    memset(work + 61, '0', 21);
    work[61 + 21] = '\0';
    for (size_t i = 0; i < 61; i++) {
        bool taken = work[i] == '1';
        for (size_t k = 0; taken && k < 22; k++)
            if (generator[k] == '1')
                work[i + k] = work[i + k] == '1' ? '0' : '1';
    }
    put_bits(coder, work + 61);
}

/* Numbers that look random and are the same in every run. */
static inline uint64_t chance(uint64_t below)
{
    static uint64_t seed = UINT64_C(0x9E3779B97F4A7C15);
    seed ^= seed << 13;
    seed ^= seed >> 7;
    seed ^= seed << 17;
    return seed % below;
}

/* ---- one identity being made ---- */

enum { ROUNDS = 2000 };

#define BIT(fault) (UINT32_C(1) << (fault))

/* Faults that only follow from the country drawn. */
#define OF_COUNTRY (BIT(BEACON_FAULT_COUNTRY_UNKNOWN) | BIT(BEACON_FAULT_DEVICE_IDENTITY))

static struct coder coder;
static unsigned country;

static inline void begin(const char *flag)
{
    coder = (struct coder){.count = 0};
    country = (unsigned)chance(1000);
    put_bits(&coder, flag);
    put_number(&coder, country, 10);
}

static inline struct beacon decoded(void)
{
    struct beacon beacon = beacon_decode(coder_hex(&coder));
    assert_int_equal(beacon.country, country);
    return beacon;
}

static inline void expect(const struct beacon *beacon, enum beacon_protocol protocol,
                          enum beacon_kind kind, uint32_t faults)
{
    assert_int_equal(beacon->protocol, protocol);
    assert_int_equal(beacon->kind, kind);
    assert_int_equal(beacon->faults & ~OF_COUNTRY, faults);
}

static inline void expect_mmsi(const struct beacon *beacon, unsigned tail)
{
    char mmsi[16];
    snprintf(mmsi, sizeof mmsi, "%03u%06u", country % 1000, tail % 1000000);
    assert_int_equal(beacon->coding, BEACON_CODED_MMSI);
    assert_string_equal(beacon->mmsi, mmsi);
}

static inline void expect_serial(const struct beacon *beacon, unsigned serial,
                                 unsigned certificate)
{
    assert_int_equal(beacon->coding, BEACON_CODED_SERIAL);
    assert_true(beacon->serial_given);
    assert_int_equal(beacon->serial, serial);
    assert_int_equal(beacon->certificate, certificate);
}

/* A call sign of `length` letters and figures, never all figures. */
static inline void call_sign_draw(char *out, size_t length)
{
    static const char signs[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
    for (size_t i = 0; i < length; i++)
        out[i] = signs[chance(sizeof signs - 1)];
    out[chance(length)] = (char)('A' + (int)chance(26));
    out[length] = '\0';
}

#endif
