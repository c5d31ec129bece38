/* finding_print.c - groups of findings as lines of text (room: app). Each finding keeps its
 * file, line and column; line and remedy are shown once a group. */
#include "findings.h"
#include "alike.h"

#include <string.h>

struct telling {
    const struct fleet *fleet;
    struct text_builder *out;
};

/* ---- the places of those that are told together ---- */

/* Of a boat's own file its name alone: the first of the group was told with its folder. */
static const char *file_words(const struct problem *problem)
{
    if (problem->place.source == NULL)
        return problem->boat == NULL ? "maydeck" : problem->boat;
    const char *name = problem->place.source->name, *slash = strrchr(name, '/');
    bool hers = problem->boat != NULL && slash != NULL && text_begins(slash + 1, problem->boat) &&
                text_equal(slash + 1 + strlen(problem->boat), ".yaml");
    return hers ? slash + 1 : name;
}

/* The places of one file stand together, on one line. */
struct place_list {
    struct line_fill fill;
    const char *file;              /* of the place before; NULL: there is none */
    struct text_builder places;    /* in it: "tern.yaml:25:5 (F2), 26:5" */
    const struct problem *last;
};

static void place_list_flush(struct place_list *list)
{
    if (list->places.length > 0)
        line_fill_add(&list->fill, list->places.at);
    list->places = text_builder_in(list->places.arena);
}

static void place_list_end(struct place_list *list)
{
    place_list_flush(list);
    line_fill_end(&list->fill);
}

static void other_place_add(struct place_list *list, const struct problem *problem,
                            const char *own)
{
    const char *file = file_words(problem);
    bool same = list->file != NULL && text_equal(list->file, file);
    if (!same) {
        place_list_flush(list);
        text_add(&list->places, file);
    }
    if (problem->place.line > 0)
        text_add_format(&list->places, "%s%d:%d", same ? ", " : ":", problem->place.line,
                        problem->place.column);
    if (!text_empty(own))
        text_add_format(&list->places, " (%s)", own);
    list->file = file;
    list->last = problem;
}

static struct place_list place_list_begin(const struct telling *telling,
                                          const struct finding_group *group)
{
    const char *head = "  the same at ";
    if (group->boats.count > 1)
        head = group->boats.count == telling->fleet->boat_count
                   ? text_format(telling->fleet->arena, "  the same in all %zu boats: ",
                                 group->boats.count)
                   : text_format(telling->fleet->arena, "  the same in %zu of %zu boats: ",
                                 group->boats.count, telling->fleet->boat_count);
    return (struct place_list){.fill = line_fill_begin(telling->out, 4, head),
                               .places = text_builder_in(telling->fleet->arena)};
}

/* Members of a group at one place, which are of several boats: that of their model. */
struct shared_place {
    size_t end;                    /* behind the last of them */
    const char *boats;             /* "all 8 like sloop"; NULL: it is the place of one */
};

static struct shared_place shared_place_at(const struct telling *telling,
                                           const struct finding_group *group, size_t first)
{
    const struct problem *problem = group->members[first].problem;
    struct names boats = {0};
    size_t end = first;
    for (; end < group->count; end++) {
        const struct problem *other = group->members[end].problem;
        if (!problem_says_same(problem, other) || other->boat == NULL)
            break;
        names_add(&boats, other->boat, telling->fleet->arena);
    }
    return (struct shared_place){end > first ? end : first + 1,
                                 boats.count < 2 ? NULL : boats_words(telling->fleet, &boats)};
}

static void shared_place_add(const struct telling *telling, struct place_list *list,
                             const struct finding_group *group, size_t first,
                             const char *boats)
{
    const char *own = finding_own_words(&group->members[0].words, &group->members[first].words,
                                        telling->fleet->arena);
    if (boats != NULL && first == 0)
        line_fill_add(&list->fill, boats);
    else if (boats != NULL)
        own = text_format(telling->fleet->arena, "%s%s%s", own, text_empty(own) ? "" : "; ",
                          boats);
    if (first > 0)
        other_place_add(list, group->members[first].problem, own);
}

