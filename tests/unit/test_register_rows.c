/* test_register_rows.c - rows of a register as lines and back; what is damaged or torn is told and
 * hides no other row; and what hangs by them. */
#include "record_test.h"

#include "register.h"

static struct register_row row_of(enum register_event event, const char *card, const char *code,
                                  const char *place)
{
    return (struct register_row){
        .event = event, .boat = "wigeon", .card = card, .number = "7", .name = "7 FLOODING",
        .language = "en", .paper = "a4", .code = code, .date = {2027, 4, 30}, .place = place,
        .by = "AB", .until = "2027-09", .dates = "Gear dates to 2027-09, 1 undated.",
        .program = "1.0", .texts = "1e23-4567", .content = REGISTER_NOTHING};
}


static const char *lines_of(const struct register_row *rows, size_t count)
{
    struct text_builder out = text_builder_in(test.arena);
    register_head_add(&out);
    for (size_t i = 0; i < count; i++)
        register_row_add(&rows[i], &out);
    return out.at;
}

static struct register_rows rows_read(const char *text)
{
    return register_read(file_of("register.csv", text), test.arena, test.problems);
}

/* A sound code: made from some bytes. */
static const char *sound_code(const char *bytes)
{
    return check_code_of((const unsigned char *)bytes, strlen(bytes), test.arena);
}

static void what_is_written_is_read(void **state)
{
    static const char *const places[] = {"chart table", "port, by the \"door\"", "a;b|c", " x ",
                                         "Žuta 'ptica'", "007"};
    (void)state;
    for (size_t i = 0; i < sizeof places / sizeof *places; i++) {
        struct register_row row = row_of(EVENT_HUNG, "flooding", sound_code("a"), places[i]);
        row.content = content_pack("block\tmark\n", test.arena);
        struct register_rows read = rows_read(lines_of(&row, 1));
        expect_errors(0);
        assert_int_equal(read.count, 1);
        const struct register_row *one = &read.rows[0];
        assert_int_equal(one->event, EVENT_HUNG);
        assert_string_equal(one->place, places[i]);
        assert_string_equal(one->dates, row.dates);
        assert_string_equal(one->texts, "1e23-4567");
        assert_int_equal(date_compare(one->date, row.date), 0);
        assert_string_equal(content_unpack(one->content, test.arena), "block\tmark\n");
        assert_int_equal(one->at.line, 2);
        assert_false(read.last_whole);
        assert_int_equal(read.whole, strlen(lines_of(&row, 1)));
    }
}

/* A text with one sign for another, everywhere. */
static const char *with_sign(const char *text, char from, const char *to)
{
    struct text_builder out = text_builder_in(test.arena);
    for (; *text != '\0'; text++)
        text_add(&out, *text == from ? to : text_format(test.arena, "%c", *text));
    return out.at;
}

static void other_spreadsheets_and_later_columns_are_read(void **state)
{
    (void)state;
    struct register_row row = row_of(EVENT_PRINTED, "flooding", sound_code("a"), "-");
    row.dates = "none";
    const char *plain = lines_of(&row, 1);
    const char *const texts[] = {
        with_sign(plain, ',', ";"), with_sign(plain, ',', "\t"), with_sign(plain, '\n', "\r\n"),
        with_sign(plain, '\n', ",later\n"), text_format(test.arena, "\xEF\xBB\xBF%s", plain),
        text_format(test.arena, "# a note\n\n%s#end\n", plain)};
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++) {
        struct register_rows read = rows_read(texts[i]);
        expect_errors(0);
        assert_int_equal(read.count, 1);
        assert_string_equal(read.rows[0].card, "flooding");
        assert_string_equal(read.rows[0].content, REGISTER_NOTHING);
    }
}

