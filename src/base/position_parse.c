/* position_parse.c - a position as people write it (room: base).
 * Never guesses a hemisphere or which of two numbers is meant: what can be read in
 * two ways is refused. */
#include "position_token.h"

#include "promise.h"
#include "text.h"

enum {
    LATITUDE_HIGHEST = 90, LONGITUDE_HIGHEST = 180, PARTS_AT_MOST = 3, E9 = 1000000000,
    LATITUDE_DIGITS = 2, LONGITUDE_DIGITS = 3, MINUTE_DIGITS = 2
};

/* A latitude or longitude as written. */
struct half {
    struct token parts[PARTS_AT_MOST];   /* degrees, minutes, seconds */
    size_t count;
    size_t at;
    char letter;                         /* '\0': none */
    size_t letter_at;
    bool letter_first, negative, marked;
    size_t sign_at;                      /* 0: no sign */
};

struct reading {
    const struct token *next;
    struct position_error *error;
};

static bool position_refuse(const struct reading *reading, enum position_fault fault, size_t at)
{
    *reading->error = (struct position_error){.fault = fault, .at = at};
    return false;
}

/* ---- one half ---- */

static void letter_take(struct reading *reading, struct half *half)
{
    if (half->letter != '\0' || reading->next->kind != TOKEN_LETTER)
        return;
    half->letter = reading->next->letter;
    half->letter_at = reading->next->at;
    reading->next++;
}

static void half_sign_take(struct reading *reading, struct half *half)
{
    enum token_kind kind = reading->next->kind;
    if (kind != TOKEN_MINUS && kind != TOKEN_PLUS)
        return;
    half->negative = kind == TOKEN_MINUS;
    half->sign_at = reading->next->at;
    reading->next++;
}

static bool is_angle_mark(enum token_kind kind) { return kind <= TOKEN_SECOND; }

/* Numbers go on to the seconds, or to the first that has decimals: nothing smaller can
 * follow that. A mark must be the one that is due. */
static bool parts_read(struct reading *reading, struct half *half)
{
    bool last = false;
    while (!last && half->count < PARTS_AT_MOST && reading->next->kind == TOKEN_NUMBER) {
        half->parts[half->count] = *reading->next++;
        if (is_angle_mark(reading->next->kind)) {
            if ((size_t)reading->next->kind != half->count)
                return position_refuse(reading, POSITION_MARK, reading->next->at);
            half->marked = true;
            reading->next++;
        }
        last = half->parts[half->count++].has_point;
    }
    return true;
}

static bool parts_check(const struct reading *reading, const struct half *half)
{
    if (half->count > 1 && half->parts[1].whole >= 60)
        return position_refuse(reading, POSITION_MINUTES, half->parts[1].at);
    if (half->count > 2 && half->parts[2].whole >= 60)
        return position_refuse(reading, POSITION_SECONDS, half->parts[2].at);
    if (half->letter != '\0' && half->sign_at > 0)
        return position_refuse(reading, POSITION_SIGN_AND_LETTER, half->sign_at);
    if (half->letter == '\0' && half->count > 1)
        return position_refuse(reading, POSITION_NO_LETTER, half->at);
    return true;
}

static bool half_read(struct reading *reading, struct half *half)
{
    *half = (struct half){.at = reading->next->at};
    letter_take(reading, half);
    half->letter_first = half->letter != '\0';
    half_sign_take(reading, half);
    if (reading->next->kind != TOKEN_NUMBER)
        return position_refuse(reading, POSITION_NUMBER, reading->next->at);
    if (!parts_read(reading, half))
        return false;
    letter_take(reading, half);
    return true;
}

/* ---- both ---- */

static bool is_latitude(char letter) { return letter == 'N' || letter == 'S'; }

/* One bare number of a size that no degrees have: a time of day in seconds. */
static bool is_sexagesimal(const struct half *half)
{
    return half->count == 1 && half->letter == '\0' && half->sign_at == 0 &&
           half->parts[0].whole > LONGITUDE_HIGHEST;
}

static bool halves_read(struct reading *reading, struct half halves[2])
{
    if (!half_read(reading, &halves[0]))
        return false;
    if (reading->next->kind == TOKEN_END)
        return position_refuse(reading, is_sexagesimal(&halves[0]) ? POSITION_SEXAGESIMAL
                                                                   : POSITION_ONE_VALUE,
                               is_sexagesimal(&halves[0]) ? halves[0].at : reading->next->at);
    if (reading->next->kind == TOKEN_COMMA)
        reading->next++;
    if (!half_read(reading, &halves[1]))
        return false;
    if (reading->next->kind != TOKEN_END)
        return position_refuse(reading, POSITION_MORE, reading->next->at);
    return parts_check(reading, &halves[0]) && parts_check(reading, &halves[1]);
}

