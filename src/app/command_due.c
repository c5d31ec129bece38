/* command_due.c - every date of a base in one list, as columns, as a table for a spreadsheet, or as
 * a calendar (room: app). */
#include "csv.h"
#include "draw.h"
#include "due.h"
#include "job.h"
#include "lists.h"
#include "told.h"

#include <stdio.h>
#include <string.h>

/* What is told of a date. */
struct due_told { const char *date, *state, *boat, *tag, *item, *what, *where; };

#define AT(member) offsetof(struct due_told, member)
static const struct json_member due_members[] = {
    {"date", JSON_TEXT, AT(date), NULL, NULL, "the last good day"},
    {"state", JSON_TEXT, AT(state), NULL, NULL, NULL},
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, NULL},
    {"tag", JSON_TEXT, AT(tag), NULL, NULL, NULL},
    {"item", JSON_TEXT, AT(item), NULL, NULL, NULL},
    {"what", JSON_TEXT, AT(what), NULL, NULL, NULL},
    {"where", JSON_TEXT, AT(where), NULL, NULL, NULL},
};
#undef AT
#define DUE_COLUMNS (sizeof due_members / sizeof *due_members)
static const struct json_shape due_shape = {"due date", sizeof(struct due_told), due_members,
                                            DUE_COLUMNS};

#define DUE_FORMAT "maydeck-due-1"

/* The run. */
struct gathering {
    const struct options *options;
    const struct fleet *fleet;
    struct due_list list;
};

static bool within_horizon(const struct options *options, const struct due_date *date)
{
    return options->horizon.year == 0 || !date->known ||
           date_compare(date->last, options->horizon) <= 0;
}

/* Is there something to do? What is to come counts where a day was named. */
static bool is_due(const struct options *options, const struct due_list *list)
{
    for (size_t i = 0; i < list->count; i++)
        if (options->horizon.year != 0 || due_past(&list->rows[i], options->today))
            return true;
    return false;
}

/* Leaves those that were not asked for out. */
static void horizon_keep(const struct options *options, struct due_list *list)
{
    size_t count = 0;
    for (size_t i = 0; i < list->count; i++)
        if (within_horizon(options, &list->rows[i]))
            list->rows[count++] = list->rows[i];
    list->count = count;
}

/* ---- as text ---- */

static struct due_told told_of(const struct gathering *gathering, const struct due_date *date)
{
    bool past = due_past(date, gathering->options->today);
    return (struct due_told){
        .date = date->known ? date_text(gathering->list.arena, date->last) : "-",
        .state = !date->known ? "NOT RECORDED" : past ? "PAST" : "to come",
        .boat = date->boat, .tag = date->tag, .item = date->item, .what = date->what,
        .where = date->where};
}

static struct json_list all_told(const struct gathering *gathering)
{
    struct due_told *told = arena_array(gathering->list.arena, gathering->list.count + 1,
                                        sizeof *told);
    for (size_t i = 0; i < gathering->list.count; i++)
        told[i] = told_of(gathering, &gathering->list.rows[i]);
    return (struct json_list){told, gathering->list.count};
}

/* A name of a file may begin with what a spreadsheet reckons with. */
static const char *cell_guarded(const char *text, struct arena *arena)
{
    return text[0] != '\0' && text[1] != '\0' && strchr("=+-@", text[0]) != NULL
               ? text_format(arena, "'%s", text) : text;
}

static void table_add(const struct gathering *gathering, struct text_builder *out)
{
    const char *cells[DUE_COLUMNS];
    struct json_list list = all_told(gathering);
    const struct due_told *told = list.at;
    text_add(out, CSV_MARK);
    for (size_t c = 0; c < DUE_COLUMNS; c++)
        cells[c] = due_members[c].name;
    csv_row_add(out, CSV_DELIMITERS[0], cells, DUE_COLUMNS);
    for (size_t i = 0; i < list.count; i++) {
        for (size_t c = 0; c < DUE_COLUMNS; c++) {
            const void *at = (const char *)&told[i] + due_members[c].at;
            cells[c] = cell_guarded(*(const char *const *)at, out->arena);
        }
        csv_row_add(out, CSV_DELIMITERS[0], cells, DUE_COLUMNS);
    }
}

static void calendar_add(const struct gathering *gathering, struct text_builder *out)
{
    const struct due_list *list = &gathering->list;
    size_t days = due_calendar(list, gathering->options->today, out);
    size_t silent = 0;
    for (size_t i = 0; i < list->count; i++)
        silent += list->rows[i].known ? 0 : 1;
    if (silent > 0)
        problem_add(gathering->fleet->problems, SEVERITY_NOTE, NO_PLACE,
                    "see them with `maydeck due` without --ics, and record them",
                    "%zu date%s not recorded %s in no calendar", silent, silent == 1 ? "" : "s",
                    silent == 1 ? "is" : "are");
    if (days == 0)
        problem_add(gathering->fleet->problems, SEVERITY_NOTE, NO_PLACE,
                    "name a later day with --until, or none",
                    "there is no date to put into a calendar: nothing was written");
}

/* ---- as JSON ---- */

struct due_object { const char *date, *state, *boat, *tag, *item, *what, *where; };

