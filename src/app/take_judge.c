/* take_judge.c - changed files read again before they are written (room: app): what is wrong with
 * one that was not wrong before is told of the cell that changed it. */
#include "compose.h"
#include "fleet.h"
#include "table.h"

struct take_judging {
    const struct options *options;
    const struct fleet *fleet;
    const struct table_boats *boats;
    const struct take *take;
    struct identities *identities;    /* of all files as they are to be */
    const struct source **sources;    /* by boat; NULL: hers does not change */
};

/* All that `check` has against the file itself. */
static struct problems *file_judged(const struct take_judging *judging, size_t index,
                                    const struct source *source,
                                    const struct identities *identities)
{
    const struct fleet *fleet = judging->fleet;
    struct problems *told = problems_new(fleet->arena);
    const char *key = judging->boats->rows[index].key;
    struct boat_input input = {source, key, &fleet->models};
    bool sound;
    problems_about(told, key, "record");
    problems_know(told, &fleet->known);
    const struct boat *boat = boat_read_like(&input, fleet->arena, told, &sound);
    if (boat != NULL && fleet->procedures_sound)
        cards_chosen_check(&boat->cards, &fleet->procedures, fleet->arena, told);
    if (boat != NULL) {
        struct rules_input rules = rules_input_of(judging->options, fleet, boat);
        rules_check(&rules, fleet->arena, told);
    }
    identities_own(identities, key, source, told);
    return told;
}

static bool was_said(const struct problem *list, size_t count, const struct problem *problem)
{
    for (size_t i = 0; i < count; i++)
        if (list[i].severity >= SEVERITY_HELD && text_equal(list[i].what, problem->what))
            return true;
    return false;
}

/* A changed file is on no disk: where no cell is to blame, its line is quoted all the same. */
static void fault_tell(const struct take_judging *judging, size_t index,
                       const struct yaml_node *tree, const struct problem *problem)
{
    const struct source *source = judging->sources[index];
    struct taken_cell cell = {.name = NULL};
    if (problem->place.source == source && problem->place.line > 0)
        cell = take_cell_of(judging->take, index, tree,
                            source_offset(source, problem->place.line, problem->place.column),
                            judging->fleet->arena);
    if (cell.name != NULL)
        problem_add(judging->fleet->problems, SEVERITY_ERROR, cell.place, problem->remedy,
                    "%s: %s", cell.name, problem->what);
    else
        problem_add(judging->fleet->problems, SEVERITY_ERROR, problem->place, problem->remedy,
                    "with these changes: %s", problem->what);
}

static bool boat_judged(const struct take_judging *judging, size_t index)
{
    size_t count, old_count;
    const struct source *source = judging->sources[index];
    struct problems *unheard = problems_new(judging->fleet->arena);
    const struct yaml_node *tree = yaml_tree_read(source, judging->fleet->arena, unheard);
    const struct problem *now =
        problems_sorted(file_judged(judging, index, source, judging->identities), &count);
    const struct problem *before =
        problems_sorted(file_judged(judging, index, judging->boats->rows[index].source,
                                    judging->fleet->identities), &old_count);
    bool good = true;
    for (size_t i = 0; i < count; i++)
        if (now[i].severity >= SEVERITY_ERROR && !was_said(before, old_count, &now[i])) {
            fault_tell(judging, index, tree, &now[i]);
            good = false;
        }
    return good;
}

/* The file of a boat as it is to be. */
static const struct source *source_changed(const struct take_judging *judging, size_t index)
{
    const struct yaml_edited *edited = take_edited(judging->take, index);
    const struct source *old = judging->boats->rows[index].source;
    return edited == NULL ? NULL
                          : source_from(judging->fleet->arena, old->name, edited->bytes,
                                        edited->length);
}

static void identities_gather(struct take_judging *judging)
{
    const struct fleet *fleet = judging->fleet;
    size_t next = 0;    /* both lists are in the order of the base */
    judging->identities = identities_new(fleet->arena);
    for (size_t i = 0; i < fleet->boat_count; i++) {
        const struct source *source = fleet->boats[i].source;
        bool taken = next < judging->boats->count &&
                     text_equal(judging->boats->rows[next].key, fleet->boats[i].key);
        if (taken && judging->sources[next] != NULL)
            source = judging->sources[next];
        next += taken ? 1 : 0;
        if (source != NULL)
            identities_add(judging->identities, source, fleet->boats[i].key);
    }
}

bool take_judge(const struct options *options, const struct fleet *fleet,
                const struct table_boats *boats, const struct take *take)
{
    struct take_judging judging = {
        .options = options, .fleet = fleet, .boats = boats, .take = take,
        .sources = arena_array(fleet->arena, boats->count, sizeof(void *))};
    bool good = true;
    for (size_t i = 0; i < boats->count; i++)
        judging.sources[i] = source_changed(&judging, i);
    identities_gather(&judging);
    for (size_t i = 0; i < boats->count; i++)
        if (judging.sources[i] != NULL)
            good = boat_judged(&judging, i) && good;
    return good;
}
