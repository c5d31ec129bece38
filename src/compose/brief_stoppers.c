/* brief_stoppers.c - what must be seen to before a charter begins: the first section of page one
 * (room: compose). Not recorded counts as not there, and a date that is not known as past. */
#include "brief_room.h"

#include "promise.h"
#include "trait.h"

static const struct form_column stopper_columns[] = {{FORM_SIGN, "", 0}, {FORM_TEXT, "", 0}};
#define STOPPER_COLUMNS (sizeof stopper_columns / sizeof *stopper_columns)

/* ---- gear that is not there ---- */

/* Those that are counted are told as such. */
static const enum item_key counted_items[] = {ITEM_lifejacket, ITEM_liferaft, ITEM_NONE};
static const enum item_key radio_items[] = {ITEM_vhf_dsc, ITEM_vhf_handheld, ITEM_NONE};

static bool no_radio_told(const struct boat *boat)
{
    return boat_fitted(boat, ITEM_vhf_dsc) != ANSWER_YES &&
           boat_fitted(boat, ITEM_vhf_handheld) != ANSWER_YES;
}

static void life_saving_find(struct briefing *briefing, struct stoppers *stoppers,
                             enum item_key item)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    struct arena *arena = briefing->writer.composing.arena;
    enum answer fitted = boat_fitted(boat, item);
    const struct absence *absence = boat_absence(boat, item, ZONE_NONE);
    bool none = fitted == ANSWER_NO && item == ITEM_fire_extinguisher;
    if (fitted == ANSWER_YES || (fitted == ANSWER_NO && !none) || boat_cannot_have(boat, item) ||
        item_among(counted_items, item) ||
        (item_among(radio_items, item) && no_radio_told(boat)))
        return;
    stopper_add(briefing, stoppers,
                &(struct stopper){
                    .said = phrase_word(arena,
                                        none ? WORD_BRIEF_ITEM_NONE : WORD_BRIEF_ITEM_UNKNOWN,
                                        "item", phrase_item(arena, item), NULL),
                    .origin = none && absence != NULL ? absence->place : boat->place},
                "bring it, or record it in equipment: or not_fitted: of the boat's file",
                text_format(arena, none ? "no %s on board" : "%s is not recorded",
                            item_word(item)));
}

/* ---- cards ---- */

static void held_cards_find(struct briefing *briefing, struct stoppers *stoppers)
{
    struct composing *composing = &briefing->writer.composing;
    const struct sheet_set *cards = briefing->cards;
    const struct phrase *numbers = NULL;
    struct text_builder list = text_builder_in(composing->arena);
    for (size_t i = 0; i < cards->count; i++) {
        const char *name = cards->sheets[i]->name;
        if (!cards->sheets[i]->held)
            continue;
        text_add_format(&list, "%s%s", list.length > 0 ? "; " : "", name);
        numbers = phrase_joined(composing->arena, WORD_JOIN_COMMA, numbers,
                                phrase_verbatim(composing->arena, cards->sheets[i]->number), NULL);
    }
    if (numbers != NULL)
        stopper_add(briefing, stoppers,
                    &(struct stopper){.said = phrase_word(composing->arena, WORD_BRIEF_CARDS_HELD,
                                                          "cards", numbers, NULL),
                                      .origin = composing->in->boat->place},
                    "`maydeck check` tells what to record for them",
                    text_format(composing->arena, "cards held back: %s", list.at));
}

/* ---- dates ---- */

static struct place dated_place(const struct gear_date *date, const struct equipment *gear)
{
    return date->known ? date->place : gear->place;
}

static const struct phrase *date_said(struct briefing *briefing, enum word word,
                                      const struct equipment *gear, const struct gear_date *date)
{
    return phrase_word(briefing->writer.composing.arena, word, "gear",
                       brief_gear(briefing, gear), "place", brief_where(briefing, gear), "date",
                       date->known ? brief_day(briefing, gear_date_shown(date)) : NULL, NULL);
}

struct date_words {
    enum word word;
    const char *what, *remedy;
};

static const struct date_words *date_words_of(enum charter_outcome outcome)
{
    static const char renew[] = "have it serviced or replaced, then write the date that is "
                                "stamped on it now";
    static const struct date_words past = {WORD_BRIEF_DATE_PAST, "is past its date", renew};
    static const struct date_words during = {WORD_BRIEF_DATE_DURING,
                                             "runs out before hand-back", renew};
    static const struct date_words unknown = {WORD_BRIEF_DATE_UNKNOWN,
                                              "has no date recorded that tells how long it is good",
                                              "read the date off it, and write it in the entry"};
    switch (outcome) {
    case CHARTER_EXPIRED:
        return &past;
    case CHARTER_EXPIRES_DURING:
        return &during;
    case CHARTER_NOT_KNOWN:
        return &unknown;
    case CHARTER_OK: case CHARTER_OK_INSIDE_MARGIN: case CHARTER_DATES_WRONG:
        break;
    }
    promise_unreached();
}

