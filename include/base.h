/* base.h - the base's record: who answers where its boats sail, and what it settles for all of
 * them (room: record). */
#ifndef MAYDECK_BASE_H
#define MAYDECK_BASE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "card_choice.h"
#include "choices.h"
#include "clock.h"
#include "item.h"
#include "own_line.h"
#include "position.h"
#include "problem.h"
#include "yaml_fields.h"

struct approval {
    struct text_value card, text, initials, qualification;    /* text: a fingerprint */
    struct date_value date, until;
    struct place place;
};

/* Months from a service (or making, or installing) to the next, as the base has it. */
struct interval {
    struct item_value item;
    struct number_value months;
    struct place place;
};

/* A harbour to run for. */
struct shelter {
    struct text_value name, position;
    struct place place;
    struct position at;                     /* `position`, read */
    bool at_given;
};

struct base_record {
    const struct source *source;
    struct text_value name, phone_24h;
    struct text_value fire_phone, marina, berth;    /* for who steps ashore */
    struct answer_value specimen;
    /* Of their sections; else of the head of the file. */
    struct place centre_place, ashore_place, area_place;
    struct text_value centre_name, centre_call, centre_channel, centre_phone;
    struct date_value centre_checked_on;
    struct hemisphere_value latitude, longitude;
    struct sea_area_value sea_area;
    struct number_value centre_antenna_m;   /* of the centre's aerial above the sea */
    struct text_value position;             /* of the berths, as written */
    struct position berths;                 /* the same, read */
    bool berths_given;
    struct text_value variation;            /* magnetic, such as 4 E, as written */
    int variation_tenths;                   /* the same, read: of a degree, east positive */
    bool variation_given;
    struct date_value variation_on;
    struct breaths_value drowning_breaths;  /* the first ones; BREATHS_NONE: as each was taught */
    struct sting_value sting;               /* what is poured on one; STING_NONE: nobody knows */
    struct tide_value tide;                 /* TIDE_UNSAID: it is not recorded */
    struct month_means_value month_means;
    struct number_value margin_days;
    const struct interval *intervals;       /* the base's own, before the trade's */
    size_t interval_count;
    const struct shelter *shelters;
    size_t shelter_count;
    const struct clock *clocks;             /* those that could be read; none: what UTC is to the
                                               clock on board is not recorded */
    size_t clock_count;
    struct beacon_cancel_value beacon_cancel;
    struct list_value languages;
    struct paper_key_value paper;           /* of the cards; PAPER_NONE: the base names none */
    struct card_choice cards;               /* which of them it hangs, unless a boat says other */
    const struct approval *approvals;
    size_t approval_count;
    struct own_lines own_lines;
};

/* May her boats sail where coast stations do not hear VHF? Where the sea area is not recorded
 * they may. Then the beacon goes with the first call. */
bool base_beyond_a1(const struct base_record *base);

/* The clock that holds on that day; NULL: none is recorded for it. */
const struct clock *base_clock_on(const struct base_record *base, struct date day);

const struct base_record *base_read(const struct source *source, struct arena *arena,
                                    struct problems *problems, bool *sound);

/* All keys of a base's file. */
const struct field_table *base_file_fields(void);

#endif
