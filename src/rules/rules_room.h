/* rules_room.h - what the files of this room share (private to it). */
#ifndef MAYDECK_RULES_ROOM_H
#define MAYDECK_RULES_ROOM_H

#include "rules.h"

#include "check_list.h"
#include "item_fields.h"
#include "trait.h"

enum check_name {
#define CHECK_ENUM(name, severity, sentence, source) CHECK_##name,
    FAMILY_LIST(CHECK_ENUM)
    CHECK_LIST(CHECK_ENUM, CHECK_ENUM)
    DANGER_LIST(CHECK_ENUM)
#undef CHECK_ENUM
    CHECK_COUNT
};

/* What a check works with. */
struct rule_run {
    const struct rules_input *in;
    struct arena *arena;
    struct problems *problems;
    bool *used;                /* one for each silence: it silenced something */
    size_t *held;              /* counts errors that hold the boat back; may be NULL */
};

/* Has the silence what makes it one: a reason and a date? */
bool silence_whole(const struct silence *silence);

/* It covers not all of the charter. */
bool silence_lapses(const struct rule_run *run, const struct silence *silence);

/* Can the check be silenced? No error can, nor what is told of silences. */
bool check_may_be_silent(const struct check *check);

/* Tells that a check found something, or that it would have if it were not silenced
 * for this boat. The severity is the row's. Nothing is told of a value that
 * the record refused, nor, short of an error, of one that another error was told of,
 * since that value has to be written anew; nor that something
 * is lacking while a piece of gear could not be read. */
void rule_tell(const struct rule_run *run, enum check_name name, struct place place,
               const char *remedy, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

/* One family of checks: one function, called once a boat. */
typedef void rule_family(const struct rule_run *run);
rule_family identity_rules;
rule_family name_rules;
rule_family quotes_rules;
rule_family base_rules;   /* with no boat: see rules_check_base */
rule_family beacon_rules;
rule_family date_rules;
rule_family capacity_rules;
/* conflicts and deficiencies in one record */
rule_family conflict_rules;    /* isolators, controls inside, one piece twice */
rule_family fire_rules;        /* fire ports, engine spaces, battery, alarms */
rule_family rescue_rules;      /* raft and beacon that are not there */
rule_family gas_rules;
rule_family engine_rules;
rule_family fact_rules;        /* single fields: a table */
rule_family opening_rules;
rule_family radio_gear_rules;
rule_family unrecorded_rules;  /* what cards print where it is recorded: tables */
rule_family place_rules;       /* a place against reach, level and neighbours */
rule_family tag_rules;         /* pieces that fell out of the record */
rule_family silence_rules;

/* ---- rules_gear.c: looking at gear ---- */

/* Goes through the pieces of one kind; *index starts at 0. NULL at the end. */
const struct equipment *gear_of_kind(const struct boat *boat, enum item_key item, size_t *index);

/* The first piece of gear that no boat has without this; NULL: none. */
const struct equipment *gear_needing(const struct boat *boat, enum trait trait);

/* May it be of use for this engine space? Also where `serves` is not recorded. */
bool gear_may_serve(const struct boat *boat, const struct equipment *gear, enum zone_key space);

/* Some piece of the kind serves the space. */
bool space_served(const struct boat *boat, enum item_key item, enum zone_key space);

/* "seacock C12 (sink drain)": how a message names it. */
const char *gear_named(const struct rule_run *run, const struct equipment *gear);

/* Is she an invented boat? YES or NO, which she is too where nothing says so; NOT_RECORDED where
 * what was said was refused: then nobody knows what her identities must be. */
enum answer boat_specimen(const struct boat *boat);

/* Where `not_fitted` says so, at all or of that engine, if one is given; else the boat. */
struct place place_not_fitted(const struct boat *boat, enum item_key item, enum zone_key space);

/* ---- place_rules.c: sides ---- */

/* A place with two sides, and nothing that tells which. */
bool side_open(const struct equipment *gear);

/* The first piece in the same place that is to port or to starboard of it; NULL: none. */
const struct equipment *sided_neighbour(const struct boat *boat, const struct equipment *gear);

/* `given`, or `otherwise` where the field is not recorded. */
struct place place_else(struct place given, struct place otherwise);

/* The same, called once a base: there is no boat in the run. */
rule_family contact_rules;
rule_family approval_rules;

/* For values that other YAML readers would not take for the text that it is: a note.
 * `key`: what stands before the value. */
void quotes_check(const struct rule_run *run, const char *key, const struct text_value *value);

struct administration;

/* Do MMSI, call sign and flag disagree whose the boat is, with this country named by one
 * of them? Then that is told, and a beacon of this country says nothing new. The country
 * may be NULL: not known. */
bool country_in_dispute(const struct boat *boat, const struct administration *country);

/* MMSI: the ship's and those of handhelds; call sign. Private to identity_rules. */
void mmsi_rules(const struct rule_run *run);
void call_sign_rules(const struct rule_run *run);

#endif
