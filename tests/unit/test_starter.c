/* test_starter.c - what a set of procedures asks for, in walking order, and the
 * files to fill in: readable as they are, and complete. */
#include "record_test.h"

#include "asked.h"

/* What a procedure has besides its one step, and the texts of that. */
struct more {
    const char *logic, *texts;
};

/* A procedure whose only step is called `one`. */
static const struct procedure *procedure_of(const char *steps, struct more more)
{
    static const char sources[] = "sources:\n  - {key: S1, issuer: O, id: N1, title: T, tag: N1, "
                                  "read: 2026, status: current, grade: VA}\n";
    const struct authorities *authorities =
        authorities_read(file_of("sources.yaml", sources), test.arena, test.problems);
    const char *logic = text_format(
        test.arena, "procedure: trial\nnumber: 10\nsymbol: flame\nstripe: fire\n"
                    "cautions: [{id: hot, sources: [S1]}]\nseen_as: fire\n"
                    "steps:\n%s%s", steps, more.logic);
    const char *texts = text_format(
        test.arena, "procedure: trial\ntitle: Trial\nsubject: TRIAL\nsigns: [Smoke]\n"
                    "cautions: {hot: Hot.}\nseen: [Bang]\n"
                    "steps: {one: {act: \"**STOP**\"}}\n%s", more.texts);
    const struct procedure_text_file text_file = {"en", file_of("words/en/trial.yaml", texts)};
    const struct procedure_files files = {
        .logic = file_of("trial.yaml", logic), .texts = &text_file, .text_count = 1};
    const struct procedure *procedure =
        procedure_read(&files, authorities, test.arena, test.problems);
    if (procedure == NULL)
        problems_show();
    assert_non_null(procedure);
    return procedure;
}

static struct asked_list asked_by(const char *steps, enum hull hull)
{
    const struct procedure *procedure = procedure_of(steps, (struct more){"", ""});
    return asked_items(&procedure, 1, hull, test.arena);
}

static const char *keys_of(const struct asked_list *list)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < list->count; i++)
        text_add_format(&out, "%s%s", i == 0 ? "" : " ", list->rows[i].kind->key);
    return out.at;
}

#define PLAIN_STEP "  - {id: one, practice: yes}\n"

static void every_kind_has_a_usual_zone(void **state)
{
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        assert_non_null(zone_of(item_kind_of(item)->usual_zone));
}

static void items_are_found_wherever_a_procedure_names_them(void **state)
{
    (void)state;
    static const struct more more = {
        "when: {fitted: petrol_stowage}\n"
        "never: [{id: open, symbol: pflame, when: {fitted: hatch}, sources: [S1]}]\n",
        "when_reason: No petrol.\nnever: {open: open it}\n"};
    const struct procedure *procedure = procedure_of(
        "  - id: one\n    practice: yes\n    when: {fitted: cooker}\n"
        "    cases:\n"
        "      - {when: {any: [{not_fitted: sart}, {fitted: epirb}]}, uses: [knife]}\n"
        "      - {also: [torch]}\n", more);
    struct asked_list list = asked_items(&procedure, 1, HULL_NONE, test.arena);
    const char *keys = text_format(test.arena, " %s ", keys_of(&list));
    static const char *const wanted[] = {"cooker", "sart", "epirb", "knife", "torch",
                                         "petrol_stowage", "hatch"};
    for (size_t i = 0; i < sizeof wanted / sizeof wanted[0]; i++)
        if (strstr(keys, text_format(test.arena, " %s ", wanted[i])) == NULL)
            fail_msg("%s is not asked for: %s", wanted[i], keys);
    assert_int_equal(list.count, 7);
}

/* Stern to bow on deck, then from the companionway forward, then aft. */
static void the_order_is_that_of_a_walk(void **state)
{
    (void)state;
    struct asked_list list = asked_by(
        "  - {id: one, practice: yes, also: [{hatch: open}, "
        "{battery_isolator_engine: off}, "
        "anchor_main, torch, liferaft, fixed_extinguisher, flares, boarding_ladder, {cooker: off}, "
        "fire_blanket]}\n", HULL_NONE);
    assert_string_equal(keys_of(&list),
                        "boarding_ladder flares liferaft anchor_main torch fire_blanket cooker "
                        "hatch fixed_extinguisher battery_isolator_engine");
}

