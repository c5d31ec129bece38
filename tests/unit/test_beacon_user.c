/* test_beacon_user.c - identities of every user protocol, encoded by the test's own
 * encoder from fields drawn at random, decode to those fields. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <stdio.h>

#include "beacon_coder.h"
#include "radio/beacon_parts.h"

/* ---- user protocols ---- */

static const char beacon_numbers[] = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/* What stands behind a ship's identity; draws and checks it. */
struct tail {
    char number[2];
    unsigned spare, homing;
};

static struct tail tail_put(void)
{
    struct tail tail = {.number = {beacon_numbers[chance(36)]}, .spare = (unsigned)chance(4),
                        .homing = (unsigned)chance(4)};
    put_baudot(&coder, tail.number);
    put_number(&coder, tail.spare, 2);
    put_number(&coder, tail.homing, 2);
    return tail;
}

static void tail_expect(const struct beacon *beacon, const struct tail *tail,
                        enum beacon_protocol protocol)
{
    static const enum beacon_homing homings[] = {BEACON_HOMING_NONE, BEACON_HOMING_121_5,
                                                 BEACON_HOMING_SART, BEACON_HOMING_OTHER};
    expect(beacon, protocol, BEACON_EPIRB,
           tail->spare == 0 ? 0 : BIT(BEACON_FAULT_SPARE_BITS));
    assert_string_equal(beacon->number, tail->number);
    assert_int_equal(beacon->homing, homings[tail->homing]);
    assert_int_equal(beacon->position, BEACON_POSITION_NONE);
    assert_string_equal(beacon->identity, coder.hex);
}

static void maritime_user(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        char text[8], padded[8], digits[16];
        unsigned mmsi = (unsigned)chance(1000000);
        bool by_mmsi = chance(2) == 0;
        call_sign_draw(text, 3 + (size_t)chance(4));
        snprintf(padded, sizeof padded, "%6s", text);
        snprintf(digits, sizeof digits, "%06u", mmsi);
        begin("1");
        put_bits(&coder, "010");
        put_baudot(&coder, by_mmsi ? digits : padded);
        struct tail tail = tail_put();
        struct beacon beacon = decoded();
        tail_expect(&beacon, &tail, BEACON_USER_MARITIME);
        if (by_mmsi) {
            expect_mmsi(&beacon, mmsi);
        } else {
            assert_int_equal(beacon.coding, BEACON_CODED_CALL_SIGN);
            assert_string_equal(beacon.call_sign, text);
        }
    }
}

/* Four characters, then figures; shorter ones are followed by spaces. */
static void call_sign_user(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        char text[8], padded[9];
        size_t length = 3 + (size_t)chance(5), letters = length < 4 ? length : 4;
        call_sign_draw(text, letters);
        for (size_t k = letters; k < length; k++)
            text[k] = (char)('0' + (int)chance(10));
        text[length] = '\0';
        snprintf(padded, sizeof padded, "%-7s", text);
        begin("1");
        put_bits(&coder, "110");
        put_baudot(&coder, (char[]){padded[0], padded[1], padded[2], padded[3], '\0'});
        for (size_t k = 4; k < 7; k++)
            put_number(&coder, padded[k] == ' ' ? 10 : (uint64_t)(padded[k] - '0'), 4);
        struct tail tail = tail_put();
        struct beacon beacon = decoded();
        tail_expect(&beacon, &tail, BEACON_USER_CALL_SIGN);
        assert_int_equal(beacon.coding, BEACON_CODED_CALL_SIGN);
        assert_string_equal(beacon.call_sign, text);
        assert_string_equal(beacon.mmsi, "");
    }
}

static const struct { enum beacon_kind kind; bool numbered; uint32_t faults; } serial_types[] = {
    {BEACON_ELT, true, BIT(BEACON_FAULT_AVIATION)}, {BEACON_ELT, false, BIT(BEACON_FAULT_AVIATION)},
    {BEACON_EPIRB_FLOAT_FREE, true, 0}, {BEACON_ELT, false, BIT(BEACON_FAULT_AVIATION)},
    {BEACON_EPIRB_NOT_FLOAT_FREE, true, 0},
    {BEACON_KIND_NOT_TOLD, false, BIT(BEACON_FAULT_RESERVED)},
    {BEACON_PLB, true, BIT(BEACON_FAULT_PLB)},
    {BEACON_KIND_NOT_TOLD, false, BIT(BEACON_FAULT_RESERVED)},
};

static void serial_user(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        unsigned type = (unsigned)chance(8), serial = (unsigned)chance(1048576);
        unsigned certificate = (unsigned)chance(1024), certified = (unsigned)chance(2);
        begin("1");
        put_bits(&coder, "011");
        put_number(&coder, type, 3);
        put_number(&coder, certified, 1);
        put_number(&coder, serial, 20);
        put_number(&coder, chance(1024), 10);
        put_number(&coder, certificate, 10);
        put_bits(&coder, "01");
        struct beacon beacon = decoded();
        expect(&beacon, BEACON_USER_SERIAL, serial_types[type].kind, serial_types[type].faults);
        assert_int_equal(beacon.homing, BEACON_HOMING_121_5);
        if (serial_types[type].numbered)
            expect_serial(&beacon, serial, certified == 1 ? certificate : 0);
        else
            assert_false(beacon.serial_given);
    }
}

