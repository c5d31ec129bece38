/* test_beacon.c - beacon identities: known vectors, how people write them,
 * whole messages, and the words for people. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "arena.h"
#include "beacon.h"
#include "text.h"

static struct arena *arena;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new((size_t)1 << 22);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

#define BIT(fault) (UINT32_C(1) << (fault))

/* ---- vectors ---- */

static const struct vector {
    const char *name, *text;
    enum beacon_protocol protocol;
    enum beacon_kind kind;
    enum beacon_coding coding;
    unsigned country;
    const char *ship;        /* MMSI or call sign, as `coding` says */
    const char *number;
    unsigned serial, certificate;
    enum beacon_homing homing;
    uint32_t faults;
    const char *identity;    /* NULL: the text itself */
} vectors[] = {
    {"E01", "ADCD00800440401", BEACON_USER_SERIAL, BEACON_EPIRB_FLOAT_FREE,
     BEACON_CODED_SERIAL, 366, "", "", 8193, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E02", "2024F72524FFBFF", BEACON_STANDARD_MMSI, BEACON_EPIRB, BEACON_CODED_MMSI, 257,
     "257506153", "2", 0, 0, BEACON_HOMING_NOT_TOLD, 0, NULL},
    {"E03", "2024F7252457804", BEACON_STANDARD_MMSI, BEACON_EPIRB, BEACON_CODED_MMSI, 257,
     "257506153", "2", 0, 0, BEACON_HOMING_NOT_TOLD, BIT(BEACON_FAULT_POSITION),
     "2024F72524FFBFF"},
    {"E04", "90127B92922BC022FF103504422535", BEACON_STANDARD_MMSI, BEACON_EPIRB,
     BEACON_CODED_MMSI, 257, "257506153", "2", 0, 0, BEACON_HOMING_NOT_TOLD,
     BIT(BEACON_FAULT_WHOLE_MESSAGE) | BIT(BEACON_FAULT_POSITION), "2024F72524FFBFF"},
    {"E05", "9DC9D65028154D1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_MMSI, 238,
     "238123456", "0", 0, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E07", "9EE8D34D34D71D1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_MMSI, 247,
     "247000007", "1", 0, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E08", "9DC83E1D65028D1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_CALL_SIGN, 238,
     "9A1234", "0", 0, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E11", "ABE90C1940A04D1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_CALL_SIGN, 351,
     "3E2345", "0", 0, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E12", "9F183978CEAA8D1", BEACON_USER_CALL_SIGN, BEACON_EPIRB, BEACON_CODED_CALL_SIGN, 248,
     "9HAB", "0", 0, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E14", "9A381CF8CCAA8D1", BEACON_USER_CALL_SIGN, BEACON_EPIRB, BEACON_CODED_CALL_SIGN, 209,
     "5BAB2", "0", 0, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E15", "9D0D40C0E400505", BEACON_USER_SERIAL, BEACON_EPIRB_FLOAT_FREE, BEACON_CODED_SERIAL,
     232, "", "", 12345, 321, BEACON_HOMING_121_5, 0, NULL},
    {"E17", "9A6F4048D0004B1", BEACON_USER_SERIAL, BEACON_PLB, BEACON_CODED_SERIAL, 211, "", "",
     4660, 300, BEACON_HOMING_121_5, BIT(BEACON_FAULT_PLB), NULL},
    {"E18", "BEED00000400001", BEACON_USER_SERIAL, BEACON_EPIRB_FLOAT_FREE, BEACON_CODED_SERIAL,
     503, "", "", 1, 0, BEACON_HOMING_121_5, 0, NULL},
    {"E19", "1DA53F7E20FFBFF", BEACON_STANDARD_MMSI, BEACON_EPIRB, BEACON_CODED_MMSI, 237,
     "237654321", "0", 0, 0, BEACON_HOMING_NOT_TOLD, 0, NULL},
    {"E21", "1EEC4B09A4FFBFF", BEACON_STANDARD_EPIRB, BEACON_EPIRB, BEACON_CODED_SERIAL, 247, "",
     "", 1234, 150, BEACON_HOMING_NOT_TOLD, 0, NULL},
    {"E24", "1F566A18BF81FE0", BEACON_NATIONAL_PLB, BEACON_PLB, BEACON_CODED_NATIONAL, 250, "",
     "", 54321, 0, BEACON_HOMING_NOT_TOLD, BIT(BEACON_FAULT_PLB), NULL},
    {"E26", "1D1A854026BFDFF", BEACON_RETURN_LINK, BEACON_EPIRB, BEACON_CODED_SERIAL, 232, "",
     "", 77, 1042, BEACON_HOMING_NOT_TOLD, 0, NULL},
    {"E27", "193BFCE031BFDFF", BEACON_RETURN_LINK, BEACON_TEST, BEACON_CODED_MMSI, 201,
     "201639075", "", 0, 0, BEACON_HOMING_NOT_TOLD, BIT(BEACON_FAULT_TEST), NULL},
    {"E28", "F949D65028154D1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_MMSI, 970,
     "970123456", "0", 0, 0, BEACON_HOMING_121_5, BIT(BEACON_FAULT_DEVICE_IDENTITY), NULL},
    {"E29", "9DDC00000000000", BEACON_USER_TEST, BEACON_TEST, BEACON_CODED_OTHERWISE, 238, "",
     "", 0, 0, BEACON_HOMING_NOT_TOLD, BIT(BEACON_FAULT_TEST), NULL},
    {"E30", "9DC8075940A04D1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_OTHERWISE, 238,
     "", "0", 0, 0, BEACON_HOMING_121_5, BIT(BEACON_FAULT_BAUDOT), NULL},
    {"E32", "9DC9D65028154DD", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_MMSI, 238,
     "238123456", "0", 0, 0, BEACON_HOMING_121_5, BIT(BEACON_FAULT_SPARE_BITS), NULL},
    {"E33", "9DC64903E32DF71", BEACON_USER_AVIATION, BEACON_ELT, BEACON_CODED_OTHERWISE, 238, "",
     "", 0, 0, BEACON_HOMING_121_5, BIT(BEACON_FAULT_AVIATION), NULL},
    {"E37", "9dc9d 65028 154d1", BEACON_USER_MARITIME, BEACON_EPIRB, BEACON_CODED_MMSI, 238,
     "238123456", "0", 0, 0, BEACON_HOMING_121_5, 0, "9DC9D65028154D1"},
    {"G01", "9934039823D000000000000", BEACON_SECOND, BEACON_KIND_NOT_TOLD, BEACON_CODED_SERIAL,
     201, "", "", 573, 230, BEACON_HOMING_NOT_TOLD, BIT(BEACON_FAULT_TAC), NULL},
    {"G01 short", "9934039823D0000", BEACON_SECOND, BEACON_KIND_NOT_TOLD, BEACON_CODED_SERIAL,
     201, "", "", 573, 230, BEACON_HOMING_NOT_TOLD,
     BIT(BEACON_FAULT_TAC) | BIT(BEACON_FAULT_SHORT_FORM), NULL},
    {"G02", "9DD567650E1138C5E702AAA", BEACON_SECOND, BEACON_KIND_NOT_TOLD, BEACON_CODED_MMSI,
     238, "238123456", "", 4321, 23001, BEACON_HOMING_NOT_TOLD, 0, NULL},
    {"G02 short", "9DD567650E1138C", BEACON_SECOND, BEACON_KIND_NOT_TOLD, BEACON_CODED_SERIAL,
     238, "", "", 4321, 23001, BEACON_HOMING_NOT_TOLD, BIT(BEACON_FAULT_SHORT_FORM), NULL},
    {"G04", "9DD53A6C04D20F865028190", BEACON_SECOND, BEACON_KIND_NOT_TOLD,
     BEACON_CODED_CALL_SIGN, 238, "9A2345", "", 77, 20123, BEACON_HOMING_NOT_TOLD, 0, NULL},
    {"G05", "1934039823D000000000000", BEACON_SECOND, BEACON_KIND_NOT_TOLD,
     BEACON_CODED_OTHERWISE, 201, "", "", 0, 0, BEACON_HOMING_NOT_TOLD,
     BIT(BEACON_FAULT_FIXED_BITS), NULL},
};

