/* test_beacon_location.c - identities of every location protocol and of the second
 * generation, and whole messages, encoded by the test's own encoder. */
#include "beacon_coder.h"

/* ---- location protocols ---- */

/* "No position" of each group of protocols: north, east, degrees all ones. */
#define NONE_STANDARD "0" "111111111" "0" "1111111111"
#define NONE_NATIONAL "0" "1111111" "00000" "0" "11111111" "00000"
#define NONE_RETURN_LINK "0" "11111111" "0" "111111111"

/* Puts no position or, half the time, one; `true` when it is one. */
static bool position_put(const char *none)
{
    size_t width = strlen(none);
    struct coder drawn = {.count = 0};
    if (chance(2) == 0) {
        put_bits(&coder, none);
        return false;
    }
    put_number(&drawn, chance(UINT64_C(1) << width), width);
    put_bits(&coder, drawn.bits);
    return strcmp(drawn.bits, none) != 0;
}

/* Decodes with the position, and checks that the identity is the one without. */
static struct beacon located(const char *none)
{
    size_t before = coder.count;
    bool carried = position_put(none);
    struct beacon beacon = decoded();
    assert_string_equal(beacon.digits, coder.hex);
    assert_int_equal(beacon.position, carried ? BEACON_POSITION_CARRIED : BEACON_POSITION_DEFAULT);
    assert_int_equal(beacon_has(&beacon, BEACON_FAULT_POSITION), carried);
    coder.count = before;
    put_bits(&coder, none);
    assert_string_equal(beacon.identity, coder_hex(&coder));
    struct beacon again = beacon_decode(beacon.identity);
    assert_false(beacon_has(&again, BEACON_FAULT_POSITION));
    assert_string_equal(again.identity, beacon.identity);
    beacon.faults &= ~BIT(BEACON_FAULT_POSITION);
    return beacon;
}

static void standard_by_mmsi(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        unsigned tail = (unsigned)chance(1000000), number = (unsigned)chance(16);
        char text[12];
        snprintf(text, sizeof text, "%u", number);
        begin("0");
        put_bits(&coder, "0010");
        put_number(&coder, tail, 20);
        put_number(&coder, number, 4);
        struct beacon beacon = located(NONE_STANDARD);
        expect(&beacon, BEACON_STANDARD_MMSI, BEACON_EPIRB, 0);
        expect_mmsi(&beacon, tail);
        assert_string_equal(beacon.number, text);
        assert_int_equal(beacon.homing, BEACON_HOMING_NOT_TOLD);
    }
}

static void ship_security(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        unsigned tail = (unsigned)chance(1000000), fixed = (unsigned)chance(2);
        begin("0");
        put_bits(&coder, "1100");
        put_number(&coder, tail, 20);
        put_number(&coder, fixed, 4);
        struct beacon beacon = located(NONE_STANDARD);
        expect(&beacon, BEACON_STANDARD_SECURITY, BEACON_SHIP_SECURITY,
               BIT(BEACON_FAULT_SHIP_SECURITY) |
                   (fixed == 0 ? 0 : BIT(BEACON_FAULT_SPARE_BITS)));
        expect_mmsi(&beacon, tail);
    }
}

static void no_mmsi_has_seven_figures(void **state)
{
    (void)state;
    for (unsigned tail = 1000000; tail < 1048576; tail += 7) {
        begin("0");
        put_bits(&coder, "0010");
        put_number(&coder, tail, 20);
        put_bits(&coder, "0000" NONE_STANDARD);
        struct beacon beacon = decoded();
        expect(&beacon, BEACON_STANDARD_MMSI, BEACON_EPIRB, BIT(BEACON_FAULT_MMSI_RANGE));
        assert_string_equal(beacon.mmsi, "");
        assert_false(beacon_decodable(&beacon));
    }
}

