/* test_table.c - records as a table and back: nothing changes that nobody changed, each field can
 * be taken out and set by its cell, and what spreadsheets do to cells is undone or refused. */
#include "table_case.h"

#include <dirent.h>

#include "whole_case.h"

#include "table/table_room.h"

/* ---- whole bases ---- */

/* In an arena of its own: there are many. */
static void boat_check(const char *path)
{
    struct record_test kept = test;
    test.arena = arena_new((size_t)256 * 1024 * 1024);
    test.problems = problems_new(test.arena);
    struct source *source = NULL;
    struct bench bench;
    assert_int_equal(source_read(test.arena, path, YAML_FILE_LIMIT, &source), SOURCE_READ);
    bench_open(&bench, source);
    if (bench.row.boat->likeness.model == NULL)
        nothing_changes(&bench);
    arena_free(test.arena);
    test = kept;
}

static void what_nobody_changed_stays(void **state)
{
    static const char *const folders[] = {"tests/fleet/boats", "tests/islands/boats",
                                          "tests/unusual/boats", "tests/hazard/boats"};
    size_t count = 0;
    (void)state;
    for (size_t i = 0; i < sizeof folders / sizeof *folders; i++) {
        DIR *folder = opendir(folders[i]);
        assert_non_null(folder);
        for (const struct dirent *entry; (entry = readdir(folder)) != NULL;)
            if (text_ends(entry->d_name, ".yaml") && !text_equal(entry->d_name, "campion.yaml") &&
                !text_equal(entry->d_name, "yarrow.yaml")) {
                boat_check(text_format(test.arena, "%s/%s", folders[i], entry->d_name));
                count++;
            }
        closedir(folder);
    }
    assert_true(count > 30);
}

/* ---- each field ---- */

static bool is_required(const struct leaves *gear, const char *head)
{
    size_t leaf = leaf_find(gear, head);
    return leaf < gear->count && (leaf_field(&gear->rows[leaf])->required ||
                                  gear->rows[leaf].field->required);
}

/* The table of one row, with all its cells emptied that may be. */
static const char *row_emptied(const struct csv_table *table, const struct csv_row *row,
                               const struct leaves *gear, size_t *emptied)
{
    struct text_builder out = text_builder_in(test.arena);
    size_t count = table->head.count;
    const char **cells = arena_array(test.arena, count, sizeof *cells);
    for (size_t i = 0; i < count; i++)
        cells[i] = table->head.cells[i].text;
    csv_row_add(&out, ';', cells, count);
    *emptied = 0;
    for (size_t i = 0; i < count; i++) {
        const char *head = table->head.cells[i].text;
        bool stays = choice_find(table_column_words, head) > 0 || is_required(gear, head);
        cells[i] = stays ? csv_cell_text(row, i) : "";
        *emptied += !stays && csv_cell_text(row, i)[0] != '\0' ? 1 : 0;
    }
    csv_row_add(&out, ';', cells, count);
    return out.at;
}

/* Without its mark, by which it would say that nobody changed it. */
static const char *row_as_it_is(const struct csv_table *table, const struct csv_row *row)
{
    struct text_builder out = text_builder_in(test.arena);
    size_t count = table->head.count;
    const char **cells = arena_array(test.arena, count, sizeof *cells);
    for (size_t i = 0; i < count; i++)
        cells[i] = table->head.cells[i].text;
    csv_row_add(&out, '|', cells, count);
    for (size_t i = 0; i < count; i++)
        cells[i] = csv_cell_text(row, i);
    cells[csv_column_find(table, choice_word(table_column_words, TABLE_MARK))] = "";
    csv_row_add(&out, '|', cells, count);
    return out.at;
}

/* All fields of a piece go by their cells, and come back by their cells. */
static size_t row_try(const struct bench *bench, const struct csv_table *table,
                      const struct csv_row *row, const struct leaves *gear)
{
    struct bench without, again;
    const struct yaml_edited *edited;
    size_t emptied;
    const char *less = row_emptied(table, row, gear, &emptied);
    const char *whole = row_as_it_is(table, row);
    (void)take_told(bench, less, &edited);
    if (emptied == 0)
        return 0;
    assert_non_null(edited);
    bench_open(&without, edited_source(edited));
    assert_string_equal(take_told(&without, less, &edited), "");
    assert_string_not_equal(take_told(&without, whole, &edited), "");
    assert_non_null(edited);
    bench_open(&again, edited_source(edited));
    assert_string_equal(take_told(&again, whole, &edited), "");
    assert_null(edited);
    return emptied;
}

static void each_field_is_set_by_its_cell(void **state)
{
    static const enum hull hulls[] = {HULL_MONOHULL, HULL_CATAMARAN};
    struct table_leaves leaves = table_leaves_make(test.arena);
    size_t tried = 0;
    (void)state;
    for (size_t h = 0; h < sizeof hulls / sizeof *hulls; h++) {
        const struct whole_kind kind = {hulls[h], WHOLE_ALL};
        struct record_test kept = test;
        struct bench bench;
        bench_open(&bench, file_of("tern.yaml", whole_boat(&kind, test.arena)));
        nothing_changes(&bench);
        const struct csv_table *table = table_of(&bench);
        for (size_t i = 0; i < table->count; i++) {
            test.arena = arena_new((size_t)256 * 1024 * 1024);
            test.problems = problems_new(test.arena);
            if (csv_cell_text(&table->rows[i], 1)[0] != '\0')
                tried += row_try(&bench, table, &table->rows[i], &leaves.gear);
            arena_free(test.arena);
            test = kept;
        }
    }
    assert_true(tried > 1000);
}