static bool vector_holds(const struct vector *vector)
{
    struct beacon beacon = beacon_decode(vector->text);
    bool by_mmsi = vector->coding == BEACON_CODED_MMSI;
    const char *identity = vector->identity == NULL ? vector->text : vector->identity;
    return beacon.outcome == (vector->faults == 0 ? BEACON_SOUND : BEACON_FAULTY) &&
           beacon.protocol == vector->protocol && beacon.kind == vector->kind &&
           beacon.coding == vector->coding && beacon.country == vector->country &&
           text_equal(by_mmsi ? beacon.mmsi : beacon.call_sign, vector->ship) &&
           text_equal(by_mmsi ? beacon.call_sign : beacon.mmsi, "") &&
           text_equal(beacon.number, vector->number) && beacon.serial == vector->serial &&
           beacon.certificate == vector->certificate && beacon.homing == vector->homing &&
           beacon.faults == vector->faults && text_equal(beacon.identity, identity);
}

static void the_known_vectors(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof vectors / sizeof vectors[0]; i++)
        if (!vector_holds(&vectors[i]))
            fail_msg("vector %s", vectors[i].name);
    assert_int_equal(beacon_decode("9DC8075940A04D1").fault_at, 1);
    assert_string_equal(beacon_decode("9DD567650E1138C5E702AAA").ais, "");
    assert_string_equal(beacon_decode("ADCD0 08004 40401").identity, "ADCD00800440401");
    assert_string_equal(beacon_decode("2024F7252457804").digits, "2024F7252457804");
    assert_int_equal(beacon_decode("2024F72524FFBFF").position, BEACON_POSITION_DEFAULT);
    assert_int_equal(beacon_decode("2024F7252457804").position, BEACON_POSITION_CARRIED);
    assert_int_equal(beacon_decode("9DC9D65028154D1").position, BEACON_POSITION_NONE);
}

