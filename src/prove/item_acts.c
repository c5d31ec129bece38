/* item_acts.c - what working a piece of gear makes (room: prove). What is not recorded of it
 * counts as the worse. */
#include "prove_room.h"

#include "item_act_list.h"
#include "item_states.h"

enum act_when {
    WHENEVER, IF_ELECTRIC, IF_CUTS_RADIO, IF_CUTS_PUMPS, IF_FEEDS_PUMPS, IF_WET, IF_NOT_OPEN_DECK
};

#define ITEM_ACT_ROW(item, state, act, when) {ITEM_##item, STATE_##state, ACT_##act, when},
static const struct item_act {
    enum item_key item;
    enum end_state state;
    enum act act;
    enum act_when when;
} item_act_rows[] = {ITEM_ACT_LIST(ITEM_ACT_ROW)};
#undef ITEM_ACT_ROW

/* May an electric bilge pump of hers live on 230 V? */
static bool pumps_on_mains(const struct boat *boat)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].item.value == ITEM_bilge_pump_electric &&
            boat->equipment[i].fed_by.value != FEED_BATTERY)
            return true;
    return false;
}

/* An agent that carries current, or none that is recorded. */
static bool is_wet(const struct equipment *gear)
{
    enum agent agent = gear->agent.value;
    return agent != AGENT_POWDER && agent != AGENT_CO2 && agent != AGENT_CLEAN;
}

static bool act_holds(const struct boat *boat, const struct equipment *gear, enum act_when when)
{
    switch (when) {
    case WHENEVER:
        return true;
    case IF_ELECTRIC:
        return gear->stop.value != STOP_MECHANICAL;
    case IF_CUTS_RADIO:
        return gear_cuts(gear, ITEM_vhf_dsc) && boat_fitted(boat, ITEM_vhf_dsc) != ANSWER_NO;
    case IF_CUTS_PUMPS:
        return gear_cuts(gear, ITEM_bilge_pump_electric) &&
               boat_fitted(boat, ITEM_bilge_pump_electric) != ANSWER_NO;
    case IF_FEEDS_PUMPS:
        return pumps_on_mains(boat);
    case IF_WET:
        return is_wet(gear);
    case IF_NOT_OPEN_DECK:
        return gear_reach(gear) != REACH_OPEN_DECK;
    }
    return true;
}

void item_acts(const struct boat *boat, const struct equipment *gear, enum end_state state,
               act_found *found, void *context)
{
    enum item_key item = gear->item.value;
    enum end_state wanted = state == STATE_ANY ? item_use(item) : state;
    for (size_t i = 0; i < sizeof item_act_rows / sizeof *item_act_rows; i++) {
        const struct item_act *row = &item_act_rows[i];
        bool fits = row->state == STATE_ANY ? wanted != STATE_LEAVE : row->state == wanted;
        if (row->item == item && fits && act_holds(boat, gear, row->when))
            found(context, row->act);
    }
}
