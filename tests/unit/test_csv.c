/* test_csv.c - tables as spreadsheets write them: cells and their places, what is refused and
 * where, and writing that reads back. */
#include "record_test.h"

#include "csv.h"

static const struct csv_table *read_bytes(const char *bytes, size_t length)
{
    return csv_read(source_from(test.arena, "t.csv", bytes, length), test.arena, test.problems);
}

static const struct csv_table *read_text(const char *text)
{
    return read_bytes(text, strlen(text));
}

/* The cells below the head, "|" between cells and "/" between rows. */
static const char *rows_shown(const struct csv_table *table)
{
    struct text_builder out = text_builder_in(test.arena);
    assert_non_null(table);
    for (size_t i = 0; i < table->count; i++)
        for (size_t c = 0; c < table->rows[i].count; c++)
            text_add_format(&out, "%s%s", c > 0 ? "|" : i > 0 ? "/" : "",
                            csv_cell_text(&table->rows[i], c));
    return out.length == 0 ? "" : out.at;
}

static const struct { const char *text, *rows; } good[] = {
    {"a,b\n1,2\n", "1|2"},
    {"a,b\n1,2", "1|2"},
    {"a;b\r\n1;2,5\r\n", "1|2,5"},
    {"a\tb\r1\t2\r", "1|2"},
    {"a|b\n1|2\n", "1|2"},
    {"\xEF\xBB\xBF" "a,b\n1,2\n", "1|2"},
    {"a\n1\n2\n", "1/2"},
    {"a,b\n\"1\"\"\",\"x,y\"\n", "1\"|x,y"},
    {"a,b\n\"1\r\n2\",\"\"\n", "1\n2|"},
    {"a,b\n\"1\r2\",\n", "1\n2|"},
    {"\n\na,b\n\n1,2\n\n,\n\n3,4\n", "1|2/3|4"},
    {"a,b,,\n1,2,,\n3,4,,,,\n", "1|2/3|4"},
    {"a,b,c\n1\n1,2\n", "1/1|2"},
    {"\"a;b\",c\n1,2\n", "1|2"},
    {"\"a;b;c;d\",\"e,f\"\n1,2\n", "1|2"},
    {"a,b\n 1 , 2\n", " 1 | 2"},
    {"a,b\n\xC3\xA9,\xE4\xB8\xAD\n", "\xC3\xA9|\xE4\xB8\xAD"},
    {"a,b\n", ""},
    {"a,b", ""},
};

static void all_forms_are_read(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof good / sizeof *good; i++) {
        assert_string_equal(rows_shown(read_text(good[i].text)), good[i].rows);
        assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 0);
    }
}

static const struct {
    const char *text;
    size_t length;              /* 0: up to the first zero byte */
    int line, column;
    const char *what;
} bad[] = {
    {"a,b\n1,\"2\n3\n", 0, 2, 3, "the quote that opens this cell is never closed"},
    {"a,\"b\n", 0, 1, 3, "the quote that opens this cell is never closed"},
    {"a,b\n1,2\"3\n", 0, 2, 4, "a quote stands in a cell that does not begin with one"},
    {"a,b\n\"1\"x,2\n", 0, 2, 4, "words stand behind the quote that closes the cell"},
    {"a,b\n\n1,2,3\n", 0, 3, 5, "row 3 has 3 cells, the head 2"},
    {"a,b\n\"1\n1\",2\n1,2,,4\n", 0, 4, 5, "row 3 has 4 cells, the head 2"},
    {"a,b\n1,\xFF\n", 0, 2, 3, "the file is not UTF-8 here"},
    {"a,b\n1,2\0 3\n", 11, 2, 4, "a zero byte stands here"},
    {"\xFF\xFE" "a\0,\0b\0", 8, 1, 1, "the file is in UTF-16"},
    {"\0a\0,\0b", 6, 1, 1, "the file is in UTF-16"},
    {"a\0,\0b\0", 6, 1, 1, "the file is in UTF-16"},
    {"PK\x03\x04 and so on", 0, 1, 1, "this is a spreadsheet program's own file, not CSV"},
    {"a;b,c\n1,2\n", 0, 1, 1, "the head does not tell what stands between cells"},
    {"", 0, 1, 1, "the table has no head"},
    {"\n\n", 0, 3, 1, "the table has no head"},
    {",,\n1,2,3\n", 0, 1, 1, "the table has no head"},
    {"a,b\n1,x\x07y\n", 0, 2, 4, "the cell holds a character that is not allowed: "},
    {"a,b\n1,\"x\ty\"\n", 0, 2, 5, "the cell holds a character that is not allowed: "},
    {"a,b\n1,x\xE2\x80\xAEy\n", 0, 2, 4, "the cell holds a character that is not allowed: "},
};

