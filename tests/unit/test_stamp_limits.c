/* test_stamp_limits.c - how far ahead a stamp can lie: never nearer than the program itself lets
 * that kind of gear last. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "gear_date.h"

static void test_of_each_field(void **state)
{
    (void)state;
    assert_int_equal(stamp_limit_of(ITEM_liferaft, GEAR_service_due)->months, 60);
    assert_int_equal(stamp_limit_of(ITEM_epirb, GEAR_expires)->months, 144);
    assert_int_equal(stamp_limit_of(ITEM_liferaft, GEAR_expires)->item, ITEM_NONE);
    assert_int_equal(stamp_limit_of(ITEM_torch, GEAR_expires)->item, ITEM_NONE);
}

/* Fresh from the maker, with all the months of its rule before it. */
static void test_no_stricter_than_the_rules(void **state)
{
    (void)state;
    size_t compared = 0;
    const struct gear_rule *rule;
    for (size_t i = 0; (rule = gear_rule_at(i)) != NULL; i++) {
        int months = rule->months > rule->life_months ? rule->months : rule->life_months;
        assert_true(stamp_limit_of(rule->item, GEAR_expires)->months >= months);
        assert_true(stamp_limit_of(rule->item, GEAR_service_due)->months >= months);
        compared += months > 0 ? 1 : 0;
    }
    assert_true(compared > 10);
}

static void test_each_row_has_its_word(void **state)
{
    (void)state;
    size_t count = 0;
    for (const struct stamp_limit *row; (row = stamp_limit_at(count)) != NULL; count++) {
        assert_true(row->months > 0 && row->months % 12 == 0);
        assert_true(strlen(row->source) > 10);
        if (row->item == ITEM_NONE)
            break;
        assert_true(row->field == GEAR_expires || row->field == GEAR_service_due);
        assert_ptr_equal(stamp_limit_of(row->item, row->field), row);    /* no row stands twice */
    }
    assert_true(count > 10);
    assert_null(stamp_limit_at(count + 1));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_of_each_field),
        cmocka_unit_test(test_no_stricter_than_the_rules),
        cmocka_unit_test(test_each_row_has_its_word),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
