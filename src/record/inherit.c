/* inherit.c - what a boat has from her model (room: record). Her own file goes before the
 * model; what was changed in the model after somebody last walked round her does not count.
 * Gear and what she has not are in inherit_gear.c. */
#include "record.h"

#include "item.h"
#include "text.h"

/* ---- what counts ---- */

/* A walk in a month may have been on its first day, a change on its last. */
static bool walk_follows(const struct walk *walk, const struct date_value *changed)
{
    return !changed->given || (walk->date.given && date_compare(date_first_day(walk->date.date),
                                                                changed->date) >= 0);
}

/* Where the model's own file has errors, these are told, and nothing else of it. */
bool is_walked(const struct inheriting *inheriting, const struct date_value *changed)
{
    const struct walk *walk = &inheriting->file->walk;
    bool walked = !inheriting->model->sound ||
                  (walk->date.given && walk_follows(walk, &inheriting->model->file.changed) &&
                   (changed == NULL || walk_follows(walk, changed)));
    if (walked || inheriting->file->walk_rule == WALK_ASKED)
        return walked;
    *inheriting->supposed = true;
    return true;
}

void unwalked_add(struct inheriting *inheriting, const char *words, enum item_key item)
{
    text_add_format(&inheriting->unwalked, "%s%s", inheriting->unwalked.length == 0 ? "" : ", ",
                    words);
    if (item == ITEM_NONE)
        return;
    inheriting->items = arena_grow(inheriting->arena, inheriting->items, inheriting->item_count,
                                   &inheriting->item_room, sizeof *inheriting->items);
    inheriting->items[inheriting->item_count++] = item;
}

bool boat_unwalked(const struct boat *boat, enum item_key item)
{
    for (size_t i = 0; i < boat->likeness.item_count; i++)
        if (boat->likeness.items[i] == item)
            return true;
    return false;
}

/* ---- telling it ---- */

const char *unwalked_words(const struct boat *boat, struct arena *arena)
{
    const struct likeness *likeness = &boat->likeness;
    if (!likeness->walk.date.given)
        return text_format(arena, "nobody has walked round her yet, so that nothing of %s counts",
                           likeness->source->name);
    return text_format(arena, "changed in %s after the walk of %s: %s", likeness->source->name,
                       likeness->walk.date.text, likeness->unwalked);
}

const char *unwalked_remedy(const struct boat *boat, struct arena *arena)
{
    return text_format(arena,
                       "walk round her with %s in hand; what is otherwise on her, record in her "
                       "own file;\nthen write the day: walked: {date: , by: }",
                       boat->likeness.source->name);
}

/* ---- sections, key by key ---- */

/* A section of her file and the same of the model's. */
struct section_pair {
    const char *key;
    const struct field_table *table;
    struct section_value *hers;
    const struct section_value *models;
    void *facts;
    const void *model_facts;
    const struct date_value *changed;
    enum item_key item;               /* that it tells of, or ITEM_NONE */
};

static void pair_inherit(struct inheriting *inheriting, const struct section_pair *pair)
{
    if (!pair->models->given || !fields_lack(pair->table, pair->facts, pair->model_facts))
        return;
    if (!is_walked(inheriting, pair->changed)) {
        unwalked_add(inheriting, pair->key, pair->item);
        return;
    }
    fields_fill(pair->table, pair->facts, pair->model_facts, FIELDS_ALL);
    if (pair->hers->place.line == 0)
        *pair->hers = *pair->models;
}

static void boat_inherit(struct inheriting *inheriting)
{
    struct boat_file *file = inheriting->file;
    const struct boat_file *model = &inheriting->model->file;
    pair_inherit(inheriting, &(struct section_pair){
        "boat", boat_fields(), &file->boat, &model->boat, &file->record.facts,
        &model->record.facts, &model->record.facts.changed, ITEM_NONE});
}

static void gas_inherit(struct inheriting *inheriting)
{
    struct boat_file *file = inheriting->file;
    const struct boat_file *model = &inheriting->model->file;
    pair_inherit(inheriting, &(struct section_pair){
        "gas", gas_fields(), &file->gas, &model->gas, &file->record.gas, &model->record.gas,
        &model->record.gas.changed, ITEM_NONE});
}

static void radio_inherit(struct inheriting *inheriting)
{
    struct boat_file *file = inheriting->file;
    const struct boat_file *model = &inheriting->model->file;
    if (file->record.radio.tag.place.line == 0)
        tag_keep(inheriting, &model->record.radio.tag);
    if (!says_otherwise(inheriting, ITEM_vhf_dsc, &(struct zone_values){0}))
        pair_inherit(inheriting, &(struct section_pair){
            "radio", radio_fields(), &file->radio, &model->radio, &file->record.radio,
            &model->record.radio, &model->record.radio.changed, ITEM_vhf_dsc});
}

/* ---- engines, as a whole ---- */

static bool engines_walked(const struct inheriting *inheriting)
{
    const struct entries_value *engines = &inheriting->model->file.engines;
    const struct engine *rows = engines->items;
    bool walked = is_walked(inheriting, NULL);
    for (size_t i = 0; i < engines->count; i++)
        walked = walked && is_walked(inheriting, &rows[i].changed);
    return walked;
}

static void engines_inherit(struct inheriting *inheriting)
{
    struct entries_value *hers = &inheriting->file->engines;
    const struct entries_value *models = &inheriting->model->file.engines;
    if (hers->place.line > 0 || !models->given)
        return;
    if (engines_walked(inheriting))
        *hers = *models;
    else
        unwalked_add(inheriting, "engines", ITEM_NONE);
}

/* ---- the whole ---- */