#define AT(member) offsetof(struct due_object, member)
static const struct json_member due_object_members[] = {
    {"date", JSON_TEXT_OR_NULL, AT(date), NULL, NULL, "the last good day; null: not recorded"},
    {"state", JSON_TEXT, AT(state), NULL, NULL, "past, to_come or not_recorded"},
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, "base: of all of them"},
    {"tag", JSON_TEXT_OR_NULL, AT(tag), NULL, NULL, NULL},
    {"item", JSON_TEXT_OR_NULL, AT(item), NULL, NULL, NULL},
    {"what", JSON_TEXT, AT(what), NULL, NULL, NULL},
    {"where", JSON_TEXT, AT(where), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape due_object_shape = {"date", sizeof(struct due_object),
                                                   MEMBERS_OF(due_object_members)};

struct due_whole {
    const char *format, *base, *today, *until;
    struct json_list dates;
};

#define AT(member) offsetof(struct due_whole, member)
static const struct json_member due_whole_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, NULL, NULL},
    {"base", JSON_TEXT, AT(base), NULL, NULL, "the folder as it was named"},
    {"date", JSON_TEXT, AT(today), NULL, NULL, "today"},
    {"until", JSON_TEXT_OR_NULL, AT(until), NULL, NULL, "of --until"},
    {"dates", JSON_LIST, AT(dates), &due_object_shape, NULL, NULL},
};
#undef AT
static const struct json_shape due_whole_shape = {"due", sizeof(struct due_whole),
                                                  MEMBERS_OF(due_whole_members)};

static const char *text_or_null(const char *text)
{
    return text_empty(text) ? NULL : text;
}

static struct due_object due_object_of(const struct gathering *gathering,
                                       const struct due_date *date)
{
    bool past = due_past(date, gathering->options->today);
    return (struct due_object){
        .date = date->known ? date_text(gathering->list.arena, date->last) : NULL,
        .state = !date->known ? "not_recorded" : past ? "past" : "to_come",
        .boat = date->boat, .tag = text_or_null(date->tag),
        .item = text_or_null(date->item), .what = date->what, .where = date->where};
}

static void due_json_add(const struct gathering *gathering, struct text_builder *out)
{
    const struct options *options = gathering->options;
    const struct due_list *list = &gathering->list;
    struct due_object *rows = arena_array(list->arena, list->count + 1, sizeof *rows);
    for (size_t i = 0; i < list->count; i++)
        rows[i] = due_object_of(gathering, &list->rows[i]);
    const struct due_whole whole = {
        DUE_FORMAT, options->base, date_text(list->arena, options->today),
        options->horizon.year == 0 ? NULL : date_text(list->arena, options->horizon),
        {rows, list->count}};
    json_add(&due_whole_shape, &whole, out);
}

/* ---- where it goes ---- */

static void file_deliver(const struct gathering *gathering, const struct text_builder *out)
{
    const struct fleet *fleet = gathering->fleet;
    const char *path = gathering->options->file, *slash = strrchr(path, '/');
    const char *folder = slash == NULL  ? "."
                         : slash == path ? "/"
                                         : arena_copy(fleet->arena, path, (size_t)(slash - path));
    struct bytes bytes = {(const unsigned char *)out->at, out->length};
    folder_sweep(folder, fleet->arena);
    if (folder_ready(folder, fleet->arena, fleet->problems) &&
        file_put(folder, slash == NULL ? path : slash + 1, bytes, fleet->arena, fleet->problems))
        told_lines("%s: %zu dates\n", path, gathering->list.count);
}

static void due_deliver(struct gathering *gathering)
{
    const struct options *options = gathering->options;
    struct text_builder out = text_builder_in(gathering->fleet->arena);
    struct json_list told = all_told(gathering);
    if (options->csv)
        table_add(gathering, &out);
    else if (options->ics)
        calendar_add(gathering, &out);
    else if (options->json)
        due_json_add(gathering, &out);
    else if (told.count == 0)
        text_add(&out, "no date is due\n");
    else if (options->file != NULL)
        columns_add(&due_shape, &told, out.arena, &out);
    else
        columns_print(&due_shape, &told, out.arena);
    if (out.length > 0 && options->file != NULL)
        file_deliver(gathering, &out);
    else if (out.length > 0)
        fwrite(out.at, 1, out.length, stdout);
}

/* ---- the command ---- */

/* What is wrong with her file besides is for `check`, but for errors: then dates may lack. */
static void due_boat_end(void *run, struct boat_job *boat)
{
    struct gathering *gathering = run;
    if (boat->boat != NULL)
        due_of_boat(&gathering->list, boat->boat, gathering->fleet->base,
                    gathering->fleet->first_language);
    boat->problems = problems_from(boat->problems, SEVERITY_ERROR, boat->arena);
}

enum exit_status command_due(const struct options *options)
{
    static const struct job_use use = {.last = STEP_OPEN, .end = due_boat_end};
    struct fleet fleet;
    struct gathering gathering = {.options = options, .fleet = &fleet};
    bool found = false;
    if (fleet_open(options, NEED_TEXTS, &fleet)) {
        struct job job = job_of(options, &fleet);
        gathering.list.arena = fleet.arena;
        job_run(&job, &use, &gathering);
        if (fleet.base != NULL)
            due_of_base(&gathering.list, fleet.base);
        horizon_keep(options, &gathering.list);
        due_sort(&gathering.list);
        found = is_due(options, &gathering.list);
        due_deliver(&gathering);
    }
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status > EXIT_GOOD ? status : found ? EXIT_FOUND : EXIT_GOOD;
}
