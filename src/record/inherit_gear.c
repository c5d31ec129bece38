/* inherit_gear.c - gear of a model and of a boat that is like it, by tag, and what she has not
 * (room: record). Of the same tag her own entry counts; one that gives no item only adds what
 * is hers alone, such as dates, to the model's. */
#include "record.h"

#include "item.h"
#include "text.h"

#include <string.h>

/* ---- one piece ---- */

static struct equipment *hers_with(const struct inheriting *inheriting, const char *tag)
{
    struct equipment *hers = inheriting->own_gear.items;
    for (size_t i = 0; tag != NULL && i < inheriting->own_gear.count; i++)
        if (text_equal(hers[i].tag.text, tag))
            return &hers[i];
    return NULL;
}

static const struct equipment *models_with(const struct inheriting *inheriting, const char *tag)
{
    const struct entries_value *entries = &inheriting->model->file.equipment;
    const struct equipment *models = entries->items;
    for (size_t i = 0; tag != NULL && i < entries->count; i++)
        if (text_equal(models[i].tag.text, tag))
            return &models[i];
    return NULL;
}

/* Does the entry say nothing of what and where it is? */
static bool only_adds(const struct equipment *gear)
{
    return gear->item.place.line == 0 && gear->zone.place.line == 0 && gear->tag.text != NULL;
}

static bool is_not_here(const struct inheriting *inheriting, const char *tag)
{
    return tag != NULL && list_holds(&inheriting->file->not_here, tag);
}

void tag_keep(struct inheriting *inheriting, const struct text_value *tag)
{
    if (tag->text == NULL)
        return;
    inheriting->tags = arena_grow(inheriting->arena, inheriting->tags, inheriting->tag_count,
                                  &inheriting->tag_room, sizeof *inheriting->tags);
    inheriting->tags[inheriting->tag_count++] = *tag;
}

/* ---- what cannot be ---- */

static const char *file_of(const struct inheriting *inheriting)
{
    return inheriting->model->source->name;
}

/* Such an entry replaces nothing, so that it may give nothing that the model must tell. */
static void addition_check(const struct inheriting *inheriting, const struct equipment *gear)
{
    const struct field_table *table = equipment_fields();
    const struct equipment tag_alone = {.tag = gear->tag};
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        if (!field->own && field_place(field, gear).line > 0 &&
            field_place(field, &tag_alone).line == 0)
            problem_add(inheriting->problems, SEVERITY_ERROR, field_place(field, gear),
                        "write the whole entry here, with item and zone: it then stands in the "
                        "place of the model's",
                        "an entry without item adds dates and identities to %s of the model, "
                        "not %s", gear->tag.text, field->key);
    }
}

static void no_such_tag_tell(const struct inheriting *inheriting, const struct text_value *tag)
{
    problem_add(inheriting->problems, SEVERITY_ERROR, tag->place,
                "correct the tag; for a piece that the model has not, write its item and zone too",
                "no piece in %s has the tag %s", file_of(inheriting), tag->text);
}

/* A slip in a tag would take another piece out of the record. */
static void other_item_tell(const struct inheriting *inheriting, const struct equipment *hers,
                            const struct equipment *models)
{
    problem_add(inheriting->problems, SEVERITY_ERROR, hers->tag.place,
                text_format(inheriting->arena,
                            "correct the tag, or give the piece one of its own; if she has no %s, "
                            "write\nnot_here: [%s]", item_word(models->item.value),
                            models->tag.text),
                "tag %s is that of %s in %s, and here that of %s", hers->tag.text,
                item_word(models->item.value), file_of(inheriting), item_word(hers->item.value));
}

static void here_and_not_tell(const struct inheriting *inheriting, const struct equipment *gear)
{
    problem_add(inheriting->problems, SEVERITY_ERROR, gear->tag.place,
                "keep the one that is true; another piece has a tag of its own",
                "tag %s is in not_here, but it is on a piece of hers", gear->tag.text);
}

/* Of two whole entries that is told with the place of both. */
static bool is_second_of_tag(const struct inheriting *inheriting, const struct equipment *gear)
{
    const struct equipment *first = hers_with(inheriting, gear->tag.text);
    return first != NULL && first != gear && (only_adds(first) || only_adds(gear));
}

static void piece_check(const struct inheriting *inheriting, const struct equipment *gear)
{
    const struct equipment *models = models_with(inheriting, gear->tag.text);
    if (is_second_of_tag(inheriting, gear))
        problem_add(inheriting->problems, SEVERITY_ERROR, gear->tag.place,
                    "write all of it in one entry", "tag %s has two entries here",
                    gear->tag.text);
    else if (is_not_here(inheriting, gear->tag.text))
        here_and_not_tell(inheriting, gear);
    else if (models == NULL && only_adds(gear))
        no_such_tag_tell(inheriting, &gear->tag);
    else if (only_adds(gear))
        addition_check(inheriting, gear);
    else if (models != NULL && gear->item.value != ITEM_NONE &&
             models->item.value != ITEM_NONE && gear->item.value != models->item.value)
        other_item_tell(inheriting, gear, models);
}

static void not_here_check(const struct inheriting *inheriting)
{
    const struct list_value *tags = &inheriting->file->not_here;
    for (size_t i = 0; i < tags->count; i++)
        if (models_with(inheriting, tags->items[i].text) == NULL)
            problem_add(inheriting->problems, SEVERITY_ERROR, tags->items[i].place,
                        "take it out, or write the tag of a piece that the model has",
                        "not_here: no piece in %s has the tag %s", file_of(inheriting),
                        tags->items[i].text);
}

