/* test_yaml_fields.c - reading mappings by a table: the values, and what is
 * said of wrong ones, word for word. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "text.h"
#include "yaml_fields_record.h"

struct bench {
    struct arena *arena;
    struct problems *problems;
    struct record record;
    bool sound;
};

static int bench_set_up(void **state) {
    static struct bench bench;

    bench = (struct bench){.arena = arena_new((size_t)64 * 1024 * 1024)};
    *state = &bench;
    return 0;
}

static int bench_tear_down(void **state) {
    struct bench *bench = *state;

    arena_free(bench->arena);
    return 0;
}

static void bench_read(struct bench *bench, const struct field_table *by, const char *input) {
    struct source *source = source_from(bench->arena, "t", input, strlen(input));

    bench->problems = problems_new(bench->arena);
    bench->record = (struct record){0};
    const struct yaml_node *tree = yaml_tree_read(source, bench->arena, bench->problems);
    assert_non_null(tree);
    bench->sound = fields_read(tree, by, &bench->record, bench->arena, bench->problems);
    assert_int_equal(bench->sound, !problems_reach(bench->problems, SEVERITY_ERROR));
}

/* All that was told, with the remedies. */
static const char *told(struct bench *bench) {
    struct text_builder out = text_builder_in(bench->arena);
    size_t count;
    const struct problem *problems = problems_sorted(bench->problems, &count);

    for (size_t i = 0; i < count; i++)
        text_add_format(&out, "%d:%d+%d %s: %s\n  %s\n", problems[i].place.line,
                        problems[i].place.column, problems[i].place.span,
                        severity_word(problems[i].severity), problems[i].what,
                        problems[i].remedy == NULL ? "-" : problems[i].remedy);
    return out.at;
}

/* ---- sound records ---- */

static void test_all_kinds(void **state) {
    struct bench *bench = *state;
    struct record *record = &bench->record;

    bench_read(bench, &table,
               "name: Sea\nside: port\nspot: \"by 2\"\nloa_m: 12.6\nhold_s: \"5\"\n"
               "depth_m: -0.05\nfitted: no\ndue: 2027-04\nzones: [saloon, cockpit]\n"
               "uses: pump\ngear: {a: b}\n");
    assert_string_equal(told(bench), "");
    assert_string_equal(record->name.text, "Sea");
    assert_int_equal(record->name.place.column, 7);
    assert_int_equal(record->side.value, PORT_SIDE);
    assert_int_equal(record->side.place.column, 7);
    assert_string_equal(record->spot.text, "by 2");
    assert_true(record->loa_m.given && record->loa_m.milli == 12600);
    assert_string_equal(record->loa_m.text, "12.6");
    assert_int_equal(record->loa_m.place.line, 4);
    assert_true(record->hold_s.milli == 5000);
    assert_true(record->depth_m.milli == -50);
    assert_int_equal(record->fitted.answer, ANSWER_NO);
    assert_true(record->due.given && record->due.date.month == 4 && record->due.date.day == 0);
    assert_int_equal(record->zones.count, 2);
    assert_int_equal(record->zones.items[0].value, SALOON_ZONE);
    assert_int_equal(record->zones.items[1].value, COCKPIT_ZONE);
    assert_int_equal(record->zones.items[1].place.column, 17);
    assert_int_equal(record->uses.count, 1);
    assert_string_equal(record->uses.items[0].text, "pump");
    assert_string_equal(yaml_get(record->gear.node, "a")->text, "b");
}

static void test_not_given(void **state) {
    struct bench *bench = *state;
    struct record *record = &bench->record;

    bench_read(bench, &table, "name: Sea\nspot: x\nside:\nloa_m: \"\"\nfitted:\nuses:\ngear:\n");
    assert_string_equal(told(bench), "");
    assert_int_equal(record->side.value, NO_SIDE);
    assert_false(record->loa_m.given);
    assert_int_equal(record->fitted.answer, ANSWER_NOT_RECORDED);
    assert_false(record->uses.given);
    assert_false(record->due.given);
    assert_null(record->gear.node);
    for (size_t i = 1; i < table.count; i++)
        if (fields[i].offset != offsetof(struct record, spot))
            assert_null(field_text(&fields[i], record, bench->arena));
}

