/* bearing.c - bearings and magnetic variation (room: base). A hand-bearing compass
 * reads magnetic, the radio speaks true. Never takes a bearing whose letter it does
 * not know for a true one. */
#include "position.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

enum {
    FULL_CIRCLE = 360000, HALF_CIRCLE = 180000, A_DEGREE = 1000, POINT = 22500, POINTS = 16,
    DEGREE_DIGITS = 3, DEGREE_FRACTION_DIGITS = 3, DEGREE_SIGN = 0xB0, MINUTE_SIGN = 0x2032,
    VARIATION_HIGHEST = 900, MINUTES_A_TENTH = 6
};

/* Up to `most` digits at *text; how many. */
static int degree_digits_take(const char **text, int most, int64_t *value)
{
    int count = 0;
    for (; count < most && is_digit(**text); (*text)++, count++)
        *value = *value * 10 + (**text - '0');
    return count;
}

/* Degrees in thousandths: one to three digits, perhaps decimals. */
static bool degrees_take(const char **text, int64_t *milli)
{
    int fraction = 0;
    *milli = 0;
    if (degree_digits_take(text, DEGREE_DIGITS, milli) == 0)
        return false;
    if (**text == '.') {
        (*text)++;
        fraction = degree_digits_take(text, DEGREE_FRACTION_DIGITS, milli);
        if (fraction == 0)
            return false;
    }
    for (; fraction < DEGREE_FRACTION_DIGITS; fraction++)
        *milli *= 10;
    return !is_digit(**text);
}

/* Moves past a sign, if it stands there. */
static bool degree_sign_take(const char **text, uint32_t wanted)
{
    size_t index = 0;
    uint32_t code_point = 0;
    if (!utf8_next(*text, strlen(*text), &index, &code_point) || code_point != wanted)
        return false;
    *text += index;
    return true;
}

/* The letter at the end, upper case, with a space before it or none; '\0': the text
 * ends here; '?': something else stands there. */
static char last_letter(const char *text)
{
    const char *at = text + (*text == ' ');
    if (*text == '\0')
        return '\0';
    if (*at == '\0' || at[1] != '\0')
        return '?';
    return *at >= 'a' && *at <= 'z' ? (char)(*at - 'a' + 'A') : *at;
}

enum bearing_fault bearing_parse(const char *text, struct bearing *bearing)
{
    int64_t milli = 0;
    if (!degrees_take(&text, &milli) || milli > FULL_CIRCLE)
        return BEARING_NONE;
    degree_sign_take(&text, DEGREE_SIGN);
    char letter = last_letter(text);
    if (letter == '\0')
        return BEARING_NO_LETTER;
    if (letter != 'M' && letter != 'T')
        return BEARING_NONE;
    *bearing = (struct bearing){.milli = milli, .magnetic = letter == 'M'};
    return BEARING_SOUND;
}

/* ---- variation ---- */

/* Minutes behind whole degrees, as charts print them. */
static bool minutes_take(const char **text, int64_t *minutes)
{
    if (degree_digits_take(text, 2, minutes) == 0 || *minutes >= 60)
        return false;
    return degree_sign_take(text, '\'') || degree_sign_take(text, MINUTE_SIGN);
}

bool variation_parse(const char *text, int *tenths)
{
    int64_t milli = 0, minutes = 0;
    if (!degrees_take(&text, &milli) || milli % (A_DEGREE / 10) != 0)
        return false;
    if (degree_sign_take(&text, DEGREE_SIGN) && is_digit(*text) &&
        (milli % A_DEGREE != 0 || !minutes_take(&text, &minutes)))
        return false;
    int64_t value = milli / (A_DEGREE / 10) + (minutes + MINUTES_A_TENTH / 2) / MINUTES_A_TENTH;
    char letter = last_letter(text);
    bool side_known = letter == 'E' || letter == 'W' || (letter == '\0' && value == 0);
    if (!side_known || value > VARIATION_HIGHEST)
        return false;
    *tenths = (int)(letter == 'W' ? -value : value);
    return true;
}

const char *variation_text(struct arena *arena, int tenths)
{
    int size = tenths < 0 ? -tenths : tenths;
    const char *side = tenths < 0 ? " W" : tenths > 0 ? " E" : "";
    return size % 10 == 0 ? text_format(arena, "%d%s", size / 10, side)
                          : text_format(arena, "%d.%d%s", size / 10, size % 10, side);
}

/* ---- reckoning ---- */

static int64_t into_circle(int64_t milli)
{
    return (milli % FULL_CIRCLE + FULL_CIRCLE) % FULL_CIRCLE;
}

int64_t bearing_true(const struct bearing *bearing, int variation_tenths)
{
    int64_t variation = bearing->magnetic ? (int64_t)variation_tenths * (A_DEGREE / 10) : 0;
    return into_circle(bearing->milli + variation);
}

int64_t bearing_reverse(int64_t milli) { return into_circle(milli + HALF_CIRCLE); }

const char *bearing_text(struct arena *arena, int64_t milli)
{
    int64_t degrees = (into_circle(milli) + A_DEGREE / 2) / A_DEGREE % (FULL_CIRCLE / A_DEGREE);
    return text_format(arena, "%03lld", (long long)degrees);
}

const char *compass_point(int64_t milli)
{
    static const char *const points[POINTS] = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                               "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    return points[(into_circle(milli) + POINT / 2) / POINT % POINTS];
}