static const struct {
    const char *code;
    enum beacon_protocol protocol;
    enum beacon_kind kind;
    uint32_t faults;
} standard_serials[] = {
    {"0110", BEACON_STANDARD_EPIRB, BEACON_EPIRB, 0},
    {"0111", BEACON_STANDARD_PLB, BEACON_PLB, BIT(BEACON_FAULT_PLB)},
    {"0100", BEACON_STANDARD_ELT, BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
}, nationals[] = {
    {"1010", BEACON_NATIONAL_EPIRB, BEACON_EPIRB, 0},
    {"1011", BEACON_NATIONAL_PLB, BEACON_PLB, BIT(BEACON_FAULT_PLB)},
    {"1000", BEACON_NATIONAL_ELT, BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
};

static void standard_by_serial(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        size_t row = (size_t)chance(3);
        unsigned certificate = (unsigned)chance(1024), serial = (unsigned)chance(16384);
        uint32_t unnumbered = certificate == 0 || serial == 0 ? BIT(BEACON_FAULT_NOT_NUMBERED) : 0;
        begin("0");
        put_bits(&coder, standard_serials[row].code);
        put_number(&coder, certificate, 10);
        put_number(&coder, serial, 14);
        struct beacon beacon = located(NONE_STANDARD);
        expect(&beacon, standard_serials[row].protocol, standard_serials[row].kind,
               standard_serials[row].faults | unnumbered);
        expect_serial(&beacon, serial, certificate);
    }
}

static void a_number_of_zero_is_none(void **state)
{
    (void)state;
    for (unsigned which = 0; which < 2; which++) {
        begin("0");
        put_bits(&coder, "0110");
        put_number(&coder, which, 10);
        put_number(&coder, 1 - which, 14);
        struct beacon beacon = located(NONE_STANDARD);
        expect(&beacon, BEACON_STANDARD_EPIRB, BEACON_EPIRB, BIT(BEACON_FAULT_NOT_NUMBERED));
        assert_false(beacon_decodable(&beacon));
    }
}

static void national(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        size_t row = (size_t)chance(3);
        unsigned serial = (unsigned)chance(262144);
        begin("0");
        put_bits(&coder, nationals[row].code);
        put_number(&coder, serial, 18);
        struct beacon beacon = located(NONE_NATIONAL);
        expect(&beacon, nationals[row].protocol, nationals[row].kind, nationals[row].faults);
        assert_int_equal(beacon.coding, BEACON_CODED_NATIONAL);
        assert_int_equal(beacon.serial, serial);
    }
}

static void return_link_by_mmsi(void **state)
{
    (void)state;
    static const struct { enum beacon_kind kind; const char *number; uint32_t faults; } types[] = {
        {BEACON_EPIRB, "0", 0}, {BEACON_EPIRB, "1", 0}, {BEACON_PLB, "", BIT(BEACON_FAULT_PLB)},
        {BEACON_TEST, "", BIT(BEACON_FAULT_TEST)},
    };
    for (int i = 0; i < ROUNDS; i++) {
        unsigned type = (unsigned)chance(4), tail = (unsigned)chance(1000000);
        begin("0");
        put_bits(&coder, "1101");
        put_number(&coder, type, 2);
        put_bits(&coder, "1111");
        put_number(&coder, tail, 20);
        struct beacon beacon = located(NONE_RETURN_LINK);
        expect(&beacon, BEACON_RETURN_LINK, types[type].kind, types[type].faults);
        expect_mmsi(&beacon, tail);
        assert_string_equal(beacon.number, types[type].number);
    }
}

static void return_link_by_serial(void **state)
{
    (void)state;
    static const struct { enum beacon_kind kind; unsigned from; uint32_t faults; } types[] = {
        {BEACON_ELT, 2000, BIT(BEACON_FAULT_AVIATION)}, {BEACON_EPIRB, 1000, 0},
        {BEACON_PLB, 3000, BIT(BEACON_FAULT_PLB)},
    };
    for (int i = 0; i < ROUNDS; i++) {
        unsigned type = (unsigned)chance(3), certificate = (unsigned)chance(960);
        unsigned serial = (unsigned)chance(i % 10 == 0 ? 2 : 16384);
        bool numbered = certificate > 0 && certificate < 949 && serial > 0;
        begin("0");
        put_bits(&coder, "1101");
        put_number(&coder, type, 2);
        put_number(&coder, certificate, 10);
        put_number(&coder, serial, 14);
        struct beacon beacon = located(NONE_RETURN_LINK);
        expect(&beacon, BEACON_RETURN_LINK, types[type].kind,
               types[type].faults | (numbered ? 0 : BIT(BEACON_FAULT_NOT_NUMBERED)));
        expect_serial(&beacon, serial, types[type].from + certificate);
    }
}

