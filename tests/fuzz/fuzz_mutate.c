/* fuzz_mutate.c - changes an input of words by its lines, so that more than the first check of a
 * reader is reached: lines go, come twice, change places; words and values are others of the
 * input, or of the dictionary that FUZZ_DICTIONARY names. Else libFuzzer changes bytes. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "fuzz.h"

enum { WORDS_MOST = 4096, TRIED_MOST = 400, STEPS_MOST = 4 };

size_t LLVMFuzzerMutate(uint8_t *bytes, size_t length, size_t most);
size_t LLVMFuzzerCustomMutator(uint8_t *bytes, size_t length, size_t most, unsigned seed);

/* ---- the dictionary ---- */

static char dictionary_bytes[1 << 18];
static const char *dictionary[WORDS_MOST];
static size_t dictionary_count;

/* Lines "word"; what is escaped is left to libFuzzer. */
static void dictionary_open(void)
{
    const char *path = getenv("FUZZ_DICTIONARY");
    FILE *file = path == NULL ? NULL : fopen(path, "r");
    dictionary[dictionary_count++] = "none";
    if (file == NULL)
        return;
    dictionary_bytes[fread(dictionary_bytes, 1, sizeof dictionary_bytes - 1, file)] = '\0';
    (void)fclose(file);
    for (char *at = dictionary_bytes; *at != '\0';) {
        char *end = at + strcspn(at, "\n");
        char *next = *end == '\0' ? end : end + 1;
        if (*at == '"' && end - at > 2 && end[-1] == '"' && memchr(at, '\\', (size_t)(end - at)) ==
            NULL && dictionary_count < WORDS_MOST) {
            end[-1] = '\0';
            dictionary[dictionary_count++] = at + 1;
        }
        at = next;
    }
}

/* ---- what is changed ---- */

struct mutation {
    char *at;                 /* `most` bytes of room */
    size_t length, most;
    unsigned seed;
};

struct piece { size_t at, length; };

static size_t below(struct mutation *mutation, size_t count)
{
    mutation->seed = mutation->seed * 1664525u + 1013904223u;
    return (mutation->seed >> 8) % (count == 0 ? 1 : count);
}

/* Puts bytes in the place of a piece, where there is room for them. */
static void piece_replace(struct mutation *mutation, struct piece piece, const char *with,
                          size_t length)
{
    size_t behind = piece.at + piece.length;
    if (mutation->length - piece.length + length > mutation->most || length > TRIED_MOST)
        return;
    char kept[TRIED_MOST];
    memcpy(kept, with, length);      /* it may stand in what is moved */
    memmove(mutation->at + piece.at + length, mutation->at + behind, mutation->length - behind);
    memcpy(mutation->at + piece.at, kept, length);
    mutation->length = mutation->length - piece.length + length;
}

/* A line with its end. */
static struct piece line_any(struct mutation *mutation)
{
    size_t at = below(mutation, mutation->length), end = at;
    while (at > 0 && mutation->at[at - 1] != '\n')
        at--;
    while (end < mutation->length && mutation->at[end] != '\n')
        end++;
    return (struct piece){at, (end < mutation->length ? end + 1 : end) - at};
}

static bool is_word_sign(char sign)
{
    return (sign >= 'a' && sign <= 'z') || (sign >= 'A' && sign <= 'Z') || sign == '_' ||
           (sign >= '0' && sign <= '9') || sign == '.' || sign == '-' || (sign & 0x80) != 0;
}

static struct piece word_any(struct mutation *mutation)
{
    size_t at = below(mutation, mutation->length), end;
    while (at < mutation->length && !is_word_sign(mutation->at[at]))
        at++;
    while (at > 0 && is_word_sign(mutation->at[at - 1]))
        at--;
    for (end = at; end < mutation->length && is_word_sign(mutation->at[end]);)
        end++;
    return (struct piece){at, end - at};
}

/* From behind a colon to the comma, bracket or line end. */
static struct piece value_any(struct mutation *mutation)
{
    size_t at = below(mutation, mutation->length), end;
    while (at < mutation->length && mutation->at[at] != ':')
        at++;
    while (at < mutation->length && (mutation->at[at] == ':' || mutation->at[at] == ' '))
        at++;
    for (end = at; end < mutation->length && strchr(",}]\n", mutation->at[end]) == NULL;)
        end++;
    return (struct piece){at, end - at};
}

static void number_put(struct mutation *mutation, struct piece piece)
{
    static const char *const numbers[] = {"0", "-1", "1", "999999999", "0.001", "2147483648",
                                          "99999999999999999999", "1e9", "2027-02-30", "2199-12",
                                          "[]", "{}", "\"\"", "~", "[x, x]", "{shut: x}"};
    const char *with = numbers[below(mutation, sizeof numbers / sizeof *numbers)];
    piece_replace(mutation, piece, with, strlen(with));
}

static void word_put(struct mutation *mutation, struct piece piece)
{
    const char *with = dictionary[below(mutation, dictionary_count)];
    piece_replace(mutation, piece, with, strlen(with));
}

static void piece_copy(struct mutation *mutation, struct piece to, struct piece from)
{
    piece_replace(mutation, to, mutation->at + from.at, from.length);
}

/* Lines that follow each other go to another place, or come twice. */
static void block_move(struct mutation *mutation, size_t lines)
{
    struct piece from = line_any(mutation), to = line_any(mutation);
    for (; lines > 0; lines--)
        while (from.at + from.length < mutation->length &&
               mutation->at[from.at + from.length++] != '\n')
            continue;
    to.length = 0;
    piece_copy(mutation, to, from);
}

static void step_make(struct mutation *mutation)
{
    struct piece line = line_any(mutation);
    switch (below(mutation, 12)) {
    case 0: case 1: piece_replace(mutation, line, "", 0); break;
    case 2: block_move(mutation, 0); break;
    case 3: block_move(mutation, below(mutation, 5)); break;
    case 4: piece_copy(mutation, line, line_any(mutation)); break;
    case 5: piece_copy(mutation, value_any(mutation), value_any(mutation)); break;
    case 6: word_put(mutation, value_any(mutation)); break;
    case 7: number_put(mutation, value_any(mutation)); break;
    case 8: case 9: word_put(mutation, word_any(mutation)); break;
    case 10: piece_copy(mutation, word_any(mutation), word_any(mutation)); break;
    default: piece_replace(mutation, word_any(mutation), "", 0); break;
    }
}

size_t LLVMFuzzerCustomMutator(uint8_t *bytes, size_t length, size_t most, unsigned seed)
{
    struct mutation mutation = {(char *)bytes, length, most, seed};
    if (dictionary_count == 0)
        dictionary_open();
    if (!harness.lines || length == 0 || below(&mutation, 4) == 0)
        return LLVMFuzzerMutate(bytes, length, most);
    for (size_t steps = 1 + below(&mutation, STEPS_MOST); steps > 0 && mutation.length > 0; steps--)
        step_make(&mutation);
    return mutation.length == 0 ? LLVMFuzzerMutate(bytes, length, most) : mutation.length;
}
