/* call_sign.c - a call sign taken apart: what it is made of, its pattern and its series
 * (room: radio). Patterns: RR 19.45 to 19.60. Never corrects one: the spelling that
 * counts is the licence's. */
#include "administrations.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

/* One pattern a row. L a letter, D a digit, T a digit from 2 to 9, N 0 or 1, S
 * letter or digit from 2, H a letter whose whole series one country holds, so that it
 * is a prefix by itself. The two characters in front are checked apart. */
static const struct { const char *shape; enum call_sign_pattern pattern; } call_sign_shapes[] = {
    {.shape = "SSLL", .pattern = PATTERN_SHIP},
    {.shape = "SSLLT", .pattern = PATTERN_SHIP},
    {.shape = "SLTDDD", .pattern = PATTERN_SHIP},
    {.shape = "SSLTDDD", .pattern = PATTERN_SHIP},
    {.shape = "SSLLN", .pattern = PATTERN_SHIP_0_OR_1},
    {.shape = "SLNDDD", .pattern = PATTERN_SHIP_0_OR_1},
    {.shape = "SSLNDDD", .pattern = PATTERN_SHIP_0_OR_1},
    {.shape = "SSLLTD", .pattern = PATTERN_SURVIVAL_CRAFT},
    {.shape = "SSLLTDD", .pattern = PATTERN_SURVIVAL_CRAFT},
    {.shape = "SSLLL", .pattern = PATTERN_AIRCRAFT},
    {.shape = "SSL", .pattern = PATTERN_LAND},
    {.shape = "SSLT", .pattern = PATTERN_LAND},
    {.shape = "SSLTD", .pattern = PATTERN_LAND},
    {.shape = "SSLTDD", .pattern = PATTERN_LAND},
    {.shape = "SSDL", .pattern = PATTERN_AMATEUR},
    {.shape = "SSDLL", .pattern = PATTERN_AMATEUR},
    {.shape = "SSDLLL", .pattern = PATTERN_AMATEUR},
    {.shape = "SSDLLLL", .pattern = PATTERN_AMATEUR},
    {.shape = "HNL", .pattern = PATTERN_AMATEUR},
    {.shape = "HNLL", .pattern = PATTERN_AMATEUR},
    {.shape = "HNLLL", .pattern = PATTERN_AMATEUR},
    {.shape = "HNLLLL", .pattern = PATTERN_AMATEUR},
};

static bool is_call_letter(char c) { return c >= 'A' && c <= 'Z'; }

static bool sign_fits(char sign, char c)
{
    switch (sign) {
    case 'L': return is_call_letter(c);
    case 'D': return is_digit(c);
    case 'T': return c >= '2' && c <= '9';
    case 'N': return c == '0' || c == '1';
    case 'H': return c != '\0' && strchr("BFGIKMNRW", c) != NULL;
    case 'S': return is_call_letter(c) || (c >= '2' && c <= '9');
    }
    return false;
}

static bool shape_fits(const char *shape, const char *call_sign)
{
    size_t length = strlen(shape);
    if (strlen(call_sign) != length)
        return false;
    for (size_t i = 0; i < length; i++)
        if (!sign_fits(shape[i], call_sign[i]))
            return false;
    return is_call_letter(call_sign[0]) || is_call_letter(call_sign[1]);
}

enum call_sign_pattern call_sign_pattern(const char *call_sign)
{
    for (size_t i = 0; i < sizeof call_sign_shapes / sizeof call_sign_shapes[0]; i++)
        if (shape_fits(call_sign_shapes[i].shape, call_sign))
            return call_sign_shapes[i].pattern;
    return PATTERN_UNKNOWN;
}

/* ---- what it is made of ---- */

static enum call_sign_fault call_character_fault(uint32_t code_point)
{
    if (code_point >= 'a' && code_point <= 'z')
        return CALL_SIGN_SMALL_LETTER;
    if (code_point == ' ')
        return CALL_SIGN_SPACE;
    if (code_point > 0x7F)
        return CALL_SIGN_OTHER_LETTER;
    if (is_call_letter((char)code_point) || is_digit((char)code_point))
        return CALL_SIGN_SOUND;
    return CALL_SIGN_SIGN;
}

/* All characters are counted, the first at fault is kept. */
static void call_characters_take(const char *text, struct call_sign *call_sign)
{
    size_t length = strlen(text), index = 0;
    while (index < length) {
        uint32_t code_point = 0xFFFD;
        bool valid = utf8_next(text, length, &index, &code_point);
        enum call_sign_fault fault = valid ? call_character_fault(code_point) : CALL_SIGN_BYTES;
        index += valid ? 0 : 1;
        call_sign->length++;
        if (fault == CALL_SIGN_SOUND || call_sign->fault != CALL_SIGN_SOUND)
            continue;
        call_sign->fault = fault;
        call_sign->at = call_sign->length;
        call_sign->code_point = code_point;
        call_sign->looks_like = latin_lookalike(code_point);
    }
}

static bool is_body(const struct administration *holder)
{
    return holder != NULL && (text_equal(holder->iso, "UNO") || text_equal(holder->iso, "ICAO")
                              || text_equal(holder->iso, "WMO"));
}

bool call_sign_decode(const char *text, struct call_sign *call_sign)
{
    *call_sign = (struct call_sign){.fault = CALL_SIGN_SOUND, .pattern = PATTERN_UNKNOWN,
                                    .series = SERIES_UNALLOCATED};
    call_characters_take(text, call_sign);
    if (call_sign->fault == CALL_SIGN_SOUND && (call_sign->length < CALL_SIGN_SHORTEST ||
                                                call_sign->length > CALL_SIGN_LONGEST))
        call_sign->fault = CALL_SIGN_LENGTH;
    if (text_equal(text, "NONE"))
        call_sign->fault = CALL_SIGN_NONE;
    if (call_sign->fault != CALL_SIGN_SOUND)
        return false;
    call_sign->pattern = call_sign_pattern(text);
    call_sign->series = call_sign_series(text, &call_sign->holder, &call_sign->other_holder);
    call_sign->of_a_body = is_body(call_sign->holder);
    return true;
}