static void date_find(struct briefing *briefing, struct stoppers *stoppers,
                      const struct equipment *gear)
{
    struct arena *arena = briefing->writer.composing.arena;
    struct gear_date date;
    if (gear_lasts(briefing, gear))
        return;
    gear_date(gear, briefing->writer.composing.in->base, &date);
    const struct date_words *words = date_words_of(charter_outcome(&date, &briefing->hire->days));
    stopper_add(briefing, stoppers,
                &(struct stopper){.gear = gear, .said = date_said(briefing, words->word, gear,
                                                                  &date),
                                  .origin = dated_place(&date, gear)},
                words->remedy,
                text_format(arena, "%s %s %s%s%s", gear->kind->key, TEXT_OR_EMPTY(gear->tag),
                            words->what, date.known ? ": good to " : "",
                            date.known ? date_text(arena, gear_date_shown(&date)) : ""));
}

/* Raft and lifejackets stand before all other gear, then the rest of what saves lives. */
static void life_saving_dates_find(struct briefing *briefing, struct stoppers *stoppers)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    for (int others = 0; others < 2; others++)
        for (size_t i = 0; life_saving_items[i] != ITEM_NONE; i++)
            for (size_t k = 0; k < boat->equipment_count; k++)
                if (boat->equipment[k].kind->item == life_saving_items[i] &&
                    item_among(counted_items, life_saving_items[i]) == (others == 0))
                    date_find(briefing, stoppers, &boat->equipment[k]);
}

static void other_dates_find(struct briefing *briefing, struct stoppers *stoppers)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    for (size_t k = 0; k < boat->equipment_count; k++)
        if (!item_among(life_saving_items, boat->equipment[k].kind->item))
            date_find(briefing, stoppers, &boat->equipment[k]);
}

/* ---- the section ---- */

static void stopper_line_add(struct briefing *briefing, const struct stopper *stopper,
                             enum form_voice voice)
{
    const struct form_cell cells[STOPPER_COLUMNS] = {brief_sign(stopper->gear),
                                                     brief_cell(briefing, stopper->said)};
    form_line_add(&briefing->writer, cells, voice, stopper->origin);
}

static bool is_grave(const struct stoppers *stoppers)
{
    bool grave = false;
    for (size_t i = 0; i < stoppers->count; i++)
        grave = grave || stoppers->rows[i].grave;
    return grave;
}

/* The lines that tell how many stand on the next sheet. */
static const struct form_line *rest_lines(struct briefing *briefing, size_t count)
{
    struct arena *arena = briefing->writer.composing.arena;
    struct form_line *lines = arena_array(arena, count, sizeof *lines);
    for (size_t i = 0; i < count; i++) {
        struct form_cell *cells = arena_array(arena, STOPPER_COLUMNS, sizeof *cells);
        cells[0] = brief_sign(NULL);
        cells[1] = brief_cell(briefing,
                              phrase_counted(arena, WORD_BRIEF_REST, i + 1, "count",
                                             brief_number(briefing, i + 1), NULL));
        lines[i] = (struct form_line){.cells = cells, .voice = FORM_PLAIN,
                                      .origin = briefing->writer.composing.in->boat->place};
    }
    return lines;
}

/* Grave ones stand together above the others, below what is said of them all. */
static void stoppers_write(struct briefing *briefing, const struct stoppers *stoppers)
{
    struct form_writer *writer = &briefing->writer;
    struct stopper word = {.origin = writer->composing.in->boat->place};
    word.said = brief_word(briefing, WORD_BRIEF_DO_NOT_SAIL);
    if (is_grave(stoppers))
        stopper_line_add(briefing, &word, FORM_SPOKEN);
    for (size_t i = 0; i < stoppers->count; i++)
        stopper_line_add(briefing, &stoppers->rows[i],
                         stoppers->rows[i].gear == NULL ? FORM_SPOKEN : FORM_PLAIN);
    word.said = brief_word(briefing, WORD_BRIEF_STOPPERS_NONE);
    if (stoppers->count == 0)
        stopper_line_add(briefing, &word, FORM_PLAIN);
}

void brief_stoppers_add(struct briefing *briefing)
{
    struct stoppers stoppers = {NULL, 0, 0};
    shortages_find(briefing, &stoppers);
    held_cards_find(briefing, &stoppers);
    life_saving_dates_find(briefing, &stoppers);
    for (size_t i = 0; life_saving_items[i] != ITEM_NONE; i++)
        life_saving_find(briefing, &stoppers, life_saving_items[i]);
    other_dates_find(briefing, &stoppers);
    brief_section_add(briefing, &(struct brief_section){
                                    .title = WORD_BRIEF_STOPPERS, .columns = stopper_columns,
                                    .column_count = STOPPER_COLUMNS, .manner = FORM_WARNED});
    stoppers_write(briefing, &stoppers);
    struct form_section *section = &briefing->writer.sections[briefing->writer.count - 1];
    section->rest = rest_lines(briefing, section->line_count);
}
