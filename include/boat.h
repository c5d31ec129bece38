/* boat.h - one boat's record (room: record). */
#ifndef MAYDECK_BOAT_H
#define MAYDECK_BOAT_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "base.h"
#include "choices.h"
#include "item.h"
#include "position.h"
#include "problem.h"
#include "yaml_fields.h"

/* A place that an entry names beside its own. */
struct gear_spot {
    struct section_value section;
    struct zone_value zone;
    struct side_value side;
    struct text_value spot;
    const struct zone *place_zone;    /* zone looked up */
    enum side place_side;             /* as given, or of the zone */
};

/* One piece of gear, in one place. Field meanings: gear_field_list.h. */
struct equipment {
    const struct item_kind *kind;
    const struct zone *place_zone;    /* zone looked up */
    enum side place_side;             /* of the item, or of its zone */
    struct place place;               /* of the entry in the boat file */
    struct item_value item;
    struct zone_value zone;
    struct side_value side;
    struct text_value tag, name, spot;
    struct wordings_value how;        /* by state, or the one use; see item_states.h */
    struct item_values cuts;
    struct zone_values inside, past, serves;
    struct gear_spot from;            /* where one stands to work it */
    struct gear_spot handle;          /* where its handle is kept */
    struct text_value behind;
    struct only_when_values only_when;
    struct number_value count;
    struct pair_value at;             /* metres aft of the bow, to starboard of the centreline */
    struct air_value space;
    struct agent_value agent;
    struct valve_value kind_of;
    struct stop_value stop;
    struct text_value rating, vents_to, serial, hex_id, mmsi, size;
    struct text_value painter, release;
    struct number_value kg, litres, persons, bore_mm, depth_m, bung_mm, discharge_s, length_m;
    struct number_value rated_lph, measured_lpm, stroke_l, kg_low, kg_high, protects_m3, antenna_m;
    struct gas_value gas;
    struct wearer_value wearer;
    struct lanyard_value lanyard;
    struct feed_value fed_by;
    struct opening_value leads_to;
    struct works_value works;
    struct date_value service_due, expires, serviced, made, installed;
    struct answer_value valve, fits_port, electrical_ok, from_cockpit, fails_shut, locked;
    struct answer_value vents_overboard;
    struct answer_value below, charged, in_charger, dsc, automatic, reach_inverted, disposable;
    struct answer_value upright, needs_engine, from_water;
    struct drives_value drives;
    struct chain_end_value chain_end;
    struct kit_values kit;
    struct text_value breaker, sound;
    struct number_value cuts_mm;
    struct date_value tried;
    struct date_value changed;        /* in a model: when the entry was last changed */
};

struct boat_facts {
    struct text_value name, name_spoken, name_latin, flag, looks;
    struct hull_value hull;
    struct rig_value rig;
    struct answer_value specimen;
    struct number_value loa_m, beam_m, draught_m, persons_max, openings;
    struct number_value lwl_m, bwl_m, usual_kn, cabin_m3, engine_space_m3, bilge_to_sole_l;
    struct zone_values rooms;         /* those that she has */
    struct number_value thickest_wire_mm;
    struct text_value lay_down_place;
    struct section_value mounted;     /* where the cards hang */
    struct zone_value mounted_zone;
    struct facing_value mounted_faces;
    struct date_value changed;        /* in a model: when the section was last changed */
};

/* An engine: one that moves her, or a generator's. */
struct engine {
    struct zone_value space;          /* an outboard has none */
    struct fuel_value fuel;
    struct drive_value drive;
    struct date_value changed;        /* in a model */
    struct place place;
};

/* Her cooking gas. */
struct gas_facts {
    struct answer_value carried;
    struct drain_value locker_drains;
    struct date_value changed;        /* in a model */
};

struct radio_facts {
    struct zone_value zone;
    struct side_value side;
    struct text_value call_sign, mmsi, tag, spot, power_switch, distress_key;
    struct gear_spot second_station;  /* where a second handset is */
    struct text_value emergency_aerial, position_read_at;
    struct answer_value mmsi_programmed, dsc, gnss, power_from_cockpit;
    struct number_value hold_s, antenna_m;
    struct list_value nature_steps, urgency_steps, manual_position_steps, silence_steps;
    struct date_value changed;        /* in a model */
};

/* A check that the base has silenced for one boat, why, and until when. */
struct silence {
    struct text_value check, reason;
    struct date_value until;
    struct place place;
};

/* Gear that the boat file says is not fitted, or that nobody has looked for yet: at all, or
 * for some of her engine spaces. */
