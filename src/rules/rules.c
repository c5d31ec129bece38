/* rules.c - runs every family of checks over one boat, and keeps silent what the base
 * has silenced for her (room: rules). Never changes a record. */
#include "rules_room.h"

#include <stdarg.h>

#include "promise.h"
#include "text.h"

/* In the order of the files' sections, so that the reader of this list finds them. */
static rule_family *const families[] = {
    identity_rules,
    name_rules,
    quotes_rules,
    beacon_rules,
    date_rules,
    capacity_rules,
    conflict_rules,
    fire_rules,
    gas_rules, engine_rules,
    rescue_rules,
    fact_rules,
    opening_rules,
    radio_gear_rules,
    unrecorded_rules,
    place_rules,
    tag_rules,
    silence_rules,    /* the last: it tells which silences nothing was found for */
};

/* With a reason and a date, as it must be; the record has told what it lacks. */
bool silence_whole(const struct silence *silence)
{
    return silence->until.given && !text_empty(silence->reason.text);
}

/* Before the boat is back nobody can mend what it covers. */
bool silence_lapses(const struct rule_run *run, const struct silence *silence)
{
    return date_compare(date_last_day(silence->until.date), run->in->to) < 0;
}

/* The silence that covers the check until the charter's end, or NULL. */
static const struct silence *silence_of(const struct rule_run *run, const struct check *check,
                                        size_t *index)
{
    const struct boat *boat = run->in->boat;
    if (boat == NULL)
        return NULL;
    for (*index = 0; *index < boat->silence_count; ++*index) {
        const struct silence *silence = &boat->silences[*index];
        if (text_equal(silence->check.text, check->id) && silence_whole(silence) &&
            !silence_lapses(run, silence))
            return silence;
    }
    return NULL;
}

/* It would follow from an error that was told, and go when that is put right. */
static bool follows_from_error(const struct rule_run *run, enum check_name name,
                               struct place place)
{
    if (problems_error_at(run->problems, place, check_at(CHECK_record)->id))
        return true;
    return check_at(name)->severity < SEVERITY_HELD &&
           (problems_error_at(run->problems, place, NULL) ||
            (check_at(name)->lack && run->in->boat != NULL && run->in->boat->gear_unclear));
}

void rule_tell(const struct rule_run *run, enum check_name name, struct place place,
               const char *remedy, const char *format, ...)
{
    const struct check *check = check_at(name);
    promise(check != NULL && remedy != NULL);
    if (follows_from_error(run, name, place))
        return;
    size_t index;
    va_list list;
    va_start(list, format);
    const char *what = text_format_list(run->arena, format, list);
    va_end(list);
    const struct silence *silence = check_may_be_silent(check)
                                        ? silence_of(run, check, &index) : NULL;
    if (silence == NULL) {
        if (run->held != NULL && check->severity == SEVERITY_ERROR && !check->danger)
            ++*run->held;
        problem_add_check(run->problems, check->id, check->severity, place, remedy, "%s", what);
        return;
    }
    promise(index < run->in->boat->silence_count);
    run->used[index] = true;
    problem_add_check(run->problems, check->id, SEVERITY_SILENCED, place, NULL,
                      "%s (silenced until %s: %s)", what, silence->until.text,
                      silence->reason.text);
}

bool rules_check(const struct rules_input *input, struct arena *arena,
                 struct problems *problems)
{
    size_t held = 0;
    struct rule_run run = {.in = input, .arena = arena, .problems = problems, .held = &held,
                           .used = arena_array(arena, input->boat->silence_count,
                                               sizeof *run.used)};
    for (size_t i = 0; i < sizeof families / sizeof *families; i++)
        families[i](&run);
    return held == 0;
}

bool rules_check_base(const struct rules_input *input, struct arena *arena,
                      struct problems *problems)
{
    struct rules_input base_only = *input;
    size_t held = 0;
    struct rule_run run = {.in = &base_only, .arena = arena, .problems = problems, .held = &held};
    base_only.boat = NULL;
    base_rules(&run);
    contact_rules(&run);
    approval_rules(&run);
    return held == 0;
}