/* ---- how it is written ---- */

static const struct {
    const char *text;
    enum beacon_fault fault;
    size_t at;
    char meant;
} damaged[] = {
    {"9DC9D65O28154D1", BEACON_FAULT_LOOK_ALIKE, 8, '0'},    /* E36 */
    {"9DC9D65o28154D1", BEACON_FAULT_LOOK_ALIKE, 8, '0'},
    {"9DC9D6502815l", BEACON_FAULT_LOOK_ALIKE, 13, '1'},
    {"I", BEACON_FAULT_LOOK_ALIKE, 1, '1'},
    {"9DC9D 6S028 154D1", BEACON_FAULT_LOOK_ALIKE, 8, '5'},
    {"9DC9DG5028154D1", BEACON_FAULT_LOOK_ALIKE, 6, '6'},
    {"9DC9D650z8154D1", BEACON_FAULT_LOOK_ALIKE, 9, '2'},
    {"9DC9D65X28154D1O", BEACON_FAULT_SIGN, 8, '\0'},        /* the first is told */
    {"0x9DC9D65028154D1", BEACON_FAULT_SIGN, 2, '\0'},
    {"9DC9D-65028-154D1", BEACON_FAULT_SIGN, 6, '\0'},
    {"\xD0\x90" "DC9D65028154D1", BEACON_FAULT_SIGN, 1, '\0'},   /* Cyrillic A */
    {"9\xEF\xBC\xA4\xC2\xA0", BEACON_FAULT_SIGN, 2, '\0'},
    {"9DC9D\xC2\xA0" "65028", BEACON_FAULT_SIGN, 6, '\0'},       /* no-break space */
    {"9DC9D\t65028", BEACON_FAULT_SIGN, 6, '\0'},
    {"9DC\xFF", BEACON_FAULT_SIGN, 4, '\0'},
    {" 9DC9D65028154D1", BEACON_FAULT_SPACE, 1, '\0'},
    {"9DC9D65028154D1 ", BEACON_FAULT_SPACE, 16, '\0'},
    {"9DC9D  65028154D1", BEACON_FAULT_SPACE, 7, '\0'},
    {" ", BEACON_FAULT_SPACE, 1, '\0'},
    {"", BEACON_FAULT_LENGTH, 0, '\0'},
    {"9DC9D6502815 4D", BEACON_FAULT_LENGTH, 0, '\0'},       /* E35 */
    {"9DC9D65028154D11", BEACON_FAULT_LENGTH, 0, '\0'},
    {"9DD567650E1138C5E702AAA0", BEACON_FAULT_LENGTH, 0, '\0'},
};

static void what_is_no_identity_is_refused_with_its_place(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof damaged / sizeof damaged[0]; i++) {
        struct beacon beacon = beacon_decode(damaged[i].text);
        if (beacon.outcome != BEACON_UNREADABLE || beacon.faults != BIT(damaged[i].fault) ||
            beacon.fault_at != damaged[i].at || beacon.meant != damaged[i].meant)
            fail_msg("\"%s\": faults %x at %zu", damaged[i].text, (unsigned)beacon.faults,
                     beacon.fault_at);
        assert_string_equal(beacon.identity, "");
        assert_null(beacon_words(&beacon, arena));
        assert_string_equal(beacon_grouped(&beacon, arena), "");
        assert_false(beacon_decodable(&beacon));
    }
    assert_int_equal(beacon_decode("9DC9D6502815 4D").digit_count, 14);
    assert_int_equal(beacon_decode("\xD0\x90" "DC").sign, 0x410);
}

/* Every number of digits but five is refused. */
static void lengths(void **state)
{
    (void)state;
    char text[201];
    for (size_t length = 1; length <= 200; length++) {
        memset(text, '9', length);
        text[length] = '\0';
        struct beacon beacon = beacon_decode(text);
        bool known = length == 15 || length == 22 || length == 23 || length == 30 || length == 36;
        assert_int_equal(beacon.outcome != BEACON_UNREADABLE, known);
        assert_int_equal(beacon_has(&beacon, BEACON_FAULT_LENGTH), !known);
        assert_int_equal(beacon.digit_count, length);
    }
}

