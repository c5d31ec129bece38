/* approval_rules.c - the base's approvals against the texts that its cards are made of, which
 * procedures await one, and which are the base's own (room: rules). Told once a run, of no boat. */
#include "rules_room.h"

#include "approval.h"
#include "text.h"

/* ---- the text of an approval ---- */

/* The procedure that the approval names, in that language; NULL: the languages end. */
static const struct approvable *approvable_next(const struct rule_run *run,
                                                const struct approval *approval, size_t *index)
{
    while (*index < run->in->approvable_count) {
        const struct approvable *row = &run->in->approvables[(*index)++];
        if (text_equal(row->card, approval->card.text))
            return row;
    }
    return NULL;
}

/* What it is now, a line a language, for who holds the sheet that was signed against it. */
static const char *lines_now(const struct rule_run *run, const struct approval *approval)
{
    struct text_builder out = text_builder_in(run->arena);
    const struct approvable *row;
    for (size_t i = 0; (row = approvable_next(run, approval, &i)) != NULL;)
        text_add_format(&out, "\n    text: %s (the language %s)", row->fingerprint,
                        row->language);
    return out.at;
}

/* Nobody is to paste it who has not seen the signed sheet. */
static void without_text_tell(const struct rule_run *run, const struct approval *approval,
                              const char *what)
{
    const char *card = approval->card.text, *initials = approval->initials.text;
    rule_tell(run, CHECK_approval_without_text,
              place_else(approval->text.place, approval->card.place),
              text_format(run->arena,
                          "look at the sheet that %s read and signed, and add text: with the "
                          "fingerprint on it.\nIf nothing of the text has changed since they "
                          "read it, that is%s\n"
                          "Was no sheet signed? Then take the approval out, print one with\n"
                          "`maydeck why BASE --sign-off --card %s`, and let them read it",
                          text_empty(initials) ? "the person" : initials,
                          lines_now(run, approval), card),
              "the approval of %s %s", card, what);
}

static bool text_is_known(const struct rule_run *run, const struct approval *approval)
{
    const struct approvable *row;
    for (size_t i = 0; (row = approvable_next(run, approval, &i)) != NULL;)
        if (fingerprint_is(approval->text.text, row->fingerprint))
            return true;
    return false;
}

static bool is_over(const struct rule_run *run, const struct approval *approval)
{
    return approval->until.given && date_compare(approval->until.date, run->in->today) < 0;
}

static void approval_text_check(const struct rule_run *run, const struct approval *approval)
{
    size_t first = 0;
    if (approval->card.text == NULL || approvable_next(run, approval, &first) == NULL)
        return;     /* there is no such card, or no procedure could be used: it was told */
    if (approval->text.text == NULL)
        without_text_tell(run, approval, "does not say which text was approved");
    else if (!fingerprint_sound(approval->text.text))
        without_text_tell(run, approval, text_format(run->arena, "names %s, which is no "
                                                     "fingerprint: that has 16 signs, 0 to 9 and "
                                                     "A to F",
                                                     text_shown(run->arena, approval->text.text)));
    else if (!is_over(run, approval) && !text_is_known(run, approval))
        rule_tell(run, CHECK_approval_text_changed, approval->text.place,
                  text_format(run->arena, "let a qualified person read and sign the text anew "
                              "(`maydeck why BASE --sign-off\n--card %s`), then write the "
                              "approval that stands on the sheet", approval->card.text),
                  "the approval of %s by %s has lapsed: the text has changed since, and the card "
                  "says NOT APPROVED", approval->card.text,
                  TEXT_OR_EMPTY(approval->initials));
}

/* ---- its days ---- */

static void approval_date_check(const struct rule_run *run, const struct approval *approval)
{
    if (!approval->until.given || approval->card.text == NULL)
        return;
    if (is_over(run, approval))
        rule_tell(run, CHECK_approval_lapsed, approval->until.place,
                  "let a qualified person look at the card again",
                  "the approval of %s lapsed on %s: the card says it is not approved",
                  approval->card.text, approval->until.text);
    else if (date_compare(approval->until.date, run->in->to) < 0)
        rule_tell(run, CHECK_approval_lapses_during, approval->until.place,
                  "let a qualified person look at the card again before then",
                  "the approval of %s lapses on %s, before the charter ends",
                  approval->card.text, approval->until.text);
}

/* ---- what awaits approval ---- */

static bool is_approved(const struct rule_run *run, const struct approvable *row)
{
    const struct base_record *base = run->in->base;
    for (size_t i = 0; i < base->approval_count; i++)
        if (text_equal(base->approvals[i].card.text, row->card) &&
            approval_state(&base->approvals[i], row->fingerprint, run->in->today) ==
                APPROVAL_STANDS)
            return true;
    return false;
}

/* One finding for all procedures of a language. */
static void awaited_tell(const struct rule_run *run, const char *language)
{
    struct text_builder cards = text_builder_in(run->arena);
    size_t count = 0;
    for (size_t i = 0; i < run->in->approvable_count; i++) {
        const struct approvable *row = &run->in->approvables[i];
        if (row->hung && text_equal(row->language, language) && !is_approved(run, row))
            text_add_format(&cards, "%s%s", count++ == 0 ? "" : ", ", row->card);
    }
    if (count > 0)
        rule_tell(run, CHECK_approval_awaited, source_whole(run->in->base->source),
                  "print the sheets to read and sign with `maydeck why BASE --sign-off`, then "
                  "write what\nwas signed under approvals:",
                  "%zu procedure%s in the language %s await%s the approval of a qualified person: "
                  "%s", count, count == 1 ? "" : "s", language, count == 1 ? "s" : "", cards.at);
}

static bool is_first_of_language(const struct rule_run *run, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (text_equal(run->in->approvables[i].language, run->in->approvables[index].language))
            return false;
    return true;
}

/* ---- the base's own procedures ---- */

/* Each once, whatever languages it has texts in. */
static bool is_told_before(const struct rule_run *run, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (text_equal(run->in->approvables[i].card, run->in->approvables[index].card))
            return true;
    return false;
}

static void own_procedures_tell(const struct rule_run *run)
{
    struct text_builder files = text_builder_in(run->arena);
    for (size_t i = 0; i < run->in->approvable_count; i++) {
        const struct approvable *row = &run->in->approvables[i];
        if (row->own_file != NULL && !is_told_before(run, i))
            text_add_format(&files, "%s%s (%s, %s)", files.length > 0 ? ", " : "", row->card,
                            row->changed ? "changed" : "of its own", row->own_file);
    }
    if (files.length > 0)
        rule_tell(run, CHECK_procedures_of_base, source_whole(run->in->base->source),
                  "let a qualified person approve them: the base alone answers for their words",
                  "cards that the base has written: %s", files.at);
}

void approval_rules(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    own_procedures_tell(run);
    for (size_t i = 0; i < base->approval_count; i++) {
        approval_text_check(run, &base->approvals[i]);
        approval_date_check(run, &base->approvals[i]);
    }
    for (size_t i = 0; i < run->in->approvable_count; i++)
        if (is_first_of_language(run, i))
            awaited_tell(run, run->in->approvables[i].language);
}

