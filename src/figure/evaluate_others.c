/* evaluate_others.c - the figures of one boat that are not about flooding: speed,
 * drift, fire, gas, raft, radio (room: figure). */
#include "evaluate.h"

#include "course.h"
#include "fire_gas.h"
#include "number.h"
#include "overboard.h"

/* ---- man overboard ---- */

void evaluate_distance_run(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    double kn = boat_number_take(evaluation, BOAT_usual_kn);
    if (evaluation->lack_count > 0)
        return;
    double metres = distance_run_m(kn, 10.0);
    evaluation->origin = boat->facts.usual_kn.place;
    evaluation->before = text_format(evaluation->arena, "%s m in 10 s",
                                     number_words(evaluation, metres));
    evaluation->after = text_format(evaluation->arena, "%s m in 10 s",
                                    up_words(evaluation, metres));
    evaluation->sentence = phrase_word(
        evaluation->arena, WORD_FIGURE_RUN, "knots",
        phrase_verbatim(evaluation->arena, boat->facts.usual_kn.text), "metres",
        phrase_verbatim(evaluation->arena, up_words(evaluation, metres)), NULL);
}

void evaluate_separation(struct evaluation *evaluation)
{
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    for (int wind_kn = 10; wind_kn <= 30; wind_kn += 10) {
        double metres = separation_m_per_min(wind_kn);
        text_add_format(&before, "%s%s m a minute at %d kn of wind", wind_kn == 10 ? "" : ", ",
                        number_words(evaluation, metres), wind_kn);
        text_add_format(&after, "%s%s m a minute at %d kn of wind", wind_kn == 10 ? "" : ", ",
                        up_words(evaluation, metres), wind_kn);
    }
    evaluation->before = before.at;
    evaluation->after = after.at;
}

/* ---- fire ---- */

static const enum item_key portable_extinguishers[] = {ITEM_fire_extinguisher,
                                                       ITEM_engine_extinguisher};

static int64_t whole_seconds(const struct equipment *gear)
{
    return gear->discharge_s.milli / 1000;
}

const struct phrase *figure_discharge(const struct equipment *gear, struct arena *arena)
{
    if (!gear->discharge_s.given)
        return NULL;
    return phrase_word(arena, WORD_FIGURE_EMPTY, "seconds",
                       phrase_number(arena, whole_seconds(gear)), NULL);
}

/* "F3 9 s, F4 6 s": for a row that several pieces share. */
static void discharge_add(struct evaluation *evaluation, struct text_builder *before,
                          struct text_builder *after, const struct equipment *gear)
{
    const char *tag = gear->tag.text == NULL ? gear->kind->key : gear->tag.text;
    double seconds = gear_number_take(evaluation, gear, GEAR_discharge_s);
    text_add_format(before, "%s%s %s s", before->length == 0 ? "" : ", ", tag,
                    number_words(evaluation, seconds));
    text_add_format(after, "%s%s %lld s", after->length == 0 ? "" : ", ", tag,
                    (long long)whole_seconds(gear));
    evaluation->origin = gear->place;
}

void evaluate_discharge(struct evaluation *evaluation)
{
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    for (size_t i = 0; i < sizeof portable_extinguishers / sizeof *portable_extinguishers; i++) {
        size_t index = 0;
        for (const struct equipment *gear;
             (gear = gear_of(evaluation->record->boat, portable_extinguishers[i], &index)) != NULL;)
            discharge_add(evaluation, &before, &after, gear);
    }
    if (before.length == 0)
        not_applicable(evaluation, "no extinguisher is recorded");
    evaluation->before = before.at;
    evaluation->after = after.at;
}

void evaluate_agent(struct evaluation *evaluation)
{
    double space = boat_number_take(evaluation, BOAT_engine_space_m3);
    if (evaluation->lack_count > 0)
        return;
    double hfc = halocarbon_kg(space, hfc227ea_m3_per_kg(0.0), 9.0);
    double fk = halocarbon_kg(space, fk5112_m3_per_kg(0.0), 5.9);
    double co2 = co2_engine_space_kg(space);
    evaluation->before = text_format(
        evaluation->arena, "at 0 degrees: HFC-227ea %s kg, FK-5-1-12 %s kg, CO2 %s kg",
        number_words(evaluation, hfc), number_words(evaluation, fk),
        number_words(evaluation, co2));
    evaluation->after = text_format(evaluation->arena,
                                    "HFC-227ea %s kg, FK-5-1-12 %s kg, CO2 %s kg",
                                    up_words(evaluation, hfc), up_words(evaluation, fk),
                                    up_words(evaluation, co2));
}