static void what_is_wrong_has_its_place(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
        size_t count, length = bad[i].length > 0 ? bad[i].length : strlen(bad[i].text);
        test.problems = problems_new(test.arena);
        assert_null(read_bytes(bad[i].text, length));
        const struct problem *told = problems_sorted(test.problems, &count);
        assert_int_equal(count, 1);
        assert_true(text_begins(told[0].what, bad[i].what));
        assert_int_equal(told[0].severity, SEVERITY_ERROR);
        assert_int_equal(told[0].place.line, bad[i].line);
        assert_int_equal(told[0].place.column, bad[i].column);
        assert_false(text_empty(told[0].remedy));
    }
}

static void every_error_is_told(void **state)
{
    (void)state;
    assert_null(read_text("a,b\n1,2,3\nx\"y,2\n\"p\"q,2\n"));
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 3);
}

static void errors_have_an_end(void **state)
{
    (void)state;
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "a,b\n");
    for (int i = 0; i < 5 * CSV_ERRORS_MOST; i++)
        text_add(&out, "1,2,3\n");
    assert_null(read_text(out.at));
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), CSV_ERRORS_MOST);
}

static void limits_hold(void **state)
{
    (void)state;
    struct text_builder wide = text_builder_in(test.arena), high = text_builder_in(test.arena);
    for (int i = 0; i < CSV_COLUMNS_MOST; i++)
        text_add(&wide, "a,");
    text_add(&wide, "a\n");
    assert_null(read_text(wide.at));
    text_add(&high, "a,b\n");
    for (int i = 0; i < CSV_ROWS_MOST; i++)
        text_add(&high, "1,2\n");
    assert_null(read_text(high.at));
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 2);
}

static void cells_have_places_and_names(void **state)
{
    (void)state;
    const struct csv_table *table = read_text("boat,tag,expires\n\n\"a\n\xC3\xA9\",E1,2027\nb\n");
    assert_non_null(table);
    assert_int_equal(table->count, 2);
    struct place place = csv_cell_place(table, &table->rows[0], 2);
    assert_int_equal(place.line, 4);
    assert_int_equal(place.column, 7);
    assert_string_equal(csv_cell_name(table, &table->rows[0], 2, test.arena),
                        "row 3, column C (expires)");
    place = csv_cell_place(table, &table->rows[1], 2);
    assert_int_equal(place.line, 5);
    assert_string_equal(csv_cell_name(table, &table->rows[1], 2, test.arena),
                        "row 4, column C (expires)");
    assert_string_equal(csv_cell_text(&table->rows[1], 2), "");
    assert_int_equal(csv_column_find(table, "tag"), 1);
    assert_int_equal(csv_column_find(table, "tags"), 3);
}

static void columns_are_lettered(void **state)
{
    (void)state;
    static const struct { size_t column; const char *name; } names[] = {
        {0, "A"}, {25, "Z"}, {26, "AA"}, {51, "AZ"}, {52, "BA"}, {511, "SR"}};
    struct text_builder wide = text_builder_in(test.arena);
    for (int i = 0; i < CSV_COLUMNS_MOST; i++)
        text_add_format(&wide, "%sa", i > 0 ? "," : "");
    const struct csv_table *table = read_text(wide.at);
    assert_non_null(table);
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        assert_string_equal(csv_cell_name(table, &table->head, names[i].column, test.arena),
                            text_format(test.arena, "row 1, column %s (a)", names[i].name));
}

static void what_is_written_reads_back(void **state)
{
    (void)state;
    static const char *const cells[] = {
        "plain", "", "a,b", "a;b", "a|b", "say \"x\"", "\"", " led", "trailed ",
        "two\nlines", "\xC3\xA9t\xC3\xA9", "'012", "-0.5"};
    enum { CELLS = sizeof cells / sizeof *cells };
    static const char signs[] = CSV_DELIMITERS;
    for (size_t s = 0; s < sizeof signs - 1; s++) {
        struct text_builder out = text_builder_in(test.arena);
        csv_row_add(&out, signs[s], cells, CELLS);
        csv_row_add(&out, signs[s], cells, CELLS);
        const struct csv_table *table = read_text(out.at);
        assert_non_null(table);
        assert_int_equal(table->delimiter, signs[s]);
        for (size_t i = 0; i < CELLS; i++)
            assert_string_equal(csv_cell_text(&table->rows[0], i), cells[i]);
    }
    assert_int_equal(problems_count(test.problems, SEVERITY_ERROR), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(all_forms_are_read),
        TEST(what_is_wrong_has_its_place),
        TEST(every_error_is_told),
        TEST(errors_have_an_end),
        TEST(limits_hold),
        TEST(cells_have_places_and_names),
        TEST(columns_are_lettered),
        TEST(what_is_written_reads_back),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
