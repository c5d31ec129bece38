/* command_brief.c - the skipper's sheet of each boat for a charter (room: app). It is written also
 * where something stops the boat: then page one says so, and the status does. */
#include "brief.h"
#include "brief_changes.h"
#include "form_print.h"
#include "prove.h"

/* Her cards as they would be printed tell which are held back. What is wrong with them is for
 * `check` and `print` to tell. */
static const struct sheet_set *brief_sheets(const struct compose_input *input,
                                            struct arena *arena, struct problems *problems)
{
    struct problems *of_cards = problems_new(arena);
    const struct sheet_set *cards = compose_set(input, arena, of_cards);
    cards = hazards_judge(input, cards, arena, of_cards);
    struct compose_input own = *input;
    own.hire = hire_with_changes(input, cards, arena);
    return brief_compose(&own, cards, arena, problems);
}

enum exit_status command_brief(const struct options *options)
{
    static const struct form_kind form = {{WORD_DOCUMENT_BRIEF, SET_OF_FORMS, brief_sheets},
                                          "brief", WALK_ASKED, NULL};
    struct fleet fleet;
    bool opened = fleet_open(options, NEED_TEXTS | NEED_FACES, &fleet);
    bool hired = hire_read(options, &fleet);
    hire_register_take(options, &fleet);
    bool sound = form_paper_sound(options, &fleet) && opened && hired;
    bool stopped = sound && forms_print(options, &fleet, &form);
    enum exit_status status = report_of_cards(&fleet);
    if (stopped && status == EXIT_GOOD)
        status = EXIT_FOUND;
    fleet_close(&fleet);
    return status;
}
