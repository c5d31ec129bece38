/* call_room.h - what the files of the call panel share. Private to them. */
#ifndef MAYDECK_CALL_ROOM_H
#define MAYDECK_CALL_ROOM_H

#include "compose_room.h"

/* How a card's call is made on this boat. */
struct calling {
    enum call_from from;  /* what is about: which column of the ladder */
    bool can_call;        /* else there is no script to say */
    bool mayday, other;   /* the graver call; beside it a milder one */
    bool apart;           /* what is done without an answer stands in a block of its own, and the
                             telephone numbers stand below */
};

/* ---- call_ladder.c ---- */

/* The ways to be heard; of those at one place of the order the first comes first. */
enum means {
    MEANS_RED_KEY,            /* of the fixed set, where its alert names the boat */
    MEANS_SECOND_STATION,     /* a second handset of the set, on deck */
    MEANS_FIXED_SET,
    MEANS_HANDHELD_DECK,      /* one that lies on deck */
    MEANS_HANDHELD_BELOW,     /* where none does: in the companionway, or farther in */
    MEANS_PHONE,              /* to the rescue centre */
    MEANS_EPIRB, MEANS_PERSONAL_BEACON, MEANS_FLARES, MEANS_SART,
    MEANS_SIGNALS,            /* arms, whistle, voice */
    MEANS_COUNT
};

/* What must be so for a rung to be on the ladder, or how it is to be used there. */
enum rung_condition {
    RUNG_FREE,                /* nothing */
    RUNG_OUTSIDE_SMOKE,       /* the set alone, whose lines say so */
    RUNG_UPWIND,              /* far upwind of the vapour */
    RUNG_CLEAN_AIR,           /* nothing aboard that gives vapour: declared, not assumed */
    RUNG_CARRIED,             /* by who has it with him: nobody fetches it */
    RUNG_WITH_CALL,           /* with the first call, wherever the boat is */
    RUNG_AT_RAIL,             /* at a rail far from the fire */
    RUNG_IN_RAFT,             /* where a raft is fitted, in it */
    RUNG_UPRIGHT,             /* not on a boat that lies upside down */
    RUNG_SPARE_AERIAL         /* by the aerial that stands for the one on the mast */
};

struct rung_rule {
    int place;                /* in the order, from 1; 0: not on the ladder */
    enum reach most;          /* how far one may go for it */
    enum rung_condition condition;
};

struct rung {
    enum means means;
    const struct rung_rule *rule;
    const struct equipment *gear;     /* NULL: it is no piece of the record, or not known */
    const struct phrase *drafted;     /* a draft's words for one that nobody recorded */
};

struct ladder {
    const struct calling *calling;
    struct rung rungs[MEANS_COUNT];
    size_t count;
};

/* What this boat has of it under this card's danger, in order. */
struct ladder ladder_make(struct composing *composing, const struct calling *calling);

/* The rung of that kind; NULL: it is not there. */
const struct rung *ladder_rung(const struct ladder *ladder, enum means means);

/* The radio whose working the panel tells act by act; NULL: there is none to speak by. */
const struct rung *ladder_worked(const struct ladder *ladder);

/* May the fixed set be worked, wherever it is, and its red key be pressed first? */
bool set_is_first(const struct calling *calling);

bool is_voice(enum means means);
bool is_handheld(enum means means);

/* Does it mean grave danger, so that no milder call may name it? */
bool means_is_distress(enum means means);

/* "at the wheel", or zone and side where no spot is recorded: where the second handset is. */
const struct phrase *second_station_named(struct composing *composing);

/* The first piece of that kind; NULL: none. */
const struct equipment *call_first_gear(const struct composing *composing, enum item_key item);

/* ---- call_lines.c ---- */

struct call_line_list {
    struct card_text *at;
    size_t count, room;
};

struct call_lines {
    struct call_line_list all;
    struct call_line_list acts;        /* those that are numbered again, without their number */
    size_t act_first;                  /* which of all is the first of them */
    size_t yielding;                   /* the line that yields, from 1; 0: none */
    struct call_line_list *after;      /* where what is done without an answer goes */
};

void call_line_put(struct composing *composing, struct call_line_list *list,
                   const struct phrase *line, struct place origin);

/* A line of all, of a phrase or of a word alone. */
void call_line_add(struct composing *composing, struct call_lines *lines,
                   const struct phrase *line, struct place origin);
void call_word_add(struct composing *composing, struct call_lines *lines, enum word word,
                   struct place origin);

/* The same, done in its turn: it gets a number. */
void call_act_add(struct composing *composing, struct call_lines *lines,
                  const struct phrase *line, struct place origin);
void call_act_word_add(struct composing *composing, struct call_lines *lines, enum word word,
                       struct place origin);

/* A sentence with the gear's {tag} and {place}; the gear stands on the plan then. */
const struct phrase *call_gear(struct composing *composing, enum word word,
                               const struct equipment *gear);

/* The line for a MAYDAY alone, where the card knows a milder call too. */
const struct phrase *for_mayday(struct composing *composing, const struct calling *calling,
                                const struct phrase *line);

/* ---- call_report.c ---- */

/* What is wrong, as the call says it, with what the cases taken on this boat add. */
const char *call_nature(struct composing *composing, const struct procedure_call *call);

/* ---- call_set.c ---- */

/* How the radio is worked that is spoken by, act by act, and what its alert does not tell. */
void worked_lines(struct composing *composing, struct call_lines *lines,
                  const struct ladder *ladder);

/* Can that handheld send an alert, so that its own red key is pressed first? */
bool handheld_alerts(const struct ladder *ladder, const struct equipment *handheld);

/* ---- call_operate.c ---- */

/* The lines on working what there is, in order; `acts` are those with a number again, without
 * it. */
struct operating {
    const struct card_text *lines, *acts;
    const struct card_text *after;     /* what is done without an answer, where it is apart */
    size_t count, act_count, after_count;
    size_t act_first, yielding;        /* of the lines */
};

/* May there be smoke where that radio is, so that words about it go before? */
bool stands_in_smoke(const struct composing *composing, const struct ladder *ladder,
                     const struct rung *rung);

struct operating operate_lines(struct composing *composing, const struct ladder *ladder);

/* ---- call_silent.c ---- */

/* The same where there is nothing to speak by. */
void no_radio_lines(struct composing *composing, struct call_lines *lines,
                    const struct ladder *ladder);

/* The beacons that go with the first call, and what is done where nobody answers it. */
void no_answer_lines(struct composing *composing, struct call_lines *lines,
                     const struct ladder *ladder);

#endif
