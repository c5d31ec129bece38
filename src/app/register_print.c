/* register_print.c - what `print` records (room: app): a row for each sheet whose final file
 * stands, unless the same print has one already. */
#include "register_file.h"

#include <stdlib.h>
#include <string.h>

/* ---- rows of a file, before it stands ---- */

static void row_line_add(const struct sheets *sheets, const struct sheet *sheet,
                         struct text_builder *lines)
{
    struct arena *arena = sheets->boat->arena;
    struct register_row row = row_of_sheet(&sheets->input, sheet, arena);
    row.event = EVENT_PRINTED;
    row.paper = sheets->boat->job->papers[sheets->part.paper].key;
    row.date = sheets->input.today;
    row.program = MAYDECK_VERSION;
    row.content = content_pack(register_content(&sheets->input, sheet, arena), arena);
    register_row_add(&row, lines);
}

const char *register_lines(const struct sheets *sheets, const struct sheet *const *list,
                           size_t count)
{
    struct text_builder lines = text_builder_in(sheets->boat->arena);
    text_add(&lines, "");
    for (size_t i = 0; i < count; i++)
        if ((i == 0 || list[i] != list[i - 1]) && sheet_is_registered(list[i]))
            row_line_add(sheets, list[i], &lines);
    return lines.at;
}

/* ---- rows of files that stand ---- */

/* So much waits at least before the register is read and written; and a quarter of what it holds,
 * so that a run reads it a few times however many boats it prints. */
#define WAITING_LEAST ((size_t)4 * 1024 * 1024)
#define WAITING_PART 4

struct register_writing register_writing_begin(const char *path)
{
    return (struct register_writing){.path = path, .arena = arena_new(APPEND_LIMIT * 2)};
}

void register_writing_add(struct register_writing *writing, const char *boat, const char *lines)
{
    if (writing->arena == NULL || text_empty(lines))
        return;
    if (writing->lines.arena == NULL)
        writing->lines = text_builder_in(writing->arena);
    if (!names_hold(&writing->boats, boat))
        names_add(&writing->boats, boat, writing->arena);
    text_add(&writing->lines, lines);
}

/* Is that print among these already? */
static bool print_is_among(const struct register_rows *rows, const struct register_row *row)
{
    for (size_t i = 0; i < rows->count; i++)
        if (same_print(&rows->rows[i], row) && text_equal(rows->rows[i].paper, row->paper))
            return true;
    return false;
}

/* Those of one boat that follow each other among the new ones; `kept` are those of them that were
 * chosen, of a set and of one file a card only the first. */
static void print_choose(const struct register_rows *hers, struct register_row *row,
                         struct register_row *kept_at, size_t *kept, struct text_builder *lines)
{
    struct register_rows chosen = {.rows = kept_at, .count = *kept};
    if (print_of(hers, row, row->paper) != NULL || print_is_among(&chosen, row))
        return;
    struct register_row written = *row;
    if (content_of(hers, row) != NULL || content_of(&chosen, row) != NULL)
        written.content = REGISTER_NOTHING;
    register_row_add(&written, lines);
    kept_at[(*kept)++] = written;
}

static void prints_choose(void *of, const struct register_rows *there, struct text_builder *lines)
{
    const struct register_writing *writing = of;
    struct arena *arena = lines->arena;
    struct source *source = source_from(arena, writing->path, writing->lines.at,
                                        writing->lines.length);
    struct register_rows rows = register_read(source, arena, problems_new(arena));
    struct register_rows sorted = rows_by_boat(there, arena), hers = {0};
    struct register_row *kept = arena_array(arena, rows.count, sizeof *kept);
    size_t kept_count = 0;
    for (size_t i = 0; i < rows.count; i++) {
        struct register_row row = rows.rows[i];
        if (i == 0 || !text_equal(row.boat, rows.rows[i - 1].boat)) {
            hers = rows_of_boat(&sorted, row.boat);
            kept_count = 0;
        }
        print_choose(&hers, &row, kept, &kept_count, lines);
    }
}

static void not_recorded_tell(const struct register_writing *writing, struct problems *problems)
{
    for (size_t i = 0; i < writing->boats.count; i++)
        problem_add(problems, SEVERITY_DEFICIENCY, NO_PLACE,
                    "let the register be written, and print them again before they are hung",
                    "%s: the printed cards stand, but the register does not tell of them",
                    writing->boats.at[i]);
}

void register_writing_flush(struct register_writing *writing, struct problems *problems)
{
    if (writing->lines.length > 0) {
        const struct register_telling telling = {writing->arena, problems,
                                                 problems_new(writing->arena)};
        if (!register_change(writing->path, APPEND_MAKE, prints_choose, writing, &telling))
            not_recorded_tell(writing, problems);
    }
    arena_free(writing->arena);
    *writing = register_writing_begin(writing->path);
}

void register_writing_flush_large(struct register_writing *writing, struct problems *problems)
{
    size_t there = file_length(writing->path);
    if (writing->lines.length > WAITING_LEAST && writing->lines.length > there / WAITING_PART)
        register_writing_flush(writing, problems);
}

void register_writing_end(struct register_writing *writing, struct problems *problems)
{
    register_writing_flush(writing, problems);
    arena_free(writing->arena);
    writing->arena = NULL;
}
