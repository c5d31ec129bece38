/* fuzz.c - one input through its harness, and what is looked at of every input. */
#include "fuzz.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "text.h"
#include "utf8.h"

#define INPUT_ARENA_LIMIT ((size_t)512 * 1024 * 1024)

_Noreturn void check_failed(const char *file, int line, const char *what)
{
    fprintf(stderr, "%s:%d: does not hold: %s\n", file, line, what);
    abort();
}

void fuzz_one(const char *bytes, size_t length)
{
    struct fuzz fuzz = {.arena = arena_new(INPUT_ARENA_LIMIT), .length = length};
    fuzz.problems = problems_new(fuzz.arena);
    problems_about(fuzz.problems, "boat", "record");
    fuzz.bytes = arena_copy(fuzz.arena, length == 0 ? "" : bytes, length);
    harness.one(&fuzz);
    arena_free(fuzz.arena);
}

const struct source *fuzz_part(const struct fuzz *fuzz, const char *name, const char *at,
                               size_t length)
{
    return source_from(fuzz->arena, name, at, length);
}

const struct source *fuzz_source(const struct fuzz *fuzz, const char *name)
{
    return fuzz_part(fuzz, name, fuzz->bytes, fuzz->length);
}

static size_t line_find(const struct fuzz *fuzz, const char *line)
{
    size_t length = strlen(line);
    for (size_t i = 0; i + length <= fuzz->length; i++)
        if (memcmp(fuzz->bytes + i, line, length) == 0)
            return i;
    return fuzz->length;
}

void fuzz_two(const struct fuzz *fuzz, const char *const names[2], const struct source *out[2])
{
    size_t at = line_find(fuzz, SECOND_FILE);
    size_t second = at == fuzz->length ? at : at + strlen(SECOND_FILE);
    out[0] = fuzz_part(fuzz, names[0], fuzz->bytes, at);
    out[1] = fuzz_part(fuzz, names[1], fuzz->bytes + second, fuzz->length - second);
}

size_t fuzz_choice(const struct fuzz *fuzz, size_t count)
{
    return (size_t)(bytes_hash(BYTES_HASH_START, fuzz->bytes, fuzz->length) >> 16) % count;
}

bool text_is_shown(const char *text)
{
    size_t length = strlen(text);
    for (size_t i = 0; i < length;) {
        uint32_t point;
        if (!utf8_next(text, length, &i, &point))
            return false;
        if (point != '\n' && point != '\t' && (point < 0x20 || (point >= 0x7F && point < 0xA0)))
            return false;
    }
    return true;
}

/* ---- problems ---- */

static long points_in(const struct source *source, int line)
{
    size_t length, i = 0;
    long count = 0;
    const char *at = source_line(source, line, &length);
    while (i < length) {
        uint32_t point;
        if (!utf8_next(at, length, &i, &point))
            i++;
        count++;
    }
    return count;
}

static void place_check(const struct place *place)
{
    CHECK(place->source != NULL || place->line == 0);
    if (place->source == NULL || place->line == 0)
        return;
    CHECK(place->line >= 1 && (size_t)place->line <= place->source->line_count);
    CHECK(place->column >= 1 && place->span >= 0);
    CHECK(place->column - 1 <= points_in(place->source, place->line));
}

static void problem_check(const struct fuzz *fuzz, const struct problem *problem)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    CHECK(!text_empty(problem->what));
    CHECK(problem->remedy == NULL || *problem->remedy != '\0');
    if (utf8_first_invalid(fuzz->bytes, fuzz->length) == fuzz->length) {
        CHECK(text_code_points(problem->what) >= 0);
        CHECK(problem->remedy == NULL || text_code_points(problem->remedy) >= 0);
    }
    CHECK(problem->check != NULL && problem->severity < SEVERITY_COUNT);
    place_check(&problem->place);
    problem_print(problem, &out);
    CHECK(text_is_shown(out.at) && text_ends(out.at, "\n"));
}

void problems_check(const struct fuzz *fuzz)
{
    size_t count;
    const struct problem *all = problems_sorted(fuzz->problems, &count);
    for (size_t i = 0; i < count; i++)
        problem_check(fuzz, &all[i]);
}

static void problems_show(const struct fuzz *fuzz)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    size_t count;
    const struct problem *all = problems_sorted(fuzz->problems, &count);
    for (size_t i = 0; i < count; i++)
        problem_print(&all[i], &out);
    fprintf(stderr, "%s", out.length > 0 ? out.at : "nothing was told\n");
}

/* An error in a file names its place there and how it is mended. */
static void error_check(const struct fuzz *fuzz, const struct problem *error)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    problem_print(error, &out);
    if (error->severity != SEVERITY_ERROR || error->place.source == NULL || error->remedy == NULL)
        fprintf(stderr, "%s", out.at);
    CHECK(error->severity == SEVERITY_ERROR);
    CHECK(error->place.source != NULL);
    CHECK(error->remedy != NULL);
}

void sound_check(const struct fuzz *fuzz, bool sound)
{
    size_t count;
    const struct problem *all = problems_sorted(fuzz->problems, &count);
    problems_check(fuzz);
    bool good = problems_reach(fuzz->problems, sound ? SEVERITY_ERROR : SEVERITY_HELD) != sound;
    if (!good)
        problems_show(fuzz);
    CHECK(good);
    for (size_t i = 0; i < count; i++)
        if (all[i].severity >= SEVERITY_ERROR)
            error_check(fuzz, &all[i]);
}
