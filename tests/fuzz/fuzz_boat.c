/* fuzz_boat.c - any bytes as a boat's file: what is sound can be checked, composed, explained and
 * said. */
#include "fuzz.h"

#include "brief.h"
#include "csv.h"
#include "survey.h"
#include "table.h"
#include "text.h"

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

/* Her record as a table that nobody changed changes nothing. */
static void table_check(const struct fuzz *fuzz, const struct source *source,
                        const struct boat *boat)
{
    static const char *const none[] = {NULL};
    struct problems *told = problems_new(fuzz->arena);
    const struct table_boat row = {"any", source, yaml_tree_read(source, fuzz->arena, told), NULL,
                                   boat};
    const struct table_boats boats = {&row, 1, none};
    const struct text_builder out = table_write(&boats, fuzz->arena);
    const struct csv_table *table = csv_read(fuzz_part(fuzz, "any.csv", out.at, out.length),
                                             fuzz->arena, told);
    size_t changes = 0;
    CHECK(table != NULL);
    const struct take *take = table_take(table, &boats, fuzz->arena, told);
    CHECK(take != NULL);
    (void)take_changes(take, &changes);
    CHECK(changes == 0 && take_edited(take, 0) == NULL);
}

/* The forms about her: what a skipper is told, and what is to be surveyed. */
static void forms_check(const struct fuzz *fuzz, const struct compose_input *input,
                        const struct sheet_set *cards)
{
    struct problems *told = problems_new(fuzz->arena);
    const struct hire hire = {.days = {fuzz_today, date_days_later(fuzz_today, 7), 14},
                              .people = 1 + fuzz_choice(fuzz, 12)};
    struct compose_input in = *input;
    const struct sheet_set *survey = survey_compose(&in, fuzz->arena, told);
    in.hire = &hire;
    const struct sheet_set *brief = brief_compose(&in, cards, fuzz->arena, told);
    CHECK(survey != NULL && survey->count > 0);
    CHECK(brief != NULL && (brief->count > 0 || problems_reach(told, SEVERITY_NOTE)));
    for (size_t i = 0; i < survey->count; i++) {
        struct text_builder out = text_builder_in(fuzz->arena);
        sheet_dump(survey->sheets[i], &out);
        CHECK(text_is_shown(out.at));
    }
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
    if (set == NULL)
        return;
    set_check(fuzz, &input, set);
    switch (fuzz_choice(fuzz, 4)) {
    case 1: table_check(fuzz, source, boat); break;
    case 2: forms_check(fuzz, &input, set); break;
    default: break;
    }
}

const struct harness harness = {boat_open_own, boat_one, true};
