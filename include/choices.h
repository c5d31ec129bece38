/* choices.h - fields that hold one of a list of names, or several (room: record): each as
 * a value of its own enum, 0 for none, with its place in the file. Read by tables of
 * fields (yaml_fields.h). */
#ifndef MAYDECK_CHOICES_H
#define MAYDECK_CHOICES_H

#include "date.h"
#include "item.h"
#include "paper_list.h"
#include "yaml_fields.h"

/* ---- names of the registers ---- */

struct item_value CHOICE_OF(enum item_key);
struct item_values CHOICES_OF(struct item_value);
struct zone_value CHOICE_OF(enum zone_key);
struct zone_values CHOICES_OF(struct zone_value);

/* The entry of the list that names the item or zone; NULL: none does. */
const struct item_value *item_value_find(const struct item_values *list, enum item_key item);
const struct zone_value *zone_value_find(const struct zone_values *list, enum zone_key zone);

/* ---- the boat ---- */

#define HULL_LIST(X) \
    X(HULL_MONOHULL, "monohull") X(HULL_CATAMARAN, "catamaran") X(HULL_TRIMARAN, "trimaran")
enum hull { HULL_NONE, HULL_LIST(CHOICE_NAME) HULL_COUNT };
extern const char *const hull_words[];     /* all words: NULL-ended, each at its value less one */
struct hull_value CHOICE_OF(enum hull);

/* May a boat of that hull have the zone? HULL_NONE: some boat. */
bool hull_has_zone(enum hull hull, const struct zone *zone);

/* What moves her besides her engines. */
#define RIG_LIST(X) X(RIG_SAIL, "sail") X(RIG_MOTOR, "motor")
enum rig { RIG_NONE, RIG_LIST(CHOICE_NAME) RIG_COUNT };
extern const char *const rig_words[];
struct rig_value CHOICE_OF(enum rig);

/* What an engine burns, or that it burns nothing. */
#define FUEL_LIST(X) X(FUEL_DIESEL, "diesel") X(FUEL_PETROL, "petrol") X(FUEL_ELECTRIC, "electric")
enum fuel { FUEL_NONE, FUEL_LIST(CHOICE_NAME) FUEL_COUNT };
extern const char *const fuel_words[];
struct fuel_value CHOICE_OF(enum fuel);

/* What an engine drives: her, by one of these, or a generator. */
#define DRIVE_LIST(X) \
    X(DRIVE_SHAFT, "shaft") X(DRIVE_SAILDRIVE, "saildrive") X(DRIVE_POD, "pod") \
    X(DRIVE_STERN, "stern_drive") X(DRIVE_JET, "jet") X(DRIVE_OUTBOARD, "outboard") \
    X(DRIVE_GENERATOR, "generator")
enum drive { DRIVE_NONE, DRIVE_LIST(CHOICE_NAME) DRIVE_COUNT };
extern const char *const drive_words[];
struct drive_value CHOICE_OF(enum drive);

/* Where the locker of the gas bottles drains to. */
#define DRAIN_LIST(X) \
    X(DRAIN_OVERBOARD, "overboard") X(DRAIN_INBOARD, "inboard") X(DRAIN_ABSENT, "none")
enum drain { DRAIN_UNSAID, DRAIN_LIST(CHOICE_NAME) DRAIN_COUNT };
extern const char *const drain_words[];
struct drain_value CHOICE_OF(enum drain);

/* ---- gear ---- */

/* What an extinguisher holds. */
#define AGENT_LIST(X) \
    X(AGENT_POWDER, "powder") X(AGENT_FOAM, "foam") X(AGENT_CO2, "co2") \
    X(AGENT_CLEAN, "clean_agent") X(AGENT_WATER_MIST, "water_mist") \
    X(AGENT_WET_CHEMICAL, "wet_chemical") X(AGENT_WATER, "water")
enum agent { AGENT_NONE, AGENT_LIST(CHOICE_NAME) AGENT_COUNT };
extern const char *const agent_words[];
struct agent_value CHOICE_OF(enum agent);

/* How the valve of a gas bottle is turned or taken off. */
#define VALVE_LIST(X) \
    X(VALVE_HANDWHEEL, "handwheel") X(VALVE_LEVER, "lever") X(VALVE_CLIP_ON, "clip-on")
enum valve { VALVE_NONE, VALVE_LIST(CHOICE_NAME) VALVE_COUNT };
extern const char *const valve_words[];
struct valve_value CHOICE_OF(enum valve);

/* How an engine is stopped. */
#define STOP_LIST(X) X(STOP_ELECTRIC, "electric") X(STOP_MECHANICAL, "mechanical")
enum stop { STOP_NONE, STOP_LIST(CHOICE_NAME) STOP_COUNT };
extern const char *const stop_words[];
struct stop_value CHOICE_OF(enum stop);

