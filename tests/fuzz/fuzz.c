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
        if (point != '\n' && (point < 0x20 || (point >= 0x7F && point < 0xA0)))
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
    CHECK(!text_empty(problem->what) && text_is_shown(problem->what));
    CHECK(problem->remedy == NULL || (*problem->remedy != '\0' && text_is_shown(problem->remedy)));
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

/* An error in a file names its place there and how it is mended. */
void sound_check(const struct fuzz *fuzz, bool sound)
{
    size_t count;
    const struct problem *all = problems_sorted(fuzz->problems, &count);
    problems_check(fuzz);
    CHECK(sound == !problems_reach(fuzz->problems, SEVERITY_ERROR));
    for (size_t i = 0; i < count; i++)
        if (all[i].severity >= SEVERITY_ERROR) {
            CHECK(all[i].severity == SEVERITY_ERROR);
            CHECK(all[i].place.source != NULL && all[i].remedy != NULL);
        }
}
