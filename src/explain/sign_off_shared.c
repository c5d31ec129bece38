/* sign_off_shared.c - what is approved with the sheets that are made of the record: the scripts of
 * the radio, and the words that all cards share (room: explain). */
#include "sign_off_room.h"

#include "radio.h"

#include <string.h>

/* As a boat says them of which nothing but a name is recorded. */
static const struct boat caller = {.facts.name.text = "Wrack"};

static void script_lines_sign(struct signing *signing, const char *script)
{
    for (size_t length; *script != '\0'; script += length + (script[length] == '\n' ? 1 : 0)) {
        length = strcspn(script, "\n");
        sign_add(signing, SIGN_STRONG, 1, "%.*s", (int)length, script);
    }
}

static void script_sign(struct signing *signing, enum script_form form)
{
    const struct script_request request = {.form = form};
    const struct script *script = script_make(&request, &caller, NULL, signing->arena,
                                              problems_new(signing->arena));
    if (script != NULL)
        script_lines_sign(signing, script_text(script, signing->arena));
}

static void phrases_sign(struct signing *signing)
{
    sign_section_begin(signing, "Phrases of the calls");
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++)
        sign_add(signing, SIGN_STRONG, 0, "%s: %s", choice_word(nature_words, key),
                 nature_of(key)->phrase);
    for (size_t i = 0; urgency_problem(i) != NULL; i++)
        sign_add(signing, SIGN_STRONG, 0, "what is wrong: %s", urgency_problem(i)->phrase);
    for (size_t i = 0; urgency_need(i) != NULL; i++)
        sign_add(signing, SIGN_STRONG, 0, "what is needed: I REQUIRE %s",
                 urgency_need(i)->phrase);
}

void sign_scripts(struct signing *signing)
{
    static const char *const forms[SCRIPT_FORM_COUNT] = {
        [SCRIPT_MAYDAY] = "MAYDAY", [SCRIPT_PAN_PAN] = "PAN PAN",
        [SCRIPT_SECURITE] = "SECURITE", [SCRIPT_RECEIPT] = "Receipt of another's MAYDAY",
        [SCRIPT_RELAY] = "MAYDAY RELAY", [SCRIPT_DOWNGRADE] = "Danger that is over",
        [SCRIPT_CANCEL] = "A false alert of the radio",
        [SCRIPT_CANCEL_BEACON] = "A beacon that went off by mistake"};
    if (signing->in->procedure->kind.value != SHEET_DISTRESS)
        return;
    for (enum script_form form = 0; form < SCRIPT_FORM_COUNT; form++) {
        sign_section_begin(signing, forms[form]);
        script_sign(signing, form);
    }
    phrases_sign(signing);
}

void sign_words(struct signing *signing)
{
    const struct words *words = signing->in->words;
    if (sheet_source_of(signing->in->procedure->kind.value) == FROM_STEPS)
        return;
    sign_section_begin(signing, "Words that all cards share");
    for (enum word word = 0; word < WORD_COUNT; word++)
        sign_add(signing, SIGN_STRONG, 0, "%s", words_get(words, word));
}
