/* test_register_changes.c - why a card is another than the one that hangs: each kind of change has
 * its reason, on the cards that it changes and on no other, and no card is another in silence. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <stdio.h>
#include <string.h>

#include "app_case.h"
#include "card_fixture.h"
#include "fingerprint.h"
#include "register.h"
#include "text.h"

#define BOAT "tests/islands/boats/thrift.yaml"
enum { SHEETS_MOST = 64 };

/* A set as it was printed: codes and contents by the id of the sheet. */
struct said_set {
    const char *ids[SHEETS_MOST], *codes[SHEETS_MOST], *contents[SHEETS_MOST];
    size_t count;
};

static struct said_set set_said(void)
{
    struct said_set said = {0};
    const struct compose_input input = case_input(&test, false);
    const struct sheet_set *set = case_compose(&test, false);
    for (size_t i = 0; i < set->count; i++) {
        if (set->sheets[i]->held)
            continue;
        assert_true(said.count < SHEETS_MOST);
        said.ids[said.count] = set->sheets[i]->id;
        said.codes[said.count] = sheet_footer(set->sheets[i])->code;
        said.contents[said.count++] = register_content(&input, set->sheets[i], test.arena);
    }
    return said;
}

static const char *file_text(const char *path)
{
    return case_file_content(test.arena, path);
}

/* The first `from` becomes `to`. */
static const char *changed(const char *text, const char *from, const char *to)
{
    const char *at = strstr(text, from);
    if (at == NULL)
        fail_msg("\"%s\" does not stand in the file", from);
    return text_format(test.arena, "%.*s%s%s", (int)(at - text), text, to, at + strlen(from));
}

static struct said_set boat_said(const char *text)
{
    case_boat(&test, text);
    return set_said();
}

static bool told(const struct register_changes *changes, const char *reason)
{
    for (size_t i = 0; i < changes->count; i++)
        if (strcmp(changes->at[i], reason) == 0)
            return true;
    return false;
}

static void changes_show(const char *id, const struct register_changes *changes)
{
    for (size_t i = 0; i < changes->count; i++)
        print_message("    %s: %s\n", id, changes->at[i]);
}

static void reason_check(const char *id, const struct register_changes *changes,
                         const char *reason)
{
    if (told(changes, reason) && changes->count == 1)
        return;
    changes_show(id, changes);
    fail_msg("%s: expected only \"%s\"", id, reason);
}

/* Each sheet that is another has this reason and no other; how many are. */
static size_t each_told(const struct said_set *old, const struct said_set *now,
                        const char *reason)
{
    size_t count = 0;
    for (size_t i = 0; i < old->count; i++)
        for (size_t k = 0; k < now->count; k++) {
            if (strcmp(old->ids[i], now->ids[k]) != 0 ||
                strcmp(old->codes[i], now->codes[k]) == 0)
                continue;
            struct register_changes changes =
                register_changes(old->contents[i], now->contents[k], test.arena);
            reason_check(old->ids[i], &changes, reason);
            count++;
        }
    return count;
}

static void one_change(const char *from, const char *to, const char *reason)
{
    const char *text = file_text(BOAT);
    struct said_set old = boat_said(text), now = boat_said(changed(text, from, to));
    if (each_told(&old, &now, reason) == 0)
        fail_msg("no card is another: %s", reason);
}

/* ---- the record ---- */

static void gear_that_moved_is_told_by_its_tag(void **state)
{
    (void)state;
    one_change("tag: E6, zone: flybridge, side: port, spot: red tub",
               "tag: E6, zone: cockpit_locker, side: starboard, spot: top shelf",
               "Flares E6 moved from Upper helm, port, red tub to Cockpit locker, starboard, top "
               "shelf");
}

static void each_way_of_handling_is_told(void **state)
{
    (void)state;
    one_change("how: hold both, stop", "how: pull both, stop",
               "Engine stop C1: how changed from \"hold both\" to \"pull both\"");
    one_change("handle: {zone: cockpit_locker, side: port}", "handle: {zone: cockpit, side: port}",
               "Hand pump C12: handle changed from \"zone cockpit_locker_port, side port\" to "
               "\"zone cockpit, side port\"");
    one_change("tag: E9, zone", "tag: E9, behind: canvas flap, zone",
               "Knife E9: behind is recorded now: \"canvas flap\"");
}

static void gear_that_came_or_went_is_told(void **state)
{
    (void)state;
    one_change("  - {item: boathook, tag: C40, zone: side_deck, side: starboard, spot: on the "
               "rail}\n", "", "Boathook C40 taken off the boat");
    one_change("  # openings in the hull\n",
               "  - {item: boathook, tag: C42, zone: cockpit, side: port}\n  # openings\n",
               "Boathook C42 added: Cockpit, port");
}

