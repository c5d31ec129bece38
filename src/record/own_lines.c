/* own_lines.c - lines of the base's own on cards (room: record). Whether a card of that name
 * exists is asked when the procedures are known. */
#include "own_line.h"

#include "boat.h"
#include "base.h"
#include "reader.h"
#include "reading.h"
#include "text.h"

#include <string.h>

enum { LINES_A_CARD = 2 };

static const struct field own_line_rows[] = {
    ROW(struct own_line, card, FIELD_TEXT, .required = true, .readers = READ_LINES,
        .about = "the card"),
    ROW(struct own_line, say, FIELD_WORDING, .required = true,
        .readers = READ_LINES, .about = "what the card says, in few words"),
    ROW(struct own_line, source, FIELD_TEXT, .required = true, .readers = READ_LINES,
        .about = "whose word it is, such as base or harbour office"),
    ROW(struct own_line, does, FIELD_CHOICES, .choices = act_words, .required = true,
        .readers = READ_CHECK, .about = "what it has people do of these, [] if nothing"),
};
static const struct stray_key own_line_strays[] = {{"rule", "call it say"}, {NULL, NULL}};
const struct field_table own_line_table = {
    .what = "a line", .fields = own_line_rows,
    .count = sizeof own_line_rows / sizeof *own_line_rows, .strays = own_line_strays};

/* ---- of a sheet ---- */

/* Is one the card of a single engine space, engine_fire_port, of which the other names all? */
static bool is_part_of(const char *card, const char *whole)
{
    size_t length = strlen(whole);
    return text_begins(card, whole) && card[length] == '_' &&
           choice_find(side_words, card + length + 1) != SIDE_NONE;
}

static const struct own_line *line_at(const struct base_record *base, const struct boat *boat,
                                      size_t index)
{
    size_t of_base = base == NULL ? 0 : base->own_lines.count;
    if (index < of_base)
        return &base->own_lines.rows[index];
    index -= of_base;
    return boat != NULL && index < boat->own_lines.count ? &boat->own_lines.rows[index] : NULL;
}

const struct own_line *own_line_next(const struct base_record *base, const struct boat *boat,
                                     const char *procedure_key, const char *sheet_id,
                                     size_t *index)
{
    const struct own_line *line;
    while ((line = line_at(base, boat, *index)) != NULL) {
        ++*index;
        if (text_equal(line->card.text, procedure_key) || text_equal(line->card.text, sheet_id))
            return line;
    }
    return NULL;
}

/* ---- checks ---- */

/* May both stand on one card? */
static bool lines_meet(const struct own_line *one, const struct own_line *other)
{
    const char *a = one->card.text, *b = other->card.text;
    return a != NULL && b != NULL && (text_equal(a, b) || is_part_of(a, b) || is_part_of(b, a));
}

static size_t lines_met(const struct own_lines *lines, size_t count, const struct own_line *line)
{
    size_t met = 0;
    for (size_t i = 0; i < count; i++)
        met += lines_meet(&lines->rows[i], line) ? 1 : 0;
    return met;
}

static void too_many_lines_tell(const struct own_line *line, const char *remedy,
                                struct problems *problems)
{
    problem_add(problems, SEVERITY_ERROR, line->card.place, remedy,
                "card %s has more than %d lines of the base", line->card.text, LINES_A_CARD);
}

void own_lines_check(const struct own_lines *lines, struct arena *arena,
                     struct problems *problems)
{
    for (size_t i = 0; i < lines->count; i++) {
        const struct own_line *line = &lines->rows[i];
        if (lines_met(lines, i, line) >= LINES_A_CARD)
            too_many_lines_tell(line, "keep the two that matter most", problems);
        voice_text_check(&line->card, arena, problems);
        voice_text_check(&line->say, arena, problems);
        voice_text_check(&line->source, arena, problems);
    }
}

void own_lines_beside_check(const struct own_lines *bases, const struct own_lines *lines,
                            struct problems *problems)
{
    for (size_t i = 0; i < lines->count; i++) {
        const struct own_line *line = &lines->rows[i];
        size_t others = lines_met(bases, bases->count, line), own = lines_met(lines, i, line);
        if (others > 0 && own < LINES_A_CARD && others + own >= LINES_A_CARD)
            too_many_lines_tell(line, "keep the two that matter most, here and in base.yaml",
                                problems);
    }
}