struct absence {
    struct item_value item;
    bool whole;                       /* of the whole boat */
    struct zone_values serves;        /* else: the engine spaces it is said of */
    struct date_value changed;        /* in a model */
    struct place place;
};
struct absence_list {
    const struct absence *rows;
    size_t count;
    struct place place;               /* of the section; else of the boat's */
};

/* That somebody walked round a boat and saw that her model is true of her. */
struct walk {
    struct date_value date;
    struct text_value by;
};

/* What a boat has from her model, and what of it does not count, since nobody has walked
 * round her after it was last changed. All NULL and empty: she is like none. */
struct likeness {
    const char *model;                /* its key */
    const struct source *source;      /* its file; NULL: there is none */
    struct walk walk;
    struct place walk_place;          /* of `walked`, else of `like` */
    const char *unwalked;             /* what does not count: "C4, C7, radio"; NULL: nothing */
    bool supposed;                    /* some of it counts though nobody walked: WALK_SUPPOSED */
    const enum item_key *items;       /* of the gear among it */
    size_t item_count;
    struct list_value tags;           /* tags of the model that are on none of her gear */
    struct entries_value gear;        /* hers as it is written, in her file and her model's */
};

struct boat {
    const char *key;                  /* file name without .yaml: what --boat takes */
    const struct source *source;
    struct place place;
    struct likeness likeness;
    bool catamaran;                   /* two hulls */
    struct boat_facts facts;
    struct gas_facts gas;
    struct place gas_place;           /* of its section; else of the boat's */
    const struct engine *engines;
    size_t engine_count;
    bool engines_given;               /* false: none is recorded, and she may have any */
    struct place engines_place;       /* of their section; else of the boat's */
    struct radio_facts radio;
    struct place radio_place;
    /* In file order; the radio of `radio:` is the last, as vhf_dsc. */
    const struct equipment *equipment;
    size_t equipment_count;
    bool gear_unclear;                /* errors left some piece out, or a fact of it unread */
    struct absence_list not_fitted;
    struct absence_list not_surveyed; /* aboard perhaps: nobody has looked */
    struct list_value retired_tags;   /* tags of gear that is gone: never used again */
    struct list_value tags_given;     /* the last tag ever given of each letter */
    bool tags_unclear;                /* errors left some tag unread */
    struct card_choice cards;         /* which she has, where the base's choice is not hers */
    const struct silence *silences;   /* checks that the base has silenced for this boat */
    size_t silence_count;
    struct own_lines own_lines;       /* of her base, on her cards alone */
    /* Where a fuel is burned: one card of engine_fire each. Where no engine is recorded,
     * those that most boats of her hull have. */
    const enum zone_key *engine_spaces;
    size_t engine_space_count;
};

/* NULL when the file cannot be used at all; otherwise a record, and all that
 * is wrong with it in `problems`. Errors in it hold the whole boat back:
 * *sound says whether there were none. */
const struct boat *boat_read(const struct source *source, const char *key, struct arena *arena,
                             struct problems *problems, bool *sound);

/* What sister ships share, read from a file of its own. */
struct model;
struct models {
    const struct model *const *rows;
    size_t count;
};

/* A model, also where not all of it can be used: what is wrong with its file is kept, and
 * told of each boat that is like it, by boat_read_like. Never NULL. The source and the key
 * must live as long as the model. */
const struct model *model_read(const struct source *source, const char *key,
                               struct arena *arena);

/* Its key, and what is wrong with its file. */
const char *model_key(const struct model *model);
const struct problems *model_problems(const struct model *model);

/* A boat's file, with what she has from her model among these. */
struct boat_input {
    const struct source *source;
    const char *key;
    const struct models *models;
};
const struct boat *boat_read_like(const struct boat_input *input, struct arena *arena,
                                  struct problems *problems, bool *sound);

/* Is it asked whether somebody walked round her since her model was changed? Who is to walk
 * round her next has all of it before him: then it is supposed. */
enum walk_rule { WALK_ASKED, WALK_SUPPOSED };
const struct boat *boat_read_by(const struct boat_input *input, enum walk_rule rule,
                                struct arena *arena, struct problems *problems, bool *sound);

/* What a boat has otherwise than her model. What is each boat's own, such as dates, and what
 * does not count since nobody has walked, is none. */
struct difference {
    const char *what;                 /* "boat loa_m", "C4 torch spot", "C12 seacock" */
    const char *hers, *models;        /* NULL: not recorded */
};
struct differences {
    const struct difference *rows;
    size_t count;
};
struct differences boat_differences(const struct boat *boat, const struct model *model,
                                    struct arena *arena);

