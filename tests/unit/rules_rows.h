/* rules_rows.h - checks of the room rules as rows: for each a small record in which it
 * speaks, and one in which it is silent (shared by the tests of its families).
 *
 * A family's test file holds one table and hands it to rows_run, which makes two tests
 * of each row. test_rules_all.c goes over all tables and names checks without a row. */
#ifndef MAYDECK_TEST_RULES_ROWS_H
#define MAYDECK_TEST_RULES_ROWS_H

#include "rules_case.h"

#include "boat.h"
#include "item.h"

/* ---- pieces of boat files ---- */

/* Line 1 of a boat's file; `facts` begins with a comma. */
#define BOAT_WITH(facts) \
    "boat: {name: Ana, hull: monohull, rig: sail, loa_m: 12, beam_m: 4, persons_max: 4, " \
    "draught_m: 1.8, lay_down_place: saloon floor" facts "}\n"
#define BOAT BOAT_WITH("")
#define CATAMARAN \
    "boat: {name: Ana, hull: catamaran, rig: sail, loa_m: 12, beam_m: 6, persons_max: 4, " \
    "draught_m: 1.1, lay_down_place: saloon floor}\n"
#define SPECIMEN BOAT_WITH(", specimen: yes")

/* One line each: the head of the list, then a piece of it. */
#define GEAR "equipment:\n"
#define PIECE(text) "  - {item: " text "}\n"
#define GAS(carried) "gas: {carried: " carried "}\n"
#define NOT_FITTED(items) "not_fitted: [" items "]\n"
/* `facts` begins with a comma. */
#define RADIO(facts) "radio: {tag: E1, zone: navigation_station, side: port" facts "}\n"

/* ---- pieces of a base's file ---- */

#define CENTRE_DATED(day) \
    ", call: SKERRY COASTGUARD, channel: \"67\", phone: \"+999 00 000 001\"" day
#define CENTRE CENTRE_DATED(", checked_on: 2026-11-02")
/* Lines 1 to 3; `centre` and `area` begin with a comma, `rest` is whole lines. */
#define CLOCK "clocks:\n  - {offset: +2}\n"
#define BASE_WITH(centre, area, rest) \
    "base: {name: Lee, specimen: yes, phone_24h: \"+999 00 000 000\"}\n" \
    "rescue_centre: {name: Skerry Sound" centre "}\n" \
    "cruising_area: {latitude: north, longitude: east" area "}\n" rest CLOCK
#define BASE BASE_WITH(CENTRE, ", sea_area: A1", "")

/* ---- rows ---- */

struct rule_case {
    const char *boat;      /* her file; NULL: the check looks at the base alone */
    const char *base;      /* the base's file; NULL: BASE */
    const int *kg;         /* body masses of the people that come; NULL: not told */
    size_t persons;        /* how many come; 0: not told */
    const struct approvable *approvables;   /* NULL: row_approvables */
    size_t approvable_count;
};

struct rule_row {
    const char *check;
    struct rule_case tells;
    int line;              /* of the boat's file, else of the base's, where it speaks */
    const char *words;     /* a part of what it says, without the tags of file_tagged */
    struct rule_case silent;
};

struct rule_table {
    rule_family *family;
    const struct rule_row *rows;
    size_t count;
};

#define RULE_TABLE(function, rows) {function, rows, sizeof rows / sizeof *rows}

/* The tables of all families, each in the file of that family. */
#define RULE_TABLES(X) \
    X(approval) X(base) X(beacon) X(capacity) X(conflict) X(contact) X(date) X(fact) \
    X(fire) X(gas) X(engine) X(identity) X(name) X(opening) X(quotes) X(radio_gear) \
    X(rescue) X(silence) X(tag) X(unrecorded) X(place)
#define RULE_TABLE_DECLARE(name) extern const struct rule_table rule_table_##name;
RULE_TABLES(RULE_TABLE_DECLARE)
#undef RULE_TABLE_DECLARE

/* Tags of the pieces that are written without one: of the class's letter, the first with
 * this number, the next with one more and so on, whatever their letters. */
enum { TAG_FIRST = 11 };

/* The boat's file with a tag and an exact place for each piece that is written without. */
static inline const char *file_tagged(const char *text)
{
    static const char start[] = "  - {item: ";
    struct text_builder out = text_builder_in(test.arena);
    size_t number = TAG_FIRST;
    for (size_t length; *text != '\0'; text += length) {
        length = strcspn(text, "\n") + 1;
        const char *line = arena_copy(test.arena, text, length);
        const char *rest = text_begins(line, start) ? line + strlen(start) : "";
        const char *item = arena_copy(test.arena, rest, strcspn(rest, ","));
        if (strstr(rest, "zone: ") == NULL || strstr(rest, "tag: ") != NULL) {
            text_add(&out, line);
            continue;
        }
        text_add_format(&out, "%s%s, tag: %c%zu, spot: place %zu%s", start, item,
                        (char)item_find(item)->class, number, number, rest + strlen(item));
        number++;
    }
    return out.at;
}