/* An entry with neither tag nor item nor zone adds to no piece; one whose tag was refused is told
 * of there. */
static void entry_missing_tell(const struct inheriting *inheriting, const struct equipment *gear)
{
    bool nothing = gear->item.place.line == 0 && gear->zone.place.line == 0;
    if (!nothing)
        fields_missing_tell(equipment_fields(), gear, gear->place, inheriting->arena,
                            inheriting->problems);
    else if (gear->tag.place.line == 0)
        problem_add(inheriting->problems, SEVERITY_ERROR, gear->place,
                    "write the tag of the model's piece that it is about; for a piece that the "
                    "model has not,\nwrite its item and zone too",
                    "an entry has no tag, and neither item nor zone");
}

/* Where her model leaves out what every boat must have, or that does not count. What does not
 * count was told with all else of it. */
static void missing_settle(struct inheriting *inheriting)
{
    struct boat_file *file = inheriting->file;
    struct equipment *gear = file->equipment.items;
    struct problems *missing = problems_part(inheriting->problems);
    if (inheriting->own_boat.given)
        fields_missing_tell(boat_fields(), &file->record.facts, file->boat.place,
                            inheriting->arena, missing);
    for (size_t i = 0; i < file->equipment.count; i++)
        if (gear[i].place.source != inheriting->model->source)
            entry_missing_tell(inheriting, &gear[i]);
    if (!problems_reach(missing, SEVERITY_ERROR))
        return;
    file->fitness = FITNESS_NO_CARDS;
    if (file->record.likeness.unwalked != NULL) {
        file->fitness = FITNESS_NOT_READ;
        problem_add(inheriting->problems, SEVERITY_HELD, file->record.likeness.walk_place,
                    unwalked_remedy(&file->record, inheriting->arena), "%s: she has no cards",
                    unwalked_words(&file->record, inheriting->arena));
    } else if (inheriting->model->sound) {
        problems_join(inheriting->problems, missing);
    }
}

static void likeness_keep(struct inheriting *inheriting)
{
    struct likeness *likeness = &inheriting->file->record.likeness;
    likeness->unwalked = inheriting->unwalked.length == 0 ? NULL : inheriting->unwalked.at;
    likeness->supposed = *inheriting->supposed;
    likeness->gear = inheriting->file->equipment;
    likeness->items = inheriting->items;
    likeness->item_count = inheriting->item_count;
    likeness->tags = (struct list_value){.items = inheriting->tags,
                                         .count = inheriting->tag_count, .given = true};
}

static void model_take(struct inheriting *inheriting)
{
    struct boat_file *file = inheriting->file;
    file->fitness = inheriting->model->sound ? FITNESS_WHOLE : FITNESS_NO_CARDS;
    problems_join(inheriting->problems, inheriting->model->problems);
    boat_inherit(inheriting);
    engines_inherit(inheriting);
    gas_inherit(inheriting);
    absences_inherit(inheriting);
    radio_inherit(inheriting);
    gear_inherit(inheriting);
    tags_inherit(&file->record, &inheriting->model->file.record, inheriting->arena);
    likeness_keep(inheriting);
    missing_settle(inheriting);
}

static const char *no_model_remedy(const struct models *models, const char *key,
                                   struct arena *arena)
{
    const char **keys = arena_array(arena, models->count, sizeof *keys);
    struct text_builder words = text_builder_in(arena);
    for (size_t i = 0; i < models->count; i++) {
        keys[i] = models->rows[i]->key;
        text_add_format(&words, "%s%s", i == 0 ? "models of this base: " : ", ", keys[i]);
    }
    if (models->count == 0)
        text_add(&words, "put the model's file into the folder models/ beside boats/");
    return text_nearest_remedy(arena, key, keys, models->count, words.at);
}

static const struct model *model_find(const struct models *models, const char *key)
{
    for (size_t i = 0; i < models->count; i++)
        if (text_equal(models->rows[i]->key, key))
            return models->rows[i];
    return NULL;
}

/* What speaks of a model, in the file of a boat that is like none. */
static void no_likeness_tell(const struct boat_file *file, struct problems *problems)
{
    static const char remedy[] = "name her model: like: NAME, or take it out";
    if (file->walked.key_place.line > 0)
        problem_add(problems, SEVERITY_ERROR, file->walked.key_place, remedy,
                    "walked says that a model is true of her, but she is like none");
    if (file->not_here.given)
        problem_add(problems, SEVERITY_ERROR, file->not_here.place, remedy,
                    "not_here names gear of a model, but she is like none");
}

void model_inherit(struct boat_file *file, const struct boat_input *input, struct arena *arena,
                   struct problems *problems)
{
    struct likeness *likeness = &file->record.likeness;
    const struct model *model = model_find(input->models, file->like.text);
    if (file->like.text == NULL) {
        if (file->like.place.line == 0)
            no_likeness_tell(file, problems);
        return;
    }
    *likeness = (struct likeness){
        .model = file->like.text, .source = model == NULL ? NULL : model->source,
        .walk = file->walk, .walk_place = place_or(file->walked.place, file->like.place)};
    if (model == NULL) {
        problem_add(problems, SEVERITY_ERROR, file->like.place,
                    no_model_remedy(input->models, file->like.text, arena),
                    "there is no model \"%s\"", file->like.text);
        return;
    }
    bool supposed = false;
    model_take(&(struct inheriting){.file = file, .model = model, .arena = arena,
                                    .supposed = &supposed,
                                    .problems = problems,
                                    .own_boat = file->boat,
                                    .own_gear = file->equipment,
                                    .own_absences = file->not_fitted,
                                    .own_unsurveyed = file->not_surveyed,
                                    .unwalked = text_builder_in(arena)});
}