static void other_users(void **state)
{
    (void)state;
    static const struct {
        const char *code;
        enum beacon_protocol protocol;
        enum beacon_kind kind;
        uint32_t faults;
    } rows[] = {
        {"000", BEACON_USER_ORBITOGRAPHY, BEACON_ORBITOGRAPHY, BIT(BEACON_FAULT_ORBITOGRAPHY)},
        {"001", BEACON_USER_AVIATION, BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"100", BEACON_USER_NATIONAL, BEACON_NATIONAL, 0},
        {"111", BEACON_USER_TEST, BEACON_TEST, BIT(BEACON_FAULT_TEST)},
    };
    for (int i = 0; i < ROUNDS; i++)
        for (size_t k = 0; k < sizeof rows / sizeof rows[0]; k++) {
            begin("1");
            put_bits(&coder, rows[k].code);
            put_number(&coder, chance(UINT64_C(1) << 46), 46);
            struct beacon beacon = decoded();
            expect(&beacon, rows[k].protocol, rows[k].kind, rows[k].faults);
            assert_string_equal(beacon.identity, coder.hex);
            assert_false(beacon.serial_given);
        }
}

/* ---- what cannot be told ---- */

/* Each of the 25 codes that are no character, at each place of the six. */
static void codes_that_are_no_character(void **state)
{
    (void)state;
    size_t none = 0;
    for (uint64_t code = 0; code < 64; code++) {
        bool known = false;
        for (size_t i = 0; i < BAUDOT_SIGNS; i++) {
            struct coder sign = {.count = 0}, this = {.count = 0};
            put_baudot(&sign, (char[]){baudot_signs[i].sign, '\0'});
            put_number(&this, code, 6);
            if (strcmp(sign.bits, this.bits) != 0)
                continue;
            known = true;
            assert_int_equal(baudot_character(code), baudot_signs[i].sign);
        }
        if (known)
            continue;
        none++;
        assert_int_equal(baudot_character(code), '\0');
        for (size_t at = 0; at < 6; at++) {
            begin("1");
            put_bits(&coder, "010");
            for (size_t k = 0; k < 6; k++)
                if (k == at)
                    put_number(&coder, code, 6);
                else
                    put_baudot(&coder, "4");
            put_baudot(&coder, "0");
            put_bits(&coder, "0001");
            struct beacon beacon = decoded();
            assert_true(beacon_has(&beacon, BEACON_FAULT_BAUDOT));
            assert_int_equal(beacon.fault_at, at + 1);
            assert_false(beacon_decodable(&beacon));
            assert_string_equal(beacon.mmsi, "");
            assert_string_equal(beacon.call_sign, "");
        }
    }
    assert_int_equal(none, 25);
    assert_int_equal(baudot_character(64), '\0');
}

static struct beacon maritime(const char *six, const char *number)
{
    begin("1");
    put_bits(&coder, "010");
    put_baudot(&coder, six);
    put_baudot(&coder, number);
    put_bits(&coder, "0001");
    return decoded();
}

static struct beacon by_call_sign(const char *four, unsigned a, unsigned b, unsigned c)
{
    begin("1");
    put_bits(&coder, "110");
    put_baudot(&coder, four);
    put_number(&coder, a, 4);
    put_number(&coder, b, 4);
    put_number(&coder, c, 4);
    put_baudot(&coder, "0");
    put_bits(&coder, "0001");
    return decoded();
}

static void call_signs_that_cannot_be(void **state)
{
    (void)state;
    struct beacon beacon = maritime("      ", "0");
    expect(&beacon, BEACON_USER_MARITIME, BEACON_EPIRB, BIT(BEACON_FAULT_BLANK));
    beacon = maritime("QTAB2 ", "0");
    expect(&beacon, BEACON_USER_MARITIME, BEACON_EPIRB, BIT(BEACON_FAULT_ALIGNMENT));
    beacon = maritime(" QT B2", "0");
    expect(&beacon, BEACON_USER_MARITIME, BEACON_EPIRB, BIT(BEACON_FAULT_ALIGNMENT));
    for (const char *number = " -/"; *number != '\0'; number++) {
        beacon = maritime(" QTAB2", (char[]){*number, '\0'});
        expect(&beacon, BEACON_USER_MARITIME, BEACON_EPIRB, BIT(BEACON_FAULT_BEACON_NUMBER));
    }
    beacon = by_call_sign(" QTA", 10, 10, 10);
    expect(&beacon, BEACON_USER_CALL_SIGN, BEACON_EPIRB, BIT(BEACON_FAULT_ALIGNMENT));
    beacon = by_call_sign("QTAB", 10, 2, 10);
    expect(&beacon, BEACON_USER_CALL_SIGN, BEACON_EPIRB, BIT(BEACON_FAULT_ALIGNMENT));
    beacon = by_call_sign("    ", 10, 10, 10);
    expect(&beacon, BEACON_USER_CALL_SIGN, BEACON_EPIRB, BIT(BEACON_FAULT_BLANK));
    for (unsigned figure = 11; figure < 16; figure++) {
        beacon = by_call_sign("QTAB", 2, figure, 10);
        expect(&beacon, BEACON_USER_CALL_SIGN, BEACON_EPIRB, BIT(BEACON_FAULT_FIGURE));
        assert_int_equal(beacon.fault_at, 6);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(maritime_user),
        cmocka_unit_test(call_sign_user),
        cmocka_unit_test(serial_user),
        cmocka_unit_test(other_users),
        cmocka_unit_test(codes_that_are_no_character),
        cmocka_unit_test(call_signs_that_cannot_be),
    };
    return cmocka_run_group_tests_name("beacon_user", tests, NULL, NULL) != 0;
}
