/* gear_traits.c - what a boat is by her gear: a piece that she would not have without it, or one
 * that is large enough (room: record). Three answers: yes, no, and not recorded. */
#include "record.h"

struct trait_fact trait_by_gear(const struct boat *boat, enum item_key item)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].item.value == item)
            return (struct trait_fact){ANSWER_YES, boat->equipment[i].place};
    const struct absence *absence = boat_absence(boat, item, ZONE_NONE);
    return (struct trait_fact){fitted_as_recorded(boat, item),
                               absence != NULL ? absence->place : boat->place};
}

/* Of several dinghies one must hold all: they are not launched together. */
struct trait_fact trait_dinghy_for_all(const struct boat *boat)
{
    const struct number_value *most = &boat->facts.persons_max;
    struct trait_fact holds = trait_by_gear(boat, ITEM_dinghy);
    if (holds.recorded == ANSWER_YES)
        holds.recorded = ANSWER_NO;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->item.value != ITEM_dinghy)
            continue;
        if (!gear->persons.given || !most->given)
            holds = (struct trait_fact){ANSWER_NOT_RECORDED, gear->place};
        else if (gear->persons.milli >= most->milli)
            return (struct trait_fact){ANSWER_YES, gear->place};
    }
    return holds;
}

/* One pair that is thick enough is enough: nobody takes the other. */
struct trait_fact trait_cutters_fit(const struct boat *boat)
{
    const struct number_value *wire = &boat->facts.thickest_wire_mm;
    struct trait_fact fit = trait_by_gear(boat, ITEM_bolt_cutters);
    if (fit.recorded == ANSWER_YES)
        fit.recorded = ANSWER_NO;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->item.value != ITEM_bolt_cutters)
            continue;
        if (!gear->cuts_mm.given || !wire->given)
            fit = (struct trait_fact){ANSWER_NOT_RECORDED, gear->place};
        else if (gear->cuts_mm.milli >= wire->milli)
            return (struct trait_fact){ANSWER_YES, gear->cuts_mm.place};
    }
    return fit;
}
