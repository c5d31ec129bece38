/* manual_own.c - what the manual tells of the program's own files, of gear and of zones (room:
 * app), from the tables by which they are read and the procedures that ask for gear. */
#include "manual.h"

#include "asked.h"
#include "procedure_reference.h"

/* ---- procedures and sources ---- */

void procedure_keys_tell(struct manual *manual, const struct fleet *fleet)
{
    struct text_builder out = text_builder_in(manual->out.arena);
    (void)fleet;
    procedure_reference(&out);
    manual_text(manual, out.at);
}

static const char *own_meaning(const struct field *field, struct arena *arena)
{
    return text_format(arena, "%s%s: %s.",
                       field->kind == FIELD_NODE ? "section" : field_kind_word(field->kind),
                       field->required ? ", needed" : "", field->about);
}

static void source_key_tell(const struct field_path *path, void *context)
{
    struct manual *manual = context;
    manual_term(manual, field_path_text(path, manual->out.arena),
                own_meaning(path->field, manual->out.arena));
}

void source_keys_tell(struct manual *manual, const struct fleet *fleet)
{
    (void)fleet;
    manual_terms(manual, 0);
    fields_walk(authority_file_fields(), source_key_tell, manual);
    manual_terms_end(manual);
}

/* ---- words ---- */

enum { ALIKE_LEAST = 5 };

/* Do all rows of the table tell the same, so that one stands for all? */
static bool table_is_alike(const struct field_table *table)
{
    for (size_t i = 1; i < table->count; i++)
        if (!text_equal(table->fields[i].about, table->fields[0].about))
            return false;
    return table->count >= ALIKE_LEAST;
}

/* What stands for a key of that table where the program lists what it may be; NULL: it does not. */
static const char *listed_word(const struct field_table *table)
{
    if (text_equal(table->fields[0].key, item_word(ITEM_NONE + 1)))
        return "{item}";
    return text_equal(table->fields[0].key, zone_word(ZONE_NONE + 1)) ? "{zone}" : NULL;
}

static const char *alike_word(const struct field_table *table)
{
    return listed_word(table) == NULL ? "{each}" : listed_word(table);
}

static const char *alike_path(const struct field_path *path, struct arena *arena)
{
    const char *key = table_is_alike(path->table) ? alike_word(path->table) : path->field->key;
    return path->outer == NULL
               ? key : text_format(arena, "%s/%s", alike_path(path->outer, arena), key);
}

/* " Each of: a, b.", where no list of the program has them. */
static const char *alike_keys(const struct field_path *path, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    if (!table_is_alike(path->table) || listed_word(path->table) != NULL)
        return "";
    for (size_t i = 0; i < path->table->count; i++)
        text_add_format(&out, "%s%s", i == 0 ? " Each of: " : ", ", path->table->fields[i].key);
    text_add(&out, ".");
    return out.at;
}

struct words_telling {
    struct manual *manual;
    struct names told;
};

static void word_key_tell(const struct field_path *path, void *context)
{
    struct words_telling *telling = context;
    struct arena *arena = telling->manual->out.arena;
    const char *key = alike_path(path, arena);
    if (names_hold(&telling->told, key))
        return;
    names_add(&telling->told, key, arena);
    manual_term(telling->manual, key,
                text_format(arena, "%s%s", own_meaning(path->field, arena),
                            alike_keys(path, arena)));
}

void word_keys_tell(struct manual *manual, const struct fleet *fleet)
{
    struct words_telling telling = {.manual = manual};
    (void)fleet;
    manual_terms(manual, 0);
    fields_walk(words_file_fields(), word_key_tell, &telling);
    manual_terms_end(manual);
}

/* ---- gear ---- */

/* Which items it asks for, on a boat of any hull. */
static const bool *items_asked(const struct procedure *procedure, struct arena *arena)
{
    const struct procedure *const one[] = {procedure};
    bool *items = arena_array(arena, ITEM_COUNT, sizeof *items);
    for (enum hull hull = HULL_NONE + 1; hull < HULL_COUNT; hull++) {
        struct asked_list asked = asked_items(one, 1, hull, arena);
        for (size_t i = 0; i < asked.count; i++)
            items[asked.rows[i].kind->item] = true;
    }
    return items;
}

const bool *const *gear_asked(const struct fleet *fleet, struct arena *arena)
{
    size_t count = fleet->procedures.count;
    const bool **asked = arena_array(arena, count, sizeof *asked);
    for (size_t i = 0; i < count; i++)
        asked[i] = items_asked(fleet->procedures.rows[i], arena);
    return asked;
}

static void asking_cards_add(struct text_builder *out, const struct fleet *fleet,
                             const bool *const *asked, enum item_key item)
{
    size_t count = 0;
    for (size_t i = 0; i < fleet->procedures.count; i++)
        if (asked[i][item])
            text_add_format(out, "%s%s", count++ == 0 ? " Cards: " : ", ",
                            fleet->procedures.rows[i]->key.text);
    text_add(out, count > 0 ? "." : " No card asks for it.");
}

static void must_add(struct text_builder *out, enum item_key item)
{
    size_t count = 0;
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (item_field(item, field) == BELONGS_MUST && field != GEAR_item && field != GEAR_tag &&
            field != GEAR_zone)
            text_add_format(out, "%s%s", count++ == 0 ? " `check` misses: " : ", ",
                            gear_field_word(field));
    text_add(out, count > 0 ? "." : "");
}

void gear_kind_tell(struct manual *manual, const struct fleet *fleet,
                    const bool *const *asked, enum item_key item)
{
    struct text_builder out = text_builder_in(manual->out.arena);
    const struct item_kind *kind = item_kind_of(item);
    text_add_format(&out, "%s, tags %c. Record %s.", words_item(fleet->first_language, item),
                    (char)kind->class, kind->record);
    must_add(&out, item);
    asking_cards_add(&out, fleet, asked, item);
    manual_term(manual, kind->key, out.at);
}

void gear_tell(struct manual *manual, const struct fleet *fleet)
{
    const bool *const *asked = gear_asked(fleet, manual->out.arena);
    manual_terms(manual, 0);
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        gear_kind_tell(manual, fleet, asked, item);
    manual_terms_end(manual);
}

/* ---- zones ---- */

static const char *level_told(enum level level)
{
    switch (level) {
    case LEVEL_BELOW:
        return "below deck";
    case LEVEL_DECK:
        return "on deck";
    case LEVEL_TOP:
        break;
    }
    return "above deck";
}

void zone_row_tell(struct manual *manual, const struct fleet *fleet, enum zone_key key)
{
    struct text_builder out = text_builder_in(manual->out.arena);
    const struct zone *zone = zone_of(key);
    size_t count = 0;
    text_add_format(&out, "%s, %s", words_zone(fleet->first_language, key),
                    level_told(zone->level));
    if (zone->side != SIDE_NONE)
        text_add_format(&out, ", %s", side_word(zone->side));
    text_add(&out, zone->room ? ", where her rooms have it. Of: " : ". Of: ");
    for (enum hull hull = HULL_NONE + 1; hull < HULL_COUNT; hull++)
        if (hull_has_zone(hull, zone))
            text_add_format(&out, "%s%s", count++ == 0 ? "" : ", ",
                            choice_word(hull_words, hull));
    text_add(&out, ".");
    manual_term(manual, zone->key, out.at);
}

void zones_tell(struct manual *manual, const struct fleet *fleet)
{
    manual_terms(manual, 0);
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++)
        zone_row_tell(manual, fleet, key);
    manual_terms_end(manual);
}
