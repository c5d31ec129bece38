/* transliterate.c - a Latin spelling to propose for a name (room: radio).
 *
 * Tables after ICAO Doc 9303-3 (Latin, Cyrillic) and ISO 843 (Greek); other Latin
 * letters lose their marks (utf8proc). Nothing here is ever printed on a card: the
 * spelling that counts is the licence's, and people compare it. */
#include "administrations.h"

#include <string.h>
#include <utf8proc.h>

#include "text.h"
#include "utf8.h"

struct letter {
    uint32_t code_point;
    const char *latin;
};

static const struct letter letters[] = {
    /* Latin letters that do not just lose a mark */
    {0x00C4, "AE"}, {0x00C5, "AA"}, {0x00C6, "AE"},
    {0x00D6, "OE"}, {0x00D8, "OE"}, {0x0152, "OE"}, {0x00DC, "UE"},
    {0x00DF, "SS"}, {0x1E9E, "SS"}, {0x0110, "D"}, {0x00D0, "D"}, {0x0141, "L"},
    {0x0131, "I"}, {0x00DE, "TH"},
    /* signs of fine printing */
    {0x2018, "'"}, {0x2019, "'"}, {0x02BC, "'"}, {0x2010, "-"}, {0x2011, "-"}, {0x2013, "-"},
    {0x00A0, " "},
    /* Greek capitals */
    {0x0391, "A"}, {0x0392, "V"}, {0x0393, "G"}, {0x0394, "D"}, {0x0395, "E"}, {0x0396, "Z"},
    {0x0397, "I"}, {0x0398, "TH"}, {0x0399, "I"}, {0x039A, "K"}, {0x039B, "L"}, {0x039C, "M"},
    {0x039D, "N"}, {0x039E, "X"}, {0x039F, "O"}, {0x03A0, "P"}, {0x03A1, "R"}, {0x03A3, "S"},
    {0x03A4, "T"}, {0x03A5, "Y"}, {0x03A6, "F"}, {0x03A7, "CH"}, {0x03A8, "PS"}, {0x03A9, "O"},
    /* Cyrillic capitals */
    {0x0410, "A"}, {0x0411, "B"}, {0x0412, "V"}, {0x0413, "G"},
    {0x0414, "D"}, {0x0415, "E"}, {0x0401, "E"}, {0x0416, "ZH"}, {0x0417, "Z"},
    {0x0418, "I"}, {0x0419, "I"}, {0x041A, "K"}, {0x041B, "L"},
    {0x041C, "M"}, {0x041D, "N"}, {0x041E, "O"}, {0x041F, "P"}, {0x0420, "R"},
    {0x0421, "S"}, {0x0422, "T"}, {0x0423, "U"}, {0x0424, "F"}, {0x0425, "KH"}, {0x0426, "TS"},
    {0x0427, "CH"}, {0x0428, "SH"}, {0x0429, "SHCH"}, {0x042A, "IE"}, {0x042B, "Y"},
    {0x042C, ""}, {0x042D, "E"}, {0x042E, "IU"}, {0x042F, "IA"},
    {0x0404, "IE"}, {0x0406, "I"}, {0x0407, "I"}, {0x0490, "G"},
    /* Serbian and Montenegrin */
    {0x0402, "D"}, {0x0408, "J"}, {0x0409, "LJ"}, {0x040A, "NJ"}, {0x040B, "C"}, {0x040F, "DZ"},
};

/* The second spelling that ICAO 9303-3 permits. */
static const struct letter others[] = {
    {0x00C4, "A"}, {0x00C5, "A"}, {0x00D6, "O"}, {0x00DC, "U"}, {0x0110, "DJ"},
};

/* In a name that holds letters only Ukrainian has. */
static const struct letter ukrainian[] = {
    {0x0413, "H"}, {0x0418, "Y"},
};

#define COUNT(rows) (sizeof(rows) / sizeof((rows)[0]))

/* NULL: not in these rows. */
static const char *letter_find(const struct letter *rows, size_t count, uint32_t code_point)
{
    for (size_t i = 0; i < count; i++)
        if (rows[i].code_point == code_point)
            return rows[i].latin;
    return NULL;
}

