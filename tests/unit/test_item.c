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
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
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
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
        assert_int_equal(kind->item, item);
        assert_ptr_equal(item_find(kind->key), kind);
        assert_string_equal(item_word(item), kind->key);
        assert_false(text_empty(kind->record));
    }
    assert_string_equal(item_word(ITEM_fire_port), "fire_port");
    assert_string_equal(item_word(ITEM_NONE), "");
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
                                    "fuel_shutoff_diesel battery_isolator_engine ";
    size_t count = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
        const char *key = text_format(test.arena, " %s ", kind->key);
        assert_int_equal(kind->by_engine, strstr(by_engine, key) != NULL);
        count += kind->by_engine;
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
    assert_int_equal(ITEM_COUNT - 1, 84);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_sign_is_of_the_items_class),
        TEST(keys_are_unique_and_found),
        TEST(an_item_is_found_among_others),
        TEST(only_engine_gear_is_by_engine),
        TEST(register_holds_the_gear),
    };
    int failed = cmocka_run_group_tests_name("item", tests, NULL, NULL);
    return failed != 0;
}