/* What drives a pump: 12 or 24 V, or 230 V. */
#define FEED_LIST(X) X(FEED_BATTERY, "battery") X(FEED_MAINS, "mains")
enum feed { FEED_NONE, FEED_LIST(CHOICE_NAME) FEED_COUNT };
extern const char *const feed_words[];
struct feed_value CHOICE_OF(enum feed);

/* What an opening in the hull leads to: the engine's intake, a toilet's inlet or outlet ... */
#define OPENING_LIST(X) \
    X(OPENING_ENGINE, "engine") X(OPENING_SINK, "sink") X(OPENING_TOILET, "toilet") \
    X(OPENING_SHOWER, "shower") X(OPENING_COCKPIT, "cockpit_drain") X(OPENING_PUMP, "pump") \
    X(OPENING_LOG, "log") X(OPENING_EXHAUST, "exhaust") X(OPENING_OTHER, "other")
enum opening { OPENING_NONE, OPENING_LIST(CHOICE_NAME) OPENING_COUNT };
extern const char *const opening_words[];
struct opening_value CHOICE_OF(enum opening);

/* How easily a valve is worked by hand. */
#define WORKS_LIST(X) X(WORKS_FREELY, "freely") X(WORKS_STIFF, "stiff") X(WORKS_SEIZED, "seized")
enum works { WORKS_NONE, WORKS_LIST(CHOICE_NAME) WORKS_COUNT };
extern const char *const works_words[];
struct works_value CHOICE_OF(enum works);

/* What a gas bottle holds. */
#define GAS_LIST(X) X(GAS_BUTANE, "butane") X(GAS_PROPANE, "propane")
enum gas { GAS_NONE, GAS_LIST(CHOICE_NAME) GAS_COUNT };
extern const char *const gas_words[];
struct gas_value CHOICE_OF(enum gas);

/* Whom a lifejacket is made for. */
#define WEARER_LIST(X) X(WEARER_ADULT, "adult") X(WEARER_CHILD, "child")
enum wearer { WEARER_NONE, WEARER_LIST(CHOICE_NAME) WEARER_COUNT };
extern const char *const wearer_words[];
struct wearer_value CHOICE_OF(enum wearer);

/* A beacon's own line. */
#define LANYARD_LIST(X) X(LANYARD_STOWED, "stowed") X(LANYARD_MADE_FAST, "made_fast")
enum lanyard { LANYARD_NONE, LANYARD_LIST(CHOICE_NAME) LANYARD_COUNT };
extern const char *const lanyard_words[];
struct lanyard_value CHOICE_OF(enum lanyard);

/* What an autopilot drives. */
#define DRIVES_LIST(X) X(DRIVES_RUDDER, "rudder") X(DRIVES_WHEEL, "wheel")
enum drives { DRIVES_NONE, DRIVES_LIST(CHOICE_NAME) DRIVES_COUNT };
extern const char *const drives_words[];
struct drives_value CHOICE_OF(enum drives);

/* How the last link of the chain is made fast. */
#define CHAIN_END_LIST(X) \
    X(CHAIN_END_CORD, "cord") X(CHAIN_END_SHACKLE, "shackle") X(CHAIN_END_LOOSE, "loose")
enum chain_end { CHAIN_END_NONE, CHAIN_END_LIST(CHOICE_NAME) CHAIN_END_COUNT };
extern const char *const chain_end_words[];
struct chain_end_value CHOICE_OF(enum chain_end);

/* What may be in a first-aid kit. */
#define KIT_LIST(X) \
    X(KIT_TOURNIQUET, "tourniquet") X(KIT_GLOVES, "gloves") X(KIT_FILM, "film") \
    X(KIT_BURN_DRESSING, "burn_dressing") X(KIT_THERMOMETER, "thermometer") \
    X(KIT_TWEEZERS, "tweezers") X(KIT_FACE_SHIELD, "face_shield") X(KIT_VINEGAR, "vinegar") \
    X(KIT_REHYDRATION, "rehydration") X(KIT_SEASICK_TABLETS, "seasick_tablets")
enum kit { KIT_NONE, KIT_LIST(CHOICE_NAME) KIT_COUNT };
extern const char *const kit_words[];
struct kit_value CHOICE_OF(enum kit);
struct kit_values CHOICES_OF(struct kit_value);

/* What must be so for a hand to work it. */
#define ONLY_WHEN_LIST(X) \
    X(ONLY_ENGINE_RUNNING, "engine_running") X(ONLY_ENGINE_STOPPED, "engine_stopped") \
    X(ONLY_PLATFORM_UP, "platform_up") X(ONLY_PLATFORM_DOWN, "platform_down")
enum only_when { ONLY_ALWAYS, ONLY_WHEN_LIST(CHOICE_NAME) ONLY_WHEN_COUNT };
extern const char *const only_when_words[];
struct only_when_value CHOICE_OF(enum only_when);
struct only_when_values CHOICES_OF(struct only_when_value);

