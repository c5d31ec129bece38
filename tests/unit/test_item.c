/* test_item.c - the register of gear: complete and classed. */
#include "record_test.h"

#include "item.h"

static void keys_are_unique_and_found(void **state)
{
    (void)state;
    const char *const *keys = item_key_list;
    for (size_t i = 0; i < item_count(); i++) {
        assert_ptr_equal(item_find(item_at(i)->key), item_at(i));
        assert_string_equal(keys[i], item_at(i)->key);
        assert_false(text_empty(item_at(i)->record));
    }
    assert_null(keys[item_count()]);
    assert_null(item_at(item_count()));
    assert_null(item_find("fire_prot"));
    assert_null(item_find(NULL));
}

static void only_engine_gear_is_by_engine(void **state)
{
    (void)state;
    static const char by_engine[] = " fire_port engine_extinguisher fixed_extinguisher "
                                    "engine_blower engine_vent_closure engine_stop "
                                    "fuel_shutoff_diesel battery_isolator_engine ";
    size_t count = 0;
    for (size_t i = 0; i < item_count(); i++) {
        const char *key = text_format(test.arena, " %s ", item_at(i)->key);
        assert_int_equal(item_at(i)->by_engine, strstr(by_engine, key) != NULL);
        count += item_at(i)->by_engine;
    }
    assert_int_equal(count, 8);
}

static void register_holds_the_gear(void **state)
{
    (void)state;
    static const struct { const char *key, *symbol; enum item_class class; } rows[] = {
        {"engine_extinguisher", "ext", ITEM_FIRE},
        {"smoke_alarm", "smokealarm", ITEM_FIRE},
        {"fuel_shutoff_heater", "fuel", ITEM_CONTROL},
        {"lpg_remote_switch", "solenoid", ITEM_CONTROL},
        {"lpg_bottle_valve", "gas", ITEM_CONTROL},
        {"grab_bag", "grab", ITEM_CONTROL},
        {"bilge_alarm", NULL, ITEM_CONTROL},
        {"lithium_bank", NULL, ITEM_CONTROL},
        {"anchor_kedge", "anchor", ITEM_CONTROL},
        {"vhf_dsc", "vhffix", ITEM_RESCUE},
        {"mob_button", "mob", ITEM_RESCUE},
        {"escape_hatch", "hatch", ITEM_RESCUE},
        {"foghorn", NULL, ITEM_RESCUE},
        {"blankets", "blanketwarm", ITEM_RESCUE},
        {"bathing_platform", "platform", ITEM_CONTROL},
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        const struct item_kind *kind = item_find(rows[i].key);
        assert_non_null(kind);
        assert_int_equal(kind->class, rows[i].class);
        assert_true(text_equal(kind->symbol, rows[i].symbol));
    }
    assert_int_equal(item_count(), 84);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(keys_are_unique_and_found),
        TEST(only_engine_gear_is_by_engine),
        TEST(register_holds_the_gear),
    };
    int failed = cmocka_run_group_tests_name("item", tests, NULL, NULL);
    return failed != 0;
}
