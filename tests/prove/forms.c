/* forms.c - what a record can say of one kind of gear, and a boat's file of such entries. */
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

/* ---- gear ---- */

static const struct { const char *told, *zone; } where_rows[WHERE_COUNT] = {
    [NOT_RECORDED] = {"not recorded", NULL}, [NOT_FITTED] = {"not fitted", NULL},
    [ON_OPEN_DECK] = {"on open deck", "zone: cockpit"},
    [IN_DECK_LOCKER] = {"in a deck locker", "zone: cockpit_locker, side: port"},
    [AT_COMPANIONWAY] = {"at the companionway", "zone: ~, from_cockpit: yes"},
    [BELOW_DECK] = {"below", "zone: ~, from_cockpit: no"},
    [INSIDE_SPACE] = {"inside the space", "zone: @"},
    [IN_GAS_LOCKER] = {"in the gas locker", "zone: gas_locker"},
    [ON_DECK_AND_BELOW] = {"one on deck and one below", "zone: cockpit"},
    [ON_DECK_AND_INSIDE] = {"one on deck and one inside the space", "zone: cockpit"}};

static void form_add(struct forms *forms, struct form form, struct arena *arena)
{
    form.told = text_format(arena, "%s %s%s", item_word(form.item),
                            where_rows[form.where].told, form.facts);
    forms->at = arena_grow(arena, forms->at, forms->count, &forms->room, sizeof *forms->at);
    forms->at[forms->count++] = form;
}

struct cuts_form { const char *facts; bool worst, radio, pump; };

/* Is what it cuts asked for by a condition? What is not recorded stands for the worse. */
static bool cuts_are_asked(const struct item_read *read, const struct cuts_form *cuts)
{
    bool asked = read->cuts_radio || read->cuts_pump;
    if (cuts->worst)
        return true;
    return asked && (!cuts->radio || read->cuts_radio) && (!cuts->pump || read->cuts_pump);
}

static void cuts_add(struct forms *forms, const struct item_read *read, struct form form,
                     struct arena *arena)
{
    static const struct cuts_form cuts[] = {
        {"", true, false, false}, {", cuts: []", false, false, false},
        {", cuts: [vhf_dsc]", false, true, false},
        {", cuts: [bilge_pump_electric]", false, false, true},
        {", cuts: [vhf_dsc, bilge_pump_electric]", false, true, true}};
    const char *facts = form.facts;
    bool fine = form.fine;
    for (size_t i = 0; i < sizeof cuts / sizeof *cuts; i++) {
        form.facts = text_format(arena, "%s%s", facts, cuts[i].facts);
        form.fine = fine || !cuts_are_asked(read, &cuts[i]);
        form_add(forms, form, arena);
    }
}

/* Another value than those that are asked for. */
static const char *other_value(const struct field_read *field)
{
    static const struct { enum gear_field field; const char *value; } others[] = {
        {GEAR_stop, "electric"}, {GEAR_fed_by, "battery"}, {GEAR_agent, "water_mist"},
        {GEAR_space, "~"}, {GEAR_drives, "wheel"}, {GEAR_chain_end, "loose"},
        {GEAR_kit, "[]"}, {GEAR_cuts_mm, "6"}};
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        if (others[i].field == field->field)
            return others[i].value;
    if (text_equal(field->values[0], "yes"))
        return "no";
    return text_equal(field->values[0], "no") ? "yes" : NULL;
}

static void cuts_or_add(struct forms *forms, const struct item_read *read, struct form form,
                        struct arena *arena)
{
    if (read->cuts)
        cuts_add(forms, read, form, arena);
    else
        form_add(forms, form, arena);
}

/* Each value of the field with all of those behind it. */
static void values_add(struct forms *forms, const struct item_read *read, size_t index,
                       struct form form, struct arena *arena)
{
    const struct field_read *field = &read->fields[index];
    const char *facts = form.facts;
    if (index == read->field_count) {
        cuts_or_add(forms, read, form, arena);
        return;
    }
    if (field->field == GEAR_zone) {
        values_add(forms, read, index + 1, form, arena);
        return;
    }
    const char *other = other_value(field), *key = gear_field_word(field->field);
    for (size_t i = 0; i < field->value_count + (other != NULL ? 1 : 0); i++) {
        const char *value = i < field->value_count ? field->values[i] : other;
        bool space = field->field == GEAR_space && i < field->value_count;
        form.facts = text_format(arena, "%s, %s: %s", facts, key, space ? "@" : value);
        values_add(forms, read, index + 1, form, arena);
        form.fine = form.fine || !field->asked;
    }
    form.facts = facts;
    form.known = false;
    values_add(forms, read, index + 1, form, arena);
}

/* That gear is not inside must be said; where a condition asks for it, it may not be. */
static void inside_add(struct forms *forms, const struct item_read *read, struct form form,
                       struct arena *arena)
{
    form.facts = form.where > NOT_FITTED && form.where != INSIDE_SPACE ? ", inside: []" : "";
    form.known = form.where != NOT_RECORDED && !(read->inside && form.where == INSIDE_SPACE);
    if (form.where <= NOT_FITTED)
        form_add(forms, form, arena);
    else
        values_add(forms, read, 0, form, arena);
    if (form.facts[0] == '\0' || !read->inside)
        return;
    form.facts = "";
    form.known = false;
    values_add(forms, read, 0, form, arena);
}

static bool asks_reach(const struct item_read *read)
{
    return read->limits[REACH_OPEN_DECK] || read->limits[REACH_DECK] ||
           read->limits[REACH_COMPANIONWAY];
}

