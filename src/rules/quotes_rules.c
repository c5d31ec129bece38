/* quotes_rules.c - values that are text here, but that another reader of YAML takes for
 * a number, an answer or a date, and writes back otherwise (room: rules). Here nothing
 * is lost by it, so these are notes. */
#include "rules_room.h"

#include <string.h>

#include "text.h"

#define DIGITS "0123456789"

/* ---- what others take a text for ---- */

static const char *after_sign(const char *text)
{
    return text[0] == '+' || text[0] == '-' ? text + 1 : text;
}

static bool is_all(const char *text, const char *signs)
{
    return text[0] != '\0' && strspn(text, signs) == strlen(text);
}

/* Underscores group digits in YAML 1.1; a leading zero makes them octal there. */
static bool reads_as_integer(const char *text)
{
    const char *digits = after_sign(text);
    return digits[0] >= '0' && digits[0] <= '9' && is_all(digits, DIGITS "_");
}

/* 5E12, 2.38E+08, 43.5 */
static bool reads_as_decimal(const char *text)
{
    const char *at = after_sign(text);
    size_t whole = strspn(at, DIGITS "_");
    size_t part = at[whole] == '.' ? strspn(at + whole + 1, DIGITS) + 1 : 0;
    const char *rest = at + whole + part;
    if (whole == 0)
        return false;
    if (rest[0] == '\0')
        return part > 0;
    return (rest[0] == 'e' || rest[0] == 'E') && is_all(after_sign(rest + 1), DIGITS);
}

/* 12:30: a number to the base of sixty */
static bool reads_as_time(const char *text)
{
    const char *digits = after_sign(text);
    return strchr(digits, ':') != NULL && digits[0] != ':' && is_all(digits, DIGITS ":");
}

static bool reads_as_number(const char *text)
{
    return reads_as_integer(text) || reads_as_decimal(text) || reads_as_time(text);
}

static bool is_date(const char *text)
{
    return strlen(text) == 10 && text[4] == '-' && text[7] == '-' && is_all(text, DIGITS "-");
}

static bool is_answer(const char *text)
{
    static const char *const answers[] = {"Y", "YES", "N", "NO", "ON", "OFF", "TRUE", "FALSE"};
    char upper[6] = "";
    size_t length = strlen(text);
    if (length >= sizeof upper)
        return false;
    for (size_t i = 0; i < length; i++)
        upper[i] = text[i] >= 'a' && text[i] <= 'z' ? (char)(text[i] - 'a' + 'A') : text[i];
    for (size_t i = 0; i < sizeof answers / sizeof answers[0]; i++)
        if (text_equal(upper, answers[i]))
            return true;
    return false;
}

static const struct { bool (*is)(const char *text); const char *what; } readings[] = {
    {.is = is_answer, .what = "yes or no"},
    {.is = reads_as_number, .what = "a number"},
    {.is = is_date, .what = "a date"},
};

/* What others take it for, or NULL. */
static const char *reading_of(const char *text)
{
    for (size_t i = 0; i < sizeof readings / sizeof readings[0]; i++)
        if (readings[i].is(text))
            return readings[i].what;
    return NULL;
}

/* ---- the values of a record ---- */

/* Nothing is told of a text that no file holds. */
static bool is_quoted(const struct text_value *value)
{
    const struct place *place = &value->place;
    if (place->source == NULL)
        return true;
    char first = place->source->bytes[source_offset(place->source, place->line, place->column)];
    return first == '"' || first == '\'' || first == '|' || first == '>';
}

void quotes_check(const struct rule_run *run, const char *key, const struct text_value *value)
{
    const char *taken = text_empty(value->text) ? NULL : reading_of(value->text);
    if (taken == NULL || is_quoted(value))
        return;
    rule_tell(run, CHECK_without_quotes, value->place,
              text_format(run->arena, "write it in quotes: %s: \"%s\"", key, value->text),
              "%s `%s` is read here as it is written; other programs take it for %s", key,
              value->text, taken);
}

void quotes_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    quotes_check(run, "name", &boat->facts.name);
    quotes_check(run, "name_latin", &boat->facts.name_latin);
    quotes_check(run, "name_spoken", &boat->facts.name_spoken);
    quotes_check(run, "flag", &boat->facts.flag);
    quotes_check(run, "call_sign", &boat->radio.call_sign);
    quotes_check(run, "mmsi", &boat->radio.mmsi);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        quotes_check(run, "hex_id", &boat->equipment[i].hex_id);
        quotes_check(run, "mmsi", &boat->equipment[i].mmsi);
    }
}