static void the_facts_asked_of_an_item_are_told(void **state)
{
    (void)state;
    struct asked_list list = asked_by(
        "  - id: one\n    practice: yes\n    cases:\n"
        "      - {when: {is: {engine_stop: {stop: electric}}}}\n"
        "      - {when: {inside: {engine_stop: [engine_space]}}}\n"
        "      - {when: {is: {engine_stop: {zone: cockpit}}}}\n"
        "      - {when: {cuts: {battery_isolator_engine: vhf_dsc}}}\n"
        "      - {}\n", HULL_MONOHULL);
    assert_string_equal(keys_of(&list), "engine_stop vhf_dsc battery_isolator_engine");
    assert_string_equal(starter_entry(&list.rows[0], "C1", test.arena),
                        "- {item: engine_stop, tag: C1, zone: , side: , spot: , how: , "
                        "inside: , stop: }");
    assert_string_equal(starter_entry(&list.rows[1], "E1", test.arena),
                        "# into radio: tag: E1, zone:, side:, spot:");
    assert_string_equal(starter_entry(&list.rows[2], "C2", test.arena),
                        "- {item: battery_isolator_engine, tag: C2, zone: , side: , spot: , "
                        "how: {on: , off: }, cuts: }");
}

#define TYPED_STEPS \
    "  - id: one\n    practice: yes\n    cases:\n" \
    "      - {when: {boat: catamaran, fitted: escape_hatch}}\n" \
    "      - {when: {boat: monohull, fitted: hatch}}\n" \
    "      - {when: {none: [{boat: catamaran}, {fitted: dinghy}]}}\n" \
    "      - {also: [fixed_extinguisher, capsize_line]}\n"

static void the_other_type_is_not_asked(void **state)
{
    (void)state;
    struct asked_list mono = asked_by(TYPED_STEPS, HULL_MONOHULL);
    struct asked_list cat = asked_by(TYPED_STEPS, HULL_CATAMARAN);
    struct asked_list both = asked_by(TYPED_STEPS, HULL_NONE);
    assert_string_equal(keys_of(&mono), "dinghy hatch fixed_extinguisher");
    assert_string_equal(keys_of(&cat), "capsize_line escape_hatch fixed_extinguisher");
    assert_string_equal(keys_of(&both),
                        "capsize_line dinghy escape_hatch hatch fixed_extinguisher");
    assert_string_equal(mono.rows[2].usual->key, "engine_space");
    assert_string_equal(cat.rows[2].usual->key, "engine_space_port");
    assert_null(strstr(starter_entry(&mono.rows[2], "F1", test.arena), "serves"));
    assert_non_null(strstr(starter_entry(&cat.rows[2], "F1", test.arena), "serves: "));
    assert_string_equal(starter_entry_for(&cat.rows[2], "F1", ZONE_engine_space_port,
                                          test.arena),
                        "- {item: fixed_extinguisher, tag: F1, zone: , side: , spot: , how: , "
                        "agent: , kg: , protects_m3: , service_due: , automatic: , "
                        "serves: [engine_space_port]}");
}

static void no_procedure_asks_for_nothing(void **state)
{
    (void)state;
    assert_int_equal(asked_by(PLAIN_STEP, HULL_NONE).count, 0);
    assert_int_equal(asked_items(NULL, 0, HULL_NONE, test.arena).count, 0);
}

/* ---- files ---- */

#define ALL_STEPS \
    "  - {id: one, practice: yes, also: [torch, knife, flares, fire_port, " \
    "epirb, vhf_dsc]}\n"

static const char *without_marks(const char *text, const char *mark, const char *instead)
{
    struct text_builder out = text_builder_in(test.arena);
    for (const char *at; (at = strstr(text, mark)) != NULL; text = at + strlen(mark)) {
        text_add_bytes(&out, text, (size_t)(at - text));
        text_add(&out, instead);
    }
    text_add(&out, text);
    return out.at;
}

static const struct boat *boat_of(const char *text, bool *sound)
{
    test.problems = problems_new(test.arena);
    return boat_read(file_of("new.yaml", text), "new", test.arena, test.problems, sound);
}

static void a_new_boat_file_lacks_only_what_is_needed(void **state)
{
    (void)state;
    struct asked_list asked = asked_by(ALL_STEPS, HULL_NONE);
    bool sound = true;
    const struct boat *boat = boat_of(starter_boat(&asked, HULL_NONE, NULL, test.arena), &sound);
    assert_non_null(boat);
    assert_false(sound);
    expect_errors(6);   /* name, hull, rig, loa_m, beam_m, persons_max */
    assert_int_equal(boat->equipment_count, 0);
    assert_int_equal(boat_items_mentioned(boat), 0);
    assert_int_equal(boat->facts.hull.value, HULL_NONE);
    boat = boat_of(starter_boat(&asked, HULL_CATAMARAN, NULL, test.arena), &sound);
    expect_errors(5);
    assert_true(boat->catamaran);
}

