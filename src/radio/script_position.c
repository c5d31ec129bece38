/* script_position.c - a script with its position filled in, for the screen (room:
 * radio). Cards never have one: they are printed before it is known. */
#include "script.h"

#include "text.h"

enum { DECIMALS = POSITION_SAID_DECIMALS };

static const struct { const char *blank; enum position_axis axis; bool degrees; } blanks[] = {
    {BLANK_LATITUDE_DEGREES, POSITION_LATITUDE, true},
    {BLANK_LATITUDE_MINUTES, POSITION_LATITUDE, false},
    {BLANK_LONGITUDE_DEGREES, POSITION_LONGITUDE, true},
    {BLANK_LONGITUDE_MINUTES, POSITION_LONGITUDE, false},
};
#define BLANKS (sizeof blanks / sizeof blanks[0])

/* Which of them the piece is; BLANKS: none. */
static size_t blank_find(const struct script_piece *piece)
{
    size_t index = 0;
    while (index < BLANKS &&
           (piece->kind != PIECE_BLANK || !text_equal(piece->text, blanks[index].blank)))
        index++;
    return index;
}

static bool is_hemisphere(const struct script_piece *piece, enum position_axis axis)
{
    const char *letters = axis == POSITION_LATITUDE ? LETTERS_OF_LATITUDE : LETTERS_OF_LONGITUDE;
    return text_begins(piece->text, hemisphere_word(letters[0])) ||
           text_begins(piece->text, hemisphere_word(letters[1]));
}

static struct script_piece strong(const char *text)
{
    return (struct script_piece){.kind = PIECE_STRONG, .text = text};
}

/* The hemisphere stands behind the blanks, printed or to be circled: the position's own
 * takes its place. */
static void line_fill(struct script_line *line, const struct position *position,
                      struct arena *arena)
{
    struct script_piece *pieces = arena_array(arena, line->count, sizeof *pieces);
    enum position_axis axis = POSITION_LATITUDE;
    struct angle angle = {.letter = '\0'};
    for (size_t i = 0; i < line->count; i++) {
        size_t blank = blank_find(&line->pieces[i]);
        pieces[i] = line->pieces[i];
        if (blank < BLANKS) {
            axis = blanks[blank].axis;
            angle = position_angle(position, axis, POSITION_MINUTES_OF, DECIMALS);
            pieces[i] = strong(
                blanks[blank].degrees
                    ? text_format(arena, "%0*u", axis == POSITION_LATITUDE ? 2 : 3, angle.degrees)
                    : text_format(arena, "%02u.%0*u", angle.minutes, DECIMALS, angle.fraction));
        } else if (angle.letter != '\0' && is_hemisphere(&line->pieces[i], axis)) {
            pieces[i] = strong(hemisphere_word(angle.letter));
        }
    }
    line->pieces = pieces;
}

const struct script *script_placed(const struct script *script, const struct position *position,
                                   struct arena *arena)
{
    struct script *placed = arena_alloc(arena, sizeof *placed);
    struct script_line *lines = arena_array(arena, script->count, sizeof *lines);
    for (size_t i = 0; i < script->count; i++) {
        lines[i] = script->lines[i];
        if (lines[i].element == ELEMENT_POSITION)
            line_fill(&lines[i], position, arena);
    }
    *placed = (struct script){.lines = lines, .count = script->count};
    return placed;
}
