/* test_inherit.c - what a boat has from her model, and what goes before it: rows of a model,
 * a boat and what her record then holds. */
#include "boat_case.h"

#include "boat_facts.h"
#include "item_fields.h"
#include "yaml_fields.h"

#define MODEL_HEAD "changed: 2026-05-10\n"
#define SLOOP "boat: {hull: monohull, rig: sail, loa_m: 12.6, beam_m: 4.1, persons_max: 8}\n"
#define LIKE "like: sloop\nwalked: {date: 2026-05-10, by: AB}\n"
#define HER "boat: {name: Ana}\n"
#define GEAR "equipment:\n"
#define TORCH "  - {item: torch, tag: C1, zone: saloon, side: port"
#define ENGINES(one, other) \
    "engines:\n  - {space: engine_space, fuel: diesel, drive: shaft" one "}\n" \
    "  - {space: engine_space, fuel: diesel, drive: generator" other "}\n"
#define KNIFE "  - {item: knife, tag: E1, zone: cockpit, side: port"

/* "torch C1 saloon port; ! knife": gear with zone and side, what is in not_fitted, and in
 * brackets what does not count. */
static const char *record_words(const struct boat *boat)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "");
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        text_add_format(&out, "%s %s %s%s%s; ", item_word(gear->item.value),
                        TEXT_OR_EMPTY(gear->tag), choice_word(zone_key_list, gear->zone.value),
                        gear->spot.text == NULL ? "" : " ", TEXT_OR_EMPTY(gear->spot));
    }
    for (size_t i = 0; i < boat->not_fitted.count; i++)
        text_add_format(&out, "! %s; ", item_word(boat->not_fitted.rows[i].item.value));
    if (boat->likeness.unwalked != NULL)
        text_add_format(&out, "(%s)", boat->likeness.unwalked);
    return out.at;
}

static const struct boat *sister_of(const char *model, const char *boat)
{
    const struct model *rows[] = {model_read(file_of("models/sloop.yaml", model), "sloop",
                                             test.arena)};
    struct models models = {rows, 1};
    struct boat_input input = {file_of("boats/ana.yaml", boat), "ana", &models};
    return boat_read_like(&input, test.arena, test.problems, &sound);
}

struct inherit_row {
    const char *name, *model, *boat;
    const char *record;        /* NULL: it is not looked at */
    const char *says;          /* of a problem; NULL: there is none */
};

