/* call_sign.c - what a call sign looks like and whether it may be this boat's
 * (room: radio). Patterns: RR 19.45 to 19.60. Never corrects one: the spelling
 * that counts is the licence's. */
#include "identity.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

#define SHORTEST 3
#define LONGEST 7

/* One pattern a row. L a letter, D a digit, T a digit from 2 to 9, N 0 or 1, S
 * letter or digit from 2. The two characters in front are checked apart. */
static const struct { const char *shape; enum call_sign_pattern pattern; } shapes[] = {
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
};

static bool is_letter(char c) { return c >= 'A' && c <= 'Z'; }
static bool is_digit(char c) { return c >= '0' && c <= '9'; }

static bool sign_fits(char sign, char c)
{
    switch (sign) {
    case 'L': return is_letter(c);
    case 'D': return is_digit(c);
    case 'T': return c >= '2' && c <= '9';
    case 'N': return c == '0' || c == '1';
    case 'S': return is_letter(c) || (c >= '2' && c <= '9');
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
    return is_letter(call_sign[0]) || is_letter(call_sign[1]);
}

enum call_sign_pattern call_sign_pattern(const char *call_sign)
{
    for (size_t i = 0; i < sizeof shapes / sizeof shapes[0]; i++)
        if (shape_fits(shapes[i].shape, call_sign))
            return shapes[i].pattern;
    return PATTERN_UNKNOWN;
}

bool call_sign_given(const struct text_value *call_sign)
{
    return !text_empty(call_sign->text) && !text_equal(call_sign->text, "none");
}

/* What keeps a character out of a call sign; NULL: it may stand there. */
static const char *character_fault(uint32_t code_point)
{
    if (code_point >= 'a' && code_point <= 'z')
        return "a small letter";
    if (code_point == ' ')
        return "a space";
    if (code_point > 0x7F)
        return "not one of the letters A to Z, though it may look like one";
    if (is_letter((char)code_point) || is_digit((char)code_point))
        return NULL;
    return "neither a letter nor a digit";
}

#define CALL_SIGN_REMEDY \
    "write it as on the ship's radio licence: capitals A to Z and digits only,\n" \
    "or `call_sign: none` if the administration issued none"

bool call_sign_sound(const struct text_value *call_sign, struct problems *problems)
{
    if (!call_sign_given(call_sign))
        return true;
    size_t length = strlen(call_sign->text), index = 0, characters = 0;
    for (; index < length; characters++) {
        uint32_t code_point = 0xFFFD;
        bool valid = utf8_next(call_sign->text, length, &index, &code_point);
        const char *fault = valid ? character_fault(code_point) : "not valid UTF-8";
        if (fault == NULL)
            continue;
        problem_add(problems, SEVERITY_ERROR, call_sign->place, CALL_SIGN_REMEDY,
                    "call sign `%s`: character %zu (U+%04X) is %s", call_sign->text,
                    characters + 1, (unsigned)code_point, fault);
        return false;
    }
    if (characters >= SHORTEST && characters <= LONGEST)
        return true;
    problem_add(problems, SEVERITY_ERROR, call_sign->place, CALL_SIGN_REMEDY,
                "call sign `%s` has %zu characters; call signs have %d to %d",
                call_sign->text, characters, SHORTEST, LONGEST);
    return false;
}

/* Why a pattern is worth a word; NULL: a ship's, nothing to say. */
static const char *pattern_remark(enum call_sign_pattern pattern)
{
    switch (pattern) {
    case PATTERN_SHIP:
        return NULL;
    case PATTERN_SHIP_0_OR_1:
        return "has 0 or 1 straight after a letter, which only some countries issue";
    case PATTERN_SURVIVAL_CRAFT:
        return "has the pattern of a liferaft or tender: a ship's call sign and two digits";
    case PATTERN_AIRCRAFT:
        return "has the pattern of an aircraft's";
    case PATTERN_LAND:
        return "has the pattern of a land station's";
    case PATTERN_AMATEUR:
        return "has the pattern of a radio amateur's: the skipper's own instead of the ship's?";
    case PATTERN_UNKNOWN:
        return "has no pattern that ships' call signs have";
    }
    return NULL;
}

static void check_pattern(const struct text_value *call_sign, struct problems *problems)
{
    const char *remark = pattern_remark(call_sign_pattern(call_sign->text));
    if (remark != NULL)
        problem_add(problems, SEVERITY_NOTE, call_sign->place,
                    "compare it with the ship's radio licence", "call sign `%s` %s",
                    call_sign->text, remark);
}

static bool held_by_a_body(const struct administration *owner)
{
    return text_equal(owner->iso, "UNO") || text_equal(owner->iso, "ICAO")
        || text_equal(owner->iso, "WMO");
}

static void check_series(const struct text_value *call_sign, struct problems *problems)
{
    const char *remedy = "compare it with the ship's radio licence";
    const struct administration *owner;
    switch (call_sign_series(call_sign->text, &owner)) {
    case SERIES_ALLOCATED:
        if (held_by_a_body(owner))
            problem_add(problems, SEVERITY_ERROR, call_sign->place, remedy,
                        "call sign `%s` is of the series of the %s: no yacht has it",
                        call_sign->text, owner->name);
        break;
    case SERIES_UNALLOCATED:
        problem_add(problems, SEVERITY_DEFICIENCY, call_sign->place, remedy,
                    "call sign `%s`: no country holds the series %.2s (ITU table of "
                    RADIO_TABLES_DATED ")", call_sign->text, call_sign->text);
        break;
    case SERIES_HALVED:
        problem_add(problems, SEVERITY_NOTE, call_sign->place, remedy,
                    "call sign `%s`: two countries share the series %.2s, and a digit in third "
                    "place does not tell which", call_sign->text, call_sign->text);
        break;
    case SERIES_IMPOSSIBLE:
        problem_add(problems, SEVERITY_ERROR, call_sign->place, remedy,
                    "call sign `%s`: none can begin with %.2s", call_sign->text,
                    call_sign->text);
        break;
    }
}

/* A specimen must never carry what could be someone's, a boat never what is not. */
static void check_specimen(const struct text_value *call_sign, struct problems *problems)
{
    if (call_sign->text[0] != 'Q' || call_sign_pattern(call_sign->text) != PATTERN_SHIP)
        problem_add(problems, SEVERITY_ERROR, call_sign->place,
                    "give it a ship's call sign beginning with Q, such as QTAB2: nobody holds Q",
                    "call sign `%s` of a specimen boat could be a real one", call_sign->text);
}

void call_sign_check(const struct boat *boat, struct problems *problems)
{
    const struct text_value *call_sign = &boat->radio.call_sign;
    if (text_empty(call_sign->text)) {
        problem_add(problems, SEVERITY_DEFICIENCY, boat->radio_place,
                    "write `call_sign:` from the ship's radio licence, or `call_sign: none`",
                    "call sign not recorded: the call is printed without one");
        return;
    }
    if (!call_sign_given(call_sign) || !call_sign_sound(call_sign, problems))
        return;
    if (boat->facts.specimen.answer == ANSWER_YES) {
        check_specimen(call_sign, problems);
        return;
    }
    if (call_sign->text[0] == 'Q') {
        problem_add(problems, SEVERITY_ERROR, call_sign->place,
                    "write the call sign of the ship's radio licence, or mark a boat that is\n"
                    "only an example with `specimen: yes`",
                    "call sign `%s`: nobody holds the series Q; it is for specimen boats",
                    call_sign->text);
        return;
    }
    check_series(call_sign, problems);
    check_pattern(call_sign, problems);
}
