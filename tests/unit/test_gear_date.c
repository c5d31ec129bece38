/* test_gear_date.c - the day until which gear is good: stamps, computed dates, the
 * base's own months, and the first of several. */
#include "boat_case.h"

#include "gear_date.h"

static struct base_record base;
static struct interval intervals[2];

static struct interval months_of(enum item_key item, int64_t milli)
{
    return (struct interval){.item = {.value = item}, .months = {.milli = milli, .given = true}};
}

/* A base that reads months so and has these months for the item, if any. */
static const struct base_record *base_of(enum month_means month_means, enum item_key item,
                                         int months)
{
    intervals[0] = months_of(item, (int64_t)months * 1000);
    base = (struct base_record){.month_means = {.value = month_means}, .intervals = intervals,
                                .interval_count = item == ITEM_NONE ? 0 : 1};
    return &base;
}

static const struct equipment *piece_of(const char *fields)
{
    const struct boat *boat = gear_of(text_format(test.arena, "zone: saloon, tag: %s, %s",
                                                  "E1", fields));
    assert_true(boat->equipment_count >= 1);
    return &boat->equipment[0];
}

/* The last valid day; "" when it is not known. */
static const char *last_of(const char *fields, const struct base_record *of)
{
    struct gear_date date;
    const struct equipment *piece = piece_of(fields);
    bool known = gear_date(piece, of, &date);
    assert_int_equal(known, date.known);
    assert_non_null(date.rule);
    return known ? date_text(test.arena, date.last) : "";
}

static const struct {
    const char *fields, *last;
} rows[] = {
    /* a raft's contents are a second stamp of the raft */
    {"item: liferaft, service_due: 2026-05-31, expires: 2026-02", "2026-02-28"},
    {"item: hydrostatic_release, installed: 2024-08-01, made: 2022-08", "2026-08-01"},
    {"item: hydrostatic_release, installed: 2025-09-15, made: 2022-06", "2026-06-30"},
    {"item: fire_extinguisher, disposable: yes, rating: us 5-B:C, made: 2014", "2026-12-31"},
    {"item: fire_extinguisher, serviced: 2025-06-30", "2026-06-30"},
    {"item: lpg_hose, made: 2021", "2026-01-01"},
    /* the year of a disposable one counts, whatever month was written */
    {"item: engine_extinguisher, disposable: yes, rating: us 10-B:C, made: 2014-03",
     "2026-12-31"},
    {"item: fire_extinguisher, disposable: yes, rating: us 5-B:C, made: 2014-03-20",
     "2026-12-31"},
    {"item: fire_extinguisher, disposable: yes, rating: us 5-B:C, made: 2014, expires: 2024-06",
     "2024-06-30"},
    /* thrown away, but not of that system: its stamp or nothing */
    {"item: fire_extinguisher, disposable: yes, rating: en 34B, made: 2014", ""},
    {"item: fire_extinguisher, disposable: yes, rating: 5-B, serviced: 2025-03", ""},
    {"item: fire_extinguisher, disposable: no, rating: us 5-B:C, made: 2026-03", "2027-03-31"},
    /* raft: the stamp alone */
    {"item: liferaft, serviced: 2025-04-30, made: 2024, installed: 2025-05", ""},
    {"item: liferaft, serviced: 2025-04-30, service_due: 2028-04-30", "2028-04-30"},
    /* fitted, made: both, one, the other */
    {"item: hydrostatic_release, installed: 2025-10-05", "2027-10-05"},
    {"item: hydrostatic_release, made: 2025-10", ""},
    {"item: hydrostatic_release, installed: 2025-10-05, made: 2023-10-05", "2027-10-05"},
    {"item: hydrostatic_release, installed: 2025-10-05, made: 2023-10-04", "2027-10-04"},
    /* a stamp beats what is computed, earlier or later */
    {"item: hydrostatic_release, installed: 2024-08-01, expires: 2027-01", "2027-01-31"},
    {"item: fire_extinguisher, serviced: 2026-09, service_due: 2027-01-15", "2027-01-15"},
    {"item: flares, made: 2024-02, expires: 2028-06", "2028-06-30"},
    /* of two stamps the earlier */
    {"item: epirb, expires: 2030-05, service_due: 2028-11", "2028-11-30"},
    {"item: epirb, expires: 2028-11-30, service_due: 2028-11", "2028-11-30"},
    /* service, else making */
    {"item: lifejacket, serviced: 2026-03-15", "2027-03-15"},
    {"item: lifejacket, made: 2026-05", "2027-05-31"},
    {"item: lifejacket, serviced: 2026-03, made: 2020", "2027-03-31"},
    {"item: lifejacket, installed: 2026-05", ""},
    {"item: fixed_extinguisher, serviced: 2024-02-29", "2025-02-28"},
    {"item: grab_bag, serviced: 2026", "2027-01-01"},
    {"item: water_emergency, serviced: 2026-04-30", "2027-04-30"},
    {"item: first_aid_kit, serviced: 2026-02", "2027-02-28"},
    {"item: harness_tether, serviced: 2026-02", "2027-02-28"},
    {"item: mob_light, serviced: 2026-02", "2027-02-28"},
    {"item: jackstay, installed: 2024-04, made: 2023", "2027-04-30"},
    {"item: jackstay, made: 2023-07", "2026-07-31"},
    /* age alone */
    {"item: smoke_alarm, made: 2018-02", "2028-02-29"},
    {"item: co_alarm, made: 2022-11-30", "2027-11-30"},
    {"item: gas_alarm, made: 2022", "2027-01-01"},
    {"item: gas_alarm, installed: 2024", ""},
    {"item: flares, made: 2023-11", "2026-11-30"},
    /* no months of the trade's: the stamp alone */
    {"item: epirb, made: 2024-05", ""},
    {"item: sart, installed: 2024-05", ""},
    {"item: personal_beacon, expires: 2029-08", "2029-08-31"},
    {"item: torch, serviced: 2026-01", ""},
    {"item: torch, expires: 2027", "2027-01-01"},
    {"item: lifejacket", ""},
};