static void others_tell(const struct telling *telling, const struct finding_group *group)
{
    if (group->count < 2)
        return;
    struct place_list list = place_list_begin(telling, group);
    for (size_t i = 0; i < group->count;) {
        struct shared_place place = shared_place_at(telling, group, i);
        shared_place_add(telling, &list, group, i, place.boats);
        i = place.end;
    }
    place_list_end(&list);
}

static void group_tell(const struct telling *telling, const struct finding_group *group)
{
    problem_print(group->members[0].problem, telling->out);
    others_tell(telling, group);
}

/* ---- several groups of one check and the same boats, told as one ---- */

static bool same_boats(const struct names *a, const struct names *b)
{
    bool same = a->count == b->count;
    for (size_t i = 0; same && i < a->count; i++)
        same = text_equal(a->at[i], b->at[i]);
    return same;
}

static bool told_together(const struct finding_group *a, const struct finding_group *b)
{
    const struct problem *first = a->members[0].problem, *other = b->members[0].problem;
    return first->subject != NULL && other->subject != NULL &&
           first->severity == other->severity && text_equal(first->check, other->check) &&
           same_boats(&a->boats, &b->boats);
}

/* The groups that are told as one, by their first. */
struct gathering {
    const struct finding_group **groups;
    size_t count;
};

static struct gathering gathering_of(const struct finding_groups *groups, size_t first, bool *told,
                                     struct arena *arena)
{
    bool alone = groups->grouping == FINDINGS_ALONE ||
                 groups->at[first].members[0].problem->subject == NULL;
    size_t end = alone ? first + 1 : groups->count;
    struct gathering gathering = {arena_array(arena, end - first, sizeof *gathering.groups), 0};
    for (size_t i = first; i < end; i++)
        if (!told[i] && (i == first || told_together(&groups->at[first], &groups->at[i]))) {
            told[i] = true;
            gathering.groups[gathering.count++] = &groups->at[i];
        }
    return gathering;
}

static bool is_of_first_boat(const struct gathering *gathering, const struct problem *problem)
{
    return text_equal(problem->boat, gathering->groups[0]->members[0].problem->boat);
}

/* "kg of C4 (43:5), gas of C4 (43:5)": all subjects of the first boat, with their places. */
static const char *subjects_words(const struct gathering *gathering, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < gathering->count; i++)
        for (size_t k = 0; k < gathering->groups[i]->count; k++) {
            const struct problem *problem = gathering->groups[i]->members[k].problem;
            if (is_of_first_boat(gathering, problem))
                text_add_format(&out, "%s%s (%d:%d)", out.length == 0 ? "" : ", ",
                                problem->subject, problem->place.line, problem->place.column);
        }
    return out.at;
}

static const char *remedies_words(const struct gathering *gathering, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    struct names told = {0};
    for (size_t i = 0; i < gathering->count; i++) {
        const char *remedy = gathering->groups[i]->members[0].problem->remedy;
        if (remedy == NULL || names_hold(&told, remedy))
            continue;
        names_add(&told, remedy, arena);
        text_add_format(&out, "%s%s", out.length == 0 ? "" : "\n", remedy);
    }
    return out.at;
}

static bool at_same_place(const struct problem *a, const struct problem *b)
{
    return a != NULL && text_equal(a->boat, b->boat) && a->place.line == b->place.line &&
           a->place.column == b->place.column;
}

/* Places of one boat after the other; a place that several of these speak of stands once,
 * unless one of them has words of its own. */
static void gathered_place_add(const struct telling *telling, struct place_list *list,
                               const struct finding_group *group, size_t index)
{
    const struct finding *first = &group->members[0], *member = &group->members[index];
    const char *own = finding_own_words(&first->words, &member->words, telling->fleet->arena);
    if (!text_empty(own))
        other_place_add(list, member->problem, member->problem->subject);
    else if (!at_same_place(list->last, member->problem))
        other_place_add(list, member->problem, NULL);
}

/* The members of a group by their boats, in the order of the group's boats. */
struct by_boat {
    struct alike alike;
    const size_t *heads;       /* of each boat, the first of hers */
};