static void a_date_is_told_where_the_foot_tells_it(void **state)
{
    (void)state;
    one_change("serial: \"20771\"}", "serial: \"20771\", expires: 2027-02}",
               "Raft E3: good until 2027-02, it was 2027-10");
}

static void identities_are_told_once_however_they_are_said(void **state)
{
    (void)state;
    one_change("call_sign: QTHR5", "call_sign: QTHR6",
               "radio: call sign changed from \"QTHR5\" to \"QTHR6\"");
    one_change("mmsi: \"200016210\"", "mmsi: \"200016220\"",
               "radio: mmsi changed from \"200016210\" to \"200016220\"");
    one_change("  name: Thrift", "  name: Fescue",
               "boat: name changed from \"Thrift\" to \"Fescue\"");
}

static void a_fact_that_came_or_went_is_told(void **state)
{
    (void)state;
    const char *with = file_text(BOAT);
    const char *without = changed(with, "  lay_down_place: saloon floor\n", "");
    struct said_set full = boat_said(with), less = boat_said(without);
    assert_true(each_told(&less, &full,
                          "boat: lay down place is recorded now: \"saloon floor\"") > 0);
    assert_true(each_told(&full, &less, "boat: lay down place is no longer recorded (it was "
                                        "\"saloon floor\")") > 0);
}

static void numbers_to_ring_are_told(void **state)
{
    (void)state;
    const char *base = file_text("tests/fleet/base.yaml");
    struct said_set old = boat_said(BOAT);
    case_base(&test, changed(base, "+999 00 000 001", "+999 00 000 009"));
    struct said_set now = boat_said(BOAT);
    assert_true(each_told(&old, &now, "base: rescue centre's phone changed from "
                                      "\"+999 00 000 001\" to \"+999 00 000 009\"") > 20);
    case_base(&test, "tests/fleet/base.yaml");
}

/* ---- approval, rules of the base ---- */

static const char *fingerprint_of(const char *key)
{
    for (size_t i = 0; i < test.procedures.count; i++)
        if (text_equal(test.procedures.rows[i]->key.text, key))
            return procedure_fingerprint(test.procedures.rows[i], test.authorities, test.words,
                                         test.arena);
    fail_msg("there is no procedure %s", key);
    return "";
}

static void an_approval_that_begins_and_ends_is_told(void **state)
{
    (void)state;
    const char *base = changed(
        file_text("tests/fleet/base.yaml"), "approvals: []",
        text_format(test.arena, "approvals:\n  - {card: flooding, text: %s, initials: QP, "
                    "qualification: skipper, date: 2026-11-01, until: 2027-03-31}",
                    fingerprint_of("flooding")));
    struct said_set without = boat_said(BOAT);
    case_base(&test, base);
    struct said_set with = boat_said(BOAT);
    test.today = (struct date){2027, 4, 1};
    struct said_set after = boat_said(BOAT);
    test.today = (struct date){2026, 11, 25};
    case_base(&test, "tests/fleet/base.yaml");
    assert_int_equal(each_told(&without, &with,
                               "it is approved now (QP, skipper, 2026-11-01 to 2027-03-31)"), 1);
    assert_int_equal(each_told(&with, &after, "its approval no longer stands (QP, skipper, "
                                              "2026-11-01 to 2027-03-31)"), 1);
}

static void a_rule_of_the_base_is_told(void **state)
{
    (void)state;
    struct said_set old = boat_said(BOAT);
    case_base(&test, changed(file_text("tests/fleet/base.yaml"), "lines: []",
                             "lines:\n  - {card: flooding, say: Call the harbour first., "
                             "source: base, does: []}"));
    struct said_set now = boat_said(BOAT);
    case_base(&test, "tests/fleet/base.yaml");
    assert_int_equal(each_told(&old, &now, "lines of the base: words changed: "
                                           "\"Call the harbour first.\" is new"), 1);
}

/* ---- no card in silence ---- */

/* Where the value of a key begins in the line; NULL: it has none. */
static const char *value_at(const char *line, const char *key)
{
    const char *at = strstr(line, key), *end = strchr(line, '\n');
    return at == NULL || (end != NULL && at > end) ? NULL : at + strlen(key);
}

