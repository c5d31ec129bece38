/* proof_print.c - the audit of a card as text (room:
 * layout). It judges nothing. */
#include "proof.h"

#include <string.h>

static const char *const severity_words[] = {
    [PROOF_ERROR] = "error", [PROOF_NOTE] = "note", [PROOF_AIM] = "aim"};

static void padded_add(struct text_builder *out, const char *text, size_t width)
{
    long length = text_code_points(text);
    text_add(out, text);
    for (size_t at = length < 0 ? strlen(text) : (size_t)length; at < width; at++)
        text_add(out, " ");
}

static size_t widest_measured(const struct proof_report *report)
{
    size_t widest = 0;
    for (size_t i = 0; i < report->count; i++) {
        long length = text_code_points(report->findings[i].measured);
        widest = length > 0 && (size_t)length > widest ? (size_t)length : widest;
    }
    return widest;
}

static void finding_print(const struct proof_finding *finding, const char *boat,
                          size_t width, struct text_builder *out)
{
    const struct proof_rule *rule = proof_rule(finding->rule);
    text_add_format(out, "%s %s  ", boat, finding->card);
    padded_add(out, severity_words[rule->severity], 5);
    text_add(out, "  ");
    padded_add(out, rule->id, 3);
    text_add(out, "  ");
    padded_add(out, finding->measured, width);
    text_add_format(out, "  limit: %s; remedy: %s\n", rule->limit, rule->remedy);
}

void proof_print(const struct proof_report *report, const char *boat, const char *card,
                 struct text_builder *out)
{
    size_t width = widest_measured(report);
    for (size_t i = 0; i < report->count; i++)
        finding_print(&report->findings[i], boat, width, out);
    if (report->errors == 0)
        text_add_format(out, "%s %s  clean", boat, card);
    else
        text_add_format(out, "%s %s  held by %zu errors", boat, card, report->errors);
    text_add_format(out, ": %zu notes, %zu below aim, %zu things measured\n", report->notes,
                    report->aims, report->measured);
}
