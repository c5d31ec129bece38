/* spell.c - code words letter by letter, and numbers in threes (room: radio).
 *
 * Code words are those of Radio Regulations Appendix 14 (ALFA, JULIETT, X-RAY,
 * WHISKEY); digits are plain English words, which are understood everywhere.
 * Never turns a letter into another: what has no code word is refused. */
#include "radio.h"

#include <string.h>

#include "text.h"
#include "utf8.h"

static const char *const letter_words[26] = {
    "ALFA", "BRAVO", "CHARLIE", "DELTA", "ECHO", "FOXTROT", "GOLF", "HOTEL", "INDIA",
    "JULIETT", "KILO", "LIMA", "MIKE", "NOVEMBER", "OSCAR", "PAPA", "QUEBEC", "ROMEO",
    "SIERRA", "TANGO", "UNIFORM", "VICTOR", "WHISKEY", "X-RAY", "YANKEE", "ZULU",
};

static const char *const digit_words[10] = {
    "ZERO", "ONE", "TWO", "THREE", "FOUR", "FIVE", "SIX", "SEVEN", "EIGHT", "NINE",
};

static const char *const itu_figure_words[10] = {
    "NADAZERO", "UNAONE", "BISSOTWO", "TERRATHREE", "KARTEFOUR", "PANTAFIVE", "SOXISIX",
    "SETTESEVEN", "OKTOEIGHT", "NOVENINE",
};

static const struct { uint32_t code_point; const char *word; } spoken_signs[] = {
    {.code_point = '-', .word = "HYPHEN"},
    {.code_point = '&', .word = "AND"},
    {.code_point = ' ', .word = "/"},
    {.code_point = '.', .word = ""},
    {.code_point = '\'', .word = ""},
    {.code_point = 0x2019, .word = ""}, /* the typographic apostrophe */
};

static const char *code_word(uint32_t code_point)
{
    if (code_point >= 'A' && code_point <= 'Z')
        return letter_words[code_point - 'A'];
    if (code_point >= 'a' && code_point <= 'z')
        return letter_words[code_point - 'a'];
    if (code_point >= '0' && code_point <= '9')
        return digit_words[code_point - '0'];
    for (size_t i = 0; i < sizeof spoken_signs / sizeof spoken_signs[0]; i++)
        if (spoken_signs[i].code_point == code_point)
            return spoken_signs[i].word;
    return NULL;
}

const char *spell(struct arena *arena, const char *word, uint32_t *bad)
{
    struct text_builder spelled = text_builder_in(arena);
    size_t length = strlen(word), index = 0;
    bool pause = false;
    while (index < length) {
        uint32_t code_point = 0xFFFD;
        const char *code = utf8_next(word, length, &index, &code_point)
            ? code_word(code_point) : NULL;
        if (code == NULL) {
            *bad = code_point;
            return NULL;
        }
        if (code_point == ' ')
            pause = spelled.length > 0;
        else if (code[0] != '\0') {
            text_add(&spelled, pause ? " / " : spelled.length > 0 ? " " : "");
            text_add(&spelled, code);
            pause = false;
        }
    }
    return spelled.at;
}

const char *spell_itu_figures(struct arena *arena, const char *digits)
{
    struct text_builder spelled = text_builder_in(arena);
    for (; *digits != '\0'; digits++)
        if (*digits >= '0' && *digits <= '9')
            text_add_format(&spelled, "%s%s", spelled.length > 0 ? " " : "",
                            itu_figure_words[*digits - '0']);
    return spelled.at;
}

const char *mmsi_in_threes(struct arena *arena, const char *mmsi)
{
    struct text_builder grouped = text_builder_in(arena);
    size_t digits = 0;
    for (; *mmsi != '\0'; mmsi++) {
        if (*mmsi < '0' || *mmsi > '9')
            continue;
        if (digits > 0 && digits % 3 == 0)
            text_add(&grouped, " ");
        text_add_bytes(&grouped, mmsi, 1);
        digits++;
    }
    return grouped.at;
}

const char *mmsi_spelled(struct arena *arena, const char *mmsi)
{
    struct text_builder spelled = text_builder_in(arena);
    char digit[2] = {0};
    uint32_t bad = 0;
    for (const char *at = mmsi_in_threes(arena, mmsi); *at != '\0'; at++) {
        digit[0] = *at;
        if (*at == ' ')
            text_add(&spelled, ",");
        else
            text_add_format(&spelled, "%s%s", spelled.length > 0 ? " " : "",
                            spell(arena, digit, &bad));
    }
    return spelled.at;
}
