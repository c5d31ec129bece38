/* command_survey.c - sheets to walk round boats with: of those of a base, or a blank one for a new
 * boat (room: app). */
#include "draw.h"
#include "form_print.h"
#include "survey.h"

static const struct form_kind survey_form = {
    .kind = {WORD_DOCUMENT_SURVEY, SET_OF_FORMS, survey_compose}, .file = "survey",
    .walk = WALK_SUPPOSED};

static bool is_of_new_boat(const struct options *options)
{
    return options->new_hull != HULL_NONE;
}

/* A boat that there is has her kind in her file. */
static bool hull_apart(const struct options *options, const struct fleet *fleet)
{
    if (!is_of_new_boat(options) || options->boats.count == 0)
        return true;
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                "leave out --hull for a boat of the base, or --boat for a new one",
                "--hull is for a new boat, of which there is no file yet");
    return false;
}

/* What her file is called: new-catamaran, new-catamaran-motor. */
static const struct boat *new_boat(const struct options *options, const struct fleet *fleet)
{
    enum hull hull = (enum hull)options->new_hull;
    enum rig rig = (enum rig)options->rig;
    struct boat *boat = arena_alloc(fleet->arena, sizeof *boat);
    *boat = *survey_new_boat(hull, rig, fleet->arena);
    boat->key = text_format(fleet->arena, "new-%s%s%s", choice_word(hull_words, hull),
                            rig == RIG_NONE ? "" : "-",
                            rig == RIG_NONE ? "" : choice_word(rig_words, rig));
    return boat;
}

enum exit_status command_survey(const struct options *options)
{
    unsigned needs = NEED_TEXTS | NEED_FACES | (is_of_new_boat(options) ? NEED_NO_BOATS : 0);
    struct fleet fleet;
    bool open = fleet_open(options, needs, &fleet);
    bool sound = form_paper_sound(options, &fleet) && hull_apart(options, &fleet) && open &&
                 folder_ready(options->output, fleet.arena, fleet.problems);
    if (sound && !is_of_new_boat(options))
        forms_print(options, &fleet, &survey_form);
    else if (sound && fleet.procedures_sound)
        form_print_one(options, &fleet, &survey_form, new_boat(options, &fleet));
    enum exit_status status = report_of_cards(&fleet);
    fleet_close(&fleet);
    return status;
}
