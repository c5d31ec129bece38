/* rules_gear.c - what several families of checks ask of a piece of gear (room: rules).
 * Tells nothing. */
#include "rules_room.h"

#include "text.h"

const struct equipment *gear_of_kind(const struct boat *boat, enum item_key item, size_t *index)
{
    while (*index < boat->equipment_count) {
        const struct equipment *gear = &boat->equipment[(*index)++];
        if (gear->kind->item == item)
            return gear;
    }
    return NULL;
}

bool gear_may_serve(const struct boat *boat, const struct equipment *gear, enum zone_key space)
{
    if (boat->engine_space_count < 2 || !gear->serves.given)
        return true;
    return gear_serves(gear, space);
}

bool space_served(const struct boat *boat, enum item_key item, enum zone_key space)
{
    size_t index = 0;
    for (const struct equipment *gear; (gear = gear_of_kind(boat, item, &index)) != NULL;)
        if (gear_may_serve(boat, gear, space))
            return true;
    return false;
}

const char *gear_named(const struct rule_run *run, const struct equipment *gear)
{
    const char *tag = gear->tag.text, *name = gear->name.text;
    return text_format(run->arena, "%s%s%s%s%s%s", gear->kind->key, tag == NULL ? "" : " ",
                       tag == NULL ? "" : tag, name == NULL ? "" : " (",
                       name == NULL ? "" : name, name == NULL ? "" : ")");
}

enum answer boat_specimen(const struct boat *boat)
{
    const struct answer_value *specimen = &boat->facts.specimen;
    if (specimen->answer == ANSWER_NOT_RECORDED && specimen->place.line == 0)
        return ANSWER_NO;
    return specimen->answer;
}

struct place place_not_fitted(const struct boat *boat, enum item_key item, enum zone_key space)
{
    const struct absence *absence = boat_absence(boat, item, space);
    return absence == NULL ? boat->place : absence->place;
}

struct place place_else(struct place given, struct place otherwise)
{
    return given.line != 0 ? given : otherwise;
}

const struct equipment *gear_needing(const struct boat *boat, enum trait trait)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (item_needs_trait(boat->equipment[i].item.value) == trait)
            return &boat->equipment[i];
    return NULL;
}
