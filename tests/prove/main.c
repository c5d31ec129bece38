/* main.c - proves the procedures of a folder for all boats that a record can express, part by
 * part: prove FOLDER [BASE] [--card KEY] [--part STEP] [--without ROW] [--count]
 * [--stop], which stops at the first failure. BASE: a base's folder, whose own procedures take the
 * place of those of their key. A part is a step, `decision` or `call`. Status 1:
 * something leads into its own hazard, a case is never taken, or a card has no words for some
 * boat; 2: the procedures cannot be read. */
#include "states.h"

#include "promise.h"
#include "text.h"

#include <dirent.h>
#include <malloc.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define HOUSE_ARENA ((size_t)512 * 1024 * 1024)
#define HOUSE_FILE ((size_t)256 * 1024)
#define PROCEDURES_OF_HOUSE 60

struct asked_for { const char *folder, *base, *card, *part, *without; bool count, stop; };

/* ---- the house ---- */

static const struct source *house_file(struct house *house, const char *name)
{
    struct source *source = NULL;
    if (source_read(house->arena, name, HOUSE_FILE, &source) != SOURCE_READ) {
        fprintf(stderr, "%s cannot be read\n", name);
        exit(2);
    }
    return source;
}

static void must_be_right(struct house *house, struct problems *problems)
{
    size_t count;
    const struct problem *list = problems_sorted(problems, &count);
    struct text_builder out = text_builder_in(house->arena);
    if (!problems_reach(problems, SEVERITY_ERROR))
        return;
    for (size_t i = 0; i < count; i++)
        problem_print(&list[i], &out);
    fprintf(stderr, "%s", out.at);
    exit(2);
}

static const struct procedure *house_procedure(struct house *house, const char *folder,
                                               const char *name, struct problems *problems)
{
    const struct procedure_text_file text = {
        "en", house_file(house, text_format(house->arena, "%s/words/en/%s", folder, name))};
    const struct procedure_files files = {
        .logic = house_file(house, text_format(house->arena, "%s/%s", folder, name)),
        .texts = &text, .text_count = 1};
    return procedure_read(&files, house->authorities, house->arena, problems);
}

static const char *file_name(const char *path)
{
    const char *last = strrchr(path, '/');
    return last == NULL ? path : last + 1;
}

static int number_compare(const void *first, const void *second)
{
    const struct procedure *const *a = first, *const *b = second;
    return ((*a)->number.milli > (*b)->number.milli) - ((*a)->number.milli < (*b)->number.milli);
}

/* The row of that file name's procedure; one behind the last where there is none. */
static size_t row_of(const struct procedure *const *rows, size_t count, const char *file)
{
    size_t row = 0;
    while (row < count && !text_equal(file_name(rows[row]->source->name), file))
        row++;
    return row;
}

/* Adds what the folder holds to the rows, or puts it in the place of one of the same file name;
 * gives how many there are then. */
static size_t folder_open(struct house *house, const char *name, const struct procedure **rows,
                          size_t count, struct problems *problems)
{
    DIR *folder = opendir(name);
    if (folder == NULL) {
        fprintf(stderr, "%s is no folder\n", name);
        exit(2);
    }
    for (struct dirent *entry; (entry = readdir(folder)) != NULL;) {
        if (!text_ends(entry->d_name, ".yaml") || text_equal(entry->d_name, "sources.yaml"))
            continue;
        size_t row = row_of(rows, count, entry->d_name);
        promise(row < PROCEDURES_OF_HOUSE);
        rows[row] = house_procedure(house, name, entry->d_name, problems);
        must_be_right(house, problems);
        count += row == count ? 1 : 0;
    }
    closedir(folder);
    return count;
}

static void procedures_open(struct house *house, const struct asked_for *asked,
                            struct problems *problems)
{
    const struct procedure **rows = arena_array(house->arena, PROCEDURES_OF_HOUSE, sizeof *rows);
    size_t count = folder_open(house, asked->folder, rows, 0, problems);
    if (asked->base != NULL)
        count = folder_open(house, text_format(house->arena, "%s/procedures", asked->base), rows,
                            count, problems);
    qsort(rows, count, sizeof *rows, number_compare);
    house->procedures = (struct procedure_set){rows, count};
}

