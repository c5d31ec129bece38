/* sign_off_text.c - a sheet to sign as plain text (room: explain). Never drops a word. */
#include "explain.h"
#include "sign_off.h"

static void line_put(const struct explaining *explaining, const struct sign_line *line)
{
    size_t indent = INDENT_REASON * (line->depth + 1);
    if (line->kind == SIGN_BLANK)
        line_tell(explaining, indent, "%s: "
                  "________________________________________________", line->text);
    else if (line->kind == SIGN_PASTE)
        text_add_format(explaining->out, "%*s%s\n", INDENT_REASON, "", line->text);
    else
        line_tell(explaining, indent, "%s", line->text);
}

void sign_off_text(const struct sign_off *sign_off, struct text_builder *out)
{
    const struct explaining explaining = {.arena = out->arena, .out = out};
    line_tell(&explaining, INDENT_PART, "SHEET TO READ AND SIGN: %s", sign_off->title);
    line_tell(&explaining, INDENT_PART, "fingerprint of this text: %s", sign_off->fingerprint);
    for (size_t i = 0; i < sign_off->count; i++) {
        const struct sign_section *section = &sign_off->sections[i];
        blank_tell(&explaining);
        line_tell(&explaining, INDENT_PART, "%s", section->title);
        for (size_t k = 0; k < section->count; k++)
            line_put(&explaining, &section->lines[k]);
    }
}
