/* problem.c - collecting and ordering what a run has to say (room: base). The
 * same thing said twice is kept once, so that counts and print agree. Never
 * prints and never drops anything else. */
#include "problem.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "promise.h"

struct problems {
    struct arena *arena;
    struct problem *items;
    size_t count;
    size_t capacity;
    size_t *slots;      /* hash table: index of an item plus 1, or 0 */
    size_t slot_count;  /* a power of two, at least twice `count` */
    size_t counts[SEVERITY_COUNT];
    const char *boat, *check;   /* what is being worked on */
    const struct known_names *known;
};

static const char *copied(struct arena *arena, const char *text)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

struct problems *problems_new(struct arena *arena)
{
    struct problems *problems = arena_alloc(arena, sizeof *problems);

    problems->arena = arena;
    problems->check = "run";
    return problems;
}

void problems_about(struct problems *problems, const char *boat, const char *check)
{
    problems->boat = boat;
    problems->check = check;
}

void problems_know(struct problems *problems, const struct known_names *known)
{
    problems->known = known;
}

const struct known_names *problems_known(const struct problems *problems)
{
    return problems->known;
}

/* Files are told apart by name: one read twice is two sources of one name. */
static const char *place_name(struct place place)
{
    return place.source == NULL ? NULL : place.source->name;
}

static uint64_t hash_string(uint64_t hash, const char *string)
{
    return string == NULL ? hash + 1 : bytes_hash(hash, string, strlen(string) + 1);
}

/* Of the members that tell problems apart most; those it leaves out are compared in
 * problem_same(). */
static uint64_t problem_hash(const struct problem *problem)
{
    uint64_t hash = BYTES_HASH_START;

    hash = bytes_hash(hash, &problem->severity, sizeof problem->severity);
    hash = bytes_hash(hash, &problem->place.line, sizeof problem->place.line);
    hash = bytes_hash(hash, &problem->place.column, sizeof problem->place.column);
    hash = hash_string(hash, place_name(problem->place));
    return hash_string(hash, problem->what);
}

bool problem_says_same(const struct problem *a, const struct problem *b)
{
    return a->severity == b->severity && a->place.line == b->place.line &&
           a->place.column == b->place.column && a->place.span == b->place.span &&
           text_equal(place_name(a->place), place_name(b->place)) &&
           text_equal(a->what, b->what) && text_equal(a->remedy, b->remedy);
}

/* At one place in a file several boats may have it, which is told with their names. */
static bool problem_same(const struct problem *a, const struct problem *b)
{
    return problem_says_same(a, b) &&
           (a->place.source == NULL || text_equal(a->boat, b->boat));
}

/* The slot that holds an equal problem, or the free one where it belongs. */
static size_t *slot_find(const struct problems *problems, const struct problem *problem)
{
    size_t mask = problems->slot_count - 1;

    promise((problems->slot_count & mask) == 0 && problems->count < problems->slot_count);
    for (size_t i = (size_t)problem_hash(problem) & mask;; i = (i + 1) & mask) {
        size_t *slot = &problems->slots[i];
        if (*slot == 0 || problem_same(&problems->items[*slot - 1], problem))
            return slot;
    }
}

/* Twice as many slots as problems, so that a free one is near; all are put in anew when
 * it grows. */
static void slots_reserve(struct problems *problems)
{
    if (problems->slot_count > problems->count * 2)
        return;
    problems->slot_count = problems->slot_count == 0 ? 64 : problems->slot_count * 2;
    problems->slots = arena_array(problems->arena, problems->slot_count, sizeof(size_t));
    for (size_t i = 0; i < problems->count; i++)
        *slot_find(problems, &problems->items[i]) = i + 1;
}

/* Kept once: a problem that equals one already there is not counted again. */
static void problem_store(struct problems *problems, const struct problem *problem)
{
    promise(problem->severity < SEVERITY_COUNT && problem->check != NULL);
    slots_reserve(problems);
    size_t *slot = slot_find(problems, problem);

    if (*slot != 0)
        return;
    problems->items = arena_grow(problems->arena, problems->items, problems->count,
                                 &problems->capacity, sizeof *problems->items);
    problems->items[problems->count++] = *problem;
    *slot = problems->count;
    problems->counts[problem->severity]++;
}

/* Message and remedy are copied: those of a boat die with her arena. */
static void problem_make(struct problems *problems, struct problem *problem, const char *remedy,
                         const char *format, va_list list)
{
    problem->boat = problems->boat;
    problem->what = text_format_list(problems->arena, format, list);
    problem->remedy = copied(problems->arena, remedy);
    problem_store(problems, problem);
}

void problem_add(struct problems *problems, enum severity severity, struct place place,
                 const char *remedy, const char *format, ...)
{
    struct problem problem = {.severity = severity, .check = problems->check, .place = place};
    va_list list;

    va_start(list, format);
    problem_make(problems, &problem, remedy, format, list);
    va_end(list);
}

