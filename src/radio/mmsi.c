/* mmsi.c - is this nine-digit number a ship's, and what went wrong with it if not
 * (room: radio). Structure: Rec. ITU-R M.585. Never repairs one: a wrong digit
 * sends the rescuers after another boat. */
#include "identity.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

#define NO_BREAK_SPACE 0xA0

static bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool mmsi_read(const char *text, char digits[MMSI_DIGITS + 1])
{
    size_t length = strlen(text), index = 0, count = 0;
    bool after_space = true;
    while (index < length) {
        uint32_t code_point;
        if (!utf8_next(text, length, &index, &code_point))
            return false;
        bool space = code_point == ' ' || code_point == NO_BREAK_SPACE;
        if (space ? after_space : code_point < '0' || code_point > '9' || count == MMSI_DIGITS)
            return false;
        if (!space)
            digits[count++] = (char)code_point;
        after_space = space;
    }
    digits[count] = '\0';
    return count == MMSI_DIGITS && !after_space;
}

/* ---- what is wrong with a text that is no MMSI ---- */

static bool has_any(const char *text, const char *signs)
{
    return strpbrk(text, signs) != NULL;
}

static bool is_exponent(const char *text)
{
    return is_digit(text[0]) && has_any(text, "Ee");
}

static bool ends_in_fraction(const char *text)
{
    return text_ends(text, ".0") || text_ends(text, ",0") || text_ends(text, ".00");
}

static bool is_separated(const char *text) { return has_any(text, ",._'"); }
static bool has_letter_o(const char *text) { return has_any(text, "Oo"); }
static bool has_letter_l(const char *text) { return has_any(text, "lI|"); }

static bool has_wide_digit(const char *text)
{
    size_t length = strlen(text), index = 0;
    uint32_t code_point;
    while (utf8_next(text, length, &index, &code_point))
        if (code_point >= 0xFF10 && code_point <= 0xFF19)
            return true;
    return false;
}

#define FROM_LICENCE \
    "write the nine digits of the ship's radio licence in quotes, such as mmsi: \"NNNNNNNNN\""

/* The first that is found is told. */
static const struct { bool (*found)(const char *text); const char *what, *remedy; } damages[] = {
    {.found = is_exponent,
     .what = "a spreadsheet made it a number with an exponent: its last digits are lost",
     .remedy = FROM_LICENCE},
    {.found = ends_in_fraction,
     .what = "a spreadsheet made it a decimal number", .remedy = FROM_LICENCE},
    {.found = is_separated,
     .what = "a spreadsheet formatted it as a number: commas, full stops and the like",
     .remedy = FROM_LICENCE},
    {.found = has_letter_o, .what = "it holds the letter O; was the digit 0 meant?",
     .remedy = FROM_LICENCE},
    {.found = has_letter_l, .what = "it holds the letter l or I; was the digit 1 meant?",
     .remedy = FROM_LICENCE},
    {.found = has_wide_digit, .what = "it holds full-width digits (U+FF10 to U+FF19)",
     .remedy = "type the digits anew: " FROM_LICENCE},
};

/* False when the text holds digits and single spaces only. */
static bool tell_bad_character(const struct text_value *mmsi, struct problems *problems)
{
    size_t length = strlen(mmsi->text), index = 0;
    for (size_t at = 1; index < length; at++) {
        uint32_t code_point = 0xFFFD;
        bool valid = utf8_next(mmsi->text, length, &index, &code_point);
        if (valid && ((code_point >= '0' && code_point <= '9') || code_point == ' '
                      || code_point == NO_BREAK_SPACE))
            continue;
        problem_add(problems, SEVERITY_ERROR, mmsi->place, FROM_LICENCE,
                    "MMSI `%s`: character %zu (U+%04X) is no digit", mmsi->text, at,
                    (unsigned)code_point);
        return true;
    }
    return false;
}

static void tell_length(const struct text_value *mmsi, struct problems *problems)
{
    size_t count = 0;
    for (const char *at = mmsi->text; *at != '\0'; at++)
        count += is_digit(*at);
    if (count == MMSI_DIGITS)
        problem_add(problems, SEVERITY_ERROR, mmsi->place, FROM_LICENCE,
                    "MMSI `%s` has spaces where none belong", mmsi->text);
    else
        problem_add(problems, SEVERITY_ERROR, mmsi->place, FROM_LICENCE,
                    "MMSI `%s` has %zu digits, not nine%s", mmsi->text, count,
                    count < MMSI_DIGITS ? ": were zeros in front lost, or a digit missed?" : "");
}

static void tell_damage(const struct text_value *mmsi, struct problems *problems)
{
    for (size_t i = 0; i < sizeof damages / sizeof damages[0]; i++)
        if (damages[i].found(mmsi->text)) {
            problem_add(problems, SEVERITY_ERROR, mmsi->place, damages[i].remedy,
                        "MMSI `%s`: %s", mmsi->text, damages[i].what);
            return;
        }
    if (!tell_bad_character(mmsi, problems))
        tell_length(mmsi, problems);
}

/* ---- whose number it is ---- */

#define NO_MID (-1)

