/* register_file.c - opening, reading and adding to BASE/register.csv (room: app). Never changes a
 * row that stands. */
#include "register_file.h"

#include <errno.h>
#include <string.h>

#define REGISTER_NAME "register.csv"

const char *register_path(const struct options *options, struct arena *arena)
{
    return text_format(arena, "%s/" REGISTER_NAME, options->base);
}

bool register_change(const char *path, enum append_where where, rows_choose *choose, void *of,
                     const struct register_telling *telling)
{
    struct appending appending;
    struct text_builder lines = text_builder_in(telling->arena);
    size_t kept;
    enum append_begun begun = append_begin(path, where, telling->arena, telling->problems,
                                           &appending);
    if (begun != APPEND_BEGUN)
        return begun == APPEND_ABSENT;
    struct register_rows rows = register_read(appending.source, telling->arena,
                                              telling->damages);
    register_mend(appending.source, &rows, &kept, &lines, telling->problems);
    size_t mark = append_length(&appending) - appending.source->length;
    choose(of, &rows, &lines);
    struct bytes bytes = {(const unsigned char *)lines.at, lines.length};
    return append_end(&appending, kept == 0 ? 0 : kept + mark, bytes, telling->problems);
}

static void read_refused(const struct fleet *fleet, const char *path, enum source_result result)
{
    const char *why = result == SOURCE_FAILED     ? strerror(errno)
                      : result == SOURCE_TOO_LARGE ? "it is larger than 256 MiB"
                                                   : "it is not a file";
    problem_add(fleet->problems, SEVERITY_FAILURE, NO_PLACE,
                "look at the file, its owner and its rights", "%s cannot be read: %s", path, why);
}

bool register_take(const struct options *options, const struct fleet *fleet,
                   struct register_rows *rows)
{
    const char *path = register_path(options, fleet->arena);
    struct source *source = NULL;
    enum source_result result = source_read(fleet->arena, path, APPEND_LIMIT, &source);
    *rows = (struct register_rows){0};
    if (result == SOURCE_ABSENT)
        problem_add(fleet->problems, SEVERITY_ERROR, NO_PLACE,
                    text_format(fleet->arena,
                                "begin one: `maydeck start %s --register`; then print the cards, "
                                "hang them, and\nwrite maydeck hang %s --boat BOAT --place PLACE "
                                "--by WHO", options->base, options->base),
                    "there is no register %s: what hangs is not recorded", path);
    else if (result != SOURCE_READ)
        read_refused(fleet, path, result);
    if (result != SOURCE_READ)
        return false;
    *rows = register_read(source, fleet->arena, fleet->problems);
    if (rows->whole < source->length && !rows->last_whole)
        problem_add(fleet->problems, SEVERITY_NOTE, source_place(source, rows->whole),
                    "the next print or hang sets it aside; what it was about counts as not "
                    "recorded",
                    "the last row is not whole: a run was stopped while it wrote");
    return true;
}
