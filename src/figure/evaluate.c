/* evaluate.c - a figure from a record: what was read, what is missing (room:
 * figure). Never fills a gap: what is not recorded makes the figure go. */
#include "evaluate.h"

#include <math.h>

#include "capacity.h"
#include "number.h"
#include "promise.h"

/* From here to 1 a thousandth is too coarse for four significant digits. */
#define SMALL_LEAST 1e-4

static const char *about_of(const struct fact_owner *owner, const char *field)
{
    const struct field *row = owner->fields == NULL ? NULL : field_find(owner->fields, field);
    const char *about = row == NULL ? owner->about : row->about;
    return about == NULL ? "what is true of it" : about;
}

struct fact_owner boat_owner(const struct evaluation *evaluation)
{
    return (struct fact_owner){.name = "boat", .place = evaluation->record->boat->place,
                               .fields = boat_fields()};
}

struct fact_owner base_owner(const struct evaluation *evaluation)
{
    return (struct fact_owner){.name = "base", .place = evaluation->record->base->name.place,
                               .about = "of the berths, such as 43 30.50 N 016 26.40 E"};
}

static struct fact_owner gear_owner(const struct evaluation *evaluation,
                                    const struct equipment *gear)
{
    return (struct fact_owner){.name = gear_label(evaluation, gear), .place = gear->place,
                               .fields = equipment_fields()};
}

static void lack_add(struct evaluation *evaluation, const char *owner, const char *field,
                     struct place place, const char *about)
{
    evaluation->lacks = arena_grow(evaluation->arena, evaluation->lacks, evaluation->lack_count,
                                   &evaluation->lack_room, sizeof *evaluation->lacks);
    evaluation->lacks[evaluation->lack_count++] = (struct figure_lack){
        owner, field, about, place};
}

static void input_add(struct evaluation *evaluation, const char *what, const char *value,
                      struct place place)
{
    evaluation->inputs = arena_grow(evaluation->arena, evaluation->inputs,
                                    evaluation->input_count, &evaluation->input_room,
                                    sizeof *evaluation->inputs);
    evaluation->inputs[evaluation->input_count++] = (struct figure_input){what, value, place};
}

double number_take(struct evaluation *evaluation, const struct fact_owner *owner,
                   const char *field, const struct number_value *number)
{
    if (!number->given) {
        lack_add(evaluation, owner->name, field, owner->place, about_of(owner, field));
        return 0.0;
    }
    input_add(evaluation, text_format(evaluation->arena, "%s %s", owner->name, field),
              number->text, number->place);
    return (double)number->milli / 1000.0;
}

const char *gear_label(const struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->tag.text == NULL)
        return gear->kind->key;
    return text_format(evaluation->arena, "%s %s", gear->kind->key, gear->tag.text);
}

double gear_number_take(struct evaluation *evaluation, const struct equipment *gear,
                        const char *field, const struct number_value *number)
{
    struct fact_owner owner = gear_owner(evaluation, gear);
    return number_take(evaluation, &owner, field, number);
}

int64_t pieces_take(struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->count.given)
        gear_number_take(evaluation, gear, "count", &gear->count);
    return gear_count(gear);
}

double boat_number_take(struct evaluation *evaluation, const char *field,
                        const struct number_value *number)
{
    struct fact_owner owner = boat_owner(evaluation);
    return number_take(evaluation, &owner, field, number);
}

void text_take(struct evaluation *evaluation, const struct fact_owner *owner,
               const char *field, const struct text_value *text)
{
    if (text->text == NULL)
        lack_add(evaluation, owner->name, field, owner->place, about_of(owner, field));
    else
        input_add(evaluation, text_format(evaluation->arena, "%s %s", owner->name, field),
                  text->text, text->place);
}

void gear_word_take(struct evaluation *evaluation, const struct equipment *gear,
                    const char *field, const char *word, struct place place)
{
    struct text_value text = {.text = word, .place = place};
    struct fact_owner owner = gear_owner(evaluation, gear);
    text_take(evaluation, &owner, field, &text);
}

void lack_take(struct evaluation *evaluation, const struct equipment *gear, const char *what,
               const char *about)
{
    lack_add(evaluation, gear_label(evaluation, gear), what, gear->place, about);
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
