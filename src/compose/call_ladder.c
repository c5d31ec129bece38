/* call_ladder.c - the ways to be heard, in the order in which they are tried: which of them this
 * boat has, and which the danger that the card is about lets a hand use (room: compose). One table
 * and one walk over it; what is said of each is put together elsewhere. What is not recorded
 * counts as the worse: as out of reach, as in the charger, as a sea where nobody hears VHF. */
#include "call_room.h"

#include "radio.h"

/* A rule of the table: at which place of the order; how far one may go for it; what must be so.
 * Place 0: not there. */
#define AT(place, reach, condition) {(place), REACH_##reach, RUNG_##condition}
#define FREE(place, reach) AT(place, reach, FREE)

/* Columns as CALL_FROM_LIST has them: nothing bars the set, a fire, somebody in the water,
 * vapour, leaving a boat that burns or is full of gas, a boat that goes down, bad air below or
 * a boat upside down, a mast that took the aerial with it. */
#define BY_DANGER(fixed, fire, lost, vapour, leaving, sinking, deck, mast) \
    { \
        [CALL_FROM_FIXED] = fixed, [CALL_FROM_FIXED_IN_FIRE] = fire, \
        [CALL_FROM_DECK_FIRST] = lost, [CALL_FROM_HANDHELD] = vapour, \
        [CALL_FROM_HANDHELD_CARRIED] = leaving, [CALL_FROM_GOING_DOWN] = sinking, \
        [CALL_FROM_ON_DECK] = deck, [CALL_FROM_AERIAL_LOST] = mast \
    }
#define NOT_THERE {0}

static const struct rung_rule rung_rules[MEANS_COUNT][CALL_FROM_COUNT] = {
    [MEANS_RED_KEY] = BY_DANGER(FREE(1, BELOW), AT(1, BELOW, OUTSIDE_SMOKE), FREE(1, BELOW),
                                NOT_THERE, NOT_THERE, FREE(1, BELOW), NOT_THERE,
                                FREE(4, BELOW)),
    [MEANS_SECOND_STATION] = BY_DANGER(FREE(1, DECK), FREE(1, DECK), FREE(1, DECK), NOT_THERE,
                                       AT(2, DECK, CLEAN_AIR), FREE(1, DECK),
                                       AT(2, DECK, UPRIGHT), FREE(4, DECK)),
    [MEANS_FIXED_SET] = BY_DANGER(FREE(2, BELOW), AT(3, BELOW, OUTSIDE_SMOKE), FREE(2, BELOW),
                                  NOT_THERE, AT(3, DECK, CLEAN_AIR), FREE(2, BELOW),
                                  AT(3, DECK, UPRIGHT), AT(4, BELOW, SPARE_AERIAL)),
    [MEANS_HANDHELD_DECK] = BY_DANGER(FREE(3, DECK), FREE(2, DECK), FREE(3, DECK),
                                      AT(1, DECK, UPWIND), AT(1, DECK, UPWIND), FREE(3, DECK),
                                      FREE(1, DECK), FREE(1, DECK)),
    [MEANS_HANDHELD_BELOW] = BY_DANGER(FREE(4, BELOW), FREE(4, COMPANIONWAY), FREE(4, BELOW),
                                       NOT_THERE, AT(3, BELOW, CARRIED), FREE(4, BELOW),
                                       NOT_THERE, FREE(2, BELOW)),
    [MEANS_PHONE] = BY_DANGER(FREE(4, DECK), FREE(4, DECK), FREE(4, DECK), AT(3, DECK, UPWIND),
                              AT(5, DECK, UPWIND), FREE(4, DECK), FREE(4, DECK),
                              FREE(3, DECK)),
    [MEANS_EPIRB] = BY_DANGER(FREE(5, BELOW), FREE(5, COMPANIONWAY), FREE(5, BELOW),
                              AT(4, DECK, UPWIND), AT(4, DECK, WITH_CALL),
                              AT(4, BELOW, WITH_CALL), FREE(5, DECK), FREE(5, BELOW)),
    [MEANS_PERSONAL_BEACON] = BY_DANGER(FREE(5, BELOW), FREE(5, COMPANIONWAY), FREE(5, BELOW),
                                        AT(4, DECK, UPWIND), AT(4, DECK, WITH_CALL),
                                        AT(4, BELOW, WITH_CALL), FREE(5, DECK),
                                        FREE(5, BELOW)),
    [MEANS_FLARES] = BY_DANGER(FREE(6, BELOW), AT(6, COMPANIONWAY, AT_RAIL), FREE(6, BELOW),
                               NOT_THERE, NOT_THERE, FREE(6, BELOW), FREE(6, DECK),
                               FREE(6, BELOW)),
    [MEANS_SART] = BY_DANGER(FREE(7, BELOW), FREE(7, DECK), FREE(7, BELOW), NOT_THERE,
                             AT(7, DECK, IN_RAFT), AT(7, BELOW, IN_RAFT), FREE(7, DECK),
                             FREE(7, BELOW)),
    [MEANS_SIGNALS] = BY_DANGER(FREE(8, DECK), FREE(8, DECK), FREE(8, DECK), FREE(2, DECK),
                                FREE(2, DECK), FREE(8, DECK), FREE(8, DECK), FREE(8, DECK)),
};

