/* evaluate_flooding.c - the openings of one boat, and what they do to her (room:
 * figure). Never says that the pumps cope. */
#include "openings.h"

#include "capacity.h"

#define SETTLING_LITRES 1000.0
#define DRY "no opening lies below the water"

static const char *tag_of(const struct openings *openings, const struct ranked_opening *opening)
{
    return opening_tag(openings->gear[opening->index]);
}

void evaluate_inflow(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    for (size_t i = 0; i < openings.count; i++) {
        const char *tag = tag_of(&openings, &openings.ranked[i]);
        double lpm = opening_inflow_lpm(&openings.ranked[i]);
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

/* Those with this bung that no earlier one has shown. */
static bool bung_told(const struct openings *openings, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (in_worst(openings, i) && !is_seal(openings->gear[i]) &&
            openings->gear[i]->bung_mm.milli == openings->gear[index]->bung_mm.milli)
            return true;
    return false;
}

/* "C13, C15 (bung 38 mm)": the worst with the same bung as this one. */
static const struct phrase *bung_group(const struct evaluation *evaluation,
                                       const struct openings *openings, size_t first)
{
    const struct number_value *bung = &openings->gear[first]->bung_mm;
    struct opening_names names = names_begin(evaluation, openings);
    for (size_t i = first; i < openings->count; i++)
        if (in_worst(openings, i) && !is_seal(openings->gear[i]) &&
            openings->gear[i]->bung_mm.milli == bung->milli)
            name_add(evaluation, &names, openings->gear[i]);
    return phrase_word(evaluation->arena, WORD_FIGURE_BUNG, "openings",
                       names_listed(evaluation, &names), "size",
                       phrase_verbatim(evaluation->arena, bung->text), NULL);
}

/* "C13, C15 (bung 38 mm), C27 (bung 32 mm), shaft seal": the worst by the bung that
 * fits. */
static const struct phrase *worst_listed(const struct evaluation *evaluation,
                                         const struct openings *openings)
{
    struct opening_names names = names_begin(evaluation, openings);
    for (size_t i = 0; i < openings->count; i++) {
        if (!in_worst(openings, i))
            continue;
        if (is_seal(openings->gear[i]))
            name_add(evaluation, &names, openings->gear[i]);
        else if (!bung_told(openings, i))
            names.at[names.count++] = bung_group(evaluation, openings, i);
    }
    return names_listed(evaluation, &names);
}

void evaluate_worst_openings(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    if (openings.count == 0 || evaluation->lack_count > 0)
        return;
    if (opening_inflow_lpm(&openings.ranked[0]) <= 0.0) {
        not_applicable(evaluation, DRY);
        return;
    }
    for (size_t i = 0; i < openings.count; i++)
        if (in_worst(&openings, i) && !is_seal(openings.gear[i]))
            gear_number_take(evaluation, openings.gear[i], GEAR_bung_mm);
    if (evaluation->lack_count > 0)
        return;
    evaluation->before = order_words(evaluation, &openings);
    evaluation->after = text_format(evaluation->arena,
                                    "%s, where = is nearer than the spread of Cd",
                                    evaluation->before);
    evaluation->sentence = phrase_word(evaluation->arena, WORD_FIGURE_WORST, "openings",
                                       worst_listed(evaluation, &openings), NULL);
}

/* ---- openings against pumps ---- */

static bool in_band(const struct openings *openings, size_t index, double pumps,
                    enum pump_band band)
{
    for (size_t i = 0; i < openings->count; i++)
        if (openings->ranked[i].index == index)
            return pump_band(opening_inflow_lpm(&openings->ranked[i]), pumps) == band;
    return false;
}

/* Those in one band, in the file's order, so that no order is shown. */
static const struct phrase *band_listed(const struct evaluation *evaluation,
                                        const struct openings *openings, double pumps,
                                        enum pump_band band)
{
    struct opening_names names = names_begin(evaluation, openings);
    for (size_t index = 0; index < openings->count; index++)
        if (in_band(openings, index, pumps, band))
            name_add(evaluation, &names, openings->gear[index]);
    return names_listed(evaluation, &names);
}

static size_t band_size(const struct openings *openings, double pumps, enum pump_band band)
{
    size_t entries = 0;
    for (size_t index = 0; index < openings->count; index++)
        entries += in_band(openings, index, pumps, band) ? 1 : 0;
    return entries;
}

static const struct phrase *beat_sentence(const struct evaluation *evaluation,
                                          const struct openings *openings, double pumps)
{
    struct arena *arena = evaluation->arena;
    size_t beating = band_size(openings, pumps, BAND_BEATS);
    size_t doubtful = band_size(openings, pumps, BAND_MAY_BEAT);
    const struct phrase *beat = band_listed(evaluation, openings, pumps, BAND_BEATS);
    const struct phrase *may = band_listed(evaluation, openings, pumps, BAND_MAY_BEAT);
    if (beating + doubtful == openings->count)
        return phrase_word(arena, WORD_FIGURE_ANY_BEATS, NULL);
    if (beating == 0)
        return phrase_word(arena, WORD_FIGURE_MAY_BEAT, "openings", may, NULL);
    if (doubtful == 0)
        return phrase_word(arena, WORD_FIGURE_BEATS, "openings", beat, NULL);
    return phrase_word(arena, WORD_FIGURE_BEATS_AND_MAY, "openings", beat, "others", may, NULL);
}

/* The same for the base; a seal without a tag by its key. */
static void band_tell(struct text_builder *out, const struct openings *openings, double pumps,
                      enum pump_band band)
{
    bool any = false;
    for (size_t index = 0; index < openings->count; index++) {
        if (!in_band(openings, index, pumps, band))
            continue;
        text_add_format(out, "%s%s", any ? ", " : "", opening_tag(openings->gear[index]));
        any = true;
    }
    text_add(out, any ? "" : "none");
}

static void bands_tell(struct evaluation *evaluation, const struct openings *openings,
                       double pumps)
{
    struct text_builder before = text_builder_in(evaluation->arena);
    struct text_builder after = text_builder_in(evaluation->arena);
    text_add_format(&before, "pumps %s L/min", number_words(evaluation, pumps));
    for (size_t i = 0; i < openings->count; i++)
        text_add_format(&before, ", %s %s L/min", tag_of(openings, &openings->ranked[i]),
                        number_words(evaluation, opening_inflow_lpm(&openings->ranked[i])));
    text_add(&after, "more than the pumps move: ");
    band_tell(&after, openings, pumps, BAND_BEATS);
    text_add(&after, "; half of it or more: ");
    band_tell(&after, openings, pumps, BAND_MAY_BEAT);
    evaluation->before = before.at;
    evaluation->after = after.at;
}

static bool any_beats(const struct openings *openings, double pumps)
{
    return pump_band(opening_inflow_lpm(&openings->ranked[0]), pumps) != BAND_BELOW;
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
    double lwl_m = boat_number_take(evaluation, BOAT_lwl_m);
    double bwl_m = boat_number_take(evaluation, BOAT_bwl_m);
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
    evaluation->sentence = phrase_counted(evaluation->arena, WORD_FIGURE_FLOOR,
                                          (uint64_t)minutes, "minutes",
                                          phrase_number(evaluation->arena, minutes), NULL);
    evaluation->after = text_format(evaluation->arena, "under %d min with twice the inflow",
                                    minutes);
}

void evaluate_floor_wet(struct evaluation *evaluation)
{
    struct openings openings = openings_take(evaluation);
    if (openings.count == 0 || !pumps_recorded(evaluation))
        return;
    double litres = boat_number_take(evaluation, BOAT_bilge_to_sole_l);
    struct flooding flooding = {
        .bore_mm = openings.ranked[0].bore_mm, .depth_m = openings.ranked[0].depth_m,
        .coefficient = CD_OPEN_FITTING, .waterplane_m2 = waterplane_take(evaluation),
        .pumps_lpm = pumps_lpm(evaluation)};
    if (opening_inflow_lpm(&openings.ranked[0]) <= 0.0)
        not_applicable(evaluation, DRY);
    else if (evaluation->lack_count == 0)
        floor_tell(evaluation, &flooding, litres);
}

void evaluate_sinkage(struct evaluation *evaluation)
{
    const struct boat *boat = evaluation->record->boat;
    double lwl_m = boat_number_take(evaluation, BOAT_lwl_m);
    double bwl_m = boat_number_take(evaluation, BOAT_bwl_m);
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