static const char *outfit_words(const struct evaluation *evaluation,
                                const struct us_outfit *outfit)
{
    if (outfit->count_5b == 0)
        return "none";
    if (outfit->beside_20b < 0)
        return text_format(evaluation->arena, "%d of 5-B", outfit->count_5b);
    if (outfit->beside_20b == 0)
        return text_format(evaluation->arena, "%d of 5-B, or 1 of 20-B", outfit->count_5b);
    return text_format(evaluation->arena, "%d of 5-B, or 1 of 20-B and %d of 5-B",
                       outfit->count_5b, outfit->beside_20b);
}

void evaluate_us_outfit(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    bool fixed = boat_fitted(boat, ITEM_fixed_extinguisher) == ANSWER_YES;
    struct us_outfit outfit;
    if (!text_equal(boat->facts.flag.text, "US")) {
        not_applicable(evaluation, "her flag is not known to be that of the United States");
        return;
    }
    boat_word_take(evaluation, BOAT_flag);
    double loa_m = boat_number_take(evaluation, BOAT_loa_m);
    if (!us_outfit_least(loa_m, fixed ? US_FIXED_SYSTEM : US_NO_FIXED_SYSTEM, &outfit)) {
        not_applicable(evaluation, "she is longer than the 65 feet that the rule covers");
        return;
    }
    evaluation->before = text_format(evaluation->arena, "%s feet, %s fixed system recorded",
                                     number_words(evaluation, loa_m / 0.3048),
                                     fixed ? "a" : "no");
    evaluation->after = text_format(evaluation->arena, "%s; indicative, her flag's own list "
                                    "decides", outfit_words(evaluation, &outfit));
}

/* ---- gas ---- */

/* The bottle that makes most air explosive; its gas as recorded. */
struct bottle {
    const struct equipment *gear;
    enum gas gas;
    double kg;
};

static double mixture_of(const struct bottle *bottle)
{
    double vapour = gas_vapour_m3(bottle->gas, bottle->kg, GAS_USUAL_CELSIUS);
    return gas_mixture_m3(vapour, gas_limit_percent(bottle->gas));
}

/* False: there is none, or its inputs are missing. */
static bool bottle_take(struct evaluation *evaluation, struct bottle *bottle)
{
    size_t index = 0;
    *bottle = (struct bottle){.kg = 0.0};
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, ITEM_lpg_bottle_valve, &index)) != NULL;) {
        double kg = gear_number_take(evaluation, gear, GEAR_kg);
        gear_word_take(evaluation, gear, GEAR_gas);
        struct bottle next = {gear, gear->gas.value == GAS_BUTANE ? GAS_BUTANE : GAS_PROPANE, kg};
        if (bottle->gear == NULL || mixture_of(&next) > mixture_of(bottle))
            *bottle = next;
    }
    if (bottle->gear == NULL) {
        not_applicable(evaluation, "no gas bottle is recorded");
        return false;
    }
    evaluation->origin = bottle->gear->place;
    return evaluation->lack_count == 0;
}

void evaluate_gas_volume(struct evaluation *evaluation)
{
    struct bottle bottle;
    if (!bottle_take(evaluation, &bottle))
        return;
    double vapour = gas_vapour_m3(bottle.gas, bottle.kg, GAS_USUAL_CELSIUS);
    double mixture = mixture_of(&bottle);
    evaluation->before = text_format(evaluation->arena, "%s m3 of gas, %s m3 of explosive air",
                                     number_words(evaluation, vapour),
                                     number_words(evaluation, mixture));
    evaluation->after = text_format(evaluation->arena, "%s m3 of gas, %s m3 of explosive air",
                                    up_words(evaluation, vapour), up_words(evaluation, mixture));
}

