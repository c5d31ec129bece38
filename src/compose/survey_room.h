/* survey_room.h - what the files share that make a survey. Private to src/compose. */
#ifndef MAYDECK_SURVEY_ROOM_H
#define MAYDECK_SURVEY_ROOM_H

#include "boat_facts.h"
#include "form_room.h"
#include "survey.h"

struct survey {
    struct form_writer writer;
    struct asked_list asked;      /* what such a boat may have, in the order of the walk */
    size_t number;                /* of the last line: they run through all sheets */
    const char **numbers;         /* of each piece of the record, in its order */
    size_t *walked;               /* the pieces in the order of the lines, */
    size_t walked_count;          /* as far as they were written */
    bool lacks_next;              /* what is asked next is the first that is not recorded */
};

static inline struct composing *survey_composing(struct survey *survey)
{
    return &survey->writer.composing;
}

static inline const struct boat *survey_boat(const struct survey *survey)
{
    return survey->writer.composing.in->boat;
}

/* Is nothing recorded of her but her kind? */
bool survey_is_new(const struct survey *survey);

/* What is said of it in the language of the sheet. */
const char *survey_said(struct survey *survey, const struct phrase *phrase);
const char *survey_word(struct survey *survey, enum word word);

/* The text with long numbers in threes. */
const char *survey_grouped(struct survey *survey, const char *text);

/* "17": the number of the next line. */
const char *survey_number(struct survey *survey);

/* ---- survey_asked.c: what is asked below the last line ---- */

void survey_ask_blank(struct survey *survey, const struct form_blank *blank);
void survey_ask(struct survey *survey, const char *label, enum form_room room);
void survey_ask_choice(struct survey *survey, const char *label, const char *const *choices,
                       size_t count);

/* A fact of gear, by what it may be: with boxes, or room to write. */
void survey_ask_gear(struct survey *survey, enum gear_field field);
void survey_ask_boat(struct survey *survey, enum boat_fact fact);
void survey_ask_radio(struct survey *survey, enum radio_fact fact);
void survey_ask_answer(struct survey *survey, const char *label);
void survey_ask_side(struct survey *survey);

/* How a hand works gear of that kind: for each state where it has contrary ones. `gear` NULL:
 * nothing of it is recorded; else what is recorded is not asked. True when something was. */
bool survey_ask_handling(struct survey *survey, const struct item_kind *kind,
                         const struct equipment *gear);

/* Words of a fact. */
const char *survey_gear_word(struct survey *survey, enum gear_field field);
const char *survey_boat_word(struct survey *survey, enum boat_fact fact);
const char *survey_radio_word(struct survey *survey, enum radio_fact fact);

/* "Not recorded:" is said before what is asked next, the first time. */
enum lacks_said { LACKS_UNSAID, LACKS_SAID };
void survey_lacks_say(struct survey *survey, enum lacks_said *said);

/* ---- survey_try.c ---- */

/* Asks that the piece be brought into each of its states. */
void survey_ask_try(struct survey *survey, const struct equipment *gear);

/* "look only": of gear that is not; NULL of all other. */
const struct phrase *survey_untried(struct survey *survey, enum item_key item);

/* The states that a hand brings it into and out of; gives how many. */
size_t survey_states(struct survey *survey, enum item_key item, const char **words);

/* ---- survey_line.c ---- */

/* Heads of columns: of what is recorded, and of what is not. */
struct survey_columns { const struct form_column *at; size_t count; };
struct survey_columns survey_recorded_columns(struct survey *survey);
struct survey_columns survey_unrecorded_columns(struct survey *survey);

/* A line of a recorded piece, the index of which in the record is given. */
void survey_piece_add(struct survey *survey, size_t index);

/* A line of gear of which nothing is recorded; `space`: for that engine, or none. */
struct survey_unrecorded {
    const struct asked_item *asked;
    enum zone_key space;
    const char *tag;              /* that is proposed; "": none is */
    enum { TICKED_IN_COLUMNS, TICKED_BELOW } ticked;
    const struct phrase *place;   /* where most boats have it, to be told; NULL: the title tells */
};
void survey_unrecorded_add(struct survey *survey, const struct survey_unrecorded *line);

/* ---- survey_walk.c ---- */

/* The sections of the walk, and that of gear which has no place on it. */
void survey_walk_add(struct survey *survey);

/* ---- survey_new.c ---- */

/* The sections of a boat of which nothing is recorded. */
void survey_new_add(struct survey *survey);

/* The engines for which nothing is recorded of gear of that kind: NONE for the boat as a whole.
 * Gives how many; 0: all is recorded. */
size_t survey_spaces_unrecorded(const struct survey *survey, const struct item_kind *kind,
                                enum zone_key *spaces, size_t room);
#define SURVEY_SPACES_MOST 8

/* ---- survey_facts.c, survey_end.c ---- */

void survey_facts_add(struct survey *survey);
void survey_end_add(struct survey *survey);

#endif
