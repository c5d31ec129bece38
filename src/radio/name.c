/* name.c - a name taken apart: how it is called out and spelled, and what keeps it from
 * being so (room: radio). Never puts a spelling of its own in place of the licence's:
 * it only proposes one. Dossier: radio section 3.3. */
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
static bool is_plain(const char *upper, struct name *name)
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

static bool has_letter_or_digit(const char *upper)
{
    for (; *upper != '\0'; upper++)
        if ((*upper >= 'A' && *upper <= 'Z') || (*upper >= '0' && *upper <= '9'))
            return true;
    return false;
}

static const char *const roman_numerals[] = {
    "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII", "XIII", "XIV",
    "XV", "XVI", "XVII", "XVIII", "XIX", "XX",
};

/* The roman numeral at the end of a name of several words, or NULL. */
static const char *roman_at_end(const char *upper)
{
    const char *space = strrchr(upper, ' ');
    for (size_t i = 0; space != NULL && i < sizeof roman_numerals / sizeof roman_numerals[0]; i++)
        if (text_equal(space + 1, roman_numerals[i]))
            return roman_numerals[i];
    return NULL;
}

static size_t characters_in(const char *text)
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
    name->length = characters_in(name->proposal);
}

bool name_decode(const char *text, struct arena *arena, struct name *name)
{
    const char *upper = text_nfc(arena, text_upper(arena, text_nfc(arena, text)));
    uint32_t bad = 0;
    *name = (struct name){.fault = NAME_SOUND, .alphabet = name_alphabet(upper)};
    if (!is_plain(upper, name)) {
        refused_read(upper, arena, name);
        return false;
    }
    if (!has_letter_or_digit(upper)) {
        name->fault = NAME_EMPTY;
        return false;
    }
    name->spoken = upper;
    name->spelled = spell(arena, upper, &bad);
    name->roman = roman_at_end(upper);
    name->length = characters_in(upper);
    return true;
}
