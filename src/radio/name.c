/* name.c - a name taken apart: how it is called out and spelled, and what keeps it from
 * being so (room: radio). Never puts a spelling of its own in place of the licence's:
 * it only proposes one. */
#include "radio.h"

#include <string.h>

#include "administrations.h"
#include "text.h"
#include "utf8.h"

#define TYPOGRAPHIC_APOSTROPHE 0x2019

static bool may_stand(uint32_t code_point)
{
    return (code_point >= 'A' && code_point <= 'Z') || (code_point >= '0' && code_point <= '9')
        || code_point == ' ' || code_point == '-' || code_point == '\'' || code_point == '.'
        || code_point == '&' || code_point == TYPOGRAPHIC_APOSTROPHE;
}

/* Finds the first character that cannot be called out, and the fine apostrophe. */
static bool name_is_plain(const char *upper, struct name *name)
{
    size_t length = strlen(upper), index = 0;
    for (size_t at = 1; index < length; at++) {
        uint32_t code_point = 0xFFFD;
        bool valid = utf8_next(upper, length, &index, &code_point);
        name->typographic |= code_point == TYPOGRAPHIC_APOSTROPHE;
        if (valid && may_stand(code_point))
            continue;
        name->at = at;
        name->code_point = code_point;
        return false;
    }
    return true;
}

/* Two small letters, the Turkish dotless i and the long s, have a capital of ASCII: which
 * letter the licence has is not theirs to say. */
static bool hides_a_letter(const char *text, struct name *name)
{
    static const uint32_t hiding[] = {0x131, 0x17F};
    size_t length = strlen(text), index = 0;
    for (size_t at = 1; index < length; at++) {
        uint32_t code_point = 0xFFFD;
        if (!utf8_next(text, length, &index, &code_point))
            index++;
        if (code_point != hiding[0] && code_point != hiding[1])
            continue;
        name->at = at;
        name->code_point = code_point;
        return true;
    }
    return false;
}

static bool has_letter_or_digit(const char *upper)
{
    for (; *upper != '\0'; upper++)
        if ((*upper >= 'A' && *upper <= 'Z') || (*upper >= '0' && *upper <= '9'))
            return true;
    return false;
}

/* ---- roman numerals ---- */

static const struct numeral {
    const char *roman, *word;
    bool may_be_a_word;   /* within a name: an initial, Vi, Xi */
} numerals[] = {
    {"I", "ONE", true}, {"II", "TWO", false}, {"III", "THREE", false}, {"IV", "FOUR", false},
    {"V", "FIVE", true}, {"VI", "SIX", true}, {"VII", "SEVEN", false}, {"VIII", "EIGHT", false},
    {"IX", "NINE", false}, {"X", "TEN", true}, {"XI", "ELEVEN", true}, {"XII", "TWELVE", false},
    {"XIII", "THIRTEEN", false}, {"XIV", "FOURTEEN", false}, {"XV", "FIFTEEN", false},
    {"XVI", "SIXTEEN", false}, {"XVII", "SEVENTEEN", false}, {"XVIII", "EIGHTEEN", false},
    {"XIX", "NINETEEN", false}, {"XX", "TWENTY", false},
};

/* What parts the words of a name; a full stop only ends one. */
#define PARTINGS " -"

static const struct numeral *numeral_find(const char *word, size_t length)
{
    for (size_t i = 0; i < sizeof numerals / sizeof numerals[0]; i++)
        if (strlen(numerals[i].roman) == length && strncmp(numerals[i].roman, word, length) == 0)
            return &numerals[i];
    return NULL;
}

/* The first numeral behind another word; the first word itself is taken for a name. */
static void roman_read(struct name *name)
{
    const char *at = name->spoken + strcspn(name->spoken, PARTINGS);
    while (*at != '\0') {
        at += strspn(at, PARTINGS);
        size_t length = strcspn(at, PARTINGS ".");
        const char *after = at + length + strspn(at + length, ".");
        const struct numeral *numeral = numeral_find(at, length);
        if (numeral != NULL && (*after == '\0' || !numeral->may_be_a_word)) {
            name->roman = numeral->roman;
            name->roman_word = numeral->word;
            name->roman_at = (size_t)(at - name->spoken);
            return;
        }
        at += strcspn(at, PARTINGS);
    }
}

static size_t name_length(const char *text)
{
    long count = text == NULL ? 0 : text_code_points(text);
    return count < 0 ? 0 : (size_t)count;
}

static void refused_read(const char *upper, struct arena *arena, struct name *name)
{
    name->proposal = name_transliterate(arena, upper, &name->other_proposal);
    if (name->proposal != NULL && !has_letter_or_digit(name->proposal))
        name->proposal = NULL;
    name->fault = name->proposal == NULL ? NAME_UNSPEAKABLE : NAME_OTHER_LETTERS;
    name->length = name_length(name->proposal);
}

bool name_decode(const char *text, struct arena *arena, struct name *name)
{
    const char *composed = text_nfc(arena, text);
    const char *upper = text_nfc(arena, text_upper(arena, composed));
    uint32_t bad = 0;
    *name = (struct name){.fault = NAME_SOUND, .alphabet = name_alphabet(upper)};
    if (!name_is_plain(upper, name) || hides_a_letter(composed, name)) {
        refused_read(upper, arena, name);
        return false;
    }
    if (!has_letter_or_digit(upper)) {
        name->fault = NAME_EMPTY;
        return false;
    }
    name->spoken = upper;
    name->spelled = spell(arena, upper, &bad);
    roman_read(name);
    name->length = name_length(upper);
    return true;
}
