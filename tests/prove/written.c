/* written.c - the kinds of boats that are tried, and a boat's file with what is recorded of her
 * gear. */
#include "forms.h"

#include "item_states.h"
#include "text.h"

#include <string.h>

/* ---- boats ---- */

#define SHORT_BOAT(hull, more) \
    "boat: {name: Sorrel, specimen: yes, hull: " hull ", loa_m: 11, beam_m: 4, persons_max: 6, " \
    "flag: QZ, looks: White boat, openings: 0, " more "}\n"
#define BOAT(hull, more) SHORT_BOAT(hull, "draught_m: 1.5, thickest_wire_mm: 8, " \
                                          "lay_down_place: saloon floor, " more)
#define ROOMS "rooms: [forward_cabin, saloon, galley]"
#define GAS "gas: {carried: yes, locker_drains: overboard}\n"
#define NO_GAS "gas: {carried: no}\n"
#define DIESEL_INSIDE "engines: [{space: engine_space, fuel: diesel, drive: shaft}]\n"

const struct hull_kind hull_kinds[] = {
    {"sailing monohull, diesel, gas",
     BOAT("monohull, rig: sail", ROOMS) DIESEL_INSIDE GAS, {"engine_space"}, NULL},
    {"sailing catamaran, two diesels, gas",
     BOAT("catamaran, rig: sail", ROOMS)
     "engines: [{space: engine_space_port, fuel: diesel, drive: saildrive},"
     " {space: engine_space_starboard, fuel: diesel, drive: saildrive}]\n" GAS,
     {"engine_space_port", "engine_space_starboard"}, NULL},
    {"motor boat, petrol inside, gas", BOAT("monohull, rig: motor", ROOMS)
     "engines: [{space: engine_space, fuel: petrol, drive: shaft}]\n" GAS, {"engine_space"}, NULL},
    {"motor yacht, diesel and generator in two spaces, no gas",
     BOAT("monohull, rig: motor", ROOMS)
     "engines: [{space: engine_space, fuel: diesel, drive: shaft},"
     " {space: generator_space, fuel: diesel, drive: generator}]\ngas: {carried: no}\n",
     {"engine_space", "generator_space"}, NULL},
    {"motor yacht, generator and diesel in two spaces, no gas",
     BOAT("monohull, rig: motor", ROOMS)
     "engines: [{space: engine_space, fuel: diesel, drive: shaft},"
     " {space: generator_space, fuel: diesel, drive: generator}]\ngas: {carried: no}\n",
     {"generator_space", "engine_space"}, NULL},
    {"motor boat, two diesels in one space, gas",
     BOAT("monohull, rig: motor", ROOMS)
     "engines: [{space: engine_space, fuel: diesel, drive: shaft},"
     " {space: engine_space, fuel: diesel, drive: shaft}]\n" GAS, {"engine_space"}, NULL},
    {"open motor boat, outboard",
     BOAT("monohull, rig: motor", "rooms: []")
     "engines: [{fuel: petrol, drive: outboard}]\n" NO_GAS, {NULL}, NULL},
    {"open sailing boat, outboard, gas",
     BOAT("monohull, rig: sail", "rooms: []")
     "engines: [{fuel: petrol, drive: outboard}]\n" GAS, {NULL}, NULL},
    {"sailing monohull, outboard, gas",
     BOAT("monohull, rig: sail", ROOMS) "engines: [{fuel: petrol, drive: outboard}]\n" GAS,
     {NULL}, NULL},
    {"sailing monohull, no engine, gas",
     BOAT("monohull, rig: sail", ROOMS) "engines: []\n" GAS, {NULL}, NULL},
    {"sailing trimaran, no engine, gas",
     BOAT("trimaran, rig: sail", ROOMS) "engines: []\n" GAS, {NULL}, NULL},
    {"motor boat, electric drive, gas",
     BOAT("monohull, rig: motor", ROOMS)
     "engines: [{space: engine_space, fuel: electric, drive: pod}]\n" GAS, {"engine_space"}, NULL},
    {"open motor boat, petrol jet",
     BOAT("monohull, rig: motor", "rooms: []")
     "engines: [{space: engine_space, fuel: petrol, drive: jet}]\n" NO_GAS, {"engine_space"}, NULL},
    {"engines, gas, rooms and depths not recorded",
     SHORT_BOAT("monohull, rig: sail", "usual_kn: 6"), {"engine_space"}, NULL},
    {"motor yacht, diesel and generator in one space, gas",
     BOAT("monohull, rig: motor", ROOMS)
     "engines: [{space: engine_space, fuel: diesel, drive: shaft},"
     " {space: engine_space, fuel: diesel, drive: generator}]\n" GAS, {"engine_space"}, NULL},
    {"motor boat, diesel, no galley, gas or petrol",
     BOAT("monohull, rig: motor", "rooms: [forward_cabin, saloon]") DIESEL_INSIDE NO_GAS,
     {"engine_space"}, "  - cooker\n  - petrol_stowage\n"},
    {"open motor boat, diesel, no gas or petrol",
     BOAT("monohull, rig: motor", "rooms: []") DIESEL_INSIDE NO_GAS, {"engine_space"},
     "  - cooker\n  - petrol_stowage\n"}};
