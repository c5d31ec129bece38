/* evaluate_flooding.c - the openings of one boat, and what they do to her (room:
 * figure). Never says that the pumps cope. */
#include "evaluate.h"

#include "capacity.h"
#include "flooding.h"

#define SETTLING_LITRES 1000.0
#define DRY "no opening lies below the water"

/* The openings of a boat with what they let in; count 0: the evaluation is over. */
struct openings {
    struct ranked_opening *ranked;       /* worst first */
    const struct equipment **gear;       /* by ranked_opening.index */
    size_t count;
};

/* A shaft's seal is an opening as wide as its tube once the shaft is out. It has no valve
 * and no tag on the card: the card calls it by its name. */
static bool is_seal(const struct equipment *gear)
{
    return gear->item.value == ITEM_shaft_seal;
}

static void openings_add(struct evaluation *evaluation, struct openings *openings,
                         enum item_key item)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, item, &index)) != NULL;) {
        double bore_mm = gear_number_take(evaluation, gear, "bore_mm", &gear->bore_mm);
        double depth_m = gear_number_take(evaluation, gear, "depth_m", &gear->depth_m);
        openings->gear[openings->count] = gear;
        openings->ranked[openings->count] = (struct ranked_opening){
            .bore_mm = bore_mm, .depth_m = depth_m, .index = openings->count};
        openings->count++;
    }
}

static struct openings openings_take(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    struct openings openings = {
        .ranked = arena_array(evaluation->arena, boat->equipment_count + 1,
                              sizeof *openings.ranked),
        .gear = arena_array(evaluation->arena, boat->equipment_count + 1,
                            sizeof *openings.gear)};
    openings_add(evaluation, &openings, ITEM_seacock);
    openings_add(evaluation, &openings, ITEM_shaft_seal);
    openings_rank(openings.ranked, openings.count);
    if (openings.count > 0)
        evaluation->origin = openings.gear[0]->place;
    if (openings.count == 0)
        not_applicable(evaluation, "no opening in the hull is recorded");
    return openings;
}

static double inflow_of(const struct ranked_opening *opening)
{
    return inflow_lpm(opening->bore_mm, opening->depth_m, CD_OPEN_FITTING);
}

static const char *gear_tag(const struct equipment *gear)
{
    return gear->tag.text == NULL ? gear->kind->key : gear->tag.text;
}

static const char *tag_of(const struct openings *openings, const struct ranked_opening *opening)
{
    return gear_tag(openings->gear[opening->index]);
}

void evaluate_inflow(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    for (size_t i = 0; i < openings.count; i++) {
        const char *tag = tag_of(&openings, &openings.ranked[i]);
        double lpm = inflow_of(&openings.ranked[i]);
        text_add_format(&before, "%s%s %s L/min", i == 0 ? "" : ", ", tag,
                        number_words(evaluation, lpm));
        text_add_format(&after, "%s%s %s L/min", i == 0 ? "" : ", ", tag,
                        up_words(evaluation, lpm));
    }
    evaluation->before = before.at;
    evaluation->after = after.at;
}

/* ---- the worst ---- */

/* The tags of one group, equal ones with " = " between. */
static void opening_group_add(struct text_builder *out, const struct openings *openings,
                              size_t group)
{
    bool first = true;
    for (size_t i = 0; i < openings->count; i++)
        if (openings->ranked[i].group == group) {
            text_add_format(out, "%s%s", first ? "" : " = ",
                            tag_of(openings, &openings->ranked[i]));
            first = false;
        }
}

static const char *order_words(const struct evaluation *evaluation,
                               const struct openings *openings)
{
    struct text_builder out = text_builder_in(evaluation->arena);
    size_t last = openings->count == 0 ? 0 : openings->ranked[openings->count - 1].group;
    for (size_t group = 0; group <= last; group++) {
        text_add(&out, group == 0 ? "" : ", then ");
        opening_group_add(&out, openings, group);
    }
    return out.at;
}

static bool in_worst(const struct openings *openings, size_t index)
{
    for (size_t i = 0; i < openings->count; i++)
        if (openings->ranked[i].index == index)
            return openings->ranked[i].group == 0;
    return false;
}

/* ", shaft seal": one or more of them, after what else is named. */
static void seals_add(const struct evaluation *evaluation, struct text_builder *out,
                      int64_t count)
{
    if (count > 0)
        text_add_format(out, "%s%s", out->length == 0 ? "" : ", ",
                        words_get(evaluation->record->words,
                                  count == 1 ? WORD_FIGURE_SEAL : WORD_FIGURE_SEALS));
}

/* Those with this bung that no earlier one has shown. */
static bool bung_told(const struct openings *openings, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (in_worst(openings, i) && !is_seal(openings->gear[i]) &&
            openings->gear[i]->bung_mm.milli == openings->gear[index]->bung_mm.milli)
            return true;
    return false;
}