static struct by_boat by_boat_of(const struct finding_group *group, struct arena *arena)
{
    const char **boats = arena_array(arena, group->count, sizeof *boats);
    size_t *heads = arena_array(arena, group->count, sizeof *heads), count = 0;
    for (size_t i = 0; i < group->count; i++)
        boats[i] = group->members[i].problem->boat;
    struct by_boat by = {alike_of(boats, group->count, arena), heads};
    for (size_t i = 0; i < group->count; i++)
        if (boats[i] != NULL && by.alike.first[i] == i)
            heads[count++] = i;
    return by;
}

/* All places of that boat of the groups, in one text. */
static const char *places_of_boat(const struct telling *telling,
                                  const struct gathering *gathering, const struct by_boat *by,
                                  size_t boat)
{
    struct text_builder none = text_builder_in(telling->fleet->arena);
    struct place_list list = {.fill = line_fill_begin(&none, 0, ""),
                              .places = text_builder_in(telling->fleet->arena)};
    for (size_t i = 0; i < gathering->count; i++)
        for (size_t k = by[i].heads[boat]; k < by[i].alike.count; k = by[i].alike.next[k])
            gathered_place_add(telling, &list, gathering->groups[i], k);
    return list.places.at;
}

/* Boats with the same places are sisters, where these are in their model's file. The places of the
 * first boat were told. */
static void sharing_boats_tell(const struct telling *telling, struct place_list *list,
                               const char *const *places, const struct names *boats)
{
    struct arena *arena = telling->fleet->arena;
    struct alike alike = alike_of(places, boats->count, arena);
    for (size_t b = 0; b < boats->count; b++) {
        struct names same = {0};
        if (alike.first[b] != b)
            continue;
        for (size_t i = b; i < boats->count; i = alike.next[i])
            names_add(&same, boats->at[i], arena);
        const char *words = same.count < 2 ? NULL : boats_words(telling->fleet, &same);
        if (b == 0 && words != NULL)
            line_fill_add(&list->fill, words);
        else if (b > 0)
            line_fill_add(&list->fill, words == NULL
                                           ? places[b]
                                           : text_format(arena, "%s (%s)", places[b], words));
    }
}

static void other_boats_tell(const struct telling *telling, const struct gathering *gathering)
{
    struct arena *arena = telling->fleet->arena;
    const struct names *boats = &gathering->groups[0]->boats;
    const char **places = arena_array(arena, boats->count, sizeof *places);
    struct by_boat *by = arena_array(arena, gathering->count, sizeof *by);
    if (boats->count < 2)
        return;
    for (size_t i = 0; i < gathering->count; i++)
        by[i] = by_boat_of(gathering->groups[i], arena);
    struct place_list list = place_list_begin(telling, gathering->groups[0]);
    for (size_t b = 0; b < boats->count; b++)
        places[b] = places_of_boat(telling, gathering, by, b);
    sharing_boats_tell(telling, &list, places, boats);
    place_list_end(&list);
}

static void gathering_tell(const struct telling *telling, const struct gathering *gathering)
{
    struct arena *arena = telling->fleet->arena;
    struct problem whole = *gathering->groups[0]->members[0].problem;
    whole.what = text_format(arena, "%s: %s", check_find(whole.check)->sentence,
                             subjects_words(gathering, arena));
    whole.remedy = remedies_words(gathering, arena);
    problem_print(&whole, telling->out);
    other_boats_tell(telling, gathering);
}

void findings_print(const struct fleet *fleet, const struct finding_groups *groups,
                    struct text_builder *out)
{
    struct telling telling = {fleet, out};
    bool *told = arena_array(fleet->arena, groups->count, sizeof *told);
    for (size_t i = 0; i < groups->count; i++) {
        if (told[i])
            continue;
        struct gathering gathering = gathering_of(groups, i, told, fleet->arena);
        if (gathering.count == 1)
            group_tell(&telling, gathering.groups[0]);
        else
            gathering_tell(&telling, &gathering);
    }
}
