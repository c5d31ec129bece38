/* face_list.c - reads faces.txt: which font file plays which role, which package
 * brings it, and which checksums are known (room: type). It never opens a font. */
#include <string.h>

#include "face_private.h"
#include "promise.h"
#include "sha256.h"
#include "text.h"

#define LIST_LIMIT 65536
#define SPACES " \t\r"

static const char *const face_role_words[FACE_COUNT] = {
    [FACE_TEXT] = "text",
    [FACE_BOLD] = "bold",
    [FACE_CODE] = "code",
};

const char *face_role_word(enum face_role role)
{
    promise(role < FACE_COUNT && face_role_words[role] != NULL);
    return face_role_words[role];
}

/* What is left of a line to read. */
struct line_rest {
    const char *at;
    size_t length;
    struct arena *arena;
};

/* The next word of the line, or NULL at its end. */
static const char *line_word_next(struct line_rest *rest)
{
    size_t start = 0, end;

    while (start < rest->length && strchr(SPACES, rest->at[start]))
        start++;
    for (end = start; end < rest->length && !strchr(SPACES, rest->at[end]); end++)
        continue;
    if (start == end)
        return NULL;
    const char *word = arena_copy(rest->arena, rest->at + start, end - start);
    rest->at += end;
    rest->length -= end;
    return word;
}

static bool role_find(const char *word, enum face_role *role)
{
    for (size_t i = 0; i < FACE_COUNT; i++)
        if (text_equal(word, face_role_words[i])) {
            *role = (enum face_role)i;
            return true;
        }
    return false;
}

/* The version may hold a colon, the sum may not: the first colon divides. */
static struct known_sum *sum_read(const char *word, struct arena *arena)
{
    size_t digits = strspn(word, "0123456789abcdef");

    if (digits != SHA256_TEXT - 1 || word[digits] != ':' || word[digits + 1] == '\0')
        return NULL;
    struct known_sum *sum = arena_alloc(arena, sizeof *sum);
    sum->sum = arena_copy(arena, word, digits);
    sum->version = arena_copy(arena, word + digits + 1, strlen(word + digits + 1));
    return sum;
}

/* All sums of a line in their order; false when there is none or one is wrong. */
static bool sums_read(struct line_rest *rest, struct face_line *line)
{
    struct known_sum *last = NULL;
    const char *word;

    while ((word = line_word_next(rest)) != NULL) {
        struct known_sum *sum = sum_read(word, rest->arena);
        if (sum == NULL)
            return false;
        if (last == NULL)
            line->sums = sum;
        else
            last->next = sum;
        last = sum;
    }
    return last != NULL;
}

static bool line_read(struct line_rest rest, struct place place,
                      struct face_line lines[FACE_COUNT], struct problems *problems)
{
    static const char form[] = "write: role file package installed-path sha256:version";
    const char *word = line_word_next(&rest);
    struct face_line line = {.given = true, .place = place};
    enum face_role role;

    if (word == NULL || word[0] == '#')
        return true;
    if (!role_find(word, &role)) {
        problem_add(problems, SEVERITY_FAILURE, place, "roles are: text bold code",
                    "\"%s\" is no role of a face", word);
        return false;
    }
    line.file = line_word_next(&rest);
    line.package = line_word_next(&rest);
    line.installed = line_word_next(&rest);
    if (line.installed == NULL || strchr(line.file, '/') || !sums_read(&rest, &line)) {
        problem_add(problems, SEVERITY_FAILURE, place, form,
                    "the line for the %s face is malformed", word);
        return false;
    }
    if (lines[role].given) {
        problem_add(problems, SEVERITY_FAILURE, place, NULL, "the %s face is given twice", word);
        return false;
    }
    lines[role] = line;
    return true;
}

static bool roles_complete(const struct face_line lines[FACE_COUNT], const struct source *source,
                           struct problems *problems)
{
    bool complete = true;

    for (size_t i = 0; i < FACE_COUNT; i++)
        if (!lines[i].given) {
            problem_add(problems, SEVERITY_FAILURE, source_whole(source), NULL,
                        "no line for the %s face", face_role_words[i]);
            complete = false;
        }
    return complete;
}

const char *faces_list_path(const char *folder, struct arena *arena)
{
    return text_format(arena, "%s/faces.txt", folder);
}

bool face_list_read(const char *folder, struct arena *arena, struct face_line lines[FACE_COUNT],
                    struct problems *problems)
{
    const char *path = faces_list_path(folder, arena);
    struct source *source = NULL;
    bool good = true;

    if (source_read(arena, path, LIST_LIMIT, &source) != SOURCE_READ) {
        problem_add(problems, SEVERITY_FAILURE, (struct place){0},
                    "it is made together with the program, by make",
                    "the list of type faces %s cannot be read", path);
        return false;
    }
    for (size_t i = 0; i < source->line_count; i++) {
        struct line_rest rest = {.arena = arena};
        rest.at = source_line(source, (int)i + 1, &rest.length);
        struct place place = source_place(source, source->line_starts[i]);
        good = line_read(rest, place, lines, problems) && good;
    }
    return good && roles_complete(lines, source, problems);
}
