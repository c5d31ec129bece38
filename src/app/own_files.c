/* own_files.c - the program's own knowledge (room: app): procedures, sources and words as
 * procedures/manifest.txt has them, each file by its sum, and the faces. Where one is
 * missing, altered or too many, nothing is printed: a set without one emergency looks
 * complete. */
#include "app.h"

#include <string.h>

#include "sha256.h"

#define MANIFEST "manifest.txt"
#define WORDS_FOLDER "words/"
#define OFFICIAL "clone or install the program again; whoever changed its texts on purpose " \
                 "runs `make manifest` in the clone"

/* The list, and what stands in it. */
struct manifest {
    const struct fleet *fleet;
    const char *folder;
    struct names names;                /* such as words/en/words.yaml */
    const struct source **sources;     /* as many; NULL: not as it was sealed */
    bool sound;
};

static void refuse(struct manifest *manifest, struct place place, const char *remedy,
                   const char *what)
{
    problem_add(manifest->fleet->problems, SEVERITY_FAILURE, place, remedy, "%s", what);
    manifest->sound = false;
}

#define REFUSE(manifest, place, ...) \
    refuse(manifest, place, OFFICIAL, text_format((manifest)->fleet->arena, __VA_ARGS__))

static const struct source *sealed_read(struct manifest *manifest, const char *name,
                                        const char *sum, struct place place)
{
    char found[SHA256_TEXT];
    const char *path = text_format(manifest->fleet->arena, "%s/%s", manifest->folder, name);
    const struct source *source = file_read(manifest->fleet, path, SEVERITY_FAILURE, OFFICIAL);
    if (source == NULL) {
        manifest->sound = false;
        return NULL;
    }
    sha256_text((const unsigned char *)source->bytes, source->length, found);
    if (text_equal(found, sum))
        return source;
    REFUSE(manifest, place, "%s is not the text that belongs to this program: its sum differs",
           path);
    return NULL;
}

/* "SUM  NAME"; the sum is of 64 digits. */
static void row_read(struct manifest *manifest, const char *line, struct place place)
{
    struct arena *arena = manifest->fleet->arena;
    size_t digits = strspn(line, "0123456789abcdef");
    const char *name = digits == SHA256_TEXT - 1 ? line + digits + 2 : "";
    if (digits != SHA256_TEXT - 1 || !text_begins(line + digits, "  ") || *name == '/' ||
        strstr(name, "..") != NULL || !text_ends(name, ".yaml") ||
        names_hold(&manifest->names, name)) {
        REFUSE(manifest, place, "the line is not a sum and the name of a file of its own");
        return;
    }
    names_add(&manifest->names, name, arena);
    manifest->sources[manifest->names.count - 1] = sealed_read(
        manifest, name, arena_copy(arena, line, digits), place);
}

/* The last line tells how many there are, so that a list cut short is seen. */
static void rows_read(struct manifest *manifest, const struct source *source)
{
    struct arena *arena = manifest->fleet->arena;
    bool ended = false;
    manifest->sources = arena_array(arena, source->line_count, sizeof *manifest->sources);
    for (size_t i = 1; i <= source->line_count; i++) {
        size_t length;
        const char *at = source_line(source, (int)i, &length);
        const char *line = arena_copy(arena, at, length);
        struct place place = source_place(source, source->line_starts[i - 1]);
        if (ended && length == 0 && i == source->line_count)
            return;
        if (!ended && text_equal(line, text_format(arena, "%zu files", manifest->names.count)))
            ended = true;
        else if (!ended && length > 0 && i < source->line_count)
            row_read(manifest, line, place);
        else
            break;
    }
    REFUSE(manifest, source_whole(source), "the list does not end with the number of its files");
}

static void stranger_check(struct manifest *manifest, const char *name)
{
    if (text_ends(name, ".yaml") && !names_hold(&manifest->names, name))
        refuse(manifest, (struct place){0},
               "move it out of the folder; whoever added it on purpose runs `make manifest` in "
               "the clone",
               text_format(manifest->fleet->arena, "%s/%s does not belong to this program",
                           manifest->folder, name));
}

/* Every file of texts in the folder and those in it must be listed. `inside` is "",
 * "words/" or "words/en/". What an editor leaves begins with a dot. */