static void each_rule_finds_its_last_day(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        const char *last = last_of(rows[i].fields, NULL);
        if (strcmp(last, rows[i].last) != 0)
            fail_msg("%s: \"%s\", not \"%s\"", rows[i].fields, last, rows[i].last);
    }
}

static void a_base_may_read_months_as_their_first_day(void **state)
{
    (void)state;
    const struct base_record *start = base_of(MONTH_MEANS_START, ITEM_NONE, 0);
    assert_string_equal(last_of("item: flares, expires: 2027-05", start), "2027-05-01");
    assert_string_equal(last_of("item: lifejacket, serviced: 2026-02", start), "2027-02-01");
    assert_string_equal(last_of("item: lifejacket, serviced: 2026-02-28", start), "2027-02-28");
    assert_string_equal(last_of("item: hydrostatic_release, installed: 2025-09-15, made: 2022-06",
                                start), "2026-06-01");
    assert_string_equal(last_of("item: flares, expires: 2027-05",
                                base_of(MONTH_MEANS_END, ITEM_NONE, 0)),
                        "2027-05-31");
}

/* The ceiling for flares in the United States is a base's to set. */
static void a_base_s_own_months_go_before_the_trade_s(void **state)
{
    (void)state;
    assert_string_equal(last_of("item: flares, made: 2022-11",
                                base_of(MONTH_MEANS_UNSAID, ITEM_flares, 42)),
                        "2026-05-31");
    assert_string_equal(last_of("item: lifejacket, serviced: 2026-01-31",
                                base_of(MONTH_MEANS_UNSAID, ITEM_lifejacket, 6)), "2026-07-31");
    assert_string_equal(last_of("item: lifejacket, serviced: 2026-01-31",
                                base_of(MONTH_MEANS_UNSAID, ITEM_flares, 6)), "2027-01-31");
    assert_string_equal(last_of("item: epirb, made: 2024-05",
                                base_of(MONTH_MEANS_UNSAID, ITEM_epirb, 60)),
                        "2029-05-31");
    assert_string_equal(last_of("item: torch, installed: 2026-01, made: 2020",
                                base_of(MONTH_MEANS_UNSAID, ITEM_torch, 12)), "2027-01-31");
    assert_string_equal(last_of("item: flares, expires: 2027-01, made: 2026-01",
                                base_of(MONTH_MEANS_UNSAID, ITEM_flares, 42)), "2027-01-31");
}

