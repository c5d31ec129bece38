/* changes_words.c - steps, figures and all other words of a card that are others (room: register).
 * It is asked last, and leaves no line of which nothing is told. */
#include "register_room.h"

#include <string.h>

/* ---- steps ---- */

static const struct content_step *step_find(const struct content *content, const char *id)
{
    for (size_t i = 0; i < content->step_count; i++)
        if (text_equal(content->steps[i].id, id))
            return &content->steps[i];
    return NULL;
}

static bool line_of_step(const struct said_line *line, const void *id)
{
    return text_equal(line->step, id);
}

static bool line_of_step_but_number(const struct said_line *line, const void *id)
{
    return text_equal(line->step, id) && line->said != SAID_STEP && line->said != SAID_FIGURE;
}

static bool line_is_step_number(const struct said_line *line, const void *nothing)
{
    return nothing == NULL && line->said == SAID_STEP;
}

static bool line_is_figure(const struct said_line *line, const void *nothing)
{
    return nothing == NULL && line->said == SAID_FIGURE;
}

/* Why the words of a step are others. */
static const char *cause(const struct comparing *comparing)
{
    return texts_differ(comparing) ? "procedure changed: " : "";
}

static void step_compare(struct comparing *comparing, const struct content_step *old,
                         const struct content_step *now)
{
    if (!lines_unexplained(comparing, line_of_step_but_number, now->id))
        return;
    const char *shown = lines_shown(comparing, line_of_step_but_number, now->id);
    if (text_equal(old->taken, now->taken))
        reason_add(comparing, "%sstep %s%s", cause(comparing), now->number,
                   text_empty(shown) && !texts_differ(comparing) ? " changed" : shown);
    else
        reason_add(comparing, "%sstep %s, another case of it applies%s", cause(comparing),
                   now->number, shown);
    lines_explain(comparing, line_of_step, now->id);
}

static void steps_gone_tell(struct comparing *comparing)
{
    for (size_t i = 0; i < comparing->old.step_count; i++) {
        const struct content_step *step = &comparing->old.steps[i];
        if (step_find(&comparing->now, step->id) != NULL)
            continue;
        reason_add(comparing, "%sstep %s (%s) is gone", cause(comparing), step->number, step->id);
        lines_explain(comparing, line_of_step, step->id);
    }
}

static void steps_now_tell(struct comparing *comparing)
{
    for (size_t i = 0; i < comparing->now.step_count; i++) {
        const struct content_step *step = &comparing->now.steps[i];
        const struct content_step *old = step_find(&comparing->old, step->id);
        if (old != NULL) {
            step_compare(comparing, old, step);
            continue;
        }
        reason_add(comparing, "%sstep %s (%s) is new", cause(comparing), step->number, step->id);
        lines_explain(comparing, line_of_step, step->id);
    }
}

void steps_compare(struct comparing *comparing)
{
    size_t told = comparing->count;
    steps_gone_tell(comparing);
    steps_now_tell(comparing);
    if (comparing->count == told && lines_unexplained(comparing, line_is_step_number, NULL))
        reason_add(comparing, "%sits steps have other numbers", cause(comparing));
    lines_explain(comparing, line_is_step_number, NULL);
    if (lines_unexplained(comparing, line_is_figure, NULL))
        reason_add(comparing, "a figure changed%s", lines_shown(comparing, line_is_figure, NULL));
    lines_explain(comparing, line_is_figure, NULL);
}

/* ---- the drawing ---- */

static bool line_is_drawn(const struct said_line *line, const void *nothing)
{
    return nothing == NULL && line->said >= SAID_MARKER && line->said <= SAID_ABEAM;
}

#define TAGS_TOLD 8

/* Tags of the unexplained lines of the drawing, each once; how many, where they are many. */
static const char *tags_drawn(const struct comparing *comparing)
{
    struct text_builder out = text_builder_in(comparing->arena);
    size_t count = 0;
    text_add(&out, "");
    for (size_t i = 0; i < comparing->come_count; i++) {
        const struct said_line *line = comparing->come[i];
        if (line->explained || !line_is_drawn(line, NULL) || text_empty(line->tag) ||
            word_stands_in(out.at, line->tag))
            continue;
        text_add_format(&out, " %s", line->tag);
        count++;
    }
    return count > TAGS_TOLD ? text_format(comparing->arena, " %zu pieces", count) : out.at;
}

static void drawing_compare(struct comparing *comparing)
{
    if (!lines_unexplained(comparing, line_is_drawn, NULL))
        return;
    const char *tags = tags_drawn(comparing);
    reason_add(comparing, "drawn otherwise on the plan%s%s", tags[0] == '\0' ? "" : ":", tags);
    lines_explain(comparing, line_is_drawn, NULL);
}

/* ---- all else ---- */

/* Blocks whose words are the procedure's. */
static bool is_of_procedure(const char *word)
{
    for (enum block_key key = BLOCK_NONE + 1; key < BLOCK_COUNT; key++) {
        enum facts_kind kind = facts_kind_of(key);
        if (text_equal(block_word(key), word))
            return key != BLOCK_OWN_LINES &&
                   (kind == FACTS_TITLE || kind == FACTS_SIGNS || kind == FACTS_CASES ||
                    kind == FACTS_DECISION || kind == FACTS_WARNINGS || kind == FACTS_TEXT);
    }
    return false;
}

static void block_words_compare(struct comparing *comparing, const char *word)
{
    const char *why = is_of_procedure(word) ? cause(comparing) : "";
    reason_add(comparing, "%s%s: words changed%s", why, word,
               lines_shown(comparing, line_in_block, word));
    lines_explain(comparing, line_in_block, word);
}

void words_compare(struct comparing *comparing)
{
    drawing_compare(comparing);
    for (size_t i = 0; i < comparing->gone_count; i++)
        if (!comparing->gone[i]->explained)
            block_words_compare(comparing, comparing->gone[i]->block);
    for (size_t i = 0; i < comparing->come_count; i++)
        if (!comparing->come[i]->explained)
            block_words_compare(comparing, comparing->come[i]->block);
}