enum { RUNG_PLACES_MOST = 8 };

/* Of what kind each is; whether it means that a life or the boat is in grave danger. */
static const struct means_kind {
    enum item_key item;       /* none: no piece of the record */
    bool distress;
} means_kinds[MEANS_COUNT] = {
    [MEANS_RED_KEY] = {ITEM_vhf_dsc, true},
    [MEANS_SECOND_STATION] = {ITEM_vhf_dsc, false},
    [MEANS_FIXED_SET] = {ITEM_vhf_dsc, false},
    [MEANS_HANDHELD_DECK] = {ITEM_vhf_handheld, false},
    [MEANS_HANDHELD_BELOW] = {ITEM_vhf_handheld, false},
    [MEANS_PHONE] = {ITEM_NONE, false},
    [MEANS_EPIRB] = {ITEM_epirb, true},
    [MEANS_PERSONAL_BEACON] = {ITEM_personal_beacon, true},
    [MEANS_FLARES] = {ITEM_flares, true},
    [MEANS_SART] = {ITEM_sart, true},
    [MEANS_SIGNALS] = {ITEM_NONE, false},
};

bool means_is_distress(enum means means)
{
    return means_kinds[means].distress;
}

const struct phrase *second_station_place(struct composing *composing)
{
    const struct gear_spot *station = &composing->in->boat->radio.second_station;
    return station->place_zone == NULL
               ? NULL : place_phrase(composing, station->place_zone, station->place_side,
                                     &station->spot);
}

/* Short: "at the wheel", else zone and side. */
const struct phrase *second_station_named(struct composing *composing)
{
    const struct gear_spot *station = &composing->in->boat->radio.second_station;
    const struct phrase *spot = phrase_text(composing->arena, &station->spot);
    return spot != NULL ? spot : second_station_place(composing);
}

/* ---- pieces ---- */

static bool item_aboard(struct composing *composing, enum item_key item)
{
    struct condition condition = {.kind = CONDITION_FITTED, .item = item,
                                  .place = composing->in->boat->place};
    return condition_judge(composing, &condition) == TRUTH_YES;
}

/* The first piece that is no farther away; NULL: none. */
static const struct equipment *call_piece_within(const struct composing *composing,
                                                 enum item_key item, enum reach most)
{
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_next(composing, item, &index)) != NULL;)
        if (reach_here(composing, gear) <= most)
            return gear;
    return NULL;
}

const struct equipment *call_first_gear(const struct composing *composing, enum item_key item)
{
    size_t index = 0;
    return gear_next(composing, item, &index);
}

/* Flares are asked for where no beacon calls, what only helps is not: of a piece that nobody
 * recorded the panel says nothing, and no card waits for it. */
static bool is_asked(const struct ladder *ladder, enum means means)
{
    if (means == MEANS_FLARES)
        return ladder_rung(ladder, MEANS_EPIRB) == NULL;
    return means != MEANS_PERSONAL_BEACON && means != MEANS_SART;
}

/* The one radio aboard is gone for as far as a fixed set is. */
static const struct equipment *piece_of(struct composing *composing, const struct ladder *ladder,
                                        enum means means, const struct rung_rule *rule)
{
    enum item_key item = means_kinds[means].item;
    if (is_asked(ladder, means) && !item_aboard(composing, item))
        return NULL;
    const struct equipment *near = call_piece_within(composing, item, REACH_DECK);
    if (means == MEANS_HANDHELD_BELOW && near != NULL)
        return NULL;                     /* it is the rung before */
    bool only = means == MEANS_HANDHELD_BELOW && by_handheld_only(composing->in->boat);
    return near != NULL ? near : call_piece_within(composing, item,
                                                   only ? REACH_BELOW : rule->most);
}

/* ---- is it there ---- */

static bool station_on_deck(const struct composing *composing)
{
    const struct zone *zone = composing->in->boat->radio.second_station.place_zone;
    return zone != NULL && zone->level != LEVEL_BELOW;
}