void evaluate_boat_fulls(struct evaluation *evaluation)
{
    struct bottle bottle;
    bool known = bottle_take(evaluation, &bottle);
    if (bottle.gear == NULL)
        return;
    double cabin = boat_number_take(evaluation, BOAT_cabin_m3);
    if (!known || evaluation->lack_count > 0)
        return;
    double times = gas_times_space(mixture_of(&bottle), cabin);
    evaluation->before = text_format(evaluation->arena, "%s times the air in the cabins",
                                     number_words(evaluation, times));
    evaluation->after = "more than a boat-full";
    if (times < 1.0) {
        evaluation->after = "less than a boat-full";
        not_applicable(evaluation, "less than a boat-full: nothing is said, since it would "
                                   "reassure");
        return;
    }
    evaluation->sentence = phrase_word(evaluation->arena, WORD_FIGURE_BOAT_FULL, NULL);
}

void evaluate_gas_limit(struct evaluation *evaluation)
{
    struct bottle bottle;
    if (!bottle_take(evaluation, &bottle))
        return;
    double grams = gas_limit_g(bottle.gas, 1.0, gas_limit_percent(bottle.gas));
    double minutes = burner_min(bottle.gas, 2.0, grams);
    evaluation->before = text_format(
        evaluation->arena, "%s g fill a bilge of 1 m3: %s min of one unlit burner of 2 kW",
        number_words(evaluation, grams), number_words(evaluation, minutes));
    evaluation->after = text_format(evaluation->arena, "%s g, %s min",
                                    down_words(evaluation, grams),
                                    down_words(evaluation, minutes));
}

/* ---- raft ---- */

static int64_t raft_places_take(struct evaluation *evaluation)
{
    size_t index = 0;
    int64_t places = 0;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, ITEM_liferaft, &index)) != NULL;) {
        int64_t count = pieces_take(evaluation, gear);
        gear_number_take(evaluation, gear, GEAR_persons);
        places += count * (gear->persons.milli / 1000);
        evaluation->origin = gear->place;
    }
    return places;
}

void evaluate_raft_places(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    if (boat_fitted(boat, ITEM_liferaft) != ANSWER_YES) {
        not_applicable(evaluation, "no raft is recorded");
        return;
    }
    long long places = raft_places_take(evaluation);
    boat_number_take(evaluation, BOAT_persons_max);
    if (evaluation->lack_count > 0)
        return;
    long long persons = boat->facts.persons_max.milli / 1000;
    evaluation->before = evaluation->after = text_format(
        evaluation->arena, "%lld places, %lld persons at most", places, persons);
    evaluation->sentence = phrase_word(evaluation->arena, WORD_FIGURE_RAFT, "places",
                                       phrase_number(evaluation->arena, places), "persons",
                                       phrase_number(evaluation->arena, persons), NULL);
}

/* ---- radio ---- */

/* The boat's side alone unless the base has recorded the centre's aerial. */
static void range_tell(struct evaluation *evaluation, double own_m)
{
    const struct base_record *base = evaluation->record->base;
    bool station = base->centre_antenna_m.given;
    double other_m = 0.0;
    if (station)
        other_m = number_take(evaluation,
                              (struct input_source){.owner = "rescue centre", .field = "antenna_m"},
                              &base->centre_antenna_m);
    double nm = range_nm(RADIO_HORIZON_PRINTED, own_m, other_m);
    evaluation->before = text_format(evaluation->arena, "%s nm %s", number_words(evaluation, nm),
                                     station ? "to the centre's aerial" : "to her own horizon");
    evaluation->after = text_format(evaluation->arena, "%s nm", down_words(evaluation, nm));
}

void evaluate_radio_range(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    if (boat_fitted(boat, ITEM_vhf_dsc) != ANSWER_YES) {
        not_applicable(evaluation, "no fixed radio is recorded");
        return;
    }
    double own_m = radio_number_take(evaluation, RADIO_antenna_m);
    evaluation->origin = boat->radio_place;
    if (evaluation->lack_count == 0)
        range_tell(evaluation, own_m);
}

/* The lowest handheld: none of them reaches less far than is printed. */
void evaluate_handheld_range(struct evaluation *evaluation)
{
    size_t index = 0;
    double least_m = 0.0;
    bool any = false;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, ITEM_vhf_handheld, &index)) != NULL;) {
        double own_m = gear_number_take(evaluation, gear, GEAR_antenna_m);
        least_m = !any || own_m < least_m ? own_m : least_m;
        evaluation->origin = gear->place;
        any = true;
    }
    if (!any)
        not_applicable(evaluation, "no handheld is recorded");
    else if (evaluation->lack_count == 0)
        range_tell(evaluation, least_m);
}
