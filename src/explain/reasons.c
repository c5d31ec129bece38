/* reasons.c - a composed card explained: its head, then each part by the files
 * beside this one, then what awaits sign-off and what holds it (room: explain).
 * Never changes the card, nor what the run has to report. */
#include "explain.h"

#include "approval.h"
#include "fingerprint.h"

/* ---- head ---- */

/* Of the words that are printed; the list's first where none was chosen. */
static struct place calling_place(const struct explaining *explaining)
{
    const struct said_list *list = &explaining->sheet->procedure->call_when;
    const struct said *said = said_take(explaining->composing, list);
    return said == NULL ? (struct place){0} : said->say.place;
}

/* The distress card and a safety plan in parts have words of the program's instead. */
static struct place signs_place(const struct sheet *sheet)
{
    const struct list_value *signs = &sheet->procedure->signs;
    bool own = signs->count > 0 && text_begins(sheet_signs(sheet)->signs,
                                               text_for(&signs->items[0], sheet->language));
    return own ? signs->place : (struct place){0};
}

static void signs_tell(const struct explaining *explaining)
{
    const struct sheet *sheet = explaining->sheet;
    const struct procedure *procedure = sheet->procedure;
    struct place signs = signs_place(sheet), calling = calling_place(explaining);
    placed_tell(explaining, INDENT_REASON, signs, "signs: %s", sheet_signs(sheet)->signs);
    berth_tell(explaining);
    const struct cases_facts *cases = sheet_cases(sheet);
    for (size_t i = 0; i < cases->count; i++)
        placed_tell(explaining, INDENT_REASON, calling, "when to call: %s",
                    cases->items[i].text);
    said_tell(explaining, &procedure->call_when);
    if (procedure->when == NULL)
        return;
    placed_tell(explaining, INDENT_REASON, procedure->when->place, "card only where: %s; %s",
                condition_words(procedure->when, explaining->arena),
                text_for(&procedure->when_reason, sheet->language));
    condition_record_tell(explaining, INDENT_DETAIL, procedure->when);
}

static const char *fingerprint_of(const struct explaining *explaining)
{
    const struct compose_input *in = explaining->in;
    return procedure_fingerprint(explaining->sheet->procedure, in->authorities, in->words,
                                 explaining->arena);
}

static void head_tell(const struct explaining *explaining)
{
    static const char *const origins[] = {[PROCEDURE_OF_PROGRAM] = "",
                                          [PROCEDURE_CHANGED] = ", changed by the base",
                                          [PROCEDURE_OF_BASE] = ", the base's own"};
    const struct sheet *sheet = explaining->sheet;
    const struct title_facts *title = sheet_title(sheet);
    line_tell(explaining, INDENT_PART, "%s, %s", title->title, title->boat);
    line_tell(explaining, INDENT_PART, "%s (%s), check code %s%s", title->number, sheet->id,
              sheet_footer(sheet)->code, sheet->held ? ", HELD BACK" : "");
    placed_tell(explaining, INDENT_REASON, sheet->procedure->key.place, "procedure %s%s",
                sheet->procedure_key, origins[sheet->procedure->origin]);
    line_tell(explaining, INDENT_REASON, "fingerprint of its text in the language %s: %s",
              sheet->language, fingerprint_of(explaining));
    placed_tell(explaining, INDENT_REASON, sheet->boat->place, "boat %s", sheet->boat->key);
    if (sheet->space != ZONE_NONE)
        line_tell(explaining, INDENT_REASON, "engine space: %s", zone_word(sheet->space));
    signs_tell(explaining);
    static const enum block_key marks[] = {BLOCK_MARK, BLOCK_UNAPPROVED};
    for (size_t i = 0; i < sizeof marks / sizeof *marks; i++)
        if (sheet_block(sheet, marks[i]) != NULL)
            line_tell(explaining, INDENT_REASON, "mark: %s", sheet_text(sheet, marks[i])->text);
    blank_tell(explaining);
}

/* ---- sign-off ---- */

static bool is_practice(const struct basis *basis)
{
    return basis->practice.answer == ANSWER_YES;
}

