/* brief_short.c - what a charter is short of: people that the boat may carry, lifejackets, raft
 * places, a radio (room: compose). Gear that is past its date before the boat is back, and gear
 * whose date nobody recorded, is not counted. The arithmetic is src/figure's. */
#include "brief_room.h"

#include "capacity.h"

enum { A_THOUSAND = 1000 };

/* Gear of the boat, all of it or that which lasts. */
struct counted_gear {
    const struct equipment *rows;
    size_t count;
};

void stopper_add(struct briefing *briefing, struct stoppers *stoppers,
                 const struct stopper *stopper, const char *remedy, const char *message)
{
    struct composing *composing = &briefing->writer.composing;
    stoppers->rows = arena_grow(composing->arena, stoppers->rows, stoppers->count,
                                &stoppers->room, sizeof *stoppers->rows);
    stoppers->rows[stoppers->count++] = *stopper;
    problem_add(composing->problems, SEVERITY_DEFICIENCY, stopper->origin, remedy, "%s%s", message,
                stopper->grave ? ": do not sail without the base's word" : "");
}

bool gear_lasts(const struct briefing *briefing, const struct equipment *gear)
{
    struct gear_date date;
    gear_date(gear, briefing->writer.composing.in->base, &date);
    return !charter_outcome_fails(charter_outcome(&date, &briefing->hire->days), date.rule);
}

static struct counted_gear gear_all(const struct briefing *briefing)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    return (struct counted_gear){boat->equipment, boat->equipment_count};
}

static struct counted_gear gear_lasting(const struct briefing *briefing)
{
    const struct counted_gear all = gear_all(briefing);
    struct equipment *rows = arena_array(briefing->writer.composing.arena, all.count,
                                         sizeof *rows);
    size_t count = 0;
    for (size_t i = 0; i < all.count; i++)
        if (gear_lasts(briefing, &all.rows[i]))
            rows[count++] = all.rows[i];
    return (struct counted_gear){rows, count};
}

static const struct equipment *first_piece(const struct briefing *briefing, enum item_key item)
{
    const struct counted_gear all = gear_all(briefing);
    for (size_t i = 0; i < all.count; i++)
        if (all.rows[i].kind->item == item)
            return &all.rows[i];
    return NULL;
}

/* Of the first piece, else of what says that there is none, else of the boat. */
static struct place item_place(const struct briefing *briefing, enum item_key item)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct equipment *first = first_piece(briefing, item);
    const struct absence *absence = boat_absence(boat, item, ZONE_NONE);
    if (first != NULL)
        return first->place;
    return absence == NULL ? boat->place : absence->place;
}

/* So many places or lifejackets, for so many people. */
static const struct phrase *counted_said(const struct briefing *briefing, enum word word,
                                         int64_t counted, size_t people)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct phrase *number = phrase_number(arena, counted);
    return phrase_word(arena, word, "people", brief_number(briefing, people), "places", number,
                       "jackets", number, "to",
                       brief_day(briefing, briefing->hire->days.end), NULL);
}

static const char *counted_message(const struct briefing *briefing, const char *what,
                                   int64_t counted, const char *of, size_t people)
{
    struct arena *arena = briefing->writer.composing.arena;
    return text_format(arena, "%s: %lld, %s: %zu", what, (long long)counted, of, people);
}

/* ---- people ---- */

static void people_find(struct briefing *briefing, struct stoppers *stoppers)
{
    const struct number_value *most = &briefing->writer.composing.in->boat->facts.persons_max;
    struct arena *arena = briefing->writer.composing.arena;
    const struct hire *hire = briefing->hire;
    if (!most->given || (int64_t)hire->people * A_THOUSAND <= most->milli)
        return;
    stopper_add(briefing, stoppers,
                &(struct stopper){
                    .said = phrase_word(arena, WORD_BRIEF_TOO_MANY, "people",
                                        brief_number(briefing, hire->people), "most",
                                        phrase_verbatim(arena, most->text), NULL),
                    .origin = most->place, .grave = true},
                "fewer people, or another boat: persons_max is what her papers allow",
                text_format(arena, "%zu people for a boat that may carry %s", hire->people,
                            most->text));
}

/* ---- what is not there at all ---- */

/* Nothing of that kind counts: it is not fitted, or not recorded. */
struct absent_words {
    enum word none, unknown;
    const char *what;
};

