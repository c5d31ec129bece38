/* explain_safety.c - where each line of a safety plan comes from (room: explain).
 * Never words anything itself. */
#include "explain.h"

static const char *chips_joined(struct arena *arena, const struct plan_row *row)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < row->chip_count; i++)
        text_add_format(&out, "[%s] ", row->chips[i]);
    return out.at == NULL ? "" : out.at;
}

static void place_tell(const struct explaining *explaining, const struct plan_place *place)
{
    line_tell(explaining, INDENT_PART, "%s: %s, %d mm aft of the bow, %d mm to starboard (%s)",
              place->title, place->marker.level == LEVEL_BELOW ? "below" : "on deck",
              (int)place->marker.x_mm, (int)place->marker.y_mm,
              place->marker.exact ? "from at:" : "from the zone and side");
    for (size_t i = 0; i < place->row_count; i++) {
        const struct plan_row *row = &place->rows[i];
        placed_tell(explaining, INDENT_REASON, row->origin, "%s%s%s%s",
                    chips_joined(explaining->arena, row), row->name,
                    text_empty(row->detail) ? "" : ", ", row->detail);
    }
    blank_tell(explaining);
}

void safety_tell(const struct explaining *explaining)
{
    const struct places_facts *safety = sheet_places(explaining->sheet);
    const char *sources = sheet_text(explaining->sheet, BLOCK_SOURCES)->text;
    if (sheet_block(explaining->sheet, BLOCK_LABELS) == NULL)
        return;
    for (size_t i = 0; i < safety->count; i++)
        place_tell(explaining, &safety->places[i]);
    line_tell(explaining, INDENT_PART, "Gear that one page does not hold is printed on more of "
              "them, from the bow aft");
    if (safety->here_given)
        placed_tell(explaining, INDENT_PART, safety->here.origin, "%s", safety->here_words);
    else
        line_tell(explaining, INDENT_PART, "Where the cards hang is not recorded (mounted:)");
    if (!text_empty(sources))
        line_tell(explaining, INDENT_PART, "%s", sources);
    blank_tell(explaining);
}