static const struct inherit_row rows[] = {
    {"all of the model", GEAR TORCH "}\nnot_fitted: [knife]\n", "",
     "torch C1 saloon; ! knife; ", NULL},
    {"her entry in the place of the model's", GEAR TORCH ", spot: shelf}\n" KNIFE "}\n",
     GEAR "  - {item: torch, tag: C1, zone: galley, side: port}\n",
     "torch C1 galley; knife E1 cockpit; ", NULL},
    {"a piece more", GEAR TORCH "}\n", GEAR KNIFE "}\n", "torch C1 saloon; knife E1 cockpit; ",
     NULL},
    {"a piece less", GEAR TORCH "}\n" KNIFE "}\n", "not_here: [C1]\n", "knife E1 cockpit; ", NULL},
    {"an item that she has not", GEAR TORCH "}\n" KNIFE "}\n", "not_fitted: [torch]\n",
     "knife E1 cockpit; ! torch; ", NULL},
    {"an item that the model has not", "not_fitted: [knife, torch]\n", GEAR KNIFE "}\n",
     "knife E1 cockpit; ! torch; ", NULL},
    {"an item that nobody looked for", GEAR TORCH "}\n" KNIFE "}\n", "not_surveyed: [torch]\n",
     "knife E1 cockpit; ", NULL},
    {"an item that neither has", "not_fitted: [knife]\n", "not_fitted: [knife]\n", "! knife; ",
     NULL},
    {"dates alone", GEAR TORCH ", spot: shelf}\n", GEAR "  - {tag: C1, expires: 2027-04}\n",
     "torch C1 saloon shelf; ", NULL},

    {"changed on the day of the walk", GEAR TORCH ", changed: 2026-05-10}\n", "",
     "torch C1 saloon; ", NULL},
    {"changed after the walk", GEAR TORCH ", changed: 2026-05-11}\n" KNIFE "}\n", "",
     "knife E1 cockpit; (C1)", NULL},
    {"changed in the month of the walk", GEAR TORCH ", changed: 2026-05}\n", "", "(C1)", NULL},
    {"changed after the walk, and hers", GEAR TORCH ", changed: 2026-05-11}\n", GEAR TORCH "}\n",
     "torch C1 saloon; ", NULL},
    {"changed after the walk, with dates", GEAR TORCH ", changed: 2026-05-11}\n",
     GEAR "  - {tag: C1, expires: 2027-04}\n", "(C1)", NULL},
    {"changed after the walk, and not here", GEAR TORCH ", changed: 2026-05-11}\n",
     "not_here: [C1]\n", "", NULL},
    {"changed after the walk, and wrong", GEAR TORCH ", fits_port: yes, changed: 2026-05-11}\n", "",
     "(C1)", "fits_port does not belong to torch"},
    {"an absence after the walk", "not_fitted: [{item: knife, changed: 2026-06-01}, torch]\n", "",
     "! torch; (knife)", NULL},
    {"an absence with a day", "not_fitted: [{item: knife, changed: 2026-05-01}]\n", "",
     "! knife; ", NULL},
    {"engines with days", ENGINES(", changed: 2026-05-01", ", changed: 2026-05-10"), "", "", NULL},
    {"one engine after the walk", ENGINES("", ", changed: 2026-05-11"), "", "(engines)", NULL},
    {"the other engine after the walk", ENGINES(", changed: 2026-05-11", ", changed: 2026-05-01"),
     "", "(engines)", NULL},

    {"a tag of another item", GEAR TORCH "}\n",
     GEAR "  - {item: bolt_cutters, tag: C1, zone: saloon}\n", NULL,
     "tag C1 is that of torch in models/sloop.yaml, and here that of bolt_cutters"},
    {"a tag of none", GEAR TORCH "}\n", GEAR "  - {tag: C2, expires: 2027}\n", NULL,
     "no piece in models/sloop.yaml has the tag C2"},
    {"a place without an item", GEAR TORCH "}\n", GEAR "  - {tag: C1, spot: shelf}\n", NULL,
     "an entry without item adds dates and identities to C1 of the model, not spot"},
    {"two entries", GEAR TORCH "}\n",
     GEAR "  - {tag: C1, made: 2027}\n  - {tag: C1, expires: 2028}\n", NULL,
     "tag C1 has two entries here"},
    {"not here of none", GEAR TORCH "}\n", "not_here: [C9]\n", NULL,
     "not_here: no piece in models/sloop.yaml has the tag C9"},
    {"not here, and here", GEAR TORCH "}\n", "not_here: [C1]\n" GEAR TORCH "}\n", NULL,
     "tag C1 is in not_here, but it is on a piece of hers"},
    {"an item without a tag", GEAR TORCH "}\n", GEAR "  - {zone: saloon}\n", NULL,
     "an equipment item needs the key \"item\""},
    {"a date in the model", GEAR TORCH ", expires: 2027}\n", "", NULL,
     "a model's equipment item cannot hold expires"},
};

static void test_rows(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const struct inherit_row *row = &rows[i];
        test.problems = problems_new(test.arena);
        const struct boat *boat = sister_of(
            text_format(test.arena, MODEL_HEAD SLOOP "%s", row->model),
            text_format(test.arena, LIKE HER "%s", row->boat));
        bool right = boat != NULL && sound == (row->says == NULL) &&
                     (row->record == NULL || text_equal(record_words(boat), row->record)) &&
                     (row->says == NULL || problem_saying(row->says) != NULL);
        if (!right) {
            problems_show();
            fail_msg("%s: %s", row->name, boat == NULL ? "no boat" : record_words(boat));
        }
    }
}

