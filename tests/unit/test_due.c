/* test_due.c - every date of records in one list, and as a calendar that other programs read. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_fixture.h"
#include "due.h"
#include "text.h"

#define GEAR \
    "  - {item: liferaft, tag: E2, zone: coachroof, side: port, service_due: 2027-05, " \
    "expires: 2031-02}\n" \
    "  - {item: lifejacket, tag: E10, zone: saloon, side: port, serviced: 2026-10-24}\n" \
    "  - {item: flares, tag: E1, zone: saloon, side: port}\n" \
    "  - {item: recovery_tackle, tag: E4, zone: cockpit, side: port}\n" \
    "  - {item: knife, tag: E5, zone: cockpit, side: port}\n"

static struct due_list boat_list(const char *gear, const char *more)
{
    struct due_list list = {.arena = test.arena};
    case_boat(&test, text_format(test.arena, "%s%s", case_boat_text(&test, "", gear, ""), more));
    due_of_boat(&list, test.boat, test.base, test.words);
    due_sort(&list);
    return list;
}

/* "2027-05-31 E2 service_due" */
static const char *row_told(const struct due_date *date)
{
    return text_format(test.arena, "%s %s %s", date->known ? date_text(test.arena, date->last)
                                                           : "-",
                       date->tag[0] == '\0' ? date->item : date->tag, date->field);
}

static void list_is(const struct due_list *list, const char *const *rows)
{
    for (size_t i = 0; i < list->count; i++) {
        assert_non_null(rows[i]);
        assert_string_equal(row_told(&list->rows[i]), rows[i]);
    }
    assert_null(rows[list->count]);
}

/* The line of her file in which that stands. */
static int line_that_has(const char *words)
{
    const char *at = strstr(test.boat->source->bytes, words);
    int line = 1;
    assert_non_null(at);
    for (const char *byte = test.boat->source->bytes; byte < at; byte++)
        line += *byte == '\n';
    return line;
}

static void gear_and_services_come_first_to_last(void **state)
{
    static const char *const rows[] = {"2027-05-31 E2 service_due", "2027-10-24 E10 serviced",
                                       "2031-02-28 E2 expires", "- E1 expires", "- E4 tried",
                                       NULL};
    (void)state;
    struct due_list list = boat_list(GEAR, "");
    list_is(&list, rows);
    assert_string_equal(list.rows[0].what, "service_due 2027-05");
    assert_string_equal(list.rows[0].item, "Raft");
    assert_string_equal(list.rows[0].where,
                        text_format(test.arena, "%s:%d", test.boat->source->name,
                                    line_that_has("tag: E2,")));
    assert_string_equal(list.rows[1].what, "serviced 2026-10-24, and 12 months");
    assert_false(due_past(&list.rows[0], (struct date){2027, 5, 31}));
    assert_true(due_past(&list.rows[0], (struct date){2027, 6, 1}));
    assert_true(due_past(&list.rows[3], (struct date){2026, 1, 1}));
}

static void a_silenced_check_has_its_day(void **state)
{
    static const char *const rows[] = {"2027-02-28 silenced check gear_untried until",
                                       "- E4 tried", NULL};
    (void)state;
    struct due_list list = boat_list(
        "  - {item: recovery_tackle, tag: E4, zone: cockpit, side: port}\n",
        "silenced:\n  - {check: gear_untried, reason: \"at the lay-up, then\", until: 2027-02}\n");
    list_is(&list, rows);
    assert_string_equal(list.rows[0].what, "silenced until 2027-02: at the lay-up, then");
}

/* A wrong word in her file takes that piece's dates from the list, and no others. */
static void a_piece_that_nobody_knows_has_no_date(void **state)
{
    static const char *const rows[] = {"2031-02-28 E2 expires", NULL};
    (void)state;
    struct due_list list = {.arena = test.arena};
    const char *text = case_boat_text(
        &test, "",
        "  - {item: lifefloat, tag: E3, zone: coachroof, side: port, expires: 2030-01}\n"
        "  - {item: vhf_dsc, tag: E6, zone: saloon, side: port}\n"
        "  - {item: liferaft, tag: E2, zone: coachroof, side: port, expires: 2031-02}\n", "");
    bool sound = true;
    const struct boat *boat = boat_read(source_from(test.arena, "teal.yaml", text, strlen(text)),
                                        "teal", test.arena, problems_new(test.arena), &sound);
    assert_false(sound);
    due_of_boat(&list, boat, test.base, test.words);
    due_sort(&list);
    list_is(&list, rows);
}

