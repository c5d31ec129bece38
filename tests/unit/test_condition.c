/* test_condition.c - reading `when`: what it becomes, and what is refused. */
#include "record_test.h"

#include "procedure.h"

/* The condition written as the value of `when` in line 1. */
static const struct condition *when_of(const char *text)
{
    const char *whole = text_format(test.arena, "when: %s\n", text);
    const struct yaml_node *root =
        yaml_tree_read(file_of("procedure.yaml", whole), test.arena, test.problems);
    assert_non_null(root);
    return condition_read(yaml_get(root, "when"), test.arena, test.problems);
}

static void one_question_is_read_as_itself(void **state)
{
    (void)state;
    const struct condition *condition = when_of("{fitted: liferaft}");
    expect_errors(0);
    assert_int_equal(condition->kind, CONDITION_FITTED);
    assert_int_equal(condition->item, ITEM_liferaft);
    assert_int_equal(condition->place.line, 1);
    assert_int_equal(when_of("{not_fitted: dinghy}")->kind, CONDITION_NOT_FITTED);
}

static void several_mean_all_of_them(void **state)
{
    (void)state;
    const struct condition *all =
        when_of("{fitted: [fire_port, engine_extinguisher], boat: catamaran}");
    expect_errors(0);
    assert_int_equal(all->kind, CONDITION_ALL);
    assert_int_equal(all->child_count, 3);
    assert_int_equal(all->children[0]->item, ITEM_fire_port);
    assert_int_equal(all->children[1]->item, ITEM_engine_extinguisher);
    assert_int_equal(all->children[2]->kind, CONDITION_BOAT);
    assert_int_equal(all->children[2]->trait, TRAIT_CATAMARAN);
    assert_int_equal(when_of("[{fitted: torch}, {fitted: knife}]")->kind, CONDITION_ALL);
}

static void inside_takes_one_zone_or_several(void **state)
{
    (void)state;
    const struct condition *inside =
        when_of("{inside: {fuel_shutoff_diesel: [engine_space, bilge]}}");
    assert_int_equal(inside->kind, CONDITION_INSIDE);
    assert_int_equal(inside->item, ITEM_fuel_shutoff_diesel);
    assert_int_equal(inside->zone_count, 2);
    assert_int_equal(inside->zones[1], ZONE_bilge);
    assert_int_equal(when_of("{inside: {torch: bilge}}")->zone_count, 1);
    expect_errors(0);
}

static void is_and_cuts_name_gear_and_value(void **state)
{
    (void)state;
    const struct condition *is = when_of("{is: {engine_stop: {stop: mechanical}}}");
    assert_int_equal(is->kind, CONDITION_IS);
    assert_int_equal(is->item, ITEM_engine_stop);
    assert_int_equal(is->field, GEAR_stop);
    assert_string_equal(is->value, "mechanical");
    const struct condition *two =
        when_of("{is: {engine_stop: {stop: electric, from_cockpit: yes}}}");
    assert_int_equal(two->child_count, 2);
    assert_int_equal(two->children[1]->field, GEAR_from_cockpit);
    const struct condition *cuts = when_of("{cuts: {battery_isolator_service: vhf_dsc}}");
    assert_int_equal(cuts->kind, CONDITION_CUTS);
    assert_int_equal(cuts->other, ITEM_vhf_dsc);
    expect_errors(0);
}

static void groups_nest(void **state)
{
    (void)state;
    const struct condition *any =
        when_of("{any: [{fitted: torch}, {none: [{fitted: knife}, {fitted: [hatch, sart]}]}]}");
    expect_errors(0);
    assert_int_equal(any->kind, CONDITION_ANY);
    assert_int_equal(any->child_count, 2);
    const struct condition *none = any->children[1];
    assert_int_equal(none->kind, CONDITION_NONE);
    assert_int_equal(none->children[1]->kind, CONDITION_ALL);
    assert_int_equal(none->children[1]->child_count, 2);
}

struct refused { const char *when, *what, *remedy; };

static void refused_check(const struct refused *rows, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        test.problems = problems_new(test.arena);
        assert_null(when_of(rows[i].when));
        expect_errors(1);
        expect_error(1, rows[i].what, rows[i].remedy);
    }
}

