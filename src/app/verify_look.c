/* verify_look.c - looks at printed files, one after the other, and holds each against its row in
 * the list (room: app). Changes nothing. */
#include "verify.h"

#include "fleet.h"
#include "pdf_look.h"
#include "printed_file.h"
#include "sha256.h"

#include <errno.h>
#include <string.h>

#define PDF_MEMORY_LIMIT ((size_t)1024 * 1024 * 1024)
#define PDF_BYTES_MOST ((size_t)256 * 1024 * 1024)

const char *const verified_words[] = {VERIFIED_LIST(CHOICE_WORD) NULL};
const char *const record_now_words[] = {RECORD_NOW_LIST(CHOICE_WORD) NULL};

bool verified_good(const struct verified_file *file)
{
    return file->state == VERIFIED_AS_LISTED && file->record != RECORD_CHANGED &&
           file->record != RECORD_GONE;
}

static struct verified_file *verified_add(struct verifying *verifying, const char *name,
                                          enum verified_state state)
{
    verifying->files = arena_grow(verifying->arena, verifying->files, verifying->count,
                                  &verifying->room, sizeof *verifying->files);
    struct verified_file *file = &verifying->files[verifying->count++];
    *file = (struct verified_file){.file = name, .state = state,
                                   .record = RECORD_NOT_COMPARED,
                                   .row = printed_find(verifying->list, name)};
    return file;
}

/* Of a file that the system does not give; the reason is in errno. */
static void unread_refused(const struct verifying *verifying, const char *path)
{
    problem_add(verifying->problems, SEVERITY_FAILURE, NO_PLACE,
                "look at the disk, and at the file's owner and rights", "%s cannot be read: %s",
                path, strerror(errno));
}

/* ---- the record ---- */

static enum record_now record_compare(const struct verifying *verifying,
                                      const struct printed_row *row, struct arena *scratch)
{
    char sum[SHA256_TEXT];
    struct source *source = NULL;
    if (verifying->options->base == NULL || row == NULL || row->record == NULL)
        return RECORD_NOT_COMPARED;
    const char *path = text_format(scratch, "%s/boats/%s.yaml", verifying->options->base,
                                   row->boat);
    enum source_result result = source_read(scratch, path, PDF_BYTES_MOST, &source);
    if (result == SOURCE_FAILED) {
        unread_refused(verifying, path);
        return RECORD_NOT_COMPARED;
    }
    if (result != SOURCE_READ)
        return RECORD_GONE;
    source_sum(source, sum);
    return text_equal(sum, row->record) ? RECORD_SAME : RECORD_CHANGED;
}

/* ---- a PDF ---- */

/* The row of that sum, the newest first; NULL: none. */
static const struct printed_row *row_of_sum(const struct printed_row *row, const char *sum)
{
    while (row != NULL && !text_equal(row->sum, sum))
        row = row->older;
    return row;
}

static enum verified_state verified_state_of(const struct verified_file *file,
                                    const struct printed_row *match, const char *wrong)
{
    if (wrong != NULL)
        return VERIFIED_DAMAGED;
    if (file->row == NULL)
        return VERIFIED_UNLISTED;
    if (match == NULL)
        return VERIFIED_OTHER;
    return match == file->row ? VERIFIED_AS_LISTED : VERIFIED_OLDER_ROW;
}

static const char *look_text(const char *text, struct arena *arena)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

static struct json_list codes_copy(const struct pdf_look *look, struct arena *arena)
{
    struct pdf_code *codes = arena_array(arena, look->code_count, sizeof *codes);
    for (size_t i = 0; i < look->code_count; i++)
        codes[i] = (struct pdf_code){look_text(look->codes[i].code, arena),
                                     look_text(look->codes[i].card, arena)};
    return (struct json_list){codes, look->code_count};
}

static void bytes_judge(struct verifying *verifying, struct verified_file *file,
                        const struct source *source, struct arena *scratch)
{
    struct bytes bytes = {(const unsigned char *)source->bytes, source->length};
    struct pdf_look look = pdf_look(bytes, scratch);
    char sum[SHA256_TEXT];
    sha256_text(bytes.at, bytes.length, sum);
    const struct printed_row *match = row_of_sum(file->row, sum);
    file->wrong = source->marked ? "it does not begin as a PDF" : look.wrong;
    file->state = verified_state_of(file, match, file->wrong);
    file->row = match != NULL ? match : file->row;
    file->ours = look.ours;
    file->title = look_text(look.title, verifying->arena);
    file->language = look_text(look.language, verifying->arena);
    file->pages = look.pages;
    file->codes = codes_copy(&look, verifying->arena);
    file->last_run = match != NULL && text_equal(match->run, verifying->last_run);
    file->record = record_compare(verifying, match, scratch);
}

static const char *unread_why(enum source_result result, struct arena *arena)
{
    const char *why = result == SOURCE_FAILED     ? strerror(errno)
                      : result == SOURCE_TOO_LARGE ? "it is larger than 256 MiB"
                                                   : "it is not a file";
    return arena_copy(arena, why, strlen(why));
}

void verify_file(struct verifying *verifying, const char *name)
{
    struct arena *scratch = arena_new(PDF_MEMORY_LIMIT);
    const char *path = text_format(scratch, "%s/%s", verifying->folder, name);
    struct verified_file *file = verified_add(verifying, name, VERIFIED_UNREAD);
    struct source *source = NULL;
    enum source_result result = SOURCE_NOT_A_FILE;
    if (is_plain_file(path))
        result = source_read(scratch, path, PDF_BYTES_MOST, &source);
    if (result == SOURCE_READ)
        bytes_judge(verifying, file, source, scratch);
    else
        file->wrong = unread_why(result, verifying->arena);
    if (result == SOURCE_FAILED)
        unread_refused(verifying, path);
    arena_free(scratch);
}

/* ---- what is no PDF ---- */

void verify_absent(struct verifying *verifying)
{
    const struct printed_row *row;
    struct arena *scratch = arena_new(PDF_MEMORY_LIMIT);
    for (size_t i = 0; (row = printed_at(verifying->list, i)) != NULL; i++)
        if (printed_find(verifying->list, row->file) == row &&
            !is_there(text_format(scratch, "%s/%s", verifying->folder, row->file)))
            verified_add(verifying, row->file, VERIFIED_MISSING);
    arena_free(scratch);
}

void verify_left_over(struct verifying *verifying, const char *name)
{
    verified_add(verifying, name, VERIFIED_LEFT_OVER);
}
