/* record.h - what the files of this room share. Private to src/record. */
#ifndef MAYDECK_RECORD_H
#define MAYDECK_RECORD_H

#include "boat.h"
#include "reading.h"
#include "trait.h"

/* ---- placeholder.c ---- */

/* What a text is: words of a language, or a name or code, which can be "X". */
enum text_use { TEXT_WORDS, TEXT_NAME };

/* What of a text stands where a fact is yet to be written, such as tbd: the text itself
 * or words in it; NULL: nothing. */
const char *placeholder_in(const char *text, enum text_use use, struct arena *arena);

/* ---- boat_fields.c ---- */

/* Can a boat be read, and have cards, by what her model gives? */
enum fitness { FITNESS_WHOLE, FITNESS_NO_CARDS, FITNESS_NOT_READ };

/* A boat's file as its tables read it. */
struct boat_file {
    struct boat record;
    struct section_value boat, gas, radio, cards;
    struct entries_value engines, equipment, not_fitted, not_surveyed, silenced, lines;
    struct text_value like;
    struct section_value walked;
    struct walk walk;
    struct list_value not_here;       /* tags of the model's gear that she has not */
    struct date_value changed;        /* of a model's file */
    enum fitness fitness;             /* beside what was told of it */
    enum walk_rule walk_rule;
};

/* ---- model_read.c ---- */

struct model {
    const char *key;
    const struct source *source;
    struct boat_file file;
    bool sound;
    struct problems *problems;
};

/* ---- inherit.c ---- */

/* Fills a boat's file with what her model gives, and keeps in her likeness what of it does
 * not count. What cannot be is told. She has no cards where her model has errors; she is not
 * read where what every boat must have does not count. */
void model_inherit(struct boat_file *file, const struct boat_input *input, struct arena *arena,
                   struct problems *problems);

/* ---- inherit_tags.c ---- */

/* Adds to a boat's lists of tags what her model's have: of the last one of a letter the
 * higher counts. */
void tags_inherit(struct boat *boat, const struct boat *model, struct arena *arena);

/* ---- inherit_gear.c ---- */

/* A boat's file as it is filled from her model. */
struct inheriting {
    struct boat_file *file;
    const struct model *model;
    struct arena *arena;
    struct problems *problems;
    struct entries_value own_gear, own_absences, own_unsurveyed;   /* as her own file has them */
    struct section_value own_boat;    /* the same */
    struct text_builder unwalked;     /* what does not count, with commas between */
    bool *supposed;                   /* something counts though nobody walked round her for it */
    enum item_key *items;             /* of the gear among it */
    size_t item_count, item_room;
    struct text_value *tags;          /* of the model, on none of her gear */
    size_t tag_count, tag_room;
};

/* Did somebody walk round her on the day of that change or later, and on or after that of the
 * model as a whole? NULL: of a part without a day of its own. */
bool is_walked(const struct inheriting *inheriting, const struct date_value *changed);

/* Keeps the tag for the piece which her sisters have: no other of hers may get it. */
void tag_keep(struct inheriting *inheriting, const struct text_value *tag);

/* Notes a part that would be hers, but does not count. */
void unwalked_add(struct inheriting *inheriting, const char *words, enum item_key item);

/* Does her own file say that she has no such gear for these engines (none: at all), or that
 * nobody has looked for it? Then the model's does not count. */
bool says_otherwise(const struct inheriting *inheriting, enum item_key item,
                    const struct zone_values *serves);

/* Her gear and what she has not, out of the model's and her own. */
void gear_inherit(struct inheriting *inheriting);
void absences_inherit(struct inheriting *inheriting);

/* ---- base_fields.c ---- */

/* A base's file as its tables read it. */
struct base_file {
    struct base_record record;
    struct section_value base, rescue_centre, ashore, cruising_area, first_aid, dates, cards;
    struct entries_value intervals, shelters, clocks, approvals, lines;
};

/* ---- base_places.c ---- */

/* Reads the texts of positions and of the variation into numbers. What is wrong with
 * one, or lies outside the cruising area's hemispheres, is an error, and the number
 * stays not given. The cruising area must have been read. */
void base_places_settle(struct base_record *base, struct problems *problems);
/* base_clocks.c: reads the offsets of the clocks, and holds their days against each other. */
void clocks_take(struct base_record *base, const struct entries_value *entries,
                 struct arena *arena, struct problems *problems);

void shelter_settle(const struct base_record *base, struct shelter *shelter,
                    struct problems *problems);

/* ---- boat_*.c ---- */

/* One boat as it is being read: all entries, also those that cannot be used. */
struct boat_reading {
    struct boat *boat;
    struct equipment *gear;
    size_t gear_count;
    struct arena *arena;
    struct problems *problems;
};

/* Looks up kinds and zones, settles sides and positions, and tells what cannot
 * be. An entry whose place cannot be used has no place_zone afterwards. */
void places_settle(struct boat_reading *reading);

/* Positions given as `at: [x, y]`. */
void position_settle(struct boat_reading *reading, struct equipment *gear);

/* Is it one of the boat's engine spaces? Tells those that she does not have. */
bool boat_has_space(const struct boat *boat, enum zone_key space);
void spaces_exist(const struct boat_reading *reading, const struct zone_values *serves);

/* Tells handling that is not given by state where gear has two, and states it has not. */
void handling_check(const struct boat_reading *reading, const struct equipment *gear);

/* Tells tags that are missing, of the wrong form, used twice or retired. */
void tags_check(struct boat_reading *reading);

/* A tag: the row of its letter among those of the classes, and its number. False: it is not one
 * of F1 to F99, likewise E and C, without a leading zero. */
struct tag {
    size_t row;
    size_t number;
};
bool tag_parse(const char *text, struct tag *tag);

/* Tells gear that stands twice in one place. */
void doubles_check(struct boat_reading *reading);

/* What `not_fitted` and `not_surveyed` say. */
void absences_take(struct boat_reading *reading, const struct boat_file *file);

/* Is the space among those that the entry is about? */
bool absence_covers(const struct absence *absence, enum zone_key space);

/* ---- absence_conflicts.c ---- */

/* Tells what is in both lists, twice in one, or in one of them and recorded as a piece. */
void absences_check(const struct boat_reading *reading);

/* Is a piece recorded, or the item in not_fitted? Whatever she is. */
enum answer fitted_as_recorded(const struct boat *boat, enum item_key item);

/* Are the two entries of one kind, with nothing in their places that parts them? */
bool equipment_same_place(const struct equipment *a, const struct equipment *b);

/* ---- gear_traits.c ---- */

/* Is there gear that she would not have without it; does her dinghy hold all; do her cutters
 * cut her thickest wire? */
struct trait_fact trait_by_gear(const struct boat *boat, enum item_key item);
struct trait_fact trait_dinghy_for_all(const struct boat *boat);
struct trait_fact trait_cutters_fit(const struct boat *boat);

#endif