#define BASE \
    "base: {name: Quay, specimen: yes, phone_24h: +999 555 0100}\n" \
    "cruising_area: {latitude: north, longitude: east}\n" \
    "ashore: {fire_phone: +999 112}\n"

static struct due_list base_list(const char *centre, const char *more)
{
    struct due_list list = {.arena = test.arena};
    test.problems = problems_new(test.arena);
    case_base(&test, text_format(test.arena, BASE "rescue_centre: {name: Gull Head, channel: "
                                 "\"06\"%s}\n%s", centre, more));
    due_of_base(&list, test.base);
    due_sort(&list);
    return list;
}

static void a_base_has_dates_too(void **state)
{
    static const char *const rows[] = {
        "2026-12-31 approval of flooding until", "2027-02-28 rescue centre Gull Head checked_on",
        "2027-10-30 clock on board against UTC to", NULL};
    static const char *const silent[] = {"- rescue centre Gull Head checked_on", NULL};
    (void)state;
    struct due_list list = base_list(
        ", checked_on: 2026-02-28",
        "clocks:\n  - {offset: +2, from: 2027-03-28, to: 2027-10-30}\n"
        "  - {offset: +1, from: 2026-10-31, to: 2027-03-27}\n"
        "approvals:\n"
        "  - {card: flooding, initials: QP, qualification: skipper, date: 2025-01-01, "
        "until: 2025-12-31}\n"
        "  - {card: flooding, initials: QP, qualification: skipper, date: 2026-01-01, "
        "until: 2026-12}\n");
    list_is(&list, rows);
    list = base_list("", "");
    list_is(&list, silent);
}

/* What is wrong with it is told where the base is read. */
static void an_approval_of_nothing_or_for_ever_has_no_day(void **state)
{
    static const char *const rows[] = {"2026-12-31 approval of flooding until",
                                       "- rescue centre Gull Head checked_on", NULL};
    (void)state;
    struct due_list list = {.arena = test.arena};
    const char *text = BASE
        "rescue_centre: {name: Gull Head, channel: \"06\"}\n"
        "approvals:\n"
        "  - {card: flooding, initials: QP, qualification: skipper, date: 2026-01-01, "
        "until: 2026-12}\n"
        "  - {card: aground, initials: QP, qualification: skipper, date: 2026-01-01}\n"
        "  - {initials: QP, qualification: skipper, date: 2026-01-01, until: 2027-02}\n";
    bool sound = true;
    const struct base_record *base = base_read(source_from(test.arena, "base.yaml", text,
                                                           strlen(text)),
                                               test.arena, problems_new(test.arena), &sound);
    assert_false(sound);
    due_of_base(&list, base);
    due_sort(&list);
    list_is(&list, rows);
}

/* ---- the calendar ---- */

static const char *calendar_of(const struct due_list *list)
{
    struct text_builder out = text_builder_in(test.arena);
    text_add(&out, "");
    due_calendar(list, (struct date){2026, 11, 20}, &out);
    return out.at;
}

/* The value of a property, its lines joined as a reader joins them. */
static const char *property(const char *calendar, const char *name)
{
    struct text_builder out = text_builder_in(test.arena);
    const char *at = strstr(calendar, text_format(test.arena, "\r\n%s:", name));
    assert_non_null(at);
    for (at += strlen(name) + 3; at[0] != '\r' || at[2] == ' '; at++) {
        if (at[0] == '\r')
            at += 3;
        text_add_bytes(&out, at, 1);
    }
    return out.at;
}

