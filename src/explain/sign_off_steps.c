/* sign_off_steps.c - the steps of a sheet to sign, each with all its cases (room: explain). */
#include "sign_off_room.h"

#include "item_states.h"

static void use_sign(struct text_builder *out, const struct words *words,
                     const struct item_use *use)
{
    text_add_format(out, "%s%s", out->length == 0 ? "" : ", ", words_item(words, use->value));
    if (use->state != STATE_ANY)
        text_add_format(out, ": %s", words_state(words, use->state));
}

static void uses_sign(struct signing *signing, size_t depth, const char *before,
                      const struct item_uses *uses)
{
    struct text_builder out = text_builder_in(signing->arena);
    for (size_t i = 0; i < uses->count; i++)
        use_sign(&out, signing->in->words, &uses->items[i]);
    if (out.length > 0)
        sign_add(signing, SIGN_TEXT, depth, "%s%s", before, out.at);
}

static void does_sign(struct signing *signing, size_t depth, const struct act_values *does)
{
    struct text_builder out = text_builder_in(signing->arena);
    for (size_t i = 0; i < does->count; i++)
        text_add_format(&out, "%s%s", i == 0 ? "" : ", ",
                        choice_word(act_words, does->items[i].value));
    if (out.length > 0)
        sign_add(signing, SIGN_TEXT, depth, "is proved as: %s", out.at);
}

/* What makes its acts right, and where those words stand. */
static void guards_sign(struct signing *signing, size_t depth, const struct guards *guards)
{
    for (size_t i = 0; i < guards->count; i++)
        sign_add(signing, SIGN_TEXT, depth, "right by its words in %s: %s",
                 TEXT_OR_EMPTY(guards->items[i].in),
                 choice_word(guard_words, guards->items[i].says.value));
}

static void lethal_sign(struct signing *signing, size_t depth, const struct list_value *lethal)
{
    for (size_t i = 0; i < lethal->count; i++)
        sign_said(signing, depth, "kills: ", &lethal->items[i]);
}

static void within_sign(struct signing *signing, size_t depth, const struct reach_value *within)
{
    if (within->value != REACH_ANY)
        sign_add(signing, SIGN_TEXT, depth, "nobody is sent farther than: %s",
                 choice_word(reach_words, within->value));
}

/* Words, gear and what they stand on: of a step, or of a case, which has its own of all of it. */
struct told_step {
    const struct text_value *act, *because;
    const struct list_value *lethal;
    const struct item_uses *uses, *also;
    const struct reach_value *within;
    const struct act_values *does;
    const struct guards *guards;
    const struct basis *basis;
};

static void told_sign(struct signing *signing, size_t depth, const struct told_step *told)
{
    sign_said(signing, depth, "", told->act);
    lethal_sign(signing, depth, told->lethal);
    sign_said(signing, depth, "because: ", told->because);
    uses_sign(signing, depth, "gear: ", told->uses);
    uses_sign(signing, depth, "gear that helps: ", told->also);
    within_sign(signing, depth, told->within);
    does_sign(signing, depth, told->does);
    guards_sign(signing, depth, told->guards);
    sign_basis(signing, depth, told->basis);
}

static void case_sign(struct signing *signing, const struct step_case *step_case)
{
    const struct told_step told = {&step_case->act, &step_case->because, &step_case->lethal,
                                   &step_case->uses, &step_case->also, &step_case->within,
                                   &step_case->does, &step_case->guards, &step_case->basis};
    if (step_case->when == NULL)
        sign_add(signing, SIGN_TEXT, 0, "on every other boat");
    sign_when(signing, 0, step_case->when);
    told_sign(signing, 1, &told);
    if (step_case->report.text != NULL)
        sign_add(signing, SIGN_STRONG, 1, "the call adds: %s", step_case->report.text);
}

static void step_sign(struct signing *signing, const struct procedure_step *step)
{
    const struct told_step told = {&step->act, &step->because, &step->lethal, &step->uses,
                                   &step->also, &step->within, &step->does, &step->guards,
                                   &step->basis};
    sign_section_begin(signing, text_format(signing->arena, "Step %s", step->id.text));
    if (step->when != NULL)
        sign_add(signing, SIGN_TEXT, 0, "not on every card");
    sign_when(signing, 1, step->when);
    sign_said(signing, 0, "who: ", &step->who);
    for (size_t i = 0; i < step->case_count; i++)
        case_sign(signing, &step->cases[i]);
    if (step->case_count > 0 && !step->ends)
        sign_add(signing, SIGN_TEXT, 0, "on every other boat");
    if (step->case_count == 0 || !step->ends)
        told_sign(signing, step->case_count == 0 ? 0 : 1, &told);
}

void sign_steps(struct signing *signing)
{
    const struct procedure *procedure = signing->in->procedure;
    for (size_t i = 0; i < procedure->step_count; i++)
        step_sign(signing, &procedure->steps[i]);
}
