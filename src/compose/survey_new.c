/* survey_new.c - the survey of a boat of which nothing is recorded but her kind: all gear that a
 * new file asks for, in its order and with its tags (room: compose). */
#include "survey_room.h"

#include "starter.h"

static const enum zone_key new_boat_engines[] = {ZONE_engine_space_port,
                                                 ZONE_engine_space_starboard};
static const enum zone_key new_boat_engine[] = {ZONE_engine_space};

const struct boat *survey_new_boat(enum hull hull, enum rig rig, struct arena *arena)
{
    struct boat *boat = arena_alloc(arena, sizeof *boat);
    *boat = (struct boat){.key = "", .catamaran = hull == HULL_CATAMARAN,
                          .engine_spaces = hull == HULL_CATAMARAN ? new_boat_engines
                                                                  : new_boat_engine,
                          .engine_space_count = hull == HULL_CATAMARAN ? 2 : 1};
    boat->facts.hull.value = hull;
    boat->facts.rig.value = rig;
    return boat;
}

bool survey_is_new(const struct survey *survey)
{
    return survey_boat(survey)->source == NULL;
}

struct asked_list survey_asked(const struct compose_input *input, struct arena *arena)
{
    return items_offered(input->procedures->rows, input->procedures->count,
                         input->boat->facts.hull.value, arena);
}

/* ---- tags ---- */

/* Those that a new file proposes: the radio has its own section there, and the first tag of its
 * letter. */
static const char *const *tags_of(struct survey *survey)
{
    static const enum item_key told[] = {ITEM_vhf_dsc};
    struct arena *arena = survey_composing(survey)->arena;
    const struct asked_list *asked = &survey->asked;
    struct asked_item *rows = arena_array(arena, asked->count, sizeof *rows);
    const char **tags = arena_array(arena, asked->count, sizeof *tags);
    struct asked_list listed = {.rows = rows};
    for (size_t i = 0; i < asked->count; i++)
        if (asked->rows[i].kind->item != ITEM_vhf_dsc)
            rows[listed.count++] = asked->rows[i];
    const char *const *proposed = starter_tags(&listed, survey_boat(survey), told, 1, arena);
    const char *const *radio = starter_tags(
        &(struct asked_list){&(struct asked_item){.kind = item_kind_of(ITEM_vhf_dsc)}, 1},
        survey_boat(survey), NULL, 0, arena);
    for (size_t i = 0, at = 0; i < asked->count; i++)
        tags[i] = asked->rows[i].kind->item == ITEM_vhf_dsc ? radio[0] : proposed[at++];
    return tags;
}

/* ---- sections ---- */

static void usual_begin(struct survey *survey, const struct survey_columns *columns,
                        const struct zone *zone, enum word note)
{
    struct arena *arena = survey_composing(survey)->arena;
    form_section_add(&survey->writer,
                     &(struct form_section){
                         .title = survey_said(survey, phrase_zone(arena, zone)),
                         .note = note == WORD_COUNT ? "" : survey_word(survey, note),
                         .columns = columns->at, .column_count = columns->count});
}

void survey_new_add(struct survey *survey)
{
    struct survey_columns columns = survey_unrecorded_columns(survey);
    const char *const *tags = tags_of(survey);
    const struct zone *zone = NULL;
    for (size_t i = 0; i < survey->asked.count; i++) {
        const struct asked_item *asked = &survey->asked.rows[i];
        enum zone_key spaces[SURVEY_SPACES_MOST];
        size_t count = survey_spaces_unrecorded(survey, asked->kind, spaces, SURVEY_SPACES_MOST);
        if (count > 0 && asked->usual != zone) {
            usual_begin(survey, &columns, asked->usual,
                        zone == NULL ? WORD_SURVEY_USUAL_NOTE : WORD_COUNT);
            zone = asked->usual;
        }
        for (size_t k = 0; k < count; k++)
            survey_unrecorded_add(survey, &(struct survey_unrecorded){
                                              .asked = asked, .space = spaces[k],
                                              .tag = k == 0 ? tags[i] : "",
                                              .ticked = TICKED_IN_COLUMNS});
    }
}
