/* test_item.c - the register of gear: complete, classed, signed. */
#include "record_test.h"

#include "item.h"

/* Every sign there is, and its class: an item never shows a sign of another. */
static const struct { enum item_class class; const char *symbols; } signs[] = {
    {ITEM_FIRE, " ext blanket alarm fixed fireport remote hose smokealarm "},
    {ITEM_RESCUE, " firstaid medbag hatch muster raft knife buoy buoyline buoylight jacket "
                  "jacketchild sart epirb flares rocket vhfhand vhffix ladder suit mob water "
                  "alarmgen anchorpt dan sling tackle line blanketwarm dinghy radarreflector "
                  "beaconperson hru "},
    {ITEM_CONTROL, " fuel gas seacock engstop battery bilgeman bilgeel plug tiller cutter grab "
                   "torch ventflap blower genstop inverter shorepower panel leakkit door bucket "
                   "anchor toolkit platform cooker solenoid heater solar killcord spill petrol "
                   "coalarm gasalarm "},
};

static void every_sign_is_of_the_items_class(void **state)
{
    (void)state;
    for (size_t i = 0; i < item_count(); i++) {
        const struct item_kind *kind = item_at(i);
        bool found = kind->symbol == NULL;
        for (size_t k = 0; !found && k < sizeof signs / sizeof signs[0]; k++)
            found = signs[k].class == kind->class &&
                    strstr(signs[k].symbols, text_format(test.arena, " %s ", kind->symbol)) != NULL;
        if (!found)
            fail_msg("%s: %s is no sign of its class", kind->key, kind->symbol);
    }
}

static void keys_are_unique_and_found(void **state)
{
    (void)state;
    const char *const *keys = item_keys();
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
        TEST(every_sign_is_of_the_items_class),
        TEST(keys_are_unique_and_found),
        TEST(only_engine_gear_is_by_engine),
        TEST(register_holds_the_gear),
    };
    int failed = cmocka_run_group_tests_name("item", tests, NULL, NULL);
    return failed != 0;
}
