/* test_app_findings.c - what of a message is a finding's own, and which findings are told as
 * one. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "app/findings.h"

static int findings_set_up(void **state)
{
    *state = arena_new((size_t)64 * 1024 * 1024);
    return 0;
}

static int findings_tear_down(void **state)
{
    arena_free(*state);
    return 0;
}

/* Are the common words of both the same? */
static bool alike(struct arena *arena, const char *a, const char *b)
{
    return text_equal(finding_words_of(a, arena).common, finding_words_of(b, arena).common);
}

static const char *own(struct arena *arena, const char *first, const char *text)
{
    struct finding_words before = finding_words_of(first, arena);
    struct finding_words words = finding_words_of(text, arena);
    return finding_own_words(&before, &words, arena);
}

static void test_words_parted(void **state)
{
    struct arena *arena = *state;
    assert_true(alike(arena, "side of F2, E1: both", "side of C20: both"));
    assert_true(alike(arena, "out of date on 2026-10", "out of date on 2027-01-31"));
    assert_true(alike(arena, "seacock C1 (sink)", "seacock C13 (intake)"));
    assert_true(alike(arena, "tags F1 and F4 are on", "tags F1, F2 and F7 are on"));
    assert_true(alike(arena, "1.5 m", "12 m"));
    assert_true(alike(arena, "no lanyard on A1", "no lanyard on Z2"));
    assert_false(alike(arena, "kg of C4", "gas of C4"));
    assert_false(alike(arena, "co2 of C4", "co3 of C4"));      /* no number, but a word */
    assert_false(alike(arena, "F2 and more", "F2, F3 or more"));
    assert_string_equal(finding_words_of("", arena).common, "");
    assert_string_equal(finding_words_of("no end (of it", arena).common, "no end (of it");
}

static void test_words_own(void **state)
{
    struct arena *arena = *state;
    assert_string_equal(own(arena, "F2 runs out 2026-10", "F2 runs out 2026-10"), "");
    assert_string_equal(own(arena, "F2 runs out 2026-10", "F3 runs out 2026-10"), "F3");
    assert_string_equal(own(arena, "F2 runs out 2026-10", "F3 runs out 2027-04"), "F3; 2027-04");
    assert_string_equal(own(arena, "C1 (sink)", "C2 (drain)"), "C2; drain");
    assert_string_equal(own(arena, "of F1: x", "of F2, E1: x"), "F2, E1");
}

/* ---- groups ---- */

static struct place line_of(struct arena *arena, const char *name, int line)
{
    return (struct place){.source = source_from(arena, name, "x\ny\nz\n", 6), .line = line,
                          .column = 1, .span = 1};
}

static void boat_add(struct problems *problems, const char *boat, struct place place,
                     enum severity severity, const char *what)
{
    problems_about(problems, boat, "record");
    problem_add(problems, severity, place, "mend it", "%s", what);
}

static struct problems *three_boats(struct arena *arena)
{
    struct problems *problems = problems_new(arena);
    struct place ash = line_of(arena, "b/boats/ash.yaml", 1);
    struct place birch = line_of(arena, "b/boats/birch.yaml", 2);
    struct place cedar = line_of(arena, "b/boats/cedar.yaml", 3);
    boat_add(problems, "ash", ash, SEVERITY_NOTE, "kg of C4 is not recorded");
    boat_add(problems, "birch", birch, SEVERITY_NOTE, "kg of C4 is not recorded");
    boat_add(problems, "cedar", cedar, SEVERITY_NOTE, "kg of C5 is not recorded");
    boat_add(problems, "ash", ash, SEVERITY_DEFICIENCY, "no raft");
    boat_add(problems, "birch", birch, SEVERITY_ERROR, "C4 is wrong");
    boat_add(problems, "cedar", cedar, SEVERITY_ERROR, "C5 is wrong");
    boat_add(problems, "ash", ash, SEVERITY_USE, "refused");
    return problems;
}