/* The file with other words of the spot of the piece in that line. */
static const char *spot_changed(const char *text, const char *line)
{
    const char *zone = value_at(line, " zone: "), *from = value_at(line, "from: {");
    const char *spot = value_at(line, ", spot: ");
    if (spot != NULL && (from == NULL || spot < from))
        return text_format(test.arena, "%.*sq %s", (int)(spot - text), text, spot);
    zone += strcspn(zone, ",}");
    return text_format(test.arena, "%.*s, spot: aft corner%s", (int)(zone - text), text, zone);
}

/* Of each piece that lies elsewhere now every card that is another says so, and nothing more. */
static void each_piece_that_moves_is_told_by_itself(void **state)
{
    (void)state;
    const char *text = file_text(BOAT);
    struct said_set old = boat_said(text);
    size_t pieces = 0, others = 0;
    for (const char *line = strstr(text, "  - {item: "); line != NULL;
         line = strstr(line + 1, "\n  - {item: ")) {
        const char *tag = value_at(line + 1, "tag: ");
        tag = arena_copy(test.arena, tag, strcspn(tag, ","));
        struct said_set now = boat_said(spot_changed(text, line + 1));
        pieces++;
        for (size_t i = 0; i < old.count; i++) {
            if (strcmp(old.codes[i], now.codes[i]) == 0)
                continue;
            struct register_changes changes =
                register_changes(old.contents[i], now.contents[i], test.arena);
            bool moved = changes.count == 1 &&
                         strstr(changes.at[0], text_format(test.arena, " %s moved from ", tag));
            if (!moved) {
                changes_show(old.ids[i], &changes);
                fail_msg("%s: that %s moved is not all that is told", old.ids[i], tag);
            }
            others++;
        }
    }
    assert_true(pieces > 60);
    assert_true(others > 100);
}

/* ---- procedures ---- */

#define LOGIC "steps:\n" \
    "  - {id: look, practice: yes}\n" \
    "  - {id: cut, practice: yes, uses: [knife]}\n" \
    "  - {id: stop, practice: yes}\n" \
    "never: [{id: haul, sources: [S5]}]\n"
#define TEXTS(look, stop, never) \
    "steps:\n  look: {act: \"" look "\"}\n  cut: {act: \"**CUT** it.\"}\n" \
    "  stop: {act: \"" stop "\"}\nnever:\n  haul: " never "\n"

static struct said_set procedure_said(const char *logic, const char *texts)
{
    const char *const all[] = {case_procedure_text(&test, "net", 40, logic, texts), NULL};
    case_procedures(&test, all);
    return boat_said(BOAT);
}

static void procedure_change(const char *logic, const char *texts, const char *reason)
{
    struct said_set old = procedure_said(LOGIC, TEXTS("**LOOK.**", "**STOP.**", "haul it in."));
    struct said_set now = procedure_said(logic, texts);
    assert_int_equal(each_told(&old, &now, reason), 1);
}

static void what_changed_in_a_procedure_is_told_by_its_step(void **state)
{
    (void)state;
    procedure_change(LOGIC, TEXTS("**LOOK.**", "**STOP** at once.", "haul it in."),
                     "procedure changed: step 3: \"STOP.\" -> \"STOP at once.\"");
    procedure_change(LOGIC, TEXTS("**LOOK.**", "**STOP.**", "pull it in."),
                     "procedure changed: never: words changed: \"haul it in.\" -> "
                     "\"pull it in.\"");
    procedure_change("steps:\n"
                     "  - {id: look, practice: yes}\n"
                     "  - {id: cut, practice: yes, uses: [knife]}\n"
                     "never: [{id: haul, sources: [S5]}]\n",
                     "steps:\n  look: {act: \"**LOOK.**\"}\n  cut: {act: \"**CUT** it.\"}\n"
                     "never:\n  haul: haul it in.\n",
                     "procedure changed: step 3 (stop) is gone");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(gear_that_moved_is_told_by_its_tag),
        cmocka_unit_test(each_way_of_handling_is_told),
        cmocka_unit_test(gear_that_came_or_went_is_told),
        cmocka_unit_test(a_date_is_told_where_the_foot_tells_it),
        cmocka_unit_test(identities_are_told_once_however_they_are_said),
        cmocka_unit_test(a_fact_that_came_or_went_is_told),
        cmocka_unit_test(numbers_to_ring_are_told),
        cmocka_unit_test(an_approval_that_begins_and_ends_is_told),
        cmocka_unit_test(a_rule_of_the_base_is_told),
        cmocka_unit_test(each_piece_that_moves_is_told_by_itself),
        cmocka_unit_test(what_changed_in_a_procedure_is_told_by_its_step),
    };
    return cmocka_run_group_tests(tests, set_up, tear_down);
}
