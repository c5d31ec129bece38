/* fuzz_positions.c - any text as a position, a bearing, a variation, a date and a number: what is
 * read is printed and read again as the same. */
#include "fuzz.h"

#include <stdlib.h>
#include <string.h>

#include "date.h"
#include "number.h"
#include "position.h"
#include "radio.h"
#include "text.h"

/* Of half a unit of its last decimal at most is what is printed off. */
static void form_check(const struct fuzz *fuzz, const struct position *position,
                       enum position_form form, int decimals)
{
    static const int64_t units[] = {10000000, 10000000 / 60, 10000000 / 3600};
    struct position_error error;
    struct position again;
    const char *text = position_text(fuzz->arena, position, form, decimals);
    int64_t most = units[form] / power_of_ten(decimals) / 2 + 2;
    CHECK(position_parse(text, &again, &error));
    CHECK(llabs(again.latitude_e7 - position->latitude_e7) <= most);
    CHECK(llabs(again.longitude_e7 - position->longitude_e7) <= most);
}

static void position_check(const struct fuzz *fuzz)
{
    static const int decimals[] = {7, 3, 1};
    struct position position = {0, 0}, exact;
    struct position_error error = {POSITION_SOUND, 0};
    if (!position_parse(fuzz->bytes, &position, &error)) {
        CHECK(error.fault != POSITION_SOUND && position_fault_text(error.fault) != NULL);
        CHECK(position_fault_remedy(error.fault) != NULL && error.at <= fuzz->length + 1);
        return;
    }
    CHECK(llabs(position.latitude_e7) <= 900000000 && llabs(position.longitude_e7) <= 1800000000);
    CHECK(position_parse(position_text(fuzz->arena, &position, POSITION_DEGREES, 7), &exact,
                         &error));
    CHECK(exact.latitude_e7 == position.latitude_e7 && exact.longitude_e7 == position.longitude_e7);
    for (int form = POSITION_DEGREES; form <= POSITION_SECONDS_OF; form++)
        for (int i = 0; i <= decimals[form]; i++)
            form_check(fuzz, &position, (enum position_form)form, i);
    CHECK(strstr(position_spoken(fuzz->arena, &position, 2), "DEGREES") != NULL);
}

static void bearing_check(const struct fuzz *fuzz)
{
    struct bearing bearing = {-1, false}, again;
    int tenths = 0, same = 0;
    enum bearing_fault fault = bearing_parse(fuzz->bytes, &bearing);
    CHECK((fault == BEARING_SOUND) == (bearing.milli >= 0));
    bool varies = variation_parse(fuzz->bytes, &tenths);
    if (varies) {
        CHECK(abs(tenths) <= 900);
        CHECK(variation_parse(variation_text(fuzz->arena, tenths), &same) && same == tenths);
    }
    if (fault != BEARING_SOUND)
        return;
    CHECK(bearing.milli <= 360000);
    int64_t real = bearing_true(&bearing, varies ? tenths : 45);
    CHECK(real >= 0 && real < 360000 && bearing_reverse(bearing_reverse(real)) == real);
    CHECK(strlen(bearing_text(fuzz->arena, real)) == 3 && compass_point(real) != NULL);
    CHECK(bearing_parse(text_format(fuzz->arena, "%sT", bearing_text(fuzz->arena, real)),
                        &again) == BEARING_SOUND);
}

/* What is to be written in its place is a date. */
static void remedy_check(const struct fuzz *fuzz)
{
    struct date date;
    const char *remedy = date_remedy(fuzz->arena, fuzz->bytes);
    CHECK(text_is_shown(remedy));
    if (text_begins(remedy, "write ") && is_digit(remedy[6]))
        CHECK(date_parse(remedy + 6, &date));
}

static void date_check(const struct fuzz *fuzz)
{
    struct date date, again;
    if (!date_parse(fuzz->bytes, &date)) {
        if (text_code_points(fuzz->bytes) >= 0)
            remedy_check(fuzz);
        return;
    }
    CHECK(date.year >= 1900 && date.year <= 2199);
    CHECK(text_equal(date_text(fuzz->arena, date), fuzz->bytes));
    CHECK(date_compare(date_first_day(date), date_last_day(date)) <= 0);
    again = date_add_months(date_first_day(date), 12);
    CHECK(date_days_between(date_first_day(date), again) >= 365);
    CHECK(date_days_between(date, date_days_later(date, 400)) == 400);
}

static void number_check(const struct fuzz *fuzz)
{
    int64_t milli, again;
    if (!number_parse_milli(fuzz->bytes, &milli))
        return;
    CHECK(llabs(milli) <= INT64_C(999999999999));
    CHECK(number_parse_milli(number_text_milli(fuzz->arena, milli), &again) && again == milli);
}

static void positions_one(struct fuzz *fuzz)
{
    position_check(fuzz);
    bearing_check(fuzz);
    date_check(fuzz);
    number_check(fuzz);
}

const struct harness harness = {NULL, positions_one, false};