static void what_is_not_understood_is_told(void **state)
{
    (void)state;
    static const struct refused rows[] = {
        {"{fited: torch}", "fited is not a condition", "did you mean \"fitted\"?"},
        {"{equals: torch}", "equals is not a condition",
         "a condition knows fitted, not_fitted, inside, is, cuts, reach, beyond, boat, "
         "breaths, sting, tide, surely, all, any and none"},
        {"{fitted: lifraft}", "lifraft is not a known item", "did you mean \"liferaft\"?"},
        {"{fitted: [torch, knive]}", "knive is not a known item", "did you mean \"knife\"?"},
        {"{fitted: []}", "the list is empty", "name at least one, or take the key out"},
        {"{fitted: {torch: yes}}", "expected one item, not a mapping", "write one word"},
        {"{boat: catamarn}", "catamarn is not a known kind of boat", "did you mean \"catamaran\"?"},
        {"{inside: torch}", "expected a mapping, not a text", "write inside: {item: [zones]}"},
        {"{inside: {torch: [galey]}}", "galey is not a known zone", "did you mean \"galley\"?"},
        {"{inside: {trch: [galley]}}", "trch is not a known item", "did you mean \"torch\"?"},
        {"{cuts: {solar_isolator: [knife]}}", "expected one item, not a list", "write one word"},
        {"{cuts: {solar_isolator: knif}}", "knif is not a known item", "did you mean \"knife\"?"},
        {"{is: {torch: yes}}", "expected a mapping, not a text",
         "write is: {item: {field: value}}"},
        {"{is: {}}", "expected a mapping, not an empty one", "write is: {item: {field: value}}"},
        {"{is: {torch: {chargd: yes}}}", "chargd is not a field of gear",
         "did you mean \"charged\"?"},
        {"{is: {torch: {charged: maybe}}}", "maybe is not a known answer", NULL},
        {"{is: {engine_stop: {stop: electrc}}}", "electrc is not a known stop",
         "did you mean \"electric\"?"},
        {"{is: {torch: {count: two}}}", "count needs a number", "write a number"},
        {"{is: {fire_extinguisher: {rating: [aft]}}}", "rating needs one value", "write one value"},
        {"{is: {torch: {spot: aft}}}",
         "spot is written in words of any language: `is` cannot ask about it",
         "ask about a field with choices"},
        {"{is: {solar_isolator: {cuts: knife}}}", "`is` cannot ask about cuts",
         "`inside` and `cuts` ask about places and currents"},
        {"{is: {torch: {expires: 2027}}}", "`is` cannot ask about expires", NULL},
        {"{is: {torch: {bore_mm: 25}}}", "bore_mm does not belong to torch",
         "take it out, or move it to the gear it is a fact of; bore_mm belongs to\n"
         "fire_port, seacock, shaft_seal"},
        {"{cuts: {torch: knife}}", "cuts does not belong to torch", NULL},
        {"{any: {fitted: torch}}", "all, any and none need a list of conditions",
         "write a list: [{...}, {...}]"},
        {"{all: []}", "all, any and none need a list of conditions", NULL},
        {"{any: [{fitted: torch}, {}]}", "a condition is expected here",
         "write a condition such as {fitted: liferaft}"},
        {"liferaft", "a condition is expected here", NULL},
        {"{}", "a condition is expected here", NULL},
        {"[]", "a condition is expected here", NULL},
    };
    refused_check(rows, sizeof rows / sizeof rows[0]);
}

static void what_no_list_of_words_has_is_told(void **state)
{
    (void)state;
    static const struct refused rows[] = {
        {"{is: {torch: {inside: saloon}}}", "`is` cannot ask about inside",
         "`inside` and `cuts` ask about places and currents"},
        {"{is: {first_aid_kit: {kit: tourniqet}}}", "tourniqet is not a known kit",
         "did you mean \"tourniquet\"?"},
        {"{is: {first_aid_kit: {kit: [gloves, film]}}}", "expected one kit, not a list",
         "write one word"},
        {"{sting: vinegr}", "vinegr is not a known remedy for a sting",
         "did you mean \"vinegar\"?"},
        {"{tide: smal}", "smal is not a known tide", "did you mean \"small\"?"},
    };
    refused_check(rows, sizeof rows / sizeof rows[0]);
}

static void every_fault_is_told_at_once(void **state)
{
    (void)state;
    assert_null(when_of("{any: [{fitted: trch}, {is: {knif: {chrged: yes}}}, {boat: raft}]}"));
    expect_errors(4);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(one_question_is_read_as_itself),
        TEST(several_mean_all_of_them),
        TEST(inside_takes_one_zone_or_several),
        TEST(is_and_cuts_name_gear_and_value),
        TEST(groups_nest),
        TEST(what_is_not_understood_is_told),
        TEST(what_no_list_of_words_has_is_told),
        TEST(every_fault_is_told_at_once),
    };
    int failed = cmocka_run_group_tests_name("condition", tests, NULL, NULL);
    return failed != 0;
}
