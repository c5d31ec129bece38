/* code_read.c - check codes as people type them off a card (room: register). How they are made
 * is told in src/compose/check_code.c; a slip is found, never put right by guessing. */
#include "register.h"

#include <string.h>

static const char code_signs[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
enum { CODE_SIGNS = 8, CODE_BASE = 32, CODE_MODULUS = 37, CODE_FIRST_MOST = 4 };

/* As it is meant: 0 for O, 1 for I and L; '\0' for what no code has. */
static char sign_meant(char typed)
{
    char upper = typed >= 'a' && typed <= 'z' ? (char)(typed - 'a' + 'A') : typed;
    if (upper == 'O')
        return '0';
    if (upper == 'I' || upper == 'L')
        return '1';
    return upper != '\0' && strchr(code_signs, upper) != NULL ? upper : '\0';
}

/* Bytes of what people write between signs; the dashes of word processors have three. */
static size_t gap_length(const char *at)
{
    static const char *const gaps[] = {"-", " ", "\t", "_", ".", "\u00A0", "\u2010", "\u2011",
                                       "\u2012", "\u2013", "\u2014", "\u2212"};
    for (size_t i = 0; i < sizeof gaps / sizeof *gaps; i++)
        if (text_begins(at, gaps[i]))
            return strlen(gaps[i]);
    return 0;
}

static uint32_t sign_number(char sign)
{
    return (uint32_t)(strchr(code_signs, sign) - code_signs);
}

/* Seven signs hold 35 bits and a code 32: the first of them is small. */
static bool check_sign_fits(const char *signs)
{
    uint32_t value = 0;
    for (size_t i = 0; i + 1 < CODE_SIGNS; i++)
        value = value * CODE_BASE + sign_number(signs[i]);
    return sign_number(signs[0]) < CODE_FIRST_MOST &&
           value % CODE_MODULUS == sign_number(signs[CODE_SIGNS - 1]);
}

/* The signs that were typed, as meant, into `signs`; how many there are. A sign that no code has
 * is left in *strange. */
static size_t signs_take(const char *typed, char signs[CODE_SIGNS + 1], const char **strange)
{
    size_t count = 0;
    for (const char *at = typed; *at != '\0' && *strange == NULL;) {
        size_t gap = gap_length(at);
        char sign = sign_meant(*at);
        if (gap == 0 && sign == '\0')
            *strange = at;
        else if (gap == 0 && count++ < CODE_SIGNS)
            signs[count - 1] = sign;
        at += gap == 0 ? 1 : gap;
    }
    return count;
}

enum code_reading code_read(const char *typed, struct arena *arena, const char **code,
                            const char **wrong)
{
    char signs[CODE_SIGNS + 1] = "";
    const char *strange = NULL;
    size_t count = signs_take(typed, signs, &strange);
    *code = *wrong = NULL;
    if (strange != NULL)
        *wrong = text_format(arena, "no code has what stands at \"%s\"", strange);
    else if (count != CODE_SIGNS)
        *wrong = text_format(arena, "a code has %d signs, and these are %zu", (int)CODE_SIGNS,
                             count);
    if (*wrong != NULL)
        return CODE_NO_CODE;
    *code = text_format(arena, "%.4s-%s", signs, signs + CODE_SIGNS / 2);
    return check_sign_fits(signs) ? CODE_SOUND : CODE_MISTYPED;
}