static void test_empty_list(void **state) {
    struct bench *bench = *state;

    bench_read(bench, &table, "{name: Sea, spot: x, zones: [], uses: [a, b]}");
    assert_string_equal(told(bench), "");
    assert_true(bench->record.zones.given);
    assert_int_equal(bench->record.zones.count, 0);
    assert_int_equal(bench->record.uses.count, 2);
    bench_read(bench, &table, "{name: Sea, spot: x, zones: saloon}");
    assert_string_equal(told(bench), "");
    assert_int_equal(bench->record.zones.count, 1);
    assert_int_equal(bench->record.zones.items[0].value, SALOON_ZONE);
}

static const char *text_of(struct bench *bench, const char *key) {
    return field_text(field_find(&table, key), &bench->record, bench->arena);
}

static void test_field_text(void **state) {
    struct bench *bench = *state;

    bench_read(bench, &table,
               "{name: Sea, side: centre, spot: x, loa_m: 12.60, fitted: yes, due: 2027,\n"
               "  zones: [saloon, cockpit], uses: [], gear: [a]}");
    assert_string_equal(told(bench), "");
    assert_string_equal(text_of(bench, "name"), "Sea");
    assert_string_equal(text_of(bench, "side"), "centre");
    assert_string_equal(text_of(bench, "loa_m"), "12.60");
    assert_string_equal(text_of(bench, "fitted"), "yes");
    assert_string_equal(text_of(bench, "due"), "2027");
    assert_string_equal(text_of(bench, "zones"), "saloon cockpit");
    assert_string_equal(text_of(bench, "uses"), "");
    assert_null(text_of(bench, "gear"));
    assert_null(text_of(bench, "hold_s"));
    bench->record.fitted.answer = ANSWER_NO;
    assert_string_equal(text_of(bench, "fitted"), "no");
    assert_null(field_find(&table, "nothing"));
}

/* ---- keys ---- */

static void rows_check(void **state, const struct row *rows, size_t count, const char *before) {
    struct bench *bench = *state;

    for (size_t i = 0; i < count; i++) {
        bench_read(bench, &table, text_format(bench->arena, "%s%s", before, rows[i].input));
        assert_string_equal(told(bench), rows[i].told);
        assert_false(bench->sound);
    }
}

#define ROWS(rows) rows, sizeof rows / sizeof rows[0]

static void test_keys(void **state) {
    static const struct row rows[] = {
        {"{name: a, spot: b, loa: 3}",
         "1:20+3 error: an equipment item has no key \"loa\"\n  did you mean \"loa_m\"?\n"},
        {"{name: a, spot: b, Fited: yes}",
         "1:20+5 error: an equipment item has no key \"Fited\"\n  did you mean \"fitted\"?\n"},
        {"{name: a, spot: Stop, then wait: }",
         "1:23+9 error: an equipment item has no key \"then wait\"\n"
         "  if \"then wait\" belongs to the text before it, put that text in quotes\n"},
        {"{name: a, spot: b, colour: red}",
         "1:20+6 error: an equipment item has no key \"colour\"\n"
         "  keys of an equipment item: name, side, spot, loa_m, hold_s, depth_m, fitted, due,\n"
         "zones, steps, uses, gear\n"},
        {"{loa_m: 3}",
         "1:1+10 error: an equipment item needs the key \"name\"\n"
         "  add \"name: ...\" (as painted)\n"
         "1:1+10 error: an equipment item needs the key \"spot\"\n  add \"spot: ...\"\n"},
        {"{name: , spot: \"\"}",
         "1:2+4 error: \"name\" has no value\n  fill in \"name: ...\" (as painted)\n"
         "1:10+4 error: \"spot\" has no value\n  fill in \"spot: ...\"\n"},
        {"[a]",
         "1:1+3 error: an equipment item must be a mapping, not a list\n"
         "  write its keys in lines of their own, or in one line as {key: value}\n"},
        {"text",
         "1:1+4 error: an equipment item must be a mapping, not a text\n"
         "  write its keys in lines of their own, or in one line as {key: value}\n"},
        {"\"\"",
         "1:1+2 error: an equipment item must be a mapping, not empty\n"
         "  write its keys in lines of their own, or in one line as {key: value}\n"},
    };

    rows_check(state, ROWS(rows), "");
}

