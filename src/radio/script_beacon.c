/* script_beacon.c - which beacon a boat tells of that went off by mistake (room: radio). Never
 * says an identity that may be mistyped, nor one of several beacons' for another's. */
#include "script.h"

#include <string.h>

#include "beacon.h"
#include "text.h"

/* A B C D E 1 2 3 4 5 in words, a comma between groups. NULL: no identity to be trusted. */
static const char *identity_spelled(const char *hex_id, struct arena *arena)
{
    struct beacon beacon = beacon_decode(hex_id);
    struct text_builder out = text_builder_in(arena);
    uint32_t bad = 0;
    if (!beacon_decodable(&beacon))
        return NULL;
    for (const char *at = beacon_grouped(&beacon, arena); *at != '\0';) {
        size_t length = strcspn(at, " ");
        text_add_format(&out, "%s%s", out.length > 0 ? ", " : "",
                        spell(arena, arena_copy(arena, at, length), &bad));
        at += length + strspn(at + length, " ");
    }
    return out.at;
}

static bool item_is_beacon(enum item_key item)
{
    return item == ITEM_epirb || item == ITEM_personal_beacon;
}

void telling_beacon_set(struct telling *telling, const struct boat *boat)
{
    const struct equipment *found = NULL;
    telling->beacon = "BEACON";
    telling->beacon_identity = NULL;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        if (!item_is_beacon(boat->equipment[i].item.value))
            continue;
        if (found != NULL) {
            telling->beacon = "BEACON";
            telling->beacon_identity = NULL;
            return;
        }
        found = &boat->equipment[i];
        telling->beacon = found->item.value == ITEM_epirb ? "EPIRB" : "PERSONAL BEACON";
        if (!text_empty(found->hex_id.text))
            telling->beacon_identity = identity_spelled(found->hex_id.text, telling->arena);
    }
}
