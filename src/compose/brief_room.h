/* brief_room.h - what the files of the skipper's sheet share. Private to src/compose. */
#ifndef MAYDECK_BRIEF_ROOM_H
#define MAYDECK_BRIEF_ROOM_H

#include "brief.h"
#include "form_room.h"
#include "reading.h"

/* The sheet being written. */
struct briefing {
    struct form_writer writer;
    const struct hire *hire;
    const struct sheet_set *cards;
};

/* ---- brief.c ---- */

/* Begins a section with that title; `note` may be NULL. */
struct brief_section {
    enum word title;
    const struct phrase *note;
    const struct form_column *columns;
    size_t column_count;
    enum form_start start;
    enum form_manner manner;
};
void brief_section_add(struct briefing *briefing, const struct brief_section *section);

/* What a cell says; NULL says nothing. */
struct form_cell brief_cell(struct briefing *briefing, const struct phrase *phrase);

/* A line to write upon, with words before it; a cell of FORM_BLANK without such a line. */
struct form_cell brief_blank(struct briefing *briefing, const struct phrase *phrase);
#define NO_BLANK ((struct form_cell){NULL, NULL})

/* The sign and the tag of a piece; NULL: of none. */
struct form_cell brief_sign(const struct equipment *gear);

/* Columns of one text, and of one line to write upon, over the whole width; and a line of each. */
extern const struct form_column brief_text_column[1], brief_blank_column[1];
void brief_text_add(struct briefing *briefing, const struct phrase *phrase, struct place origin);
void brief_blank_add(struct briefing *briefing, const struct phrase *phrase);

/* A word that stands alone; a day; a number. */
const struct phrase *brief_word(const struct briefing *briefing, enum word word);
const struct phrase *brief_day(const struct briefing *briefing, struct date date);
const struct phrase *brief_number(const struct briefing *briefing, size_t number);

/* "Engine stop" of a piece, and "Cockpit, STARBOARD, by the wheel", where one works it; the last
 * with how that is done. */
const struct phrase *brief_gear(struct briefing *briefing, const struct equipment *gear);
const struct phrase *brief_where(struct briefing *briefing, const struct equipment *gear);
const struct phrase *brief_place(struct briefing *briefing, const struct equipment *gear);

/* "9 people aboard, 2 of them children" */
const struct phrase *brief_people(const struct briefing *briefing);

/* ---- the parts, each of one section or several ---- */

void brief_stoppers_add(struct briefing *briefing);     /* brief_stoppers.c */

/* brief_call.c: who calls and what is said; the same as practice. False: it cannot be said. */
bool brief_call_add(struct briefing *briefing);
bool brief_rehearsal_add(struct briefing *briefing);

void brief_differs_add(struct briefing *briefing);      /* brief_differs.c */

/* brief_topics.c: the topics of a pass, and the walk that belongs to it. */
void brief_topics_add(struct briefing *briefing, enum brief_pass pass);
void brief_walk_add(struct briefing *briefing, enum brief_pass pass);

/* brief_people.c */
void brief_roles_add(struct briefing *briefing);
void brief_aboard_add(struct briefing *briefing);
void brief_ashore_add(struct briefing *briefing);
void brief_proof_add(struct briefing *briefing);
void brief_guests_add(struct briefing *briefing);       /* brief_guests.c */

/* brief_base.c: what only the base can tell. */
void brief_since_add(struct briefing *briefing);
void brief_rules_add(struct briefing *briefing);
void brief_contacts_add(struct briefing *briefing);

/* ---- brief_short.c: what a charter is short of ---- */

/* One of them, the gravest first. */
struct stopper {
    const struct equipment *gear;        /* whose tag stands before it; NULL: none */
    const struct phrase *said;
    struct place origin;
    bool grave;                          /* nobody sails with it unless the base says so */
};
struct stoppers {
    struct stopper *rows;
    size_t count, room;
};

/* Too many people, and too few lifejackets, raft places and radios for them. */
void shortages_find(struct briefing *briefing, struct stoppers *stoppers);

/* Adds one, and tells it: the message in English with its remedy. */
void stopper_add(struct briefing *briefing, struct stoppers *stoppers,
                 const struct stopper *stopper, const char *remedy, const char *message);

/* Is the piece good to the end of the charter, by what is recorded? */
bool gear_lasts(const struct briefing *briefing, const struct equipment *gear);

#endif