static bool is_plain_letter(uint32_t code_point)
{
    return code_point > 0 && code_point < 0x80 && (strchr(" -'.&", (int)code_point) != NULL
        || (code_point >= 'A' && code_point <= 'Z') || (code_point >= '0' && code_point <= '9'));
}

/* The letter without its marks, in capitals; 0 when it has none to lose. */
static uint32_t letter_without_marks(uint32_t code_point)
{
    utf8proc_int32_t parts[8];
    int boundary = 0;
    utf8proc_ssize_t count = utf8proc_decompose_char((utf8proc_int32_t)code_point, parts, 8,
                                                     UTF8PROC_DECOMPOSE, &boundary);
    if (count < 2 || count > 8)
        return 0;
    for (utf8proc_ssize_t i = 1; i < count; i++)
        if (utf8proc_category(parts[i]) != UTF8PROC_CATEGORY_MN)
            return 0;
    return (uint32_t)utf8proc_toupper(parts[0]);
}

/* A name as it is being spelled anew, a code point at a time. */
struct spelling {
    const uint32_t *signs;
    size_t count;
    enum name_alphabet alphabet;
    bool ukrainian;
    struct text_builder latin, other;
};

/* As the letters of the name around it ask. */
static const char *letter_latin(const struct spelling *spelling, uint32_t code_point)
{
    const char *latin = spelling->ukrainian
                            ? letter_find(ukrainian, COUNT(ukrainian), code_point) : NULL;
    return latin != NULL ? latin : letter_find(letters, COUNT(letters), code_point);
}

static uint32_t sign_at(const struct spelling *spelling, size_t index)
{
    return index < spelling->count ? spelling->signs[index] : 0;
}

/* ---- Greek letters that are read together ---- */

enum { GREEK_ALPHA = 0x391, GREEK_GAMMA = 0x393, GREEK_EPSILON = 0x395, GREEK_MU = 0x39C,
       GREEK_OMICRON = 0x39F, GREEK_PI = 0x3A0, GREEK_UPSILON = 0x3A5,
       GREEK_UPSILON_TONOS = 0x38E };

/* Before these ΑΥ and ΕΥ are AF and EF, and so they are at the end of a word. */
static bool is_voiceless(uint32_t code_point)
{
    static const uint32_t voiceless[] = {0x398, 0x39A, 0x39E, 0x3A0, 0x3A3, 0x3A4, 0x3A6, 0x3A7,
                                         0x3A8};
    for (size_t i = 0; i < sizeof voiceless / sizeof voiceless[0]; i++)
        if (voiceless[i] == code_point)
            return true;
    return !(code_point >= 0x370 && code_point < 0x400);
}

/* A diaeresis parts the two letters, an accent on the second does not. */
static const char *greek_pair(const struct spelling *spelling, size_t index)
{
    uint32_t first = sign_at(spelling, index), second = sign_at(spelling, index + 1);
    bool upsilon = second == GREEK_UPSILON || second == GREEK_UPSILON_TONOS;
    bool voiceless = is_voiceless(sign_at(spelling, index + 2));
    bool in_front = index == 0 || spelling->signs[index - 1] == ' ';
    if (upsilon && first == GREEK_OMICRON)
        return "OU";
    if (upsilon && first == GREEK_ALPHA)
        return voiceless ? "AF" : "AV";
    if (upsilon && first == GREEK_EPSILON)
        return voiceless ? "EF" : "EV";
    if (first == GREEK_GAMMA && second == GREEK_GAMMA)
        return "NG";
    return first == GREEK_MU && second == GREEK_PI && in_front ? "B" : NULL;
}

/* ---- letter by letter ---- */

static void both_add(struct spelling *spelling, const char *latin, const char *other)
{
    text_add(&spelling->latin, latin);
    text_add(&spelling->other, other != NULL ? other : latin);
}

/* In a name of several alphabets a letter may be what it looks like, or a stray one may
 * be the other: both spellings are proposed. */
static bool looks_count(const struct spelling *spelling, uint32_t code_point)
{
    return spelling->alphabet == ALPHABET_MIXED || code_point > 0xFF00;
}

