/* call_operate.c - the left side of the call panel, put together of the rungs of its ladder: what
 * is tried first, the radio that is spoken by, what stands for it, what else calls for help
 * (room: compose). Never says what is to be said. */
#include "call_room.h"

/* Zone and side: the spot stands on the gear's own row and on the plan. */
const struct phrase *call_gear(struct composing *composing, enum word word,
                               const struct equipment *gear)
{
    marker_add(composing, gear);
    return phrase_word(composing->arena, word, "tag",
                       phrase_verbatim(composing->arena, gear->tag.text), "place",
                       gear_place_phrase(composing, gear, NULL), NULL);
}

const struct phrase *for_mayday(struct composing *composing, const struct calling *calling,
                                const struct phrase *line)
{
    return calling->other ? phrase_word(composing->arena, WORD_MAYDAY_ONLY, "what", line, NULL)
                          : line;
}

/* ---- what is tried before the set, without leaving the deck ---- */

/* The words before it: whom or when it is for. */
static enum word before_word(const struct ladder *ladder)
{
    if (ladder->calling->from == CALL_FROM_FIXED_IN_FIRE)
        return WORD_SET_SMOKE_FIRST;
    return ladder->calling->from == CALL_FROM_DECK_FIRST ? WORD_SET_ALONE : WORD_SET_FIRST;
}

static const struct phrase *named_with_place(struct composing *composing, const struct rung *rung)
{
    if (rung->means == MEANS_SECOND_STATION)
        return phrase_word(composing->arena, WORD_SECOND_NAMED, "place",
                           second_station_named(composing), NULL);
    return call_gear(composing, WORD_HANDHELD_NAMED, rung->gear);
}

/* Is it tried before the radio that is worked? On deck with one to be watched also a handheld
 * that would else be later. */
static bool goes_before(const struct ladder *ladder, const struct rung *rung,
                        const struct rung *worked)
{
    bool deck = rung->means == MEANS_SECOND_STATION || rung->means == MEANS_HANDHELD_DECK;
    return rung != worked && deck && rung->drafted == NULL && worked != NULL &&
           worked->means == MEANS_FIXED_SET &&
           (rung->rule->place < worked->rule->place ||
            ladder->calling->from == CALL_FROM_DECK_FIRST);
}

/* All of them on one line; who has to watch takes the first. */
static bool before_lines(struct composing *composing, struct call_lines *lines,
                         const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    const struct phrase *named[MEANS_COUNT] = {NULL};
    bool handheld = false;
    size_t count = 0;
    for (size_t i = 0; i < ladder->count; i++) {
        if (!goes_before(ladder, &ladder->rungs[i], worked) ||
            (count > 0 && ladder->calling->from == CALL_FROM_DECK_FIRST))
            continue;
        named[count++] = named_with_place(composing, &ladder->rungs[i]);
        handheld = handheld || is_handheld(ladder->rungs[i].means);
    }
    if (count > 0)
        call_line_add(composing, lines,
                      phrase_word(composing->arena, before_word(ladder), "means",
                                  phrase_list(composing->arena, WORD_JOIN_DOT, named, count),
                                  NULL), composing->in->boat->place);
    return handheld;
}

/* ---- where the set cannot be worked ---- */

static enum word cause_word(const struct calling *calling)
{
    if (calling->apart)
        return WORD_CAUSE_ANY;
    return calling->from == CALL_FROM_FIXED_IN_FIRE ? WORD_CAUSE_SMOKE : WORD_CAUSE_WATER;
}

/* Where a milder call stands beside the graver, no key is named that is not said to be for the
 * graver alone. */
static const struct phrase *handheld_used(struct composing *composing,
                                          const struct ladder *ladder, const struct rung *rung)
{
    bool key = !ladder->calling->other && handheld_alerts(ladder, rung->gear);
    if (rung->drafted != NULL)
        return rung->drafted;
    return call_gear(composing, key ? WORD_USE_HANDHELD_KEY : WORD_USE_HANDHELD, rung->gear);
}

/* A handheld that is no farther than the companionway. */
static const struct rung *handheld_near(const struct composing *composing,
                                        const struct ladder *ladder)
{
    const struct rung *rung = ladder_rung(ladder, MEANS_HANDHELD_DECK);
    if (rung != NULL)
        return rung;
    rung = ladder_rung(ladder, MEANS_HANDHELD_BELOW);
    return rung != NULL && reach_here(composing, rung->gear) <= REACH_COMPANIONWAY ? rung : NULL;
}

/* Nobody goes through smoke or water for another radio. */
static void instead_line(struct composing *composing, struct call_lines *lines,
                         const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder), *near = handheld_near(composing, ladder);
    if (near != NULL && near == worked)
        return;
    const struct phrase *act = near != NULL ? handheld_used(composing, ladder, near)
                                            : word_alone(composing, WORD_GO_ON_DECK);
    call_line_put(composing, lines->after,
                  phrase_word(composing->arena, cause_word(ladder->calling), "act", act, NULL),
                  near != NULL && near->gear != NULL ? near->gear->place
                                                     : composing->in->boat->place);
}