/* The # is taken away and nothing else: every line can be read, and what is
 * missing in it is its zone. */
static void lines_without_their_mark_can_be_read(void **state)
{
    (void)state;
    struct asked_list asked = asked_by(ALL_STEPS, HULL_NONE);
    const char *text = starter_boat(&asked, HULL_MONOHULL, NULL, test.arena);
    text = without_marks(text, "  name:  ", "  name: New ");
    text = without_marks(text, "  rig:  ", "  rig: sail ");
    text = without_marks(text, "loa_m:  ", "loa_m: 12 ");
    text = without_marks(text, "beam_m:  ", "beam_m: 4 ");
    text = without_marks(text, "persons_max:  ", "persons_max: 8 ");
    const char *gear = without_marks(text, "  #- {", "  - {");
    bool sound = true;
    assert_non_null(boat_of(gear, &sound));
    expect_errors(asked.count - 1);   /* all but the radio */
    gear = without_marks(gear, "zone: ,", "zone: saloon,");
    const struct boat *boat = boat_of(gear, &sound);
    if (!sound)
        problems_show();
    assert_true(sound);
    assert_int_equal(boat->equipment_count, asked.count - 1);
    assert_int_equal(boat_items_mentioned(boat), asked.count - 1);
    const struct boat *bare = boat_of(without_marks(text, "  #- ", "  - "), &sound);
    assert_non_null(bare);
    bare = boat_of(without_marks(without_marks(text, "  #- {", "  # {"), "  #- ", "  - "), &sound);
    assert_true(sound);
    assert_int_equal(boat_items_mentioned(bare), asked.count);
}

static void a_new_base_file_lacks_only_what_is_needed(void **state)
{
    (void)state;
    bool sound = true;
    const char *text = starter_base(test.arena);
    const struct base_record *base = base_read(file_of("base.yaml", text), test.arena,
                                               test.problems, &sound);
    assert_non_null(base);
    assert_false(sound);
    /* name, phone; name, channel; latitude, longitude; the number of the fire brigade */
    expect_errors(7);
    assert_int_equal(base->approval_count, 0);
    assert_int_equal(base->own_lines.count, 0);
}

/* ---- tags ---- */

static void proposed_tags_are_free_and_distinct(void **state)
{
    (void)state;
    struct asked_list asked = asked_by(ALL_STEPS, HULL_NONE);
    static const enum item_key told[] = {ITEM_cooker, ITEM_sart};
    bool sound = true;
    const struct boat *boat = boat_of(
        "boat: {name: A, hull: monohull, rig: sail, loa_m: 12, beam_m: 4, persons_max: 8}\n"
        "equipment:\n  - {item: tool_kit, tag: C4, zone: saloon}\n"
        "  - {item: fire_blanket, tag: F99, zone: galley}\nretired_tags: [E7]\n", &sound);
    assert_true(sound);
    const char *const *tags = starter_tags(&asked, boat, told, 2, test.arena);
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < asked.count; i++)
        text_add_format(&out, "%s:%s ", asked.rows[i].kind->key, tags[i]);
    assert_string_equal(out.at, "flares:E9 knife:E10 fire_port:F1 epirb:E11 torch:C6 "
                                "vhf_dsc:E12 ");
}

static void mentioned_items_count_once(void **state)
{
    (void)state;
    bool sound = true;
    const struct boat *boat = boat_of(
        "boat: {name: A, hull: monohull, rig: sail, loa_m: 12, beam_m: 4, persons_max: 8}\n"
        "radio: {tag: E1, zone: saloon}\n"
        "equipment:\n  - {item: torch, tag: C1, zone: saloon}\n"
        "  - {item: torch, tag: C2, zone: galley}\nnot_fitted: [sart, epirb]\n"
        "not_surveyed: [knife]\n",
        &sound);
    assert_true(sound);
    assert_int_equal(boat_items_mentioned(boat), 4);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(every_kind_has_a_usual_zone),
        TEST(items_are_found_wherever_a_procedure_names_them),
        TEST(the_order_is_that_of_a_walk),
        TEST(the_facts_asked_of_an_item_are_told),
        TEST(the_other_type_is_not_asked),
        TEST(no_procedure_asks_for_nothing),
        TEST(a_new_boat_file_lacks_only_what_is_needed),
        TEST(lines_without_their_mark_can_be_read),
        TEST(a_new_base_file_lacks_only_what_is_needed),
        TEST(proposed_tags_are_free_and_distinct),
        TEST(mentioned_items_count_once),
    };
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    return failed != 0;
}
