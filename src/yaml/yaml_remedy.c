/* yaml_remedy.c - how to put right a number, date or answer that was written
 * another way (room: yaml). Suggests a value only where it can mean nothing
 * else: a wrong guess would end on a card. */
#include "yaml_value.h"

#include <string.h>

#include "number.h"
#include "text.h"

static bool byte_is_digit(char byte)
{
    return byte >= '0' && byte <= '9';
}

/* The number at the start of the text in our spelling: comma as point, no +,
 * zeros in front or missing ones put right. NULL if it is none. */
static const char *number_respelled(struct arena *arena, const char *text, size_t length)
{
    struct text_builder number = text_builder_in(arena);
    int64_t milli;
    size_t at = 0;

    if (length > 0 && (text[0] == '+' || text[0] == '-'))
        at = 1;
    if (at == 1 && text[0] == '-')
        text_add(&number, "-");
    while (at + 1 < length && text[at] == '0' && byte_is_digit(text[at + 1]))
        at++;
    if (at < length && (text[at] == '.' || text[at] == ','))
        text_add(&number, "0");
    for (; at < length; at++)
        text_add_bytes(&number, text[at] == ',' ? "." : text + at, 1);
    if (text_ends(number.at, "."))
        number.at[number.length - 1] = '\0';
    return number_parse_milli(number.at, &milli) ? number.at : NULL;
}

/* `1,200` is 1.2 to one and 1200 to the other. */
static bool comma_is_doubtful(const char *text, size_t length)
{
    const char *comma = memchr(text, ',', length);

    return comma != NULL && text + length - comma == 4;
}

/* The key ends in the unit (`loa_m`), or is it (`kg`). */
static bool key_has_unit(struct arena *arena, const char *key, const char *unit)
{
    const char *last = strrchr(key, '_');

    return text_equal(text_upper(arena, last == NULL ? key : last + 1),
                      text_upper(arena, unit));
}

static const char *unit_remedy(struct arena *arena, const struct field *field,
                               const char *number, const char *unit)
{
    if (number != NULL && key_has_unit(arena, field->key, unit))
        return text_format(arena, "write %s, without the unit", number);
    return "write the number alone, in the unit that is meant by the key";
}

/* Digits, a comma and three digits: both numbers they can be. */
static const char *doubtful_remedy(struct arena *arena, const char *text, size_t length)
{
    size_t before = length - 4;
    const char *point = number_respelled(arena, text, length);
    const char *grouped = number_respelled(
        arena, text_format(arena, "%.*s%.3s", (int)before, text, text + before + 1), length - 1);
    int64_t milli;

    if (grouped == NULL || point == NULL || !number_parse_milli(point, &milli))
        return NULL;
    return text_format(arena, "write %s or %s, whichever is meant: no comma, a point before "
                       "decimals", grouped, number_text_milli(arena, milli));
}

static const char *spelling_remedy(struct arena *arena, const char *text, size_t length)
{
    const char *number = number_respelled(arena, text, length);
    bool comma = memchr(text, ',', length) != NULL;
    const char *doubtful =
        comma_is_doubtful(text, length) ? doubtful_remedy(arena, text, length) : NULL;

    if (doubtful != NULL)
        return doubtful;
    if (number == NULL)
        return "write digits only, with a point before decimals (three at most)";
    return text_format(arena, comma ? "write %s, with a point" : "write %s", number);
}

const char *comma_remedy(struct arena *arena, const char *text)
{
    return spelling_remedy(arena, text, strlen(text));
}

