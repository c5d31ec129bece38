/* test_each_field.c - every field of every item, section and file, in turn written wrongly in
 * each way that a hand writes it wrongly (field_try.h). The records are made from the tables of
 * fields (whole_case.h): a new field is tried by itself. */
#include "record_test.h"

#include "field_try.h"
#include "rules.h"
#include "whole_case.h"

/* ---- the files ---- */

/* As `check` judges her. */
static bool boat_is_sound(const struct source *source, struct arena *arena,
                          struct problems *problems)
{
    static const struct date today = {2026, 11, 25};
    bool sound = false;
    const struct boat *boat = boat_read(source, "tern", arena, problems, &sound);
    struct rules_input input = {.boat = boat, .today = today, .from = today, .to = today};
    return boat != NULL && rules_check(&input, arena, problems) && sound;
}

static bool base_is_sound(const struct source *source, struct arena *arena,
                          struct problems *problems)
{
    bool sound = false;
    (void)base_read(source, arena, problems, &sound);
    return sound;
}

/* What is wrong with a model is told of each boat that is like it. */
static bool model_is_sound(const struct source *source, struct arena *arena,
                           struct problems *problems)
{
    const struct model *model = model_read(source, "sloop", arena);
    problems_join(problems, model_problems(model));
    return !problems_reach(model_problems(model), SEVERITY_ERROR);
}

static const struct model *whole_model;

static const struct model *model_make(void)
{
    static const struct whole_kind shared = {HULL_MONOHULL, WHOLE_SHARED};
    const char *text = whole_boat(&shared, test.arena);
    return model_read(file_of("sloop.yaml", text), "sloop", test.arena);
}

/* A boat that is like a whole model. */
static bool sister_is_sound(const struct source *source, struct arena *arena,
                            struct problems *problems)
{
    const struct model *model = whole_model;
    struct boat_input input = {source, "tern", &(struct models){&model, 1}};
    bool sound = false;
    (void)boat_read_like(&input, arena, problems, &sound);
    return sound;
}

static const struct file_way boat_way = {"boat", boat_file_fields, boat_is_sound};
static const struct file_way model_way = {"model", model_file_fields, model_is_sound};
static const struct file_way sister_way = {"sister", sister_file_fields, sister_is_sound};
static const struct file_way base_way = {"base", base_file_fields, base_is_sound};

static void each_field_of_each_item(void **state)
{
    static const struct whole_kind one = {HULL_MONOHULL, WHOLE_ALL},
                                   two = {HULL_CATAMARAN, WHOLE_ALL};
    (void)state;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        bool has_one = !text_empty(whole_entry(&one, item, test.arena));
        const struct whole_kind *kind = has_one ? &one : &two;
        if (item != ITEM_vhf_dsc)
            file_try(&boat_way,
                     text_format(test.arena, "%s%s", whole_head(kind, test.arena),
                                 whole_entry(kind, item, test.arena)), FIELDS_TRIED_GEAR);
    }
}

/* Sections that follow from no table of facts. */
static const char lists[] =
    "not_fitted:\n"
    "  - sart\n"
    "  - {item: fire_port, serves: [engine_space_port]}\n"
    "not_surveyed:\n"
    "  - {item: fire_port, serves: [engine_space_starboard]}\n"
    "  - item: engine_stop\n"
    "    serves: [engine_space_port]\n"
    "retired_tags: [C98]\n"
    "tags_given: [F99, C99]\n"
    "silenced:\n"
    "  - {check: raft_missing, reason: on order, until: 2027-04}\n"
    "lines:\n"
    "  - {card: flooding, say: Pump by hand., source: base, does: [pump_off]}\n";

static void each_field_of_the_sections(void **state)
{
    static const struct whole_kind kind = {HULL_CATAMARAN, WHOLE_ALL};
    (void)state;
    file_try(&boat_way, text_format(test.arena, "%s%s%s", whole_head(&kind, test.arena),
                                    whole_entry(&kind, ITEM_seacock, test.arena), lists),
             FIELDS_TRIED_ALL);
}

static void each_field_of_the_base(void **state)
{
    (void)state;
    file_try(&base_way, whole_base(test.arena), FIELDS_TRIED_ALL);
}

/* A model is read as a boat is; that each of its fields is refused in each way needs no more than
 * one piece of each kind of value. */
static void each_field_of_a_model(void **state)
{
    static const struct whole_kind shared = {HULL_MONOHULL, WHOLE_SHARED};
    (void)state;
    file_try(&model_way,
             text_format(test.arena, "%s%s%s%s%s", whole_head(&shared, test.arena),
                         whole_entry(&shared, ITEM_seacock, test.arena),
                         whole_entry(&shared, ITEM_fire_extinguisher, test.arena),
                         "not_fitted:\n  - sart\n"
                         "  - {item: fire_port, serves: [engine_space], changed: 2026-11-01}\n",
                         "retired_tags: [C98]\ntags_given: [F99, C99]\n"),
             FIELDS_TRIED_ALL);
}

static void each_field_of_a_sister(void **state)
{
    static const struct whole_kind all = {HULL_MONOHULL, WHOLE_ALL};
    (void)state;
    whole_model = model_make();
    file_try(&sister_way,
             text_format(test.arena, "like: sloop\nwalked: {date: 2026-11-20, by: AB}\n"
                                     "not_here: [%s]\n%s%s  - {tag: %s, expires: 2030-04}\n",
                         whole_tag(ITEM_torch, test.arena), whole_head(&all, test.arena),
                         whole_entry(&all, ITEM_seacock, test.arena),
                         whole_tag(ITEM_flares, test.arena)), FIELDS_TRIED_ALL);
}

/* What is one boat's own is refused in a model, whatever it says. */
static void own_row_check(const struct field_path *path, void *context)
{
    const struct field *field = path->field;
    size_t *count = context;
    if (!field->own)
        return;
    ++*count;
    const char *value = field->kind == FIELD_DATE ? "2027-04" : "yes";
    const char *section = path->outer->field->key;
    bool gear = path->outer->field->kind == FIELD_ENTRIES;
    const char *text = text_format(test.arena,
                                   gear ? "changed: 2026-11-01\n%s:\n  - {item: epirb, tag: E1, "
                                          "zone: cockpit, %s: %s}\n"
                                        : "changed: 2026-11-01\n%s:\n  %s: %s\n",
                                   section, field->key, value);
    test.problems = problems_new(test.arena);
    assert_false(model_is_sound(file_of("sloop.yaml", text), test.arena, test.problems));
    expect_errors(1);
    expect_error_with(3, text_format(test.arena, "cannot hold %s", field->key), "her own");
}

static void what_is_one_boats_own_is_refused_in_a_model(void **state)
{
    size_t count = 0;
    (void)state;
    fields_walk(model_file_fields(), own_row_check, &count);
    assert_true(count >= 14);
}

static void each_row_of_the_tables_was_tried(void **state)
{
    (void)state;
    rows_were_tried(&boat_way);
    rows_were_tried(&base_way);
    rows_were_tried(&sister_way);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_field_of_each_item),
        TEST(each_field_of_the_sections),
        TEST(each_field_of_the_base),
        TEST(each_field_of_a_model),
        TEST(each_field_of_a_sister),
        TEST(what_is_one_boats_own_is_refused_in_a_model),
        TEST(each_row_of_the_tables_was_tried),
    };
    return cmocka_run_group_tests_name("each_field", tests, field_try_begin, field_try_end) != 0;
}
