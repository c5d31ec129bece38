/* list_gear.c - the register of gear and the zones, with what cards call them (room: app). */
#include "lists.h"

/* ---- items ---- */

struct item_listed {
    const char *item, *printed, *class, *record;
    struct json_list must, asked, may;
};

#define AT(member) offsetof(struct item_listed, member)
static const struct json_member item_members[] = {
    {"item", JSON_TEXT, AT(item), NULL, NULL, "its key in a boat's file"},
    {"printed", JSON_TEXT, AT(printed), NULL, NULL, "what cards call it"},
    {"class", JSON_TEXT, AT(class), NULL, NULL, "the letter of its tags"},
    {"record", JSON_TEXT, AT(record), NULL, NULL, "what to record besides the place"},
    {"must", JSON_TEXTS, AT(must), NULL, NULL, "fields that check misses"},
    {"asked", JSON_TEXTS, AT(asked), NULL, NULL, "fields that there is a use for"},
    {"may", JSON_TEXTS, AT(may), NULL, NULL, "fields that are kept"},
};
#undef AT
static const struct json_shape item_shape = {
    "item", sizeof(struct item_listed), item_members, sizeof item_members / sizeof *item_members};

/* What every piece has, whatever it is. */
static bool is_of_every_piece(enum gear_field field)
{
    return field == GEAR_item || field == GEAR_tag || field == GEAR_zone || field == GEAR_side;
}

static struct json_list fields_belonging(enum item_key item, enum belonging how,
                                         struct arena *arena)
{
    const char **words = arena_array(arena, GEAR_FIELD_COUNT, sizeof *words);
    size_t count = 0;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (!is_of_every_piece(field) && item_field(item, field) == how)
            words[count++] = gear_field_word(field);
    return (struct json_list){words, count};
}

struct list_made list_items(const struct listing *listing)
{
    struct arena *arena = listing->arena;
    struct item_listed *rows = arena_array(arena, ITEM_COUNT, sizeof *rows);
    size_t count = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_kind *kind = item_kind_of(item);
        rows[count++] = (struct item_listed){
            .item = kind->key, .printed = words_item(listing->words, item),
            .class = text_format(arena, "%c", (char)kind->class), .record = kind->record,
            .must = fields_belonging(item, BELONGS_MUST, arena),
            .asked = fields_belonging(item, BELONGS_ASKED, arena),
            .may = fields_belonging(item, BELONGS_MAY, arena)};
    }
    return (struct list_made){&item_shape, {rows, count}};
}

/* ---- zones ---- */

struct zone_listed {
    const char *zone, *printed, *level, *side;
    size_t from, to;
    struct json_list boats;
    bool room;
};

#define AT(member) offsetof(struct zone_listed, member)
static const struct json_member zone_members[] = {
    {"zone", JSON_TEXT, AT(zone), NULL, NULL, "its key in files"},
    {"printed", JSON_TEXT, AT(printed), NULL, NULL, "what cards call it"},
    {"level", JSON_TEXT, AT(level), NULL, NULL, NULL},
    {"from", JSON_COUNT, AT(from), NULL, NULL, "hundredths of the hull from the bow"},
    {"to", JSON_COUNT, AT(to), NULL, NULL, "the same; over 100: behind the transom"},
    {"side", JSON_TEXT_OR_NULL, AT(side), NULL, NULL, "null: the piece of gear tells"},
    {"room", JSON_FLAG, AT(room), NULL, NULL, "boats have it or not, as their rooms say"},
    {"boats", JSON_TEXTS, AT(boats), NULL, NULL, "hulls that have it"},
};
#undef AT
static const struct json_shape zone_shape = {
    "zone", sizeof(struct zone_listed), zone_members, sizeof zone_members / sizeof *zone_members};

static const char *const level_words[] = {
    [LEVEL_BELOW] = "below", [LEVEL_DECK] = "deck", [LEVEL_TOP] = "above deck"};

static struct json_list hulls_with(const struct zone *zone, struct arena *arena)
{
    const char **words = arena_array(arena, text_list_length(hull_words), sizeof *words);
    size_t count = 0;
    for (enum hull hull = HULL_NONE + 1; hull < HULL_COUNT; hull++)
        if (hull_has_zone(hull, zone))
            words[count++] = choice_word(hull_words, hull);
    return (struct json_list){words, count};
}

struct list_made list_zones(const struct listing *listing)
{
    struct zone_listed *rows = arena_array(listing->arena, ZONE_COUNT, sizeof *rows);
    size_t count = 0;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        rows[count++] = (struct zone_listed){
            .zone = zone->key, .printed = words_zone(listing->words, key),
            .level = level_words[zone->level], .from = (size_t)zone->from,
            .to = (size_t)zone->to, .room = zone->room,
            .side = zone->side == SIDE_NONE ? NULL : side_word(zone->side),
            .boats = hulls_with(zone, listing->arena)};
    }
    return (struct list_made){&zone_shape, {rows, count}};
}
