/* printed_file.c - opening, adding to and clearing the list of what was printed (room: app). A row
 * that stands is taken out only when another is true or its file is gone. */
#include "printed_file.h"

#include "csv.h"
#include "fleet.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>

#define LIST_MEMORY_LIMIT ((size_t)1024 * 1024 * 1024)
#define PDF_LIMIT ((size_t)256 * 1024 * 1024)
#define DAMAGED_END ".damaged-"

static struct bytes bytes_of_text(const struct text_builder *text)
{
    return (struct bytes){(const unsigned char *)text->at, text->length};
}

void source_sum(const struct source *source, char out[SHA256_TEXT])
{
    sha256_text((const unsigned char *)source->bytes, source->length, out);
}

/* ---- beginning ---- */

/* As it was, under a name that nothing has. */
static bool damaged_keep(const struct printed_file *printed, struct problems *problems)
{
    const struct source *source = printed->appending.source;
    struct text_builder bytes = text_builder_in(printed->scratch);
    const char *name;

    for (size_t number = 1;; number++) {
        name = text_format(printed->scratch, PRINTED_NAME DAMAGED_END "%zu", number);
        if (!is_there(text_format(printed->scratch, "%s/%s", printed->folder, name)))
            break;
        if (is_unlooked())
            return false;
    }
    text_add(&bytes, source->marked ? CSV_MARK : "");
    text_add_bytes(&bytes, source->bytes, source->length);
    if (!file_put(printed->folder, name, bytes_of_text(&bytes), printed->scratch, problems))
        return false;
    problem_add(problems, SEVERITY_NOTE, NO_PLACE, NULL,
                "the list of what was printed is begun anew; as it was, it is kept: %s/%s",
                printed->folder, name);
    return true;
}

/* All rows, one behind the other. */
static void rows_add(const struct printed_list *list, struct text_builder *out)
{
    const struct printed_row *row;

    printed_head_add(out);
    for (size_t i = 0; (row = printed_at(list, i)) != NULL; i++)
        printed_row_add(row, out);
}

static bool printed_open(struct printed_file *printed, struct problems *problems)
{
    bool sound = printed_read(printed->list, printed->appending.source, printed->scratch,
                              problems);
    struct text_builder out = text_builder_in(printed->scratch);

    if (sound && append_length(&printed->appending) > 0)
        return true;
    if (!sound && !damaged_keep(printed, problems))
        return false;
    rows_add(printed->list, &out);
    return append_more(&printed->appending, 0, bytes_of_text(&out), problems);
}

static void scratch_free(struct printed_file *printed)
{
    arena_free(printed->scratch);
    printed->scratch = NULL;
    printed->appending.source = NULL;
}

/* A link would lead into a file of which nobody knows what it is. */
static bool is_own_file(const char *path, struct problems *problems)
{
    if (!is_there(path) || is_plain_file(path))
        return true;
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE, "move it away, or name another folder",
                "%s is there already and is not a regular file", path);
    return false;
}

bool printed_begin(const char *folder, struct arena *arena, struct problems *problems,
                   struct printed_file *out)
{
    const char *path = text_format(arena, "%s/" PRINTED_NAME, folder);

    *out = (struct printed_file){.folder = folder, .arena = arena, .list = printed_list_new(arena)};
    if (!is_own_file(path, problems))
        return false;
    out->scratch = arena_new(LIST_MEMORY_LIMIT);
    enum append_begun begun = append_begin(path, APPEND_IF_THERE, out->scratch, problems,
                                           &out->appending);
    bool good = begun != APPEND_FAILED;
    if (begun == APPEND_BEGUN && !printed_open(out, problems)) {
        append_end(&out->appending, append_length(&out->appending), (struct bytes){0}, problems);
        good = false;
    }
    out->appending.arena = arena;
    scratch_free(out);
    return good;
}

/* ---- adding ---- */

/* Nobody but this run makes files in the folder. */
static bool printed_make(struct printed_file *printed, struct text_builder *out,
                         struct problems *problems)
{
    if (printed->appending.file >= 0)
        return true;
    printed_head_add(out);
    return append_begin(text_format(printed->arena, "%s/" PRINTED_NAME, printed->folder),
                        APPEND_MAKE, printed->arena, problems, &printed->appending) ==
           APPEND_BEGUN;
}

bool printed_note(struct printed_file *printed, const struct printed_row *rows, size_t count,
                  struct problems *problems)
{
    struct arena *scratch = arena_new(LIST_MEMORY_LIMIT);
    struct text_builder out = text_builder_in(scratch);

    bool good = printed_make(printed, &out, problems);
    for (size_t i = 0; i < count; i++)
        printed_row_add(&rows[i], &out);
    good = good && append_more(&printed->appending, append_length(&printed->appending),
                               bytes_of_text(&out), problems);
    printed->noted += good ? count : 0;
    arena_free(scratch);
    return good;
}

void printed_place(struct printed_file *printed, const char *file)
{
    names_add(&printed->placed, file, printed->arena);
}

/* ---- ending ---- */

/* The bytes of that file; -1: there is no such file. False with errno: the system cannot say. */
static bool file_size(const char *path, long long *size)
{
    struct stat status;

    *size = -1;
    if (lstat(path, &status) != 0)
        return errno == ENOENT || errno == ENOTDIR;
    if (S_ISREG(status.st_mode))
        *size = (long long)status.st_size;
    return true;
}

