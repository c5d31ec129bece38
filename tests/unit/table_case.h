/* table_case.h - a boat and her table, for the tests of the room table: the table read back, and
 * what it changes. */
#ifndef MAYDECK_TABLE_CASE_H
#define MAYDECK_TABLE_CASE_H

#include "record_test.h"

#include "table.h"

/* ---- a boat and her table ---- */

/* A boat's file as it is, and after edits. */
struct bench {
    struct table_boat row;
    struct table_boats boats;
};

static const char *const no_others[] = {NULL};

static inline void bench_open_like(struct bench *bench, const struct source *source,
                            const struct models *models)
{
    bool sound;
    struct boat_input input = {source, "tern", models};
    const struct boat *boat = boat_read_like(&input, test.arena, test.problems, &sound);
    assert_non_null(boat);
    bench->row = (struct table_boat){
        "tern", source, yaml_tree_read(source, test.arena, test.problems),
        boat->likeness.source == NULL
            ? NULL
            : yaml_tree_read(boat->likeness.source, test.arena, test.problems),
        boat};
    bench->boats = (struct table_boats){&bench->row, 1, no_others};
}

static inline void bench_open(struct bench *bench, const struct source *source)
{
    static const struct models none = {NULL, 0};
    bench_open_like(bench, source, &none);
}

static inline const struct source *edited_source(const struct yaml_edited *edited)
{
    return source_from(test.arena, "tern.yaml", edited->bytes, edited->length);
}

static inline const struct csv_table *table_parsed(const char *text, size_t length)
{
    const struct csv_table *table =
        csv_read(source_from(test.arena, "t.csv", text, length), test.arena, test.problems);
    if (table == NULL)
        problems_show();
    assert_non_null(table);
    return table;
}

static inline const struct csv_table *table_of(const struct bench *bench)
{
    struct text_builder out = table_write(&bench->boats, test.arena);
    return table_parsed(out.at, out.length);
}

static inline const struct take *take_text(const struct bench *bench, const char *text)
{
    return table_take(table_parsed(text, strlen(text)), &bench->boats, test.arena,
                      test.problems);
}

/* The take must go well; what changes, "what: from -> to" with ; between. */
static inline const char *take_told(const struct bench *bench, const char *text,
                             const struct yaml_edited **edited)
{
    struct text_builder out = text_builder_in(test.arena);
    const struct take *take = take_text(bench, text);
    size_t count;
    if (take == NULL)
        problems_show();
    assert_non_null(take);
    const struct table_change *changes = take_changes(take, &count);
    text_add(&out, "");
    for (size_t i = 0; i < count; i++)
        text_add_format(&out, "%s%s: %s -> %s", i > 0 ? "; " : "", changes[i].what,
                        changes[i].from == NULL ? "-" : changes[i].from,
                        changes[i].to == NULL ? "-" : changes[i].to);
    *edited = take_edited(take, 0);
    return out.at;
}

static inline void nothing_changes(const struct bench *bench)
{
    struct text_builder out = table_write(&bench->boats, test.arena);
    const struct yaml_edited *edited;
    assert_string_equal(take_told(bench, out.at, &edited), "");
    assert_null(edited);
}

#endif
