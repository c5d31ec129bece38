/* check_json.c - the result of `check` as JSON (room: app). Its shape is the schema in
 * check_schema.c: a member that is added here is added there. */
#include "check_rows.h"

#include <stdio.h>
#include <string.h>

#include "utf8.h"

/* RFC 8259: quotes, backslashes and control characters escaped; bytes that are no
 * UTF-8 (a file's name may hold them) as the replacement character. */
static void string_add(struct text_builder *out, const char *text)
{
    size_t length = text == NULL ? 0 : strlen(text), index = 0;
    if (text == NULL) {
        text_add(out, "null");
        return;
    }
    text_add(out, "\"");
    while (index < length) {
        size_t start = index;
        uint32_t code_point;
        if (!utf8_next(text, length, &index, &code_point)) {
            text_add(out, "\\ufffd");
            index = start + 1;
        } else if (code_point == '"' || code_point == '\\') {
            text_add_format(out, "\\%c", (int)code_point);
        } else if (code_point < 0x20 || code_point == 0x7F) {
            text_add_format(out, "\\u%04x", (unsigned)code_point);
        } else {
            text_add_bytes(out, text + start, index - start);
        }
    }
    text_add(out, "\"");
}

/* A member that is not the first of its object, its value a string or null. */
static void member_add(struct text_builder *out, const char *name, const char *value)
{
    text_add_format(out, ", \"%s\": ", name);
    string_add(out, value);
}

/* Lines and columns count from 1: 0 is "not known" and written as null. */
static void number_or_null_add(struct text_builder *out, const char *name, int number)
{
    if (number == 0)
        text_add_format(out, ", \"%s\": null", name);
    else
        text_add_format(out, ", \"%s\": %d", name, number);
}

/* A problem of no file (a missing font, say) has null for file, line and column. */
static void problem_json_add(struct text_builder *out, const struct problem *problem)
{
    const struct place *place = &problem->place;
    text_add(out, "{\"check\": ");
    string_add(out, problem->check);
    member_add(out, "severity", severity_word(problem->severity));
    member_add(out, "file", place->source == NULL ? NULL : place->source->name);
    number_or_null_add(out, "line", place->source == NULL ? 0 : place->line);
    number_or_null_add(out, "column", place->source == NULL ? 0 : place->column);
    member_add(out, "what", problem->what);
    member_add(out, "remedy", problem->remedy);
    text_add(out, "}");
}

/* In the order in which `check` prints them: by file, line and column. */
static void problems_json_add(struct text_builder *out, const struct problems *problems,
                              const char *indent)
{
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    text_add(out, "[");
    for (size_t i = 0; i < count; i++) {
        text_add_format(out, "%s\n%s", i == 0 ? "" : ",", indent);
        problem_json_add(out, &list[i]);
    }
    text_add(out, "]");
}

/* The cards that this boat has no gear for, each with its reason. */
static void not_hers_json_add(struct text_builder *out, const struct check_row *row)
{
    text_add(out, "[");
    for (size_t i = 0; i < row->not_hers_count; i++) {
        text_add(out, i == 0 ? "{\"card\": " : ", {\"card\": ");
        string_add(out, row->not_hers[i].name);
        member_add(out, "reason", row->not_hers[i].reason);
        text_add(out, "}");
    }
    text_add(out, "]");
}

/* The date on which her first piece of gear runs out; null where none is recorded. */
static void first_date_json_add(struct text_builder *out, const struct check_row *row)
{
    if (row->first_date == NULL) {
        text_add(out, "null");
        return;
    }
    text_add(out, "{\"date\": ");
    string_add(out, row->first_date);
    member_add(out, "item", row->first_item);
    member_add(out, "tag", row->first_tag);
    text_add(out, "}");
}

/* One boat: what `check` prints as a line of the table, and her problems. */
static void boat_json_add(struct text_builder *out, const struct check_row *row)
{
    text_add(out, "    {\"boat\": ");
    string_add(out, row->key);
    text_add_format(out, ", \"read\": %s, \"recorded\": %zu, \"items\": %zu,\n     "
                    "\"cards\": {\"ready\": %zu, \"of\": %zu},\n     \"counts\": {",
                    row->read ? "true" : "false", row->recorded, row->items, row->ready, row->of);
    static const enum severity told[] = {SEVERITY_ERROR, SEVERITY_HELD, SEVERITY_DEFICIENCY,
                                         SEVERITY_NOTE, SEVERITY_SILENCED};
    for (size_t i = 0; i < sizeof told / sizeof *told; i++)
        text_add_format(out, "%s\"%s\": %zu", i == 0 ? "" : ", ", severity_word(told[i]),
                        problems_count(row->problems, told[i]));
    text_add(out, "},\n     \"first_date\": ");
    first_date_json_add(out, row);
    text_add(out, ",\n     \"not_hers\": ");
    not_hers_json_add(out, row);
    text_add(out, ",\n     \"problems\": ");
    problems_json_add(out, row->problems, "       ");
    text_add(out, "}");
}

static void date_json_add(struct text_builder *out, const char *name, struct date date,
                          struct arena *arena)
{
    text_add_format(out, "  \"%s\": ", name);
    string_add(out, date_text(arena, date));
    text_add(out, ",\n");
}

/* Written in one go at the end, so that a run that fails on the way leaves no half of a
 * document. */
void check_json_print(const struct options *options, const struct fleet *fleet,
                      const struct check_row *rows, size_t count)
{
    struct text_builder out = text_builder_in(fleet->arena);
    bool charter = options->from.year != 0;
    text_add(&out, "{\n  \"format\": \"maydeck-check-1\",\n  \"base\": ");
    string_add(&out, options->base);
    text_add(&out, ",\n");
    date_json_add(&out, "date", options->today, fleet->arena);
    date_json_add(&out, "from", charter ? options->from : options->today, fleet->arena);
    date_json_add(&out, "to", charter ? options->to : options->today, fleet->arena);
    text_add(&out, "  \"boats\": [");
    for (size_t i = 0; i < count; i++) {
        text_add(&out, i == 0 ? "\n" : ",\n");
        boat_json_add(&out, &rows[i]);
    }
    text_add(&out, "],\n  \"problems\": ");
    problems_json_add(&out, fleet_problems_of_no_boat(fleet), "    ");
    text_add(&out, "\n}\n");
    fwrite(out.at, 1, out.length, stdout);
}
