/* survey.c - the survey of a boat: her own facts, the walk, and what is filled in at its end (room:
 * compose). */
#include "survey_room.h"

#include "text.h"

#include <string.h>

/* Of one number; more of them are grouped. */
#define DIGITS_TOGETHER 6

const char *survey_said(struct survey *survey, const struct phrase *phrase)
{
    return phrase_said(survey_composing(survey), phrase);
}

const char *survey_word(struct survey *survey, enum word word)
{
    return form_word(&survey->writer, word);
}

const char *survey_number(struct survey *survey)
{
    return text_format(survey_composing(survey)->arena, "%zu", ++survey->number);
}

/* Long numbers are read in threes. */
const char *survey_grouped(struct survey *survey, const char *text)
{
    static const char digits[] = "0123456789";
    struct text_builder out = text_builder_in(survey_composing(survey)->arena);
    text_add(&out, "");
    while (*text != '\0') {
        size_t run = strspn(text, digits);
        for (size_t i = 0; i < run; i++) {
            if (run > DIGITS_TOGETHER && i > 0 && (run - i) % 3 == 0)
                text_add(&out, " ");
            text_add_bytes(&out, text + i, 1);
        }
        text += run;
        size_t rest = strcspn(text, digits);
        text_add_bytes(&out, text, rest);
        text += rest;
    }
    return out.at;
}

/* "new boat, two hulls, sails" */
static const char *kind_said(struct survey *survey)
{
    static const enum word hulls[] = {[HULL_NONE] = WORD_COUNT,
                                      [HULL_MONOHULL] = WORD_SURVEY_MONOHULL,
                                      [HULL_CATAMARAN] = WORD_SURVEY_CATAMARAN,
                                      [HULL_TRIMARAN] = WORD_SURVEY_TRIMARAN};
    static const enum word rigs[] = {[RIG_NONE] = WORD_COUNT, [RIG_SAIL] = WORD_SURVEY_SAIL,
                                     [RIG_MOTOR] = WORD_SURVEY_MOTOR};
    struct composing *composing = survey_composing(survey);
    struct arena *arena = composing->arena;
    enum word hull = hulls[survey_boat(survey)->facts.hull.value];
    enum word rig = rigs[survey_boat(survey)->facts.rig.value];
    const struct phrase *kind =
        phrase_joined(arena, WORD_JOIN_COMMA,
                      hull == WORD_COUNT ? NULL : word_alone(composing, hull),
                      rig == WORD_COUNT ? NULL : word_alone(composing, rig), NULL);
    return survey_said(survey, phrase_word(arena, WORD_SURVEY_NEW, "kind", kind, NULL));
}

const struct sheet_set *survey_compose(const struct compose_input *input, struct arena *arena,
                                       struct problems *problems)
{
    struct survey survey = {.writer = form_begin(input, arena, problems),
                            .asked = survey_asked(input, arena)};
    struct composing *composing = survey_composing(&survey);
    survey.numbers = arena_array(arena, input->boat->equipment_count, sizeof *survey.numbers);
    survey.walked = arena_array(arena, input->boat->equipment_count, sizeof *survey.walked);
    survey_facts_add(&survey);
    if (survey_is_new(&survey))
        survey_new_add(&survey);
    else
        survey_walk_add(&survey);
    survey_end_add(&survey);
    return form_end(&survey.writer,
                    &(struct form_head){
                        .id = "survey", .title = word_alone(composing, WORD_SURVEY_TITLE),
                        .over = survey_is_new(&survey) ? kind_said(&survey) : NULL,
                        .signs = word_alone(composing, survey_is_new(&survey)
                                                           ? WORD_SURVEY_SIGNS_NEW
                                                           : WORD_SURVEY_SIGNS)});
}