/* The longer beginnings first; ships begin with 2 to 7 and are not listed. */
static const struct { const char *start, *whose; int mid_at; } other_forms[] = {
    {.start = "00", .whose = "a coast station's", .mid_at = 2},
    {.start = "0", .whose = "a group of ships'", .mid_at = 1},
    {.start = "111", .whose = "a rescue aircraft's", .mid_at = 3},
    {.start = "1", .whose = "nobody's: numbers beginning with 1 are not assigned",
     .mid_at = NO_MID},
    {.start = "8", .whose = "a handheld radio's", .mid_at = 1},
    {.start = "970", .whose = "a radar transponder's (AIS-SART)", .mid_at = NO_MID},
    {.start = "972", .whose = "a man-overboard device's", .mid_at = NO_MID},
    {.start = "974", .whose = "a distress beacon's (EPIRB-AIS)", .mid_at = NO_MID},
    {.start = "979", .whose = "an autonomous radio device's", .mid_at = NO_MID},
    {.start = "98", .whose = "a tender's, carried by a ship", .mid_at = 2},
    {.start = "99", .whose = "an aid to navigation's", .mid_at = 2},
    {.start = "9", .whose = "nobody's: numbers beginning so are not assigned",
     .mid_at = NO_MID},
};

#define SHIP_REMEDY \
    "write the ship's own MMSI from its radio licence: nine digits, the first 2 to 7"

/* True when it is the number of something else than a ship. */
static bool tell_other_form(const struct text_value *mmsi, const char *digits,
                            struct problems *problems)
{
    for (size_t i = 0; i < sizeof other_forms / sizeof other_forms[0]; i++) {
        if (!text_begins(digits, other_forms[i].start))
            continue;
        if (other_forms[i].mid_at == NO_MID)
            problem_add(problems, SEVERITY_ERROR, mmsi->place, SHIP_REMEDY,
                        "MMSI %s is not a ship's but %s", digits, other_forms[i].whose);
        else
            problem_add(problems, SEVERITY_ERROR, mmsi->place, SHIP_REMEDY,
                        "MMSI %s is not a ship's but %s (MID %.3s)", digits,
                        other_forms[i].whose, digits + other_forms[i].mid_at);
        return true;
    }
    return false;
}

static bool looks_made_up(const char *digits)
{
    const char *tail = digits + 3;
    return strspn(tail, (char[]){tail[0], '\0'}) == strlen(tail) || text_equal(tail, "123456");
}

static void check_real(const struct text_value *mmsi, const char *digits,
                       struct problems *problems)
{
    if (text_begins(digits, "200"))
        problem_add(problems, SEVERITY_ERROR, mmsi->place,
                    "write the MMSI of the ship's radio licence, or mark a boat that is only\n"
                    "an example with `specimen: yes`",
                    "MMSI %s: MID 200 is no country's; it is for specimen boats", digits);
    else if (mid_find(digits) == NULL)
        problem_add(problems, SEVERITY_DEFICIENCY, mmsi->place,
                    "compare it with the ship's radio licence",
                    "MMSI %s: MID %.3s is no country's (ITU table of " RADIO_TABLES_DATED ")",
                    digits, digits);
    if (looks_made_up(digits))
        problem_add(problems, SEVERITY_NOTE, mmsi->place,
                    "compare it with the ship's radio licence",
                    "MMSI %s looks like one put in for the time being", digits);
}

static void check_specimen(const struct text_value *mmsi, const char *digits,
                           struct problems *problems)
{
    const struct administration *owner = mid_find(digits);
    if (owner != NULL)
        problem_add(problems, SEVERITY_ERROR, mmsi->place,
                    "give it an MMSI beginning with 200, which is no country's MID",
                    "MMSI %s of a specimen boat could be a real one (MID %.3s, %s)", digits,
                    digits, owner->name);
}

/* Only the DSC key is lost by this, so the cards are printed, for voice only. */
static void check_programmed(const struct boat *boat, struct problems *problems)
{
    const struct radio_facts *radio = &boat->radio;
    if (radio->dsc.answer != ANSWER_YES)
        return;
    if (text_empty(radio->mmsi.text))
        problem_add(problems, SEVERITY_DEFICIENCY, radio->dsc.place,
                    "record `mmsi:` from the ship's radio licence and have a dealer program it\n"
                    "into the set, which takes it only once; do not guess it",
                    "DSC not available: voice only (the MMSI is not recorded)");
    else if (radio->mmsi_programmed.answer == ANSWER_NOT_RECORDED)
        problem_add(problems, SEVERITY_DEFICIENCY, radio->dsc.place,
                    "let the set show its MMSI; if it shows this one, record\n"
                    "`mmsi_programmed: yes`, if it shows none, `mmsi_programmed: no`",
                    "DSC not available: voice only (whether the set has its MMSI is not "
                    "recorded)");
    else if (radio->mmsi_programmed.answer == ANSWER_NO)
        problem_add(problems, SEVERITY_DEFICIENCY, radio->mmsi_programmed.place,
                    "have a dealer program the MMSI into the set, which takes it only once,\n"
                    "then record `mmsi_programmed: yes`",
                    "DSC not available: voice only (the set has no MMSI programmed)");
}

void mmsi_check(const struct boat *boat, struct problems *problems)
{
    const struct text_value *mmsi = &boat->radio.mmsi;
    char digits[MMSI_DIGITS + 1];
    check_programmed(boat, problems);
    if (text_empty(mmsi->text))
        return;
    if (!mmsi_read(mmsi->text, digits))
        tell_damage(mmsi, problems);
    else if (tell_other_form(mmsi, digits, problems))
        return;
    else if (boat->facts.specimen.answer == ANSWER_YES)
        check_specimen(mmsi, digits, problems);
    else
        check_real(mmsi, digits, problems);
}
