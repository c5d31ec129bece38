/* fleet.c - reading a base folder and taking each boat from file to pages
 * (room: app). One bad boat never stops the others. */
#include "app.h"

#define ARENA_LIMIT ((size_t)1024 * 1024 * 1024)

static struct rules_input rules_input_make(const struct options *options,
                                           const struct fleet *fleet, const struct boat *boat)
{
    bool charter = options->from.year != 0;
    return (struct rules_input){boat, fleet->base, options->today,
                                charter ? options->from : options->today,
                                charter ? options->to : options->today, fleet->crew};
}

static const struct place no_place = {0};

/* ---- the base ---- */

static bool base_read_from(const struct options *options, struct fleet *fleet)
{
    bool sound = true;
    const char *own = text_format(fleet->arena, "%s/procedures", options->base);
    if (!is_folder(options->base)) {
        problem_add(fleet->problems, SEVERITY_USE, no_place,
                    "name the folder that holds base.yaml and boats/", "%s is not a folder",
                    options->base);
        return false;
    }
    if (is_folder(own)) {
        problem_add(fleet->problems, SEVERITY_ERROR, no_place,
                    "move that folder away: a base's own procedures are not read yet",
                    "%s: a base's own procedures cannot be used yet", own);
        return false;
    }
    const struct source *source = file_read(
        fleet, text_format(fleet->arena, "%s/base.yaml", options->base), SEVERITY_USE,
        "name the folder that holds base.yaml and boats/");
    problems_about(fleet->problems, NULL, "base");
    if (source != NULL)
        fleet->base = base_read(source, fleet->arena, fleet->problems, &sound);
    problems_about(fleet->problems, NULL, "run");
    return fleet->base != NULL && sound;
}

bool fleet_begin(struct fleet *fleet)
{
    *fleet = (struct fleet){.arena = arena_new(ARENA_LIMIT)};
    fleet->identities = identities_new(fleet->arena);
    fleet->problems = problems_new(fleet->arena);
    problems_about(fleet->problems, NULL, "program");
    bool sound = own_files_read(fleet);
    problems_about(fleet->problems, NULL, "run");
    return sound;
}

bool fleet_open(const struct options *options, struct fleet *fleet)
{
    bool own = fleet_begin(fleet);
    bool base = base_read_from(options, fleet);
    bool boats = is_folder(options->base) && boats_list(options, fleet);
    problems_about(fleet->problems, NULL, "base");
    if (own && fleet->base != NULL)
        base = base_cards_check(fleet->base, &fleet->procedures, fleet->arena,
                                fleet->problems) && base;
    problems_about(fleet->problems, NULL, "run");
    crew_read(options, fleet);
    if (fleet->base != NULL) {
        struct rules_input input = rules_input_make(options, fleet, NULL);
        base = rules_check_base(&input, fleet->arena, fleet->problems) && base;
    }
    fleet->ready = own && base;
    /* What went wrong so far belongs to all boats; from here on each has her own. */
    if (!boats || problems_reach(fleet->problems, SEVERITY_USE))
        return false;
    boats_read(options, fleet);
    return true;
}

void fleet_close(struct fleet *fleet)
{
    faces_close(fleet->faces);
    arena_free(fleet->arena);
}

/* ---- one boat ---- */

struct fleet fleet_for_boat(const struct fleet *fleet)
{
    struct fleet one = *fleet;
    one.arena = arena_new(ARENA_LIMIT);
    return one;
}

bool card_wanted(const struct options *options, const struct card *card)
{
    return options->cards.count == 0 || names_hold(&options->cards, card->key) ||
           names_hold(&options->cards, card->procedure_key);
}

/* False, with a problem, when none of hers is called so. */
static bool card_exists(const char *name, const struct fleet *fleet, const struct card_set *set)
{
    struct text_builder list = text_builder_in(fleet->arena);
    const char **keys = arena_array(fleet->arena, set->count, sizeof *keys);
    for (size_t i = 0; i < set->count; i++) {
        if (text_equal(name, set->cards[i]->key) || text_equal(name, set->cards[i]->procedure_key))
            return true;
        keys[i] = set->cards[i]->key;
        text_add_format(&list, "%s%s", i == 0 ? "cards of this boat: " : ", ", keys[i]);
    }
    const char *nearest = text_nearest(name, keys, set->count);
    problem_add(fleet->problems, SEVERITY_USE, no_place,
                nearest == NULL ? list.at
                                : text_format(fleet->arena, "did you mean \"%s\"?", nearest),
                "there is no card \"%s\"", name);
    return false;
}

/* False, with a problem each, when a card that --card asks for is none of hers. */
static bool cards_exist(const struct options *options, const struct fleet *fleet,
                        const struct card_set *set)
{
    bool all = true;
    if (set->count == 0) {
        problem_add(fleet->problems, SEVERITY_ERROR, no_place,
                    "look at `when:` of the procedures", "no card is for this boat");
        return false;
    }
    for (size_t i = 0; i < options->cards.count; i++)
        all = card_exists(options->cards.at[i], fleet, set) && all;
    return all;
}

struct compose_input compose_input_of(const struct options *options, const struct fleet *fleet,
                                      const struct boat *boat)
{
    return (struct compose_input){boat, fleet->base, &fleet->procedures, fleet->authorities,
                                  fleet->words, options->today, options->draft};
}

/* The record, and whether nothing in it holds the boat back. */
static const struct boat *boat_record(const struct options *options, const struct fleet *fleet,
                                      const char *key, size_t index, bool *sound)
{
    const struct source *source = fleet->boat_sources[index];
    const struct boat *boat = NULL;
    problems_about(fleet->problems, key, "record");
    if (source != NULL)     /* else it was told */
        boat = boat_read(source, key, fleet->arena, fleet->problems, sound);
    if (boat != NULL) {
        struct rules_input input = rules_input_make(options, fleet, boat);
        *sound = rules_check(&input, fleet->arena, fleet->problems) && *sound;
    }
    /* After the rules, which are silent where an error was told already. */
    *sound = identities_own(fleet->identities, key, fleet->problems) && *sound;
    return boat;
}

static void boat_compose(const struct options *options, const struct fleet *fleet,
                         struct boat_work *work)
{
    struct compose_input input = compose_input_of(options, fleet, work->boat);
    cards_make(fleet, &input, work);
    pages_proofread(fleet, work);
    problems_about(fleet->problems, work->key, "run");
    work->cards_exist = cards_exist(options, fleet, work->set);
}

struct boat_work boat_work(const struct options *options, const struct fleet *fleet, size_t index)
{
    struct boat_work work = {.key = fleet->boat_keys[index]};
    bool sound = true;
    work.boat = boat_record(options, fleet, work.key, index, &sound);
    if (work.boat != NULL && sound && fleet->ready)
        boat_compose(options, fleet, &work);
    problems_about(fleet->problems, NULL, "run");
    return work;
}
