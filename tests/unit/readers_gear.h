/* readers_gear.h - what must be aboard beside a piece of gear so that its facts are asked for. */
#ifndef MAYDECK_READERS_GEAR_H
#define MAYDECK_READERS_GEAR_H

#include <string.h>

#include "item.h"
#include "text.h"

/* The gear of a boat that lacks nothing; with a battery also the vents of the space it shares. */
static inline const char *gear_beside(struct arena *arena, const char *gear, enum item_key item)
{
    static const char lacking[] = "engine_vent_closure, ", begin[] = "equipment:\n";
    const char *at = strstr(gear, lacking);
    if (item != ITEM_lithium_bank || at == NULL)
        return gear;
    return text_format(arena, "%s  - {item: engine_vent_closure, tag: C72, zone: cockpit, "
                       "how: {shut: push, open: pull}}\n%.*s%s", begin,
                       (int)(at - gear - (ptrdiff_t)strlen(begin)), gear + strlen(begin),
                       at + strlen(lacking));
}

#endif
