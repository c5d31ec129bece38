/* evaluate.c - a figure from a record: what was read, what is missing (room:
 * figure). Never fills a gap: what is not recorded makes the figure go. */
#include "evaluate.h"

#include <math.h>

#include "capacity.h"
#include "number.h"
#include "promise.h"

/* From here to 1 a thousandth is too coarse for four significant digits. */
#define SMALL_LEAST 1e-4

static void lack_add(struct evaluation *evaluation, const struct input_source *source)
{
    evaluation->lacks = arena_grow(evaluation->arena, evaluation->lacks, evaluation->lack_count,
                                   &evaluation->lack_room, sizeof *evaluation->lacks);
    evaluation->lacks[evaluation->lack_count++] = (struct figure_lack){
        source->owner, source->field,
        source->about == NULL ? "what is true of it" : source->about, source->place};
}

static void input_add(struct evaluation *evaluation, const struct input_source *source,
                      const char *value, struct place place)
{
    const char *what = text_format(evaluation->arena, "%s %s", source->owner, source->field);
    evaluation->inputs = arena_grow(evaluation->arena, evaluation->inputs,
                                    evaluation->input_count, &evaluation->input_room,
                                    sizeof *evaluation->inputs);
    evaluation->inputs[evaluation->input_count++] = (struct figure_input){what, value, place};
}

double number_take(struct evaluation *evaluation, struct input_source source,
                   const struct number_value *number)
{
    if (!number->given) {
        lack_add(evaluation, &source);
        return 0.0;
    }
    input_add(evaluation, &source, number->text, number->place);
    return (double)number->milli / 1000.0;
}

void text_take(struct evaluation *evaluation, struct input_source source,
               const struct text_value *text)
{
    if (text->text == NULL)
        lack_add(evaluation, &source);
    else
        input_add(evaluation, &source, text->text, text->place);
}

/* ---- fields of the record ---- */

const char *gear_label(const struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->tag.text == NULL)
        return gear->kind->key;
    return text_format(evaluation->arena, "%s %s", gear->kind->key, gear->tag.text);
}

static struct input_source gear_source(const struct evaluation *evaluation,
                                       const struct equipment *gear, const struct field *row)
{
    return (struct input_source){gear_label(evaluation, gear), row->key, row->about, gear->place};
}

/* A field of a record, which the row says to be a number. */
static const struct number_value *number_of(const struct field *row, const void *record)
{
    promise(row->kind == FIELD_NUMBER);
    return (const void *)((const char *)record + row->offset);
}

/* The same of any kind, as a word. */
static struct text_value fact_word(const struct evaluation *evaluation, const struct field *row,
                                 const void *record)
{
    return (struct text_value){.text = field_text(row, record, evaluation->arena),
                               .place = field_place(row, record)};
}

double gear_number_take(struct evaluation *evaluation, const struct equipment *gear,
                        enum gear_field field)
{
    const struct field *row = gear_field_row(field);
    return number_take(evaluation, gear_source(evaluation, gear, row), number_of(row, gear));
}

void gear_word_take(struct evaluation *evaluation, const struct equipment *gear,
                    enum gear_field field)
{
    const struct field *row = gear_field_row(field);
    struct text_value word = fact_word(evaluation, row, gear);
    text_take(evaluation, gear_source(evaluation, gear, row), &word);
}

int64_t pieces_take(struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->count.given)
        gear_number_take(evaluation, gear, GEAR_count);
    return gear_count(gear);
}

double boat_number_take(struct evaluation *evaluation, enum boat_fact fact)
{
    const struct boat *boat = evaluation->record->boat;
    const struct field *row = boat_fact_row(fact);
    return number_take(evaluation,
                       (struct input_source){"boat", row->key, row->about, boat->place},
                       number_of(row, &boat->facts));
}

void boat_word_take(struct evaluation *evaluation, enum boat_fact fact)
{
    const struct boat *boat = evaluation->record->boat;
    const struct field *row = boat_fact_row(fact);
    struct text_value word = fact_word(evaluation, row, &boat->facts);
    text_take(evaluation, (struct input_source){"boat", row->key, row->about, boat->place}, &word);
}

double radio_number_take(struct evaluation *evaluation, enum radio_fact fact)
{
    const struct boat *boat = evaluation->record->boat;
    const struct field *row = radio_fact_row(fact);
    return number_take(evaluation,
                       (struct input_source){"radio", row->key, row->about, boat->radio_place},
                       number_of(row, &boat->radio));
}

void lack_take(struct evaluation *evaluation, const struct equipment *gear, const char *what,
               const char *about)
{
    lack_add(evaluation, &(struct input_source){gear_label(evaluation, gear), what, about,
                                                gear->place});
}

const struct equipment *gear_of(const struct boat *boat, enum item_key item, size_t *index)
{
    for (; *index < boat->equipment_count; (*index)++)
        if (boat->equipment[*index].item.value == item)
            return &boat->equipment[(*index)++];
    return NULL;
}

void not_applicable(struct evaluation *evaluation, const char *reason)
{
    evaluation->reason = reason;
}

const char *number_words(const struct evaluation *evaluation, double value)
{
    if (fabs(value) >= SMALL_LEAST && fabs(value) < 1.0)
        return text_format(evaluation->arena, "%.4g", value);
    return number_text_milli(evaluation->arena, nearest_milli(value));
}

const char *up_words(const struct evaluation *evaluation, double value)
{
    return number_text_milli(evaluation->arena, rounded_up_milli(value));
}

const char *down_words(const struct evaluation *evaluation, double value)
{
    return number_text_milli(evaluation->arena, rounded_down_milli(value));
}

bool figure_may_be_printed(const struct figure *figure)
{
    return figure->verdict == FIGURE_FACT || figure->verdict == FIGURE_ESTIMATE;
}

/* What rests on an assumed coefficient says so, in its own words or at its end. */
static const struct phrase *sentence_of(const struct evaluation *evaluation)
{
    const struct figure *figure = evaluation->figure;
    if (evaluation->sentence == NULL || !figure_may_be_printed(figure))
        return NULL;
    if (figure->label_tells)
        return evaluation->sentence;
    promise(figure->verdict == FIGURE_FACT || figure->assumed != NULL);
    return phrase_word(evaluation->arena,
                       figure->assumed == NULL ? WORD_FIGURE_FACT : WORD_FIGURE_ESTIMATED,
                       "figure", evaluation->sentence, NULL);
}

struct figure_result figure_evaluate(const struct figure *figure,
                                     const struct figure_record *record, struct arena *arena)
{
    struct evaluation evaluation = {.record = record, .figure = figure, .arena = arena,
                                    .origin = record->boat->place};
    if (figure->evaluate == NULL)
        return (struct figure_result){.status = FIGURE_NOT_APPLICABLE, .reason = figure->why_not};
    figure->evaluate(&evaluation);
    struct figure_result result = {
        .status = FIGURE_VALUE, .inputs = evaluation.inputs,
        .input_count = evaluation.input_count, .lacks = evaluation.lacks,
        .lack_count = evaluation.lack_count, .origin = evaluation.origin};
    if (evaluation.lack_count > 0) {
        result.status = FIGURE_INPUT_MISSING;
        return result;
    }
    result.before = evaluation.before;
    result.after = evaluation.after;
    if (evaluation.reason != NULL) {
        result.status = FIGURE_NOT_APPLICABLE;
        result.reason = evaluation.reason;
        return result;
    }
    result.sentence = sentence_of(&evaluation);
    promise(result.sentence == NULL || figure_may_be_printed(figure));
    return result;
}