static bool condition_holds(const struct composing *composing, const struct rung_rule *rule)
{
    const struct boat *boat = composing->in->boat;
    if (rule->condition == RUNG_CLEAN_AIR)
        return !vapour_about(composing);
    if (rule->condition == RUNG_UPRIGHT)
        return !lies_inverted(composing);
    return rule->condition != RUNG_IN_RAFT || boat_fitted(boat, ITEM_liferaft) == ANSWER_YES;
}

/* One rung of an item that nobody recorded says so. */
static const struct phrase *draft_phrase(struct composing *composing, const struct ladder *ladder,
                                         enum means means)
{
    bool again = means == MEANS_HANDHELD_BELOW || means == MEANS_RED_KEY;
    return again || !is_asked(ladder, means) ? NULL
                                             : item_unrecorded(composing, means_kinds[means].item);
}

/* Nobody looks for the one that somebody may carry where a set stands on deck in clean air. */
static bool set_suffices(const struct ladder *ladder, const struct rung *rung)
{
    return rung->means == MEANS_HANDHELD_BELOW && rung->rule->condition == RUNG_CARRIED &&
           (ladder_rung(ladder, MEANS_SECOND_STATION) != NULL ||
            ladder_rung(ladder, MEANS_FIXED_SET) != NULL);
}

/* Is it on this ladder? What there is no piece of is there or not by itself. */
static bool rung_made(struct composing *composing, const struct ladder *ladder, struct rung *rung)
{
    const struct boat *boat = composing->in->boat;
    if (set_suffices(ladder, rung))
        return false;
    if (rung->means == MEANS_PHONE)
        return !text_empty(composing->in->base->centre_phone.text);
    if (rung->means == MEANS_SIGNALS)
        return true;
    if (rung->means == MEANS_SECOND_STATION)
        return item_aboard(composing, ITEM_vhf_dsc) && station_on_deck(composing);
    rung->gear = piece_of(composing, ladder, rung->means, rung->rule);
    if (rung->gear == NULL) {
        rung->drafted = draft_phrase(composing, ladder, rung->means);
        return rung->drafted != NULL;
    }
    return rung->means != MEANS_RED_KEY || dsc_ready(boat);
}

static void rung_try(struct composing *composing, struct ladder *ladder, enum means means)
{
    const struct rung_rule *rule = &rung_rules[means][ladder->calling->from];
    struct rung rung = {.means = means, .rule = rule};
    if (means_is_distress(means) && !ladder->calling->mayday)
        return;
    if (condition_holds(composing, rule) && rung_made(composing, ladder, &rung))
        ladder->rungs[ladder->count++] = rung;
}

struct ladder ladder_make(struct composing *composing, const struct calling *calling)
{
    struct ladder ladder = {.calling = calling};
    for (int place = 1; place <= RUNG_PLACES_MOST; place++)
        for (enum means means = 0; means < MEANS_COUNT; means++)
            if (rung_rules[means][calling->from].place == place)
                rung_try(composing, &ladder, means);
    return ladder;
}

const struct rung *ladder_rung(const struct ladder *ladder, enum means means)
{
    for (size_t i = 0; i < ladder->count; i++)
        if (ladder->rungs[i].means == means)
            return &ladder->rungs[i];
    return NULL;
}

bool is_voice(enum means means)
{
    return means == MEANS_SECOND_STATION || means == MEANS_FIXED_SET || is_handheld(means);
}

bool is_handheld(enum means means)
{
    return means == MEANS_HANDHELD_DECK || means == MEANS_HANDHELD_BELOW;
}

bool set_is_first(const struct calling *calling)
{
    return rung_rules[MEANS_RED_KEY][calling->from].place > 0;
}

/* Is there a handheld that has its aerial, while the set may have none? */
static bool aerial_lost_to(const struct ladder *ladder)
{
    const struct rung *near = ladder_rung(ladder, MEANS_HANDHELD_DECK);
    const struct rung *far = ladder_rung(ladder, MEANS_HANDHELD_BELOW);
    return ladder->calling->from == CALL_FROM_AERIAL_LOST &&
           ((near != NULL && near->drafted == NULL) || (far != NULL && far->drafted == NULL));
}

/* The fixed set before all others, where the danger leaves it to be worked: it has the farthest
 * voice and the key. Else the first that one speaks by. */
const struct rung *ladder_worked(const struct ladder *ladder)
{
    const struct rung *set = ladder_rung(ladder, MEANS_FIXED_SET);
    if (set != NULL && set->drafted == NULL && set_is_first(ladder->calling) &&
        !aerial_lost_to(ladder))
        return set;
    for (size_t i = 0; i < ladder->count; i++)
        if (is_voice(ladder->rungs[i].means) &&
            (ladder->rungs[i].drafted == NULL || is_handheld(ladder->rungs[i].means)))
            return &ladder->rungs[i];
    return NULL;
}