static void a_damaged_row_is_told_and_hides_no_other(void **state)
{
    static const struct { const char *from, *to, *what; int column; } cases[] = {
        {"\nhung,", "\nhanged,", "event: neither printed, hung nor taken_down", 1},
        {"2027-04-30", "30.04.2027", "date: this is no date such as 2027-04-30", 0},
        {"2027-04-30", "2027-04", "date: this is no date such as 2027-04-30", 0},
        {",a4,", ",,", "paper: the cell is empty", 0},
        {",AB,", ",A\x1B[31mB,", "by: it holds what is no letter, figure or sign", 0},
        {",AB,", ",A\xFF,", "by: it holds what is no letter, figure or sign", 0},
        {",AB,", ",A\xE2\x80\xAE,", "by: it holds what is no letter, figure or sign", 0},
        {",AB,", ",\"AB,", "a quote that opens a cell is not closed at its end", 0},
        {",1.0,1e23-4567,-", "", "the row ends before its last column", 0}};
    (void)state;
    for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
        struct register_row rows[] = {row_of(EVENT_HUNG, "flooding", sound_code("a"), "p"),
                                      row_of(EVENT_HUNG, "gas_leak", sound_code("b"), "p")};
        const char *text = lines_of(rows, 2), *at = strstr(text, cases[i].from);
        test.problems = problems_new(test.arena);
        assert_non_null(at);
        struct register_rows read = rows_read(
            text_format(test.arena, "%.*s%s%s", (int)(at - text), text, cases[i].to,
                        at + strlen(cases[i].from)));
        expect_error(2, text_format(test.arena, "this row of the register is damaged: %s",
                                    cases[i].what), NULL);
        if (cases[i].column > 0)
            assert_int_equal(problem_saying(text_format(
                                 test.arena, "this row of the register is damaged: %s",
                                 cases[i].what))->place.column, cases[i].column);
        assert_int_equal(read.count, 1);
        assert_string_equal(read.rows[0].card, "gas_leak");
    }
}

/* Whatever bytes stand in the file, whole rows before and behind them are read. */
static void strange_bytes_hide_no_row(void **state)
{
    static const char *const bytes[] = {"\0", "\0\0\0,\0", "\"", "\"\"\"", ",,,,", "\xFF\xFE", ";",
                                        "printed", "printed,", "hung,\"", "\t\t|"};
    (void)state;
    struct register_row row = row_of(EVENT_HUNG, "flooding", sound_code("a"), "p");
    const char *one = lines_of(&row, 1), *line = strchr(one, '\n') + 1;
    for (size_t i = 0; i < sizeof bytes / sizeof *bytes; i++) {
        struct text_builder out = text_builder_in(test.arena);
        text_add(&out, one);
        text_add_bytes(&out, bytes[i], i == 0 ? 1 : i == 1 ? 5 : strlen(bytes[i]));
        text_add_format(&out, "\n%s", line);
        test.problems = problems_new(test.arena);
        struct register_rows read = register_read(
            source_from(test.arena, "register.csv", out.at, out.length), test.arena,
            test.problems);
        expect_errors(1);
        assert_int_equal(read.count, 2);
        assert_int_equal(read.rows[1].at.line, 4);
    }
}

static void a_slip_in_a_code_is_found(void **state)
{
    (void)state;
    struct register_row row = row_of(EVENT_HUNG, "flooding", "0TJ8-GE23", "p");
    assert_int_equal(rows_read(lines_of(&row, 1)).count, 0);
    expect_error(2, "this row of the register is damaged: code: this is no check code", NULL);
}

/* Cut off after each byte of its last row, a register never loses a whole row, nor takes a part
 * for one; mended, it is whole again and takes the next row. */
