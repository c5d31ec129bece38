/* script_draft.c - a line of a script while it is put together (room: radio). Never knows which
 * line it is. */
#include "script_draft.h"

#include <string.h>

#include "promise.h"
#include "text.h"

void draft_add(struct line_draft *draft, enum piece_kind kind, const char *text)
{
    promise(draft->count < PIECES_AT_MOST && text != NULL);
    draft->pieces[draft->count++] = (struct script_piece){.kind = kind, .text = text};
}

void draft_blank(struct line_draft *draft, const char *name, int width_mm)
{
    promise(draft->count < PIECES_AT_MOST && width_mm > 0);
    draft->pieces[draft->count++] =
        (struct script_piece){.kind = PIECE_BLANK, .text = name, .width_mm = width_mm};
}

static bool clocks_known(const struct telling *telling)
{
    return telling->base != NULL && telling->base->clock_count > 0;
}

const char *clock_said(const struct telling *telling)
{
    return clocks_known(telling) ? "UTC" : "LOCAL TIME";
}

void draft_time(struct line_draft *draft, const struct telling *telling)
{
    draft_blank(draft, clocks_known(telling) ? BLANK_TIME_UTC : BLANK_TIME_LOCAL, WIDTH_TIME);
    draft_add(draft, PIECE_WORDS, clock_said(telling));
}

struct script_line draft_line(const struct telling *telling, enum script_element element,
                              const struct line_draft *draft)
{
    struct script_piece *pieces = arena_array(telling->arena, draft->count, sizeof *pieces);
    if (draft->count > 0)
        memcpy(pieces, draft->pieces, draft->count * sizeof *pieces);
    return (struct script_line){.element = element, .pieces = pieces, .count = draft->count};
}

const char *said_times(const struct telling *telling, const char *words, int times)
{
    struct text_builder said = text_builder_in(telling->arena);
    for (int i = 0; i < times; i++) {
        text_add(&said, i > 0 ? ", " : "");
        text_add(&said, words);
    }
    return said.at;
}

const char *said_sentence(const struct telling *telling, const char *words)
{
    return text_ends(words, ".") ? words : text_format(telling->arena, "%s.", words);
}
