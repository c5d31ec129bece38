/* test_figure_lacks.c - each field that a figure of a specimen boat reads, taken away:
 * the figure goes from the cards and has no result, a note names the field, and the
 * card keeps its steps. Nothing is put in the field's place. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "figure.h"
#include "source.h"
#include "text.h"

#define INPUTS_MOST 200
#define FIGURES_MOST 40

/* A field of the boat's file, and which figures read it. */
struct taken {
    const char *field, *owner;
    int line;
    bool figures[FIGURES_MOST];
};

/* Read where recorded; the figure stands without. */
static bool is_optional(const char *figure, const char *field)
{
    return text_equal(field, "count") ||
           (text_equal(figure, "floor_wet") &&
            (text_equal(field, "lwl_m") || text_equal(field, "bwl_m")));
}

static bool is_required(const struct taken *taken)
{
    bool boat = text_equal(taken->owner, "boat");
    const struct field *row = field_find(boat ? boat_fields() : equipment_fields(), taken->field);
    return row != NULL && row->required;
}

static struct figure_result result_of(const struct figure *figure)
{
    struct figure_record record = {test.boat, test.base};
    return figure_evaluate(figure, &record, test.arena);
}

/* ---- what is read ---- */

static struct taken *taken_of(struct taken *list, size_t *count, const struct figure_input *input)
{
    const char *field = strrchr(input->what, ' ') + 1;
    for (size_t i = 0; i < *count; i++)
        if (list[i].line == input->place.line && text_equal(list[i].field, field))
            return &list[i];
    assert_true(*count < INPUTS_MOST);
    list[*count] = (struct taken){
        field, arena_copy(test.arena, input->what, (size_t)(field - 1 - input->what)),
        input->place.line, {false}};
    return &list[(*count)++];
}

static size_t all_taken(struct taken *list)
{
    size_t count = 0;
    const struct figure *figure;
    for (size_t f = 0; (figure = figure_at(f)) != NULL; f++) {
        struct figure_result result = result_of(figure);
        for (size_t i = 0; i < result.input_count; i++)
            if (result.inputs[i].place.source == test.boat->source)
                taken_of(list, &count, &result.inputs[i])->figures[f] = true;
    }
    return count;
}

/* ---- taking it away ---- */

/* The text without "field: value" in that line: a whole line of a section, or a piece
 * of an entry with its comma. */
static const char *text_without(const struct source *source, const struct taken *taken)
{
    struct text_builder out = text_builder_in(test.arena);
    const char *line = source->bytes + source->line_starts[taken->line - 1];
    const char *next = strchr(line, '\n') + 1;
    const char *piece = strstr(line, text_format(test.arena, ", %s: ", taken->field));
    text_add_bytes(&out, source->bytes, (size_t)(line - source->bytes));
    if (piece != NULL && piece < next) {
        text_add_bytes(&out, line, (size_t)(piece - line));
        text_add(&out, piece + 2 + strcspn(piece + 2, ",}"));
    } else {
        assert_true(text_begins(line, text_format(test.arena, "  %s: ", taken->field)));
        text_add(&out, next);
    }
    return out.at;
}

/* ---- what must be so without it ---- */

static bool card_carries(const struct sheet *card, const char *id)
{
    for (size_t i = 0; i < sheet_steps(card)->figure_count; i++)
        if (text_equal(sheet_steps(card)->figures[i].id, id))
            return true;
    return false;
}

/* Does the row give the seconds of that extinguisher alone? */
static bool row_gives_seconds(const struct card_row *row, const char *tag)
{
    for (size_t i = 0; i < row->item_count; i++)
        if (row->items[i].tag_count == 1 && text_equal(row->items[i].tags[0], tag) &&
            strstr(row->items[i].name, "lasts") != NULL)
            return true;
    return false;
}

/* Seconds of the other extinguishers may stand; no row may give this one's. */
static void seconds_must_be_gone(const struct sheet *card, const struct taken *taken)
{
    const char *tag = strrchr(taken->owner, ' ') + 1;
    for (size_t s = 0; s < sheet_steps(card)->count; s++)
        for (size_t r = 0; r < sheet_steps(card)->items[s].row_count; r++)
            if (row_gives_seconds(&sheet_steps(card)->items[s].rows[r], tag))
                fail_msg("%s: %s", card->id, tag);
    for (size_t i = 0; i < sheet_steps(card)->figure_count; i++)
        if (text_equal(sheet_steps(card)->figures[i].id, "discharge") &&
            strstr(sheet_steps(card)->figures[i].text, text_format(test.arena, "%s ", tag)) != NULL)
            fail_msg("%s: %s", card->id, sheet_steps(card)->figures[i].text);
}