/* The row that its file is as; NULL: none. False with errno: the file cannot be read. */
static bool row_that_is_so(const struct printed_row *row, const char *path,
                           const struct printed_row **kept)
{
    struct arena *scratch = arena_new(LIST_MEMORY_LIMIT);
    struct source *source = NULL;
    char sum[SHA256_TEXT] = "";

    enum source_result result = source_read(scratch, path, PDF_LIMIT, &source);
    int error = errno;
    if (result == SOURCE_READ && !source->marked)
        source_sum(source, sum);   /* no PDF begins with such a mark */
    while (row != NULL && !text_equal(row->sum, sum))
        row = row->older;
    *kept = row;
    arena_free(scratch);
    errno = error;
    return result != SOURCE_FAILED;
}

/* Nobody knows which of its rows is true: all stay. Always false. */
static bool row_unknown(const char *path, struct problems *problems)
{
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                "look at the disk, and at the file's owner and rights, then print it again",
                "%s cannot be held against the list of what was printed: %s", path,
                strerror(errno));
    return false;
}

/* What is kept of the rows of a file; NULL: nothing. False, told: its file cannot be looked at. */
static bool row_to_keep(const struct printed_file *printed, const struct printed_row *row,
                        const struct printed_row **kept, struct arena *scratch,
                        struct problems *problems)
{
    const char *path = text_format(scratch, "%s/%s", printed->folder, row->file);
    long long size;

    *kept = NULL;
    if (!file_size(path, &size))
        return row_unknown(path, problems);
    if (size < 0)
        return true;
    if (row->vouched || (row->older == NULL && size == (long long)row->bytes))
        *kept = row;
    else if (!row_that_is_so(row, path, kept))
        return row_unknown(path, problems);
    if (*kept == NULL)
        problem_add(problems, SEVERITY_NOTE, NO_PLACE, "print it again, or take it away",
                    "%s is not as it was printed: the list of what was printed leaves it out",
                    path);
    return true;
}

/* The rows of the list as it stands now, of which this run vouches for its own files. NULL, told:
 * it cannot be read back, or is not as it was written. */
static struct printed_list *rows_read_back(const struct printed_file *printed,
                                           struct arena *scratch, struct problems *problems)
{
    const char *path = text_format(scratch, "%s/" PRINTED_NAME, printed->folder);
    struct printed_list *list = printed_list_new(scratch);
    struct source *source = NULL;
    enum source_result result = source_read(scratch, path, LIST_MEMORY_LIMIT / 4, &source);

    if (result != SOURCE_READ) {
        problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                    "look at the disk, and run maydeck verify on the folder",
                    "%s cannot be read back: %s", path,
                    result == SOURCE_FAILED ? strerror(errno)
                                            : "it is not there as it was written");
        return NULL;
    }
    if (!printed_read(list, source, scratch, problems))
        return NULL;
    for (size_t i = 0; i < printed->placed.count; i++)
        printed_vouch(list, printed->placed.at[i]);
    return list;
}

/* The list anew, with the rows that are kept: NULL in the place of one that is not. */
static bool rows_put(const struct printed_file *printed, const struct printed_row *const *kept,
                     size_t count, struct arena *scratch, struct problems *problems)
{
    struct text_builder out = text_builder_in(scratch);

    printed_head_add(&out);
    for (size_t i = 0; i < count; i++)
        if (kept[i] != NULL)
            printed_row_add(kept[i], &out);
    return file_put(printed->folder, PRINTED_NAME, bytes_of_text(&out), scratch, problems);
}

/* Where other rows are to stand than do, these are put in their place. */
static bool rows_clear(const struct printed_file *printed, const struct printed_list *list,
                       struct arena *scratch, struct problems *problems)
{
    const struct printed_row *row, **kept = NULL;
    size_t count = 0, room = 0;
    bool other = false, known = true;

    for (; (row = printed_at(list, count)) != NULL; count++) {
        kept = arena_grow(scratch, kept, count, &room, sizeof *kept);
        kept[count] = NULL;
        if (printed_find(list, row->file) == row)
            known = row_to_keep(printed, row, &kept[count], scratch, problems) && known;
        other = other || kept[count] != row;
    }
    if (known && other)
        return rows_put(printed, kept, count, scratch, problems);
    return known;
}

/* Had the folder no row before, and was each file that got one placed? In a run none gets two. */
static bool all_rows_stand(const struct printed_file *printed)
{
    return printed_at(printed->list, 0) == NULL && printed->placed.count == printed->noted;
}

/* Of a list that holds nothing any more the head stays. */
bool printed_end(struct printed_file *printed, struct problems *problems)
{
    if (printed->appending.file < 0)
        return true;

    struct arena *scratch = arena_new(LIST_MEMORY_LIMIT);
    size_t length = append_length(&printed->appending);
    bool good = append_end(&printed->appending, length, (struct bytes){0}, problems);
    if (length == 0) {   /* not even the head had room */
        file_withdraw(printed->folder, PRINTED_NAME, scratch);
    } else if (!all_rows_stand(printed)) {
        const struct printed_list *list = rows_read_back(printed, scratch, problems);
        good = list != NULL && rows_clear(printed, list, scratch, problems) && good;
    }
    arena_free(scratch);
    return good;
}

/* ---- looking ---- */

bool printed_look(const char *folder, struct arena *arena, struct problems *problems,
                  struct printed_list **list, bool *whole)
{
    const char *path = text_format(arena, "%s/" PRINTED_NAME, folder);
    struct source *source = NULL;
    enum source_result result = source_read(arena, path, PRINTED_LIMIT, &source);

    *list = printed_list_new(arena);
    *whole = false;
    if (result == SOURCE_READ)
        *whole = printed_read(*list, source, arena, problems);
    else if (result != SOURCE_ABSENT)
        problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                    "look at the file, its owner and its rights", "%s cannot be read: %s", path,
                    result == SOURCE_FAILED ? strerror(errno) : "it is no file of such a size");
    return result == SOURCE_READ;
}
