/* script_position.c - a script with its position and its time filled in, for the screen; and
 * the other way to say where the boat is (room: radio). Cards never have either filled in: they
 * are printed before it is known. */
#include "script.h"

#include "script_draft.h"

#include "text.h"

enum { DECIMALS = POSITION_SAID_DECIMALS };

static const struct position_blank {
    const char *blank;
    enum position_axis axis;
    bool degrees;
} blanks[] = {
    {BLANK_LATITUDE_DEGREES, POSITION_LATITUDE, true},
    {BLANK_LATITUDE_MINUTES, POSITION_LATITUDE, false},
    {BLANK_LONGITUDE_DEGREES, POSITION_LONGITUDE, true},
    {BLANK_LONGITUDE_MINUTES, POSITION_LONGITUDE, false},
};

/* Which of them the piece is; NULL: none. */
static const struct position_blank *blank_find(const struct script_piece *piece)
{
    for (size_t i = 0; i < sizeof blanks / sizeof *blanks; i++)
        if (piece->kind == PIECE_BLANK && text_equal(piece->text, blanks[i].blank))
            return &blanks[i];
    return NULL;
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
        const struct position_blank *blank = blank_find(&line->pieces[i]);
        pieces[i] = line->pieces[i];
        if (blank != NULL) {
            axis = blank->axis;
            angle = position_angle(position, axis, POSITION_MINUTES_OF, DECIMALS);
            pieces[i] = strong(
                blank->degrees
                    ? text_format(arena, "%0*u", axis == POSITION_LATITUDE ? 2 : 3, angle.degrees)
                    : text_format(arena, "%02u.%0*u", angle.minutes, DECIMALS, angle.fraction));
        } else if (angle.letter != '\0' && is_hemisphere(&line->pieces[i], axis)) {
            pieces[i] = strong(hemisphere_word(angle.letter));
        }
    }
    line->pieces = pieces;
}

static bool is_time(const struct script_piece *piece)
{
    return piece->kind == PIECE_BLANK && (text_equal(piece->text, BLANK_TIME_UTC) ||
                                          text_equal(piece->text, BLANK_TIME_LOCAL));
}

const struct script *script_timed(const struct script *script, const char *digits,
                                  struct arena *arena)
{
    struct script *timed = arena_alloc(arena, sizeof *timed);
    struct script_line *lines = arena_array(arena, script->count, sizeof *lines);
    for (size_t i = 0; i < script->count; i++) {
        lines[i] = script->lines[i];
        struct script_piece *pieces = arena_array(arena, lines[i].count, sizeof *pieces);
        for (size_t k = 0; k < lines[i].count; k++)
            pieces[k] = is_time(&lines[i].pieces[k]) ? strong(digits) : lines[i].pieces[k];
        lines[i].pieces = pieces;
    }
    *timed = (struct script){.lines = lines, .count = script->count};
    return timed;
}

/* Direction by its name: a compass bearing is magnetic, and nobody turns it round in a hurry. */
const struct script *script_landmark(struct arena *arena)
{
    struct script *script = arena_alloc(arena, sizeof *script);
    struct script_line *line = arena_alloc(arena, sizeof *line);
    struct telling telling = {.arena = arena};
    struct line_draft draft = {.count = 0};
    draft_blank(&draft, "how far", WIDTH_TWO_DIGITS);
    draft_add(&draft, PIECE_WORDS, "MILES");
    draft_blank(&draft, "direction: NORTH, NORTH EAST ...", WIDTH_MINUTES);
    draft_add(&draft, PIECE_WORDS, "OF");
    draft_blank(&draft, "a place on the chart", WIDTH_WORDS);
    *line = draft_line(&telling, ELEMENT_POSITION, &draft);
    *script = (struct script){.lines = line, .count = 1};
    return script;
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