/* ---- the water ---- */

/* On which side of the equator, or of Greenwich: north and east count up. */
enum hemisphere { HEMISPHERE_NONE, HEMISPHERE_UP, HEMISPHERE_DOWN, HEMISPHERE_BOTH };
#define LATITUDE_LIST(X) \
    X(HEMISPHERE_UP, "north") X(HEMISPHERE_DOWN, "south") X(HEMISPHERE_BOTH, "both")
#define LONGITUDE_LIST(X) \
    X(HEMISPHERE_UP, "east") X(HEMISPHERE_DOWN, "west") X(HEMISPHERE_BOTH, "both")
extern const char *const latitude_words[];
extern const char *const longitude_words[];
struct hemisphere_value CHOICE_OF(enum hemisphere);

/* What comes first where a distress beacon went off by mistake, as the rescue centre wants it. */
#define BEACON_CANCEL_LIST(X) \
    X(BEACON_OFF_THEN_TELL, "off_then_tell") X(BEACON_TELL_THEN_OFF, "tell_then_off")
enum beacon_cancel { BEACON_CANCEL_UNSAID, BEACON_CANCEL_LIST(CHOICE_NAME) BEACON_CANCEL_COUNT };
extern const char *const beacon_cancel_words[];
struct beacon_cancel_value CHOICE_OF(enum beacon_cancel);

/* Sea areas of the radio: beyond the first, coast stations may not hear VHF. */
#define SEA_AREA_LIST(X) \
    X(SEA_AREA_A1, "A1") X(SEA_AREA_A2, "A2") X(SEA_AREA_A3, "A3") X(SEA_AREA_A4, "A4")
enum sea_area { SEA_AREA_NONE, SEA_AREA_LIST(CHOICE_NAME) SEA_AREA_COUNT };
extern const char *const sea_area_words[];
struct sea_area_value CHOICE_OF(enum sea_area);

/* With how many breaths those who are taught here begin on a drowned person. */
#define BREATHS_LIST(X) X(BREATHS_FIVE, "5") X(BREATHS_TWO, "2")
enum breaths { BREATHS_NONE, BREATHS_LIST(CHOICE_NAME) BREATHS_COUNT };
extern const char *const breaths_words[];
struct breaths_value CHOICE_OF(enum breaths);

/* What is poured on a sting of a jellyfish of these waters. */
#define STING_LIST(X) \
    X(STING_SEA_WATER, "sea_water") X(STING_VINEGAR, "vinegar") X(STING_BOTH, "both")
enum sting { STING_NONE, STING_LIST(CHOICE_NAME) STING_COUNT };
extern const char *const sting_words[];
struct sting_value CHOICE_OF(enum sting);

/* How far the water rises and falls here. */
#define TIDE_LIST(X) X(TIDE_ABSENT, "none") X(TIDE_SMALL, "small") X(TIDE_LARGE, "large")
enum tide { TIDE_UNSAID, TIDE_LIST(CHOICE_NAME) TIDE_COUNT };
extern const char *const tide_words[];
struct tide_value CHOICE_OF(enum tide);

struct month_means_value CHOICE_OF(enum month_means);

extern const char *const paper_words[];    /* the keys of PAPER_LIST, NULL-ended */
struct paper_key_value CHOICE_OF(enum paper_key);

/* ---- calls ---- */

/* Natures of distress, in the order of Rec. ITU-R M.493 (struct nature of radio.h). */
#define NATURE_LIST(X) \
    X(NATURE_FIRE, "fire") X(NATURE_FLOODING, "flooding") X(NATURE_COLLISION, "collision") \
    X(NATURE_GROUNDING, "grounding") X(NATURE_LISTING, "listing") \
    X(NATURE_SINKING, "sinking") X(NATURE_ADRIFT, "adrift") \
    X(NATURE_UNDESIGNATED, "undesignated") X(NATURE_ABANDON, "abandon") \
    X(NATURE_PIRACY, "piracy") X(NATURE_MOB, "mob")
enum nature_key { NATURE_NONE, NATURE_LIST(CHOICE_NAME) NATURE_COUNT };
extern const char *const nature_words[];
struct nature_value CHOICE_OF(enum nature_key);

/* ---- places ---- */

struct side_value CHOICE_OF(enum side);
struct air_value CHOICE_OF(enum air_space);

/* Which way a reader of the hung card looks. */
#define FACING_LIST(X) \
    X(FACING_BOW, "bow") X(FACING_STERN, "stern") X(FACING_PORT, "port") \
    X(FACING_STARBOARD, "starboard")
enum facing { FACING_NONE, FACING_LIST(CHOICE_NAME) FACING_COUNT };
extern const char *const facing_words[];   /* NULL-ended, each at its value less one */
struct facing_value CHOICE_OF(enum facing);


#endif
