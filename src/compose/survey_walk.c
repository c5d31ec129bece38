/* survey_walk.c - the pieces of a record in the order of the walk round her, a section a place;
 * gear of which nothing is recorded stands where most boats have it, if she has gear there, else
 * at the end (room: compose). No piece stands twice. */
#include "survey_room.h"

#include <stdlib.h>

#include "walk.h"

/* A piece on the way. */
struct walked {
    struct walk_stop stop;
    enum hull hull;
    size_t turn;              /* of its zone on the way: sides are taken to and fro */
    size_t index;             /* in the record */
    const struct equipment *gear;
};

/* ---- order ---- */

/* From port to starboard, and back in the next zone. */
static int side_rank(const struct walked *piece)
{
    static const int ranks[SIDE_COUNT] = {
        [SIDE_PORT] = 1, [SIDE_CENTRE] = 2, [SIDE_NONE] = 3, [SIDE_BOTH] = 4,
        [SIDE_STARBOARD] = 5};
    int rank = ranks[piece->stop.side];
    return piece->turn % 2 == 0 ? rank : -rank;
}

static int zones_compare(const void *a, const void *b)
{
    const struct walked *first = a, *second = b;
    int order = walk_compare(first->hull, &first->stop, &second->stop);
    return order != 0 ? order : (int)first->index - (int)second->index;
}

static size_t tag_digits(const struct equipment *gear)
{
    size_t number = 0;
    for (const char *at = TEXT_OR_EMPTY(gear->tag); *at != '\0'; at++)
        number = *at >= '0' && *at <= '9' && number < 100000
                     ? number * 10 + (size_t)(*at - '0') : number;
    return number;
}

static int class_order(const struct equipment *gear)
{
    return gear->kind->class == ITEM_FIRE ? 0 : gear->kind->class == ITEM_RESCUE ? 1 : 2;
}

static int walked_compare(const void *a, const void *b)
{
    const struct walked *first = a, *second = b;
    int order = walk_compare(first->hull, &first->stop, &second->stop);
    if (order == 0)
        order = side_rank(first) - side_rank(second);
    if (order == 0)
        order = class_order(first->gear) - class_order(second->gear);
    if (order == 0)
        order = (tag_digits(first->gear) > tag_digits(second->gear)) -
                (tag_digits(first->gear) < tag_digits(second->gear));
    return order != 0 ? order : (int)first->index - (int)second->index;
}

static struct walked *pieces_walked(const struct survey *survey, struct arena *arena)
{
    const struct boat *boat = survey_boat(survey);
    struct walked *pieces = arena_array(arena, boat->equipment_count, sizeof *pieces);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        pieces[i] = (struct walked){.stop = {gear->place_zone, gear->place_side},
                                    .hull = boat->facts.hull.value, .index = i, .gear = gear};
    }
    if (boat->equipment_count == 0)
        return pieces;
    qsort(pieces, boat->equipment_count, sizeof *pieces, zones_compare);
    for (size_t i = 1; i < boat->equipment_count; i++)
        pieces[i].turn = pieces[i - 1].turn +
                         (pieces[i].stop.zone != pieces[i - 1].stop.zone ? 1 : 0);
    qsort(pieces, boat->equipment_count, sizeof *pieces, walked_compare);
    return pieces;
}

/* ---- what is not recorded ---- */

size_t survey_spaces_unrecorded(const struct survey *survey, const struct item_kind *kind,
                                enum zone_key *spaces, size_t room)
{
    const struct boat *boat = survey_boat(survey);
    size_t count = 0;
    if (kind->by_engine && boat->engine_space_count >= 2) {
        for (size_t i = 0; i < boat->engine_space_count && count < room; i++)
            if (boat_fitted_for(boat, kind->item, boat->engine_spaces[i]) == ANSWER_NOT_RECORDED)
                spaces[count++] = boat->engine_spaces[i];
        return count;
    }
    spaces[0] = ZONE_NONE;
    return boat_fitted(boat, kind->item) == ANSWER_NOT_RECORDED ? 1 : 0;
}

