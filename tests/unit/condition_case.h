/* condition_case.h - conditions judged for one boat: the fixture of their tests. */
#ifndef MAYDECK_TEST_CONDITION_CASE_H
#define MAYDECK_TEST_CONDITION_CASE_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_case.h"
#include "compose/compose_room.h"
#include "text.h"

static struct card_case test;
static struct compose_input input;
static struct composing composing;
static struct slot slot;

static inline int set_up(void **state)
{
    (void)state;
    case_begin(&test);
    return 0;
}

static inline int tear_down(void **state)
{
    (void)state;
    case_end(&test);
    return 0;
}

static inline void begin_on(const struct boat *boat, enum zone_key space)
{
    input = (struct compose_input){.boat = boat, .words = test.words};
    slot = (struct slot){.procedure = test.procedures.rows[0], .space = space, .title = "CARD",
                         .name = "CARD"};
    composing = (struct composing){.in = &input, .arena = test.arena,
                                   .problems = problems_new(test.arena), .slot = &slot};
}

/* A monohull with this gear and without that. */
static inline void boat_with(const char *gear, const char *not_fitted)
{
    begin_on(case_boat(&test, case_boat_text(&test, "", gear, not_fitted)), ZONE_NONE);
}

static inline const struct condition *condition_of(const char *text)
{
    const struct source *source = source_from(test.arena, "when.yaml", text, strlen(text));
    const struct yaml_node *node = yaml_tree_read(source, test.arena, composing.problems);
    assert_non_null(node);
    const struct condition *condition = condition_read(node, test.arena, composing.problems);
    assert_non_null(condition);
    return condition;
}

static inline enum truth judged(const char *text)
{
    return condition_judge(&composing, condition_of(text));
}

static inline void expect(const char *text, enum truth wanted)
{
    static const char *const words[] = {"no", "yes", "unknown"};
    enum truth found = judged(text);
    if (found != wanted)
        fail_msg("%s is %s, not %s", text, words[found], words[wanted]);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

#endif
