/* crew.c - the people of a charter as --crew gives them (room: app). */
#include "fleet.h"

#include "text.h"

enum { CREW_MOST = 60, KG_LEAST = 3, KG_MOST = 250, KG_DIGITS_MOST = 3 };

static void wrong_crew(const struct options *options, const struct fleet *fleet)
{
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                "write the body mass of each person in whole kg, such as --crew 80,75,18",
                "--crew does not take \"%s\"", options->crew);
}

/* One mass and the comma after it; 0: none there. */
static int mass_next(const char **at)
{
    int kg = 0;
    for (int digits = 0; **at >= '0' && **at <= '9'; ++*at)
        if (++digits > KG_DIGITS_MOST)
            return 0;
        else
            kg = kg * 10 + (**at - '0');
    if (**at == ',' && (*at)[1] != '\0')
        ++*at;
    else if (**at != '\0')
        return 0;
    return kg >= KG_LEAST && kg <= KG_MOST ? kg : 0;
}

bool crew_read(const struct options *options, struct fleet *fleet)
{
    const char *at = options->crew;
    int *kg = arena_array(fleet->arena, CREW_MOST, sizeof *kg);
    struct crew crew = {.kg = kg};
    if (at == NULL)
        return true;
    do {
        int mass = mass_next(&at);
        if (mass == 0 || crew.count == CREW_MOST) {
            wrong_crew(options, fleet);
            return false;
        }
        kg[crew.count++] = mass;
    } while (*at != '\0');
    fleet->crew = crew;
    return true;
}