void problem_add_check(struct problems *problems, const char *check, enum severity severity,
                       struct place place, const char *remedy, const char *format, ...)
{
    struct problem problem = {.severity = severity, .check = check, .place = place};
    va_list list;

    va_start(list, format);
    problem_make(problems, &problem, remedy, format, list);
    va_end(list);
}

void problem_add_of(struct problems *problems, struct problem_subject of, enum severity severity,
                    struct place place, const char *remedy, const char *format, ...)
{
    struct problem problem = {.severity = severity, .check = of.check, .place = place,
                              .subject = copied(problems->arena, of.words)};
    va_list list;

    va_start(list, format);
    problem_make(problems, &problem, remedy, format, list);
    va_end(list);
}

static void problem_join(struct problems *problems, struct problem problem)
{
    struct arena *arena = problems->arena;

    problem.what = copied(arena, problem.what);
    problem.remedy = copied(arena, problem.remedy);
    problem.subject = copied(arena, problem.subject);
    problem_store(problems, &problem);
}

void problems_join(struct problems *problems, const struct problems *part)
{
    for (size_t i = 0; i < part->count; i++)
        problem_join(problems, part->items[i]);
}

void problems_join_errors_in(struct problems *problems, const struct problems *part,
                             const struct source *source)
{
    for (size_t i = 0; i < part->count; i++)
        if (part->items[i].severity == SEVERITY_ERROR && part->items[i].place.source == source)
            problem_join(problems, part->items[i]);
}

struct problems *problems_from(const struct problems *whole, enum severity least,
                               struct arena *arena)
{
    struct problems *worse = problems_new(arena);

    for (size_t i = 0; i < whole->count; i++)
        if (whole->items[i].severity >= least)
            problem_store(worse, &whole->items[i]);
    return worse;
}

struct problems *problems_part(const struct problems *whole)
{
    struct problems *part = problems_new(whole->arena);

    problems_about(part, whole->boat, whole->check);
    problems_know(part, whole->known);
    return part;
}

/* False where the part had an error; what it said is kept either way. */
bool problems_settle(struct problems *whole, const struct problems *part)
{
    problems_join(whole, part);
    return !problems_reach(part, SEVERITY_ERROR);
}

/* Newest first, and only as far back as this boat's: those of the boats before her stand
 * below. */
bool problems_error_at(const struct problems *problems, struct place place,
                       const char *check)
{
    for (size_t i = problems->count; i-- > 0;) {
        const struct problem *problem = &problems->items[i];
        if (!text_equal(problem->boat, problems->boat))
            return false;
        if (problem->severity == SEVERITY_ERROR && problem->place.source == place.source &&
            problem->place.line == place.line && problem->place.column == place.column &&
            (check == NULL || text_equal(problem->check, check)))
            return true;
    }
    return false;
}

size_t problems_count(const struct problems *problems, enum severity severity)
{
    promise(severity < SEVERITY_COUNT);
    return problems->counts[severity];
}

bool problems_reach(const struct problems *problems, enum severity severity)
{
    for (size_t i = severity; i < SEVERITY_COUNT; i++)
        if (problems->counts[i] > 0)
            return true;
    return false;
}

/* Files by name, what belongs to no file last. */
static int name_compare(const char *a, const char *b)
{
    if (a == NULL || b == NULL)
        return (a == NULL) - (b == NULL);
    return strcmp(a, b);
}

/* By file, line, column, then the gravest first; then in the order in which they were
 * told. */
static int problem_compare(const void *left, const void *right)
{
    const struct problem *a = *(const struct problem *const *)left;
    const struct problem *b = *(const struct problem *const *)right;
    int names = name_compare(place_name(a->place), place_name(b->place));

    if (names != 0)
        return names;
    if (a->place.line != b->place.line)
        return a->place.line < b->place.line ? -1 : 1;
    if (a->place.column != b->place.column)
        return a->place.column < b->place.column ? -1 : 1;
    if (a->severity != b->severity)
        return a->severity > b->severity ? -1 : 1;
    return (a > b) - (a < b);  /* one array: the order of addition */
}

/* A copy in order: what was collected stays in the order of telling. */
const struct problem *problems_sorted(const struct problems *problems, size_t *count)
{
    size_t total = problems->count;
    const struct problem **order = arena_array(problems->arena, total, sizeof *order);
    struct problem *sorted = arena_array(problems->arena, total, sizeof *sorted);

    for (size_t i = 0; i < total; i++)
        order[i] = &problems->items[i];
    qsort(order, total, sizeof *order, problem_compare);
    for (size_t i = 0; i < total; i++)
        sorted[i] = *order[i];
    *count = total;
    return sorted;
}
