/* card_choice.h - which cards a base hangs in its boats, as its file or that of one boat says
 * (room: record). */
#ifndef MAYDECK_CARD_CHOICE_H
#define MAYDECK_CARD_CHOICE_H

#include "yaml_fields.h"

/* Procedures by key. Of a boat each list that is given takes the place of the base's. */
struct card_choice {
    struct list_value leave_out;      /* cards that she could have, and has not */
    struct list_value add;            /* cards that are made only where they are asked for */
};

/* The keys of the section. */
extern const struct field_table card_choice_table;

#endif