static void bung_group_add(const struct evaluation *evaluation, struct text_builder *out,
                           const struct openings *openings, size_t first)
{
    const struct number_value *bung = &openings->gear[first]->bung_mm;
    text_add(out, out->length == 0 ? "" : ", ");
    for (size_t i = first; i < openings->count; i++)
        if (in_worst(openings, i) && !is_seal(openings->gear[i]) &&
            openings->gear[i]->bung_mm.milli == bung->milli)
            text_add_format(out, "%s%s", i == first ? "" : ", ",
                            gear_tag(openings->gear[i]));
    text_add_format(out, " %s", words_fill(evaluation->record->words, evaluation->arena,
                                           WORD_FIGURE_BUNG, "size", bung->text, NULL));
}

/* "C13, C15 (bung 38 mm), C27 (bung 32 mm), shaft seal": the worst by the bung that
 * fits. */
static const char *worst_words(struct evaluation *evaluation, const struct openings *openings)
{
    struct text_builder out = text_builder_in(evaluation->arena);
    int64_t seals = 0;
    for (size_t i = 0; i < openings->count; i++) {
        if (!in_worst(openings, i))
            continue;
        if (is_seal(openings->gear[i]))
            seals += gear_count(openings->gear[i]);
        else if (!bung_told(openings, i))
            bung_group_add(evaluation, &out, openings, i);
    }
    seals_add(evaluation, &out, seals);
    return out.at;
}

void evaluate_worst_openings(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    if (openings.count == 0 || evaluation->lack_count > 0)
        return;
    if (inflow_of(&openings.ranked[0]) <= 0.0) {
        not_applicable(evaluation, DRY);
        return;
    }
    for (size_t i = 0; i < openings.count; i++)
        if (in_worst(&openings, i) && !is_seal(openings.gear[i]))
            gear_number_take(evaluation, openings.gear[i], "bung_mm", &openings.gear[i]->bung_mm);
    if (evaluation->lack_count > 0)
        return;
    evaluation->before = order_words(evaluation, &openings);
    evaluation->after = text_format(evaluation->arena,
                                    "%s, where = is nearer than the spread of Cd",
                                    evaluation->before);
    evaluation->sentence = words_fill(evaluation->record->words, evaluation->arena,
                                      WORD_FIGURE_WORST, "openings",
                                      worst_words(evaluation, &openings), NULL);
}

/* ---- openings against pumps ---- */

static bool in_band(const struct openings *openings, size_t index, double pumps,
                    enum pump_band band)
{
    for (size_t i = 0; i < openings->count; i++)
        if (openings->ranked[i].index == index)
            return pump_band(inflow_of(&openings->ranked[i]), pumps) == band;
    return false;
}

/* The tags in one band in the file's order, so that no order is shown; how many entries. */
static size_t band_add(const struct evaluation *evaluation, struct text_builder *out,
                       const struct openings *openings, double pumps, enum pump_band band)
{
    struct text_builder names = text_builder_in(evaluation->arena);
    size_t entries = 0;
    int64_t seals = 0;
    for (size_t index = 0; index < openings->count; index++) {
        if (!in_band(openings, index, pumps, band))
            continue;
        entries++;
        if (is_seal(openings->gear[index]))
            seals += gear_count(openings->gear[index]);
        else
            text_add_format(&names, "%s%s", names.length == 0 ? "" : ", ",
                            gear_tag(openings->gear[index]));
    }
    seals_add(evaluation, &names, seals);
    if (entries > 0)
        text_add(out, names.at);
    return entries;
}

static const char *beat_sentence(const struct evaluation *evaluation,
                                 const struct openings *openings, double pumps)
{
    const struct words *words = evaluation->record->words;
    struct text_builder beat = text_builder_in(evaluation->arena);
    struct text_builder may = text_builder_in(evaluation->arena);
    size_t beating = band_add(evaluation, &beat, openings, pumps, BAND_BEATS);
    size_t doubtful = band_add(evaluation, &may, openings, pumps, BAND_MAY_BEAT);
    if (beating + doubtful == openings->count)
        return words_get(words, WORD_FIGURE_ANY_BEATS);
    if (beating == 0)
        return words_fill(words, evaluation->arena, WORD_FIGURE_MAY_BEAT, "openings", may.at,
                          NULL);
    if (doubtful == 0)
        return words_fill(words, evaluation->arena, WORD_FIGURE_BEATS, "openings", beat.at, NULL);
    return words_fill(words, evaluation->arena, WORD_FIGURE_BEATS_AND_MAY, "openings", beat.at,
                      "others", may.at, NULL);
}

static void bands_tell(struct evaluation *evaluation, const struct openings *openings,
                       double pumps)
{
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    text_add_format(&before, "pumps %s L/min", number_words(evaluation, pumps));
    for (size_t i = 0; i < openings->count; i++)
        text_add_format(&before, ", %s %s L/min", tag_of(openings, &openings->ranked[i]),
                        number_words(evaluation, inflow_of(&openings->ranked[i])));
    text_add(&after, "more than the pumps move: ");
    if (band_add(evaluation, &after, openings, pumps, BAND_BEATS) == 0)
        text_add(&after, "none");
    text_add(&after, "; half of it or more: ");
    if (band_add(evaluation, &after, openings, pumps, BAND_MAY_BEAT) == 0)
        text_add(&after, "none");
    evaluation->before = before.at;
    evaluation->after = after.at;
}

