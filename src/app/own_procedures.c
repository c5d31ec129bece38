/* own_procedures.c - the program's own procedures (room: app): the logic of each with its
 * texts in every language. A set without one emergency looks complete, so one that cannot be
 * used stops them all. */
#include "own_files.h"

#include <string.h>

/* ---- one procedure ---- */

/* The texts of the logic file `name` in one language; false (told): it has none. */
static bool text_file_find(const struct manifest *manifest, const char *name,
                           struct procedure_text_file *out)
{
    const struct fleet *fleet = manifest->fleet;
    const char *file = text_format(fleet->arena, WORDS_FOLDER "%s/%s", out->language, name);
    out->source = manifest_find(manifest, file);
    if (out->source != NULL)
        return true;
    problem_add(fleet->problems, SEVERITY_ERROR, source_whole(manifest_find(manifest, name)),
                text_format(fleet->arena, "write %s/%s, then run `make manifest`",
                            manifest->folder, file),
                "the procedure has no texts in the language %s", out->language);
    return false;
}

/* In every language that there is, DEFAULT_LANGUAGE first; NULL (told): not in all. */
static const struct procedure_text_file *texts_of(const struct manifest *manifest,
                                                  const char *name)
{
    const struct fleet *fleet = manifest->fleet;
    const struct words *first = fleet->first_language;
    struct procedure_text_file *texts =
        arena_array(fleet->arena, fleet->languages.count, sizeof *texts);
    size_t count = 0;
    texts[count++].language = words_language(first);
    for (size_t i = 0; i < fleet->languages.count; i++)
        if (fleet->languages.rows[i] != first)
            texts[count++].language = words_language(fleet->languages.rows[i]);
    bool complete = true;
    for (size_t i = 0; i < count; i++)
        complete = text_file_find(manifest, name, &texts[i]) && complete;
    return complete ? texts : NULL;
}

static const struct procedure *named_procedure_read(const struct manifest *manifest,
                                                    const char *name)
{
    const struct fleet *fleet = manifest->fleet;
    const struct procedure_files files = {.logic = manifest_find(manifest, name),
                                          .texts = texts_of(manifest, name),
                                          .text_count = fleet->languages.count};
    if (files.texts == NULL)
        return NULL;
    return procedure_read(&files, fleet->authorities, fleet->arena, fleet->problems);
}

/* ---- texts that nobody reads ---- */

/* How to mend a file of texts, words/LANGUAGE/NAME.yaml, that would never be read; NULL: it
 * is read. */
static const char *orphan_remedy(const struct manifest *manifest, const char *name)
{
    struct arena *arena = manifest->fleet->arena;
    const char *file = strrchr(name, '/');
    const char *words = text_format(arena, "%.*s/words.yaml", (int)(file - name), name);
    if (!text_begins(name, WORDS_FOLDER) || manifest_find(manifest, words) == NULL)
        return text_format(arena, "move it into the folder of a language, which holds %s/%s",
                           manifest->folder, words);
    if (manifest_find(manifest, file + 1) == NULL)
        return text_format(arena, "give it the name of a procedure's file, or write %s%s",
                           manifest->folder, file);
    return NULL;
}

/* True when there are none. */
static bool orphans_check(const struct manifest *manifest)
{
    bool none = true;
    for (size_t i = 0; i < manifest->names.count; i++) {
        const char *name = manifest->names.at[i];
        if (strchr(name, '/') == NULL || text_ends(name, "/words.yaml"))
            continue;
        const char *remedy = orphan_remedy(manifest, name);
        if (remedy != NULL)
            problem_add(manifest->fleet->problems, SEVERITY_ERROR,
                        source_whole(manifest->sources[i]), remedy,
                        "these texts belong to no procedure or to no language");
        none = none && remedy == NULL;
    }
    return none;
}

/* ---- the set ---- */

/* The first to be read has the key; the other would be a second card of one name. */
static bool key_is_new(const struct fleet *fleet, const struct procedure *procedure,
                       const struct procedure *const *rows)
{
    for (size_t i = 0; i < fleet->procedures.count; i++) {
        if (!text_equal(rows[i]->key.text, procedure->key.text))
            continue;
        problem_add(fleet->problems, SEVERITY_ERROR, procedure->key.place,
                    "give each procedure a key of its own, or take one of the two away",
                    "procedure %s is that of %s too (line %d)", procedure->key.text,
                    rows[i]->source->name, rows[i]->key.place.line);
        return false;
    }
    return true;
}

/* Numbers from BASE_CARD_FIRST on are for cards that bases make. */
static bool number_is_the_programs(const struct fleet *fleet, const struct procedure *procedure)
{
    if (procedure->number.milli < (int64_t)BASE_CARD_FIRST * 1000)
        return true;
    problem_add(fleet->problems, SEVERITY_ERROR, procedure->number.place,
                text_format(fleet->arena, "give it a number below %d that no card ever had",
                            BASE_CARD_FIRST),
                "number %s belongs to cards of bases' own", procedure->number.text);
    return false;
}

/* Printed cards name each other by number: no two may ever share one, but forms of one card. */
static bool number_is_new(const struct fleet *fleet, const struct procedure *procedure,
                          const struct procedure *const *rows)
{
    for (size_t i = 0; i < fleet->procedures.count; i++) {
        if (rows[i]->number.milli != procedure->number.milli ||
            procedures_are_forms(rows[i], procedure))
            continue;
        problem_add(fleet->problems, SEVERITY_ERROR, procedure->number.place,
                    "give the newer procedure a number that no card ever had: printed cards "
                    "name each other by it",
                    "number %s is that of %s too (line %d)", procedure->number.text,
                    rows[i]->source->name, rows[i]->number.place.line);
        return false;
    }
    return true;
}

static void procedure_place(struct fleet *fleet, const struct procedure *procedure,
                            const struct procedure **rows)
{
    size_t at = fleet->procedures.count++;
    for (; at > 0 && rows[at - 1]->number.milli > procedure->number.milli; at--)
        rows[at] = rows[at - 1];
    rows[at] = procedure;
}

/* True when every logic file could be used. */
static bool set_read(struct manifest *manifest, const struct procedure **rows)
{
    struct fleet *fleet = manifest->fleet;
    bool sound = true;
    for (size_t i = 0; i < manifest->names.count; i++) {
        const char *name = manifest->names.at[i];
        if (text_equal(name, "sources.yaml") || strchr(name, '/') != NULL)
            continue;
        const struct procedure *procedure = named_procedure_read(manifest, name);
        if (procedure != NULL && key_is_new(fleet, procedure, rows) &&
            number_is_the_programs(fleet, procedure) && number_is_new(fleet, procedure, rows))
            procedure_place(fleet, procedure, rows);
        else
            sound = false;
    }
    return sound;
}

/* A set with a card missing looks complete: all or none. */
enum own_files procedures_read(struct manifest *manifest)
{
    struct fleet *fleet = manifest->fleet;
    const struct procedure **rows = arena_array(fleet->arena, manifest->names.count,
                                                sizeof *rows);
    fleet->procedures.rows = rows;
    bool whole = orphans_check(manifest);
    whole = set_read(manifest, rows) && whole;
    if (whole && fleet->procedures.count == 0)
        REFUSE(manifest, (struct place){0}, "%s/" MANIFEST " names no procedure",
               manifest->folder);
    whole = whole && procedure_set_check(&fleet->procedures, fleet->arena, fleet->problems);
    if (!manifest->sound)
        return OWN_FILES_BROKEN;
    return whole ? OWN_FILES_SOUND : OWN_FILES_WRONG;
}
