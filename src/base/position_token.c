/* position_token.c - cuts a position into numbers, signs and letters (room: base).
 * Never asks whether they stand in a sensible order. */
#include "position_token.h"

#include <string.h>

#include "promise.h"
#include "text.h"
#include "utf8.h"

enum { TOKEN_WHOLE_DIGITS = 9, TOKEN_FRACTION_DIGITS = 9, NOT_A_SIGN = 0xFFFD };

static const struct { uint32_t code_point; enum token_kind kind; char letter; } position_signs[] = {
    {0xB0, TOKEN_DEGREE, '\0'}, {0xBA, TOKEN_DEGREE, '\0'},   /* the ordinal sign looks so */
    {'\'', TOKEN_MINUTE, '\0'}, {0x2032, TOKEN_MINUTE, '\0'}, {0x2019, TOKEN_MINUTE, '\0'},
    {'"', TOKEN_SECOND, '\0'}, {0x2033, TOKEN_SECOND, '\0'}, {0x201D, TOKEN_SECOND, '\0'},
    {'-', TOKEN_MINUS, '\0'}, {0x2212, TOKEN_MINUS, '\0'}, {'+', TOKEN_PLUS, '\0'},
    {',', TOKEN_COMMA, '\0'},
    {'N', TOKEN_LETTER, 'N'}, {'S', TOKEN_LETTER, 'S'}, {'E', TOKEN_LETTER, 'E'},
    {'W', TOKEN_LETTER, 'W'}, {'n', TOKEN_LETTER, 'N'}, {'s', TOKEN_LETTER, 'S'},
    {'e', TOKEN_LETTER, 'E'}, {'w', TOKEN_LETTER, 'W'},
};

/* The text as far as it was read. */
struct cursor {
    const char *text;
    size_t length, index, at;
};

static bool token_fault_set(struct position_error *error, enum position_fault fault, size_t at)
{
    *error = (struct position_error){.fault = fault, .at = at};
    return false;
}

/* Digits and points are one byte, one character. */
static void digit_skip(struct cursor *cursor)
{
    cursor->index++;
    cursor->at++;
}

static void fraction_read(struct cursor *cursor, struct token *number)
{
    int digits = 0;
    digit_skip(cursor);
    number->has_point = true;
    for (; is_digit(cursor->text[cursor->index]); digit_skip(cursor), digits++)
        if (digits < TOKEN_FRACTION_DIGITS)
            number->fraction_e9 = number->fraction_e9 * 10 +
                                  (cursor->text[cursor->index] - '0');
    for (; digits < TOKEN_FRACTION_DIGITS; digits++)
        number->fraction_e9 *= 10;
}

/* 43,4725 may be one number or two, unless 43 has decimals of its own. */
static bool token_number_read(struct cursor *cursor, struct token *number,
                              struct position_error *error)
{
    const char *text = cursor->text;
    number->kind = TOKEN_NUMBER;
    for (; is_digit(text[cursor->index]); digit_skip(cursor), number->digits++) {
        if (number->digits == TOKEN_WHOLE_DIGITS)
            return token_fault_set(error, POSITION_NUMBER, cursor->at);
        number->whole = number->whole * 10 + (text[cursor->index] - '0');
    }
    if (text[cursor->index] == ',' && is_digit(text[cursor->index + 1]))
        return token_fault_set(error, POSITION_DECIMAL_COMMA, cursor->at);
    if (text[cursor->index] != '.')
        return true;
    if (!is_digit(text[cursor->index + 1]))
        return token_fault_set(error, POSITION_NUMBER, cursor->at + 1);
    fraction_read(cursor, number);
    return true;
}

static bool token_sign_read(struct cursor *cursor, struct token *token,
                            struct position_error *error)
{
    uint32_t code_point = NOT_A_SIGN;
    size_t at = cursor->at++;
    if (!utf8_next(cursor->text, cursor->length, &cursor->index, &code_point))
        return token_fault_set(error, POSITION_SIGN, at);
    for (size_t i = 0; i < sizeof position_signs / sizeof position_signs[0]; i++)
        if (position_signs[i].code_point == code_point) {
            token->kind = position_signs[i].kind;
            token->letter = position_signs[i].letter;
            return true;
        }
    return token_fault_set(error, POSITION_SIGN, at);
}

/* Two minute signs in a row are a second sign. */
static bool joins_minute(const struct token *before, const struct token *token)
{
    return before->kind == TOKEN_MINUTE && token->kind == TOKEN_MINUTE &&
           token->at == before->at + 1;
}

static void spaces_skip(struct cursor *cursor)
{
    while (cursor->text[cursor->index] == ' ')
        digit_skip(cursor);
}

bool position_tokens(const char *text, struct token tokens[TOKENS_AT_MOST],
                     struct position_error *error)
{
    struct cursor cursor = {.text = text, .length = strlen(text), .at = 1};
    size_t count = 0;
    for (spaces_skip(&cursor); cursor.index < cursor.length; spaces_skip(&cursor)) {
        struct token token = {.at = cursor.at};
        bool sound = is_digit(text[cursor.index]) ? token_number_read(&cursor, &token, error)
                                                  : token_sign_read(&cursor, &token, error);
        if (!sound)
            return false;
        if (count > 0 && joins_minute(&tokens[count - 1], &token))
            tokens[count - 1].kind = TOKEN_SECOND;
        else if (count + 1 < TOKENS_AT_MOST)
            tokens[count++] = token;
        else
            return token_fault_set(error, POSITION_MORE, token.at);
    }
    promise(count < TOKENS_AT_MOST);
    tokens[count] = (struct token){.kind = TOKEN_END, .at = cursor.at};
    return true;
}