static bool none_found(struct briefing *briefing, struct stoppers *stoppers, enum item_key item,
                       const struct absent_words *words)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    struct arena *arena = briefing->writer.composing.arena;
    enum answer fitted = boat_fitted(boat, item);
    if (fitted == ANSWER_YES)
        return false;
    stopper_add(briefing, stoppers,
                &(struct stopper){.said = counted_said(briefing,
                                                       fitted == ANSWER_NO ? words->none
                                                                           : words->unknown,
                                                       0, briefing->hire->people),
                                  .origin = item_place(briefing, item), .grave = true},
                "bring what is missing, or record it in the boat's file where it is on board",
                text_format(arena, fitted == ANSWER_NO ? "no %s on board" : "no %s recorded",
                            words->what));
    return true;
}

/* ---- raft ---- */

static void raft_unsaid_find(struct briefing *briefing, struct stoppers *stoppers)
{
    const struct counted_gear all = gear_all(briefing);
    struct arena *arena = briefing->writer.composing.arena;
    for (size_t i = 0; i < all.count; i++) {
        const struct equipment *raft = &all.rows[i];
        if (raft->kind->item != ITEM_liferaft || raft->persons.given)
            continue;
        stopper_add(briefing, stoppers,
                    &(struct stopper){
                        .gear = raft, .origin = raft->place, .grave = true,
                        .said = phrase_word(arena, WORD_BRIEF_RAFT_UNSAID, "gear",
                                            brief_gear(briefing, raft), "place",
                                            brief_where(briefing, raft), NULL)},
                    "read it off the raft, and write persons:",
                    text_format(arena, "for how many raft %s is, is not recorded",
                                TEXT_OR_EMPTY(raft->tag)));
    }
}

/* A raft whose places nobody recorded has none. */
static void raft_find(struct briefing *briefing, struct stoppers *stoppers)
{
    static const struct absent_words words = {WORD_BRIEF_RAFT_NONE, WORD_BRIEF_RAFT_UNKNOWN,
                                              "raft"};
    const struct counted_gear all = gear_all(briefing), good = gear_lasting(briefing);
    size_t people = briefing->hire->people;
    struct raft_capacity raft = raft_capacity(all.rows, all.count, (int64_t)people);
    struct raft_capacity lasting = raft_capacity(good.rows, good.count, (int64_t)people);
    if (none_found(briefing, stoppers, ITEM_liferaft, &words))
        return;
    if (!lasting.enough) {
        bool dated = lasting.places < raft.places;
        const char *what = dated ? "raft places good to the last day" : "raft places";
        enum word word = dated ? WORD_BRIEF_RAFT_DATED : WORD_BRIEF_RAFT_FEW;
        stopper_add(briefing, stoppers,
                    &(struct stopper){.said = counted_said(briefing, word, lasting.places, people),
                                      .origin = item_place(briefing, ITEM_liferaft),
                                      .grave = true},
                    "a larger raft or a second one: each person counts, infants too",
                    counted_message(briefing, what, lasting.places, "people aboard", people));
    }
    raft_unsaid_find(briefing, stoppers);
}

/* ---- lifejackets ---- */

/* What is counted of them, for whom. */
struct jacket_lack {
    enum word word;
    const char *what, *of;
    int64_t all, lasting;       /* of all jackets, and of those that last */
    size_t people;
    int64_t unsized;            /* jackets that fit nobody, since their size is not recorded */
};

/* False: there are enough. */
static bool jackets_short(struct briefing *briefing, struct stoppers *stoppers,
                          const struct jacket_lack *lack)
{
    struct arena *arena = briefing->writer.composing.arena;
    bool dated = lack->lasting < lack->all;
    if (lack->lasting >= (int64_t)lack->people)
        return false;
    const struct phrase *said = counted_said(briefing, lack->word, lack->lasting, lack->people);
    if (dated)
        said = phrase_word(arena, WORD_BRIEF_JACKETS_DATED, "jackets", said, "to",
                           brief_day(briefing, briefing->hire->days.end), NULL);
    if (lack->unsized > 0)
        said = phrase_joined(arena, WORD_JOIN_SPACE, said,
                             phrase_word(arena, WORD_BRIEF_JACKETS_UNSIZED, "jackets",
                                         phrase_number(arena, lack->unsized), NULL), NULL);
    stopper_add(briefing, stoppers,
                &(struct stopper){.said = said, .origin = item_place(briefing, ITEM_lifejacket),
                                  .grave = true},
                "bring more, or correct count:, wearer:, kg_low: and kg_high: of the entries",
                counted_message(briefing,
                                dated ? text_format(arena, "%s good to the last day", lack->what)
                                      : lack->what,
                                lack->lasting, lack->of, lack->people));
    return true;
}