/* ... but not the maker's limit of age, a raft's stamp, or a disposable one's life. */
static void some_rules_are_not_the_base_s_to_change(void **state)
{
    (void)state;
    const struct base_record *releases = base_of(MONTH_MEANS_UNSAID, ITEM_hydrostatic_release, 36);
    assert_string_equal(last_of("item: hydrostatic_release, installed: 2025-09-15", releases),
                        "2028-09-15");
    assert_string_equal(last_of("item: hydrostatic_release, installed: 2025-09-15, made: 2022-06",
                                releases), "2026-06-30");
    assert_string_equal(last_of("item: liferaft, serviced: 2025-04-30",
                                base_of(MONTH_MEANS_UNSAID, ITEM_liferaft, 12)), "");
    const struct base_record *longer = base_of(MONTH_MEANS_UNSAID, ITEM_fire_extinguisher, 24);
    assert_string_equal(last_of("item: fire_extinguisher, serviced: 2026-03-01", longer),
                        "2028-03-01");
    assert_string_equal(last_of("item: fire_extinguisher, disposable: yes, rating: us 5-B:C, "
                                "made: 2014", longer), "2026-12-31");
    assert_string_equal(last_of("item: fire_extinguisher, disposable: yes, rating: en 34B, "
                                "serviced: 2026-03", longer), "");
}

static void the_shortest_of_a_base_s_months_holds(void **state)
{
    (void)state;
    intervals[0] = months_of(ITEM_lifejacket, 12000);
    intervals[1] = months_of(ITEM_lifejacket, 6500);   /* half a month is dropped */
    base = (struct base_record){.intervals = intervals, .interval_count = 2};
    assert_string_equal(last_of("item: lifejacket, serviced: 2026-01-31", &base), "2026-07-31");
}

static void the_finding_tells_where_it_comes_from(void **state)
{
    (void)state;
    struct gear_date date;
    const struct equipment *piece = piece_of("item: lifejacket, serviced: 2026-02");
    assert_true(gear_date(piece, base_of(MONTH_MEANS_UNSAID, ITEM_lifejacket, 6), &date));
    assert_false(date.stamped);
    assert_int_equal(date.field, GEAR_serviced);
    assert_string_equal(gear_field_word(date.field), "serviced");
    assert_int_equal(date.months, 6);
    assert_ptr_equal(date.interval, &intervals[0]);
    assert_int_equal(date.place.line, 3);
    assert_int_equal(date.place.column, piece->serviced.place.column);
    assert_string_equal(date_text(test.arena, date.mark), "2026-08");
    assert_true(gear_date(piece, NULL, &date));
    assert_null(date.interval);
    assert_int_equal(date.months, 12);

    piece = piece_of("item: hydrostatic_release, installed: 2025-09-15, made: 2022-06");
    assert_true(gear_date(piece, NULL, &date));
    assert_int_equal(date.field, GEAR_made);
    assert_int_equal(date.months, 48);

    piece = piece_of("item: flares, expires: 2027-08, made: 2024-08");
    assert_true(gear_date(piece, NULL, &date));
    assert_true(date.stamped);
    assert_int_equal(date.field, GEAR_expires);
    assert_int_equal(date.months, 0);
    assert_int_equal(date.rule->item, ITEM_flares);

    /* of two that run out on one day the first is named */
    piece = piece_of("item: epirb, expires: 2028-11-30, service_due: 2028-11");
    assert_true(gear_date(piece, NULL, &date));
    assert_int_equal(date.field, GEAR_expires);
}

