/* openings.c - the openings in the hull of one boat: read from the record, ranked by what
 * they let in, and named for a card (room: figure). Never says what that does to her. */
#include "openings.h"

#include "capacity.h"

static void openings_add(struct evaluation *evaluation, struct openings *openings,
                         enum item_key item)
{
    size_t index = 0;
    for (const struct equipment *gear;
         (gear = gear_of(evaluation->record->boat, item, &index)) != NULL;) {
        double bore_mm = gear_number_take(evaluation, gear, GEAR_bore_mm);
        double depth_m = gear_number_take(evaluation, gear, GEAR_depth_m);
        openings->gear[openings->count] = gear;
        openings->ranked[openings->count] = (struct ranked_opening){
            .bore_mm = bore_mm, .depth_m = depth_m, .index = openings->count};
        openings->count++;
    }
}

struct openings openings_take(struct evaluation *evaluation)
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

double opening_inflow_lpm(const struct ranked_opening *opening)
{
    return inflow_lpm(opening->bore_mm, opening->depth_m, CD_OPEN_FITTING);
}

bool is_seal(const struct equipment *gear)
{
    return gear->item.value == ITEM_shaft_seal;
}

const char *opening_tag(const struct equipment *gear)
{
    return gear->tag.text == NULL ? gear->kind->key : gear->tag.text;
}

/* ---- names ---- */

struct opening_names names_begin(const struct evaluation *evaluation,
                                 const struct openings *openings)
{
    return (struct opening_names){
        .at = arena_array(evaluation->arena, openings->count + 1, sizeof(struct phrase *))};
}

void name_add(const struct evaluation *evaluation, struct opening_names *names,
              const struct equipment *gear)
{
    if (is_seal(gear))
        names->seals += gear_count(gear);
    else
        names->at[names->count++] = phrase_verbatim(evaluation->arena, opening_tag(gear));
}

const struct phrase *names_listed(const struct evaluation *evaluation,
                                  struct opening_names *names)
{
    if (names->seals > 0)
        names->at[names->count++] = phrase_counted(evaluation->arena, WORD_FIGURE_SEALS,
                                                   (uint64_t)names->seals, NULL);
    return phrase_list(evaluation->arena, WORD_JOIN_COMMA, names->at, names->count);
}