/* ---- the panel's left side ---- */

bool stands_in_smoke(const struct composing *composing, const struct ladder *ladder,
                     const struct rung *rung)
{
    return ladder->calling->from == CALL_FROM_FIXED_IN_FIRE && rung != NULL &&
           rung->gear != NULL && reach_here(composing, rung->gear) > REACH_DECK;
}

/* What one has to leave the deck for in a fire stands under words that hold people back. */
static void smoke_line(struct composing *composing, struct call_lines *lines,
                       const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    if (stands_in_smoke(composing, ladder, worked))
        call_word_add(composing, lines, WORD_SET_OUTSIDE_SMOKE, worked->gear->place);
}

/* Where there is no fixed set to be worked, that comes first: it is not looked for. */
static void no_set_line(struct composing *composing, struct call_lines *lines,
                        const struct ladder *ladder)
{
    const struct rung *set = ladder_rung(ladder, MEANS_FIXED_SET);
    if (set != NULL && set->drafted != NULL)
        call_line_add(composing, lines, set->drafted, composing->in->boat->radio_place);
    else if (by_handheld_only(composing->in->boat))
        call_word_add(composing, lines, WORD_SET_NO_FIXED, composing->in->boat->radio_place);
}

static void set_lines(struct composing *composing, struct call_lines *lines,
                      const struct ladder *ladder)
{
    bool handheld = before_lines(composing, lines, ladder);
    no_set_line(composing, lines, ladder);
    smoke_line(composing, lines, ladder);
    worked_lines(composing, lines, ladder);
    if (!handheld && ladder->calling->from != CALL_FROM_DECK_FIRST)
        instead_line(composing, lines, ladder);
}

/* Where the smoke or the vapour is not, or on deck above bad air. */
static enum word other_way_word(const struct ladder *ladder)
{
    return ladder->calling->from == CALL_FROM_ON_DECK ? WORD_ON_DECK_TOO : WORD_CLEAR_OF_SMOKE;
}

/* From a handheld on deck; where nothing aboard gives vapour, the set on deck is another way. */
static void deck_lines(struct composing *composing, struct call_lines *lines,
                       const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    const struct rung *set = ladder_rung(ladder, MEANS_FIXED_SET);
    const struct rung *station = ladder_rung(ladder, MEANS_SECOND_STATION);
    worked_lines(composing, lines, ladder);
    if (station != NULL && station != worked)
        call_line_add(composing, lines,
                      phrase_word(composing->arena, other_way_word(ladder), "means",
                                  named_with_place(composing, station), NULL),
                      composing->in->boat->radio.second_station.section.place);
    if (set != NULL && set != worked && set->drafted == NULL)
        call_line_add(composing, lines,
                      phrase_word(composing->arena, other_way_word(ladder), "means",
                                  call_gear(composing, WORD_RADIO_NAMED, set->gear), NULL),
                      set->gear->place);
}

/* Above bad air a second handset is the set's own. */
static bool spoken_from_deck(const struct ladder *ladder)
{
    return ladder->calling->from == CALL_FROM_ON_DECK &&
           ladder_rung(ladder, MEANS_SECOND_STATION) != NULL;
}

/* It stays as it is, where it cannot be worked from deck in clean air. */
static void untouched_line(struct composing *composing, struct call_lines *lines,
                           const struct ladder *ladder)
{
    if (!by_handheld_only(composing->in->boat) && !set_is_first(ladder->calling) &&
        !lies_inverted(composing) && ladder_rung(ladder, MEANS_FIXED_SET) == NULL &&
        !spoken_from_deck(ladder))
        call_word_add(composing, lines, WORD_SET_LEAVE_FIXED, composing->in->boat->place);
}

/* What the set's own panel says, a line each. */
struct operating operate_lines(struct composing *composing, const struct ladder *ladder)
{
    struct call_line_list after = {0};
    struct call_lines lines = {.after = &after};
    if (!ladder->calling->apart)
        lines.after = &lines.all;
    if (!ladder->calling->can_call)
        no_radio_lines(composing, &lines, ladder);
    else if (set_is_first(ladder->calling))
        set_lines(composing, &lines, ladder);
    else
        deck_lines(composing, &lines, ladder);
    untouched_line(composing, &lines, ladder);
    if (ladder->calling->can_call)
        no_answer_lines(composing, &lines, ladder);
    return (struct operating){lines.all.at, lines.acts.at, after.at, lines.all.count,
                              lines.acts.count, after.count, lines.act_first, lines.yielding};
}
