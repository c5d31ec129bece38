/* identity_case.h - a boat with an MMSI, a call sign and a flag, for the tests of what
 * is told of them. */
#ifndef MAYDECK_TEST_IDENTITY_CASE_H
#define MAYDECK_TEST_IDENTITY_CASE_H

#include "rules_case.h"

#include "radio.h"

/* A real boat whose set has its MMSI. Lines: call sign 11, MMSI 12, flag 5, name 3. */
static inline struct boat *boat_of(const char *call_sign, const char *mmsi, const char *flag)
{
    struct boat *boat = arena_alloc(test.arena, sizeof *boat);
    boat->key = "boat";
    boat->facts.name = text_at("Tamarisk", 3);
    boat->facts.flag = text_at(flag, 5);
    boat->radio_place.line = 10;
    boat->radio.call_sign = text_at(call_sign, 11);
    boat->radio.mmsi = text_at(mmsi, 12);
    boat->radio.dsc.answer = ANSWER_YES;
    boat->radio.mmsi_programmed.answer = ANSWER_YES;
    return boat;
}

static inline struct boat *specimen_of(const char *call_sign, const char *mmsi)
{
    struct boat *boat = boat_of(call_sign, mmsi, "QZ");
    boat->facts.specimen.answer = ANSWER_YES;
    return boat;
}

/* True when the boat is not held back. */
static inline bool check(const struct boat *boat)
{
    family_run(identity_rules, boat, NULL);
    return problems_count(test.problems, SEVERITY_ERROR) == 0;
}

/* The one problem of this severity; NULL if there is none. Fails on two. */
static inline const struct problem *only(enum severity severity)
{
    size_t count = 0;
    const struct problem *all = problems_sorted(test.problems, &count), *found = NULL;
    for (size_t i = 0; i < count; i++) {
        assert_non_null(all[i].remedy);
        if (all[i].severity != severity)
            continue;
        assert_null(found);
        found = &all[i];
    }
    return found;
}

/* Exactly one problem of its row's severity, by this check. */
static inline void tells(const char *check_id, const char *words, int line)
{
    const struct problem *problem = only(check_find(check_id)->severity);
    expect_told(check_id, words, line);
    assert_non_null(problem);
    assert_string_equal(problem->check, check_id);
}

static inline void is_silent(void)
{
    if (told_count() != 0)
        problems_show();
    assert_int_equal(told_count(), 0);
}

#endif
