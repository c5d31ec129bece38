/* register_print.c - what `print` records (room: app): a row for each sheet whose final file
 * stands, unless the same print has one already. */
#include "register_file.h"

static void record_add(struct print_record *record, const struct sheets *sheets,
                const struct sheet *sheet)
{
    struct arena *arena = sheets->boat->arena;
    struct register_row row = row_of_sheet(&sheets->input, sheet, arena);
    row.event = EVENT_PRINTED;
    row.paper = sheets->boat->job->papers[sheets->part.paper].key;
    row.date = sheets->input.today;
    row.program = MAYDECK_VERSION;
    row.content = register_content(&sheets->input, sheet, arena);
    for (size_t i = 0; i < record->count; i++)    /* of a set, and of one file a card */
        if (same_print(&record->rows[i], &row) && text_equal(record->rows[i].paper, row.paper))
            return;
    record->rows = arena_grow(arena, record->rows, record->count, &record->room,
                              sizeof *record->rows);
    record->rows[record->count++] = row;
}

void record_sheets(struct print_record *record, const struct sheets *sheets,
                   const struct sheet *const *list, size_t count)
{
    const struct options *options = sheets->boat->job->options;
    if (options->list || options->draft)
        return;
    for (size_t i = 0; i < count; i++)
        if ((i == 0 || list[i] != list[i - 1]) && sheet_is_registered(list[i]))
            record_add(record, sheets, list[i]);
}

static void prints_choose(void *of, const struct register_rows *there, struct text_builder *lines)
{
    const struct print_record *record = of;
    for (size_t i = 0; i < record->count; i++) {
        struct register_row row = record->rows[i];
        if (print_of(there, &row, row.paper) != NULL)
            continue;
        row.content = content_of(there, &row) != NULL ? REGISTER_NOTHING
                                                      : content_pack(row.content, lines->arena);
        register_row_add(&row, lines);
    }
}

static bool is_specimen(const struct boat_job *boat)
{
    return boat->boat->facts.specimen.answer == ANSWER_YES;
}

void record_write(struct print_record *record, struct boat_job *boat)
{
    const struct register_telling telling = {boat->arena, boat->problems,
                                             problems_new(boat->arena)};
    const char *path = register_path(boat->job->options, boat->arena);
    if (record->count > 0 &&
        !register_change(path, is_specimen(boat) ? APPEND_IF_THERE : APPEND_MAKE, prints_choose,
                         record, &telling))
        problem_add(boat->problems, SEVERITY_DEFICIENCY, NO_PLACE,
                    "let the register be written, and print them again before they are hung",
                    "%s: the printed cards stand, but the register does not tell of them",
                    boat->key);
    *record = (struct print_record){0};
}
