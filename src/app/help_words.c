/* help_words.c - what `help` tells of a word that files and commands know: a key, a kind of gear,
 * a zone, a card, a check, a figure (room: app). One word may be several of these. */
#include "manual.h"

#include "figure.h"
#include "reasons.h"

/* ---- keys ---- */

struct key_asked {
    struct manual *manual;
    const char *name, *file;
    size_t found;
};

static void asked_key_tell(const struct field_path *path, void *context)
{
    struct key_asked *asked = context;
    struct arena *arena = asked->manual->out.arena;
    const char *whole = field_path_text(path, arena);
    if (!text_equal(path->field->key, asked->name) && !text_equal(whole, asked->name))
        return;
    if (asked->found++ == 0)
        manual_part(asked->manual, text_format(arena, "Of %s:", asked->file));
    manual_term(asked->manual, whole, key_meaning(path, arena));
    asked->manual->owed = true;
}

static size_t keys_of_file_tell(struct manual *manual, const char *name, const char *file,
                                const struct field_table *table)
{
    struct key_asked asked = {manual, name, file, 0};
    manual->hanging = 0;
    fields_walk(table, asked_key_tell, &asked);
    return asked.found;
}

/* ---- gear, zones, cards, checks ---- */

static bool item_tell(struct manual *manual, const struct fleet *fleet, const char *name)
{
    const struct item_kind *kind = item_find(name);
    if (kind == NULL)
        return false;
    manual_part(manual, "A kind of gear:");
    gear_kind_tell(manual, fleet, gear_asked(fleet, manual->out.arena), kind->item);
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (item_field(kind->item, field) >= BELONGS_ASKED)
            manual_term(manual, gear_field_word(field), gear_field_row(field)->about);
    manual->owed = true;
    return true;
}

static bool zone_tell(struct manual *manual, const struct fleet *fleet, const char *name)
{
    const struct zone *zone = zone_find(name);
    if (zone == NULL)
        return false;
    manual_part(manual, "A part of a boat:");
    zone_row_tell(manual, fleet, zone->id);
    manual->owed = true;
    return true;
}

static bool card_word_tell(struct manual *manual, const struct fleet *fleet, const char *name)
{
    struct arena *arena = manual->out.arena;
    for (size_t i = 0; i < fleet->procedures.count; i++) {
        const struct procedure *procedure = fleet->procedures.rows[i];
        if (!text_equal(procedure->key.text, name))
            continue;
        const char *boats = procedure->when == NULL ? "all boats"
                                                    : condition_words(procedure->when, arena);
        manual_part(manual, "A card:");
        manual_term(manual, name,
                    text_format(arena, "%lld %s. Which boats have it: %s.",
                                (long long)(procedure->number.milli / 1000),
                                text_for(&procedure->title,
                                         words_language(fleet->first_language)), boats));
        manual->owed = true;
        return true;
    }
    return false;
}

static bool check_tell(struct manual *manual, const char *name)
{
    const struct check *check = check_find(name);
    if (check == NULL)
        return false;
    manual_part(manual, "A check:");
    manual_term(manual, name,
                text_format(manual->out.arena, "%s: %s. By %s.", severity_word(check->severity),
                            check->sentence, check->source));
    manual->owed = true;
    return true;
}

static bool figure_tell(struct manual *manual, const char *name)
{
    const struct figure *figure = figure_find(name);
    if (figure == NULL)
        return false;
    manual_part(manual, "A figure:");
    manual_term(manual, name,
                text_format(manual->out.arena,
                            "%s. From: %s. By: %s. `why --figure %s` reckons it.",
                            figure->title, figure->reads, figure->source, name));
    manual->owed = true;
    return true;
}

bool word_tell(struct manual *manual, const struct fleet *fleet, const char *name)
{
    size_t found = item_tell(manual, fleet, name);
    found += zone_tell(manual, fleet, name);
    found += card_word_tell(manual, fleet, name);
    found += check_tell(manual, name);
    found += figure_tell(manual, name);
    found += keys_of_file_tell(manual, name, "base.yaml", base_file_fields());
    found += keys_of_file_tell(manual, name, "a boat's file", boat_file_fields());
    return found > 0;
}

/* ---- which there are ---- */

struct names_given {
    struct names *names;
    struct arena *arena;
};

static void word_note(const struct names_given *given, const char *word)
{
    if (!names_hold(given->names, word))
        names_add(given->names, word, given->arena);
}

static void key_note(const struct field_path *path, void *context)
{
    word_note(context, path->field->key);
}

void words_told_gather(struct names *names, const struct fleet *fleet, struct arena *arena)
{
    struct names_given given = {names, arena};
    for (size_t i = 0; i < command_count; i++)
        word_note(&given, commands[i].name);
    for (size_t i = 0; i < manual_topic_count; i++)
        if (manual_topics[i].name != NULL)
            word_note(&given, manual_topics[i].name);
    for (const char *const *item = item_key_list; *item != NULL; item++)
        word_note(&given, *item);
    for (const char *const *zone = zone_key_list; *zone != NULL; zone++)
        word_note(&given, *zone);
    for (size_t i = 0; i < fleet->procedures.count; i++)
        word_note(&given, fleet->procedures.rows[i]->key.text);
    for (size_t i = 0; check_at(i) != NULL; i++)
        word_note(&given, check_at(i)->id);
    for (size_t i = 0; i < figure_count(); i++)
        word_note(&given, figure_at(i)->id);
    fields_walk(base_file_fields(), key_note, &given);
    fields_walk(boat_file_fields(), key_note, &given);
}
