/* test_each_sister.c - every piece of a whole model, and every field of it, made otherwise in the
 * file of a boat that is like the model: what differs is told, and nothing else; a piece that is
 * not hers, or that changed after the walk, is none of her gear. */
#include "record_test.h"

#include "item_fields.h"
#include "whole_case.h"

static const struct whole_kind shared = {HULL_MONOHULL, WHOLE_SHARED};

/* Her own file: what is hers alone, and more lines. */
static const char *sister_text(const char *more)
{
    return text_format(test.arena,
                       "like: sloop\nwalked: {date: 2026-11-20, by: AB}\n"
                       "boat: {name: Tern, specimen: yes}\n"
                       "radio: {call_sign: QTAB2, mmsi: \"200014730\", mmsi_programmed: yes}\n%s",
                       more);
}

static const struct model *model_of(const char *text)
{
    const struct model *model = model_read(file_of("sloop.yaml", text), "sloop", test.arena);
    assert_false(problems_reach(model_problems(model), SEVERITY_ERROR));
    return model;
}

static const struct boat *sister_of(const struct model *model, const char *more)
{
    const struct models models = {&model, 1};
    struct boat_input input = {file_of("tern.yaml", sister_text(more)), "tern", &models};
    bool sound = false;
    test.problems = problems_new(test.arena);
    const struct boat *boat = boat_read_like(&input, test.arena, test.problems, &sound);
    if (!sound) {
        problems_show();
        fail_msg("not sound with: %s", more);
    }
    return boat;
}

static bool has_piece(const struct boat *boat, const char *tag)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (text_equal(boat->equipment[i].tag.text, tag))
            return true;
    return false;
}

/* There is this one difference. */
static void differs(const struct boat *boat, const struct model *model, const char *what)
{
    struct differences found = boat_differences(boat, model, test.arena);
    if (found.count != 1 || !text_equal(found.rows[0].what, what))
        fail_msg("%s: %zu differences, the first %s", what, found.count,
                 found.count == 0 ? "-" : found.rows[0].what);
}

/* An entry of the model without that field, or NULL where it must have it. */
static const char *entry_without(enum item_key item, enum gear_field field)
{
    static const char change[] = ", changed: 2026-11-01";
    const char *entry = whole_entry(&shared, item, test.arena);
    const char *key = text_format(test.arena, ", %s: ", gear_field_word(field));
    const char *next = NULL, *at = strstr(entry, key), *end = strstr(entry, change);
    if (at == NULL || field == GEAR_item || field == GEAR_tag || field == GEAR_zone)
        return NULL;
    for (enum gear_field later = field + 1; next == NULL && later < GEAR_FIELD_COUNT; later++)
        next = strstr(at, text_format(test.arena, ", %s: ", gear_field_word(later)));
    next = next == NULL ? end : next;
    return text_format(test.arena, "equipment:\n%.*s%.*s}\n", (int)(at - entry), entry,
                       (int)(end - next), next);
}

static size_t fields_try(const struct model *model, enum item_key item)
{
    size_t count = 0;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        const char *more = entry_without(item, field);
        if (more == NULL)
            continue;
        differs(sister_of(model, more), model,
                text_format(test.arena, "%s %s %s", whole_tag(item, test.arena), item_word(item),
                            gear_field_word(field)));
        count++;
    }
    return count;
}

static void not_here_try(const struct model *model, enum item_key item)
{
    const char *tag = whole_tag(item, test.arena);
    const struct boat *boat = sister_of(model, text_format(test.arena, "not_here: [%s]\n", tag));
    assert_false(has_piece(boat, tag));
    differs(boat, model, text_format(test.arena, "%s %s", tag, item_word(item)));
}

/* In a model where this piece alone has a later day. */
static void changed_try(const char *text, enum item_key item)
{
    const char *tag = whole_tag(item, test.arena);
    const char *entry = whole_entry(&shared, item, test.arena), *at = strstr(text, entry);
    assert_non_null(at);
    size_t length = strlen(entry), day = strlen("01}\n");
    const struct model *model =
        model_of(text_format(test.arena, "%.*s21}\n%s", (int)((size_t)(at - text) + length - day),
                             text, at + length));
    const struct boat *boat = sister_of(model, "");
    assert_false(has_piece(boat, tag));
    assert_true(boat_unwalked(boat, item));
    assert_int_equal(boat_fitted(boat, item), ANSWER_NOT_RECORDED);
    assert_string_equal(boat->likeness.unwalked, tag);
    assert_int_equal(boat_differences(boat, model, test.arena).count, 0);
}

static void each_piece_of_a_model(void **state)
{
    const char *text = whole_boat(&shared, test.arena);
    const struct model *model = model_of(text);
    struct arena *outer = test.arena;
    size_t fields = 0;
    (void)state;
    assert_int_equal(boat_differences(sister_of(model, ""), model, test.arena).count, 0);
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        test.arena = arena_new((size_t)512 * 1024 * 1024);
        if (!text_empty(whole_entry(&shared, item, test.arena))) {
            fields += fields_try(model, item);
            not_here_try(model, item);
            changed_try(text, item);
        }
        arena_free(test.arena);
        test.arena = outer;
    }
    assert_true(fields > 1000);
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(each_piece_of_a_model)};
    return cmocka_run_group_tests_name("each_sister", tests, NULL, NULL) != 0;
}
