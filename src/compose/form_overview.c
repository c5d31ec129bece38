/* form_overview.c - all cards of a boat, small, on one page (room: compose): to be held beside
 * what hangs. It takes the pages as they are and composes nothing of them. */
#include "form_room.h"

const struct sheet_set *overview_compose(const struct compose_input *input,
                                         const struct views_facts *views, struct arena *arena,
                                         struct problems *problems)
{
    struct form_writer writer = form_begin(input, arena, problems);
    const struct form_head head = {
        .id = "overview", .title = word_alone(&writer.composing, WORD_OVERVIEW_TITLE),
        .signs = word_alone(&writer.composing, WORD_OVERVIEW_SIGNS)};
    writer.views = views;
    return form_end(&writer, &head);
}
