/* capacity.h - for how many the safety gear is, and how much fire it is rated for
 * (room: figure). */
#ifndef MAYDECK_CAPACITY_H
#define MAYDECK_CAPACITY_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "boat.h"

/* How many of it stand in its place: one where `count` is not recorded. */
int64_t gear_count(const struct equipment *gear);

/* ---- liferafts ---- */

struct raft_capacity {
    int64_t rafts;
    int64_t unrecorded;       /* rafts whose places the record does not tell: counted as none */
    int64_t places;           /* of all rafts together */
    int64_t largest;          /* places of the largest one */
    int64_t spare;            /* places less persons; negative: people without a place */
    bool enough;              /* every person, infants too, takes one place */
    bool short_without_one;   /* several rafts, and losing the largest leaves too few places */
};

/* `persons` 0 is arithmetic like any other; whether a boat may sail with nobody is
 * the caller's to judge. Gear that is no raft is passed over. */
struct raft_capacity raft_capacity(const struct equipment *gear, size_t count, int64_t persons);

/* ---- lifejackets ---- */

struct jacket_count {
    int64_t adult, child;
    int64_t unsaid;           /* the record does not say for whom they are made */
    int64_t unsized;          /* without a lightest wearer: fit nobody that is known */
};

struct jacket_count jackets_counted(const struct equipment *gear, size_t count);

#define JACKET_NO_UPPER INT64_MAX

/* Lifejackets of one size: they fit a body of low_g <= mass < high_g. */
struct jacket_size {
    int64_t low_g, high_g;    /* high_g JACKET_NO_UPPER: no heaviest wearer */
    int64_t count;
};

/* The sizes of those jackets whose lightest wearer is recorded, in record order. */
const struct jacket_size *jacket_sizes(const struct equipment *gear, size_t count,
                                       struct arena *arena, size_t *size_count);

/* How many of these people cannot have a jacket that fits, when as many as can be
 * have one. `without`, of at least person_count, gets the masses left over, rising;
 * NULL: not wanted. Which persons they are is a choice among equals: tell the
 * number, not the names. */
size_t jackets_match(const int64_t *masses_g, size_t person_count,
                     const struct jacket_size *sizes, size_t size_count, struct arena *arena,
                     int64_t *without);

/* ---- extinguisher ratings ---- */

/* The European and the American letters are the same, what they measure is not. */
enum rating_system { RATING_SYSTEM_EN, RATING_SYSTEM_US };

/* Numbers are 0 and letters false where the rating lacks the class. */
struct fire_rating {
    enum rating_system system;
    int a, b;                 /* en: crib in decimetres, litres; us: their own units */
    int f;                    /* en: litres of frying oil */
    bool c;                   /* en: gases; us: live electrics */
    bool d, k;                /* metals; us: cooking media */
};

enum rating_reading { RATING_READ, RATING_WITHOUT_SYSTEM, RATING_WRONG };

/* Reads a rating as labels have it, after the name of its system:
 *   en 13A 70B C    us 1-A:10-B:C
 * Each class once, numbers 1 to 999, the system in small or in capital letters.
 * RATING_WITHOUT_SYSTEM: it would be right with `en` or `us` before it. */
enum rating_reading fire_rating_parse(const char *string, struct fire_rating *out);

enum rating_order { RATING_LESS, RATING_EQUAL, RATING_MORE, RATING_NOT_COMPARABLE };

/* Is `one` rated for less or more of class 'A', 'B' or 'F' than `other`? Ratings
 * of two systems, and any other class, are not comparable. A class that a rating
 * lacks counts as none. */
enum rating_order fire_rating_compare(const struct fire_rating *one,
                                      const struct fire_rating *other, char class);

/* The test fire of a European rating nB: liquid in litres, the fuel in it (two
 * thirds, the rest water), the pan's area and diameter. */
double en_fire_litres(int b);
double en_fire_fuel_litres(int b);
double en_fire_area_m2(int b);
double en_fire_diameter_m(int b);

/* The area that an American rating n-B stands for: n square feet. */
double us_fire_area_m2(int b);

/* ---- carbon dioxide in the cabins ---- */

/* Above this share of the air a person is in danger: error, not report. */
enum { CO2_PERCENT_MOST = 3 };

/* Volume per cent of a closed space when so much carbon dioxide (kg, thousandths)
 * is let out in it and mixes evenly. It does not: it lies on the floor, so this is
 * the least to be feared. 100 where the space is 0 or less. */
double co2_share_percent(int64_t kg_milli, int64_t space_m3_milli);

/* Is that share over CO2_PERCENT_MOST? Exact, no rounding at the limit. */
bool co2_share_too_high(int64_t kg_milli, int64_t space_m3_milli);

/* The space that keeps the share at `percent` (above 0, below 100), in m3. */
double co2_space_needed_m3(int64_t kg_milli, double percent);

/* Floor for one person by the German rule for work rooms: 5.5 m2 a kg. */
double co2_floor_needed_m2(int64_t kg_milli);

#endif
