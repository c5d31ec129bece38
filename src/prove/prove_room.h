/* prove_room.h - what the files of this room share: what is done on a card, in order, as
 * events. Private to src/prove. */
#ifndef MAYDECK_PROVE_ROOM_H
#define MAYDECK_PROVE_ROOM_H

#include "judging.h"
#include "prove.h"

/* A set of hazards or of guards, by value. */
typedef uint32_t flags;
#define FLAG(value) ((flags)1 << (value))

/* Something that is done, and what is so then. */
struct event {
    enum act act;
    const struct card_step *step;     /* NULL: by the call panel, or none */
    const struct equipment *gear;     /* NULL: no piece is worked */
    const struct own_line *local;   /* a line of the base's own that does it; NULL: none */
    flags hazards, guards;
};
struct events {
    struct event *at;
    size_t count, room;
};

/* Another card that this one leads to, and how much of it is done before. */
struct way_on {
    const char *card;                 /* its procedure */
    const struct card_step *step;     /* the last that is done */
    struct place place;
    bool required;                    /* an exit: she must have that card */
    flags hazards;                    /* what is so there */
};

/* One card in one chain. */
struct hazard_walk;
struct visit {
    struct hazard_walk *walk;
    const struct sheet *sheet;
    struct composing *composing;      /* the state of its composing */
    const struct visit *before;       /* the card that led here; NULL: none */
    flags hazards;                    /* what is so at its first step */
    enum zone_key space;              /* that burns or leaks; ZONE_NONE: anywhere below */
    struct events events;             /* behind those of the cards before */
    size_t own;                       /* the first of them that is its own */
    struct way_on *ways;
    size_t way_count, way_room;
};

/* The whole set. */
struct hazard_walk {
    const struct compose_input *input;
    const struct sheet_set *set;
    const struct forbids *forbids;
    struct arena *arena;
    struct composing **states;        /* of each sheet of the set */
    struct hazard_failure *failures;
    size_t failure_count, failure_room;
};

/* ---- item_acts.c ---- */

/* Calls `found` for each act that bringing the gear into the state makes. */
typedef void act_found(void *context, enum act act);
void item_acts(const struct boat *boat, const struct equipment *gear, enum end_state state,
               act_found *found, void *context);

/* ---- events.c ---- */

void event_add(struct visit *visit, struct event event);

/* What the card has people do, in its order, and where it leads. */
void events_make(struct visit *visit);

/* The step and the state in which it wants gear of that kind; STATE_COUNT: it wants none. */
enum end_state state_wanted(const struct card_step *step, enum item_key item);

/* The piece of a row with that tag; NULL: the boat has none. `index` is below tag_count. */
const struct equipment *row_gear(const struct boat *boat, const struct row_item *item,
                                 size_t index);

/* Is the gear in the space that burns or leaks? */
bool gear_in_danger(const struct visit *visit, const struct equipment *gear);

/* ---- guards.c ---- */

/* The guards that stand printed with the step. */
flags guards_printed(const struct card_step *step);

/* ---- panel.c ---- */

/* What the call panel has people do. */
void panel_events(struct visit *visit, flags hazards, flags guards);

/* Are all calls of the card milder than distress? */
bool calls_no_distress(const struct visit *visit);

/* The last step that the line on who calls when names: where a lone person calls. NULL: none. */
const char *call_step(const struct visit *visit);

/* Does the text name that card or step in braces? */
bool text_names(const struct text_value *text, const char *name);

/* ---- judge.c ---- */

/* Holds the card's own events, and the base's own lines on it, against the table and against the
 * nevers of all cards of the chain. */
void visit_judge(struct visit *visit);

/* A failure at that event; `row` may be NULL, then `what` says it. */
void failure_add(struct visit *visit, const struct event *event, const struct forbid *row,
                 const char *rule, const char *what);

#endif