static void strangers_find(struct manifest *manifest, const char *inside)
{
    struct arena *arena = manifest->fleet->arena;
    const char *folder = text_format(arena, "%s/%s", manifest->folder, inside);
    struct names found;
    int error = folder_names(arena, folder, &found);
    if (error != 0) {
        folder_refused(manifest->fleet, folder, error);
        manifest->sound = false;
    }
    for (size_t i = 0; i < found.count; i++) {
        const char *name = text_format(arena, "%s%s", inside, found.at[i]);
        if (found.at[i][0] == '.')
            continue;
        if (is_folder(text_format(arena, "%s/%s", manifest->folder, name)))
            strangers_find(manifest, text_format(arena, "%s/", name));
        else
            stranger_check(manifest, name);
    }
}

static const struct source *find_named(const struct manifest *manifest, const char *name)
{
    for (size_t i = 0; i < manifest->names.count; i++)
        if (text_equal(manifest->names.at[i], name))
            return manifest->sources[i];
    return NULL;
}

static const struct source *named(struct manifest *manifest, const char *name)
{
    const struct source *source = find_named(manifest, name);
    if (source == NULL)
        REFUSE(manifest, (struct place){0}, "%s/" MANIFEST " does not name %s",
               manifest->folder, name);
    return source;
}

static struct manifest manifest_read(const struct fleet *fleet, const char *folder)
{
    struct manifest manifest = {.fleet = fleet, .folder = folder, .sound = true};
    const struct source *source = file_read(
        fleet, text_format(fleet->arena, "%s/" MANIFEST, folder), SEVERITY_FAILURE, OFFICIAL);
    manifest.sound = source != NULL;
    if (source == NULL)
        return manifest;
    rows_read(&manifest, source);
    strangers_find(&manifest, "");
    return manifest;
}

/* ---- what the files hold ---- */

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

static void procedure_place(struct fleet *fleet, const struct procedure *procedure,
                            const struct procedure **rows)
{
    size_t at = fleet->procedures.count++;
    for (; at > 0 && rows[at - 1]->order.milli > procedure->order.milli; at--)
        rows[at] = rows[at - 1];
    rows[at] = procedure;
}

static bool is_logic(const char *name)
{
    return !text_equal(name, "sources.yaml") && strchr(name, '/') == NULL;
}

/* The texts of a procedure in one language; false (told): it has none. */
static bool text_file_find(const struct fleet *fleet, const struct manifest *manifest,
                           const char *name, struct procedure_text_file *out)
{
    const char *file = text_format(fleet->arena, WORDS_FOLDER "%s/%s", out->language, name);
    out->source = find_named(manifest, file);
    if (out->source != NULL)
        return true;
    problem_add(fleet->problems, SEVERITY_ERROR, source_whole(find_named(manifest, name)),
                text_format(fleet->arena, "write %s/%s, then run `make manifest`",
                            manifest->folder, file),
                "the procedure has no texts in the language %s", out->language);
    return false;
}

/* In every language that there is, that of the run first; NULL (told): not in all. */
static const struct procedure_text_file *texts_of(const struct fleet *fleet,
                                                  const struct manifest *manifest,
                                                  const char *name)
{
    struct procedure_text_file *texts =
        arena_array(fleet->arena, fleet->languages.count, sizeof *texts);
    size_t count = 0;
    texts[count++].language = words_language(fleet->words);
    for (size_t i = 0; i < fleet->languages.count; i++)
        if (fleet->languages.rows[i] != fleet->words)
            texts[count++].language = words_language(fleet->languages.rows[i]);
    bool complete = true;
    for (size_t i = 0; i < count; i++)
        complete = text_file_find(fleet, manifest, name, &texts[i]) && complete;
    return complete ? texts : NULL;
}

static const struct procedure *named_procedure_read(const struct fleet *fleet,
                                                    const struct manifest *manifest,
                                                    const char *name)
{
    const struct procedure_files files = {.logic = find_named(manifest, name),
                                          .texts = texts_of(fleet, manifest, name),
                                          .text_count = fleet->languages.count};
    if (files.texts == NULL)
        return NULL;
    return procedure_read(&files, fleet->authorities, fleet->arena, fleet->problems);
}

/* Why a file of texts, words/LANGUAGE/NAME.yaml, would never be read; NULL: it is. */
static const char *orphan_remedy(const struct manifest *manifest, const char *name)
{
    struct arena *arena = manifest->fleet->arena;
    const char *file = strrchr(name, '/');
    const char *words = text_format(arena, "%.*s/words.yaml", (int)(file - name), name);
    if (!text_begins(name, WORDS_FOLDER) || find_named(manifest, words) == NULL)
        return text_format(arena, "move it into the folder of a language, which holds %s/%s",
                           manifest->folder, words);
    if (find_named(manifest, file + 1) == NULL)
        return text_format(arena, "give it the name of a procedure's file, or write %s%s",
                           manifest->folder, file);
    return NULL;
}

