/* test_item.c - the register of gear: complete and classed. */
#include "record_test.h"

#include "item.h"

static void keys_are_unique_and_found(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
        assert_int_equal(kind->item, item);
        assert_ptr_equal(item_find(kind->key), kind);
        assert_string_equal(item_word(item), kind->key);
        assert_string_equal(item_key_list[item - 1], kind->key);
        assert_false(text_empty(kind->record));
    }
    assert_string_equal(item_word(ITEM_fire_port), "fire_port");
    assert_string_equal(item_word(ITEM_NONE), "");
    assert_null(item_key_list[ITEM_COUNT - 1]);
    assert_null(item_kind_of(ITEM_NONE));
    assert_null(item_find("fire_prot"));
    assert_null(item_find(NULL));
}

static void an_item_is_found_among_others(void **state)
{
    (void)state;
    static const enum item_key none[] = {ITEM_NONE};
    static const enum item_key two[] = {ITEM_torch, ITEM_blankets, ITEM_NONE};
    assert_false(item_among(none, ITEM_torch));
    assert_true(item_among(two, ITEM_torch));
    assert_true(item_among(two, ITEM_blankets));
    assert_false(item_among(two, ITEM_knife));
    assert_false(item_among(two, ITEM_NONE));
}

static void only_engine_gear_is_by_engine(void **state)
{
    (void)state;
    static const char by_engine[] = " fire_port engine_extinguisher fixed_extinguisher "
                                    "engine_blower engine_vent_closure engine_stop "
                                    "fuel_shutoff_diesel battery_isolator_engine "
                                    "throttle engine_start ";
    size_t count = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
        const char *key = text_format(test.arena, " %s ", kind->key);
        assert_int_equal(kind->by_engine, strstr(by_engine, key) != NULL);
        count += kind->by_engine;
    }
    assert_int_equal(count, 10);
}

static void register_holds_the_gear(void **state)
{
    (void)state;
    static const struct {
        const char *key;
        enum symbol_key symbol;
        enum item_class class;
    } rows[] = {
        {"engine_extinguisher", SYMBOL_ext, ITEM_FIRE},
        {"smoke_alarm", SYMBOL_smokealarm, ITEM_FIRE},
        {"fuel_shutoff_heater", SYMBOL_fuel, ITEM_CONTROL},
        {"lpg_remote_switch", SYMBOL_solenoid, ITEM_CONTROL},
        {"lpg_bottle_valve", SYMBOL_gas, ITEM_CONTROL},
        {"grab_bag", SYMBOL_grab, ITEM_RESCUE},
        {"bilge_alarm", SYMBOL_bilgealarm, ITEM_CONTROL},
        {"lithium_bank", SYMBOL_lithium, ITEM_CONTROL},
        {"anchor_kedge", SYMBOL_anchor, ITEM_CONTROL},
        {"vhf_dsc", SYMBOL_vhffix, ITEM_RESCUE},
        {"mob_button", SYMBOL_mob, ITEM_RESCUE},
        {"escape_hatch", SYMBOL_hatch, ITEM_RESCUE},
        {"foghorn", SYMBOL_foghorn, ITEM_RESCUE},
        {"blankets", SYMBOL_blanketwarm, ITEM_RESCUE},
        {"bathing_platform", SYMBOL_platform, ITEM_CONTROL},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        const struct item_kind *kind = item_find(rows[i].key);
        assert_non_null(kind);
        assert_int_equal(kind->class, rows[i].class);
        assert_int_equal(kind->symbol, rows[i].symbol);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(keys_are_unique_and_found),
        TEST(an_item_is_found_among_others),
        TEST(only_engine_gear_is_by_engine),
        TEST(register_holds_the_gear),
    };
    int failed = cmocka_run_group_tests_name("item", tests, NULL, NULL);
    return failed != 0;
}
