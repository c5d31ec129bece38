/* brief_call.c - who the boat is on the air, her MAYDAY word by word, and the same as practice with
 * a position that was made up for it (room: compose). What is said is English in every language. */
#include "brief_room.h"

#include "radio.h"

enum { HOUR_MINUTES = 60, DAY_MINUTES = 24 * HOUR_MINUTES, PRACTICE_MINUTES = 14 * 60 + 30 };

/* Of practice alone: 12 degrees 34.56 minutes, 123 degrees 45.67 minutes. */
#define PRACTICE_LATITUDE_E7 125760000
#define PRACTICE_LONGITUDE_E7 1237611667

static const struct form_column identity_columns[] = {{FORM_TEXT, "", 130}, {FORM_TEXT, "", 870}};
static const struct form_column spoken_columns[] = {{FORM_TEXT, "", 680}, {FORM_BLANK, "", 320}};

/* ---- who calls ---- */

static void identity_line(struct briefing *briefing, enum word label, const struct phrase *said,
                          const struct text_value *value)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct form_cell cells[2] = {brief_cell(briefing, brief_word(briefing, label)),
                                       brief_cell(briefing, said)};
    form_line_add(&briefing->writer, cells, FORM_SPOKEN, place_or(value->place, boat->place));
}

static const struct phrase *spelled_out(const struct briefing *briefing, const char *plain,
                                    const char *words)
{
    struct arena *arena = briefing->writer.composing.arena;
    return phrase_word(arena, WORD_BRIEF_SPELLED, "plain", phrase_verbatim(arena, plain), "words",
                       phrase_verbatim(arena, words), NULL);
}

static const struct phrase *call_sign_identity(const struct briefing *briefing)
{
    const struct text_value *sign = &briefing->writer.composing.in->boat->radio.call_sign;
    uint32_t bad = 0;
    if (sign->text == NULL)
        return brief_word(briefing, WORD_BRIEF_UNRECORDED);
    if (!call_sign_given(sign))
        return brief_word(briefing, WORD_BRIEF_CALL_SIGN_NONE);
    const char *words = spell(briefing->writer.composing.arena, sign->text, &bad);
    return spelled_out(briefing, sign->text, words == NULL ? "" : words);
}

static const struct phrase *mmsi_identity(const struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct text_value *mmsi = &briefing->writer.composing.in->boat->radio.mmsi;
    return mmsi->text == NULL ? brief_word(briefing, WORD_BRIEF_UNRECORDED)
                              : spelled_out(briefing, mmsi_in_threes(arena, mmsi->text),
                                        mmsi_spelled(arena, mmsi->text));
}

/* A boat without a fixed set has no number of its own. */
static void identity_add(struct briefing *briefing, const char *name)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    uint32_t bad = 0;
    const char *words = spell(briefing->writer.composing.arena, name, &bad);
    identity_line(briefing, WORD_BRIEF_NAME,
                  spelled_out(briefing, name, words == NULL ? "" : words), &boat->facts.name);
    identity_line(briefing, WORD_BRIEF_CALL_SIGN, call_sign_identity(briefing),
                  &boat->radio.call_sign);
    if (boat->radio.mmsi.text != NULL || boat_fitted(boat, ITEM_vhf_dsc) != ANSWER_NO)
        identity_line(briefing, WORD_BRIEF_MMSI, mmsi_identity(briefing), &boat->radio.mmsi);
}

/* ---- what is said ---- */

static void spoken_piece_add(struct text_builder *out, const struct script_piece *piece)
{
    switch (piece->kind) {
    case PIECE_WORDS:
        text_add(out, piece->text);
        return;
    case PIECE_STRONG:
        text_add_format(out, "**%s**", piece->text);
        return;
    case PIECE_BLANK:
        text_add(out, "…");
        return;
    case PIECE_CHOICE:
        script_choice_add(out, piece->text);
        return;
    }
}

/* The phrase, and a line to write upon where something is filled into it. */
static void script_line_add(struct briefing *briefing, const struct script_line *line)
{
    struct arena *arena = briefing->writer.composing.arena;
    struct text_builder said = text_builder_in(arena);
    bool blank = false;
    for (size_t i = 0; i < line->count; i++) {
        text_add(&said, i > 0 ? " " : "");
        spoken_piece_add(&said, &line->pieces[i]);
        blank = blank || line->pieces[i].kind == PIECE_BLANK;
    }
    const struct form_cell cells[2] = {{said.at, NULL},
                                       blank ? brief_blank(briefing, NULL) : NO_BLANK};
    form_line_add(&briefing->writer, cells, FORM_SPOKEN,
                  briefing->writer.composing.in->boat->place);
}

static void script_add(struct briefing *briefing, const struct script *script)
{
    for (size_t i = 0; i < script->count; i++)
        script_line_add(briefing, &script->lines[i]);
}