const size_t hull_kind_count = sizeof hull_kinds / sizeof *hull_kinds;

/* ---- the file ---- */

static const char *const where_zones[WHERE_COUNT] = {
    [ON_OPEN_DECK] = "zone: cockpit", [IN_DECK_LOCKER] = "zone: cockpit_locker, side: port",
    [AT_COMPANIONWAY] = "zone: ~, from_cockpit: yes",
    [BELOW_DECK] = "zone: ~, from_cockpit: no", [INSIDE_SPACE] = "zone: @",
    [IN_GAS_LOCKER] = "zone: gas_locker", [ON_DECK_AND_BELOW] = "zone: cockpit",
    [ON_DECK_AND_INSIDE] = "zone: cockpit"};

/* What a galley fire burns beside. */
static const enum item_key galley_items[] = {
    ITEM_fire_blanket, ITEM_lpg_cabin_valve, ITEM_lpg_remote_switch, ITEM_cooker, ITEM_NONE};

static bool has_rooms(const struct hull_kind *hull)
{
    return strstr(hull->head, "rooms: []") == NULL;
}

static bool has_galley(const struct hull_kind *hull)
{
    return strstr(hull->head, "rooms:") == NULL || strstr(hull->head, ", galley]") != NULL;
}

/* The text, each @ being the space, each ~ a place below. */
static void placed_add(struct text_builder *out, const struct hull_kind *hull,
                       const char *text, const char *space)
{
    const char *below = has_rooms(hull) ? "saloon" : "bilge";
    for (; *text != '\0'; text++)
        if (*text == '@')
            text_add(out, space == NULL ? below : space);
        else if (*text == '~')
            text_add(out, below);
        else
            text_add_format(out, "%c", *text);
}

static void how_add(struct text_builder *out, enum item_key item)
{
    const char *joint = ", how: {";
    for (enum end_state to = STATE_ANY + 1; item_is_contrary(item) && to < STATE_COUNT; to++)
        if (item_state_field(item, to) == GEAR_how) {
            text_add_format(out, "%s%s: way %u", joint, end_state_words[to - 1], to);
            joint = ", ";
        }
    text_add(out, item_is_contrary(item) ? "}" : ", how: by hand");
}

static const char *inside_of(const struct hull_kind *hull, const struct form *form,
                             const char *space)
{
    if (!item_among(galley_items, form->item))
        return space;
    return has_galley(hull) ? "galley" : has_rooms(hull) ? "saloon" : "bilge";
}

