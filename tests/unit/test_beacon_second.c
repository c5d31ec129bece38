/* test_beacon_second.c - second-generation identities encoded by the test's own
 * encoder, and what disagrees between a beacon and the ship's papers. */
#include "beacon_coder.h"

#define NO_AIS 10922

/* Bits 1 to 48; the test flag and the vessel's type as given. */
static void second_put(unsigned tac, unsigned serial, const char *test, const char *type)
{
    begin("1");
    put_bits(&coder, "101");
    put_number(&coder, tac, 16);
    put_number(&coder, serial, 14);
    put_bits(&coder, test);
    put_bits(&coder, type);
}

static uint32_t tac_fault(unsigned tac) { return tac <= 10000 ? BIT(BEACON_FAULT_TAC) : 0; }

static void expect_second(const struct beacon *beacon, unsigned tac, unsigned serial)
{
    assert_int_equal(beacon->generation, BEACON_SECOND_GENERATION);
    assert_true(beacon->serial_given);
    assert_int_equal(beacon->serial, serial);
    assert_int_equal(beacon->certificate, tac);
    assert_int_equal(beacon->position, BEACON_POSITION_NONE);
    assert_int_equal(beacon->homing, BEACON_HOMING_NOT_TOLD);
    assert_string_equal(beacon->identity, coder.hex);
}

static void by_mmsi(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        unsigned tac = (unsigned)chance(65536), serial = (unsigned)chance(16384);
        unsigned tail = (unsigned)chance(1000000), ais = (unsigned)chance(10000);
        bool has_ais = chance(2) == 0, own = chance(4) != 0;
        char ais_text[16] = "";
        second_put(tac, serial, "0", "001");
        unsigned mid = own ? country : (country + 1) % 970;
        put_number(&coder, (uint64_t)mid * 1000000 + tail, 30);
        put_number(&coder, has_ais ? ais : NO_AIS, 14);
        if (has_ais)
            snprintf(ais_text, sizeof ais_text, "%04u", ais);
        struct beacon beacon = decoded();
        expect_second(&beacon, tac, serial);
        assert_string_equal(beacon.ais, ais_text);
        if (mid == 0 && tail == 111111)
            continue;
        expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD,
               tac_fault(tac) | (mid == country ? 0 : BIT(BEACON_FAULT_COUNTRY_NOT_MMSI)));
        country = mid;
        expect_mmsi(&beacon, tail);
    }
}

static void without_an_mmsi_the_serial_tells(void **state)
{
    (void)state;
    second_put(20000, 5, "0", "001");
    put_number(&coder, 111111, 30);
    put_number(&coder, NO_AIS, 14);
    struct beacon beacon = decoded();
    expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD, 0);
    expect_serial(&beacon, 5, 20000);
    assert_string_equal(beacon.mmsi, "");
    assert_string_equal(beacon.ais, "");
}

static void numbers_out_of_range(void **state)
{
    (void)state;
    second_put(20000, 5, "0", "001");
    put_number(&coder, 1000000000, 30);
    put_number(&coder, 10000, 14);
    struct beacon beacon = decoded();
    expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD,
           BIT(BEACON_FAULT_MMSI_RANGE) | BIT(BEACON_FAULT_AIS_RANGE));
    assert_false(beacon_decodable(&beacon));
    assert_string_equal(beacon.mmsi, "");
    second_put(10000, 5, "0", "000");
    put_number(&coder, 0, 44);
    beacon = decoded();
    assert_true(beacon_has(&beacon, BEACON_FAULT_TAC));
    second_put(10001, 5, "0", "000");
    put_number(&coder, 1, 44);
    beacon = decoded();
    expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD, BIT(BEACON_FAULT_SPARE_BITS));
}

static void a_tender_s_mmsi_is_told(void **state)
{
    (void)state;
    second_put(20000, 5, "0", "001");
    put_number(&coder, UINT64_C(982381234), 30);
    put_number(&coder, NO_AIS, 14);
    struct beacon beacon = decoded();
    assert_true(beacon_has(&beacon, BEACON_FAULT_DEVICE_IDENTITY));
    assert_string_equal(beacon.mmsi, "982381234");
}