static size_t practice_tell(const struct explaining *explaining)
{
    const struct sheet *sheet = explaining->sheet;
    const struct decision *decision = &sheet->procedure->decision;
    size_t count = 0;
    for (size_t i = 0; i < sheet_steps(sheet)->count; i++) {
        const struct card_step *step = &sheet_steps(sheet)->items[i];
        bool taken = step->taken != NULL;
        if (!is_practice(taken ? &step->taken->basis : &step->step->basis))
            continue;
        placed_tell(explaining, INDENT_REASON, taken ? step->taken->place : step->step->place,
                    "step %d, %s: trade practice", step->number, step->id);
        count++;
    }
    if (sheet_block(sheet, BLOCK_DECISION) == NULL || !is_practice(&decision->basis))
        return count;
    placed_tell(explaining, INDENT_REASON, decision->place, "the decision: trade practice");
    return count + 1;
}

/* One line an approval of this card's procedure. True when it stands today. */
static bool approval_tell(const struct explaining *explaining, const struct approval *approval,
                          const char *fingerprint)
{
    static const char *const states[] = {[APPROVAL_STANDS] = "approval",
                                         [APPROVAL_TO_COME] = "approval has not begun",
                                         [APPROVAL_OVER] = "approval has expired",
                                         [APPROVAL_OF_OTHER_TEXT] = "approval of another text, "};
    enum approval_state state = approval_state(approval, fingerprint, explaining->in->today);
    placed_tell(explaining, INDENT_REASON, approval->card.place,
                "%s%s: %s, %s, from %s until %s", states[state],
                state == APPROVAL_OF_OTHER_TEXT ? TEXT_OR_EMPTY(approval->text) : "",
                TEXT_OR_EMPTY(approval->initials), TEXT_OR_EMPTY(approval->qualification),
                TEXT_OR_EMPTY(approval->date), TEXT_OR_EMPTY(approval->until));
    return state == APPROVAL_STANDS;
}

static bool approvals_tell(const struct explaining *explaining)
{
    const struct base_record *base = explaining->in->base;
    const char *fingerprint = fingerprint_of(explaining);
    bool stands = false;
    for (size_t i = 0; i < base->approval_count; i++)
        if (text_equal(base->approvals[i].card.text, explaining->sheet->procedure_key))
            stands = approval_tell(explaining, &base->approvals[i], fingerprint) || stands;
    if (!stands)
        placed_tell(explaining, INDENT_REASON, source_whole(base->source),
                    "not approved: no approval of %s stands on %s",
                    explaining->sheet->procedure_key,
                    date_text(explaining->arena, explaining->in->today));
    return stands;
}

static void sign_off_tell(const struct explaining *explaining)
{
    line_tell(explaining, INDENT_PART, "Sign-off");
    size_t practice = berth_practice_tell(explaining) + practice_tell(explaining);
    bool approved = approvals_tell(explaining);
    if (practice == 0 && approved)
        line_tell(explaining, INDENT_REASON, "nothing awaits sign-off");
}

/* ---- what holds the card ---- */

/* How to mend it stands in the run's own messages. */
static void holds_tell(const struct explaining *explaining)
{
    size_t count;
    const struct problem *problems = card_held_by(explaining->composing, explaining->sheet, &count);
    blank_tell(explaining);
    line_tell(explaining, INDENT_PART, "Held back by");
    if (explaining->sheet->procedure->replaced)
        line_tell(explaining, INDENT_REASON, "the base's own text of this card, which cannot be "
                  "used: what stands above is the program's, and is not printed");
    for (size_t i = 0; i < count; i++) {
        if (problems[i].severity >= SEVERITY_DEFICIENCY)
            placed_tell(explaining, INDENT_REASON, problems[i].place, "%s", problems[i].what);
    }
}

/* ---- the card ---- */

static void card_explain(struct explaining *explaining, const struct sheet_set *set)
{
    explaining->composing = composing_again(explaining->in, set, explaining->sheet,
                                            explaining->arena);
    head_tell(explaining);
    steps_tell(explaining);
    boxes_tell(explaining);
    call_tell(explaining);
    safety_tell(explaining);
    figures_yield_tell(explaining);
    sign_off_tell(explaining);
    if (explaining->sheet->held)
        holds_tell(explaining);
}

void card_reasons(const struct compose_input *input, const struct sheet_set *set,
                  const struct sheet *sheet, struct text_builder *out)
{
    struct explaining explaining = {.in = input, .sheet = sheet, .arena = out->arena, .out = out};
    card_explain(&explaining, set);
}

struct reason_list card_reason_rows(const struct compose_input *input,
                                    const struct sheet_set *set, const struct sheet *sheet,
                                    struct arena *arena)
{
    struct reason_list rows = {0};
    struct explaining explaining = {.in = input, .sheet = sheet, .arena = arena, .rows = &rows};
    card_explain(&explaining, set);
    return rows;
}