static void a_return_link_has_an_approval_and_a_serial_number(void **state)
{
    (void)state;
    static const struct { unsigned certificate, serial; bool numbered; } rows[] = {
        {1, 1, true}, {948, 16383, true}, {42, 77, true},
        {0, 1, false}, {949, 1, false}, {959, 1, false}, {42, 0, false}, {0, 0, false},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        begin("0");
        put_bits(&coder, "1101" "01");
        put_number(&coder, rows[i].certificate, 10);
        put_number(&coder, rows[i].serial, 14);
        struct beacon beacon = located(NONE_RETURN_LINK);
        expect(&beacon, BEACON_RETURN_LINK, BEACON_EPIRB,
               rows[i].numbered ? 0 : BIT(BEACON_FAULT_NOT_NUMBERED));
        if (!rows[i].numbered)
            assert_false(beacon_decodable(&beacon));
    }
}

static void other_locations(void **state)
{
    (void)state;
    static const struct {
        const char *code;
        enum beacon_protocol protocol;
        enum beacon_kind kind;
        uint32_t faults;
    } rows[] = {
        {"0000", BEACON_PROTOCOL_RESERVED, BEACON_KIND_NOT_TOLD, BIT(BEACON_FAULT_RESERVED)},
        {"0001", BEACON_PROTOCOL_RESERVED, BEACON_KIND_NOT_TOLD, BIT(BEACON_FAULT_RESERVED)},
        {"0011", BEACON_STANDARD_ADDRESS, BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"0101", BEACON_STANDARD_OPERATOR, BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"1001", BEACON_ELT_TRACKING, BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"1110", BEACON_STANDARD_TEST, BEACON_TEST, BIT(BEACON_FAULT_TEST)},
        {"1111", BEACON_NATIONAL_TEST, BEACON_TEST, BIT(BEACON_FAULT_TEST)},
    };
    for (int i = 0; i < ROUNDS; i++)
        for (size_t k = 0; k < sizeof rows / sizeof rows[0]; k++) {
            begin("0");
            put_bits(&coder, rows[k].code);
            put_number(&coder, chance(UINT64_C(1) << 24), 24);
            put_bits(&coder, NONE_STANDARD);
            struct beacon beacon = decoded();
            expect(&beacon, rows[k].protocol, rows[k].kind, rows[k].faults);
            assert_int_equal(beacon.coding, BEACON_CODED_OTHERWISE);
            assert_string_equal(beacon.identity, coder.hex);
        }
}

/* ---- whole messages ---- */

/* Short ones hold a user protocol, long ones also a position behind the identity. */
static void whole_messages(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        size_t digits = chance(2) == 0 ? 22 : 30;
        struct coder message = {.count = 0};
        unsigned serial = (unsigned)chance(1048576);
        begin("1");
        put_bits(&coder, "011" "010" "0");
        put_number(&coder, serial, 20);
        put_bits(&coder, "00000000000000000000" "01");
        put_bits(&message, digits == 22 ? "0" : "1");
        put_bits(&message, coder.bits);
        put_check_bits(&message);
        put_number(&message, chance(64), 6);
        if (digits == 30)
            put_number(&message, chance(UINT64_C(1) << 32), 32);
        assert_int_equal(strlen(coder_hex(&message)), digits);
        struct beacon beacon = beacon_decode(message.hex);
        expect(&beacon, BEACON_USER_SERIAL, BEACON_EPIRB_FLOAT_FREE,
               BIT(BEACON_FAULT_WHOLE_MESSAGE));
        expect_serial(&beacon, serial, 0);
        assert_string_equal(beacon.identity, coder_hex(&coder));
        assert_string_equal(beacon.digits, coder.hex);
    }
}

