/* brief.h - the skipper's sheet: what a charter's skipper must know of the boat before he takes
 * her over, and what authorities want people aboard to be told (room: compose). */
#ifndef MAYDECK_BRIEF_H
#define MAYDECK_BRIEF_H

#include "compose.h"
#include "gear_date.h"

struct register_rows;    /* register.h */

/* What a card of hers says otherwise than when she was last handed over, in the words of the
 * register; "" where these are not kept. */
struct hire_change { const char *number, *reason; };

/* A charter that a skipper is briefed for. */
struct hire {
    struct charter days;
    size_t people;                   /* all aboard, children among them; never 0 */
    size_t children;
    const int *kg;                   /* their body masses, one each; NULL: not told */
    struct date since;               /* when the boat was last handed over; year 0: not told */
    const struct register_rows *hung;    /* what hung then; NULL: no register tells. Composing reads
                                        but what follows from it: */
    const struct hire_change *changes;   /* of the boat that is briefed for */
    size_t change_count;
};

/* The form, about the boat and the `hire` of the input. `cards` is her set as it would be printed:
 * which of it are held back is on page one. Each showstopper is also told as a deficiency. A set
 * of no sheet, with problems, where her call cannot be said. */
const struct sheet_set *brief_compose(const struct compose_input *input,
                                      const struct sheet_set *cards, struct arena *arena,
                                      struct problems *problems);

/* ---- what people aboard are told and shown ---- */

/* When it is told: at the table and below the evening before; on deck before casting off. */
enum brief_pass { PASS_EVENING, PASS_DECK, PASS_COUNT };

enum brief_topic {
    TOPIC_DEPUTY, TOPIC_JACKETS, TOPIC_LIFESAVING, TOPIC_EXITS, TOPIC_AID, TOPIC_CALL,
    TOPIC_DANGERS, TOPIC_FIRE, TOPIC_GAS, TOPIC_TOUCH, TOPIC_ALARMS, TOPIC_HEALTH,
    TOPIC_WORN, TOPIC_SWIM, TOPIC_ANCHOR, TOPIC_LIFT, TOPIC_MOVE, TOPIC_PLAN, TOPIC_ASHORE,
    TOPIC_COUNT
};

enum { TOPIC_SOURCES_MOST = 3 };

/* A topic, which has one line on the sheet of every boat. */
struct brief_topic_row {
    enum word word;
    enum brief_pass pass;
    /* Who asks for it: keys of procedures/sources.yaml, the first ones; none: practice. */
    const char *sources[TOPIC_SOURCES_MOST];
};
const struct brief_topic_row *brief_topic_row(enum brief_topic topic);

/* Its number on the sheet, from 1; and whether such gear is shown for it. */
size_t brief_topic_number(enum brief_topic topic);
bool brief_topic_shows(enum brief_topic topic, enum item_key item);

#endif
