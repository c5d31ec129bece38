/* call_room.h - what the two files of the call panel share. Private to them. */
#ifndef MAYDECK_CALL_ROOM_H
#define MAYDECK_CALL_ROOM_H

#include "compose_room.h"

/* How a card's call is made on this boat. */
struct calling {
    enum call_from from;
    bool from_deck;       /* with the handheld alone, on deck */
    bool can_call;        /* else there is no script to say */
    bool mayday, other;   /* the graver call; beside it a milder one */
    enum reach most;      /* how far one may go for what calls for help */
};

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

/* The lines on working what there is, in order. */
const struct card_text *operate_lines(struct composing *composing,
                                      const struct calling *calling, size_t *count);

#endif
