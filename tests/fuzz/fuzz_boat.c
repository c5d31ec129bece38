/* fuzz_boat.c - any bytes as a boat's file: what is sound can be checked, composed, explained and
 * said. */
#include "fuzz.h"

static void boat_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS);
}

/* What names her is found, whatever else is wrong. */
static void identities_check(const struct fuzz *fuzz, const struct source *source)
{
    struct written_identities written = identities_written(source, fuzz->arena);
    for (size_t i = 0; i < written.count; i++)
        CHECK(written.rows[i].kind <= IDENTITY_BEACON && written.rows[i].value.text != NULL);
}

static void boat_one(struct fuzz *fuzz)
{
    bool sound = false;
    const struct source *source = fuzz_source(fuzz, "any.yaml");
    const struct boat *boat = boat_read(source, "any", fuzz->arena, fuzz->problems, &sound);
    sound_check(fuzz, boat != NULL && sound);
    identities_check(fuzz, source);
    if (boat == NULL || !sound)
        return;
    struct compose_input input = own_input(boat);
    input.draft = fuzz_choice(fuzz, 4) == 0;
    const struct sheet_set *set = boat_use(fuzz, &input);
    if (set != NULL)
        set_check(fuzz, &input, set);
}

const struct harness harness = {boat_open_own, boat_one, true};