/* The items of what does not count are not recorded, whatever else she has of them. */
static void test_unwalked_item_is_not_recorded(void **state)
{
    (void)state;
    const struct boat *boat = sister_of(
        MODEL_HEAD SLOOP GEAR TORCH "}\n" KNIFE "}\n"
        "  - {item: torch, tag: C2, zone: galley, changed: 2026-06-01}\n", LIKE HER);
    assert_true(sound);
    assert_int_equal(boat_fitted(boat, ITEM_torch), ANSWER_NOT_RECORDED);
    assert_int_equal(boat_fitted(boat, ITEM_knife), ANSWER_YES);
    assert_string_equal(unwalked_words(boat, test.arena),
                        "changed in models/sloop.yaml after the walk of 2026-05-10: C2");
}

/* Whoever walks round her next has the model's file in hand: what is wrong with it is told, and
 * nothing else of what she would have. */
static void test_errors_of_a_model_are_told_before_the_walk(void **state)
{
    (void)state;
    const struct boat *boat = sister_of(MODEL_HEAD SLOOP GEAR TORCH ", fits_port: yes}\n",
                                        "like: sloop\n" HER);
    assert_null(boat);
    assert_non_null(problem_saying("fits_port does not belong to torch"));
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 1);
    assert_int_equal(problems_count(test.problems, SEVERITY_HELD), 1);
    test.problems = problems_new(test.arena);
    assert_null(sister_of(MODEL_HEAD SLOOP GEAR TORCH "}\n", "like: sloop\n" HER));
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 0);
}

/* No other piece gets the tag of one that she has not, or that does not count yet. */
static void test_tags_of_the_model_stay_given(void **state)
{
    (void)state;
    const struct boat *boat = sister_of(
        MODEL_HEAD SLOOP GEAR TORCH "}\n"
        "  - {item: softwood_bung, tag: C2, zone: galley}\n"
        "  - {item: bolt_cutters, tag: C3, zone: cockpit, changed: 2026-06-01}\n"
        "tags_given: [C3]\n", LIKE HER "not_here: [C2]\n");
    assert_true(sound);
    assert_string_equal(boat_free_tag(boat, ITEM_CONTROL, test.arena), "C4");
    assert_int_equal(boat_tags_lost(boat, ITEM_CONTROL, test.arena).count, 0);
    assert_int_equal(boat_tag_given(boat, ITEM_CONTROL), 3);
}

/* Key by key: what she says herself, and the rest of the model, each with its place. */
static void test_sections_key_by_key(void **state)
{
    (void)state;
    const struct boat *boat = sister_of(
        MODEL_HEAD SLOOP "engines: [{space: engine_space, fuel: diesel, drive: shaft}]\n"
        "gas: {carried: yes, locker_drains: overboard}\n"
        "radio: {tag: E9, zone: navigation_station, side: port, dsc: yes}\n",
        LIKE "boat: {name: Ana, loa_m: 13.1}\nengines: []\ngas: {locker_drains: inboard}\n"
        "radio: {call_sign: QANA2, side: starboard}\n");
    assert_true(sound);
    assert_string_equal(boat->facts.loa_m.text, "13.1");
    assert_string_equal(boat->facts.beam_m.text, "4.1");
    assert_string_equal(boat->facts.beam_m.place.source->name, "models/sloop.yaml");
    assert_int_equal(boat->engine_count, 0);
    assert_true(boat->engines_given);
    assert_int_equal(boat->gas.carried.answer, ANSWER_YES);
    assert_int_equal(boat->gas.locker_drains.value, DRAIN_INBOARD);
    assert_string_equal(boat->radio.call_sign.text, "QANA2");
    assert_int_equal(boat->radio.side.value, SIDE_STARBOARD);
    assert_int_equal(boat->radio.dsc.answer, ANSWER_YES);
    assert_int_equal(boat->radio.dsc.place.line, 5);
    assert_string_equal(boat->radio.dsc.place.source->name, "models/sloop.yaml");
}

