/* fuzz_model.c - any bytes as a model's file and that of a boat that is like it. */
#include "fuzz.h"

static void model_open_own(void)
{
    own_open(OWN_TEXTS | OWN_BOATS);
}

/* What is told twice, of her and of the model, is two lines of a file. */
static void differences_check(const struct fuzz *fuzz, const struct boat *boat,
                              const struct model *model)
{
    struct differences all = boat_differences(boat, model, fuzz->arena);
    for (size_t i = 0; i < all.count; i++) {
        CHECK(all.rows[i].what != NULL);
        CHECK(all.rows[i].hers != NULL || all.rows[i].models != NULL);
    }
}

static void model_one(struct fuzz *fuzz)
{
    static const char *const names[] = {"models/sloop.yaml", "boats/any.yaml"};
    const struct source *sources[2];
    bool sound = false;
    fuzz_two(fuzz, names, sources);
    const struct model *model = model_read(sources[0], "sloop", fuzz->arena);
    CHECK(model != NULL);
    const struct models models = {&model, 1};
    const struct boat_input from = {sources[1], "any", &models};
    const enum walk_rule rule = fuzz_choice(fuzz, 2) == 0 ? WALK_ASKED : WALK_SUPPOSED;
    const struct boat *boat = boat_read_by(&from, rule, fuzz->arena, fuzz->problems, &sound);
    sound_check(fuzz, boat != NULL && sound);
    if (boat == NULL || !sound)
        return;
    if (boat->likeness.model != NULL)
        differences_check(fuzz, boat, model);
    struct compose_input input = own_input(boat);
    const struct sheet_set *set = boat_use(fuzz, &input);
    if (set != NULL)
        set_check(fuzz, &input, set);
}

const struct harness harness = {model_open_own, model_one, true};
