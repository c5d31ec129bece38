/* engines.c - what may drive each kind of generated boat. */
#include "kinds.h"

#include <stddef.h>

#define IN_SPACE(space, fuel, drive) \
    "  - {space: " space ", fuel: " fuel ", drive: " drive "}\n"
#define IN_HULLS(fuel, drive) \
    IN_SPACE("engine_space_port", fuel, drive) IN_SPACE("engine_space_starboard", fuel, drive)
#define GENERATES(space) IN_SPACE(space, "diesel", "generator")
#define ONE_OUTBOARD "  - {fuel: petrol, drive: outboard}\n"

const struct engine_set engines_yacht[] = {
    {FACT(ENGINE_SPACE) | FACT(DIESEL) | FACT(SHAFT), IN_SPACE("engine_space", "diesel", "shaft")},
    {FACT(ENGINE_SPACE) | FACT(DIESEL) | FACT(SAILDRIVE),
     IN_SPACE("engine_space", "diesel", "saildrive")},
    {FACT(ENGINE_SPACE) | FACT(DIESEL) | FACT(SHAFT) | FACT(GENERATOR),
     IN_SPACE("engine_space", "diesel", "shaft") GENERATES("engine_space")},
    {FACT(ENGINE_SPACE) | FACT(ELECTRIC) | FACT(SAILDRIVE),
     IN_SPACE("engine_space", "electric", "saildrive")},
    {0, NULL}};
const struct engine_set engines_small[] = {
    {FACT(ENGINE_SPACE) | FACT(DIESEL) | FACT(SAILDRIVE),
     IN_SPACE("engine_space", "diesel", "saildrive")},
    {FACT(OUTBOARD) | FACT(PETROL), ONE_OUTBOARD},
    {0, NULL}};
const struct engine_set engines_catamaran[] = {
    {FACT(DIESEL) | FACT(SHAFT), IN_HULLS("diesel", "shaft")},
    {FACT(DIESEL) | FACT(SAILDRIVE), IN_HULLS("diesel", "saildrive")},
    {FACT(DIESEL) | FACT(SHAFT) | FACT(GENERATOR),
     IN_HULLS("diesel", "shaft") GENERATES("engine_space_port")},
    {FACT(ELECTRIC) | FACT(SAILDRIVE), IN_HULLS("electric", "saildrive")},
    {0, NULL}};
const struct engine_set engines_open[] = {
    {FACT(OUTBOARD) | FACT(PETROL), ONE_OUTBOARD},
    {FACT(OUTBOARD) | FACT(PETROL) | FACT(TWO_ENGINES), ONE_OUTBOARD ONE_OUTBOARD},
    {FACT(ENGINE_SPACE) | FACT(DIESEL) | FACT(SHAFT), IN_SPACE("engine_space", "diesel", "shaft")},
    {FACT(ENGINE_SPACE) | FACT(PETROL), IN_SPACE("engine_space", "petrol", "jet")},
    {0, NULL}};
const struct engine_set engines_one[] = {
    {FACT(DIESEL) | FACT(SHAFT), IN_SPACE("engine_space", "diesel", "shaft")},
    {FACT(DIESEL), IN_SPACE("engine_space", "diesel", "stern_drive")},
    {FACT(PETROL), IN_SPACE("engine_space", "petrol", "stern_drive")},
    {0, NULL}};
const struct engine_set engines_two[] = {
    {FACT(DIESEL) | FACT(SHAFT),
     IN_SPACE("engine_space", "diesel", "shaft") IN_SPACE("engine_space", "diesel", "shaft")},
    {FACT(DIESEL) | FACT(SHAFT) | FACT(GENERATOR),
     IN_SPACE("engine_space", "diesel", "shaft") IN_SPACE("engine_space", "diesel", "shaft")
     GENERATES("engine_space")},
    {0, NULL}};