/* The second spelling of a letter; NULL: none. */
static const char *other_latin(const struct spelling *spelling, uint32_t code_point)
{
    const char *latin = spelling->alphabet == ALPHABET_MIXED
                            ? letter_latin(spelling, code_point) : NULL;
    const char *other = letter_find(others, COUNT(others), code_point);
    return other != NULL ? other : latin;
}

static bool latin_letter_add(struct spelling *spelling, uint32_t code_point)
{
    char sign[2] = "";
    if (looks_count(spelling, code_point))
        sign[0] = latin_lookalike(code_point);
    const char *latin = sign[0] != '\0' ? sign : letter_latin(spelling, code_point);
    if (latin == NULL && !is_plain_letter(code_point)) {
        code_point = letter_without_marks(code_point);
        latin = letter_latin(spelling, code_point);
    }
    if (latin == NULL && !is_plain_letter(code_point))
        return false;
    if (latin == NULL) {
        sign[0] = (char)code_point;
        latin = sign;
    }
    both_add(spelling, latin, other_latin(spelling, code_point));
    return true;
}

static uint32_t *signs_of(struct arena *arena, const char *upper, size_t *count)
{
    size_t length = strlen(upper), index = 0;
    uint32_t *signs = arena_array(arena, length + 1, sizeof *signs);
    for (*count = 0; index < length; ++*count)
        if (!utf8_next(upper, length, &index, &signs[*count]))
            return NULL;
    return signs;
}

/* Є, І, Ї and Ґ stand in no other name that is likely here. */
static bool has_ukrainian(const struct spelling *spelling)
{
    for (size_t i = 0; i < spelling->count; i++)
        if (spelling->signs[i] == 0x404 || spelling->signs[i] == 0x406 ||
            spelling->signs[i] == 0x407 || spelling->signs[i] == 0x490)
            return true;
    return false;
}

const char *name_transliterate(struct arena *arena, const char *upper, const char **other)
{
    struct spelling spelling = {.alphabet = name_alphabet(upper),
                                .latin = text_builder_in(arena),
                                .other = text_builder_in(arena)};
    *other = NULL;
    spelling.signs = signs_of(arena, upper, &spelling.count);
    if (spelling.signs == NULL)
        return NULL;
    spelling.ukrainian = spelling.alphabet == ALPHABET_CYRILLIC && has_ukrainian(&spelling);
    for (size_t i = 0; i < spelling.count; i++) {
        const char *pair = spelling.alphabet == ALPHABET_GREEK ? greek_pair(&spelling, i) : NULL;
        if (pair != NULL) {
            both_add(&spelling, pair, NULL);
            i++;
        } else if (!latin_letter_add(&spelling, spelling.signs[i])) {
            return NULL;
        }
    }
    if (!text_equal(spelling.latin.at, spelling.other.at))
        *other = spelling.other.at;
    return spelling.latin.at;
}

/* ---- alphabets ---- */

static const struct { uint32_t first, last; enum name_alphabet alphabet; } alphabet_blocks[] = {
    {'A', 'Z', ALPHABET_LATIN}, {0xC0, 0x24F, ALPHABET_LATIN}, {0x1E00, 0x1EFF, ALPHABET_LATIN},
    {0xFF21, 0xFF3A, ALPHABET_LATIN}, {0x370, 0x3FF, ALPHABET_GREEK},
    {0x1F00, 0x1FFF, ALPHABET_GREEK}, {0x400, 0x52F, ALPHABET_CYRILLIC},
};

enum name_alphabet name_alphabet(const char *upper)
{
    size_t length = strlen(upper), index = 0;
    bool seen = false;
    enum name_alphabet alphabet = ALPHABET_LATIN;
    uint32_t code_point;
    while (index < length && utf8_next(upper, length, &index, &code_point))
        for (size_t i = 0; i < sizeof alphabet_blocks / sizeof alphabet_blocks[0]; i++) {
            if (code_point < alphabet_blocks[i].first || code_point > alphabet_blocks[i].last)
                continue;
            if (seen && alphabet != alphabet_blocks[i].alphabet)
                return ALPHABET_MIXED;
            alphabet = alphabet_blocks[i].alphabet;
            seen = true;
        }
    return alphabet;
}