static void figure_must_be_gone(const struct sheet_set *set, const struct figure *figure,
                                const struct taken *taken)
{
    struct figure_result result = result_of(figure);
    if (result.status != FIGURE_INPUT_MISSING || result.after != NULL || result.sentence != NULL)
        fail_msg("%s has a result without %s of %s", figure->id, taken->field, taken->owner);
    for (size_t i = 0; i < set->count; i++)
        if (figure->in_rows)
            seconds_must_be_gone(set->sheets[i], taken);
        else if (card_carries(set->sheets[i], figure->id))
            fail_msg("%s stands on %s without %s of %s", figure->id, set->sheets[i]->id,
                     taken->field, taken->owner);
}

static bool is_noted(const struct figure *figure)
{
    return figure->in_check || figure->in_rows || figure->procedure != NULL;
}

/* "bore_mm of seacock C15 is not recorded: the figures beat_pumps, ... wait for it": of a
 * figure that is only explained another one's note must name the field. */
static void note_must_name(const struct taken *taken, const struct figure *figure)
{
    const char *id = is_noted(figure) ? figure->id : "";
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count);
    const char *what = text_format(test.arena, "%s of %s is not recorded: the figure",
                                   taken->field, taken->owner);
    for (size_t i = 0; i < count; i++)
        if (text_begins(all[i].what, what) && strstr(all[i].what, id) != NULL) {
            assert_int_equal(all[i].severity, SEVERITY_NOTE);
            return;
        }
    fail_msg("no note says %s ... %s\n%s", what, id, case_problems_text(&test));
}

static void cards_must_keep_their_steps(const struct sheet_set *set, const struct sheet_set *whole)
{
    assert_int_equal(set->held, whole->held);
    assert_int_equal(set->count, whole->count);
    for (size_t i = 0; i < set->count; i++)
        assert_int_equal(sheet_steps(set->sheets[i])->count, sheet_steps(whole->sheets[i])->count);
}

static void taken_away(const struct source *source, const struct taken *taken,
                       const struct sheet_set *whole)
{
    const struct figure *figure;
    case_boat(&test, text_without(source, taken));
    const struct sheet_set *set = case_compose(&test, false);
    struct compose_input input = {test.boat, test.base, &test.procedures, test.authorities,
                                  test.words, {0}, test.today, false, NULL};
    figure_notes(&input, set, test.arena, test.problems);
    cards_must_keep_their_steps(set, whole);
    for (size_t f = 0; (figure = figure_at(f)) != NULL; f++) {
        if (!taken->figures[f] || is_optional(figure->id, taken->field))
            continue;
        figure_must_be_gone(set, figure, taken);
        note_must_name(taken, figure);
    }
}

static void each_field_taken_from(const char *file, size_t least)
{
    struct taken *list = arena_array(test.arena, INPUTS_MOST, sizeof *list);
    size_t looked_at = 0;
    case_boat(&test, file);
    const struct source *source = test.boat->source;
    const struct sheet_set *whole = case_compose(&test, false);
    size_t count = all_taken(list);
    for (size_t i = 0; i < count; i++) {
        if (is_required(&list[i]))
            continue;
        taken_away(source, &list[i], whole);
        looked_at++;
    }
    assert_true(figure_count() <= FIGURES_MOST);
    if (looked_at < least)
        fail_msg("%s: only %zu fields were looked at", file, looked_at);
}

static void tamarisk_loses_a_field(void **state)
{
    (void)state;
    each_field_taken_from("tests/fleet/boats/tamarisk.yaml", 35);
}

static void samphire_loses_a_field(void **state)
{
    (void)state;
    each_field_taken_from("tests/fleet/boats/samphire.yaml", 45);
}

static void bramble_loses_a_field(void **state)
{
    (void)state;
    each_field_taken_from("tests/fleet/boats/bramble.yaml", 10);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(tamarisk_loses_a_field, set_up, tear_down),
        cmocka_unit_test_setup_teardown(samphire_loses_a_field, set_up, tear_down),
        cmocka_unit_test_setup_teardown(bramble_loses_a_field, set_up, tear_down),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
