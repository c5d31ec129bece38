/* reasons_case.h - a card of one procedure, composed, and the reasons told of it. */
#ifndef MAYDECK_TEST_REASONS_CASE_H
#define MAYDECK_TEST_REASONS_CASE_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "card_case.h"
#include "reasons.h"

static struct card_case test;

static int test_begin(void **state)
{
    (void)state;
    case_begin(&test);
    return 0;
}

static int test_end(void **state)
{
    (void)state;
    case_end(&test);
    return 0;
}

#define GEAR \
    "  - {item: torch, tag: C1, zone: saloon}\n" \
    "  - {item: knife, tag: E1, zone: cockpit}\n" \
    "  - {item: knife, tag: E2, zone: saloon}\n"

/* A procedure as it is written: what is asked of a boat, and what is said to it. */
struct written {
    const char *logic, *texts;
};

/* Of the procedure `dark`. */
static const char *reasons_with(struct written written, const char *gear, const char *not_fitted)
{
    const char *procedure =
        case_procedure_text(&test, "dark", 10, written.logic, written.texts);
    case_procedures(&test, (const char *const[]){procedure, NULL});
    case_boat(&test, case_boat_text(&test, CASE_RADIO, gear, not_fitted));
    const struct sheet_set *set = case_compose(&test, false);
    struct compose_input input = {.boat = test.boat, .base = test.base,
                                  .procedures = &test.procedures,
                                  .authorities = test.authorities, .words = test.words,
                                  .today = test.today};
    struct text_builder out = text_builder_in(test.arena);
    card_reasons(&input, set, case_card(set, "dark"), &out);
    return out.at;
}

static void expect_part(const char *text, const char *part)
{
    if (strstr(text, part) == NULL)
        fail_msg("not told: %s\nin:\n%s", part, text);
}

static void expect_none(const char *text, const char *part)
{
    if (strstr(text, part) != NULL)
        fail_msg("told: %s\nin:\n%s", part, text);
}

#endif
