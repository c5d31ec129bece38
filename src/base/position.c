/* position.c - positions as text, in three forms (room: base). Never uses floating
 * point: a value is rounded once, at the last unit that is printed. */
#include "position.h"

#include "number.h"
#include "promise.h"
#include "text.h"

/* No more than seven decimals are kept of a degree. */
enum { E7 = 10000000, HALF_E7 = E7 / 2, DECIMALS_MOST = 7 };

static int64_t units_a_degree(enum position_form form)
{
    switch (form) {
    case POSITION_DEGREES:
        return 1;
    case POSITION_MINUTES_OF:
        return 60;
    case POSITION_SECONDS_OF:
        return 3600;
    }
    promise_unreached();
}

struct angle position_angle(const struct position *position, enum position_axis axis,
                            enum position_form form, int decimals)
{
    bool latitude = axis == POSITION_LATITUDE;
    int64_t e7 = latitude ? position->latitude_e7 : position->longitude_e7;
    int64_t size = e7 < 0 ? -e7 : e7, fine = power_of_ten(decimals);
    promise(decimals >= 0 && decimals <= DECIMALS_MOST);
    promise(size <= (INT64_MAX - HALF_E7) / (units_a_degree(form) * fine));
    int64_t rounded = (size * units_a_degree(form) * fine + HALF_E7) / E7;
    int64_t units = rounded / fine;
    struct angle angle = {.fraction = (unsigned)(rounded % fine)};
    if (form == POSITION_SECONDS_OF) {
        angle.seconds = (unsigned)(units % 60);
        units /= 60;
    }
    if (form != POSITION_DEGREES) {
        angle.minutes = (unsigned)(units % 60);
        units /= 60;
    }
    angle.degrees = (unsigned)units;
    angle.letter = latitude ? (e7 < 0 ? 'S' : 'N') : (e7 < 0 ? 'W' : 'E');
    return angle;
}

static void fraction_add(struct text_builder *out, const struct angle *angle, int decimals)
{
    if (decimals > 0)
        text_add_format(out, ".%0*u", decimals, angle->fraction);
}

const char *position_axis_text(struct arena *arena, const struct position *position,
                               enum position_axis axis, enum position_form form, int decimals)
{
    struct angle angle = position_angle(position, axis, form, decimals);
    struct text_builder out = text_builder_in(arena);
    text_add_format(&out, "%0*u", axis == POSITION_LATITUDE ? 2 : 3, angle.degrees);
    switch (form) {
    case POSITION_DEGREES:
        fraction_add(&out, &angle, decimals);
        text_add(&out, "°");
        break;
    case POSITION_MINUTES_OF:
        text_add_format(&out, "°%02u", angle.minutes);
        fraction_add(&out, &angle, decimals);
        text_add(&out, "'");
        break;
    case POSITION_SECONDS_OF:
        text_add_format(&out, "°%02u'%02u", angle.minutes, angle.seconds);
        fraction_add(&out, &angle, decimals);
        text_add(&out, "\"");
        break;
    }
    text_add_bytes(&out, &angle.letter, 1);
    return out.at;
}

const char *position_text(struct arena *arena, const struct position *position,
                          enum position_form form, int decimals)
{
    return text_format(arena, "%s %s",
                       position_axis_text(arena, position, POSITION_LATITUDE, form, decimals),
                       position_axis_text(arena, position, POSITION_LONGITUDE, form, decimals));
}