/* Nobody has walked: nothing counts, and what every boat needs is not asked for again. */
static void test_never_walked(void **state)
{
    (void)state;
    const struct boat *boat = sister_of(MODEL_HEAD SLOOP GEAR TORCH "}\n",
                                        "like: sloop\n" HER);
    assert_null(boat);
    assert_false(sound);
    assert_int_equal(problems_count(test.problems, SEVERITY_HELD), 1);
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 0);
    assert_non_null(problem_saying("nobody has walked round her yet, so that nothing of "
                                   "models/sloop.yaml counts: she has no cards"));
}

static void test_model_lacks_what_each_boat_needs(void **state)
{
    (void)state;
    sister_of(MODEL_HEAD "boat: {hull: monohull}\n", LIKE HER);
    assert_false(sound);
    assert_non_null(problem_saying("a boat needs the key \"rig\""));
    assert_null(problem_saying("a boat needs the key \"hull\""));
}

/* A model holds what is true of many: no identity, no date but those of its changes. */
static void test_no_date_in_a_model(void **state)
{
    (void)state;
    for (size_t i = 0; i < equipment_fields()->count; i++) {
        const struct field *field = &equipment_fields()->fields[i];
        if (field->kind == FIELD_DATE && !field->own)
            fail_msg("%s is a date that sisters would share", field->key);
    }
    assert_true(gear_field_row(GEAR_hex_id)->own && gear_field_row(GEAR_mmsi)->own &&
                gear_field_row(GEAR_serial)->own);
    assert_true(radio_fact_row(RADIO_call_sign)->own && radio_fact_row(RADIO_mmsi)->own);
    assert_true(boat_fact_row(BOAT_name)->own && boat_fact_row(BOAT_specimen)->own);
}

static void differs_check(const char *boat_text, const char *expected)
{
    const char *model_text = MODEL_HEAD SLOOP GEAR TORCH ", spot: shelf}\n" KNIFE "}\n"
                             "  - {item: foghorn, tag: E5, zone: cockpit, changed: 2026-07-01}\n";
    const struct model *model = model_read(file_of("models/sloop.yaml", model_text), "sloop",
                                           test.arena);
    struct models models = {&model, 1};
    struct boat_input input = {file_of("boats/ana.yaml", boat_text), "ana", &models};
    const struct boat *boat = boat_read_like(&input, test.arena, test.problems, &sound);
    assert_non_null(boat);
    struct differences all = boat_differences(boat, model, test.arena);
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "");
    for (size_t i = 0; i < all.count; i++)
        text_add_format(&out, "%s: %s/%s; ", all.rows[i].what,
                        all.rows[i].hers == NULL ? "-" : all.rows[i].hers,
                        all.rows[i].models == NULL ? "-" : all.rows[i].models);
    assert_string_equal(out.at, expected);
}

static void test_differences(void **state)
{
    (void)state;
    differs_check(LIKE HER, "");
    differs_check(LIKE HER GEAR "  - {tag: C1, expires: 2027}\n", "");
    differs_check(LIKE "boat: {name: Ana, loa_m: 13}\n", "boat loa_m: 13/12.6; ");
    differs_check(LIKE HER "engines: []\n", "engines: none/-; ");
    differs_check(LIKE HER GEAR TORCH ", spot: floor}\n", "C1 torch spot: floor/shelf; ");
    differs_check(LIKE HER GEAR TORCH "}\n", "C1 torch spot: -/shelf; ");
    differs_check(LIKE HER "not_fitted: [knife]\n",
                  "E1 knife: not aboard/aboard; knife: not fitted/-; ");
    differs_check(LIKE HER GEAR "  - {item: flares, tag: E2, zone: cockpit}\n",
                  "E2 flares: aboard/-; ");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(test_rows), TEST(test_unwalked_item_is_not_recorded),
        TEST(test_errors_of_a_model_are_told_before_the_walk),
        TEST(test_tags_of_the_model_stay_given), TEST(test_sections_key_by_key),
        TEST(test_never_walked), TEST(test_model_lacks_what_each_boat_needs),
        TEST(test_no_date_in_a_model), TEST(test_differences),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
