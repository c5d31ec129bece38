/* evaluate_pumps.c - what the pumps of one boat move (room: figure). A pump without a
 * label or a measurement has no default. */
#include "evaluate.h"

#include "flooding.h"

/* What one pump moves: as measured, or half its label. */
static double electric_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    double pieces = gear->count.given ? (double)gear->count.milli / 1000.0 : 1.0;
    if (gear->measured_lpm.given)
        return pieces * gear_number_take(evaluation, gear, "measured_lpm", &gear->measured_lpm);
    double rated_lph = gear_number_take(evaluation, gear, "rated_lph", &gear->rated_lph);
    return pieces * pump_effective_lpm(rated_lph / 60.0, PUMP_FACTOR);
}

static double hand_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->measured_lpm.given)
        return gear_number_take(evaluation, gear, "measured_lpm", &gear->measured_lpm);
    return hand_pump_lpm(gear_number_take(evaluation, gear, "stroke_l", &gear->stroke_l),
                         HAND_STROKES_PER_MINUTE, HAND_FILL);
}

static double sum_of(struct evaluation *evaluation, const char *item,
                     double (*one)(struct evaluation *, const struct equipment *))
{
    double sum = 0.0;
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, item, &index)) != NULL;)
        sum += one(evaluation, gear);
    return sum;
}

double pumps_lpm(struct evaluation *evaluation)
{
    double electric = sum_of(evaluation, "bilge_pump_electric", electric_lpm);
    if (evaluation->record->boat->catamaran)
        return electric / 2.0;
    return electric + sum_of(evaluation, "bilge_pump_manual", hand_lpm);
}

bool pumps_recorded(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    bool known = boat_fitted(boat, "bilge_pump_electric") != ANSWER_NOT_RECORDED &&
                 boat_fitted(boat, "bilge_pump_manual") != ANSWER_NOT_RECORDED;
    if (!known)
        not_applicable(evaluation, "whether she has pumps is not recorded");
    return known;
}

double pumps_take(struct evaluation *evaluation)
{
    if (!pumps_recorded(evaluation))
        return 0.0;
    double lpm = pumps_lpm(evaluation);
    if (lpm <= 0.0)
        not_applicable(evaluation, "she has no pump that is known to reach the water");
    return evaluation->lack_count > 0 ? 0.0 : lpm;
}

void evaluate_pump_rate(struct evaluation *evaluation)
{
    double lpm = pumps_take(evaluation);
    if (lpm <= 0.0)
        return;
    const char *of = evaluation->record->boat->catamaran ? "one hull" : "all pumps";
    evaluation->before = text_format(evaluation->arena, "%s: %s L/min", of,
                                     number_words(evaluation, lpm));
    evaluation->after = text_format(evaluation->arena, "%s: %s L/min", of,
                                    down_words(evaluation, lpm));
}

void evaluate_hand_pump(struct evaluation *evaluation)
{
    if (boat_fitted(evaluation->record->boat, "bilge_pump_manual") != ANSWER_YES) {
        not_applicable(evaluation, "no hand pump is recorded");
        return;
    }
    double lpm = sum_of(evaluation, "bilge_pump_manual", hand_lpm);
    evaluation->before = text_format(evaluation->arena, "%s L/min",
                                     number_words(evaluation, lpm));
    evaluation->after = text_format(evaluation->arena, "%s L/min", down_words(evaluation, lpm));
}
