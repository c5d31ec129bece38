/* call_place.c - the position and the bearing that a call is rehearsed with (room:
 * app). Never takes a magnetic bearing for a true one. */
#include "call_place.h"

#include "radio.h"

/* ---- reading ---- */

/* What is asked for and says neither where the boat is nor, it may be, at what time. */
struct placeless { const char *name; bool asked, timed; };

static bool place_said(const struct options *options, struct problems *problems)
{
    const struct placeless rows[] = {
        {"--spell", options->spell, false}, {"--downgrade", options->downgrade, false},
        {"--securite", options->securite, false}, {"--receipt", options->receipt, false},
        {"--cancel", options->cancel, true}};
    const char *place = options->position != NULL ? "--position"
                        : options->bearing != NULL ? "--bearing" : NULL;
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        const char *without = place != NULL ? place
                              : options->time != NULL && !rows[i].timed ? "--time" : NULL;
        if (!rows[i].asked || without == NULL)
            continue;
        problem_add(problems, SEVERITY_USE, NO_PLACE, "leave one of the two out",
                    "%s has no place in %s, which does not say %s", without, rows[i].name,
                    place != NULL ? "where the boat is" : "a time");
        return false;
    }
    return true;
}

static bool position_read(const struct options *options, struct problems *problems,
                          struct call_place *place)
{
    struct position_error error = {.fault = POSITION_SOUND};
    if (options->position == NULL)
        return true;
    place->position_given = position_parse(options->position, &place->position, &error);
    if (!place->position_given)
        problem_add(problems, SEVERITY_USE, NO_PLACE, position_fault_remedy(error.fault),
                    "--position \"%s\" %s (character %zu)", options->position,
                    position_fault_text(error.fault), error.at);
    return place->position_given;
}

/* A base that could not be read, or whose variation could not, has been told already. */
static bool variation_known(const struct fleet *fleet)
{
    const struct base_record *base = fleet->base;
    if (base != NULL && !base->variation_given && base->variation.text == NULL)
        problem_add(fleet->problems, SEVERITY_ERROR, base->latitude.place,
                    "record `variation:` in cruising_area from the chart, such as 4 E, and its\n"
                    "date as `variation_on:`; or give a true bearing",
                    "a magnetic bearing cannot be made true: no variation is recorded");
    return base != NULL && base->variation_given;
}

static bool bearing_read(const struct options *options, const struct fleet *fleet,
                         struct call_place *place)
{
    if (options->bearing == NULL)
        return true;
    enum bearing_fault fault = bearing_parse(options->bearing, &place->bearing);
    if (fault != BEARING_SOUND) {
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "write degrees from 0 to 360, with M if a compass showed them and T if they\n"
                    "are true: \"100 M\", \"086 T\"",
                    "--bearing \"%s\" %s", options->bearing,
                    fault == BEARING_NO_LETTER ? "does not say whether it is magnetic or true"
                                               : "is no bearing");
        return false;
    }
    place->bearing_given = !place->bearing.magnetic || variation_known(fleet);
    return place->bearing_given;
}

bool call_place_read(const struct options *options, const struct fleet *fleet,
                     struct call_place *place)
{
    if (!place_said(options, fleet->problems))
        return false;
    bool position = position_read(options, fleet->problems, place);
    bool bearing = bearing_read(options, fleet, place);
    bool time = call_time_read(options, fleet, place);
    place->of_another = options->relay;
    return position && bearing && time;
}

/* ---- telling ---- */

/* A wrong letter is easily given; the boat may still be there. */
static const char *side_doubt(const struct hemisphere_value *area, int64_t e7,
                              const char *const *words, struct arena *arena)
{
    bool doubtful = (e7 > 0 && area->value == HEMISPHERE_DOWN) ||
                    (e7 < 0 && area->value == HEMISPHERE_UP);
    return !doubtful ? NULL
                     : text_format(arena,
                                   "Is the hemisphere right? The base's boats sail %s.",
                                   choice_word(words, area->value));
}

struct position_told position_told_of(const struct call_place *place, const struct fleet *fleet)
{
    const struct position *position = &place->position;
    const struct base_record *base = fleet->base;
    struct arena *arena = fleet->arena;
    const char *both[] = {
        side_doubt(&base->latitude, position->latitude_e7, latitude_words, arena),
        side_doubt(&base->longitude, position->longitude_e7, longitude_words, arena)};
    const char **doubts = arena_array(arena, 2, sizeof *doubts);
    size_t count = 0;
    for (size_t i = 0; i < 2; i++)
        if (both[i] != NULL)
            doubts[count++] = both[i];
    return (struct position_told){
        .degrees = position_text(arena, position, POSITION_DEGREES, 5),
        .minutes = position_text(arena, position, POSITION_MINUTES_OF, 3),
        .seconds = position_text(arena, position, POSITION_SECONDS_OF, 1),
        .say = position_spoken(arena, position, POSITION_SAID_DECIMALS),
        .of_another = place->of_another, .doubts = {doubts, count}};
}

struct bearing_told bearing_told_of(const struct bearing *bearing, const struct fleet *fleet)
{
    const struct base_record *base = fleet->base;
    struct arena *arena = fleet->arena;
    int64_t towards = bearing_true(bearing, base->variation_tenths);
    int64_t from = bearing_reverse(towards);
    const char *digits = bearing_text(arena, from);
    uint32_t bad = 0;
    struct bearing_told told = {
        .mark = bearing_text(arena, towards), .from_mark = digits, .point = compass_point(from),
        .say = text_format(arena, "%s DEGREES TRUE, ____ (miles) MILES FROM ____ (the mark)",
                           spell(arena, digits, &bad))};
    if (bearing->magnetic) {
        told.magnetic = bearing_text(arena, bearing->milli);
        told.variation = variation_text(arena, base->variation_tenths);
        told.variation_on = base->variation_on.given ? base->variation_on.text : NULL;
    }
    return told;
}

static void position_add(const struct call_place *place, const struct fleet *fleet,
                         struct text_builder *out)
{
    const struct position_told told = position_told_of(place, fleet);
    const char *const *doubts = told.doubts.at;
    text_add_format(out, "\n%s\n  %s\n  %s\n  %s\n",
                    told.of_another ? "POSITION OF THE VESSEL IN DISTRESS" : "POSITION",
                    told.degrees, told.minutes, told.seconds);
    for (size_t i = 0; i < told.doubts.count; i++)
        text_add_format(out, "  %s\n", doubts[i]);
    text_add_format(out, "  SAY: %s\n", told.say);
}

static void bearing_add(const struct bearing *bearing, const struct fleet *fleet,
                        struct text_builder *out)
{
    const struct bearing_told told = bearing_told_of(bearing, fleet);
    text_add_format(out, "\nBEARING\n  the mark bears %s TRUE", told.mark);
    if (told.magnetic != NULL)
        text_add_format(out, " (%s MAGNETIC, variation %s, %s)", told.magnetic, told.variation,
                        told.variation_on == NULL ? "date not recorded" : told.variation_on);
    text_add_format(out, "\n  direction FROM the mark: %s TRUE (%s)\n  SAY: %s\n",
                    told.from_mark, told.point, told.say);
}

void call_place_add(const struct call_place *place, const struct fleet *fleet,
                    struct text_builder *out)
{
    if (place->position_given)
        position_add(place, fleet, out);
    if (place->bearing_given)
        bearing_add(&place->bearing, fleet, out);
    if (place->time != NULL)
        text_add_format(out, "\nTIME\n  %s\n", place->time_told);
}