static void a_calendar_has_a_day_for_each_date(void **state)
{
    (void)state;
    struct due_list list = boat_list(GEAR, "");
    const char *calendar = calendar_of(&list);
    size_t events = 0;
    for (const char *at = calendar; (at = strstr(at, "BEGIN:VEVENT\r\n")) != NULL; at++)
        events++;
    assert_int_equal(events, 3);
    assert_true(text_begins(calendar, "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    assert_true(text_ends(calendar, "END:VEVENT\r\nEND:VCALENDAR\r\n"));
    assert_string_equal(property(calendar, "DTSTAMP"), "20261120T000000Z");
    assert_string_equal(property(calendar, "DTSTART;VALUE=DATE"), "20270531");
    assert_string_equal(property(calendar, "SUMMARY"), "boat: Raft E2");
    assert_string_equal(property(calendar, "DESCRIPTION"),
                        text_format(test.arena, "last good day: service_due 2027-05\\n%s",
                                    list.rows[0].where));
    assert_string_equal(calendar, calendar_of(&list));
}

/* The same date on another day is the same event, and no two are one. */
static void an_event_keeps_its_name(void **state)
{
    (void)state;
    struct due_list list = boat_list(GEAR, "");
    const char *raft = property(calendar_of(&list), "UID");
    list.rows[0].last = (struct date){2028, 5, 31};
    assert_string_equal(property(calendar_of(&list), "UID"), raft);
    list.rows[1] = list.rows[0];
    const char *calendar = calendar_of(&list);
    assert_null(strstr(strstr(calendar, raft) + 1, raft));
}

/* Signs that have a meaning are escaped; no line is longer than 75 bytes or cut in a letter. */
static void lines_are_folded(void **state)
{
    (void)state;
    for (int length = 1; length < 200; length++) {
        struct text_builder words = text_builder_in(test.arena);
        for (int i = 0; i < length; i++)
            text_add(&words, i % 7 == 3 ? "; " : i % 5 == 0 ? "\u00FC" : i % 2 ? "\u20AC" : "a");
        struct due_date date = {.boat = "x", .tag = "", .item = words.at, .field = "f",
                                .what = "a,b\\c", .where = "", .known = true,
                                .last = {2027, 1, 2}};
        struct due_list list = {.rows = &date, .count = 1, .room = 1, .arena = test.arena};
        const char *calendar = calendar_of(&list);
        for (const char *at = calendar; *at != '\0';) {
            size_t line = strcspn(at, "\r");
            assert_true(line <= 75);
            assert_int_not_equal((unsigned char)at[0] & 0xC0, 0x80);
            if (at[0] == ' ')
                assert_int_not_equal((unsigned char)at[1] & 0xC0, 0x80);
            assert_int_equal(at[line + 1], '\n');
            at += line + 2;
        }
        struct text_builder escaped = text_builder_in(test.arena);
        text_add(&escaped, "x: ");
        for (const char *at = words.at; *at != '\0'; at++) {
            text_add(&escaped, *at == ';' ? "\\" : "");
            text_add_bytes(&escaped, at, 1);
        }
        assert_string_equal(property(calendar, "SUMMARY"), escaped.at);
        assert_string_equal(property(calendar, "DESCRIPTION"),
                            "last good day: a\\,b\\\\c\\n");
    }
}

static void no_date_is_no_calendar(void **state)
{
    (void)state;
    struct due_list list = boat_list("  - {item: flares, tag: E1, zone: saloon, side: port}\n", "");
    assert_int_equal(list.count, 1);
    assert_string_equal(calendar_of(&list), "");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(gear_and_services_come_first_to_last),
        cmocka_unit_test(a_silenced_check_has_its_day),
        cmocka_unit_test(a_piece_that_nobody_knows_has_no_date),
        cmocka_unit_test(a_base_has_dates_too),
        cmocka_unit_test(an_approval_of_nothing_or_for_ever_has_no_day),
        cmocka_unit_test(a_calendar_has_a_day_for_each_date),
        cmocka_unit_test(an_event_keeps_its_name),
        cmocka_unit_test(lines_are_folded),
        cmocka_unit_test(no_date_is_no_calendar),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