static void piece_add(struct text_builder *out, const struct hull_kind *hull,
                      const struct form *form, const char *space)
{
    const struct item_kind *kind = item_kind_of(form->item);
    text_add_format(out, "  - {item: %s, tag: %c#, ", kind->key, (char)kind->class);
    placed_add(out, hull, where_zones[form->where], inside_of(hull, form, space));
    if (kind->by_engine && space != NULL)
        text_add_format(out, ", serves: [%s]", space);
    if (form->item == ITEM_liferaft)
        text_add(out, ", painter: eye, release: clip");
    if (form->item == ITEM_vhf_handheld)
        text_add(out, ", in_charger: no");      /* else it counts as out of reach in vapour */
    how_add(out, form->item);
    placed_add(out, hull, form->facts, space);
    text_add(out, "}\n");
}

const char *entry_written(const struct hull_kind *hull, const struct form *form,
                          struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    bool by_engine = item_kind_of(form->item)->by_engine;
    struct form beyond = *form;
    beyond.where = form->where == ON_DECK_AND_INSIDE ? INSIDE_SPACE : BELOW_DECK;
    if (form->where <= NOT_FITTED || form->item == ITEM_vhf_dsc)
        return "";
    for (size_t i = 0; i == 0 || (by_engine && i < 2 && hull->spaces[i] != NULL); i++) {
        piece_add(&out, hull, form, hull->spaces[i]);
        if (form->where >= ON_DECK_AND_BELOW)
            piece_add(&out, hull, &beyond, hull->spaces[i]);
    }
    return out.at;
}

/* Its section takes no from_cockpit: where it is below, it is reached through the boat. */
static void radio_add(struct text_builder *out, const struct hull_kind *hull,
                      const struct form *form)
{
    if (form == NULL || form->where <= NOT_FITTED) {
        text_add(out, "radio: {call_sign: QSRL6}\n");
        return;
    }
    text_add(out, "radio: {tag: E99, call_sign: QSRL6, ");
    placed_add(out, hull, form->where == ON_OPEN_DECK
                              ? "zone: cockpit, power_from_cockpit: yes" : "zone: ~", NULL);
    text_add_format(out, ", power_switch: knob, distress_key: lift the lid, hold_s: 5%s}\n",
                    form->where == AT_COMPANIONWAY
                        ? ", dsc: no"
                        : ", dsc: yes, mmsi: \"200014730\", mmsi_programmed: yes");
}

static bool hull_lacks(const struct hull_kind *hull, enum item_key item)
{
    return hull->lacks != NULL && strstr(hull->lacks, item_word(item)) != NULL;
}

/* The entry, the number of each tag at its #. */
static void numbered_add(struct text_builder *out, const char *entry, size_t *number)
{
    for (const char *hash; (hash = strchr(entry, '#')) != NULL; entry = hash + 1) {
        text_add_bytes(out, entry, (size_t)(hash - entry));
        text_add_format(out, "%zu", (*number)++);
    }
    text_add(out, entry);
}

/* In the order of items, so that the same boat is the same file. */
const char *boat_written(const struct hull_kind *hull, const struct form *forms, size_t count,
                         struct arena *arena)
{
    const struct form *found[ITEM_COUNT] = {NULL};
    size_t number = 1;
    struct text_builder out = text_builder_in(arena), gear = text_builder_in(arena);
    struct text_builder absent = text_builder_in(arena);
    for (size_t i = 0; i < count; i++)
        found[forms[i].item] = &forms[i];
    text_add(&out, hull->head);
    text_add(&absent, hull->lacks == NULL ? "" : hull->lacks);
    radio_add(&out, hull, found[ITEM_vhf_dsc]);
    if (found[ITEM_tool_kit] == NULL)
        text_add(&gear, "  - {item: tool_kit, tag: C98, zone: cockpit, how: by hand}\n");
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        if (found[item] == NULL || hull_lacks(hull, item))
            continue;
        numbered_add(&gear, found[item]->entry, &number);
        if (found[item]->where == NOT_FITTED)
            text_add_format(&absent, "  - %s\n", item_word(item));
    }
    text_add_format(&out, "equipment:%s", gear.length > 0 ? "\n" : " []\n");
    text_add(&out, gear.length > 0 ? gear.at : "");
    if (absent.length > 0)
        text_add_format(&out, "not_fitted:\n%s", absent.at);
    return out.at;
}
