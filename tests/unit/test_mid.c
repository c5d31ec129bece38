/* test_mid.c - the table of Maritime Identification Digits. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <stdio.h>
#include <string.h>

#include "radio.h"
#include "radio/administrations.h"

static void is_of(const char *mid, const char *iso, const char *administration)
{
    const struct administration *who = mid_find(mid);
    assert_non_null(who);
    assert_string_equal(who->iso, iso);
    assert_string_equal(who->administration, administration);
}

/* The ITU's table of 2024 has 292 digits, all of them from 201 to 775. */
static void the_table_is_whole(void **state)
{
    (void)state;
    int found = 0;
    for (unsigned mid = 0; mid < 1000; mid++) {
        char text[16];
        snprintf(text, sizeof text, "%03u", mid);
        if (mid_find(text) == NULL)
            continue;
        assert_in_range(mid, 201, 775);
        found++;
    }
    assert_int_equal(found, 292);
}

static void no_mid_stands_twice(void **state)
{
    (void)state;
    unsigned char seen[1000] = {0};
    const struct administration_row *row;
    for (size_t i = 0; (row = administration_at(i)) != NULL; i++)
        for (size_t j = 0; j < MIDS_AT_MOST && row->mids[j] != 0; j++) {
            assert_in_range(row->mids[j], 201, 775);
            assert_int_equal(seen[row->mids[j]]++, 0);
        }
}

static void every_administration_is_a_row_of_its_own(void **state)
{
    (void)state;
    const struct administration_row *row;
    for (size_t i = 0; (row = administration_at(i)) != NULL; i++) {
        const struct administration *owner = administration_find(row->who.administration);
        assert_non_null(owner);
        assert_string_equal(owner->iso, owner->administration);
    }
}

static void countries_are_found(void **state)
{
    (void)state;
    is_of("238123456", "HR", "HR");
    is_of("237", "GR", "GR");
    is_of("257", "NO", "NO");
    is_of("659", "NA", "NA");
    is_of("351", "PA", "PA");
    is_of("374", "PA", "PA");
    is_of("775", "VE", "VE");
    is_of("201", "AL", "AL");
    assert_string_equal(mid_find("238")->name, "Croatia");
    assert_string_equal(administration_find("PT")->name, "Portugal");
    assert_string_equal(administration_find("US")->name, "United States of America");
}

/* Where two tables that go round are wrong. */
static void often_mistaken_digits_are_right(void **state)
{
    (void)state;
    is_of("262", "ME", "ME");
    is_of("254", "MC", "MC");
    is_of("255", "PT", "PT");
    is_of("279", "RS", "RS");
    is_of("461", "OM", "OM");
    is_of("463", "PK", "PK");
    is_of("228", "FR", "FR");
    assert_null(mid_find("456"));
    assert_null(mid_find("335"));
}

static void territories_answer_to_their_parent(void **state)
{
    (void)state;
    is_of("306123456", "BQ+CW+SX", "NL");
    is_of("331000001", "GL", "DK");
    is_of("236", "GI", "GB");
    is_of("378", "VG", "GB");
    is_of("518", "CK", "NZ");
    is_of("416", "TW", "CN");
    is_of("303", "US", "US");
    assert_string_equal(administration_find("IM")->administration, "GB");
}

static void unallocated_digits_are_nobody_s(void **state)
{
    (void)state;
    static const char *const none[] = {"200", "217", "260", "300", "302", "313", "776", "800",
                                       "970", "000", "", "2", "23", "2x8", "23O"};
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++)
        assert_null(mid_find(none[i]));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_table_is_whole),
        cmocka_unit_test(no_mid_stands_twice),
        cmocka_unit_test(every_administration_is_a_row_of_its_own),
        cmocka_unit_test(countries_are_found),
        cmocka_unit_test(often_mistaken_digits_are_right),
        cmocka_unit_test(territories_answer_to_their_parent),
        cmocka_unit_test(unallocated_digits_are_nobody_s),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