static void test_article(void **state) {
    static const struct field_table boats = {.what = "a boat", .fields = fields, .count = 1};
    struct bench *bench = *state;

    bench_read(bench, &boats, "{name: x, colour: red}");
    assert_string_equal(told(bench),
                        "1:11+6 error: a boat has no key \"colour\"\n  keys of a boat: name\n");
}

static void test_all_is_told(void **state) {
    struct bench *bench = *state;

    bench_read(bench, &table, "side: x\nloa_m: y\nfitted: z\nwhat: w\n");
    assert_int_equal(problems_count(bench->problems, SEVERITY_ERROR), 6);
    assert_int_equal(bench->record.side.value, NO_SIDE);
    assert_false(bench->record.loa_m.given);
    assert_int_equal(bench->record.fitted.answer, ANSWER_NOT_RECORDED);
}

/* ---- values ---- */

#define BEFORE "name: a\nspot: b\n"

static void test_texts(void **state) {
    static const struct row rows[] = {
        {"side: Port", "3:7+4 error: \"side\" cannot be \"Port\"\n  write port\n"},
        {"side: prot", "3:7+4 error: \"side\" cannot be \"prot\"\n  did you mean \"port\"?\n"},
        {"side: bow",
         "3:7+3 error: \"side\" cannot be \"bow\"\n  write one of: port, starboard, centre\n"},
        {"side: Left", "3:7+4 error: \"side\" cannot be \"Left\"\n  write port\n"},
        {"side: [port]",
         "3:7+6 error: \"side\" must be a text, not a list\n"
         "  write one value; a text that begins with [ or - goes in quotes\n"},
        {"side: {port: x}",
         "3:7+9 error: \"side\" must be a text, not a mapping\n"
         "  write one value; a text with a colon or braces in it goes in quotes\n"},
        {"side: ~",
         "3:7+1 error: \"side\" is \"~\", which would be read as a text\n"
         "  leave the value empty; put it in quotes if it is the text\n"},
        {"side: null",
         "3:7+4 error: \"side\" is \"null\", which would be read as a text\n"
         "  leave the value empty; put it in quotes if it is the text\n"},
        {"side: \"  \"",
         "3:7+4 error: \"side\" holds nothing but spaces\n"
         "  write the text, or leave the value empty\n"},
        {"side: |\n  port\n  x",
         "3:7+1 error: \"side\" holds a line break\n"
         "  write the text as one line, or begin it with >\n"},
        {"side: a very long text that nobody would ever want to read in a message",
         "3:7+65 error: \"side\" cannot be \"a very long text that nobody would ever want to "
         "read in a me...\"\n  write one of: port, starboard, centre\n"},
    };

    rows_check(state, ROWS(rows), BEFORE);
}

