/* explain_safety.c - where each line of a safety plan comes from (room: explain).
 * Never words anything itself. */
#include "explain.h"

static void place_tell(const struct explaining *explaining, const struct plan_place *place)
{
    line_tell(explaining, INDENT_PART, "%s: %s, %d mm aft of the bow",
              place->title, place->marker.level == LEVEL_BELOW ? "below" : "on deck",
              (int)place->marker.x_mm);
    for (size_t i = 0; i < place->row_count; i++) {
        const struct plan_row *row = &place->rows[i];
        const char *tag = row->kind == NULL
                              ? "" : text_format(explaining->arena, "[%s] ", row->marker.tag);
        placed_tell(explaining, INDENT_REASON, row->marker.origin, "%s%s%s%s", tag, row->name,
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
    if (safety->facing == FACING_NONE)
        line_tell(explaining, INDENT_PART, "Where the cards hang is not recorded (mounted:)");
    if (!text_empty(sources))
        line_tell(explaining, INDENT_PART, "%s", sources);
    blank_tell(explaining);
}
