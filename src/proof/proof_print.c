/* proof_print.c - the audit of a card as text (room: proof). It judges nothing. */
#include "proof.h"

static const char *const severity_words[] = {
    [PROOF_ERROR] = "error", [PROOF_NOTE] = "note", [PROOF_AIM] = "aim"};

#define INSET "              "

/* All that breaks one rule; what the rule asks stands below, once. */
static void rule_print(const struct proof_report *report, enum proof_rule_key key,
                       struct text_builder *out)
{
    const struct proof_rule *rule = proof_rule(key);
    bool any = false;
    for (size_t i = 0; i < report->count; i++) {
        if (report->findings[i].rule != key)
            continue;
        text_add_format(out, "  %-5s  %-3s  %s\n", severity_words[rule->severity], rule->id,
                        report->findings[i].measured);
        any = true;
    }
    if (any)
        text_add_format(out, INSET "rule:   %s\n" INSET "limit:  %s\n" INSET "remedy: %s\n",
                        rule->sentence, rule->limit, rule->remedy);
}

/* A language without lists of its words is not judged by them, and says so. */
static void unjudged_print(const struct proof_report *report, struct text_builder *out)
{
    bool any = false;
    for (int key = 0; report->words != NULL && key < RULE_COUNT; key++) {
        const struct proof_rule *rule = proof_rule((enum proof_rule_key)key);
        if (proof_rule_judges((enum proof_rule_key)key, report->words))
            continue;
        text_add_format(out, any ? "; %s %s" : "  not judged, since the words of its language "
                                               "have no list for it: %s %s",
                        rule->id, rule->sentence);
        any = true;
    }
    text_add(out, any ? "\n" : "");
}

void proof_print(const struct proof_report *report, const char *boat, const char *sheet,
                 struct text_builder *out)
{
    text_add_format(out, "%s %s: ", boat, sheet);
    if (report->errors == 0)
        text_add(out, "clean");
    else
        text_add_format(out, "held back by %zu %s", report->errors,
                        report->errors == 1 ? "error" : "errors");
    text_add_format(out, "; %zu %s, %zu below aim, %zu things measured\n", report->notes,
                    report->notes == 1 ? "note" : "notes", report->aims, report->measured);
    for (int key = 0; key < RULE_COUNT; key++)
        rule_print(report, (enum proof_rule_key)key, out);
    unjudged_print(report, out);
}

void proof_people_print(struct text_builder *out)
{
    const char *between = "left to people: ";
    for (int key = 0; key < RULE_COUNT; key++) {
        const struct proof_rule *rule = proof_rule((enum proof_rule_key)key);
        if (rule->judge != PROOF_PERSON)
            continue;
        text_add_format(out, "%s%s %s", between, rule->id, rule->sentence);
        between = "; ";
    }
    text_add(out, "\n");
}
