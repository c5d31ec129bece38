/* evaluate_pumps.c - what the pumps of one boat move (room: figure). A pump without a
 * label or a measurement has no default. */
#include "evaluate.h"

#include "capacity.h"
#include "flooding.h"

/* What one piece moves: as measured, or half its label. */
static double piece_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->measured_lpm.given)
        return gear_number_take(evaluation, gear, GEAR_measured_lpm);
    double rated_lph = gear_number_take(evaluation, gear, GEAR_rated_lph);
    return pump_effective_lpm(rated_lph / 60.0, PUMP_FACTOR);
}

static double electric_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    return (double)pieces_take(evaluation, gear) * piece_lpm(evaluation, gear);
}

static double hand_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    if (gear->measured_lpm.given)
        return gear_number_take(evaluation, gear, GEAR_measured_lpm);
    return hand_pump_lpm(gear_number_take(evaluation, gear, GEAR_stroke_l),
                         HAND_STROKES_PER_MINUTE, HAND_FILL);
}

static double sum_of(struct evaluation *evaluation, enum item_key item,
                     double (*one)(struct evaluation *, const struct equipment *))
{
    double sum = 0.0;
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, item, &index)) != NULL;)
        sum += one(evaluation, gear);
    return sum;
}

/* ---- hulls of a catamaran ---- */

/* How many pieces of an entry draw from this hull, as far as the record tells. */
static int64_t pieces_in(const struct equipment *gear, enum side hull)
{
    bool sided = gear->place_side == SIDE_PORT || gear->place_side == SIDE_STARBOARD;
    if (sided && gear->place_zone->in_hulls)
        return gear->place_side == hull ? gear_count(gear) : 0;
    return gear_count(gear) / 2;
}

static double port_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    gear_word_take(evaluation, gear, GEAR_zone);
    pieces_take(evaluation, gear);
    return (double)pieces_in(gear, SIDE_PORT) * piece_lpm(evaluation, gear);
}

static double starboard_lpm(struct evaluation *evaluation, const struct equipment *gear)
{
    return (double)pieces_in(gear, SIDE_STARBOARD) * piece_lpm(evaluation, gear);
}

static double weaker_hull_lpm(struct evaluation *evaluation)
{
    double port = sum_of(evaluation, ITEM_bilge_pump_electric, port_lpm);
    size_t inputs = evaluation->input_count, lacks = evaluation->lack_count;
    double starboard = sum_of(evaluation, ITEM_bilge_pump_electric, starboard_lpm);
    evaluation->input_count = inputs;    /* the same were read again */
    evaluation->lack_count = lacks;
    return port < starboard ? port : starboard;
}

/* Those that the record gives to neither hull. */
static void hulls_miss(struct evaluation *evaluation)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, ITEM_bilge_pump_electric, &index)) != NULL;)
        if (pieces_in(gear, SIDE_PORT) + pieces_in(gear, SIDE_STARBOARD) == 0)
            lack_take(evaluation, gear, "the hull it pumps",
                      "as a zone in that hull, or count: 2 for one in each");
}

/* ---- all together ---- */

double pumps_lpm(struct evaluation *evaluation)
{
    if (evaluation->record->boat->catamaran)
        return weaker_hull_lpm(evaluation);
    return sum_of(evaluation, ITEM_bilge_pump_electric, electric_lpm) +
           sum_of(evaluation, ITEM_bilge_pump_manual, hand_lpm);
}

bool pumps_recorded(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    bool known = boat_fitted(boat, ITEM_bilge_pump_electric) != ANSWER_NOT_RECORDED &&
                 boat_fitted(boat, ITEM_bilge_pump_manual) != ANSWER_NOT_RECORDED;
    if (!known)
        not_applicable(evaluation, "whether she has pumps is not recorded");
    return known;
}

double pumps_take(struct evaluation *evaluation)
{
    if (!pumps_recorded(evaluation))
        return 0.0;
    double lpm = pumps_lpm(evaluation);
    if (lpm <= 0.0 && evaluation->record->boat->catamaran)
        hulls_miss(evaluation);
    if (lpm <= 0.0)
        not_applicable(evaluation, "she has no pump that is known to reach the water");
    return evaluation->lack_count > 0 ? 0.0 : lpm;
}

void evaluate_pump_rate(struct evaluation *evaluation)
{
    double lpm = pumps_take(evaluation);
    if (lpm <= 0.0)
        return;
    const char *of = evaluation->record->boat->catamaran ? "the hull with less" : "all pumps";
    evaluation->before = text_format(evaluation->arena, "%s: %s L/min", of,
                                     number_words(evaluation, lpm));
    evaluation->after = text_format(evaluation->arena, "%s: %s L/min", of,
                                    down_words(evaluation, lpm));
}

void evaluate_hand_pump(struct evaluation *evaluation)
{
    if (boat_fitted(evaluation->record->boat, ITEM_bilge_pump_manual) != ANSWER_YES) {
        not_applicable(evaluation, "no hand pump is recorded");
        return;
    }
    double lpm = sum_of(evaluation, ITEM_bilge_pump_manual, hand_lpm);
    evaluation->before = text_format(evaluation->arena, "%s L/min",
                                     number_words(evaluation, lpm));
    evaluation->after = text_format(evaluation->arena, "%s L/min", down_words(evaluation, lpm));
}