static bool orphans_tell(const struct fleet *fleet, const struct manifest *manifest)
{
    bool none = true;
    for (size_t i = 0; i < manifest->names.count; i++) {
        const char *name = manifest->names.at[i];
        if (strchr(name, '/') == NULL || text_ends(name, "/words.yaml"))
            continue;
        const char *remedy = orphan_remedy(manifest, name);
        if (remedy != NULL)
            problem_add(fleet->problems, SEVERITY_ERROR, source_whole(manifest->sources[i]),
                        remedy, "these texts belong to no procedure or to no language");
        none = none && remedy == NULL;
    }
    return none;
}

/* A set with a card missing would number its cards wrongly: all or none. */
static bool procedures_read(struct fleet *fleet, struct manifest *manifest)
{
    const struct procedure **rows = arena_array(fleet->arena, manifest->names.count,
                                                sizeof *rows);
    bool sound = orphans_tell(fleet, manifest);
    fleet->procedures.rows = rows;
    for (size_t i = 0; i < manifest->names.count; i++) {
        if (!is_logic(manifest->names.at[i]))
            continue;
        const struct procedure *procedure =
            named_procedure_read(fleet, manifest, manifest->names.at[i]);
        if (procedure != NULL && key_is_new(fleet, procedure, rows))
            procedure_place(fleet, procedure, rows);
        else
            sound = false;
    }
    if (sound && fleet->procedures.count == 0)
        REFUSE(manifest, (struct place){0}, "%s/" MANIFEST " names no procedure",
               manifest->folder);
    return sound && manifest->sound &&
           procedure_set_check(&fleet->procedures, fleet->arena, fleet->problems);
}

/* The language whose words the listed file holds: "en" of words/en/words.yaml; NULL: none. */
static const char *language_of(const char *name, struct arena *arena)
{
    if (!text_begins(name, WORDS_FOLDER) || !text_ends(name, "/words.yaml"))
        return NULL;
    const char *language = name + strlen(WORDS_FOLDER);
    return arena_copy(arena, language, strlen(language) - strlen("/words.yaml"));
}

/* The words of each language that has a folder. False where one of them is unsound. */
static bool languages_read(struct fleet *fleet, const struct manifest *manifest)
{
    const struct words **rows = arena_array(fleet->arena, manifest->names.count, sizeof *rows);
    bool sound = true;
    for (size_t i = 0; i < manifest->names.count; i++) {
        const char *language = language_of(manifest->names.at[i], fleet->arena);
        if (language == NULL)
            continue;
        const struct words *words = words_read(manifest->sources[i], language, fleet->arena,
                                               fleet->problems);
        if (words != NULL)
            rows[fleet->languages.count++] = words;
        sound = sound && words != NULL;
    }
    fleet->languages.rows = rows;
    return sound;
}

static const struct words *language_find(const struct fleet *fleet, const char *language)
{
    for (size_t i = 0; i < fleet->languages.count; i++)
        if (text_equal(words_language(fleet->languages.rows[i]), language))
            return fleet->languages.rows[i];
    return NULL;
}

static bool texts_read(struct fleet *fleet)
{
    struct manifest manifest = manifest_read(fleet, program_folder(fleet->arena, "procedures"));
    if (!manifest.sound || named(&manifest, WORDS_FOLDER "en/words.yaml") == NULL)
        return false;
    const struct source *sources = named(&manifest, "sources.yaml");
    if (sources == NULL)
        return false;
    bool complete = languages_read(fleet, &manifest);
    fleet->words = language_find(fleet, "en");
    fleet->authorities = authorities_read(sources, fleet->arena, fleet->problems);
    if (fleet->words == NULL || fleet->authorities == NULL)
        return false;
    return procedures_read(fleet, &manifest) && complete;
}

bool own_files_read(struct fleet *fleet)
{
    bool texts = texts_read(fleet);
    if (fleet->words == NULL || fleet->authorities == NULL)
        return false;
    fleet->faces = faces_open(program_folder(fleet->arena, "fonts"), fleet->arena,
                              fleet->problems);
    return texts && fleet->faces != NULL;
}