/* Which half is the latitude; false when letters speak against two halves. */
static bool order_settle(const struct reading *reading, const struct half halves[2],
                         size_t *latitude)
{
    const struct half *first = &halves[0], *second = &halves[1];
    promise(first->count > 0 && second->count > 0);
    *latitude = 0;
    if ((first->letter == '\0') != (second->letter == '\0'))
        return position_refuse(reading, POSITION_NO_LETTER,
                               first->letter == '\0' ? first->at : second->at);
    if (first->letter == '\0')
        return true;
    if (is_latitude(first->letter) == is_latitude(second->letter))
        return position_refuse(reading, is_latitude(second->letter) ? POSITION_TWO_LATITUDES
                                                                    : POSITION_TWO_LONGITUDES,
                               second->letter_at);
    *latitude = is_latitude(first->letter) ? 0 : 1;
    return true;
}

/* ---- degrees and minutes in one number ---- */

/* More digits than degrees have, no more than degrees, minutes and seconds do. */
static bool is_run_together(const struct half *half)
{
    return half->count == 1 && half->parts[0].digits > LONGITUDE_DIGITS &&
           half->parts[0].digits <= LONGITUDE_DIGITS + 2 * MINUTE_DIGITS;
}

/* All digits of its degrees and two of minutes, no mark between, and a letter: then it can
 * be read in one way only. */
static bool half_part(const struct reading *reading, struct half *half, int degree_digits)
{
    struct token number = half->parts[0];
    if (half->marked || half->letter == '\0' || number.digits != degree_digits + MINUTE_DIGITS)
        return position_refuse(reading, POSITION_RUN_TOGETHER, half->at);
    half->parts[0] = (struct token){.kind = TOKEN_NUMBER, .at = number.at,
                                    .whole = number.whole / 100};
    half->parts[1] = number;
    half->parts[1].whole = number.whole % 100;
    half->count = 2;
    return parts_check(reading, half);
}

static bool run_together_settle(const struct reading *reading, struct half halves[2],
                                size_t latitude)
{
    size_t first = is_run_together(&halves[0]) ? 0 : 1;
    if (!is_run_together(&halves[first]))
        return true;
    if (!is_run_together(&halves[1 - first]))
        return position_refuse(reading, POSITION_RUN_TOGETHER, halves[first].at);
    return half_part(reading, &halves[latitude], LATITUDE_DIGITS) &&
           half_part(reading, &halves[1 - latitude], LONGITUDE_DIGITS);
}

/* Rounded once. The limit is compared before that, and before anything can overflow. */
static bool value_settle(const struct reading *reading, const struct half *half,
                         int64_t highest, int64_t *e7)
{
    enum position_fault fault = highest == LATITUDE_HIGHEST ? POSITION_LATITUDE_RANGE
                                                            : POSITION_LONGITUDE_RANGE;
    promise(half->count > 0 && half->count <= PARTS_AT_MOST);
    int64_t units = 1, value = half->parts[0].whole;
    if (value > highest)
        return position_refuse(reading, fault, half->parts[0].at);
    for (size_t i = 1; i < half->count; i++) {
        units *= 60;
        value = value * 60 + half->parts[i].whole;
    }
    int64_t value_e9 = value * E9 + half->parts[half->count - 1].fraction_e9;
    int64_t divisor = units * 100;
    if (value_e9 > highest * units * E9)
        return position_refuse(reading, fault, half->parts[0].at);
    *e7 = (value_e9 + divisor / 2) / divisor;
    if (half->negative || half->letter == 'S' || half->letter == 'W')
        *e7 = -*e7;
    return true;
}

bool position_parse(const char *text, struct position *position, struct position_error *error)
{
    struct token tokens[TOKENS_AT_MOST];
    struct reading reading = {.next = tokens, .error = error};
    struct half halves[2] = {{.count = 0}, {.count = 0}};
    struct position read = {0};
    size_t latitude = 0;
    if (!position_tokens(text, tokens, error))
        return false;
    if (tokens[0].kind == TOKEN_END)
        return position_refuse(&reading, POSITION_EMPTY, 1);
    if (!halves_read(&reading, halves) || !order_settle(&reading, halves, &latitude) ||
        !run_together_settle(&reading, halves, latitude) ||
        !value_settle(&reading, &halves[latitude], LATITUDE_HIGHEST, &read.latitude_e7) ||
        !value_settle(&reading, &halves[1 - latitude], LONGITUDE_HIGHEST, &read.longitude_e7))
        return false;
    *position = read;
    *error = (struct position_error){.fault = POSITION_SOUND};
    return true;
}