static void dates_are_read_by_their_fields(void **state)
{
    (void)state;
    const struct equipment *piece = piece_of("item: flares, expires: 2021-01, service_due: 2022-01"
                                             ", serviced: 2023-01, installed: 2024-01, "
                                             "made: 2025-01");
    static const char *const years[] = {"2021-01", "2022-01", "2023-01", "2024-01", "2025-01"};
    for (size_t i = 0; i < 5; i++)
        assert_string_equal(gear_date_field(piece, gear_date_fields[i])->text, years[i]);
    assert_int_equal(gear_date_fields[5], GEAR_FIELD_NONE);
    assert_null(gear_date_field(piece, GEAR_FIELD_NONE));
    assert_null(gear_date_field(piece, GEAR_zone));
}

/* ---- the table ---- */

static void each_row_says_why_and_on_whose_word(void **state)
{
    (void)state;
    size_t count = 0;
    for (const struct gear_rule *rule; (rule = gear_rule_at(count)) != NULL; count++) {
        assert_false(text_empty(rule->why));
        assert_false(text_empty(rule->source));
        assert_true(rule->months == 0 || rule->from[0] != GEAR_FIELD_NONE);
        assert_true(rule->from[0] != GEAR_FIELD_NONE || rule->months_fixed);
        if (rule->item == ITEM_NONE)
            assert_null(gear_rule_at(count + 1));
    }
    assert_true(count > 20);
}

static void what_must_have_a_date_is_marked(void **state)
{
    (void)state;
    static const enum item_key needed[] = {
        ITEM_engine_extinguisher, ITEM_fire_extinguisher, ITEM_fixed_extinguisher,
        ITEM_smoke_alarm, ITEM_co_alarm, ITEM_gas_alarm, ITEM_lpg_hose, ITEM_liferaft,
        ITEM_hydrostatic_release, ITEM_epirb, ITEM_personal_beacon, ITEM_sart, ITEM_flares,
        ITEM_grab_bag, ITEM_water_emergency, ITEM_first_aid_kit, ITEM_lifejacket, ITEM_NONE};
    size_t found = 0;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        struct equipment piece = {.kind = item_kind_of(item)};
        bool listed = item_among(needed, item);
        assert_int_equal(gear_rule_of(&piece)->needed, listed);
        found += listed ? 1 : 0;
    }
    assert_int_equal(found, sizeof needed / sizeof needed[0] - 1);
}

/* ---- several pieces ---- */

static struct gear_dates dates_of(const struct equipment *gear, size_t count)
{
    struct gear_dates dates = {0};
    for (size_t i = 0; i < count; i++)
        gear_dates_add(&dates, &gear[i], NULL);
    return dates;
}