/* Where it is looked for: of an engine in that engine's space, if most boats have it in one. */
static const struct zone *home_of(const struct asked_item *asked, enum zone_key space)
{
    bool in_space = space != ZONE_NONE && asked->usual->family == ZONE_engine_space;
    return in_space ? zone_of(space) : asked->usual;
}

static bool has_gear_in(const struct boat *boat, const struct zone *zone)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].place_zone == zone)
            return true;
    return false;
}

/* What most boats have in that zone, behind what she has there. */
static void unrecorded_here_add(struct survey *survey, const struct zone *zone)
{
    for (size_t i = 0; i < survey->asked.count; i++) {
        const struct asked_item *asked = &survey->asked.rows[i];
        enum zone_key spaces[SURVEY_SPACES_MOST];
        size_t count = survey_spaces_unrecorded(survey, asked->kind, spaces, SURVEY_SPACES_MOST);
        for (size_t k = 0; k < count; k++)
            if (home_of(asked, spaces[k]) == zone)
                survey_unrecorded_add(survey, &(struct survey_unrecorded){
                                                  .asked = asked, .space = spaces[k],
                                                  .tag = "", .ticked = TICKED_BELOW});
    }
}

/* ---- gear that has no place on the way ---- */

static void unplaced_begin(struct survey *survey)
{
    struct survey_columns columns = survey_unrecorded_columns(survey);
    form_section_add(&survey->writer,
                     &(struct form_section){.title = survey_word(survey, WORD_SURVEY_LOST),
                                            .note = survey_word(survey, WORD_SURVEY_LOST_NOTE),
                                            .columns = columns.at,
                                            .column_count = columns.count});
}

/* Its section begins with its first line. */
static void unplaced_add(struct survey *survey)
{
    struct arena *arena = survey_composing(survey)->arena;
    size_t added = 0;
    for (size_t i = 0; i < survey->asked.count; i++) {
        const struct asked_item *asked = &survey->asked.rows[i];
        enum zone_key spaces[SURVEY_SPACES_MOST];
        size_t count = survey_spaces_unrecorded(survey, asked->kind, spaces, SURVEY_SPACES_MOST);
        for (size_t k = 0; k < count; k++) {
            if (has_gear_in(survey_boat(survey), home_of(asked, spaces[k])))
                continue;
            if (added++ == 0)
                unplaced_begin(survey);
            survey_unrecorded_add(survey, &(struct survey_unrecorded){
                                              .asked = asked, .space = spaces[k], .tag = "",
                                              .ticked = TICKED_IN_COLUMNS,
                                              .place = phrase_zone(arena, asked->usual)});
        }
    }
}

/* ---- sections ---- */

static void stop_begin(struct survey *survey, const struct survey_columns *columns,
                       const struct equipment *gear, enum word note)
{
    struct marker marker = marker_of(survey_boat(survey), gear);
    form_section_add(&survey->writer,
                     &(struct form_section){
                         .title = plan_place_title(survey_composing(survey), &marker),
                         .note = note == WORD_COUNT ? "" : survey_word(survey, note),
                         .columns = columns->at, .column_count = columns->count});
}

static bool same_stop(const struct walked *a, const struct walked *b)
{
    return a->stop.zone == b->stop.zone && a->stop.side == b->stop.side;
}

void survey_walk_add(struct survey *survey)
{
    size_t count = survey_boat(survey)->equipment_count;
    const struct walked *pieces = pieces_walked(survey, survey_composing(survey)->arena);
    struct survey_columns columns = survey_recorded_columns(survey);
    for (size_t i = 0; i < count; i++) {
        bool last_of_zone = i + 1 == count || pieces[i + 1].stop.zone != pieces[i].stop.zone;
        if (i == 0 || !same_stop(&pieces[i], &pieces[i - 1]))
            stop_begin(survey, &columns, pieces[i].gear,
                       i == 0 ? WORD_SURVEY_NOTE : WORD_COUNT);
        survey_piece_add(survey, pieces[i].index);
        if (last_of_zone)
            unrecorded_here_add(survey, pieces[i].stop.zone);
    }
    unplaced_add(survey);
}