/* The program's, and those of the base. */
static const struct authorities *sources_open(struct house *house, const struct asked_for *asked,
                                              struct problems *problems)
{
    const struct authorities *ours = authorities_read(
        house_file(house, text_format(house->arena, "%s/sources.yaml", asked->folder)),
        house->arena, problems);
    const char *name = asked->base == NULL
                           ? NULL
                           : text_format(house->arena, "%s/procedures/sources.yaml", asked->base);
    struct source *source = NULL;
    if (ours == NULL || name == NULL ||
        source_read(house->arena, name, HOUSE_FILE, &source) != SOURCE_READ)
        return ours;
    const struct authorities *own = authorities_read(source, house->arena, problems);
    must_be_right(house, problems);
    struct authorities *all = arena_alloc(house->arena, sizeof *all);
    struct authority *rows = arena_array(house->arena, ours->count + own->count, sizeof *rows);
    memcpy(rows, ours->rows, ours->count * sizeof *rows);
    memcpy(rows + ours->count, own->rows, own->count * sizeof *rows);
    *all = (struct authorities){rows, ours->count + own->count};
    return all;
}

/* The base, what is asked for of a base being recorded. */
static const struct base_record *base_whole(const struct base_record *base, struct arena *arena)
{
    struct base_record *whole = arena_alloc(arena, sizeof *whole);
    *whole = *base;
    if (whole->drowning_breaths.value == BREATHS_NONE)
        whole->drowning_breaths.value = BREATHS_FIVE;
    if (whole->sting.value == STING_NONE)
        whole->sting.value = STING_SEA_WATER;
    if (whole->tide.value == TIDE_UNSAID)
        whole->tide.value = TIDE_LARGE;
    return whole;
}

static void house_open(struct house *house, const struct asked_for *asked)
{
    const char *folder = asked->folder;
    bool sound = false;
    house->arena = arena_new(HOUSE_ARENA);
    struct problems *problems = problems_new(house->arena);
    house->words = words_read(
        house_file(house, text_format(house->arena, "%s/words/en/words.yaml", folder)), "en",
        house->arena, problems);
    house->authorities = sources_open(house, asked, problems);
    house->base = base_whole(base_read(house_file(house, "tests/fleet/base.yaml"), house->arena,
                                       problems, &sound), house->arena);
    procedures_open(house, asked, problems);
    must_be_right(house, problems);
    house->taken = arena_array(house->arena, case_number(house, NULL) + 1, sizeof *house->taken);
}

static struct forbids forbids_less(struct house *house, const char *without)
{
    const struct forbids all = forbids_all();
    struct forbid *rows = arena_array(house->arena, all.count, sizeof *rows);
    size_t count = 0;
    for (size_t i = 0; i < all.count; i++)
        if (!text_equal(all.rows[i].id, without))
            rows[count++] = all.rows[i];
    return (struct forbids){rows, count};
}

/* ---- units ---- */

static size_t unit_states(const struct unit *unit, struct arena *arena)
{
    size_t states = 0;
    for (size_t h = 0; h < hull_kind_count; h++) {
        if (!hull_is_tried(unit, h))
            continue;
        const struct reads *reads = unit_reads(unit, hull_boat(&hull_kinds[h], arena), arena);
        struct forms *varied = arena_array(arena, READS_MOST, sizeof *varied);
        for (size_t i = 0; i < reads->count; i++)
            varied[i] = forms_of(&reads->items[i], arena);
        states += product_of(varied, reads->count) * grounds_of(varied, reads->count);
    }
    return states;
}

/* Each value of what the part asks her base for, not recorded among them; gives how many bases
 * that are. NULL: they are only counted. */
static size_t bases_prove(struct house *house, const struct unit *unit, struct tally *tally)
{
    struct arena *arena = arena_new(STATE_ARENA);
    const struct reads *reads = unit_reads(unit, NULL, arena);
    const struct base_record *own = house->base;
    struct base_record base = *own;
    const size_t breaths = reads->breaths ? BREATHS_COUNT : 1,
                 stings = reads->sting ? STING_COUNT : 1, tides = reads->tide ? TIDE_COUNT : 1;
    house->base = &base;
    for (size_t i = 0; tally != NULL && i < breaths * stings * tides; i++) {
        if (reads->breaths)
            base.drowning_breaths.value = (enum breaths)(i % breaths);
        if (reads->sting)
            base.sting.value = (enum sting)(i / breaths % stings);
        if (reads->tide)
            base.tide.value = (enum tide)(i / breaths / stings);
        unit_prove(house, unit, tally);
    }
    house->base = own;
    arena_free(arena);
    return breaths * stings * tides;
}

