/* position_token.h - a position cut into its numbers and signs (private to
 * src/base/position_*.c). */
#ifndef MAYDECK_BASE_POSITION_TOKEN_H
#define MAYDECK_BASE_POSITION_TOKEN_H

#include "position.h"

enum token_kind {
    TOKEN_DEGREE, TOKEN_MINUTE, TOKEN_SECOND,   /* in this order: marks of a half's numbers */
    TOKEN_NUMBER, TOKEN_MINUS, TOKEN_PLUS, TOKEN_LETTER, TOKEN_COMMA, TOKEN_END
};

struct token {
    enum token_kind kind;
    size_t at;              /* character, from 1 */
    char letter;            /* N S E W */
    int64_t whole;          /* of a number: at most nine digits */
    int digits;             /* how many of them are written, zeros in front too */
    int64_t fraction_e9;    /* its decimals, in thousand-millionths */
    bool has_point;
};

/* More than a position can have: letter, sign, three numbers and their marks twice, a
 * comma, the end. */
enum { TOKENS_AT_MOST = 18 };

/* Cuts the text; the last token is TOKEN_END. False, with *error, when it holds what no
 * position does. */
bool position_tokens(const char *text, struct token tokens[TOKENS_AT_MOST],
                     struct position_error *error);

#endif
