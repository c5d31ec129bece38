/* call_script.c - the scripts of the distress card, for the card and for those who
 * rehearse a call without it (room: compose). Never shortens them: the card does. */
#include "compose_room.h"

#include "beacon.h"

bool by_handheld_only(const struct boat *boat)
{
    return boat_fitted(boat, ITEM_vhf_dsc) == ANSWER_NO;
}

bool no_radio_aboard(const struct boat *boat)
{
    return by_handheld_only(boat) && boat_fitted(boat, ITEM_vhf_handheld) == ANSWER_NO;
}

bool boat_can_alert(const struct boat *boat)
{
    return boat_is(boat, TRAIT_DSC, ZONE_NONE);
}

bool boat_has_beacon(const struct boat *boat)
{
    return boat_fitted(boat, ITEM_epirb) == ANSWER_YES ||
           boat_fitted(boat, ITEM_personal_beacon) == ANSWER_YES;
}

struct script_request call_request(const struct boat *boat, enum script_form form,
                                   const struct nature *nature)
{
    return (struct script_request){.form = form, .nature = nature == NULL ? NULL : nature->phrase,
                                   .from_handheld = by_handheld_only(boat),
                                   .person_lost = nature != NULL &&
                                                  nature == nature_of(NATURE_MOB)};
}

const struct script *call_script(const struct compose_input *input, enum script_form form,
                                 const struct nature *nature, struct arena *arena,
                                 struct problems *problems)
{
    struct script_request request = call_request(input->boat, form, nature);
    return script_make(&request, input->boat, input->base, arena, problems);
}

/* What was refused in the name or call sign is an error of its own elsewhere. */
static void spelled_add(struct text_builder *out, const char *what, const char *word)
{
    uint32_t bad = 0;
    const char *spelled = spell(out->arena, word, &bad);
    if (spelled != NULL)
        text_add_format(out, "%s %s: %s\n", what, word, spelled);
}

/* An item's key as it is said: epirb gives EPIRB. */
static const char *gear_said(const struct equipment *gear, struct arena *arena)
{
    char *said = text_upper(arena, gear->kind->key);
    for (char *at = said; *at != '\0'; at++)
        if (*at == '_')
            *at = ' ';
    return said;
}

/* The rescue centre asks for it when a false alert is cancelled. An identity that
 * cannot be decoded is likely mistyped, and would stop nobody's search. */
static void beacon_add(struct text_builder *out, const struct equipment *gear)
{
    if (gear->kind == NULL || text_empty(gear->hex_id.text))
        return;
    struct beacon beacon = beacon_decode(gear->hex_id.text);
    if (!beacon_decodable(&beacon))
        return;
    text_add(out, gear_said(gear, out->arena));
    if (!text_empty(gear->tag.text))
        text_add_format(out, " %s", gear->tag.text);
    text_add_format(out, " %s: %s\n", beacon_grouped(&beacon, out->arena),
                    beacon_words(&beacon, out->arena));
}

const char *call_spelling(const struct boat *boat, struct arena *arena,
                          struct problems *problems)
{
    const char *name = spelled_name(boat, arena, problems);
    struct text_builder out = text_builder_in(arena);
    if (name == NULL)
        return NULL;
    spelled_add(&out, "NAME", name);
    if (call_sign_given(&boat->radio.call_sign))
        spelled_add(&out, "CALL SIGN", boat->radio.call_sign.text);
    if (boat->radio.mmsi.text != NULL)
        text_add_format(&out, "MMSI %s: %s\n", mmsi_in_threes(arena, boat->radio.mmsi.text),
                        mmsi_spelled(arena, boat->radio.mmsi.text));
    for (size_t i = 0; i < boat->equipment_count; i++)
        beacon_add(&out, &boat->equipment[i]);
    return out.at;
}
