/* call_room.h - what the files of the call panel share. Private to them. */
#ifndef MAYDECK_CALL_ROOM_H
#define MAYDECK_CALL_ROOM_H

#include "compose_room.h"

/* How a card's call is made on this boat. */
struct calling {
    enum call_from from;
    bool from_deck;       /* with the handheld alone, on deck */
    bool can_call;        /* else there is no script to say */
    bool mayday, other;   /* the graver call; beside it a milder one */
    bool apart;           /* what is done without an answer stands in a block of its own, and the
                             telephone numbers stand below */
    enum reach most;      /* how far one may go for what calls for help */
};

/* ---- call_lines.c ---- */

struct call_line_list {
    struct card_text *at;
    size_t count, room;
};

struct call_lines {
    struct call_line_list all;
    struct call_line_list acts;        /* those that are numbered again, without their number */
    size_t act_first;                  /* which of all is the first of them */
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

/* ---- call_operate.c ---- */

/* The first piece of that kind; NULL: none. */
const struct equipment *call_first_gear(const struct composing *composing, enum item_key item);

/* The handheld that may be taken without going into vapour or smoke; NULL: none. */
const struct equipment *handheld_at_hand(const struct composing *composing);

/* "Handheld radio NOT RECORDED" of a draft: whether there is one is asked, and the card waits
 * for it. NULL: it is recorded, or the card is no draft. */
const struct phrase *handheld_drafted(struct composing *composing);

/* A sentence with the gear's {tag} and {place}; the gear stands on the plan then. */
const struct phrase *call_gear(struct composing *composing, enum word word,
                               const struct equipment *gear);

/* The lines on working what there is, in order; `acts` are those with a number again, without
 * it. */
struct operating {
    const struct card_text *lines, *acts;
    const struct card_text *after;     /* what is done without an answer, where it is apart */
    size_t count, act_count, after_count;
    size_t act_first;                  /* of the lines */
};
struct operating operate_lines(struct composing *composing, const struct calling *calling);

#endif