/* Which digits a short message is filled up to does not make it a long one; what is no
 * filling does. A long one is not short because its end is missing. */
static void the_length_is_told_by_the_message(void **state)
{
    (void)state;
    static const struct { const char *frame, *flag, *end; bool fits; } rows[] = {
        {"", "0", "", true}, {"", "0", "00000000", true}, {"FFFE2F", "0", "00000000", true},
        {"FFFED0", "0", "00000000", true}, {"FFFE2E", "0", "00000000", false},
        {"", "0", "00000001", false}, {"", "0", "80000000", false},
        {"FFFE2F", "0", "00001000", false}, {"", "1", "", false}, {"", "1", "00000000", true},
        {"FFFE2F", "1", "12345678", true},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        struct coder message = {.count = 0};
        char text[64];
        begin("1");
        put_bits(&coder, "011" "010" "0");
        put_number(&coder, 8193, 20);
        put_bits(&coder, "00000000000000000000" "01");
        put_bits(&message, rows[i].flag);
        put_bits(&message, coder.bits);
        put_check_bits(&message);
        put_bits(&message, "000000");
        snprintf(text, sizeof text, "%s%s%s", rows[i].frame, coder_hex(&message), rows[i].end);
        struct beacon beacon = beacon_decode(text);
        expect(&beacon, BEACON_USER_SERIAL, BEACON_EPIRB_FLOAT_FREE,
               BIT(BEACON_FAULT_WHOLE_MESSAGE) | (rows[i].fits ? 0 : BIT(BEACON_FAULT_FRAME)));
        assert_string_equal(beacon.identity, coder_hex(&coder));
    }
}

/* Nothing that has the right digits is refused for them, or decodes to nothing. */
static void any_digits(void **state)
{
    (void)state;
    static const size_t lengths[] = {15, 22, 23, 30, 36};
    struct arena *arena = arena_new((size_t)1 << 26);
    for (int i = 0; i < 20 * ROUNDS; i++) {
        char text[37];
        size_t length = lengths[chance(5)], wanted = length == 23 ? 23 : 15;
        for (size_t k = 0; k < length; k++)
            text[k] = "0123456789abcdefABCDEF"[chance(22)];
        text[length] = '\0';
        struct beacon beacon = beacon_decode(text);
        assert_int_not_equal(beacon.outcome, BEACON_UNREADABLE);
        assert_int_equal(strlen(beacon.digits), wanted);
        assert_int_equal(strlen(beacon.identity), wanted);
        assert_true(strlen(beacon_words(&beacon, arena)) > 5);
        assert_int_equal(strlen(beacon_grouped(&beacon, arena)), wanted == 15 ? 17 : 27);
        struct beacon again = beacon_decode(beacon_grouped(&beacon, arena));
        assert_string_equal(again.identity, beacon.identity);
        assert_int_equal(again.protocol, beacon.protocol);
        assert_string_equal(again.mmsi, beacon.mmsi);
    }
    arena_free(arena);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(standard_by_mmsi),
        cmocka_unit_test(ship_security),
        cmocka_unit_test(no_mmsi_has_seven_figures),
        cmocka_unit_test(standard_by_serial),
        cmocka_unit_test(a_number_of_zero_is_none),
        cmocka_unit_test(national),
        cmocka_unit_test(return_link_by_mmsi),
        cmocka_unit_test(return_link_by_serial),
        cmocka_unit_test(a_return_link_has_an_approval_and_a_serial_number),
        cmocka_unit_test(other_locations),
        cmocka_unit_test(whole_messages),
        cmocka_unit_test(the_length_is_told_by_the_message),
        cmocka_unit_test(any_digits),
    };
    return cmocka_run_group_tests_name("beacon_location", tests, NULL, NULL) != 0;
}
