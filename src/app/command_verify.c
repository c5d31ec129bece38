/* command_verify.c - is what lies in a folder whole, and what was printed there? (room: app). Looks
 * at files and changes none. */
#include "drafts.h"
#include "fleet.h"
#include "printed_file.h"
#include "verify.h"

#include <string.h>

#define PDF_END ".pdf"
#define VERIFY_MEMORY_LIMIT ((size_t)1024 * 1024 * 1024)

static bool is_pdf_name(const char *name)
{
    size_t length = strlen(name);
    return length >= strlen(PDF_END) &&
           text_equal_any_case(name + length - strlen(PDF_END), strlen(PDF_END), PDF_END);
}

/* The folder of a file that was named alone, and its name. */
static const char *folder_of(const char *path, const char **name, struct arena *arena)
{
    const char *slash = strrchr(path, '/');
    *name = slash == NULL ? path : slash + 1;
    if (slash == NULL)
        return ".";
    return slash == path ? "/" : arena_copy(arena, path, (size_t)(slash - path));
}

/* What the list beside the files tells. */
static void list_look(struct verifying *verifying)
{
    struct printed_list *list;
    const struct printed_row *row;
    verifying->listed = printed_look(verifying->folder, verifying->arena, verifying->problems,
                                     &list, &verifying->list_whole);
    verifying->list = list;
    for (size_t i = 0; (row = printed_at(list, i)) != NULL; i++)
        verifying->last_run = row->run;
}

static void folder_verify(struct verifying *verifying)
{
    struct names found;
    int error = folder_names(verifying->arena, verifying->folder, &found);
    if (error != 0)
        folder_refused(verifying->problems, verifying->folder, error);
    for (size_t i = 0; i < found.count; i++)
        if (folder_is_temporary(found.at[i]))
            verify_left_over(verifying, found.at[i]);
        else if (is_pdf_name(found.at[i]))
            verify_file(verifying, found.at[i]);
    verify_absent(verifying);
    if (verifying->count == 0 && error == 0)
        problem_add(verifying->problems, SEVERITY_ERROR, NO_PLACE,
                    "name the folder that was printed into, such as: maydeck verify cards",
                    "there is no PDF in %s", verifying->folder);
}

static bool all_verify(struct verifying *verifying)
{
    const char *path = verifying->options->file, *name = NULL;
    if (!is_there(path)) {
        problem_add(verifying->problems, SEVERITY_USE, NO_PLACE,
                    "name a folder that was printed into, or a PDF in it", "there is no %s", path);
        return false;
    }
    verifying->folder = is_folder(path) ? path : folder_of(path, &name, verifying->arena);
    verifying->claimed = folder_is_claimed(verifying->folder);
    list_look(verifying);
    if (name != NULL)
        verify_file(verifying, name);
    else
        folder_verify(verifying);
    return true;
}

static bool all_good(const struct verifying *verifying)
{
    bool good = verifying->listed && verifying->list_whole && !verifying->claimed;
    for (size_t i = 0; i < verifying->count; i++)
        good = good && verified_good(&verifying->files[i]);
    return good;
}

/* A base that is none would make each boat one that is gone. */
static bool base_sound(const struct options *options, struct problems *problems)
{
    if (options->base == NULL || is_folder(options->base))
        return true;
    problem_add(problems, SEVERITY_USE, NO_PLACE, "name the folder with base.yaml and boats/",
                "%s is not a folder", options->base);
    return false;
}

enum exit_status command_verify(const struct options *options)
{
    struct arena *arena = arena_new(VERIFY_MEMORY_LIMIT);
    struct fleet fleet = {.arena = arena, .problems = problems_new(arena),
                          .base_problems = problems_new(arena)};
    struct verifying verifying = {.options = options, .arena = arena,
                                  .problems = fleet.problems};
    bool looked = base_sound(options, fleet.problems) && all_verify(&verifying);
    if (looked)
        (options->json ? verify_json : verify_print)(&verifying);
    enum exit_status status = report(&fleet, SEVERITY_DEFICIENCY);
    if (looked && status == EXIT_GOOD && !all_good(&verifying))
        status = EXIT_FOUND;
    arena_free(arena);
    return status;
}
