/* boat_facts.h - the facts of a boat and of her fixed radio by name (room: record). Their
 * rows are in boat_fact_list.h; those of gear in item_fields.h. */
#ifndef MAYDECK_BOAT_FACTS_H
#define MAYDECK_BOAT_FACTS_H

#include "boat_fact_list.h"
#include "yaml_fields.h"

enum boat_fact {
    BOAT_FACT_NONE,          /* no fact is given */
#define BOAT_FACT_ENUM(key, ...) BOAT_##key,
    BOAT_FACT_LIST(BOAT_FACT_ENUM)
#undef BOAT_FACT_ENUM
    BOAT_FACT_COUNT
};

enum radio_fact {
    RADIO_FACT_NONE,         /* no fact is given */
#define RADIO_FACT_ENUM(key, ...) RADIO_##key,
    RADIO_FACT_LIST(RADIO_FACT_ENUM)
#undef RADIO_FACT_ENUM
    RADIO_FACT_COUNT
};

/* The row of a fact, in boat_fields or radio_fields; NULL for none. */
const struct field *boat_fact_row(enum boat_fact fact);
const struct field *radio_fact_row(enum radio_fact fact);

#endif