/* Does gear of that item not count, since nobody has walked round her? Then nothing is
 * recorded of the item, whatever else she has of it. */
bool boat_unwalked(const struct boat *boat, enum item_key item);

/* What of her model does not count and why, and how that is mended, where some does not. */
const char *unwalked_words(const struct boat *boat, struct arena *arena);
const char *unwalked_remedy(const struct boat *boat, struct arena *arena);

/* What names one vessel or beacon among all, as it is written in a boat's file. */
enum identity_kind { IDENTITY_MMSI, IDENTITY_CALL_SIGN, IDENTITY_BEACON };
struct written_identity { enum identity_kind kind; struct text_value value; };
struct written_identities {
    const struct written_identity *rows;
    size_t count;
    bool whole;      /* false: the file gives no tree, and only its lines were looked through */
};

/* All of them, whatever else is wrong with the file: nothing is told. Empty values are
 * among them. */
struct written_identities identities_written(const struct source *source, struct arena *arena);

/* All keys of a boat's file, those of one that is like a model, those of a model's file, and
 * those of their sections. */
const struct field_table *boat_file_fields(void);
const struct field_table *sister_file_fields(void);
const struct field_table *model_file_fields(void);
const struct field_table *equipment_fields(void);
const struct field_table *boat_fields(void);
const struct field_table *engine_fields(void);
const struct field_table *gas_fields(void);
const struct field_table *absence_fields(void);
const struct field_table *radio_fields(void);

/* Has she the room? NOT_RECORDED where her rooms are not. What is no room she has. */
enum answer boat_room(const struct boat *boat, const struct zone *zone);

/* Has she a room below, or may she have? */
bool boat_has_cabin(const struct boat *boat);

/* Is the item fitted? NOT_RECORDED: no piece, and not said that she has none. */
enum answer boat_fitted(const struct boat *boat, enum item_key item);

/* The same for one of her engine spaces, on a boat with two: YES where a piece serves it
 * or may, NO where that is said, NOT_RECORDED also where pieces serve only the other. */
enum answer boat_fitted_for(const struct boat *boat, enum item_key item, enum zone_key space);

/* Where one stands to work the piece: `from`, else its own place. */
const struct zone *worked_zone(const struct equipment *gear);
enum side worked_side(const struct equipment *gear);
const struct text_value *worked_spot(const struct equipment *gear);

/* The spaces that one passes, opens or enters on the way to it, one after another, and last the
 * place of its handle; false past the last. */
bool way_zone(const struct equipment *gear, size_t index, struct zone_value *zone);

/* Is the space among those that the piece is said to serve? */
bool gear_serves(const struct equipment *gear, enum zone_key space);

/* Must one open the same locker for both? By the places that both are in, and the spaces
 * that are opened on the way; a side that is not recorded may be the same. */
bool gear_shares_locker(const struct equipment *a, const struct equipment *b);

/* Is the text written as a tag is: F3, E12? And the piece that has that tag, or NULL. */
bool has_tag_form(const char *text);
const struct equipment *gear_of_tag(const struct boat *boat, const char *tag);

/* What says that the item is not fitted, at all or for that space, if one is given. */
const struct absence *boat_absence(const struct boat *boat, enum item_key item,
                                   enum zone_key space);

/* What says that nobody has looked for the item yet: for that space or, without one, anywhere
 * aboard. NULL: nothing does. The item then counts as not recorded. */
const struct absence *boat_unsurveyed(const struct boat *boat, enum item_key item,
                                      enum zone_key space);

/* Tags of one letter that were given, since higher ones were, and are neither on a piece
 * of the record nor retired. `near`: the piece with the nearest tag, or NULL. */
struct tags_lost {
    size_t count;
    const char *words;                /* C15, C20 to C24 */
    const struct equipment *near;
};
struct tags_lost boat_tags_lost(const struct boat *boat, enum item_class class,
                                struct arena *arena);

/* The highest number of the letter: on gear or retired; as `tags_given` has it. 0: none. */
size_t boat_tag_highest(const struct boat *boat, enum item_class class);
size_t boat_tag_given(const struct boat *boat, enum item_class class);

/* The next free tag of a class for this boat, such as C7. */
const char *boat_free_tag(const struct boat *boat, enum item_class class, struct arena *arena);

/* The one after `given` others were proposed; NULL: no tag of the class is left. */
const char *boat_free_tag_after(const struct boat *boat, enum item_class class, size_t given,
                                struct arena *arena);

#endif
