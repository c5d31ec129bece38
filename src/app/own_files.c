/* own_files.c - the program's own knowledge (room: app): procedures, sources and words as
 * procedures/manifest.txt has them, each file by its sum, and the faces. Where one is
 * missing, altered or too many, nothing is printed: a set without one emergency looks
 * complete. */
#include "own_files.h"

#include <string.h>

#include "sha256.h"

#define FLEET_ARENA_LIMIT ((size_t)1024 * 1024 * 1024)
void manifest_refuse(struct manifest *manifest, struct place place, const char *remedy,
                     const char *what)
{
    problem_add(manifest->fleet->problems, SEVERITY_FAILURE, place, remedy, "%s", what);
    manifest->sound = false;
}

static const struct source *own_file_read(const struct manifest *manifest, const char *path)
{
    return file_read(path, (struct file_absent){SEVERITY_FAILURE, OFFICIAL},
                     manifest->fleet->arena, manifest->fleet->problems);
}

static const struct source *sealed_read(struct manifest *manifest, const char *name,
                                        const char *sum, struct place place)
{
    char found[SHA256_TEXT];
    const char *path = text_format(manifest->fleet->arena, "%s/%s", manifest->folder, name);
    const struct source *source = own_file_read(manifest, path);
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

/* Every file of texts in the folder must be listed. `inside` is "", or such as "words/". */
static void strangers_find(struct manifest *manifest, const char *inside)
{
    struct arena *arena = manifest->fleet->arena;
    const char *folder = text_format(arena, "%s/%s", manifest->folder, inside);
    struct names found;
    int error = folder_names(arena, folder, &found);
    if (error != 0) {
        folder_refused(manifest->fleet->problems, folder, error);
        manifest->sound = false;
    }
    for (size_t i = 0; i < found.count; i++) {
        const char *name = text_format(arena, "%s%s", inside, found.at[i]);
        if (found.at[i][0] != '.' && text_ends(name, ".yaml") &&
            !names_hold(&manifest->names, name))
            manifest_refuse(manifest, (struct place){0},
                   "move it out of the folder; whoever added it on purpose runs "
                   "`make manifest` in the clone",
                   text_format(arena, "%s/%s does not belong to this program",
                               manifest->folder, name));
    }
}

/* The same in the folder of each language, also one that the list does not know. */
static void language_strangers_find(struct manifest *manifest)
{
    struct arena *arena = manifest->fleet->arena;
    const char *folder = text_format(arena, "%s/" WORDS_FOLDER, manifest->folder);
    struct names found;
    if (folder_names(arena, folder, &found) != 0)
        return;     /* it was told */
    for (size_t i = 0; i < found.count; i++)
        if (found.at[i][0] != '.' &&
            is_folder(text_format(arena, "%s%s", folder, found.at[i])))
            strangers_find(manifest, text_format(arena, WORDS_FOLDER "%s/", found.at[i]));
}

const struct source *manifest_find(const struct manifest *manifest, const char *name)
{
    for (size_t i = 0; i < manifest->names.count; i++)
        if (text_equal(manifest->names.at[i], name))
            return manifest->sources[i];
    return NULL;
}

static const struct source *manifest_names(struct manifest *manifest, const char *name)
{
    const struct source *source = manifest_find(manifest, name);
    if (source != NULL)
        return source;
    REFUSE(manifest, (struct place){0}, "%s/" MANIFEST " does not name %s", manifest->folder,
           name);
    return NULL;
}

static struct manifest manifest_read(struct fleet *fleet)
{
    struct manifest manifest = {.fleet = fleet, .sound = true,
                                .folder = program_folder(fleet->arena, "procedures")};
    const struct source *source = is_there(manifest.folder) ? own_file_read(
        &manifest, text_format(fleet->arena, "%s/" MANIFEST, manifest.folder)) : NULL;
    if (!is_there(manifest.folder))
        problem_add(fleet->problems, SEVERITY_FAILURE, (struct place){0},
                    program_folder_remedy(fleet->arena),
                    "the program's procedures are not found: there is no folder %s",
                    manifest.folder);
    manifest.sound = source != NULL;
    fleet_input_add(fleet, source);    /* with the sums of all others */
    if (source == NULL)
        return manifest;
    rows_read(&manifest, source);
    strangers_find(&manifest, "");
    strangers_find(&manifest, WORDS_FOLDER);
    language_strangers_find(&manifest);
    return manifest;
}

/* ---- what the files hold ---- */

/* The language whose words the listed file holds: "en" of words/en/words.yaml; NULL: none. */
static const char *language_of(const char *name, struct arena *arena)
{
    if (!text_begins(name, WORDS_FOLDER) || !text_ends(name, "/words.yaml"))
        return NULL;
    const char *language = name + strlen(WORDS_FOLDER);
    return arena_copy(arena, language, strlen(language) - strlen("/words.yaml"));
}

/* The words of each language that has a folder. False where one of them is unsound. */
static bool languages_read(struct manifest *manifest)
{
    struct fleet *fleet = manifest->fleet;
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

static enum own_files texts_read(struct manifest *manifest)
{
    struct fleet *fleet = manifest->fleet;
    const struct source *sources = manifest_names(manifest, "sources.yaml");
    const struct source *words = manifest_names(manifest,
                                                WORDS_FOLDER DEFAULT_LANGUAGE "/words.yaml");
    if (words == NULL || sources == NULL)
        return OWN_FILES_BROKEN;
    bool complete = languages_read(manifest);
    fleet->known = words_known(&fleet->languages, fleet->arena);
    fleet->authorities = authorities_read(sources, fleet->arena, fleet->problems);
    fleet->first_language = language_words(&fleet->languages, DEFAULT_LANGUAGE);
    if (fleet->first_language == NULL || fleet->authorities == NULL)
        return OWN_FILES_WRONG;
    enum own_files state = procedures_read(manifest);
    return state == OWN_FILES_SOUND && !complete ? OWN_FILES_WRONG : state;
}

static bool fonts_read(struct fleet *fleet)
{
    const char *folder = program_folder(fleet->arena, "fonts");
    fleet->faces = faces_open(folder, fleet->arena, fleet->problems);
    if (fleet->faces != NULL)    /* whose files are what their list says */
        fleet_input_add(fleet, file_read(faces_list_path(folder, fleet->arena),
                                         (struct file_absent){SEVERITY_FAILURE, OFFICIAL},
                                         fleet->arena, fleet->problems));
    return fleet->faces != NULL;
}

static enum own_files own_files_read(unsigned needs, struct fleet *fleet)
{
    struct manifest manifest = manifest_read(fleet);
    enum own_files state = manifest.sound ? OWN_FILES_SOUND : OWN_FILES_BROKEN;
    if (manifest.sound && (needs & NEED_TEXTS) != 0)
        state = texts_read(&manifest);
    if (state != OWN_FILES_BROKEN && (needs & NEED_FACES) != 0 && !fonts_read(fleet))
        state = OWN_FILES_BROKEN;
    return state;
}

enum own_files fleet_begin(unsigned needs, struct fleet *fleet)
{
    *fleet = (struct fleet){.arena = arena_new(FLEET_ARENA_LIMIT)};
    fleet->identities = identities_new(fleet->arena);
    fleet->inputs = arena_alloc(fleet->arena, sizeof *fleet->inputs);
    *fleet->inputs = text_builder_in(fleet->arena);
    fleet->problems = problems_new(fleet->arena);
    fleet->base_problems = problems_new(fleet->arena);
    problems_about(fleet->base_problems, NULL, "base");
    problems_about(fleet->problems, NULL, "program");
    enum own_files state = own_files_read(needs, fleet);
    problems_about(fleet->problems, NULL, "run");
    problems_know(fleet->base_problems, &fleet->known);
    return state;
}
