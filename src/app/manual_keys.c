/* manual_keys.c - every key of a base's, a boat's and a model's file for the manual (room: app),
 * from the tables by which those files are read: what may stand there, which gear is asked for it
 * and where it is read. */
#include "manual.h"

#include "lists.h"
#include "reader.h"

/* ---- what may stand there ---- */

static void words_joined_add(struct text_builder *out, const struct json_list *list,
                             const char *last)
{
    const char *const *words = list->at;
    for (size_t i = 0; i < list->count; i++)
        text_add_format(out, "%s%s", i == 0 ? "" : i + 1 == list->count ? last : ", ", words[i]);
}

static void kind_add(struct text_builder *out, const struct field_listed *row)
{
    text_add_format(out, "%s%s", row->kind, row->needed ? ", needed" : "");
    if (row->unit != NULL)
        text_add_format(out, ", in %s", row->unit);
    if (row->range != NULL)
        text_add_format(out, ", from %s", row->range);
    text_add_format(out, ": %s%s", row->about, text_ends(row->about, "?") ? "" : ".");
    if (row->choices.count > 0) {
        text_add(out, " One of: ");
        words_joined_add(out, &row->choices, " or ");
        text_add(out, ".");
    }
}

/* ---- which gear is asked for it ---- */

/* Gear to which the field belongs so. */
static struct json_list gear_belonging(enum gear_field field, enum belonging how,
                                       struct arena *arena)
{
    const char **words = arena_array(arena, ITEM_COUNT, sizeof *words);
    size_t count = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (item_field(item, field) == how)
            words[count++] = item_word(item);
    return (struct json_list){words, count};
}

static void belonging_add(struct text_builder *out, enum gear_field field)
{
    static const struct { enum belonging how; const char *told; } rows[] = {
        {BELONGS_MUST, "`check` misses it of"},
        {BELONGS_ASKED, "`start` asks for it of"},
        {BELONGS_MAY, "It may stand at"},
    };
    bool general = field_is_general(field), others = false;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        struct json_list gear = gear_belonging(field, rows[i].how, out->arena);
        if (gear.count == 0)
            continue;
        text_add_format(out, " %s ", rows[i].told);
        if (general && gear.count * 2 > ITEM_COUNT)
            text_add(out, others ? "all other gear" : "any gear");
        else
            words_joined_add(out, &gear, " and ");
        text_add(out, ".");
        others = true;
    }
}

/* ---- a key ---- */

/* In full words: a page of the manual is read without the list of them. */
static void readers_add(struct text_builder *out, unsigned readers)
{
    bool first = true;
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++) {
        if ((readers >> reader & 1u) == 0)
            continue;
        text_add_format(out, "%s%s", first ? " Used in: " : "; ", reader_about(reader));
        first = false;
    }
    text_add(out, first ? "" : ".");
}

/* What check tells where it is not recorded. */
static void fact_lacks_add(struct text_builder *out, const struct field_path *path)
{
    struct fact_lack lack;
    for (size_t i = 0; fact_lack_at(i, &lack); i++)
        if (lack.table == path->table && text_equal(lack.key, path->field->key))
            text_add_format(out, " Where it is missing `check` tells `%s`: %s.", lack.check,
                            lack.so);
}

const char *key_meaning(const struct field_path *path, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    struct field_listed row = field_listed_of(path, arena);
    kind_add(&out, &row);
    if (path->outer != NULL && path->table == equipment_fields())
        belonging_add(&out, gear_field_find(path->field->key));
    fact_lacks_add(&out, path);
    if (path->field->own)
        text_add(&out, " One boat's own: no model holds it.");
    readers_add(&out, path->field->readers);
    return out.at;
}

static void field_key_tell(const struct field_path *path, void *context)
{
    struct manual *manual = context;
    manual_term(manual, field_path_text(path, manual->out.arena),
                key_meaning(path, manual->out.arena));
}

static void keys_tell(struct manual *manual, const struct field_table *table)
{
    manual_terms(manual, 0);
    fields_walk(table, field_key_tell, manual);
    manual_terms_end(manual);
}

void base_keys_tell(struct manual *manual, const struct fleet *fleet)
{
    (void)fleet;
    keys_tell(manual, base_file_fields());
}

void boat_keys_tell(struct manual *manual, const struct fleet *fleet)
{
    (void)fleet;
    keys_tell(manual, boat_file_fields());
}

/* ---- a model ---- */

struct model_telling {
    struct manual *manual;
    struct names known;              /* keys of a boat's file */
    struct text_builder own, shared; /* of a model's those that it must not have, and the others */
};

static void boat_key_note(const struct field_path *path, void *context)
{
    struct model_telling *telling = context;
    struct arena *arena = telling->manual->out.arena;
    names_add(&telling->known, field_path_text(path, arena), arena);
}

static void model_key_tell(const struct field_path *path, void *context)
{
    struct model_telling *telling = context;
    const char *key = field_path_text(path, telling->manual->out.arena);
    struct text_builder *out = path->field->own ? &telling->own : &telling->shared;
    if (names_hold(&telling->known, key))
        text_add_format(out, "%s%s", out->length == 0 ? "" : ", ", key);
    else
        field_key_tell(path, telling->manual);
}

void model_keys_tell(struct manual *manual, const struct fleet *fleet)
{
    struct arena *arena = manual->out.arena;
    struct model_telling telling = {manual, {0}, text_builder_in(arena), text_builder_in(arena)};
    (void)fleet;
    fields_walk(boat_file_fields(), boat_key_note, &telling);
    manual_terms(manual, 0);
    fields_walk(model_file_fields(), model_key_tell, &telling);
    manual_terms_end(manual);
    manual_text(manual, text_format(arena, "As in a boat's file: %s.", telling.shared.at));
    manual_text(manual, text_format(arena, "One boat's own, and errors in a model: %s.",
                                    telling.own.at));
}

/* ---- where values are read ---- */

void reader_words_tell(struct manual *manual, const struct fleet *fleet)
{
    size_t widest = 0;
    (void)fleet;
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++)
        widest = strlen(reader_word(reader)) > widest ? strlen(reader_word(reader)) : widest;
    manual_terms(manual, widest);
    for (enum reader_bit reader = 0; reader < READER_COUNT; reader++)
        manual_term(manual, reader_word(reader), reader_about(reader));
    manual_terms_end(manual);
}