static void the_first_to_run_out_is_the_date_of_all(void **state)
{
    (void)state;
    const struct boat *boat = boat_of(
        MONOHULL "equipment:\n"
        "  - {item: liferaft, tag: E1, zone: coachroof, service_due: 2026-04-30}\n"
        "  - {item: hydrostatic_release, tag: E2, zone: coachroof, installed: 2024-08-01}\n"
        "  - {item: flares, tag: E3, zone: saloon, expires: 2026-05}\n"
        "  - {item: epirb, tag: E4, zone: saloon, expires: 2029-11}\n"
        "  - {item: grab_bag, tag: E1, zone: saloon}\n"
        "  - {item: torch, tag: C2, zone: saloon}\n");
    static const struct {
        size_t from, count, undated;
        const char *first, *piece;    /* NULL: none is dated */
    } cases[] = {{0, 6, 1, "2026-04-30", "E1"}, {1, 3, 0, "2026-05-31", "E3"},
                 {4, 2, 1, NULL, NULL}, {0, 0, 0, NULL, NULL}};
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        struct gear_dates dates = dates_of(boat->equipment + cases[i].from, cases[i].count);
        assert_int_equal(dates.undated, cases[i].undated);
        assert_int_equal(dates.first.known, cases[i].first != NULL);
        if (!dates.first.known) {
            assert_null(dates.piece);
            continue;
        }
        assert_string_equal(date_text(test.arena, dates.first.last), cases[i].first);
        assert_string_equal(dates.piece->tag.text, cases[i].piece);
    }
}

static void a_date_is_shown_as_short_as_it_says_the_same(void **state)
{
    (void)state;
    static const struct {
        const char *fields;
        enum month_means month_means;
        const char *shown;
    } cases[] = {
        {"item: flares, expires: 2027-08", MONTH_MEANS_END, "2027-08"},
        {"item: flares, expires: 2027-08", MONTH_MEANS_START, "2027-08-01"},
        {"item: flares, expires: 2027-08-31", MONTH_MEANS_END, "2027-08-31"},
        {"item: flares, expires: 2027", MONTH_MEANS_END, "2027-01-01"},
        {"item: lifejacket, serviced: 2026-02", MONTH_MEANS_END, "2027-02"},
        {"item: fire_extinguisher, disposable: yes, rating: us 5-B, made: 2014", MONTH_MEANS_END,
         "2026-12-31"},
    };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        struct gear_date date;
        assert_true(gear_date(piece_of(cases[i].fields),
                              base_of(cases[i].month_means, ITEM_NONE, 0), &date));
        assert_string_equal(date_text(test.arena, gear_date_shown(&date)), cases[i].shown);
    }
}

/* The specimens that stand for well-kept boats lack no date; the poor one does. */
static void the_specimen_fleet_has_the_dates_that_are_needed(void **state)
{
    (void)state;
    static const struct {
        const char *boat, *first;
        size_t unknown;
    } fleet[] = {
        {"tamarisk", "2027-03-31", 0}, {"samphire", "2026-12-31", 0}, {"bramble", "2026-12-31", 1}};
    for (size_t i = 0; i < sizeof fleet / sizeof fleet[0]; i++) {
        struct source *source = NULL;
        const char *path = text_format(test.arena, "tests/fleet/boats/%s.yaml", fleet[i].boat);
        assert_int_equal(source_read(test.arena, path, (size_t)256 * 1024, &source), SOURCE_READ);
        const struct boat *boat = boat_read(source, fleet[i].boat, test.arena, test.problems,
                                            &sound);
        assert_true(sound);
        struct gear_dates dates = dates_of(boat->equipment, boat->equipment_count);
        assert_string_equal(date_text(test.arena, dates.first.last), fleet[i].first);
        assert_int_equal(dates.undated, fleet[i].unknown);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(each_rule_finds_its_last_day),
        TEST(a_base_may_read_months_as_their_first_day),
        TEST(a_base_s_own_months_go_before_the_trade_s),
        TEST(some_rules_are_not_the_base_s_to_change),
        TEST(the_shortest_of_a_base_s_months_holds),
        TEST(the_finding_tells_where_it_comes_from),
        TEST(dates_are_read_by_their_fields),
        TEST(each_row_says_why_and_on_whose_word),
        TEST(what_must_have_a_date_is_marked),
        TEST(the_first_to_run_out_is_the_date_of_all),
        TEST(a_date_is_shown_as_short_as_it_says_the_same),
        TEST(the_specimen_fleet_has_the_dates_that_are_needed),
    };

    return cmocka_run_group_tests_name("gear_date", tests, NULL, NULL) != 0;
}