static void test_numbers(void **state) {
    static const struct row rows[] = {
        {"loa_m: 12,6",
         "3:8+4 error: \"loa_m\" must be a number such as 12.6, not \"12,6\"\n"
         "  write 12.6, with a point\n"},
        {"loa_m: 4,500",
         "3:8+5 error: \"loa_m\" must be a number such as 12.6, not \"4,500\"\n"
         "  write 4500 or 4.5, whichever is meant: no comma, a point before decimals\n"},
        {"loa_m: 12.6 m",
         "3:8+6 error: \"loa_m\" must be a number such as 12.6, not \"12.6 m\"\n"
         "  write 12.6, without the unit\n"},
        {"loa_m: 12,6m",
         "3:8+5 error: \"loa_m\" must be a number such as 12.6, not \"12,6m\"\n"
         "  write 12.6, without the unit\n"},
        {"loa_m: 41 ft",
         "3:8+5 error: \"loa_m\" must be a number such as 12.6, not \"41 ft\"\n"
         "  write the number alone, in the unit that is meant by the key\n"},
        {"loa_m: +7", "3:8+2 error: \"loa_m\" must be a number such as 12.6, not \"+7\"\n"
                      "  write 7\n"},
        {"loa_m: 007.", "3:8+4 error: \"loa_m\" must be a number such as 12.6, not \"007.\"\n"
                        "  write 7\n"},
        {"depth_m: .5", "3:10+2 error: \"depth_m\" must be a number such as 12.6, not \".5\"\n"
                        "  write 0.5\n"},
        {"hold_s: long",
         "3:9+4 error: \"hold_s\" must be a number such as 10, not \"long\"\n"
         "  write digits only, with a point before decimals (three at most)\n"},
        {"loa_m: 1 200",
         "3:8+5 error: \"loa_m\" must be a number such as 12.6, not \"1 200\"\n"
         "  write digits only, with a point before decimals (three at most)\n"},
        {"loa_m: 12.3456",
         "3:8+7 error: \"loa_m\" must be a number such as 12.6, not \"12.3456\"\n"
         "  write digits only, with a point before decimals (three at most)\n"},
        {"loa_m: [12]",
         "3:8+4 error: \"loa_m\" must be a number, not a list\n"
         "  write one value; a text that begins with [ or - goes in quotes\n"},
        {"loa_m: 126",
         "3:8+3 error: \"loa_m\" must be from 2 to 60, not 126\n"
         "  look at it again; \"loa_m\" means: length over all\n"},
        {"loa_m: 1.999",
         "3:8+5 error: \"loa_m\" must be from 2 to 60, not 1.999\n"
         "  look at it again; \"loa_m\" means: length over all\n"},
        {"hold_s: -5", "3:9+2 error: \"hold_s\" must be from 1 to 10, not -5\n  -\n"},
    };

    rows_check(state, ROWS(rows), BEFORE);
}

static void test_answers(void **state) {
    static const char *const yes[] = {"Yes", "YES", "y", "true", "True", "on", "1"};
    static const char *const no[] = {"No", "NO", "n", "false", "FALSE", "Off", "0"};
    static const struct row rows[] = {
        {"fitted: perhaps",
         "3:9+7 error: \"fitted\" must be yes or no, not \"perhaps\"\n"
         "  write yes or no; leave the value empty as long as nobody knows\n"},
        {"fitted: {a: b}",
         "3:9+6 error: \"fitted\" must be yes or no, not a mapping\n"
         "  write one value; a text with a colon or braces in it goes in quotes\n"},
    };
    struct bench *bench = *state;

    rows_check(state, ROWS(rows), BEFORE);
    for (size_t i = 0; i < 7; i++) {
        bench_read(bench, &table, text_format(bench->arena, BEFORE "fitted: %s", yes[i]));
        assert_non_null(strstr(told(bench), "  write yes\n"));
        bench_read(bench, &table, text_format(bench->arena, BEFORE "fitted: %s", no[i]));
        assert_non_null(strstr(told(bench), "  write no\n"));
    }
}