static void test_groups_alike(void **state)
{
    struct arena *arena = *state;
    struct finding_groups groups = finding_groups_of(three_boats(arena), FINDINGS_ALIKE, arena);
    static const char *const firsts[] = {"C4 is wrong", "C5 is wrong", "no raft",
                                         "kg of C4 is not recorded"};
    assert_int_equal(groups.count, 4);
    for (size_t i = 0; i < groups.count; i++)
        assert_string_equal(groups.at[i].members[0].problem->what, firsts[i]);
    assert_int_equal(groups.at[3].count, 3);
    assert_int_equal(groups.at[3].boats.count, 3);
    assert_string_equal(groups.at[3].boats.at[2], "cedar");
}

static void test_groups_alone(void **state)
{
    struct arena *arena = *state;
    struct finding_groups groups = finding_groups_of(three_boats(arena), FINDINGS_ALONE, arena);
    assert_int_equal(groups.count, 6);
    for (size_t i = 0; i < groups.count; i++)
        assert_int_equal(groups.at[i].count, 1);
}

static void test_groups_printed(void **state)
{
    struct arena *arena = *state;
    struct fleet fleet = {.arena = arena, .boat_count = 3};
    struct text_builder out = text_builder_in(arena);
    struct finding_groups groups = finding_groups_of(three_boats(arena), FINDINGS_ALIKE, arena);
    findings_print(&fleet, &groups, &out);
    const char *note = strstr(out.at, "b/boats/ash.yaml:1:1: note: kg of C4 is not recorded\n");
    assert_non_null(note);
    static const char rest[] = "  remedy: mend it\n"
                               "  the same in all 3 boats: birch.yaml:2:1, cedar.yaml:3:1 (C5)\n";
    assert_non_null(strstr(note, rest));
    assert_null(strstr(out.at, "refused"));
}

/* Several subjects of one check are told as one, with each place. */
static void test_groups_gathered(void **state)
{
    struct arena *arena = *state;
    struct fleet fleet = {.arena = arena, .boat_count = 3};
    struct text_builder out = text_builder_in(arena);
    struct problems *problems = problems_new(arena);
    static const char *const boats[] = {"ash", "birch"};
    for (size_t i = 0; i < 2; i++) {
        struct place place = line_of(arena, i == 0 ? "boats/ash.yaml" : "boats/birch.yaml", 2);
        problems_about(problems, boats[i], "cards");
        problem_add_of(problems, (struct problem_subject){"figure_unrecorded", "lwl_m of boat"},
                       SEVERITY_NOTE, place, "look for lwl_m", "lwl_m is not recorded");
        problem_add_of(problems, (struct problem_subject){"figure_unrecorded", "kg of C4"},
                       SEVERITY_NOTE, line_of(arena, place.source->name, 3), "look for kg",
                       "kg is not recorded");
    }
    struct finding_groups groups = finding_groups_of(problems, FINDINGS_ALIKE, arena);
    findings_print(&fleet, &groups, &out);
    assert_string_equal(out.at,
        "boats/ash.yaml:2:1: note: what a figure waits for is not recorded: "
        "lwl_m of boat (2:1), kg of C4 (3:1)\n"
        "    y\n    ^\n"
        "  remedy: look for lwl_m\n    look for kg\n"
        "  the same in 2 of 3 boats: birch.yaml:2:1, 3:1\n");
}

static void test_line_filled(void **state)
{
    struct text_builder out = text_builder_in(*state);
    struct line_fill fill = line_fill_begin(&out, 4, "head: ");
    for (int i = 0; i < 30; i++)
        line_fill_add(&fill, "eleven sign");
    line_fill_end(&fill);
    size_t longest = 0, lines = 0;
    for (const char *at = out.at; *at != '\0'; at += strcspn(at, "\n") + 1) {
        longest = strcspn(at, "\n") > longest ? strcspn(at, "\n") : longest;
        lines++;
    }
    assert_in_range(longest, 85, 100);
    assert_int_equal(lines, 5);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_words_parted),
        cmocka_unit_test(test_words_own),
        cmocka_unit_test(test_groups_alike),
        cmocka_unit_test(test_groups_alone),
        cmocka_unit_test(test_groups_printed),
        cmocka_unit_test(test_groups_gathered),
        cmocka_unit_test(test_line_filled),
    };
    return cmocka_run_group_tests(tests, findings_set_up, findings_tear_down);
}