/* ---- whole messages ---- */

#define LONG_MESSAGE "90127B92922BC022FF103504422535"

static void messages_hold_the_identity(void **state)
{
    (void)state;
    struct beacon beacon = beacon_decode("FFFE2F" LONG_MESSAGE);
    assert_string_equal(beacon.identity, "2024F72524FFBFF");
    assert_int_equal(beacon.faults,
                     BIT(BEACON_FAULT_WHOLE_MESSAGE) | BIT(BEACON_FAULT_POSITION));
    assert_true(beacon_decodable(&beacon));
    assert_string_equal(beacon_decode("FFFED0" LONG_MESSAGE).identity, "2024F72524FFBFF");
    beacon = beacon_decode("FFFE2E" LONG_MESSAGE);
    assert_true(beacon_has(&beacon, BEACON_FAULT_FRAME));
    assert_false(beacon_decodable(&beacon));
    beacon = beacon_decode("90127B92922BC022FF1035");      /* a long one, cut */
    assert_true(beacon_has(&beacon, BEACON_FAULT_FRAME));
    assert_false(beacon_has(&beacon, BEACON_FAULT_CHECK_BITS));
}

/* One wrong digit among those that the check bits protect is always seen. */
static void a_slip_in_a_message_is_seen(void **state)
{
    (void)state;
    for (size_t at = 0; at < 20; at++)
        for (const char *digit = "0123456789ABCDEF"; *digit != '\0'; digit++) {
            char *text = arena_copy(arena, LONG_MESSAGE, strlen(LONG_MESSAGE));
            bool same = text[at] == *digit;
            text[at] = *digit;
            struct beacon beacon = beacon_decode(text);
            assert_int_equal(beacon_has(&beacon, BEACON_FAULT_CHECK_BITS), !same);
        }
}

/* ---- for people ---- */

static const struct { const char *text, *grouped, *words; } told[] = {
    {"ADCD00800440401", "ADCD0 08004 40401",
     "serial-coded float-free EPIRB, country code 366 (United States of America), "
     "homing 121.5 MHz"},
    {"2024F7252457804", "2024F 72524 FFBFF",
     "MMSI-coded EPIRB, MMSI 257 506 153, beacon number 2, country code 257 (Norway)"},
    {"9F183978CEAA8D1", "9F183 978CE AA8D1",
     "call-sign-coded EPIRB, call sign 9HAB, country code 248 (Malta), homing 121.5 MHz"},
    {"9A6F4048D0004B1", "9A6F4 048D0 004B1",
     "serial-coded personal beacon (PLB), country code 211 (Germany), homing 121.5 MHz"},
    {"F949D65028154D1", "F949D 65028 154D1",
     "MMSI-coded EPIRB, MMSI 970 123 456, country code 970 (a tender's or AIS identity, no "
     "country's), homing 121.5 MHz"},
    {"9DDC00000000000", "9DDC0 00000 00000", "test beacon, country code 238 (Croatia)"},
    {"9DC64903E32DF71", "9DC64 903E3 2DF71",
     "aircraft beacon (ELT), country code 238 (Croatia), homing 121.5 MHz"},
    {"9DD567650E1138C5E702AAA", "9DD56 7650E 1138C 5E702 AAA",
     "MMSI-coded second-generation beacon, MMSI 238 123 456, country code 238 (Croatia)"},
    {"9934039823D0000", "99340 39823 D0000",
     "serial-coded second-generation beacon, country code 201 (Albania), short form of its "
     "identity"},
    {"1934039823D000000000000", "19340 39823 D0000 00000 000", "second-generation beacon"},
    {"9C8E0000C400000", "9C8E0 000C4 00000",
     "serial-coded EPIRB (not float-free), country code 228 (France), no homing signal"},
    {"9C8E0000C400002", "9C8E0 000C4 00002",
     "serial-coded EPIRB (not float-free), country code 228 (France), homing by radar "
     "transponder (SART)"},
    {"9C9000000000002", "9C900 00000 00002", "nationally coded beacon, country code 228 (France)"},
};

static void people_are_told_the_coding(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof told / sizeof told[0]; i++) {
        struct beacon beacon = beacon_decode(told[i].text);
        assert_string_equal(beacon_grouped(&beacon, arena), told[i].grouped);
        assert_string_equal(beacon_words(&beacon, arena), told[i].words);
    }
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(the_known_vectors),
        CASE(what_is_no_identity_is_refused_with_its_place),
        CASE(lengths),
        CASE(messages_hold_the_identity),
        CASE(a_slip_in_a_message_is_seen),
        CASE(people_are_told_the_coding),
    };
    return cmocka_run_group_tests_name("beacon", tests, NULL, NULL) != 0;
}