static void test_dates(void **state) {
    static const char *const remedies[][2] = {
        {"30.04.2027", "write 2027-04-30"}, {"3.4.2027", "write 2027-04-03"},
        {"2027/04", "write 2027-04"},       {"04-2027", "write 2027-04"},
        {"4/2027", "write 2027-04"},        {"2027.4.3", "write 2027-04-03"},
        {"2027-4", "write 2027-04"},        {"4/30/2027", "write 2027-04-30"},
        {"30/4/2027", "write 2027-04-30"},  {"5/5/2027", "write 2027-05-05"},
        {"30 04 2027", "write 2027-04-30"},
        {"2027-02-30", "look at a calendar: there is no such day"},
        {"31.04.2027", "look at a calendar: there is no such day"},
        {"3/4/2027", GENERAL_REMEDY},
        {"04/27", GENERAL_REMEDY},
        {"April", GENERAL_REMEDY},
        {"1.2.3.4", GENERAL_REMEDY},
        {"1850", GENERAL_REMEDY},
        {"2027-13", GENERAL_REMEDY},
    };
    struct bench *bench = *state;

    for (size_t i = 0; i < sizeof remedies / sizeof remedies[0]; i++) {
        const char *written = remedies[i][0];
        bench_read(bench, &table, text_format(bench->arena, BEFORE "due: %s", written));
        assert_string_equal(
            told(bench), text_format(bench->arena,
                                     "3:6+%zu error: \"due\" must be a date such as 2027-04-30, "
                                     "2027-04 or 2027, not \"%s\"\n  %s\n",
                                     strlen(written), written, remedies[i][1]));
    }
}

static void test_lists(void **state) {
    static const struct row rows[] = {
        {"steps: saloon",
         "3:8+6 error: \"steps\" must be a list, not the text \"saloon\"\n"
         "  write it as a list: [saloon]\n"},
        {"zones: {a: b}",
         "3:8+6 error: \"zones\" must be a list, not a mapping\n"
         "  write the texts as a list: [one, two]\n"},
        {"uses: {a: b}",
         "3:7+6 error: \"uses\" must be a list, not a mapping\n"
         "  write the texts as a list: [one, two]\n"},
        {"zones: [salon]",
         "3:9+5 error: \"zones\" cannot be \"salon\"\n  did you mean \"saloon\"?\n"},
        {"zones: [x, cockpit]",
         "3:9+1 error: \"zones\" cannot be \"x\"\n"
         "  write one of: cockpit, saloon, engine_space\n"},
        {"zones: [cockpit, saloon, cockpit]",
         "3:26+7 error: \"cockpit\" stands twice in \"zones\"\n  delete one of the two\n"},
        {"uses: [a, b, \"a\"]",
         "3:14+3 error: \"a\" stands twice in \"uses\"\n  delete one of the two\n"},
        {"uses:\n- a\n-\n- ''",
         "5:2+0 error: an entry of \"uses\" is empty\n  write the text, or delete the entry\n"
         "6:3+2 error: an entry of \"uses\" is empty\n  write the text, or delete the entry\n"},
        {"uses: [x: y, [z]]",
         "3:8+4 error: an entry of \"uses\" must be a text, not a mapping\n"
         "  write one text; a text with a colon, brackets or braces in it goes in quotes\n"
         "3:14+3 error: an entry of \"uses\" must be a text, not a list\n"
         "  write one text; a text with a colon, brackets or braces in it goes in quotes\n"},
        {"uses: [null]",
         "3:8+4 error: an entry of \"uses\" is \"null\", which would be read as a text\n"
         "  leave the value empty; put it in quotes if it is the text\n"},
        {"uses: ~",
         "3:7+1 error: an entry of \"uses\" is \"~\", which would be read as a text\n"
         "  leave the value empty; put it in quotes if it is the text\n"},
    };

    rows_check(state, ROWS(rows), BEFORE);
}

#define BENCH(test) cmocka_unit_test_setup_teardown(test, bench_set_up, bench_tear_down)

int main(void) {
    const struct CMUnitTest tests[] = {
        BENCH(test_all_kinds), BENCH(test_not_given), BENCH(test_empty_list),
        BENCH(test_field_text), BENCH(test_keys), BENCH(test_article), BENCH(test_all_is_told),
        BENCH(test_texts), BENCH(test_numbers), BENCH(test_answers), BENCH(test_dates),
        BENCH(test_lists)};
    return cmocka_run_group_tests_name("yaml_fields", tests, NULL, NULL) != 0;
}