/* Where the model has errors, its tags may be among what was not read. */
static void hers_check(const struct inheriting *inheriting)
{
    const struct equipment *own = inheriting->own_gear.items;
    not_here_check(inheriting);
    for (size_t i = 0; i < inheriting->own_gear.count; i++)
        piece_check(inheriting, &own[i]);
}

/* ---- what she has not ---- */

/* Do the two speak of one engine, or one of them of all? */
static bool spaces_meet(const struct zone_values *a, const struct zone_values *b)
{
    for (size_t i = 0; i < a->count; i++)
        for (size_t k = 0; k < b->count; k++)
            if (zone_within(zone_of(a->items[i].value), b->items[k].value) ||
                zone_within(zone_of(b->items[k].value), a->items[i].value))
                return true;
    return a->count == 0 || b->count == 0;
}

static bool list_says(const struct entries_value *entries, enum item_key item,
                      const struct zone_values *serves)
{
    const struct absence *rows = entries->items;
    for (size_t i = 0; i < entries->count; i++)
        if (rows[i].item.value == item && item != ITEM_NONE && spaces_meet(&rows[i].serves, serves))
            return true;
    return false;
}

bool says_otherwise(const struct inheriting *inheriting, enum item_key item,
                    const struct zone_values *serves)
{
    return list_says(&inheriting->own_absences, item, serves) ||
           list_says(&inheriting->own_unsurveyed, item, serves);
}

static bool has_own_piece(const struct inheriting *inheriting, const struct absence *absence)
{
    const struct radio_facts *radio = &inheriting->file->record.radio;
    const struct equipment *hers = inheriting->own_gear.items;
    if (absence->item.value == ITEM_vhf_dsc)
        return radio->zone.place.line > 0 || radio->tag.place.line > 0;
    for (size_t i = 0; i < inheriting->own_gear.count; i++)
        if (hers[i].item.value == absence->item.value &&
            spaces_meet(&hers[i].serves, &absence->serves))
            return true;
    return false;
}

static void absence_inherit(struct inheriting *inheriting, const struct absence *models,
                            struct entries_value *list)
{
    struct absence *rows = list->items;
    if (has_own_piece(inheriting, models) ||
        says_otherwise(inheriting, models->item.value, &models->serves))
        return;
    if (is_walked(inheriting, &models->changed))
        rows[list->count++] = *models;
    else
        unwalked_add(inheriting, item_word(models->item.value), models->item.value);
}

void absences_inherit(struct inheriting *inheriting)
{
    const struct entries_value *models = &inheriting->model->file.not_fitted;
    struct entries_value list = inheriting->own_absences;
    list.items = arena_array(inheriting->arena, list.count + models->count,
                             sizeof(struct absence));
    if (list.count > 0)
        memcpy(list.items, inheriting->own_absences.items, list.count * sizeof(struct absence));
    for (size_t i = 0; i < models->count; i++)
        absence_inherit(inheriting, (const struct absence *)models->items + i, &list);
    inheriting->file->not_fitted = list;
}

/* ---- all gear ---- */

/* Her gear as it is put together. */
struct gear_list {
    struct equipment *rows;
    size_t count;
};

static struct equipment with_her_own(const struct equipment *models,
                                     const struct equipment *hers)
{
    struct equipment gear = *models;
    if (hers != NULL)
        fields_fill(equipment_fields(), &gear, hers, FIELDS_OWN);
    return gear;
}

/* A piece of the model: replaced, left out, not counting, or hers. */
static void piece_inherit(struct inheriting *inheriting, const struct equipment *models,
                          struct gear_list *list)
{
    const struct equipment *hers = hers_with(inheriting, models->tag.text);
    bool replaced = hers != NULL && !only_adds(hers);
    if (replaced) {
        list->rows[list->count++] = *hers;
    } else if (is_not_here(inheriting, models->tag.text) ||
               says_otherwise(inheriting, models->item.value, &models->serves)) {
        tag_keep(inheriting, &models->tag);
    } else if (is_walked(inheriting, &models->changed)) {
        list->rows[list->count++] = with_her_own(models, hers);
    } else {
        tag_keep(inheriting, &models->tag);
        unwalked_add(inheriting, models->tag.text == NULL ? item_word(models->item.value)
                                                          : models->tag.text,
                     models->item.value);
    }
}

static bool stands_in_model(const struct inheriting *inheriting, const struct equipment *gear)
{
    return only_adds(gear) || (hers_with(inheriting, gear->tag.text) == gear &&
                               models_with(inheriting, gear->tag.text) != NULL);
}

/* In the order of the model, so that sisters have their rows in one order; what she alone has
 * stands behind it. */
void gear_inherit(struct inheriting *inheriting)
{
    const struct entries_value *hers = &inheriting->own_gear;
    const struct entries_value *entries = &inheriting->model->file.equipment;
    const struct equipment *models = entries->items, *own = hers->items;
    struct gear_list list = {
        arena_array(inheriting->arena, hers->count + entries->count, sizeof *list.rows), 0};
    if (inheriting->model->sound)
        hers_check(inheriting);
    for (size_t i = 0; i < entries->count; i++)
        piece_inherit(inheriting, &models[i], &list);
    for (size_t i = 0; i < hers->count; i++)
        if (!stands_in_model(inheriting, &own[i]))
            list.rows[list.count++] = own[i];
    inheriting->file->equipment.items = list.rows;
    inheriting->file->equipment.count = list.count;
}
