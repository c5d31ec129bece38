/* text_nearest.c - the known word a mistyped one was meant to be (room: base).
 * Compares code points, not bytes, and sees no difference between a and A.
 * Never guesses for words longer than any key. */
#include "text.h"

#include <stdint.h>
#include <string.h>

#include "promise.h"
#include "utf8.h"

#define WORD_LIMIT 64
#define CHANGES_LIMIT 3

struct word {
    uint32_t letters[WORD_LIMIT];
    size_t length;
};

static uint32_t letter_fold(uint32_t letter)
{
    return letter >= 'A' && letter <= 'Z' ? letter + ('a' - 'A') : letter;
}

/* False for words too long to guess at and for invalid UTF-8. */
static bool word_from(const char *string, struct word *word)
{
    size_t length = strlen(string);

    word->length = 0;
    for (size_t index = 0; index < length; word->length++) {
        uint32_t letter;
        if (word->length == WORD_LIMIT || !utf8_next(string, length, &index, &letter))
            return false;
        word->letters[word->length] = letter_fold(letter);
    }
    return true;
}

static size_t least(size_t a, size_t b)
{
    return a < b ? a : b;
}

/* One cell of the distance table; the rows stand for a's letters so far. */
static size_t cell(const struct word *a, const struct word *b, size_t i, size_t j,
                   const size_t rows[3][WORD_LIMIT + 1])
{
    const size_t *row = rows[i % 3];
    const size_t *above = rows[(i + 2) % 3];
    const size_t *second_above = rows[(i + 1) % 3];
    bool same = a->letters[i - 1] == b->letters[j - 1];
    size_t best = least(above[j] + 1, row[j - 1] + 1);

    best = least(best, above[j - 1] + (same ? 0 : 1));
    if (i > 1 && j > 1 && a->letters[i - 1] == b->letters[j - 2] &&
        a->letters[i - 2] == b->letters[j - 1])
        best = least(best, second_above[j - 2] + 1);
    return best;
}

/* Insertions, deletions, replacements and swaps of neighbours from a to b. */
static size_t word_distance(const struct word *a, const struct word *b)
{
    size_t rows[3][WORD_LIMIT + 1] = {{0}};

    promise(a->length <= WORD_LIMIT && b->length <= WORD_LIMIT);
    for (size_t j = 0; j <= b->length; j++)
        rows[0][j] = j;
    for (size_t i = 1; i <= a->length; i++) {
        rows[i % 3][0] = i;
        for (size_t j = 1; j <= b->length; j++)
            rows[i % 3][j] = cell(a, b, i, j, (const size_t(*)[WORD_LIMIT + 1])rows);
    }
    return rows[a->length % 3][b->length];
}

const char *text_nearest(const char *word, const char *const *candidates, size_t count)
{
    struct word given, known;

    if (word == NULL || !word_from(word, &given) || given.length == 0)
        return NULL;
    size_t allowed = least(given.length < 3 ? 1 : given.length / 3, CHANGES_LIMIT);
    const char *nearest = NULL;

    for (size_t i = 0; i < count; i++) {
        if (!word_from(candidates[i], &known))
            continue;
        size_t distance = word_distance(&given, &known);
        if (distance < allowed || (distance == allowed && nearest == NULL)) {
            nearest = candidates[i];
            if (distance == 0)
                return nearest;
            allowed = distance;
        }
    }
    return nearest;
}

const char *text_meant(struct arena *arena, const char *word)
{
    return text_format(arena, "did you mean \"%s\"?", word);
}

const char *text_nearest_remedy(struct arena *arena, const char *word,
                                const char *const *candidates, size_t count,
                                const char *otherwise)
{
    const char *nearest = text_nearest(word, candidates, count);
    return nearest == NULL ? otherwise : text_meant(arena, nearest);
}

size_t text_list_length(const char *const *list)
{
    size_t length = 0;

    while (list[length] != NULL)
        length++;
    return length;
}