static const struct script *mayday(struct briefing *briefing)
{
    struct composing *composing = &briefing->writer.composing;
    return call_script(composing->in, SCRIPT_MAYDAY, NULL, composing->arena, composing->problems);
}

bool brief_call_add(struct briefing *briefing)
{
    struct composing *composing = &briefing->writer.composing;
    const char *name = spelled_name(composing->in->boat, composing->arena, composing->problems);
    const struct script *script = mayday(briefing);
    if (name == NULL || script == NULL)
        return false;
    brief_section_add(briefing, &(struct brief_section){
                                    .title = WORD_BRIEF_IDENTITY, .columns = identity_columns,
                                    .column_count = 2});
    identity_add(briefing, name);
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_CALL,
                                                        .columns = spoken_columns,
                                                        .column_count = 2});
    script_add(briefing, script);
    return true;
}

/* ---- practice ---- */

/* False: in which hemispheres the boats sail is not recorded. */
static bool practice_position(const struct base_record *base, struct position *position)
{
    *position = (struct position){PRACTICE_LATITUDE_E7, PRACTICE_LONGITUDE_E7};
    if (base->latitude.value == HEMISPHERE_DOWN)
        position->latitude_e7 = -position->latitude_e7;
    if (base->longitude.value == HEMISPHERE_DOWN)
        position->longitude_e7 = -position->longitude_e7;
    return base->latitude.value != HEMISPHERE_NONE && base->longitude.value != HEMISPHERE_NONE;
}

static const char *clock_digits(struct arena *arena, int minutes)
{
    int of_day = (minutes + DAY_MINUTES) % DAY_MINUTES;
    return text_format(arena, "%02d%02d", of_day / HOUR_MINUTES, of_day % HOUR_MINUTES);
}

static void clock_line_add(struct briefing *briefing, const struct clock *clock, struct date from)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct phrase *words[2] = {NULL, NULL};
    words[0] = clock == NULL
                   ? phrase_word(arena, WORD_BRIEF_CLOCK_NONE, "from", brief_day(briefing, from),
                                 NULL)
                   : phrase_word(arena, WORD_BRIEF_CLOCK, "from", brief_day(briefing, from),
                                 "local",
                                 phrase_verbatim(arena, clock_digits(arena, PRACTICE_MINUTES)),
                                 "offset", phrase_verbatim(arena, clock->offset.text), "utc",
                                 phrase_verbatim(arena, clock_digits(arena, PRACTICE_MINUTES -
                                                                     clock->minutes)), NULL);
    const struct form_cell cells[2] = {brief_cell(briefing, words[0]),
                                       clock == NULL ? brief_blank(briefing, NULL) : NO_BLANK};
    form_line_add(&briefing->writer, cells, FORM_PLAIN,
                  clock == NULL ? briefing->writer.composing.in->base->area_place : clock->place);
}

/* The clock of the first day, and each that begins to hold during the charter. */
static void clocks_add(struct briefing *briefing)
{
    const struct base_record *base = briefing->writer.composing.in->base;
    const struct charter *days = &briefing->hire->days;
    const struct clock *last = base_clock_on(base, days->start);
    clock_line_add(briefing, last, days->start);
    for (size_t i = 0; i < base->clock_count; i++) {
        const struct clock *clock = &base->clocks[i];
        if (clock->from.given && date_compare(clock->from.date, days->start) > 0 &&
            date_compare(clock->from.date, days->end) <= 0)
            clock_line_add(briefing, clock, clock->from.date);
    }
    if (last != NULL && base_clock_on(base, days->end) == NULL)
        clock_line_add(briefing, NULL, days->end);
}

bool brief_rehearsal_add(struct briefing *briefing)
{
    struct arena *arena = briefing->writer.composing.arena;
    const struct base_record *base = briefing->writer.composing.in->base;
    const struct script *script = mayday(briefing);
    const struct clock *clock = base_clock_on(base, briefing->hire->days.start);
    struct position position;
    if (script == NULL)
        return false;
    bool placed = practice_position(base, &position);
    if (placed)
        script = script_placed(script, &position, arena);
    if (clock != NULL)
        script = script_timed(script, clock_digits(arena, PRACTICE_MINUTES - clock->minutes),
                              arena);
    brief_section_add(briefing,
                      &(struct brief_section){
                          .title = WORD_BRIEF_REHEARSE,
                          .note = brief_word(briefing, placed ? WORD_BRIEF_REHEARSE_NOTE
                                                              : WORD_BRIEF_REHEARSE_BLANK),
                          .columns = spoken_columns, .column_count = 2,
                          .start = FORM_NEW_PAGE});
    script_add(briefing, script);
    clocks_add(briefing);
    return true;
}
