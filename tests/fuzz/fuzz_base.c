/* fuzz_base.c - any bytes as a base's file: what is sound can be checked, and each boat composed
 * with it. */
#include "fuzz.h"

#include "rules.h"

static void base_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS);
}

static void base_one(struct fuzz *fuzz)
{
    bool sound = false;
    const struct base_record *base = base_read(fuzz_source(fuzz, "base.yaml"), fuzz->arena,
                                               fuzz->problems, &sound);
    sound_check(fuzz, base != NULL && sound);
    if (base == NULL || !sound)
        return;
    struct rules_input rules = {.base = base, .today = fuzz_today, .from = fuzz_today,
                                .to = fuzz_today};
    sound = rules_check_base(&rules, fuzz->arena, fuzz->problems);
    sound = base_cards_check(base, &own.procedures, fuzz->arena, fuzz->problems) && sound;
    problems_check(fuzz);
    if (!sound)
        return;
    struct compose_input input = own_input(own.boats[fuzz_choice(fuzz, 3)]);
    input.base = base;
    const struct sheet_set *set = boat_use(fuzz, &input);
    if (set != NULL)
        set_check(fuzz, &input, set);
}

const struct harness harness = {base_open_own, base_one, true};
