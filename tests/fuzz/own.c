/* own.c - the program's own files and some sound records, read once for all inputs of a
 * harness. */
#include "fuzz.h"

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "procedure.h"
#include "text.h"

#define OWN_ARENA_LIMIT ((size_t)512 * 1024 * 1024)
enum { PROCEDURES_MOST = 64 };

struct own own;
const struct date fuzz_today = {2026, 11, 25};

/* What all inputs stand on must be sound: else nothing can be said of any. */
static void own_sound(bool sound)
{
    size_t count;
    const struct problem *all = problems_sorted(own.problems, &count);
    struct text_builder out = text_builder_in(own.arena);
    if (sound && !problems_reach(own.problems, SEVERITY_ERROR))
        return;
    for (size_t i = 0; i < count; i++)
        problem_print(&all[i], &out);
    fprintf(stderr, "the program's own files or specimens are not sound\n%s",
            out.length > 0 ? out.at : "");
    exit(2);
}

const struct source *own_source(const char *path)
{
    struct source *source = NULL;
    if (source_read(own.arena, path, YAML_FILE_LIMIT, &source) != SOURCE_READ) {
        fprintf(stderr, "%s cannot be read: run it from the top of the tree\n", path);
        exit(2);
    }
    return source;
}

static const struct procedure *own_procedure_read(const char *name)
{
    const struct procedure_text_file texts = {
        "en", own_source(text_format(own.arena, "procedures/words/en/%s", name))};
    const struct procedure_files files = {
        .logic = own_source(text_format(own.arena, "procedures/%s", name)), .texts = &texts,
        .text_count = 1};
    return procedure_read(&files, own.authorities, own.arena, own.problems);
}

/* By number, then key, as procedure.h has it. */
static void own_procedure_put(const struct procedure **rows, size_t *count,
                              const struct procedure *procedure)
{
    size_t at = (*count)++;
    for (; at > 0; at--) {
        int64_t before = rows[at - 1]->number.milli, number = procedure->number.milli;
        if (before < number || (before == number &&
                                strcmp(rows[at - 1]->key.text, procedure->key.text) < 0))
            break;
        rows[at] = rows[at - 1];
    }
    rows[at] = procedure;
}

static void own_texts_open(void)
{
    const struct procedure **rows = arena_array(own.arena, PROCEDURES_MOST, sizeof *rows);
    DIR *folder = opendir("procedures");
    own.words = words_read(own_source("procedures/words/en/words.yaml"), "en", own.arena,
                           own.problems);
    own.authorities = authorities_read(own_source("procedures/sources.yaml"), own.arena,
                                       own.problems);
    own_sound(own.words != NULL && own.authorities != NULL && folder != NULL);
    own.procedures.rows = rows;
    for (struct dirent *entry; (entry = readdir(folder)) != NULL;) {
        if (!text_ends(entry->d_name, ".yaml") || text_equal(entry->d_name, "sources.yaml"))
            continue;
        const struct procedure *procedure = own_procedure_read(entry->d_name);
        own_sound(procedure != NULL && own.procedures.count < PROCEDURES_MOST);
        own_procedure_put(rows, &own.procedures.count, procedure);
    }
    closedir(folder);
}

static void own_boats_open(void)
{
    static const char *const paths[] = {"tests/fleet/boats/samphire.yaml",
                                        "tests/fleet/boats/bramble.yaml",
                                        "tests/islands/boats/sundew.yaml"};
    bool sound = true;
    own.base = base_read(own_source("tests/fleet/base.yaml"), own.arena, own.problems, &sound);
    own_sound(sound && own.base != NULL);
    for (size_t i = 0; i < sizeof paths / sizeof *paths; i++) {
        own.boat_sources[i] = own_source(paths[i]);
        own.boats[i] = boat_read(own.boat_sources[i], "boat", own.arena, own.problems, &sound);
        own_sound(sound && own.boats[i] != NULL);
    }
}

void own_open(unsigned what)
{
    own.arena = arena_new(OWN_ARENA_LIMIT);
    own.problems = problems_new(own.arena);
    if ((what & OWN_TEXTS) != 0)
        own_texts_open();
    if ((what & OWN_BOATS) != 0)
        own_boats_open();
    if ((what & OWN_FACES) != 0) {
        own.faces = faces_open("out/fonts", own.arena, own.problems);
        own_sound(own.faces != NULL);
    }
}

struct compose_input own_input(const struct boat *boat)
{
    return (struct compose_input){boat, own.base, &own.procedures, own.authorities, own.words,
                                  {0}, fuzz_today, false, NULL};
}