static void torn_rows_are_mended(void **state)
{
    (void)state;
    struct register_row rows[] = {row_of(EVENT_PRINTED, "flooding", sound_code("a"), "-"),
                                  row_of(EVENT_PRINTED, "gas_leak", sound_code("b"), "-"),
                                  row_of(EVENT_HUNG, "gas_leak", sound_code("b"), "a, \"b\"")};
    rows[1].content = content_pack("block\tmark\nsays\ttext\tSPECIMEN\n", test.arena);
    const char *two = lines_of(rows, 2), *one = lines_of(rows, 1);
    size_t least = strlen(one), length = strlen(two);
    for (size_t cut = 0; cut <= length; cut++) {
        struct text_builder mended = text_builder_in(test.arena), out = text_builder_in(test.arena);
        size_t kept;
        test.problems = problems_new(test.arena);
        const struct source *source = file_of("register.csv",
                                              arena_copy(test.arena, two, cut));
        struct register_rows read = register_read(source, test.arena, test.problems);
        expect_errors(0);
        size_t rows_whole = cut + 1 >= length ? 2 : cut + 1 >= least ? 1 : 0;
        assert_int_equal(read.count, rows_whole);
        text_add(&out, "");
        register_mend(source, &read, &kept, &mended, test.problems);
        text_add_bytes(&out, source->bytes, kept);
        text_add(&out, mended.length == 0 ? "" : mended.at);
        register_row_add(&rows[2], &out);
        test.problems = problems_new(test.arena);
        struct register_rows again = rows_read(out.at);
        expect_errors(0);
        assert_int_equal(again.count, rows_whole + 1);
        assert_string_equal(again.rows[again.count - 1].place, "a, \"b\"");
        assert_true(text_begins(out.at, "event,boat,card,"));
    }
}

static void a_torn_rest_is_told_once(void **state)
{
    (void)state;
    struct text_builder mended = text_builder_in(test.arena);
    size_t kept;
    struct register_row row = row_of(EVENT_HUNG, "flooding", sound_code("a"), "a, \"b\"");
    const char *text = text_format(test.arena, "%shung,\"wig", lines_of(&row, 1));
    const struct source *source = file_of("register.csv", text);
    struct register_rows read = register_read(source, test.arena, test.problems);
    register_mend(source, &read, &kept, &mended, test.problems);
    assert_string_equal(mended.at, "# torn: hung,'wig\n");
    assert_int_equal(kept, read.whole);
    assert_int_equal(problems_count(test.problems, SEVERITY_DEFICIENCY), 1);
    assert_non_null(problem_saying("register.csv:3: the last row was torn when a run was stopped; "
                                   "it is kept as a line that begins with #"));
}

/* ---- what hangs ---- */

static void the_last_event_of_a_place_tells_what_hangs(void **state)
{
    (void)state;
    const char *old = sound_code("a"), *now = sound_code("b");
    struct register_row rows[] = {
        row_of(EVENT_PRINTED, "flooding", old, "-"), row_of(EVENT_HUNG, "flooding", old, "Saloon"),
        row_of(EVENT_HUNG, "flooding", old, "cockpit"),
        row_of(EVENT_HUNG, "flooding", now, " saloon"),
        row_of(EVENT_TAKEN_DOWN, "flooding", old, "Cockpit"),
        row_of(EVENT_HUNG, "gas_leak", old, "cockpit")};
    static const bool hangs[] = {false, false, false, true, false, true};
    struct register_rows all = {.rows = rows, .count = 6};
    for (size_t i = 0; i < 6; i++)
        assert_int_equal(hangs_still(&all, i), hangs[i]);
    assert_ptr_equal(print_of(&all, &rows[1], NULL), &rows[0]);
    assert_ptr_equal(print_of(&all, &rows[1], "a4"), &rows[0]);
    assert_null(print_of(&all, &rows[1], "letter"));
    assert_null(print_of(&all, &rows[3], NULL));
    assert_ptr_equal(print_last(&all, &rows[3], NULL), &rows[0]);
    assert_null(print_last(&all, &rows[3], "letter"));
    rows[1].dates = "GEAR PAST ITS DATE";
    assert_null(print_of(&all, &rows[1], NULL));
}