/* The message without the tags that file_tagged gave. */
static inline const char *tags_left_out(const char *what)
{
    struct text_builder out = text_builder_in(test.arena);
    for (; *what != '\0'; what++) {
        if (*what == ' ' && strchr("FEC", what[1]) != NULL && what[1] != '\0' &&
            what[2] == '1' && what[3] >= '1' && what[3] <= '9')
            what += 3;
        else
            text_add_bytes(&out, what, 1);
    }
    return out.at;
}

/* What approvals can be of: of a language in which no card is printed too. */
static const struct approvable row_approvables[] = {
    {.card = "flooding", .language = "en", .fingerprint = "0123-4567-89AB-CDEF", .hung = true},
    {.card = "gas_leak", .language = "en", .fingerprint = "FEDC-BA98-7654-3210", .hung = true},
    {.card = "index", .language = "en", .fingerprint = "0000-0000-0000-0001"},
    {.card = "flooding", .language = "xx", .fingerprint = "0000-0000-0000-0002"}};

/* Today is 2026-11-20; the charter ends a week later. */
static inline void case_run(rule_family *family, const struct rule_case *one)
{
    static const struct date today = {2026, 11, 20}, end = {2026, 11, 27};
    bool boat_sound = true, base_sound = true;
    struct rules_input input = {
        .today = today, .from = today, .to = end,
        .crew = {.kg = one->kg, .count = one->persons},
        .approvables = one->approvables == NULL ? row_approvables : one->approvables,
        .approvable_count = one->approvables == NULL
                                ? sizeof row_approvables / sizeof *row_approvables
                                : one->approvable_count,
        .base = base_read(file_of("base.yaml", one->base == NULL ? BASE : one->base),
                          test.arena, test.problems, &base_sound)};
    if (one->boat != NULL)
        input.boat = boat_read(file_of("ana.yaml", file_tagged(one->boat)), "ana", test.arena,
                               test.problems, &boat_sound);
    if (!boat_sound || !base_sound)
        problems_show();
    assert_true(boat_sound);
    assert_true(base_sound);
    assert_non_null(input.base);
    test.problems = problems_new(test.arena);
    struct rule_run run = {.in = &input, .arena = test.arena, .problems = test.problems,
                           .used = arena_array(test.arena, SILENCES_MOST, sizeof *run.used)};
    family(&run);
}

/* What a generated test is given. */
struct row_case {
    rule_family *family;
    const struct rule_row *row;
};

static inline void row_tells(void **state)
{
    const struct row_case *one = *state;
    (void)test_begin(NULL);
    case_run(one->family, &one->row->tells);
    const char *what = tags_left_out(expect_told_at(one->row->check, one->row->line));
    if (strstr(what, one->row->words) == NULL)
        fail_msg("`%s` does not say `%s`", what, one->row->words);
    (void)test_end(NULL);
}

static inline void row_is_silent(void **state)
{
    const struct row_case *one = *state;
    (void)test_begin(NULL);
    case_run(one->family, &one->row->silent);
    if (told_by(one->row->check) != NULL)
        problems_show();
    assert_null(told_by(one->row->check));
    (void)test_end(NULL);
}

/* Two tests a row, named by its check and number. */
static inline int rows_run(const struct rule_table *table)
{
    struct arena *arena = arena_new((size_t)1024 * 1024);
    struct CMUnitTest *tests = arena_array(arena, 2 * table->count, sizeof *tests);
    struct row_case *cases = arena_array(arena, table->count, sizeof *cases);

    for (size_t i = 0; i < table->count; i++) {
        const char *check = table->rows[i].check;
        cases[i] = (struct row_case){table->family, &table->rows[i]};
        tests[2 * i] = (struct CMUnitTest){
            .name = text_format(arena, "%s_tells_%zu", check, i + 1),
            .test_func = row_tells, .initial_state = &cases[i]};
        tests[2 * i + 1] = (struct CMUnitTest){
            .name = text_format(arena, "%s_silent_%zu", check, i + 1),
            .test_func = row_is_silent, .initial_state = &cases[i]};
    }
    int failed = _cmocka_run_group_tests("rules", tests, 2 * table->count, NULL, NULL);
    arena_free(arena);
    return failed;
}

#endif