static void by_call_sign(void **state)
{
    (void)state;
    for (int i = 0; i < ROUNDS; i++) {
        unsigned tac = 10001 + (unsigned)chance(50000), spare = (unsigned)chance(4);
        char text[8], padded[9];
        call_sign_draw(text, 3 + (size_t)chance(5));
        snprintf(padded, sizeof padded, "%-7s", text);
        second_put(tac, 77, "0", "010");
        put_baudot(&coder, padded);
        put_number(&coder, spare, 2);
        struct beacon beacon = decoded();
        expect_second(&beacon, tac, 77);
        expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD,
               spare == 0 ? 0 : BIT(BEACON_FAULT_SPARE_BITS));
        assert_int_equal(beacon.coding, BEACON_CODED_CALL_SIGN);
        assert_string_equal(beacon.call_sign, text);
    }
    second_put(20000, 77, "0", "010");
    put_baudot(&coder, "       ");
    put_bits(&coder, "00");
    struct beacon beacon = decoded();
    expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD, 0);
    expect_serial(&beacon, 77, 20000);
    second_put(20000, 77, "0", "010");
    put_baudot(&coder, "QTAB2");
    put_bits(&coder, "000000" "100100" "00");
    beacon = decoded();
    expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD, BIT(BEACON_FAULT_BAUDOT));
    assert_int_equal(beacon.fault_at, 6);
}