/* A record that went back to what it was has its card printed anew before it is hung. */
static void an_older_print_is_not_taken_for_the_last(void **state)
{
    (void)state;
    const char *old = sound_code("a"), *now = sound_code("b");
    struct register_row rows[] = {row_of(EVENT_PRINTED, "flooding", old, "-"),
                                  row_of(EVENT_PRINTED, "flooding", now, "-"),
                                  row_of(EVENT_PRINTED, "flooding", old, "-")};
    struct register_rows all = {.rows = rows, .count = 2};
    assert_null(print_of(&all, &rows[0], NULL));
    assert_ptr_equal(print_of(&all, &rows[1], NULL), &rows[1]);
    all.count = 3;
    assert_ptr_equal(print_of(&all, &rows[0], NULL), &rows[2]);
    assert_null(print_of(&all, &rows[1], NULL));
}

static void places_are_compared_as_people_write_them(void **state)
{
    (void)state;
    assert_true(same_place("Chart table", " chart  table "));
    assert_true(same_place("", " "));
    assert_false(same_place("charttable", "chart table"));
    assert_false(same_place("chart table", "chart tables"));
    assert_false(same_place("port", "starboard"));
}

/* ---- contents and codes ---- */

static void damaged_contents_are_not_taken(void **state)
{
    (void)state;
    struct text_builder long_one = text_builder_in(test.arena);
    for (int i = 0; i < 20000; i++)
        text_add_format(&long_one, "says\ttext\t%d\n", i * 7919);
    const char *packed = content_pack(long_one.at, test.arena);
    assert_string_equal(content_unpack(packed, test.arena), long_one.at);
    assert_string_equal(content_unpack(content_pack("", test.arena), test.arena), "");
    for (size_t cut = 0; cut < strlen(packed); cut += 997)
        assert_null(content_unpack(arena_copy(test.arena, packed, cut), test.arena));
    char *spoilt = arena_copy(test.arena, packed, strlen(packed));
    spoilt[strlen(packed) / 2] = spoilt[strlen(packed) / 2] == 'A' ? 'B' : 'A';
    assert_null(content_unpack(spoilt, test.arena));
    assert_null(content_unpack("not base 64!", test.arena));
}

static void codes_are_read_as_people_type_them(void **state)
{
    const char *code, *wrong, *own = sound_code("wigeon");
    (void)state;
    struct text_builder typed = text_builder_in(test.arena);
    for (const char *at = own; *at != '\0'; at++)
        text_add(&typed, *at == '0' ? "o " : *at == '1' ? "l" : *at == '-' ? " \u2013 "
                         : text_format(test.arena, "%c", *at));
    assert_int_equal(code_read(typed.at, test.arena, &code, &wrong), CODE_SOUND);
    assert_string_equal(code, own);
    static const char signs[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    for (size_t i = 0; own[i] != '\0'; i++)    /* any one sign off */
        for (const char *sign = signs; *sign != '\0' && own[i] != '-'; sign++) {
            char *slip = arena_copy(test.arena, own, strlen(own));
            slip[i] = *sign;
            assert_int_equal(code_read(slip, test.arena, &code, &wrong),
                             *sign == own[i] ? CODE_SOUND : CODE_MISTYPED);
        }
    static const char *const none[] = {"", "3EHB", "3EHB-1W4H-1", "3EHB-1W4U", "3EHB-1W4\xC3\x84",
                                       "3EHB?1W4H"};
    for (size_t i = 0; i < sizeof none / sizeof *none; i++) {
        assert_int_equal(code_read(none[i], test.arena, &code, &wrong), CODE_NO_CODE);
        assert_non_null(wrong);
        assert_null(code);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_is_written_is_read),
        TEST(other_spreadsheets_and_later_columns_are_read),
        TEST(a_damaged_row_is_told_and_hides_no_other),
        TEST(strange_bytes_hide_no_row),
        TEST(a_slip_in_a_code_is_found),
        TEST(torn_rows_are_mended),
        TEST(a_torn_rest_is_told_once),
        TEST(the_last_event_of_a_place_tells_what_hangs),
        TEST(an_older_print_is_not_taken_for_the_last),
        TEST(places_are_compared_as_people_write_them),
        TEST(damaged_contents_are_not_taken),
        TEST(codes_are_read_as_people_type_them),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
