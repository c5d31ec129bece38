/* words_known.c - the names by which people know the keys of a base's files (room: words): what
 * cards call gear and zones, and the synonyms of each language. Never looks for one. */
#include "words_room.h"

#include <string.h>

#include "boat.h"

struct name_table {
    struct known_name *rows;
    size_t count, room;
    struct arena *arena;
};

static void known_name_add(struct name_table *table, const char *name, const char *key,
                           const char *printed)
{
    if (name == NULL)
        return;
    table->rows = arena_grow(table->arena, table->rows, table->count, &table->room,
                             sizeof *table->rows);
    table->rows[table->count++] =
        (struct known_name){name_plain(table->arena, name), key, printed};
}

static void synonyms_add(struct name_table *table, const struct list_value *names,
                         const char *key, const char *printed)
{
    for (size_t i = 0; i < names->count; i++)
        known_name_add(table, names->items[i].text, key, printed);
}

static void item_names_add(struct name_table *table, const struct words *words)
{
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        const struct item_words *names = &words->items[item];
        const char *printed = names->name.text;
        known_name_add(table, printed, item_word(item), printed);
        for (size_t form = 0; form < PLURAL_COUNT; form++)
            known_name_add(table, names->forms[form].text, item_word(item), printed);
        synonyms_add(table, &words->item_synonyms[item], item_word(item), printed);
    }
}

static void zone_names_add(struct name_table *table, const struct words *words)
{
    for (enum zone_key zone = ZONE_NONE + 1; zone < ZONE_COUNT; zone++) {
        const char *printed = words->zones[zone].text;
        known_name_add(table, printed, zone_word(zone), printed);
        synonyms_add(table, &words->zone_synonyms[zone], zone_word(zone), printed);
    }
}

static void synonym_entries_add(struct name_table *table, const struct entries_value *entries)
{
    const struct synonym_entry *rows = entries->items;
    for (size_t i = 0; i < entries->count; i++)
        synonyms_add(table, &rows[i].names, rows[i].key.text, NULL);
}

/* ---- keys of files ---- */

struct key_gathering {
    const char **keys;
    size_t count, room;
    struct arena *arena;
};

static void file_key_add(const struct field_path *path, void *context)
{
    struct key_gathering *gathered = context;
    gathered->keys = arena_grow(gathered->arena, gathered->keys, gathered->count,
                                &gathered->room, sizeof *gathered->keys);
    gathered->keys[gathered->count++] = path->field->key;
}

static const char *const *file_keys(struct arena *arena)
{
    struct key_gathering gathered = {.arena = arena};
    fields_walk(base_file_fields(), file_key_add, &gathered);
    fields_walk(boat_file_fields(), file_key_add, &gathered);
    const char **keys = arena_array(arena, gathered.count + 1, sizeof *keys);
    memcpy(keys, gathered.keys, gathered.count * sizeof *keys);
    return keys;
}

struct known_names words_known(const struct languages *languages, struct arena *arena)
{
    struct name_table table = {.arena = arena};
    for (size_t i = 0; i < languages->count; i++) {
        const struct words *words = languages->rows[i];
        item_names_add(&table, words);
        zone_names_add(&table, words);
        synonym_entries_add(&table, &words->key_synonyms);
        synonym_entries_add(&table, &words->choice_synonyms);
    }
    return (struct known_names){table.rows, table.count, file_keys(arena)};
}
