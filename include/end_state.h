/* end_state.h - how a step leaves a piece of gear, or what is done with it (room: record): the
 * words by which steps and handling name it. Which gear has which is in item_states.h. */
#ifndef MAYDECK_END_STATE_H
#define MAYDECK_END_STATE_H

#include "choice.h"
#include "yaml_fields.h"

#define END_STATE_LIST(X) \
    X(STATE_ON, "on") X(STATE_OFF, "off") X(STATE_SHUT, "shut") X(STATE_OPEN, "open") \
    X(STATE_STOP, "stop") X(STATE_RELEASE, "release") X(STATE_PULL, "pull") \
    X(STATE_TAKE, "take") X(STATE_WEAR, "wear") X(STATE_USE, "use") X(STATE_READY, "ready") \
    X(STATE_TIED, "tied") X(STATE_CUT, "cut") X(STATE_LEAVE, "leave") \
    X(STATE_NEUTRAL, "neutral") X(STATE_AHEAD, "ahead") X(STATE_ASTERN, "astern") \
    X(STATE_IN, "in") X(STATE_OUT, "out") X(STATE_UP, "up") X(STATE_DOWN, "down")
enum end_state {
    STATE_ANY,               /* none is named: the item's one use */
    END_STATE_LIST(CHOICE_NAME) STATE_COUNT
};
extern const char *const end_state_words[];  /* NULL-ended, each at its value less one */

#endif
