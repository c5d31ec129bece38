/* crew.c - the people of a charter as --crew or --masses gives them (room: app). */
#include "fleet.h"

#include <string.h>

#include "text.h"

enum { CREW_MOST = 60, KG_LEAST = 3, KG_MOST = 250, KG_DIGITS_MOST = 3 };

/* 80;75 and 80 kg, 75 kg as 80,75; NULL: it holds anything else. */
static const char *crew_respelled(const char *list, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (; *list != '\0'; list++) {
        bool between = strchr(",; /+kg", *list) != NULL;
        if (is_digit(*list))
            text_add_bytes(&out, list, 1);
        else if (!between)
            return NULL;
        else if (is_digit(list[1]) || (list[1] == ' ' && is_digit(list[2])))
            text_add(&out, out.length > 0 && out.at[out.length - 1] != ',' ? "," : "");
    }
    return out.length == 0 ? NULL : out.at;
}

/* The list, and the option that gives it; NULL: none does. */
struct crew_list { const char *list, *option; };

static struct crew_list crew_list_of(const struct options *options)
{
    return options->masses != NULL ? (struct crew_list){options->masses, "--masses"}
                                   : (struct crew_list){options->crew, "--crew"};
}

static void wrong_crew(const struct crew_list *crew, const struct fleet *fleet)
{
    const char *meant = crew_respelled(crew->list, fleet->arena);
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                text_format(fleet->arena, "write the body mass of each person in whole kg, such as "
                            "%s %s", crew->option, meant == NULL ? "80,75,18" : meant),
                "%s does not take \"%s\"", crew->option, crew->list);
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
    const struct crew_list list = crew_list_of(options);
    const char *at = list.list;
    int *kg = arena_array(fleet->arena, CREW_MOST, sizeof *kg);
    struct crew crew = {.kg = kg};
    if (at == NULL)
        return true;
    do {
        int mass = mass_next(&at);
        if (mass == 0 || crew.count == CREW_MOST) {
            wrong_crew(&list, fleet);
            return false;
        }
        kg[crew.count++] = mass;
    } while (*at != '\0');
    fleet->crew = crew;
    return true;
}
