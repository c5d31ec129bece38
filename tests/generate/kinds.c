/* kinds.c - the kinds of generated boats, and the head of a record: the boat herself, her
 * engines, her gas and her radio. */
#include "kinds.h"
#include "places.h"
#include "radio.h"

#define MOTOR_YACHT FACT(CABIN) | FACT(MOTOR) | FACT(ONE_HULL) | FACT(ROOF) | FACT(ENGINE_SPACE)
#define SAILING FACT(CABIN) | FACT(SAIL) | FACT(ONE_HULL) | FACT(ROOF) | FACT(DOOR)
#define TWO_HULLS FACT(CABIN) | FACT(CATAMARAN) | FACT(BRIDGE_DECK) | FACT(HULLS) | \
    FACT(TWO_SPACES) | FACT(TWO_ENGINES) | FACT(ENGINE_SPACE) | FACT(AFT_CABINS) | FACT(ROOF)

const struct boat_kind boat_kinds[] = {
    {"monohull", "sail", "White sailing yacht", 80, 115, 33, 18,
     SAILING | FACT(FORE_CABIN) | FACT(SALOON) | FACT(GALLEY) | FACT(AFT_CABIN),
     FACT(FORE_TOILET) | FACT(AFT_TOILET) | FACT(CHART_TABLE), engines_yacht},
    {"monohull", "sail", "Blue sailing yacht", 110, 155, 31, 20,
     SAILING | FACT(FORE_CABIN) | FACT(FORE_TOILET) | FACT(SALOON) | FACT(GALLEY) |
     FACT(AFT_CABINS), FACT(AFT_TOILET) | FACT(CHART_TABLE) | FACT(PLATFORM), engines_yacht},
    {"catamaran", "sail", "White catamaran", 105, 150, 55, 12,
     TWO_HULLS | FACT(SAIL), FACT(FORE_TOILET) | FACT(AFT_TOILET) | FACT(FORE_CABIN),
     engines_catamaran},
    {"catamaran", "motor", "Grey motor catamaran", 100, 140, 50, 10,
     TWO_HULLS | FACT(MOTOR), FACT(FORE_TOILET) | FACT(AFT_TOILET) | FACT(FLYBRIDGE),
     engines_catamaran},
    {"trimaran", "sail", "White trimaran", 80, 120, 70, 8,
     FACT(CABIN) | FACT(SAIL) | FACT(TRIMARAN) | FACT(ROOF) | FACT(DOOR) | FACT(FORE_CABIN) |
     FACT(SALOON) | FACT(GALLEY), FACT(FORE_TOILET) | FACT(AFT_CABIN), engines_small},
    {"monohull", "motor", "Grey open motor boat", 50, 78, 36, 10,
     FACT(OPEN) | FACT(MOTOR) | FACT(ONE_HULL), 0, engines_open},
    {"monohull", "sail", "Open sailing boat, red sails", 50, 70, 34, 4,
     FACT(OPEN) | FACT(SAIL) | FACT(ONE_HULL), 0, engines_open},
    {"monohull", "motor", "White motor boat", 75, 110, 33, 9,
     MOTOR_YACHT | FACT(SALOON) | FACT(FORE_CABIN) | FACT(GALLEY),
     FACT(FORE_TOILET) | FACT(AFT_CABIN) | FACT(PLATFORM), engines_one},
    {"monohull", "motor", "White motor yacht, grey top", 110, 165, 30, 9,
     MOTOR_YACHT | FACT(SALOON) | FACT(FORE_CABIN) | FACT(FORE_TOILET) | FACT(GALLEY) |
     FACT(AFT_CABIN) | FACT(TWO_ENGINES),
     FACT(AFT_TOILET) | FACT(PLATFORM) | FACT(FLYBRIDGE), engines_two},
};
const int boat_kind_count = sizeof boat_kinds / sizeof *boat_kinds;

static const struct { enum boat_fact fact; const char *zones; } room_zones[] = {
    {FACT_FORE_CABIN, "forward_cabin"}, {FACT_FORE_TOILET, "forward_heads"},
    {FACT_SALOON, "saloon"}, {FACT_BRIDGE_DECK, "bridgedeck"}, {FACT_GALLEY, "galley"},
    {FACT_CHART_TABLE, "navigation_station"}, {FACT_AFT_TOILET, "aft_heads"},
    {FACT_AFT_CABIN, "aft_cabin"}, {FACT_AFT_CABINS, "aft_cabin_port, aft_cabin_starboard"},
    {FACT_HULLS, "port_hull, starboard_hull"},
};

static const char *const facings[] = {"bow", "stern", "port", "starboard", NULL};

/* ---- her name ---- */

static const char *const first_parts[] = {
    "Bar", "Cor", "Del", "Fen", "Gar", "Hal", "Kel", "Lor", "Mar", "Nor", "Pel", "Ros", "Sel",
    "Tam", "Tor", "Wen", "Yar", "Zan"};
static const char *const middle_parts[] = {
    "", "a", "e", "o", "abe", "eda", "ola", "ani", "ero", "inda", "umo", "asta", "orre"};
static const char *const last_parts[] = {
    "ba", "da", "ko", "lin", "mar", "na", "ra", "sel", "ta", "van", "wen", "zor"};
static const char *const second_words[] = {
    "", " of Skerry", " Breeze", " Lantern", " Tern", " Wanderer", " Harbour", " Sound"};
#define LENGTH(list) ((int)(sizeof(list) / sizeof *(list)))

/* One of the list, by the last figure of a number in which each list is a base. */
static const char *part_take(int *number, const char *const *list, int length)
{
    const char *part = list[*number % length];
    *number /= length;
    return part;
}