/* ---- cells ---- */

static void guards_are_put_and_taken_off(void **state)
{
    static const char *const guarded[] = {
        "012", "2027-04", "2.7", "5E12", "=1+1", "+385", "-0.5", "@x", "'tis", "12345",
        "200014980", "19040 82140 FFBFF", "1/2", "(5)", "\u20AC5", "MAR1", "May 27", "true",
        "FALSE", "wahr", " led", "[]", "[a, \"b, c\"]", ".5", "1 st"};
    static const char *const plain[] = {"0", "5", "9999", "E12", "F1", "yes", "no", "port",
                                        "en 13A 70B", "switch 4, panel", "breaker 2 up",
                                        "\u017Duta", "a=b", "C4"};
    (void)state;
    for (size_t i = 0; i < sizeof guarded / sizeof *guarded; i++) {
        const char *cell = cell_guarded(guarded[i], test.arena);
        assert_string_equal(cell, text_format(test.arena, "'%s", guarded[i]));
        static const struct field field = {.kind = FIELD_WORDING};
        assert_string_equal(cell_said(&field, guarded[i], cell, test.arena).text, guarded[i]);
    }
    for (size_t i = 0; i < sizeof plain / sizeof *plain; i++)
        assert_string_equal(cell_guarded(plain[i], test.arena), plain[i]);
}

static const struct { enum field_kind kind; const char *recorded, *cell, *text; } said_rows[] = {
    {FIELD_DATE, "2026-12", "31/05/2027", "2027-05-31"},
    {FIELD_DATE, "", "05/31/27", "2027-05-31"},
    {FIELD_DATE, "", "31.5.27", "2027-05-31"},
    {FIELD_DATE, "", "31.5.2027", "2027-05-31"},
    {FIELD_DATE, "", "5/5/2027", "2027-05-05"},
    {FIELD_DATE, "", "May 2027", "2027-05"},
    {FIELD_DATE, "", "'2027-05", "2027-05"},
    {FIELD_DATE, "03/04/2027", "03/04/2027", "03/04/2027"},
    {FIELD_DATE, "", "03/04/2027", NULL},
    {FIELD_DATE, "", "03/04/27", NULL},
    {FIELD_DATE, "", "31/02/2027", NULL},
    {FIELD_DATE, "", "27-05-31", NULL},
    {FIELD_DATE, "", "05/31/98", NULL},
    {FIELD_DATE, "", "46538", NULL},
    {FIELD_NUMBER, "", "2,7", "2.7"},
    {FIELD_NUMBER, "10.0", "10", "10.0"},
    {FIELD_NUMBER, "10.0", "10,00", "10.0"},
    {FIELD_NUMBER, "1.500", "1.500", "1.500"},
    {FIELD_NUMBER, "", "1.500", NULL},
    {FIELD_NUMBER, "", "1,500", NULL},
    {FIELD_NUMBER, "", "-0,5", "-0.5"},
    {FIELD_NUMBER, "", "twelve", "twelve"},
    {FIELD_ANSWER, "", "TRUE", "yes"},
    {FIELD_ANSWER, "", "Wahr", "yes"},
    {FIELD_ANSWER, "", "FAUX", "no"},
    {FIELD_ANSWER, "", "yes", "yes"},
    {FIELD_TEXT, "", "4.04E+11", NULL},
    {FIELD_TEXT, "", "2,00E+08", NULL},
    {FIELD_TEXT, "", "5E12", "5E12"},
    {FIELD_TEXT, "", "=A1", NULL},
    {FIELD_TEXT, "", "@x", NULL},
    {FIELD_TEXT, "", "-x", NULL},
    {FIELD_TEXT, "", "'=A1", "=A1"},
    {FIELD_WORDING, "", "  by the hatch ", "by the hatch"},
    {FIELD_WORDING, "", "two\nlines", NULL},
    {FIELD_WORDING, "", "e\u0301", "\u00E9"},
    {FIELD_WORDING, "x", "", ""},
};

static void cells_say_one_thing_or_are_refused(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof said_rows / sizeof *said_rows; i++) {
        struct field field = {.key = "x", .kind = said_rows[i].kind};
        struct cell_said said =
            cell_said(&field, said_rows[i].recorded, said_rows[i].cell, test.arena);
        if (said_rows[i].text != NULL) {
            assert_null(said.fault);
            assert_string_equal(said.text, said_rows[i].text);
        } else {
            assert_non_null(said.fault);
            assert_false(text_empty(said.remedy));
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_nobody_changed_stays),
        TEST(each_field_is_set_by_its_cell),
        TEST(guards_are_put_and_taken_off),
        TEST(cells_say_one_thing_or_are_refused),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