/* How many of the people have one that fits. */
static int64_t jackets_fitting(const struct briefing *briefing, const struct counted_gear *gear)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct hire *hire = briefing->hire;
    int64_t *masses = arena_array(arena, hire->people, sizeof *masses);
    size_t count;
    const struct jacket_size *sizes = jacket_sizes(gear->rows, gear->count, arena, &count);
    for (size_t i = 0; i < hire->people; i++)
        masses[i] = (int64_t)hire->kg[i] * A_THOUSAND;
    return (int64_t)(hire->people - jackets_match(masses, hire->people, sizes, count, arena,
                                                  NULL));
}

static void jackets_by_mass(struct briefing *briefing, struct stoppers *stoppers,
                            const struct counted_gear *all, const struct counted_gear *good)
{
    jackets_short(briefing, stoppers,
                  &(struct jacket_lack){WORD_BRIEF_JACKETS_FIT,
                                        "people whom a lifejacket of a recorded size fits",
                                        "people aboard", jackets_fitting(briefing, all),
                                        jackets_fitting(briefing, good), briefing->hire->people,
                                        jackets_counted(all->rows, all->count).unsized});
}

/* A jacket of which nobody recorded for whom it is counts for an adult, never for a child. */
static void jackets_by_number(struct briefing *briefing, struct stoppers *stoppers,
                              const struct counted_gear *all, const struct counted_gear *good)
{
    const struct hire *hire = briefing->hire;
    struct jacket_count have = jackets_counted(all->rows, all->count);
    struct jacket_count last = jackets_counted(good->rows, good->count);
    const struct jacket_lack all_aboard = {
        WORD_BRIEF_JACKETS_FEW, "lifejackets", "people aboard",
        have.adult + have.child + have.unsaid, last.adult + last.child + last.unsaid,
        hire->people, 0};
    const struct jacket_lack adults = {
        WORD_BRIEF_JACKETS_ADULT, "lifejackets for adults", "adults aboard",
        have.adult + have.unsaid, last.adult + last.unsaid, hire->people - hire->children, 0};
    const struct jacket_lack children = {
        WORD_BRIEF_JACKETS_CHILD, "lifejackets for children", "children aboard", have.child,
        last.child, hire->children, 0};
    if (!jackets_short(briefing, stoppers, &all_aboard))
        jackets_short(briefing, stoppers, &adults);
    jackets_short(briefing, stoppers, &children);
}

static void jackets_find(struct briefing *briefing, struct stoppers *stoppers)
{
    static const struct absent_words words = {WORD_BRIEF_JACKETS_NONE,
                                              WORD_BRIEF_JACKETS_UNKNOWN, "lifejackets"};
    const struct counted_gear all = gear_all(briefing), good = gear_lasting(briefing);
    if (none_found(briefing, stoppers, ITEM_lifejacket, &words))
        return;
    if (briefing->hire->kg != NULL)
        jackets_by_mass(briefing, stoppers, &all, &good);
    else
        jackets_by_number(briefing, stoppers, &all, &good);
}

/* ---- radio ---- */

static void radio_find(struct briefing *briefing, struct stoppers *stoppers)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    bool none = no_radio_aboard(boat);
    if (boat_fitted(boat, ITEM_vhf_dsc) == ANSWER_YES ||
        boat_fitted(boat, ITEM_vhf_handheld) == ANSWER_YES)
        return;
    stopper_add(briefing, stoppers,
                &(struct stopper){.said = brief_word(briefing, none ? WORD_BRIEF_RADIO_NONE
                                                                    : WORD_BRIEF_RADIO_UNKNOWN),
                                  .origin = place_or(boat->radio_place, boat->place),
                                  .grave = true},
                "bring one, or record it under radio: or as vhf_handheld",
                none ? "no radio on board" : "no radio recorded");
}

void shortages_find(struct briefing *briefing, struct stoppers *stoppers)
{
    people_find(briefing, stoppers);
    jackets_find(briefing, stoppers);
    raft_find(briefing, stoppers);
    radio_find(briefing, stoppers);
}