/* No two boats of a base bear one name: each number of a boat gives another, in an order that
 * mixes long and short. 20 letters at most. */
static void name_make(int index, char *name)
{
    int count = LENGTH(first_parts) * LENGTH(middle_parts) * LENGTH(last_parts) *
                LENGTH(second_words);
    int number = (int)((int64_t)index * 7919 % count);
    const char *first = part_take(&number, first_parts, LENGTH(first_parts));
    const char *middle = part_take(&number, middle_parts, LENGTH(middle_parts));
    const char *last = part_take(&number, last_parts, LENGTH(last_parts));
    snprintf(name, BOAT_NAME_SIZE, "%s%s%s%s", first, middle, last,
             part_take(&number, second_words, LENGTH(second_words)));
}

/* ---- the boat ---- */

static void facts_draw(struct boat_draw *boat, const struct boat_kind *kind)
{
    boat->facts = kind->facts;
    for (int fact = 0; fact < FACT_COUNT; fact++)
        if ((kind->perhaps >> fact & 1) != 0 && draw_happens(&boat->draw, 65))
            boat->facts |= (uint64_t)1 << fact;
    for (int role = 0; role < ROLE_COUNT; role++)
        boat->hand_of[role] = (enum hand)draw_below(&boat->draw, HAND_CENTRE);
}

static void rooms_write(const struct boat_draw *boat)
{
    const char *before = "";
    fprintf(boat->file, "  rooms: [");
    for (size_t i = 0; i < sizeof room_zones / sizeof *room_zones; i++)
        if ((boat->facts >> room_zones[i].fact & 1) != 0) {
            fprintf(boat->file, "%s%s", before, room_zones[i].zones);
            before = ", ";
        }
    fprintf(boat->file, "]\n");
}

/* A length in metres, in hundredths of another one in decimetres. */
static void length_write(FILE *file, const char *key, int of_dm, int share)
{
    int centimetres = of_dm * share / 10;
    fprintf(file, "  %s: %d.%02d\n", key, centimetres / 100, centimetres % 100);
}

static void sizes_write(struct boat_draw *boat, const struct boat_kind *kind)
{
    bool slender = boat_has(boat, FACT(CATAMARAN), 0);
    boat->loa_dm = draw_between(&boat->draw, kind->shortest_dm, kind->longest_dm);
    boat->beam_dm = boat->loa_dm * kind->beam_share / 100;
    boat->persons = draw_between(&boat->draw, 2, boat->loa_dm / 12 + 1);
    length_write(boat->file, "loa_m", boat->loa_dm, 100);
    length_write(boat->file, "beam_m", boat->beam_dm, 100);
    length_write(boat->file, "draught_m", boat->loa_dm, 12);
    length_write(boat->file, "lwl_m", boat->loa_dm, 90);
    length_write(boat->file, "bwl_m", boat->beam_dm, slender ? 22 : 85);
    fprintf(boat->file, "  persons_max: %d\n  usual_kn: %d\n", boat->persons,
            draw_between(&boat->draw, 4, kind->knots_most < 4 ? 4 : kind->knots_most));
    if (boat_has(boat, FACT(CABIN), 0))
        fprintf(boat->file, "  cabin_m3: %d\n  bilge_to_sole_l: %d\n", boat->loa_dm / 4,
                boat->loa_dm * 4);
    if (boat_has(boat, FACT(ENGINE_SPACE), 0))
        length_write(boat->file, "engine_space_m3", boat->loa_dm, 15);
}

static void mounted_write(struct boat_draw *boat)
{
    struct place_drawn place;
    if (draw_happens(&boat->draw, 15) || !place_draw(boat, ROLE(DOOR), &place))
        return;
    fprintf(boat->file, "  mounted: {zone: %s, faces: %s}\n", place.row->zone,
            draw_text(&boat->draw, facings));
}

static void boat_write(struct boat_draw *boat, const struct boat_kind *kind, const char *name)
{
    fprintf(boat->file, "# Specimen: an invented boat, drawn by tests/generate.\nboat:\n");
    fprintf(boat->file, "  name: %s\n  specimen: yes\n  hull: %s\n  rig: %s\n  flag: QZ\n", name,
            kind->hull, kind->rig);
    fprintf(boat->file, "  looks: \"%s\"\n", kind->looks);
    sizes_write(boat, kind);
    rooms_write(boat);
    mounted_write(boat);
    fprintf(boat->file, "  openings: %d\n", boat->openings);
}

static void engines_write(struct boat_draw *boat, const struct boat_kind *kind)
{
    int count = 0;
    while (kind->engines[count].lines != NULL)
        count++;
    const struct engine_set *set = &kind->engines[draw_below(&boat->draw, count)];
    boat->facts |= set->facts;
    fprintf(boat->file, "engines:\n%s", set->lines);
}

static void gas_write(struct boat_draw *boat)
{
    bool galley = boat_has(boat, FACT(GALLEY), 0) || boat_has(boat, FACT(BRIDGE_DECK), 0);
    bool gas = galley && draw_happens(&boat->draw, boat_has(boat, FACT(ELECTRIC), 0) ? 15 : 75);
    if (gas)
        boat->facts |= FACT(GAS);
    fprintf(boat->file, gas ? "gas: {carried: yes, locker_drains: overboard}\n"
                            : "gas: {carried: no}\n");
}

void kind_write(struct boat_draw *boat, int index)
{
    const struct boat_kind *kind = &boat_kinds[index % boat_kind_count];
    char name[BOAT_NAME_SIZE];
    name_make(index, name);
    facts_draw(boat, kind);
    boat_write(boat, kind, name);
    engines_write(boat, kind);
    gas_write(boat);
    radio_write(boat, index);
}
