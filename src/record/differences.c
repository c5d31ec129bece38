/* differences.c - how a boat differs from her model (room: record): facts, pieces of gear and
 * what she has not, as texts. What is each boat's own, and what does not count since nobody
 * has walked round her, is no difference. */
#include "record.h"

#include "item.h"
#include "text.h"

/* One boat held against her model. */
struct comparing {
    const struct boat *boat;
    const struct model *model;
    struct arena *arena;
    struct difference *rows;
    size_t count, room;
};

static void difference_add(struct comparing *comparing, const char *what, const char *hers,
                           const char *models)
{
    comparing->rows = arena_grow(comparing->arena, comparing->rows, comparing->count,
                                 &comparing->room, sizeof *comparing->rows);
    comparing->rows[comparing->count++] = (struct difference){what, hers, models};
}

/* ---- facts ---- */

/* Facts by one table; `head` names what they are of, with a space behind. What she lacks and
 * her model has does not count yet, but for pieces of her own. */
static void facts_compare(struct comparing *comparing, const char *head,
                          const struct field_table *table, const void *hers, const void *models)
{
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        const char *what = text_format(comparing->arena, "%s%s", head, field->key);
        if (field->own || field_place(field, hers).line == 0)
            continue;
        if (field->kind == FIELD_SECTION) {
            facts_compare(comparing, text_format(comparing->arena, "%s ", what),
                          field->part->table, (const char *)hers + field->part->offset,
                          (const char *)models + field->part->offset);
            continue;
        }
        const char *own = field_text(field, hers, comparing->arena);
        const char *model = field_text(field, models, comparing->arena);
        if (!text_equal(own, model))
            difference_add(comparing, what, own, model);
    }
}

static const char *engines_text(const struct engine *engines, size_t count, struct arena *arena)
{
    struct text_builder words = text_builder_in(arena);
    const struct field_table *table = engine_fields();
    text_add(&words, count == 0 ? "none" : "");
    for (size_t i = 0; i < count; i++) {
        text_add(&words, i == 0 ? "" : ";");
        for (size_t k = 0; k < table->count; k++) {
            const char *text = field_text(&table->fields[k], &engines[i], arena);
            text_add_format(&words, "%s%s", words.length == 0 || text == NULL ? "" : " ",
                            text == NULL ? "" : text);
        }
    }
    return words.at;
}

static void engines_compare(struct comparing *comparing)
{
    const struct entries_value *models = &comparing->model->file.engines;
    const struct boat *boat = comparing->boat;
    const char *hers = engines_text(boat->engines, boat->engine_count, comparing->arena);
    const char *text = engines_text(models->items, models->count, comparing->arena);
    if (boat->engines_given && !(models->given && text_equal(hers, text)))
        difference_add(comparing, "engines", hers, models->given ? text : NULL);
}

/* ---- gear ---- */

/* Nobody has looked whether she has it: that is told by other means. */
static bool is_unseen(const struct comparing *comparing, enum item_key item)
{
    return boat_unwalked(comparing->boat, item) ||
           boat_unsurveyed(comparing->boat, item, ZONE_NONE) != NULL;
}

static const struct equipment *piece_with(const struct entries_value *entries, const char *tag)
{
    const struct equipment *gear = entries->items;
    for (size_t i = 0; tag != NULL && i < entries->count; i++)
        if (text_equal(gear[i].tag.text, tag))
            return &gear[i];
    return NULL;
}

static const char *piece_words(const struct comparing *comparing, const struct equipment *gear)
{
    return text_format(comparing->arena, "%s %s", TEXT_OR_EMPTY(gear->tag),
                       item_word(gear->item.value));
}

/* A field that a piece of hers lacks is a difference too: her entry stands for the whole. */
static void entries_compare(struct comparing *comparing, const struct equipment *hers,
                          const struct equipment *models)
{
    const struct field_table *table = equipment_fields();
    for (size_t i = 0; i < table->count; i++) {
        const struct field *field = &table->fields[i];
        const char *own = field_text(field, hers, comparing->arena);
        const char *model = field_text(field, models, comparing->arena);
        if (!field->own && !text_equal(own, model))
            difference_add(comparing, text_format(comparing->arena, "%s %s",
                                                  piece_words(comparing, hers), field->key),
                           own, model);
    }
}

static void gear_compare(struct comparing *comparing)
{
    const struct entries_value *hers = &comparing->boat->likeness.gear;
    const struct entries_value *models = &comparing->model->file.equipment;
    for (size_t i = 0; i < models->count; i++) {
        const struct equipment *piece = (const struct equipment *)models->items + i;
        const struct equipment *own = piece_with(hers, piece->tag.text);
        if (own != NULL)
            entries_compare(comparing, own, piece);
        else if (!is_unseen(comparing, piece->item.value))
            difference_add(comparing, piece_words(comparing, piece), "not aboard", "aboard");
    }
    for (size_t i = 0; i < hers->count; i++) {
        const struct equipment *own = (const struct equipment *)hers->items + i;
        if (piece_with(models, own->tag.text) == NULL)
            difference_add(comparing, piece_words(comparing, own), "aboard", NULL);
    }
}

/* ---- what she has not ---- */

static bool is_absent_alike(const struct absence *rows, size_t count, const struct absence *wanted,
                            struct arena *arena)
{
    const struct field *serves = field_find(absence_fields(), "serves");
    for (size_t i = 0; i < count; i++)
        if (rows[i].item.value == wanted->item.value &&
            text_equal(field_text(serves, &rows[i], arena), field_text(serves, wanted, arena)))
            return true;
    return false;
}

static void absences_compare(struct comparing *comparing)
{
    const struct absence_list *hers = &comparing->boat->not_fitted;
    const struct entries_value *entries = &comparing->model->file.not_fitted;
    const struct absence *models = entries->items;
    for (size_t i = 0; i < hers->count; i++)
        if (!is_absent_alike(models, entries->count, &hers->rows[i], comparing->arena))
            difference_add(comparing, item_word(hers->rows[i].item.value), "not fitted", NULL);
    for (size_t i = 0; i < entries->count; i++)
        if (!is_unseen(comparing, models[i].item.value) &&
            !is_absent_alike(hers->rows, hers->count, &models[i], comparing->arena))
            difference_add(comparing, item_word(models[i].item.value), NULL, "not fitted");
}

struct differences boat_differences(const struct boat *boat, const struct model *model,
                                    struct arena *arena)
{
    struct comparing comparing = {.boat = boat, .model = model, .arena = arena};
    const struct boat *models = &model->file.record;
    facts_compare(&comparing, "boat ", boat_fields(), &boat->facts, &models->facts);
    engines_compare(&comparing);
    facts_compare(&comparing, "gas ", gas_fields(), &boat->gas, &models->gas);
    facts_compare(&comparing, "radio ", radio_fields(), &boat->radio, &models->radio);
    gear_compare(&comparing);
    absences_compare(&comparing);
    return (struct differences){comparing.rows, comparing.count};
}
