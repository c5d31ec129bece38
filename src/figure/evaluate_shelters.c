/* evaluate_shelters.c - how far and which way the base's shelters lie from its berths
 * (room: figure). Never from where a boat is: no record knows that. */
#include "evaluate.h"

#include "course.h"

#define DEGREES_E7 1e7

static struct geographic geographic_of(const struct position *position)
{
    return (struct geographic){(double)position->latitude_e7 / DEGREES_E7,
                               (double)position->longitude_e7 / DEGREES_E7};
}

/* " (048 M)"; nothing where the base has not recorded variation and its date. */
static const char *magnetic_words(const struct evaluation *evaluation, int64_t true_milli)
{
    const struct base_record *base = evaluation->record->base;
    const int64_t circle = 360000;
    if (!base->variation_given || !base->variation_on.given)
        return "";
    int64_t milli = (true_milli - 100 * (int64_t)base->variation_tenths + circle) % circle;
    return text_format(evaluation->arena, " (%s M)", bearing_text(evaluation->arena, milli));
}

static void shelter_add(const struct evaluation *evaluation, struct text_builder *before,
                        struct text_builder *after, const struct shelter *shelter)
{
    const struct base_record *base = evaluation->record->base;
    struct course course = rhumb_line(geographic_of(&base->berths), geographic_of(&shelter->at));
    const char *join = before->length == 0 ? "" : "; ";
    int64_t milli = nearest_milli(course.degrees);
    text_add_format(before, "%s%s %s nm", join, shelter->name.text,
                    number_words(evaluation, course.nm));
    text_add_format(after, "%s%s", join, shelter->name.text);
    if (!course.defined) {
        text_add(after, " at the berths");
        return;
    }
    text_add_format(before, " at %s degrees", number_words(evaluation, course.degrees));
    text_add_format(after, " %s nm, %s T%s", up_words(evaluation, course.nm),
                    bearing_text(evaluation->arena, milli), magnetic_words(evaluation, milli));
}

static void variation_take(struct evaluation *evaluation)
{
    const struct base_record *base = evaluation->record->base;
    if (!base->variation_given || !base->variation_on.given)
        return;
    text_take(evaluation, (struct input_source){.owner = "base", .field = "variation"},
              &base->variation);
    struct text_value day = {.text = base->variation_on.text,
                             .place = base->variation_on.place};
    text_take(evaluation, (struct input_source){.owner = "base", .field = "variation_on"}, &day);
}

void evaluate_shelters(struct evaluation *evaluation)
{
    const struct base_record *base = evaluation->record->base;
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    if (base->shelter_count == 0) {
        not_applicable(evaluation, "the base lists no shelters");
        return;
    }
    text_take(evaluation,
              (struct input_source){.owner = "base", .field = "position",
                                    .about = "of the berths, such as 43 30.50 N 016 26.40 E",
                                    .place = base->name.place},
              &base->position);
    variation_take(evaluation);
    evaluation->origin = base->shelters[0].place;
    for (size_t i = 0; i < base->shelter_count; i++) {
        const struct shelter *shelter = &base->shelters[i];
        text_take(evaluation,
                  (struct input_source){.owner = "shelter", .field = shelter->name.text},
                  &shelter->position);
        if (shelter->at_given && base->berths_given)
            shelter_add(evaluation, &before, &after, shelter);
    }
    evaluation->before = before.at;
    evaluation->after = after.at;
}