/* Every vessel type, with and without the test flag, long and short. */
static void types(void **state)
{
    (void)state;
    static const struct { const char *type; enum beacon_kind kind; uint32_t faults; } rows[] = {
        {"000", BEACON_KIND_NOT_TOLD, 0},
        {"011", BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"100", BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"101", BEACON_ELT, BIT(BEACON_FAULT_AVIATION)},
        {"110", BEACON_KIND_NOT_TOLD, BIT(BEACON_FAULT_RESERVED)},
        {"111", BEACON_TEST, BIT(BEACON_FAULT_TEST)},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        for (int test = 0; test < 2; test++) {
            unsigned serial = (unsigned)chance(16384);
            second_put(20000, serial, test == 0 ? "0" : "1", rows[i].type);
            put_number(&coder, 0, 44);
            struct beacon beacon = decoded();
            if (test == 0)
                expect(&beacon, BEACON_SECOND, rows[i].kind, rows[i].faults);
            assert_true(test == 0 || beacon.kind == BEACON_TEST);
            assert_true(test == 0 || beacon_has(&beacon, BEACON_FAULT_TEST));
            expect_second(&beacon, 20000, serial);
            coder.count = 60;
            beacon = decoded();
            expect_second(&beacon, 20000, serial);
            assert_true(beacon_has(&beacon, BEACON_FAULT_SHORT_FORM));
            assert_int_equal(beacon_has(&beacon, BEACON_FAULT_TEST),
                             test == 1 || rows[i].kind == BEACON_TEST);
        }
}

static void the_fixed_bits_are_looked_at(void **state)
{
    (void)state;
    static const size_t fixed[] = {0, 11, 12, 13};
    for (size_t i = 0; i < sizeof fixed / sizeof fixed[0]; i++) {
        second_put(20000, 5, "0", "000");
        put_number(&coder, 0, 44);
        coder.bits[fixed[i]] = coder.bits[fixed[i]] == '1' ? '0' : '1';
        struct beacon beacon = decoded();
        expect(&beacon, BEACON_SECOND, BEACON_KIND_NOT_TOLD, BIT(BEACON_FAULT_FIXED_BITS));
        assert_false(beacon_decodable(&beacon));
        assert_false(beacon.serial_given);
    }
}

/* ---- against the ship's papers ---- */

static const struct administration croatia = {"HR", "HR", "Croatia"};
static const struct administration greece = {"GR", "GR", "Greece"};
static const struct administration gibraltar = {"GI", "GB", "Gibraltar"};

static const struct {
    const char *text, *mmsi, *call_sign;
    const struct administration *flag;
    unsigned set;
} compared[] = {
    /* MMSI-coded: 238123456 */
    {"9DC9D65028154D1", "238123456", "9A2345", &croatia, 0},
    {"9DC9D65028154D1", "232001234", NULL, NULL, BEACON_OTHER_MMSI | BEACON_OTHER_MID}, /* E39 */
    {"9DC9D65028154D1", "238123457", NULL, NULL, BEACON_OTHER_MMSI},
    {"9DC9D65028154D1", "237123456", NULL, &greece, BEACON_OTHER_MID},
    {"9DC9D65028154D1", NULL, NULL, NULL, 0},
    {"9DC9D65028154D1", "", "", &greece, BEACON_OTHER_COUNTRY_FLAG},
    {"9DC9D65028154D1", "238123456", NULL, &greece, 0},   /* MMSI against flag is another check */
    {"9DD567650E1138C5E702AAA", "238123456", NULL, NULL, 0},
    {"9DD567650E1138C5E702AAA", "238123465", NULL, NULL, BEACON_OTHER_MMSI},
    /* call sign 9A1234 of Croatia */
    {"9DC83E1D65028D1", "238000007", "9A1234", &croatia, 0},
    {"9DC83E1D65028D1", "238000007", "9A1235", &croatia, BEACON_OTHER_CALL_SIGN},
    {"9DC83E1D65028D1", "237000007", "none", &greece,
     BEACON_OTHER_CALL_SIGN | BEACON_OTHER_COUNTRY_MMSI | BEACON_OTHER_COUNTRY_FLAG},
    {"9DC83E1D65028D1", NULL, NULL, NULL, 0},
    {"9DD53A6C04D20F865028190", NULL, "9A2345", NULL, 0},
    {"9DD53A6C04D20F865028190", NULL, "9A2346", NULL, BEACON_OTHER_CALL_SIGN},
    /* serial-coded, 232: any MID of the administration will do */
    {"9D0D40C0E400505", "235000007", "MABC2", &gibraltar, 0},
    {"9D0D40C0E400505", "236000007", NULL, NULL, 0},
    {"9D0D40C0E400505", "238000007", NULL, NULL, BEACON_OTHER_COUNTRY_MMSI},
    {"9D0D40C0E400505", "235000007", NULL, &greece, BEACON_OTHER_COUNTRY_FLAG},
    {"9D0D40C0E400505", "200014730", NULL, NULL, 0},      /* no country's: nothing to compare */
    {"1F566A18BF81FE0", "238000007", NULL, NULL, BEACON_OTHER_COUNTRY_MMSI}, /* national, 250 */
    /* not decodable: what would be compared is not known */
    {"9DC8075940A04D1", "237000007", "9A1234", &greece, 0},
    {"9DC9D65O28154D1", "237000007", "9A1234", &greece, 0},
};

static void papers_and_beacon(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof compared / sizeof compared[0]; i++) {
        struct beacon beacon = beacon_decode(compared[i].text);
        unsigned set = beacon_against(&beacon, compared[i].mmsi, compared[i].call_sign,
                                      compared[i].flag);
        if (set != compared[i].set)
            fail_msg("row %zu, %s: %u, not %u", i, compared[i].text, set, compared[i].set);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(by_mmsi),
        cmocka_unit_test(without_an_mmsi_the_serial_tells),
        cmocka_unit_test(numbers_out_of_range),
        cmocka_unit_test(a_tender_s_mmsi_is_told),
        cmocka_unit_test(by_call_sign),
        cmocka_unit_test(types),
        cmocka_unit_test(the_fixed_bits_are_looked_at),
        cmocka_unit_test(papers_and_beacon),
    };
    return cmocka_run_group_tests_name("beacon_second", tests, NULL, NULL) != 0;
}
