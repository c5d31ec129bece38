/* script_text.c - a script as plain lines for the screen and for tests (room:
 * radio). Never changes a word of it. */
#include "radio.h"

#include "text.h"

void script_choice_add(struct text_builder *out, const char *words)
{
    for (const char *at = words; *at != '\0'; at++)
        if (*at == ' ')
            text_add(out, " / ");
        else
            text_add_bytes(out, at, 1);
}

static void add_piece(struct text_builder *out, const struct script_piece *piece)
{
    switch (piece->kind) {
    case PIECE_WORDS:
    case PIECE_STRONG:
        text_add(out, piece->text);
        break;
    case PIECE_BLANK:
        text_add_format(out, "____ (%s)", piece->text);
        break;
    case PIECE_CHOICE:
        script_choice_add(out, piece->text);
        break;
    }
}

static void said_pieces_add(struct text_builder *out, const struct script_line *line)
{
    for (size_t i = 0; i < line->count; i++) {
        text_add(out, i > 0 ? " " : "");
        add_piece(out, &line->pieces[i]);
    }
}

const char *script_line_text(const struct script_line *line, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    said_pieces_add(&out, line);
    return out.at;
}

const char *script_text(const struct script *script, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < script->count; i++) {
        const struct script_line *line = &script->lines[i];
        if (line->label != NULL)
            text_add_format(&out, "%s: ", line->label);
        said_pieces_add(&out, line);
        text_add(&out, "\n");
    }
    return out.at;
}