/* A raft and a radio are in no gas locker; the bottle's valve is nowhere else. */
static const enum item_key never_in_locker[] = {ITEM_liferaft, ITEM_vhf_dsc,
                                                ITEM_lpg_bottle_valve, ITEM_NONE};

/* Places are told apart as far as conditions ask. */
static bool is_told_apart(const struct item_read *read, enum where where)
{
    if (!read->asked && !read->whole)
        return where == ON_OPEN_DECK;
    switch (where) {
    case IN_DECK_LOCKER:
        return read->limits[REACH_OPEN_DECK];
    case AT_COMPANIONWAY:
        return read->whole || read->limits[REACH_COMPANIONWAY];
    case BELOW_DECK:
        return read->whole || asks_reach(read);
    case INSIDE_SPACE:
        return read->whole || read->inside || field_of(read, GEAR_zone) != NULL ||
               read->limits[REACH_BELOW];
    case IN_GAS_LOCKER:
        return false;
    case ON_DECK_AND_BELOW:
        return read->apart;
    case ON_DECK_AND_INSIDE:
        return read->apart && read->limits[REACH_BELOW];
    case NOT_FITTED:
        return read->fitted_asked || read->whole || !asks_reach(read);
    case NOT_RECORDED: case ON_OPEN_DECK: case WHERE_COUNT:
        return true;
    }
    return true;
}

/* A boat with a radio in the space that burns has cards held back, whatever they say. */
static const enum item_key radios[] = {ITEM_vhf_dsc, ITEM_vhf_handheld, ITEM_NONE};

/* Gear that is worked may be anywhere. */
static bool is_worked_there(const struct item_read *read, enum where where)
{
    if (!read->offered)
        return false;
    if (where == IN_GAS_LOCKER)
        return read->beside_vapour && !item_among(never_in_locker, read->item);
    if (where == IN_DECK_LOCKER)
        return read->beside_vapour && read->item != ITEM_vhf_dsc;
    return where == AT_COMPANIONWAY || where == BELOW_DECK || where == INSIDE_SPACE;
}

static bool is_tried(const struct item_read *read, enum where where)
{
    if (where == INSIDE_SPACE && item_among(radios, read->item))
        return false;
    return where <= NOT_FITTED || is_told_apart(read, where) || is_worked_there(read, where);
}

struct forms forms_of(const struct item_read *read, struct arena *arena)
{
    bool placed = read->field_count == 0 && !read->cuts && !read->inside && !read->whole;
    struct forms forms = {.group = placed ? read->group : 0};
    for (enum where where = NOT_RECORDED; where < WHERE_COUNT; where++)
        if (is_tried(read, where))
            inside_add(&forms, read, (struct form){.item = read->item, .where = where,
                                                   .fine = !is_told_apart(read, where)}, arena);
    return forms;
}

/* ---- the file ---- */

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
                      const struct form *form, const char *space, size_t number)
{
    const struct item_kind *kind = item_kind_of(form->item);
    text_add_format(out, "  - {item: %s, tag: %c%zu, ", kind->key, (char)kind->class, number);
    placed_add(out, hull, where_rows[form->where].zone, inside_of(hull, form, space));
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

static void entry_add(struct text_builder *out, const struct hull_kind *hull,
                      const struct form *form, size_t *number)
{
    bool by_engine = item_kind_of(form->item)->by_engine;
    struct form beyond = *form;
    beyond.where = form->where == ON_DECK_AND_INSIDE ? INSIDE_SPACE : BELOW_DECK;
    for (size_t i = 0; i == 0 || (by_engine && i < 2 && hull->spaces[i] != NULL); i++) {
        piece_add(out, hull, form, hull->spaces[i], (*number)++);
        if (form->where >= ON_DECK_AND_BELOW)
            piece_add(out, hull, &beyond, hull->spaces[i], (*number)++);
    }
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

static const struct form *form_of(const struct form *forms, size_t count, enum item_key item)
{
    for (size_t i = 0; i < count; i++)
        if (forms[i].item == item)
            return &forms[i];
    return NULL;
}

static bool hull_lacks(const struct hull_kind *hull, enum item_key item)
{
    return hull->lacks != NULL && strstr(hull->lacks, item_word(item)) != NULL;
}

const char *boat_written(const struct hull_kind *hull, const struct form *forms, size_t count,
                         struct arena *arena)
{
    struct text_builder out = text_builder_in(arena), gear = text_builder_in(arena);
    struct text_builder absent = text_builder_in(arena);
    size_t number = 1;
    text_add(&out, hull->head);
    text_add(&absent, hull->lacks == NULL ? "" : hull->lacks);
    radio_add(&out, hull, form_of(forms, count, ITEM_vhf_dsc));
    if (form_of(forms, count, ITEM_tool_kit) == NULL)
        text_add(&gear, "  - {item: tool_kit, tag: C98, zone: cockpit, how: by hand}\n");
    for (size_t i = 0; i < count; i++) {
        if (hull_lacks(hull, forms[i].item))
            continue;
        if (forms[i].where == NOT_FITTED)
            text_add_format(&absent, "  - %s\n", item_word(forms[i].item));
        else if (forms[i].where != NOT_RECORDED && forms[i].item != ITEM_vhf_dsc)
            entry_add(&gear, hull, &forms[i], &number);
    }
    text_add_format(&out, "equipment:%s%s", gear.length > 0 ? "\n" : " []\n",
                    gear.length > 0 ? gear.at : "");
    if (absent.length > 0)
        text_add_format(&out, "not_fitted:\n%s", absent.at);
    return out.at;
}
