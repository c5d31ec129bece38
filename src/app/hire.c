/* hire.c - the charter that a skipper is briefed for, as the command line gives it (room: app).
 * Supposes no number of people: nobody counted is nobody with a lifejacket. */
#include "brief.h"
#include "fleet.h"
#include "text.h"

enum { PEOPLE_MOST = 60 };

/* Whole numbers from `least` to PEOPLE_MOST; false: it is none. */
static bool people_parse(const char *text, size_t least, size_t *count)
{
    size_t number = 0, digits = 0;
    for (; is_digit(text[digits]) && digits < 3; digits++)
        number = number * 10 + (size_t)(text[digits] - '0');
    if (digits == 0 || text[digits] != '\0' || number < least || number > PEOPLE_MOST)
        return false;
    *count = number;
    return true;
}

static bool use_refuse(struct fleet *fleet, const char *remedy, const char *what)
{
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, remedy, "%s", what);
    return false;
}

static bool days_read(const struct options *options, struct fleet *fleet, struct hire *hire)
{
    hire->days = (struct charter){options->from, options->to, 0};
    hire->since = options->since;
    if (options->from.year == 0)
        return use_refuse(fleet, "write the first and the last day of the charter, such as\n"
                                 "--from 2027-05-01 --to 2027-05-08",
                          "brief needs --from and --to");
    if (options->since.year != 0 && date_compare(options->since, options->from) > 0)
        return use_refuse(fleet, "--since is the day when the boat was last handed over",
                          "--since lies after --from");
    return true;
}

static bool people_read(const struct options *options, struct fleet *fleet, struct hire *hire)
{
    if (options->people == NULL)
        return use_refuse(fleet, "write how many are aboard, skipper and infants too, such as "
                                 "--people 6",
                          "brief needs --people");
    if (!people_parse(options->people, 1, &hire->people))
        return use_refuse(fleet,
                          text_format(fleet->arena, "write a whole number from 1 to %d, such as "
                                      "--people 6", PEOPLE_MOST),
                          text_format(fleet->arena, "--people does not take \"%s\"",
                                      options->people));
    return true;
}

static bool children_read(const struct options *options, struct fleet *fleet, struct hire *hire)
{
    if (options->children == NULL)
        return true;
    if (!people_parse(options->children, 0, &hire->children))
        return use_refuse(fleet, "write how many of --people are children, such as --children 2",
                          text_format(fleet->arena, "--children does not take \"%s\"",
                                      options->children));
    if (hire->people > 0 && hire->children > hire->people)
        return use_refuse(fleet, "--people counts all who are aboard, the children among them",
                          text_format(fleet->arena, "%zu children of %zu people", hire->children,
                                      hire->people));
    return true;
}

/* --masses was read with the fleet. */
static bool masses_read(const struct options *options, struct fleet *fleet, struct hire *hire)
{
    if (options->masses == NULL || fleet->crew.count == 0)
        return true;
    hire->kg = fleet->crew.kg;
    if (hire->people > 0 && fleet->crew.count != hire->people)
        return use_refuse(fleet, "give one for each who is aboard, children too, or leave --masses "
                                 "out",
                          text_format(fleet->arena, "--masses has %zu body masses for %zu people",
                                      fleet->crew.count, hire->people));
    return true;
}

bool hire_read(const struct options *options, struct fleet *fleet)
{
    struct hire *hire = arena_alloc(fleet->arena, sizeof *hire);
    bool days = days_read(options, fleet, hire);
    bool people = people_read(options, fleet, hire);
    bool children = children_read(options, fleet, hire);
    bool masses = masses_read(options, fleet, hire);
    fleet->hire = hire;
    return days && people && children && masses;
}