static void unit_run(struct house *house, const struct unit *unit,
                     const struct asked_for *asked, struct tally *whole)
{
    struct tally tally = {.told = whole->told};
    if (asked->part != NULL && !text_equal(asked->part, unit->name))
        return;
    if (asked->count)
        tally.states = unit_states(unit, house->arena) * bases_prove(house, unit, NULL);
    else
        bases_prove(house, unit, &tally);
    printf("%-14s %-10s %8zu states, %zu of them hold a card back%s\n",
           unit->procedure->key.text, unit->name, tally.states, tally.held,
           tally.failures > 0 ? ", FAILS" : "");
    fflush(stdout);
    whole->states += tally.states;
    whole->held += tally.held;
    whole->failures += tally.failures;
    whole->told = tally.told;
}

static void procedure_run(struct house *house, const struct procedure *procedure,
                          const struct asked_for *asked, struct tally *whole)
{
    seen_forget();
    for (size_t i = 0; i < procedure->step_count; i++) {
        const struct procedure_step *step = &procedure->steps[i];
        unit_run(house, &(struct unit){procedure, step, step->id.text}, asked, whole);
    }
    unit_run(house, &(struct unit){procedure, NULL, "decision"}, asked, whole);
    unit_run(house, &(struct unit){procedure, NULL, "call"}, asked, whole);
}

/* Cases that no boat takes. */
static size_t untaken_tell(const struct house *house, const struct procedure *procedure)
{
    size_t untaken = 0;
    for (size_t i = 0; i < procedure->step_count; i++)
        for (size_t c = 0; c < procedure->steps[i].case_count; c++) {
            const struct step_case *step_case = &procedure->steps[i].cases[c];
            if (house->taken[case_number(house, step_case)])
                continue;
            untaken++;
            printf("NEVER TAKEN  %s, step %s, case %s (line %d)\n", procedure->key.text,
                   procedure->steps[i].id.text,
                   step_case->id.text == NULL ? "-" : step_case->id.text, step_case->place.line);
        }
    return untaken;
}

static struct asked_for arguments(int count, char **words)
{
    struct asked_for asked = {.folder = count > 1 ? words[1] : "procedures"};
    for (int i = 2; i < count; i++) {
        if (strcmp(words[i], "--count") == 0)
            asked.count = true;
        else if (strcmp(words[i], "--stop") == 0)
            asked.stop = true;
        else if (i == 2 && !text_begins(words[i], "--"))
            asked.base = words[i];
        else if (strcmp(words[i], "--card") == 0 && i + 1 < count)
            asked.card = words[++i];
        else if (strcmp(words[i], "--part") == 0 && i + 1 < count)
            asked.part = words[++i];
        else if (strcmp(words[i], "--without") == 0 && i + 1 < count)
            asked.without = words[++i];
    }
    return asked;
}

/* Each state has an arena of its own: what one gives back, the next takes, without the system. */
static void memory_keep(void)
{
    enum { KEPT = 256 * 1024 * 1024 };
    (void)mallopt(M_TRIM_THRESHOLD, KEPT);
    (void)mallopt(M_MMAP_THRESHOLD, KEPT);
}

int main(int argument_count, char **words)
{
    const struct asked_for asked = arguments(argument_count, words);
    static struct house house;
    struct tally whole = {0};
    size_t untaken = 0;
    memory_keep();
    house_open(&house, &asked);
    house.forbids = forbids_less(&house, asked.without);
    house.stop = asked.stop;
    for (size_t i = 0; i < house.procedures.count; i++) {
        const struct procedure *procedure = house.procedures.rows[i];
        if (procedure->step_count == 0 ||
            (asked.card != NULL && !text_equal(asked.card, procedure->key.text)))
            continue;
        procedure_run(&house, procedure, &asked, &whole);
        untaken += asked.count || asked.part != NULL ? 0 : untaken_tell(&house, procedure);
    }
    printf("%zu states were composed and proved, %zu of them hold a card back\n", whole.states,
           whole.held);
    if (whole.failures + untaken > 0)
        printf("%zu states fail, %zu cases are never taken\n", whole.failures, untaken);
    arena_free(house.arena);
    return whole.failures + untaken > 0;
}