/* The words for small numbers that people write out, each row one number, from 1 on. */
static const char *const number_words[][6] = {
    {"ONE", "EINS", "UN", "UNO", "UNA", "JEDAN"},     {"TWO", "ZWEI", "DEUX", "DUE", "DOS", "DVA"},
    {"THREE", "DREI", "TROIS", "TRE", "TRES", "TRI"}, {"FOUR", "VIER", "QUATRE", "QUATTRO",
                                                       "CUATRO", "\u010CETIRI"},
    {"FIVE", "F\u00DCNF", "CINQ", "CINQUE", "CINCO", "PET"},
    {"SIX", "SECHS", "SEI", "SEIS", "\u0160EST"},     {"SEVEN", "SIEBEN", "SEPT", "SETTE",
                                                       "SIETE", "SEDAM"},
    {"EIGHT", "ACHT", "HUIT", "OTTO", "OCHO", "OSAM"}, {"NINE", "NEUN", "NEUF", "NOVE",
                                                        "NUEVE", "DEVET"},
    {"TEN", "ZEHN", "DIX", "DIECI", "DIEZ", "DESET"}, {"ELEVEN", "ELF", "ONZE", "UNDICI",
                                                       "ONCE", "JEDANAEST"},
    {"TWELVE", "ZW\u00D6LF", "DOUZE", "DODICI", "DOCE", "DVANAEST"}};

/* 0: it is none. */
static size_t number_of_word(struct arena *arena, const char *text)
{
    const char *upper = text_upper(arena, text);

    for (size_t row = 0; row < sizeof number_words / sizeof number_words[0]; row++)
        for (size_t i = 0; i < sizeof number_words[0] / sizeof number_words[0][0]; i++)
            if (text_equal(number_words[row][i], upper))
                return row + 1;
    return 0;
}

const char *number_remedy(struct arena *arena, const struct field *field, const char *text)
{
    size_t length = strspn(text, "+-0123456789.,");
    const char *unit = text + length + strspn(text + length, " ");
    size_t spelled = number_of_word(arena, text);

    if (spelled > 0)
        return text_format(arena, "write %zu", spelled);
    if (length > 0 && *unit != '\0' && !byte_is_digit(*unit) && !comma_is_doubtful(text, length))
        return unit_remedy(arena, field, number_respelled(arena, text, length), unit);
    if (*unit != '\0' && !comma_is_doubtful(text, length))
        return "write digits only, with a point before decimals (three at most)";
    return spelling_remedy(arena, text, length);
}

struct answer_word {
    const char *word;  /* in capitals */
    const char *answer;
};

static const struct answer_word answer_words[] = {
    {.word = "YES", .answer = "yes"},
    {.word = "NO", .answer = "no"},
    {.word = "Y", .answer = "yes"},
    {.word = "N", .answer = "no"},
    {.word = "TRUE", .answer = "yes"},
    {.word = "FALSE", .answer = "no"},
    {.word = "ON", .answer = "yes"},
    {.word = "OFF", .answer = "no"},
    {.word = "1", .answer = "yes"},
    {.word = "0", .answer = "no"},
    {.word = "JA", .answer = "yes"},
    {.word = "OUI", .answer = "yes"},
    {.word = "SI", .answer = "yes"},
    {.word = "S\u00CD", .answer = "yes"},
    {.word = "S\u00CC", .answer = "yes"},
    {.word = "SIM", .answer = "yes"},
    {.word = "DA", .answer = "yes"},
    {.word = "TAK", .answer = "yes"},
    {.word = "NEIN", .answer = "no"},
    {.word = "NON", .answer = "no"},
    {.word = "NEE", .answer = "no"},
};

/* A mark in a box of a form: for most people yes, for some no. */
static bool is_ticked(const char *upper)
{
    static const char *const marks[] = {"X", "\u2713", "\u2714", "\u2717", "\u2718", "\u00D7"};

    for (size_t i = 0; i < sizeof marks / sizeof marks[0]; i++)
        if (text_equal(marks[i], upper))
            return true;
    return false;
}

const char *answer_remedy(struct arena *arena, const char *text)
{
    const char *upper = text_upper(arena, text);

    if (is_ticked(upper))
        return "write yes if the mark stands for yes, else no";

    for (size_t i = 0; i < sizeof answer_words / sizeof answer_words[0]; i++)
        if (text_equal(answer_words[i].word, upper))
            return text_format(arena, "write %s", answer_words[i].answer);
    return "write yes or no; leave the value empty as long as nobody knows";
}
