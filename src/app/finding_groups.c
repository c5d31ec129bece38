/* finding_groups.c - which findings say the same (room: app). Drops none: each is a member of
 * one group. */
#include "findings.h"

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

/* How many boats that were asked for are like the model; those among them in the list. */
static size_t sisters_count(const struct fleet *fleet, const char *model,
                            const struct names *among)
{
    size_t count = 0;
    for (size_t i = 0; i < fleet->boat_count; i++)
        count += text_equal(fleet->boats[i].model, model) &&
                 (among == NULL || names_hold(among, fleet->boats[i].key)) ? 1 : 0;
    return count;
}

static const char *model_of(const struct fleet *fleet, const char *boat)
{
    for (size_t i = 0; i < fleet->boat_count; i++)
        if (text_equal(fleet->boats[i].key, boat))
            return fleet->boats[i].model;
    return NULL;
}

/* "all 8 like sloop" at the first of them, nothing at the others; the name of a boat some of
 * whose sisters are not in the list. */
static const char *boat_words(const struct fleet *fleet, const struct names *boats, size_t index)
{
    const char *model = model_of(fleet, boats->at[index]);
    size_t sisters = model == NULL ? 0 : sisters_count(fleet, model, boats);
    if (sisters < 2 || sisters < sisters_count(fleet, model, NULL))
        return boats->at[index];
    for (size_t i = 0; i < index; i++)
        if (text_equal(model_of(fleet, boats->at[i]), model))
            return NULL;
    return text_format(fleet->arena, "all %zu like %s", sisters, model);
}

const char *boats_words(const struct fleet *fleet, const struct names *boats)
{
    struct text_builder out = text_builder_in(fleet->arena);
    if (boats->count > 1 && boats->count == fleet->boat_count)
        return text_format(fleet->arena, "all %zu boats", boats->count);
    text_add(&out, "");
    for (size_t i = 0; i < boats->count; i++) {
        const char *words = boat_words(fleet, boats, i);
        if (words != NULL)
            text_add_format(&out, "%s%s", out.length == 0 ? "" : ", ", words);
    }
    return out.at;
}
