/* boat_draw.h - a generated boat while she is drawn: the facts that decide what she can have.
 * Private to tests/generate. */
#ifndef MAYDECK_GENERATE_BOAT_DRAW_H
#define MAYDECK_GENERATE_BOAT_DRAW_H

#include "draw.h"

#include <stdint.h>
#include <stdio.h>

#define BOAT_NAME_SIZE 24

/* Facts of a boat that decide what she can have. */
#define BOAT_FACT_LIST(X) \
    X(CABIN) X(OPEN) X(SAIL) X(MOTOR) X(ONE_HULL) X(CATAMARAN) X(TRIMARAN) \
    X(FLYBRIDGE) X(PLATFORM) X(ROOF) \
    X(FORE_CABIN) X(FORE_TOILET) X(SALOON) X(GALLEY) X(CHART_TABLE) X(AFT_TOILET) X(AFT_CABIN) \
    X(AFT_CABINS) X(BRIDGE_DECK) X(HULLS) X(DOOR) \
    X(ENGINE_SPACE) X(TWO_SPACES) X(TWO_ENGINES) X(DIESEL) X(PETROL) X(OUTBOARD) X(ELECTRIC) \
    X(GENERATOR) X(SHAFT) X(SAILDRIVE) X(GAS) X(RADIO) X(DSC)

enum boat_fact {
#define FACT_OF(name) FACT_##name,
    BOAT_FACT_LIST(FACT_OF)
#undef FACT_OF
    FACT_COUNT
};
#define FACT(name) ((uint64_t)1 << FACT_##name)

/* What a part of the boat is for the crew; each boat has one place or several for each. */
#define ROLE_LIST(X) \
    X(COCKPIT) X(HELM) X(LOCKER) X(DOOR) X(SALOON) X(GALLEY) X(CHART) X(BERTH) X(FORE) \
    X(FORE_TOILET) X(AFT_TOILET) X(ENGINE) X(BILGE) X(RAIL) X(STERN) X(BOW) X(ROOF) X(GAS) \
    X(SIDE_DECK) X(HULL) X(ESCAPE)

enum role {
#define ROLE_OF(name) ROLE_##name,
    ROLE_LIST(ROLE_OF)
#undef ROLE_OF
    ROLE_COUNT
};
#define ROLE(name) ((uint32_t)1 << ROLE_##name)

enum hand { HAND_PORT, HAND_STARBOARD, HAND_CENTRE, HAND_COUNT };

/* A boat while she is written. */
struct boat_draw {
    struct draw draw;
    FILE *file;
    uint64_t facts;               /* FACT() of each */
    int loa_dm, beam_dm, persons; /* decimetres */
    int gear_share;               /* of a hundred: how much of the gear she might have */
    int usual_way;                /* of several in which things are worked */
    unsigned mmsi;                /* the six figures that are her own */
    enum hand hand_of[ROLE_COUNT];/* on which side a room with one side lies */
    int tags[128];                /* by letter: the last one given */
    int openings;                 /* counted in the hull, */
    int recorded;                 /* and of these recorded up to now */
};

/* The head of the record: the boat herself, her engines, gas, radio. Sets the facts. */
void kind_write(struct boat_draw *boat, int index);

/* The equipment, the tags given and what she has not. */
void equipment_write(struct boat_draw *boat);

#endif
