/* finding_groups.c - which findings say the same (room: app). Drops none: each is a member of
 * one group. */
#include "findings.h"
#include "alike.h"

#include <stdlib.h>
#include <string.h>

/* ---- what is told together ---- */

/* To the letter where something is wrong in a file: its own words are what to mend. */
static const char *alike_key(const struct problem *problem, const struct finding_words *words,
                             struct arena *arena)
{
    const char *remedy = problem->remedy == NULL ? "" : problem->remedy;
    bool letter = problem->severity == SEVERITY_ERROR;
    return text_format(arena, "%d\n%s\n%s\n%s", (int)problem->severity, problem->check,
                       letter ? problem->what : words->common,
                       letter ? remedy : finding_words_of(remedy, arena).common);
}

static bool is_told_here(const struct problem *problem)
{
    return problem->severity < SEVERITY_USE;
}

/* In the order of files and lines. */
static struct finding *findings_list(const struct problems *problems,
                                     enum finding_grouping grouping, struct arena *arena,
                                     size_t *count)
{
    size_t total;
    const struct problem *sorted = problems_sorted(problems, &total);
    struct finding *list = arena_array(arena, total, sizeof *list);
    *count = 0;
    for (size_t i = 0; i < total; i++) {
        const struct problem *problem = &sorted[i];
        struct finding finding = {.problem = problem, .index = i,
                                  .words = finding_words_of(problem->what, arena)};
        finding.key = grouping == FINDINGS_ALIKE
                          ? alike_key(problem, &finding.words, arena)
                          : text_format(arena, "%zu", i);
        if (is_told_here(problem))
            list[(*count)++] = finding;
    }
    return list;
}

static int index_compare(size_t a, size_t b)
{
    return (a > b) - (a < b);
}

static int key_compare(const void *left, const void *right)
{
    const struct finding *a = left, *b = right;
    int keys = strcmp(a->key, b->key);
    return keys != 0 ? keys : index_compare(a->index, b->index);
}

/* ---- the groups ---- */

static void boats_collect(struct finding_group *group, struct arena *arena)
{
    for (size_t i = 0; i < group->count; i++) {
        const char *boat = group->members[i].problem->boat;
        if (boat != NULL && !names_hold(&group->boats, boat))
            names_add(&group->boats, boat, arena);
    }
}

static const struct finding *group_first(const struct finding_group *group)
{
    return &group->members[0];
}

static int group_compare(const void *left, const void *right)
{
    const struct finding_group *a = left, *b = right;
    enum severity first = group_first(a)->problem->severity;
    enum severity second = group_first(b)->problem->severity;
    int shared = (b->boats.count > 1) - (a->boats.count > 1);
    if (first != second)
        return first > second ? -1 : 1;
    return shared != 0 ? shared : index_compare(group_first(a)->index, group_first(b)->index);
}

struct finding_groups finding_groups_of(const struct problems *problems,
                                        enum finding_grouping grouping, struct arena *arena)
{
    size_t count;
    struct finding *list = findings_list(problems, grouping, arena, &count);
    struct finding_groups groups = {grouping, arena_array(arena, count, sizeof *groups.at), 0};
    qsort(list, count, sizeof *list, key_compare);
    for (size_t i = 0; i < count; i++) {
        if (i == 0 || !text_equal(list[i].key, list[i - 1].key))
            groups.at[groups.count++] = (struct finding_group){.members = &list[i]};
        groups.at[groups.count - 1].count++;
    }
    for (size_t i = 0; i < groups.count; i++)
        boats_collect(&groups.at[i], arena);
    qsort(groups.at, groups.count, sizeof *groups.at, group_compare);
    return groups;
}

/* ---- which boats ---- */

/* The boats that were asked for, by their models. */
static struct alike sisters_of(const struct fleet *fleet)
{
    const char **models = arena_array(fleet->arena, fleet->boat_count, sizeof *models);
    for (size_t i = 0; i < fleet->boat_count; i++)
        models[i] = fleet->boats[i].model;
    return alike_of(models, fleet->boat_count, fleet->arena);
}

/* Of the boats in the list, the index among those that were asked for; how many sisters of the
 * first of each model there are among them. */
static size_t *sisters_count(const struct fleet *fleet, const struct names *boats,
                             const struct alike *sisters, const struct boat_asked **asked)
{
    size_t *count = arena_array(fleet->arena, fleet->boat_count, sizeof *count);
    for (size_t i = 0; i < boats->count; i++) {
        asked[i] = boat_asked_find(fleet, boats->at[i]);
        if (asked[i] != NULL)
            count[sisters->first[asked[i] - fleet->boats]]++;
    }
    return count;
}

/* "all 8 like sloop" in the place of the first of them, whose others are passed over; the name of
 * a boat some of whose sisters are not in the list. */
static const char *sisters_words(const struct fleet *fleet, const struct names *boats)
{
    struct alike sisters = sisters_of(fleet);
    const struct boat_asked **asked = arena_array(fleet->arena, boats->count, sizeof *asked);
    size_t *count = sisters_count(fleet, boats, &sisters, asked);
    struct text_builder out = text_builder_in(fleet->arena);
    text_add(&out, "");
    for (size_t i = 0; i < boats->count; i++) {
        size_t first = asked[i] == NULL ? 0 : sisters.first[asked[i] - fleet->boats];
        const char *comma = out.length == 0 ? "" : ", ";
        bool together = asked[i] != NULL && sisters.size[first] >= 2 &&
                        count[first] == sisters.size[first];
        if (!together)
            text_add_format(&out, "%s%s", comma, boats->at[i]);
        else if (asked[i] == &fleet->boats[first])
            text_add_format(&out, "%sall %zu like %s", comma, sisters.size[first],
                            asked[i]->model);
    }
    return out.at;
}

const char *boats_words(const struct fleet *fleet, const struct names *boats)
{
    if (boats->count > 1 && boats->count == fleet->boat_count)
        return text_format(fleet->arena, "all %zu boats", boats->count);
    return boats->count == 1 ? boats->at[0] : sisters_words(fleet, boats);
}
