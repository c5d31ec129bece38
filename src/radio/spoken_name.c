/* spoken_name.c - the boat's name as it is called out (room: radio). Never puts
 * a spelling of its own in place of the licence's: it only proposes one. */
#include "identity.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

static bool may_stand(uint32_t code_point)
{
    return (code_point >= 'A' && code_point <= 'Z') || (code_point >= '0' && code_point <= '9')
        || code_point == ' ' || code_point == '-' || code_point == '\'' || code_point == '.'
        || code_point == '&' || code_point == 0x2019;
}

/* True for letters A to Z, digits and the signs of names; otherwise *bad is the
 * first character that is not. `upper`: in upper case. */
static bool is_plain(const char *upper, uint32_t *bad)
{
    size_t length = strlen(upper), index = 0;
    while (index < length) {
        *bad = 0xFFFD;
        if (!utf8_next(upper, length, &index, bad) || !may_stand(*bad))
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

static void warn_of_roman(const struct text_value *name, const char *upper, struct arena *arena,
                          struct problems *problems)
{
    const char *roman = roman_at_end(upper);
    if (roman == NULL)
        return;
    const char *remedy = text_format(arena,
        "write how the name is called out, the number as a word, such as\n"
        "`name_spoken: %.*s TWO`", (int)(strlen(upper) - strlen(roman) - 1), upper);
    problem_add(problems, SEVERITY_DEFICIENCY, name->place, remedy,
                "name `%s`: %s at the end can be said as a number or as letters", name->text,
                roman);
}

static void refuse_name(const struct text_value *name, uint32_t bad, struct arena *arena,
                        struct problems *problems)
{
    const char *proposal = name_transliterate(arena, name->text);
    const char *ask = "write `name_latin:` as the ship's radio licence spells the name";
    const char *remedy = proposal == NULL ? ask : text_format(arena,
        "%s;\nproposed, to be compared with the licence: name_latin: %s", ask, proposal);
    problem_add(problems, SEVERITY_ERROR, name->place, remedy,
                "name `%s` cannot be called out: U+%04X is not one of the letters A to Z",
                name->text, (unsigned)bad);
}

static const char *name_checked(const struct text_value *name, struct arena *arena,
                                struct problems *problems)
{
    const char *upper = text_upper(arena, text_nfc(arena, name->text));
    uint32_t bad = 0;
    if (!is_plain(upper, &bad)) {
        refuse_name(name, bad, arena, problems);
        return NULL;
    }
    if (has_letter_or_digit(upper))
        return upper;
    problem_add(problems, SEVERITY_ERROR, name->place, "write `name_spoken:`",
                "name `%s` has no letter that could be called out", name->text);
    return NULL;
}

const char *spoken_name(const struct boat *boat, struct arena *arena, struct problems *problems)
{
    const struct boat_facts *facts = &boat->facts;
    if (!text_empty(facts->name_spoken.text))
        return name_checked(&facts->name_spoken, arena, problems);
    const struct text_value *name =
        text_empty(facts->name_latin.text) ? &facts->name : &facts->name_latin;
    if (text_empty(name->text)) {
        problem_add(problems, SEVERITY_ERROR, boat->place, "write `name:` under `boat:`",
                    "the boat has no name to call out");
        return NULL;
    }
    const char *upper = name_checked(name, arena, problems);
    if (upper != NULL)
        warn_of_roman(name, upper, arena, problems);
    return upper;
}
