/* sign_off.h - what a qualified person reads and signs: one procedure in one language, whole, with
 * what each of its texts stands on, as sections of lines (room: explain). It knows no boat: each
 * case stands on it, with the boats that it is for. */
#ifndef MAYDECK_SIGN_OFF_H
#define MAYDECK_SIGN_OFF_H

#include <stddef.h>

#include "arena.h"
#include "procedure.h"
#include "text.h"
#include "words.h"

enum sign_line_kind {
    SIGN_TEXT,
    SIGN_STRONG,       /* words that the card prints */
    SIGN_BASIS,        /* what they stand on: a source, or practice, which is what is signed for */
    SIGN_BLANK,        /* to be filled in by hand: `text` says with what */
    SIGN_PASTE         /* a line for base.yaml, as it is */
};

struct sign_line {
    enum sign_line_kind kind;
    size_t depth;              /* 0, or how far it belongs to a line before it */
    const char *text;
};

struct sign_section {
    const char *title;
    const struct sign_line *lines;
    size_t count;
};

struct sign_off {
    const char *card;          /* key of the procedure */
    const char *title;         /* number, title and language */
    const char *fingerprint;
    const struct sign_section *sections;
    size_t count;
};

struct sign_off_input {
    const struct procedure *procedure;
    const struct authorities *authorities;
    const struct words *words;
};

/* The procedure must have texts in the language of the words. */
const struct sign_off *sign_off_compose(const struct sign_off_input *input, struct arena *arena);

/* Adds it as plain text, lines of at most 100 characters where they have a space to break at. */
void sign_off_text(const struct sign_off *sign_off, struct text_builder *out);

#endif