static bool any_beats(const struct openings *openings, double pumps)
{
    return pump_band(inflow_of(&openings->ranked[0]), pumps) != BAND_BELOW;
}

void evaluate_beat_pumps(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    double pumps = openings.count == 0 ? 0.0 : pumps_take(evaluation);
    if (pumps <= 0.0)
        return;
    bands_tell(evaluation, &openings, pumps);
    if (!any_beats(&openings, pumps))
        not_applicable(evaluation, "no opening lets in half of what the pumps move: nothing is "
                                   "said, since it would reassure");
    else
        evaluation->sentence = beat_sentence(evaluation, &openings, pumps);
}

void evaluate_largest_hole(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    double pumps = openings.count == 0 ? 0.0 : pumps_take(evaluation);
    if (pumps <= 0.0)
        return;
    double depth_m = openings.ranked[0].depth_m;
    for (size_t i = 0; i < openings.count; i++)
        depth_m = openings.ranked[i].depth_m > depth_m ? openings.ranked[i].depth_m : depth_m;
    if (depth_m <= 0.0) {
        not_applicable(evaluation, DRY);
        return;
    }
    double bore_mm = largest_hole_mm(pumps, depth_m, CD_OPEN_FITTING);
    evaluation->before = text_format(evaluation->arena, "%s mm at %s m",
                                     number_words(evaluation, bore_mm),
                                     number_words(evaluation, depth_m));
    evaluation->after = text_format(evaluation->arena, "%s mm", down_words(evaluation, bore_mm));
}

/* ---- levels ---- */

/* 0 where the record does not give both: then the boat is taken not to settle. */
static double waterplane_take(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    if (!boat->facts.lwl_m.given || !boat->facts.bwl_m.given)
        return 0.0;
    double lwl_m = boat_number_take(evaluation, "lwl_m", &boat->facts.lwl_m);
    double bwl_m = boat_number_take(evaluation, "bwl_m", &boat->facts.bwl_m);
    return waterplane_m2(lwl_m, bwl_m,
                         boat->catamaran ? WATERPLANE_HULL : WATERPLANE_MONOHULL);
}

static void floor_tell(struct evaluation *evaluation, const struct flooding *flooding,
                       double litres)
{
    double exact = 0.0;
    int minutes = 0;
    bool fills = time_to_level_min(flooding, litres, &exact);
    evaluation->before = fills ? text_format(evaluation->arena, "%s min with the inflow as it is",
                                             number_words(evaluation, exact))
                               : "the pumps hold the inflow as it is";
    if (!time_to_level_printed_min(flooding, litres, &minutes)) {
        evaluation->after = "over 15 min, or never, with twice the inflow";
        not_applicable(evaluation, "over 15 min with twice the inflow: nothing is said, since it "
                                   "would reassure");
        return;
    }
    if (minutes == 1)
        evaluation->sentence = words_get(evaluation->record->words, WORD_FIGURE_FLOOR_ONE);
    else
        evaluation->sentence = words_fill(evaluation->record->words, evaluation->arena,
                                          WORD_FIGURE_FLOOR, "minutes",
                                          text_format(evaluation->arena, "%d", minutes), NULL);
    evaluation->after = text_format(evaluation->arena, "under %d min with twice the inflow",
                                    minutes);
}

void evaluate_floor_wet(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    struct openings openings = openings_take(evaluation);
    if (openings.count == 0 || !pumps_recorded(evaluation))
        return;
    double litres = boat_number_take(evaluation, "bilge_to_sole_l", &boat->facts.bilge_to_sole_l);
    struct flooding flooding = {
        .bore_mm = openings.ranked[0].bore_mm, .depth_m = openings.ranked[0].depth_m,
        .coefficient = CD_OPEN_FITTING, .waterplane_m2 = waterplane_take(evaluation),
        .pumps_lpm = pumps_lpm(evaluation)};
    if (inflow_of(&openings.ranked[0]) <= 0.0)
        not_applicable(evaluation, DRY);
    else if (evaluation->lack_count == 0)
        floor_tell(evaluation, &flooding, litres);
}

void evaluate_sinkage(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    double lwl_m = boat_number_take(evaluation, "lwl_m", &boat->facts.lwl_m);
    double bwl_m = boat_number_take(evaluation, "bwl_m", &boat->facts.bwl_m);
    if (evaluation->lack_count > 0)
        return;
    double area = waterplane_m2(lwl_m, bwl_m,
                                boat->catamaran ? WATERPLANE_HULL : WATERPLANE_MONOHULL);
    evaluation->before = text_format(evaluation->arena, "%s m2, %s kg a cm, %s cm for 1000 L",
                                     number_words(evaluation, area),
                                     number_words(evaluation, immersion_kg_per_cm(area)),
                                     number_words(evaluation, sinkage_cm(SETTLING_LITRES, area)));
    evaluation->after = text_format(evaluation->arena, "%s cm for 1000 L",
                                    up_words(evaluation, sinkage_cm(SETTLING_LITRES, area)));
}
